/**
 * Slip of a propeller: 1 - speed / (rotation / ratio x pitch), published and computed (1215.2 for knots and inches is
 * 6076.1 x 12 / 60). Usual bands by hull are read on calculators' pages and in textbooks, and differ (practice). The
 * speed is the mean of runs both ways; slip near zero or negative says that a datum is wrong.
 */

export interface Trial {
    /** Speed of the engine, rad/s. */
    readonly rotationRadS: number;
    /** Turns of the engine to one of the propeller. */
    readonly ratio: number;
    readonly pitchM: number;
}

/** Speed without slip, m/s. */
export function theoreticalSpeedMs({ rotationRadS, ratio, pitchM }: Trial): number {
    return rotationRadS / (2 * Math.PI) / ratio * pitchM;
}

/** Slip as a share; undefined where the propeller does not turn. */
export function propellerSlip(speedMs: number, trial: Trial): number | undefined {
    const theoretical = theoreticalSpeedMs(trial);
    return theoretical > 0 ? 1 - speedMs / theoretical : undefined;
}

export type HullService = 'planing' | 'semi-displacement' | 'displacement' | 'tug';

/** Usual slip, shares (practice; sources differ by ten points). */
export const usualSlip: Readonly<Record<HullService, { readonly low: number; readonly high: number }>> = {
    planing: { low: 0.05, high: 0.2 }, 'semi-displacement': { low: 0.15, high: 0.3 }, displacement: { low: 0.2, high: 0.45 }, tug: { low: 0.2, high: 0.5 },
};

/** Less slip than this no propeller has: a figure is wrong (practice). */
export const leastSlip = 0.03;
