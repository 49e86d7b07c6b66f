/** What is left of an anode, and whether it lasts until the next haul-out at the rate it has gone (calculation). */

/** Share left by mass; undefined where the original mass is not positive. */
export function anodeLeft(originalKg: number, presentKg: number): number | undefined {
    return originalKg > 0 ? Math.min(1, Math.max(0, presentKg / originalKg)) : undefined;
}

/** Share left after further months at the rate so far. */
export function anodeLeftAfter(left: number, monthsFitted: number, monthsAhead: number): number {
    return monthsFitted <= 0 ? left : Math.max(0, left - (1 - left) / monthsFitted * monthsAhead);
}
