import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary } from '../check-text.js';

const id = 'spigot-too-short-for-clamps';
const tail = (length: string, clamps: number, joint: string) => `valve SV1 { tail-length: ${length} }\nhose H1 { clamps: ${clamps} }\nrun R1: SV1 -> { ${joint} } H1\n`;

describe('need = n × band + (n − 1) × 6 + 6', () => {
    it.each([
        ['36 mm', 2, 'clamp-band: 12 mm', []], ['35.9 mm', 2, 'clamp-band: 12 mm', ['error SV1 H1']],
        ['18 mm', 1, 'clamp-band: 12 mm', []], ['17.9 mm', 1, 'clamp-band: 12 mm', ['error SV1 H1']],
        ['54 mm', 3, 'clamp-band: 12 mm', []], ['53 mm', 3, 'clamp-band: 12 mm', ['error SV1 H1']],
        ['1-3/8 in', 2, 'clamp-band: 1/2 in', ['error SV1 H1']], ['1-1/2 in', 2, 'clamp-band: 1/2 in', []],
        ['25 mm', 2, 'clamps: 1  clamp-band: 12 mm', []], ['30 mm', 2, 'tail-length: 40 mm  clamp-band: 12 mm', []],
    ] as const)('%s, %i clamps, %s', (length, clamps, joint, expected) => {
        expect(summary(id, tail(length, clamps, joint))).toEqual(expected);
    });
});

it('offers one clamp only where one has room', () => {
    expect(correctionsIn(id, tail('20 mm', 2, 'clamp-band: 12 mm'))).toEqual(['Record one clamp at SV1 as sufficient']);
    expect(correctionsIn(id, tail('15 mm', 2, 'clamp-band: 12 mm'))).toEqual([]);
});

it('asks for the band where a usual band would decide', () => {
    const text = tail('30 mm', 2, '');
    expect(summary(id, text)).toEqual(['hint SV1 H1']);
    expect(raisedBy(id, text)[0]?.message).toContain('clamp-band');
    expect(summary(id, tail('40 mm', 2, ''))).toEqual([]);
});
