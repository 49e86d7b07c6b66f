/** The opinion of value with every sum shown. The opinion is the surveyor's; the sums beside it are arithmetic. */
import type { Comparable, Valuation } from '../../record/model.js';
import { definitions, type ReportContext, type Section } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { dateText, figureText, moneyText, numberInWords } from '../wording.js';

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
    const inWords = opinion ? numberInWords(opinion.si) : undefined;
    const money = (property: string) => {
        const value = amount(context, entry, property);
        return value ? moneyText(value.si, value.currency) : undefined;
    };
    const [low, high] = [money('low'), money('high')];
    return html`<div class="valuation"${context.source(entry.span)}>
${isTitled ? html`<h3>${entry.title ?? 'Valuation'}</h3>` : nothing}
${definitions([
        ['Opinion', opinion ? html`<p class="opinion"><strong>${moneyText(opinion.si, opinion.currency)}</strong>${inWords === undefined ? nothing : html` (${inWords} ${opinion.currency})`}</p>` : html`<p class="absent">Not recorded: the opinion.</p>`],
        ['Range', low && high ? `${low} to ${high}` : low ?? high],
        ['On', effective?.type === 'date' ? dateText(effective.figure) : undefined],
        ['Value means', context.body(entry, 'basis')],
        ['Method', context.body(entry, 'method')],
        ['Like new today', money('replacement')],
    ])}
${entry.comparables.length === 0 ? nothing : comparablesTable(context, entry.comparables)}
${context.body(entry, 'remarks') ?? nothing}
</div>`;
}

interface Sum {
    readonly comparable: Comparable;
    readonly sum?: number;
    readonly recorded?: number;
    readonly weight?: number;
    readonly currency: string;
}

function sumOf(context: ReportContext, comparable: Comparable): Sum {
    const start = amount(context, comparable, 'sold') ?? amount(context, comparable, 'asking');
    const recorded = amount(context, comparable, 'adjusted');
    const weight = context.first(comparable, 'weight');
    const isWhole = comparable.adjustments.every(adjustment => adjustment.amount !== undefined && (adjustment.amount.figure.currency ?? '') === (start?.currency ?? ''));
    return {
        comparable, currency: start?.currency ?? recorded?.currency ?? '',
        ...(start && isWhole ? { sum: comparable.adjustments.reduce((sum, adjustment) => sum + (adjustment.amount?.si ?? 0), start.si) } : {}),
        ...(recorded ? { recorded: recorded.si } : {}), ...(weight?.type === 'quantity' ? { weight: weight.si } : {}),
    };
}

function comparablesTable(context: ReportContext, comparables: readonly Comparable[]): Html {
    const sums = comparables.map(comparable => sumOf(context, comparable));
    const row = (label: Html | string, figure: Html | string, className = '') => html`<tr${className === '' ? nothing : html` class="${className}"`}><th scope="row">${label}</th><td class="number">${figure}</td></tr>
`;
    const signed = (value: number) => `${value > 0 ? '+' : ''}${moneyText(value)}`;
    const weighed = sums.every(({ sum, recorded, weight }) => (recorded ?? sum) !== undefined && weight !== undefined) && new Set(sums.map(s => s.currency)).size === 1;
    const total = sums.reduce((all, { sum, recorded, weight }) => all + (recorded ?? sum ?? 0) * (weight ?? 0), 0);
    const weights = sums.reduce((all, { weight }) => all + (weight ?? 0), 0);
    const one = (label: string, caption: Html, attributes: Html, rows: Html) => html`<div class="table" tabindex="0" role="group" aria-label="${label}"><table class="sums"${attributes}>
<caption>${caption}</caption>
<thead><tr><th scope="col">Item</th><th scope="col" class="number">Amount</th></tr></thead>
<tbody>
${rows}</tbody>
</table></div>
`;
    return html`<h3>Comparables and their adjustments toward the vessel surveyed</h3>
${sums.map(({ comparable, sum, recorded, weight, currency }) => {
        const soldOn = context.first(comparable, 'sold-on');
        const price = context.first(comparable, 'sold') ?? context.first(comparable, 'asking');
        const differs = sum !== undefined && recorded !== undefined && Math.abs(sum - recorded) >= 0.005;
        return one(`Comparable ${comparable.id}`, html`${comparable.id}. ${comparable.title ?? ''}${comparable.facts.has('source') ? html` <span class="muted">${context.values(comparable, 'source')}</span>` : nothing}`, context.source(comparable.span), html`
${row(html`${comparable.facts.has('sold') ? 'Sold' : 'Asked'}${soldOn?.type === 'date' ? `, ${dateText(soldOn.figure)}` : ''}`, price?.type === 'quantity' ? figureText(price.figure) : html`<span class="absent">not recorded</span>`)}
${comparable.adjustments.map(adjustment => row(adjustment.reason, adjustment.amount ? signed(adjustment.amount.si) : html`<span class="absent">not recorded</span>`))}
${recorded === undefined && sum === undefined ? nothing : row('Adjusted', html`<strong>${moneyText(recorded ?? sum ?? 0, currency)}</strong>`, 'total')}
${differs ? row(html`<strong class="absent">The figures above sum to</strong>`, moneyText(sum, currency)) : nothing}
${weight === undefined ? nothing : row('Weight', String(weight))}
${comparable.facts.has('remarks') ? row('Remark', context.values(comparable, 'remarks')) : nothing}
`);
    })}
${weighed ? one('Weighed together', html`Weighed together`, nothing, html`
${sums.map(({ comparable, sum, recorded, weight }) => row(html`${comparable.id}: ${moneyText(recorded ?? sum ?? 0)} × ${String(weight ?? 0)}`, moneyText((recorded ?? sum ?? 0) * (weight ?? 0))))}
${row(html`Sum, the weights making up ${String(Math.round(weights * 1000) / 1000)}`, html`<strong>${moneyText(Math.round(total * 100) / 100, sums[0]?.currency)}</strong>`, 'total')}
`) : nothing}`;
}
