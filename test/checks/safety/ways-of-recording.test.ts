/** Gear said to be absent, and facts recorded at another place. */
import { describe, expect, it } from 'vitest';
import { correctionsIn, summary, urgencies } from '../check-text.js';

const absent = (what: string) => `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth"  absent "${what}": "none aboard" }\n`;

describe('no portable extinguisher', () => {
    const id = 'extinguishers-too-few';
    const boat = (length: string) => `vessel "M" { length-overall: ${length}  fuel: diesel }\n`;
    it.each([
        [`${boat('34 ft')}fixed-extinguisher FX1\n`, ['error FX1']], [`${boat('25 ft')}fixed-extinguisher FX1\n`, []], [boat('34 ft'), []], [`${absent('Fixed extinguisher')}${boat('34 ft')}`, []],
        [`${absent('Fire extinguishers')}${boat('25 ft')}outboard O1\n`, ['hint O1']],
    ] as const)('%s', (text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('may be said to be absent, and is then to be added in number', () => {
        const text = `${absent('Portable fire extinguishers')}${boat('30 ft')}`;
        expect(summary(id, text)).toHaveLength(1);
        expect(urgencies(id, text)).toEqual(['before-departure']);
        expect(correctionsIn(id, text)).toEqual(['Add 2 5-B extinguishers', 'Add a 20-B extinguisher']);
    });
});

describe('the space of a fixed extinguisher', () => {
    const text = (serves: string, spaces: string) => `${spaces}fixed-extinguisher FX1 { covers: 150 ft3  ${serves} }\n`;
    it.each([
        ['serves: S1', 'machinery-space S1 { volume: 180 ft3 }\n', ['error FX1']], ['serves: S1', 'machinery-space S1 { volume: 150 ft3 }\n', []], ['', 'machinery-space S1 { volume: 180 ft3 }\n', ['error FX1']],
        ['', 'machinery-space S1 { volume: 180 ft3 }\nmachinery-space S2 { volume: 100 ft3 }\n', ['hint FX1']], ['serves: S2', 'machinery-space S1 { volume: 180 ft3 }\nmachinery-space S2 { volume: 100 ft3 }\n', []],
    ] as const)('%s %s', (serves, spaces, expected) => {
        expect(summary('fixed-system-overdue', text(serves, spaces))).toEqual(expected);
    });
});

it.each([['Distress signals', 'coastal', 1], ['Flares', 'offshore', 1], ['Visual distress signals', 'coastal', 1], ['Distress signals', 'inland', 0], ['Flare gun', 'coastal', 0]] as const)('%s absent, %s', (what, waters, count) => {
    expect(summary('flares-out-of-date', `${absent(what)}vessel "M" { length-overall: 30 ft  used-on: ${waters} }\n`)).toHaveLength(count);
});

it('asks for the date of an alarm that is old', () => {
    const alarm = (facts: string) => summary('co-alarm-missing-or-old', `${absent('Radar')}co-alarm CO1 { ${facts} }\n`);
    expect([alarm('made: 2018'), alarm('made: 2021'), alarm('made: 2018  replace-by: 2027-01')]).toEqual([['hint CO1'], [], []]);
});

it('judges the height of a masthead light whatever else is recorded of her engine', () => {
    const text = (facts: string) => `vessel "M" { length-overall: 14 m  ${facts} }\nnavigation-light N1 { light: masthead  height: 2 m }\n`;
    expect([summary('light-range-or-height-short', text('')), summary('light-range-or-height-short', text('fuel: none'))]).toEqual([['error N1'], []]);
});

describe('no masthead light', () => {
    const text = (type: string, length: string, lights = '') => `${absent('Masthead light')}vessel "M" { type: ${type}  length-overall: ${length} }\n${lights}`;
    it.each([
        ['motor-yacht', '13 m', '', 1], ['sailing-yacht', '13 m', '', 0], ['motor-yacht', '11 m', 'navigation-light N1 { light: all-round }\n', 0], ['motor-yacht', '13 m', 'navigation-light N1 { light: all-round }\n', 1],
        ['motor-yacht', '13 m', 'navigation-light N1 { light: masthead }\n', 0],
    ] as const)('%s of %s %s', (type, length, lights, count) => {
        expect(summary('light-out-or-contradictory', text(type, length, lights))).toHaveLength(count);
    });
});
