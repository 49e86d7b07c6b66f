import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountsInText, numberFromWords, numberInWords } from '../../src/trade/number-words.js';

const numbers = fc.oneof(fc.integer({ min: 0, max: 999_999_999_999 }), fc.integer({ min: 0, max: 2000 }), fc.integer({ min: 0, max: 1000 }).map(x => x * 500));

describe('numbers in words', () => {
    it('go there and back', () => {
        fc.assert(fc.property(numbers, n => { expect(numberFromWords(numberInWords(n) ?? '')).toBe(n); }), { numRuns: 2000 });
    });
    it('do so without hyphens or and, and in capitals', () => {
        fc.assert(fc.property(numbers, n => {
            const words = numberInWords(n) ?? '';
            expect(numberFromWords(words.replaceAll('-', ' '))).toBe(n);
            expect(numberFromWords(words.replaceAll(' and ', ' '))).toBe(n);
            expect(numberFromWords(words.toUpperCase())).toBe(n);
        }), { numRuns: 1000 });
    });
    it('are found in a sentence with their currency', () => {
        fc.assert(fc.property(numbers, n => {
            const found = amountsInText(`We hold that it is ${numberInWords(n) ?? ''} US dollars, no more.`);
            expect(found.map(({ amount, currencies }) => [amount, currencies])).toEqual([[n, ['USD']]]);
        }));
    });
    it('and in figures, parted by commas or not, before or behind the currency', () => {
        fc.assert(fc.property(fc.integer({ min: 0, max: 999_999_999 }), n => {
            const parted = String(n).replace(/\B(?=(\d{3})+$)/g, ',');
            for (const text of [`at ${n} USD.`, `at ${parted} USD.`, `at USD ${parted}.`, `at US$${parted}.`]) {
                expect(amountsInText(text).map(({ amount, currencies }) => [amount, currencies])).toEqual([[n, ['USD']]]);
            }
        }));
    });
    it('never fail on any text, and stay within it', () => {
        fc.assert(fc.property(fc.string({ maxLength: 80 }), text => {
            for (const { start, end } of amountsInText(text)) {
                expect(start >= 0 && end > start && end <= text.length).toBe(true);
            }
            numberFromWords(text);
        }));
    });
    it('are none outside what is said', () => {
        expect([numberInWords(-1), numberInWords(1e12), numberInWords(1.5), numberFromWords(''), numberFromWords('12'), numberFromWords('hundred thousand and')]).toEqual([undefined, undefined, undefined, undefined, undefined, undefined]);
    });
});
