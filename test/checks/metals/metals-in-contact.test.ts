import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'metals-in-contact';
/** A base part B and a noble part N in contact. */
const pair = (base: string, noble: string, contact: string, facts: { readonly b?: string; readonly n?: string; readonly before?: string } = {}) =>
    `${facts.before ?? ''}plate B1 { metal: ${base}  ${facts.b ?? ''} }\ntrim-tab N1 { metal: ${noble}  ${facts.n ?? ''} }\ncontact B1, N1 { ${contact} }\n`;
const raised = ['error B1 N1'];

describe('difference of the midpoints', () => {
    it.each([
        ['two tin bronzes', 'gunmetal', 'silicon-bronze', []], // 10 mV
        ['bronze with nickel-copper', 'gunmetal', 'nickel-copper', []], // 195 mV
        ['bronze with 304', 'gunmetal', 'stainless-304', raised], // 210 mV
        ['manganese bronze with 316', 'manganese-bronze', 'stainless-316', raised], // 250 mV
        ['steel with gunmetal', 'mild-steel', 'gunmetal', raised], // 380 mV
        ['steel with 316', 'mild-steel', 'stainless-316', raised], // 610 mV
        ['aluminum with 316', 'aluminum-5083', 'stainless-316', raised], // 830 mV
        ['aluminum with carbon fiber', 'aluminum-6061', 'carbon-fiber', raised],
        ['316 with titanium', 'stainless-316', 'titanium', []],
        ['one metal', 'gunmetal', 'gunmetal', []],
        ['no figure in the table', 'mild-steel', 'stainless-17-4', []],
        ['not a metal', 'aluminum-5083', 'nylon', []],
    ] as const)('%s', (_, base, noble, expected) => {
        expect(summary(id, pair(base, noble, 'wetted: yes  anode-left: 10 %'))).toEqual(expected);
    });
    it('is told with both midpoints, the baser part first, in whatever order they are written', () => {
        const text = 'trim-tab N1 { metal: silicon-bronze }\nplate B1 { metal: mild-steel }\ncontact N1, B1 { wetted: yes  anode-left: 0 % }\n';
        const [problem] = raisedBy(id, text);
        expect(summary(id, text)).toEqual(raised);
        expect(problem?.figures).toMatchObject({ difference: { value: 390, unit: 'mV' }, base: { value: -660 }, noble: { value: -270 }, anodeLeft: { value: 0, unit: '%' } });
        expect(problem?.message).toContain('390 mV apart (-660 and -270 mV)');
    });
});

describe('the anode', () => {
    it.each([
        ['half left', 'wetted: yes  anode-left: 50 %', []], ['under half left', 'wetted: yes  anode-left: 49 %', raised], ['none recorded anywhere', 'wetted: yes', raised],
    ] as const)('%s, 250 mV', (_, contact, expected) => {
        expect(summary(id, pair('manganese-bronze', 'stainless-316', contact))).toEqual(expected);
    });
    it('does not help over 400 mV', () => {
        expect(summary(id, pair('mild-steel', 'stainless-316', 'wetted: yes  anode-left: 100 %'))).toEqual(raised);
        expect(summary(id, pair('mild-steel', 'stainless-316', 'wetted: yes'))).toEqual(raised);
    });
    it('is known by what it protects, by share or by mass', () => {
        const text = (anode: string) => `${pair('manganese-bronze', 'stainless-316', 'wetted: yes')}anode A1 { metal: zinc  ${anode} }\n`;
        expect(summary(id, text('protects: N1  left: 60 %'))).toEqual([]);
        expect(summary(id, text('protects: B1  left: 40 %'))).toEqual(raised);
        expect(summary(id, text('protects: B1  original-mass: 1 kg  present-mass: 0.4 kg'))).toEqual(raised);
        expect(summary(id, text('protects: B1  original-volume: 1 L  present-volume: 0.6 L'))).toEqual([]);
        expect(summary(id, text('left: 90 %'))).toEqual(['hint B1 N1']);
    });
    it('is known by the bonding they share', () => {
        const text = (bonded: string, anode: string) => `${pair('manganese-bronze', 'stainless-316', `wetted: yes${bonded}`)}anode A1 { metal: zinc  left: 80 %  ${anode} }\n`;
        expect(summary(id, text('  bonded: yes', 'bonded: yes'))).toEqual([]);
        expect(summary(id, text('  bonded: yes', 'bonded: no'))).toEqual(['hint B1 N1']);
        expect(summary(id, text('', 'bonded: yes'))).toEqual(['hint B1 N1']);
        const both = pair('manganese-bronze', 'stainless-316', 'wetted: yes', { b: 'bonded: yes', n: 'bonded: yes' });
        expect(summary(id, `${both}anode A1 { metal: zinc  left: 80 %  bonded: yes }\n`)).toEqual([]);
    });
    it('is not itself at fault for being eaten', () => {
        expect(summary(id, 'anode A1 { metal: zinc }\nshaft S1 { metal: stainless-316 }\ncontact A1, S1 { wetted: yes }\n')).toEqual([]);
        expect(summary(id, 'anode A1 { metal: anode-aluminum }\nrudder R1 { metal: mild-steel }\ncontact A1, R1 { wetted: yes }\n')).toEqual([]);
        expect(summary(id, 'anode A1 { metal: aluminum }\nrudder R1 { metal: gunmetal }\ncontact A1, R1 { wetted: yes }\n')).toEqual([]);
    });
});

