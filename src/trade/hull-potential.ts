/**
 * Ranges of hull potential in salt water, V against silver chloride in sea water, as an anode trade page prints them
 * (read second-hand). Others accept wider ones; practice differs. Least potentials that protect a metal: the same page.
 */

export type HullGear = 'fiberglass-bronze' | 'fiberglass-aluminum-drive' | 'aluminum' | 'steel' | 'wood';

export interface PotentialRange {
    /** Least negative. */
    readonly fromV: number;
    /** Most negative. */
    readonly toV: number;
}

export const hullRanges: Readonly<Record<HullGear, PotentialRange>> = {
    'fiberglass-bronze': { fromV: -0.75, toV: -1.0 },
    'fiberglass-aluminum-drive': { fromV: -0.9, toV: -1.05 },
    aluminum: { fromV: -0.9, toV: -1.1 },
    steel: { fromV: -0.8, toV: -1.05 },
    wood: { fromV: -0.55, toV: -0.6 },
};

export type HullVerdict = 'in-range' | 'under-protected' | 'over-protected';

export function judgeHullPotential(potentialV: number, gear: HullGear): HullVerdict {
    const { fromV, toV } = hullRanges[gear];
    return potentialV > fromV + 1e-9 ? 'under-protected' : potentialV < toV - 1e-9 ? 'over-protected' : 'in-range';
}
