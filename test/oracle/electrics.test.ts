import { convertTo } from '../../src/quantities/index.js';
import { bankCapacityC, chargeRangeAt, shareLeft } from '../../src/trade/battery.js';
import { batteryMovementLimitM, batteryTestPullN } from '../../src/trade/battery-hold.js';
import { allowableCurrentA, allowedDropShare, areaForDropM2, circularMils, gaugeAreaM2, gaugeFor, gaugeForCurrent, gaugeTitle, gaugeWithin, measuredDropShare, tabulatedGauges, thinnestGauge, voltageDropV, type InsulationC } from '../../src/trade/conductor.js';
import { isoAllowableCurrentA, isoAreaForCurrentM2, isoLeastAreaM2 } from '../../src/trade/iso-conductor.js';
import { overcurrentLimitA, overcurrentReachM, standardRatingWithin } from '../../src/trade/overcurrent.js';
import { enduranceS } from '../../src/trade/pump.js';
import { isOverheated, leakageVerdict, riseK, transformerReachM, tripsInTime } from '../../src/trade/shore-power.js';
import { analyseText } from '../checks/check-text.js';
import { si } from './si.js';
import { oracle, type CheckValue } from './table.js';

const table5 = '33 CFR 183.425 Table 5';
const allowed = (gauge: string, insulationC: InsulationC, isEngineSpace = false): number | undefined => allowableCurrentA({ areaM2: si(gauge), insulationC, isEngineSpace });
/** What a check says of a text: the severities it raises it with, hints for a missing fact left out. */
const verdict = (check: string, text: string): string => analyseText(text).problems.filter(p => p.check.id === check && p.severity !== 'hint').map(p => p.severity).join(' ') || 'silent';
const iso = (mm2: number, insulationC: number, isEngineSpace = false): number | undefined => isoAllowableCurrentA({ areaM2: mm2 * 1e-6, insulationC, isEngineSpace });
const reach = (isSheathed: boolean, isAtBattery = false) => overcurrentReachM({ isSheathed, isAtBattery });