describe('areas', () => {
    it.each([
        ['noble over ten times, a good anode', 'gunmetal', 'stainless-304', 'area-ratio: 12  anode-left: 90 %', raised],
        ['noble ten times, a good anode', 'gunmetal', 'stainless-304', 'area-ratio: 10  anode-left: 90 %', []],
        ['noble over ten times, anode not recorded', 'gunmetal', 'stainless-304', 'area-ratio: 12', raised],
        ['noble over ten times, close in the series', 'gunmetal', 'nickel-copper', 'area-ratio: 100', []],
        ['stainless screw in an aluminum plate, a good anode', 'aluminum-5083', 'stainless-316', 'area-ratio: 0.05  anode-left: 80 %', []],
        ['stainless screw in an aluminum plate, anode spent', 'aluminum-5083', 'stainless-316', 'area-ratio: 0.05  anode-left: 10 %', raised],
        ['small noble part, bronze', 'gunmetal', 'stainless-304', 'area-ratio: 0.05  anode-left: 10 %', []],
    ] as const)('%s', (_, base, noble, contact, expected) => {
        expect(summary(id, pair(base, noble, `wetted: yes  ${contact}`))).toEqual(expected);
    });
    it('are divided nobler by baser, whichever is written first', () => {
        const text = pair('mild-steel', 'stainless-316', 'wetted: yes', { b: 'exposed-area: 10 cm2', n: 'exposed-area: 1 m2' });
        expect(raisedBy(id, text)[0]?.figures?.['areaRatio']?.value).toBe(1000);
        expect(raisedBy(id, text.replace('contact B1, N1', 'contact N1, B1'))[0]?.figures?.['areaRatio']?.value).toBe(1000);
        expect(raisedBy(id, text)[0]?.message).toContain('1000 times its area');
    });
});

describe('wetted and insulated', () => {
    it.each([
        ['dry', 'wetted: no', {}, []], ['not recorded', '', {}, ['hint B1 N1']], ['wetted at one part', '', { b: 'wetted: yes' }, raised],
        ['one part dry', '', { b: 'wetted: yes', n: 'wetted: no' }, []], ['insulated', 'wetted: yes  insulated: yes', {}, []], ['said not to be insulated', 'wetted: yes  insulated: no', {}, raised],
        ['one part insulated', 'wetted: yes', { n: 'insulated: yes' }, []], ['not recorded, insulated', 'insulated: yes', {}, []],
    ] as const)('%s', (_, contact, facts, expected) => {
        expect(summary(id, pair('mild-steel', 'stainless-316', contact, facts))).toEqual(expected);
    });
    it('does not ask about metals that lie close', () => {
        expect(summary(id, pair('gunmetal', 'nickel-copper', ''))).toEqual([]);
    });
});

