import { expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fuel-hose-loose-on-spigot';
const fuel = (spigot: string, bore: string, service = 'fuel-feed') => `fitting T1 { spigot: ${spigot} }\nhose H1 { bore: ${bore} }\nrun R1 { service: ${service} }: T1 -> H1\n`;

it.each([
    ['0.300 in', '0.320 in', 0], ['0.300 in', '0.324 in', 1], // 0.020 in under 3/8 in
    ['0.375 in', '0.410 in', 0], ['0.375 in', '0.414 in', 1], // 0.035 in to 1 in
    ['1-1/2 in', '1.565 in', 0], ['1-1/2 in', '1.57 in', 1], // 0.065 in over 1 in
    ['10 mm', '3/8 in', 0],
])('tail %s, hose %s: %i', (spigot, bore, count) => {
    expect(raisedBy(id, fuel(spigot, bore))).toHaveLength(count);
});

it('holds for every fuel service and for hose marked for fuel', () => {
    for (const service of ['fuel-feed', 'fuel-return', 'fuel-fill', 'fuel-vent']) {
        expect(urgencies(id, fuel('10 mm', '12 mm', service))).toEqual(['before-use']);
    }
    expect(summary(id, 'fitting T1 { spigot: 10 mm }\nhose H1 { bore: 12 mm  class: fuel-a1 }\nrun R1: T1 -> H1\n')).toEqual(['error H1 T1']);
});

it('takes the rule as a yardstick where she is no gasoline boat', () => {
    const seen = (fuelWord: string) => raisedBy(id, `vessel "M" { fuel: ${fuelWord} }\n${fuel('10 mm', '12 mm')}`)[0]?.draft?.seen;
    expect(seen('diesel')).toContain('yardstick');
    expect(seen('gasoline')).not.toContain('yardstick');
});
