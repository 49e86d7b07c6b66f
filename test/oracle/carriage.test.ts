/** Gear to be carried, lights, signals, sanitation, marks, capacity and hull numbers against published tables. */
import { convertTo } from '../../src/quantities/index.js';
import { personsOfLoad, powerCapacityW, powerFactor } from '../../src/trade/capacity-label.js';
import { disposableExpiry, extinguishersNeeded } from '../../src/trade/extinguishers.js';
import { agentLoss } from '../../src/trade/fixed-extinguisher.js';
import { decodeHullNumber } from '../../src/trade/hull-number.js';
import { lifejacketsMissing, throwablesNeeded } from '../../src/trade/lifejackets.js';
import { isPlacardLargeEnough, leastLetterM } from '../../src/trade/marks.js';
import { greatestMaskedRad, leastHeight, leastRangeNmi, type LightKind } from '../../src/trade/navigation-lights.js';
import { isDeviceAllowed } from '../../src/trade/sanitation.js';
import { signalShortage, signalUse, soundSignalsNeeded, type SignalKind } from '../../src/trade/signals.js';
import { analyseText, idsOf, judged } from '../checks/check-text.js';
import { si } from './si.js';
import { oracle, type CheckValue } from './table.js';

/** Ids of the checks that judge a text, in words. */
const verdict = (text: string) => idsOf(judged(analyseText(text).problems)).join(' ') || 'none';
const attended = 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\n';

const rule15 = '33 CFR 175.15';
oracle('life jackets', [
    { id: '7.e wearable', says: '18 ft, four persons: four wearable', actual: () => lifejacketsMissing(4, 0, { adult: 0, child: 0 }).adult, expected: 4, source: rule15, provenance: 'published' },
    { id: '7.e throwable', says: '18 ft: one throwable', actual: () => throwablesNeeded(si('18 ft')), expected: 1, source: rule15, provenance: 'published' },
    { id: '16 ft', says: 'one throwable from 16 ft', actual: () => throwablesNeeded(si('16 ft')), expected: 1, source: rule15, provenance: 'published' },
    { id: 'under 16 ft', says: 'no throwable', actual: () => throwablesNeeded(si('15.9 ft')), expected: 0, source: rule15, provenance: 'published' },
    { id: 'verdict short', says: '18 ft, four persons, three jackets', actual: () => verdict('vessel "M" { length-on-deck: 18 ft  persons: 4 }\nlifejacket LJ1 { quantity: 3 }\nthrowable T1\n'), expected: 'lifejackets-too-few', source: rule15, provenance: 'published' },
    { id: 'verdict enough', says: '18 ft, four persons, four jackets and a throwable', actual: () => verdict('vessel "M" { length-on-deck: 18 ft  persons: 4 }\nlifejacket LJ1 { quantity: 4 }\nthrowable T1\n'), expected: 'none', source: rule15, provenance: 'published' },
]);

