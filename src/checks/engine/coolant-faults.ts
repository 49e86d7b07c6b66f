/** What can be wrong with an engine's coolant, each fault in words for a message and for a finding. */
import { convertTo } from '../../quantities/index.js';
import { coolantFreezingK, exchangedVolumeM3, shareForFreezing, strongestUsefulShare } from '../../trade/coolant.js';
import { siOf, valueOf, wordOf, type Component, type Fact, type Quantity, type SurveyRecord } from '../../record/model.js';
import type { Correction, ProblemFigure, Severity } from '../contract.js';
import { both, computedBoth } from '../fit/wording.js';
import { surveyedOn, yearsBetween } from '../hoses/age.js';

/** Shares of glycol by volume that engine makers name (published): never under 30 % nor over 60 %; 40 to 60 % advised. */
const leastShare = 0.3;
const advisedShare = 0.4;
const mostShare = 0.6;
const targetShare = 0.5;
/** Margin under the lowest temperature expected, K (chosen). */
export const frostMarginK = 5;

export interface Fault {
    readonly fact: Fact | undefined;
    /** "its glycol is 25 % by volume, under the 30 % …": continues a sentence about the coolant. */
    readonly what: string;
    /** The same for a finding, with references. */
    readonly seen: string;
    readonly because: string;
    readonly remedy: string;
    readonly severity: Severity;
    readonly isFrost?: boolean;
    readonly figures?: Readonly<Record<string, ProblemFigure>>;
    readonly corrections?: readonly Correction[];
}

export function quantityOf(set: Component, property: string): { readonly fact: Fact; readonly quantity: Quantity } | undefined {
    const fact = set.facts.get(property);
    const value = fact?.values[0];
    return fact && value?.type === 'quantity' ? { fact, quantity: value } : undefined;
}

const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;
const celsius = (kelvin: number) => convertTo(kelvin, 'C');
export const temperatureBoth = (kelvin: number) => computedBoth(kelvin, 'temperature');

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
        remedy: 'read it again with a refractometer for propylene glycol',
        corrections: [{ kind: 'set-fact', title: `Record ${coolant.id} as read again with a refractometer`, component: coolant, property: 'instrument', value: 'refractometer' }],
    }];
}

export function coldestExpected(record: SurveyRecord): { readonly quantity: Quantity; readonly reference: string } | undefined {
    for (const [set, name] of [[record.vessel, 'vessel'], [record.survey, 'survey']] as const) {
        const value = set?.facts.get('coldest-expected')?.values[0];
        if (value?.type === 'quantity') {
            return { quantity: value, reference: `{${name}.coldest-expected}` };
        }
    }
    return undefined;
}

