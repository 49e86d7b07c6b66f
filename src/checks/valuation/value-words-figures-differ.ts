/** The value said twice and differently: in words and figures, in summary and letter, in one currency and another. */
import { amountInWords, amountsInText, type AmountInText } from '../../trade/number-words.js';
import { componentsOf, proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import type { Span, SurveyRecord, Valuation } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { amountFact, amountOf, isOneCurrency, ladderOf, money, moneyFact, moneyText, type Amount } from './ladder.js';
import { changedValuation, soundValuation } from './sample.js';
import { valueMentions } from './value-mentions.js';

const opinionLine = 'opinion: 84500 USD';

export const valueWordsFiguresDiffer = defineCheck({
    id: 'value-words-figures-differ',
    group: 'valuation',
    severity: 'error',
    isOfReport: true,
    title: 'Value is said twice and differently',
    why: 'Whoever relies on the value cannot tell which of the two is meant.',
    needs: ['valuation: opinion', 'valuation: opinion-words, summary, letter', 'amounts in prose that speaks of the value', 'currencies of the opinion, range, replacement cost and adjusted prices'],
    computes: 'The number said in words, and every amount in summary, letter and prose that is named as the value, against the opinion; every currency against that of the opinion.',
    sources: [{ text: 'figures, words, summary and letter agree', provenance: 'practice' }],
    limits: [
        'Words are read in English, to under a million million.',
        'A dollar sign, or the word, agrees with every dollar; a bare amount with every currency.',
        'In prose only an amount that follows words such as market value or opinion of value counts; a replacement, insured, former or weighted figure does not. An opinion in two currencies is not told apart.',
        'Where there are several opinions of value, prose that agrees with any of them is left alone.',
    ],
    examples: [{
        name: 'words and figures',
        bad: changedValuation([opinionLine, `${opinionLine}  opinion-words: "Eighty-five thousand four hundred US dollars"`]),
        fixed: changedValuation([opinionLine, `${opinionLine}  opinion-words: "Eighty-four thousand five hundred US dollars"`]),
        correction: 'Write the words for 84500 USD',
    }, {
        name: 'summary',
        bad: changedValuation([opinionLine, `${opinionLine}  summary: "Her market value is 48,500 USD."`]),
        fixed: changedValuation([opinionLine, `${opinionLine}  summary: "Her market value is 84,500 USD."`]),
        correction: 'Write 84,500 USD here',
    }, {
        name: 'remarks of the survey',
        bad: changedValuation([opinionLine, `${opinionLine}  remarks: "We hold the market value to be 48,500 USD, before the work."`]),
        fixed: changedValuation([opinionLine, `${opinionLine}  remarks: "We hold the market value to be 84,500 USD, before the work."`]),
        correction: 'Write 84,500 USD here',
    }, {
        name: 'replacement cost in another currency',
        bad: changedValuation(['replacement: 310000 USD', 'replacement: 310000 EUR']),
        fixed: soundValuation,
    }],
    silent: [
        { name: 'words and figures agree', text: changedValuation([opinionLine, `${opinionLine}  opinion-words: "Eighty-four thousand five hundred dollars ($84,500)"`]) },
        { name: 'the words with and, and without a currency', text: changedValuation([opinionLine, `${opinionLine}  opinion-words: "eighty four thousand and five hundred"`]) },
        { name: 'letter names the value and the replacement cost', text: changedValuation([opinionLine, `${opinionLine}  letter: "The replacement cost is 310,000 USD, and the market value 84,500 USD."`]) },
        { name: 'the weighted figure before rounding', text: changedValuation([opinionLine, `${opinionLine}  remarks: "The weighted figure is 84,608 USD; the opinion is rounded from it."`]) },
        { name: 'no opinion recorded', text: 'valuation { opinion-words: "Eighty-four thousand dollars" }\n' },
    ],
    run(record, raise) {
        for (const valuation of record.valuations) {
            const opinion = amountOf(valuation, 'opinion');
            if (opinion) {
                judgeWords(record, valuation, opinion, raise);
                (['summary', 'letter'] as const).forEach(property => judgeText(record, valuation, property, opinion, raise));
                judgeCurrencies(valuation, opinion, raise);
            }
        }
        judgeProse(record, raise);
    },
});

type Raise = (problem: Raised) => void;

const agrees = (found: AmountInText, opinion: Amount): boolean =>
    (opinion.ends ?? [opinion.amount]).some(amount => Math.abs(found.amount - amount) < 0.005) && (found.currencies === undefined || opinion.currency === '' || found.currencies.includes(opinion.currency));

const isInside = (inner: Span, outer: Span): boolean => inner.uri === outer.uri && inner.start >= outer.start && inner.end <= outer.end;

/** A text of the valuation itself, for those that are written as one. */
function entryOf(record: SurveyRecord, valuation: Valuation, property: string): ProseEntry | undefined {
    const span = valuation.facts.get(property)?.span;
    return span ? proseOf(record).find(entry => entry.property === property && isInside(entry.span, span)) : undefined;
}

function judgeWords(record: SurveyRecord, valuation: Valuation, opinion: Amount, raise: Raise): void {
    const fact = valuation.facts.get('opinion-words');
    const entry = entryOf(record, valuation, 'opinion-words');
    if (!fact || !entry) {
        return;
    }
    const found = amountsInText(entry.said);
    if (!found.some(({ isInWords }) => isInWords)) {
        raise({ components: [], at: fact.span, severity: 'hint', message: `No number is read in ${fact.written}; write the opinion in words, such as "seventy-six thousand US dollars", so that it can be held against the figures.` });
        return;
    }
    // Of a range both ends are to be said.
    const isShort = opinion.ends?.some(end => !found.some(({ amount }) => Math.abs(amount - end) < 0.005));
    const wrong = found.find(amount => !agrees(amount, opinion)) ?? (isShort ? found[0] : undefined);
    if (!wrong) {
        return;
    }
    const words = opinionInWords(opinion);
    raise({
        components: [], at: fact.span,
        message: `The opinion is ${moneyText(opinion)} in figures, and its words say ${said(wrong)}. Whoever relies on it cannot tell which is meant; settle it and make them agree.`,
        figures: { figures: { value: opinion.amount, unit: opinion.currency }, words: { value: wrong.amount, unit: unitOf(wrong, opinion) } },
        related: opinionSpan(valuation),
        corrections: [
            ...(words === undefined ? [] : [{ kind: 'replace-text' as const, title: `Write the words for ${amountFact(opinion)}`, span: fact.span, text: `"${words}"` }]),
            ...copyBack(valuation, wrong, opinion),
        ],
    });
}

/** The opinion in words, a range as from one end to the other. */
function opinionInWords({ amount, currency, ends }: Amount): string | undefined {
    const words = (ends ?? [amount]).map(end => amountInWords(end, currency));
    return words.includes(undefined) ? undefined : ends ? `from ${words.join(' to ')}` : words[0];
}

const said = (found: AmountInText): string => money(found.amount, found.currencies?.length === 1 ? (found.currencies[0] ?? '') : found.currencies ? 'dollars' : '');
const unitOf = (found: AmountInText, opinion: Amount): string => found.currencies?.length === 1 ? (found.currencies[0] ?? '') : opinion.currency;

function opinionSpan(valuation: Valuation): readonly { message: string; span: Span }[] {
    const span = valuation.facts.get('opinion')?.span;
    return span ? [{ message: 'the opinion in figures', span }] : [];
}

/** Takes what the other place says over into the opinion. */
function copyBack(valuation: Valuation, found: AmountInText, opinion: Amount): Correction[] {
    const span = valuation.facts.get('opinion')?.span;
    const text = moneyFact(found.amount, unitOf(found, opinion));
    return span ? [{ kind: 'replace-text', title: `Change the opinion to ${text}`, span, text }] : [];
}

/** Summary and letter: an amount named as the value must be the opinion, and so must the only amount there is. */
function judgeText(record: SurveyRecord, valuation: Valuation, property: 'summary' | 'letter', opinion: Amount, raise: Raise): void {
    const entry = entryOf(record, valuation, property);
    if (!entry) {
        return;
    }
    const amounts = amountsInText(entry.said).filter(({ currencies }) => currencies !== undefined);
    const named = valueMentions(entry.said);
    const wrong = named.find(amount => !agrees(amount, opinion)) ?? (named.length === 0 && amounts.length === 1 ? amounts.find(amount => !agrees(amount, opinion)) : undefined);
    if (wrong) {
        raise(textProblem({ valuation, opinion, wrong, entry, where: `the ${property}` }));
    }
}

interface Place {
    readonly valuation: Valuation;
    readonly opinion: Amount;
    readonly wrong: AmountInText;
    readonly entry: ProseEntry;
    readonly where: string;
}

function textProblem({ valuation, opinion, wrong, entry, where }: Place): Raised {
    const span = spanIn(entry, wrong.start, wrong.end - wrong.start);
    const text = moneyText(opinion);
    return {
        components: componentsOf(entry), ...(entry.owner.type === 'finding' ? { finding: entry.owner.finding } : {}), at: span,
        message: `The opinion is ${text}, and ${where} says ${said(wrong)}. Whoever relies on it cannot tell which is meant; settle it and make them agree.`,
        figures: { opinion: { value: opinion.amount, unit: opinion.currency }, there: { value: wrong.amount, unit: unitOf(wrong, opinion) } },
        related: opinionSpan(valuation),
        corrections: [...(entry.isWritten ? [{ kind: 'replace-text' as const, title: `Write ${text} here`, span, text }] : []), ...copyBack(valuation, wrong, opinion)],
    };
}

function judgeCurrencies(valuation: Valuation, opinion: Amount, raise: Raise): void {
    const other = (amount: Amount | undefined) => amount !== undefined && !isOneCurrency(amount.currency, opinion.currency);
    const say = (span: Span | undefined, what: string, currency: string) => {
        if (span) {
            raise({
                components: [], at: span,
                message: `The opinion is in ${opinion.currency}, and ${what} in ${currency}. Side by side they cannot be weighed; convert it at the rate of the date, and say the rate.`,
                related: opinionSpan(valuation),
            });
        }
    };
    for (const [property, what] of [['low', 'the lower end of its range'], ['high', 'the upper end of its range'], ['replacement', 'the cost of a like new vessel']] as const) {
        const amount = amountOf(valuation, property);
        if (other(amount)) {
            say(valuation.facts.get(property)?.span, what, amount?.currency ?? '');
        }
    }
    for (const rung of ladderOf(valuation)) {
        const final = rung.written ?? rung.price;
        const fact = rung.comparable.facts.get(rung.written ? 'adjusted' : rung.isAsked ? 'asking' : 'sold');
        if (other(final)) {
            say(fact?.span, `the adjusted price of ${rung.name}`, final?.currency ?? '');
            continue;
        }
        for (const step of rung.steps) {
            const currency = step.written?.figure.currency;
            if (currency !== undefined && rung.price && !isOneCurrency(currency, rung.price.currency)) {
                say(step.span, `the adjustment "${step.reason}" of ${rung.name}`, currency);
            }
        }
    }
}

/** Prose anywhere, but of comparables, that names an amount as the value. */
function judgeProse(record: SurveyRecord, raise: Raise): void {
    const opinions = record.valuations.flatMap(valuation => { const opinion = amountOf(valuation, 'opinion'); return opinion ? [{ valuation, opinion }] : []; });
    const [first] = opinions;
    const apart = record.valuations.flatMap(({ comparables, facts }) => [...comparables.map(({ span }) => span), ...['opinion-words', 'summary', 'letter'].flatMap(property => facts.get(property)?.span ?? [])]);
    if (!first) {
        return;
    }
    for (const entry of proseOf(record).filter(({ span }) => !apart.some(outer => isInside(span, outer)))) {
        for (const wrong of valueMentions(entry.said).filter(amount => !opinions.some(({ opinion }) => agrees(amount, opinion)))) {
            raise(textProblem({ ...first, wrong, entry, where: 'the text here' }));
        }
    }
}
