import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coolingThatExplainsK, standardAtmospherePa, tubeEndAtStartPa, tubeFallPa, tubeFallShare } from '../../src/trade/tube-pressure.js';

const gauge = fc.double({ min: 5_000, max: 40_000, noNaN: true });
const air = fc.double({ min: 253, max: 323, noNaN: true });

describe('tube pressure', () => {
    it('a rigid chamber that only cools or warms has lost nothing', () => {
        fc.assert(fc.property(gauge, air, air, (startPa, airStartK, airEndK) => {
            const endPa = (startPa + standardAtmospherePa) * airEndK / airStartK - standardAtmospherePa;
            expect(tubeFallPa({ startPa, endPa, airStartK, airEndK })).toBeCloseTo(0, 4);
        }));
    });
    it('at one temperature the end is as read; a colder end means less lost', () => {
        fc.assert(fc.property(gauge, gauge, air, fc.double({ min: 0.1, max: 20, noNaN: true }), (startPa, endPa, airK, colder) => {
            expect(tubeEndAtStartPa({ startPa, endPa, airStartK: airK, airEndK: airK })).toBeCloseTo(endPa, 4);
            expect(tubeFallPa({ startPa, endPa, airStartK: airK, airEndK: airK - colder })).toBeLessThan(startPa - endPa);
        }));
    });
    it('the cooling that explains a fall leaves just the share allowed', () => {
        fc.assert(fc.property(gauge, fc.double({ min: 0, max: 1, noNaN: true }), air, (startPa, left, airStartK) => {
            const endPa = startPa * left;
            const cooling = coolingThatExplainsK({ startPa, endPa }, 0.2, airStartK);
            expect(tubeFallShare({ startPa, endPa, airStartK, airEndK: airStartK - cooling })).toBeCloseTo(0.2, 6);
        }));
    });
    it('is uncorrected without both temperatures, and undefined of a tube that was not blown up', () => {
        expect(tubeFallPa({ startPa: 24_000, endPa: 15_000, airStartK: 293 })).toBe(9_000);
        expect(tubeFallShare({ startPa: 0, endPa: 0 })).toBeUndefined();
    });
});