/** Freezing points, K: the one recorded, or those of the kinds of glycol it may be, from its share. */
export function freezingPointsK(coolant: Component): number[] {
    const recorded = siOf(coolant, 'freeze-point');
    if (recorded !== undefined) {
        return [recorded];
    }
    const share = siOf(coolant, 'glycol');
    const kind = wordOf(coolant, 'glycol-kind');
    if (share === undefined) {
        return [];
    }
    const kinds = kind === 'ethylene' || kind === 'propylene' ? [kind] as const : ['ethylene', 'propylene'] as const; // Mixed or unknown: either.
    return kinds.map(k => coolantFreezingK(k, share));
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
    const recorded = quantityOf(coolant, 'freeze-point');
    const glycol = quantityOf(coolant, 'glycol');
    const lowestK = Math.min(...points);
    const margin = `${Math.round((lowestK - limitK) * 10) / 10} K above ${temperatureBoth(limitK)}, which is ${frostMarginK} K below the coldest expected`;
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
function frostRemedy(coolant: Component, limitK: number): string {
    const share = shareForFreezing(wordOf(coolant, 'glycol-kind') === 'propylene' ? 'propylene' : 'ethylene', limitK);
    if (share === undefined) {
        return `fill it with a mix that its maker names for ${temperatureBoth(limitK)}`;
    }
    const target = Math.max(targetShare, Math.ceil(share * 100 - 1e-9) / 100);
    return `bring it to ${percent(target)}${exchangeText(coolant, target)}`;
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

export function shareFaults(coolant: Component): Fault[] {
    const glycol = quantityOf(coolant, 'glycol');
    if (!glycol) {
        return [];
    }
    const share = glycol.quantity.si;
    const [makerLow, makerHigh] = [siOf(coolant, 'maker-low'), siOf(coolant, 'maker-high')];
    const low = makerLow ?? leastShare;
    const high = makerHigh ?? mostShare;
    const [lowSource, highSource] = [makerLow, makerHigh].map(maker => maker === undefined ? 'that engine makers name' : 'of its maker') as [string, string];
    const figures = { glycol: { value: share * 100, unit: '%' }, low: { value: low * 100, unit: '%' }, high: { value: high * 100, unit: '%' } };
    const target = makerLow !== undefined && makerHigh !== undefined ? (makerLow + makerHigh) / 2 : targetShare;
    const remedy = `bring it to ${percent(target)}${exchangeText(coolant, target)}`;
    const seen = (relation: string, limit: number, source: string) => `has {${coolant.id}.glycol} glycol by volume, ${relation} the ${percent(limit)} ${source}`;
    if (share < low - 1e-9) {
        return [{
            fact: glycol.fact, severity: 'error', figures, remedy, what: `has ${both(glycol.quantity)} glycol by volume, under the ${percent(low)} ${lowSource}`,
            seen: seen('under', low, lowSource), because: 'A thin mix protects little against rust and frost.',
        }];
    }
    if (share > high + 1e-9) {
        const turns = share > strongestUsefulShare ? `; past about ${percent(strongestUsefulShare)} it freezes sooner again` : '';
        return [{
            fact: glycol.fact, severity: 'error', figures, remedy, what: `has ${both(glycol.quantity)} glycol by volume, over the ${percent(high)} ${highSource}`,
            seen: seen('over', high, highSource), because: `A thick mix cools badly and drops its inhibitors as gel${turns}.`,
        }];
    }
    if (makerLow === undefined && share < advisedShare - 1e-9) {
        return [{
            fact: glycol.fact, severity: 'warning', figures, remedy, what: `has ${both(glycol.quantity)} glycol by volume, where engine makers advise ${percent(advisedShare)} to ${percent(mostShare)}`,
            seen: `has {${coolant.id}.glycol} glycol by volume, where engine makers advise ${percent(advisedShare)} to ${percent(mostShare)}`, because: 'A thin mix protects less against rust and frost.',
        }];
    }
    return [];
}

/** What to drain and what to fill, where the volume of the system is recorded. */
function exchangeText(coolant: Component, target: number): string {
    const volume = siOf(coolant, 'volume');
    const now = siOf(coolant, 'glycol');
    if (volume === undefined || now === undefined) {
        return '';
    }
    const isWeak = now < target;
    const recorded = wordOf(coolant, 'added');
    const added = isWeak ? (recorded === 'premix' ? 0.5 : 1) : 0;
    const exchanged = exchangedVolumeM3({ volumeM3: volume, share: now, targetShare: target, addedShare: added });
    const fill = added === 1 ? 'concentrate' : added === 0 ? 'water' : 'premix of 50 %';
    return exchanged === undefined ? ` by a full change; adding ${fill} to what stays in does not reach it` : ` by draining ${computedBoth(exchanged, 'volume')} and filling with ${fill}`;
}

export function ageFaults(record: SurveyRecord, coolant: Component<'coolant'>): Fault[] {
    if (wordOf(coolant, 'glycol-kind') === 'mixed') {
        return [{
            fact: coolant.facts.get('glycol-kind'), severity: 'error', what: 'is of mixed kinds of glycol', seen: 'is of mixed kinds of glycol',
            because: 'Mixed kinds read wrongly on every instrument, and their inhibitors may drop out.', remedy: 'flush the system and fill it with one kind',
        }];
    }
    const inhibitor = wordOf(coolant, 'inhibitor');
    const term = inhibitor === undefined ? undefined : termYears[inhibitor];
    const age = yearsSinceChange(record, coolant);
    if (term === undefined || age === undefined || age <= term) {
        return [];
    }
    return [{
        fact: coolant.facts.get('changed'), severity: 'error', what: `was last changed in ${coolant.facts.get('changed')?.written ?? ''}, more than ${term} years before the survey, the usual term of ${inhibitor ?? ''} inhibitors`,
        seen: `was last changed {${coolant.id}.changed}, past the usual term of ${term} years for ${inhibitor ?? ''} inhibitors`, because: 'Inhibitors are used up with time, and the engine then rusts from inside.',
        remedy: 'renew it', figures: { age: { value: age, unit: 'year' }, term: { value: term, unit: 'year' } },
    }];
}

export function yearsSinceChange(record: SurveyRecord, coolant: Component<'coolant'>): number | undefined {
    const changed = valueOf(coolant, 'changed')?.figure;
    const today = surveyedOn(record);
    return changed && today ? yearsBetween(changed, today) : undefined;
}

/** Usual terms by kind of inhibitor, years (practice). */
const termYears: Readonly<Record<string, number>> = { plain: 2, organic: 5 };