oracle('conductors and fuses', [
    { id: '5.a', says: '10 AWG, 105 C, outside engine spaces: 60 A', actual: () => allowed('10 AWG', 105), expected: 60, source: table5, provenance: 'published' },
    { id: '5.b', says: 'the same in an engine space: 51 A', actual: () => allowed('10 AWG', 105, true), expected: 51, within: 0.5, source: `${table5}, note 1`, provenance: 'memory' },
    { id: '5.c limit', says: '14 AWG of 75 C on 12 V: at most 30 A', actual: () => overcurrentLimitA({ allowableA: allowed('14 AWG', 75) ?? 0, systemV: 12 }), expected: 30, source: '33 CFR 183.455(c)(1)', provenance: 'published' },
    { id: '5.c', says: 'a 35 A fuse on it is too large', actual: () => 35 > overcurrentLimitA({ allowableA: allowed('14 AWG', 75) ?? 0, systemV: 12 }), expected: true, source: '33 CFR 183.455(c)(1)', provenance: 'published' },
    { id: '5.c propose', says: '30 A is the largest standard one', actual: () => standardRatingWithin(30), expected: 30, source: 'NFPA 70, 240.6', provenance: 'memory' },
    { id: '5.d bare', says: 'a fuse 12 in along a bare wire is too far', actual: () => si('12 in') > reach(false), expected: true, source: '33 CFR 183.455(b)', provenance: 'published' },
    { id: '5.d sheathed', says: '12 in sheathed all the way is near enough', actual: () => si('12 in') > reach(true), expected: false, source: '33 CFR 183.455(b)', provenance: 'published' },
    { id: '5.d battery', says: '72 in from a battery post', actual: () => reach(false, true) / 0.0254, expected: 72, within: 1e-9, source: '33 CFR 183.460(a)', provenance: 'memory' },
    { id: '5.e 3 %', says: '12 V, 10 A, 30 ft there and back, 3 %: 8958 CM', actual: () => circularMils(areaForDropM2({ currentA: 10, roundTripM: si('30 ft'), dropV: 12 * allowedDropShare('critical') })), expected: 8958, within: 1, source: 'K = 10.75, ABYC E-11', provenance: 'memory' },
    { id: '5.e 10 AWG', says: 'that is 10 AWG', actual: () => gaugeFor(areaForDropM2({ currentA: 10, roundTripM: si('30 ft'), dropV: 0.36 })), expected: 10, source: 'K = 10.75, ABYC E-11', provenance: 'memory' },
    { id: '5.e 10 %', says: 'at 10 %: 2688 CM', actual: () => circularMils(areaForDropM2({ currentA: 10, roundTripM: si('30 ft'), dropV: 12 * allowedDropShare('other') })), expected: 2688, within: 1, source: 'K = 10.75, ABYC E-11', provenance: 'memory' },
    { id: '5.e 14 AWG', says: 'that is 14 AWG', actual: () => gaugeFor(areaForDropM2({ currentA: 10, roundTripM: si('30 ft'), dropV: 1.2 })), expected: 14, source: 'K = 10.75, ABYC E-11', provenance: 'memory' },
    { id: '5.f', says: '12 AWG, 10 A, 30 ft: 0.494 V', actual: () => voltageDropV({ currentA: 10, roundTripM: si('30 ft'), areaM2: si('12 AWG') }), expected: 0.494, within: 0.005, source: 'E = K I L / CM', provenance: 'computed' },
    { id: '5.g 60', says: 'a battery of 60 lb is pulled with 90 lbf', actual: () => convertTo(batteryTestPullN(si('60 lb')), 'lbf'), expected: 90, within: 1e-9, source: '33 CFR 183.420(a)', provenance: 'published' },
    { id: '5.g 40', says: 'one of 40 lb with 80 lbf', actual: () => convertTo(batteryTestPullN(si('40 lb')), 'lbf'), expected: 80, within: 1e-9, source: '33 CFR 183.420(a)', provenance: 'published' },
    { id: '5.h', says: 'a single wire of 18 AWG is too thin', actual: () => si('18 AWG') < gaugeAreaM2(thinnestGauge(false)), expected: true, source: '33 CFR 183.425', provenance: 'published' },
    { id: '50 V', says: '14 AWG of 60 C at 120 V: 20 A', actual: () => overcurrentLimitA({ allowableA: 20, systemV: 120 }), expected: 20, source: '33 CFR 183.455(c)(2)', provenance: 'published' },
    { id: '50 V next', says: '8 AWG of 60 C, 55 A: the next standard size, 60 A', actual: () => overcurrentLimitA({ allowableA: 55, systemV: 120 }), expected: 60, source: '33 CFR 183.455(c)(2) and NFPA 70, 240.6', provenance: 'memory' },
    { id: '2.5 mm2', says: 'counts as 14 AWG', actual: () => gaugeWithin(si('2.5 mm2')), expected: 14, source: 'next smaller gauge', provenance: 'chosen' },
    { id: '2.08 mm2', says: 'is 14 AWG', actual: () => gaugeWithin(si('2.08 mm2')), expected: 14, source: 'area of the gauge', provenance: 'computed' },
    { id: '0.75 mm2', says: 'is under the table', actual: () => gaugeWithin(si('0.75 mm2')), expected: undefined, source: 'area of 18 AWG is 0.823 mm2', provenance: 'computed' },
    { id: '51 A', says: 'in an engine space, 105 C: 10 AWG', actual: () => gaugeForCurrent(51, { insulationC: 105, isEngineSpace: true }), expected: 10, source: `${table5}, note 1`, provenance: 'memory' },
    ...([[18, 1624, 0.823], [16, 2583, 1.309], [14, 4107, 2.081], [12, 6530, 3.309], [10, 10383, 5.261], [8, 16510, 8.366], [6, 26251, 13.3], [4, 41741, 21.15], [3, 52635, 26.67], [2, 66371, 33.63], [1, 83693, 42.41], [0, 105535, 53.48], [-1, 133077, 67.43], [-2, 167806, 85.03], [-3, 211600, 107.2]] as const)
        .flatMap(([gauge, mils, mm2]): CheckValue[] => [
            { id: `${gaugeTitle(gauge)} CM`, says: `${mils} circular mils`, actual: () => circularMils(gaugeAreaM2(gauge)), expected: mils, within: mils * 1e-4 + 0.5, source: 'd = 0.005 x 92^((36-n)/39) in', provenance: 'computed' },
            { id: `${gaugeTitle(gauge)} mm2`, says: `${mm2} mm2, as the figure reads it`, actual: () => si(gaugeTitle(gauge)) * 1e6, expected: mm2, within: mm2 * 5e-4, source: 'd = 0.005 x 92^((36-n)/39) in', provenance: 'computed' },
        ]),
    ...([[18, 10, 20], [16, 15, 25], [12, 25, 45], [8, 55, 80], [6, 80, 120], [4, 105, 160], [3, 120, 180], [2, 140, 210], [1, 165, 245], [0, 195, 285], [-1, 225, 330], [-2, 260, 385], [-3, 300, 445]] as const)
        .flatMap(([gauge, at60, at105]): CheckValue[] => [
            { id: `${gaugeTitle(gauge)} 60 C`, says: `${at60} A`, actual: () => allowed(gaugeTitle(gauge), 60), expected: at60, source: table5, provenance: 'published' },
            { id: `${gaugeTitle(gauge)} 105 C`, says: `${at105} A`, actual: () => allowed(gaugeTitle(gauge), 105), expected: at105, source: table5, provenance: 'published' },
        ]),
    ...([
        [18, 10, 15, 20, 25, 25], [16, 15, 20, 25, 30, 35], [14, 20, 25, 30, 40, 45], [12, 25, 35, 40, 50, 55], [10, 40, 50, 55, 70, 70], [8, 65, 70, 70, 90, 100], [6, 95, 100, 100, 125, 135],
        [4, 125, 130, 135, 170, 180], [3, 145, 150, 155, 195, 210], [2, 170, 175, 180, 225, 240], [1, 195, 210, 210, 265, 280], [0, 230, 245, 245, 305, 325], [-1, 265, 285, 285, 355, 370],
        [-2, 310, 330, 330, 410, 430], [-3, 360, 385, 385, 475, 510],
    ] as const).flatMap(([gauge, ...amperes]) => amperes.map((expected, i): CheckValue => {
        const insulationC = ([75, 80, 90, 125, 200] as const)[i] ?? 75;
        return { id: `${gaugeTitle(gauge)} ${insulationC} C`, says: `${expected} A`, actual: () => allowed(gaugeTitle(gauge), insulationC), expected, source: table5, provenance: 'published' };
    })),
    ...([[60, 0.58], [75, 0.75], [80, 0.78], [90, 0.82], [105, 0.85], [125, 0.89], [200, 1]] as const).map(([insulationC, factor]): CheckValue => ({
        id: `engine space ${insulationC} C`, says: `factor ${factor}`, actual: () => (allowed('10 AWG', insulationC, true) ?? 0) / (allowed('10 AWG', insulationC) ?? 1), expected: factor, source: `${table5}, note 1`, provenance: 'memory',
    })),
    ...([[2, 1], [3, 0.7], [4, 0.6], [6, 0.6], [7, 0.5], [24, 0.5], [25, 0.4]] as const).map(([bundled, factor]): CheckValue => ({
        id: `bundle of ${bundled}`, says: `factor ${factor} at 120 V`, actual: () => (allowableCurrentA({ areaM2: si('10 AWG'), insulationC: 75, bundled, systemV: 120 }) ?? 0) / 40, expected: factor, source: `${table5}, note 2`, provenance: 'memory',
    })),
    // A thicker wire and a better insulation never carry less: holds of the printed table and would betray a misprint.
    { id: 'monotone', says: 'the table rises with gauge and insulation', actual: () => tabulatedGauges.every((gauge, i) => {
        const classes = [60, 75, 80, 90, 105, 125, 200] as const;
        const row = classes.map(c => allowed(gaugeTitle(gauge), c) ?? Number.NaN);
        const above = classes.map(c => allowed(gaugeTitle(tabulatedGauges[i - 1] ?? gauge), c) ?? Number.NaN);
        return row.every((value, j) => value >= (row[j - 1] ?? 0) && value >= (above[j] ?? 0));
    }), expected: true, source: table5, provenance: 'computed' },
]);

