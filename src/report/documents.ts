/** The papers that are drawn from one record. */
import type { ReportInput } from './context.js';
import { renderReport } from './report.js';

/** `report` is the whole report; the others are shorter papers for one reader. */
export const documentKinds = ['report'] as const;
export type DocumentKind = (typeof documentKinds)[number];

/** A paper as one self-contained HTML page. */
export function renderDocument(kind: DocumentKind, input: ReportInput): string {
    switch (kind) {
        case 'report': return renderReport(input);
    }
}
