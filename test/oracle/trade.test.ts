import { convertTo, parseFigure } from '../../src/quantities/index.js';
import { coolantBoilingK, coolantFreezingByMassK, coolantFreezingK, exchangedVolumeM3, massShare, type Glycol } from '../../src/trade/coolant.js';
import { disposableExpiry, extinguishersNeeded } from '../../src/trade/extinguishers.js';
import { coupleStep, isApartInAir, midV, potentialDifferenceV } from '../../src/trade/galvanic.js';
import { hoseFit, isSameNominalSize } from '../../src/trade/hose-fit.js';
import { decodeHullNumber } from '../../src/trade/hull-number.js';
import { judgeHullPotential } from '../../src/trade/hull-potential.js';
import { inflowM3s } from '../../src/trade/orifice-inflow.js';
import { judgeThreads, nptEffectiveLengthIn, nptPitchDiameterE1In, nptSize, pipeOutsideM, threadsPerInch } from '../../src/trade/pipe-thread.js';
import { usableFlowM3s } from '../../src/trade/pump.js';
import { convertPotentialV } from '../../src/trade/reference-electrode.js';
import { vocabularyOf } from '../../src/record/vocabulary.js';
import { catalogueSources } from '../../src/record/catalogue.js';
import { oracle, type CheckValue } from './table.js';

const si = (written: string): number => {
    const parsed = parseFigure(written);
    return parsed.ok && parsed.figure.kind === 'quantity' ? parsed.figure.si : Number.NaN;
};
const gpm = (bore: string, depth: string, dischargeCoefficient: number) => convertTo(inflowM3s({ boreM: si(bore), depthM: si(depth), dischargeCoefficient }), 'gpm');
const formula = 'Q = Cd A sqrt(2 g h)';

// A table that circulates among boat owners; it is frictionless flow, Cd 1 to within 1.2 %.
const owners: readonly (readonly [depthFt: number, byBore: Readonly<Record<string, number>>])[] = [
    [1, { '1 in': 19.4, '1-1/2 in': 43.8, '2 in': 77.9, '3 in': 175.3, '4 in': 311.6 }],
    [2, { '1 in': 27.8, '1-1/2 in': 62.5, '2 in': 111.1, '3 in': 250.0, '4 in': 444.4 }],
    [3, { '1 in': 33.9, '1-1/2 in': 76.3, '2 in': 135.7, '3 in': 305.3, '4 in': 542.8 }],
    [4, { '1 in': 39.3, '1-1/2 in': 88.4, '2 in': 157.1, '3 in': 353.5, '4 in': 628.4 }],
];

oracle('inflow through openings', [
    { id: '1.a', says: '1-1/2 in, 14 in deep, Cd 0.6', actual: () => gpm('1-1/2 in', '14 in', 0.6), expected: 28.6, within: 0.286, source: formula, provenance: 'computed' },
    { id: '1.b', says: 'the same at Cd 1', actual: () => gpm('1-1/2 in', '14 in', 1), expected: 47.7, within: 0.477, source: formula, provenance: 'computed' },
    { id: '1.d', says: '38 mm, 0.36 m, Cd 0.6, L/min', actual: () => convertTo(inflowM3s({ boreM: 0.038, depthM: 0.36 }), 'L/min'), expected: 108.5, within: 1.08, source: formula, provenance: 'computed' },
    { id: '1.e', says: '2000 gph at half moves less than a 1 in hole at 3 ft admits', actual: () => usableFlowM3s(si('2000 gph')) < inflowM3s({ boreM: si('1 in'), depthM: si('3 ft') }), expected: true, source: 'a magazine: real output about half the box', provenance: 'published' },
    { id: '1.g', says: 'a seacock’s 500 lbf is 226.8 kgf', actual: () => convertTo(si('500 lbf'), 'kgf'), expected: 226.8, within: 0.05, source: 'ABYC H-27, two magazines', provenance: 'secondary' },
    { id: '1.h', says: 'a sailing magazine prints 47 gpm for 2 in at 1 ft, a sharp-edged hole', actual: () => gpm('2 in', '1 ft', 0.6), expected: 47, within: 0.3, source: 'sailing magazine', provenance: 'published' },
    { id: '1.i', says: 'a sailing page prints 75 gpm for 1-1/2 in at 3 ft, frictionless', actual: () => gpm('1-1/2 in', '3 ft', 1), expected: 75, within: 2, source: 'sailing page', provenance: 'published' },
    ...owners.flatMap(([depth, row]) => Object.entries(row).map(([bore, expected]): CheckValue => ({
        id: `owners ${bore} ${depth} ft`, says: `${expected} gpm`, actual: () => gpm(bore, `${depth} ft`, 1), expected, within: expected * 0.013, source: 'yacht-club page, Cd 1', provenance: 'published',
    }))),
]);