oracle('metric conductors', [
    ...([
        [0.75, 6, 10, 12, 16], [1, 8, 14, 18, 20], [1.5, 12, 18, 21, 25], [2.5, 17, 25, 30, 35], [4, 22, 35, 40, 45], [6, 29, 45, 50, 60],
        [10, 40, 65, 70, 90], [16, 54, 90, 100, 130], [25, 71, 120, 140, 170], [35, 87, 160, 185, 210], [50, 105, 210, 230, 270], [70, 135, 265, 285, 330],
    ] as const).flatMap(([mm2, ...amperes]) => amperes.map((expected, i): CheckValue => {
        const insulationC = [60, 70, 85, 105][i] ?? 60;
        return { id: `${mm2} mm2 ${insulationC} C`, says: `${expected} A`, actual: () => iso(mm2, insulationC), expected, source: 'ISO 10133 and ISO 13297, Table A.1', provenance: 'memory' };
    })),
    { id: '90 C', says: 'shares the column of 85 C', actual: () => iso(4, 90), expected: 40, source: 'ISO 10133, Table A.1', provenance: 'memory' },
    { id: '75 C', says: 'counts as 70 C', actual: () => iso(4, 75), expected: 35, source: 'class next under', provenance: 'chosen' },
    ...([[70, 0.75], [85, 0.82], [105, 0.86]] as const).map(([insulationC, factor]): CheckValue => ({
        id: `engine space ${insulationC} C`, says: `factor ${factor}`, actual: () => (iso(10, insulationC, true) ?? 0) / (iso(10, insulationC) ?? 1), expected: factor, source: 'ISO 10133, engine spaces', provenance: 'memory',
    })),
    { id: 'engine space 60 C', says: 'no factor is held', actual: () => iso(10, 60, true), expected: undefined, source: 'ISO 10133, engine spaces', provenance: 'memory' },
    { id: '3 mm2', says: 'is no nominal size', actual: () => iso(3, 105), expected: undefined, source: 'ISO 10133, Table A.1', provenance: 'memory' },
    { id: '40 A', says: 'at 85 C: 4 mm2', actual: () => (isoAreaForCurrentM2(40, { insulationC: 85 }) ?? 0) * 1e6, expected: 4, source: 'ISO 10133, Table A.1', provenance: 'memory' },
    { id: 'least alone', says: '1 mm2', actual: () => isoLeastAreaM2(false) * 1e6, expected: 1, source: 'ISO 10133:2012', provenance: 'published' },
    { id: 'least sheathed', says: '0.75 mm2', actual: () => isoLeastAreaM2(true) * 1e6, expected: 0.75, source: 'ISO 10133:2012', provenance: 'published' },
]);

