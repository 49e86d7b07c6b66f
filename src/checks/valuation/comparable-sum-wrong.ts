/** A comparable whose adjustments do not lead to the adjusted price, stand with the wrong sign, or are weighed wrongly. */
import { signAgrees, weightsMakeUpOne, weightSum, type Standing } from '../../trade/comparables.js';
import type { Span, SurveyRecord, Valuation } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { headOf, isOneCurrency, ladderOf, money, moneyFact, type Rung, type Step } from './ladder.js';
import { changedValuation, soundValuation } from './sample.js';
import { standingOf } from './standing.js';

/** Sums agree to one unit of money, for adjustments are rounded one by one. */
const tolerance = 1;

const sails = 'adjust "Rigging": -2500 USD';
const written = 'adjusted: 84180 USD';

export const comparableSumWrong = defineCheck({
    id: 'comparable-sum-wrong',
    group: 'valuation',
    severity: 'error',
    isOfReport: true,
    title: 'Sums of a comparable are wrong',
    why: 'The value stands on these sums, and a reader who adds them up trusts nothing else.',
    needs: ['comparable: sold or asking, adjustments, adjusted', 'comparable: weight on all', 'for the sign: a reason that says better, worse, newer, older and the like, or comparable: built, length, engine-hours, condition, gear'],
    computes: 'Price + adjustments = adjusted, to 1. A comparable better than the vessel surveyed is adjusted down, a worse one up. Weights make up 1, to 0.01.',
    sources: [
        { text: 'sum of the adjustments, and of the weights', provenance: 'computed' },
        { text: 'the comparable is adjusted toward the vessel surveyed: down where it is better', provenance: 'practice' },
    ],
    limits: [
        'The sign is judged only where the reason says in plain words how the comparable stands, or facts of both vessels tell it; words that speak of the market, of the sale or in the negative are left alone.',
        'An adjustment in percent is taken of the price. One in another currency than the price is reported by value-words-figures-differ, and no sum is made.',
    ],
    examples: [{
        name: 'adjusted price misses an adjustment',
        bad: changedValuation([written, 'adjusted: 83180 USD']),
        fixed: soundValuation,
        correction: 'Write the sum, 84180 USD',
    }, {
        name: 'a better comparable adjusted up',
        bad: changedValuation([sails, 'adjust "Superior rigging": 2500 USD'], [written, '']),
        fixed: changedValuation([sails, 'adjust "Superior rigging": -2500 USD'], [written, '']),
        correction: 'Change the sign: -2500 USD',
    }, {
        name: 'weights make up 1.1',
        bad: changedValuation(['weight: 0.3', 'weight: 0.4']),
        fixed: soundValuation,
        correction: 'Weigh C with 0.3',
    }],
    silent: [
        { name: 'all sums right', text: soundValuation },
        { name: 'off by rounding', text: changedValuation([written, 'adjusted: 84181 USD']) },
        { name: 'a worse comparable adjusted up', text: changedValuation([sails, 'adjust "Inferior rigging": 2500 USD'], [written, 'adjusted: 89180 USD']) },
        { name: 'the words speak of the vessel surveyed', text: changedValuation([sails, 'adjust "Subject has superior rigging": 2500 USD'], [written, 'adjusted: 89180 USD']) },
        { name: 'the words speak of the market', text: changedValuation([sails, 'adjust "Better market since the sale": 2500 USD'], [written, 'adjusted: 89180 USD']) },
        { name: 'weights of thirds', text: changedValuation(['weight: 0.5', 'weight: 0.33'], ['weight: 0.2', 'weight: 0.33'], ['weight: 0.3 ', 'weight: 0.33 ']) },
        { name: 'adjusted price not written', text: changedValuation([written, '']) },
        { name: 'an adjustment in percent', text: changedValuation([sails, 'adjust "Rigging": 5 %'], [written, 'adjusted: 90880 USD']) },
    ],
    run(record, raise) {
        for (const valuation of record.valuations) {
            const rungs = ladderOf(valuation);
            rungs.forEach(rung => judgeRung(record, rung, raise));
            judgeWeights(valuation, rungs, raise);
        }
    },
});

