import { describe, expect, it } from 'vitest';
import { correctionsIn, corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'lifeline-low-or-loose';

describe('lifeline-low-or-loose', () => {
    it.each([
        ['lifeline L1 { height: 24 in }', []], ['lifeline L1 { height: 23-1/2 in }', ['warning L1']], ['lifeline L1 { height: 600 mm }', []], ['lifeline L1 { height: 599 mm }', ['warning L1']], ['guardrail G1 { height: 500 mm }', ['warning G1']],
        ['stanchion S1 { height: 500 mm }', ['warning S1']], ['stanchion S1 { height: 500 mm }\nlifeline L1 { height: 620 mm }', []], ['stanchion S1 { spacing: 2.2 m }', []], ['stanchion S1 { spacing: 2.21 m }', ['warning S1']],
        ['stanchion S1 { spacing: 7 ft }', []], ['stanchion S1 { spacing: 7 ft 3 in }', ['warning S1']], ['stanchion S1 { spacing: 3 m }\nlifeline L1 { spacing: 2 m }', []], ['stanchion S1 { base-moves: yes }', ['error S1']],
        ['stanchion S1 { base-moves: yes  height: 500 mm }', ['error S1']], ['guardrail G1 { base-moves: yes }', ['error G1']], ['stanchion S1 { base-moves: no }', []], ['stanchion S1 { backing: none }', []],
        ['vessel "M" { length-on-deck: 8.4 m }\nlifeline L1 { height: 450 mm }', []], ['vessel "M" { length-on-deck: 8.4 m }\nlifeline L1 { height: 449 mm }', ['warning L1']], ['vessel "M" { length-overall: 8.5 m }\nlifeline L1 { height: 450 mm }', ['warning L1']],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it('keeps her in her berth where a base moves', () => {
        expect(urgencies(id, 'stanchion S1 { base-moves: yes }\n')).toEqual(['before-departure']);
        expect(urgencies(id, 'lifeline L1 { height: 20 in }\n')).toEqual(['in-upkeep']);
        expect(raisedBy(id, 'stanchion S1 { base-moves: yes  backing: none }\n')[0]?.message).toContain('with nothing behind it');
    });
    it('offers the unit that was meant', () => {
        const text = 'lifeline L1 { height: 25 cm }\n';
        expect(correctionsIn(id, text)).toEqual(['Read 25 cm as 25 in', 'Write it as 9.84 in']);
        expect(summary(id, corrected(text, id, 'Read 25 cm as 25 in'))).toEqual([]);
    });
});
