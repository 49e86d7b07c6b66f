/** PDFs printed by a real browser, read back by a PDF library and compared with the page and the record they are made from. */
import { existsSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { findChromium } from '../../.scripts/ensure-chromium.mjs';
import { printPdf, type PdfOptions } from '../../src/host/pdf.js';
import { documentProperties } from '../../src/report/properties.js';
import { renderReport } from '../../src/report/report.js';
import { sampleInput } from '../report/sample.js';

let browser: string;
beforeAll(async () => { browser = await findChromium(); }, 300_000);

const input = (paper?: 'a4' | 'letter') => {
    const sample = sampleInput(paper ? { paper } : {});
    return { ...sample, gaps: [], problems: sample.problems.filter(p => p.answeredBy !== undefined) };
};
const print = (html: string, options: Partial<PdfOptions> = {}) => printPdf(html, { browser, paper: 'a4', properties: documentProperties(input()), ...options });
const folders = () => readdirSync(tmpdir()).filter(name => /^garboard-[A-Za-z0-9]{6}$/.test(name));

async function read<T>(pdf: Uint8Array, look: (document: PDFDocumentProxy) => Promise<T>): Promise<T> {
    const document = await getDocument({ data: new Uint8Array(pdf), useSystemFonts: false, verbosity: 0 }).promise;
    try {
        return await look(document);
    } finally {
        await document.destroy();
    }
}

async function textsOf(document: PDFDocumentProxy): Promise<string[]> {
    const texts: string[] = [];
    for (let number = 1; number <= document.numPages; number++) {
        const { items } = await (await document.getPage(number)).getTextContent();
        texts.push(items.map(item => 'str' in item ? item.str : '').join(' ').replace(/\s+/g, ' '));
    }
    return texts;
}

const blankless = (text: string) => text.replace(/\s+/g, '');
const sectionsOf = (html: string) => [...html.matchAll(/<section class="section[^"]*" id="([^"]*)"[^>]*>\s*<h2[^>]*><span class="n">(\d+)<\/span> ([^<]*)<\/h2>/g)].map(([, id = '', number = '', title = '']) => ({ id, number, title: title.replaceAll('&#39;', '\'').replaceAll('&amp;', '&') }));

describe('the report of the sample survey', () => {
    const html = renderReport(input());
    const sections = sectionsOf(html);
    let pdf: Uint8Array;
    const turns: number[] = [];
    beforeAll(async () => { pdf = await print(html, { onPrinting: turn => turns.push(turn) }); }, 120_000);

    test('has a bookmark for every section, leading to the page where it begins', () => read(pdf, async document => {
        expect(sections.length).toBeGreaterThan(8);
        const texts = await textsOf(document);
        const bookmarks = (await document.getOutline()).flatMap(function all(entry): { title: string; dest: unknown }[] {
            return [{ title: entry.title, dest: entry.dest }, ...(entry.items as typeof entry[]).flatMap(all)];
        });
        for (const { number, title } of sections) {
            const bookmark = bookmarks.find(b => blankless(b.title) === blankless(`${number}${title}`));
            expect(bookmark, title).toBeDefined();
            const dest = typeof bookmark?.dest === 'string' ? await document.getDestination(bookmark.dest) : bookmark?.dest as unknown[];
            const page = await document.getPageIndex(dest?.[0] as { num: number; gen: number });
            expect(blankless(texts[page] ?? ''), title).toContain(blankless(`${number}${title}`));
        }
    }));

    test('says every finding and what to do about it, as the record has it', () => read(pdf, async document => {
        const text = blankless((await textsOf(document)).join(' '));
        const { record } = input();
        expect(record.findings.length).toBe(2);
        for (const { id, title } of record.findings) {
            expect(text).toContain(blankless(`${id} ${title}`));
        }
        // As the sample's text says it.
        expect(text).toContain(blankless('Hang them otherwise.'));
    }));

    test('names in its contents the page each section begins on', () => read(pdf, async document => {
        const texts = (await textsOf(document)).map(blankless);
        const contents = texts.find(text => text.includes('Contents') && sections.every(({ title }) => text.includes(blankless(title))));
        expect(contents).toBeDefined();
        for (const { id, number, title } of sections) {
            const dest = await document.getDestination(id);
            const page = await document.getPageIndex(dest?.[0]) + 1;
            expect(contents, `${title}, page ${page}`).toContain(blankless(`${number}${title}${page}`));
        }
        expect(turns.slice(0, 2)).toEqual([1, 2]);
    }));

    test('carries title, author, subject and language, and neither scripts nor attachments', () => read(pdf, async document => {
        const { info } = await document.getMetadata();
        expect(info).toMatchObject({ Title: expect.stringContaining('Heron'), Author: 'Ada Rowe, Alder and Rowe, Surveyors', Subject: 'Pre-purchase survey of Heron, report AR-77', Creator: 'Garboard', Language: 'en' });
        expect(await document.getJSActions()).toBeNull();
        expect(await document.getAttachments()).toBeNull();
        expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
        for (let number = 1; number <= document.numPages; number++) {
            const page = await document.getPage(number);
            expect(await page.getJSActions()).toBeNull();
            expect((await page.getAnnotations()).filter(a => a.subtype === 'Link' && a.url !== undefined)).toEqual([]);
        }
    }));
});

// ISO 216: A4 is 210 by 297 mm; ANSI/ASME Y14.1: Letter is 8.5 by 11 in. A point is 1/72 in.
test.each([['a4', 210 / 25.4 * 72, 297 / 25.4 * 72], ['letter', 612, 792]] as const)('%s has its size, whether the page says it or not', async (paper, width, height) => {
    for (const pdf of [await print(renderReport(input(paper)), { paper: paper === 'a4' ? 'letter' : 'a4' }), await print('<!DOCTYPE html><title>x</title><p>x', { paper })]) {
        await read(pdf, async document => {
            for (let number = 1; number <= document.numPages; number++) {
                const { width: w, height: h } = (await document.getPage(number)).getViewport({ scale: 1 });
                expect(Math.abs(w - width)).toBeLessThan(0.8);
                expect(Math.abs(h - height)).toBeLessThan(0.8);
            }
        });
    }
}, 120_000);

test('a page with a script and things to fetch is printed without either', async () => {
    const pdf = await print('<!DOCTYPE html><title>x</title><p>before</p><p id="p">as written</p><script>document.getElementById("p").textContent = "by script"</script><img src="http://localhost:9/x.png" alt="a picture">');
    await read(pdf, async document => {
        const [text] = await textsOf(document);
        expect(text).toContain('as written');
        expect(text).not.toContain('by script');
    });
}, 60_000);

test('a stop ends the browser, leaves no folder behind and says it was a stop', async () => {
    const before = new Set(folders());
    const stop = new AbortController();
    const printing = print(renderReport(input()), { signal: stop.signal, onPrinting: () => setTimeout(() => stop.abort(), 50) });
    await expect(printing).rejects.toMatchObject({ name: 'AbortError' });
    expect(folders().filter(name => !before.has(name))).toEqual([]);
}, 60_000);

test('a browser that takes too long, or is none, is told by name', async () => {
    await expect(print(renderReport(input()), { timeLimitMs: 1 })).rejects.toThrow(/did not print the report within/);
    const none = '/bin/true';
    expect(existsSync(none)).toBe(true);
    await expect(print('<p>', { browser: none })).rejects.toThrow(/\/bin\/true ended before the page was printed/);
    await expect(print('<p>', { browser: '/nowhere/chromium' })).rejects.toThrow(/\/nowhere\/chromium could not be started/);
}, 60_000);
