import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'flares-out-of-date';
const coastal = 'length-on-deck: 34 ft  used-on: coastal';
const aboard = (signals: string, vessel = coastal, attended = '2026-10-06') => `survey "1" pre-purchase { attended ${attended} afloat "Berth" }\nvessel "M" { ${vessel} }\n${signals}\n`;
const red = (expires: string, count = 3, name = 'D1') => `distress-signal ${name} { signal: red-hand  quantity: ${count}  expires: ${expires} }`;

describe(id, () => {
    it.each([
        ['2026-09', '2026-09-29', ['info']], ['2026-09', '2026-09-30', []], ['2026-09', '2026-10-01', ['error']], ['2026-09-15', '2026-09-15', []], ['2026-09-15', '2026-09-16', ['error']], ['2026', '2026-12-31', []], ['2025', '2026-01-01', ['error']],
        ['2026-12-05', '2026-10-06', ['info']], ['2026-12-06', '2026-10-06', []], ['2026-02', '2026-02-28', []], ['2028-02', '2028-02-29', []], ['2028-02', '2028-03-01', ['error']],
    ] as const)('marked %s, attended %s', (expires, attended, expected) => {
        expect(raisedBy(id, aboard(red(expires), coastal, attended)).map(problem => problem.severity)).toEqual(expected);
    });
    it.each([
        ['length-on-deck: 16 ft  used-on: coastal', 1], ['length-on-deck: 15.9 ft  used-on: coastal', 0], ['length-on-deck: 4.88 m  used-on: coastal', 1], ['length-on-deck: 4.87 m  used-on: coastal', 0], ['length-overall: 10 m  used-on: offshore', 1],
        ['length-on-deck: 10 m  used-on: inland', 0], ['length-on-deck: 10 m  water: salt', 1], ['length-on-deck: 10 m  water: salt  used-on: inland', 0],
    ])('on a vessel with %s: %i', (vessel, count) => {
        expect(raisedBy(id, aboard(red('2020-03'), vessel)).filter(problem => problem.severity === 'error')).toHaveLength(count);
    });
    it.each([
        [red('2029-09', 2), ['error D1']], [`${red('2029-09', 2)}\n${red('2029-09', 1, 'D2')}`, []], [`${red('2020-03', 6)}\n${red('2029-09', 3, 'D2')}`, []], [`${red('2020-03', 6)}\n${red('2029-09', 2, 'D2')}`, ['error D1 D2']],
        ['distress-signal D1 { signal: orange-smoke  quantity: 3  expires: 2029 }', ['error D1']], ['distress-signal D1 { signal: red-parachute  quantity: 3  expires: 2029 }', []],
        ['distress-signal D1 { signal: flag }\ndistress-signal D2 { signal: electric-light }', []], ['distress-signal D1 { signal: flag }\ndistress-signal D2 { signal: electric-light  works: no }', ['error D1 D2']],
        ['distress-signal D1 { signal: flag }\ndistress-signal D2 { signal: electric-light  approved: no }', ['error D1 D2']], [`distress-signal D1 { signal: electric-light }\n${red('2029-09', 2, 'D2')}`, ['error D1 D2']],
        ['distress-signal D1 { signal: red-hand  quantity: 3 }', ['hint D1']], ['distress-signal D1 { quantity: 3  expires: 2029 }', ['hint D1']], ['distress-signal D1 { quantity: 3  expires: 2029  day: yes  night: yes }', []],
    ])('%s', (signals, expected) => {
        expect(summary(id, aboard(signals))).toEqual(expected);
    });
    it('asks for the length, the waters or the day, where they decide', () => {
        expect(summary(id, aboard(red('2020-03'), 'used-on: coastal'))).toEqual(['hint D1']);
        expect(summary(id, aboard(red('2020-03'), 'length-on-deck: 34 ft'))).toEqual(['hint D1']);
        expect(summary(id, `vessel "M" { ${coastal} }\n${red('2020-03')}\n`)).toEqual(['hint D1']);
        expect(summary(id, `${red('2029-03', 2)}\n`)).toEqual(['hint D1']);
    });
    it('offers a flag and a light, which put it right together', () => {
        const text = aboard(red('2020-03'));
        expect(correctionsIn(id, text)).toEqual(['Add an electric light for the night', 'Add a flag for the day']);
        const once = corrected(text, id, 'Add an electric light for the night');
        expect(raisedBy(id, corrected(once, id, 'Add a flag for the day'))).toEqual([]);
    });
    it('is due before departure; what runs out soon is a note', () => {
        expect(urgencies(id, aboard(red('2020-03')))).toEqual(['before-departure']);
        expect(urgencies(id, aboard(red('2026-11')))).toEqual(['note-only']);
    });
});
