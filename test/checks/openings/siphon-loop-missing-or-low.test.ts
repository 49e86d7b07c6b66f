import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'siphon-loop-missing-or-low';
const intake = (toilet: string, loop?: string, { opening = 'below-waterline: 1 ft', service = 'service: toilet-intake' } = {}) =>
    `through-hull TH1 { size: 3/4 in  ${opening} }\nseacock SC1\ntoilet T1 { ${toilet} }\n${loop === undefined ? '' : `vented-loop VL1 { ${loop} }\n`}run R1 { ${service} }: TH1 -> SC1 ->${loop === undefined ? '' : ' VL1 ->'} T1\n`;
const below = 'rim-below-waterline: 2 in';

describe('toilet', () => {
    it.each([
        ['below, no loop', intake(below), ['error T1']],
        ['above, no loop', intake('rim-above-waterline: 2 in'), []],
        ['at the waterline, no loop', intake('rim-below-waterline: 0 mm'), []],
        ['rim not recorded, no loop', intake(''), ['hint T1']],
        ['rim not recorded, a loop', intake('', 'top-above-waterline: 1 ft'), []],
        ['rim not recorded, opening above', intake('', undefined, { opening: 'above-waterline: 1 ft' }), []],
        ['below, loop 149 mm up', intake(below, 'top-above-waterline: 149 mm'), ['error VL1 T1']],
        ['below, loop 150 mm up', intake(below, 'top-above-waterline: 150 mm'), []],
        ['below, loop under the waterline', intake(below, 'top-above-waterline: -50 mm'), ['error VL1 T1']],
        ['the height over the heeled waterline decides', intake(below, 'top-above-waterline: 400 mm  top-above-heeled-waterline: 100 mm'), ['error VL1 T1']],
        ['and clears', intake(below, 'top-above-waterline: 140 mm  top-above-heeled-waterline: 160 mm'), []],
        ['below, height of the loop not recorded', intake(below, ''), ['hint VL1 T1']],
        ['below, air valve stuck', intake(below, 'top-above-waterline: 400 mm  vent-works: no'), ['error VL1 T1']],
        ['below, air valve works', intake(below, 'top-above-waterline: 400 mm  vent-works: yes'), []],
        ['opening glassed over', intake(below, undefined, { opening: 'below-waterline: 1 ft  closure: glassed-over' }), []],
        ['in no run', 'toilet T1 { rim-below-waterline: 2 in }\n', []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('needs a loop in each of its runs, before it', () => {
        const two = `through-hull TH1\nthrough-hull TH2\nvented-loop VL1 { top-above-waterline: 1 ft }\ntoilet T1 { ${below} }\nholding-tank HT1\nrun R1 { service: toilet-intake }: TH1 -> T1\nrun R2 { service: toilet-discharge }: TH2 -> VL1 -> T1\n`;
        expect(summary(id, two)).toEqual(['error T1']);
        expect(raisedBy(id, two)[0]?.related?.map(({ span }) => two.slice(span.start, span.end))).toEqual(['R1']);
        expect(summary(id, `through-hull TH1\nvented-loop VL1 { top-above-waterline: 1 ft }\ntoilet T1 { ${below} }\nholding-tank HT1\nrun R1: TH1 -> T1 -> VL1 -> HT1\n`)).toEqual(['error T1']);
    });
});

describe('muffler', () => {
    const exhaust = (muffler: string, parts = '', way = '') => `through-hull TH1 { size: 3 in  above-waterline: 2 in }\nexhaust-hose H1\nmuffler MF1 { ${muffler} }\nmain-engine E1\n${parts}run X1 { service: exhaust }: TH1 -> H1 ->${way} MF1 -> E1\n`;
    it.each([
        ['below, inside the run', exhaust('inlet-above-waterline: -100 mm'), ['error MF1']],
        ['above', exhaust('inlet-above-waterline: 100 mm'), []],
        ['below, behind a loop', exhaust('inlet-above-waterline: -100 mm', 'vented-loop VL1 { top-above-waterline: 300 mm }\n', ' VL1 ->'), []],
        ['not recorded, outlet above', exhaust(''), []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
});

describe('bilge outlet', () => {
    it.each([
        ['199 mm up, no loop', 'bilge-pump P1 { outlet-above-waterline: 199 mm  looped: no }\n', ['error P1']],
        ['200 mm up, no loop', 'bilge-pump P1 { outlet-above-waterline: 200 mm  looped: no }\n', []],
        ['low, looped', 'bilge-pump P1 { outlet-above-waterline: 50 mm  looped: yes }\n', []],
        ['low, loop not recorded', 'bilge-pump P1 { outlet-above-waterline: 50 mm }\n', ['hint P1']],
        ['height not recorded', 'bilge-pump P1 { looped: no }\n', []],
        ['height known by its opening', 'through-hull TH1 { above-waterline: 4 in }\nhose H1\nbilge-pump P1 { looped: no }\nrun R1: TH1 -> H1 -> P1\n', ['error P1 TH1']],
        ['its own height goes first', 'through-hull TH1 { above-waterline: 4 in }\nhose H1\nbilge-pump P1 { looped: no  outlet-above-waterline: 300 mm }\nrun R1: TH1 -> H1 -> P1\n', []],
        ['opening below the waterline', 'through-hull TH1 { below-waterline: 4 in }\nhose H1\nbilge-pump P1 { looped: no }\nrun R1: TH1 -> H1 -> P1\n', ['error P1 TH1']],
        ['a vented loop in its run', 'through-hull TH1 { above-waterline: 4 in }\nvented-loop VL1\nbilge-pump P1\nrun R1: TH1 -> VL1 -> P1\n', []],
        ['hand pump too', 'manual-bilge-pump P1 { outlet-above-waterline: 5 in  looped: no }\n', ['error P1']],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('refers in its draft to the fact that told the height', () => {
        expect(raisedBy(id, 'bilge-pump P1 { outlet-above-waterline: 5 in  looped: no }\n')[0]?.draft?.seen).toContain('{P1.outlet-above-waterline} above');
        expect(raisedBy(id, 'through-hull TH1 { below-waterline: 4 in }\nhose H1\nbilge-pump P1 { looped: no }\nrun R1: TH1 -> H1 -> P1\n')[0]?.draft?.seen).toContain('{TH1.below-waterline} below');
    });
});

it.each([['service: toilet-intake', 'before-departure'], ['service: raw-water-cooling', 'before-departure'], ['service: sink-drain', 'in-upkeep'], ['', 'in-upkeep']])('%s: %s', (service, expected) => {
    expect(urgencies(id, intake(below, undefined, { service }))).toEqual([expected]);
});

it('gives both heights in both systems', () => {
    const [problem] = raisedBy(id, intake(below, 'top-above-waterline: 4 in'));
    expect(problem?.message).toContain('only 102 mm (4 in) above the waterline');
    expect(problem?.figures).toEqual({ loop: { value: 102, unit: 'mm' }, least: { value: 150, unit: 'mm' } });
    const text = intake(below, 'top-above-waterline: 4 in');
    expect(raisedBy(id, text).map(p => pointedAt(text, p))).toEqual(['4 in']);
});

it.each([
    ['no loop', intake(below)], ['low loop', intake(below, 'top-above-waterline: 4 in')], ['low when heeled', intake(below, 'top-above-heeled-waterline: 50 mm')],
    ['air valve', intake(below, 'top-above-waterline: 1 ft  vent-works: no')], ['bilge outlet', 'bilge-pump P1 { outlet-above-waterline: 5 in  looped: no }\n'],
])('%s: every correction clears it', (_, text) => {
    expect(correctionsIn(id, text).length).toBeGreaterThan(0);
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
});
