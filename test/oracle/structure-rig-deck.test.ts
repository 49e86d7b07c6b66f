import { parseFigure } from '../../src/quantities/index.js';
import { blisterFaults } from '../../src/trade/blister.js';
import { fasteningStep } from '../../src/trade/fastening-sample.js';
import { anchorTable, chainLossShare, isAnchorTooLight, mainAnchorKg, rodeNeededM } from '../../src/trade/ground-tackle.js';
import { unseenTermYears } from '../../src/trade/keel-bolt.js';
import { leastLifelineM, widestSpacingM } from '../../src/trade/lifelines.js';
import { listRad, listStep } from '../../src/trade/list.js';
import { contrastStep, isEarly, moistureRatio, woodStep } from '../../src/trade/moisture.js';
import { hollowStep, shareHollow } from '../../src/trade/percussion.js';
import { tubeFallShare } from '../../src/trade/tube-pressure.js';
import { isGaugeOff, meanOf, overthickness, wastageShare, wastageStep } from '../../src/trade/wastage.js';
import { judged, raisedBy } from '../checks/check-text.js';
import { oracle, type CheckValue } from './table.js';

const si = (written: string): number => {
    const parsed = parseFigure(written);
    return parsed.ok && parsed.figure.kind === 'quantity' ? parsed.figure.si : Number.NaN;
};
const lost = (original: string, gauged: string): number => wastageShare(si(original), si(gauged)) ?? Number.NaN;
const verdict = (check: string, text: string): string => judged(raisedBy(check, `${text}\n`)).map(({ severity }) => severity).join(' ') || 'silent';
const says = (check: string, text: string): string => raisedBy(check, `${text}\n`).map(({ message }) => message).join(' ');

const circular = 'a federal regulator’s circular 7-68 in an Army reprint';
oracle('wasted plating', [
    { id: '11.a', says: '5.0 mm gauged at 4.1: 18 % is told, and watched', actual: () => says('plate-wasted', 'plate P1 { original-thickness: 5.0 mm  thickness: 4.1 mm }').includes('lost 18 %'), expected: true, source: '(original - gauged) / original', provenance: 'computed' },
    { id: '11.a watch', says: 'watched, not renewed', actual: () => verdict('plate-wasted', 'plate P1 { original-thickness: 5.0 mm  thickness: 4.1 mm }'), expected: 'warning', source: 'from 10 %', provenance: 'practice' },
    { id: '11.b', says: '6.35 mm gauged at 4.9: 22.8 %, planned', actual: () => `${(100 * lost('6.35 mm', '4.9 mm')).toFixed(1)} ${wastageStep(lost('6.35 mm', '4.9 mm'))}`, expected: '22.8 plan', source: 'from 20 %', provenance: 'memory' },
    { id: '11.c light', says: '4.0 mm at 3.3 on a lightly built craft is planned', actual: () => wastageStep(lost('4.0 mm', '3.3 mm'), true), expected: 'plan', source: circular, provenance: 'published' },
    { id: '11.c', says: 'on others it is not', actual: () => wastageStep(lost('4.0 mm', '3.3 mm')), expected: 'watch', source: circular, provenance: 'published' },
    { id: '11.c renew', says: '25 % is the bound, over it is renewed', actual: () => `${wastageStep(0.25)} ${wastageStep(0.2501)}`, expected: 'plan renew', source: circular, provenance: 'published' },
    { id: '11.d', says: '3/16 in gauged at 0.205 in: thicker by 9.3 %, no error', actual: () => verdict('plate-wasted', 'plate P1 { original-thickness: 3/16 in  thickness: 0.205 in }'), expected: 'silent', source: 'an Army manual: plate is rolled to 14 % over', provenance: 'published' },
    { id: '11.d says', says: 'and says so', actual: () => says('plate-wasted', 'plate P1 { original-thickness: 3/16 in  thickness: 0.205 in }').includes('9.3 %'), expected: true, source: 'computed from the nominal', provenance: 'computed' },
    { id: '11.d most', says: '0.213 in for 3/16 in is as rolled', actual: () => overthickness(si('3/16 in'), si('0.213 in')), expected: 'as-rolled', source: 'an Army manual: 108 to 120 in widths', provenance: 'published' },
    { id: 'lone pit', says: 'a pit of half the thickness is repaired', actual: () => verdict('plate-wasted', 'plate P1 { original-thickness: 6 mm  pit-depth: 3 mm  pits: lone }'), expected: 'error', source: 'inland insurers: 1/3 to 1/2', provenance: 'practice' },
    { id: 'three readings', says: '5.1, 5.2 and 5.0 mm average 5.1', actual: () => (meanOf(['5.1 mm', '5.2 mm', '5.0 mm'].map(si)) ?? 0) * 1000, expected: 5.1, within: 1e-9, source: 'mean', provenance: 'computed' },
    { id: 'block', says: 'a gauge 0.1 mm off on its block stands, 0.15 mm does not', actual: () => `${isGaugeOff(0.005, 0.0051)} ${isGaugeOff(0.005, 0.00515)}`, expected: 'false true', source: 'ultrasonic gauging is proved on a block', provenance: 'practice' },
]);

