/** Papers written, issued and verified for the editor: the same host functions as the command line's, with progress and a way to stop. */
import { basename, dirname, join } from 'node:path';
import { ProgressType, type CancellationToken, type Connection } from 'vscode-languageserver';
import { URI } from 'langium';
import type { createGarboardLspServices } from '../editor/services.js';
import { NoBrowserError, type NamedBrowser } from '../host/browser.js';
import { pathOf, positionIn } from '../host/files.js';
import { makeForms, outputPath, stepText, writeForms, type FormStep } from '../host/forms.js';
import { issueReport, signersOf } from '../host/issue.js';
import type { NodeShelf } from '../host/shelf.js';
import { verifyIssues } from '../host/verify.js';
import { fileName, type PhotoSource } from '../report/assemble.js';
import { requests, type IssueAnswer, type IssueParams, type NotDone, type SignersResult, type SurveyOfFile, type VerifyAnswer, type WriteParams, type WriteResult } from './protocol.js';

const progressText = new ProgressType<string>();

export function servePapers(connection: Connection, { shared, language }: ReturnType<typeof createGarboardLspServices>, photos: PhotoSource, shelf: NodeShelf): void {
    const documents = shared.workspace.LangiumDocuments;
    const analysisOf = (uri: string) => shared.workspace.WorkspaceLock.read(() => language.editor.Analyser.analysisOf(uri));
    const position = (uri: string, offset: number) => positionIn(documents.getDocument(URI.parse(uri))?.textDocument.getText() ?? '', offset);
    const teller = (token: string | undefined) => (step: FormStep) => {
        if (token !== undefined) {
            void connection.sendProgress(progressText, token, stepText(step));
        }
    };

    connection.onRequest(requests.write, async (params: WriteParams, token: CancellationToken): Promise<WriteResult> => {
        const analysis = await analysisOf(params.uri);
        if (!analysis) {
            return notRead;
        }
        return stoppable(token, async signal => {
            const { record } = analysis;
            if (URI.parse(record.mainUri).scheme !== 'file') {
                return { state: 'no-survey', message: 'Save the survey first: the report is written beside it.' };
            }
            const last = await shelf.lastRecord(record.survey?.number ?? '', record.mainUri);
            const { document, forms } = params;
            const made = await makeForms(analysis, {
                forms, document, photos, position, signal, onProgress: teller(params.progress), ...(last ? { lastRecord: last.document } : {}), ...printing(params),
            });
            const main = pathOf(record.mainUri);
            const paths = await writeForms(made, form => outputPath(form, { stem: basename(main, '.survey'), folder: join(dirname(main), params.folder), document, forms }));
            return { state: 'written', paths, openErrors: made.openErrors, photoFaults: made.photoFaults };
        });
    });

    connection.onRequest(requests.surveys, async ({ uri }: { uri: string }): Promise<readonly SurveyOfFile[]> => {
        const analyses = await shared.workspace.WorkspaceLock.read(() => language.editor.Analyser.analysesOf(uri));
        return analyses.map(({ record }) => ({ uri: record.mainUri, number: record.survey?.number ?? '', vessel: record.vessel?.name ?? '' }));
    });

    connection.onRequest(requests.signers, async ({ uri }: { uri: string }): Promise<SignersResult | null> => {
        const analysis = await analysisOf(uri);
        if (!analysis) {
            return null;
        }
        const { problems, gaps, record } = analysis;
        return {
            names: signersOf(record),
            openErrors: problems.filter(p => p.severity === 'error' && p.answeredBy === undefined).length + gaps.filter(g => g.severity === 'error').length,
            files: record.uris,
        };
    });

    connection.onRequest(requests.issue, async (params: IssueParams, token: CancellationToken): Promise<IssueAnswer> => {
        const analysis = await analysisOf(params.uri);
        if (!analysis) {
            return notRead;
        }
        return stoppable<IssueAnswer>(token, async signal => {
            const { mainUri, uris } = analysis.record;
            if (URI.parse(mainUri).scheme !== 'file') {
                return { state: 'no-survey', message: 'Save the survey first: what is issued is what lies on disk.' };
            }
            const result = await issueReport(pathOf(mainUri), {
                forms: params.forms, today: params.today, signedBy: params.signedBy, photos, shelf, signal, onProgress: teller(params.progress), ...printing(params),
            });
            return result.state === 'refused' ? {
                state: 'refused', refusals: result.refusals.map(({ message, at }) => {
                    const uri = at && uris.find(each => fileName(each, mainUri) === at.file);
                    return at && uri !== undefined ? { message, at: { uri, line: at.line - 1, character: at.column - 1 } } : { message };
                }),
            }
                : { state: 'issued', folder: result.folder, name: `Report ${result.number}, issue ${result.issue} of ${result.date}, signed by ${result.signedBy}`, manifestSha256: result.manifestSha256 };
        });
    });

    connection.onRequest(requests.verify, async ({ folder }: { folder: string }): Promise<VerifyAnswer | NotDone> => {
        try {
            return {
                issues: (await verifyIssues(pathOf(folder))).map(issue => ({
                    folder: issue.folder, verdict: issue.verdict, name: issue.number === undefined ? basename(issue.folder) : `Report ${issue.number}, issue ${issue.issue ?? ''} of ${issue.date ?? ''}`,
                    faults: [
                        ...issue.files.filter(({ state }) => state !== 'unchanged').map(({ path, state, detail }) => `${path}: ${state.replaceAll('-', ' ')}${detail === undefined ? '' : ` (${detail})`}`),
                        ...issue.extra.map(path => `${path}: not of this issue`), ...issue.faults,
                    ],
                })),
            };
        } catch (error) {
            return { state: 'failed', message: error instanceof Error ? error.message : String(error) };
        }
    });
}

const notRead: NotDone = { state: 'no-survey', message: 'The survey is not read yet, or this file is not part of one. Try again in a moment.' };

function printing({ paper, browser }: Pick<WriteParams, 'paper' | 'browser'>): { readonly paper?: 'a4' | 'letter'; readonly browser?: NamedBrowser } {
    return { ...(paper ? { paper } : {}), ...(browser === undefined || browser === '' ? {} : { browser: { path: browser, by: 'The setting garboard.pdf.browser' } }) };
}

/** Runs until it is done, the user stops it, or it fails; a failure is told, not thrown, so that the editor can show it as it is. */
async function stoppable<T>(token: CancellationToken, run: (signal: AbortSignal) => Promise<T>): Promise<T | NotDone> {
    const stop = new AbortController();
    const listening = token.onCancellationRequested(() => stop.abort());
    if (token.isCancellationRequested) {
        stop.abort(); // Stopped while the server was busy: such a token never tells it again.
    }
    try {
        return await run(stop.signal);
    } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        return stop.signal.aborted ? { state: 'stopped', message: 'Stopped; nothing is written.' } : { state: error instanceof NoBrowserError ? 'no-browser' : 'failed', message };
    } finally {
        listening.dispose();
    }
}
