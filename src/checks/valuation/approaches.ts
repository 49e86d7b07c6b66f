/** The three approaches to value: which of them a valuation uses or speaks of. */
import type { Valuation } from '../../record/model.js';
import { textOf } from './ladder.js';

export type Approach = 'sales' | 'cost' | 'income';

const words: Readonly<Record<Approach, RegExp>> = {
    sales: /\b(?:sales?|sold|compar\w*)\b/i,
    cost: /\bcosts?\b/i,
    income: /\b(?:income|hire|hired|charter\w*|earn\w*|rent\w*)\b/i,
};

/** Whether the approach has its own text, or the method speaks of it. */
export function speaksOf(valuation: Valuation, approach: Approach): boolean {
    return textOf(valuation, `${approach}-approach`) !== undefined || words[approach].test(textOf(valuation, 'method') ?? '');
}

/** Whether its figures stand in the record: comparables, or a depreciated cost. Income has none. */
export function usesFigures(valuation: Valuation, approach: Approach): boolean {
    return approach === 'sales' ? valuation.comparables.length > 0 : approach === 'cost' && (valuation.facts.has('depreciation') || valuation.facts.has('obsolescence')) && valuation.facts.has('replacement');
}