const comparative = 'surveyors’ writings: readings on laminate are comparative';
oracle('moisture, percussion, blisters', [
    { id: '11.f', says: 'percent of solid laminate, no scale named', actual: () => verdict('moisture-contrast', 'hull-shell H1 { material: grp  moisture: "32 %" }'), expected: 'error', source: comparative, provenance: 'published' },
    { id: '11.f wood', says: 'percent of wood is proper', actual: () => verdict('moisture-contrast', 'hull-shell H1 { material: oak  moisture: "32 %" }'), expected: 'silent', source: 'percent is proper for wood only', provenance: 'published' },
    { id: 'equal', says: 'a high reading equal to its dry reference', actual: () => verdict('moisture-contrast', 'deck D1 { material: cored-grp  moisture-reading: 80  dry-reference: 80  sounds: dull }'), expected: 'silent', source: comparative, provenance: 'published' },
    { id: 'ratio', says: '27 against 12 is 2.25', actual: () => moistureRatio(27, 12), expected: 2.25, within: 1e-9, source: 'reading / reference', provenance: 'computed' },
    { id: 'ratio dull', says: 'over 2 and dull is a fault', actual: () => contrastStep(2.25, 'dull'), expected: 'fault', source: 'a ratio over 2', provenance: 'practice' },
    { id: 'ratio clear', says: 'over 2 and clear is watched', actual: () => contrastStep(2.25, 'clear'), expected: 'watch', source: 'a ratio over 2', provenance: 'practice' },
    { id: 'early', says: '23 hours ashore is early, 24 is not', actual: () => `${isEarly(23 * 3600, undefined)} ${isEarly(24 * 3600, undefined)}`, expected: 'true false', source: 'a code of practice of 1998: at least 24 hours', provenance: 'secondary' },
    { id: 'wood dry', says: '16 % is air dry', actual: () => woodStep({ share: 0.16 }), expected: 'none', source: 'wood science: 12 to 16 %', provenance: 'memory' },
    { id: 'wood damp', says: '22 % can rot', actual: () => woodStep({ share: 0.22 }), expected: 'damp', source: 'wood science: over 20 %', provenance: 'memory' },
    { id: 'wood soft', says: '30 % and a probe of 6 mm is decay', actual: () => woodStep({ share: 0.3, probeM: 0.006 }), expected: 'decay', source: 'fiber saturation at 28 to 30 %; a probe past 5 mm', provenance: 'memory' },
    { id: 'wood immersed', says: 'immersed at 45 % with a hard probe', actual: () => verdict('wood-too-wet', 'plank P1 { moisture: 45 %  immersed: yes  probe: 1 mm }'), expected: 'silent', source: 'immersed planking is saturated', provenance: 'practice' },
    { id: 'hollow', says: '0.2 and 0.1 m2 of 4 m2 is 7.5 %', actual: () => 100 * (shareHollow([0.2, 0.1], 4) ?? Number.NaN), expected: 7.5, within: 1e-9, source: 'sum / panel', provenance: 'computed' },
    { id: 'hollow bounds', says: '5 % is silent, 6 % a fault, 26 % urgent', actual: () => [0.05, 0.06, 0.26].map(share => hollowStep(share, false)).join(' '), expected: 'none fault urgent', source: '5 % and 25 % of the panel', provenance: 'practice' },
    { id: 'blisters', says: '25 on a square meter, 60 mm across', actual: () => blisterFaults({ densityPerM2: 25, diameterM: 0.06 }).join(' '), expected: 'many large', source: '20 on a square meter, 50 mm', provenance: 'practice' },
    { id: 'fastenings', says: '10 % silent, 20 % advice, 30 % refasten', actual: () => [1, 2, 3].map(bad => fasteningStep(bad, 10)).join(' '), expected: 'sound advice refasten', source: '10 % and 25 %', provenance: 'practice' },
    { id: 'keel bolts', says: 'iron 10 years, bronze and stainless 20', actual: () => ['iron-or-steel', 'copper-alloy', 'stainless'].map(unseenTermYears).join(' '), expected: '10 20 20', source: 'practice differs', provenance: 'practice' },
]);

