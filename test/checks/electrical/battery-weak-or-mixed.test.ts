import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'battery-weak-or-mixed';

describe(`${id}: weak`, () => {
    it.each([
        ['capacity: 100 Ah  capacity-measured: 80 Ah', []], ['capacity: 100 Ah  capacity-measured: 79.9 Ah', ['error B1']],
        ['cranking: 600 A  cranking-measured: 480 A', []], ['cranking: 600 A  cranking-measured: 479 A', ['error B1']],
        ['capacity: 100 Ah  capacity-measured: 90 Ah  cranking: 600 A  cranking-measured: 300 A', ['error B1']],
        ['capacity: 100 Ah  capacity-measured: 50 Ah  hours-since-charge: 59 min', ['hint B1']], ['capacity: 100 Ah  capacity-measured: 50 Ah  hours-since-charge: 1 h', ['error B1']],
        ['capacity-measured: 50 Ah', []], ['capacity: 100 Ah', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, `battery B1 { ${facts} }\n`)).toEqual(expected);
    });
    it('is due before she leaves when it starts the engine', () => {
        expect(urgencies(id, 'battery B1 { capacity: 100 Ah  capacity-measured: 50 Ah  purpose: start }\n')).toEqual(['before-departure']);
        expect(urgencies(id, 'battery B1 { capacity: 100 Ah  capacity-measured: 50 Ah }\n')).toEqual(['in-upkeep']);
    });
    it('reads tables, and lets a battery and its row complete each other', () => {
        const table = (row: string, head = '') => `battery B1 { cranking: 600 A }\nreading M1 {\n    measures: battery${head}\n    row "Start": ${row}\n}\n`;
        expect(summary(id, 'battery B1 { cranking: 600 A }\nreading M1 {\n    measures: battery\n    columns: unit, measured\n    row "Start": B1, 400 A\n}\n')).toEqual(['error B1']);
        expect(summary(id, table('12.6 V, 600 A, 400 A'))).toEqual(['error ']);
        expect(summary(id, table('B1, 12.6 V, 600 A, 400 A', '\n    hours-since-charge: 30 min'))).toEqual(['hint B1']);
    });
    it('judges by the firm’s share', () => {
        expect(summary(id, 'yardsticks "Firm" { battery-left: 60 % }\nbattery B1 { capacity: 100 Ah  capacity-measured: 70 Ah }\n')).toEqual([]);
        expect(raisedBy(id, 'battery B1 { capacity: 100 Ah  capacity-measured: 70 Ah }\n')[0]?.message).toContain('80 % is the usual limit');
    });
});

describe(`${id}: mixed`, () => {
    const bank = (one: string, two: string) => `battery B1 { bank: "House"  ${one} }\nbattery B2 { bank: "house"  ${two} }\n`;
    it.each([
        ['chemistry: gel', 'chemistry: gel', []], ['chemistry: gel', 'chemistry: agm', ['error B1 B2']], ['chemistry: gel', '', []],
        ['made: 2023-05-10', 'made: 2024-05-10', []], ['made: 2023-05-10', 'made: 2024-05-12', ['error B1 B2']], ['made: 2023', 'made: 2024', []], ['made: 2022', 'made: 2024', ['error B1 B2']],
        ['made: 2023-05', 'made: 2024-05', []], ['made: 2023-05', 'made: 2024-06', ['error B1 B2']], ['made: 2024-07', 'fitted: 2023-05', ['error B1 B2']],
        ['rest-voltage: 12.7 V  hours-since-charge: 5 h', 'rest-voltage: 12.5 V  hours-since-charge: 5 h', []],
        ['rest-voltage: 12.71 V  hours-since-charge: 5 h', 'rest-voltage: 12.5 V  hours-since-charge: 5 h', ['error B1 B2']],
        ['rest-voltage: 12.9 V  hours-since-charge: 5 h', 'rest-voltage: 12.5 V', ['hint B1 B2']],
        ['rest-voltage: 12.9 V  hours-since-charge: 30 min', 'rest-voltage: 12.5 V  hours-since-charge: 5 h', []],
        ['rest-voltage: 12.9 V  chemistry: gel', 'rest-voltage: 12.5 V  chemistry: agm', ['error B1 B2']],
    ])('%s and %s', (one, two, expected) => {
        expect(summary(id, bank(one, two))).toEqual(expected);
    });
    it('compares nothing across banks, nor where no bank is named', () => {
        expect(summary(id, 'battery B1 { bank: "house"  chemistry: gel }\nbattery B2 { bank: "start"  chemistry: agm }\n')).toEqual([]);
        expect(summary(id, 'battery B1 { chemistry: gel }\nbattery B2 { chemistry: agm }\n')).toEqual([]);
    });
    it('takes voltages at rest from a table with its hours', () => {
        const table = (hours: string) => `battery B1 { bank: "house" }\nbattery B2 { bank: "house" }\nreading M1 {\n    measures: battery${hours}\n    row "1": B1, 12.7 V\n    row "2": B2, 12.3 V\n}\n`;
        expect(summary(id, table('\n    hours-since-charge: 8 h'))).toEqual(['error B1 B2']);
        expect(summary(id, table(''))).toEqual(['hint B1 B2']);
    });
});
