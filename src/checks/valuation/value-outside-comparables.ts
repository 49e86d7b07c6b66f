/** An opinion of value that its comparables, its own range or the cost of a new vessel do not bear out. */
import { roundedTo, roundingStep, spreadShare, weightedMean, weightsMakeUpOne } from '../../trade/comparables.js';
import { yardstick, type Span, type SurveyRecord, type Valuation } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { amountOf, headOf, isOneCurrency, ladderOf, money, moneyFact, moneyText, textOf, weighedOf, type Amount, type Rung } from './ladder.js';
import { changedValuation, soundValuation } from './sample.js';
import { percent } from '../phrasing.js';

export const valueOutsideComparables = defineCheck({
    id: 'value-outside-comparables',
    group: 'valuation',
    severity: 'error',
    isOfReport: true,
    title: 'Value is not borne out by its comparables',
    why: 'A value outside the prices it is drawn from is not supported by them.',
    needs: ['valuation: opinion', 'comparables with a price, adjusted or with all adjustments', 'valuation: low, high, replacement, where recorded'],
    computes: 'Opinion outside the least and greatest adjusted price; spread = (greatest - least) / mean of the adjusted prices, over 30 %; opinion over the cost of a like new vessel; opinion outside its own range.',
    sources: [
        { text: 'the opinion lies within the adjusted prices, and below the cost of a like new vessel', provenance: 'practice' },
        { text: 'reconciled by weight and rounded to 500 or 1000', provenance: 'practice' },
        { text: 'a share over which a spread is explained', provenance: 'practice' },
    ],
    yardsticks: ['comparables-spread'],
    limits: [
        'Of an opinion written as a range, the middle is held against the comparables, and its ends against the rest.',
        'A text written as explained: in the valuation settles all but a range that excludes its own opinion.',
        'With one comparable there is no least and greatest, and nothing is said of the spread. Where an adjusted price cannot be made up, or is in another currency, the opinion is not judged against the comparables.',
        'The opinion is rounded, so it may lie outside by half the step it is rounded to: 500 up to 100 000, 1000 above.',
        'Craft that are no longer built may be worth more than a new one of their kind costs; say so under explained.',
    ],
    examples: [{
        name: 'opinion over all adjusted prices',
        bad: changedValuation(['opinion: 84500 USD', 'opinion: 94500 USD']),
        fixed: soundValuation,
        correction: 'Take the weighted mean, rounded: 84500 USD',
    }, {
        name: 'spread of 38 %',
        bad: changedValuation(['sold: 79500 USD', 'sold: 109500 USD'], ['adjusted: 88975 USD', 'adjusted: 118975 USD']),
        fixed: changedValuation(['sold: 79500 USD', 'sold: 109500 USD'], ['adjusted: 88975 USD', 'adjusted: 118975 USD'], ['opinion: 84500 USD', 'opinion: 84500 USD  explained: "B was sold with a berth, which could not be told apart and is why she weighs least"']),
    }, {
        name: 'more than a new one costs',
        bad: changedValuation(['replacement: 310000 USD', 'replacement: 31000 USD']),
        fixed: soundValuation,
    }, {
        name: 'outside its own range',
        bad: changedValuation(['opinion: 84500 USD', 'opinion: 84500 USD  low: 85000 USD  high: 88000 USD']),
        fixed: changedValuation(['opinion: 84500 USD', 'opinion: 84500 USD  low: 82000 USD  high: 88000 USD']),
    }],
    silent: [
        { name: 'within the adjusted prices', text: soundValuation },
        { name: 'at the least adjusted price, rounded', text: changedValuation(['opinion: 84500 USD', 'opinion: 82500 USD']) },
        { name: 'just under it by rounding', text: changedValuation(['opinion: 84500 USD', 'opinion: 82250 USD']) },
        { name: 'outside, and explained', text: changedValuation(['opinion: 84500 USD', 'opinion: 94500 USD  explained: "Her berth goes with her, which none of the three had"']) },
        { name: 'comparables in another currency', text: 'valuation { opinion: 84500 USD  comparable A { sold: 60000 EUR } comparable B { sold: 61000 EUR } comparable C { sold: 62000 EUR } }\n' },
    ],
    run(record, raise) {
        for (const valuation of record.valuations) {
            const opinion = amountOf(valuation, 'opinion');
            const at = valuation.facts.get('opinion')?.span;
            if (opinion && at) {
                judgeRange(valuation, opinion, at, raise);
                if (textOf(valuation, 'explained') === undefined) {
                    judgeComparables(valuation, opinion, at, raise);
                    judgeReplacement(valuation, opinion, at, raise);
                }
            }
            if (textOf(valuation, 'explained') === undefined) {
                judgeSpread(record, valuation, raise);
            }
        }
    },
});

type Raise = (problem: Raised) => void;

/** Comparables with an adjusted price, where all have one in one currency. */
function pricedOf(valuation: Valuation): readonly (Rung & { readonly adjusted: number })[] {
    const rungs = ladderOf(valuation);
    const priced = rungs.flatMap(rung => rung.adjusted === undefined ? [] : [{ ...rung, adjusted: rung.adjusted }]);
    return priced.length === rungs.length && new Set(rungs.map(({ currency }) => currency)).size === 1 ? priced : [];
}

