/**
 * Spread of compression between the cylinders of an engine, (highest - lowest) / highest. Over 10 % calls for a closer
 * look, over 25 % is a fault (two public engine pages, published); the maker's least pressure goes before both. All
 * cylinders are read in one state, cold or hot.
 */

export const spreadWatchShare = 0.1;
export const spreadFaultShare = 0.25;

/** Share by which the lowest lies under the highest; undefined with fewer than two readings or none positive. */
export function cylinderSpread(pressuresPa: readonly number[]): number | undefined {
    const highest = Math.max(...pressuresPa);
    return pressuresPa.length < 2 || !(highest > 0) ? undefined : (highest - Math.min(...pressuresPa)) / highest;
}