const rule320 = '33 CFR 175.320, two state course tables';
const ways = (length: string, isFixed: boolean) => (extinguishersNeeded(si(length), isFixed) ?? []).map(way => `${way.b5}+${way.b20}`).join(' or ');
oracle('extinguishers by length', [
    ...([
        ['25.9 ft', false, '1+0'], ['25.9 ft', true, '0+0'], ['26 ft', false, '2+0 or 0+1'], ['26 ft', true, '1+0'], ['39.9 ft', false, '2+0 or 0+1'],
        ['40 ft', false, '3+0 or 1+1'], ['40 ft', true, '2+0 or 0+1'], ['65 ft', false, '3+0 or 1+1'], ['65.1 ft', false, ''],
    ] as const).map(([length, isFixed, expected]): CheckValue => ({ id: `${length}${isFixed ? ' fixed' : ''}`, says: `of 5-B + of 20-B: ${expected || 'by tonnage'}`, actual: () => ways(length, isFixed), expected, source: rule320, provenance: 'published' })),
    { id: '7.a', says: '34 ft with a fixed system and no 5-B that counts', actual: () => verdict('vessel "M" { length-on-deck: 34 ft  fuel: diesel }\nfixed-extinguisher F1\nextinguisher X1 { rating: other }\n'), expected: 'extinguishers-too-few', source: rule320, provenance: 'published' },
    { id: '7.a alone', says: '34 ft with a fixed system and no portable at all', actual: () => verdict('vessel "M" { length-on-deck: 34 ft  fuel: diesel }\nfixed-extinguisher F1\n'), expected: 'extinguishers-too-few', source: rule320, provenance: 'published' },
    { id: '7.b', says: '42 ft with two 5-B', actual: () => verdict('vessel "M" { length-on-deck: 42 ft  fuel: diesel }\nextinguisher X1 { rating: b-5  quantity: 2 }\n'), expected: 'extinguishers-too-few', source: rule320, provenance: 'published' },
    { id: '7.c', says: 'a disposable bottle of 2013 had expired in 2026', actual: () => disposableExpiry(2013) < 2026, expected: true, source: 'rule in force since 20 April 2022', provenance: 'published' },
    { id: '7.c verdict', says: 'the same on a survey', actual: () => verdict(`${attended}vessel "M" { length-on-deck: 25 ft  fuel: diesel }\nextinguisher X1 { rating: b-5  disposable: yes  made: 2013 }\nextinguisher X2 { rating: b-5 }\n`), expected: 'extinguisher-out-of-date', source: 'rule in force since 20 April 2022', provenance: 'published' },
    { id: '7.d', says: 'a boat of 2019 with a B-I bottle', actual: () => verdict('vessel "M" { length-on-deck: 25 ft  fuel: gasoline  model-year: 2019 }\nextinguisher X1 { rating: b-i }\n'), expected: 'extinguishers-too-few', source: '33 CFR 175.320, markings by model year', provenance: 'published' },
    { id: 'agent at 5 %', says: '10 lb to 9.5 lb', actual: () => agentLoss(si('10 lb'), si('9.5 lb')), expected: 0.05, within: 1e-12, source: '(label - weighed) / label', provenance: 'computed' },
    { id: 'agent over 5 %', says: 'is judged', actual: () => verdict('fixed-extinguisher F1 { agent-mass: 10 lb  agent-mass-now: 9.4 lb }\n'), expected: 'fixed-system-overdue', source: 'label of clean-agent bottles', provenance: 'practice' },
    { id: '12.f', says: 'gasoline inboard, cabin, no alarm', actual: () => verdict('vessel "M" { fuel: gasoline  sleeping-cabins: 1 }\nsmoke-alarm S1\n'), expected: 'co-alarm-missing-or-old', source: 'ABYC A-24, in a trade magazine', provenance: 'secondary' },
]);

const uses = (kind: SignalKind) => {
    const { day, night } = signalUse(kind);
    return [...(day ? ['day'] : []), ...(night ? ['night'] : [])].join(' ');
};
const short = (...lots: readonly (readonly [SignalKind, number])[]) => {
    const { dayMissing, nightMissing } = signalShortage(lots.map(([kind, count]) => ({ ...signalUse(kind), count })));
    return `${dayMissing} ${nightMissing}`;
};
const flares = (expires: string, attendedOn = '2026-10-06') => verdict(`survey "1" pre-purchase { attended ${attendedOn} afloat "Berth" }\nvessel "M" { length-on-deck: 34 ft  used-on: coastal }\ndistress-signal DS1 { signal: red-hand  quantity: 3  expires: ${expires} }\n`);
const combined = '33 CFR 175.130: three, or three combined';
oracle('distress signals', [
    { id: 'hand flare', says: 'counts day and night', actual: () => uses('red-hand'), expected: 'day night', source: '46 CFR 141.375', provenance: 'published' },
    { id: 'orange smoke', says: 'counts by day only', actual: () => uses('orange-smoke'), expected: 'day', source: '46 CFR 141.375', provenance: 'published' },
    { id: 'flag', says: 'serves the day', actual: () => uses('flag'), expected: 'day', source: '33 CFR 175.130', provenance: 'published' },
    { id: 'electric light', says: 'serves the night', actual: () => uses('electric-light'), expected: 'night', source: '33 CFR 175.130', provenance: 'published' },
    { id: 'three red', says: 'enough for both', actual: () => short(['red-hand', 3]), expected: '0 0', source: combined, provenance: 'published' },
    { id: 'two red, one parachute', says: 'enough for both', actual: () => short(['red-hand', 2], ['red-parachute', 1]), expected: '0 0', source: combined, provenance: 'published' },
    { id: 'three smoke', says: 'three short by night', actual: () => short(['orange-smoke', 3]), expected: '0 3', source: combined, provenance: 'published' },
    { id: 'two red and a smoke', says: 'one short by night', actual: () => short(['red-hand', 2], ['orange-smoke', 1]), expected: '0 1', source: combined, provenance: 'published' },
    { id: 'flag and light', says: 'enough for both', actual: () => short(['flag', 1], ['electric-light', 1]), expected: '0 0', source: '33 CFR 175.130', provenance: 'published' },
    { id: 'none', says: 'three short each', actual: () => short(), expected: '3 3', source: combined, provenance: 'published' },
    { id: 'month before', says: 'not counted past the date', actual: () => flares('2026-09'), expected: 'flares-out-of-date', source: '33 CFR 175.125', provenance: 'published' },
    { id: 'last day of its month', says: 'counts', actual: () => flares('2026-09', '2026-09-30'), expected: 'none', source: '33 CFR 175.125', provenance: 'published' },
    { id: 'day after', says: 'does not', actual: () => flares('2026-09', '2026-10-01'), expected: 'flares-out-of-date', source: '33 CFR 175.125', provenance: 'published' },
]);

