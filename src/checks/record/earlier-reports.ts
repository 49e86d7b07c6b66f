/** What the checks of re-inspections and amendments share: how an earlier report is called, and examples of one. */
import type { IssuedFinding, IssuedReport, SurveyRecord } from '../../record/model.js';
import { bareHullNumber } from '../../trade/hull-number.js';

/** "report TC-2026-041, issue 1". */
export function reportName({ number, issue }: IssuedReport): string {
    return `report ${number}${issue === undefined ? '' : `, issue ${issue}`}`;
}

/** Where the survey says which report it follows; else its head. */
export function followsSpan(record: SurveyRecord) {
    return record.survey?.facts.get('follows')?.span ?? record.survey?.span ?? { uri: record.mainUri, start: 0, end: 1 };
}

/**
 * In what the vessel differs from the one of another report: her hull number where both record one, else her name, for
 * a vessel may be renamed.
 */
export function vesselDiffers(record: SurveyRecord, report: IssuedReport): 'hull-number' | 'name' | undefined {
    const fact = record.vessel?.facts.get('hull-number')?.values[0];
    const own = fact?.type === 'text' ? bareHullNumber(fact.prose.text) : '';
    const other = bareHullNumber(report.hullNumber ?? '');
    if (own !== '' && other !== '') {
        return own === other ? undefined : 'hull-number';
    }
    const names = [record.vessel?.name ?? '', report.vessel ?? ''].map(name => name.trim().toLowerCase().replace(/\s+/g, ' '));
    return names[0] !== '' && names[1] !== '' && names[0] !== names[1] ? 'name' : undefined;
}

/** An issued report for examples. */
export function issuedReport(findings: readonly IssuedFinding[], more: Partial<IssuedReport> = {}): IssuedReport {
    return { number: 'TC-2026-041', issue: 1, issued: '2026-10-13', vessel: 'Marram', hullNumber: 'XQZ12045K989', findings, source: 'issued/TC-2026-041-issue-1', isFrozen: true, ...more };
}

/** An earlier finding for examples. */
export function issuedFinding(id: string, title: string, more: Partial<IssuedFinding> = {}): IssuedFinding {
    return {
        id, title, urgency: 'next-haul-out', due: 'Next haul out', on: [], place: 'Under the galley sink', seen: 'Its lever is stiff.', because: 'It may not shut when it must.', recommend: 'Free the seacock and grease it.', ...more,
    };
}

/** A survey that follows TC-2026-041, for examples. */
export function followingSurvey(findings: string, { vessel = 'vessel "Marram" { hull-number: "XQZ12045K989" }', follows = 'TC-2026-041' } = {}): string {
    return `survey "TC-2027-009" re-inspection {\n    follows: "${follows}"\n    attended 2027-05-04 ashore "Yard"\n}\n${vessel}\n${findings}`;
}

/** A finding in full, for examples. */
export function findingText(id: string, title: string, facts: string): string {
    return `finding ${id} "${title}" {\n    urgency: next-haul-out\n    place: "Under the galley sink"\n    seen: "Its lever is stiff."\n    because: "It may not shut when it must."\n    recommend: "Free the seacock and grease it."\n${facts === '' ? '' : `    ${facts}\n`}}\n`;
}
