import { describe, expect, it } from 'vitest';
import { correctionsIn, summary, urgencies } from '../check-text.js';

const id = 'polarity-or-earth';

describe(`${id}: outlets`, () => {
    it.each([
        ['outlet O1 { polarity: reversed }', ['error O1']], ['outlet O1 { polarity: right }', []], ['outlet O1 { polarity: not-tried }', []],
        ['outlet O1 { earth-resistance: 1 ohm }', []], ['outlet O1 { earth-resistance: 1.01 ohm }', ['error O1']], ['outlet O1 { earth-resistance: 900 mohm }', []],
        ['outlet O1 { polarity: reversed  earth-resistance: 5 ohm }', ['error O1', 'error O1']],
        ['outlet O1 { wet-place: yes  leakage-protected: no }', ['error O1']], ['outlet O1 { wet-place: yes }', []], ['outlet O1 { leakage-protected: no }', []],
        ['outlet O1 { wet-place: yes  trip-current: 6 mA }', []], ['outlet O1 { wet-place: yes  trip-current: 28 mA }', ['error O1']],
        ['shore-inlet SI1 { voltage: 230 V }\noutlet O1 { wet-place: yes  trip-current: 28 mA }', []],
        ['shore-inlet SI1 { voltage: 120 V }\noutlet O1 { wet-place: yes  leakage-protected: no }', ['error O1']],
        ['outlet O1\nreading M1 {\n    measures: polarity\n    row "Head": O1, reversed, 0.2 ohm\n}', ['error O1']],
        ['reading M1 {\n    measures: polarity\n    row "Head": right, 2 ohm\n}', ['error ']],
        ['outlet O1 { wet-place: yes }\nreading M1 {\n    measures: polarity\n    row "Head": O1, right, 0.2 ohm, 25 mA\n}', ['error O1']],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it('is due at once, a wet outlet within two weeks', () => {
        expect(urgencies(id, 'outlet O1 { polarity: reversed }\n')).toEqual(['at-once']);
        expect(urgencies(id, 'outlet O1 { wet-place: yes  leakage-protected: no }\n')).toEqual(['within-days']);
    });
});

describe(`${id}: neutral`, () => {
    const joined = 'shore-inlet SI1 { neutral-joined-aboard: joined }\n';
    it.each([
        [joined, ['error SI1']], ['shore-inlet SI1 { neutral-joined-aboard: apart }\n', []],
        [`${joined}transformer T1 { neutral-bonded: yes }\n`, []], [`${joined}transformer T1 { neutral-bonded: no }\n`, ['error SI1']], [`${joined}transformer T1\n`, ['hint T1']],
        ['shore-inlet SI1\ninverter IN1 { neutral-joined: always  passes-shore-power: yes }\n', ['error IN1']],
        ['shore-inlet SI1\ninverter IN1 { neutral-joined: always }\n', ['hint IN1']],
        ['shore-inlet SI1\ninverter IN1 { neutral-joined: never  passes-shore-power: yes }\n', []],
        ['inverter IN1 { neutral-joined: always  passes-shore-power: yes }\n', ['error IN1']],
    ])('%s', (text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('offers to record the bond of the transformer that is there', () => {
        expect(correctionsIn(id, `${joined}transformer T1 { neutral-bonded: no }\n`)).toEqual(['Record that the neutral is bonded at an isolation transformer']);
    });
});
