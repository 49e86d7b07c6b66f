/** What can be wrong with an engine's coolant, each fault in words for a message and for a finding. */
import { convertTo } from '../../quantities/index.js';
import { coolantFreezingK, flushShare, shareForFreezing, strongestUsefulShare, type Glycol } from '../../trade/coolant.js';
import { siOf, valueOf, wordOf, yardstick, type Component, type Fact, type Quantity, type SurveyRecord } from '../../record/model.js';
import type { Correction, ProblemFigure, Severity } from '../contract.js';
import { both, computedBoth, percent } from '../phrasing.js';
import { surveyedOn, yearsBetween } from '../hoses/age.js';
import { isOlderThanMonths } from '../dates.js';
import { measured } from '../../record/trial-runs.js';

/** Share of glycol by volume that is right where nothing else is asked for: half and half (engine makers, published). */
const usualTarget = 0.5;
/** Margin under the lowest temperature expected, K (chosen). */
export const frostMarginK = 5;

export interface Fault {
    readonly fact: Fact | undefined;
    /** "has 25 % glycol by volume, under …": continues a sentence about the coolant. */
    readonly what: string;
    /** The same for a finding, with references. */
    readonly seen: string;
    readonly because: string;
    /** What puts it right: another share, a flush and a new fill, a renewal, or what is written. */
    readonly remedy: { readonly share: number } | { readonly flush: string; readonly share: number } | 'renew' | { readonly text: string };
    readonly severity: Severity;
    readonly isFrost?: boolean;
    readonly figures?: Readonly<Record<string, ProblemFigure>>;
    readonly corrections?: readonly Correction[];
}

const celsius = (kelvin: number) => convertTo(kelvin, 'C');
export const temperatureBoth = (kelvin: number) => computedBoth(kelvin, 'temperature');

/** A difference of temperatures in both units: "5 K (9 F)". */
const kelvins = (difference: number) => `${Math.round(difference * 10) / 10} K (${Math.round(difference * 18) / 10} F)`;

/** The kinds of glycol that a coolant may be of: the one recorded, else both. */
export function kindsOf(coolant: Component): readonly Glycol[] {
    const kind = wordOf(coolant, 'glycol-kind');
    return kind === 'ethylene' || kind === 'propylene' ? [kind] : ['ethylene', 'propylene'];
}

/** A reading that the instrument cannot have made; nothing else is then read from its figures. */
export function voidReading(coolant: Component): Fault[] | undefined {
    if (wordOf(coolant, 'instrument') !== 'hydrometer' || wordOf(coolant, 'glycol-kind') !== 'propylene' || !(coolant.facts.has('glycol') || coolant.facts.has('freeze-point'))) {
        return undefined;
    }
    return [{
        fact: coolant.facts.get('instrument'), severity: 'error',
        what: 'was read with a hydrometer, which cannot read propylene glycol: its density hardly changes with its share',
        seen: 'was read with a hydrometer although it is of propylene glycol',
        because: 'The density of propylene glycol mixes hardly changes with their share, so that such a reading says nothing.',
        remedy: { text: 'read it again with a refractometer for propylene glycol' },
        corrections: [{ kind: 'set-fact', title: `Record ${coolant.id} as read again with a refractometer`, component: coolant, property: 'instrument', value: 'refractometer' }],
    }];
}

export function coldestExpected(record: SurveyRecord): { readonly quantity: Quantity; readonly reference: string } | undefined {
    for (const [set, name] of [[record.vessel, 'vessel'], [record.survey, 'survey']] as const) {
        const value = set && valueOf(set, 'coldest-expected');
        if (value) {
            return { quantity: value, reference: `{${name}.coldest-expected}` };
        }
    }
    return undefined;
}