oracle('batteries and shore power', [
    { id: 'hold', says: 'a battery moves no more than 1 in', actual: () => batteryMovementLimitM / 0.0254, expected: 1, source: '33 CFR 183.420(a)', provenance: 'published' },
    { id: 'pull 45', says: 'at 45 lb both tests are alike, 90 lbf', actual: () => convertTo(batteryTestPullN(si('45 lb')), 'lbf'), expected: 90, within: 1e-9, source: '33 CFR 183.420(a)', provenance: 'published' },
    { id: '71 of 105', says: '67.6 % of its rating is left', actual: () => shareLeft({ measured: 71, rated: 105 }) * 100, expected: 67.6, within: 0.05, source: 'measured over rated', provenance: 'computed' },
    { id: 'endurance', says: '100 Ah of lead, 5 A half of the time: 20 h', actual: () => enduranceS({ bankC: si('100 Ah'), usableShare: 0.5, currentA: 5, duty: 0.5 }) / 3600, expected: 20, within: 1e-9, source: 'Ah x share / (A x duty)', provenance: 'computed' },
    { id: 'endurance lithium', says: 'of lithium 32 h', actual: () => enduranceS({ bankC: si('100 Ah'), usableShare: 0.8, currentA: 5, duty: 0.5 }) / 3600, expected: 32, within: 1e-9, source: 'Ah x share / (A x duty)', provenance: 'computed' },
    { id: 'series', says: 'two of 6 V and 220 Ah are 220 Ah at 12 V', actual: () => bankCapacityC([{ capacityC: 220, nominalV: 6 }, { capacityC: 220, nominalV: 6 }], 12), expected: 220, source: 'charge of cells in series', provenance: 'computed' },
    { id: 'parallel', says: 'two of 12 V and 100 Ah are 200 Ah at 12 V', actual: () => bankCapacityC([{ capacityC: 100 }, { capacityC: 100 }], 12), expected: 200, source: 'charge of cells in parallel', provenance: 'computed' },
    { id: '24 V low', says: 'doubles 14.1 V', actual: () => chargeRangeAt({ lowV: 14.1, highV: 14.8 }, { nominalV: 24 }).lowV, expected: 28.2, within: 1e-9, source: 'twelve cells for six', provenance: 'computed' },
    { id: '24 V high', says: 'doubles 14.8 V', actual: () => chargeRangeAt({ lowV: 14.1, highV: 14.8 }, { nominalV: 24 }).highV, expected: 29.6, within: 1e-9, source: 'twelve cells for six', provenance: 'computed' },
    { id: 'cold', says: '10 degrees under 25 C: 0.3 V more at 12 V', actual: () => chargeRangeAt({ lowV: 14.1, highV: 14.8 }, { nominalV: 12, caseK: 288.15 }).highV, expected: 15.1, within: 1e-9, source: '5 mV a cell and degree', provenance: 'practice' },
    { id: 'leak 30', says: '30 mA is to be traced', actual: () => leakageVerdict(0.03), expected: 'trace', source: 'ABYC E-11 11.11.1: trips at no more than 30 mA', provenance: 'secondary' },
    { id: 'leak 31', says: '31 mA is a fault', actual: () => leakageVerdict(0.031), expected: 'fault', source: 'ABYC E-11 11.11.1', provenance: 'secondary' },
    { id: 'leak 9', says: '9 mA is none', actual: () => leakageVerdict(0.009), expected: 'none', source: 'tracing from 10 mA on', provenance: 'practice' },
    { id: 'trip', says: '30 mA in 100 ms is in time', actual: () => tripsInTime({ tripA: 0.03, tripS: 0.1 }), expected: true, source: 'ABYC E-11 11.11.1.1', provenance: 'secondary' },
    { id: 'trip late', says: '30 mA in 120 ms is not', actual: () => tripsInTime({ tripA: 0.03, tripS: 0.12 }), expected: false, source: 'ABYC E-11 11.11.1.1', provenance: 'secondary' },
    { id: 'transformer', says: 'within 10 ft', actual: () => transformerReachM / 0.3048, expected: 10, within: 1e-9, source: 'ABYC E-11 11.11.1, exception', provenance: 'secondary' },
    { id: 'rise 30', says: '30 F over the air is the most', actual: () => isOverheated(riseK({ hotK: si('115 F'), airK: si('85 F') })), expected: false, source: 'common limit', provenance: 'practice' },
    { id: 'rise 31', says: '31 F is too much', actual: () => isOverheated(riseK({ hotK: si('116 F'), airK: si('85 F') })), expected: true, source: 'common limit', provenance: 'practice' },
    { id: '5.f share', says: '0.494 V of 12 V is 4.12 %', actual: () => voltageDropV({ currentA: 10, roundTripM: si('30 ft'), areaM2: si('12 AWG') }) / 12 * 100, expected: 4.12, within: 0.005, source: 'E = K I L / CM', provenance: 'computed' },
    { id: 'measured', says: '12.6 V to 11.97 V is 5 %', actual: () => measuredDropShare({ sourceV: 12.6, loadV: 11.97 }) * 100, expected: 5, within: 1e-9, source: 'share of the source', provenance: 'computed' },
]);

