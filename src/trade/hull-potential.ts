/**
 * A hull potential against its range, V against silver chloride in sea water. The ranges are yardsticks of the catalogue
 * (an anode trade page, read second-hand); others accept wider ones and a firm sets its own.
 */

export type HullGear = 'fiberglass-bronze' | 'fiberglass-aluminum-drive' | 'aluminum' | 'steel' | 'wood';

export interface PotentialRange {
    /** Least negative. */
    readonly fromV: number;
    /** Most negative. */
    readonly toV: number;
}

export type HullVerdict = 'in-range' | 'under-protected' | 'over-protected';

export function judgeHullPotential(potentialV: number, { fromV, toV }: PotentialRange): HullVerdict {
    return potentialV > fromV + 1e-9 ? 'under-protected' : potentialV < toV - 1e-9 ? 'over-protected' : 'in-range';
}
