import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'leakage-current';

describe(`${id}: leakage`, () => {
    it.each([
        ['9.9 mA', []], ['10 mA', ['warning SC1']], ['30 mA', ['warning SC1']], ['30.1 mA', ['error SC1']], ['0.031 A', ['error SC1']], ['0 mA', []],
    ])('%s', (leakage, expected) => {
        expect(summary(id, `shore-cord SC1 { leakage: ${leakage} }\n`)).toEqual(expected);
    });
    it('is due at once over 30 mA', () => {
        expect(urgencies(id, 'shore-cord SC1 { leakage: 31 mA }\n')).toEqual(['at-once']);
        expect(urgencies(id, 'shore-cord SC1 { leakage: 20 mA }\n')).toEqual(['within-days']);
    });
    it('takes the worst row, names its loads, and takes rows without a cord', () => {
        const table = (rows: string) => `shore-cord SC1\nreading M1 {\n    measures: leakage\n${rows}}\n`;
        const problems = raisedBy(id, table('    row "One": SC1, 12 mA, "charger"\n    row "Two": SC1, 40 mA, "water heater"\n'));
        expect(problems).toHaveLength(1);
        expect(problems[0]?.message).toContain('water heater');
        expect(summary(id, table('    row "Dock side": 40 mA\n'))).toEqual(['error ']);
        expect(summary(id, 'shore-cord SC1\nreading M1 on SC1 {\n    measures: leakage\n    row "Dock side": 40 mA\n}\n')).toEqual(['error SC1']);
    });
});

describe(`${id}: insulation`, () => {
    it.each([
        ['conductor W1 { voltage: 120 V  insulation-resistance: 0.99 megohm  test-voltage: 500 V }', ['error W1']],
        ['conductor W1 { voltage: 120 V  insulation-resistance: 990 kohm }', ['error W1']],
        ['conductor W1 { voltage: 120 V  insulation-resistance: 1 megohm }', []],
        ['conductor W1 { voltage: 120 V  insulation-resistance: 0.5 megohm  test-voltage: 1000 V }', ['hint W1']],
        ['conductor W1 { insulation-resistance: 0.5 megohm }', ['hint W1']],
        ['conductor W1 { insulation-resistance: 0.5 megohm  test-voltage: 500 V }', ['error W1']],
        ['conductor W1 { voltage: 24 V  insulation-resistance: 0.5 megohm  test-voltage: 500 V }', []],
        ['shore-inlet SI1 { insulation-resistance: 0.5 megohm }', ['error SI1']],
        ['reading M1 {\n    measures: insulation\n    test-voltage: 500 V\n    row "Water heater": 0.5 megohm\n}', ['error ']],
        ['breaker CB1\nreading M1 {\n    measures: insulation\n    row "Water heater": CB1, 0.5 megohm\n}', ['error CB1']],
        ['breaker CB1\nreading M1 {\n    measures: insulation\n    electronics-disconnected: no\n    row "Water heater": CB1, 0.5 megohm\n}', ['hint CB1']],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it('keeps the circuit out of use', () => {
        expect(urgencies(id, 'conductor W1 { voltage: 120 V  insulation-resistance: 0.5 megohm }\n')).toEqual(['before-use']);
    });
});
