import { convertTo, parseFigure } from '../../src/quantities/index.js';
import { analyseText } from '../../src/checks/survey.js';
import {
    coolantBoilingK, coolantBoilingUnderCapK, coolantFreezingK, exchangedVolumeM3, flushShare, freshMixM3, gelShare, isFreezingTabulated, massShare, strongestUsefulShare, topUp, waterBoilingK, type Glycol,
} from '../../src/trade/coolant.js';
import { couplingGapLimitM } from '../../src/trade/coupling-alignment.js';
import { cylinderSpread, spreadFaultShare, spreadWatchShare } from '../../src/trade/cylinder-spread.js';
import { dripsPerDayM3 } from '../../src/trade/drip-rate.js';
import { hoursAYear, hoursInAYear } from '../../src/trade/engine-hours.js';
import { judgeRatedSpeed, tachometerError } from '../../src/trade/engine-speed.js';
import { hotK, leastLoopHeeledM, leastLoopM } from '../../src/trade/exhaust.js';
import { hullSpeedMs, speedLengthRatio } from '../../src/trade/hull-speed.js';
import { drainBackM3, leastMufflerM3 } from '../../src/trade/muffler.js';
import { meanOfRunsMs, propellerSlip, theoreticalSpeedMs, usualSlip } from '../../src/trade/propeller-slip.js';
import { playStep, rudderBearingLimitM } from '../../src/trade/rudder.js';
import { bearingLimitM } from '../../src/trade/stern-bearing.js';
import { oracle, type CheckValue } from './table.js';

const si = (written: string): number => {
    const parsed = parseFigure(written);
    return parsed.ok && parsed.figure.kind === 'quantity' ? parsed.figure.si : Number.NaN;
};
const mm = (m: number): number => m * 1000;
const liters = (m3: number): number => m3 * 1000;
const celsius = (kelvin: number): number => kelvin - 273.15;
/** Severities that a check raises on a text: "error" or "silent". */
const verdict = (id: string, text: string): string => analyseText(text).problems.filter(problem => problem.check.id === id).map(problem => problem.severity).join(' ') || 'silent';

const rpm = (value: number) => si(`${value} rpm`);
const trial = (turns: number, ratio: number, pitchIn: number) => ({ rotationRadS: rpm(turns), ratio, pitchM: si(`${pitchIn} in`) });
const slip = (speed: string, run: ReturnType<typeof trial>): number => 100 * (propellerSlip(si(speed), run) ?? Number.NaN);
const calculators = 'constants 1215.2, 1056 and 656 of calculators’ pages';
const slipText = (speed: string, more = 'running: displacement') => `vessel "Marram" { ${more} }\ngearbox GB1 { ratio: 2 }\npropeller P1 { pitch: 16 in  rotation: 2800 rpm  speed: ${speed} }\n`;

