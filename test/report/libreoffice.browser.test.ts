/** Word files opened by another program, LibreOffice, printed by it, and read back: what Word's own readers would meet. */
import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findLibreOffice } from '../../.scripts/ensure-libreoffice.mjs';
import { rasterizer } from '../../src/host/rasterize.js';
import { docxOf } from '../../src/report/docx/document.js';
import { documentProperties } from '../../src/report/properties.js';
import { renderReport } from '../../src/report/report.js';
import { sampleInput } from './sample.js';

const program = await findLibreOffice();
let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'garboard-word-')); });
afterAll(() => rm(folder, { recursive: true, force: true }));

test.skipIf(program === undefined)('LibreOffice opens the report and prints its sections, findings and recommendations', async () => {
    const input = sampleInput();
    const html = renderReport(input);
    const rasterize = await rasterizer();
    const word = join(folder, 'report.docx');
    await writeFile(word, await docxOf(html, { paper: 'letter', properties: documentProperties(input), running: { left: 'Heron', right: 'Report AR-77', foot: 'Alder and Rowe' }, accent: '#0b4a63', ...(rasterize ? { rasterize } : {}) }));
    // A profile of its own: another LibreOffice that runs would else take the work and say nothing.
    await promisify(execFile)(program ?? '', [`-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`, '--headless', '--convert-to', 'pdf', '--outdir', folder, word], { timeout: 180_000 });
    const document = await getDocument({ data: new Uint8Array(await readFile(join(folder, 'report.pdf'))), useSystemFonts: false, verbosity: 0 }).promise;
    let text = '';
    for (let number = 1; number <= document.numPages; number++) {
        const page = await document.getPage(number);
        // US Letter in points, ANSI/ASME Y14.1: 8.5 in by 11 in.
        expect(page.getViewport({ scale: 1 }).width).toBeCloseTo(612, 0);
        text += (await page.getTextContent()).items.map(item => 'str' in item ? item.str : '').join('');
    }
    await document.destroy();
    const blankless = (words: string) => words.replace(/[\s\u00ad]+/g, '');
    const printed = blankless(text);
    const titles = [...html.matchAll(/<h2 id="[^"]*"><span class="n">\d+<\/span> ([^<]*)<\/h2>/g)].map(([, title = '']) => title.replaceAll('&#39;', '\'').replaceAll('&amp;', '&'));
    expect(titles.length).toBeGreaterThan(8);
    expect(titles.filter(title => !printed.includes(blankless(title)))).toEqual([]);
    for (const finding of input.record.findings) {
        expect(printed).toContain(blankless(finding.title));
    }
    expect(printed).toContain('Hangthemotherwise.');
}, 240_000);