const asme = 'three suppliers after ASME B1.20.1';
oracle('hose and pipe', [
    { id: '2.a', says: '1-1/2 in hose on a 1-1/4 in tail is loose', actual: () => hoseFit({ boreM: si('1-1/2 in'), spigotM: si('1-1/4 in') }), expected: 'loose', source: '33 CFR 183.558 Table 8', provenance: 'memory' },
    { id: '2.b', says: '38 mm hose on a 1-1/2 in tail fits', actual: () => hoseFit({ boreM: si('38 mm'), spigotM: si('1-1/2 in') }), expected: 'fits', source: 'difference 0.10 mm', provenance: 'computed' },
    { id: '2.c', says: '50 mm hose on a 2 in tail fits', actual: () => hoseFit({ boreM: si('50 mm'), spigotM: si('2 in') }), expected: 'fits', source: 'push fit to 1.6 mm', provenance: 'chosen' },
    { id: '2.d L2', says: '1-1/2 NPT, L2 0.7235 in', actual: () => nptEffectiveLengthIn(nptSize(1.5) ?? { sizeIn: 0, pipeIn: 0, threadsPerInch: 1, l1In: 0 }), expected: 0.7235, within: 0.0005, source: asme, provenance: 'published' },
    { id: '2.d E1', says: '1-1/2 NPT, E1 1.82234 in', actual: () => nptPitchDiameterE1In(nptSize(1.5) ?? { sizeIn: 0, pipeIn: 0, threadsPerInch: 1, l1In: 0 }), expected: 1.82234, within: 0.0005, source: asme, provenance: 'published' },
    { id: '2.e', says: '2 in pipe measures 60.33 mm outside', actual: () => (pipeOutsideM(2) ?? 0) * 1000, expected: 60.33, within: 0.01, source: asme, provenance: 'published' },
    { id: '2.f', says: 'G 1 into NPT 1 does not mate', actual: () => judgeThreads({ male: 'bspp', female: 'npt' }), expected: 'other-family', source: '55 against 60 degrees', provenance: 'published' },
    { id: '2.f pitch', says: '11 against 11.5 threads an inch at 1 in', actual: () => `${threadsPerInch('bspp', 1)} ${threadsPerInch('npt', 1)}`, expected: '11 11.5', source: 'ISO 228-1 and ASME B1.20.1', provenance: 'published' },
    { id: '2.g', says: 'straight stem in a tapered valve', actual: () => judgeThreads({ male: 'nps', female: 'npt' }), expected: 'straight-into-taper', source: 'two cruising pages: two or three turns', provenance: 'published' },
    { id: '2.h', says: '1/2 in: both families have 14 threads', actual: () => threadsPerInch('bspp', 0.5) === threadsPerInch('npt', 0.5), expected: true, source: 'ISO 228-1 and ASME B1.20.1', provenance: 'published' },
    ...([[1 / 4, 0.402], [3 / 8, 0.408], [1 / 2, 0.534], [3 / 4, 0.546], [1, 0.683], [1.25, 0.707], [2, 0.757], [2.5, 1.138], [3, 1.2], [4, 1.3]] as const).map(([size, l2]): CheckValue => ({
        id: `L2 ${size}`, says: `${l2} in`, actual: () => nptEffectiveLengthIn(nptSize(size) ?? { sizeIn: 0, pipeIn: 0, threadsPerInch: 1, l1In: 0 }), expected: l2, within: 0.0006, source: asme, provenance: 'published',
    })),
    ...([['1-1/4 in', '32 mm'], ['1-1/2 in', '38 mm'], ['1 in', '25 mm'], ['3/4 in', '19 mm'], ['2 in', '51 mm'], ['2 in', '50 mm'], ['4 in', '102 mm']] as const).map(([a, b]): CheckValue => ({
        id: `${a} = ${b}`, says: 'is one hose size', actual: () => isSameNominalSize(si(a), si(b)), expected: true, source: 'sizes as sold', provenance: 'practice',
    })),
    { id: '1-1/4 in, 38 mm', says: 'are two hose sizes', actual: () => isSameNominalSize(si('1-1/4 in'), si('38 mm')), expected: false, source: 'sizes as sold', provenance: 'practice' },
]);

