/**
 * What a survey makes of the findings of reports issued before it: which finding takes up which earlier one, what is
 * new, and which numbers are no longer free. Numbers never change: a yard, an owner and an underwriter go by them.
 */
import { nameOf, wordOf, type Finding, type IssuedFinding, type IssuedReport, type SurveyRecord } from './model.js';

/** An earlier finding and the finding that takes it up; none where nothing is said of it. */
export interface EarlierFinding {
    readonly issued: IssuedFinding;
    readonly takenUpBy?: Finding;
}

/** The report that the survey follows, where it was found. */
export function followedReport(record: SurveyRecord): IssuedReport | undefined {
    return record.followed === 'not-found' ? undefined : record.followed;
}

/** Whether the work was done and the surveyor saw it: nothing is asked any more. */
export function isDoneAndSeen(finding: Finding): boolean {
    return wordOf(finding, 'outcome') === 'done-and-seen';
}

/** Whether the report that was followed had itself closed it, or had asked for nothing. */
export function asksNothing({ outcome, urgency }: IssuedFinding): boolean {
    return outcome === 'done-and-seen' || urgency === 'note-only';
}

const collator = new Intl.Collator('en', { numeric: true });

/** Numbers in the order a reader counts them: F2 before F10. */
export function byNumber(one: string, other: string): number {
    return collator.compare(one, other) || (one < other ? -1 : one > other ? 1 : 0);
}

/** Every finding of the report that is followed, in the order of its numbers, with what takes it up. */
export function earlierFindings(record: SurveyRecord): readonly EarlierFinding[] {
    return [...followedReport(record)?.findings ?? []].sort((a, b) => byNumber(a.id, b.id)).map(issued => {
        const takenUpBy = record.findings.find(finding => finding.id === issued.id && takesUp(finding, issued))
            ?? record.findings.find(finding => takesUp(finding, issued));
        return { issued, ...(takenUpBy ? { takenUpBy } : {}) };
    });
}

/**
 * Findings that are new in this survey: those that take up no earlier one. Where the report that is followed cannot be
 * read, a finding with an outcome or an earlier number counts as taken over.
 */
export function newFindings(record: SurveyRecord): readonly Finding[] {
    const followed = followedReport(record);
    return record.findings.filter(finding => followed ? !followed.findings.some(issued => takesUp(finding, issued))
        : !finding.facts.has('outcome') && !finding.facts.has('earlier'));
}

/** Whether a finding takes an earlier one up: by its number, or by naming the number after `earlier:`. */
export function takesUp(finding: Finding, issued: IssuedFinding): boolean {
    const named = namedNumbers(finding);
    if (named.some(number => isSameNumber(number, issued.id))) {
        return true;
    }
    // Its own number counts too, unless it stands for another matter.
    return finding.id === issued.id && (isSameMatter(finding, issued) || (named.length === 0 && finding.facts.has('outcome')));
}

/** Numbers written after `earlier:`: one, or several parted by commas. */
export function namedNumbers(finding: Finding): readonly string[] {
    const value = finding.facts.get('earlier')?.values[0];
    return value?.type === 'text' ? value.prose.text.split(/[,;]|\band\b/u).map(bareNumber).filter(number => number !== '') : [];
}

const bareNumber = (text: string): string => text.trim().replace(/^(?:no\.?|number|nr\.?|finding|recommendation|item|#)\s*(?=\S)/iu, '').replace(/\.$/, '');

function isSameNumber(named: string, id: string): boolean {
    return named.toUpperCase() === id.toUpperCase() || (/^\d+$/.test(named) && /^\p{L}{1,2}\d+$/u.test(id) && named === id.replace(/^\p{L}+/u, ''));
}

/** Words that say nothing of the matter. */
const idle: ReadonlySet<string> = new Set(['and', 'the', 'for', 'with', 'from', 'not', 'new', 'one', 'two', 'its', 'her', 'has', 'was', 'are', 'that', 'than', 'without', 'recommendation', 'finding', 'renewed', 'repaired', 'fitted', 'done']);

function tellingWords(text: string): Set<string> {
    const words = text.toLowerCase().match(/[\p{L}\p{N}]{3,}/gu) ?? [];
    return new Set(words.filter(word => !idle.has(word)).map(word => word.replace(/(?<=\p{L}{3})s$/u, '')));
}

/** Share of the telling words of the shorter title that stand in the other; 0 where neither tells anything. */
function sharedTitle(one: string, other: string): number {
    const [a, b] = [tellingWords(one), tellingWords(other)];
    const fewer = Math.min(a.size, b.size);
    return fewer === 0 ? 0 : [...a].filter(word => b.has(word)).length / fewer;
}

function sharesPart(finding: Finding, issued: IssuedFinding): boolean {
    return finding.on.some(part => issued.on.some(name => name === nameOf(part) || name === part.id || name.endsWith(`(${part.id})`)
        || (part.title !== undefined && name.toLowerCase() === part.title.toLowerCase())));
}

/** Whether two findings of one number speak of one matter, by the parts they are on and the words of their titles. */
export function isSameMatter(finding: Finding, issued: IssuedFinding): boolean {
    return sharesPart(finding, issued) || sharedTitle(finding.title, issued.title) >= 0.5;
}

/** Whether nothing at all ties the two: neither a part nor a word of the title. */
export function isUnlike(finding: Finding, issued: IssuedFinding): boolean {
    return !sharesPart(finding, issued) && sharedTitle(finding.title, issued.title) === 0;
}

/** Numbers that reports issued before have given out, the survey's own last issue among them. */
export function issuedNumbers(record: SurveyRecord): readonly string[] {
    return [...followedReport(record)?.findings ?? [], ...record.lastIssue?.findings ?? []].map(({ id }) => id);
}

/** The next number that neither this survey nor a report issued before it has given to a finding: F25 after F24. */
export function nextFindingNumber(record: SurveyRecord, more: Iterable<string> = []): string {
    const numbers = [...record.findings.map(({ id }) => id), ...issuedNumbers(record), ...more].flatMap(id => /^F(\d{1,6})$/.exec(id)?.[1] ?? []).map(Number);
    const used = new Set([...record.components.keys(), ...record.runs.map(run => run.id), ...record.readings.map(reading => reading.id)]);
    let next = Math.max(0, ...numbers) + 1;
    while (used.has(`F${next}`)) {
        next++;
    }
    return `F${next}`;
}
