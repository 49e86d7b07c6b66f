/** Laws that the computations of fuel, ventilation, gas and bilge pumps keep, whatever the figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeFuelHose, leakLimitM3 } from '../../src/trade/fuel-hose.js';
import { isStaticallyGrounded, movesTooMuch, needsSecondValve } from '../../src/trade/fuel-line.js';
import { judgeTightness, reachesBore, reachesGap } from '../../src/trade/gas.js';
import { inflowM3s } from '../../src/trade/orifice-inflow.js';
import { dutyOf, enduranceS, flowAtLiftM3s, usableFlowM3s } from '../../src/trade/pump.js';
import { blowerOutputM3s, blowerRatingM3s, ductAreaM2, exceedsLeastVent, isOpenToAtmosphere, leastVentAreaM2, naturalVentAreaM2, reachesArea, terminalAreaM2 } from '../../src/trade/ventilation.js';

const positive = (max: number) => fc.double({ min: max / 1e4, max, noNaN: true });
const two = (max: number) => fc.tuple(positive(max), positive(max)).map(([a, b]) => (a < b ? [a, b] as const : [b, a] as const));

describe('fuel hose', () => {
    const type = fc.constantFrom('a1' as const, 'a2' as const, 'b1' as const, 'b2' as const);
    const place = fc.constantFrom('pump-to-carburetor' as const, 'tank-to-engine' as const, 'vent-or-fill' as const);
    it('of the kind A1 suits every place', () => {
        fc.assert(fc.property(place, positive(1), (where, leak) => {
            expect(judgeFuelHose('a1', where, leak)).toBe('suits');
        }));
    });
    it('that leaks less when cut is never judged worse', () => {
        fc.assert(fc.property(type, place, two(leakLimitM3 * 3), (kind, where, [less, more]) => {
            if (judgeFuelHose(kind, where, more) === 'suits') {
                expect(judgeFuelHose(kind, where, less)).toBe('suits');
            }
        }));
    });
    it('is asked for its leak only where the leak decides', () => {
        fc.assert(fc.property(type, place, (kind, where) => {
            const isDecisive = judgeFuelHose(kind, where, 0) !== judgeFuelHose(kind, where, 1);
            expect(judgeFuelHose(kind, where) === 'leak-not-known').toBe(isDecisive);
        }));
    });
});

it('limits of the fuel line divide once, from allowed to not allowed', () => {
    fc.assert(fc.property(two(500), ([less, more]) => {
        expect(needsSecondValve(less) && !needsSecondValve(more)).toBe(false);
        expect(!isStaticallyGrounded(less) && isStaticallyGrounded(more)).toBe(false);
        expect(movesTooMuch(less / 1e4) && !movesTooMuch(more / 1e4)).toBe(false);
    }));
});

describe('ventilation', () => {
    it('asks more of a larger space, and always less to be measured than rated', () => {
        fc.assert(fc.property(two(100), ([small, large]) => {
            expect(blowerRatingM3s(small)).toBeLessThanOrEqual(blowerRatingM3s(large));
            expect(blowerOutputM3s(small)).toBeLessThanOrEqual(blowerOutputM3s(large));
            expect(naturalVentAreaM2(small)).toBeLessThanOrEqual(naturalVentAreaM2(large));
            expect(blowerOutputM3s(small) / blowerRatingM3s(small)).toBeCloseTo(0.4, 9);
        }));
    });
    it('leaves the floor of 3.0 in2 for each opening and what the formula gives', () => {
        fc.assert(fc.property(positive(0.1), area => {
            expect(exceedsLeastVent(area)).toBe(area > leastVentAreaM2 * (1 + 1e-9));
            expect(naturalVentAreaM2(area)).toBeGreaterThanOrEqual(leastVentAreaM2);
        }));
    });
    it('asks of the end of a duct no more than 80 % of the duct, and of all ends together 80 % of the need', () => {
        fc.assert(fc.property(positive(0.1), positive(0.1), positive(0.1), (one, other, needed) => {
            const ends = [one, other].map(duct => terminalAreaM2(duct, one + other, needed));
            expect(ends[0]).toBeLessThanOrEqual(0.8 * one + 1e-12);
            if (one + other >= needed) {
                expect((ends[0] ?? 0) + (ends[1] ?? 0)).toBeCloseTo(0.8 * needed, 9);
            }
        }));
    });
    it('takes a round duct by the square of its bore', () => {
        fc.assert(fc.property(positive(0.4), bore => {
            expect(ductAreaM2(2 * bore) / ductAreaM2(bore)).toBeCloseTo(4, 9);
            expect(reachesArea(ductAreaM2(bore), ductAreaM2(bore))).toBe(true);
        }));
    });
    it('finds a space open by the same ratio at any size', () => {
        fc.assert(fc.property(positive(100), positive(10), (volume, factor) => {
            expect(isOpenToAtmosphere(0.3418 * volume * factor, volume * factor)).toBe(isOpenToAtmosphere(0.3418 * volume, volume));
        }));
    });
});

describe('bilge pumps', () => {
    const discharge = fc.record({ ratedM3s: positive(0.01), headM: positive(10), liftM: positive(8) });
    const hose = fc.record({ boreM: fc.double({ min: 0.012, max: 0.06, noNaN: true }), lengthM: positive(20) });
    it('never move more than their rating, and less at more lift, in longer or narrower hose, at lower voltage', () => {
        fc.assert(fc.property(discharge, hose, positive(1), (pump, line, voltageShare) => {
            const free = flowAtLiftM3s(pump);
            const piped = flowAtLiftM3s({ ...pump, hose: line });
            expect(free).toBeLessThanOrEqual(pump.ratedM3s);
            expect(flowAtLiftM3s({ ...pump, liftM: pump.liftM * 1.1 })).toBeLessThanOrEqual(free);
            expect(piped).toBeLessThanOrEqual(free);
            expect(flowAtLiftM3s({ ...pump, hose: { ...line, lengthM: line.lengthM * 2 } })).toBeLessThanOrEqual(piped);
            expect(flowAtLiftM3s({ ...pump, hose: { ...line, boreM: line.boreM / 2 } })).toBeLessThanOrEqual(piped);
            expect(flowAtLiftM3s({ ...pump, hose: line, voltageShare })).toBeLessThanOrEqual(piped + 1e-15);
        }));
    });
    it('meet the head of the pump and the resistance of the hose at the flow found', () => {
        fc.assert(fc.property(discharge, hose, (pump, line) => {
            const flow = flowAtLiftM3s({ ...pump, hose: line });
            if (flow > 0) {
                const given = pump.headM * (1 - (flow / pump.ratedM3s) ** 2);
                const speed = flow / (Math.PI / 4 * line.boreM ** 2);
                const taken = pump.liftM + (0.03 * line.lengthM / line.boreM + 1) * speed ** 2 / (2 * 9.80665);
                expect(Math.abs(given - taken)).toBeLessThanOrEqual(1e-6 * Math.max(1, pump.headM));
            }
        }));
    });
    it('move nothing from their head on', () => {
        fc.assert(fc.property(discharge, pump => {
            expect(flowAtLiftM3s({ ...pump, liftM: pump.headM })).toBe(0);
            expect(flowAtLiftM3s({ ...pump, liftM: pump.headM + 1 })).toBe(0);
        }));
    });
    it('move a share in proportion, and a leak in proportion to its coefficient', () => {
        fc.assert(fc.property(positive(0.01), positive(1), positive(0.1), positive(3), (rated, share, boreM, depthM) => {
            expect(usableFlowM3s(rated, share)).toBeCloseTo(rated * share, 12);
            expect(inflowM3s({ boreM, depthM, dischargeCoefficient: share })).toBeCloseTo(share * inflowM3s({ boreM, depthM, dischargeCoefficient: 1 }), 12);
        }));
    });
    it('run for the share of the time that a leak asks for, at most always', () => {
        fc.assert(fc.property(positive(0.01), positive(0.01), (leakM3s, pumpM3s) => {
            const duty = dutyOf({ leakM3s, pumpM3s });
            expect(duty).toBeLessThanOrEqual(1);
            expect(duty * pumpM3s).toBeCloseTo(Math.min(leakM3s, pumpM3s), 12);
            expect(enduranceS({ bankC: 3600, usableShare: 0.5, currentA: 1, duty })).toBeCloseTo(1800 / duty, 3);
        }));
    });
});

describe('cooking gas', () => {
    it('a lower end pressure is never judged better, nor a longer watch worse', () => {
        const rank = { fell: 0, 'no-test': 0, 'duration-not-known': 1, 'too-short': 1, held: 2 } as const;
        fc.assert(fc.property(positive(1e6), two(1.2), two(600), fc.boolean(), (startPa, [low, high], [short, long], inOneUnit) => {
            const judge = (share: number, durationS: number) => rank[judgeTightness({ startPa, endPa: startPa * share, durationS, inOneUnit, isSetUp: true })];
            expect(judge(low, short)).toBeLessThanOrEqual(judge(high, short));
            expect(judge(high, short)).toBeLessThanOrEqual(judge(high, long));
        }));
    });
    it('a test not set up proves nothing, whatever it shows', () => {
        fc.assert(fc.property(positive(1e6), positive(1e6), (startPa, endPa) => {
            expect(judgeTightness({ startPa, endPa, durationS: 600, inOneUnit: true, isSetUp: false })).toBe('no-test');
        }));
    });
    it('a bore or a gap reaches itself, and a larger one what a smaller one reaches', () => {
        fc.assert(fc.property(two(0.1), positive(0.1), ([small, large], least) => {
            expect(reachesBore(least, least) && reachesGap(least, least)).toBe(true);
            expect(reachesGap(small, least) && !reachesGap(large, least)).toBe(false);
        }));
    });
});
