/** A finding under a number that an issued report gave to another matter, or an earlier matter under a new number. */
import { followedReport, isSameMatter, isUnlike, namedNumbers, nextFindingNumber, takesUp } from '../../record/earlier-findings.js';
import type { Finding, IssuedFinding, IssuedReport, SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { findingText, followingSurvey, issuedFinding, issuedReport, reportName, vesselDiffers } from './earlier-reports.js';

const seacock = issuedFinding('F1', 'Galley seacock stiff');
const open = 'outcome: open';

export const findingNumberChanged = defineCheck({
    id: 'finding-number-changed',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Number of a finding changed or used again',
    why: 'Owner, yard and underwriter go by the numbers of the report they hold; under a changed one the wrong matter is taken as done.',
    needs: ['finding: its number, title, components, earlier', 'the report that is followed, or the last issue of this one'],
    computes: 'A number that the report followed, or this survey’s own last issue, gave to a finding with which this one shares no component and less than half the telling words of its title; and an earlier finding taken up under another number although its own is free; in an amendment, a finding of the last issue that has the same title and shares a component, or the same words of what was seen, under a new number.',
    sources: [{ text: 'the same numbers in report, re-inspection and letter of compliance', provenance: 'practice' }],
    limits: [
        'Whether two findings are of one matter is judged by their components and the words of their titles; with an outcome recorded it is only advice, and only where they share none at all.',
        'It knows the report that is followed and the last issue, not those before them.',
        'Acceptances and words that name the finding by its old number are not changed by the correction.',
    ],
    examples: [{
        name: 'number of an earlier recommendation, long closed, given to a new matter',
        bad: followingSurvey(findingText('F1', 'Bilge float missing', '')),
        fixed: followingSurvey(findingText('F2', 'Bilge float missing', '')),
        issued: { followed: issuedReport([{ ...seacock, outcome: 'done-and-seen' }]) },
        correction: 'Change to F2, the next free number',
    }, {
        name: 'an earlier recommendation renumbered',
        bad: followingSurvey(findingText('F7', 'Galley seacock stiff', 'earlier: "F1"\n    outcome: open')),
        fixed: followingSurvey(findingText('F1', 'Galley seacock stiff', open)),
        issued: { followed: issuedReport([seacock]) },
        correction: 'Give it back its number F1',
    }, {
        name: 'amended: the number of a finding withdrawn, used again',
        bad: `survey "TC-2026-041" pre-purchase {}\n${findingText('F1', 'Bilge float missing', '')}`,
        fixed: `survey "TC-2026-041" pre-purchase {}\n${findingText('F2', 'Bilge float missing', '')}`,
        issued: { lastIssue: issuedReport([seacock]) },
        correction: 'Change to F2, the next free number',
    }, {
        name: 'amended: a finding renumbered',
        bad: `survey "TC-2026-041" pre-purchase {}\n${findingText('F4', 'Galley seacock stiff', '')}`,
        fixed: `survey "TC-2026-041" pre-purchase {}\n${findingText('F1', 'Galley seacock stiff', '')}`,
        issued: { lastIssue: issuedReport([seacock]) },
        correction: 'Give it back its number F1',
    }],
    silent: [
        { name: 'amended: a second finding of the same kind, while the first stands', text: `survey "TC-2026-041" pre-purchase {}\n${findingText('F1', 'Galley seacock stiff', '')}\n${findingText('F2', 'Galley seacock stiff', '')}`, issued: { lastIssue: issuedReport([seacock]) } },
        { name: 'amended: one withdrawn, another of the same words elsewhere made', text: `survey "TC-2026-041" pre-purchase {}\nhose H1\n${findingText('F2', 'Hose chafed', '').replace(' {', ' on H1 {').replace('Its lever is stiff.', 'Its cover is worn through at the bulkhead.')}`, issued: { lastIssue: issuedReport([{ ...issuedFinding('F1', 'Hose chafed'), on: ['H2'] }]) } },
        { name: 'the same matter in other words', text: followingSurvey(findingText('F1', 'Seacock of the galley drain, stiff a year ago', open)), issued: { followed: issuedReport([seacock]) } },
        { name: 'a new matter under a new number', text: followingSurvey(`${findingText('F1', 'Galley seacock stiff', open)}\n${findingText('F2', 'Bilge float missing', '')}`), issued: { followed: issuedReport([seacock]) } },
        { name: 'a number that is no name here', text: followingSurvey(findingText('F1', 'Galley seacock stiff', `earlier: "12.3"\n    ${open}`)), issued: { followed: issuedReport([{ ...seacock, id: '12.3' }]) } },
        { name: 'amended in its words', text: `survey "TC-2026-041" pre-purchase {}\n${findingText('F1', 'Seacock of the galley drain is stiff', '')}`, issued: { lastIssue: issuedReport([seacock]) } },
        { name: 'two earlier matters taken up in one', text: followingSurvey(findingText('F1', 'Galley seacock and its hose', `earlier: "F2"\n    ${open}`)), issued: { followed: issuedReport([seacock, issuedFinding('F2', 'Hose of the galley seacock old')]) } },
    ],
    run(record, raise) {
        const followed = followedReport(record);
        const reports = [record.lastIssue, followed && !vesselDiffers(record, followed) ? followed : undefined].filter(report => report !== undefined);
        for (const finding of record.findings) {
            const problem = reports.map(report => usedAgain(record, finding, report)).find(found => found !== undefined)
                ?? (followed && reports.includes(followed) ? renumbered(record, finding, followed) : undefined) ?? (record.lastIssue ? renumberedSince(record, finding, record.lastIssue) : undefined);
            if (problem) {
                raise(problem);
            }
        }
    },
});

function usedAgain(record: SurveyRecord, finding: Finding, report: IssuedReport): Raised | undefined {
    const issued = report.findings.find(each => each.id === finding.id);
    if (!issued || isSameMatter(finding, issued)) {
        return undefined;
    }
    const isClaimed = report !== record.lastIssue && takesUp(finding, issued);
    if (isClaimed && !isUnlike(finding, issued)) {
        return undefined;
    }
    const next = nextFindingNumber(record);
    return {
        components: [], finding, at: finding.idSpan, ...(isClaimed ? { severity: 'warning' } : {}),
        message: isClaimed ? `${finding.id} records the outcome of ${issued.id} of ${reportName(report)}, and the two read as different matters: “${finding.title}” here, “${issued.title}” there. A reader of both would be misled; keep the earlier title, or give the new matter ${next}.`
            : `${finding.id} is “${finding.title}” here and “${issued.title}” in ${reportName(report)}. Numbers never change: who holds that report would take the one for the other. Give this finding the next free number, ${next}.`,
        corrections: [{ kind: 'replace-text', title: `Change to ${next}, the next free number`, span: finding.idSpan, text: next }],
    };
}

function renumbered(record: SurveyRecord, finding: Finding, report: IssuedReport): Raised | undefined {
    if (namedNumbers(finding).length === 0 || report.findings.some(each => each.id === finding.id)) {
        return undefined;
    }
    const isFree = ({ id }: IssuedFinding) => /^[\p{L}_][\p{L}\p{N}_-]*$/u.test(id) && !record.findings.some(other => other.id === id) && !record.components.has(id);
    const issued = report.findings.find(each => takesUp(finding, each) && isFree(each));
    return issued && {
        components: [], finding, at: finding.idSpan,
        message: `${finding.id} takes up ${issued.id} of ${reportName(report)} under another number. Numbers never change: who holds that report looks for ${issued.id}. Give it back its number.`,
        corrections: [{ kind: 'replace-text', title: `Give it back its number ${issued.id}`, span: finding.idSpan, text: issued.id }],
    };
}

/** A finding of the last issue whose number has gone, under a number that issue did not have. */
function renumberedSince(record: SurveyRecord, finding: Finding, last: IssuedReport): Raised | undefined {
    if (last.findings.some(each => each.id === finding.id)) {
        return undefined;
    }
    const issued = last.findings.find(each => !record.findings.some(other => other.id === each.id) && !record.components.has(each.id) && isSameFinding(finding, each));
    return issued && {
        components: [], finding, at: finding.idSpan,
        message: `${finding.id}, “${finding.title}”, was ${issued.id} in ${reportName(last)}. Numbers never change: who holds that issue looks for ${issued.id}, and would read here that it is withdrawn. Give it back its number.`,
        corrections: [{ kind: 'replace-text', title: `Give it back its number ${issued.id}`, span: finding.idSpan, text: issued.id }],
    };
}

const bare = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** Whether they have one title, and either a component or the words of what was seen in common. */
function isSameFinding(finding: Finding, issued: IssuedFinding): boolean {
    const seen = finding.facts.get('seen')?.values[0];
    const isSeenAlike = seen?.type === 'text' && issued.seen !== undefined && bare(seen.prose.text) === bare(issued.seen);
    return bare(finding.title) === bare(issued.title) && (isSeenAlike || finding.on.some(({ id }) => issued.on.some(name => name === id || name.endsWith(`(${id})`))));
}