/** Freezing points, K: the one recorded, or those of the kinds of glycol it may be, from its share. */
export function freezingPointsK(coolant: Component): number[] {
    const recorded = siOf(coolant, 'freeze-point');
    const share = siOf(coolant, 'glycol');
    return recorded !== undefined ? [recorded] : share === undefined ? [] : kindsOf(coolant).map(kind => coolantFreezingK(kind, share));
}

export function frostFaults(record: SurveyRecord, coolant: Component): Fault[] {
    const coldest = coldestExpected(record);
    const points = freezingPointsK(coolant);
    if (!coldest || points.length === 0) {
        return [];
    }
    const limitK = coldest.quantity.si - frostMarginK;
    if (!points.every(point => point > limitK + 1e-9)) {
        return [];
    }
    const recorded = measured(coolant, 'freeze-point');
    const glycol = measured(coolant, 'glycol');
    const lowestK = Math.min(...points);
    const margin = `${kelvins(lowestK - limitK)} above ${temperatureBoth(limitK)}, which is ${kelvins(frostMarginK)} below the coldest expected`;
    return [{
        fact: recorded?.fact ?? glycol?.fact, severity: 'error', isFrost: true,
        what: `freezes at ${recorded ? both(recorded.quantity) : `about ${temperatureBoth(lowestK)}`}, ${margin}`,
        seen: `${recorded ? `freezes at {${coolant.id}.freeze-point}` : `of {${coolant.id}.glycol} glycol freezes at about ${temperatureBoth(lowestK)}`}, where ${coldest.reference} is the coldest expected`,
        because: 'Coolant that freezes cracks block, heat exchanger or hoses.',
        remedy: frostRemedy(coolant, limitK),
        figures: { 'freeze-point': { value: celsius(lowestK), unit: 'C' }, limit: { value: celsius(limitK), unit: 'C' } },
        corrections: recorded && glycol ? inOtherScale(coolant, recorded.quantity, glycol.quantity.si) : [],
    }];
}

/** The mix that is proof against the frost: half and half, or stronger where that is not enough. */
function frostRemedy(coolant: Component, limitK: number): Fault['remedy'] {
    const shares = kindsOf(coolant).map(kind => shareForFreezing(kind, limitK));
    const known = shares.filter(share => share !== undefined);
    return known.length < shares.length ? { text: `fill it with a mix that its maker names for ${temperatureBoth(limitK)}` }
        : { share: Math.max(usualTarget, Math.ceil(Math.max(...known) * 100 - 1e-9) / 100) };
}

/** A freezing point typed in the wrong scale, where the share of glycol bears that out. */
function inOtherScale(coolant: Component, recorded: Quantity, share: number): Correction[] {
    const { unit, value, written } = recorded.figure;
    const other = unit === 'C' ? 'F' : unit === 'F' ? 'C' : undefined;
    if (!other) {
        return [];
    }
    const readK = other === 'F' ? (value - 32) / 1.8 + 273.15 : value + 273.15;
    const kind = wordOf(coolant, 'glycol-kind') === 'propylene' ? 'propylene' : 'ethylene';
    return Math.abs(readK - coolantFreezingK(kind, share)) > 5 ? [] : [{
        kind: 'set-fact', title: `Read ${written} as ${value} ${other}`, component: coolant, property: 'freeze-point', value: `${value} ${other}`,
    }];
}

interface Band {
    readonly low: number;
    readonly high: number;
    /** Share under which advice is given; none where the engine's maker names a band. */
    readonly working?: number;
    readonly target: number;
    /** "of its maker", "the usual limit": whose each limit is. */
    readonly lowWhose: string;
    readonly highWhose: string;
    readonly workingWhose: string;
}

