/** Dates out of order, and counts or due dates in words that the record does not bear out. */
import { parseFigure } from '../../quantities/index.js';
import { valueOf, type DateFigure, type Finding, type Span, type SurveyRecord } from '../../record/model.js';
import { proseOf, proseOfFinding, spanIn } from '../../record/prose-entries.js';
import { numberFromWords } from '../../trade/number-words.js';
import { defineCheck, type Raised } from '../contract.js';
import { firstDay, lastDay } from '../hoses/age.js';
import { capital } from '../phrasing.js';

const dayMs = 86_400_000;
const monthNames = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

export const countsOrDatesDisagree = defineCheck({
    id: 'counts-or-dates-disagree',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Counts or dates disagree',
    why: 'A date out of order or a wrong count on the first page shakes every figure that follows.',
    needs: ['survey: engaged, attended, issued', 'reading: taken', 'finding: urgency within-days with a date in its recommendation', 'prose of the survey block that counts findings'],
    computes: 'Order: engaged ≤ each attendance ≤ issued, and readings between the first attendance and the issue. A number of findings or recommendations named in the survey block against the findings recorded. A date named after "by" in a recommendation against issue + days, where the urgency is within-days.',
    sources: [{ text: 'arithmetic', provenance: 'computed' }],
    limits: ['A date that is known to the month only is out of order when the whole month is.', 'Dates in words are read as 12 November 2026, November 12, 2026 and 2026-11-12.'],
    examples: [{
        name: 'issued before she was attended',
        bad: 'survey "1" pre-purchase {\n    engaged: 2026-10-01\n    attended 2026-10-06 ashore "Yard"\n    issued: 2026-10-05\n}\n',
        fixed: 'survey "1" pre-purchase {\n    engaged: 2026-10-01\n    attended 2026-10-06 ashore "Yard"\n    issued: 2026-10-08\n}\n',
    }, {
        name: 'a wrong count in the summary',
        bad: 'survey "1" pre-purchase {\n    scope: "Three findings are made."\n    attended 2026-10-06 ashore "Yard"\n}\nhose H1\nfinding F1 "Chafe" on H1 {\n    urgency: in-upkeep\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "Lead it clear."\n}\n',
        fixed: 'survey "1" pre-purchase {\n    scope: "One finding is made."\n    attended 2026-10-06 ashore "Yard"\n}\nhose H1\nfinding F1 "Chafe" on H1 {\n    urgency: in-upkeep\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "Lead it clear."\n}\n',
    }, {
        name: 'a due date that is not issue and days',
        bad: due('2026-11-20'),
        fixed: due('2026-11-07'),
        correction: 'Change to 2026-11-07',
    }],
    silent: [
        { name: 'engaged and attended on one day', text: 'survey "1" pre-purchase {\n    engaged: 2026-10-06\n    attended 2026-10-06 ashore "Yard"\n    issued: 2026-10-06\n}\n' },
        { name: 'known to the month', text: 'survey "1" pre-purchase {\n    engaged: 2026-10\n    attended 2026-10-06 ashore "Yard"\n    issued: 2026-10\n}\n' },
        { name: 'findings of an earlier report', text: 'survey "1" re-inspection {\n    scope: "The earlier report made 12 findings."\n    attended 2026-10-06 ashore "Yard"\n}\n' },
    ],
    run(record, raise) {
        datesInOrder(record, raise);
        countsInWords(record, raise);
        for (const finding of record.findings) {
            dueDate(record, finding, raise);
        }
    },
});

interface Dated {
    readonly what: string;
    readonly date: DateFigure;
    readonly span: Span;
}

function datesInOrder(record: SurveyRecord, raise: (problem: Raised) => void): void {
    const { survey } = record;
    if (!survey) {
        return;
    }
    const of = (property: 'engaged' | 'issued', what: string): Dated[] => {
        const value = valueOf(survey, property);
        const fact = survey.facts.get(property);
        return value && fact ? [{ what, date: value.figure, span: fact.span }] : [];
    };
    const attended = survey.attendances.flatMap((attendance): Dated[] => attendance.date ? [{ what: 'attended', date: attendance.date, span: attendance.span }] : []);
    const taken = record.readings.flatMap((reading): Dated[] => {
        const value = valueOf(reading, 'taken');
        const fact = reading.facts.get('taken');
        return value && fact ? [{ what: `${reading.title ?? reading.id} taken`, date: value.figure, span: fact.span }] : [];
    });
    const before = (first: readonly Dated[], then: readonly Dated[]) => first.flatMap(a => then.filter(b => firstDay(a.date) > lastDay(b.date)).map(b => ({ a, b })));
    const [engaged, issued] = [of('engaged', 'engaged'), of('issued', 'issued')];
    const firstAttended = attended.toSorted((a, b) => firstDay(a.date) - firstDay(b.date)).slice(0, 1);
    for (const { a, b } of [...before(engaged, [...attended, ...issued]), ...before([...attended, ...taken], issued), ...before(firstAttended, taken)]) {
        raise({
            components: [], at: b.span,
            message: `${capital(b.what)} ${b.date.written} comes before ${a.what} ${a.date.written}. One of the two dates is wrong; look it up and correct it.`,
            related: [{ message: `${capital(a.what)} ${a.date.written}`, span: a.span }],
        });
    }
}

