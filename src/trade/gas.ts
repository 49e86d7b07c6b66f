/**
 * Cooking gas: the test of tightness by the gauge of the locker, and the vent of the locker. Figures after ABYC A-1, as
 * public pages quote it: vent of 1/2 in and 20 in from openings secondary, three minutes of test from memory. Some
 * inland rules and ISO 10239 (from memory) ask 19 mm of vent; a firm sets its own.
 */
import { nominalSizeM } from './hose-fit.js';

/** Least time that a test of tightness is watched, s. */
export const leastTestS = 180;

export interface TightnessTest {
    readonly startPa: number;
    readonly endPa: number;
    readonly durationS?: number;
    /** Whether both pressures were written in one unit; else a hundredth is left to conversion. */
    readonly inOneUnit: boolean;
    /** False where the cylinder or an appliance was open, or the line was not charged: the gauge then tells nothing. */
    readonly isSetUp: boolean;
}

export type TightnessVerdict = 'held' | 'fell' | 'too-short' | 'duration-not-known' | 'no-test';

/** Any fall is a leak, in whatever time; a pressure that held proves something from three minutes on. */
export function judgeTightness({ startPa, endPa, durationS, inOneUnit, isSetUp }: TightnessTest): TightnessVerdict {
    const left = inOneUnit ? 1e-9 : 0.01;
    if (!isSetUp || startPa <= 0) {
        return 'no-test';
    }
    if (endPa < startPa * (1 - left)) {
        return 'fell';
    }
    return durationS === undefined ? 'duration-not-known' : durationS < leastTestS - 1e-9 ? 'too-short' : 'held';
}

/** Whether a bore comes up to another, sizes of the trade pairing as equal: 12 mm is 1/2 in. */
export function reachesBore(boreM: number, leastM: number): boolean {
    return nominalSizeM(boreM) >= nominalSizeM(leastM) - 1e-6;
}

/** Whether a gap comes up to another; 500 mm and 20 in pair as equal. */
export function reachesGap(gapM: number, leastM: number): boolean {
    return gapM >= leastM * 0.98;
}
