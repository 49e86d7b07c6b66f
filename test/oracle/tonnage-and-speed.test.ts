import { convertTo } from '../../src/quantities/index.js';
import { couplingGapLimitM } from '../../src/trade/coupling-alignment.js';
import { cylinderSpread, spreadFaultShare } from '../../src/trade/cylinder-spread.js';
import { displacementLengthRatio, hullSpeedMs } from '../../src/trade/hull-speed.js';
import { propellerSlip, theoreticalSpeedMs } from '../../src/trade/propeller-slip.js';
import { grossTons, netTons, type HullForm } from '../../src/trade/tonnage.js';
import { blowerOutputM3s, blowerRatingM3s, isOpenToAtmosphere, leastVentAreaM2, naturalVentAreaM2 } from '../../src/trade/ventilation.js';
import { wastageShare, wastageStep, overthicknessShare } from '../../src/trade/wastage.js';
import { si } from './si.js';
import { oracle } from './table.js';

const cfm = (m3s: number): number => convertTo(m3s, 'cfm');
const ft3 = (v: number): number => si(`${v} ft3`);
const powered = '33 CFR 183.610 table, an engine maker’s manual';
oracle('ventilation', [
    { id: '6.a Fr', says: '20 ft3: blower of 50 cfm', actual: () => cfm(blowerRatingM3s(ft3(20))), expected: 50, within: 1e-6, source: powered, provenance: 'published' },
    { id: '6.a Fo', says: '20 ft3: 20 cfm at the outlet', actual: () => cfm(blowerOutputM3s(ft3(20))), expected: 20, within: 1e-6, source: powered, provenance: 'published' },
    { id: '6.b Fr', says: '60 ft3: 90 cfm', actual: () => cfm(blowerRatingM3s(ft3(60))), expected: 90, within: 1e-6, source: powered, provenance: 'published' },
    { id: '6.b Fo', says: '60 ft3: 36 cfm', actual: () => cfm(blowerOutputM3s(ft3(60))), expected: 36, within: 1e-6, source: powered, provenance: 'published' },
    { id: '6.c Fr', says: '319.7 ft3: 259.9 cfm', actual: () => cfm(blowerRatingM3s(ft3(319.7))), expected: 259.9, within: 0.1, source: 'printed worked example', provenance: 'published' },
    { id: '6.c Fo', says: '319.7 ft3: 103.9 cfm', actual: () => cfm(blowerOutputM3s(ft3(319.7))), expected: 103.9, within: 0.1, source: 'printed worked example', provenance: 'published' },
    { id: '6.d', says: '100 ft3: 14.98 in2 each way', actual: () => convertTo(naturalVentAreaM2(ft3(100)), 'in2'), expected: 14.98, within: 0.01, source: '33 CFR 183.630', provenance: 'published' },
    { id: '6.e under', says: 'below 9.11 ft3 the floor of 3.0 in2 governs', actual: () => naturalVentAreaM2(ft3(9.1)) === leastVentAreaM2, expected: true, source: '5 exp(3/5) = 9.11', provenance: 'computed' },
    { id: '6.e over', says: 'at 9.12 ft3 it does not', actual: () => naturalVentAreaM2(ft3(9.12)) > leastVentAreaM2, expected: true, source: '5 exp(3/5) = 9.11', provenance: 'computed' },
    { id: '6.h Fr', says: '34 ft3 exactly: 51 cfm', actual: () => cfm(blowerRatingM3s(ft3(34))), expected: 51, within: 1e-6, source: powered, provenance: 'computed' },
    { id: '6.h Fo', says: '34 ft3 exactly: 20.4 cfm', actual: () => cfm(blowerOutputM3s(ft3(34))), expected: 20.4, within: 1e-6, source: powered, provenance: 'computed' },
    { id: '40 %', says: 'the output is 40 % of the rating', actual: () => blowerOutputM3s(ft3(250)) / blowerRatingM3s(ft3(250)), expected: 0.4, within: 1e-9, source: 'by design of the table', provenance: 'published' },
    { id: 'open', says: '0.342 m2 to the cubic meter is open to the atmosphere', actual: () => isOpenToAtmosphere(0.342, 1) && !isOpenToAtmosphere(0.34, 1), expected: true, source: '46 CFR 175.400', provenance: 'published' },
]);

