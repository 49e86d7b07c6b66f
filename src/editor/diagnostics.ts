/** Gaps and open problems as diagnostics. Answered problems are left out: they show beside their answers. */
import type { DocumentValidator, LangiumDocument } from 'langium';
import { DiagnosticSeverity, DiagnosticTag, type Diagnostic, type DiagnosticRelatedInformation, type Range } from 'vscode-languageserver-types';
import { syntaxGaps } from '../checks/survey.js';
import type { Problem, Severity } from '../checks/contract.js';
import type { Gap, Span } from '../record/model.js';
import type { SurveyAnalyser } from './analyser.js';

export const source = 'garboard';

/** Address of a check's explanation, opened by the client as a read-only page. */
export const explanationUri = (check: string): string => `garboard-explain:/${check}.md`;

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
    error: DiagnosticSeverity.Error, warning: DiagnosticSeverity.Warning, info: DiagnosticSeverity.Information, hint: DiagnosticSeverity.Hint,
};

export function rangeOf(span: Span, document: LangiumDocument): Range {
    const { textDocument } = document;
    return { start: textDocument.positionAt(span.start), end: textDocument.positionAt(Math.max(span.end, span.start)) };
}

export interface Located {
    readonly diagnostic: Diagnostic;
    readonly gap?: Gap;
    readonly problem?: Problem;
}

export type DocumentLookup = (uri: string) => LangiumDocument | undefined;

/** What is wrong in a document, each with the gap or problem it stands for. */
export function locatedIn(document: LangiumDocument, analyser: SurveyAnalyser, lookup: DocumentLookup): Located[] {
    const uri = document.uri.toString();
    const located: Located[] = [];
    const seen = new Set<string>();
    const related = (entries: readonly { readonly message: string; readonly span: Span }[] | undefined): DiagnosticRelatedInformation[] | undefined => {
        const list = (entries ?? []).flatMap(({ message, span }) => {
            const other = span.uri === uri ? document : lookup(span.uri);
            return other ? [{ message, location: { uri: span.uri, range: rangeOf(span, other) } }] : [];
        });
        return list.length > 0 ? list : undefined;
    };
    const add = (key: string, entry: Located) => {
        if (!seen.has(key)) {
            seen.add(key);
            located.push(entry);
        }
    };
    const addGap = (gap: Gap) => {
        if (gap.span.uri !== uri) {
            return;
        }
        const information = related(gap.related);
        const diagnostic: Diagnostic = {
            range: rangeOf(gap.span, document), severity: severities[gap.severity], code: gap.code, source, message: gap.message, data: { code: gap.code },
            ...(information ? { relatedInformation: information } : {}), ...(gap.code === 'stale-answer' ? { tags: [DiagnosticTag.Unnecessary] } : {}),
        };
        add(`${gap.code}:${gap.span.start}:${gap.message}`, { diagnostic, gap });
    };
    syntaxGaps(uri, document.textDocument.getText(), document.parseResult).forEach(addGap);
    for (const { gaps, problems } of analyser.analysesOf(uri)) {
        gaps.forEach(addGap);
        for (const problem of problems) {
            if (problem.answeredBy !== undefined || problem.at.uri !== uri) {
                continue;
            }
            const information = related(problem.related);
            const diagnostic: Diagnostic = {
                range: rangeOf(problem.at, document), severity: severities[problem.severity], code: problem.check.id, source, message: problem.message,
                codeDescription: { href: explanationUri(problem.check.id) }, data: { code: problem.check.id },
                ...(information ? { relatedInformation: information } : {}),
            };
            add(`${problem.check.id}:${problem.at.start}:${problem.message}`, { diagnostic, problem });
        }
    }
    return located;
}

/** In place of Langium's validation registry: one analysis a survey, shown document by document. */
export class SurveyDocumentValidator implements DocumentValidator {
    constructor(private readonly analyser: () => SurveyAnalyser, private readonly lookup: DocumentLookup) {}

    validateDocument(document: LangiumDocument): Promise<Diagnostic[]> {
        return Promise.resolve(locatedIn(document, this.analyser(), this.lookup).map(entry => entry.diagnostic));
    }
}
