/**
 * The report's page as a PDF: printed by a browser of this machine, with bookmarks, tags and page numbers in the contents. The page itself
 * forbids scripts and anything fetched; the browser is told the same once more.
 */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ParseSpeeds, PDFArray, PDFDict, PDFDocument, PDFName, PDFRef } from '@cantoo/pdf-lib';
import type { Paper } from '../report/context.js';
import type { DocumentProperties } from '../report/properties.js';
import { isSnap } from './browser.js';
import { BrowserPipe } from './devtools.js';

export interface PdfOptions {
    /** Path of the browser's program. */
    readonly browser: string;
    /** Size of the sheet where the page itself sets none. */
    readonly paper: Paper;
    readonly properties: DocumentProperties;
    readonly signal?: AbortSignal;
    /** The printing that begins, from 1: the second one has the numbers of pages in its contents. */
    readonly onPrinting?: (turn: number) => void;
    /** Longest time for the whole, in ms. */
    readonly timeLimitMs?: number;
}

/**
 * Measured: 400 photographs (51 MB of PDF) took 203 s to print twice on two cores under heavy load; the limit is only for a browser that hangs.
 */
const usualTimeLimitMs = 10 * 60_000;
/** Numbers in the contents have their room, so the second printing breaks as the first did; one more is for the case that it does not. */
const mostPrintings = 3;
const inch = 25.4;
const sheets: Readonly<Record<Paper, { readonly paperWidth: number; readonly paperHeight: number }>> = {
    a4: { paperWidth: 210 / inch, paperHeight: 297 / inch }, letter: { paperWidth: 8.5, paperHeight: 11 },
};

/** @throws Error where the browser fails or takes too long; DOMException "AbortError" where the signal says stop. */
export async function printPdf(html: string, { browser, paper, properties, signal, onPrinting, timeLimitMs = usualTimeLimitMs }: PdfOptions): Promise<Uint8Array> {
    signal?.throwIfAborted();
    const folder = await temporaryFolder(browser);
    const limit = AbortSignal.timeout(timeLimitMs);
    const stop = signal ? AbortSignal.any([signal, limit]) : limit;
    let pipe: BrowserPipe | undefined;
    try {
        const page = join(folder, 'report.html');
        await writeFile(page, html);
        pipe = BrowserPipe.start(browser, join(folder, 'profile'));
        const printer = await orStopped(Printer.open(pipe, paper), stop);
        let numbers = '';
        for (let turn = 1; ; turn++) {
            onPrinting?.(turn);
            const pdf = await read(await orStopped(printer.print(pathToFileURL(page).href), stop));
            stop.throwIfAborted();
            const filled = withPageNumbers(html, pagesOfAnchors(pdf));
            if (filled.numbers === numbers || turn === mostPrintings) {
                return await finished(pdf, properties);
            }
            numbers = filled.numbers;
            await writeFile(page, filled.html);
        }
    } catch (error) {
        signal?.throwIfAborted();
        throw limit.aborted ? new Error(`The browser ${browser} did not print the report within ${Math.round(timeLimitMs / 1000)} s and was ended. Nothing is written.`) : error;
    } finally {
        await pipe?.close();
        // The files of a browser just ended are freed with a delay on Windows.
        await rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
    }
}

async function temporaryFolder(browser: string): Promise<string> {
    const base = await isSnap(browser) ? join(homedir(), 'snap', 'chromium', 'common') : tmpdir();
    await mkdir(base, { recursive: true });
    return mkdtemp(join(base, 'garboard-'));
}

/** The promise, or the reason for stopping as soon as the signal gives one. */
function orStopped<T>(promise: Promise<T>, signal: AbortSignal): Promise<T> {
    return new Promise((resolve, reject) => {
        const stopped = () => reject(signal.reason);
        if (signal.aborted) {
            stopped();
        }
        signal.addEventListener('abort', stopped, { once: true });
        promise.then(resolve, reject).finally(() => signal.removeEventListener('abort', stopped));
    });
}

class Printer {
    readonly #pipe: BrowserPipe;
    readonly #session: string;
    readonly #paper: Paper;

