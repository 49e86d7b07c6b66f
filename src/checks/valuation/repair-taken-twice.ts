/** A repair that lowers the value twice: in the adjustments of the comparables, and in the cost of repairs taken off. */
import type { Span, SurveyRecord, Valuation } from '../../record/model.js';
import { nameOf } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { ladderOf, namedBy, type Rung, type Step } from './ladder.js';
import { changedValuation, soundValuation } from './sample.js';

const opinionLine = 'opinion: 84500 USD';
const repairs = (text: string) => `${opinionLine}  repairs-deducted: 9000 USD  repairs: "${text}"`;

export const repairTakenTwice = defineCheck({
    id: 'repair-taken-twice',
    group: 'valuation',
    severity: 'warning',
    isOfReport: true,
    title: 'A repair lowers the value twice',
    why: 'The value comes out too low by the cost of that repair.',
    needs: ['comparable: adjustments that lower its price', 'valuation: repairs-deducted, with repairs or repairs-of; else findings with a cost'],
    computes: 'An adjustment that lowers a comparable because the vessel surveyed is worse in some item, and the same item among the repairs whose cost is taken off the value. Items are one where the words of the one are all among the words of the other.',
    sources: [{ text: 'what the adjustments take account of is not taken off again as cost', provenance: 'practice' }],
    limits: [
        'Items are compared by their words, less words of condition and time; other names for one thing are not known to be one.',
        'An adjustment that raises a comparable takes nothing off, and is left alone. One that speaks of condition at large may hold the same repair; that is asked.',
        'Where neither repairs nor repairs-of is written, the repairs taken off are read from the titles of findings with a cost.',
    ],
    examples: [{
        name: 'rigging in both',
        bad: changedValuation([opinionLine, repairs('renewal of the standing rigging, exhaust hose')]),
        fixed: changedValuation([opinionLine, repairs('exhaust hose')]),
    }, {
        name: 'a component named',
        bad: `${changedValuation([opinionLine, `${opinionLine}  repairs-deducted: 9000 USD  repairs-of: W1`])}windlass W1 "Anchor windlass"\n`.replace('adjust "Electronics": -4000 USD', 'adjust "Her windlass was new": -4000 USD'),
        fixed: `${changedValuation([opinionLine, `${opinionLine}  repairs-deducted: 9000 USD  repairs-of: W1`])}windlass W1 "Anchor windlass"\n`,
    }],
    silent: [
        { name: 'nothing taken off', text: soundValuation },
        { name: 'another item', text: changedValuation([opinionLine, repairs('exhaust hose')]) },
        { name: 'the running rigging, not the standing', text: changedValuation([opinionLine, repairs('renewal of the running rigging')], ['adjust "Rigging"', 'adjust "Standing rigging"']) },
        { name: 'the adjustment raises the comparable', text: changedValuation([opinionLine, repairs('renewal of the rigging')], ['adjust "Rigging": -2500 USD', 'adjust "Rigging": 2500 USD'], ['adjusted: 84180 USD', 'adjusted: 89180 USD']) },
    ],
    run(record, raise) {
        for (const valuation of record.valuations) {
            const items = itemsOf(record, valuation);
            for (const rung of items.length === 0 ? [] : ladderOf(valuation)) {
                rung.steps.forEach(step => judgeStep(rung, step, items, raise));
            }
        }
    },
});

interface Item {
    readonly name: string;
    /** Sets of words, any of which may be the one compared. */
    readonly words: readonly ReadonlySet<string>[];
    readonly span?: Span;
}

/** Words that name no item: of condition, time, work and quantity. */
const empty = new Set(('about after again aged better been best cost each fair fewer first fitted fourth from general good great have hers inferior item items into just known last less life lower many more much near need needed needs newer '
    + 'none older other over past poor prior recent recently reduced renew renewal renewed renewing repair repaired repairing repairs replace replaced replacement replacing second since some sound still such superior than that their them then '
    + 'there these they this three under were when whole with without work worn worse year years allowance condition difference overhaul overhauled service servicing subject surveyed vessel age new old her his the was its for and one two four five has had not no off out all').split(' '));

/** The stem of a word, as far as its ending tells: refastened, refastening and refasten are one. */
const stemOf = (word: string): string => {
    const singular = word.length < 5 ? word : word.replace(/ies$/, 'y').replace(/(ss|x|ch|sh)es$/, '$1').replace(/(?<![su])s$/, '');
    const bare = singular.length < 6 ? singular : singular.replace(/(?:ed|ing)$/, '');
    return bare.length < 4 ? bare : bare.replace(/e$/, '');
};

const wordsOf = (text: string): ReadonlySet<string> => new Set((text.toLowerCase().match(/[a-z]{3,}/g) ?? []).filter(word => !empty.has(word)).map(stemOf));

/** The repairs taken off, each with the words that name it. */
function itemsOf(record: SurveyRecord, valuation: Valuation): readonly Item[] {
    const fact = valuation.facts.get('repairs');
    const written = (fact?.values ?? []).flatMap(value => value.type === 'text' ? value.prose.text.split(/[,;]|\band\b/) : []);
    const named = namedBy(valuation, 'repairs-of').flatMap(id => record.components.get(id) ?? []);
    const span = (fact ?? valuation.facts.get('repairs-of'))?.span;
    if (written.length + named.length > 0) {
        return [
            ...written.map(text => ({ name: text.trim(), words: [wordsOf(text)], ...(span ? { span } : {}) })),
            ...named.map(part => ({ name: nameOf(part), words: [wordsOf(part.title ?? ''), wordsOf(record.vocabulary.kinds.get(part.kind)?.title ?? part.kind)], ...(span ? { span } : {}) })),
        ].filter(({ words }) => words.some(set => set.size > 0));
    }
    return !valuation.facts.has('repairs-deducted') ? [] : record.findings.filter(({ facts }) => facts.has('cost')).map(({ id, title, idSpan }) => ({ name: `${title} (${id})`, words: [wordsOf(title)], span: idSpan }));
}

const isWithin = (few: ReadonlySet<string>, many: ReadonlySet<string>): boolean => few.size > 0 && [...few].every(word => many.has(word));

function judgeStep(rung: Rung, step: Step, items: readonly Item[], raise: (problem: Raised) => void): void {
    if (step.amount === undefined || step.amount >= 0) {
        return;
    }
    const parts = step.reason.split(/[,;]|\band\b/).map(wordsOf);
    if (parts.every(part => part.size === 0)) {
        if (/\bcondition\b/i.test(step.reason)) {
            raise({ components: [], at: step.span, severity: 'hint', message: `"${step.reason}" of ${rung.name} does not say which items it is for, and the cost of repairs is taken off the value too; name the items, to tell whether any is counted twice.` });
        }
        return;
    }
    const item = items.find(({ words }) => words.some(set => parts.some(part => isWithin(part, set) || isWithin(set, part))));
    if (!item) {
        return;
    }
    raise({
        components: [], at: step.span,
        message: `${rung.name.charAt(0).toUpperCase()}${rung.name.slice(1)} is already lowered by ${step.written?.figure.written.replace(/^[-−]/, '') ?? ''} for "${step.reason}", and "${item.name}" is among the repairs whose cost is taken off. The value comes out too low by one of them; keep the adjustment or the deduction.`,
        figures: { adjustment: { value: step.amount, unit: rung.currency } },
        ...(item.span ? { related: [{ message: 'the repair taken off', span: item.span }] } : {}),
        corrections: [{ kind: 'replace-text', title: `Drop the adjustment "${step.reason}"`, span: step.span, text: '' }],
    });
}
