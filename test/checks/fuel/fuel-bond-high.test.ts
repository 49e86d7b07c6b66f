import { expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fuel-bond-high';
const tank = (facts: string) => `vessel "M" { fuel: gasoline }\nfuel-tank T1 { ${facts} }\n`;

it.each([
    ['material: aluminum  bond-resistance: 99.9 ohm', []], ['material: aluminum  bond-resistance: 100 ohm', ['error T1']], ['material: mild-steel  bond-resistance: 0.1 kohm', ['error T1']],
    ['material: aluminum  bond-resistance: 101 ohm', ['error T1']], ['material: aluminum  fill-bond: no', ['error T1']], ['material: aluminum  fill-bond: no  bond-resistance: 1 ohm', []],
    ['material: polyethylene  bond-resistance: 1 kohm', []], ['bond-resistance: 1 kohm', ['hint T1']], ['material: aluminum', []], ['bond-resistance: 1 ohm', []],
] as const)('tank of %s', (facts, expected) => {
    expect(summary(id, tank(facts))).toEqual(expected);
});

it('judges a plastic tank by its metal fill, and a plastic fill not at all', () => {
    const text = (fill: string) => `fuel-fill F1 { material: ${fill} }\nfuel-tank T1 { fuel: gasoline  fill-bond: no }\nfuel-hose H1 { class: fuel-a2 }\nrun R1 { service: fuel-fill }: F1 -> H1 -> T1\n`;
    expect(summary(id, text('bronze'))).toEqual(['error T1']);
    expect(summary(id, text('nylon'))).toEqual(['hint T1']);
    const fill = (material: string) => `vessel "M" { fuel: gasoline }\nfuel-fill F1 { material: ${material}  bond-resistance: 2 kohm }\n`;
    expect([...summary(id, fill('bronze')), ...summary(id, fill('nylon'))]).toEqual(['error F1']);
});

it('asks for the fuel, and leaves diesel alone', () => {
    expect(summary(id, 'fuel-tank T1 { material: aluminum  bond-resistance: 1 kohm }\n')).toEqual(['hint T1']);
    expect(summary(id, 'fuel-tank T1 { fuel: diesel  material: aluminum  bond-resistance: 1 kohm }\n')).toEqual([]);
    expect(summary(id, 'fuel-tank T1 { bond-resistance: 1 kohm }\n')).toEqual([]);
});

it('is due before fueling, and offers a mistaken unit', () => {
    expect(urgencies(id, tank('material: aluminum  bond-resistance: 2 kohm'))).toEqual(['before-use']);
    expect(correctionsIn(id, tank('material: aluminum  bond-resistance: 2 kohm'))).toEqual(['Read 2 kohm as 2 ohm']);
    expect(raisedBy(id, tank('material: aluminum  bond-resistance: 2 kohm'))[0]?.message).toContain('2 kohm');
});