const rule22 = 'rule 22, 33 CFR 83.22';
const rangeRows: readonly (readonly [length: string, ranges: Readonly<Record<LightKind, number>>])[] = [
    ['11.9 m', { masthead: 2, side: 1, stern: 2, towing: 2, 'all-round': 2 }], ['12 m', { masthead: 3, side: 2, stern: 2, towing: 2, 'all-round': 2 }],
    ['19.9 m', { masthead: 3, side: 2, stern: 2, towing: 2, 'all-round': 2 }], ['20 m', { masthead: 5, side: 2, stern: 2, towing: 2, 'all-round': 2 }],
    ['49.9 m', { masthead: 5, side: 2, stern: 2, towing: 2, 'all-round': 2 }], ['50 m', { masthead: 6, side: 3, stern: 3, towing: 3, 'all-round': 3 }],
];
const light = (length: string, facts: string) => verdict(`vessel "M" { length-overall: ${length}  fuel: diesel }\nnavigation-light N1 { ${facts} }\n`);
oracle('navigation lights', [
    ...rangeRows.flatMap(([length, row]) => Object.entries(row).map(([kind, expected]): CheckValue => ({
        // The keys of the row are kinds of light.
        id: `${length} ${kind}`, says: `${expected} miles`, actual: () => leastRangeNmi(kind as LightKind, si(length)), expected, source: rule22, provenance: 'published',
    }))),
    { id: '12 m', says: '39.37 ft', actual: () => convertTo(12, 'ft'), expected: 39.37, within: 0.005, source: '12 / 0.3048', provenance: 'computed' },
    { id: '20 m', says: '65.62 ft', actual: () => convertTo(20, 'ft'), expected: 65.62, within: 0.005, source: '20 / 0.3048', provenance: 'computed' },
    { id: '7.f under', says: '11.9 m: side light of 1 mile', actual: () => light('11.9 m', 'light: side-port  range: 1 nmi'), expected: 'none', source: rule22, provenance: 'published' },
    { id: '7.f over', says: '12.0 m: side light of 1 mile', actual: () => light('12 m', 'light: side-port  range: 1 nmi'), expected: 'light-range-or-height-short', source: rule22, provenance: 'published' },
    { id: 'height 12 m', says: '2.5 m above the gunwale', actual: () => leastHeight(12)?.leastM, expected: 2.5, source: 'annex I of the rules', provenance: 'memory' },
    { id: 'height under 12 m', says: '1 m above the side lights', actual: () => leastHeight(11.9)?.leastM, expected: 1, source: 'annex I of the rules', provenance: 'memory' },
    { id: 'hidden arc', says: '6 degrees', actual: () => greatestMaskedRad * 180 / Math.PI, expected: 6, within: 1e-9, source: 'annex I of the rules, in a handbook', provenance: 'secondary' },
    { id: 'hidden all-round', says: '7 degrees hidden', actual: () => light('10 m', 'light: all-round  masked: 7 deg'), expected: 'light-out-or-contradictory', source: 'annex I of the rules', provenance: 'secondary' },
    { id: 'hidden anchor light', says: 'is excepted', actual: () => light('10 m', 'light: anchor  masked: 7 deg'), expected: 'none', source: 'annex I of the rules', provenance: 'secondary' },
]);

