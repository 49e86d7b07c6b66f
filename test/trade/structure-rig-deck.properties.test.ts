/** Laws that hold whatever the figures: round trips, monotony, and freedom from units. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blisterFaults, densityPerM2 } from '../../src/trade/blister.js';
import { fasteningStep, thinSample } from '../../src/trade/fastening-sample.js';
import { chainLossShare, isAnchorTooLight, mainAnchorKg, meanLengthM, rodeNeededM, type RodeKind } from '../../src/trade/ground-tackle.js';
import { isOpenJoint } from '../../src/trade/keel-bolt.js';
import { leastLifelineM } from '../../src/trade/lifelines.js';
import { listRad, listStep } from '../../src/trade/list.js';
import { contrastStep, isEarly, moistureRatio, woodStep } from '../../src/trade/moisture.js';
import { hollowStep, shareHollow } from '../../src/trade/percussion.js';
import { isPastTerm, riggingStep } from '../../src/trade/rigging.js';
import { isGaugeOff, meanOf, overthickness, wastageShare, wastageStep } from '../../src/trade/wastage.js';

const positive = (max: number) => fc.double({ min: max / 1e4, max, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const order = <T extends string>(...steps: readonly T[]) => (step: T): number => steps.indexOf(step);

describe('plate', () => {
    it('gives back what is left', () => {
        fc.assert(fc.property(positive(0.03), positive(0.03), (original, gauged) => {
            expect(original * (1 - (wastageShare(original, gauged) ?? Number.NaN))).toBeCloseTo(gauged, 9);
        }));
    });
    it('asks for no less as more is lost, and for no less on a light craft', () => {
        const rank = order('sound', 'watch', 'plan', 'renew');
        fc.assert(fc.property(share, share, (a, b) => {
            expect(rank(wastageStep(Math.min(a, b)))).toBeLessThanOrEqual(rank(wastageStep(Math.max(a, b))));
            expect(rank(wastageStep(a))).toBeLessThanOrEqual(rank(wastageStep(a, true)));
        }));
    });
    it('averages between the least and the most, and judges a gauge alike over and under', () => {
        fc.assert(fc.property(fc.array(positive(0.03), { minLength: 1, maxLength: 6 }), readings => {
            const mean = meanOf(readings) ?? Number.NaN;
            expect(mean).toBeGreaterThanOrEqual(Math.min(...readings) - 1e-12);
            expect(mean).toBeLessThanOrEqual(Math.max(...readings) + 1e-12);
        }));
        fc.assert(fc.property(fc.integer({ min: 0, max: 400 }), off => {
            expect(isGaugeOff(0.005, 0.005 + off * 1e-6)).toBe(isGaugeOff(0.005, 0.005 - off * 1e-6));
        }));
        expect(meanOf([])).toBeUndefined();
    });
    it('is never both wasted and too thick', () => {
        fc.assert(fc.property(positive(0.03), positive(0.03), (original, gauged) => {
            expect(overthickness(original, gauged) !== 'none' && wastageStep(wastageShare(original, gauged) ?? 0) !== 'sound').toBe(false);
        }));
    });
});

describe('moisture', () => {
    it('does not depend on the scale of the meter', () => {
        fc.assert(fc.property(positive(100), positive(100), positive(10), (reading, reference, scale) => {
            expect(moistureRatio(reading * scale, reference * scale)).toBeCloseTo(moistureRatio(reading, reference) ?? Number.NaN, 6);
        }));
        expect(moistureRatio(10, 0)).toBeUndefined();
    });
    it('finds no contrast in equal readings, and no fault where it sounds clear', () => {
        fc.assert(fc.property(positive(100), reading => {
            expect(contrastStep(moistureRatio(reading, reading) ?? Number.NaN, 'hollow')).toBe('none');
        }));
        fc.assert(fc.property(positive(20), ratio => {
            expect(contrastStep(ratio, 'clear')).not.toBe('fault');
        }));
    });
    it('is early by either clock', () => {
        fc.assert(fc.property(positive(3e5), positive(3e5), (lift, wash) => {
            expect(isEarly(lift, wash)).toBe(isEarly(lift, undefined) || isEarly(undefined, wash));
        }));
        expect(isEarly(undefined, undefined)).toBe(false);
    });
    it('calls immersed wood neither damp nor decayed without a probe', () => {
        fc.assert(fc.property(share, moisture => {
            expect(['none', 'unprobed']).toContain(woodStep({ share: moisture, isImmersed: true }));
        }));
        fc.assert(fc.property(share, positive(0.08), (moisture, probeM) => {
            expect(woodStep({ share: moisture, probeM, isImmersed: true }) === 'decay').toBe(woodStep({ share: moisture, probeM }) === 'decay');
        }));
    });
});

describe('sounding, blisters, fastenings', () => {
    it('does not depend on how patches are cut up, or on the unit of area', () => {
        fc.assert(fc.property(fc.array(positive(1), { minLength: 1, maxLength: 8 }), positive(20), (patches, panel) => {
            const whole = patches.reduce((sum, patch) => sum + patch, 0);
            expect(shareHollow(patches, panel)).toBeCloseTo(shareHollow([whole], panel) ?? Number.NaN, 9);
            expect(shareHollow(patches.map(patch => patch * 10.76), panel * 10.76)).toBeCloseTo(whole / panel, 6);
        }));
        expect(shareHollow([1], 0)).toBeUndefined();
    });
    it('is no less urgent under load', () => {
        const rank = order('none', 'fault', 'urgent');
        fc.assert(fc.property(share, hollow => {
            expect(rank(hollowStep(hollow, true))).toBeGreaterThanOrEqual(rank(hollowStep(hollow, false)));
        }));
    });
    it('counts blisters alike by area, and finds no fewer faults in more of them', () => {
        fc.assert(fc.property(fc.integer({ min: 1, max: 1000 }), positive(50), (count, area) => {
            expect((densityPerM2(count, area) ?? Number.NaN) * area).toBeCloseTo(count, 6);
        }));
        fc.assert(fc.property(positive(100), positive(100), (a, b) => {
            expect(blisterFaults({ densityPerM2: Math.max(a, b) }).length).toBeGreaterThanOrEqual(blisterFaults({ densityPerM2: Math.min(a, b) }).length);
        }));
        expect(densityPerM2(3, 0)).toBeUndefined();
        expect(blisterFaults({})).toEqual([]);
    });
    it('judges a sample by its share alone, and calls it thin by its size alone', () => {
        fc.assert(fc.property(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 0, max: 100 }), fc.integer({ min: 2, max: 5 }), (sampled, bad, times) => {
            expect(fasteningStep(bad * times, sampled * times)).toBe(fasteningStep(bad, sampled));
        }));
        fc.assert(fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), (port, starboard) => {
            expect(thinSample({ sampled: port + starboard, port, starboard }) === undefined).toBe(port >= 4 && starboard >= 4);
        }));
        expect(fasteningStep(0, 0)).toBeUndefined();
    });
    it('opens a joint by a gap or a weep', () => {
        expect([isOpenJoint(0.001, false), isOpenJoint(0.0011, false), isOpenJoint(undefined, true), isOpenJoint(undefined, undefined)]).toEqual([false, true, true, false]);
    });
});

describe('list', () => {
    it('turns with the sides, and gives back the difference', () => {
        fc.assert(fc.property(positive(3), positive(3), positive(8), (port, starboard, breadth) => {
            const rad = listRad(port, starboard, breadth) ?? Number.NaN;
            expect(listRad(starboard, port, breadth)).toBeCloseTo(-rad, 12);
            expect(Math.tan(rad) * breadth).toBeCloseTo(port - starboard, 9);
            expect(listStep(rad)).toBe(listStep(-rad));
            expect(listRad(port * 3, starboard * 3, breadth * 3)).toBeCloseTo(rad, 9);
        }));
        expect(listRad(1, 1, 0)).toBeUndefined();
    });
});

describe('ground tackle and lifelines', () => {
    it('asks for no lighter an anchor on a longer boat', () => {
        fc.assert(fc.property(fc.double({ min: 6, max: 24, noNaN: true }), fc.double({ min: 6, max: 24, noNaN: true }), (a, b) => {
            expect(mainAnchorKg(Math.min(a, b)) ?? Number.NaN).toBeLessThanOrEqual((mainAnchorKg(Math.max(a, b)) ?? Number.NaN) + 1e-9);
        }));
        fc.assert(fc.property(positive(80), positive(80), (mass, table) => {
            expect(isAnchorTooLight(mass * 2.2, table * 2.2)).toBe(isAnchorTooLight(mass, table));
        }));
    });
    it('takes a mean between the two lengths', () => {
        fc.assert(fc.property(positive(24), positive(24), (hull, waterline) => {
            expect(meanLengthM(hull, waterline)).toBeGreaterThanOrEqual(Math.min(hull, waterline) - 1e-12);
            expect(meanLengthM(hull, waterline)).toBeLessThanOrEqual(Math.max(hull, waterline) + 1e-12);
        }));
    });
    it('goes in proportion with the depth from the bow', () => {
        fc.assert(fc.property(fc.constantFrom<RodeKind>('chain', 'mixed', 'rope'), positive(50), positive(4), (kind, depth, bow) => {
            expect(rodeNeededM(kind, 2 * depth, 2 * bow)).toBeCloseTo(2 * rodeNeededM(kind, depth, bow), 9);
            expect(rodeNeededM('mixed', depth, bow)).toBeGreaterThan(rodeNeededM('chain', depth, bow));
        }));
    });
    it('gives back what is left of a chain', () => {
        fc.assert(fc.property(positive(0.05), positive(0.05), (original, now) => {
            expect(original * (1 - (chainLossShare(original, now) ?? Number.NaN))).toBeCloseTo(now, 9);
        }));
        expect(chainLossShare(0, 0.01)).toBeUndefined();
    });
    it('asks for no more height on a short boat', () => {
        fc.assert(fc.property(fc.boolean(), positive(30), (isMetric, length) => {
            expect(leastLifelineM(isMetric, length)).toBeLessThanOrEqual(leastLifelineM(isMetric, undefined));
        }));
    });
});

describe('rigging', () => {
    it('is no younger in more years', () => {
        const rank = order('within', 'old', 'very-old');
        const year = fc.integer({ min: 1960, max: 2026 });
        fc.assert(fc.property(year, year, fc.integer({ min: 12, max: 360 }), (a, b, months) => {
            const step = (fitted: number) => rank(riggingStep({ year: fitted, month: 1, precision: 'year' }, { year: 2026, month: 10, day: 6, precision: 'day' }, months));
            expect(step(Math.max(a, b))).toBeLessThanOrEqual(step(Math.min(a, b)));
        }));
    });
    it('counts a term by the calendar, from the last day a date allows', () => {
        const day = (year: number, month: number, of: number) => ({ year, month, day: of, precision: 'day' as const });
        expect(isPastTerm(day(2014, 10, 6), day(2026, 10, 6), 144)).toBe(false);
        expect(isPastTerm(day(2014, 10, 5), day(2026, 10, 6), 144)).toBe(true);
        expect(isPastTerm({ year: 2014, month: 9, precision: 'month' }, day(2026, 9, 30), 144)).toBe(false);
        expect(isPastTerm({ year: 2014, month: 9, precision: 'month' }, day(2026, 10, 1), 144)).toBe(true);
        expect(isPastTerm({ year: 2013, month: 1, precision: 'year' }, day(2025, 12, 31), 144)).toBe(false);
        expect(isPastTerm({ year: 2013, month: 1, precision: 'year' }, { year: 2026, month: 1, precision: 'year' }, 144)).toBe(true);
        expect(isPastTerm(day(2024, 2, 29), day(2025, 3, 1), 12)).toBe(true);
        expect(isPastTerm(day(2024, 2, 29), day(2025, 2, 28), 12)).toBe(false);
    });
    it('is not past a longer term that a shorter one is within', () => {
        fc.assert(fc.property(fc.integer({ min: 1950, max: 2026 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }), (year, month, a, b) => {
            const from = { year, month, precision: 'month' as const };
            const to = { year: 2026, month: 10, day: 6, precision: 'day' as const };
            expect(isPastTerm(from, to, Math.max(a, b)) && !isPastTerm(from, to, Math.min(a, b))).toBe(false);
        }));
    });
});
