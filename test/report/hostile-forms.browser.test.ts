/** Hostile text in every place of the language, in the forms beside HTML: Word, the record as JSON, the table for a yard, and PDF. */
import { strFromU8, unzipSync } from 'fflate';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import sax from 'sax';
import { beforeAll, expect, test } from 'vitest';
import { findChromium } from '../../.scripts/ensure-chromium.mjs';
import { analyseText } from '../../src/checks/survey.js';
import { printPdf } from '../../src/host/pdf.js';
import { recommendationsCsv } from '../../src/report/csv.js';
import { docxOf } from '../../src/report/docx/document.js';
import { documentProperties } from '../../src/report/properties.js';
import { recordJson } from '../../src/report/record-json.js';
import { renderReport } from '../../src/report/report.js';
import { asShown, hostileSurvey } from './hostile-words.js';
import { inputOf } from './sample.js';
import { wholeSurvey } from './whole-language.js';

const hostile = hostileSurvey(4);
const analysis = analyseText(hostile.text);
const input = inputOf(analysis);
const plain = inputOf(analyseText(wholeSurvey(() => ' plain words').text));
const running = { left: 'head', right: 'number', foot: 'foot' };

/** Elements of the parts of a Word file, and the addresses its relations lead to. */
async function wordParts(of: typeof input): Promise<{ readonly elements: Set<string>; readonly targets: string[]; readonly text: string }> {
    const files = unzipSync(await docxOf(renderReport(of), { paper: 'a4', properties: documentProperties(of), running, accent: '#0b4a63' }));
    const elements = new Set<string>();
    const targets: string[] = [];
    let text = '';
    for (const [name, bytes] of Object.entries(files)) {
        if (/\.(xml|rels)$/.test(name)) {
            const parser = sax.parser(true);
            let isText = false;
            parser.onerror = error => { throw new Error(`${name}: ${error.message}`); };
            parser.onopentag = ({ name: tag, attributes }) => {
                elements.add(`${name.replace(/\d+/, '')} ${tag}`);
                isText = tag === 'w:t';
                if (tag === 'Relationship' && attributes.TargetMode === 'External') {
                    targets.push(attributes.Target ?? '');
                }
            };
            parser.onclosetag = tag => {
                isText = false;
                text += tag === 'w:p' ? ' ' : '';
            };
            parser.ontext = part => { text += isText ? part : ''; };
            parser.write(strFromU8(bytes)).close();
        }
    }
    return { elements, targets, text: text.replace(/\s+/g, ' ') };
}

/** Places whose mark is in the text but whose words are not. */
const garbled = (text: string): string[] => [...hostile.places].filter(([mark, place]) => text.includes(mark) && !text.includes(asShown(`${mark}${hostile.written(place)}`, place))).map(([, place]) => place);

test('Word: no element, field or address that plain words do not make, and every text as written', async () => {
    const [found, allowed] = [await wordParts(input), await wordParts(plain)];
    expect([...found.elements].filter(element => !allowed.elements.has(element))).toEqual([]);
    expect(found.targets).toEqual([]);
    expect([...hostile.places.keys()].filter(mark => found.text.includes(mark)).length).toBeGreaterThan(500);
    expect(garbled(found.text)).toEqual([]);
}, 120_000);

test('JSON: every text is a string of printable signs, as written', () => {
    const json = JSON.stringify(recordJson(analysis, { position: () => ({ line: 1, column: 1 }), name: uri => uri }));
    const strings: string[] = [];
    JSON.parse(json, (_, value: unknown) => {
        if (typeof value === 'string') {
            strings.push(value.replace(/\s+/g, ' '));
        }
        return value;
    });
    expect(json).not.toMatch(/[\u202a-\u202e\u2066-\u2069]|\\u(?:202[a-e]|206[6-9]|0000|d800)/i);
    const all = strings.join('\n');
    expect([...hostile.places.keys()].filter(mark => all.includes(mark)).length).toBeGreaterThan(900);
    expect(garbled(all)).toEqual([]);
});

test('CSV: no cell begins a formula', () => {
    const csv = recommendationsCsv(input, true);
    const cells = csv.slice(1).match(/(?<=^|,|\r\n)(?:"(?:[^"]|"")*"|[^,"\r\n]*)/g) ?? [];
    expect(cells.length).toBeGreaterThan(30);
    expect(cells.filter(cell => /^"?\s*[=+\-@＝＋－＠]/.test(cell))).toEqual([]);
    expect(csv).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000-\u0008]/);
});

let browser: string;
beforeAll(async () => { browser = await findChromium(); }, 300_000);

test('PDF: no script, no address, no file within, and the words of every finding', async () => {
    const pdf = await printPdf(renderReport(input), { browser, paper: 'a4', properties: documentProperties(input) });
    const document = await getDocument({ data: new Uint8Array(pdf), useSystemFonts: false, verbosity: 0 }).promise;
    expect(await document.getJSActions()).toBeNull();
    expect(await document.getAttachments()).toBeNull();
    let text = '';
    for (let number = 1; number <= document.numPages; number++) {
        const page = await document.getPage(number);
        expect((await page.getAnnotations()).flatMap((annotation: { url?: string; unsafeUrl?: string }) => annotation.url ?? annotation.unsafeUrl ?? [])).toEqual([]);
        text += (await page.getTextContent()).items.map(item => 'str' in item ? item.str : '').join('');
    }
    await document.destroy();
    // Lines of a PDF hold no blanks at their ends, and a long word is broken over several.
    const blankless = text.replace(/[\s\u00ad]+/g, '');
    const places = [...hostile.places].filter(([, place]) => /^(finding\.(seen|because|recommend)|component |firm$|vessel$)/.test(place));
    expect(places.length).toBeGreaterThan(200);
    expect(places.filter(([mark]) => !blankless.includes(mark)).map(([, place]) => place)).toEqual([]);
}, 240_000);
