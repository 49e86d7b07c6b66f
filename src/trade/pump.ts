/**
 * Bilge pumps: what they move once lift, hose and voltage have taken their share, and how long a bank drives them.
 *
 * That a pump moves about half the figure on its box is published seamanship advice, a rule of thumb; a flow measured,
 * or read from the maker's curve at the real lift, goes before it. So does an estimate from the lift at which the maker
 * says the pump moves nothing, with a curve of the usual shape of a centrifugal pump.
 */
import { gravityMs2 } from './orifice-inflow.js';

/** Share of its rating that a pump moves where nothing else is known (published advice; firms set their own). */
export const ratedShare = 0.5;

export function usableFlowM3s(ratedM3s: number, share = ratedShare): number {
    return ratedM3s * share;
}

export interface Discharge {
    /** Flow at no lift, by the maker. */
    readonly ratedM3s: number;
    /** Lift at which it moves nothing, by the maker. */
    readonly headM: number;
    readonly liftM: number;
    /** Bore and length of the hose, where its friction counts. */
    readonly hose?: { readonly boreM: number; readonly lengthM: number };
    /** Voltage at the pump as a share of its nominal voltage. */
    readonly voltageShare?: number;
}

/** Friction factor of smooth-walled hose at the flow of bilge pumps, 0.02 to 0.04 (handbooks, from memory; chosen in the middle). */
export const frictionFactor = 0.03;

/**
 * Estimated flow at a lift, m3/s; 0 from the lift on at which the pump moves nothing.
 *
 * Pump: H = H0 s^2 (1 - (Q / (Q0 s))^2), with the voltage share s by the affinity laws (a parabola through the maker's
 * two ends, from memory of textbooks). Hose: H = lift + (f L / D + 1) 8 Q^2 / (pi^2 g D^4), Darcy and Weisbach, with
 * the velocity lost at the outlet. Both quadratic, so Q = sqrt((H0 s^2 - lift) / (H0 / Q0^2 + k)). Bends, check valves
 * and ribbed hose lessen it further; it does not hold for diaphragm pumps, whose flow hardly falls with lift.
 */
export function flowAtLiftM3s({ ratedM3s, headM, liftM, hose, voltageShare = 1 }: Discharge): number {
    const left = headM * voltageShare ** 2 - Math.max(0, liftM);
    const resistance = hose ? (frictionFactor * hose.lengthM / hose.boreM + 1) * 8 / (Math.PI ** 2 * gravityMs2 * hose.boreM ** 4) : 0;
    return left <= 0 || ratedM3s <= 0 ? 0 : Math.sqrt(left / (headM / ratedM3s ** 2 + resistance));
}

export interface Endurance {
    readonly bankC: number;
    /** Share of the bank that may be used: 0.5 for lead, 0.8 for lithium (practice). */
    readonly usableShare: number;
    readonly currentA: number;
    /** Share of the time that the pump runs. */
    readonly duty: number;
}

export function enduranceS({ bankC, usableShare, currentA, duty }: Endurance): number {
    return bankC * usableShare / (currentA * duty);
}

/** Share of the time that a pump runs to keep up with a steady leak; 1 where it does not keep up. */
export function dutyOf({ leakM3s, pumpM3s }: { readonly leakM3s: number; readonly pumpM3s: number }): number {
    return pumpM3s <= 0 ? 1 : Math.min(1, Math.max(0, leakM3s) / pumpM3s);
}
