/**
 * Whether her dimensions, weight, fuel and figures written twice can be true together. The arithmetic is computed; the
 * bounds are wide ones that ordinary craft keep within (practice, or chosen where said), so that only slips of a unit
 * or a digit fall outside.
 */

/** Two measurements of one dimension differ by more than the larger of 0.5 % and 20 mm (chosen). */
export function dimensionsDiffer(aM: number, bM: number): boolean {
    return Math.abs(aM - bM) > Math.max(0.005 * Math.max(Math.abs(aM), Math.abs(bM)), 0.02) + 1e-9;
}

/** Whether a dimension exceeds another that bounds it, by more than two measurements of one may differ. */
export function exceeds(aM: number, boundM: number): boolean {
    return aM > boundM && dimensionsDiffer(aM, boundM);
}

/** Beam as a share of length: usual 0.2 to 0.6, of multihulls 0.8 (practice), widened for narrow and round craft (chosen). */
export const beamShareBounds = { least: 0.09, most: 0.7, mostMultihull: 1.05 } as const;
/** Draft as a share of length that no craft with keel or board exceeds (chosen). */
export const draftShareMost = 0.4;
/** Waterline as a share of the length of the hull, which even the longest overhangs leave (chosen). */
export const waterlineShareLeast = 0.5;

/**
 * Bounds of the block coefficient (practice): 0.12 to 0.85 of the hull alone. Where the draft counts a keel or drive
 * the coefficient is smaller by two or three times, so only 0.04 is asked (chosen); a box may fill its block.
 */
export const blockBounds = { least: 0.12, leastWithKeel: 0.04, most: 0.85, mostOfBox: 1 } as const;

/** Speed over the square root of the waterline, knots and feet, over which no displacement hull goes under power (practice). */
export const speedLengthMost = 1.5;

/** Density, kg/m3, at 15 C, the middle of what is sold (from memory). */
export const fuelDensityKgM3 = { diesel: 840, gasoline: 740 } as const;
/** Share of her displacement over which the weight of the fuel is out of proportion (practice). */
export const fuelShareMost = 0.25;

/** Full tanks as a share of her displacement. Undefined for no displacement. */
export function fuelShare(volumeM3: number, fuel: keyof typeof fuelDensityKgM3, displacementKg: number): number | undefined {
    return displacementKg > 0 ? volumeM3 * fuelDensityKgM3[fuel] / displacementKg : undefined;
}

/** How finely a number is written, in its own unit. */
export interface WrittenStep {
    /** Of the last digit written: 1 for "38" and "380", 0.1 for "5.0"; 0 for a fraction, which is exact. */
    readonly last: number;
    /** Of the last digit that counts where zeros at the end stand for nothing: 10 for "380". */
    readonly rounded: number;
}

/** How finely a number is written: "38", "5.0", "1-1/2", "24,000". */
export function writtenStep(number: string): WrittenStep {
    const match = /^[-\u2212]?(\d+)(?:\.(\d*))?$/.exec(number.replace(/[\s,\u00a0\u202f]/g, ''));
    if (!match) {
        return { last: 0, rounded: 0 };
    }
    const [, whole = '', decimals] = match;
    if (decimals !== undefined) {
        return { last: 10 ** -decimals.length, rounded: 10 ** -decimals.length };
    }
    const zeros = /0*$/.exec(whole)?.[0].length ?? 0;
    return { last: 1, rounded: zeros === whole.length ? 1 : 10 ** zeros };
}

export interface WrittenFigure {
    readonly si: number;
    /** Steps of its last digit, in SI. */
    readonly stepSi: WrittenStep;
}

/**
 * All chosen: share by which a conversion may be off; share of a round number that its zeros may hide; share of the
 * last digit, which is cut off as often as rounded, and share of the whole that this may come to for small numbers.
 */
const conversionShares = { off: 0.005, hidden: 0.05, lastDigit: 0.6, lastDigitMost: 0.25 } as const;

/**
 * Whether a figure and its conversion agree: within 0.6 of the last digit of either (at most a quarter of the whole), half a percent, or what the zeros
 * of a round conversion may hide, at most 5 %. Half a percent means nothing on a scale whose zero is chosen, so it is
 * left out for temperatures.
 */
export function conversionAgrees(figure: WrittenFigure, conversion: WrittenFigure, hasTrueZero = true): boolean {
    const size = Math.abs(conversion.si);
    const step = conversionShares.lastDigit * Math.max(figure.stepSi.last, conversion.stepSi.last);
    const lastDigit = hasTrueZero ? Math.min(step, conversionShares.lastDigitMost * size) : step;
    const off = hasTrueZero ? conversionShares.off * size : 0;
    const hidden = hasTrueZero ? Math.min(conversion.stepSi.rounded, conversionShares.hidden * size) : 0;
    return Math.abs(figure.si - conversion.si) <= Math.max(lastDigit, off, hidden) + 1e-9 * Math.max(1, size);
}
