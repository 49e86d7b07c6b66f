import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'valve-or-fitting-unsuitable';
const drain = (valve: string, opening = 'below-waterline: 1 ft', way = 'SV1', parts = '', end = '-> S1') =>
    `through-hull TH1 { size: 1 in  ${opening} }\nvalve SV1 { ${valve} }\nsink S1\n${parts}run R1: TH1 -> ${way} ${end}\n`;

describe('pattern', () => {
    it.each([
        ['ball-valve', []], ['flanged-seacock', []], ['plug-cock', []], ['gate-valve', ['error SV1 TH1']], ['globe-valve', ['error SV1 TH1']], ['check-valve', []], ['diverter', []],
    ] as const)('%s', (pattern, expected) => {
        expect(summary(id, drain(`pattern: ${pattern}`))).toEqual(expected);
    });
    it.each([
        ['above the waterline', drain('pattern: gate-valve', 'above-waterline: 1 in'), []],
        ['height not recorded', drain('pattern: gate-valve', ''), []],
        ['second valve of the run', drain('pattern: ball-valve', undefined, 'SV1 -> SV2', 'valve SV2 { pattern: gate-valve }\n'), ['error SV2 TH1']],
        ['behind a cap', drain('pattern: gate-valve', undefined, 'SV1', '', '-> capped'), ['error SV1 TH1']],
        ['behind a blank', drain('pattern: gate-valve', undefined, 'SV1', '', '-> blanked'), []],
        ['in no run from the hull', 'valve SV1 { pattern: gate-valve }\nsink S1\nrun R1: SV1 -> S1\n', []],
    ] as const)('gate valve %s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('leaves brass to brass-below-waterline', () => {
        const text = drain('pattern: ball-valve  metal: brass');
        expect(summary(id, text)).toEqual([]);
        expect(summary('brass-below-waterline', text)).toEqual(['error SV1']);
    });
});

describe('material', () => {
    it.each([
        ['cast iron below', drain('metal: cast-iron'), ['error SV1 TH1']],
        ['cast iron above', drain('metal: cast-iron', 'above-waterline: 100 mm'), []],
        ['nylon valve', drain('material: nylon'), ['error SV1 TH1']],
        ['nylon valve, listed', drain('material: nylon  listed: yes'), []],
        ['nylon valve, not listed', drain('material: nylon  listed: no'), ['error SV1 TH1']],
        ['reinforced nylon', drain('material: reinforced-nylon'), []],
        ['listed composite', drain('material: composite'), []],
        ['acetal opening below', drain('', 'material: acetal  below-waterline: 1 in'), ['error TH1']],
        ['acetal opening 300 mm above', drain('', 'material: acetal  above-waterline: 300 mm'), ['error TH1']],
        ['acetal opening 301 mm above', drain('', 'material: acetal  above-waterline: 301 mm'), []],
        ['material not recorded', drain(''), []],
        ['nylon elbow between opening and valve', drain('', undefined, 'E1 -> SV1', 'elbow E1 { material: nylon }\n'), ['error E1 TH1']],
        ['nylon elbow behind the valve', drain('', undefined, 'SV1 -> E1', 'elbow E1 { material: nylon }\n'), []],
        ['plastic strainer behind the valve', drain('', undefined, 'SV1 -> ST1', 'strainer ST1 { material: polypropylene }\n'), []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('tells an opening that feeds two runs once', () => {
        expect(summary(id, 'sea-chest C1 { material: pvc  below-waterline: 1 ft }\nvalve V1\nvalve V2\nsink S1\nsink S2\nrun R1: C1 -> V1 -> S1\nrun R2: C1 -> V2 -> S2\n')).toEqual(['error C1']);
    });
});

describe('urgency', () => {
    const ashore = 'survey "1" pre-purchase { attended 2026-10-06 ashore }\n';
    it.each([
        ['pattern: gate-valve', 'next-haul-out'], ['pattern: gate-valve  spins: yes', 'before-launch'], ['pattern: gate-valve  leaks: yes', 'before-launch'],
        ['pattern: gate-valve  weeps: yes', 'before-launch'], ['material: nylon  cracked: yes', 'before-launch'], ['pattern: gate-valve  works: seized', 'next-haul-out'],
    ] as const)('%s: %s', (valve, expected) => {
        expect(urgencies(id, ashore + drain(valve))).toEqual([expected]);
    });
    it('is at once afloat', () => {
        expect(urgencies(id, drain('pattern: gate-valve  spins: yes'))).toEqual(['at-once']);
        expect(raisedBy(id, drain('pattern: gate-valve  spins: yes'))[0]?.message).toContain('its stem spins');
    });
});

it('names the opening with its depth, and the inflow', () => {
    const [problem] = raisedBy(id, drain('size: 1 in  pattern: gate-valve', 'below-waterline: 14 in'));
    expect(problem?.message).toContain('is a gate valve on TH1, 14 in (356 mm) below the waterline');
    expect(problem?.message).toMatch(/gpm/);
    expect(problem?.draft?.because).toContain('{TH1.flooding-rate}');
    expect(raisedBy(id, drain('', 'material: acetal  above-waterline: 4 in'))[0]?.message).toContain('4 in (102 mm) above the waterline');
});

it('points at the pattern or the material', () => {
    const gate = drain('pattern: gate-valve');
    expect(pointedAt(gate, raisedBy(id, gate)[0]!)).toBe('gate-valve');
    const iron = drain('metal: cast-iron');
    expect(pointedAt(iron, raisedBy(id, iron)[0]!)).toBe('cast-iron');
});

it.each([
    ['gate', drain('pattern: gate-valve')], ['cast iron', drain('metal: cast-iron')], ['nylon valve', drain('material: nylon')], ['nylon opening', drain('', 'material: nylon  below-waterline: 1 ft')],
])('%s: every correction clears it', (_, text) => {
    expect(correctionsIn(id, text).length).toBeGreaterThan(0);
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
});