/** Words that make the number one of a part of the findings: due before launch, for the upkeep, of the rig. */
const ofSome = /^\s+(?:(?:is|are|was|were|be)\s+)?(?:that|which|due|for|to be|in|on|of|at|at-once|before|under|marked|urgent|concern\p{L}*|relat\p{L}*|with|from|remain\p{L}*|closed|open|need\p{L}*|must|should|call\p{L}*|can|may|about)\b(?!\s+(?:all|total)\b)/iu;
const someOf = /\b(?:of\s+(?:the|these|which|them)|including|among|urgent|another|other|further|more|top|the|these|those)\b[^.;]*$/iu;

/** Numbers of findings named in the survey block, but for those of an earlier report. */
function countsInWords(record: SurveyRecord, raise: (problem: Raised) => void): void {
    const actual = record.findings.length;
    for (const entry of proseOf(record)) {
        if (entry.owner.type !== 'survey') {
            continue;
        }
        for (const match of entry.said.matchAll(/\b(\d{1,3}|[a-z]+(?:-[a-z]+)?)\s+(?:findings?|recommendations?)\b/giu)) {
            const [text, number = ''] = match;
            const counted = /^\d/.test(number) ? Number(number) : numberFromWords(number.toLowerCase());
            const before = entry.said.slice(Math.max(0, match.index - 60), match.index);
            const after = entry.said.slice(match.index + text.length);
            if (counted === undefined || counted === actual || ofSome.test(after) || someOf.test(before) || /\b(?:earlier|previous|last|former|first|prior)\b[^.;]*$/iu.test(before)) {
                continue;
            }
            raise({
                components: [], at: spanIn(entry, match.index, text.length),
                message: `“${text}” is said here, and ${actual} ${actual === 1 ? 'is' : 'are'} recorded. The summary and the report must agree; count again.`,
                figures: { said: { value: counted, unit: '' }, recorded: { value: actual, unit: '' } },
            });
        }
    }
}

/** A date after "by" in a recommendation that is due within days of issue. */
function dueDate(record: SurveyRecord, finding: Finding, raise: (problem: Raised) => void): void {
    const urgency = valueOf(finding, 'urgency');
    const issued = record.survey ? valueOf(record.survey, 'issued') : undefined;
    const days = urgency?.word === 'within-days' ? urgency.amount?.si : undefined;
    if (days === undefined || issued?.figure.precision !== 'day') {
        return;
    }
    const number = urgency?.amount?.figure.dimension === 'time' ? days / 86_400 : days;
    const expected = new Date(firstDay(issued.figure) + Math.round(number) * dayMs).toISOString().slice(0, 10);
    for (const entry of proseOfFinding(record, finding)) {
        if (entry.property !== 'recommend') {
            continue;
        }
        for (const { text, iso, index } of datesAfterBy(entry.raw)) {
            if (iso !== expected) {
                raise({
                    components: [], finding, at: spanIn(entry, index, text.length),
                    message: `${finding.id} is due within ${number} days of issue, which is ${expected}; its recommendation says by ${text}. Keep the one that is meant.`,
                    corrections: entry.isWritten ? [{ kind: 'replace-text', title: `Change to ${expected}`, span: spanIn(entry, index, text.length), text: expected }] : [],
                });
            }
        }
    }
}

function datesAfterBy(raw: string): { readonly text: string; readonly iso: string; readonly index: number }[] {
    const month = monthNames.join('|');
    const pattern = new RegExp(`\\bby\\s+(?:the\\s+)?((\\d{4}-\\d{2}-\\d{2})|(\\d{1,2})\\s+(${month})\\s+(\\d{4})|(${month})\\s+(\\d{1,2}),?\\s+(\\d{4}))`, 'giu');
    return [...raw.matchAll(pattern)].flatMap(match => {
        const [whole, text = '', iso, dayA, monthA, yearA, monthB, dayB, yearB] = match;
        const year = yearA ?? yearB;
        const at = monthNames.findIndex(name => name.toLowerCase() === (monthA ?? monthB ?? '').toLowerCase()) + 1;
        const built = iso ?? `${year ?? ''}-${String(at).padStart(2, '0')}-${(dayA ?? dayB ?? '').padStart(2, '0')}`;
        const parsed = parseFigure(built);
        return parsed.ok && parsed.figure.kind === 'date' ? [{ text, iso: built, index: match.index + whole.length - text.length }] : [];
    });
}

function due(date: string): string {
    return `survey "1" pre-purchase {\n    attended 2026-10-06 ashore "Yard"\n    issued: 2026-10-08\n}\nhose H1\nfinding F1 "Chafe" on H1 {\n    urgency: within-days 30\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "Lead it clear by ${date}."\n}\n`;
}
