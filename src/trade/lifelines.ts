/**
 * Height of lifelines and spacing of their posts. 24 in is asked by ABYC H-41 (from memory); offshore racing rules read
 * 600 mm (24 in) and 2.2 m, and 450 mm on boats under 8.5 m (secondary, quoted in an owners' forum). So a height written in
 * millimeters is held against 600 mm, one written in inches against 24 in.
 */

export const leastHeightIn = 24;
export const leastHeightMetricM = 0.6;
export const leastHeightSmallM = 0.45;
export const smallBoatM = 8.5;
export const widestSpacingM = 2.2;

/** Least height of the top wire, by the units it was measured in and the length of the boat where that is known. */
export function leastLifelineM(isMetric: boolean, lengthM: number | undefined): number {
    return lengthM !== undefined && lengthM < smallBoatM - 1e-9 ? leastHeightSmallM : isMetric ? leastHeightMetricM : leastHeightIn * 0.0254;
}
