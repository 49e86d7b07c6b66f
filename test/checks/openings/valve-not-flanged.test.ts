import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'valve-not-flanged';
const drain = (valve: string, opening = '', height = 'below-waterline: 1 ft') =>
    `through-hull TH1 { ${height}  ${opening} }\nvalve SV1 { ${valve} }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n`;
const raised = ['error SV1 TH1'];

describe('flange', () => {
    it.each([
        ['not flanged', drain('pattern: ball-valve  flanged: no'), raised],
        ['flanged', drain('pattern: ball-valve  flanged: yes'), []],
        ['not recorded', drain('pattern: ball-valve'), []],
        ['a flanged seacock, whatever the flag', drain('pattern: flanged-seacock  flanged: no'), []],
        ['on a flanged base', drain('pattern: ball-valve  flanged: no', 'flange: yes'), []],
        ['above the waterline', drain('flanged: no', '', 'above-waterline: 1 ft'), []],
        ['height not recorded', drain('flanged: no', '', ''), []],
        ['capped', drain('flanged: no', 'closure: capped'), []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
});

describe('push test', () => {
    it.each([['500 lbf', []], ['2224 N', []], ['2220 N', raised], ['300 lbf', raised]] as const)('%s', (load, expected) => {
        expect(summary(id, drain(`flanged: no  push-test: ${load}`))).toEqual(expected);
    });
    it('stands in for a block too', () => {
        expect(summary(id, drain('push-test: 500 lbf', 'size: 2 in  backing: none'))).toEqual([]);
    });
});

describe('backing', () => {
    it.each([
        ['none, 1 in', drain('', 'size: 1 in  backing: none'), raised],
        ['none, 1 in, flanged', drain('flanged: yes', 'size: 1 in  backing: none'), raised],
        ['none, 25 mm bore', drain('', 'bore: 25 mm  backing: none  hull-thickness: 20 mm'), []],
        ['none, 3/4 in, hull 9 mm', drain('', 'size: 3/4 in  backing: none  hull-thickness: 9 mm'), raised],
        ['none, 3/4 in, hull 10 mm', drain('', 'size: 3/4 in  backing: none  hull-thickness: 10 mm'), []],
        ['none, 3/4 in, hull not recorded', drain('', 'size: 3/4 in  backing: none'), ['hint SV1 TH1']],
        ['none, nothing recorded', drain('', 'backing: none'), ['hint SV1 TH1']],
        ['loose block', drain('', 'size: 2 in  backing: loose-block'), []],
        ['bonded block', drain('', 'size: 2 in  backing: bonded-block'), []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('does not say that a flange is missing where it is not recorded', () => {
        const text = drain('', 'size: 2 in  backing: none');
        expect(raisedBy(id, text)[0]?.message).toContain('on no backing block');
        expect(raisedBy(id, text)[0]?.message).not.toContain('flange');
        expect(pointedAt(text, raisedBy(id, text)[0]!)).toBe('none');
    });
});

it('tells a valve with neither flange nor block once, at the flange', () => {
    const text = drain('flanged: no', 'size: 2 in  backing: none');
    expect(summary(id, text)).toEqual(raised);
    expect(pointedAt(text, raisedBy(id, text)[0]!)).toBe('no');
});

it('gives the load in both systems and waits for the next haul-out', () => {
    expect(raisedBy(id, drain('flanged: no'))[0]?.message).toContain('(500 lbf)');
    expect(raisedBy(id, drain('flanged: no'))[0]?.figures?.['required']).toEqual({ value: 2224, unit: 'N' });
    expect(urgencies(id, drain('flanged: no'))).toEqual(['next-haul-out']);
});

it.each([['flange', drain('flanged: no')], ['block', drain('', 'size: 2 in  backing: none')]])('%s: every correction clears it', (_, text) => {
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
});
