/**
 * Navigation lights: least ranges by length, rule 22 (published, international and 33 CFR 83.22), and places, annex I
 * of the rules and 33 CFR 84 (from memory). Lengths in meters, ranges in nautical miles.
 */

export type LightKind = 'masthead' | 'side' | 'stern' | 'towing' | 'all-round';

/** Length from which the next row of the table holds, m, and the ranges in nautical miles. */
const rows: readonly { readonly fromM: number; readonly ranges: Readonly<Record<LightKind, number>> }[] = [
    { fromM: 0, ranges: { masthead: 2, side: 1, stern: 2, towing: 2, 'all-round': 2 } },
    { fromM: 12, ranges: { masthead: 3, side: 2, stern: 2, towing: 2, 'all-round': 2 } },
    { fromM: 20, ranges: { masthead: 5, side: 2, stern: 2, towing: 2, 'all-round': 2 } },
    { fromM: 50, ranges: { masthead: 6, side: 3, stern: 3, towing: 3, 'all-round': 3 } },
];

/** Least range of a light, nautical miles. A vessel of just 12 m falls under the longer row. */
export function leastRangeNmi(light: LightKind, lengthM: number): number {
    return rows.findLast(row => lengthM >= row.fromM - 1e-9)?.ranges[light] ?? 0;
}

/** Least height of the masthead light above the gunwale, power-driven vessel of 12 m to under 20 m, m (annex I). */
export const mastheadAboveGunwaleM = 2.5;

/** Least height of the masthead or all-round light above the side lights, vessel under 12 m, m (annex I). */
export const mastheadAboveSidesM = 1;

export interface HeightRule {
    readonly above: 'gunwale' | 'side-lights';
    readonly leastM: number;
}

/** How high the forward white light of a vessel under power is to stand; undefined from 20 m on, which is not judged. */
export function leastHeight(lengthM: number): HeightRule | undefined {
    if (lengthM >= 20 - 1e-9) {
        return undefined;
    }
    return lengthM >= 12 - 1e-9 ? { above: 'gunwale', leastM: mastheadAboveGunwaleM } : { above: 'side-lights', leastM: mastheadAboveSidesM };
}

/** Greatest arc of an all-round light that masts and gear may hide, rad (6 degrees, annex I; the anchor light excepted). */
export const greatestMaskedRad = 6 * Math.PI / 180;