const tons = (l: number, b: number, d: number, form: HullForm): number => grossTons({ lengthM: si(`${l} ft`), beamM: si(`${b} ft`), depthM: si(`${d} ft`), form });
const office = '46 CFR 69.209';
oracle('tonnage and speed', [
    { id: '9.a gross', says: 'sailing 40 x 12.6 x 7.0 ft: 17.64', actual: () => tons(40, 12.6, 7, 'sailing'), expected: 17.64, within: 0.01, source: office, provenance: 'computed' },
    { id: '9.a net', says: 'with an engine 15.88', actual: () => netTons(17.64, 'sailing', true), expected: 15.88, within: 0.01, source: office, provenance: 'computed' },
    { id: '9.b', says: 'without one 17.64', actual: () => netTons(17.64, 'sailing', false), expected: 17.64, within: 0.01, source: office, provenance: 'computed' },
    { id: '9.c gross', says: 'motor 42.3 x 14.2 x 7.8 ft: 31.39', actual: () => tons(42.3, 14.2, 7.8, 'ship'), expected: 31.39, within: 0.01, source: office, provenance: 'computed' },
    { id: '9.c net', says: '25.11', actual: () => netTons(tons(42.3, 14.2, 7.8, 'ship'), 'ship', true), expected: 25.11, within: 0.01, source: office, provenance: 'computed' },
    { id: '9.d gross', says: 'keel in the depth, 36.5 x 11.8 x 9.0 ft: 14.54', actual: () => tons(36.5, 11.8, 9, 'sailing-keel-in-depth'), expected: 14.54, within: 0.01, source: office, provenance: 'computed' },
    { id: '9.d net', says: '13.08', actual: () => netTons(tons(36.5, 11.8, 9, 'sailing-keel-in-depth'), 'sailing-keel-in-depth', true), expected: 13.08, within: 0.01, source: office, provenance: 'computed' },
    { id: '9.e', says: '32 ft of waterline: 7.58 kn', actual: () => convertTo(hullSpeedMs(si('32 ft')), 'kn'), expected: 7.58, within: 0.01, source: '1.34 sqrt(LWL ft)', provenance: 'practice' },
    { id: '9.f', says: '18 000 lb on 32 ft: 245.2', actual: () => displacementLengthRatio(si('18000 lb'), si('32 ft')), expected: 245.2, within: 0.2, source: 'long tons over (0.01 LWL)^3', provenance: 'computed' },
]);

