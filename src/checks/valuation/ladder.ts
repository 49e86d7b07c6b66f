/** A valuation's comparables as rungs of one ladder: price, adjustments, sum, the adjusted price written, weight. */
import { adjustedPrice } from '../../trade/comparables.js';
import { shareOf } from '../../trade/money-sums.js';
import { anyValue, siOf, valuesOf, type Comparable, type FactSet, type Quantity, type Span, type Valuation } from '../../record/model.js';

export interface Amount {
    /** The middle, where a range is written. */
    readonly amount: number;
    /** Empty where none is written. */
    readonly currency: string;
    /** Ends of a range. */
    readonly ends?: readonly [low: number, high: number];
}

export interface Step {
    readonly reason: string;
    /** In the currency of the price; undefined where none is written or it is in another. */
    readonly amount?: number;
    readonly written?: Quantity;
    readonly span: Span;
}

export interface Rung {
    readonly comparable: Comparable;
    /** "comparable A". */
    readonly name: string;
    /** Price sold at, else price asked. */
    readonly price?: Amount;
    readonly isAsked: boolean;
    readonly steps: readonly Step[];
    /** Price and adjustments together, where all are known. */
    readonly sum?: number;
    /** Adjusted price as the surveyor wrote it. */
    readonly written?: Amount;
    /** Adjusted price to reckon with: the one written, else the sum. */
    readonly adjusted?: number;
    readonly currency: string;
    readonly weight?: number;
}

/** An amount of money of a block, with its currency. */
export function amountOf(set: FactSet, property: 'sold' | 'asking' | 'adjusted' | 'opinion' | 'low' | 'high' | 'replacement' | 'repairs-deducted'): Amount | undefined {
    const value = anyValue(set, property);
    return value?.type === 'quantity' && value.figure.dimension === 'money'
        ? { amount: value.si, currency: value.figure.currency ?? '', ...(value.low === undefined || value.high === undefined ? {} : { ends: [value.low, value.high] }) } : undefined;
}

/** Currencies agree where they are the same, or where one is not written. */
export const isOneCurrency = (a: string, b: string): boolean => a === b || a === '' || b === '';

/** An adjustment as an amount: money of the price's currency, a bare number, or a share of the price. */
function stepAmount(written: Quantity | undefined, price: Amount | undefined): number | undefined {
    switch (written?.figure.dimension) {
        case 'money': return isOneCurrency(written.figure.currency ?? '', price?.currency ?? '') ? written.si : undefined;
        case 'number': return written.si;
        case 'fraction': return price === undefined ? undefined : shareOf(price.amount, written.si);
        default: return undefined;
    }
}

export function rungOf(comparable: Comparable): Rung {
    const sold = amountOf(comparable, 'sold');
    const price = sold ?? amountOf(comparable, 'asking');
    const steps = comparable.adjustments.map(({ reason, amount: figure, span }): Step => {
        const amount = stepAmount(figure, price);
        return { reason, span, ...(figure ? { written: figure } : {}), ...(amount === undefined ? {} : { amount }) };
    });
    const amounts = steps.flatMap(({ amount }) => amount === undefined ? [] : [amount]);
    const sum = price && amounts.length === steps.length ? adjustedPrice(price.amount, amounts) : undefined;
    const written = amountOf(comparable, 'adjusted');
    const adjusted = written?.amount ?? sum;
    const weight = siOf(comparable, 'weight');
    return {
        comparable, steps, isAsked: sold === undefined && price !== undefined, currency: (written?.currency || price?.currency) ?? '',
        name: `comparable ${comparable.id || comparable.title || 'without a name'}`,
        ...(price ? { price } : {}), ...(written ? { written } : {}), ...(sum === undefined ? {} : { sum }), ...(adjusted === undefined ? {} : { adjusted }), ...(weight === undefined ? {} : { weight }),
    };
}

export const ladderOf = (valuation: Valuation): readonly Rung[] => valuation.comparables.map(rungOf);

/** The adjusted prices and weights, where every comparable has both and all are in one currency. */
export function weighedOf(rungs: readonly Rung[]): readonly { readonly adjusted: number; readonly weight: number }[] | undefined {
    const weighed = rungs.flatMap(({ adjusted, weight }) => adjusted === undefined || weight === undefined ? [] : [{ adjusted, weight }]);
    return weighed.length > 0 && weighed.length === rungs.length && new Set(rungs.map(rung => rung.currency)).size === 1 ? weighed : undefined;
}

/** Text of a block, all its quotes together; undefined where none is written or it is blank. */
export function textOf(set: FactSet<'valuation' | 'comparable' | 'survey'>, property: string): string | undefined {
    const text = (set.facts.get(property)?.values ?? []).flatMap(value => value.type === 'text' ? [value.prose.text.trim()] : []).filter(part => part !== '').join('; ');
    return text === '' ? undefined : text;
}

/** The word `valuation` at the head of the block, for what concerns it as a whole. */
export const headOf = ({ span }: Valuation): Span => ({ ...span, end: span.start + 'valuation'.length });

/** An amount for a sentence: "84,180 USD". */
export function money(amount: number, currency: string): string {
    const whole = Math.abs(amount - Math.round(amount)) < 0.005;
    const digits = Math.abs(amount).toFixed(whole ? 0 : 2).replace(/\B(?=(?:\d{3})+(?!\d))(?<!\.\d*)/g, ',');
    return `${amount < 0 ? '-' : ''}${digits}${currency === '' ? '' : ` ${currency}`}`;
}

/** The same as it is written in a record: "84180 USD". */
export const moneyFact = (amount: number, currency: string): string => money(amount, currency).replaceAll(',', '');

/** An amount or a range for a sentence: "70,000 to 80,000 USD". */
export function moneyText({ amount, currency, ends }: Amount): string {
    return ends ? `${money(ends[0], '')} to ${money(ends[1], currency)}` : money(amount, currency);
}

/** The same as it is written in a record: "70000 USD..80000 USD". */
export function amountFact({ amount, currency, ends }: Amount): string {
    return ends ? ends.map(end => moneyFact(end, currency)).join('..') : moneyFact(amount, currency);
}

/** Components named by a property of a valuation. */
export const namedBy = (valuation: Valuation, property: 'repairs-of'): readonly string[] => valuesOf(valuation, property).map(ref => ref.id);
