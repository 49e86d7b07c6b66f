import convert from 'convert-units';
import fc from 'fast-check';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convertTo, parseFigure } from '../../src/quantities/index.js';
import { oracle } from './table.js';

const si = (written: string): number => {
    const parsed = parseFigure(written);
    if (!parsed.ok || parsed.figure.kind !== 'quantity') {
        throw new Error(`${written} is no quantity.`);
    }
    return parsed.figure.si;
};

const nist = 'NIST SP 811 (2008), appendix B, from memory';

oracle('conversions', [
    { id: 'in', says: '1 in is 25.4 mm', actual: () => si('1 in'), expected: 0.0254, source: 'international yard and pound agreement, 1959', provenance: 'computed' },
    { id: 'ft', says: '1 ft is 0.3048 m', actual: () => si('1 ft'), expected: 0.3048, source: 'international yard and pound agreement, 1959', provenance: 'computed' },
    { id: 'nmi', says: '1 nautical mile is 1852 m', actual: () => si('1 nmi'), expected: 1852, source: 'definition', provenance: 'computed' },
    { id: 'gal', says: '1 US gallon is 3.785412 L', actual: () => si('1 gal') * 1000, expected: 3.785412, within: 1e-6, source: nist, provenance: 'memory' },
    { id: 'lbf', says: '500 lbf is 2224 N', actual: () => si('500 lbf'), expected: 2224.111, within: 0.01, source: '1 lbf = 4.448222 N', provenance: 'computed' },
    { id: 'psi', says: '15 psi is 1.0342 bar', actual: () => convertTo(si('15 psi'), 'bar'), expected: 1.03421, within: 1e-4, source: nist, provenance: 'memory' },
    { id: 'F', says: '-34 F is -36.67 C', actual: () => convertTo(si('-34 F'), 'C'), expected: -36.6667, within: 1e-3, source: 'definition of the Fahrenheit scale', provenance: 'computed' },
    { id: 'F40', says: '-40 F is -40 C', actual: () => convertTo(si('-40 F'), 'C'), expected: -40, within: 1e-9, source: 'definition of the Fahrenheit scale', provenance: 'computed' },
    { id: 'hp', says: '1 hp is 745.7 W', actual: () => si('1 hp'), expected: 745.69987, within: 1e-4, source: nist, provenance: 'memory' },
    { id: 'inHg', says: '1 inHg is 3386.39 Pa', actual: () => si('1 inHg'), expected: 3386.389, within: 1e-2, source: nist, provenance: 'memory' },
    { id: 'gph', says: '2000 gph is 33.3 gpm', actual: () => convertTo(si('2000 gph'), 'gpm'), expected: 33.3333, within: 1e-3, source: '60 minutes to the hour', provenance: 'computed' },
    { id: '38 ft 4 in', says: 'is 11.684 m', actual: () => si('38 ft 4 in'), expected: 11.684, within: 1e-9, source: '460 in of 25.4 mm', provenance: 'computed' },
    { id: '5 ft 9-1/2 in', says: 'is 1.7653 m', actual: () => si('5 ft 9-1/2 in'), expected: 1.7653, within: 1e-9, source: '69.5 in of 25.4 mm', provenance: 'computed' },
    { id: '14 AWG', says: 'is 2.081 mm2', actual: () => si('14 AWG') * 1e6, expected: 2.081, within: 1e-3, source: 'd = 0.005 x 92^((36-n)/39) in', provenance: 'computed' },
    { id: '4/0 AWG', says: 'is 107.2 mm2', actual: () => si('4/0 AWG') * 1e6, expected: 107.2, within: 0.05, source: 'd = 0.005 x 92^((36-n)/39) in', provenance: 'computed' },
    { id: '1/0 AWG', says: 'is 53.48 mm2', actual: () => si('1/0 AWG') * 1e6, expected: 53.48, within: 0.01, source: 'd = 0.005 x 92^((36-n)/39) in', provenance: 'computed' },
]);

/** Our unit, mathjs's name for it, convert-units's name for it. */
const shared: readonly (readonly [ours: string, math: string, other: string | undefined, si: string])[] = [
    ['in', 'inch', 'in', 'm'], ['ft', 'foot', 'ft', 'm'], ['mm', 'mm', 'mm', 'm'], ['cm', 'cm', 'cm', 'm'], ['mi', 'mile', 'mi', 'm'], ['mil', 'mil', undefined, 'm'],
    ['in2', 'sqin', 'in2', 'm^2'], ['ft2', 'sqft', 'ft2', 'm^2'], ['mm2', 'mm^2', 'mm2', 'm^2'], ['cm2', 'cm^2', 'cm2', 'm^2'],
    ['gal', 'gallon', 'gal', 'm^3'], ['L', 'L', 'l', 'm^3'], ['ft3', 'ft^3', 'ft3', 'm^3'], ['qt', 'quart', 'qt', 'm^3'],
    ['lb', 'lb', 'lb', 'kg'], ['oz', 'ounce', 'oz', 'kg'], ['t', 'tonne', 'mt', 'kg'],
    ['psi', 'psi', 'psi', 'Pa'], ['bar', 'bar', 'bar', 'Pa'], ['kPa', 'kPa', 'kPa', 'Pa'],
    ['lbf', 'lbf', undefined, 'N'], ['hp', 'hp', undefined, 'W'], ['kW', 'kW', 'kW', 'W'], ['Ah', 'A hour', undefined, 'C'], ['mph', 'mile/hour', 'm/h', 'm/s'], ['km/h', 'km/hour', 'km/h', 'm/s'],
    ['h', 'hour', 'h', 's'], ['day', 'day', 'd', 's'],
];

describe('conversions against reference libraries', () => {
    for (const [ours, math, other, siUnit] of shared) {
        it(`${ours} as mathjs${other === undefined ? '' : ' and convert-units'} convert it`, () => {
            fc.assert(fc.property(fc.double({ min: 0.001, max: 10_000, noNaN: true }), value => {
                const text = value.toFixed(4);
                const here = si(`${text} ${ours}`);
                const reference = mathUnit(Number(text), math).toNumber(siUnit);
                expect(Math.abs(here - reference)).toBeLessThanOrEqual(Math.abs(reference) * 1e-6 + 1e-12);
            }), { numRuns: 30 });
            if (other !== undefined) {
                const base = { 'm': 'm', 'm^2': 'm2', 'm^3': 'm3', 'kg': 'kg', 'Pa': 'Pa', 'W': 'W', 'm/s': 'm/s', 's': 's' }[siUnit] ?? '';
                const reference = convert(7.25).from(other).to(base);
                // This library carries US volumes and hours to five figures.
                expect(Math.abs(si(`7.25 ${ours}`) - reference)).toBeLessThanOrEqual(Math.abs(reference) * 2e-4);
            }
        });
    }

    it('temperatures as mathjs converts them', () => {
        for (const value of [-60, -40, -34.5, 0, 32, 100, 212]) {
            expect(si(`${value} F`)).toBeCloseTo(mathUnit(value, 'degF').toNumber('K'), 6);
            expect(si(`${value} C`)).toBeCloseTo(mathUnit(value, 'degC').toNumber('K'), 6);
        }
    });
});
