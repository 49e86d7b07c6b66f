/** The papers that are drawn from one record. */
import type { ReportInput } from './context.js';
import { complianceLetter } from './papers/compliance-letter.js';
import { urgentLetter } from './papers/urgent-letter.js';
import { workList } from './papers/work-list.js';
import { renderReport } from './report.js';

/** `report` is the whole report; the others are shorter papers for one reader. */
export const documentKinds = ['report', 'work-list', 'urgent-letter', 'compliance-letter'] as const;
export type DocumentKind = (typeof documentKinds)[number];

/** What each is called, and for whom it is. */
export const documentTitles: Readonly<Record<DocumentKind, string>> = {
    report: 'Report', 'work-list': 'Work list for the yard', 'urgent-letter': 'Letter on urgent matters', 'compliance-letter': 'Letter of compliance for the underwriter',
};

const drawings: Readonly<Record<DocumentKind, (input: ReportInput) => string>> = {
    report: renderReport, 'work-list': workList, 'urgent-letter': urgentLetter, 'compliance-letter': complianceLetter,
};

/** A paper as one self-contained HTML page. */
export function renderDocument(kind: DocumentKind, input: ReportInput): string {
    return drawings[kind](input);
}
