/**
 * Wet exhaust: heights and temperatures.
 *
 * The water is let in about 12 in above the loaded waterline, else through a loop with an air valve whose top stands
 * 18 in above it, and 8 in above the heeled one in sail (trade press and an engine maker's handbook; makers quote 6 to
 * 13 in, and the engine's own manual goes before). Bare parts over 200 F are to be guarded (ABYC P-1, secondary). Two
 * sides at like engine speed keep within 20 F (practice).
 */

/** Least height of the top of a vented loop over the loaded waterline, m: 18 in. */
export const leastLoopM = 18 * 0.0254;
/** The same over the heeled waterline, m: 8 in. */
export const leastLoopHeeledM = 8 * 0.0254;

/** Heights are measured to a millimeter at best: 18 in and 457 mm are one height. */
export const heightToleranceM = 0.0005;

/** 200 F, K: skin of a wet hose that is not marked for more, and of bare parts within reach. */
export const hotK = (200 - 32) / 1.8 + 273.15;

/** Difference between two sides over which one of them is odd, K: 20 F. */
export const sidesApartK = 20 / 1.8;

/** Engine speeds that count as like: within 5 %. */
export function isLikeRotation(a: number, b: number): boolean {
    return Math.abs(a - b) <= 0.05 * Math.max(a, b) + 1e-9;
}

/** Whether a loop stands high enough by the heights that are known; undefined where neither is. */
export function isLoopHighEnough(aboveWaterlineM: number | undefined, aboveHeeledM: number | undefined): boolean | undefined {
    const rest = aboveWaterlineM === undefined ? undefined : aboveWaterlineM >= leastLoopM - heightToleranceM;
    const heeled = aboveHeeledM === undefined ? undefined : aboveHeeledM >= leastLoopHeeledM - heightToleranceM;
    return rest === undefined && heeled === undefined ? undefined : rest !== false && heeled !== false;
}
