import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'treatment-device-wrong';

describe(id, () => {
    it.each([
        ['toilet T1 { treatment: none }', ['error T1']], ['toilet T1 { treatment: none  portable: yes }', []], ['toilet T1 { treatment: none  portable: no }', ['error T1']], ['toilet T1', []], ['toilet T1 { treatment: type-iii }', []],
        ['toilet T1 { treatment: none }\nholding-tank HT1', ['hint T1 HT1']], ['toilet T1 { treatment: none }\nholding-tank HT1 { serves: T1 }', []], ['toilet T1 { treatment: none }\nholding-tank HT1\nrun R1 { service: toilet-discharge }: T1 -> HT1', []],
        ['treatment-device D1 { certified-type: unlabeled }', ['error D1']], ['treatment-device D1', []], ['treatment-device D1 { certified-type: type-ii }', []], ['holding-tank HT1 { labeled: no }', []],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it.each([['65 ft', 0], ['65.1 ft', 1], ['19.8 m', 0], ['19.9 m', 1], ['40 ft', 0]])('type I at %s: %i', (length, count) => {
        expect(raisedBy(id, `vessel "M" { length-overall: ${length} }\ntreatment-device D1 { certified-type: type-i }\n`)).toHaveLength(count);
        expect(raisedBy(id, `vessel "M" { length-overall: ${length} }\ntoilet T1 { treatment: type-i }\n`)).toHaveLength(count);
        expect(raisedBy(id, `vessel "M" { length-overall: ${length} }\ntoilet T1 { treatment: type-i }\ntreatment-device D1 { certified-type: type-i }\n`)).toHaveLength(count);
    });
    it('asks for the length', () => {
        expect(summary(id, 'vessel "M" {}\ntreatment-device D1 { certified-type: type-i }\n')).toEqual(['hint D1']);
    });
    it('is put right by the type, and due before use', () => {
        const text = 'vessel "M" { length-overall: 70 ft }\ntoilet T1 { treatment: type-i }\n';
        expect(raisedBy(id, corrected(text, id, 'Record T1 as of type II'))).toEqual([]);
        expect(urgencies(id, text)).toEqual(['before-use']);
    });
});
