import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary } from '../check-text.js';

const id = 'rode-short';
const berth = 'deepest-berth: 10 m  bow-height: 1 m'; // 55 m of chain, 77 m of rope

describe('rode-short', () => {
    it.each([
        [`chain C1 { length: 55 m  ${berth} }`, []], [`chain C1 { length: 54.9 m  ${berth} }`, ['error C1']], [`rode R1 { length: 77 m  ${berth} }`, []], [`rode R1 { length: 76 m  ${berth} }`, ['error R1']],
        [`rode R1 { build: chain  length: 55 m  ${berth} }`, []], [`rode R1 { build: mixed  length: 55 m  ${berth} }`, ['error R1']], [`rode R1 { length: 250 ft  deepest-berth: 33 ft  bow-height: 4 ft }`, ['error R1']],
        [`chain C1 { length: 20 m }\nrode R1 { length: 57 m  ${berth} }`, []], [`chain C1 { length: 20 m }\nrode R1 { length: 56 m  ${berth} }`, ['error R1 C1']], [`chain C1 { length: 20 m  ${berth} }\nrode R1 { length: 56 m }`, ['error C1 R1']],
        [`chain C1 { length: 20 m }\nrode R1 { build: mixed  length: 60 m  ${berth} }`, ['error R1']], [`chain C1 { length: 55 m  ${berth} }\nrode R1 { length: 20 m }\nrode R2 { length: 20 m }`, []],
        ['chain C1 { length: 50 m  deepest-berth: 10 m }', ['hint C1']], [`chain C1 { ${berth} }`, ['hint C1']], ['chain C1 { length: 50 m }', []], ['rode R1 { length: 50 m }', []],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it('says what it needs, and offers the depth it is long enough for', () => {
        const text = `chain C1 { length: 40 m  ${berth} }\n`;
        expect(raisedBy(id, text)[0]?.message).toContain('55 m');
        expect(correctionsIn(id, text)).toEqual(['Record the deepest berth as 7 m, for which it is long enough']);
        expect(summary(id, corrected(text, id, 'Record the deepest berth as 7 m, for which it is long enough'))).toEqual([]);
        expect(correctionsIn(id, `chain C1 { length: 7 m  ${berth} }\n`)).toEqual([]);
    });
});
