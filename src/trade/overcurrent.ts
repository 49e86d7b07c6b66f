/**
 * Fuses and breakers: how large, and how near to the source. 33 CFR 183.455 (published); 72 in from a battery post is
 * 183.460(a) from memory and ABYC E-11 second-hand. Starter feeds are exempt. Binds builders of boats with gasoline
 * engines; elsewhere a yardstick.
 */

/** Standard ratings, A (NFPA 70, 240.6, from memory). */
const standardA: readonly number[] = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600];

/**
 * Largest rating, A, for a conductor that may carry `allowableA`: under 50 V 150 % of it; at 50 V and over its own
 * value, or the next standard rating where that is not over 150 %.
 */
export function overcurrentLimitA({ allowableA, systemV }: { readonly allowableA: number; readonly systemV: number }): number {
    if (systemV < 50) {
        return 1.5 * allowableA;
    }
    const next = standardA.find(rating => rating >= allowableA - 1e-9);
    return next !== undefined && next <= 1.5 * allowableA + 1e-9 ? next : allowableA;
}

/** The largest standard rating within a limit, to propose; undefined under 15 A, where fuses come in many sizes. */
export function standardRatingWithin(limitA: number): number | undefined {
    return standardA.findLast(rating => rating <= limitA + 1e-9);
}

export interface OvercurrentPlace {
    /** In a sheath, conduit or enclosure the whole way from the source to the device. */
    readonly isSheathed: boolean;
    /** Fed straight from a battery post. */
    readonly isAtBattery: boolean;
}

/** Greatest length of wire, m, from the source to its fuse or breaker: 7 in, 40 in sheathed, 72 in from a battery post. */
export function overcurrentReachM({ isSheathed, isAtBattery }: OvercurrentPlace): number {
    return (isAtBattery ? 72 : isSheathed ? 40 : 7) * 0.0254;
}
