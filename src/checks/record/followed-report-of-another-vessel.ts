/** A survey that follows a report on another vessel. */
import { followedReport } from '../../record/earlier-findings.js';
import { defineCheck, type Correction } from '../contract.js';
import { followingSurvey, followsSpan, issuedReport, reportName, vesselDiffers } from './earlier-reports.js';

export const followedReportOfAnotherVessel = defineCheck({
    id: 'followed-report-of-another-vessel',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'The report that is followed is of another vessel',
    why: 'Recommendations made for one boat would be closed on another.',
    needs: ['survey: follows', 'vessel: name, hull-number', 'the earlier report'],
    computes: 'Hull numbers of both surveys, compared without prefix, blanks and hyphens; where one of them records none, the names.',
    sources: [{ text: 'the last boat’s report taken for this one’s', provenance: 'practice' }],
    limits: ['A vessel of the same hull number and another name has been renamed, and is let pass.', 'Without a hull number in both, a boat that was renamed is told too: record the number.'],
    examples: [{
        name: 'another hull number',
        bad: followingSurvey('', { vessel: 'vessel "Marram" { hull-number: "XQZ12054K989" }' }),
        fixed: followingSurvey('', { vessel: 'vessel "Marram" { hull-number: "XQZ12045K989" }' }),
        issued: { followed: issuedReport([]) },
        correction: 'Change the hull number to XQZ12045K989, as in report TC-2026-041',
    }, {
        name: 'another name, and no hull number to tell by',
        bad: followingSurvey('', { vessel: 'vessel "Dunlin" {}' }),
        fixed: followingSurvey('', { vessel: 'vessel "Marram" {}' }),
        issued: { followed: issuedReport([]) },
    }],
    silent: [
        { name: 'renamed, of the same hull number', text: followingSurvey('', { vessel: 'vessel "Dunlin" { hull-number: "US-XQZ12045K989" }' }), issued: { followed: issuedReport([]) } },
        { name: 'the name in other capitals', text: followingSurvey('', { vessel: 'vessel "MARRAM" {}' }), issued: { followed: issuedReport([]) } },
        { name: 'the earlier report names no vessel', text: followingSurvey('', { vessel: 'vessel "Dunlin" {}' }), issued: { followed: { number: 'TC-2026-041', findings: [], source: 'issued', isFrozen: true } } },
    ],
    run(record, raise) {
        const report = followedReport(record);
        const differs = report && vesselDiffers(record, report);
        if (!report || !differs) {
            return;
        }
        const fact = record.vessel?.facts.get('hull-number');
        const related = fact && differs === 'hull-number' ? [{ message: 'The hull number recorded here', span: fact.span }] : undefined;
        const corrections: Correction[] = differs === 'hull-number' && /^[\w -]+$/.test(report.hullNumber ?? '')
            ? [{ kind: 'set-vessel-fact', title: `Change the hull number to ${report.hullNumber}, as in report ${report.number}`, property: 'hull-number', value: `"${report.hullNumber}"` }] : [];
        const [here, there] = differs === 'hull-number' ? [`has the hull number ${fact?.written.replaceAll('"', '') ?? ''}`, `of ${report.hullNumber ?? ''}`] : ['is surveyed here', `of ${report.vessel ?? ''}`];
        raise({
            components: [], at: followsSpan(record), corrections, ...(related ? { related } : {}),
            message: `${record.vessel?.name || 'The vessel'} ${here}, and ${reportName(report)}, found in ${report.source}, speaks ${there}. Its recommendations are not hers; correct the number after follows, or the ${differs === 'name' ? 'name' : 'hull number'} where it was mistyped.`,
        });
    },
});
