import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'inlet-overheated';

describe(id, () => {
    it.each([
        ['shore-inlet SI1 { browned: yes }', ['error SI1']], ['shore-cord SC1 { browned: yes }', ['error SC1']], ['shore-inlet SI1 { browned: no }', []],
        ['shore-inlet SI1 { warmed-to: 115 F  air-beside: 85 F }', []], ['shore-inlet SI1 { warmed-to: 116 F  air-beside: 85 F }', ['error SI1']],
        ['shore-inlet SI1 { warmed-to: 46.6 C  air-beside: 30 C }', []], ['shore-inlet SI1 { warmed-to: 46.7 C  air-beside: 30 C }', ['error SI1']],
        ['shore-inlet SI1 { warmed-to: 60 C }', ['hint SI1']], ['shore-inlet SI1 { warmed-to: 40 C }', []],
        ['shore-cord SC1 { rating: 30 A }\nmain-breaker MB1 { rating: 30 A }', []], ['shore-cord SC1 { rating: 30 A }\nmain-breaker MB1 { rating: 31 A }', ['error MB1 SC1']],
        ['shore-cord SC1 { rating: 30 A }\nshore-cord SC2\nmain-breaker MB1 { rating: 50 A }', []],
        ['shore-cord SC1 { rating: 30 A }\nbreaker CB1 { rating: 50 A }', []],
        ['shore-inlet SI1 { rating: 30 A  load: 24 A }', []], ['shore-inlet SI1 { rating: 30 A  load: 24.1 A }', ['warning SI1']],
        ['shore-inlet SI1 { rating: 30 A }\nconductor W1 { voltage: 120 V  load: 15 A }\nconductor W2 { voltage: 120 V  load: 12 A }', ['hint SI1']],
        ['shore-inlet SI1 { rating: 30 A }\nconductor W1 { voltage: 120 V  load: 15 A }\nconductor W2 { voltage: 12 V  load: 12 A }', []],
        ['shore-inlet SI1 { rating: 30 A }\nshore-inlet SI2 { rating: 30 A }\nconductor W1 { voltage: 120 V  load: 27 A }', []],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it('sums the loads on request', () => {
        expect(correctionsIn(id, 'shore-inlet SI1 { rating: 30 A }\nconductor W1 { voltage: 120 V  load: 15 A }\nconductor W2 { voltage: 120 V  load: 12 A }\n')).toEqual(['Record the sum of the loads, 27 A']);
    });
    it('is out of use when it has been hot, and otherwise a matter of upkeep', () => {
        expect(urgencies(id, 'shore-inlet SI1 { browned: yes }\n')).toEqual(['before-use']);
        expect(urgencies(id, 'shore-inlet SI1 { rating: 30 A  load: 28 A }\n')).toEqual(['in-upkeep']);
    });
    it('judges by the firm’s share, and says whose it is', () => {
        const text = 'shore-inlet SI1 { rating: 30 A  load: 25 A }\n';
        expect(summary(id, `yardsticks "Firm" { steady-shore-load: 90 % }\n${text}`)).toEqual([]);
        expect(raisedBy(id, text)[0]?.message).toContain('24 A (80 %, the usual limit)');
    });
    it('tells a rise in both degrees', () => {
        expect(raisedBy(id, 'shore-inlet SI1 { warmed-to: 125 F  air-beside: 85 F }\n')[0]?.message).toContain('40 F (22.2 K)');
    });
});
