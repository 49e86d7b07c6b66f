import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allUnits, convertTo, formatQuantity, inBothSystems, nearest, otherSystem, parseFigure, scanFigure, type Figure } from '../../src/quantities/index.js';

const figure = (written: string): Figure => {
    const parsed = parseFigure(written);
    if (!parsed.ok) {
        throw new Error(`${written}: ${parsed.problem}`);
    }
    return parsed.figure;
};
const quantity = (written: string) => {
    const f = figure(written);
    if (f.kind !== 'quantity') {
        throw new Error(`${written} is a date`);
    }
    return f;
};
/** The figure scanned at `^` of a text. */
const scanned = (marked: string): string => {
    const at = marked.indexOf('^');
    const text = marked.replace('^', '');
    return text.slice(at, at + scanFigure(text, at));
};

describe('scanning', () => {
    for (const [marked, expected] of [
        ['size: ^1-1/2 in  metal: bronze', '1-1/2 in'], ['^1 1/2 in }', '1 1/2 in'], ['^1½ in', '1½ in'], ['^½ in', '½ in'], ['^38 ft 4 in  beam', '38 ft 4 in'], ['^5 ft 9-1/2 in', '5 ft 9-1/2 in'],
        ['^38mm}', '38mm'], ['^-34 F', '-34 F'], ['^−34 °C', '−34 °C'], ['^12.5 %', '12.5 %'], ['^5 mm +/- 0.5 mm', '5 mm +/- 0.5 mm'], ['^5 ± 0.5 mm', '5 ± 0.5 mm'],
        ['^250 USD..400 USD', '250 USD..400 USD'], ['^250..400 USD', '250..400 USD'], ['^-0.34 V..-0.26 V', '-0.34 V..-0.26 V'], ['^2.5:1', '2.5:1'], ['^14 AWG', '14 AWG'], ['^2/0 AWG', '2/0 AWG'],
        ['^6 L/min', '6 L/min'], ['^2026-10-06 ashore', '2026-10-06'], ['^2026-10 x', '2026-10'], ['^09:40', '09:40'], ['clamps: ^3 metal: bronze', '3'], ['clamps: ^3  pattern: x', '3'],
        ['^3 photo "x"', '3'], ['^3 note "x"', '3'], ['^3 "text"', '3'], ['^3 furlongs', '3 furlongs'], ['^38,1 mm', '38,1 mm'], ['^12,500 USD', '12,500 USD'], ['^2 {', '2'],
        ['^3, 4', '3'], ['^12 -> H1', '12'], ['^6 drops/min', '6 drops/min'], ['^45 deg', '45 deg'], ['^10 years', '10 years'], ['^3 in  in-use: no', '3 in'], ['^40 ft   beam: 3.85 m', '40 ft'],
        ['^2 hose H1 {', '2'], ['^5 lb 4 oz', '5 lb 4 oz'], ['x^-5', ''], ['^-> H1', ''], ['^..', ''], ['^°C', ''], ['^.5 in', '.5 in'],
    ] as const) {
        it(`takes “${expected}” of ${marked}`, () => {
            expect(scanned(marked)).toBe(expected);
        });
    }

    it('never throws nor runs past the end, on any text', () => {
        fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), fc.nat(40), (text, at) => {
            const offset = Math.min(at, text.length);
            const length = scanFigure(text, offset);
            expect(length).toBeGreaterThanOrEqual(0);
            expect(offset + length).toBeLessThanOrEqual(text.length);
            expect(parseFigure(text.slice(offset, offset + length))).toHaveProperty('ok');
        }), { numRuns: 2000 });
    });
});

