/** Fuel as surveyors record it in other ways: in no run, in tables, by the kind of craft, by what is said to be absent. */
import { describe, expect, it } from 'vitest';
import { summary } from '../check-text.js';

describe('which fuel she burns', () => {
    const hose = 'fuel-hose H1 { service: fuel-fill  class: fuel-b2 }\n';
    it.each([
        ['vessel "M" { type: gasoline-cruiser }\n', 'error'], ['fuel-tank T1 { fuel: gasoline }\n', 'error'], ['engine E1 { fuel: gasoline }\nfuel-tank T1 { fuel: diesel }\n', 'error'],
        ['vessel "M" { type: gasoline-cruiser  fuel: diesel }\n', undefined], ['fuel-tank T1 { fuel: diesel }\n', undefined],
        ['fuel-tank T1 { fuel: gasoline }\nfuel-tank T2 { fuel: diesel }\n', 'hint'], ['', 'hint'],
    ] as const)('%s', (text, expected) => {
        expect(summary('fuel-hose-class', text + hose)).toEqual(expected ? [`${expected} H1`] : []);
    });
    it('is that of the engine a hose serves', () => {
        const boat = 'vessel "M" { fuel: diesel }\ngenerator G1 { fuel: gasoline }\n';
        expect(summary('fuel-hose-class', `${boat}fuel-hose H1 { service: fuel-feed  class: fuel-b1  serves: G1 }\n`)).toEqual(['error H1']);
    });
});

it('tells the place of a hose from the parts of a run that names no service', () => {
    const text = (run: string) => `vessel "M" { fuel: gasoline }\nfuel-tank T1\nfuel-fill FF1\nengine E1\nhose H1 { class: fuel-a2 }\nrun R1: ${run}\n`;
    expect(summary('fuel-hose-class', text('T1 -> H1 -> E1'))).toEqual(['error H1']);
    expect(summary('fuel-hose-class', text('FF1 -> H1 -> T1'))).toEqual([]);
});

describe('a low line in no run', () => {
    const id = 'fuel-siphons-or-no-valve';
    const absent = 'survey "1" pre-purchase { absent "Anti-siphon device": "none is fitted" }\n';
    const line = 'fuel-line L1 { below-tank-top: yes }\n';
    it.each([
        ['gasoline', line, absent, ['error L1 T1']], ['gasoline', line, '', ['hint L1']], ['diesel', line, absent, []],
        ['gasoline', `${line}anti-siphon-device A1\n`, '', []], ['gasoline', line.replace('yes', 'no'), absent, []], ['gasoline', `${line}outboard O1\n`, absent, []],
        ['gasoline', 'fuel-hose L1 { below-tank-top: yes  service: fuel-fill }\n', absent, []],
    ] as const)('%s, %s%s', (fuel, parts, survey, expected) => {
        expect(summary(id, `${survey}vessel "M" { fuel: ${fuel} }\nfuel-tank T1\n${parts}`)).toEqual(expected);
    });
});

describe('the ground of a fill', () => {
    const fill = (facts: string, rest = '', fuel = 'gasoline') => `vessel "M" { fuel: ${fuel} }\nfuel-fill FF1 "Deck fill" { metal: bronze  ${facts} }\n${rest}`;
    const table = (ohm: string) => `reading B1 "Bonding" on FF1 { measures: bonding  row "Deck fill": FF1, ${ohm} }\n`;
    it.each([['99 ohm', []], ['100 ohm', ['error FF1']], ['2 megohm', ['error FF1']]] as const)('in a table: %s', (ohm, expected) => {
        expect(summary('fuel-bond-high', fill('', table(ohm)))).toEqual(expected);
        expect(summary('bonding-resistance-high', fill('', table(ohm)))).toEqual([]);
    });
    it('is asked for where it is recorded as not bonded', () => {
        expect(summary('fuel-bond-high', fill('bonded: no'))).toEqual(['hint FF1']);
        expect(summary('fuel-bond-high', fill('bonded: no', '', 'diesel'))).toEqual([]);
        expect(summary('fuel-bond-high', fill('bonded: no  bond-resistance: 1 ohm'))).toEqual([]);
    });
});
