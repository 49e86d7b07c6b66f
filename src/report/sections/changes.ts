/** What an amendment changes against the issue before it, computed from the two records. */
import { changedAreas, changesBetween, type Change, type ChangedArea } from '../changes.js';
import { table, type ReportContext, type Section } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { recordJson, type RecordDocument } from '../record-json.js';
import { listed } from '../../checks/phrasing.js';
import { capital, counted, dateText } from '../wording.js';
import { parseFigure } from '../../quantities/index.js';

const titles: Readonly<Record<ChangedArea, string>> = {
    finding: 'Findings', value: 'Value', vessel: 'Particulars of the vessel', survey: 'The engagement', part: 'Parts', run: 'Runs and contacts', reading: 'Measurements', accepted: 'Accepted as they stand',
    unseen: 'Not seen, or not fitted', computed: 'Computed from the above', limit: 'Limits and standards', people: 'The firm and its people',
};

export function changes(context: ReportContext): Section | undefined {
    const last = context.lastRecord;
    if (!last?.issue) {
        return undefined;
    }
    const told = changesBetween(last, recordOfContext(context));
    if (told.length === 0 && !context.stamp) {
        return undefined; // The same record drawn again, not another issue of it.
    }
    return {
        id: 'changes', title: `Changes since ${issueName(last.issue)}`, body: html`
<p class="lead">${told.length === 0 ? `Nothing that is recorded differs from ${issueName(last.issue)}.` : `${sentence(counts(told))}.`}</p>
<p>This compares all that is recorded in the two issues. What only reads or stands otherwise and says the same is not listed. Of long texts the part that differs is shown, with the words around it.</p>
${changedAreas.map(area => areaTable(context, area, told.filter(change => change.area === area)))}`,
    };
}

function recordOfContext({ record, problems, gaps, stamp }: ReportContext): RecordDocument {
    // Places in the text are no part of what is compared.
    return recordJson({ record, problems, gaps }, { position: () => ({ line: 1, column: 1 }), name: uri => uri, ...(stamp ? { issue: stamp } : {}) });
}

/** "issue 1 of 13 October 2026". */
export function issueName({ number, date }: NonNullable<RecordDocument['issue']>): string {
    const parsed = parseFigure(date);
    return `issue ${number} of ${parsed.ok && parsed.figure.kind === 'date' ? dateText(parsed.figure) : date}`;
}

function counts(told: readonly Change[]): string[] {
    const of = (area: ChangedArea, act: Change['act']) => new Set(told.filter(change => change.area === area && change.act === act).map(({ id, subject }) => id ?? subject)).size;
    const findings = [[of('finding', 'new'), 'new'], [of('finding', 'withdrawn'), 'withdrawn'], [of('finding', 'changed'), 'changed']] as const;
    const others = told.filter(({ area }) => area !== 'finding' && area !== 'value').length;
    const values = told.filter(({ area }) => area === 'value').length;
    return [
        ...findings.filter(([count]) => count > 0).map(([count, act]) => `${counted(count, 'finding is', 'findings are')} ${act}`),
        ...values > 0 ? [`${counted(values, 'change is', 'changes are')} made to the valuation`] : [],
        ...others > 0 ? [`${counted(others, 'other fact differs', 'other facts differ')}`] : [],
    ];
}

const sentence = (texts: readonly string[]): string => capital(listed(texts));

function areaTable(context: ReportContext, area: ChangedArea, told: readonly Change[]): Html {
    return told.length === 0 ? nothing : html`<h3>${titles[area]}</h3>
${table('Before and now', [{ title: 'Of what' }, { title: 'What' }, { title: 'Before' }, { title: 'Now' }], told.map(change => {
        const [before, after] = contrast(change.before, change.after);
        return { cells: [subjectOf(context, change), what(change), before ?? none, after ?? (change.act === 'withdrawn' ? html`<strong>Withdrawn</strong>` : none)] };
    }), 'changes')}
`;
}

const none = html`<span class="muted">Nothing recorded</span>`;

function subjectOf(context: ReportContext, { area, id, subject, act }: Change): Html {
    const finding = area === 'finding' && act !== 'withdrawn' ? context.findingOf(id) : undefined;
    return finding ? html`${context.linkTo(finding)} ${finding.title}` : html`${subject}`;
}

/** Parts of a finding as its card calls them. */
const partsOfFinding: ReadonlyMap<string, string> = new Map([['Because', 'Why it matters'], ['Recommend', 'What to do'], ['Cites', 'Authority'], ['Cost', 'Cost allowed'], ['Urgency', 'Due']]);

function what(change: Change): string {
    const name = change.area === 'finding' ? partsOfFinding.get(change.what) ?? change.what : change.what;
    return change.act === 'new' ? 'New' : change.act === 'withdrawn' ? 'Withdrawn' : change.followsFromIssue ? `${name}, as it is counted from the date of issue` : name;
}

/** Words shown on either side of what differs in a long text. */
const wordsAround = 7;
/** Texts up to so many characters are shown whole. */
const shownWhole = 160;

/** The two texts, cut down to where they differ if both are long. */
export function contrast(before: string | undefined, after: string | undefined): readonly [string | undefined, string | undefined] {
    if (before === undefined || after === undefined || Math.max(before.length, after.length) <= shownWhole) {
        return [before, after];
    }
    const [was, is] = [before.split(' '), after.split(' ')];
    const shorter = Math.min(was.length, is.length);
    let start = 0;
    while (start < shorter && was[start] === is[start]) {
        start++;
    }
    let end = 0;
    while (end < shorter - start && was.at(-1 - end) === is.at(-1 - end)) {
        end++;
    }
    const [from, left] = [Math.max(0, start - wordsAround), Math.max(0, end - wordsAround)];
    const cut = (words: readonly string[]) => `${from > 0 ? '… ' : ''}${words.slice(from, words.length - left).join(' ')}${left > 0 ? ' …' : ''}`;
    return [cut(was), cut(is)];
}