    private constructor(pipe: BrowserPipe, session: string, paper: Paper) {
        this.#pipe = pipe;
        this.#session = session;
        this.#paper = paper;
    }

    static async open(pipe: BrowserPipe, paper: Paper): Promise<Printer> {
        const { targetId } = await pipe.send<{ targetId: string }>('Target.createTarget', { url: 'about:blank' });
        const { sessionId } = await pipe.send<{ sessionId: string }>('Target.attachToTarget', { targetId, flatten: true });
        await pipe.send('Page.enable', {}, sessionId);
        await pipe.send('Emulation.setScriptExecutionDisabled', { value: true }, sessionId);
        return new Printer(pipe, sessionId, paper);
    }

    async print(address: string): Promise<Uint8Array> {
        const loaded = this.#pipe.event('Page.loadEventFired', this.#session);
        const [{ errorText }] = await Promise.all([this.#pipe.send<{ errorText?: string }>('Page.navigate', { url: address }, this.#session), loaded]);
        if (errorText !== undefined) {
            throw new Error(`The browser could not open the page to print, ${address}: ${errorText}.`);
        }
        const { stream } = await this.#pipe.send<{ stream: string }>('Page.printToPDF', {
            ...sheets[this.#paper], preferCSSPageSize: true, printBackground: true, displayHeaderFooter: false,
            generateTaggedPDF: true, generateDocumentOutline: true, transferMode: 'ReturnAsStream',
        }, this.#session);
        const pieces: Buffer[] = [];
        for (;;) {
            const { data, base64Encoded, eof } = await this.#pipe.send<{ data: string; base64Encoded?: boolean; eof: boolean }>('IO.read', { handle: stream, size: 4 << 20 }, this.#session);
            pieces.push(Buffer.from(data, base64Encoded ? 'base64' : 'latin1'));
            if (eof) {
                await this.#pipe.send('IO.close', { handle: stream }, this.#session);
                return Buffer.concat(pieces);
            }
        }
    }
}

/** Reads a PDF; the library's pauses between objects are for windows that must answer meanwhile. */
const read = (pdf: Uint8Array): Promise<PDFDocument> => PDFDocument.load(pdf, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest });

/** One-based page of each anchor that something in the document links to. */
function pagesOfAnchors(document: PDFDocument): Map<string, number> {
    const pages = new Map(document.getPages().map((page, index) => [page.ref.toString(), index + 1]));
    const found = new Map<string, number>();
    const named = document.catalog.lookup(PDFName.of('Dests'));
    for (const [name, value] of named instanceof PDFDict ? named.entries() : []) {
        const place = document.context.lookup(value);
        const page = place instanceof PDFArray ? place.get(0) : undefined;
        const number = page instanceof PDFRef ? pages.get(page.toString()) : undefined;
        if (number !== undefined) {
            found.set(name.decodeText(), number);
        }
    }
    return found;
}

/** The page with the numbers in its contents, and these numbers as one text to compare by. */
export function withPageNumbers(html: string, pages: ReadonlyMap<string, number>): { readonly html: string; readonly numbers: string } {
    const numbers: string[] = [];
    const filled = html.replace(/(<span class="page" data-for="([^"]*)"[^>]*>)[^<]*(?=<\/span>)/g, (_, start: string, anchor: string) => {
        const number = String(pages.get(anchor) ?? '');
        numbers.push(`${anchor} ${number}`);
        return start + number;
    });
    return { html: filled, numbers: numbers.join('\n') };
}

/** Title and language come from the page itself. */
function finished(document: PDFDocument, { author, subject, keywords }: DocumentProperties): Promise<Uint8Array> {
    document.setTitle(document.getTitle() ?? subject, { showInWindowTitleBar: true });
    document.setAuthor(author);
    document.setSubject(subject);
    document.setKeywords([...keywords]);
    document.setCreator('Garboard');
    return document.save({ addDefaultPage: false, updateFieldAppearances: false, useObjectStreams: false, objectsPerTick: Infinity });
}