const { vocabulary } = vocabularyOf(catalogueSources());
/** A range of potentials as the catalogue's yardsticks give it. */
const rangeOf = (name: string) => {
    const value = vocabulary.yardsticks.get(name)?.fact.values[0];
    return value?.type === 'quantity' ? { fromV: value.high ?? value.si, toV: value.low ?? value.si } : { fromV: Number.NaN, toV: Number.NaN };
};
const mid = (id: string, active = false): number => {
    const material = vocabulary.materials.get(id);
    const range = active ? material?.activePotentialV : material?.potentialV;
    return range ? midV(range) : Number.NaN;
};
const apart = (a: string, b: string): number => {
    const [x, y] = [vocabulary.materials.get(a)?.potentialV, vocabulary.materials.get(b)?.potentialV];
    return x && y ? potentialDifferenceV(x, y) : Number.NaN;
};
const series = 'galvanic series of a corrosion society’s bulletin';
oracle('metals', [
    { id: '3.a', says: 'silicon bronze and mild steel, 0.39 V', actual: () => apart('silicon-bronze', 'mild-steel'), expected: 0.39, within: 0.01, source: series, provenance: 'published' },
    { id: '3.b', says: 'gunmetal and silicon bronze, 0.01 V', actual: () => apart('gunmetal', 'silicon-bronze'), expected: 0.01, within: 0.01, source: series, provenance: 'published' },
    { id: '3.c', says: '316 passive and 5083 aluminum, 0.83 V', actual: () => apart('stainless-316', 'aluminum-5083'), expected: 0.83, within: 0.01, source: series, provenance: 'published' },
    { id: '3.d', says: '316 passive to active, 0.345 V', actual: () => mid('stainless-316') - mid('stainless-316', true), expected: 0.345, within: 0.01, source: series, provenance: 'published' },
    { id: '3.e', says: '-0.850 V copper sulfate is -0.773 V calomel', actual: () => convertPotentialV(-0.85, 'copper-sulfate', 'calomel'), expected: -0.773, within: 0.003, source: '0.318 and 0.241 V against hydrogen', provenance: 'published' },
    { id: '3.e2', says: '+0.100 V calomel is +0.142 V saturated silver chloride', actual: () => convertPotentialV(0.1, 'calomel', 'silver-chloride-saturated'), expected: 0.142, within: 0.001, source: 'printed worked example', provenance: 'published' },
    { id: '3.f wood', says: '-820 mV over-protects wood', actual: () => judgeHullPotential(-0.82, rangeOf('potential-wood')), expected: 'over-protected', source: 'anode trade page', provenance: 'secondary' },
    { id: '3.f steel', says: '-820 mV is in range for steel', actual: () => judgeHullPotential(-0.82, rangeOf('potential-steel')), expected: 'in-range', source: 'anode trade page', provenance: 'secondary' },
    { id: '3.h', says: 'tin bronze and nickel-copper, about 0.195 V', actual: () => apart('gunmetal', 'nickel-copper'), expected: 0.195, within: 0.005, source: series, provenance: 'published' },
    { id: '3.i', says: 'that pair is no problem', actual: () => coupleStep({ differenceV: apart('gunmetal', 'nickel-copper') }), expected: 0, source: 'limit 0.20 V, ABYC E-2 topic', provenance: 'secondary' },
    { id: '3.j', says: '0.20 V is too far apart in salt air', actual: () => isApartInAir(0.2, 'weather'), expected: true, source: 'tooling maker’s guide on the anodic index, 0.15 V', provenance: 'published' },
    { id: '3.k', says: '0.20 V is allowed indoors', actual: () => isApartInAir(0.2, 'indoors'), expected: false, source: 'the same, 0.25 V', provenance: 'published' },
    { id: '3.l', says: '0.55 V is too far apart in a controlled climate', actual: () => isApartInAir(0.55, 'controlled'), expected: true, source: 'the same, 0.50 V', provenance: 'published' },
    { id: '3.a step', says: 'silicon bronze and steel are to be protected', actual: () => coupleStep({ differenceV: apart('silicon-bronze', 'mild-steel') }), expected: 1, source: 'limit 0.20 V, ABYC E-2 topic', provenance: 'secondary' },
    { id: '3.c step', says: '316 and aluminum are a fault whatever the anode', actual: () => coupleStep({ differenceV: apart('stainless-316', 'aluminum-5083'), anodeLeft: 1 }), expected: 2, source: 'limit 0.40 V', provenance: 'practice' },
    ...([['titanium', 0.01], ['stainless-304', -0.07], ['nickel-copper', -0.085], ['nickel-aluminum-bronze', -0.18], ['copper-nickel-70-30', -0.205], ['copper-nickel-90-10', -0.25], ['manganese-bronze', -0.3], ['copper', -0.335], ['aluminum-bronze', -0.355], ['mild-steel', -0.66], ['aluminum', -0.88], ['zinc', -1.005], ['magnesium', -1.615], ['lead', -0.22]] as const).map(([id, expected]): CheckValue => ({
        id: `mid ${id}`, says: `${expected} V`, actual: () => mid(id), expected, within: 0.001, source: series, provenance: 'published',
    })),
]);