function judgeRung(record: SurveyRecord, rung: Rung, raise: (problem: Raised) => void): void {
    const wrong = rung.steps.flatMap(step => {
        const standing = standingOf(record, rung.comparable, step.reason);
        return standing && step.amount !== undefined && !signAgrees(step.amount, standing) ? [{ step, standing }] : [];
    });
    wrong.forEach(({ step, standing }) => raise(signProblem(rung, step, standing)));
    const { price, written, sum } = rung;
    const at = rung.comparable.facts.get('adjusted')?.span;
    if (!written || !at) {
        return;
    }
    const unknown = rung.steps.filter(step => step.written === undefined);
    if (!price && rung.steps.length > 0) {
        raise({ components: [], at, severity: 'hint', message: `The price of ${rung.name} is not recorded; record sold, or asking, to tell whether its adjustments lead to ${money(written.amount, written.currency)}.` });
    } else if (unknown.length === 1 && unknown[0]) {
        raise({ components: [], at: unknown[0].span, severity: 'hint', message: `The adjustment "${unknown[0].reason}" of ${rung.name} has no amount; write it after a colon, to tell whether the adjustments lead to ${money(written.amount, written.currency)}.` });
    } else if (price && sum !== undefined && isOneCurrency(price.currency, written.currency) && Math.abs(sum - written.amount) > tolerance + 1e-6) {
        const turned = wrong.reduce((total, { step }) => total - 2 * (step.amount ?? 0), sum);
        if (wrong.length === 0 || Math.abs(turned - written.amount) > tolerance + 1e-6) {
            raise(sumProblem(rung, at, sum, written.amount));
        }
    }
}

/** The figure of an adjustment, which ends it. */
const figureSpan = ({ span, written }: Step): Span => ({ ...span, start: span.end - (written?.figure.written.length ?? 0) });

function turnSign(step: Step): Correction {
    const figure = step.written?.figure.written ?? '';
    const text = /^[-−]/.test(figure) ? figure.slice(1).trim() : `-${figure}`;
    return { kind: 'replace-text', title: `Change the sign: ${text}`, span: figureSpan(step), text };
}

function signProblem(rung: Rung, step: Step, standing: Standing): Raised {
    const way = standing === 'better' ? 'down' : 'up';
    return {
        components: [], at: figureSpan(step),
        message: `"${step.reason}" is adjusted by ${step.written?.figure.written ?? ''}, yet ${rung.name} is ${standing} than the vessel surveyed in this. A ${standing} comparable is adjusted ${way}, toward her; change the sign, or say in the reason which of the two is meant.`,
        figures: { adjustment: { value: step.amount ?? 0, unit: rung.currency } },
        corrections: [turnSign(step)],
    };
}

function sumProblem(rung: Rung, at: Span, sum: number, written: number): Raised {
    const flip = rung.steps.filter(({ amount }) => amount !== undefined && amount !== 0 && Math.abs(sum - 2 * amount - written) <= tolerance);
    return {
        components: [], at,
        message: `The price and adjustments of ${rung.name} make up ${money(sum, rung.currency)}, and ${money(written, rung.currency)} is written as adjusted. The value stands on this sum; add it up again.${flip[0] ? ` With the sign of "${flip[0].reason}" changed it would agree.` : ''}`,
        figures: { sum: { value: sum, unit: rung.currency }, written: { value: written, unit: rung.currency } },
        corrections: [{ kind: 'replace-text', title: `Write the sum, ${moneyFact(sum, rung.currency)}`, span: at, text: moneyFact(sum, rung.currency) }, ...flip.slice(0, 1).map(turnSign)],
    };
}

function judgeWeights(valuation: Valuation, rungs: readonly Rung[], raise: (problem: Raised) => void): void {
    const weights = rungs.flatMap(({ weight }) => weight ?? []);
    const without = rungs.filter(({ weight }) => weight === undefined);
    const sum = weightSum(weights);
    if (weights.length === 0 || weightsMakeUpOne(weights)) {
        return;
    }
    if (without.length > 0 && sum < 1) {
        if (without.length === 1 && without[0]) {
            raise({ components: [], at: headOf(valuation), severity: 'hint', message: `The weight of ${without[0].name} is not recorded; record it to tell whether the weights make up 1.` });
        }
        return;
    }
    const last = rungs.findLast(({ weight }) => weight !== undefined)?.comparable.facts.get('weight');
    raise({
        components: [], at: last?.span ?? headOf(valuation),
        message: `The weights of the comparables make up ${rounded(sum)} and not 1: ${listed(rungs.flatMap(({ comparable, weight }) => weight === undefined ? [] : [`${comparable.id} ${weight}`]))}. The weighted figure is ${sum > 1 ? 'too high' : 'too low'} by as much; weigh them again.`,
        figures: { weights: { value: sum, unit: '' } },
        related: rungs.flatMap(({ comparable, name }) => { const span = comparable.facts.get('weight')?.span; return span && span !== last?.span ? [{ message: `weight of ${name}`, span }] : []; }),
        corrections: rungs.toReversed().flatMap((rung): Correction[] => {
            const fact = rung.comparable.facts.get('weight');
            const weight = rounded((rung.weight ?? 0) + 1 - sum);
            return fact && weight > 0 && weight < 1 ? [{ kind: 'replace-text', title: `Weigh ${rung.comparable.id || 'it'} with ${weight}`, span: fact.span, text: String(weight) }] : [];
        }),
    });
}

const rounded = (value: number): number => Math.round(value * 10_000) / 10_000;
