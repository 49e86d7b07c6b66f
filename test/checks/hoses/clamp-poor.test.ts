import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'clamp-poor';
const clamp = (facts: string, service = 'sink-drain') => `through-hull TH1 { below-waterline: 1 ft }\nhose H1\nrun R1 { service: ${service} }: TH1 -> { ${facts} } H1\n`;

describe('faults', () => {
    it.each([
        ['clamp-condition: sound', []], ['clamp-condition: rusty', ['error H1 TH1']], ['clamp-condition: loose', ['error H1 TH1']],
        ['clamp-material: stainless-304', []], ['clamp-material: mixed-steel', ['error H1 TH1']], ['clamp-material: galvanized-steel', ['error H1 TH1']],
        ['clamp-material: bronze', []], ['clamp-type: spring', []],
        ['clamp-condition: rusty  clamp-material: mixed-steel', ['error H1 TH1']],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, clamp(facts))).toEqual(expected);
    });

    it('holds a spring clamp against fuel only', () => {
        expect(summary(id, clamp('clamp-type: spring', 'fuel-vent'))).toEqual(['error H1 TH1']);
    });

    it.each([['39.9 mm', 1], ['40 mm', 0], ['60 mm', 0], ['60.1 mm', 1], ['2 in', 0]])('hose of %s in a clamp of 40 to 60 mm: %i', (outside, count) => {
        expect(raisedBy(id, `valve SV1\nhose H1 { outside-diameter: ${outside}  clamp-range: 40 mm..60 mm }\nrun R1: SV1 -> H1\n`)).toHaveLength(count);
    });
});

it.each([
    [clamp('clamp-condition: broken'), 'at-once'], [clamp('clamp-condition: loose'), 'at-once'], [clamp('clamp-condition: rusty'), 'in-upkeep'],
    [clamp('clamp-condition: rusty', 'fuel-feed'), 'before-use'], ['valve SV1\nhose H1 { clamp-condition: broken }\nrun R1: SV1 -> H1\n', 'in-upkeep'],
])('urgency of %s', (text, urgency) => {
    expect(urgencies(id, text)).toEqual([urgency]);
});

it('names the end where the clamp is recorded, else the hose', () => {
    expect(summary(id, 'valve SV1\nhose H1 { clamp-condition: rusty }\nrun R1: SV1 -> H1\n')).toEqual(['error H1']);
    expect(summary(id, corrected(clamp('clamp-condition: rusty'), id, 'Record the clamp of H1 at TH1 as sound'))).toEqual([]);
});

it('asks for the outside diameter where the range is known', () => {
    const text = clamp('clamp-range: 40 mm..60 mm');
    expect(summary(id, text)).toEqual(['hint H1 TH1']);
    expect(raisedBy(id, text)[0]?.message).toContain('outside-diameter');
});
