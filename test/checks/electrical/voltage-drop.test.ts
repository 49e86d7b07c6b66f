import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'voltage-drop';
const wire = (facts: string) => `conductor W1 { ${facts} }\n`;

describe(id, () => {
    it.each([
        ['source-voltage: 10 V  load-voltage: 9.7 V  purpose: bilge-pump', []],
        ['source-voltage: 10 V  load-voltage: 9.69 V  purpose: bilge-pump', ['error W1']],
        ['source-voltage: 10 V  load-voltage: 9.69 V  purpose: navigation-light', ['error W1']],
        ['source-voltage: 10 V  load-voltage: 9.69 V  purpose: blower', ['error W1']],
        ['source-voltage: 10 V  load-voltage: 9.69 V  purpose: electronics', ['error W1']],
        ['source-voltage: 10 V  load-voltage: 9.69 V  purpose: panel-feed', ['error W1']],
        ['source-voltage: 10 V  load-voltage: 9.69 V  purpose: lighting', []],
        ['source-voltage: 10 V  load-voltage: 9 V  purpose: power', []],
        ['source-voltage: 10 V  load-voltage: 8.99 V  purpose: power', ['error W1']],
        ['source-voltage: 10 V  load-voltage: 9.5 V', ['hint W1']],
        ['source-voltage: 10 V  load-voltage: 8.9 V', ['error W1']],
        ['source-voltage: 10 V  load-voltage: 8 V  purpose: cranking', []],
        ['source-voltage: 10 V  load-voltage: 10.2 V  purpose: bilge-pump', []],
        ['source-voltage: 10 V  purpose: bilge-pump', []],
        // 12 AWG, 10 A, 30 ft there and back: 0.494 V, 4.12 % of 12 V.
        ['gauge: 12 AWG  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump', ['error W1']],
        ['gauge: 12 AWG  load: 10 A  length: 30 ft  voltage: 12 V  purpose: power', []],
        ['gauge: 12 AWG  load: 10 A  length: 30 ft  purpose: bilge-pump', ['hint W1']],
        ['gauge: 12 AWG  load: 10 A  length: 9.14 m  voltage: 24 V  purpose: bilge-pump', []],
        ['gauge: 10 AWG  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump', []],
        // Exactly 3 % and a little over, by size.
        ['gauge: 4.54 mm2  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump', []],
        ['gauge: 4.5 mm2  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump', ['error W1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, wire(facts))).toEqual(expected);
    });
    it('proposes the size that loses no more than is allowed', () => {
        expect(correctionsIn(id, wire('gauge: 14 AWG  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump'))).toEqual(['Correct the size to 10 AWG']);
        expect(correctionsIn(id, wire('gauge: 2.5 mm2  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump'))).toEqual(['Correct the size to 6 mm2']);
        expect(correctionsIn(id, wire('source-voltage: 12 V  load-voltage: 11 V  purpose: bilge-pump'))).toEqual([]);
    });
    it('is due by what it feeds', () => {
        const due = (facts: string) => urgencies(id, wire(`source-voltage: 10 V  load-voltage: 8 V  ${facts}`));
        expect(due('purpose: power')).toEqual(['in-upkeep']);
        expect(due('purpose: bilge-pump')).toEqual(['within-days']);
        expect(due('purpose: navigation-light  lights-dim: yes')).toEqual(['before-departure']);
    });
    it('reads tables, the worst row of a wire, and rows that name none', () => {
        const table = (rows: string) => `conductor W1 { purpose: bilge-pump }\nconductor W2 { purpose: power }\nreading M1 {\n    measures: voltage-drop\n${rows}}\n`;
        expect(summary(id, table('    row "Pump": W1, 12.6 V, 12.5 V\n    row "Pump, hot": W1, 12.6 V, 12 V\n'))).toEqual(['error W1']);
        expect(summary(id, table('    row "Windlass": W2, 12.6 V, 11.5 V\n'))).toEqual([]);
        expect(summary(id, table('    row "Windlass": 12.6 V, 11 V\n'))).toEqual(['error ']);
        expect(raisedBy(id, table('    row "Windlass": 12.6 V, 11 V\n'))[0]?.message).toContain('Windlass loses 1.6 V, 13 %');
    });
});
