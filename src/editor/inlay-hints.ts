/** Each recorded figure in the other unit system, shown after it; what is computed of a row of readings, behind the row. */
import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import { InlayHintKind, type InlayHint, type InlayHintParams, type Range } from 'vscode-languageserver';
import { otherSystem, parseFigure, units } from '../quantities/index.js';
import type { Reading, SurveyRecord } from '../record/model.js';
import { computedColumnsOf, rowSummary } from '../record/reading-columns.js';
import { viewOf } from './resolve.js';
import { endOf, indexAt, readingOf, startOf } from './roles.js';
import type { GarboardServices } from './services.js';
import { isSwitchedOn } from './settings.js';

export class SurveyInlayHintProvider implements InlayHintProvider {
    constructor(private readonly services: GarboardServices) {}

    async getInlayHints(document: LangiumDocument, { range }: Pick<InlayHintParams, 'range'>): Promise<InlayHint[]> {
        return [
            ...await isSwitchedOn(this.services, 'inlayHints', 'otherUnits') ? this.otherUnits(document, range) : [],
            ...await isSwitchedOn(this.services, 'inlayHints', 'computed') ? this.computed(document, range) : [],
        ];
    }

    /** Means, losses, slips: what the record computes of each row. */
    private computed(document: LangiumDocument, range: Range): InlayHint[] {
        const { record } = viewOf(this.services, document);
        const { textDocument } = document;
        const uri = document.uri.toString();
        const [from, to] = [textDocument.offsetAt(range.start), textDocument.offsetAt(range.end)];
        if (!record) {
            return [];
        }
        return record.readings.filter(({ span }) => span.uri === uri && span.start <= to && span.end >= from).flatMap(reading =>
            reading.rows.filter(({ span }) => span.start <= to && span.end >= from).flatMap((row): InlayHint[] => {
                // The row's own units decide in which system its results are shown.
                const isUs = row.cells.some(({ value }) => value?.type === 'quantity' && units.get(value.figure.unit)?.system === 'us');
                const label = rowSummary(row, reading, record, isUs ? 'us' : 'metric');
                return label === '' ? [] : [{ position: textDocument.positionAt(row.span.end), label, paddingLeft: true, tooltip: formulas(reading, record) }];
            }));
    }

    private otherUnits(document: LangiumDocument, range: Range): InlayHint[] {
        const { roles } = readingOf(document, this.services.parser.Lexer);
        const { textDocument } = document;
        const from = textDocument.offsetAt(range.start);
        const to = textDocument.offsetAt(range.end);
        const hints: InlayHint[] = [];
        for (let i = indexAt(roles, from); i < roles.length; i++) {
            const role = roles[i];
            if (!role || startOf(role.token) > to) {
                break;
            }
            // A table stays a table: its cells are told in both systems by the report.
            const isCell = role.frame.owner === 'reading' && role.property === undefined;
            if (role.name !== 'figure' || role.frame.owner === 'kind' || isCell) {
                continue;
            }
            const parsed = parseFigure(role.token.image);
            const other = parsed.ok ? otherSystem(parsed.figure) : undefined;
            if (other !== undefined) {
                hints.push({ position: textDocument.positionAt(endOf(role.token)), label: other, kind: InlayHintKind.Type, paddingLeft: true });
            }
        }
        return hints;
    }
}

function formulas(reading: Reading, record: SurveyRecord): string {
    return computedColumnsOf(reading, record).map(column => `${column.title} = ${column.formula}`).join('\n');
}
