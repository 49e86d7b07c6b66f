/**
 * Slip of a propeller: 1 - speed / (rotation / ratio x pitch), published and computed (1215.2 for knots and inches is
 * 6076.1 x 12 / 60). Usual bands by hull are read on calculators' pages (planing 5-15 %, displacement 15-30 %, sailing
 * auxiliary 10-25 %, work boats 30-50 %) and in textbooks (10-20, 20-30, 30-45 %), and differ by ten points; the bands
 * here span both. The speed is the mean of runs both ways; slip near zero or negative says that a datum is wrong.
 * Assumes a propeller of constant pitch that is not ventilated.
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

/** Speed through the water, m/s, of two runs over the ground at like rotation, one with the current and one against it. */
export function meanOfRunsMs(oneWayMs: number, otherWayMs: number): number {
    return (oneWayMs + otherWayMs) / 2;
}

export type HullService = 'planing' | 'semi-displacement' | 'displacement' | 'sailing' | 'work';

export interface SlipBand {
    readonly low: number;
    readonly high: number;
}

/** Usual slip, shares (published on calculators' pages and in textbooks; each band spans what they say). */
export const usualSlip: Readonly<Record<HullService, SlipBand>> = {
    planing: { low: 0.05, high: 0.2 }, 'semi-displacement': { low: 0.15, high: 0.3 }, displacement: { low: 0.15, high: 0.45 }, sailing: { low: 0.1, high: 0.45 }, work: { low: 0.2, high: 0.5 },
};

/** The band that spans those of several services. */
export function spannedBand(services: readonly HullService[]): SlipBand {
    const bands = services.map(service => usualSlip[service]);
    return { low: Math.min(...bands.map(band => band.low)), high: Math.max(...bands.map(band => band.high)) };
}

/**
 * How a hull runs at a ratio of speed to the root of the waterline (knots and feet): to 1.34 in its own wave, from
 * about 2.5 on the plane (textbook practice); between these bounds and near them more than one answer is right.
 */
export function servicesAtRatio(speedLengthRatio: number): readonly HullService[] {
    return speedLengthRatio <= 1.34 ? ['displacement'] : speedLengthRatio < 2 ? ['displacement', 'semi-displacement']
        : speedLengthRatio < 3 ? ['semi-displacement', 'planing'] : ['planing'];
}

/** Less slip than this no propeller has: a figure is wrong (practice). */
export const leastSlip = 0.03;
/** Difference of slip between twins at one speed over which one of them is odd (practice). */
export const twinSlipDifference = 0.05;
