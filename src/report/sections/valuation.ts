/** The opinion of value with every sum shown. The opinion is the surveyor's; the sums beside it are arithmetic. */
import { percent } from '../../checks/phrasing.js';
import { ladderOf, weighedOf, type Rung } from '../../checks/valuation/ladder.js';
import type { Comparable, Valuation } from '../../record/model.js';
import { grossShare, netShare, weightedSum, weightSum } from '../../trade/comparables.js';
import { numberInWords } from '../../trade/number-words.js';
import { definitions, type ReportContext, type Section } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { dateText, figureText, moneyText } from '../wording.js';

export function valuation(context: ReportContext): Section | undefined {
    const { valuations } = context.record;
    return valuations.length === 0 ? undefined : { id: 'valuation', title: valuations.length === 1 && valuations[0]?.title ? valuations[0].title : 'Valuation', body: html`${valuations.map(entry => one(context, entry, valuations.length > 1))}` };
}

function amount(context: ReportContext, set: Valuation | Comparable, property: string): { readonly si: number; readonly currency: string } | undefined {
    const value = context.first(set, property);
    return value?.type === 'quantity' ? { si: value.si, currency: value.figure.currency ?? '' } : undefined;
}

function one(context: ReportContext, entry: Valuation, isTitled: boolean): Html {
    const opinion = amount(context, entry, 'opinion');
    const effective = context.first(entry, 'effective');
    const number = opinion ? numberInWords(opinion.si) : undefined;
    const inWords = entry.facts.has('opinion-words') ? context.values(entry, 'opinion-words') : number === undefined ? undefined : html`${number} ${opinion?.currency ?? ''}`;
    const money = (property: string) => {
        const value = amount(context, entry, property);
        return value ? moneyText(value.si, value.currency) : undefined;
    };
    const [low, high] = [money('low'), money('high')];
    return html`<div class="valuation"${context.source(entry.span)}>
${isTitled ? html`<h3>${entry.title ?? 'Valuation'}</h3>` : nothing}
${definitions([
        ['Opinion', opinion ? html`<p class="opinion"><strong>${moneyText(opinion.si, opinion.currency)}</strong>${inWords === undefined ? nothing : html` (${inWords})`}</p>` : html`<p class="absent">Not recorded: the opinion.</p>`],
        ['Range', low && high ? `${low} to ${high}` : low ?? high],
        ['On', effective?.type === 'date' ? dateText(effective.figure) : undefined],
        ['Value means', context.body(entry, 'basis')],
        ['Method', context.body(entry, 'method')],
        ['Cost approach', context.body(entry, 'cost-approach')],
        ['Income approach', context.body(entry, 'income-approach')],
        ['Like new today', money('replacement')],
        ['Repairs taken off', money('repairs-deducted')],
        ['Of these repairs', context.body(entry, 'repairs')],
        ['Why it stands', context.body(entry, 'explained')],
    ])}
${entry.comparables.length === 0 ? nothing : comparablesTable(context, ladderOf(entry))}
${context.body(entry, 'remarks') ?? nothing}
</div>`;
}

function comparablesTable(context: ReportContext, rungs: readonly Rung[]): Html {
    const weighed = weighedOf(rungs);
    return html`<h3>Comparables and their adjustments toward the vessel surveyed</h3>
${rungs.map(rung => comparableTable(context, rung))}
${weighed ? weighedTable(rungs, weighed) : nothing}`;
}

const row = (label: Html | string, figure: Html | string, className = '') => html`<tr${className === '' ? nothing : html` class="${className}"`}><th scope="row">${label}</th><td class="number">${figure}</td></tr>
`;

const table = (label: string, caption: Html, attributes: Html, rows: Html) => html`<div class="table" tabindex="0" role="group" aria-label="${label}"><table class="sums"${attributes}>
<caption>${caption}</caption>
<thead><tr><th scope="col">Item</th><th scope="col" class="number">Amount</th></tr></thead>
<tbody>
${rows}</tbody>
</table></div>
`;

function comparableTable(context: ReportContext, rung: Rung): Html {
    const { comparable, steps, sum, written, adjusted, weight, currency } = rung;
    const soldOn = context.first(comparable, 'sold-on');
    const price = context.first(comparable, 'sold') ?? context.first(comparable, 'asking');
    const signed = (value: number) => `${value > 0 ? '+' : ''}${moneyText(value)}`;
    return table(`Comparable ${comparable.id}`, html`${comparable.id}. ${comparable.title ?? ''}${comparable.facts.has('source') ? html` <span class="muted">${context.values(comparable, 'source')}</span>` : nothing}`, context.source(comparable.span), html`
${row(html`${rung.isAsked ? 'Asked' : 'Sold'}${soldOn?.type === 'date' ? `, ${dateText(soldOn.figure)}` : ''}`, price?.type === 'quantity' ? figureText(price.figure) : html`<span class="absent">not recorded</span>`)}
${steps.map(step => row(step.reason, step.amount !== undefined ? signed(step.amount) : step.written ? figureText(step.written.figure) : html`<span class="absent">not recorded</span>`))}
${adjusted === undefined ? nothing : row('Adjusted', html`<strong>${moneyText(adjusted, currency)}</strong>`, 'total')}
${sum !== undefined && written && Math.abs(sum - written.amount) >= 0.005 ? row(html`<strong class="absent">The figures above sum to</strong>`, moneyText(sum, currency)) : nothing}
${sharesOf(rung)}
${weight === undefined ? nothing : row('Weight', String(weight))}
${comparable.facts.has('remarks') ? row('Remark', context.values(comparable, 'remarks')) : nothing}
${comparable.facts.has('explained') ? row('Why she is used', context.values(comparable, 'explained')) : nothing}
`);
}

/** What the adjustments amount to, as shares of the price. */
function sharesOf({ price, steps }: Rung): Html {
    const amounts = steps.flatMap(({ amount }) => amount ?? []);
    const [gross, net] = price && amounts.length > 0 && amounts.length === steps.length ? [grossShare(price.amount, amounts), netShare(price.amount, amounts)] : [];
    return gross === undefined || net === undefined ? nothing : row('Adjustments, of the price', `${percent(gross)}, on balance ${percent(net)}`);
}

function weighedTable(rungs: readonly Rung[], weighed: NonNullable<ReturnType<typeof weighedOf>>): Html {
    const weights = weightSum(weighed.map(({ weight }) => weight));
    return table('Weighed together', html`Weighed together`, nothing, html`
${weighed.map(({ adjusted, weight }, index) => row(html`${rungs[index]?.comparable.id ?? ''}: ${moneyText(adjusted)} × ${String(weight)}`, moneyText(adjusted * weight)))}
${row(html`Sum, the weights making up ${String(Math.round(weights * 1000) / 1000)}`, html`<strong>${moneyText(Math.round(weightedSum(weighed) * 100) / 100, rungs[0]?.currency)}</strong>`, 'total')}
`);
}