const rule33 = 'rule 33, international text';
const sound = (m: number) => {
    const { whistle, bell } = soundSignalsNeeded(m);
    return [...(whistle ? ['whistle'] : []), ...(bell ? ['bell'] : [])].join(' ') || 'some means';
};
oracle('sound signals', ([[11.9, 'some means'], [12, 'whistle'], [19.9, 'whistle'], [20, 'whistle bell']] as const).map(([m, expected]): CheckValue => ({ id: `${m} m`, says: expected, actual: () => sound(m), expected, source: rule33, provenance: 'published' })));

const rule159 = '33 CFR 159.7';
const device = (length: string, facts: string) => verdict(`vessel "M" { length-overall: ${length} }\ntreatment-device D1 { certified-type: ${facts} }\n`);
const seacock = (facts: string, waters = 'yes') => verdict(`vessel "M" { no-discharge-waters: ${waters} }\nthrough-hull TH1 { size: 1-1/2 in  metal: gunmetal  below-waterline: 1 ft }\nseacock SC1 { size: 1-1/2 in  metal: gunmetal  pattern: flanged-seacock  works: free  ${facts} }\nholding-tank HT1\nrun R1 { service: toilet-discharge }: TH1 -> SC1 -> HT1\n`);
oracle('sanitation', [
    { id: '7.g', says: '70 ft with a device of type I', actual: () => device('70 ft', 'type-i'), expected: 'treatment-device-wrong', source: rule159, provenance: 'published' },
    { id: 'type I at 65 ft', says: 'is allowed', actual: () => isDeviceAllowed('type-i', si('65 ft')), expected: true, source: rule159, provenance: 'published' },
    { id: 'type I over 65 ft', says: 'is not', actual: () => isDeviceAllowed('type-i', si('65.1 ft')), expected: false, source: rule159, provenance: 'published' },
    { id: 'type II at 70 ft', says: 'is allowed', actual: () => device('70 ft', 'type-ii'), expected: 'none', source: rule159, provenance: 'published' },
    { id: 'shut, handle off', says: 'is secured', actual: () => seacock('position: shut  handle: gone'), expected: 'none', source: '33 CFR 159.7(b)', provenance: 'published' },
    { id: 'padlocked', says: 'is secured', actual: () => seacock('position: shut  secured-by: padlock'), expected: 'none', source: '33 CFR 159.7(b)', provenance: 'published' },
    { id: 'tied', says: 'is secured', actual: () => seacock('position: shut  handle: tied'), expected: 'none', source: '33 CFR 159.7(b)', provenance: 'published' },
    { id: 'open', says: 'is not', actual: () => seacock('position: open'), expected: 'sewage-valve-not-secured', source: '33 CFR 159.7(b)', provenance: 'published' },
    { id: 'open elsewhere', says: 'need not be', actual: () => seacock('position: open', 'no'), expected: 'none', source: '33 CFR 159.7(b)', provenance: 'published' },
]);

const inches = (m: number) => m / 0.0254;
oracle('marks and placards', [
    { id: 'official number', says: '3 in', actual: () => inches(leastLetterM['official-number']), expected: 3, within: 1e-9, source: '46 CFR 67.121, in a pamphlet', provenance: 'secondary' },
    { id: 'name and port', says: '4 in', actual: () => inches(leastLetterM['name-and-port']), expected: 4, within: 1e-9, source: '46 CFR 67.123', provenance: 'published' },
    { id: 'state number', says: '3 in', actual: () => inches(leastLetterM['state-number']), expected: 3, within: 1e-9, source: '33 CFR 173.27', provenance: 'published' },
    { id: 'oil 5 x 8', says: 'is enough', actual: () => isPlacardLargeEnough('oil', si('8 in'), si('5 in')), expected: true, source: '33 CFR 155.450', provenance: 'secondary' },
    { id: 'oil 5 x 7', says: 'is not', actual: () => isPlacardLargeEnough('oil', si('7 in'), si('5 in')), expected: false, source: '33 CFR 155.450', provenance: 'secondary' },
    { id: 'garbage 9 x 4', says: 'is enough', actual: () => isPlacardLargeEnough('garbage', si('9 in'), si('4 in')), expected: true, source: '33 CFR 151.59', provenance: 'published' },
    { id: 'garbage 4 x 9', says: 'is not, for it is to be 9 in wide', actual: () => isPlacardLargeEnough('garbage', si('4 in'), si('9 in')), expected: false, source: '33 CFR 151.59', provenance: 'published' },
]);

