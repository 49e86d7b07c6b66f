import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjustedPrice, grossShare, netShare, plainMean, roundedTo, signAgrees, spreadShare, weightedMean, weightedSum, weightsMakeUpOne } from '../../src/trade/comparables.js';

const price = fc.integer({ min: 1000, max: 5_000_000 });
const steps = fc.array(fc.integer({ min: -200_000, max: 200_000 }), { maxLength: 8 });
const rows = fc.array(fc.record({ adjusted: price, weight: fc.double({ min: 0.01, max: 1, noNaN: true }) }), { minLength: 1, maxLength: 6 });

describe('the ladder of comparables', () => {
    it('adjusting there and back gives the price', () => {
        fc.assert(fc.property(price, steps, (p, s) => { expect(adjustedPrice(adjustedPrice(p, s), s.map(x => -x))).toBe(p); }));
    });
    it('does not hang on the order of the adjustments', () => {
        fc.assert(fc.property(price, steps, (p, s) => { expect(adjustedPrice(p, s.toReversed())).toBe(adjustedPrice(p, s)); }));
    });
    it('net is never over gross, and both are shares of the price', () => {
        fc.assert(fc.property(price, steps, (p, s) => {
            const [gross, net] = [grossShare(p, s) ?? Number.NaN, netShare(p, s) ?? Number.NaN];
            expect(net).toBeLessThanOrEqual(gross + 1e-12);
            expect(net).toBeCloseTo(Math.abs(adjustedPrice(p, s) - p) / p, 9);
        }));
    });
    it('shares do not hang on the currency', () => {
        fc.assert(fc.property(price, steps, fc.integer({ min: 1, max: 100 }), (p, s, rate) => { expect(grossShare(p * rate, s.map(x => x * rate))).toBeCloseTo(grossShare(p, s) ?? 0, 9); }));
    });
    it('the weighted mean lies within the prices', () => {
        fc.assert(fc.property(rows, r => {
            const mean = weightedMean(r) ?? Number.NaN;
            expect(mean).toBeGreaterThanOrEqual(Math.min(...r.map(x => x.adjusted)) - 1e-6);
            expect(mean).toBeLessThanOrEqual(Math.max(...r.map(x => x.adjusted)) + 1e-6);
        }));
    });
    it('equal weights that make up 1 give the plain mean', () => {
        fc.assert(fc.property(fc.array(price, { minLength: 1, maxLength: 6 }), prices => {
            const equal = prices.map(adjusted => ({ adjusted, weight: 1 / prices.length }));
            expect(weightsMakeUpOne(equal.map(x => x.weight))).toBe(true);
            expect(weightedSum(equal)).toBeCloseTo(plainMean(prices) ?? 0, 4);
        }));
    });
    it('rounding moves by at most half a step, and is stable', () => {
        fc.assert(fc.property(price, fc.constantFrom(500, 1000), (p, step) => {
            const rounded = roundedTo(p, step);
            expect(Math.abs(rounded - p)).toBeLessThanOrEqual(step / 2);
            expect(roundedTo(rounded, step)).toBe(rounded);
        }));
    });
    it('spread is none of equal prices, and grows with the greatest', () => {
        fc.assert(fc.property(price, fc.integer({ min: 1, max: 100_000 }), (p, more) => {
            expect(spreadShare([p, p])).toBe(0);
            expect(spreadShare([p, p + more + 1])).toBeGreaterThan(spreadShare([p, p + more]) ?? 1);
        }));
    });
    it('a sign and its opposite agree with opposite standings', () => {
        fc.assert(fc.property(fc.integer({ min: -1000, max: 1000 }), amount => { expect(signAgrees(amount, 'better')).toBe(signAgrees(-amount, 'worse')); }));
    });
    it('says nothing where nothing is known', () => {
        expect([grossShare(0, [1]), netShare(0, [1]), weightedMean([]), plainMean([]), spreadShare([1])]).toEqual([undefined, undefined, undefined, undefined, undefined]);
    });
});
