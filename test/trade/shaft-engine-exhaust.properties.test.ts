/** Laws that the computations of shaft, exhaust and engine must keep, whatever the figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coolantBoilingK, coolantBoilingUnderCapK, coolantFreezingK, exchangedVolumeM3, freshMixM3, topUp, waterBoilingK, type Glycol } from '../../src/trade/coolant.js';
import { couplingGapLimitM } from '../../src/trade/coupling-alignment.js';
import { cylinderSpread } from '../../src/trade/cylinder-spread.js';
import { hoursAYear, hoursInAYear, isSameReading, judgeHours } from '../../src/trade/engine-hours.js';
import { judgeRatedSpeed, tachometerError, trueSpeed, twinSpeedDifference } from '../../src/trade/engine-speed.js';
import { isLikeRotation, isLoopHighEnough, leastLoopM } from '../../src/trade/exhaust.js';
import { drainBackM3, leastMufflerM3, longestDrainBackM, mufflerMargin } from '../../src/trade/muffler.js';
import { leastSlip, meanOfRunsMs, propellerSlip, servicesAtRatio, spannedBand, theoreticalSpeedMs, usualSlip, type HullService } from '../../src/trade/propeller-slip.js';
import { playStep, rudderBearingLimitM } from '../../src/trade/rudder.js';
import { bearingLimitM } from '../../src/trade/stern-bearing.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const glycols: readonly Glycol[] = ['ethylene', 'propylene'];

describe('propeller', () => {
    const trial = fc.record({ rotationRadS: between(20, 800), ratio: between(1, 7), pitchM: between(0.1, 1.5) });
    it('has the slip that its speed was made with', () => {
        fc.assert(fc.property(trial, between(0, 0.6), (run, slip) => {
            const speed = theoreticalSpeedMs(run) * (1 - slip);
            expect(propellerSlip(speed, run) ?? Number.NaN).toBeCloseTo(slip, 9);
        }));
    });
    it('slips more the slower she goes, and not at all where speed and turns grow alike', () => {
        fc.assert(fc.property(trial, between(1, 20), between(0.1, 5), (run, speed, more) => {
            expect(propellerSlip(speed + more, run) ?? 0).toBeLessThan(propellerSlip(speed, run) ?? 0);
            expect(propellerSlip(2 * speed, { ...run, rotationRadS: 2 * run.rotationRadS }) ?? 0).toBeCloseTo(propellerSlip(speed, run) ?? 1, 9);
        }));
    });
    it('is free of the current over two runs', () => {
        fc.assert(fc.property(between(2, 20), between(-3, 3), (speed, current) => {
            expect(meanOfRunsMs(speed + current, speed - current)).toBeCloseTo(speed, 9);
        }));
    });
    it('spans the bands it is given, and never one under the least slip', () => {
        const services = Object.keys(usualSlip) as HullService[]; // The keys of a record by service are the services.
        fc.assert(fc.property(fc.subarray(services, { minLength: 1 }), some => {
            const band = spannedBand(some);
            expect(some.every(service => usualSlip[service].low >= band.low && usualSlip[service].high <= band.high)).toBe(true);
            expect(band.low).toBeGreaterThan(leastSlip);
            expect(band.high).toBeGreaterThan(band.low);
        }));
    });
    it('runs faster hulls in faster services', () => {
        const order = ['displacement', 'semi-displacement', 'planing'];
        const rank = (ratio: number) => Math.max(...servicesAtRatio(ratio).map(service => order.indexOf(service)));
        fc.assert(fc.property(between(0.2, 6), between(0, 3), (ratio, more) => { expect(rank(ratio + more)).toBeGreaterThanOrEqual(rank(ratio)); }));
    });
});

describe('bearings', () => {
    it('of the stern widen with the shaft up to a bound, and with the share', () => {
        fc.assert(fc.property(between(0.01, 0.2), between(0, 0.1), between(0.005, 0.1), (shaft, more, share) => {
            expect(bearingLimitM(shaft + more)).toBeGreaterThanOrEqual(bearingLimitM(shaft));
            expect(bearingLimitM(shaft)).toBeLessThanOrEqual(0.0254 / 16);
            expect(bearingLimitM(shaft, share, 1)).toBeCloseTo(share * shaft, 12);
        }));
    });
    it('of the rudder step up with play, and never down', () => {
        const order = { within: 0, over: 1, double: 2 } as const;
        fc.assert(fc.property(between(0.0001, 0.02), between(0, 0.02), between(0.0001, 0.01), (play, more, limit) => {
            expect(order[playStep(play + more, limit)]).toBeGreaterThanOrEqual(order[playStep(play, limit)]);
            expect(playStep(limit, limit)).toBe('within');
            expect(playStep(2 * limit, limit)).toBe('double');
        }));
        expect(rudderBearingLimitM(0.05, 0.04)).toBeCloseTo(0.002, 12);
    });
    it('of a coupling stay at a thousandth, one angle whatever its size', () => {
        fc.assert(fc.property(between(0.05, 0.4), diameter => { expect(couplingGapLimitM(diameter) / diameter).toBeCloseTo(0.001, 12); }));
    });
});

describe('exhaust', () => {
    it('holds what its muffler is sized for', () => {
        fc.assert(fc.property(between(0.03, 0.2), between(0.1, 10), (bore, length) => {
            const volume = leastMufflerM3(drainBackM3(bore, length));
            expect(longestDrainBackM(volume, bore)).toBeCloseTo(length, 9);
            expect(volume / drainBackM3(bore, length)).toBeCloseTo(mufflerMargin, 9);
            expect(drainBackM3(2 * bore, length) / drainBackM3(bore, length)).toBeCloseTo(4, 9);
        }));
    });
    it('wants both heights of a loop where both are known', () => {
        expect(isLoopHighEnough(undefined, undefined)).toBeUndefined();
        expect(isLoopHighEnough(leastLoopM, undefined)).toBe(true);
        expect(isLoopHighEnough(leastLoopM, 0.1)).toBe(false);
        expect(isLoopHighEnough(0.1, 1)).toBe(false);
    });
    it('holds engine speeds for like the same way round', () => {
        fc.assert(fc.property(between(50, 500), between(50, 500), (a, b) => {
            expect(isLikeRotation(a, b)).toBe(isLikeRotation(b, a));
            expect(isLikeRotation(a, a)).toBe(true);
        }));
    });
});

describe('engine', () => {
    it('has a spread from 0 to 1 that no unit changes', () => {
        fc.assert(fc.property(fc.array(between(1e5, 4e6), { minLength: 2, maxLength: 12 }), pressures => {
            const spread = cylinderSpread(pressures) ?? Number.NaN;
            expect(spread).toBeGreaterThanOrEqual(0);
            expect(spread).toBeLessThan(1);
            expect(cylinderSpread(pressures.map(p => p / 6894.757)) ?? Number.NaN).toBeCloseTo(spread, 9);
        }));
    });
    it('is judged by the ratio of its speeds alone', () => {
        fc.assert(fc.property(between(500, 5000), between(500, 5000), between(0.01, 100), (reached, rated, scale) => {
            fc.pre(Math.abs(reached / rated - 0.97) > 1e-6 && Math.abs(reached / rated - 1.03) > 1e-6);
            expect(judgeRatedSpeed(reached * scale, rated * scale)).toBe(judgeRatedSpeed(reached, rated));
            expect(trueSpeed(reached, tachometerError(reached, rated))).toBeCloseTo(rated, 6);
            expect(twinSpeedDifference(reached, rated)).toBeCloseTo(twinSpeedDifference(rated, reached), 12);
        }));
    });
    it('runs no more hours than pass', () => {
        fc.assert(fc.property(between(0.5, 60), between(0, 3), (years, times) => {
            const hours = years * hoursInAYear * times;
            expect(judgeHours(hours, years) === 'more-than-passed').toBe((hoursAYear(hours, years) ?? 0) > hoursInAYear);
        }));
        expect(judgeHours(100, 0)).toBeUndefined();
        expect(judgeHours(5, 1)).toBe('usual');
        expect(judgeHours(800, 1)).toBe('usual');
        fc.assert(fc.property(between(0, 6e4), between(0, 6e4), (a, b) => { expect(isSameReading(a, b)).toBe(isSameReading(b, a)); }));
    });
});

describe('coolant', () => {
    it('boils higher the stronger it is, and under a cap', () => {
        for (const glycol of glycols) {
            fc.assert(fc.property(between(0, 1), between(0, 1), between(1e3, 2e5), (a, b, cap) => {
                const [weak, strong] = a < b ? [a, b] : [b, a];
                expect(coolantBoilingK(strong, glycol)).toBeGreaterThanOrEqual(coolantBoilingK(weak, glycol) - 1e-9);
                expect(coolantBoilingUnderCapK(a, cap, glycol)).toBeGreaterThan(coolantBoilingK(a, glycol));
                expect(coolantFreezingK(glycol, a)).toBeLessThan(coolantBoilingK(a, glycol));
            }));
        }
        fc.assert(fc.property(between(1.01e5, 1e6), between(1e3, 1e5), (pressure, more) => { expect(waterBoilingK(pressure + more)).toBeGreaterThan(waterBoilingK(pressure)); }));
    });
    it('comes to its target when topped up: full, and with that much glycol', () => {
        fc.assert(fc.property(between(2e-3, 0.1), between(0, 0.95), between(0.3, 0.6), between(0, 0.9), (volumeM3, share, targetShare, part) => {
            const shortByM3 = volumeM3 * part;
            const filling = topUp({ volumeM3, share, targetShare, addedShare: 1, shortByM3 });
            expect(filling).toBeDefined();
            const { drainM3, addM3, waterM3 } = filling ?? { drainM3: 0, addM3: 0, waterM3: 0 };
            expect(volumeM3 - shortByM3 - drainM3 + addM3 + waterM3).toBeCloseTo(volumeM3, 9);
            expect(share * (volumeM3 - shortByM3 - drainM3) + addM3).toBeCloseTo(targetShare * volumeM3, 9);
            expect(Math.min(drainM3, addM3, waterM3)).toBeGreaterThanOrEqual(0);
            // Water beside a drain only where the mix holds more glycol than is wanted.
            expect(drainM3 > 1e-12 && waterM3 > 1e-12 && share <= targetShare).toBe(false);
        }));
    });
    it('is topped up as it is exchanged where it is full', () => {
        fc.assert(fc.property(between(2e-3, 0.1), between(0, 0.49), between(0.5, 0.6), (volumeM3, share, targetShare) => {
            expect(topUp({ volumeM3, share, targetShare, addedShare: 1, shortByM3: 0 })?.drainM3 ?? Number.NaN).toBeCloseTo(exchangedVolumeM3({ volumeM3, share, targetShare, addedShare: 1 }) ?? Number.NaN, 12);
        }));
    });
    it('cannot be made stronger by what is weaker', () => {
        expect(topUp({ volumeM3: 0.012, share: 0.55, targetShare: 0.58, addedShare: 0.5, shortByM3: 0.001 })).toBeUndefined();
        expect(topUp({ volumeM3: 0.012, share: 0.3, targetShare: 0.5, addedShare: 0.5, shortByM3: 0.002 })).toBeUndefined();
    });
    it('is mixed fresh to the volume', () => {
        fc.assert(fc.property(between(1e-3, 0.5), between(0, 1), (volume, share) => {
            const { concentrateM3, waterM3 } = freshMixM3(volume, share);
            expect(concentrateM3 + waterM3).toBeCloseTo(volume, 12);
        }));
    });
});
