/** Edges and laws that the computations of the trade must keep, whatever the figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anodeLeft, anodeLeftAfter } from '../../src/trade/anode.js';
import { drainTimeS } from '../../src/trade/cockpit-drain.js';
import { allowableCurrentA, areaForDropM2, gaugeAreaM2, gaugeFor, gaugeForCurrent, gaugeTitle, gaugeWithin, insulationClassesC, tabulatedGauges, voltageDropV } from '../../src/trade/conductor.js';
import { coolantFreezingByMassK, coolantFreezingK, exchangedVolumeM3, isFreezingTabulated, massShare, shareForFreezing, strongestUsefulShare } from '../../src/trade/coolant.js';
import { cylinderSpread } from '../../src/trade/cylinder-spread.js';
import { disposableExpiry, extinguishersNeeded } from '../../src/trade/extinguishers.js';
import { coupleStep } from '../../src/trade/galvanic.js';
import { hoseFit, isSameNominalSize, looseLimitM } from '../../src/trade/hose-fit.js';
import { decodeHullNumber } from '../../src/trade/hull-number.js';
import { judgeHullPotential } from '../../src/trade/hull-potential.js';
import { inflowM3s, timeToFillS } from '../../src/trade/orifice-inflow.js';
import { overcurrentLimitA, standardRatingWithin } from '../../src/trade/overcurrent.js';
import { bspMajorM, judgeThreads, nptSize, threadsPerInch, type ThreadForm } from '../../src/trade/pipe-thread.js';
import { propellerSlip } from '../../src/trade/propeller-slip.js';
import { convertPotentialV, electrodeV, type ReferenceElectrode } from '../../src/trade/reference-electrode.js';
import { spigotLengthNeededM } from '../../src/trade/spigot-length.js';
import { blowerRatingM3s, naturalVentAreaM2 } from '../../src/trade/ventilation.js';
import { wastageShare, wastageStep } from '../../src/trade/wastage.js';

const positive = (max: number) => fc.double({ min: max / 1e4, max, noNaN: true });
const inch = 0.0254;

describe('inflow', () => {
    it('goes with the square of the bore and the root of the depth', () => {
        fc.assert(fc.property(positive(0.2), positive(3), (boreM, depthM) => {
            const q = inflowM3s({ boreM, depthM });
            expect(inflowM3s({ boreM: 2 * boreM, depthM }) / q).toBeCloseTo(4, 9);
            expect(inflowM3s({ boreM, depthM: 4 * depthM }) / q).toBeCloseTo(2, 9);
        }));
    });
    it('is none at or above the waterline, and fills nothing that the pumps keep dry', () => {
        expect(inflowM3s({ boreM: 0.05, depthM: 0 })).toBe(0);
        expect(inflowM3s({ boreM: 0.05, depthM: -0.3 })).toBe(0);
        expect(timeToFillS(1, 0.001, 0.001)).toBeUndefined();
        expect(timeToFillS(1, 0.002, 0.001)).toBeCloseTo(1000, 9);
    });
});

describe('hose on a tail', () => {
    for (const [hose, tail, expected] of [
        [38, 38.1, 'fits'], [50, 50.8, 'fits'], [51, 50.8, 'fits'], [38.1, 31.75, 'loose'], [31.75, 38.1, 'tight'], [25, 25.4, 'fits'], [19, 19.05, 'fits'], [100, 101.6, 'fits'], [12, 12.7, 'fits'],
        [27.1, 25.4, 'loose'], [26.29, 25.4, 'fits'], [40.05, 38.1, 'loose'], [39.75, 38.1, 'fits'], [9.9, 9.4, 'fits'], [10, 9.4, 'loose'],
    ] as const) {
        it(`${hose} mm on ${tail} mm ${expected}`, () => {
            expect(hoseFit({ boreM: hose / 1000, spigotM: tail / 1000 })).toBe(expected);
        });
    }
    it('loosens with the bore and never turns back', () => {
        const order = { tight: 0, fits: 1, loose: 2 } as const;
        fc.assert(fc.property(positive(0.12), positive(0.12), positive(0.12), (a, b, spigotM) => {
            const [small, large] = a < b ? [a, b] : [b, a];
            expect(order[hoseFit({ boreM: small, spigotM })]).toBeLessThanOrEqual(order[hoseFit({ boreM: large, spigotM })]);
        }));
    });
    it('may be looser on a larger tail', () => {
        expect([9.4, 9.6, 25.4, 26].map(mm => Math.round(looseLimitM(mm / 1000) * 1e6))).toEqual([508, 889, 889, 1651]);
    });
    it('pairs nominal sizes both ways round and no neighbors', () => {
        const sizes = [0.5, 0.625, 0.75, 0.875, 1, 1.125, 1.25, 1.5, 1.625, 1.75, 2, 2.5, 3, 4];
        for (const a of sizes) {
            for (const b of sizes) {
                expect(isSameNominalSize(a * inch, b * inch)).toBe(a === b);
            }
        }
    });
    it('needs no tail without clamps, and 6 mm more than each further band', () => {
        expect(spigotLengthNeededM({ clamps: 0, bandM: 0.012 })).toBe(0);
        expect(spigotLengthNeededM({ clamps: 1, bandM: 0.0127 })).toBeCloseTo(0.0187, 9);
        expect(spigotLengthNeededM({ clamps: 2, bandM: 0.0127 })).toBeCloseTo(0.0374, 9);
    });
});

describe('pipe threads', () => {
    const forms: readonly ThreadForm[] = ['npt', 'nps', 'bspp', 'bspt'];
    it('mate with their own form, never across families', () => {
        for (const male of forms) {
            expect(judgeThreads({ male, female: male })).toBe('mates');
            for (const female of forms) {
                expect(judgeThreads({ male, female }) === 'other-family').toBe(male.startsWith('np') !== female.startsWith('np'));
            }
        }
    });
    it('bind straight in taper', () => {
        expect(judgeThreads({ male: 'bspp', female: 'bspt' })).toBe('straight-into-taper');
        expect(judgeThreads({ male: 'bspt', female: 'bspp' })).toBe('mates');
        expect(judgeThreads({ male: 'npt', female: 'nps' })).toBe('taper-into-straight');
    });
    it('share their pitch at 1/2 and 3/4 in alone', () => {
        const shared = [0.25, 0.375, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4].filter(size => threadsPerInch('npt', size) === threadsPerInch('bspt', size));
        expect(shared).toEqual([0.5, 0.75]);
    });
    it('are not tabulated at other sizes', () => {
        expect(nptSize(1.75)).toBeUndefined();
        expect(threadsPerInch('bspp', 3.5)).toBeUndefined();
        expect(bspMajorM(2)).toBeCloseTo(0.059614, 9);
    });
});

describe('metals', () => {
    const electrodes = Object.keys(electrodeV) as readonly ReferenceElectrode[]; // The record's own keys.
    it('potentials go from cell to cell and back', () => {
        fc.assert(fc.property(fc.double({ min: -2, max: 1, noNaN: true }), fc.constantFrom(...electrodes), fc.constantFrom(...electrodes), fc.constantFrom(...electrodes), (v, a, b, c) => {
            expect(convertPotentialV(convertPotentialV(v, a, b), b, a)).toBeCloseTo(v, 12);
            expect(convertPotentialV(convertPotentialV(v, a, b), b, c)).toBeCloseTo(convertPotentialV(v, a, c), 12);
        }));
    });
    it('a couple is judged by difference, area and anode', () => {
        expect(coupleStep({ differenceV: 0.2 })).toBe(0);
        expect(coupleStep({ differenceV: 0.21 })).toBe(1);
        expect(coupleStep({ differenceV: 0.21, anodeLeft: 0.5 })).toBe(0);
        expect(coupleStep({ differenceV: 0.21, anodeLeft: 0.49 })).toBe(1);
        expect(coupleStep({ differenceV: 0.3, areaRatio: 11, anodeLeft: 0.9 })).toBe(2);
        expect(coupleStep({ differenceV: 0.3, areaRatio: 0.09 })).toBe(0);
        expect(coupleStep({ differenceV: 0.4 })).toBe(1);
        expect(coupleStep({ differenceV: 0.41, areaRatio: 0.09 })).toBe(1);
        expect(coupleStep({ differenceV: 0.19, areaRatio: 100 })).toBe(0);
    });
    it('ends of a hull’s range lie within it', () => {
        for (const [fromV, toV] of [[-0.75, -1], [-0.55, -0.6], [-0.9, -1.1]] as const) {
            expect([fromV, toV, fromV + 0.001, toV - 0.001].map(v => judgeHullPotential(v, { fromV, toV }))).toEqual(['in-range', 'in-range', 'under-protected', 'over-protected']);
        }
    });
    it('an anode never has more than all or less than none', () => {
        expect([anodeLeft(2, 1), anodeLeft(2, 3), anodeLeft(2, -1), anodeLeft(0, 1)]).toEqual([0.5, 1, 0, undefined]);
        expect(anodeLeftAfter(0.6, 12, 12)).toBeCloseTo(0.2, 9);
        expect(anodeLeftAfter(0.6, 12, 24)).toBe(0);
        expect(anodeLeftAfter(0.6, 0, 24)).toBe(0.6);
    });
});

describe('coolant', () => {
    const glycols = ['ethylene', 'propylene'] as const;
    it('freezes the lower the stronger it is, to 60 %', () => {
        fc.assert(fc.property(fc.constantFrom(...glycols), fc.double({ min: 0, max: 0.6, noNaN: true }), fc.double({ min: 0, max: 0.6, noNaN: true }), (glycol, a, b) => {
            const [weak, strong] = a < b ? [a, b] : [b, a];
            expect(coolantFreezingK(glycol, strong)).toBeLessThanOrEqual(coolantFreezingK(glycol, weak) + 1e-9);
        }));
    });
    it('turns back beyond', () => {
        expect(coolantFreezingK('ethylene', 0.9)).toBeGreaterThan(coolantFreezingK('ethylene', strongestUsefulShare));
    });
    it('says where its tables end', () => {
        expect(isFreezingTabulated('propylene', 0.7)).toBe(false);
        expect(isFreezingTabulated('ethylene', 0.7)).toBe(true);
        expect(coolantFreezingByMassK('ethylene', 0.61)).toBeUndefined();
        expect(coolantFreezingByMassK('propylene', -0.1)).toBeUndefined();
    });
    it('finds the share of a freezing point again', () => {
        fc.assert(fc.property(fc.constantFrom(...glycols), fc.double({ min: 0.01, max: 0.6, noNaN: true }), (glycol, share) => {
            expect(shareForFreezing(glycol, coolantFreezingK(glycol, share)) ?? Number.NaN).toBeCloseTo(share, 9);
        }));
        expect(shareForFreezing('ethylene', 200)).toBeUndefined();
    });
    it('an exchange gives the share wanted', () => {
        fc.assert(fc.property(positive(0.1), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0, 0.5, 1), (volumeM3, share, targetShare, addedShare) => {
            const x = exchangedVolumeM3({ volumeM3, share, targetShare, addedShare });
            if (x !== undefined) {
                expect(x).toBeGreaterThanOrEqual(0);
                expect(x).toBeLessThan(volumeM3);
                expect(((volumeM3 - x) * share + x * addedShare) / volumeM3).toBeCloseTo(targetShare, 6);
            } else {
                // Only what lies beyond the liquid now in or the one added cannot be reached.
                expect(targetShare <= Math.max(share, addedShare) - 1e-6 && targetShare >= Math.min(share, addedShare) + 1e-6).toBe(false);
            }
        }));
    });
    it('weighs more than it fills', () => {
        expect(massShare('ethylene', 0)).toBe(0);
        expect(massShare('propylene', 1)).toBe(1);
        expect(massShare('ethylene', 0.4)).toBeGreaterThan(0.4);
    });
});

describe('conductors', () => {
    it('the gauge found holds the area asked, and the next thinner does not', () => {
        fc.assert(fc.property(positive(100e-6), areaM2 => {
            const gauge = gaugeFor(areaM2);
            if (gauge !== undefined) {
                expect(gaugeAreaM2(gauge)).toBeGreaterThanOrEqual(areaM2 * (1 - 1e-9));
                const thinner = tabulatedGauges[tabulatedGauges.indexOf(gauge) - 1];
                expect(thinner === undefined || gaugeAreaM2(thinner) < areaM2).toBe(true);
            }
        }));
        expect(gaugeFor(120e-6)).toBeUndefined();
    });
    it('each gauge stands for itself', () => {
        expect(tabulatedGauges.map(gauge => gaugeWithin(gaugeAreaM2(gauge)))).toEqual(tabulatedGauges);
        expect(tabulatedGauges.slice(-4).map(gaugeTitle)).toEqual(['1/0 AWG', '2/0 AWG', '3/0 AWG', '4/0 AWG']);
    });
    it('the area for a drop gives that drop', () => {
        fc.assert(fc.property(positive(300), positive(60), positive(24), (currentA, roundTripM, dropV) => {
            expect(voltageDropV({ currentA, roundTripM, areaM2: areaForDropM2({ currentA, roundTripM, dropV }) }) / dropV).toBeCloseTo(1, 9);
        }));
    });
    it('the gauge for a current carries it', () => {
        fc.assert(fc.property(positive(400), fc.constantFrom(...insulationClassesC), fc.boolean(), (currentA, insulationC, isEngineSpace) => {
            const gauge = gaugeForCurrent(currentA, { insulationC, isEngineSpace });
            if (gauge !== undefined) {
                expect(allowableCurrentA({ areaM2: gaugeAreaM2(gauge), insulationC, isEngineSpace })).toBeGreaterThanOrEqual(currentA - 1e-6);
            }
        }));
        expect(gaugeForCurrent(9999, { insulationC: 105 })).toBeUndefined();
    });
    it('bundles count at 50 V and over only', () => {
        const wire = { areaM2: gaugeAreaM2(10), insulationC: 105 } as const;
        expect([12, 49, 50, 120].map(systemV => allowableCurrentA({ ...wire, bundled: 4, systemV }))).toEqual([60, 60, 36, 36]);
    });
    it('a fuse never exceeds 150 %', () => {
        fc.assert(fc.property(positive(600), fc.constantFrom(12, 24, 48, 50, 120, 240), (allowableA, systemV) => {
            const limit = overcurrentLimitA({ allowableA, systemV });
            expect(limit).toBeLessThanOrEqual(1.5 * allowableA + 1e-6);
            expect(limit).toBeGreaterThanOrEqual(allowableA - 1e-6);
        }));
        expect(standardRatingWithin(14)).toBeUndefined();
    });
});

describe('other computations', () => {
    it('a cockpit drains in no time when it need not, and the slower the smaller its drains', () => {
        expect(drainTimeS({ soleAreaM2: 2, depthM: 0.1, drainAreaM2: 0.001 })).toBe(0);
        expect(drainTimeS({ soleAreaM2: 2, depthM: 0.4, drainAreaM2: 0.001 }) / drainTimeS({ soleAreaM2: 2, depthM: 0.4, drainAreaM2: 0.002 })).toBeCloseTo(2, 9);
    });
    it('ventilation grows with the space', () => {
        fc.assert(fc.property(positive(20), positive(20), (a, b) => {
            const [small, large] = a < b ? [a, b] : [b, a];
            expect(naturalVentAreaM2(small)).toBeLessThanOrEqual(naturalVentAreaM2(large));
            expect(blowerRatingM3s(small)).toBeLessThanOrEqual(blowerRatingM3s(large));
        }));
        expect(naturalVentAreaM2(0)).toBeGreaterThan(0);
    });
    it('plate: steps at their bounds', () => {
        expect([0.05, 0.1, 0.15, 0.2, 0.25, 0.26, -0.1].map(share => wastageStep(share))).toEqual(['sound', 'watch', 'watch', 'plan', 'plan', 'renew', 'sound']);
        expect(wastageStep(0.15, true)).toBe('plan');
        expect(wastageShare(0, 0.004)).toBeUndefined();
    });
    it('says nothing where there is nothing to compare', () => {
        expect(cylinderSpread([100])).toBeUndefined();
        expect(cylinderSpread([0, 0])).toBeUndefined();
        expect(propellerSlip(5, { rotationRadS: 0, ratio: 2, pitchM: 0.4 })).toBeUndefined();
    });
    it('extinguishers change at 26, 40 and 65 ft', () => {
        const ways = (ft: number) => extinguishersNeeded(ft * 0.3048, false)?.[0]?.b5;
        expect([25.9, 26, 39.9, 40, 65, 65.1].map(ways)).toEqual([1, 2, 2, 3, 3, undefined]);
        expect(disposableExpiry(2014)).toBe(2026);
    });
    it('hull numbers: the older forms end with 1984', () => {
        const forms = ['ABC123450684', 'ABC123450603', 'ABC12345M85A', 'ABC12345M03A'].map(text => { const read = decodeHullNumber(text); return read.ok ? read.form : read.problem; });
        expect(forms).toEqual(['straight-year', 'date', 'model-year', 'date']);
    });
    it('hull numbers: no text throws, and each verdict is one of the published forms or a reason', () => {
        fc.assert(fc.property(fc.string({ unit: fc.constantFrom(...'ABCHIMOQ0123456789- '.split('')), maxLength: 16 }), text => {
            const read = decodeHullNumber(text);
            if (read.ok) {
                expect(read.month).toBeGreaterThanOrEqual(1);
                expect(read.month).toBeLessThanOrEqual(12);
                expect(read.builtYear).toBeGreaterThan(1960);
            } else {
                expect(read.detail).not.toBe('');
            }
        }), { numRuns: 5000 });
    });
});
