import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockCoefficient, displacementLengthRatio, hullSpeedMs, speedLengthRatio } from '../../src/trade/hull-speed.js';
import { conversionAgrees, dimensionsDiffer, exceeds, fuelShare, writtenStep } from '../../src/trade/plausible-particulars.js';
import { grossTons, netTons, tonsAgree, toTenthOfFootM, type HullForm } from '../../src/trade/tonnage.js';

const form = fc.constantFrom<HullForm>('ship', 'sailing', 'sailing-keel-in-depth', 'box');
const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const hull = fc.record({ lengthM: metres(3, 30), beamM: metres(1, 8), depthM: metres(0.5, 5), form });

describe('tonnage', () => {
    it('grows as the cube of a hull', () => {
        fc.assert(fc.property(hull, h => { expect(grossTons({ ...h, lengthM: 2 * h.lengthM, beamM: 2 * h.beamM, depthM: 2 * h.depthM }) / grossTons(h)).toBeCloseTo(8, 9); }));
    });
    it('net is never over gross', () => {
        fc.assert(fc.property(hull, fc.boolean(), (h, engine) => { expect(netTons(grossTons(h), h.form, engine)).toBeLessThanOrEqual(grossTons(h)); }));
    });
    it('agrees with itself, cut or rounded, and not with a tenth more than a ton away', () => {
        fc.assert(fc.property(fc.double({ min: 5, max: 300, noNaN: true }), tons => {
            expect(tonsAgree(tons, tons) && tonsAgree(Math.floor(tons), tons) && tonsAgree(Math.round(tons), tons)).toBe(true);
            expect(tonsAgree(tons * 1.1 + 1, tons) || tonsAgree(tons * 0.9 - 1, tons)).toBe(false);
        }));
    });
    it('is measured to a tenth of a foot', () => {
        fc.assert(fc.property(metres(1, 30), m => {
            expect(Math.abs(toTenthOfFootM(m) - m)).toBeLessThanOrEqual(0.05 * 0.3048 + 1e-9);
            expect(toTenthOfFootM(toTenthOfFootM(m))).toBeCloseTo(toTenthOfFootM(m), 9);
        }));
    });
});

describe('plausible particulars', () => {
    it('the block coefficient has no dimension', () => {
        fc.assert(fc.property(metres(3, 30), metres(1, 8), metres(0.2, 4), metres(1, 5), (l, b, t, scale) => {
            const mass = 0.5 * 1025 * l * b * t;
            expect(blockCoefficient(mass, l, b, t)).toBeCloseTo(0.5, 9);
            expect(blockCoefficient(mass * scale ** 3, l * scale, b * scale, t * scale)).toBeCloseTo(0.5, 9);
        }));
    });
    it('hull speed has the ratio 1.34 at every length', () => {
        fc.assert(fc.property(metres(3, 30), l => { expect(speedLengthRatio(hullSpeedMs(l), l)).toBeCloseTo(1.34, 9); }));
    });
    it('speed over length falls with length, displacement over length too', () => {
        fc.assert(fc.property(metres(3, 30), metres(0.1, 5), (l, more) => {
            expect(speedLengthRatio(5, l + more)).toBeLessThan(speedLengthRatio(5, l));
            expect(displacementLengthRatio(9000, l + more)).toBeLessThan(displacementLengthRatio(9000, l));
        }));
    });
    it('fuel is in proportion to the tank', () => {
        fc.assert(fc.property(metres(0.01, 10), metres(500, 100_000), (v, kg) => {
            expect(fuelShare(2 * v, 'diesel', kg)).toBeCloseTo(2 * (fuelShare(v, 'diesel', kg) ?? 0), 9);
            expect(fuelShare(v, 'diesel', kg)).toBeGreaterThan(fuelShare(v, 'gasoline', kg) ?? Infinity);
        }));
        expect(fuelShare(1, 'diesel', 0)).toBeUndefined();
    });
    it('difference is mutual, and only the larger exceeds', () => {
        fc.assert(fc.property(metres(0.1, 30), metres(0.1, 30), (a, b) => {
            expect(dimensionsDiffer(a, b)).toBe(dimensionsDiffer(b, a));
            expect(exceeds(a, b) && exceeds(b, a)).toBe(false);
            expect(exceeds(a, b)).toBe(a > b && dimensionsDiffer(a, b));
        }));
    });
    it('any figure agrees with its own conversion as written to three digits, and not with one a tenth off', () => {
        fc.assert(fc.property(fc.integer({ min: 10, max: 9999 }), inches => {
            const figure = { si: inches * 0.0254, stepSi: { last: 0, rounded: 0 } };
            const text = Number((inches * 25.4).toPrecision(3)).toString();
            const step = writtenStep(text);
            const conversion = { si: Number(text) / 1000, stepSi: { last: step.last / 1000, rounded: step.rounded / 1000 } };
            expect(conversionAgrees(figure, conversion)).toBe(true);
            expect(conversionAgrees(figure, { ...conversion, si: conversion.si * 1.1 })).toBe(false);
        }));
    });
    it.each([['38', 1, 1], ['380', 1, 10], ['5.0', 0.1, 0.1], ['24,000', 1, 1000], ['5/32', 0, 0], ['1-1/2', 0, 0], ['0', 1, 1], ['100.', 1, 1]])('%s is written in steps of %d, rounded to %d', (text, last, rounded) => {
        expect(writtenStep(text)).toEqual({ last, rounded });
    });
});
