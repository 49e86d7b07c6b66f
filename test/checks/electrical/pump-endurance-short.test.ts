import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'pump-endurance-short';
const pair = (battery: string, pump: string) => `battery B1 { ${battery} }\nbilge-pump P1 { ${pump} }\n`;

describe(id, () => {
    it.each([
        // 120 Ah of lead: 60 Ah; 10 A for a quarter of the time lasts 24 h.
        ['capacity: 120 Ah  chemistry: flooded  pump-duty: 25 %', 'current: 10 A', []],
        ['capacity: 119 Ah  chemistry: flooded  pump-duty: 25 %', 'current: 10 A', ['warning P1 B1']],
        ['capacity: 119 Ah  pump-duty: 25 %', 'current: 10 A', ['warning P1 B1']],
        ['capacity: 75 Ah  chemistry: lithium  cut-off: yes  pump-duty: 25 %', 'current: 10 A', []],
        ['capacity: 74 Ah  chemistry: lithium  cut-off: yes  pump-duty: 25 %', 'current: 10 A', ['warning P1 B1']],
        ['capacity: 200 Ah  capacity-measured: 110 Ah  pump-duty: 25 %', 'current: 10 A', ['warning P1 B1']],
        ['capacity: 120 Ah  pump-duty: 0 %', 'current: 10 A', []],
        ['capacity: 120 Ah', 'current: 10 A', ['hint P1 B1']], ['capacity: 600 Ah', 'current: 10 A', []],
        ['pump-duty: 25 %', 'current: 10 A', []], ['capacity: 10 Ah  pump-duty: 25 %', 'automatic: yes', []],
        ['capacity: 10 Ah  pump-duty: 25 %', 'current: 10 A  automatic: no', []], ['capacity: 10 Ah  pump-duty: 25 %', 'current: 10 A  works: no', []],
    ])('%s, %s', (battery, pump, expected) => {
        expect(summary(id, pair(battery, pump))).toEqual(expected);
    });
    it('adds up a bank, in parallel and in series', () => {
        const bank = (facts: string) => `battery B1 { bank: "house"  pump-duty: 25 %  ${facts} }\nbattery B2 { bank: "house"  ${facts} }\nbilge-pump P1 { current: 10 A }\n`;
        expect(summary(id, bank('capacity: 60 Ah  voltage: 12 V'))).toEqual([]);
        expect(summary(id, bank('capacity: 119 Ah  voltage: 6 V'))).toEqual(['warning P1 B1 B2']);
        expect(summary(id, bank('capacity: 120 Ah  voltage: 6 V'))).toEqual([]);
    });
    it('says nothing where it is not known which bank feeds the pump', () => {
        const two = (facts: string) => `battery B1 { capacity: 50 Ah  pump-duty: 25 %  ${facts} }\nbattery B2 { capacity: 50 Ah }\nbilge-pump P1 { current: 10 A }\n`;
        expect(summary(id, two(''))).toEqual([]);
        expect(summary(id, two('serves: P1'))).toEqual(['warning P1 B1']);
    });
    it('offers the duty from the drip of the shaft seal', () => {
        const text = `${pair('capacity: 100 Ah', 'current: 10 A  real-flow: 1 L/min')}packed-gland PG1 { drips-at-rest: 40 drops/min }\n`;
        expect(correctionsIn(id, text)).toEqual(['Set the duty to 0.2 %, from the drip of the shaft seal']);
    });
    it('judges by the firm’s limits', () => {
        expect(summary(id, `yardsticks "Firm" { pump-endurance: 12 h }\n${pair('capacity: 100 Ah  pump-duty: 25 %', 'current: 10 A')}`)).toEqual([]);
        expect(summary(id, `yardsticks "Firm" { usable-lead: 60 % }\n${pair('capacity: 100 Ah  pump-duty: 25 %', 'current: 10 A')}`)).toEqual([]);
        expect(urgencies(id, pair('capacity: 100 Ah  pump-duty: 25 %', 'current: 10 A'))).toEqual(['in-upkeep']);
        expect(raisedBy(id, pair('capacity: 100 Ah  pump-duty: 25 %', 'current: 10 A'))[0]?.message).toContain('for 20 h');
    });
    it('leaves hand pumps out', () => {
        expect(summary(id, 'battery B1 { capacity: 10 Ah  pump-duty: 25 % }\nmanual-bilge-pump P1 { current: 10 A }\n')).toEqual([]);
    });
});
