import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'hose-and-spigot-differ';
const joined = (spigot: string, bore: string, opening = '') => opening
    ? `through-hull TH1 { ${opening} }\nvalve SV1 { spigot: ${spigot} }\nhose H1 { bore: ${bore} }\nrun R1: TH1 -> SV1 -> H1\n`
    : `valve SV1 { spigot: ${spigot} }\nhose H1 { bore: ${bore} }\nrun R1: SV1 -> H1\n`;

describe('limits', () => {
    it.each([
        ['38 mm', '36.4 mm', 0], ['38 mm', '36.3 mm', 1], // push fit, 1.6 mm
        ['38 mm', '39.65 mm', 0], ['38 mm', '39.75 mm', 1], // over 1 in: 1.65 mm
        ['25.4 mm', '26.25 mm', 0], ['25.4 mm', '26.4 mm', 1], // to 1 in: 0.89 mm
        ['8 mm', '8.5 mm', 0], ['8 mm', '8.6 mm', 1], // under 3/8 in: 0.51 mm
        ['1-1/2 in', '38 mm', 0], ['2 in', '50 mm', 0], ['2 in', '51 mm', 0], ['32 mm', '1-1/4 in', 0], ['1 in', '25 mm', 0], ['3/4 in', '19 mm', 0],
        ['1-1/4 in', '1-1/2 in', 1], ['32 mm', '38 mm', 1], ['3/4 in', '1 in', 1],
    ])('tail %s, hose %s: %i', (spigot, bore, count) => {
        expect(summary(id, joined(spigot, bore))).toEqual(count === 0 ? [] : ['error H1 SV1']);
    });

    it('gives the figures in both systems', () => {
        const [problem] = raisedBy(id, joined('1-1/4 in', '1-1/2 in'));
        expect(problem?.message).toContain('1-1/2 in (38.1 mm)');
        expect(problem?.message).toContain('6.35 mm (1/4 in) loose');
        expect(problem?.figures?.['difference']?.value).toBeCloseTo(6.35, 3);
        expect(problem && pointedAt(joined('1-1/4 in', '1-1/2 in'), problem)).toBe('1-1/2 in');
    });

    it('asks to measure again where wire hose could not have been pushed on', () => {
        const text = (reinforcement: string) => `valve SV1 { spigot: 45 mm }\nhose H1 { bore: 38 mm  reinforcement: ${reinforcement} }\nrun R1: SV1 -> H1\n`;
        expect(raisedBy(id, text('wire'))[0]?.message).toContain('Measure both again');
        expect(raisedBy(id, text('textile'))[0]?.message).not.toContain('Measure both again');
    });
});

describe('which end meets which', () => {
    it('judges a hose of two bores at each of its ends in the order of the run', () => {
        const run = (ends: string) => `valve SV1 { spigot: 32 mm }\nhose H1 { ends: ${ends} }\nstrainer ST1 { spigot: 38 mm }\nrun R1: SV1 -> H1 -> ST1\n`;
        expect(summary(id, run('32 mm, 38 mm'))).toEqual([]);
        expect(summary(id, run('38 mm, 32 mm'))).toEqual(['error H1 SV1', 'error H1 ST1']);
        expect(summary(id, corrected(run('38 mm, 32 mm'), id, 'Turn H1 round: ends 32 mm, 38 mm'))).toEqual([]);
    });

    it('judges a hose that begins a run at the end that is joined', () => {
        expect(summary(id, 'hose H1 { ends: 38 mm, 32 mm }\nstrainer ST1 { spigot: 32 mm }\nrun R1: H1 -> ST1\n')).toEqual([]);
    });

    it('takes the tail measured at the joint before that of the part', () => {
        expect(summary(id, 'valve SV1 { spigot: 38 mm }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> { spigot: 32 mm } H1\n')).toEqual(['error H1 SV1']);
        expect(summary(id, 'valve SV1 { spigot: 32 mm }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> { spigot: 38 mm } H1\n')).toEqual([]);
    });

    it('takes the port of an appliance as its tail', () => {
        expect(summary(id, 'sink SK1 { port: 32 mm }\nhose H1 { bore: 38 mm }\nrun R1: H1 -> SK1\n')).toEqual(['error H1 SK1']);
    });

    it('inserts an adapter whose ends follow the run, either way', () => {
        const forward = 'valve SV1 { spigot: 32 mm }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> H1\n';
        const back = 'valve SV1 { spigot: 32 mm }\nhose H1 { bore: 38 mm }\nrun R1: H1 -> SV1\n';
        const forwardDone = corrected(forward, id, 'Insert a stepped adapter of 32 mm to 38 mm between SV1 and H1');
        const backDone = corrected(back, id, 'Insert a stepped adapter of 38 mm to 32 mm between H1 and SV1');
        for (const done of [forwardDone, backDone]) {
            expect(summary(id, done)).toEqual([]);
            expect(summary('adapter-does-not-match', done)).toEqual([]);
        }
        expect(backDone).toContain('ends: 38 mm, 32 mm');
    });
});

