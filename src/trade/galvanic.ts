/**
 * Two metals in contact in water: the baser is eaten, the quicker the farther they are apart and the smaller it is.
 *
 * Potentials must come from one table (tables differ by up to 0.15 V). More than 0.20 V apart needs an anode: read
 * second-hand of the chart after ABYC E-2. 0.40 V and the steps by area are practice. Attack goes inversely as the
 * ratio of anode to cathode area: MIL-STD-1250A, published.
 */

export const watchDifferenceV = 0.2;
export const faultDifferenceV = 0.4;
/** An anode with at least this share left counts as protection (practice). */
export const protectingShare = 0.5;

/** Where two metals touch: under water, in salt air and spray, in a cabin, or in a dry heated one. */
export type Environment = 'immersed' | 'weather' | 'indoors' | 'controlled';

/**
 * Difference from which a couple is to be protected, V. Under water 0.20 (a design-school handout, published, and the
 * chart after ABYC E-2, second-hand); out of it 0.15 in salt and damp, 0.25 indoors, 0.50 where the climate is
 * controlled (a maker's guide on the anodic index, published; such guides leave areas out of account).
 */
export const differenceAllowedV: Readonly<Record<Environment, number>> = { immersed: watchDifferenceV, weather: 0.15, indoors: 0.25, controlled: 0.5 };

/** Whether a couple that no water joins is farther apart than its surroundings allow. */
export function isApartInAir(differenceV: number, environment: Exclude<Environment, 'immersed'>): boolean {
    return differenceV > differenceAllowedV[environment] + 1e-9;
}

export interface Potential {
    readonly low: number;
    readonly high: number;
}

export const midV = ({ low, high }: Potential): number => (low + high) / 2;

/** Difference of the range midpoints, V, never negative. */
export function potentialDifferenceV(a: Potential, b: Potential): number {
    return Math.abs(midV(a) - midV(b));
}

export interface Couple {
    readonly differenceV: number;
    /** Exposed area of the nobler part divided by that of the baser, where known. */
    readonly areaRatio?: number;
    /** Share left of the anode that protects both, where known. */
    readonly anodeLeft?: number;
}

/** 0 nothing, 1 to be protected, 2 a fault whatever the anode. */
export type CoupleStep = 0 | 1 | 2;

/** How a wetted, uninsulated couple stands: by difference, one step up at an area ratio over 10, one down under 0.1. */
export function coupleStep({ differenceV, areaRatio, anodeLeft }: Couple): CoupleStep {
    const slack = 1e-9;
    let step: number = differenceV > faultDifferenceV + slack ? 2 : differenceV > watchDifferenceV + slack ? 1 : 0;
    if (step > 0 && areaRatio !== undefined) {
        step += areaRatio > 10 ? 1 : areaRatio < 0.1 ? -1 : 0;
    }
    if (step === 1 && anodeLeft !== undefined && anodeLeft >= protectingShare - slack) {
        return 0;
    }
    return Math.min(2, Math.max(0, step)) as CoupleStep;
}
