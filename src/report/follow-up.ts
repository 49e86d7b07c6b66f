/**
 * What became of recommendations: those of the report that a survey follows, or, where it follows none, the survey's
 * own with their outcomes. The section on the earlier recommendations and the letter of compliance are drawn from it.
 */
import { byNumber, earlierFindings, followedReport, newFindings } from '../record/earlier-findings.js';
import type { Finding, IssuedFinding, IssuedReport } from '../record/model.js';
import type { ReportContext } from './context.js';
import { capital, dateText, inSentence, isWord, wordText } from './wording.js';

/** One recommendation with its state: a word of the list `outcome`, or one of those below. */
export interface Recommendation {
    readonly number: string;
    readonly title: string;
    readonly state: string;
    /** As the earlier report has it. */
    readonly issued?: IssuedFinding;
    /** What this survey says of it. */
    readonly finding?: Finding;
}

/** States that are not outcomes, with what they mean. */
const otherStates: ReadonlyMap<string, string> = new Map([
    ['not-said', 'What became of it is not recorded.'],
    ['not-taken-up', 'Nothing is said of it.'],
    ['closed-before', 'The earlier report itself records it as done and seen.'],
    ['remark', 'A remark of the earlier report, which asked for nothing.'],
]);

export interface FollowUp {
    /** Number of the report that is followed, as the survey names it; undefined where it follows none. */
    readonly follows: string | undefined;
    /** The report itself, where it could be read. */
    readonly report: IssuedReport | undefined;
    readonly wasSought: boolean;
    /** In the order of their numbers. */
    readonly recommendations: readonly Recommendation[];
    /** What is new in this survey. */
    readonly fresh: readonly Finding[];
}

export function followUpOf(context: ReportContext): FollowUp {
    const { record } = context;
    const report = followedReport(record);
    const written = context.text(record.survey, 'follows')?.trim();
    const follows = written === '' ? undefined : written;
    if (report) {
        return {
            follows, report, wasSought: true, fresh: newFindings(record),
            recommendations: earlierFindings(record).map(({ issued, takenUpBy }) => ({
                number: issued.id, title: issued.title, issued, ...(takenUpBy ? { finding: takenUpBy } : {}), state: stateOf(context, takenUpBy, issued),
            })),
        };
    }
    const fresh = follows === undefined ? [] : newFindings(record);
    return {
        follows, report, wasSought: record.followed === 'not-found', fresh,
        recommendations: record.findings.filter(finding => !fresh.includes(finding) && urgencyOf(context, finding) !== 'note-only')
            .map(finding => ({ number: context.text(finding, 'earlier')?.trim() || finding.id, title: finding.title, finding, state: stateOf(context, finding) }))
            .sort((a, b) => byNumber(a.number, b.number)),
    };
}

function stateOf(context: ReportContext, finding: Finding | undefined, issued?: IssuedFinding): string {
    const outcome = finding && context.first(finding, 'outcome');
    return isWord(outcome) ? outcome.word : issued?.outcome === 'done-and-seen' ? 'closed-before' : issued?.urgency === 'note-only' ? 'remark' : finding ? 'not-said' : 'not-taken-up';
}

export function urgencyOf(context: ReportContext, finding: Finding): string | undefined {
    const urgency = context.first(finding, 'urgency');
    return isWord(urgency) ? urgency.word : undefined;
}

/** "Done and seen". */
export const stateTitle = (state: string): string => state === 'not-said' ? 'No outcome recorded' : capital(wordText(state));

/** States in the order of the outcomes, then those that are none, each with its meaning. */
export function statesOf(context: ReportContext): ReadonlyMap<string, string> {
    return new Map([...context.record.vocabulary.wordLists.get('outcome')?.words ?? [], ...otherStates]);
}

export interface StateCount {
    readonly state: string;
    readonly meaning: string;
    readonly recommendations: readonly Recommendation[];
}

/** Recommendations by state, those states left out that none is in. */
export function countsByState(context: ReportContext, { recommendations }: FollowUp): StateCount[] {
    const states = statesOf(context);
    const unknown = recommendations.map(({ state }) => state).filter(state => !states.has(state));
    return [...states, ...unknown.map(state => [state, ''] as const)].map(([state, meaning]) => ({ state, meaning, recommendations: recommendations.filter(each => each.state === state) }))
        .filter(({ recommendations: some }, index, all) => some.length > 0 && all.findIndex(other => other.recommendations[0] === some[0]) === index);
}

/** For a summary: "Of 6 earlier recommendations 3 are done and seen, …". Undefined where there is nothing to count. */
export function countsInWords(context: ReportContext): string | undefined {
    const followUp = followUpOf(context);
    if (followUp.recommendations.length === 0 || (followUp.follows === undefined && followUp.recommendations.every(({ state }) => state === 'not-said'))) {
        return undefined;
    }
    const { length } = followUp.recommendations;
    const counts = countsByState(context, followUp).map(({ state, recommendations }) => `${inSentence(stateTitle(state))} ${recommendations.length}`);
    const lead = followUp.follows === undefined ? `${length} ${length === 1 ? 'recommendation' : 'recommendations'}` : `${length} earlier ${length === 1 ? 'recommendation' : 'recommendations'}`;
    return `${lead}: ${counts.join(', ')}${followUp.fresh.length === 0 ? '' : `; new ${followUp.fresh.length}`}`;
}

/** "report TC-2026-041, issue 1 of 13 October 2026". */
export function reportTitle({ report, follows }: FollowUp): string {
    if (!report) {
        return `report ${follows ?? 'without number'}`;
    }
    const issued = /^(\d{4})-(\d{2})-(\d{2})/.exec(report.issued ?? '');
    const date = issued ? dateText({ kind: 'date', precision: 'day', year: Number(issued[1]), month: Number(issued[2]), day: Number(issued[3]), iso: issued[0], written: issued[0] }) : undefined;
    return `report ${report.number}${report.issue === undefined ? '' : `, issue ${report.issue}`}${date === undefined ? '' : ` of ${date}`}`;
}

/** The date an outcome was looked at, in words. */
export function lookedAt(context: ReportContext, finding: Finding): string | undefined {
    const value = context.first(finding, 'looked-at');
    return value?.type === 'date' ? dateText(value.figure) : undefined;
}
