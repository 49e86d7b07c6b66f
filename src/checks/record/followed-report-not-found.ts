/** A survey that follows a report which cannot be found, so that nothing of it can be taken up. */
import { defineCheck } from '../contract.js';
import { findingText, followingSurvey, followsSpan, issuedFinding, issuedReport } from './earlier-reports.js';

const followingNothing = 'survey "TC-2027-009" re-inspection {\n    attended 2027-05-04 ashore "Yard"\n}\n';

export const followedReportNotFound = defineCheck({
    id: 'followed-report-not-found',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'The report that is followed is not found',
    why: 'Without the earlier report nobody can tell whether each of its recommendations is taken up.',
    needs: ['survey: number, follows'],
    computes: 'A number after follows for which neither an issued report nor a survey is found in the folders near this file, or which is the survey’s own. Advice where findings name their numbers in the earlier report, as they do for a report of another firm.',
    sources: [{ text: 'each recommendation of the earlier report with its present state', provenance: 'practice' }],
    limits: ['It is silent where nobody could look, as in an editor without files.', 'A report on paper is never found: say after earlier in each finding which number it has there, and accept this with that reason.'],
    examples: [{
        name: 'a number mistyped',
        bad: followingSurvey('', { follows: 'TC-2026-014' }),
        fixed: followingNothing,
        issued: { followed: 'not-found' },
    }, {
        name: 'its own number',
        bad: followingSurvey('', { follows: 'TC-2027-009' }),
        fixed: followingNothing,
    }],
    silent: [
        { name: 'found', text: followingSurvey(findingText('F1', 'Galley seacock stiff', 'outcome: open')), issued: { followed: issuedReport([issuedFinding('F1', 'Galley seacock stiff')]) } },
        { name: 'nobody could look', text: followingSurvey('') },
        { name: 'follows nothing', text: 'survey "TC-2027-009" pre-purchase {}\n' },
    ],
    run(record, raise) {
        const value = record.survey?.facts.get('follows')?.values[0];
        const number = value?.type === 'text' ? value.prose.text.trim() : '';
        if (number === '') {
            return;
        }
        if (number === record.survey?.number?.trim()) {
            raise({
                components: [], at: followsSpan(record),
                message: `This survey follows ${number}, which is its own number. An amendment is a new issue of the same report and needs no follows; a re-inspection names the report it follows up.`,
            });
        } else if (record.followed === 'not-found') {
            const isOfOthers = record.findings.some(finding => finding.facts.has('earlier'));
            raise({
                components: [], at: followsSpan(record), ...(isOfOthers ? { severity: 'warning' } : {}),
                message: `No report ${number} is found: neither among the issued reports beside this file and in the folders near it, nor as a survey of that number there. Whether each of its recommendations is taken up cannot be told; correct the number, put the issued report near this file, or, for a report on paper, name each number after earlier: and accept this with the reason.`,
            });
        }
    },
});