const w1 = (facts: string): string => `conductor W1 { ${facts} }\n`;

oracle('verdicts on electrics', [
    { id: '5.a', says: '60 A on 10 AWG of 105 C', actual: () => verdict('wire-too-small', w1('gauge: 10 AWG  insulation: 105 C  load: 60 A  in-engine-space: no')), expected: 'silent', source: table5, provenance: 'published' },
    { id: '5.b', says: '60 A on the same in an engine space', actual: () => verdict('wire-too-small', w1('gauge: 10 AWG  insulation: 105 C  load: 60 A  in-engine-space: yes')), expected: 'error', source: `${table5}, note 1`, provenance: 'memory' },
    { id: '5.c', says: '35 A on 14 AWG of 75 C at 12 V', actual: () => verdict('fuse-too-big', `${w1('gauge: 14 AWG  insulation: 75 C  voltage: 12 V')}fuse FU1 { rating: 35 A  protects: W1 }\n`), expected: 'error', source: '33 CFR 183.455(c)(1)', provenance: 'published' },
    { id: '5.c limit', says: '30 A on the same', actual: () => verdict('fuse-too-big', `${w1('gauge: 14 AWG  insulation: 75 C  voltage: 12 V')}fuse FU1 { rating: 30 A  protects: W1 }\n`), expected: 'silent', source: '33 CFR 183.455(c)(1)', provenance: 'published' },
    { id: '5.d bare', says: '12 in from the bus along a bare wire', actual: () => verdict('fuse-missing-or-far', 'fuse FU1 { distance: 12 in  source: bus  sheathed-to-fuse: no }\n'), expected: 'error', source: '33 CFR 183.455(b)', provenance: 'published' },
    { id: '5.d sheathed', says: '12 in sheathed all the way', actual: () => verdict('fuse-missing-or-far', 'fuse FU1 { distance: 12 in  source: bus  sheathed-to-fuse: yes }\n'), expected: 'silent', source: '33 CFR 183.455(b)', provenance: 'published' },
    { id: '5.e', says: '10 AWG over 30 ft at 10 A and 12 V, to lose no more than 3 %', actual: () => verdict('voltage-drop', w1('gauge: 10 AWG  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump')), expected: 'silent', source: 'K = 10.75, ABYC E-11', provenance: 'memory' },
    { id: '5.e 10 %', says: '14 AWG over the same, to lose no more than 10 %', actual: () => verdict('voltage-drop', w1('gauge: 14 AWG  load: 10 A  length: 30 ft  voltage: 12 V  purpose: power')), expected: 'silent', source: 'K = 10.75, ABYC E-11', provenance: 'memory' },
    { id: '5.f', says: '12 AWG over the same loses over 3 %', actual: () => verdict('voltage-drop', w1('gauge: 12 AWG  load: 10 A  length: 30 ft  voltage: 12 V  purpose: bilge-pump')), expected: 'error', source: 'E = K I L / CM', provenance: 'computed' },
    { id: '5.h', says: '18 AWG run alone 10 ft to a lamp of 3 A', actual: () => verdict('wire-too-small', w1('gauge: 18 AWG  load: 3 A  length: 20 ft  sheathed: no')), expected: 'error', source: '33 CFR 183.425', provenance: 'published' },
    { id: '5.h sheathed', says: 'the same in a sheath', actual: () => verdict('wire-too-small', w1('gauge: 18 AWG  load: 3 A  length: 20 ft  sheathed: yes')), expected: 'silent', source: '33 CFR 183.425', provenance: 'published' },
    { id: 'hold', says: 'a battery that moves 1-1/4 in', actual: () => verdict('battery-loose-or-bare', 'battery B1 { movement: 1-1/4 in }\n'), expected: 'error', source: '33 CFR 183.420(a)', provenance: 'published' },
    { id: 'older boat', says: 'a boat of 1985 without a leakage breaker: advice', actual: () => verdict('leakage-breaker-missing', 'vessel "Marram" { built: 1985 }\nshore-inlet SI1 { leakage-guarded: no }\n'), expected: 'warning', source: 'ABYC E-11, not written for boats built before it', provenance: 'secondary' },
    { id: 'transformer bond', says: 'neutral bonded at an isolation transformer', actual: () => verdict('polarity-or-earth', 'shore-inlet SI1 { neutral-joined-aboard: joined }\ntransformer T1 { neutral-bonded: yes }\n'), expected: 'silent', source: 'ABYC E-11: joined at the source', provenance: 'memory' },
]);
