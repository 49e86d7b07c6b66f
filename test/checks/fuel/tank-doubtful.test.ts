import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'tank-doubtful';
const attended = 'survey "1" condition-and-value { attended 2026-10-06 ashore "Yard" }\n';
const buying = 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\n';
const tank = (facts: string) => `fuel-tank T1 { ${facts} }\n`;

describe('movement', () => {
    it.each([['0 mm', 0], ['1/4 in', 0], ['6.4 mm', 0], ['6.5 mm', 1], ['5/16 in', 1]] as const)('%s: %i', (moves, count) => {
        expect(raisedBy(id, tank(`moves: ${moves}`))).toHaveLength(count);
    });
});

describe('metal that stands wet', () => {
    it.each([
        ['material: aluminum  foamed-in: yes', ['error T1']], ['material: stainless-316  wet-pad: yes', ['error T1']], ['material: mild-steel  water-on-top: yes', ['error T1']],
        ['material: polyethylene  foamed-in: yes', []], ['wet-pad: yes', ['hint T1']], ['material: aluminum  foamed-in: no  wet-pad: no  water-on-top: no', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, tank(facts))).toEqual(expected);
    });
});

describe('age with the bottom unseen', () => {
    it.each([
        ['material: aluminum  made: 2006-10-06  bottom-seen: no', []], ['material: aluminum  made: 2006-10-05  bottom-seen: no', ['warning T1']], ['material: aluminum  fitted: 2000  bottom-seen: no', ['warning T1']],
        ['material: mild-steel  made: 2000  bottom-seen: no', ['warning T1']], ['material: stainless-304  made: 2000  bottom-seen: no', ['warning T1']], ['material: polyethylene  made: 2000  bottom-seen: no', []],
        ['material: aluminum  made: 2000  bottom-seen: yes', []], ['material: aluminum  made: 2000', []], ['material: aluminum  bottom-seen: no', ['hint T1']],
        ['material: aluminum  made: 2000  bottom-seen: no  tested: 3 psi  label-pressure: 3 psi  held: yes', []], ['material: aluminum  made: 2000  bottom-seen: no  tested: 2 psi  label-pressure: 3 psi  held: yes', ['warning T1']],
        ['material: aluminum  made: 2000  bottom-seen: no  tested: 3 psi', ['warning T1']],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, attended + tank(facts))).toEqual(expected);
    });
    it('asks for the day she was attended', () => {
        expect(summary(id, tank('material: aluminum  made: 2000  bottom-seen: no'))).toEqual(['hint T1']);
    });
    it('is judged by the limit of the firm, and says so', () => {
        const firms = 'yardsticks { metal-tank-life: 30 years }\n';
        expect(summary(id, attended + firms + tank('material: aluminum  made: 2000  bottom-seen: no'))).toEqual([]);
        expect(raisedBy(id, attended + firms + tank('material: aluminum  made: 1990  bottom-seen: no'))[0]?.message).toContain('the firm’s limit of 30 years');
        expect(raisedBy(id, attended + tank('material: aluminum  made: 2000  bottom-seen: no'))[0]?.message).toContain('the usual limit of 20 years');
    });
});

it('leaves the movement of a portable tank alone', () => {
    expect(raisedBy(id, tank('moves: 1 in  build: portable'))).toEqual([]);
});

it('gathers what speaks against one tank', () => {
    const [problem, ...others] = raisedBy(id, tank('fuel: gasoline  material: aluminum  moves: 10 mm  wet-pad: yes  leaks: yes'));
    expect(others).toEqual([]);
    expect(problem?.message).toMatch(/leaks, moves 10 mm \(.*\), where .* is allowed and rests on something that holds water/);
});

it('is urgent by fuel and by what the survey is for', () => {
    expect(urgencies(id, tank('fuel: gasoline  leaks: yes'))).toEqual(['at-once']);
    expect(urgencies(id, tank('fuel: diesel  held: no'))).toEqual(['before-use']);
    expect(urgencies(id, tank('fuel: gasoline  moves: 1 in'))).toEqual(['within-days']);
    expect(urgencies(id, tank('fuel: diesel  moves: 1 in'))).toEqual(['in-upkeep']);
    expect(urgencies(id, buying + tank('fuel: diesel  moves: 1 in'))).toEqual(['before-completion']);
    expect(urgencies(id, buying + tank('fuel: gasoline  leaks: yes'))).toEqual(['at-once']);
    expect(urgencies(id, attended + tank('fuel: gasoline  material: aluminum  made: 2000  bottom-seen: no'))).toEqual(['in-upkeep']);
});
