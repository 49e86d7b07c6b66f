import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bankCapacityC, chargeRangeAt, restDifferenceV, shareLeft } from '../../src/trade/battery.js';
import { batteryTestPullN } from '../../src/trade/battery-hold.js';
import {
    allowableCurrentA, areaForDropM2, gaugeAreaM2, gaugeFor, gaugeForCurrent, gaugeWithin, insulationClassC, insulationClassesC, measuredDropShare, tabulatedGauges, voltageDropV,
} from '../../src/trade/conductor.js';
import { isoAllowableCurrentA, isoAreaForCurrentM2, isoAreasM2 } from '../../src/trade/iso-conductor.js';
import { overcurrentLimitA, overcurrentReachM, standardRatingWithin } from '../../src/trade/overcurrent.js';
import { dutyOf, enduranceS } from '../../src/trade/pump.js';
import { isOverheated, leakageVerdict, loadShare, tripsInTime } from '../../src/trade/shore-power.js';

const positive = (max: number) => fc.double({ min: max * 1e-6, max, noNaN: true });
const gauge = fc.constantFrom(...tabulatedGauges);
const insulationC = fc.constantFrom(...insulationClassesC);
const close = (x: number, y: number) => Math.abs(x - y) <= 1e-9 * Math.max(1, Math.abs(x), Math.abs(y));

describe('conductors', () => {
    it('a gauge finds itself by its area', () => {
        fc.assert(fc.property(gauge, n => gaugeWithin(gaugeAreaM2(n)) === n && gaugeFor(gaugeAreaM2(n)) === n));
    });
    it('the gauge within an area is no thicker than the gauge for it', () => {
        fc.assert(fc.property(fc.double({ min: 0.83e-6, max: 107e-6, noNaN: true }), areaM2 => (gaugeWithin(areaM2) ?? NaN) >= (gaugeFor(areaM2) ?? NaN)));
    });
    it('an engine space and a bundle never add to a value', () => {
        fc.assert(fc.property(gauge, insulationC, fc.integer({ min: 1, max: 40 }), fc.constantFrom(12, 24, 49, 50, 120, 230), (n, rated, bundled, systemV) => {
            const areaM2 = gaugeAreaM2(n);
            const free = allowableCurrentA({ areaM2, insulationC: rated }) ?? NaN;
            const held = allowableCurrentA({ areaM2, insulationC: rated, isEngineSpace: true, bundled, systemV }) ?? NaN;
            return held > 0 && held <= free;
        }));
    });
    it('the gauge for a current carries it, and the next thinner does not', () => {
        fc.assert(fc.property(positive(500), insulationC, (currentA, rated) => {
            const n = gaugeForCurrent(currentA, { insulationC: rated });
            const carries = (g: number | undefined) => g !== undefined && (allowableCurrentA({ areaM2: gaugeAreaM2(g), insulationC: rated }) ?? 0) >= currentA - 1e-9;
            const thinner = n === undefined ? tabulatedGauges.at(-1) : tabulatedGauges[tabulatedGauges.indexOf(n) - 1];
            return (n === undefined || carries(n)) && !carries(thinner);
        }));
    });
    it('a class is never over the rating', () => {
        fc.assert(fc.property(fc.double({ min: 60, max: 250, noNaN: true }), rated => (insulationClassC(rated) ?? Infinity) <= rated + 1e-6));
        expect(insulationClassC(59.9)).toBeUndefined();
    });
    it('the area for a drop loses just that, and drop grows with current and length', () => {
        fc.assert(fc.property(positive(300), positive(60), positive(10), (currentA, roundTripM, dropV) => {
            const areaM2 = areaForDropM2({ currentA, roundTripM, dropV });
            return close(voltageDropV({ currentA, roundTripM, areaM2 }), dropV) && voltageDropV({ currentA: 2 * currentA, roundTripM, areaM2 }) > dropV && close(voltageDropV({ currentA, roundTripM: 2 * roundTripM, areaM2 }), 2 * dropV);
        }));
    });
    it('a measured share is of the source, whatever the unit', () => {
        fc.assert(fc.property(positive(250), fc.double({ min: 0, max: 1, noNaN: true }), (sourceV, share) => Math.abs(measuredDropShare({ sourceV, loadV: sourceV * (1 - share) }) - share) < 1e-9));
    });
});

describe('metric conductors', () => {
    const area = fc.constantFrom(...isoAreasM2);
    const rated = fc.double({ min: 60, max: 200, noNaN: true });
    it('a thicker wire and a better insulation never carry less', () => {
        fc.assert(fc.property(area, area, rated, rated, (a, b, s, t) => {
            const least = isoAllowableCurrentA({ areaM2: Math.min(a, b), insulationC: Math.min(s, t) }) ?? NaN;
            return least <= (isoAllowableCurrentA({ areaM2: Math.max(a, b), insulationC: Math.max(s, t) }) ?? NaN);
        }));
    });
    it('the size for a current is the thinnest that carries it', () => {
        fc.assert(fc.property(positive(300), rated, (currentA, insulation) => {
            const areaM2 = isoAreaForCurrentM2(currentA, { insulationC: insulation });
            const carries = (a: number | undefined) => a !== undefined && (isoAllowableCurrentA({ areaM2: a, insulationC: insulation }) ?? 0) >= currentA - 1e-9;
            return (areaM2 === undefined || carries(areaM2)) && !carries(areaM2 === undefined ? isoAreasM2.at(-1) : isoAreasM2[isoAreasM2.indexOf(areaM2) - 1]);
        }));
    });
});

