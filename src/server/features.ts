/** Wires the custom requests to a connection. */
import { DocumentState, URI, type FileSystemProvider } from 'langium';
import type { CodeAction, Connection } from 'vscode-languageserver';
import { checkById } from '../checks/analyse.js';
import type { SurveyCodeActionProvider } from '../editor/actions.js';
import { explainCheck } from '../editor/explain.js';
import { newSurveyText, type NewSurvey } from '../editor/new-survey.js';
import type { createGarboardLspServices } from '../editor/services.js';
import { catalogueText } from '../record/catalogue.js';
import { assembleReport, type PhotoSource } from '../report/assemble.js';
import { readOutsideFacts } from '../report/outside.js';
import type { NodeShelf } from '../host/shelf.js';
import { requests, type OpenProblem, type ProblemsResult, type ReportParams, type ReportResult } from './protocol.js';

/** Quiet after a keystroke before picture files are looked at. */
const photoDelayMs = 400;

export function serveRequests(connection: Connection, { shared, language }: ReturnType<typeof createGarboardLspServices>, photos: PhotoSource, shelf?: NodeShelf): void {
    const analyser = language.editor.Analyser;
    const documents = shared.workspace.LangiumDocuments;
    const lineOf = (span: { uri: string; start: number }) => {
        const position = documents.getDocument(URI.parse(span.uri))?.textDocument.positionAt(span.start);
        return { line: position?.line ?? 0, character: position?.character ?? 0 };
    };

    followOutside({ shared, language }, photos, shelf);

    connection.onRequest(requests.report, async ({ uri, mode }: ReportParams): Promise<ReportResult | undefined> => {
        const analysis = await shared.workspace.WorkspaceLock.read(() => analyser.analysisOf(uri));
        const last = analysis && await shelf?.lastRecord(analysis.record.survey?.number ?? '', analysis.record.mainUri);
        return analysis && assembleReport(analysis, { photos, mode, lineOf: span => lineOf(span).line + 1, ...(last ? { lastRecord: last.document } : {}) });
    });

    connection.onRequest(requests.problems, async ({ uri }: { uri: string }): Promise<ProblemsResult | undefined> => {
        const analysis = await shared.workspace.WorkspaceLock.read(() => analyser.analysisOf(uri));
        if (!analysis) {
            return undefined;
        }
        const open: OpenProblem[] = [
            ...analysis.gaps.map(gap => ({ uri: gap.span.uri, ...lineOf(gap.span), severity: gap.severity, code: gap.code, message: gap.message, components: [] })),
            ...analysis.problems.filter(p => p.answeredBy === undefined).map(p => ({
                uri: p.at.uri, ...lineOf(p.at), severity: p.severity, code: p.check.id, message: p.message, components: p.components.map(c => c.id),
            })),
        ];
        return { problems: open, answered: analysis.problems.length - analysis.problems.filter(p => p.answeredBy === undefined).length, findings: analysis.record.findings.length };
    });

    connection.onRequest(requests.catalogue, ({ uri }: { uri: string }): string | null => catalogueText(uri) ?? null);

    connection.onRequest(requests.explain, ({ check }: { check: string }): string | null => {
        const found = checkById(check);
        return found ? explainCheck(found) : null;
    });

    connection.onRequest(requests.draftAll, ({ uri }: { uri: string }): CodeAction | null => {
        const document = documents.getDocument(URI.parse(uri));
        // features.ts registers this provider.
        return document ? (language.lsp.CodeActionProvider as SurveyCodeActionProvider).draftAll(document) ?? null : null;
    });

    connection.onRequest(requests.newSurvey, (survey: NewSurvey) => newSurveyText(survey));
}

/** What lies outside the text is looked at once typing pauses; where it tells something new, the survey is judged again. */
function followOutside({ shared, language }: ReturnType<typeof createGarboardLspServices>, photos: PhotoSource, shelf?: NodeShelf): void {
    const analyser = language.editor.Analyser;
    const { DocumentBuilder, FileSystemProvider, LangiumDocuments, TextDocuments, WorkspaceLock } = shared.workspace;
    let timer: NodeJS.Timeout | undefined;
    /** Files that a survey uses and that no watcher has told of: one beyond the workspace, or one written along with its new folder. */
    const readUsed = async () => {
        const missed: URI[] = [];
        for (const use of analyser.usedButUnread(TextDocuments.keys())) {
            const uri = URI.parse(use);
            if (!LangiumDocuments.hasDocument(uri) && await FileSystemProvider.exists(uri)) {
                missed.push(uri);
            }
        }
        if (missed.length > 0) {
            await WorkspaceLock.write(token => DocumentBuilder.update(missed, [], token));
        }
    };
    const look = async () => {
        await readUsed();
        const seen = new Set<string>();
        for (const uri of TextDocuments.keys()) {
            for (const { record } of await WorkspaceLock.read(() => analyser.analysesOf(uri))) {
                if (!seen.has(record.mainUri)) {
                    seen.add(record.mainUri);
                    if (analyser.setOutside(record.mainUri, await readOutsideFacts(record, photos, shelf))) {
                        await WorkspaceLock.write(token => DocumentBuilder.update([URI.parse(record.mainUri)], [], token));
                    }
                }
            }
        }
    };
    DocumentBuilder.onBuildPhase(DocumentState.Validated, () => {
        clearTimeout(timer);
        timer = setTimeout(() => void look(), photoDelayMs);
        timer.unref();
    });
}

/** Text from disk without the byte-order mark, which the editor does not count either. */
export function withoutByteOrderMark(provider: FileSystemProvider): FileSystemProvider {
    const strip = (text: string) => text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
    return new Proxy(provider, {
        get(target, property, receiver) {
            if (property === 'readFile') {
                return async (uri: URI) => strip(await target.readFile(uri));
            }
            if (property === 'readFileSync') {
                return (uri: URI) => strip(target.readFileSync(uri));
            }
            const value: unknown = Reflect.get(target, property, receiver);
            return typeof value === 'function' ? value.bind(target) : value;
        },
    });
}