const hp = (length: string, transom: string, isRemoteOnHighTransom: boolean, isFlatBottom = false) => convertTo(powerCapacityW({ lengthM: si(length), transomWidthM: si(transom), isRemoteOnHighTransom, isFlatBottom }), 'hp');
const rule53 = '33 CFR 183.53 and table';
oracle('capacity', [
    { id: 'example 1', says: '19 ft 6 in by 84 in, remote, 20 in: 185 hp', actual: () => hp('19.5 ft', '84 in', true), expected: 185, within: 1e-6, source: `${rule53}, worked example on a builders’ page`, provenance: 'published' },
    { id: 'example 2', says: '12 ft by 46 in, tiller: 15 hp', actual: () => hp('12 ft', '46 in', false), expected: 15, within: 1e-6, source: `${rule53}, worked example on a builders’ page`, provenance: 'published' },
    { id: 'factor', says: '12 ft by 46 in: 46', actual: () => powerFactor(si('12 ft'), si('46 in')), expected: 46, within: 1e-9, source: rule53, provenance: 'computed' },
    ...([[35, 3], [36, 5], [39, 5], [40, 7.5], [42, 7.5], [43, 10], [45, 10], [46, 15], [52, 15]] as const).map(([factor, expected]): CheckValue => ({
        id: `factor ${factor}`, says: `${expected} hp`, actual: () => hp('10 ft', `${factor / 10} ft`, false), expected, within: 1e-6, source: rule53, provenance: 'published',
    })),
    { id: 'flat 46', says: 'one step lower, 10 hp', actual: () => hp('10 ft', '4.6 ft', false, true), expected: 10, within: 1e-6, source: rule53, provenance: 'published' },
    { id: 'tiller 100', says: '0.8 x 100 - 25 = 55 hp', actual: () => hp('16 ft', '6.25 ft', false), expected: 55, within: 1e-6, source: rule53, provenance: 'published' },
    { id: 'flat 100', says: '0.5 x 100 - 15 = 35 hp', actual: () => hp('16 ft', '6.25 ft', false, true), expected: 35, within: 1e-6, source: rule53, provenance: 'published' },
    { id: 'remote 100', says: '2 x 100 - 90 = 110 hp', actual: () => hp('16 ft', '6.25 ft', true), expected: 110, within: 1e-6, source: rule53, provenance: 'published' },
    { id: 'persons 955 lb', says: '(955 + 32) / 141 = 7', actual: () => personsOfLoad(si('955 lb')), expected: 7, source: '33 CFR 183.41(b)', provenance: 'published' },
    { id: 'persons half', says: 'a half goes up: 461.5 lb is 4', actual: () => personsOfLoad(si('461.5 lb')), expected: 4, source: '33 CFR 183.41(b)', provenance: 'published' },
    { id: 'persons under half', says: '461 lb is 3', actual: () => personsOfLoad(si('461 lb')), expected: 3, source: '33 CFR 183.41(b)', provenance: 'published' },
]);