oracle('propeller', [
    { id: '10.a', says: '2800 rpm, 2.0:1, 16 in without slip: 18.43 kn', actual: () => convertTo(theoreticalSpeedMs(trial(2800, 2, 16)), 'kn'), expected: 18.43, within: 0.018, source: calculators, provenance: 'published' },
    { id: '10.a slip', says: 'at 14.2 kn, 23.0 %', actual: () => slip('14.2 kn', trial(2800, 2, 16)), expected: 23, within: 0.1, source: calculators, provenance: 'computed' },
    { id: '10.b', says: '4600 rpm, 1.5:1, 19 in without slip: 55.18 mph', actual: () => convertTo(theoreticalSpeedMs(trial(4600, 1.5, 19)), 'mph'), expected: 55.18, within: 0.055, source: calculators, provenance: 'published' },
    { id: '10.b slip', says: 'at 42 mph, 23.9 %', actual: () => slip('42 mph', trial(4600, 1.5, 19)), expected: 23.9, within: 0.1, source: calculators, provenance: 'computed' },
    { id: '10.c', says: '3600 rpm, 2.5:1, 22 in without slip: 26.07 kn', actual: () => convertTo(theoreticalSpeedMs(trial(3600, 2.5, 22)), 'kn'), expected: 26.07, within: 0.026, source: calculators, provenance: 'published' },
    { id: '10.c slip', says: 'at 21 kn, 19.4 %', actual: () => slip('21 kn', trial(3600, 2.5, 22)), expected: 19.4, within: 0.1, source: calculators, provenance: 'computed' },
    { id: 'knots', says: 'rpm x inches / 1215.2 / knots is one', actual: () => 1215.2 * convertTo(theoreticalSpeedMs(trial(1215.2, 1, 1)), 'kn') / 1215.2, expected: 1, within: 0.0001, source: '6076.1 x 12 / 60', provenance: 'computed' },
    { id: 'mph', says: '1056 for miles an hour', actual: () => 1000 / convertTo(theoreticalSpeedMs(trial(1000, 1, 1)), 'mph'), expected: 1056, within: 0.5, source: '5280 x 12 / 60', provenance: 'computed' },
    { id: 'km/h', says: '656 for kilometers an hour', actual: () => 1000 / convertTo(theoreticalSpeedMs(trial(1000, 1, 1)), 'km/h'), expected: 656, within: 0.5, source: calculators, provenance: 'published' },
    { id: 'sailors', says: 'rpm x 60 x pitch / 72913.2 is the speed in knots', actual: () => 1000 * 60 / convertTo(theoreticalSpeedMs(trial(1000, 1, 1)), 'kn'), expected: 72913.2, within: 5, source: 'a sailing forum', provenance: 'published' },
    { id: '10.f', says: 'faster than without slip is held for a wrong figure', actual: () => verdict('propeller-slip-odd', slipText('19 kn')), expected: 'error', source: 'textbooks', provenance: 'practice' },
    { id: '10.a verdict', says: '23 % is usual on a displacement hull', actual: () => verdict('propeller-slip-odd', slipText('14.2 kn')), expected: 'silent', source: 'calculators’ pages: displacement 15 to 30 %', provenance: 'published' },
    { id: '10.b verdict', says: '23.9 % is over what is usual on a planing hull', actual: () => verdict('propeller-slip-odd', 'vessel "Marram" { running: planing }\ngearbox GB1 { ratio: 1.5 }\npropeller P1 { pitch: 19 in  rotation: 4600 rpm  speed: 42 mph }\n'), expected: 'warning', source: 'calculators’ pages 5 to 15 %, textbooks 10 to 20 %', provenance: 'practice' },
    { id: 'mph for kn', says: '19 kn read as miles an hour gives 10.4 %', actual: () => slip('19 mph', trial(2800, 2, 16)), expected: 10.4, within: 0.1, source: 'computed', provenance: 'computed' },
    { id: 'auxiliary', says: '12 % is usual for a sailing auxiliary', actual: () => 0.12 >= usualSlip.sailing.low && 0.12 <= usualSlip.sailing.high, expected: true, source: 'a calculator page: 10 to 25 %', provenance: 'published' },
    { id: 'work boats', says: '50 % is usual for work boats', actual: () => usualSlip.work.high, expected: 0.5, within: 1e-9, source: 'a calculator page: 30 to 50 %', provenance: 'published' },
    { id: 'two runs', says: '16.2 and 12.2 kn are 14.2 kn through the water', actual: () => convertTo(meanOfRunsMs(si('16.2 kn'), si('12.2 kn')), 'kn'), expected: 14.2, within: 1e-9, source: 'the current cancels', provenance: 'computed' },
    { id: 'hull speed', says: 'a hull of 32 ft in its own wave: 7.58 kn', actual: () => convertTo(hullSpeedMs(si('32 ft')), 'kn'), expected: 7.58, within: 0.01, source: '1.34 sqrt(LWL ft)', provenance: 'practice' },
    { id: 'ratio', says: '7.58 kn on 32 ft is 1.34', actual: () => speedLengthRatio(si('7.58 kn'), si('32 ft')), expected: 1.34, within: 0.001, source: 'knots over root of feet', provenance: 'computed' },
]);

