import fc from 'fast-check';
import { bignumber } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { roundingBetween, weightedParts } from '../../src/trade/comparables.js';
import { centsOf, lessBetterment, shareOf, sumOf, sumOfRanges } from '../../src/trade/money-sums.js';

/** Amounts as people write them: up to two decimals. */
const amount = fc.integer({ min: -500_000_000, max: 500_000_000 }).map(cents => cents / 100);
const share = fc.integer({ min: 0, max: 1_000_000 }).map(millionths => millionths / 1_000_000);

/** Rounding mode of mathjs's decimals: a half away from zero. */
const halfUp = 4;

// mathjs reckons in decimals and is the outside source of the values below.
describe('sums of money', () => {
    it('are those of decimal arithmetic', () => {
        fc.assert(fc.property(fc.array(amount, { maxLength: 30 }), amounts => {
            expect(sumOf(amounts)).toBe(amounts.reduce((sum, each) => sum.plus(each), bignumber(0)).toNumber() + 0);
        }), { numRuns: 500 });
    });
    it('a share is that of decimal arithmetic, rounded to the cent with a half away from zero', () => {
        fc.assert(fc.property(amount, share, (each, part) => {
            expect(shareOf(each, part)).toBe(bignumber(each).times(part).toDecimalPlaces(2, halfUp).toNumber() + 0);
        }), { numRuns: 2000 });
    });
    it('the parts of a weighted figure add up to it as they are printed', () => {
        fc.assert(fc.property(fc.array(fc.record({ adjusted: amount, weight: share }), { minLength: 1, maxLength: 8 }), rows => {
            const parts = weightedParts(rows);
            expect(sumOf(parts)).toBe(parts.reduce((sum, part) => sum.plus(part.toFixed(2)), bignumber(0)).toNumber() + 0);
        }));
    });
    it('hold where a sum of floating figures does not', () => {
        expect(0.1 + 0.2 === 0.3).toBe(false);
        expect(sumOf([0.1, 0.2])).toBe(0.3);
        // By hand: 1.005 is 100.5 cents, a half away from zero; 67.25 x 3.3 % = 2.21925; 0.35 of 30 cents = 10.5 cents.
        expect([centsOf(1.005), centsOf(-1.005), shareOf(67.25, 0.033), shareOf(0.3, 0.35)]).toEqual([101, -101, 2.22, 0.11]);
    });
    it('ranges add end by end, and betterment comes off end by end', () => {
        // By hand.
        expect(sumOfRanges([{ low: 10, high: 20 }, { low: 0.1, high: 0.2 }])).toEqual({ low: 10.1, high: 20.2 });
        expect(lessBetterment({ low: 4200, high: 5600 }, { low: 350, high: 500 })).toEqual({ low: 3850, high: 5100 });
    });
});

describe('rounding between a figure and an opinion', () => {
    // By hand: the nearest thousand to 125,661.75 is 126,000; the nearest five thousand to 276,146 is 275,000.
    it.each([[125_661.75, 126_000, 1000], [276_146, 275_000, 5000], [84_470, 84_500, 100], [84_440, 84_500, 500], [276_146, 270_000, undefined], [84_500, 80_000, undefined], [900, 1000, undefined]])('%d to %d: %s', (figure, opinion, step) => {
        expect(roundingBetween(figure, opinion)).toBe(step);
    });
    it('never moves by more than one part in a hundred', () => {
        fc.assert(fc.property(fc.integer({ min: 1000, max: 5_000_000 }), fc.integer({ min: 10, max: 50_000 }).map(x => x * 100), (figure, opinion) => {
            if (roundingBetween(figure, opinion) !== undefined) {
                expect(Math.abs(figure - opinion)).toBeLessThanOrEqual(figure * 0.01 + 1e-6);
            }
        }), { numRuns: 2000 });
    });
});
