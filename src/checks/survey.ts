/**
 * From files to problems: the one engine that the editor, the command line and the tests run.
 */
import { EmptyFileSystem, URI } from 'langium';
import type { SurveyFile } from '../language/generated/ast.js';
import { createGarboardServices } from '../language/services.js';
import type { LayoutError } from '../language/lexer.js';
import { catalogueSources } from '../record/catalogue.js';
import { closureOf, isMainFile, mainFilesOf, useGaps } from '../record/documents.js';
import { lowerSurvey } from '../record/lower.js';
import type { Gap, OutsideFacts, PhotoFacts, SurveyRecord } from '../record/model.js';
import type { SourceFile } from '../record/source.js';
import { analyse, type Analysis } from './analyse.js';

/** The record of the survey whose main file is at `uri`, without judging it. */
export function recordOf(uri: string, files: ReadonlyMap<string, SourceFile>): SurveyRecord {
    const main = files.get(uri);
    if (!main) {
        throw new Error(`No file at ${uri}.`);
    }
    return lowerSurvey({ main, files: closureOf(uri, files), catalogue: catalogueSources() });
}

/** Analyses the survey whose main file is at `uri`, among files already parsed. */
export function analyseSurvey(uri: string, files: ReadonlyMap<string, SourceFile>, outside?: OutsideFacts): Analysis {
    const main = files.get(uri);
    if (!main) {
        throw new Error(`No file at ${uri}.`);
    }
    const closure = closureOf(uri, files);
    const record = lowerSurvey({ main, files: closure, catalogue: catalogueSources(), ...(outside ? { outside } : {}) });
    const analysis = analyse(record);
    const more = closure.flatMap(file => useGaps(file, files));
    return more.length === 0 ? analysis : { ...analysis, gaps: [...analysis.gaps, ...more] };
}

/** The surveys among the files: each main file, and each file that no survey uses. */
export function surveysAmong(files: ReadonlyMap<string, SourceFile>): string[] {
    return [...files.values()].filter(file => isMainFile(file.root) || mainFilesOf(file.uri, files).includes(file.uri)).map(file => file.uri);
}

export interface ParsedText {
    readonly file: SourceFile;
    readonly gaps: readonly Gap[];
}

/** Parses texts by address; faults of spelling and structure come as gaps. */
export function parseTexts(texts: ReadonlyMap<string, string>): Map<string, ParsedText> {
    const { shared } = createGarboardServices(EmptyFileSystem);
    const parsed = new Map<string, ParsedText>();
    for (const [uri, text] of texts) {
        const document = shared.workspace.LangiumDocumentFactory.fromString<SurveyFile>(text, URI.parse(uri));
        parsed.set(uri, { file: { uri, root: document.parseResult.value, isBuiltIn: false }, gaps: syntaxGaps(uri, text, document.parseResult) });
    }
    return parsed;
}

interface ParserFault {
    readonly message: string;
    readonly token: { readonly startOffset: number; readonly endOffset?: number };
    readonly previousToken?: { readonly startOffset: number; readonly endOffset?: number };
}

/** What lexer and parser found, as gaps with positions. */
export function syntaxGaps(uri: string, text: string, result: { readonly lexerErrors: readonly unknown[]; readonly parserErrors: readonly unknown[] }): Gap[] {
    const gaps: Gap[] = [];
    for (const error of result.lexerErrors as readonly LayoutError[]) { // Our lexer makes no other.
        const { mend } = error;
        gaps.push({
            code: error.code, severity: 'error', message: error.message, span: { uri, start: error.offset, end: error.offset + error.length },
            mends: mend ? [{ title: mend.title, span: { uri, start: mend.offset, end: mend.offset + mend.length }, text: mend.text }] : [],
        });
    }
    for (const { token, previousToken, message } of result.parserErrors as readonly ParserFault[]) {
        const at = Number.isFinite(token.startOffset) ? token : previousToken && Number.isFinite(previousToken.startOffset) ? previousToken : undefined;
        const start = at?.startOffset ?? Math.max(0, text.trimEnd().length - 1);
        gaps.push({ code: 'text-out-of-place', severity: 'error', message, mends: [], span: { uri, start, end: Math.max(start + 1, (at?.endOffset ?? start) + 1) } });
    }
    return gaps;
}

/** Parses and analyses a single text: for tests and examples. */
export function analyseText(text: string, uri = 'memory:/survey.survey', photos?: Readonly<Record<string, PhotoFacts>>, issued?: Omit<OutsideFacts, 'photos'>): Analysis {
    return analyseTexts(new Map([[uri, text]]), uri, { ...(photos ? { photos: new Map(Object.entries(photos)) } : {}), ...issued });
}

export function analyseTexts(texts: ReadonlyMap<string, string>, main: string, outside?: OutsideFacts): Analysis {
    const parsed = parseTexts(texts);
    const analysis = analyseSurvey(main, new Map([...parsed].map(([uri, { file }]) => [uri, file])), outside);
    const syntax = [...parsed.values()].flatMap(p => p.gaps);
    return { ...analysis, gaps: [...syntax, ...analysis.gaps] };
}
