/** The report in a real browser: what it fetches, what an audit of accessibility says, what is printed. */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findChromium } from '../../.scripts/ensure-chromium.mjs';
import { renderReport } from '../../src/report/report.js';
import { sampleInput, sampleReport, sampleText } from './sample.js';

const chromiumArguments = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

let browser: Browser;
let folder: string;
const complaints: string[] = [];

beforeAll(async () => {
    browser = await chromium.launch({ executablePath: await findChromium(), args: chromiumArguments });
    folder = await mkdtemp(join(tmpdir(), 'garboard-report-'));
}, 300_000);

afterAll(async () => {
    await browser?.close();
    if (folder) {
        await rm(folder, { recursive: true, force: true });
    }
});

const draft = () => sampleReport({}, sampleText.replace('answers:   hose-and-spigot-differ', ''));
const final = () => {
    const input = sampleInput();
    return renderReport({ ...input, gaps: [], problems: input.problems.filter(p => p.answeredBy !== undefined) });
};

/** Opens the page as a file, as from a mail; everything it says or asks for is kept. */
async function open(html: string, width = 1000): Promise<Page> {
    const path = join(folder, `${Math.random().toString(36).slice(2)}.html`);
    await writeFile(path, html);
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    const address = pathToFileURL(path).href;
    page.on('console', message => complaints.push(`console: ${message.text()}`));
    page.on('pageerror', error => complaints.push(`error: ${error.message}`));
    page.on('dialog', dialog => { complaints.push('dialog'); void dialog.dismiss(); });
    page.on('request', request => {
        if (request.url() !== address && !request.url().startsWith('data:image/jpeg;base64,')) {
            complaints.push(`request: ${request.url().slice(0, 100)}`);
        }
    });
    await page.goto(address, { waitUntil: 'load' });
    return page;
}

test.each([['final', final], ['draft', draft]])('%s: nothing is fetched and nothing complained of', async (_, html) => {
    complaints.length = 0;
    const page = await open(html());
    await page.emulateMedia({ media: 'print' });
    await page.close();
    expect(complaints).toEqual([]);
});

test('hostile text stays text in a real browser', async () => {
    complaints.length = 0;
    const payload = '\\"><img src=x onerror=alert(1)></style></title><script>alert(1)</script><a href=javascript:alert(1)>';
    const page = await open(sampleReport({}, sampleText.replace(/"([^"\n]*)"/g, (_, inside: string) => `"${inside} ${payload}"`)));
    const found = await page.evaluate(() => Array.from(document.querySelectorAll('*')).flatMap(element => [
        ...(['SCRIPT', 'IFRAME', 'OBJECT', 'EMBED', 'LINK', 'BASE', 'FORM'].includes(element.tagName.toUpperCase()) ? [element.tagName] : []),
        ...Array.from(element.attributes).filter(a => a.name.startsWith('on') || /^\s*javascript:/i.test(a.value)).map(a => `${element.tagName} ${a.name}`),
    ]));
    await page.close();
    expect(found).toEqual([]);
    expect(complaints).toEqual([]);
});

test.each([['final', final], ['draft', draft]])('%s: an audit by WCAG 2 AA finds no error', async (_, html) => {
    // The page itself forbids scripts; the audit runs on a copy that allows this one.
    const page = await open(html().replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, ''));
    await page.addScriptTag({ content: await readFile(createRequire(import.meta.url).resolve('html_codesniffer/build/HTMLCS.js'), 'utf8') });
    const errors = await page.evaluate(() => new Promise<string[]>(resolve => {
        const audit = Reflect.get(window, 'HTMLCS') as { process(standard: string, content: Document, done: () => void): void; getMessages(): { type: number; code: string; msg: string; element: Element }[] };
        audit.process('WCAG2AA', document, () => {
            resolve(audit.getMessages().filter(m => m.type === 1).map(m => `${m.code}: ${m.msg} ${m.element.outerHTML?.slice(0, 120) ?? ''}`));
        });
    }));
    await page.close();
    expect(errors).toEqual([]);
}, 60_000);

test.each([320, 375, 640, 1000])('nothing is wider than a window of %i px', async width => {
    const page = await open(draft(), width);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    await page.close();
    expect(overflow).toBe(0);
});

test('the typefaces come from the page itself, and a pair of photographs has one height', async () => {
    const page = await open(final());
    const { loaded, heights } = await page.evaluate(async () => {
        await document.fonts.ready;
        const families: string[] = [];
        document.fonts.forEach(face => families.push(...face.status === 'loaded' ? [face.family.replace(/"/g, '')] : []));
        return {
            loaded: families,
            heights: Array.from(document.querySelectorAll('.pair img')).map(img => img.getBoundingClientRect().height),
        };
    });
    await page.close();
    expect(new Set(loaded)).toEqual(new Set(['Source Serif 4', 'Source Sans 3']));
    expect(heights.length).toBeGreaterThanOrEqual(2);
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(2);
});

test.each([['A4', 174], ['Letter', 180]])('a table of twelve columns stands within the margins of %s', async (_, millimeters) => {
    const head = Array.from({ length: 12 }, (_unused, i) => `<th scope="col" class="number">${i === 0 ? 'Place' : `Reading ${i}`}</th>`).join('');
    const row = `<tr><th scope="row">Frame 12, strake C, starboard</th>${'<td class="number">5.123 mm<span class="other">0.202 in</span></td>'.repeat(11)}</tr>`;
    const page = await open(final().replace('<main id="report">', `<main id="report"><div class="table"><table class="readings wide-one"><thead><tr>${head}</tr></thead><tbody>${row}</tbody></table></div>`), Math.floor(millimeters / 25.4 * 96));
    await page.emulateMedia({ media: 'print' });
    const [table, room] = await page.evaluate(() => [document.querySelector('.wide-one')?.getBoundingClientRect().width ?? 0, document.querySelector('main')?.clientWidth ?? 0]);
    await page.close();
    expect(table).toBeGreaterThan(0);
    expect(table).toBeLessThanOrEqual(room + 1);
});

describe.each(['A4', 'Letter'])('printed on %s', format => {
    async function pages(html: string): Promise<string[]> {
        const page = await open(html);
        const pdf = await page.pdf({ format, preferCSSPageSize: true, tagged: true, outline: true });
        await page.close();
        const loaded = await getDocument({ data: new Uint8Array(pdf), useSystemFonts: false, verbosity: 0 }).promise;
        const texts: string[] = [];
        for (let number = 1; number <= loaded.numPages; number++) {
            const content = await (await loaded.getPage(number)).getTextContent();
            texts.push(content.items.map(item => 'str' in item ? item.str : '').join(' ').replace(/\s+/g, ' '));
        }
        await loaded.destroy();
        return texts;
    }

    test('each page tells the vessel, the report and its number', async () => {
        const texts = await pages(final());
        expect(texts.length).toBeGreaterThan(4);
        texts.forEach((text, index) => {
            expect(text).toContain(`page ${index + 1} of ${texts.length}`);
            expect(text).toContain('Heron');
            expect(text).toContain('AR-77');
            expect(text).not.toContain('DRAFT');
        });
    }, 60_000);

    test('a draft says so on every page', async () => {
        for (const text of await pages(draft())) {
            expect(text).toContain('DRAFT');
        }
    }, 60_000);
});
