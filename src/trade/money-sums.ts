/**
 * Sums of money that come out to the cent: amounts are taken as whole hundredths before they are added, and a share of
 * an amount is rounded to the cent once, a half away from zero, so that a column as printed adds up to its total.
 */

/** An amount in whole hundredths of its unit, a half away from zero. */
export function centsOf(amount: number): number {
    const size = Math.abs(amount);
    // A figure such as 1.005 is held a little under itself; the hair added is far smaller than any written figure.
    return Math.sign(amount) * Math.round(size * 100 + Math.min(1e-6, size * 1e-9)) + 0;
}

export function sumOf(amounts: readonly number[]): number {
    return amounts.reduce((sum, amount) => sum + centsOf(amount), 0) / 100;
}

/** Decimals of a share that count: 12.3456 % is exact. */
const shareScale = 1_000_000;

/** A share of an amount, to the cent; the share counts to six decimals. */
export function shareOf(amount: number, share: number): number {
    const product = BigInt(centsOf(amount)) * BigInt(Math.round(share * shareScale));
    const scale = BigInt(shareScale);
    const [size, half] = [product < 0n ? -product : product, scale / 2n];
    return (product < 0n ? -1 : 1) * Number((size + half) / scale) / 100 + 0;
}

export interface CostRange {
    readonly low: number;
    readonly high: number;
}

/** Ends added to ends. */
export function sumOfRanges(ranges: readonly CostRange[]): CostRange {
    return { low: sumOf(ranges.map(({ low }) => low)), high: sumOf(ranges.map(({ high }) => high)) };
}

/** A cost less what betters the vessel: lower end from lower end, upper from upper, for both grow with the same work. */
export function lessBetterment(cost: CostRange, betterment: CostRange): CostRange {
    return { low: sumOf([cost.low, -betterment.low]), high: sumOf([cost.high, -betterment.high]) };
}
