/** Comparables that carry the value poorly: adjusted much, old, only asked for, too few, or the other approaches passed over. */
import { grossShare, netShare } from '../../trade/comparables.js';
import { valueOf, yardstick, type DateFigure, type Span, type SurveyRecord, type Valuation, type Yardstick } from '../../record/model.js';
import { defineCheck, type Correction, type Raised, type Severity } from '../contract.js';
import { capital, listed, percent } from '../phrasing.js';
import { speaksOf, usesFigures } from './approaches.js';
import { headOf, ladderOf, textOf, type Rung } from './ladder.js';
import { changedValuation, soundValuation } from './sample.js';

const monthS = 365.25 / 12 * 86_400;

export const comparableTooWeak = defineCheck({
    id: 'comparable-too-weak',
    group: 'valuation',
    severity: 'warning',
    isOfReport: true,
    title: 'Comparables carry the value poorly',
    why: 'A lender or underwriter sends back a value that rests on few, old, asked or much adjusted prices.',
    needs: ['valuation: opinion, comparables', 'comparable: sold or asking, adjustments, sold-on', 'valuation: effective, else survey: issued or an attendance', 'valuation: method, cost-approach, income-approach'],
    computes: 'Gross adjustment (signs left out) over 25 % of the price, or net over 15 %; a sale more than 18 months before the effective date; an asking price with no adjustment for it; fewer than 3 comparables; cost or income neither used nor explained. An error where the survey is for a lender, advice else.',
    sources: [
        { text: 'three approaches, each used or its omission explained', standard: 'USPAP', provenance: 'secondary' },
        { text: 'gross and net adjustment (lenders’ habit in housing), number of comparables, age of sales', provenance: 'practice' },
        { text: 'courts took sales of up to 15 months, or two years', provenance: 'published' },
        { text: 'an asking price is no sale; the discount is shown', provenance: 'practice' },
    ],
    yardsticks: ['gross-adjustment', 'net-adjustment', 'sale-age', 'comparables-least'],
    limits: [
        'A text written as explained: in the comparable, or in the valuation for what concerns it as a whole, settles the matter; whether it convinces is the reader’s to judge.',
        'An approach counts as considered where its property is written or the method speaks of it, the cost approach also where a depreciation of the cost is recorded.',
        'A date known to the month or year counts as its last day, so that a sale is never called old on a doubt.',
    ],
    examples: [{
        name: 'net adjustment of 16 %',
        bad: changedValuation(['adjust "Rigging": -2500 USD', 'adjust "Rigging": -7680 USD'], ['adjust "Condition": 1000 USD', 'adjust "Condition": -7440 USD'], ['adjusted: 84180 USD', 'adjusted: 70560 USD'], ['opinion: 84500 USD', 'opinion: 77500 USD']),
        fixed: soundValuation,
    }, {
        name: 'sale of two years ago',
        bad: changedValuation(['sold-on: 2025-08', 'sold-on: 2024-06']),
        fixed: changedValuation(['sold-on: 2025-08', 'sold-on: 2024-06  explained: "The only sale of a sister vessel; prices have moved as adjusted"']),
    }, {
        name: 'asking price taken as a sale',
        bad: changedValuation(['sold: 79500 USD  sold-on: 2025-08', 'asking: 79500 USD']),
        fixed: changedValuation(['sold: 79500 USD  sold-on: 2025-08', 'asking: 84500 USD  adjust "Asking price against usual sale": -5000 USD']),
    }, {
        name: 'two comparables',
        bad: 'valuation { effective: 2026-06-15  opinion: 84000 USD  cost-approach: "As a ceiling only"  income-approach: "She is not hired"\n    comparable A { sold: 84000 USD  sold-on: 2026-02 }\n    comparable B { sold: 83500 USD  sold-on: 2026-03 }\n}\n',
        fixed: 'valuation { effective: 2026-06-15  opinion: 84000 USD  cost-approach: "As a ceiling only"  income-approach: "She is not hired"\n    comparable A { sold: 84000 USD  sold-on: 2026-02 }\n    comparable B { sold: 83500 USD  sold-on: 2026-03 }\n    comparable C { sold: 84500 USD  sold-on: 2026-04 }\n}\n',
    }, {
        name: 'income passed over',
        bad: changedValuation(['; income was left out, for she is not hired.', '.']),
        fixed: changedValuation(['; income was left out, for she is not hired."', '."\n    income-approach: "Left out: vessels of her kind are not kept for hire here"']),
    }],
    silent: [
        { name: 'three recent sales, little adjusted', text: soundValuation },
        { name: 'net adjustment just within 15 %', text: changedValuation(['adjust "Rigging": -2500 USD', 'adjust "Rigging": -8180 USD'], ['adjust "Condition": 1000 USD', 'adjust "Condition": -6100 USD'], ['adjusted: 84180 USD', 'adjusted: 71400 USD'], ['opinion: 84500 USD', 'opinion: 78000 USD']) },
        { name: 'sale of eighteen months ago', text: changedValuation(['sold-on: 2025-08', 'sold-on: 2024-12']) },
        { name: 'asking price adjusted for being asked', text: changedValuation(['sold: 79500 USD  sold-on: 2025-08', 'asking: 84500 USD  adjust "Asked, not sold": -5000 USD']) },
        { name: 'the other approaches in their own words', text: changedValuation(['method: "Comparison of sales. Cost was taken as a ceiling; income was left out, for she is not hired."', 'cost-approach: "As a ceiling only"  income-approach: "She is not hired"']) },
    ],
    run(record, raise) {
        for (const valuation of record.valuations) {
            const severity: Severity = isForLender(record) ? 'error' : 'warning';
            const rungs = ladderOf(valuation);
            rungs.forEach(rung => judgeRung(record, valuation, rung, problem => raise({ severity, ...problem })));
            judgeWhole(record, valuation, rungs, problem => raise({ severity, ...problem }));
        }
    },
});

