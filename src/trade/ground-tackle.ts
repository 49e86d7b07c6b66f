/**
 * Anchor, chain and rode.
 *
 * Masses of the main anchor by mean length are those of a code for small vessels in commercial use (MGN 280, Table 20.1,
 * 6 to 24 m, published). A sister code says that they are for anchors of high holding power (published). In the lesser
 * areas of operation the code accepts 90 % (published). Between lengths of the table mass is interpolated linearly.
 * Mean length is taken as the mean of hull and waterline length (from memory).
 *
 * Scope of 5 for chain and 7 for rope with chain, counted from the bow roller, is read in several anchoring guides
 * (published; practice). A chain is worn out at a loss of 10 % of its wire (practice; 12 % for ships, from memory).
 */

/** Mean length, m, against mass of the main anchor, kg. */
export const anchorTable: readonly (readonly [lengthM: number, massKg: number])[] = [
    [6, 8], [7, 9], [8, 10], [9, 11], [10, 13], [11, 15], [12, 18], [13, 21], [14, 24], [15, 27], [16, 30], [17, 34], [18, 38], [19, 42], [20, 47], [21, 52], [22, 57], [23, 62], [24, 68],
];

/** Mass of the main anchor for a mean length; undefined outside the table, 6 to 24 m. */
export function mainAnchorKg(meanLengthM: number): number | undefined {
    const above = anchorTable.findIndex(([length]) => length >= meanLengthM);
    const upper = anchorTable[above];
    const lower = anchorTable[Math.max(0, above - 1)];
    if (!upper || !lower || meanLengthM < (anchorTable[0]?.[0] ?? 0)) {
        return undefined;
    }
    return upper === lower ? upper[1] : lower[1] + (upper[1] - lower[1]) * (meanLengthM - lower[0]) / (upper[0] - lower[0]);
}

/** Share of the table's mass under which an anchor is too light. */
export const leastAnchorShare = 0.9;

export function isAnchorTooLight(massKg: number, tableKg: number): boolean {
    return massKg < leastAnchorShare * tableKg - 1e-9;
}

/** Mean of hull and waterline length. */
export function meanLengthM(hullM: number, waterlineM: number): number {
    return (hullM + waterlineM) / 2;
}

/** Least share of the hull's length that a waterline makes up; long overhangs come near it (practice). */
export const leastWaterlineShare = 0.7;

/** Share of the wire of a chain that is gone; undefined where no original is positive. */
export function chainLossShare(originalM: number, nowM: number): number | undefined {
    return originalM > 0 ? (originalM - nowM) / originalM : undefined;
}

export const chainWornShare = 0.1;

export type RodeKind = 'chain' | 'mixed' | 'rope';

/** Length of rode for each length of depth and bow height. */
export const scopeOf: Readonly<Record<RodeKind, number>> = { chain: 5, mixed: 7, rope: 7 };

/** Rode needed, scope × (depth + height of the bow roller above the water). */
export function rodeNeededM(kind: RodeKind, depthM: number, bowM: number): number {
    return scopeOf[kind] * (depthM + bowM);
}
