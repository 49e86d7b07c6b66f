import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'hose-wrong-for-service';
const hose = (facts: string, service: string, opening = 'below-waterline: 1 ft') => `through-hull TH1 { ${opening} }\nhose H1 { ${facts} }\nrun R1 { service: ${service} }: TH1 -> H1\n`;

describe('below the waterline', () => {
    it.each([
        ['class: clear-pvc', 'sink-drain', ['error H1']], ['class: ribbed-pvc', 'bilge-discharge', ['error H1']], ['reinforcement: none', 'toilet-intake', ['error H1']],
        ['class: water', 'sink-drain', []], ['class: sanitation', 'toilet-discharge', []], ['class: water  reinforcement: textile', 'sink-drain', []],
        ['class: clear-pvc', 'fresh-water', []], ['class: unmarked', 'sink-drain', ['hint H1']], ['class: unmarked  reinforcement: wire', 'sink-drain', []],
    ] as const)('%s in %s', (facts, service, expected) => {
        expect(summary(id, hose(facts, service))).toEqual(expected);
    });
    it('is a matter of flooding where the hose is swollen', () => {
        expect(urgencies(id, hose('class: clear-pvc  condition: swollen', 'sink-drain'))).toEqual(['at-once']);
        expect(urgencies(id, hose('class: clear-pvc', 'sink-drain'))).toEqual(['next-haul-out']);
    });
    it('leaves a run alone whose height is not recorded', () => {
        expect(summary(id, hose('class: clear-pvc', 'sink-drain', 'size: 1 in'))).toEqual([]);
    });
});

describe('services that ask for a class', () => {
    it.each([
        ['class: wet-exhaust', 'exhaust', []], ['class: water', 'exhaust', ['error H1']], ['class: unmarked', 'exhaust', ['error H1']], ['bore: 50 mm', 'exhaust', ['hint H1']],
        ['class: fuel-b2', 'fuel-vent', []], ['class: water', 'fuel-fill', ['error H1']], ['class: clear-pvc', 'fuel-feed', ['error H1']], ['bore: 10 mm', 'fuel-return', []], ['class: unmarked', 'fuel-feed', []],
        ['class: gas', 'gas', []], ['class: fuel-a1', 'gas', ['error H1']],
    ] as const)('%s in %s', (facts, service, expected) => {
        expect(summary(id, hose(facts, service, 'above-waterline: 1 ft'))).toEqual(expected);
    });
    it('takes the service of the hose where the run has none', () => {
        expect(summary(id, 'fuel-tank T1\nhose H1 { service: fuel-feed  class: water }\nrun R1: T1 -> H1\n')).toEqual(['error H1']);
    });
});

it('advises wire in the suction of a raw-water pump, before the pump only', () => {
    const run = (reinforcement: string) => `through-hull TH1 { below-waterline: 1 ft }\nhose H1 { reinforcement: ${reinforcement} }\nraw-water-pump P1\nhose H2 { reinforcement: ${reinforcement} }\nheat-exchanger X1\n`
        + 'run R1 { service: raw-water-cooling }: TH1 -> H1 -> P1 -> H2 -> X1\n';
    expect(summary(id, run('textile'))).toEqual(['warning H1']);
    expect(summary(id, run('wire'))).toEqual([]);
});

it('names the class in the trade’s words', () => {
    expect(raisedBy(id, hose('class: clear-pvc', 'sink-drain'))[0]?.message).toContain('clear PVC');
    expect(raisedBy(id, hose('class: fuel-a1', 'gas'))[0]?.message).toContain('fuel hose A1');
});