const trial = (rpm: number, ratio: number, pitchIn: number) => ({ rotationRadS: si(`${rpm} rpm`), ratio, pitchM: si(`${pitchIn} in`) });
const slip = (speed: string, t: ReturnType<typeof trial>): number => 100 * (propellerSlip(si(speed), t) ?? Number.NaN);
const constant = 'constants 1215.2, 1056 and 656 of calculators’ pages';
oracle('propeller, shaft and engine', [
    { id: '10.a speed', says: '2800 rpm, 2.0:1, 16 in: 18.43 kn', actual: () => convertTo(theoreticalSpeedMs(trial(2800, 2, 16)), 'kn'), expected: 18.43, within: 0.01, source: constant, provenance: 'published' },
    { id: '10.a slip', says: '14.2 kn: 23.0 %', actual: () => slip('14.2 kn', trial(2800, 2, 16)), expected: 23, within: 0.1, source: constant, provenance: 'computed' },
    { id: '10.b speed', says: '4600 rpm, 1.5:1, 19 in: 55.18 mph', actual: () => convertTo(theoreticalSpeedMs(trial(4600, 1.5, 19)), 'mph'), expected: 55.18, within: 0.01, source: constant, provenance: 'published' },
    { id: '10.b slip', says: '42 mph: 23.9 %', actual: () => slip('42 mph', trial(4600, 1.5, 19)), expected: 23.9, within: 0.1, source: constant, provenance: 'computed' },
    { id: '10.c speed', says: '3600 rpm, 2.5:1, 22 in: 26.07 kn', actual: () => convertTo(theoreticalSpeedMs(trial(3600, 2.5, 22)), 'kn'), expected: 26.07, within: 0.01, source: constant, provenance: 'published' },
    { id: '10.c slip', says: '21 kn: 19.4 %', actual: () => slip('21 kn', trial(3600, 2.5, 22)), expected: 19.4, within: 0.1, source: constant, provenance: 'computed' },
    { id: '10.c km/h', says: 'constant 656 for km/h', actual: () => 3600 / 2.5 * 22 / convertTo(theoreticalSpeedMs(trial(3600, 2.5, 22)), 'km/h'), expected: 656, within: 0.5, source: constant, provenance: 'published' },
    { id: '10.d limit', says: '4 in coupling: 0.004 in', actual: () => couplingGapLimitM(si('4 in')) / 0.0254, expected: 0.004, within: 1e-9, source: 'engine maker’s manual', provenance: 'published' },
    { id: '10.d', says: '0.006 in is too much', actual: () => si('0.006 in') > couplingGapLimitM(si('4 in')), expected: true, source: 'engine maker’s manual', provenance: 'published' },
    { id: '10.e', says: '150, 148, 152, 110 psi: 27.6 %', actual: () => 100 * (cylinderSpread(['150 psi', '148 psi', '152 psi', '110 psi'].map(si)) ?? Number.NaN), expected: 27.6, within: 0.1, source: '(152 - 110) / 152', provenance: 'computed' },
    { id: '10.e verdict', says: 'is a fault', actual: () => (cylinderSpread([150, 148, 152, 110]) ?? 0) > spreadFaultShare, expected: true, source: 'two public engine pages', provenance: 'published' },
    { id: '10.f', says: 'faster than without slip is negative slip', actual: () => slip('19 kn', trial(2800, 2, 16)) < 0, expected: true, source: 'textbooks', provenance: 'practice' },
]);

const circular = 'a federal regulator’s circular 7-68 in an Army reprint';
const lost = (original: string, gauged: string): number => 100 * (wastageShare(si(original), si(gauged)) ?? Number.NaN);
oracle('plate', [
    { id: '11.a', says: '5.0 to 4.1 mm: 18.0 %', actual: () => lost('5.0 mm', '4.1 mm'), expected: 18, within: 0.1, source: '(original - gauged) / original', provenance: 'computed' },
    { id: '11.b', says: '6.35 to 4.9 mm: 22.8 %', actual: () => lost('6.35 mm', '4.9 mm'), expected: 22.8, within: 0.1, source: '(original - gauged) / original', provenance: 'computed' },
    { id: '11.c', says: '4.0 to 3.3 mm: 17.5 %', actual: () => lost('4.0 mm', '3.3 mm'), expected: 17.5, within: 0.1, source: '(original - gauged) / original', provenance: 'computed' },
    { id: '11.c light', says: 'over the bound of light craft', actual: () => wastageStep(0.175, true), expected: 'plan', source: circular, provenance: 'published' },
    { id: '11.c other', says: 'under the general one', actual: () => wastageStep(0.175), expected: 'watch', source: circular, provenance: 'published' },
    { id: '11.c over', says: '25.1 % is to be renewed', actual: () => wastageStep(0.251), expected: 'renew', source: circular, provenance: 'published' },
    { id: '11.d', says: '3/16 in gauged 0.205 in is 9.3 % thicker', actual: () => -lost('3/16 in', '0.205 in'), expected: 9.3, within: 0.1, source: 'computed from the nominal', provenance: 'computed' },
    { id: '11.d rolled', says: 'as new plate may be', actual: () => -lost('3/16 in', '0.205 in') / 100 < overthicknessShare && -lost('3/16 in', '0.213 in') / 100 < overthicknessShare, expected: true, source: 'an Army manual: to 14 % in wide plate', provenance: 'published' },
    { id: '11.e in', says: '5/32 in is 3.97 mm', actual: () => convertTo(si('5/32 in'), 'mm'), expected: 3.97, within: 0.01, source: '1 in is 25.4 mm', provenance: 'computed' },
    { id: '11.e mm', says: '5.0 mm is 0.197 in', actual: () => convertTo(si('5.0 mm'), 'in'), expected: 0.197, within: 0.0005, source: '1 in is 25.4 mm', provenance: 'computed' },
]);