/** The band of the engine's maker, else the firm's or the usual one. */
function bandOf(record: SurveyRecord, coolant: Component): Band {
    const [makerLow, makerHigh] = [siOf(coolant, 'maker-low'), siOf(coolant, 'maker-high')];
    const [least, working, most] = [yardstick(record, 'glycol-least'), yardstick(record, 'glycol-working'), yardstick(record, 'glycol-most')];
    const [low, high] = [makerLow ?? least.si, makerHigh ?? most.si];
    const middle = makerLow !== undefined && makerHigh !== undefined ? (makerLow + makerHigh) / 2 : usualTarget;
    return {
        low, high, target: middle >= low && middle <= high ? middle : (low + high) / 2,
        ...(makerLow === undefined && working.si > low ? { working: working.si } : {}),
        lowWhose: makerLow === undefined ? least.whose : 'the limit of its maker', highWhose: makerHigh === undefined ? most.whose : 'the limit of its maker', workingWhose: working.whose,
    };
}

export function shareFaults(record: SurveyRecord, coolant: Component): Fault[] {
    const glycol = measured(coolant, 'glycol');
    if (!glycol) {
        return thinByFreezing(record, coolant);
    }
    const share = glycol.quantity.si;
    const { low, high, working, target, lowWhose, highWhose, workingWhose } = bandOf(record, coolant);
    const figures = { glycol: { value: share * 100, unit: '%' }, low: { value: low * 100, unit: '%' }, high: { value: high * 100, unit: '%' } };
    const fault = (relation: string, because: string, rest: Pick<Fault, 'severity' | 'remedy'>): Fault[] => [{
        fact: glycol.fact, figures, because, ...rest,
        what: `has ${both(glycol.quantity)} glycol by volume, ${relation}`, seen: `has {${coolant.id}.glycol} glycol by volume, ${relation}`,
    }];
    if (share < low - 1e-9) {
        return fault(`under ${percent(low)} (${lowWhose})`, 'A thin mix protects little against rust and frost.', { severity: 'error', remedy: { share: target } });
    }
    if (share > high + 1e-9) {
        return tooStrong(coolant, share, { share: target }, (because, remedy) => fault(`over ${percent(high)} (${highWhose})`, because, { severity: 'error', remedy }));
    }
    return working !== undefined && share < working - 1e-9
        ? fault(`under ${percent(working)}, from which on a mix is advised (${workingWhose})`, 'A thin mix protects less against rust and frost.', { severity: 'warning', remedy: { share: target } }) : [];
}

/**
 * A thin mix known by its freezing point alone. That of ethylene glycol rises again past 68 %, but a mix so strong would
 * be out of its band as well; nothing is told where frost is told already, or where the two kinds would not agree.
 */
function thinByFreezing(record: SurveyRecord, coolant: Component): Fault[] {
    const freezing = measured(coolant, 'freeze-point');
    if (!freezing || wordOf(coolant, 'glycol-kind') === 'mixed' || frostFaults(record, coolant).length > 0) {
        return [];
    }
    const shares = kindsOf(coolant).map(kind => shareForFreezing(kind, freezing.quantity.si)).filter(share => share !== undefined);
    const { low, target, lowWhose } = bandOf(record, coolant);
    if (shares.length < kindsOf(coolant).length || !shares.every(share => share < low - 0.005)) {
        return [];
    }
    const about = [...new Set(shares.map(share => `${Math.round(share * 100)} %`))].join(' to ');
    const relation = `as a mix of about ${about} glycol by volume does, under ${percent(low)} (${lowWhose})`;
    return [{
        fact: freezing.fact, severity: 'error',
        what: `freezes at ${both(freezing.quantity)}, ${relation}`, seen: `freezes at {${coolant.id}.freeze-point}, ${relation}`,
        because: 'A thin mix protects little against rust and frost.',
        remedy: { share: target }, figures: { 'freeze-point': { value: celsius(freezing.quantity.si), unit: 'C' } },
    }];
}

