import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'flame-control-missing';
const boat = (rest: string, facts = '') => `vessel "M" { fuel: gasoline  ${facts} }\n${rest}\n`;

describe('a gasoline engine inside the boat', () => {
    it.each([
        ['flame-arrester: no', ['error E1']], ['flame-arrester: yes', []], ['flame-arrester-mark: "UL 1111"', []], ['flame-arrester: yes  flame-arrester-mark: "no mark"', ['error E1']],
        ['flame-arrester-mark: "None found"', ['error E1']], ['hours: 400', ['hint E1']], ['flame-arrester: no  fuel: diesel', []], ['flame-arrester: no  fuel: electric', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, boat(`main-engine E1 { ${facts} }`))).toEqual(expected);
    });
    it('stays out of use', () => {
        expect(urgencies(id, boat('main-engine E1 { flame-arrester: no }'))).toEqual(['before-use']);
        expect(raisedBy(id, boat('main-engine E1 { flame-arrester: no }'))[0]?.draft?.cites).toEqual([['46 CFR 25', '25.35-1']]);
    });
    it('may be a generator in a diesel boat', () => {
        expect(summary(id, 'vessel "M" { fuel: diesel }\nmain-engine E1\ngenerator G1 { fuel: gasoline  flame-arrester: no }\n')).toEqual(['error G1']);
    });
    it('is no outboard', () => {
        expect(summary(id, boat('outboard O1 { flame-arrester: no }'))).toEqual([]);
        expect(summary(id, boat('outboard O1\ncarburetor C1 { flame-arrester: no }'))).toEqual([]);
    });
    it('may be said to have none', () => {
        const survey = (what: string) => `survey "1" pre-purchase { absent "${what}": "none is fitted" }\n`;
        expect(summary(id, survey('Flame arrester') + boat('main-engine E1'))).toEqual(['error E1']);
        expect(summary(id, survey('Backfire flame control') + boat('main-engine E1'))).toEqual(['error E1']);
        expect(summary(id, survey('Flame screen of the vent') + boat('main-engine E1'))).toEqual(['hint E1']);
    });
});

describe('the day of the rule, 25 April 1940', () => {
    const bare = (dates: string, vessel = '') => summary(id, boat(`main-engine E1 { flame-arrester: no  ${dates} }`, vessel));
    it.each([
        ['fitted: 1940-04-25', []], ['fitted: 1940-04-26', ['error E1']], ['fitted: 1940-04', ['hint E1']], ['fitted: 1940', ['hint E1']], ['fitted: 1939', []], ['fitted: 1941', ['error E1']],
        ['made: 1937', ['hint E1']], ['made: 1962', ['error E1']], ['made: 1937  fitted: 1950', ['error E1']],
    ] as const)('%s', (dates, expected) => {
        expect(bare(dates)).toEqual(expected);
    });
    it('is asked for on a boat that may carry her first engine', () => {
        expect(bare('', 'built: 1936')).toEqual(['hint E1']);
        expect(bare('', 'built: 1955')).toEqual(['error E1']);
    });
});

describe('carburetors', () => {
    it('speak for the only engine, or for the one they serve', () => {
        expect(summary(id, boat('main-engine E1\ncarburetor C1 { flame-arrester: no }'))).toEqual(['error E1 C1']);
        expect(summary(id, boat('main-engine E1\ncarburetor C1 { flame-arrester: yes }'))).toEqual([]);
        expect(summary(id, boat('main-engine E1\nmain-engine E2\ncarburetor C1 { serves: E1  flame-arrester: yes }\ncarburetor C2 { serves: E2  flame-arrester: no }'))).toEqual(['error E2 C2']);
        expect(summary(id, boat('carburetor C1 { flame-arrester: no }'))).toEqual(['error C1']);
    });
});
