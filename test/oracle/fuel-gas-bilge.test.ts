import { convertTo } from '../../src/quantities/index.js';
import { judgeFuelHose, leakLimitM3, type FuelHosePlace, type FuelHoseType } from '../../src/trade/fuel-hose.js';
import { isStaticallyGrounded, movesTooMuch, needsSecondValve, secondValveLengthM, tankMovementLimitM } from '../../src/trade/fuel-line.js';
import { judgeTightness, leastTestS, reachesBore, reachesGap } from '../../src/trade/gas.js';
import { flowAtLiftM3s, usableFlowM3s } from '../../src/trade/pump.js';
import { exceedsLeastVent, isOpenToAtmosphere, leastVentAreaM2, naturalVentAreaM2, terminalAreaM2 } from '../../src/trade/ventilation.js';
import { analyseText } from '../checks/check-text.js';
import { si } from './si.js';
import { oracle, type CheckValue } from './table.js';

/** What a check says of a text: the severities it raises it with, hints for a missing fact left out. */
const verdict = (check: string, text: string): string => analyseText(text).problems.filter(p => p.check.id === check && p.severity !== 'hint').map(p => p.severity).join(' ') || 'silent';
const gasoline = 'vessel "M" { fuel: gasoline }\n';
const fill = (cls: string) => `${gasoline}fuel-fill FF1\nhose H1 { class: ${cls} }\nfuel-tank T1\nrun R1 { service: fuel-fill }: FF1 -> H1 -> T1\n`;
const feed = (line: string, run: string, tank = '') => `${gasoline}fuel-tank T1 { ${tank} }\n${line}\nengine E1\nrun R1 { service: fuel-feed }: ${run}\n`;
const low = (length: string) => `fuel-hose H1 { class: fuel-a1  below-tank-top: yes  length: ${length} }\nfuel-valve V1 { at-tank: yes  remote: yes }`;

/** By the rule: A1 anywhere; A2 in vent and fill; B1 and B2 by the cut, B1 also from tank to engine. */
const byPlace: readonly (readonly [FuelHosePlace, Readonly<Record<FuelHoseType, string>>])[] = [
    ['pump-to-carburetor', { a1: 'suits', a2: 'wrong-type', b1: 'wrong-type', b2: 'wrong-type' }],
    ['tank-to-engine', { a1: 'suits', a2: 'wrong-type', b1: 'leak-not-known', b2: 'wrong-type' }],
    ['vent-or-fill', { a1: 'suits', a2: 'suits', b1: 'leak-not-known', b2: 'leak-not-known' }],
];

