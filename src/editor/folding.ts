/** What can be folded: blocks, texts and comments over several lines, and the lines that name used files. */
import type { LangiumDocument } from 'langium';
import type { FoldingRangeProvider } from 'langium/lsp';
import { FoldingRangeKind, type FoldingRange } from 'vscode-languageserver-types';
import { readingOf, type Reading } from './roles.js';
import type { GarboardServices } from './services.js';

/** Folds of a file; lines are counted from 0. */
export function foldsOf({ roles, comments }: Reading): FoldingRange[] {
    const folds: FoldingRange[] = [];
    const add = (startLine: number, endLine: number, kind?: FoldingRangeKind) => {
        if (endLine > startLine) {
            folds.push(kind === undefined ? { startLine, endLine } : { startLine, endLine, kind });
        }
    };
    const open: number[] = [];
    let firstUse: number | undefined;
    let lastUse = 0;
    for (const { token, name } of roles) {
        const startLine = (token.startLine ?? 1) - 1;
        const endLine = (token.endLine ?? 1) - 1;
        if (token.image === '{') {
            open.push(startLine);
        } else if (token.image === '}') {
            // The closing brace stays in view.
            add(open.pop() ?? startLine, startLine - 1);
        } else if (token.tokenType.name === 'TEXT') {
            add(startLine, endLine);
        }
        if (name === 'use' || (name === 'keyword' && token.image === 'use')) {
            firstUse ??= startLine;
            lastUse = startLine;
        } else if (firstUse !== undefined) {
            add(firstUse, lastUse, FoldingRangeKind.Imports);
            firstUse = undefined;
        }
    }
    if (firstUse !== undefined) {
        add(firstUse, lastUse, FoldingRangeKind.Imports);
    }
    let run: { start: number; end: number } | undefined;
    for (const token of comments) {
        const startLine = (token.startLine ?? 1) - 1;
        const endLine = (token.endLine ?? 1) - 1;
        if (token.tokenType.name === 'BLOCK_COMMENT') {
            add(startLine, endLine, FoldingRangeKind.Comment);
        } else if (run && run.end === startLine - 1) {
            run.end = startLine;
        } else {
            if (run) {
                add(run.start, run.end, FoldingRangeKind.Comment);
            }
            run = { start: startLine, end: startLine };
        }
    }
    if (run) {
        add(run.start, run.end, FoldingRangeKind.Comment);
    }
    return folds;
}

export class SurveyFoldingRangeProvider implements FoldingRangeProvider {
    constructor(private readonly services: GarboardServices) {}

    getFoldingRanges(document: LangiumDocument): FoldingRange[] {
        return foldsOf(readingOf(document, this.services.parser.Lexer));
    }
}