describe('runs', () => {
    const run = (opening: string, run_: string, valve = '', joint = '') =>
        `through-hull T1 { size: 1 in  metal: stainless-316  ${opening} }\nvalve V1 { metal: gunmetal  ${valve} }\nadapter A1 { metal: mild-steel }\nrun R1 { ${run_} }: T1 -> ${joint}V1 -> A1\nanode AN1 { metal: zinc  left: 10 %  protects: V1 }\n`;
    const both = ['error V1 T1', 'error A1 V1'];
    it.each([
        ['below the waterline', run('below-waterline: 1 ft', ''), both],
        ['above the waterline', run('above-waterline: 1 ft', ''), ['hint V1 T1', 'hint A1 V1']],
        ['height not recorded', run('', ''), ['hint V1 T1', 'hint A1 V1']],
        ['raw water by service', run('', 'service: raw-water-cooling'), both],
        ['salt water by contents', run('', 'contains: salt-water'), both],
        ['fresh water', run('', 'service: fresh-water'), []],
        ['fresh water by contents, below', run('below-waterline: 1 ft', 'contains: fresh-water'), []],
        ['behind a valve found shut', run('below-waterline: 1 ft', '', 'position: shut'), ['error V1 T1', 'hint A1 V1']],
        ['behind a valve found open', run('below-waterline: 1 ft', '', 'position: open'), both],
        ['insulated at one joint', run('below-waterline: 1 ft', '', '', '{ insulated: yes } '), ['error A1 V1']],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('do not conduct through hose or plastic', () => {
        const between = (part: string) => `through-hull T1 { metal: stainless-316  below-waterline: 1 ft }\n${part}\nvalve V1 { metal: mild-steel }\nrun R1: T1 -> X1 -> V1\n`;
        expect(summary(id, between('hose X1'))).toEqual([]);
        expect(summary(id, between('adapter X1 { material: nylon }'))).toEqual([]);
        expect(summary(id, between('adapter X1'))).toEqual([]);
    });
    it('tell a joint that a contact repeats once, with what is said at either', () => {
        const text = (contact: string) => `through-hull T1 { metal: stainless-316  below-waterline: 1 ft }\nvalve V1 { metal: gunmetal }\nrun R1: T1 -> V1\ncontact V1, T1 { ${contact} }\n`;
        expect(summary(id, text('anode-left: 10 %'))).toEqual(['error V1 T1']);
        expect(summary(id, text('anode-left: 80 %'))).toEqual([]);
        expect(summary(id, `${text('bonded: yes')}anode A1 { metal: zinc  left: 80 %  bonded: yes }\n`)).toEqual([]);
        expect(summary(id, text('insulated: yes'))).toEqual([]);
        expect(summary(id, text('wetted: no'))).toEqual([]);
    });
});

describe('urgency', () => {
    const lying = (state: string) => `survey "1" pre-purchase { attended 2026-10-06 ${state} }\n`;
    it.each([
        ['under 400 mV', pair('mild-steel', 'gunmetal', 'wetted: yes  anode-left: 0 %'), 'in-upkeep'],
        ['over 400 mV', pair('mild-steel', 'stainless-316', 'wetted: yes'), 'next-haul-out'],
        ['over 400 mV, wasted, ashore', pair('mild-steel', 'stainless-316', 'wetted: yes', { b: 'condition: defective', before: lying('ashore') }), 'before-launch'],
        ['over 400 mV, wasted, afloat', pair('mild-steel', 'stainless-316', 'wetted: yes', { b: 'condition: defective', before: lying('afloat') }), 'next-haul-out'],
        ['over 400 mV, the nobler defective', pair('mild-steel', 'stainless-316', 'wetted: yes', { n: 'condition: defective', before: lying('ashore') }), 'next-haul-out'],
    ] as const)('%s', (_, text, expected) => {
        expect(urgencies(id, text)).toEqual([expected]);
    });
});

it('says in fresh water that the figures are of sea water', () => {
    const message = (water: string) => raisedBy(id, pair('mild-steel', 'stainless-316', 'wetted: yes', { before: `vessel "M" { water: ${water} }\n` }))[0]?.message;
    expect(message('fresh')).toContain('sea-water figure');
    expect(message('salt')).not.toContain('sea-water figure');
});

it.each([
    ['contact', pair('mild-steel', 'gunmetal', 'wetted: yes  anode-left: 0 %')], ['contact, said not to be insulated', pair('mild-steel', 'gunmetal', 'insulated: no  wetted: yes  anode-left: 0 %')],
    ['contact without facts', 'plate B1 { metal: mild-steel  wetted: yes }\ntrim-tab N1 { metal: stainless-316  wetted: yes }\ncontact B1, N1\n'],
    ['joint', 'through-hull T1 { metal: stainless-316  below-waterline: 1 ft }\nvalve V1 { metal: mild-steel }\nrun R1: T1 -> V1\n'],
    ['joint with facts', 'through-hull T1 { metal: stainless-316  below-waterline: 1 ft }\nvalve V1 { metal: mild-steel }\nrun R1: T1 -> { insulated: no } V1\n'],
    ['joint that a contact repeats', 'through-hull T1 { metal: stainless-316  below-waterline: 1 ft }\nvalve V1 { metal: gunmetal }\nrun R1: T1 -> V1\ncontact V1, T1 { anode-left: 10 % }\n'],
])('%s: every correction clears it', (_, text) => {
    expect(correctionsIn(id, text).length).toBeGreaterThan(1);
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
});
