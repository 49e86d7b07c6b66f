/** Hoses and clamps recorded on their own, with no run through them. */
import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

describe('clamp-single', () => {
    it.each([
        ['exhaust-hose H1 { clamps: 1 }\n', ['error H1']], ['exhaust-hose H1 { clamps: 2 }\n', []], ['exhaust-hose H1\n', []], ['hose H1 { clamps: 1  class: wet-exhaust }\n', ['error H1']],
        ['vessel "M" { fuel: gasoline }\nfuel-hose H1 { clamps: 1  service: fuel-fill }\n', ['error H1']], ['vessel "M" { fuel: diesel }\nfuel-hose H1 { clamps: 1  service: fuel-fill }\n', []],
        ['hose H1 { clamps: 1 }\n', []],
    ] as const)('%s', (text, expected) => {
        expect(summary('clamp-single', text)).toEqual(expected);
    });
    it('asks for two where there is none', () => {
        const [problem] = raisedBy('clamp-single', 'through-hull T1 { below-waterline: 1 ft }\nhose H1 { clamps: 0 }\nrun R1: T1 -> H1\n');
        expect(problem?.draft?.recommend).toContain('Fit two');
        expect(problem?.draft?.because).not.toContain('single');
    });
});

it.each([
    ['fuel-hose H1 { clamp-type: spring }\n', ['error H1']], ['hose H1 { clamp-type: spring  service: fuel-feed }\n', ['error H1']], ['hose H1 { clamp-type: spring }\n', []],
    ['clamp C1 { metal: mixed-steel }\n', ['error C1']], ['clamp C1 { metal: stainless-316 }\n', []],
    ['hose H1 { outside-diameter: 60 mm }\nclamp C1 { range: 40 mm..50 mm  serves: H1 }\n', ['error C1 H1']], ['hose H1 { outside-diameter: 50 mm }\nclamp C1 { range: 40 mm..50 mm  serves: H1 }\n', []],
] as const)('clamp-poor: %s', (text, expected) => {
    expect(summary('clamp-poor', text)).toEqual(expected);
});

it.each([
    ['exhaust-hose H1 { class: water }\n', ['error H1']], ['hose H1 { class: water  service: exhaust }\n', ['error H1']], ['hose H1 { class: water  service: fuel-feed }\n', ['error H1']],
    ['hose H1 { class: water  service: sink-drain }\n', []], ['exhaust-hose H1 { class: wet-exhaust }\n', []],
] as const)('hose-wrong-for-service: %s', (text, expected) => {
    expect(summary('hose-wrong-for-service', text)).toEqual(expected);
});

describe('hose-old', () => {
    const on = (hose: string) => `survey "1" pre-purchase { attended 2026-06-02 ashore }\n${hose}\n`;
    it.each([
        ['hose H1 { fitted: 2009 }', ['warning H1']], ['hose H1 { fitted: 2019 }', []], ['hose H1 { made: 2018  fitted: 2009 }', []],
        ['exhaust-hose H1 { made: 2017 }', ['warning H1']], ['exhaust-hose H1 { made: 2018 }', []], ['hose H1 { made: 2017  service: exhaust }', ['warning H1']],
    ] as const)('%s', (hose, expected) => {
        expect(summary('hose-old', on(hose))).toEqual(expected);
    });
    it('says that the date is of the fitting', () => {
        expect(raisedBy('hose-old', on('hose H1 { fitted: 2009 }'))[0]?.message).toContain('was fitted in 2009');
        expect(urgencies('hose-old', on('hose H1 { fitted: 2009 }'))).toEqual(['in-upkeep']);
    });
});
