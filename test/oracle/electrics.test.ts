import { convertTo } from '../../src/quantities/index.js';
import { batteryTestPullN } from '../../src/trade/battery-hold.js';
import { allowableCurrentA, allowedDropShare, areaForDropM2, circularMils, gaugeAreaM2, gaugeFor, gaugeForCurrent, gaugeTitle, gaugeWithin, tabulatedGauges, thinnestGauge, voltageDropV, type InsulationC } from '../../src/trade/conductor.js';
import { overcurrentLimitA, overcurrentReachM, standardRatingWithin } from '../../src/trade/overcurrent.js';
import { si } from './si.js';
import { oracle, type CheckValue } from './table.js';

const table5 = '33 CFR 183.425 Table 5';
const allowed = (gauge: string, insulationC: InsulationC, isEngineSpace = false): number | undefined => allowableCurrentA({ areaM2: si(gauge), insulationC, isEngineSpace });
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
    // A thicker wire and a better insulation never carry less: holds of the printed table and would betray a misprint.
    { id: 'monotone', says: 'the table rises with gauge and insulation', actual: () => tabulatedGauges.every((gauge, i) => {
        const classes = [60, 75, 80, 90, 105, 125, 200] as const;
        const row = classes.map(c => allowed(gaugeTitle(gauge), c) ?? Number.NaN);
        const above = classes.map(c => allowed(gaugeTitle(tabulatedGauges[i - 1] ?? gauge), c) ?? Number.NaN);
        return row.every((value, j) => value >= (row[j - 1] ?? 0) && value >= (above[j] ?? 0));
    }), expected: true, source: table5, provenance: 'computed' },
]);
