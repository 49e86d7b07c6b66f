import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'chain-worn';
const chain = (facts: string) => `chain CH1 { ${facts} }\n`;

describe('chain-worn', () => {
    it.each([
        ['link-original: 10 mm  link-now: 9 mm', []], ['link-original: 10 mm  link-now: 8.99 mm', ['error CH1']], ['link-original: 10 mm  link-now: 8.7 mm, 9.3 mm', []], ['link-original: 10 mm  link-now: 8.7 mm, 9.2 mm', ['error CH1']],
        ['link-original: 3/8 in  link-now: 0.34 in', []], ['link-original: 3/8 in  link-now: 0.33 in', ['error CH1']], ['link-now: 9 mm', ['hint CH1']], ['link-original: 10 mm', []], ['link-original: 10 mm  link-now: 10.3 mm', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, chain(facts))).toEqual(expected);
    });
    it('averages the axes', () => {
        const text = chain('link-original: 10 mm  link-now: 8.6 mm, 8.9 mm');
        expect(raisedBy(id, text)[0]?.message).toContain('8.75 mm');
        expect(corrected(text, id, 'Record the mean of the axes')).toContain('link-now: 8.75 mm');
        expect(urgencies(id, text)).toEqual(['in-upkeep']);
    });
});
