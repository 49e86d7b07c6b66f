import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'opening-without-valve';
const drain = (opening: string, way = 'H1', parts = '', run = '', hose = 'bore: 25 mm') =>
    `through-hull TH1 { size: 1 in  ${opening} }\nhose H1 { ${hose} }\nsink S1\n${parts}run R1 { ${run} }: TH1 -> ${way} -> S1\n`;
const below = 'below-waterline: 6 in';

describe('what stops the water', () => {
    it.each([
        ['nothing', drain(below), ['error TH1']],
        ['seacock', drain(below, 'SV1 -> H1', 'seacock SV1\n'), []],
        ['valve only behind a hose', drain(below, 'H1 -> SV1', 'valve SV1\n'), ['error TH1']],
        ['run written in the way of the water', `through-hull TH1 { ${below} }\nhose H1\nsink S1\nrun R1: S1 -> H1 -> TH1\n`, ['error TH1']],
        ['the same with a valve at the hull', `through-hull TH1 { ${below} }\nvalve SV1\nhose H1\nsink S1\nrun R1: S1 -> H1 -> SV1 -> TH1\n`, []],
        ['at the waterline, unreinforced', 'through-hull TH1 { below-waterline: 0 mm }\nhose H1 { reinforcement: none }\nsink S1\nrun R1: TH1 -> H1 -> S1\n', ['error TH1']],
        ['gate valve: told by another check', drain(below, 'SV1 -> H1', 'valve SV1 { pattern: gate-valve }\n'), []],
        ['check valve', drain(below, 'SV1 -> H1', 'check-valve SV1\n'), ['error TH1']],
        ['valve of check pattern', drain(below, 'SV1 -> H1', 'valve SV1 { pattern: check-valve }\n'), ['error TH1']],
        ['diverter', drain(below, 'Y1 -> H1', 'y-valve Y1\n'), ['error TH1']],
        ['valve of diverter pattern', drain(below, 'SV1 -> H1', 'valve SV1 { pattern: diverter }\n'), ['error TH1']],
        ['diverter behind a seacock', drain(below, 'SV1 -> Y1 -> H1', 'seacock SV1\ny-valve Y1\n'), []],
        ['welded standpipe', drain(`${below}  standpipe: yes`), []],
        ['welded standpipe to above the heeled waterline', drain(`${below}  standpipe: yes  standpipe-above-waterline: 50 mm`), []],
        ['standpipe that does not rise above it', drain(`${below}  standpipe: yes  standpipe-above-waterline: 0 mm`), ['error TH1']],
        ['no standpipe', drain(`${below}  standpipe: no`), ['error TH1']],
        ['closed for good', drain(`${below}  closure: glassed-over`), []],
        ['capped', drain(`${below}  closure: capped`), []],
        ['blank in the run', 'through-hull TH1 { below-waterline: 1 ft }\nhose H1\nblank B1\nrun R1: TH1 -> H1 -> B1\n', []],
        ['left open: told by another check', 'through-hull TH1 { size: 1 in  below-waterline: 1 ft }\nhose H1\nrun R1: TH1 -> H1 -> open\n', []],
        ['cockpit drain that ends open', 'through-hull TH1 { size: 1 in  below-waterline: 1 ft }\nhose H1\nrun R1 { service: cockpit-drain }: TH1 -> H1 -> open\n', ['error TH1']],
        ['exhaust outlet', drain(below, 'H1', '', 'service: exhaust'), []],
        ['no run', 'through-hull TH1 { size: 1 in  below-waterline: 6 in }\n', []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
});

describe('between the waterline at rest and heeled', () => {
    const heeled = 'above-waterline: 4 in  below-heeled-waterline: yes';
    it.each([
        ['hose not reinforced', drain(heeled, 'H1', '', '', 'reinforcement: none'), ['error TH1']],
        ['wire hose', drain(heeled, 'H1', '', '', 'reinforcement: wire'), []],
        ['not recorded', drain(heeled), ['hint TH1 H1']],
        ['one of two hoses not reinforced', drain(heeled, 'H1 -> H2', 'hose H2 { reinforcement: none }\n', '', 'reinforcement: wire'), ['error TH1']],
        ['pipe', drain(heeled, 'P1', 'pipe P1\n'), []],
        ['stays above', drain('above-waterline: 4 in  below-heeled-waterline: no', 'H1', '', '', 'reinforcement: none'), []],
        ['heeled waterline not recorded', drain('above-waterline: 4 in', 'H1', '', '', 'reinforcement: none'), []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('waits for the next haul-out', () => {
        expect(urgencies(id, drain(heeled, 'H1', '', '', 'reinforcement: none'))).toEqual(['next-haul-out']);
    });
});

it('is a danger of flooding below the waterline', () => {
    expect(urgencies(id, drain(below))).toEqual(['at-once']);
    expect(urgencies(id, `survey "1" pre-purchase { state: ashore }\n${drain(below)}`)).toEqual(['before-launch']);
});

it('gives the inflow and refers to it', () => {
    const [problem] = raisedBy(id, drain(below));
    expect(problem?.message).toContain('6 in (152 mm) below the waterline');
    expect(problem?.message).toMatch(/[\d.]+ L\/min \([\d.]+ gpm\)/);
    expect(problem?.draft?.because).toContain('{TH1.flooding-rate}');
});

it('is cleared by each correction it offers', () => {
    expect(correctionsIn(id, drain(below))).toEqual(['Insert a seacock after TH1', 'Record a welded standpipe at TH1']);
    for (const title of correctionsIn(id, drain(below))) {
        expect(summary(id, corrected(drain(below), id, title)), title).toEqual([]);
    }
    expect(correctionsIn(id, drain(`${below}  standpipe: yes  standpipe-above-waterline: 0 mm`))).toEqual(['Insert a seacock after TH1']);
});
