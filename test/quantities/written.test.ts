/** Figures as they are really written: every accepted form, the usual slips with what to write instead, and generated ones. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allUnits, nearestUnit, otherSystem, parseFigure, scanFigure, units, type QuantityFigure } from '../../src/quantities/index.js';

const quantity = (written: string): QuantityFigure => {
    const parsed = parseFigure(written);
    if (!parsed.ok || parsed.figure.kind !== 'quantity') {
        throw new Error(`${written}: ${parsed.ok ? 'a date' : parsed.problem}`);
    }
    return parsed.figure;
};
const expectOneToken = (written: string): void => {
    expect(scanFigure(written, 0), `“${written}” is one token`).toBe(written.length);
};

describe('accepted forms', () => {
    for (const [written, dimension, si] of [
        ['3 US gal', 'volume', 0.011356235], ['1 US gallon', 'volume', 0.003785412], ['3 meters', 'length', 3], ['12 volts', 'voltage', 12], ['00 AWG', 'area', 67.43e-6], ['000 AWG', 'area', 85.03e-6],
        ['4/0 AWG', 'area', 107.22e-6], ['09:40..11:00', 'time-of-day', 37200], ['20 /m2', 'density-per-area', 20], ['1.5 megohm', 'resistance', 1.5e6], ['3 Ω', 'resistance', 3],
        ['5 nmi', 'length', 9260], ['5 NM', 'length', 9260], ['250 CAD', 'money', 250], ['0 K', 'temperature', 0], ['5 ft 11-15/16 in', 'length', 1.8272125], ['38′ 4½″', 'length', 11.6967],
        ['-3 ft 4 in', 'length', -1.016], ['3 ft 4 in..3 ft 6 in', 'length', 1.0414], ['16 AWG..14 AWG', 'area', 1.6948e-6], ['1e3 V', 'voltage', 1000],
    ] as const) {
        it(`${written}`, () => {
            expectOneToken(written);
            const figure = quantity(written);
            expect(figure.dimension).toBe(dimension);
            expect(Math.abs(figure.si - si)).toBeLessThanOrEqual(Math.abs(si) * 1e-4 + 1e-9);
        });
    }
});

describe('slips, and what to write instead', () => {
    for (const [written, says, instead] of [
        ['10-12 mm', /two dots/, '10..12 mm'], ['10–12 mm', /two dots/, '10..12 mm'], ['5 mm-7 mm', /two dots/, '5 mm..7 mm'], ['250-400 USD', /two dots/, '250..400 USD'], ['5...7 mm', /three dots/, '5..7 mm'],
        ['2800 RPM', /did you mean rpm/, '2800 rpm'], ['800 GPH', /did you mean gph/, '800 gph'], ['5 usd', /USD/, '5 USD'], ['16 ga', /AWG/, '16 AWG'], ['5 M', /did you mean m\?/, '5 m'],
        ['1,200,000 USD', /thousands/, '1200000 USD'], ['1,200.5 mm', /thousands/, '1200.5 mm'], ['1.200,5 mm', /decimal comma/, '1200.5 mm'], ['1,200 kg', /two ways/, undefined],
        ['3,5..4,5 mm', /decimal comma/, '3.5..4.5 mm'], ['5 mm..7 inchs', /did you mean in/, '5 mm..7 in'], ['7,5 inchs', /decimal comma/, '7.5 in'], ['7..5 mm', /downwards/, '5 mm..7'],
        ['2026-10-6', /two figures/, '2026-10-06'], ['2026-1-06', /two figures/, '2026-01-06'], ['10/13/2026', /year first/, '2026-10-13'], ['10/06/2026', /2026-10-06 or 2026-06-10/, undefined],
        ['0226-10-06', /year 226/, undefined], ['2026-10-06..2026-10-08', /several dates/, undefined], ['20 C +/- 10 %', /in percent/, undefined], ['14 AWG +/- 1', /whole sizes/, undefined],
        ['-300 C', /colder/, undefined], ['5 ft 13 in', /12 in make one ft/, undefined], ['5 lb 16 oz', /16 oz make one lb/, undefined], ['3 nd', /not a unit/, undefined],
    ] as const) {
        it(`${written}`, () => {
            expectOneToken(written);
            const parsed = parseFigure(written);
            expect(parsed.ok).toBe(false);
            if (!parsed.ok) {
                expect(parsed.problem).toMatch(says);
                expect(parsed.suggestion).toBe(instead);
            }
        });
    }

    it('is never a day that the month has not', () => {
        fc.assert(fc.property(fc.integer({ min: 1900, max: 2100 }), fc.integer({ min: 0, max: 14 }), fc.integer({ min: 0, max: 33 }), (year, month, day) => {
            const text = `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
            const date = new Date(Date.UTC(year, month - 1, day));
            const exists = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
            expect(parseFigure(text).ok).toBe(exists);
        }));
    });
});

/** Numbers as surveyors write them, with their value. */
const numbers = fc.oneof(
    fc.integer({ min: 0, max: 99_999 }).map(n => [String(n), n] as const),
    fc.tuple(fc.integer({ min: 0, max: 999 }), fc.integer({ min: 0, max: 999 })).map(([a, b]) => { const text = `${a}.${String(b).padStart(3, '0')}`; return [text, Number(text)] as const; }),
    fc.tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 63 }), fc.constantFrom('-', ' ')).map(([a, b, join]) => [`${a}${join}${b}/64`, a + b / 64] as const),
    fc.tuple(fc.integer({ min: 0, max: 99 }), fc.constantFrom(['½', 0.5] as const, ['¼', 0.25] as const, ['⅞', 0.875] as const)).map(([a, [sign, value]]) => [`${a === 0 ? '' : a}${sign}`, a + value] as const),
);
const signs = fc.constantFrom('', '', '-', '−');
const writtenUnits = [...units.keys()].filter(name => !/awg/i.test(name));

