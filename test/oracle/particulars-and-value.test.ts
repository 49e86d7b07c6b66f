import { adjustedPrice, grossShare, netShare, plainMean, roundedTo, roundingStep, spreadShare, weightedMean, weightedSum, weightsMakeUpOne, weightSum } from '../../src/trade/comparables.js';
import { blockCoefficient, displacementLengthRatio, speedLengthRatio } from '../../src/trade/hull-speed.js';
import { amountsInText, numberFromWords, numberInWords } from '../../src/trade/number-words.js';
import { conversionAgrees, fuelShare, writtenStep } from '../../src/trade/plausible-particulars.js';
import { documentedFromNetTons, grossTons, netTons, tonsAgree, toTenthOfFootM, type HullForm } from '../../src/trade/tonnage.js';
import { idsOf, judged, analyseText } from '../checks/check-text.js';
import { si } from './si.js';
import { oracle } from './table.js';

const raises = (text: string): string => idsOf(judged(analyseText(text).problems)).join(' ');
const vessel = (facts: string): string => raises(`vessel "Marram" { ${facts} }\n`);

const office = '46 CFR 69.209';
const unit = (form: HullForm): number => grossTons({ lengthM: si('100 ft'), beamM: si('1 ft'), depthM: si('1 ft'), form });
oracle('tonnage of a vessel as recorded', [
    ...([['sailing', 0.5, 0.9], ['sailing-keel-in-depth', 0.375, 0.9], ['ship', 0.67, 0.8], ['box', 0.84, 0.8]] as const).flatMap(([form, gross, net]) => [
        { id: `${form} gross`, says: `${gross} LBD/100`, actual: () => unit(form), expected: gross, within: 1e-9, source: office, provenance: 'published' as const },
        { id: `${form} net`, says: `${net} of gross with machinery in the hull`, actual: () => netTons(1, form, true), expected: net, within: 1e-9, source: office, provenance: 'published' as const },
        { id: `${form} net without`, says: 'all of gross with none', actual: () => netTons(1, form, false), expected: 1, within: 1e-9, source: office, provenance: 'published' as const },
    ]),
    { id: 'tenth', says: '12.56 ft is taken as 12.6', actual: () => toTenthOfFootM(si('12.56 ft')) / 0.3048, expected: 12.6, within: 1e-9, source: '46 CFR 69.203, a measuring office’s sheet', provenance: 'published' },
    { id: 'whole', says: '17.64 is 17 on a certificate', actual: () => tonsAgree(17, 17.64), expected: true, source: '46 CFR 69, result cut to a whole ton', provenance: 'memory' },
    { id: 'documented', says: 'from 5 net tons', actual: () => documentedFromNetTons, expected: 5, source: '46 CFR 67', provenance: 'memory' },
    { id: '9.a verdict', says: 'sailing 40 x 12.6 x 7.0 ft: 17 gross and 15 net agree', actual: () => vessel('type: sailing-yacht  engine-in-hull: yes  length-on-deck: 40 ft  beam: 12.6 ft  depth: 7 ft  gross-tonnage: 17  net-tonnage: 15'), expected: '', source: office, provenance: 'computed' },
    { id: '9.b verdict', says: 'without an engine 17 net agree, 15 do not', actual: () => [17, 15].map(net => vessel(`type: sailing-yacht  engine-in-hull: no  length-on-deck: 40 ft  beam: 12.6 ft  depth: 7 ft  net-tonnage: ${net}`)).join('|'), expected: '|tonnage-disagrees', source: office, provenance: 'computed' },
    { id: '9.c verdict', says: 'motor 42.3 x 14.2 x 7.8 ft: 31 gross and 25 net agree, 41 gross do not', actual: () => [31, 41].map(gross => vessel(`type: motor-yacht  engine-in-hull: yes  length-on-deck: 42.3 ft  beam: 14.2 ft  depth: 7.8 ft  gross-tonnage: ${gross}  net-tonnage: 25`)).join('|'), expected: '|tonnage-disagrees', source: office, provenance: 'computed' },
    { id: '9.d verdict', says: 'keel in the depth, 36.5 x 11.8 x 9.0 ft: 14 gross and 13 net agree', actual: () => vessel('type: sailing-yacht  tonnage-form: sailing-keel-in-depth  engine-in-hull: yes  length-on-deck: 36.5 ft  beam: 11.8 ft  depth: 9 ft  gross-tonnage: 14  net-tonnage: 13'), expected: '', source: office, provenance: 'computed' },
    { id: '9.e verdict', says: '32 ft of waterline: 7.58 kn is plausible, 10 kn is not', actual: () => ['7.58 kn', '10 kn'].map(speed => vessel(`running: displacement  length-waterline: 32 ft  top-speed: ${speed}`)).join('|'), expected: '|figure-not-plausible', source: '1.5 sqrt(LWL ft)', provenance: 'practice' },
    { id: '9.f', says: '18 000 lb on 32 ft is between light and heavy', actual: () => { const ratio = displacementLengthRatio(si('18000 lb'), si('32 ft')); return ratio > 100 && ratio < 350; }, expected: true, source: 'long tons over (0.01 LWL)^3', provenance: 'practice' },
]);

