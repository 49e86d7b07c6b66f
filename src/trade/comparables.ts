/**
 * The ladder of a valuation by comparison: price, adjustments toward the vessel surveyed, adjusted price, weighted
 * mean, rounding and spread. Amounts are in one currency throughout. The arithmetic is computed; the habit of weighing
 * adjustments by their gross and net share, of rounding to 500 or 1000 and of reconciling by weight is practice.
 */
import { shareOf, sumOf } from './money-sums.js';

/** A comparable better than the vessel surveyed is adjusted down, a worse one up (practice). */
export type Standing = 'better' | 'worse';

/** Adjusted price: price + sum of adjustments, each with its sign, to the cent. */
export function adjustedPrice(price: number, adjustments: readonly number[]): number {
    return sumOf([price, ...adjustments]);
}

/** Gross share: sum of the adjustments without their signs over the price, 0 upwards. Undefined for a price of zero or less. */
export function grossShare(price: number, adjustments: readonly number[]): number | undefined {
    return price > 0 ? adjustments.reduce((sum, adjustment) => sum + Math.abs(adjustment), 0) / price : undefined;
}

/** Net share: size of the sum of the adjustments over the price. Never over the gross share. Undefined for a price of zero or less. */
export function netShare(price: number, adjustments: readonly number[]): number | undefined {
    return price > 0 ? Math.abs(adjustments.reduce((sum, adjustment) => sum + adjustment, 0)) / price : undefined;
}

/** Whether the sign of an adjustment agrees with how the comparable stands to the vessel surveyed; none is no contradiction. */
export function signAgrees(adjustment: number, standing: Standing): boolean {
    return standing === 'better' ? adjustment <= 0 : adjustment >= 0;
}

export interface Weighed {
    readonly adjusted: number;
    readonly weight: number;
}

/** Sum of the weights, which make up 1. */
export function weightSum(weights: readonly number[]): number {
    return weights.reduce((sum, weight) => sum + weight, 0);
}

/** What each price adds to the weighted figure, to the cent, so that the column as printed adds up. */
export function weightedParts(rows: readonly Weighed[]): number[] {
    return rows.map(({ adjusted, weight }) => shareOf(adjusted, weight));
}

/** How far the weights may be from making up 1, for weights of thirds written with two decimals (chosen). */
export const weightTolerance = 0.01;

export function weightsMakeUpOne(weights: readonly number[]): boolean {
    return Math.abs(weightSum(weights) - 1) <= weightTolerance + 1e-9;
}

/** Sum of adjusted price times weight: the weighted mean where the weights make up 1. */
export function weightedSum(rows: readonly Weighed[]): number {
    return rows.reduce((sum, { adjusted, weight }) => sum + adjusted * weight, 0);
}

/** Weighted mean = sum of adjusted price times weight, over the sum of the weights. Undefined without weights. */
export function weightedMean(rows: readonly Weighed[]): number | undefined {
    const weights = weightSum(rows.map(row => row.weight));
    return weights > 0 ? weightedSum(rows) / weights : undefined;
}

export function plainMean(amounts: readonly number[]): number | undefined {
    return amounts.length === 0 ? undefined : amounts.reduce((sum, amount) => sum + amount, 0) / amounts.length;
}

/** The nearest multiple of a step; a half goes up. Opinions of value are rounded to 500 or 1000 (practice). */
export function roundedTo(amount: number, step: number): number {
    return Math.round(amount / step) * step;
}

/** Step an opinion is rounded to: 500 up to 100 000, 1000 from there on (500 or 1000 practice, the bound chosen). */
export function roundingStep(amount: number): number {
    return amount < 100_000 ? 500 : 1000;
}

/** Spread = (greatest - least) over the mean of the adjusted prices. Undefined for fewer than two, or a mean of zero or less. */
export function spreadShare(adjusted: readonly number[]): number | undefined {
    const mean = plainMean(adjusted);
    return adjusted.length < 2 || mean === undefined || mean <= 0 ? undefined : (Math.max(...adjusted) - Math.min(...adjusted)) / mean;
}

/** Steps that figures are rounded to, and how large a step may be beside the figure to pass for rounding (chosen). */
const steps = [100, 500, 1000, 5000, 10_000, 50_000, 100_000];
const mostOfFigure = 0.02;

/** The least step by which an opinion is the figure rounded; undefined where it differs by more than rounding. */
export function roundingBetween(figure: number, opinion: number): number | undefined {
    return steps.find(step => step <= Math.abs(figure) * mostOfFigure && roundedTo(figure, step) === opinion);
}
