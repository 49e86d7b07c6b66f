/**
 * The damage: what happened as told, its cause as far as the evidence goes, and the findings parted by whether they
 * are of the occurrence, with cost allowed and betterment. Sums are made only within one currency.
 */
import type { Finding } from '../../record/model.js';
import { lessBetterment, sumOfRanges, type CostRange } from '../../trade/money-sums.js';
import { definitions, table, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { standing } from '../standing-words.js';
import { counted, dateText, figureText, isWord, moneyText } from '../wording.js';

interface Relation {
    readonly word: string | undefined;
    readonly title: string;
    /** Whether its cost counts toward the occurrence. */
    readonly isOfOccurrence: boolean;
}

const relations: readonly Relation[] = [
    { word: 'new', title: 'Of the occurrence', isOfOccurrence: true },
    { word: 'related', title: 'Following from the occurrence', isOfOccurrence: true },
    { word: 'unknown', title: 'Not settled whether of the occurrence', isOfOccurrence: false },
    { word: 'old', title: 'Older than the occurrence', isOfOccurrence: false },
    { word: 'unrelated', title: 'Not connected with the occurrence', isOfOccurrence: false },
    { word: undefined, title: 'Not said whether of the occurrence', isOfOccurrence: false },
];

const told = ['occurrence', 'occurrence-date', 'occurrence-time', 'occurrence-place', 'cause-stated', 'evidence', 'cause-opinion', 'extent', 'repair-method', 'repair-time', 'further-damage'];

export function damage(context: ReportContext): Section | undefined {
    const { survey, findings } = context.record;
    const isDamage = survey?.surveyKind === 'damage';
    const isRelated = findings.some(finding => finding.facts.has('relation') || finding.facts.has('betterment'));
    if (!isDamage && !isRelated && !told.some(name => survey?.facts.has(name))) {
        return undefined;
    }
    const said = (name: string, what: string): Html | undefined => context.body(survey, name) ?? (isDamage ? html`<p class="absent">Not recorded: ${what}.</p>` : undefined);
    const date = context.first(survey, 'occurrence-date');
    const time = context.text(survey, 'occurrence-time');
    const when = date?.type === 'date' ? html`${dateText(date.figure)}${time === undefined ? nothing : `, ${time}`}` : time === undefined ? undefined : html`${time}`;
    return {
        id: 'damage', title: 'The damage', body: html`
${standing(context, 'without-prejudice')}
<h3>The occurrence</h3>
${definitions([
        ['What happened', said('occurrence', 'what happened')],
        ['When', when ?? (isDamage ? html`<p class="absent">Not recorded: when it happened.</p>` : undefined)],
        ['Where', said('occurrence-place', 'where it happened')],
        ['Cause as alleged', said('cause-stated', 'the cause as alleged')],
        ['Evidence', said('evidence', 'the evidence for a cause')],
        ['Cause as far as the evidence goes', said('cause-opinion', 'an opinion of the cause')],
    ])}
<h3>Extent and repair</h3>
${definitions([
        ['Extent', said('extent', 'the extent as a whole; each finding tells its own')],
        ['Repair', said('repair-method', 'a method of repair as a whole; each finding tells its own')],
        ['Time for the repair', context.body(survey, 'repair-time')],
        ['Further damage', said('further-damage', 'whether further damage is likely')],
    ])}
${findings.length === 0 ? nothing : costs(context)}`,
    };
}

/** How a finding stands to the occurrence, for its own card; nothing where it is not said. */
export function relationText(context: ReportContext, finding: Finding): string | undefined {
    const value = context.first(finding, 'relation');
    return isWord(value) ? relations.find(({ word }) => word === value.word)?.title : undefined;
}

interface Entry {
    readonly finding: Finding;
    readonly relation: Relation;
    readonly cost?: Amount;
    readonly betterment?: Amount;
}

type Amount = CostRange & { readonly currency: string };

function amountOf(context: ReportContext, finding: Finding, property: 'cost' | 'betterment'): Amount | undefined {
    const value = context.first(finding, property);
    return value?.type === 'quantity' ? { low: value.low ?? value.si, high: value.high ?? value.si, currency: value.figure.currency ?? '' } : undefined;
}

function entriesOf(context: ReportContext): Entry[] {
    return context.findings.map((finding): Entry => {
        const value = context.first(finding, 'relation');
        const word = isWord(value) ? value.word : undefined;
        const [cost, betterment] = [amountOf(context, finding, 'cost'), amountOf(context, finding, 'betterment')];
        return { finding, relation: relations.find(relation => relation.word === word) ?? relations[relations.length - 1] as Relation, ...(cost ? { cost } : {}), ...(betterment ? { betterment } : {}) }; // The list is not empty.
    });
}

function costs(context: ReportContext): Html {
    const entries = entriesOf(context);
    return html`<h3>Damage of the occurrence and other matters, kept apart</h3>
${relations.map(relation => {
        const here = entries.filter(entry => entry.relation === relation);
        return here.length === 0 ? nothing : table(relation.title, [{ title: 'No.' }, { title: 'What' }, { title: 'Cost allowed', isNumber: true }, { title: 'Of it betterment', isNumber: true }, { title: 'Without betterment', isNumber: true }], [
            ...here.map(entry => ({ attributes: context.source(entry.finding.span), cells: [context.linkTo(entry.finding), entry.finding.title, ...figuresOf(context, entry)] })),
            ...here.length > 1 ? totals(here).map(({ cells }) => ({ attributes: html` class="total"`, cells: ['', 'Together', ...cells] })) : [],
        ], 'costs');
    })}
${conclusion(entries)}`;
}

function figuresOf(context: ReportContext, { finding, cost, betterment }: Entry): (Html | string)[] {
    const written = (property: 'cost' | 'betterment', otherwise: string): Html | string => {
        const value = context.first(finding, property);
        return value?.type === 'quantity' ? figureText(value.figure) : html`<span class="muted">${otherwise}</span>`;
    };
    const net = cost === undefined ? undefined : betterment === undefined ? cost : betterment.currency === cost.currency ? { ...lessBetterment(cost, betterment), currency: cost.currency } : undefined;
    return [written('cost', 'none stated'), written('betterment', cost === undefined ? '' : 'none stated'), net ? rangeText(net) : html`<span class="muted">${cost === undefined ? '' : 'not to be computed'}</span>`];
}

const rangeText = ({ low, high, currency }: Amount): string => low === high ? moneyText(low, currency) : `${moneyText(low)} to ${moneyText(high, currency)}`;

/** Sums of the entries that state a cost, one for each currency. */
function totals(entries: readonly Entry[]): { readonly currency: string; readonly count: number; readonly net: Amount; readonly cells: string[] }[] {
    const priced = entries.flatMap(({ cost, betterment }) => cost && (betterment === undefined || betterment.currency === cost.currency) ? [{ cost, betterment: betterment ?? { low: 0, high: 0 } }] : []);
    return [...new Set(priced.map(({ cost }) => cost.currency))].map(currency => {
        const here = priced.filter(({ cost }) => cost.currency === currency);
        const [cost, betterment] = [sumOfRanges(here.map(entry => entry.cost)), sumOfRanges(here.map(entry => entry.betterment))];
        const net = { ...lessBetterment(cost, betterment), currency };
        return { currency, count: here.length, net, cells: [rangeText({ ...cost, currency }), betterment.high === 0 ? '' : rangeText({ ...betterment, currency }), rangeText(net)] };
    });
}

/** The sum for the occurrence at a damage survey, for the summary, where all of it is in one currency. */
export function occurrenceCost(context: ReportContext): { readonly text: string; readonly note: Html } | undefined {
    if (context.record.survey?.surveyKind !== 'damage') {
        return undefined;
    }
    const [sum, ...others] = totals(entriesOf(context).filter(entry => entry.relation.isOfOccurrence));
    return sum === undefined || others.length > 0 ? undefined : { text: rangeText(sum.net), note: html`without betterment, for ${counted(sum.count, 'finding')}, <a href="#damage">kept apart from the rest</a>` };
}

/** What the costs of the occurrence come to, what is in the sum and what is not. */
function conclusion(entries: readonly Entry[]): Html {
    const ofIt = entries.filter(entry => entry.relation.isOfOccurrence);
    const sums = totals(ofIt);
    const without = ofIt.filter(({ cost }) => cost === undefined);
    const mixed = ofIt.filter(({ cost, betterment }) => cost && betterment && betterment.currency !== cost.currency);
    if (ofIt.length === 0) {
        return html`<p>No finding is recorded as of the occurrence, so no cost is summed for it.</p>`;
    }
    return html`<p><strong>${sums.length === 0 ? 'No cost is stated for the damage of the occurrence.' : html`Costs allowed for the damage of the occurrence and what follows from it, without betterment: ${joined(sums.map(({ net, count }) => `${rangeText(net)} for ${counted(count, 'finding')}`), ', and ')}.`}</strong>${
        sums.length > 0 && without.length > 0 ? ` ${counted(without.length, 'finding of it states', 'findings of it state')} no cost: ${without.map(({ finding }) => finding.id).join(', ')}.` : ''}${
        mixed.length > 0 ? ` Left out of the sum, cost and betterment being in different currencies: ${mixed.map(({ finding }) => finding.id).join(', ')}.` : ''} What is older, not connected or not settled is not in the sum. Betterment is taken off end by end: the lower from the lower, the upper from the upper.</p>`;
}