const atan = (port: string, starboard: string, beam: string) => (listRad(si(port), si(starboard), si(beam)) ?? Number.NaN) * 180 / Math.PI;
oracle('list', [
    { id: 'three degrees', says: '4 m × tan 3° = 209.6 mm', actual: () => atan('1209.6 mm', '1000 mm', '4 m'), expected: 3, within: 0.001, source: 'atan((Fp - Fs) / B)', provenance: 'computed' },
    { id: 'forty-five', says: 'a difference equal to the breadth is 45°', actual: () => atan('2 m', '1 m', '1 m'), expected: 45, within: 1e-9, source: 'atan 1', provenance: 'computed' },
    { id: 'inches', says: '8 in on 12 ft is 3.18°', actual: () => atan('48 in', '40 in', '12 ft'), expected: 3.1798, within: 0.0005, source: 'atan(8 / 144)', provenance: 'computed' },
    { id: 'side', says: 'more freeboard to starboard is a list to port', actual: () => atan('40 in', '48 in', '12 ft') < 0, expected: true, source: 'sign', provenance: 'computed' },
    { id: 'bounds', says: '1° is none, 2° asked, 4° a fault', actual: () => [1, 2, 4].map(deg => listStep(deg * Math.PI / 180)).join(' '), expected: 'none asked fault', source: '1° and 3°', provenance: 'practice' },
]);