const read = (text: string, yearOfReading?: number): string => {
    const number = decodeHullNumber(text, yearOfReading);
    return number.ok ? `${number.form} ${number.builtYear}-${String(number.month).padStart(2, '0')}${number.modelYear === undefined ? '' : ` model ${number.modelYear}`}` : `bad ${number.problem}`;
};
const rule25 = '33 CFR 181.25';
oracle('hull numbers, all forms', [
    ...([...'ABCDEFGHIJKL'].map((letter, i): CheckValue => ({ id: `month ${letter}`, says: `is ${i + 1} in the present form`, actual: () => read(`ABC12345${letter}494`), expected: `current 1994-${String(i + 1).padStart(2, '0')} model 1994`, source: rule25, provenance: 'published' }))),
    ...([['A', 1977, 8], ['B', 1977, 9], ['C', 1977, 10], ['D', 1977, 11], ['E', 1977, 12], ['F', 1978, 1], ['G', 1978, 2], ['H', 1978, 3], ['I', 1978, 4], ['J', 1978, 5], ['K', 1978, 6], ['L', 1978, 7]] as const).map(([letter, year, month]): CheckValue => ({
        id: `model-year ${letter}`, says: `${year}-${month} of model year 1978`, actual: () => read(`ABC12345M78${letter}`), expected: `model-year ${year}-${String(month).padStart(2, '0')} model 1978`, source: `${rule25} as it stood to July 1984`, provenance: 'published',
    })),
    ...([['0178', 'straight-year 1978-01'], ['1278', 'straight-year 1978-12'], ['1378', 'bad date'], ['0078', 'bad date'], ['0784', 'straight-year 1984-07'], ['0190', 'bad date']] as const).map(([date, expected]): CheckValue => ({
        id: `straight ${date}`, says: expected, actual: () => read(`ABC12345${date}`), expected, source: `${rule25} as it stood to July 1984`, provenance: 'published',
    })),
    { id: 'present form in 1982', says: 'fits no rule', actual: () => read('ABC12345B282'), expected: 'bad date', source: `${rule25}, form in force since 1 August 1984`, provenance: 'published' },
    { id: 'present form in August 1984', says: 'is read', actual: () => read('ABC12345H484'), expected: 'current 1984-08 model 1984', source: `${rule25}, form in force since 1 August 1984`, provenance: 'published' },
    { id: 'built after the model year', says: 'by a year at most', actual: () => read('ABC12345A504'), expected: 'current 2005-01 model 2004', source: 'order of decoding', provenance: 'chosen' },
    { id: 'across the decade', says: 'December 1999 of model 2000', actual: () => read('ABC12345L900'), expected: 'current 1999-12 model 2000', source: rule25, provenance: 'published' },
    { id: 'far ahead', says: 'model 2065 is told as none in 2026', actual: () => read('ABC12345C565', 2026), expected: 'bad date', source: 'order of decoding', provenance: 'chosen' },
    { id: 'prefix with hyphen', says: 'stands outside the twelve', actual: () => read('US-ABC12345H495'), expected: 'current 1994-08 model 1995', source: '33 CFR 181.27', provenance: 'published' },
    { id: 'prefix without hyphen', says: 'is left out as well', actual: () => read('USABC12345H495'), expected: 'current 1994-08 model 1995', source: 'order of decoding', provenance: 'chosen' },
    ...(['I', 'O', 'Q'] as const).map((letter): CheckValue => ({ id: `${letter} in the serial`, says: 'is never used', actual: () => read(`ABC12${letter}45A090`), expected: 'bad serial', source: rule25, provenance: 'published' })),
    ...([['ABC12345H49', 11], ['ABC12345H4955', 13]] as const).map(([text, count]): CheckValue => ({ id: `8.j ${count}`, says: `${count} characters`, actual: () => read(text), expected: 'bad length', source: rule25, provenance: 'published' })),
    { id: 'boat of 1970', says: 'has no set form', actual: () => verdict('vessel "M" { hull-number: "4711"  built: 1970 }\n'), expected: 'none', source: `${rule25}, from 1 November 1972 on`, provenance: 'published' },
]);

const flameRule = '46 CFR 25.35-1, backfire flame control';
oracle('flame control of gasoline engines', [
    { id: '7.h', says: '27 ft, gasoline inboard without a flame arrester', actual: () => verdict('vessel "M" { length-on-deck: 27 ft  fuel: gasoline }\nmain-engine E1 { flame-arrester: no }\n'), expected: 'flame-control-missing', source: flameRule, provenance: 'published' },
    { id: '7.h outboard', says: '27 ft, gasoline outboard without one', actual: () => verdict('vessel "M" { length-on-deck: 27 ft  fuel: gasoline }\noutboard O1 { flame-arrester: no }\n'), expected: 'none', source: flameRule, provenance: 'published' },
    { id: '7.h fitted', says: 'the same inboard with one', actual: () => verdict('vessel "M" { length-on-deck: 27 ft  fuel: gasoline }\nmain-engine E1 { flame-arrester: yes }\n'), expected: 'none', source: flameRule, provenance: 'published' },
    { id: '7.h before', says: 'an inboard installed on 25 April 1940', actual: () => verdict('vessel "M" { length-on-deck: 27 ft  fuel: gasoline }\nmain-engine E1 { flame-arrester: no  fitted: 1940-04-25 }\n'), expected: 'none', source: flameRule, provenance: 'published' },
]);