/** Whether the report is made for somebody who lends on her. */
function isForLender(record: SurveyRecord): boolean {
    const { survey } = record;
    return survey !== undefined && ['requested-for', 'client', 'purpose'].some(property => /\b(?:lend(?:er|ers|ing)|bank|loan|mortgage|financ\w*|credit union)\b/i.test(textOf(survey, property) ?? ''));
}

type Raise = (problem: Raised) => void;

function judgeRung(record: SurveyRecord, valuation: Valuation, rung: Rung, raise: Raise): void {
    const { comparable } = rung;
    if (textOf(comparable, 'explained') !== undefined) {
        return;
    }
    const priceAt = comparable.facts.get(rung.isAsked ? 'asking' : 'sold')?.span;
    judgeAdjustments(record, rung, priceAt, raise);
    if (rung.isAsked && priceAt && !rung.steps.some(({ reason }) => /\b(?:ask(?:ed|ing)|list(?:ed|ing)|discount\w*|negotiat\w*|bargain\w*|haggl\w*)\b/i.test(reason))) {
        raise(weak(priceAt, `${capital(rung.name)} rests on an asking price, and nothing is taken off for its not being a sale. What is asked is seldom paid; find what she sold at, or adjust for it.`, explainAt(priceAt)));
    }
    judgeAge(record, valuation, rung, raise);
}

function judgeAdjustments(record: SurveyRecord, rung: Rung, at: Span | undefined, raise: Raise): void {
    const amounts = rung.steps.flatMap(({ amount }) => amount ?? []);
    if (!at || !rung.price || amounts.length < rung.steps.length) {
        return;
    }
    const [gross, net] = [grossShare(rung.price.amount, amounts), netShare(rung.price.amount, amounts)];
    const over = (share: number | undefined, limit: Yardstick, name: string) => share !== undefined && share > limit.si + 1e-9 ? [`${name} ${percent(share)} of its price, over ${limit.whose} of ${limit.written}`] : [];
    const parts = [...over(gross, yardstick(record, 'gross-adjustment'), 'by'), ...over(net, yardstick(record, 'net-adjustment'), 'on balance by')];
    if (parts.length > 0 && gross !== undefined && net !== undefined) {
        raise({
            ...weak(at, `${capital(rung.name)} is adjusted ${listed(parts)}. So much adjusted she says little of the vessel surveyed; take a nearer sale, or write explained: and why she is used.`, explainAt(at)),
            figures: { gross: { value: gross * 100, unit: '%' }, net: { value: net * 100, unit: '%' } },
        });
    }
}

