/** The same trouble with metals, recorded in the several ways that the vocabulary allows. */
import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

describe('metals-in-contact', () => {
    const id = 'metals-in-contact';
    it('pairs each of three parts with the next, as they are written', () => {
        const parts = 'through-hull T1 { metal: gunmetal }\nplate P1 { metal: mild-steel }\ntrim-tab N1 { metal: stainless-316 }\n';
        expect(summary(id, `${parts}contact T1, P1, N1 { wetted: yes  anode-left: 10 % }\n`)).toEqual(['error P1 T1', 'error P1 N1']);
        expect(summary(id, `${parts}contact P1, T1, N1 { wetted: yes  anode-left: 10 % }\n`)).toEqual(['error P1 T1', 'error T1 N1']);
    });
    it('tells every joint of a run once', () => {
        const text = 'vessel "M" { water: salt }\nthrough-hull T1 { metal: aluminum-5083  below-waterline: 1 ft }\nseacock V1 { metal: bronze }\nhose-tail B1 { metal: aluminum-5083 }\nelbow E1 { metal: bronze }\nrun R1: T1 -> V1 -> B1 -> E1\n';
        expect(summary(id, text)).toEqual(['error T1 V1', 'error B1 V1', 'error B1 E1']);
    });
    it('proposes the urgency of the step that the areas lead to', () => {
        const pair = (ratio: string) => `shaft S1 { metal: stainless-316 }\npropeller P1 { metal: manganese-bronze }\ncontact S1, P1 { wetted: yes  anode-left: 10 %  ${ratio} }\n`;
        expect(urgencies(id, pair(''))).toEqual(['in-upkeep']);
        expect(urgencies(id, pair('area-ratio: 20'))).toEqual(['next-haul-out']);
    });
    it('follows a run written in the way of the water', () => {
        const text = (position: string) => `through-hull T1 { metal: stainless-316  below-waterline: 1 ft }\nvalve V1 { metal: mild-steel  ${position} }\nelbow E1 { metal: bronze }\nanode A1 { metal: zinc  left: 10 %  protects: V1 }\nrun R1: E1 -> V1 -> T1\n`;
        expect(summary(id, text(''))).toEqual(['error V1 E1', 'error V1 T1']);
        expect(summary(id, text('position: shut'))).toEqual(['hint V1 E1', 'error V1 T1']);
    });
    it('tells of a fitting in a metal hull by whether it is insulated', () => {
        const text = (facts: string, hull = 'aluminum-5083') => `vessel "M" { hull-material: ${hull} }\nthrough-hull T1 { metal: bronze  below-waterline: 1 ft  ${facts} }\n`;
        expect(summary(id, text('insulated: no'))).toEqual(['error T1']);
        expect(summary(id, text(''))).toEqual(['hint T1']);
        expect(summary(id, text('insulated: yes'))).toEqual([]);
        expect(summary(id, text('insulated: no', 'grp'))).toEqual([]);
    });
});

describe('anode-nearly-gone', () => {
    it.each([
        ['bow-thruster B1 { tunnel-anode-left: 49 % }\n', ['error B1']], ['bow-thruster B1 { tunnel-anode-left: 50 % }\n', []],
        ['heat-exchanger H1 { anode-left: 20 % }\n', ['error H1']], ['anode A1 { metal: zinc  left: 90 %  painted: yes }\n', ['error A1']], ['anode A1 { metal: zinc  left: 90 %  painted: no }\n', []],
    ] as const)('%s', (text, expected) => {
        expect(summary('anode-nearly-gone', text)).toEqual(expected);
    });
});

it.each([['1 ohm', []], ['1.1 ohm', ['error A1']]] as const)('bonding-resistance-high: an anode at %s from its part', (ohm, expected) => {
    expect(summary('bonding-resistance-high', `anode A1 { metal: zinc  resistance: ${ohm} }\n`)).toEqual(expected);
});

describe('hull-potential-outside-range', () => {
    const id = 'hull-potential-outside-range';
    it('is judged without the cell where no usual one would bring it into range', () => {
        expect(raisedBy(id, 'vessel "M" { water: salt }\nhull-potential H1 { potential: -820 mV  gear: wood }\n')[0]?.message).toContain('its cell is not recorded');
        expect(summary(id, 'vessel "M" { water: salt }\nhull-potential H1 { potential: -650 mV  gear: wood }\n')).toEqual(['hint H1']);
    });
    it('takes the range from the hull where it is not said', () => {
        const text = (hull: string, more = '') => `vessel "M" { water: salt  hull-material: ${hull} }\n${more}hull-potential H1 { potential: -600 mV  cell: silver-chloride }\n`;
        expect(summary(id, text('mild-steel'))).toEqual(['error H1']);
        expect(summary(id, text('oak'))).toEqual([]);
        expect(summary(id, text('grp'))).toEqual(['hint H1']);
        expect(summary(id, text('grp', 'shaft S1\n'))).toEqual(['error H1']);
        expect(summary(id, text('grp', 'saildrive S1\n'))).toEqual(['hint H1']);
    });
    it('knows a small shift with whatever cell', () => {
        expect(summary(id, 'hull-potential H1 { potential: -700 mV  own-potential: -550 mV }\n')).toEqual(['error H1']);
        expect(summary(id, 'vessel "M" { water: fresh }\nhull-potential H1 { potential: -700 mV  own-potential: -550 mV }\n')).toEqual(['hint H1']);
    });
});

it.each([
    ['vessel "M" { hull-material: aluminum-5083 }\ncoating C1 { paint: copper-antifouling }\n', ['error C1']], ['vessel "M" { hull-material: grp }\ncoating C1 { paint: copper-antifouling }\n', []],
    ['saildrive S1 { metal: aluminum }\ncoating C1 { paint: copper-antifouling  serves: S1 }\n', ['error C1']], ['vessel "M" { hull-material: aluminum }\nrudder R1 { metal: bronze }\ncoating C1 { paint: copper-antifouling  serves: R1 }\n', []],
] as const)('copper-paint-on-aluminum: %s', (text, expected) => {
    expect(summary('copper-paint-on-aluminum', text)).toEqual(expected);
});