/** A mix over its band; past about 80 % silicates are to be expected out of solution, which no water brings back. */
function tooStrong(coolant: Component, share: number, remedy: { readonly share: number }, fault: (because: string, remedy: Fault['remedy']) => Fault[]): Fault[] {
    const turns = share > strongestUsefulShare && wordOf(coolant, 'glycol-kind') !== 'propylene' ? `, and past about ${percent(strongestUsefulShare)} ethylene glycol freezes sooner again` : '';
    const hasSilicates = wordOf(coolant, 'inhibitor') !== 'organic';
    return share > flushShare + 1e-9
        ? fault(hasSilicates ? `So strong a mix, over about ${percent(flushShare)}, drops its silicates as gel, which clogs the heat exchanger and which no water brings back; it cools badly${turns}.`
            : `So strong a mix, over about ${percent(flushShare)}, is little else than concentrate, which no water filled in on top makes even again; it cools badly${turns}.`, { flush: `flush the system until it runs clear, ${hasSilicates ? 'look for gel in heat exchanger and header tank' : 'look into heat exchanger and header tank'}`, share: remedy.share })
        : fault(`A thick mix cools badly${hasSilicates ? ' and may drop its silicates as gel' : ''}${turns}.`, remedy);
}

export function ageFaults(record: SurveyRecord, coolant: Component<'coolant'>): Fault[] {
    if (wordOf(coolant, 'glycol-kind') === 'mixed') {
        return [{
            fact: coolant.facts.get('glycol-kind'), severity: 'error', what: 'is of mixed kinds of glycol', seen: 'is of mixed kinds of glycol',
            because: 'Mixed kinds read wrongly on every instrument, and their inhibitors may drop out.', remedy: { flush: 'flush the system', share: bandOf(record, coolant).target },
        }];
    }
    const changed = valueOf(coolant, 'changed')?.figure;
    const today = surveyedOn(record);
    const term = termOf(coolant);
    if (!changed || !today || !term || !isOlderThanMonths(changed, Math.round(term.years * 12), today)) {
        return [];
    }
    return [{
        fact: coolant.facts.get('changed'), severity: 'error', what: `was last changed in ${changed.written}, more than ${term.text} before the survey`,
        seen: `was last changed {${coolant.id}.changed}, past ${term.seen}`, because: 'Inhibitors are used up with time, and the engine then rusts from inside.',
        remedy: 'renew', figures: { age: { value: yearsBetween(changed, today), unit: 'year' }, term: { value: term.years, unit: 'year' } },
    }];
}

interface Term {
    readonly years: number;
    readonly text: string;
    readonly seen: string;
}

/** The maker's term, else the usual one of its inhibitors. */
function termOf(coolant: Component<'coolant'>): Term | undefined {
    const makers = valueOf(coolant, 'makers-term');
    const inhibitor = wordOf(coolant, 'inhibitor');
    const years = inhibitor === undefined ? undefined : termYears[inhibitor];
    const isKnown = inhibitor !== undefined && inhibitor !== 'unknown';
    return makers ? { years: makers.si / (365.25 * 86_400), text: `the ${makers.figure.written} that its maker lets it stay`, seen: `the {${coolant.id}.makers-term} that its maker lets it stay` }
        // Where the inhibitors are not known, the longest of the usual terms is past for all of them.
        : !isKnown ? { years: longestTermYears, text: `the ${longestTermYears} years that the longest-lived inhibitors last`, seen: `the ${longestTermYears} years that the longest-lived inhibitors last` }
        : years === undefined ? undefined : { years, text: `the ${years} years usual for ${inhibitor ?? ''} inhibitors`, seen: `the usual term of ${years} years for ${inhibitor ?? ''} inhibitors` };
}

export function yearsSinceChange(record: SurveyRecord, coolant: Component<'coolant'>): number | undefined {
    const changed = valueOf(coolant, 'changed')?.figure;
    const today = surveyedOn(record);
    return changed && today ? yearsBetween(changed, today) : undefined;
}

/** Usual terms by kind of inhibitor, years (practice). */
const termYears: Readonly<Record<string, number>> = { plain: 2, organic: 5 };
const longestTermYears = Math.max(...Object.values(termYears));