const fourths = { si: si('5/32 in'), stepSi: writtenStep('5/32') };
oracle('plausible particulars', [
    { id: 'block', says: '10 x 4 x 1 m at 20.5 t: 0.5', actual: () => blockCoefficient(20500, 10, 4, 1), expected: 0.5, within: 1e-9, source: 'mass / (1025 L B T)', provenance: 'computed' },
    { id: 'ratio', says: '9 kn on 36 ft: 1.5', actual: () => speedLengthRatio(si('9 kn'), si('36 ft')), expected: 1.5, within: 1e-9, source: 'kn / sqrt(ft)', provenance: 'computed' },
    { id: 'fuel', says: '1000 L of diesel in 10 t: 8.4 %', actual: () => 100 * (fuelShare(1, 'diesel', 10000) ?? 0), expected: 8.4, within: 1e-9, source: '840 kg/m3', provenance: 'memory' },
    { id: '11.e', says: '5/32 in is not 5.0 mm', actual: () => conversionAgrees(fourths, { si: 0.005, stepSi: { last: 0.0001, rounded: 0.0001 } }), expected: false, source: '1 in is 25.4 mm', provenance: 'computed' },
    { id: '11.e right', says: 'but is 4.0 mm, rounded', actual: () => conversionAgrees(fourths, { si: 0.004, stepSi: { last: 0.0001, rounded: 0.0001 } }), expected: true, source: '1 in is 25.4 mm', provenance: 'computed' },
    { id: '11.e verdict', says: 'and is found in a note', actual: () => raises('vessel "Marram" {\n    note "Plate gauged at 5/32 in (5.0 mm)."\n}\n'), expected: 'dimension-disagrees', source: '1 in is 25.4 mm', provenance: 'computed' },
]);