describe('reading', () => {
    for (const [written, si] of [
        ['1-1/2 in', 0.0381], ['1 1/2 in', 0.0381], ['1½ in', 0.0381], ['38.1 mm', 0.0381], ['.5 in', 0.0127], ['38 ft 4 in', 11.684], ['5′ 9″', 1.7526], ['12.5 %', 0.125], ['2.5:1', 2.5], ['-34 F', 236.4833333],
        ['10 years', 10 * 365.25 * 86400], ['09:40', 34800], ['5 lb 4 oz', 2.3813599],
    ] as const) {
        it(`${written} is ${si} in SI`, () => {
            expect(quantity(written).si).toBeCloseTo(si, 6);
        });
    }

    it('keeps the ends of a range and a tolerance', () => {
        expect(quantity('250..400 USD')).toMatchObject({ dimension: 'money', currency: 'USD', low: 250, high: 400 });
        expect(quantity('-0.34 V..-0.26 V')).toMatchObject({ low: -0.34, high: -0.26 });
        expect(quantity('5 mm +/- 0.5 mm').tolerance).toBeCloseTo(0.0005, 9);
        expect(quantity('20 C +/- 2 C').tolerance).toBeCloseTo(2, 9);
    });

    it('reads dates to the day and to the month', () => {
        expect(figure('2026-10-06')).toMatchObject({ kind: 'date', year: 2026, month: 10, day: 6, precision: 'day' });
        expect(figure('2026-10')).toMatchObject({ kind: 'date', precision: 'month' });
    });

    for (const [written, says, suggestion] of [
        ['38,1 mm', /decimal comma/, '38.1 mm'], ['12,500 USD', /two ways/, undefined], ['3 furlongs', /not a unit/, undefined], ['3 inchs', /did you mean in\?/, '3 in'], ['5 inn', /did you mean/, '5 in'], ['1/0 in', /zero/, undefined],
        ['2026-13', /month/, undefined], ['2026-02-30', /day/, undefined], ['400 USD..250 USD', /downwards/, '250 USD..400 USD'], ['3 mm..4 V', /one kind/, undefined], ['3 mm..', /upper end/, undefined], ['5 mm +/-', /tolerance/, undefined],
        ['25:00', /time of day/, undefined], ['99 AWG', /gauge/, undefined],
    ] as const) {
        it(`says plainly what is wrong with ${written}`, () => {
            const parsed = parseFigure(written);
            expect(parsed.ok).toBe(false);
            if (!parsed.ok) {
                expect(parsed.problem).toMatch(says);
                expect(parsed.suggestion).toBe(suggestion);
            }
        });
    }

    it('every unit goes to SI and back', () => {
        for (const unit of allUnits.filter(u => !Number.isNaN(u.factor))) {
            expect(convertTo(quantity(`7.25 ${unit.name}`).si, unit.name)).toBeCloseTo(7.25, 9);
        }
    });

    it('orders as lengths do', () => {
        fc.assert(fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }), (a, b) => {
            expect(Math.sign(quantity(`${a}/16 in`).si - quantity(`${b}/16 in`).si)).toBe(Math.sign(a - b));
        }));
    });
});

describe('writing', () => {
    for (const [written, both] of [
        ['1-1/2 in', '1-1/2 in (38.1 mm)'], ['38 mm', '38 mm (1-1/2 in)'], ['14.2 V', '14.2 V'], ['40 ft', '40 ft (12.19 m)'], ['5 ft 9 in', '5 ft 9 in (1.753 m)'], ['3.85 m', '3.85 m (12 ft 7-1/2 in)'], ['-34 F', '-34 F (-36.7 C)'],
        ['12 L', '12 L (3.17 gal)'], ['800 gph', '800 gph (50.5 L/min)'], ['500 lbf', '500 lbf (2224 N)'], ['250 USD', '250 USD'], ['30 kg..40 kg', '30 kg..40 kg (66.1 lb..88.2 lb)'], ['14 AWG', '14 AWG (2.08 mm2)'],
    ] as const) {
        it(`${written} in both systems is ${both}`, () => {
            expect(inBothSystems(figure(written))).toBe(both);
        });
    }

    it('gives no other system where there is none', () => {
        expect(otherSystem(figure('3'))).toBeUndefined();
        expect(otherSystem(figure('2026-10'))).toBeUndefined();
        expect(otherSystem(figure('12.6 V'))).toBeUndefined();
    });

    it('what it writes reads back as what it was, within the rounding', () => {
        fc.assert(fc.property(fc.double({ min: 0.001, max: 40, noNaN: true }), fc.constantFrom('us' as const, 'metric' as const), (m, system) => {
            const back = quantity(formatQuantity(m, 'length', system)).si;
            expect(Math.abs(back - m)).toBeLessThanOrEqual(Math.max(0.03 * m, 0.0008));
        }));
    });
});

describe('nearest', () => {
    it('finds a misspelt word and leaves a far one alone', () => {
        expect(nearest('brasss', ['brass', 'bronze'])).toBe('brass');
        expect(nearest('borne', ['bore', 'length'])).toBe('bore');
        expect(nearest('xyzzy', ['bore', 'length'])).toBeUndefined();
    });
});
