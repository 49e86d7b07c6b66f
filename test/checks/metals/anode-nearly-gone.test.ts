import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'anode-nearly-gone';
const anode = (facts: string, before = '') => `${before}anode A1 { metal: zinc  ${facts} }\n`;
const on = (date: string, state = 'ashore') => `survey "1" pre-purchase { attended ${date} ${state} }\n`;

describe('what is left', () => {
    it.each([
        ['left: 50 %', []], ['left: 49 %', ['error A1']], ['left: 0 %', ['error A1']], ['left: 100 %', []], ['', []],
        ['original-mass: 2 kg  present-mass: 1 kg', []], ['original-mass: 2 kg  present-mass: 0.99 kg', ['error A1']], ['original-mass: 2 lb  present-mass: 400 g', ['error A1']],
        ['original-mass: 2 kg', []], ['present-mass: 0.2 kg', []], ['original-volume: 1 L  present-volume: 0.4 L', ['error A1']],
        ['original-volume: 1 L  present-mass: 0.4 kg', []], ['left: 60 %  original-mass: 2 kg  present-mass: 0.5 kg', []],
        ['original-mass: 1 kg  present-mass: 1.2 kg', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, anode(facts))).toEqual(expected);
    });
    it('is referred to as it was measured', () => {
        expect(raisedBy(id, anode('left: 40 %'))[0]?.draft?.seen).toContain('{A1.left}');
        expect(raisedBy(id, anode('original-mass: 2 kg  present-mass: 0.5 kg'))[0]?.draft?.seen).toContain('{A1.present-mass} of {A1.original-mass}');
        expect(raisedBy(id, anode('original-volume: 1 L  present-volume: 0.4 L'))[0]?.draft?.seen).toContain('{A1.present-volume} of {A1.original-volume}');
    });
});

describe('how long it lasts', () => {
    // 60 % after 12 months loses 3.33 points a month.
    const facts = (ahead: number) => anode(`left: 60 %  fitted: 2025-10-06  months-to-haul-out: ${ahead}`, on('2026-10-06'));
    it.each([[11, []], [12, []], [13, ['error A1']]] as const)('%i months ahead', (ahead, expected) => {
        expect(summary(id, facts(ahead))).toEqual(expected);
    });
    it('says what will be left', () => {
        expect(raisedBy(id, facts(15))[0]?.message).toContain('60 % is left after 12 months; at that rate about 10 % will be left at the next haul-out in 15 months');
    });
    it('needs the date fitted, the months ahead and the date of the survey', () => {
        expect(summary(id, anode('left: 60 %  months-to-haul-out: 24', on('2026-10-06')))).toEqual([]);
        expect(summary(id, anode('left: 60 %  fitted: 2025-10-06', on('2026-10-06')))).toEqual([]);
        expect(summary(id, anode('left: 60 %  fitted: 2025-10-06  months-to-haul-out: 24'))).toEqual([]);
        expect(summary(id, anode('left: 60 %  fitted: 2026-10-06  months-to-haul-out: 24', on('2026-10-06')))).toEqual([]);
    });
});

describe('nothing gone', () => {
    it.each([
        ['after 13 months', 'left: 100 %  fitted: 2025-09-06', ['warning A1']], ['after a year to the day', 'left: 100 %  fitted: 2025-10-06', ['warning A1']], ['after 11 months', 'left: 100 %  fitted: 2025-11-06', []],
        ['99 % after 13 months', 'left: 99 %  fitted: 2025-09-06', []], ['date not recorded', 'left: 100 %', []],
    ] as const)('%s', (_, facts, expected) => {
        expect(summary(id, anode(facts, on('2026-10-06')))).toEqual(expected);
    });
});

it('is due before launch ashore, at the next haul-out afloat', () => {
    expect(urgencies(id, anode('left: 20 %', on('2026-10-06')))).toEqual(['before-launch']);
    expect(urgencies(id, anode('left: 20 %', on('2026-10-06', 'afloat')))).toEqual(['next-haul-out']);
});

it.each([['left: 40 %', '40 %'], ['original-mass: 2 kg  present-mass: 0.5 kg', '0.5 kg'], ['original-volume: 1 L  present-volume: 0.4 L', '0.4 L']])('%s: points at %s, and is cleared by its correction', (facts, at) => {
    const text = anode(facts);
    expect(raisedBy(id, text).map(p => pointedAt(text, p))).toEqual([at]);
    expect(correctionsIn(id, text)).toEqual(['Record A1 as renewed']);
    expect(summary(id, corrected(text, id, 'Record A1 as renewed'))).toEqual([]);
});