const celsius = (k: number): number => k - 273.15;
oracle('coolant', [
    { id: '4.a', says: '50 % ethylene freezes at -37 C', actual: () => celsius(coolantFreezingK('ethylene', 0.5)), expected: -37, within: 2, source: 'engine maker’s manual', provenance: 'published' },
    { id: '4.a60', says: '60 % ethylene freezes at about -50 C', actual: () => celsius(coolantFreezingK('ethylene', 0.6)), expected: -50, within: 3, source: 'engine maker’s manual', provenance: 'published' },
    { id: '4.b', says: '50 % propylene freezes at -33.5 C', actual: () => celsius(coolantFreezingK('propylene', 0.5)), expected: -33.5, within: 2, source: 'chemistry data handbook', provenance: 'published' },
    { id: '4.c', says: '30 % ethylene freezes at -15.7 C', actual: () => celsius(coolantFreezingK('ethylene', 0.3)), expected: -15.7, within: 2, source: 'open property library', provenance: 'computed' },
    { id: '4.d', says: '85 % ethylene freezes warmer than 60 %', actual: () => coolantFreezingK('ethylene', 0.85) > coolantFreezingK('ethylene', 0.6), expected: true, source: 'engine maker’s table', provenance: 'published' },
    { id: '4.d80', says: '80 % freezes at -45 C', actual: () => celsius(coolantFreezingK('ethylene', 0.8)), expected: -45, within: 3, source: 'engine maker’s table', provenance: 'published' },
    { id: '4.e', says: '12 L from 30 to 50 % with concentrate: drain 3.43 L', actual: () => (exchangedVolumeM3({ volumeM3: 0.012, share: 0.3, targetShare: 0.5, addedShare: 1 }) ?? 0) * 1000, expected: 3.43, within: 0.02, source: 'x = V (ct - c0) / (ca - c0)', provenance: 'computed' },
    { id: '4.f', says: '12 L from 75 to 50 % with water: drain 4.00 L', actual: () => (exchangedVolumeM3({ volumeM3: 0.012, share: 0.75, targetShare: 0.5, addedShare: 0 }) ?? 0) * 1000, expected: 4, within: 0.02, source: 'x = V (ct - c0) / (ca - c0)', provenance: 'computed' },
    { id: '4.g', says: '12 L from 30 to 45 % with premix: drain 9.00 L', actual: () => (exchangedVolumeM3({ volumeM3: 0.012, share: 0.3, targetShare: 0.45, addedShare: 0.5 }) ?? 0) * 1000, expected: 9, within: 0.02, source: 'x = V (ct - c0) / (ca - c0)', provenance: 'computed' },
    { id: '4.g2', says: '50 % with premix only by a full change', actual: () => exchangedVolumeM3({ volumeM3: 0.012, share: 0.3, targetShare: 0.5, addedShare: 0.5 }), expected: undefined, source: 'x = V (ct - c0) / (ca - c0)', provenance: 'computed' },
    { id: '4.h', says: '50 % by volume of ethylene is 52.7 % by mass', actual: () => massShare('ethylene', 0.5) * 100, expected: 52.7, within: 0.1, source: 'densities 1.113 and 0.998', provenance: 'computed' },
    { id: '4.i', says: '50 % boils at 107.2 C', actual: () => celsius(coolantBoilingK(0.5)), expected: 107.2, within: 2, source: 'ASHRAE-type tables', provenance: 'memory' },
    { id: '4.j', says: 'pure glycol boils at 197 C', actual: () => celsius(coolantBoilingK(1)), expected: 197, within: 2, source: 'car maker’s bulletin', provenance: 'published' },
    ...([['ethylene', 0.3, -14.6], ['ethylene', 0.5, -36], ['ethylene', 0.6, -51.2], ['propylene', 0.3, -12.8], ['propylene', 0.5, -32.2], ['propylene', 0.6, -50]] as const).map(([glycol, share, expected]): CheckValue => ({
        id: `${glycol} mass ${share * 100} %`, says: `${expected} C`, actual: () => celsius(coolantFreezingByMassK(glycol, share) ?? Number.NaN), expected, within: 0.01, source: 'open property library', provenance: 'computed',
    })),
    // The two bases describe one liquid, yet the tables part by 2.8 K for ethylene at 50 %: the 3 K by which sources
    // differ. Nobody may quote a freezing point nearer than that.
    ...(['ethylene', 'propylene'] as readonly Glycol[]).flatMap(glycol => [0.2, 0.3, 0.4, 0.5].map((share): CheckValue => ({
        id: `${glycol} ${share * 100} % by both`, says: 'volume and mass agree within 3 K', actual: () => coolantFreezingK(glycol, share) - (coolantFreezingByMassK(glycol, massShare(glycol, share)) ?? Number.NaN), expected: 0, within: 3, source: 'densities at 20 C, propylene and water from memory', provenance: 'memory',
    }))),
    ...([[0.05, -1.1], [0.1, -2.2], [0.15, -3.9], [0.2, -6.7], [0.25, -8.9], [0.3, -12.8], [0.35, -16.1], [0.4, -20.6], [0.45, -26.7], [0.5, -33.3]] as const).map(([share, expected]): CheckValue => ({
        id: `propylene ${share * 100} %`, says: `${expected} C`, actual: () => celsius(coolantFreezingK('propylene', share)), expected, within: 1.5, source: 'chemistry data handbook, signs restored', provenance: 'published',
    })),
]);

