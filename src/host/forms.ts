/**
 * The forms of output of one paper: HTML, PDF, Word, the record as JSON, and the recommendations as a table. Everything asked for is made
 * before anything is written, so that a form that fails, or a stop, leaves no files half of a kind.
 */
import { basename, dirname, extname, join } from 'node:path';
import type { Analysis } from '../checks/analyse.js';
import { computedFacts } from '../record/computed.js';
import { assembleReport, fileName, type Assembled, type PhotoSource } from '../report/assemble.js';
import { ReportContext, type IssueStamp, type Paper, type ReportInput } from '../report/context.js';
import { recommendationsCsv } from '../report/csv.js';
import type { DocumentKind } from '../report/documents.js';
import { documentProperties } from '../report/properties.js';
import { recordJson, recordText, type RecordDocument } from '../report/record-json.js';
import { runningHeads } from '../report/report.js';
import { findBrowser, type NamedBrowser } from './browser.js';
import { writeAllWhole } from './files.js';
import { printPdf } from './pdf.js';
import { rasterizer } from './rasterize.js';

export const outputForms = ['html', 'pdf', 'docx', 'json', 'csv'] as const;
export type OutputForm = (typeof outputForms)[number];

export const isOutputForm = (word: string): word is OutputForm => outputForms.some(form => form === word);

/** Forms that are drawn from a paper; the others hold the record itself, whatever the paper. */
const drawnForms: ReadonlySet<OutputForm> = new Set(['html', 'pdf', 'docx']);

/** What goes on, for a line of progress. */
export type FormStep =
    | { readonly at: 'photos'; readonly done: number; readonly total: number }
    | { readonly at: 'printing'; readonly turn: number }
    | { readonly at: 'making'; readonly form: OutputForm };

const formNames: Readonly<Record<OutputForm, string>> = { html: 'page', pdf: 'PDF', docx: 'Word document', json: 'record', csv: 'table' };

/** What goes on, in a few words. */
export function stepText(step: FormStep): string {
    switch (step.at) {
        case 'photos': return `photos ${step.done}/${step.total}`;
        case 'making': return `making the ${formNames[step.form]}`;
        case 'printing': return step.turn === 1 ? 'printing' : 'printing with page numbers in the contents';
    }
}

export interface FormOptions {
    readonly forms: readonly OutputForm[];
    readonly document: DocumentKind;
    /** Sheet of the printed forms; the firm's, or else A4. */
    readonly paper?: Paper;
    readonly issue?: IssueStamp;
    /** The record of the last issue, to say what has changed since. */
    readonly lastRecord?: RecordDocument;
    readonly photos: PhotoSource;
    /** One-based line and column of an offset in a file. */
    readonly position: (uri: string, offset: number) => { readonly line: number; readonly column: number };
    readonly browser?: NamedBrowser;
    readonly signal?: AbortSignal;
    readonly onProgress?: (step: FormStep) => void;
}

export interface MadeForms {
    /** Content by form, in the order asked for. */
    readonly contents: ReadonlyMap<OutputForm, string | Uint8Array>;
    /** With any the paper is a draft. */
    readonly openErrors: number;
    readonly photoFaults: readonly string[];
}

/**
 * Makes the forms. Nothing is written.
 * @throws NoBrowserError where a PDF is asked for and nothing can print it; DOMException "AbortError" where the signal says stop.
 */
export async function makeForms(analysis: Analysis, { forms, document, paper, issue, lastRecord, photos, position, browser, signal, onProgress }: FormOptions): Promise<MadeForms> {
    const { record, problems, gaps } = analysis;
    // Looked for first: without one, nobody should wait for the photographs.
    const program = forms.includes('pdf') ? await findBrowser(browser) : undefined;
    const lineOf = (span: { readonly uri: string; readonly start: number }) => position(span.uri, span.start).line;
    const stamp = { ...(issue ? { issue } : {}), ...(lastRecord ? { lastRecord } : {}) };
    const assembled: Assembled | undefined = forms.some(form => drawnForms.has(form)) ? await assembleReport(analysis, {
        photos, mode: 'file', document, lineOf, ...(paper ? { paper } : {}), ...stamp,
        ...(signal ? { signal } : {}), onProgress: (done, total) => onProgress?.({ at: 'photos', done, total }),
    }) : undefined;
    const openErrors = assembled?.openErrors ?? problems.filter(p => p.severity === 'error' && p.answeredBy === undefined).length + gaps.filter(g => g.severity === 'error').length;
    const input: ReportInput = {
        record, problems, gaps, computed: computedFacts(record), photos: new Map(), mode: 'file', ...stamp, lineOf: span => ({ file: fileName(span.uri, record.mainUri), line: lineOf(span) }),
    };
    const context = new ReportContext({ ...input, ...(paper ? { paper } : {}) });
    const sheet = context.paper ?? 'a4';
    const html = assembled?.html ?? '';
    const contents = new Map<OutputForm, string | Uint8Array>();
    for (const form of forms) {
        signal?.throwIfAborted();
        onProgress?.({ at: 'making', form });
        switch (form) {
            case 'html':
                contents.set(form, html);
                break;
            case 'pdf':
                contents.set(form, await printPdf(html, {
                    browser: program ?? '', paper: sheet, properties: documentProperties(input), ...(signal ? { signal } : {}), onPrinting: turn => onProgress?.({ at: 'printing', turn }),
                }));
                break;
            case 'docx': {
                const { docxOf } = await import('../report/docx/document.js');
                const rasterize = await rasterizer();
                contents.set(form, await docxOf(html, {
                    paper: sheet, properties: documentProperties(input), running: runningHeads(context), accent: context.palette.accentText, ...(rasterize ? { rasterize } : {}), ...(signal ? { signal } : {}),
                }));
                break;
            }
            case 'json':
                contents.set(form, recordText(recordJson(analysis, { position, name: uri => fileName(uri, record.mainUri), ...stamp })));
                break;
            case 'csv':
                contents.set(form, recommendationsCsv(input, openErrors > 0));
        }
    }
    signal?.throwIfAborted();
    return { contents, openErrors, photoFaults: assembled?.photoFaults ?? [] };
}

/** Writes each form to its path, all or none; gives the paths written. */
export async function writeForms(made: MadeForms, pathOf: (form: OutputForm) => string): Promise<string[]> {
    const files = [...made.contents].map(([form, content]) => [pathOf(form), content] as const);
    await writeAllWhole(files);
    return files.map(([path]) => path);
}

/**
 * Where forms are written: `output` itself where it is one file, with each form's ending where there are several, and NAME.FORM in it
 * where it is a folder, which a trailing slash says. A paper other than the report has its kind in the name.
 */
export function outputPath(form: OutputForm, { stem, folder, document, output, forms }: {
    readonly stem: string; readonly folder: string; readonly document: DocumentKind; readonly output?: string; readonly forms: readonly OutputForm[];
}): string {
    const name = `${stem}${document === 'report' ? '' : `-${document}`}.${form}`;
    if (output === undefined) {
        return join(folder, name);
    }
    if (/[/\\]$/.test(output)) {
        return join(output, name);
    }
    const ending = extname(output);
    return forms.length === 1 ? output : join(dirname(output), `${isOutputForm(ending.slice(1).toLowerCase()) ? basename(output, ending) : basename(output)}.${form}`);
}
