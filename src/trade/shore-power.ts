/**
 * Shore power: leakage, insulation, earth and heat. The trip level and time of a leakage breaker, 30 mA and 100 ms, and
 * the isolation transformer within 10 ft that stands for it are ABYC E-11, read second-hand; the other limits are
 * practice, and the level of an outlet's own device is from memory.
 */

/** Highest trip level of a leakage breaker, A, and its longest time, s. */
export const leakageTripA = 0.03;
export const leakageTripS = 0.1;

/** Leakage of the whole boat, A, from which its source is looked for (practice). */
export const leakageTraceA = 0.01;

/**
 * First year of building for which a missing leakage breaker is called a breach (chosen). The edition of 2012 asks for
 * one; from which year earlier editions did is not settled here.
 */
export const leakageBreakerSinceYear = 2013;

/** An isolation transformer this near to the inlet, m, stands for a leakage breaker: 10 ft. */
export const transformerReachM = 3.048;

/** Highest level, A, at which a device of the 5 mA class trips (from memory: 4 to 6 mA). */
export const outletTripA = 0.006;

/** Least insulation of a circuit to earth, ohm, and the voltage it is tested with, V (practice). */
export const leastInsulationOhm = 1e6;
export const insulationTestV = 500;

/** Highest resistance of an outlet's earth, ohm (practice). */
export const mostEarthOhm = 1;

/** Greatest rise over the air, K, of an inlet or cord end under load: 30 F (practice). */
export const mostRiseK = 30 / 1.8;

const epsilon = 1e-9;

/** Leakage by a clamp on the whole cord, A: over 30 mA a fault, from 10 mA on to be traced. */
export function leakageVerdict(currentA: number): 'fault' | 'trace' | 'none' {
    return currentA > leakageTripA + epsilon ? 'fault' : currentA >= leakageTraceA - epsilon ? 'trace' : 'none';
}

/** Whether a leakage breaker trips soon enough at little enough; what is not measured counts as right. */
export function tripsInTime({ tripA, tripS }: { readonly tripA?: number; readonly tripS?: number }): boolean {
    return (tripA ?? 0) <= leakageTripA + epsilon && (tripS ?? 0) <= leakageTripS + epsilon;
}

/** Rise of a contact over the air beside it, K. */
export function riseK({ hotK, airK }: { readonly hotK: number; readonly airK: number }): number {
    return hotK - airK;
}

export function isOverheated(rise: number): boolean {
    return rise > mostRiseK + 1e-6;
}

/** Steady load as a share of a rating. */
export function loadShare({ loadA, ratingA }: { readonly loadA: number; readonly ratingA: number }): number {
    return loadA / ratingA;
}
