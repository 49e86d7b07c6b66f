/**
 * Bilge pumps: what they move once lift, hose and voltage have taken their share, and how long a bank drives them.
 * That a pump moves about half the figure on its box is published seamanship advice, a rule of thumb; a maker's curve
 * at the real lift goes before it.
 */

export const ratedShare = 0.5;

export function usableFlowM3s(ratedM3s: number): number {
    return ratedM3s * ratedShare;
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