function judgeComparables(valuation: Valuation, opinion: Amount, at: Span, raise: Raise): void {
    const priced = pricedOf(valuation);
    const [first] = priced;
    if (!first || priced.length < 2 || !isOneCurrency(first.currency, opinion.currency)) {
        return;
    }
    const [least, most] = [Math.min(...priced.map(r => r.adjusted)), Math.max(...priced.map(r => r.adjusted))];
    const slack = roundingStep(opinion.amount) / 2;
    if (opinion.amount >= least - slack && opinion.amount <= most + slack) {
        return;
    }
    const side = opinion.amount > most ? 'over the greatest' : 'under the least';
    raise({
        components: [], at,
        message: `The opinion, ${moneyText(opinion)}, lies ${side} of the adjusted prices, ${money(least, '')} to ${money(most, opinion.currency)}. A value outside the prices it is drawn from is not supported by them; weigh them again, or write explained: and what they leave out.`,
        figures: { opinion: { value: opinion.amount, unit: opinion.currency }, least: { value: least, unit: opinion.currency }, greatest: { value: most, unit: opinion.currency } },
        corrections: weighCorrections(valuation, opinion, at),
    });
}

function weighCorrections(valuation: Valuation, opinion: Amount, at: Span): Correction[] {
    const weighed = weighedOf(ladderOf(valuation));
    const mean = weighed && weightsMakeUpOne(weighed.map(({ weight }) => weight)) ? weightedMean(weighed) : undefined;
    if (mean === undefined) {
        return [];
    }
    const text = moneyFact(roundedTo(mean, roundingStep(mean)), opinion.currency);
    return [{ kind: 'replace-text', title: `Take the weighted mean, rounded: ${text}`, span: at, text }];
}

function judgeSpread(record: SurveyRecord, valuation: Valuation, raise: Raise): void {
    const priced = pricedOf(valuation);
    const spread = spreadShare(priced.map(({ adjusted }) => adjusted));
    const limit = yardstick(record, 'comparables-spread');
    if (spread === undefined || spread <= limit.si + 1e-9) {
        return;
    }
    const sorted = priced.toSorted((a, b) => a.adjusted - b.adjusted);
    const ends = [sorted[0], sorted.at(-1)].filter(rung => rung !== undefined);
    raise({
        components: [], at: headOf(valuation),
        message: `The adjusted prices spread over ${percent(spread)} of their mean, from ${ends.map(({ name, adjusted, currency }) => `${money(adjusted, currency)} (${name})`).join(' to ')}; ${limit.whose} is ${limit.written}. Adjusted toward one vessel they should meet; adjust them again, drop the odd one, or write explained: and why they differ.`,
        figures: { spread: { value: spread * 100, unit: '%' } },
        related: ends.flatMap(({ comparable, name }) => { const span = (comparable.facts.get('adjusted') ?? comparable.facts.get('sold') ?? comparable.facts.get('asking'))?.span; return span ? [{ message: name, span }] : []; }),
    });
}

function judgeReplacement(valuation: Valuation, opinion: Amount, at: Span, raise: Raise): void {
    const replacement = amountOf(valuation, 'replacement');
    if (!replacement || !isOneCurrency(replacement.currency, opinion.currency) || (opinion.ends?.[1] ?? opinion.amount) <= replacement.amount) {
        return;
    }
    const span = valuation.facts.get('replacement')?.span;
    raise({
        components: [], at,
        message: `The opinion, ${moneyText(opinion)}, is more than a like new vessel costs, ${money(replacement.amount, replacement.currency)}. Nobody pays more for an old one than for a new one without a reason; one of the two is mistaken, or write explained: and the reason.`,
        figures: { opinion: { value: opinion.amount, unit: opinion.currency }, replacement: { value: replacement.amount, unit: replacement.currency } },
        ...(span ? { related: [{ message: 'cost of a like new vessel', span }] } : {}),
    });
}

function judgeRange(valuation: Valuation, opinion: Amount, at: Span, raise: Raise): void {
    const [low, high] = [amountOf(valuation, 'low'), amountOf(valuation, 'high')];
    const isUnder = low && isOneCurrency(low.currency, opinion.currency) && (opinion.ends?.[0] ?? opinion.amount) < low.amount;
    const isOver = high && isOneCurrency(high.currency, opinion.currency) && (opinion.ends?.[1] ?? opinion.amount) > high.amount;
    if (!isUnder && !isOver) {
        return;
    }
    const end = isUnder ? low : high;
    raise({
        components: [], at,
        message: `The opinion, ${moneyText(opinion)}, is ${isUnder ? 'under the lower' : 'over the upper'} end of its own range, ${money(end?.amount ?? 0, end?.currency ?? '')}. The report would contradict itself; put the range or the opinion right.`,
        figures: { opinion: { value: opinion.amount, unit: opinion.currency } },
    });
}
