import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'clamp-single';
const drain = (valve: string, joint: string, opening = 'below-waterline: 1 ft', service = 'sink-drain') =>
    `through-hull TH1 { ${opening} }\nvalve SV1 { ${valve} }\nhose H1\nrun R1 { service: ${service} }: TH1 -> SV1 -> { ${joint} } H1\n`;

describe('where', () => {
    it.each([
        ['one below the waterline', drain('', 'clamps: 1'), ['warning H1 SV1']],
        ['none below the waterline', drain('', 'clamps: 0'), ['error H1 SV1']],
        ['one above the waterline', drain('', 'clamps: 1', 'above-waterline: 1 ft'), []],
        ['one in fresh water', drain('', 'clamps: 1', 'below-waterline: 1 ft', 'fresh-water'), []],
        ['one on exhaust, above the waterline', drain('', 'clamps: 1', 'above-waterline: 1 ft', 'exhaust'), ['error H1 SV1']],
        ['one on exhaust, on a short tail', drain('tail-length: 20 mm', 'clamps: 1', 'above-waterline: 1 ft', 'exhaust'), ['error H1 SV1']],
        ['two', drain('', 'clamps: 2'), []],
        ['three', drain('', 'clamps: 3'), []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });

    it('is advice where the tail has room, or is not recorded; silent where it has none', () => {
        expect(summary(id, drain('tail-length: 40 mm', 'clamps: 1'))).toEqual(['warning H1 SV1']);
        expect(summary(id, drain('tail-length: 28 mm', 'clamps: 1'))).toEqual(['warning H1 SV1']); // 2 × 8 + 6 + 6, the narrowest band
        expect(summary(id, drain('tail-length: 27.9 mm', 'clamps: 1'))).toEqual([]);
        expect(summary(id, drain('tail-length: 35 mm', 'clamps: 1  clamp-band: 12 mm'))).toEqual([]);
        expect(summary(id, drain('tail-length: 36 mm', 'clamps: 1  clamp-band: 12 mm'))).toEqual(['warning H1 SV1']);
        expect(raisedBy(id, drain('', 'clamps: 1'))[0]?.message).toContain('record tail-length');
    });

    it('counts the clamps of the hose at each end, and those of a joint there alone', () => {
        const text = (joint: string) => `through-hull TH1 { below-waterline: 1 ft }\nvalve SV1\nhose H1 { clamps: 1 }\nstrainer ST1\nrun R1: TH1 -> SV1 -> { ${joint} } H1 -> ST1\n`;
        expect(summary(id, text(''))).toEqual(['warning H1 SV1', 'warning H1 ST1']);
        expect(summary(id, text('clamps: 2'))).toEqual(['warning H1 ST1']);
        expect(summary(id, corrected(text('clamps: 1'), id, 'Record two clamps at SV1'))).toEqual(['warning H1 ST1']);
    });
});

describe('fuel fill', () => {
    const fill = (fuel: string) => `${fuel}fuel-tank T1\nhose H1 { clamps: 1  class: fuel-a2 }\nrun R1 { service: fuel-fill }: T1 -> H1\n`;
    it.each([
        ['vessel "M" { fuel: gasoline }\n', ['error H1 T1']], ['vessel "M" { fuel: diesel }\n', []], ['', ['hint H1 T1']], ['vessel "M" {}\n', ['hint H1 T1']],
    ] as const)('%s', (fuel, expected) => {
        expect(summary(id, fill(fuel))).toEqual(expected);
    });
    it('is due before use', () => {
        expect(urgencies(id, fill('vessel "M" { fuel: gasoline }\n'))).toEqual(['before-use']);
    });
});

it('asks for the height of the opening, once a run', () => {
    const text = 'through-hull TH1\nhose H1 { clamps: 1 }\nvalve SV1\nrun R1: TH1 -> H1 -> SV1\n';
    expect(summary(id, text)).toEqual(['hint TH1 H1']);
    expect(raisedBy(id, text)[0]?.message).toContain('below-waterline or above-waterline');
});

it('is answered under its earlier id', () => {
    const text = `${drain('', 'clamps: 1')}accept clamp-single-below-waterline on H1 because "Spigot is too short for two."\n`;
    expect(raisedBy(id, text).map(problem => problem.answeredBy)).toEqual(['accept']);
});