const cfr = '33 CFR 181.25 and public worked examples';
const reading = (text: string): string => {
    const read = decodeHullNumber(text);
    return read.ok ? `${read.form} ${read.builtYear}-${String(read.month).padStart(2, '0')}${read.modelYear === undefined ? '' : ` model ${read.modelYear}`}` : `bad ${read.problem}`;
};
oracle('hull numbers', ([
    ['ABC12345H495', 'current 1994-08 model 1995'], ['ABC12345L495', 'current 1994-12 model 1995'], ['ABC12345I404', 'current 2004-09 model 2004'],
    ['ABC123451278', 'straight-year 1978-12'], ['ABC12345M82H', 'model-year 1982-03 model 1982'], ['ABC12345M78D', 'model-year 1977-11 model 1978'],
    ['ABC12O45A090', 'bad serial'], ['ABC12345M790', 'bad date'], ['ABC12345C765', 'bad date'], ['ABC12345H49', 'bad length'], ['ABC12345H4955', 'bad length'],
    ['US-ABC12345H495', 'current 1994-08 model 1995'],
] as const).map(([text, expected]): CheckValue => ({ id: text, says: expected, actual: () => reading(text), expected, source: cfr, provenance: 'published' })));

const carriage = '33 CFR 175.320, two state course tables';
const ways = (length: string, fixed: boolean): string => (extinguishersNeeded(si(length), fixed) ?? []).map(w => `${w.b5}x5-B ${w.b20}x20-B`).join(' or ');
oracle('fire extinguishers', [
    { id: '7.a', says: '34 ft with a fixed system: one 5-B', actual: () => ways('34 ft', true), expected: '1x5-B 0x20-B', source: carriage, provenance: 'published' },
    { id: '7.b', says: '42 ft: three 5-B, or 20-B and 5-B', actual: () => ways('42 ft', false), expected: '3x5-B 0x20-B or 1x5-B 1x20-B', source: carriage, provenance: 'published' },
    { id: 'under 26', says: 'one 5-B', actual: () => ways('25 ft', false), expected: '1x5-B 0x20-B', source: carriage, provenance: 'published' },
    { id: 'exactly 26', says: 'two 5-B or one 20-B', actual: () => ways('26 ft', false), expected: '2x5-B 0x20-B or 0x5-B 1x20-B', source: carriage, provenance: 'published' },
    { id: '7.c', says: 'a bottle of 2013 ended with 2025', actual: () => disposableExpiry(2013), expected: 2025, source: 'rule in force since 20 April 2022', provenance: 'published' },
]);