oracle('shaft, seal and rudder', [
    { id: '10.d', says: '0.006 in on a 4 in coupling is too much', actual: () => verdict('coupling-out-of-line', 'survey "1" condition-and-value { state: afloat }\ncoupling CO1 { gap: 0.006 in  diameter: 4 in }\n'), expected: 'error', source: 'an engine maker’s manual: 0.001 in per inch', provenance: 'published' },
    { id: '10.d limit', says: '4 in: 0.004 in', actual: () => couplingGapLimitM(si('4 in')) / 0.0254, expected: 0.004, within: 1e-9, source: 'an engine maker’s manual', provenance: 'published' },
    { id: 'coupling 3 in', says: '3 in: 0.003 in', actual: () => couplingGapLimitM(si('3 in')) / 0.0254, expected: 0.003, within: 1e-9, source: 'an engine maker’s manual; an Army manual has 0.003 in (0.07 mm) at four points', provenance: 'published' },
    { id: 'bearing 1-1/4', says: '2 % of 1-1/4 in: 0.635 mm', actual: () => mm(bearingLimitM(si('1-1/4 in'))), expected: 0.635, within: 0.0005, source: '2 % of the shaft', provenance: 'practice' },
    { id: 'bearing 4', says: 'at most 1/16 in', actual: () => mm(bearingLimitM(si('4 in'))), expected: 1.5875, within: 0.0005, source: 'sure in small boats', provenance: 'practice' },
    { id: 'bearing new', says: 'a new bearing of 1-1/4 in, 0.007 in at most, is silent', actual: () => verdict('stern-bearing-worn', 'stern-bearing SB1 { clearance: 0.007 in  shaft-diameter: 1-1/4 in }\n'), expected: 'silent', source: 'ABYC P-6, quoted', provenance: 'secondary' },
    { id: 'bearing 1/32', says: '1/32 in on 1-1/4 in is worn', actual: () => verdict('stern-bearing-worn', 'stern-bearing SB1 { clearance: 1/32 in  shaft-diameter: 1-1/4 in }\n'), expected: 'error', source: 'a forum of engineers: change by 1/32 in', provenance: 'published' },
    { id: 'rudder', says: '50 mm of stock: 1 mm', actual: () => mm(rudderBearingLimitM(0.05)), expected: 1, within: 1e-9, source: '2 % of the stock', provenance: 'practice' },
    { id: 'rudder double', says: '12 mm at the tip is double', actual: () => playStep(12, 6), expected: 'double', source: '6 mm at the tip', provenance: 'practice' },
    { id: 'drops', says: 'one drop a minute is 0.072 L a day', actual: () => liters(dripsPerDayM3(1 / 60)), expected: 0.072, within: 1e-9, source: '20 drops to the milliliter', provenance: 'computed' },
    { id: 'gland', says: '2 to 3 drops under way and none at rest are right', actual: () => verdict('gland-drips', 'packed-gland PG1 { drips-at-rest: 0 drops/min  drips-under-way: 3 drops/min }\n'), expected: 'silent', source: 'boating magazine', provenance: 'published' },
    { id: 'bellows', says: 'an outdrive’s bellows of six years are past their term', actual: () => verdict('seal-rubber-old', 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\noutdrive OD1 { bellows-fitted: 2020-05 }\n'), expected: 'error', source: 'boat owners: five years, makers two to five', provenance: 'practice' },
]);

const elbow = (facts: string) => `exhaust-riser ER1 { ${facts} }\n`;
oracle('exhaust', [
    { id: '12.d', says: 'elbow 9 in above the waterline and no loop', actual: () => verdict('injection-point-too-low', elbow('injection-above-waterline: 9 in  loop: none')), expected: 'error', source: 'trade magazine: about 12 in', provenance: 'secondary' },
    { id: '12.d loop', says: 'the same with a loop of 18 in', actual: () => verdict('injection-point-too-low', `${elbow('injection-above-waterline: 9 in')}vented-loop VL1 { serves: ER1  top-above-waterline: 18 in }\n`), expected: 'silent', source: 'a handbook of boat systems and an engine maker', provenance: 'published' },
    { id: 'loop', says: '18 in is 457 mm', actual: () => mm(leastLoopM), expected: 457, within: 0.5, source: 'a handbook: 18 in (45 cm)', provenance: 'published' },
    { id: 'loop heeled', says: '8 in is 203 mm', actual: () => mm(leastLoopHeeledM), expected: 203, within: 0.5, source: 'a handbook: 8 in', provenance: 'published' },
    { id: 'guard', says: '200 F is 93.3 C', actual: () => celsius(hotK), expected: 93.3, within: 0.05, source: 'ABYC P-1, quoted', provenance: 'secondary' },
    { id: 'hose 1-1/2', says: '0.092 gal a foot', actual: () => convertTo(drainBackM3(si('1-1/2 in'), si('1 ft')), 'gal'), expected: 0.092, within: 0.0005, source: 'a sailing forum', provenance: 'published' },
    { id: 'hose 2', says: '0.16 gal a foot', actual: () => convertTo(drainBackM3(si('2 in'), si('1 ft')), 'gal'), expected: 0.163, within: 0.0005, source: 'a sailing forum, 0.16', provenance: 'published' },
    { id: 'hose 3', says: '3 in over 2 m: 9.12 L', actual: () => liters(drainBackM3(si('3 in'), 2)), expected: 9.12, within: 0.005, source: 'pi / 4 x d^2 x L', provenance: 'computed' },
    { id: 'muffler', says: 'to hold 11.86 L', actual: () => liters(leastMufflerM3(drainBackM3(si('3 in'), 2))), expected: 11.86, within: 0.005, source: '1.3 times', provenance: 'practice' },
]);

const cylinders = (values: readonly string[]) => 100 * (cylinderSpread(values.map(si)) ?? Number.NaN);
oracle('engine', [
    { id: '10.e', says: '150, 148, 152, 110 psi: 27.6 % under the highest', actual: () => cylinders(['150 psi', '148 psi', '152 psi', '110 psi']), expected: 27.6, within: 0.1, source: '(152 - 110) / 152', provenance: 'computed' },
    { id: '10.e verdict', says: 'is a fault', actual: () => verdict('cylinder-spread', 'main-engine E1 { compression: 150 psi, 148 psi, 152 psi, 110 psi }\n'), expected: 'error', source: 'two public engine pages: 25 %', provenance: 'published' },
    { id: 'spread limits', says: '10 and 25 %', actual: () => `${spreadWatchShare} ${spreadFaultShare}`, expected: '0.1 0.25', source: 'two public engine pages', provenance: 'published' },
    { id: 'outboard', says: 'the 14 psi that an outboard’s maker allows at 242 psi are under 10 %', actual: () => cylinders(['242 psi', '228 psi']) < 10, expected: true, source: 'a maker’s manual: 185 to 242 psi, 14 psi apart', provenance: 'published' },
    { id: 'rated', says: '2800 of 2800 rpm is reached', actual: () => judgeRatedSpeed(2800, 2800), expected: 'reached', source: 'makers: -0 to +3 %', provenance: 'practice' },
    { id: 'rated low', says: '2600 of 2800 rpm is overloaded', actual: () => judgeRatedSpeed(2600, 2800), expected: 'overloaded', source: 'makers', provenance: 'practice' },
    { id: 'rated 3 %', says: '2884 of 2800 rpm is still reached', actual: () => judgeRatedSpeed(2884, 2800), expected: 'reached', source: 'makers: +3 %', provenance: 'practice' },
    { id: 'tachometer', says: '2850 shown for 2700 is 5.6 % too much', actual: () => 100 * tachometerError(2850, 2700), expected: 5.56, within: 0.01, source: 'computed', provenance: 'computed' },
    { id: 'hours', says: '150 hours in three years: 50 a year', actual: () => hoursAYear(150, 3), expected: 50, within: 1e-9, source: 'computed', provenance: 'computed' },
    { id: 'year', says: 'a year has 8766 hours', actual: () => hoursInAYear, expected: 8765.8, within: 0.1, source: '365.2425 x 24', provenance: 'computed' },
]);

/** Boiling point of a mix by Raoult's law: the pressure of water over it is its share of the molecules. */
function raoultC(glycol: Glycol, share: number): number {
    const mass = massShare(glycol, share);
    const molesGlycol = mass / (glycol === 'ethylene' ? 62.07 : 76.09);
    const molesWater = (1 - mass) / 18.015;
    return celsius(waterBoilingK(101_325 * (molesGlycol + molesWater) / molesWater));
}

const coolant = (facts: string, coldest = '') => `vessel "Marram" {${coldest === '' ? '' : ` coldest-expected: ${coldest} `}}\ncoolant C1 { ${facts} }\n`;
const makersTable = 'an engine maker’s table, basis of the share not stated';
oracle('coolant, both glycols', [
    { id: '4.a', says: '50 % ethylene freezes at -37 C', actual: () => celsius(coolantFreezingK('ethylene', 0.5)), expected: -37, within: 2, source: 'an engine maker’s manual', provenance: 'published' },
    { id: '4.b', says: '50 % propylene freezes at -33.5 C', actual: () => celsius(coolantFreezingK('propylene', 0.5)), expected: -33.5, within: 2, source: 'a chemistry data handbook, -33.3 C', provenance: 'published' },
    { id: '4.c', says: '30 % ethylene freezes at -15.7 C', actual: () => celsius(coolantFreezingK('ethylene', 0.3)), expected: -15.7, within: 2, source: 'an open property library', provenance: 'computed' },
    { id: '4.d', says: '85 % ethylene is too strong', actual: () => verdict('coolant-out-of-range', coolant('glycol: 85 %  glycol-kind: ethylene')), expected: 'error', source: 'two engine makers: never over 60 %', provenance: 'published' },
    { id: '4.d flush', says: 'and is to be flushed, not topped up', actual: () => /Flush the system/.test(analyseText(coolant('glycol: 85 %  glycol-kind: ethylene  volume: 12 L')).problems.map(problem => problem.message).join()), expected: true, source: 'silicates come out as gel', provenance: 'chosen' },
    { id: '4.e', says: '12 L at 30 %, want 50 %, concentrate: drain 3.43 L', actual: () => liters(exchangedVolumeM3({ volumeM3: 0.012, share: 0.3, targetShare: 0.5, addedShare: 1 }) ?? Number.NaN), expected: 3.43, within: 0.02, source: 'x = V (ct - c0) / (ca - c0)', provenance: 'computed' },
    { id: '4.f', says: '12 L at 75 %, want 50 %, water: drain 4.00 L', actual: () => liters(exchangedVolumeM3({ volumeM3: 0.012, share: 0.75, targetShare: 0.5, addedShare: 0 }) ?? Number.NaN), expected: 4, within: 0.02, source: 'x = V (ct - c0) / (ca - c0)', provenance: 'computed' },
    { id: '4.g', says: '12 L at 30 %, want 45 %, premix: drain 9.00 L', actual: () => liters(exchangedVolumeM3({ volumeM3: 0.012, share: 0.3, targetShare: 0.45, addedShare: 0.5 }) ?? Number.NaN), expected: 9, within: 0.02, source: 'x = V (ct - c0) / (ca - c0)', provenance: 'computed' },
    { id: '4.g full', says: 'want 50 % with premix: by a full change only', actual: () => exchangedVolumeM3({ volumeM3: 0.012, share: 0.3, targetShare: 0.5, addedShare: 0.5 }), expected: undefined, source: 'x < V', provenance: 'computed' },
    { id: 'top up', says: '12 L, 4 L short, 28 %, want 50 %: 3.76 L of concentrate and 0.24 L of water', actual: () => Object.values(topUp({ volumeM3: 0.012, share: 0.28, targetShare: 0.5, addedShare: 1, shortByM3: 0.004 }) ?? {}).map(m3 => Math.round(m3 * 1e5) / 100).join(' '), expected: '0 3.76 0.24', source: '0.5 x 12 - 0.28 x 8', provenance: 'computed' },
    { id: 'top up and drain', says: '12 L, 1 L short, 30 %, want 50 %: drain 2.43 L, add 3.43 L', actual: () => Object.values(topUp({ volumeM3: 0.012, share: 0.3, targetShare: 0.5, addedShare: 1, shortByM3: 0.001 }) ?? {}).map(m3 => Math.round(m3 * 1e5) / 100).join(' '), expected: '2.43 3.43 0', source: '0.3 x 8.57 + 3.43 = 6', provenance: 'computed' },
    { id: 'fresh', says: '12 L at 50 %: 6 and 6 L', actual: () => Object.values(freshMixM3(0.012, 0.5)).map(liters).join(' '), expected: '6 6', source: 'computed', provenance: 'computed' },
    { id: 'turns', says: 'ethylene protects lowest at about 67 to 69 %', actual: () => strongestUsefulShare >= 0.67 && strongestUsefulShare <= 0.69, expected: true, source: 'a car maker’s bulletin 69 %, an antifreeze maker 67 %', provenance: 'published' },
    { id: 'gel', says: 'over 60 % gel may form', actual: () => gelShare, expected: 0.6, within: 1e-9, source: 'two engine makers', provenance: 'published' },
    { id: 'flush', says: 'from 80 % it is to be expected', actual: () => flushShare, expected: 0.8, within: 1e-9, source: 'chosen', provenance: 'chosen' },
    { id: 'propylene 70', says: 'is past the table', actual: () => isFreezingTabulated('propylene', 0.7), expected: false, source: 'an open property library ends at 60 %', provenance: 'computed' },
    ...([[0.38, -20], [0.45, -25], [0.478, -30], [0.5, -35], [0.54, -40], [0.57, -45], [0.59, -50], [0.8, -45], [0.85, -30], [1, -13]] as const).map(([share, expected]): CheckValue => ({
        id: `maker ${share * 100} %`, says: `${expected} C`, actual: () => celsius(coolantFreezingK('ethylene', share)), expected, within: 6, source: makersTable, provenance: 'published',
    })),
    ...([[0.1, -3], [0.2, -8], [0.3, -16], [0.4, -25], [0.5, -37], [0.6, -55]] as const).map(([share, expected]): CheckValue => ({
        id: `fluids ${share * 100} %`, says: `ethylene ${expected} C`, actual: () => celsius(coolantFreezingK('ethylene', share)), expected, within: 3.1, source: 'a page on heat-transfer fluids, by volume', provenance: 'published',
    })),
    ...([[0.05, -1.1], [0.1, -2.2], [0.15, -3.9], [0.2, -6.7], [0.25, -8.9], [0.3, -12.8], [0.35, -16.1], [0.4, -20.6], [0.45, -26.7], [0.5, -33.3]] as const).map(([share, expected]): CheckValue => ({
        id: `handbook ${share * 100} %`, says: `propylene ${expected} C`, actual: () => celsius(coolantFreezingK('propylene', share)), expected, within: 1.5, source: 'a chemistry data handbook, by volume', provenance: 'published',
    })),
    { id: '4.2 50', says: '50 % ethylene boils at 107.2 C', actual: () => celsius(coolantBoilingK(0.5)), expected: 107.2, within: 2, source: 'ASHRAE-type tables', provenance: 'memory' },
    { id: '4.2 100', says: 'pure ethylene glycol boils at 197 C', actual: () => celsius(coolantBoilingK(1)), expected: 197, within: 1, source: 'an engine maker’s manual', provenance: 'published' },
    { id: '4.2 propylene', says: 'pure propylene glycol boils at 188 C', actual: () => celsius(coolantBoilingK(1, 'propylene')), expected: 188, within: 1, source: 'a page of properties', provenance: 'published' },
    { id: '4.2 cap', says: '50 % ethylene under 15 psi boils at 129 C (265 F)', actual: () => celsius(coolantBoilingUnderCapK(0.5, si('15 psi'))), expected: 129.4, within: 2, source: 'a car maker’s bulletin and antifreeze charts', provenance: 'published' },
    { id: 'water', says: 'water boils at 100 C at 1 atm', actual: () => celsius(waterBoilingK(101_325)), expected: 100, within: 0.2, source: 'Antoine', provenance: 'memory' },
    { id: 'water 2 bar', says: 'and at 120.2 C at 2 bar', actual: () => celsius(waterBoilingK(2e5)), expected: 120.2, within: 0.3, source: 'steam tables', provenance: 'memory' },
    ...(['ethylene', 'propylene'] as const).flatMap(glycol => [0.2, 0.3, 0.4, 0.5, 0.6].map((share): CheckValue => ({
        id: `Raoult ${glycol} ${share * 100} %`, says: 'boils as Raoult’s law has it, within 3 K', actual: () => celsius(coolantBoilingK(share, glycol)) - raoultC(glycol, share), expected: 0, within: 3, source: 'vapor pressure of water and shares of molecules', provenance: 'computed',
    }))),
]);
