import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fuel-hose-class';
const feed = (facts: string, fuel = 'gasoline') => `fuel-tank T1 { fuel: ${fuel} }\nhose H1 { ${facts} }\nengine E1\nrun R1 { service: fuel-feed }: T1 -> H1 -> E1\n`;
const fill = (facts: string, fuel = 'gasoline') => `fuel-fill FF1\nhose H1 { ${facts} }\nfuel-tank T1 { fuel: ${fuel} }\nrun R1 { service: fuel-fill }: FF1 -> H1 -> T1\n`;

describe('from a gasoline tank to the engine', () => {
    it.each([
        ['class: fuel-a1', []], ['class: fuel-a2', ['error H1']], ['class: fuel-b2', ['error H1']], ['class: unmarked', ['error H1']], ['bore: 10 mm', ['hint H1']],
        ['class: fuel-b1', ['error H1']], ['class: fuel-b1  leak-when-cut: 5 fl-oz', []], ['class: fuel-b1  leak-when-cut: 4.9 fl-oz', []], ['class: fuel-b1  leak-when-cut: 5.1 fl-oz', ['error H1']],
        ['class: fuel-b1  leak-when-cut: 147 mL', []], ['class: fuel-b1  leak-when-cut: 148 mL', ['error H1']], ['class: fuel-b2  leak-when-cut: 1 mL', ['error H1']],
        ['class: water', []], ['class: clear-pvc', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, feed(facts))).toEqual(expected);
    });
});

it.each([
    ['class: fuel-a1', []], ['class: fuel-a2', []], ['class: fuel-b1', ['error H1']], ['class: fuel-b2', ['error H1']], ['class: fuel-b2  leak-when-cut: 5 fl-oz', []],
    ['class: fuel-b2  leak-when-cut: 6 fl-oz', ['error H1']], ['class: unmarked', ['error H1']],
] as const)('fill of a gasoline tank: %s', (facts, expected) => {
    expect(summary(id, fill(facts))).toEqual(expected);
});

describe('between pump and carburetor', () => {
    const text = (facts: string) => `vessel "M" { fuel: gasoline }\nfuel-pump FP1\nhose H1 { ${facts} }\ncarburetor C1\nrun R1 { service: fuel-feed }: FP1 -> H1 -> C1\n`;
    it.each([['fuel-a1', []], ['fuel-b1  leak-when-cut: 0 mL', ['error H1']], ['fuel-a2', ['error H1']]] as const)('%s', (cls, expected) => {
        expect(summary(id, text(`class: ${cls}`))).toEqual(expected);
    });
    it('is told from the line before the pump in one run', () => {
        const one = 'fuel-tank T1 { fuel: gasoline }\nhose H1 { class: fuel-b1  leak-when-cut: 1 fl-oz }\nfuel-pump FP1\nhose H2 { class: fuel-b1  leak-when-cut: 1 fl-oz }\ncarburetor C1\nrun R1 { service: fuel-feed }: T1 -> H1 -> FP1 -> H2 -> C1\n';
        expect(summary(id, one)).toEqual(['error H2']);
    });
});

describe('diesel', () => {
    it.each([['fuel-a1', []], ['fuel-b1', []], ['fuel-a2', ['warning H1']], ['fuel-b2', ['warning H1']], ['unmarked', ['warning H1']]] as const)('feed of %s', (cls, expected) => {
        expect(summary(id, feed(`class: ${cls}`, 'diesel'))).toEqual(expected);
    });
    it('is a matter of upkeep', () => {
        expect([...urgencies(id, feed('class: unmarked', 'diesel')), ...urgencies(id, feed('class: unmarked'))]).toEqual(['in-upkeep', 'before-use']);
    });
    it('lets B2 lie in a vent', () => {
        expect(summary(id, fill('class: fuel-b2', 'diesel'))).toEqual([]);
    });
});

it('takes the fuel from the tank, the engine, the vessel, and asks where none is recorded', () => {
    const text = (tank: string, engine: string, vessel: string) => `vessel "M" { ${vessel} }\nfuel-tank T1 { ${tank} }\nhose H1 { class: fuel-b2 }\nengine E1 { ${engine} }\nrun R1 { service: fuel-feed }: T1 -> H1 -> E1\n`;
    expect(summary(id, text('fuel: gasoline', 'fuel: diesel', 'fuel: diesel'))).toEqual(['error H1']);
    expect(summary(id, text('', 'fuel: gasoline', 'fuel: diesel'))).toEqual(['error H1']);
    expect(summary(id, text('', '', 'fuel: diesel'))).toEqual(['warning H1']);
    expect(summary(id, text('', '', ''))).toEqual(['hint H1']);
});

it('judges a hose by its own service where it lies in no run', () => {
    expect(summary(id, 'vessel "M" { fuel: gasoline }\nfuel-hose H1 { service: fuel-vent  class: unmarked }\n')).toEqual(['error H1']);
    expect(summary(id, 'vessel "M" { fuel: gasoline }\nfuel-hose H1 { class: unmarked }\n')).toEqual(['error H1']);
    expect(summary(id, 'vessel "M" { fuel: gasoline }\nhose H1 { class: unmarked }\n')).toEqual([]);
    expect(summary(id, 'vessel "M" { fuel: gasoline }\nhose H1 { service: fuel-fill  class: water }\n')).toEqual([]);
    expect(summary(id, 'vessel "M" { fuel: diesel }\ngenerator G1 { fuel: gasoline }\nhose H1 { service: fuel-feed  class: fuel-b1  serves: G1 }\n')).toEqual(['error H1']);
});

it.each([
    ['TYPE B2, SAE J1527', ['error H1']], ['fuel hose A2', []], ['none', ['error H1']], ['No marking found', ['error H1']], ['12 mm', ['hint H1']],
] as const)('reads the marking "%s" where no class is recorded', (marking, expected) => {
    expect(summary(id, `vessel "M" { fuel: gasoline }\nfuel-hose H1 { service: fuel-fill  marking: "${marking}" }\n`)).toEqual(expected);
});

it('proposes hose for the place, and cites the rule as good practice', () => {
    expect([...correctionsIn(id, feed('class: unmarked')), ...correctionsIn(id, fill('class: unmarked'))]).toEqual(['Record H1 as fuel-a1', 'Record H1 as fuel-a2']);
    expect(raisedBy(id, feed('class: fuel-b1  leak-when-cut: 200 mL'))[0]?.message).toMatch(/200 mL.*148 mL.*good practice per 33 CFR 183.558/);
});
