import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'gas-pressure-falls';
const test = (facts: string) => `gas-test G1 { ${facts} }\n`;

describe('a test of tightness', () => {
    it.each([
        ['start-pressure: 142 psi  end-pressure: 142 psi  duration: 3 min', []], ['start-pressure: 142 psi  end-pressure: 142 psi  duration: 180 s', []], ['start-pressure: 142 psi  end-pressure: 142 psi  duration: 179 s', ['warning G1']],
        ['start-pressure: 142 psi  end-pressure: 141.9 psi  duration: 10 min', ['error G1']], ['start-pressure: 142 psi  end-pressure: 100 psi  duration: 1 min', ['error G1']], ['start-pressure: 142 psi  end-pressure: 100 psi', ['error G1']],
        ['start-pressure: 30 mbar  end-pressure: 29 mbar  duration: 5 min', ['error G1']], ['start-pressure: 11 inWC  end-pressure: 11 inWC  duration: 5 min', []],
        ['start-pressure: 142 psi  end-pressure: 145 psi  duration: 5 min', []], ['start-pressure: 142 psi  end-pressure: 142 psi', ['hint G1']], ['start-pressure: 142 psi', ['hint G1']], ['end-pressure: 142 psi', ['hint G1']],
        ['duration: 5 min', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, test(facts))).toEqual(expected);
    });
    it('compares pressures of two units to a hundredth', () => {
        expect(summary(id, test('start-pressure: 142 psi  end-pressure: 9.75 bar  duration: 5 min'))).toEqual([]); // 142 psi is 9.79 bar
        expect(summary(id, test('start-pressure: 142 psi  end-pressure: 9.6 bar  duration: 5 min'))).toEqual(['error G1']);
    });
});

describe('what is no test', () => {
    const held = 'start-pressure: 142 psi  end-pressure: 142 psi  duration: 5 min';
    it.each([['cylinder-shut: no', 'Record that the cylinder was shut'], ['appliances-shut: no', 'Record that the appliances were shut'], ['line-charged: no', 'Record that the line was charged']] as const)('%s', (state, correction) => {
        expect(summary(id, test(`${held}  ${state}`))).toEqual(['warning G1']);
        expect(correctionsIn(id, test(`${held}  ${state}`))).toEqual([correction]);
    });
    it('proves no leak either', () => {
        expect(summary(id, test('start-pressure: 142 psi  end-pressure: 100 psi  duration: 5 min  appliances-shut: no'))).toEqual(['warning G1']);
    });
    it('names each valve that stood otherwise', () => {
        expect(raisedBy(id, test(`${held}  cylinder-shut: no  line-charged: no`))[0]?.message).toContain('the cylinder was open and the line was not charged');
    });
});

it('is a matter for now where it falls, and before use where nothing is proved', () => {
    expect(urgencies(id, test('start-pressure: 142 psi  end-pressure: 100 psi  duration: 3 min'))).toEqual(['at-once']);
    expect(urgencies(id, test('start-pressure: 142 psi  end-pressure: 142 psi  duration: 1 min'))).toEqual(['before-use']);
    expect(raisedBy(id, test('start-pressure: 142 psi  end-pressure: 100 psi  duration: 3 min'))[0]?.message).toMatch(/142 psi \(9.79 bar\) to 100 psi \(6.89 bar\) in 3 min/);
});

describe('a table of tests', () => {
    const table = (row: string, columns = 'start, end, duration') => `gas-locker L1\nreading M1 "Gas tests" on L1 { measures: gas-test  columns: ${columns}  row "Whole system": ${row} }\n`;
    it.each([['142 psi, 142 psi, 3 min', []], ['142 psi, 138 psi, 3 min', ['error L1']], ['142 psi, 142 psi, 2 min', ['warning L1']]] as const)('%s', (row, expected) => {
        expect(summary(id, table(row))).toEqual(expected);
    });
    it('asks for what the row lacks, and writes its figures into the draft', () => {
        expect(summary(id, table('142 psi, 142 psi', 'start, end'))).toEqual(['hint L1']);
        expect(raisedBy(id, table('142 psi, 138 psi, 3 min'))[0]?.draft?.seen).toContain('fell from 142 psi (9.79 bar) to 138 psi');
    });
});