describe('generated figures', () => {
    it('are one token and mean number times unit', () => {
        fc.assert(fc.property(signs, numbers, fc.constantFrom(...writtenUnits), fc.constantFrom(' ', '  ', ''), (sign, [text, value], unitName, blank) => {
            const unit = units.get(unitName);
            // Without a blank a unit that begins with a slash would make a fraction's second slash; nobody writes 1-1/2/m2.
            const written = `${sign}${text}${unitName.startsWith('/') ? ' ' : blank}${unitName}`;
            const signed = sign === '' ? value : -value;
            const si = signed * (unit?.factor ?? 0) + (unit?.offset ?? 0);
            fc.pre(!(unit?.dimension === 'temperature' && si < 0));
            expectOneToken(written);
            expect(Math.abs(quantity(written).si - si)).toBeLessThanOrEqual(Math.abs(si) * 1e-12 + 1e-12);
        }), { numRuns: 3000 });
    });

    it('keep their ends as ranges', () => {
        fc.assert(fc.property(numbers, numbers, fc.constantFrom('mm', 'in', 'USD', 'V', 'F', '%'), fc.constantFrom('..', ' .. '), fc.boolean(), ([a, x], [b, y], unit, dots, both) => {
            const [low, high] = x <= y ? [a, b] : [b, a];
            const written = `${low}${both ? ` ${unit}` : ''}${dots}${high} ${unit}`;
            expectOneToken(written);
            const figure = quantity(written);
            expect(figure.low).toBeLessThanOrEqual(figure.high ?? Number.NaN);
            expect(figure.si).toBeCloseTo(((figure.low ?? 0) + (figure.high ?? 0)) / 2, 9);
        }), { numRuns: 1000 });
    });

    it('have another system that reads back within its rounding', () => {
        const convertible = allUnits.filter(unit => unit.system !== 'both' && !Number.isNaN(unit.factor));
        fc.assert(fc.property(fc.double({ min: 0.5, max: 500, noNaN: true }), fc.constantFrom(...convertible), (value, unit) => {
            const figure = quantity(`${value.toFixed(3)} ${unit.name}`);
            const other = otherSystem(figure);
            expect(other).toBeDefined();
            const back = quantity(other ?? '').si;
            // Half an inch in lengths from one meter on; under an inch two significant figures, else three.
            const slack = unit.dimension === 'length' && figure.si >= 1 ? 0.007 : unit.dimension === 'temperature' ? 0.06 : 0;
            expect(Math.abs(back - figure.si)).toBeLessThanOrEqual(Math.abs(figure.si) * 0.06 + slack + 1e-12);
        }), { numRuns: 2000 });
    });
});

describe('any text', () => {
    const marks = fc.string({ unit: fc.constantFrom(...'0123456789 .,-−–/:½±+…%°\t\n'.split(''), 'mm', 'in', 'ft', 'AWG', 'USD', 'C', '..', '+/-', 'US gal', 'e', 'furlong', '😀', 'é'), maxLength: 14 });
    it('is read without an exception, and what is proposed instead can be read and scanned whole', () => {
        fc.assert(fc.property(marks, text => {
            const parsed = parseFigure(text);
            if (!parsed.ok) {
                expect(parsed.problem).not.toBe('');
                if (parsed.suggestion !== undefined) {
                    expect(parseFigure(parsed.suggestion).ok).toBe(true);
                    if (scanFigure(text, 0) === text.length) {
                        expectOneToken(parsed.suggestion);
                    }
                }
            }
        }), { numRuns: 20_000 });
    });

    it('scanned from any place is a figure or a plain problem', () => {
        fc.assert(fc.property(marks, fc.nat(14), (text, at) => {
            const offset = Math.min(at, text.length);
            const length = scanFigure(text, offset);
            expect(offset + length).toBeLessThanOrEqual(text.length);
            expect(text.slice(offset, offset + length)).not.toMatch(/\n/);
        }), { numRuns: 20_000 });
    });

    it('of great length is refused in good time', () => {
        for (const text of [`1${' '.repeat(50_000)}mm`, '1'.repeat(50_000), '1-'.repeat(20_000), `1 ft ${'1 '.repeat(20_000)}`, `5 ${'x'.repeat(50_000)}`]) {
            expect(parseFigure(text)).toMatchObject({ ok: false });
            expect(scanFigure(text, 0)).toBeLessThanOrEqual(text.length);
        }
    });
});

describe('nearest unit', () => {
    for (const [word, unit] of [['inchs', 'in'], ['gallns', 'gal'], ['MM', 'mm'], ['kpa', 'kPa'], ['kph', 'km/h'], ['ft-lbs', 'lbf-ft'], ['furlongs', undefined], ['nd', undefined]] as const) {
        it(`of ${word} is ${unit ?? 'none'}`, () => {
            expect(nearestUnit(word)).toBe(unit);
        });
    }
});
