/** Laws that the rules of carriage, lights, capacity and hull numbers keep, whatever the figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { personsOfLoad, powerCapacityW, powerFactor } from '../../src/trade/capacity-label.js';
import { agentLoss } from '../../src/trade/fixed-extinguisher.js';
import { bareHullNumber, decodeHullNumber } from '../../src/trade/hull-number.js';
import { lifejacketsMissing, throwablesNeeded } from '../../src/trade/lifejackets.js';
import { hasNumberPrefix, isPlacardLargeEnough } from '../../src/trade/marks.js';
import { leastHeight, leastRangeNmi, type LightKind } from '../../src/trade/navigation-lights.js';
import { isDeviceAllowed } from '../../src/trade/sanitation.js';
import { signalShortage, signalUse, soundSignalsNeeded, type SignalKind } from '../../src/trade/signals.js';
import { daysLeft, hasPassed, isOlderThanMonths } from '../../src/checks/dates.js';
import type { DateFigure } from '../../src/record/model.js';

const count = fc.integer({ min: 0, max: 12 });
const length = fc.double({ min: 2, max: 60, noNaN: true });

describe('signals', () => {
    const kind = fc.constantFrom<SignalKind>('red-hand', 'red-parachute', 'red-meteor', 'orange-smoke', 'flag', 'electric-light');
    const lots = fc.array(fc.tuple(kind, count), { maxLength: 6 });
    const short = (all: readonly (readonly [SignalKind, number])[]) => signalShortage(all.map(([one, n]) => ({ ...signalUse(one), count: n })));
    it('are never fewer with one lot more, whatever the order', () => {
        fc.assert(fc.property(lots, kind, count, (all, one, n) => {
            const [before, after] = [short(all), short([...all, [one, n]])];
            expect(after.dayMissing).toBeLessThanOrEqual(before.dayMissing);
            expect(after.nightMissing).toBeLessThanOrEqual(before.nightMissing);
            expect(short([...all].reverse())).toEqual(before);
        }));
    });
    it('serve by day and night with three red ones, or with a flag and a light', () => {
        fc.assert(fc.property(lots, all => {
            expect(short([...all, ['red-hand', 3]])).toMatchObject({ dayMissing: 0, nightMissing: 0 });
            expect(short([...all, ['flag', 1], ['electric-light', 1]])).toMatchObject({ dayMissing: 0, nightMissing: 0 });
        }));
    });
    it('of sound are never fewer on a longer vessel', () => {
        fc.assert(fc.property(length, length, (a, b) => {
            const [small, large] = [soundSignalsNeeded(Math.min(a, b)), soundSignalsNeeded(Math.max(a, b))];
            expect(Number(large.whistle)).toBeGreaterThanOrEqual(Number(small.whistle));
            expect(Number(large.bell)).toBeGreaterThanOrEqual(Number(small.bell));
            expect(!large.bell || large.whistle).toBe(true);
        }));
    });
});

describe('life jackets', () => {
    it('are all there once the missing ones are added, and never more than persons are missing', () => {
        fc.assert(fc.property(count, count, count, count, (adults, children, adult, child) => {
            const missing = lifejacketsMissing(adults + children, children, { adult, child });
            expect(missing.adult + missing.child).toBeLessThanOrEqual(adults + children);
            expect(lifejacketsMissing(adults + children, children, { adult: adult + missing.adult, child: child + missing.child })).toEqual({ adult: 0, child: 0 });
        }));
    });
    it('go with a throwable device from 16 ft on', () => {
        fc.assert(fc.property(length, m => {
            expect(throwablesNeeded(m)).toBe(m >= 4.8768 ? 1 : 0);
        }));
    });
});

describe('navigation lights', () => {
    it('reach no less far on a longer vessel', () => {
        fc.assert(fc.property(fc.constantFrom<LightKind>('masthead', 'side', 'stern', 'towing', 'all-round'), length, length, (light, a, b) => {
            expect(leastRangeNmi(light, Math.max(a, b))).toBeGreaterThanOrEqual(leastRangeNmi(light, Math.min(a, b)));
        }));
    });
    it('stand by one rule of height under 20 m and by none beyond', () => {
        fc.assert(fc.property(length, m => {
            expect(leastHeight(m)?.above).toBe(m >= 20 ? undefined : m >= 12 ? 'gunwale' : 'side-lights');
        }));
    });
});

describe('capacity of a small outboard boat', () => {
    const boat = fc.record({ lengthM: fc.double({ min: 2, max: 6.09, noNaN: true }), transomWidthM: fc.double({ min: 0.5, max: 2.6, noNaN: true }), isRemoteOnHighTransom: fc.boolean(), isFlatBottom: fc.boolean() });
    const hpW = 745.6998715822702;
    it('grows with length and transom', () => {
        fc.assert(fc.property(boat, fc.double({ min: 0, max: 1, noNaN: true }), (one, more) => {
            expect(powerCapacityW({ ...one, lengthM: one.lengthM + more })).toBeGreaterThanOrEqual(powerCapacityW(one) - 1e-6);
            expect(powerCapacityW({ ...one, transomWidthM: one.transomWidthM + more })).toBeGreaterThanOrEqual(powerCapacityW(one) - 1e-6);
        }));
    });
    it('is a multiple of 5 hp above the table, and least with a flat bottom', () => {
        fc.assert(fc.property(boat, one => {
            const hp = powerCapacityW(one) / hpW;
            if (powerFactor(one.lengthM, one.transomWidthM) > 52.5 + 1e-6) {
                expect(Math.abs(hp / 5 - Math.round(hp / 5))).toBeLessThan(1e-6);
            }
            expect(powerCapacityW({ ...one, isFlatBottom: true })).toBeLessThanOrEqual(powerCapacityW({ ...one, isFlatBottom: false }) + 1e-6);
            expect(powerCapacityW({ ...one, isRemoteOnHighTransom: true })).toBeGreaterThanOrEqual(powerCapacityW({ ...one, isRemoteOnHighTransom: false }) - 1e-6);
        }));
    });
    it('counts whole persons that grow with the load', () => {
        fc.assert(fc.property(fc.double({ min: 20, max: 3000, noNaN: true }), fc.double({ min: 0, max: 200, noNaN: true }), (kg, more) => {
            expect(Number.isInteger(personsOfLoad(kg))).toBe(true);
            expect(personsOfLoad(kg + more)).toBeGreaterThanOrEqual(personsOfLoad(kg));
            expect(personsOfLoad(kg + 141 * 0.45359237)).toBe(personsOfLoad(kg) + 1);
        }));
    });
});

describe('placards, devices, agent', () => {
    const side = fc.double({ min: 0.01, max: 1, noNaN: true });
    it('a larger placard is enough where a smaller is; an oil placard either way up', () => {
        fc.assert(fc.property(fc.constantFrom('oil' as const, 'garbage' as const), side, side, fc.double({ min: 0, max: 1, noNaN: true }), (kind, w, h, more) => {
            if (isPlacardLargeEnough(kind, w, h)) {
                expect(isPlacardLargeEnough(kind, w + more, h + more)).toBe(true);
                expect(isPlacardLargeEnough(kind, w, undefined)).toBe(true);
            }
            expect(isPlacardLargeEnough('oil', w, h)).toBe(isPlacardLargeEnough('oil', h, w));
        }));
    });
    it('types II and III go with any length', () => {
        fc.assert(fc.property(length, m => {
            expect(isDeviceAllowed('type-ii', m) && isDeviceAllowed('type-iii', m)).toBe(true);
            expect(isDeviceAllowed('type-i', m)).toBe(m <= 19.812);
        }));
    });
    it('the loss of agent does not hang on the unit, and gives back what was weighed', () => {
        fc.assert(fc.property(fc.double({ min: 0.1, max: 100, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (label, left) => {
            expect(agentLoss(label, label * left)).toBeCloseTo(1 - left, 9);
            expect(agentLoss(label * 2.2, label * left * 2.2)).toBeCloseTo(agentLoss(label, label * left), 9);
        }));
    });
    it('an official number is known by its letters', () => {
        fc.assert(fc.property(fc.nat(), n => {
            expect(hasNumberPrefix(`NO. ${n}`) && hasNumberPrefix(`No${n}`)).toBe(true);
            expect(hasNumberPrefix(String(n))).toBe(false);
        }));
    });
});

describe('dates', () => {
    const day = fc.date({ min: new Date('1990-01-01T00:00:00Z'), max: new Date('2060-12-31T00:00:00Z'), noInvalidDate: true });
    const figure = (date: Date, precision: DateFigure['precision'] = 'day'): DateFigure => ({ kind: 'date', year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate(), precision, written: '', iso: '' });
    it('a day has passed on the next day and not before', () => {
        fc.assert(fc.property(day, date => {
            const next = new Date(date.getTime() + 86_400_000);
            expect(daysLeft(figure(date), figure(date))).toBe(0);
            expect(hasPassed(figure(date), figure(next))).toBe(true);
        }));
    });
    it('a month and a year never pass before their days do', () => {
        fc.assert(fc.property(day, day, (marked, today) => {
            const [byDay, byMonth, byYear] = (['day', 'month', 'year'] as const).map(precision => daysLeft(figure(marked, precision), figure(today)));
            expect(byMonth).toBeGreaterThanOrEqual(byDay ?? 0);
            expect(byYear).toBeGreaterThanOrEqual(byMonth ?? 0);
        }));
    });
    it('what is older than 24 months is older than 12', () => {
        fc.assert(fc.property(day, day, (since, today) => {
            if (isOlderThanMonths(figure(since), 24, figure(today))) {
                expect(isOlderThanMonths(figure(since), 12, figure(today))).toBe(true);
            }
        }));
    });
});

describe('hull numbers', () => {
    const serial = fc.stringMatching(/^[A-HJ-NPR-Z0-9]{5}$/);
    const two = (n: number) => String(n % 100).padStart(2, '0');
    it('of the present form give back month and years', () => {
        fc.assert(fc.property(serial, fc.integer({ min: 1985, max: 2070 }), fc.integer({ min: 0, max: 1 }), fc.integer({ min: 1, max: 12 }), (text, built, ahead, month) => {
            fc.pre(built + ahead <= 2071);
            const written = `ABC${text}${String.fromCharCode(64 + month)}${built % 10}${two(built + ahead)}`;
            expect(decodeHullNumber(written)).toMatchObject({ ok: true, form: 'current', month, builtYear: built, modelYear: built + ahead, serial: text });
        }));
    });
    it('of the straight-year form give back month and year', () => {
        fc.assert(fc.property(serial, fc.integer({ min: 1972, max: 1984 }), fc.integer({ min: 1, max: 12 }), (text, year, month) => {
            expect(decodeHullNumber(`ABC${text}${two(month)}${two(year)}`)).toMatchObject({ ok: true, form: 'straight-year', month, builtYear: year });
        }));
    });
    it('read the same with prefix, blanks and hyphens, and in small letters', () => {
        fc.assert(fc.property(serial, text => {
            const written = `ABC${text}H495`;
            for (const other of [`US-${written}`, `us-${written.toLowerCase()}`, `US${written}`, `ABC ${text} H495`, `ABC-${text}-H495`]) {
                expect(bareHullNumber(other)).toBe(written);
            }
        }));
    });
});
