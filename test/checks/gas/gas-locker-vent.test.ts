import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'gas-locker-vent';
const locker = (facts: string) => `gas-locker L1 { ${facts} }\n`;

describe('the vent', () => {
    it.each([
        ['vent-bore: 1/2 in', 0], ['vent-bore: 12 mm', 0], ['vent-bore: 13 mm', 0], ['vent-bore: 3/8 in', 1], ['vent-bore: 10 mm', 1], ['vent-bore: 11 mm', 1], ['vent-bore: 3/4 in', 0],
        ['distance-to-opening: 20 in', 0], ['distance-to-opening: 500 mm', 0], ['distance-to-opening: 14 in', 1], ['distance-to-opening: 490 mm', 1],
        ['vent-outlet-above-waterline: 1 in', 0], ['vent-outlet-above-waterline: 0 mm', 1], ['vent-outlet-above-waterline: -2 in', 1],
        ['vent-at-bottom: no', 1], ['vent-at-bottom: yes', 0], ['vent-outlet-below-floor: no', 1], ['vent-shared: yes', 1], ['vent-dips: yes', 1], ['vented: no', 1], ['vented: yes', 0], ['lid: top', 0],
    ] as const)('%s: %i', (facts, count) => {
        expect(raisedBy(id, locker(facts))).toHaveLength(count);
    });
    it('is one problem with all that is wrong', () => {
        expect(raisedBy(id, locker('vent-bore: 3/8 in  vent-dips: yes  distance-to-opening: 10 in'))[0]?.message).toMatch(/3\/8 in .*, its vent comes out 10 in .* and its vent dips/);
    });
});

it('is judged by the rule that the firm chooses, and says whose it is', () => {
    const firm = 'yardsticks { gas-vent-bore: 19 mm  gas-vent-gap: 1 m }\n';
    expect(summary(id, firm + locker('vent-bore: 3/4 in  distance-to-opening: 1 m'))).toEqual([]);
    expect(raisedBy(id, firm + locker('vent-bore: 1/2 in'))[0]?.message).toContain('under the firm’s limit of 19 mm');
    expect(raisedBy(id, firm + locker('distance-to-opening: 30 in'))[0]?.message).toContain('nearer than the firm’s limit of 1 m');
    expect(raisedBy(id, locker('vent-bore: 3/8 in'))[0]?.message).toContain('under the usual limit of 12.7 mm (1/2 in)');
});

it('is due before use and offers a mistaken unit', () => {
    expect(urgencies(id, locker('vent-bore: 3/8 in'))).toEqual(['before-use']);
    expect(correctionsIn(id, locker('vent-bore: 3 mm'))).toEqual(['Read 3 mm as 3 in', 'Read 3 mm as 3 cm']);
    expect(correctionsIn(id, locker('vent-dips: yes'))).toEqual([]);
});
