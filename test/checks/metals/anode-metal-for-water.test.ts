import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'anode-metal-for-water';
const anode = (metal: string, water: string, facts = '') => `vessel "M" { ${water === '' ? '' : `water: ${water}`} }\nanode A1 { metal: ${metal}  ${facts} }\n`;

describe('water', () => {
    it.each([
        ['zinc', 'salt', []], ['zinc', 'brackish', []], ['zinc', 'fresh', ['error A1']], ['zinc', '', []],
        ['magnesium', 'salt', ['error A1']], ['magnesium', 'brackish', ['error A1']], ['magnesium', 'fresh', []], ['magnesium', '', ['hint A1']],
        ['anode-aluminum', 'salt', []], ['anode-aluminum', 'brackish', []], ['anode-aluminum', 'fresh', []], ['anode-aluminum', '', []],
    ] as const)('%s in %s water', (metal, water, expected) => {
        expect(summary(id, anode(metal, water))).toEqual(expected);
    });
    it('is asked for where no vessel is recorded either', () => {
        expect(summary(id, 'anode A1 { metal: magnesium }\n')).toEqual(['hint A1']);
        expect(summary(id, 'anode A1\n')).toEqual([]);
    });
    it('is due within 30 days for magnesium at sea, in upkeep for zinc in a lake', () => {
        expect(urgencies(id, anode('magnesium', 'salt'))).toEqual(['within-days']);
        expect(raisedBy(id, anode('magnesium', 'salt'))[0]?.draft?.days).toBe(30);
        expect(urgencies(id, anode('zinc', 'fresh'))).toEqual(['in-upkeep']);
    });
});

describe('one bonding', () => {
    const two = (a: string, b: string) => `vessel "M" { water: salt }\nanode A1 { ${a} }\nanode A2 { ${b} }\n`;
    it.each([
        ['two metals', two('metal: zinc  bonded: yes', 'metal: anode-aluminum  bonded: yes'), ['error A2 A1']],
        ['one metal', two('metal: zinc  bonded: yes', 'metal: zinc  bonded: yes'), []],
        ['one not bonded', two('metal: zinc  bonded: yes', 'metal: anode-aluminum  bonded: no'), []],
        ['bonding not recorded', two('metal: zinc', 'metal: anode-aluminum'), ['hint A2 A1']],
        ['bonding not recorded, one metal', two('metal: zinc', 'metal: zinc'), []],
        ['metal of one not recorded', two('bonded: yes', 'metal: zinc  bonded: yes'), []],
        ['a magnesium one, told once', two('metal: zinc  bonded: yes', 'metal: magnesium  bonded: yes'), ['error A2']],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('offers no metal that would differ again', () => {
        const text = two('metal: zinc  bonded: yes', 'metal: anode-aluminum  bonded: yes');
        expect(correctionsIn(id, text)).toEqual(['Record A2 as zinc']);
    });
});

it.each([
    ['zinc in fresh', anode('zinc', 'fresh')], ['magnesium in salt', anode('magnesium', 'salt')], ['bonded magnesium in salt', anode('magnesium', 'salt', 'bonded: yes')],
    ['two metals', 'anode A1 { metal: zinc  bonded: yes }\nanode A2 { metal: anode-aluminum  bonded: yes }\n'],
])('%s: every correction clears it', (_, text) => {
    expect(correctionsIn(id, text).length).toBeGreaterThan(0);
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
});