describe('urgency', () => {
    it.each([
        ['loose below the waterline, afloat', joined('32 mm', '38 mm', 'below-waterline: 10 in') + 'survey "1" pre-purchase { state: afloat }\n', 'at-once'],
        ['loose below the waterline, ashore', joined('32 mm', '38 mm', 'below-waterline: 10 in') + 'survey "1" pre-purchase { state: ashore }\n', 'before-launch'],
        ['forced below the waterline', joined('41 mm', '38 mm', 'below-waterline: 10 in'), 'next-haul-out'],
        ['above the waterline', joined('32 mm', '38 mm', 'above-waterline: 10 in'), 'in-upkeep'],
        ['height not recorded', joined('32 mm', '38 mm', 'size: 1 in'), 'next-haul-out'],
    ])('%s', (_, text, urgency) => {
        expect(urgencies(id, text)).toEqual([urgency]);
    });

    it('is that of flooding where a forced hose weeps below the waterline', () => {
        expect(urgencies(id, 'through-hull TH1 { below-waterline: 1 ft  spigot: 41 mm }\nhose H1 { bore: 38 mm }\nrun R1: TH1 -> { weeps: yes } H1\n')).toEqual(['at-once']);
    });
});

describe('a fact that is not recorded', () => {
    it('asks for the tail where only another nominal size is known', () => {
        const text = 'valve SV1 { size: 1-1/4 in }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> H1\n';
        expect(summary(id, text)).toEqual(['hint SV1 H1']);
        expect(raisedBy(id, text)[0]?.message).toContain('(spigot)');
        expect(raisedBy(id, text)[0]?.message).toContain('pipe size is not hose size');
    });
    it('asks for the bore where only the tail is known, once for a hose', () => {
        expect(summary(id, 'valve SV1 { spigot: 38 mm }\nhose H1\nstrainer ST1 { spigot: 38 mm }\nrun R1: SV1 -> H1 -> ST1\n')).toEqual(['hint H1 SV1']);
    });
    it('says nothing of a hose joined to a hose', () => {
        expect(summary(id, 'hose H1 { bore: 38 mm }\nhose H2 { bore: 32 mm }\nrun R1: H1 -> H2\n')).toEqual([]);
    });
});

describe('what other checks take', () => {
    const fuel = (bore: string) => `fitting T1 { spigot: 12 mm }\nhose H1 { bore: ${bore} }\nrun R1 { service: fuel-feed }: T1 -> H1\n`;
    it('leaves a loose fuel hose to the check of fuel hose, and keeps a tight one', () => {
        expect(summary(id, fuel('16 mm'))).toEqual([]);
        expect(summary('fuel-hose-loose-on-spigot', fuel('16 mm'))).toEqual(['error H1 T1']);
        expect(summary(id, fuel('10 mm'))).toEqual(['error H1 T1']);
    });
    it('leaves adapters to their own check', () => {
        expect(summary(id, 'stepped-adapter A1 { ends: 25 mm, 32 mm }\nhose H1 { bore: 38 mm }\nrun R1: A1 -> H1\n')).toEqual([]);
    });
});

it('offers the other unit only where the number would then suit', () => {
    expect(correctionsIn(id, joined('38 mm', '38 in')).filter(title => title.startsWith('Read'))).toEqual(['Read 38 in as 38 mm']);
    expect(correctionsIn(id, joined('3.2 mm', '3.2 cm')).filter(title => title.startsWith('Read'))).toEqual(['Read 3.2 cm as 3.2 mm', 'Read 3.2 mm as 3.2 cm']);
    expect(correctionsIn(id, joined('32 mm', '38 mm')).filter(title => title.startsWith('Read'))).toEqual([]);
});
