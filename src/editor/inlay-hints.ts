/** Each recorded figure in the other unit system, shown after it. */
import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import { InlayHintKind, type InlayHint, type InlayHintParams } from 'vscode-languageserver';
import { otherSystem, parseFigure } from '../quantities/index.js';
import { endOf, indexAt, readingOf, startOf } from './roles.js';
import type { GarboardServices } from './services.js';
import { isSwitchedOn } from './settings.js';

export class SurveyInlayHintProvider implements InlayHintProvider {
    constructor(private readonly services: GarboardServices) {}

    async getInlayHints(document: LangiumDocument, { range }: Pick<InlayHintParams, 'range'>): Promise<InlayHint[]> {
        if (!await isSwitchedOn(this.services, 'inlayHints', 'otherUnits')) {
            return [];
        }
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
            if (role.name !== 'figure' || role.frame.owner === 'kind') {
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
