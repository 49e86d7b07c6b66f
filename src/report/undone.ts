/**
 * What a survey of its kind usually has and this one has not: a reader must be told that it was not done, and why
 * where the surveyor says so. Silence would be read as if it had been.
 */
import { rowsOf } from '../record/model.js';
import type { ReportContext } from './context.js';
import { nothing, type Html } from './html.js';
import { sectionOfReading } from './reading-places.js';
import { standingInline, type StandingWords } from './standing-words.js';

export interface Undone {
    /** A few words for the summary. */
    readonly short: string;
    /** Heading among the limits. */
    readonly title: string;
    readonly words: StandingWords;
    readonly text: Html;
    /** The surveyor's reason; absent where none is recorded. */
    readonly why?: Html;
}

interface Duty {
    readonly short: string;
    readonly title: string;
    readonly words: StandingWords;
    readonly kinds: readonly string[];
    readonly isDone: (context: ReportContext) => boolean;
    /** The fact of the survey that gives the reason. */
    readonly why?: 'not-hauled' | 'no-value';
}

function lay({ record: { survey } }: ReportContext, state: 'ashore' | 'afloat'): boolean {
    const written = survey?.facts.get('state')?.values[0];
    return (survey?.attendances ?? []).some(attendance => attendance.state === state) || (written?.type === 'word' && written.word === state);
}

const duties: readonly Duty[] = [
    { short: 'attendance out of the water', title: 'Out of the water', words: 'not-hauled', why: 'not-hauled', kinds: ['pre-purchase', 'condition-and-value'], isDone: context => lay(context, 'ashore') },
    { short: 'attendance afloat', title: 'Afloat', words: 'not-afloat', kinds: ['pre-purchase', 'delivery'], isDone: context => lay(context, 'afloat') },
    { short: 'trial', title: 'Trial', words: 'no-trial', kinds: ['pre-purchase', 'delivery'], isDone: context => context.record.survey?.facts.has('trial') === true || rowsOf(context.record, 'trial').length > 0 },
    { short: 'series of measurements', title: 'Measurements', words: 'no-measurements', kinds: ['pre-purchase', 'condition-and-value', 'delivery'], isDone: ({ record }) => record.readings.some(reading => sectionOfReading(reading) === 'measurements') },
    { short: 'value', title: 'Value', words: 'no-value', why: 'no-value', kinds: ['pre-purchase', 'condition-and-value', 'appraisal'], isDone: ({ record }) => record.valuations.some(valuation => valuation.facts.has('opinion')) },
    { short: 'comparison with the contract', title: 'Contract', words: 'no-contract', kinds: ['delivery'], isDone: ({ record }) => rowsOf(record, 'contract').length > 0 },
];

/** What was not done, of what a survey of this kind has; and whatever the surveyor gives a reason for not doing. */
export function undoneOf(context: ReportContext): Undone[] {
    const { survey } = context.record;
    const kind = survey?.surveyKind;
    return duties.flatMap(({ short, title, words, kinds, isDone, why }) => {
        const isOwed = kind !== undefined && kinds.includes(kind) && !isDone(context);
        const reason = why && survey?.facts.has(why) ? context.values(survey, why) : undefined;
        return isOwed || reason ? [{ short, title, words, text: isDone(context) ? nothing : standingInline(context, words), ...(reason ? { why: reason } : {}) }] : [];
    });
}

/** One of them, for the section that it belongs to. */
export function undoneAs(context: ReportContext, words: StandingWords): Undone | undefined {
    return undoneOf(context).find(undone => undone.words === words && undone.text !== nothing);
}

/** "Why: …", or that no reason is recorded. */
export const whyOf = ({ why }: Undone): Html | string => why ?? 'No reason is recorded.';
