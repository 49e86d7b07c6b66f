import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'cockpit-drains-slow';
const cockpit = (facts: string) => `cockpit C1 { ${facts} }\n`;
/** 3 m2, 450 mm deep: t = 2 × 3 × (√0.45 − √0.1) ÷ (0.6 a √(2 g)). */
const large = 'sole-area: 3 m2  depth: 450 mm';

describe('time', () => {
    it.each([
        // Two drains of 25 mm: a = 982 mm2, 815 s. Of 41 mm: a = 2641 mm2, 303 s. Of 42 mm: 2771 mm2, 289 s.
        [`${large}  drains: 2  drain-bore: 25 mm  offshore: yes`, ['error C1']],
        [`${large}  drains: 2  drain-bore: 41 mm  offshore: yes`, ['error C1']],
        [`${large}  drains: 2  drain-bore: 42 mm  offshore: yes`, []],
        [`${large}  drains: 2  drain-bore: 25 mm  offshore: no`, []],
        [`${large}  drains: 2  drain-bore: 25 mm`, ['hint C1']],
        [`${large}  drains: 2  drain-bore: 50 mm`, []],
        [`${large}  drains: 2  offshore: yes`, []],
        [`${large}  drain-bore: 25 mm  offshore: yes`, []],
        ['depth: 450 mm  drains: 2  drain-bore: 25 mm  offshore: yes', []],
        ['sole-area: 3 m2  depth: 90 mm  drains: 2  drain-bore: 25 mm  offshore: yes', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, cockpit(facts))).toEqual(expected);
    });
    it('is printed with its limit', () => {
        const [problem] = raisedBy(id, cockpit(`${large}  drains: 2  drain-bore: 25 mm  offshore: yes`));
        expect(problem?.figures?.['time']?.value).toBeCloseTo(815, -1);
        expect(problem?.figures?.['limit']).toEqual({ value: 300, unit: 's' });
        expect(problem?.message).toContain('over 300 s');
    });
});

describe('number', () => {
    it.each([
        ['drains: 1', ['error C1']], ['drains: 0', ['error C1']], ['drains: 2', []], ['', []], ['drains: 1  offshore: no', ['error C1']],
        [`${large}  drains: 1  drain-bore: 100 mm  offshore: yes`, ['error C1']],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, cockpit(facts))).toEqual(expected);
    });
    it('says none, or a single one', () => {
        expect(raisedBy(id, cockpit('drains: 0'))[0]?.message).toContain('C1 has no drain.');
        expect(raisedBy(id, cockpit('drains: 1'))[0]?.message).toContain('C1 has a single drain.');
        const text = cockpit('drains: 1');
        expect(raisedBy(id, text).map(p => pointedAt(text, p))).toEqual(['1']);
    });
});

it('is due before departure offshore, else in upkeep', () => {
    expect(urgencies(id, cockpit(`${large}  drains: 2  drain-bore: 25 mm  offshore: yes`))).toEqual(['before-departure']);
    expect(urgencies(id, cockpit('drains: 1'))).toEqual(['in-upkeep']);
});

it.each([`${large}  drains: 2  drain-bore: 25 mm  offshore: yes`, 'drains: 1', `${large}  drains: 1  drain-bore: 100 mm  offshore: yes`])('%s: every correction clears it', facts => {
    expect(correctionsIn(id, cockpit(facts))).toHaveLength(1);
    for (const title of correctionsIn(id, cockpit(facts))) {
        expect(summary(id, corrected(cockpit(facts), id, title)), title).toEqual([]);
    }
});