interface Column { readonly sold: number; readonly adjustments: readonly number[]; readonly weight: number }
const a: Column = { sold: 84000, adjustments: [1680, 0, -2500, 1000], weight: 0.5 };
const b: Column = { sold: 79500, adjustments: [3975, 4000, 1500, 0], weight: 0.2 };
const c: Column = { sold: 91000, adjustments: [910, -3500, -4000, -2000], weight: 0.3 };
const columns = [a, b, c];
const adjusted = ({ sold, adjustments }: Column): number => adjustedPrice(sold, adjustments);
const weighed = columns.map(column => ({ adjusted: adjusted(column), weight: column.weight }));
const example = 'worked example of three sales';
const ladder = (words: string, change: (text: string) => string = text => text): string => raises(change(`valuation {
    effective: 2026-06-15  opinion: 84500 USD  opinion-words: "${words}"  cost-approach: "A ceiling"  income-approach: "Not hired"
${columns.map((column, index) => `    comparable ${'ABC'.charAt(index)} { sold: ${column.sold} USD  sold-on: 2026-02  ${column.adjustments.map((amount, step) => `adjust "${['Time', 'Engine', 'Gear', 'State'][step] ?? ''}": ${amount} USD`).join('  ')}  adjusted: ${adjusted(column)} USD  weight: ${column.weight} }`).join('\n')}
}
`));
oracle('valuation by comparison', [
    { id: '13.a', says: 'weighted mean 84 608', actual: () => weightedMean(weighed), expected: 84608, within: 1, source: example, provenance: 'computed' },
    { id: '13.a sum', says: 'the weighted sum is the same', actual: () => weightedSum(weighed), expected: 84608, within: 1, source: example, provenance: 'computed' },
    { id: '13.b', says: 'rounded to 500: 84 500', actual: () => roundedTo(weightedMean(weighed) ?? 0, 500), expected: 84500, source: 'round to the nearest 500 or 1000', provenance: 'practice' },
    { id: '13.b step', says: 'under 100 000 the step is 500', actual: () => roundingStep(84608), expected: 500, source: 'round to the nearest 500 or 1000', provenance: 'practice' },
    { id: '13.c', says: 'weights sum to 1.00', actual: () => weightSum(columns.map(column => column.weight)), expected: 1, within: 1e-9, source: example, provenance: 'computed' },
    { id: '13.c not', says: '0.5, 0.2, 0.4 do not make up 1', actual: () => weightsMakeUpOne([0.5, 0.2, 0.4]), expected: false, source: example, provenance: 'computed' },
    { id: '13.c verdict', says: 'and are found', actual: () => ladder('eighty-four thousand five hundred', text => text.replace('weight: 0.3', 'weight: 0.4')), expected: 'comparable-sum-wrong', source: example, provenance: 'computed' },
    { id: '13.d', says: 'figure and words agree', actual: () => ladder('Eighty-four thousand five hundred US dollars'), expected: '', source: example, provenance: 'practice' },
    { id: '13.d not', says: 'and where they do not, it is found', actual: () => ladder('Eighty-four thousand US dollars'), expected: 'value-words-figures-differ', source: example, provenance: 'practice' },
    { id: '13.e', says: 'plain mean 85 188', actual: () => plainMean(columns.map(adjusted)), expected: 85188, within: 1, source: example, provenance: 'computed' },
    { id: '13.f', says: 'adjusted B 88 975', actual: () => adjusted(b), expected: 88975, source: example, provenance: 'computed' },
    { id: 'adjusted A', says: '84 180', actual: () => adjusted(a), expected: 84180, source: example, provenance: 'computed' },
    { id: 'adjusted C', says: '82 410', actual: () => adjusted(c), expected: 82410, source: example, provenance: 'computed' },
    { id: 'gross A', says: '6.2 %', actual: () => 100 * (grossShare(a.sold, a.adjustments) ?? 0), expected: 6.2, within: 0.05, source: example, provenance: 'computed' },
    { id: 'gross B', says: '11.9 %', actual: () => 100 * (grossShare(b.sold, b.adjustments) ?? 0), expected: 11.9, within: 0.05, source: example, provenance: 'computed' },
    { id: 'gross C', says: '11.4 %', actual: () => 100 * (grossShare(c.sold, c.adjustments) ?? 0), expected: 11.4, within: 0.05, source: example, provenance: 'computed' },
    { id: 'net A', says: '180 of 84 000, 0.2 %', actual: () => 100 * (netShare(a.sold, a.adjustments) ?? 0), expected: 0.214, within: 0.001, source: example, provenance: 'computed' },
    { id: 'spread', says: '6 565 over 85 188, 7.7 %', actual: () => 100 * (spreadShare(columns.map(adjusted)) ?? 0), expected: 7.7, within: 0.05, source: example, provenance: 'computed' },
    { id: 'two sales', says: 'fewer than three are weak', actual: () => ladder('eighty-four thousand five hundred', text => text.replace(/ {4}comparable C .*\n/, '').replace('weight: 0.2', 'weight: 0.5')), expected: 'comparable-too-weak', source: 'three the usual floor', provenance: 'practice' },
    { id: 'no income', says: 'an approach neither used nor explained is found', actual: () => ladder('eighty-four thousand five hundred', text => text.replace('  income-approach: "Not hired"', '')), expected: 'comparable-too-weak', source: 'USPAP, three approaches', provenance: 'memory' },
]);

const usage = 'usage of checks and contracts';
oracle('numbers in words', [
    ...([[0, 'zero'], [13, 'thirteen'], [21, 'twenty-one'], [100, 'one hundred'], [305, 'three hundred five'], [76000, 'seventy-six thousand'], [84500, 'eighty-four thousand five hundred'], [1005, 'one thousand five'], [1_200_000, 'one million two hundred thousand']] as const).flatMap(([value, words]) => [
        { id: `${value} in words`, says: words, actual: () => numberInWords(value), expected: words, source: usage, provenance: 'practice' as const },
        { id: `${value} from words`, says: words, actual: () => numberFromWords(words), expected: value, source: usage, provenance: 'practice' as const },
    ]),
    { id: 'seventeen hundred', says: '1700', actual: () => numberFromWords('seventeen hundred'), expected: 1700, source: usage, provenance: 'practice' },
    { id: 'and', says: 'two hundred and six thousand and ten is 206 010', actual: () => numberFromWords('two hundred and six thousand and ten'), expected: 206010, source: usage, provenance: 'practice' },
    { id: 'nonsense', says: 'two one is no number', actual: () => numberFromWords('two one'), expected: undefined, source: usage, provenance: 'practice' },
    { id: 'hundredths', says: 'seventy-six thousand and 50/100 dollars', actual: () => amountsInText('Seventy-six thousand and 50/100 dollars')[0]?.amount, expected: 76000.5, source: usage, provenance: 'practice' },
    { id: 'million', says: '$1.25 million', actual: () => amountsInText('about $1.25 million')[0]?.amount, expected: 1_250_000, source: usage, provenance: 'practice' },
]);
