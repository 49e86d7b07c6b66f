/** A run tells the same whether it is written from the hull inward or in the way the water goes. */
import { describe, expect, it } from 'vitest';
import { summary, urgencies } from '../check-text.js';

const hull = 'through-hull TH1 { size: 1 in  metal: bronze  below-waterline: 1 ft }\n';

describe.each([
    ['opening-without-valve', 'hose H1 { bore: 25 mm }\nsink S1\n', ['H1', 'S1'], ['error TH1']],
    ['valve-or-fitting-unsuitable', 'valve V1 { pattern: gate-valve }\nsink S1\n', ['V1', 'S1'], ['error V1 TH1']],
    ['valve-not-flanged', 'valve V1 { pattern: ball-valve  flanged: no }\nsink S1\n', ['V1', 'S1'], ['error V1 TH1']],
    ['siphon-loop-missing-or-low', 'valve V1\ntoilet T1 { rim-below-waterline: 2 in }\n', ['V1', 'T1'], ['error T1']],
    ['siphon-loop-missing-or-low', 'valve V1\nvented-loop L1 { top-above-waterline: 6 in }\ntoilet T1 { rim-below-waterline: 2 in }\n', ['V1', 'L1', 'T1'], []],
    ['flooding-beats-pumps', 'valve V1\nhose H1 { bore: 25 mm }\nsink S1\nbilge-pump P1 { rated-flow: 500 gph }\n', ['V1', 'H1', 'S1'], ['error TH1 P1']],
    ['hose-wrong-for-service', 'valve V1\nhose H1 { class: clear-pvc }\nsink S1\n', ['V1', 'H1', 'S1'], ['error H1']],
    ['brass-below-waterline', 'valve V1 { metal: yellow-brass }\nsink S1\n', ['V1', 'S1'], ['error V1']],
] as const)('%s', (id, parts, run, expected) => {
    const inward = ['TH1', ...run];
    it.each([['inward', inward], ['outward', [...inward].reverse()]])('%s', (_, order) => {
        expect(summary(id, `${hull}${parts}run R1: ${order.join(' -> ')}\n`)).toEqual(expected);
    });
});

it('reads the depth for the urgency at either end', () => {
    const parts = 'skin-fitting TH1 { spigot: 32 mm  below-waterline: 1 ft }\nhose H1 { bore: 38 mm }\n';
    for (const order of ['TH1 -> H1', 'H1 -> TH1']) {
        expect(urgencies('hose-and-spigot-differ', `${parts}run R1: ${order}\n`)).toEqual(['at-once']);
    }
});

it('takes the valve that serves an opening where no run tells of it', () => {
    expect(summary('valve-or-fitting-unsuitable', `${hull}valve V1 { pattern: gate-valve  serves: TH1 }\n`)).toEqual(['error V1 TH1']);
});

it('judges a gate valve under the heeled waterline too', () => {
    const text = (heeled: string) => `through-hull TH1 { above-waterline: 2 in  ${heeled} }\nvalve V1 { pattern: gate-valve }\nrun R1: TH1 -> V1\n`;
    expect(summary('valve-or-fitting-unsuitable', text('below-heeled-waterline: yes'))).toEqual(['error V1 TH1']);
    expect(summary('valve-or-fitting-unsuitable', text('below-heeled-waterline: no'))).toEqual([]);
});

it('counts an opening in use without a run as one that may fail', () => {
    const text = (use: string) => `through-hull TH1 { size: 1-1/2 in  below-waterline: 14 in  ${use} }\nbilge-pump P1 { rated-flow: 500 gph }\n`;
    expect(summary('flooding-beats-pumps', text('in-use: yes'))).toEqual(['error TH1 P1']);
    expect(summary('flooding-beats-pumps', text(''))).toEqual([]);
});

it('knows offshore use by the waters of the vessel', () => {
    const text = (waters: string) => `vessel "M" { used-on: ${waters} }\ncockpit C1 { sole-area: 3 m2  depth: 450 mm  drains: 2  drain-bore: 25 mm }\n`;
    expect(summary('cockpit-drains-slow', text('offshore'))).toEqual(['error C1']);
    expect(summary('cockpit-drains-slow', text('coastal'))).toEqual([]);
});