oracle('fuel', [
    ...byPlace.flatMap(([place, row]) => (['a1', 'a2', 'b1', 'b2'] as const).map((type): CheckValue => ({
        id: `hose ${type} ${place}`, says: row[type], actual: () => judgeFuelHose(type, place), expected: row[type], source: '33 CFR 183.558(a), (b)', provenance: 'published',
    }))),
    { id: 'leak', says: '5 ounces in 2-1/2 minutes are 147.9 mL', actual: () => convertTo(leakLimitM3, 'mL'), expected: 147.87, within: 0.01, source: '33 CFR 183.558(b)', provenance: 'published' },
    { id: '6.f B2', says: 'gasoline fill hose B2, leak when cut not known', actual: () => verdict('fuel-hose-class', fill('fuel-b2')), expected: 'error', source: '33 CFR 183.558(b)(1)', provenance: 'published' },
    { id: '6.f A2', says: 'the same hose A2', actual: () => verdict('fuel-hose-class', fill('fuel-a2')), expected: 'silent', source: '33 CFR 183.558(b)(1)', provenance: 'published' },
    { id: '6.g', says: 'B1 between pump and carburetor', actual: () => verdict('fuel-hose-class', `${gasoline}fuel-pump P1\nhose H1 { class: fuel-b1  leak-when-cut: 1 fl-oz }\ncarburetor C1\nrun R1 { service: fuel-feed }: P1 -> H1 -> C1\n`), expected: 'error', source: '33 CFR 183.558(a)', provenance: 'published' },
    { id: 'unmarked', says: 'hose without a mark on gasoline', actual: () => verdict('fuel-hose-class', feed('hose H1 { class: unmarked }', 'T1 -> H1 -> E1')), expected: 'error', source: '33 CFR 183.540(e)', provenance: 'published' },
    { id: '12 ft', says: 'second valve beyond 12 ft, 3.658 m', actual: () => secondValveLengthM, expected: 3.6576, within: 1e-6, source: '33 CFR 183.568(c)(2)', provenance: 'published' },
    { id: 'at 12 ft', says: 'none at just 12 ft', actual: () => needsSecondValve(si('12 ft')), expected: false, source: '33 CFR 183.568(c)(2)', provenance: 'published' },
    { id: '14 ft', says: 'one at 14 ft', actual: () => needsSecondValve(si('14 ft')), expected: true, source: '33 CFR 183.568(c)(2)', provenance: 'published' },
    { id: '183.568(a)', says: 'a line above the tank needs nothing', actual: () => verdict('fuel-siphons-or-no-valve', feed('fuel-hose H1 { class: fuel-a1  below-tank-top: no }', 'T1 -> H1 -> E1')), expected: 'silent', source: '33 CFR 183.568(a)', provenance: 'published' },
    { id: '183.568(b)', says: 'an anti-siphon device at the tank', actual: () => verdict('fuel-siphons-or-no-valve', feed('fuel-hose H1 { class: fuel-a1  below-tank-top: yes }\nanti-siphon-device A1', 'T1 -> A1 -> H1 -> E1')), expected: 'silent', source: '33 CFR 183.568(b)(1)', provenance: 'published' },
    { id: '183.568 none', says: 'a low line with nothing', actual: () => verdict('fuel-siphons-or-no-valve', feed('fuel-hose H1 { class: fuel-a1  below-tank-top: yes }', 'T1 -> H1 -> E1')), expected: 'error', source: '33 CFR 183.568', provenance: 'published' },
    { id: '183.568(c)', says: 'one valve on 12 ft below the inlet', actual: () => verdict('fuel-siphons-or-no-valve', feed(low('12 ft'), 'T1 -> V1 -> H1 -> E1', 'top-below-engine-inlet: yes')), expected: 'silent', source: '33 CFR 183.568(c)(1)', provenance: 'published' },
    { id: '183.568(c) long', says: 'one valve on 14 ft', actual: () => verdict('fuel-siphons-or-no-valve', feed(low('14 ft'), 'T1 -> V1 -> H1 -> E1', 'top-below-engine-inlet: yes')), expected: 'error', source: '33 CFR 183.568(c)(2)', provenance: 'published' },
    { id: '183.568(c) high', says: 'a valve where the tank top is above the inlet', actual: () => verdict('fuel-siphons-or-no-valve', feed(low('12 ft'), 'T1 -> V1 -> H1 -> E1', 'top-below-engine-inlet: no')), expected: 'error', source: '33 CFR 183.568(c)', provenance: 'published' },
    { id: '100 ohm', says: 'just 100 ohm is not less than 100', actual: () => isStaticallyGrounded(100), expected: false, source: '33 CFR 183.572', provenance: 'memory' },
    { id: '99 ohm', says: '99 ohm is', actual: () => isStaticallyGrounded(99), expected: true, source: '33 CFR 183.572', provenance: 'memory' },
    { id: '1/4 in', says: 'a tank may move 6.35 mm', actual: () => tankMovementLimitM * 1000, expected: 6.35, within: 1e-9, source: '33 CFR 183.550(b)', provenance: 'published' },
    { id: 'moves', says: '3/8 in is too much, 1/4 in is not', actual: () => `${movesTooMuch(si('3/8 in'))} ${movesTooMuch(si('1/4 in'))}`, expected: 'true false', source: '33 CFR 183.550(b)', provenance: 'published' },
    { id: '183.550(d)', says: 'water stands on a metal tank', actual: () => verdict('tank-doubtful', 'fuel-tank T1 { material: aluminum  water-on-top: yes }\n'), expected: 'error', source: '33 CFR 183.550(d)', provenance: 'published' },
    { id: '183.550(e)', says: 'its support holds water', actual: () => verdict('tank-doubtful', 'fuel-tank T1 { material: aluminum  wet-pad: yes }\n'), expected: 'error', source: '33 CFR 183.550(e)', provenance: 'published' },
    { id: '183.550(f)', says: 'foam alone holds a metal tank', actual: () => verdict('tank-doubtful', 'fuel-tank T1 { material: aluminum  foamed-in: yes }\n'), expected: 'error', source: '33 CFR 183.550(f)', provenance: 'published' },
    { id: '183.550(g)', says: 'foam alone holds a plastic tank', actual: () => verdict('tank-doubtful', 'fuel-tank T1 { material: polyethylene  foamed-in: yes }\n'), expected: 'silent', source: '33 CFR 183.550(g)', provenance: 'published' },
    { id: '20 years', says: 'aluminum tank of 1989, bottom not seen', actual: () => verdict('tank-doubtful', 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nfuel-tank T1 { material: aluminum  made: 1989  bottom-seen: no }\n'), expected: 'warning', source: 'practice of the trade', provenance: 'practice' },
]);

const blower = (volume: string, rated: string) => `${gasoline}blower B1 { space-volume: ${volume}  rated-flow: ${rated} }\n`;
const ducts = (area: string) => `${gasoline}machinery-space S1 { volume: 100 ft3 }\nvent-duct D1 { way: supply  area: ${area}  serves: S1 }\nvent-duct D2 { way: exhaust  area: ${area}  serves: S1 }\n`;

oracle('ventilation of gasoline spaces', [
    { id: '6.a', says: '20 ft3: 50 cfm will do', actual: () => verdict('blower-too-small', blower('20 ft3', '50 cfm')), expected: 'silent', source: '33 CFR 183.610, table in an engine maker’s manual', provenance: 'secondary' },
    { id: '6.b', says: '60 ft3: 89 cfm will not', actual: () => verdict('blower-too-small', blower('60 ft3', '89 cfm')), expected: 'error', source: '33 CFR 183.610, table in an engine maker’s manual', provenance: 'secondary' },
    { id: '6.c', says: '319.7 ft3: 259 cfm will not, 260 will', actual: () => `${verdict('blower-too-small', blower('319.7 ft3', '259 cfm'))} ${verdict('blower-too-small', blower('319.7 ft3', '260 cfm'))}`, expected: 'error silent', source: 'printed worked example', provenance: 'published' },
    { id: '6.h', says: '34 ft3 exactly: 50 cfm will not, 51 will', actual: () => `${verdict('blower-too-small', blower('34 ft3', '50 cfm'))} ${verdict('blower-too-small', blower('34 ft3', '51 cfm'))}`, expected: 'error silent', source: '1.5 V applies', provenance: 'computed' },
    { id: 'diesel', says: 'a diesel space is outside the rule', actual: () => verdict('blower-too-small', 'vessel "M" { fuel: diesel }\nblower B1 { space-volume: 60 ft3  rated-flow: 50 cfm }\n'), expected: 'silent', source: '33 CFR 183.605: fuel means gasoline', provenance: 'published' },
    { id: '6.d', says: '100 ft3: 14.9 in2 each way will not, 15 in2 will', actual: () => `${verdict('vent-area-small', ducts('14.9 in2'))} ${verdict('vent-area-small', ducts('15 in2'))}`, expected: 'error silent', source: '33 CFR 183.630(d)', provenance: 'published' },
    { id: '6.e', says: 'just 3.0 in2 does not exceed it', actual: () => exceedsLeastVent(leastVentAreaM2), expected: false, source: '33 CFR 183.630(e)', provenance: 'published' },
    { id: '80 %', says: 'the end of the only duct needs 80 % of what the space needs', actual: () => terminalAreaM2(si('20 in2'), si('20 in2'), naturalVentAreaM2(si('100 ft3'))) / naturalVentAreaM2(si('100 ft3')), expected: 0.8, within: 1e-9, source: '33 CFR 183.630(f)', provenance: 'published' },
    { id: 'open', says: '15 in2 for each ft3 is open, less is not', actual: () => `${isOpenToAtmosphere(si('150 in2'), si('10 ft3'))} ${isOpenToAtmosphere(si('149 in2'), si('10 ft3'))}`, expected: 'true false', source: '33 CFR 183.605', provenance: 'published' },
    { id: 'open metric', says: '0.342 m2 for each m3 is open', actual: () => isOpenToAtmosphere(0.342, 1), expected: true, source: '46 CFR 175.400', provenance: 'published' },
    { id: 'low', says: 'exhaust not from the lower third', actual: () => verdict('vent-area-small', ducts('15 in2').replace('way: exhaust', 'way: exhaust  in-lower-third: no')), expected: 'error', source: '33 CFR 183.630(b)', provenance: 'published' },
    { id: 'bulkhead', says: 'a bulkhead isolates a part without the mark', actual: () => verdict('spark-in-gasoline-space', 'electrical-part P1 { ignition-space: yes  ignition-protected: no  isolated-by: bulkhead }\n'), expected: 'silent', source: '33 CFR 183.410(b)(1)', provenance: 'published' },
    { id: 'spark', says: 'nothing isolates it', actual: () => verdict('spark-in-gasoline-space', 'electrical-part P1 { ignition-space: yes  ignition-protected: no }\n'), expected: 'error', source: '33 CFR 183.410(a)', provenance: 'published' },
    { id: '183.420(d)', says: 'battery straight under a fuel filter', actual: () => verdict('spark-in-gasoline-space', `${gasoline}battery B1\nfuel-filter F1 { in-line-with-battery: B1 }\n`), expected: 'error', source: '33 CFR 183.420(d)', provenance: 'published' },
]);

const leak = (pump: string) => `through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nhose H1\nsink S1\nrun R1: TH1 -> H1 -> S1\nbilge-pump P1 { ${pump} }\n`;
const shareOf = (liftM: number, hose?: { boreM: number; lengthM: number }) => flowAtLiftM3s({ ratedM3s: si('2000 gph'), headM: 4, liftM, ...(hose ? { hose } : {}) }) / si('2000 gph');

oracle('bilge pumps', [
    { id: '2000 gph', says: '2000 gph are 33.3 gpm', actual: () => convertTo(si('2000 gph'), 'gpm'), expected: 33.333, within: 0.001, source: '60 minutes', provenance: 'computed' },
    { id: '1.e flow', says: 'half of it is 16.7 gpm', actual: () => convertTo(usableFlowM3s(si('2000 gph')), 'gpm'), expected: 16.667, within: 0.001, source: 'a magazine: real output about half the box', provenance: 'published' },
    { id: '1.e', says: 'that loses against a 1 in hole at 3 ft', actual: () => verdict('flooding-beats-pumps', leak('rated-flow: 2000 gph')), expected: 'error', source: 'a magazine, and Q = Cd A sqrt(2 g h)', provenance: 'published' },
    { id: '1.e alarm', says: 'with an alarm that works it is said of the rating', actual: () => verdict('pump-derated-by-lift', `${leak('rated-flow: 2000 gph')}bilge-alarm A1 { works: yes }\n`), expected: 'warning', source: 'a magazine, and Q = Cd A sqrt(2 g h)', provenance: 'published' },
    { id: 'no lift', says: 'at no lift, without hose, all of it', actual: () => shareOf(0), expected: 1, within: 1e-9, source: 'end of the curve', provenance: 'computed' },
    { id: 'at head', says: 'at its head nothing', actual: () => shareOf(4), expected: 0, within: 0, source: 'end of the curve', provenance: 'computed' },
    { id: '3 of 4 m', says: 'at three quarters of its head half', actual: () => shareOf(3), expected: 0.5, within: 1e-9, source: 'parabola through both ends', provenance: 'computed' },
    { id: 'hose', says: '1 m of 4 m with 4 m of 25 mm hose: 56.4 %', actual: () => shareOf(1, { boreM: 0.025, lengthM: 4 }), expected: 0.5641, within: 0.0005, source: 'Darcy and Weisbach, factor 0.03, by hand: 2.42 m/s, 1.73 m of loss', provenance: 'computed' },
    { id: '20 starts', says: '36 starts a day are too many', actual: () => verdict('automatic-pump-fails', 'bilge-pump P1 { automatic: yes  starts: 36 per-day }\n'), expected: 'warning', source: 'practice of the trade', provenance: 'practice' },
]);

const tight = (start: string, end: string, duration: string) => judgeTightness({ startPa: si(start), endPa: si(end), durationS: si(duration), inOneUnit: true, isSetUp: true });

oracle('cooking gas', [
    { id: '12.a', says: 'vent of 3/8 in', actual: () => verdict('gas-locker-vent', 'gas-locker L1 { vent-bore: 3/8 in }\n'), expected: 'error', source: 'ABYC A-1, two public pages', provenance: 'secondary' },
    { id: '12.a bore', says: '1/2 in, 12 mm and 13 mm will do', actual: () => ['1/2 in', '12 mm', '13 mm'].every(bore => reachesBore(si(bore), si('1/2 in'))), expected: true, source: 'ABYC A-1; sizes as sold', provenance: 'secondary' },
    { id: '12.b', says: 'outlet 14 in from a portlight', actual: () => verdict('gas-locker-vent', 'gas-locker L1 { distance-to-opening: 14 in }\n'), expected: 'error', source: 'ABYC A-1, two public pages', provenance: 'secondary' },
    { id: '12.b gap', says: '20 in will do', actual: () => reachesGap(si('20 in'), si('20 in')), expected: true, source: 'ABYC A-1, two public pages', provenance: 'secondary' },
    { id: '19 mm', says: '1/2 in where an inland rule asks 19 mm', actual: () => verdict('gas-locker-vent', 'yardsticks { gas-vent-bore: 19 mm }\ngas-locker L1 { vent-bore: 1/2 in }\n'), expected: 'error', source: 'pages of an inland scheme', provenance: 'published' },
    { id: '3 min', says: 'a test is watched for 180 s', actual: () => leastTestS, expected: 180, source: 'ABYC A-1', provenance: 'memory' },
    { id: 'fell', says: '142 to 141 psi in 3 min', actual: () => tight('142 psi', '141 psi', '3 min'), expected: 'fell', source: 'ABYC A-1', provenance: 'memory' },
    { id: 'held', says: '142 psi held for 3 min', actual: () => tight('142 psi', '142 psi', '3 min'), expected: 'held', source: 'ABYC A-1', provenance: 'memory' },
    { id: 'short', says: '142 psi held for 2 min', actual: () => tight('142 psi', '142 psi', '2 min'), expected: 'too-short', source: 'ABYC A-1', provenance: 'memory' },
    { id: 'joint', says: 'a joint between locker and appliance', actual: () => verdict('gas-path-into-hull', 'gas-hose H1 { class: gas  joints-inboard: 1 }\n'), expected: 'error', source: 'ABYC A-1, public pages', provenance: 'secondary' },
    { id: 'clip', says: 'a clip on gas hose', actual: () => verdict('gas-path-into-hull', 'gas-hose H1 { class: gas  end-fittings: worm-clip }\n'), expected: 'error', source: 'ABYC A-1, public pages', provenance: 'secondary' },
    { id: 'lid', says: 'a locker that opens at its side', actual: () => verdict('gas-path-into-hull', 'gas-locker L1 { lid: side }\n'), expected: 'error', source: 'ABYC A-1, public pages', provenance: 'secondary' },
    { id: '12 years', says: 'a cylinder of thirteen years', actual: () => verdict('gas-part-out-of-date', 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\ngas-cylinder C1 { made: 2013-09 }\n'), expected: 'error', source: 'transport rule', provenance: 'memory' },
]);
