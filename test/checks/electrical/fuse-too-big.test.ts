import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fuse-too-big';
const pair = (wire: string, guard: string) => `conductor W1 { ${wire} }\n${guard.replace('}', '  protects: W1 }')}\n`;

describe(id, () => {
    it.each([
        // 14 AWG of 75 C carries 20 A: 30 A under 50 V.
        ['gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 30 A }', []],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 30.1 A }', ['error FU1 W1']],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 49.9 V  in-engine-space: no', 'fuse FU1 { rating: 30 A }', []],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 50 V  in-engine-space: no', 'fuse FU1 { rating: 30 A }', ['error FU1 W1']],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 120 V  in-engine-space: no', 'breaker CB1 { rating: 20 A }', []],
        // 8 AWG of 60 C carries 55 A, and 60 A is the next standard rating.
        ['gauge: 8 AWG  insulation: 60 C  voltage: 120 V  in-engine-space: no', 'breaker CB1 { rating: 60 A }', []],
        ['gauge: 8 AWG  insulation: 60 C  voltage: 120 V  in-engine-space: no', 'breaker CB1 { rating: 61 A }', ['error CB1 W1']],
        // In an engine space 15 A, so 22.5 A.
        ['gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: yes', 'fuse FU1 { rating: 22.5 A }', []],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: yes', 'fuse FU1 { rating: 25 A }', ['error FU1 W1']],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 12 V', 'fuse FU1 { rating: 25 A }', ['hint FU1 W1']],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 12 V', 'fuse FU1 { rating: 22.5 A }', []],
        // Voltage not known: the wider limit, and asked where it would decide.
        ['gauge: 14 AWG  insulation: 75 C  in-engine-space: no', 'fuse FU1 { rating: 25 A }', ['hint FU1 W1']],
        ['gauge: 14 AWG  insulation: 75 C  in-engine-space: no', 'fuse FU1 { rating: 20 A }', []],
        ['gauge: 14 AWG  insulation: 75 C  in-engine-space: no', 'fuse FU1 { rating: 31 A }', ['error FU1 W1']],
        ['gauge: 14 AWG  insulation: 75 C  in-engine-space: no', 'main-breaker MB1 { rating: 25 A }', ['error MB1 W1']],
        // Insulation not known: advice to 67.5 A, the limit of the best.
        ['gauge: 14 AWG  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 31 A }', ['warning FU1 W1']],
        ['gauge: 14 AWG  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 68 A }', ['error FU1 W1']],
        // 2.5 mm2 of 70 C carries 25 A by ISO 10133.
        ['gauge: 2.5 mm2  insulation: 70 C  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 37.5 A }', []],
        ['gauge: 2.5 mm2  insulation: 70 C  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 40 A }', ['error FU1 W1']],
        ['insulation: 75 C  voltage: 12 V', 'fuse FU1 { rating: 300 A }', []],
        ['gauge: 14 AWG  insulation: 75 C  voltage: 12 V  purpose: cranking', 'fuse FU1 { rating: 300 A }', []],
    ])('%s, %s', (wire, guard, expected) => {
        expect(summary(id, pair(wire, guard))).toEqual(expected);
    });
    it('proposes a standard rating, and a whole number under the smallest', () => {
        expect(correctionsIn(id, pair('gauge: 12 AWG  insulation: 105 C  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 100 A }'))).toEqual(['Correct the rating to 60 A']);
        expect(correctionsIn(id, pair('gauge: 18 AWG  insulation: 60 C  voltage: 12 V  in-engine-space: yes', 'fuse FU1 { rating: 20 A }'))).toEqual(['Correct the rating to 8 A']);
    });
    it('is out of use where it is sure, and names the wire beside', () => {
        const text = pair('gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 35 A }');
        expect(urgencies(id, text)).toEqual(['before-use']);
        expect(urgencies(id, pair('gauge: 14 AWG  voltage: 12 V  in-engine-space: no', 'fuse FU1 { rating: 35 A }'))).toEqual(['in-upkeep']);
        expect(raisedBy(id, text)[0]?.figures).toEqual({ rating: { value: 35, unit: 'A' }, limit: { value: 30, unit: 'A' }, allowed: { value: 20, unit: 'A' } });
    });
    it('leaves a wire alone that a fitting fuse guards before', () => {
        const wire = 'conductor W1 { gauge: 14 AWG  insulation: 75 C  voltage: 12 V  in-engine-space: no }\n';
        const two = (first: string, second: string) => `${wire}fuse FU1 { rating: 15 A  protects: W1  ${first} }\nfuse FU2 { rating: 35 A  protects: W1  ${second} }\n`;
        expect(summary(id, two('distance: 4 in', 'distance: 6 in'))).toEqual([]);
        expect(summary(id, two('distance: 6 in', 'distance: 4 in'))).toEqual(['error FU2 W1']);
        expect(summary(id, two('', ''))).toEqual([]);
    });
});