const code = 'harmonised code of MGN 280, Table 20.1, as an online register of rules prints it';
oracle('ground tackle, rig and lifelines', [
    ...([[6, 8], [7, 9], [8, 10], [9, 11], [10, 13], [11, 15], [12, 18], [13, 21], [14, 24], [15, 27], [16, 30], [17, 34], [18, 38], [19, 42], [20, 47], [21, 52], [22, 57], [23, 62], [24, 68]] as const).map(([length, mass]): CheckValue => ({
        id: `anchor ${length} m`, says: `${mass} kg`, actual: () => mainAnchorKg(length), expected: mass, within: 1e-9, source: code, provenance: 'published',
    })),
    { id: 'anchor between', says: '11.5 m: 16.5 kg', actual: () => mainAnchorKg(11.5), expected: 16.5, within: 1e-9, source: 'linear between 15 and 18 kg', provenance: 'computed' },
    { id: 'anchor outside', says: 'nothing under 6 m or over 24 m', actual: () => `${mainAnchorKg(5.9)} ${mainAnchorKg(24.1)}`, expected: 'undefined undefined', source: code, provenance: 'published' },
    { id: 'anchor 90 %', says: '16.2 kg for 18 kg stands, 16.1 does not', actual: () => `${isAnchorTooLight(16.2, 18)} ${isAnchorTooLight(16.1, 18)}`, expected: 'false true', source: 'the same code, 20.5.4', provenance: 'published' },
    { id: 'anchor 45 lb', says: '45 lb on 12 m stands', actual: () => verdict('anchor-too-light', 'vessel "M" { length-on-deck: 12.5 m  length-waterline: 11.5 m }\nanchor A1 { mass: 45 lb }'), expected: 'silent', source: '20.4 kg for 18 kg', provenance: 'computed' },
    { id: 'anchor rows', says: 'the table holds 19 lengths', actual: () => anchorTable.length, expected: 19, source: code, provenance: 'published' },
    { id: 'chain', says: '10 mm worn to 8.9 mm: 11 %', actual: () => 100 * (chainLossShare(si('10 mm'), si('8.9 mm')) ?? Number.NaN), expected: 11, within: 1e-9, source: '(original - now) / original', provenance: 'computed' },
    { id: 'rode chain', says: '10 m and a bow of 1.5 m: 57.5 m of chain', actual: () => rodeNeededM('chain', 10, 1.5), expected: 57.5, within: 1e-9, source: 'a cruising forum’s captain: 5:1 with all chain', provenance: 'published' },
    { id: 'rode 10 ft', says: '10 ft from the bow: 70 ft of rope', actual: () => rodeNeededM('rope', si('10 ft'), 0) / 0.3048, expected: 70, within: 1e-9, source: 'a boat owners’ foundation: 7:1', provenance: 'published' },
    { id: 'rode 15 ft', says: '10 ft of water and a bow of 5 ft at 5:1: 75 ft', actual: () => rodeNeededM('chain', si('10 ft'), si('5 ft')) / 0.3048, expected: 75, within: 1e-9, source: 'a boating magazine: depth includes the bow', provenance: 'published' },
    { id: 'lifeline', says: '600 mm and 24 in stand, 23-1/2 in does not', actual: () => ['600 mm', '24 in', '23-1/2 in'].map(height => verdict('lifeline-low-or-loose', `lifeline L1 { height: ${height} }`)).join(' '), expected: 'silent silent warning', source: 'offshore racing rules, 600 mm (24 in)', provenance: 'secondary' },
    { id: 'lifeline spacing', says: '2.2 m, 7 ft 2-1/2 in', actual: () => Math.abs(widestSpacingM - si('7 ft 2-1/2 in')) < 0.005, expected: true, source: 'offshore racing rules', provenance: 'secondary' },
    { id: 'lifeline small', says: '450 mm under 8.5 m', actual: () => leastLifelineM(true, 8.4), expected: 0.45, within: 1e-9, source: 'offshore racing rules', provenance: 'secondary' },
    { id: 'rigging', says: 'wire of 12 years stands, of 13 does not', actual: () => ['2014-10', '2013-09'].map(fitted => verdict('rigging-old', `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }\nshroud S1 { fitted: ${fitted} }`)).join(' '), expected: 'silent warning', source: 'insurers ask for about 10 to 15 years', provenance: 'published' },
]);

const gasLaw = 'p2\' = (p2 + pa) T1 / T2 - pa, pa = 1013.25 mbar';
const lostPercent = (start: string, end: string, from: string, to: string) => 100 * (tubeFallShare({ startPa: si(start), endPa: si(end), airStartK: si(from), airEndK: si(to) }) ?? Number.NaN);

oracle('air tubes', [
    { id: 'tube at one temperature', says: '250 mbar to 200 mbar is 20 %', actual: () => lostPercent('250 mbar', '200 mbar', '20 C', '20 C'), expected: 20, within: 1e-6, source: gasLaw, provenance: 'computed' },
    { id: 'tube cooled', says: '240 mbar at 20 C to 170 mbar at 10 C: 11.8 %', actual: () => lostPercent('240 mbar', '170 mbar', '20 C', '10 C'), expected: 11.75, within: 0.05, source: gasLaw, provenance: 'computed' },
    { id: 'tube in psi', says: '3.5 psi at 86 F that only cools to 50 F reads 2.30 psi, and has lost nothing', actual: () => lostPercent('3.5 psi', '2.29954 psi', '86 F', '50 F'), expected: 0, within: 0.1, source: gasLaw, provenance: 'computed' },
    { id: 'tube verdict', says: 'over 20 % of the start is a fault', actual: () => verdict('tube-loses-pressure', 'inflatable-tube TB1 { start-pressure: 250 mbar  end-pressure: 195 mbar  air-start: 20 C  air-end: 20 C }'), expected: 'error', source: 'common practice', provenance: 'practice' },
    { id: 'tube explained', says: 'a cold night explains it', actual: () => verdict('tube-loses-pressure', 'inflatable-tube TB1 { start-pressure: 250 mbar  end-pressure: 195 mbar  air-start: 20 C  air-end: 8 C }'), expected: 'silent', source: gasLaw, provenance: 'computed' },
]);
