/** The opinion of value with every sum shown. The opinion is the surveyor's; the sums beside it are arithmetic. */
import { speaksOf, usesFigures, type Approach } from '../../checks/valuation/approaches.js';
import { amountOf, isOneCurrency, ladderOf, weighedOf, type Amount, type Rung } from '../../checks/valuation/ladder.js';
import { percent } from '../../checks/phrasing.js';
import type { Valuation } from '../../record/model.js';
import { grossShare, netShare, plainMean, roundingBetween, spreadShare, weightedParts, weightSum, type Weighed } from '../../trade/comparables.js';
import { shareOf, sumOf } from '../../trade/money-sums.js';
import { amountInWords } from '../../trade/number-words.js';
import { definitions, table as wideTable, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { standing } from '../standing-words.js';
import { undoneAs, whyOf } from '../undone.js';
import { capital, counted, dateText, figureText, isWord, moneyText } from '../wording.js';

export function valuation(context: ReportContext): Section | undefined {
    const { valuations } = context.record;
    const undone = undoneAs(context, 'no-value');
    if (valuations.length === 0) {
        return undone && { id: 'valuation', title: 'Valuation', body: html`${standing(context, 'no-value')}<p>${whyOf(undone)}</p>` };
    }
    const [first] = valuations;
    return {
        id: 'valuation', title: valuations.length === 1 && first?.title ? first.title : 'Valuation',
        body: html`${standing(context, 'value-lead')}${valuations.map(entry => one(context, entry, valuations.length > 1))}`,
    };
}

/** "76,000 USD", or a range "70,000 to 80,000 USD". */
export function amountText({ amount, currency, ends }: Amount): string {
    return ends ? `${moneyText(ends[0])} to ${moneyText(ends[1], currency)}` : moneyText(amount, currency);
}

/** The opinion in words: those written, else those of the figures. */
function opinionWords(context: ReportContext, entry: Valuation, { amount, currency, ends }: Amount): Html | undefined {
    if (entry.facts.has('opinion-words')) {
        return context.values(entry, 'opinion-words');
    }
    const words = (ends ?? [amount]).map(end => amountInWords(end, currency));
    return words.includes(undefined) ? undefined : html`${capital(ends ? `from ${words.join(' to ')}` : words[0] ?? '')}`;
}

const absent = (what: string) => html`<p class="absent">Not recorded: ${what}.</p>`;

function one(context: ReportContext, entry: Valuation, isTitled: boolean): Html {
    const { survey } = context.record;
    const isAppraisal = survey?.surveyKind === 'appraisal';
    const opinion = amountOf(entry, 'opinion');
    const effective = context.first(entry, 'effective');
    const inWords = opinion && opinionWords(context, entry, opinion);
    const money = (property: 'low' | 'high' | 'replacement') => {
        const value = amountOf(entry, property);
        return value && amountText(value);
    };
    const [low, high] = [money('low'), money('high')];
    const firms = standing(context, 'definition-of-value');
    const owed = (body: Html | undefined, what: string) => body ?? (isAppraisal ? absent(what) : undefined);
    return html`<div class="valuation"${context.source(entry.span)}>
${isTitled ? html`<h3>${entry.title ?? 'Valuation'}</h3>` : nothing}
${definitions([
        ['Opinion', opinion ? html`<p class="opinion"><strong>${amountText(opinion)}</strong>${inWords === undefined ? nothing : html` (${inWords})`}</p>` : absent('the opinion')],
        ['Range', low && high ? `${low} to ${high}` : low ? `from ${low}` : high ? `up to ${high}` : undefined],
        ['On', effective?.type === 'date' ? dateText(effective.figure) : absent('the date the opinion is for')],
        ['Wanted for', owed(context.body(entry, 'purpose') ?? (isAppraisal ? context.body(survey, 'purpose') : undefined), 'what the value is wanted for')],
        ['For the use of', isAppraisal ? context.text(survey, 'requested-for') ?? absent('who is to rely on it') : undefined],
        ['Value means', context.body(entry, 'basis') ?? (String(firms) === '' ? absent('what the value means') : firms)],
        ['Assumed', owed(context.body(entry, 'assumptions'), 'assumptions that, found untrue, would change the value, or that there are none')],
        ['Her condition', owed(context.body(entry, 'condition-assumed'), 'what is taken for granted of her condition')],
        ['Method', context.body(entry, 'method')],
        ['Sales comparison', approach(context, entry, 'sales', isAppraisal)],
        ['Cost approach', approach(context, entry, 'cost', isAppraisal)],
        ['Income approach', approach(context, entry, 'income', isAppraisal)],
        ['Like new today', usesFigures(entry, 'cost') ? undefined : money('replacement')],
        ['Services before', owed(context.body(entry, 'prior-services'), 'services to this vessel in the three years before, or that there were none')],
    ])}
${costTable(context, entry)}
${entry.comparables.length === 0 ? nothing : comparablesPart(context, entry)}
${reconciliation(context, entry, opinion)}
${context.body(entry, 'remarks') ?? nothing}
</div>`;
}

/** What came of an approach, or why it was left out; silence is told where all three must be considered. */
function approach(context: ReportContext, entry: Valuation, name: Approach, isOwed: boolean): Html | undefined {
    const written = context.body(entry, `${name}-approach`);
    if (written || !isOwed) {
        return written;
    }
    if (usesFigures(entry, name)) {
        return html`<p>${name === 'sales' ? `Used, with ${counted(entry.comparables.length, 'comparable')}, below.` : 'Used; the sum stands below.'}</p>`;
    }
    return speaksOf(entry, name) ? html`<p>As said under the method.</p>` : absent('what came of it, or why it was left out');
}

const row = (label: Html | string, figure: Html | string, className = '') => html`<tr${className === '' ? nothing : html` class="${className}"`}><th scope="row">${label}</th><td class="number">${figure}</td></tr>
`;

const table = (label: string, caption: Html | string, attributes: Html, rows: Html) => html`<div class="table" tabindex="0" role="group" aria-label="${label}"><table class="sums"${attributes}>
<caption>${caption}</caption>
<thead><tr><th scope="col">Item</th><th scope="col" class="number">Amount</th></tr></thead>
<tbody>
${rows}</tbody>
</table></div>
`;

const signed = (value: number) => `${value > 0 ? '+' : ''}${moneyText(value)}`;

/** The cost of a like new vessel less what age, wear and dated design take off, each a share of that cost. */
function costTable(context: ReportContext, entry: Valuation): Html {
    const replacement = amountOf(entry, 'replacement');
    const share = (property: 'depreciation' | 'obsolescence') => {
        const value = context.first(entry, property);
        return value?.type === 'quantity' && value.low === undefined ? { si: value.si, text: figureText(value.figure) } : undefined;
    };
    const off = ([['Age and wear', share('depreciation')], ['Dated design and gear', share('obsolescence')]] as const).flatMap(([label, value]) => value ? [{ label, ...value }] : []);
    if (!replacement || replacement.ends || off.length === 0) {
        return nothing;
    }
    const amounts = off.map(({ si }) => -shareOf(replacement.amount, si));
    return html`<h3>Cost less depreciation</h3>
${table('Cost less depreciation', 'Cost less depreciation', nothing, html`${row('Like new today', moneyText(replacement.amount, replacement.currency))}
${off.map(({ label, text }, index) => row(`${label}, ${text} of it`, signed(amounts[index] ?? 0)))}
${row('Cost less depreciation', html`<strong>${moneyText(sumOf([replacement.amount, ...amounts]), replacement.currency)}</strong>`, 'total')}`)}`;
}

function comparablesPart(context: ReportContext, entry: Valuation): Html {
    const rungs = ladderOf(entry);
    return html`<h3>Comparables and their adjustments toward the vessel surveyed</h3>
<p>What a comparable has better than the vessel surveyed is taken off her price, what she has worse is added.</p>
${rungs.map(rung => comparableTable(context, rung))}`;
}

function comparableTable(context: ReportContext, rung: Rung): Html {
    const { comparable, steps, sum, written, adjusted, currency } = rung;
    const soldOn = context.first(comparable, 'sold-on');
    const price = context.first(comparable, 'sold') ?? context.first(comparable, 'asking');
    return table(`Comparable ${comparable.id}`, html`${comparable.id}. ${comparable.title ?? ''}${comparable.facts.has('source') ? html` <span class="muted">${context.values(comparable, 'source')}</span>` : nothing}`, context.source(comparable.span), html`
${row(html`${rung.isAsked ? 'Asked' : 'Sold'}${soldOn?.type === 'date' ? `, ${dateText(soldOn.figure)}` : ''}`, price?.type === 'quantity' ? figureText(price.figure) : html`<span class="absent">not recorded</span>`)}
${steps.map(step => row(stepLabel(step), step.amount !== undefined ? signed(step.amount) : step.written ? figureText(step.written.figure) : html`<span class="absent">not recorded</span>`))}
${adjusted === undefined ? nothing : row('Adjusted', html`<strong>${moneyText(adjusted, currency)}</strong>`, 'total')}
${sum !== undefined && written && Math.abs(sum - written.amount) >= 0.005 ? row(html`<strong class="absent">The figures above sum to</strong>`, moneyText(sum, currency)) : nothing}
${sharesOf(rung)}
${asKnown(context, rung)}
${comparable.facts.has('remarks') ? row('Remark', context.values(comparable, 'remarks')) : nothing}
${comparable.facts.has('explained') ? row('Why she is used', context.values(comparable, 'explained')) : nothing}
`);
}

/** The reason of an adjustment; where it is written as a share of the price, the share too. */
function stepLabel({ reason, written }: Rung['steps'][number]): string {
    return written?.figure.dimension === 'fraction' ? `${reason}, ${figureText(written.figure)} of the price` : reason;
}

/** Her year, length, hours and standing, where they are recorded. */
function asKnown(context: ReportContext, { comparable }: Rung): Html {
    const fact = (property: 'built' | 'length' | 'engine-hours') => comparable.facts.has(property) ? context.values(comparable, property) : undefined;
    const stands = (property: 'condition' | 'gear') => {
        const value = context.first(comparable, property);
        return isWord(value) ? `${property} ${value.word}` : undefined;
    };
    const [built, length, hours] = [fact('built'), fact('length'), fact('engine-hours')];
    const parts = [built && html`built ${built}`, length, hours && html`engine hours ${hours}`, stands('condition'), stands('gear')].filter(part => part !== undefined);
    return parts.length === 0 ? nothing : row('As known', joined(parts, ', '));
}

/** What the adjustments amount to, as shares of the price. */
function sharesOf({ price, steps }: Rung): Html {
    const amounts = steps.flatMap(({ amount }) => amount ?? []);
    const [gross, net] = price && amounts.length > 0 && amounts.length === steps.length ? [grossShare(price.amount, amounts), netShare(price.amount, amounts)] : [];
    return gross === undefined || net === undefined ? nothing : row('Adjustments, of the price', `${percent(gross)}, on balance ${percent(net)}`);
}

/** Adjusted prices in one currency, where every comparable has one. */
function adjustedOf(rungs: readonly Rung[]): number[] | undefined {
    const adjusted = rungs.flatMap(rung => rung.adjusted ?? []);
    return adjusted.length > 0 && adjusted.length === rungs.length && new Set(rungs.map(rung => rung.currency)).size === 1 ? adjusted : undefined;
}

/** From the adjusted prices to the opinion: weights, spread, repairs taken off, and what is left between. */
function reconciliation(context: ReportContext, entry: Valuation, opinion: Amount | undefined): Html {
    const rungs = ladderOf(entry);
    const weighed = weighedOf(rungs);
    const words = html`${context.body(entry, 'reconciled') ?? nothing}${entry.facts.has('explained') ? definitions([['Why it stands', context.body(entry, 'explained')]]) : nothing}`;
    const weighedFigure = weighed && sumOf(weightedParts(weighed));
    const steps = stepsToOpinion(context, entry, opinion, weighedFigure, rungs[0]?.currency ?? '');
    if (rungs.length === 0 && String(steps) === '' && String(words) === '') {
        return nothing;
    }
    return html`<h3>From the figures to the opinion</h3>
${rungs.length === 0 ? nothing : ladderTable(context, rungs, weighed)}
${spreadSentence(rungs, weighed !== undefined)}
${steps}
${words}`;
}

/** Every comparable in a line, with what it adds to the weighted figure. */
function ladderTable(context: ReportContext, rungs: readonly Rung[], weighed: readonly Weighed[] | undefined): Html {
    const parts = weighed && weightedParts(weighed);
    const priceText = ({ price, isAsked }: Rung) => price ? `${moneyText(price.amount, price.currency)}${isAsked ? ' asked' : ''}` : html`<span class="absent">not recorded</span>`;
    const change = ({ price, adjusted }: Rung) => price && adjusted !== undefined ? signed(sumOf([adjusted, -price.amount])) : '';
    const columns = [{ title: 'Comparable' }, ...['Price', 'Adjustments', 'Adjusted', ...weighed ? ['Weight', 'Adds'] : []].map(title => ({ title, isNumber: true }))];
    const rows = rungs.map((rung, index) => ({
        attributes: context.source(rung.comparable.span),
        cells: [
            rung.comparable.id, priceText(rung), change(rung), rung.adjusted === undefined ? '' : moneyText(rung.adjusted, rung.currency),
            ...weighed && parts ? [`× ${String(weighed[index]?.weight ?? '')}`, moneyText(parts[index] ?? 0)] : [],
        ],
    }));
    const total = weighed && parts ? [{ attributes: html` class="total"`, cells: ['Weighted figure', '', '', '', shortNumber(weightSum(weighed.map(({ weight }) => weight))), html`<strong>${moneyText(sumOf(parts), rungs[0]?.currency)}</strong>`] }] : [];
    return wideTable('Comparables weighed together', columns, [...rows, ...total], 'ladder');
}

const shortNumber = (value: number): string => String(Math.round(value * 1000) / 1000);

function spreadSentence(rungs: readonly Rung[], isWeighed: boolean): Html {
    const adjusted = adjustedOf(rungs);
    if (!adjusted) {
        return rungs.length < 2 ? nothing : html`<p>${new Set(rungs.map(rung => rung.currency)).size > 1 ? 'The comparables are in different currencies, so no figure is computed from them together.' : 'Not every comparable has an adjusted price, so no figure is computed from them together.'}</p>`;
    }
    const [mean, spread] = [plainMean(adjusted), spreadShare(adjusted)];
    const currency = rungs[0]?.currency;
    return mean === undefined || spread === undefined ? nothing
        : html`<p>The adjusted prices run from ${moneyText(Math.min(...adjusted))} to ${moneyText(Math.max(...adjusted), currency)}; their plain mean is ${moneyText(Math.round(mean * 100) / 100, currency)}, and they spread over ${percent(spread)} of it.${isWeighed ? '' : ' No weights are recorded for all of them, so they are not weighed together.'}</p>`;
}

/** The weighted figure, less repairs, against the opinion; the difference is rounding or the surveyor's judgment, and is called which. */
function stepsToOpinion(context: ReportContext, entry: Valuation, opinion: Amount | undefined, weighedFigure: number | undefined, currency: string): Html {
    const repairs = amountOf(entry, 'repairs-deducted');
    const repairsText = entry.facts.has('repairs') || entry.facts.has('repairs-of') ? html`: ${joined([...entry.facts.has('repairs') ? [context.values(entry, 'repairs')] : [], ...entry.facts.has('repairs-of') ? [context.values(entry, 'repairs-of')] : []], '; ')}` : nothing;
    const isComparable = weighedFigure !== undefined && (!repairs || (isOneCurrency(repairs.currency, currency) && !repairs.ends));
    if (weighedFigure === undefined || !isComparable) {
        return repairs || String(repairsText) !== '' ? definitions([['Repairs taken off', html`${repairs ? amountText(repairs) : 'An amount not recorded'}${repairsText}`]]) : nothing;
    }
    const after = repairs ? sumOf([weighedFigure, -repairs.amount]) : weighedFigure;
    const isInOne = opinion !== undefined && isOneCurrency(opinion.currency, currency);
    const difference = isInOne && !opinion.ends ? sumOf([opinion.amount, -after]) : undefined;
    const step = isInOne && !opinion.ends ? roundingBetween(after, opinion.amount) : undefined;
    return html`${table('From the weighted figure to the opinion', 'From the weighted figure to the opinion', nothing, html`${row('Weighted figure', moneyText(weighedFigure, currency))}
${repairs ? html`${row(html`Repairs taken off${repairsText}`, signed(-repairs.amount))}${row('After repairs', moneyText(after, currency), 'total')}` : nothing}
${difference === undefined || difference === 0 ? nothing : row(step === undefined ? 'The surveyor’s judgment' : `Rounding, to the nearest ${moneyText(step)}`, signed(difference))}
${opinion && isInOne ? row('Opinion', html`<strong>${amountText(opinion)}</strong>`, 'total') : nothing}`)}
${!repairs && String(repairsText) !== '' ? html`<p class="absent">Not recorded: the amount of repairs taken off${repairsText}</p>` : nothing}
${difference !== undefined && difference !== 0 && step === undefined && !['reconciled', 'explained', 'remarks'].some(property => entry.facts.has(property)) ? absent('why the opinion differs from the figures by more than rounding') : nothing}
${opinion?.ends && isInOne ? html`<p>The figure ${after >= opinion.ends[0] && after <= opinion.ends[1] ? 'lies within' : 'lies outside'} the range of the opinion.</p>` : nothing}
${opinion && !isInOne ? html`<p>The opinion is in another currency than the comparables, so the two are not set against each other.</p>` : nothing}`;
}