/** An empty place for the explanation; it settles nothing until it is filled in. */
const explainAt = (after: Span, property = 'explained'): Correction[] => [{ kind: 'replace-text', title: `Add ${property}: and say why`, span: { ...after, start: after.end }, text: `  ${property}: ""`, isStep: true }];

const weak = (at: Span, message: string, corrections: readonly Correction[]): Raised => ({ components: [], at, message, corrections });

/** First and last day a date may mean, as numbers that sort like days. */
function daysMeant({ year, month, day, precision }: DateFigure): readonly [first: number, last: number] {
    const [m0, m1] = precision === 'year' ? [1, 12] : [month, month];
    return [(year * 12 + m0 - 1) * 31 + (precision === 'day' ? (day ?? 1) - 1 : 0), (year * 12 + m1 - 1) * 31 + (precision === 'day' ? (day ?? 1) - 1 : 30)];
}

function effectiveDate(record: SurveyRecord, valuation: Valuation): DateFigure | undefined {
    const dated = valueOf(valuation, 'effective') ?? (record.survey ? valueOf(record.survey, 'issued') : undefined);
    return dated?.type === 'date' ? dated.figure : record.survey?.attendances.findLast(attendance => attendance.date !== undefined)?.date;
}

function judgeAge(record: SurveyRecord, valuation: Valuation, rung: Rung, raise: Raise): void {
    const { comparable } = rung;
    const sold = valueOf(comparable, 'sold-on');
    const effective = effectiveDate(record, valuation);
    if (!effective || rung.isAsked || !rung.price) {
        return;
    }
    const at = comparable.facts.get('sold-on')?.span;
    if (sold?.type !== 'date' || !at) {
        const priceAt = comparable.facts.get('sold')?.span;
        if (priceAt) {
            raise({ components: [], at: priceAt, severity: 'hint', message: `When ${rung.name} was sold is not recorded; record sold-on, to tell whether the sale is recent enough.` });
        }
        return;
    }
    const limit = yardstick(record, 'sale-age');
    const months = Math.round(limit.si / monthS);
    if (daysMeant(sold.figure)[1] + months * 31 < daysMeant(effective)[0]) {
        raise(weak(at, `${capital(rung.name)} was sold ${sold.figure.iso}, more than ${limit.written} (${limit.whose}) before ${effective.iso}, the date of the opinion. Markets move; take a later sale, or write explained: and why she is used.`, explainAt(at)));
    }
}

function judgeWhole(record: SurveyRecord, valuation: Valuation, rungs: readonly Rung[], raise: Raise): void {
    const opinion = valuation.facts.get('opinion')?.span;
    if (!opinion || textOf(valuation, 'explained') !== undefined) {
        return;
    }
    const limit = yardstick(record, 'comparables-least');
    const count = rungs.filter(({ price }) => price !== undefined).length;
    const isCost = speaksOf(valuation, 'cost') || usesFigures(valuation, 'cost');
    const isIncome = speaksOf(valuation, 'income');
    if (count < limit.si && !(count === 0 && (isCost || isIncome))) {
        raise({
            components: [], at: headOf(valuation), corrections: explainAt(opinion),
            message: `The opinion rests on ${count === 0 ? 'no comparable' : count === 1 ? 'one comparable' : `${count} comparables`} with a price; ${limit.whose} is ${limit.written} or more. ${count === 0 ? 'Nothing then shows where it comes from' : 'One odd sale then carries the value'}; add sales, or write explained: and why there are no more.`,
            figures: { comparables: { value: count, unit: '' } },
        });
    }
    const passed = [...(isCost ? [] : [['cost-approach', 'cost'] as const]), ...(isIncome ? [] : [['income-approach', 'income'] as const])];
    if (passed.length > 0) {
        const named = listed(passed.map(([, name]) => name));
        raise({
            components: [], at: valuation.facts.get('method')?.span ?? headOf(valuation), corrections: passed.flatMap(([property]) => explainAt(opinion, property)),
            message: `The opinion neither uses nor explains leaving out the ${named} approach. A reader who needs all three considered sends it back; say in method, or under ${listed(passed.map(([property]) => `${property}:`))}, what came of it or why it was left out.`,
        });
    }
}