describe('fuses', () => {
    it('at 50 V and over the limit is never wider than under it, and never under the value', () => {
        fc.assert(fc.property(positive(500), allowableA => {
            const [low, high] = [overcurrentLimitA({ allowableA, systemV: 12 }), overcurrentLimitA({ allowableA, systemV: 120 })];
            return high <= low + 1e-9 && high >= allowableA - 1e-9;
        }));
    });
    it('what is proposed is within the limit', () => {
        fc.assert(fc.property(positive(900), limitA => (standardRatingWithin(limitA) ?? 0) <= limitA + 1e-9));
    });
    it('a sheath and a battery post never bring the fuse nearer', () => {
        expect(overcurrentReachM({ isSheathed: false, isAtBattery: false })).toBeLessThan(overcurrentReachM({ isSheathed: true, isAtBattery: false }));
        expect(overcurrentReachM({ isSheathed: true, isAtBattery: true })).toBe(overcurrentReachM({ isSheathed: false, isAtBattery: true }));
    });
});

describe('batteries', () => {
    it('the pull grows with the weight to 90 lbf and no further', () => {
        fc.assert(fc.property(positive(200), positive(200), (a, b) => batteryTestPullN(Math.min(a, b)) <= batteryTestPullN(Math.max(a, b)) && batteryTestPullN(a) <= 90 * 4.4482216152605 + 1e-9));
    });
    it('a bank holds what its units hold, in whatever order and at whatever voltage', () => {
        const units = fc.array(fc.record({ capacityC: positive(4e6), nominalV: fc.constantFrom(2, 6, 8, 12, 24) }), { minLength: 1, maxLength: 8 });
        fc.assert(fc.property(units, bank => close(bankCapacityC(bank, 12), bankCapacityC([...bank].reverse(), 12)) && close(bankCapacityC(bank, 12), 2 * bankCapacityC(bank, 24))));
    });
    it('a range of charge scales with the voltage, and temperature only widens it', () => {
        fc.assert(fc.property(fc.constantFrom(12, 24, 32, 48), fc.double({ min: 250, max: 330, noNaN: true }), (nominalV, caseK) => {
            const plain = chargeRangeAt({ lowV: 14.1, highV: 14.8 }, { nominalV });
            const at = chargeRangeAt({ lowV: 14.1, highV: 14.8 }, { nominalV, caseK });
            return close(plain.highV, 14.8 * nominalV / 12) && at.lowV <= plain.lowV && at.highV >= plain.highV;
        }));
    });
    it('a difference at rest knows no order and no common shift', () => {
        fc.assert(fc.property(fc.array(positive(15), { minLength: 1, maxLength: 8 }), positive(5), (rests, shift) =>
            restDifferenceV(rests) === restDifferenceV([...rests].reverse()) && Math.abs(restDifferenceV(rests.map(v => v + shift)) - restDifferenceV(rests)) < 1e-9 && restDifferenceV(rests) >= 0));
        expect(restDifferenceV([])).toBe(0);
    });
    it('a share and an endurance are pure ratios', () => {
        fc.assert(fc.property(positive(1000), positive(1000), positive(10), (measured, rated, scale) => close(shareLeft({ measured: measured * scale, rated: rated * scale }), shareLeft({ measured, rated }))));
        fc.assert(fc.property(positive(4e6), positive(60), fc.double({ min: 0.01, max: 1, noNaN: true }), (bankC, currentA, duty) =>
            close(enduranceS({ bankC, usableShare: 0.5, currentA, duty }) * currentA * duty, bankC * 0.5)));
    });
    it('a duty is a share, and grows with the leak', () => {
        fc.assert(fc.property(positive(1e-3), positive(1e-3), positive(1e-3), (a, b, pumpM3s) => {
            const [less, more] = [dutyOf({ leakM3s: Math.min(a, b), pumpM3s }), dutyOf({ leakM3s: Math.max(a, b), pumpM3s })];
            return less <= more && less > 0 && more <= 1;
        }));
    });
});

describe('shore power', () => {
    const order = ['none', 'trace', 'fault'];
    it('more leakage is never judged milder', () => {
        fc.assert(fc.property(positive(0.5), positive(0.5), (a, b) => order.indexOf(leakageVerdict(Math.min(a, b))) <= order.indexOf(leakageVerdict(Math.max(a, b)))));
    });
    it('a breaker that trips later or at more is never judged better', () => {
        fc.assert(fc.property(positive(0.2), positive(0.5), positive(0.2), (tripA, tripS, more) => !tripsInTime({ tripA: tripA + more, tripS }) || tripsInTime({ tripA, tripS })));
        expect(tripsInTime({})).toBe(true);
    });
    it('a higher rise is never judged cooler, and a share of load is a pure ratio', () => {
        fc.assert(fc.property(positive(80), positive(80), (a, b) => !isOverheated(Math.min(a, b)) || isOverheated(Math.max(a, b))));
        fc.assert(fc.property(positive(100), positive(100), (loadA, ratingA) => close(loadShare({ loadA: 2 * loadA, ratingA: 2 * ratingA }), loadShare({ loadA, ratingA }))));
    });
});
