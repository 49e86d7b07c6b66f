/** A report with many photographs, printed on both sheets and read back: what belongs together stands on one page. */
import jpeg from 'jpeg-js';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { findChromium } from '../../.scripts/ensure-chromium.mjs';
import { analyseText } from '../../src/checks/survey.js';
import { printPdf } from '../../src/host/pdf.js';
import type { EmbeddedPhoto } from '../../src/report/photos.js';
import { documentProperties } from '../../src/report/properties.js';
import { renderReport } from '../../src/report/report.js';
import { inputOf } from '../report/sample.js';

const photoCount = 40;
/** Photographs of each finding, in turn. */
const shares = [1, 2, 3, 5, 9, 0, 4];
/** Width of photograph N in pixels is this and N: a picture in the PDF tells by its width which it is. */
const baseWidth = 120;
const aspects = [4 / 3, 3 / 4, 4 / 3, 3 / 2, 1, 16 / 9, 9 / 16];

const numbers = Array.from({ length: photoCount }, (_, index) => index + 1);

function embedded(number: number): EmbeddedPhoto {
    const width = baseWidth + number;
    const height = Math.round(width / (aspects[number % aspects.length] ?? 1));
    const data = Buffer.alloc(width * height * 4, 40 + number * 5);
    // The page holds the size that a prepared photograph has; the picture itself may be coarser.
    return { dataUri: `data:image/jpeg;base64,${jpeg.encode({ data, width, height }, 60).data.toString('base64')}`, width: width * 8, height: height * 8, alt: '' };
}

const caption = (number: number) => `Subject ${number} ends${number % 6 === 0 ? ' after a long account of what lies about it: the frame, the stringer, the limber hole and the paint that has come away from all of them, with a scale beside it' : ''}`;
const photoLine = (number: number) => `    photo "p${number}.jpg" "${caption(number)}"${number % 5 === 2 ? ' { mark arrow "Crack": 20 %, 30 %, 45 %, 52 % }' : ''}`;

function findingTexts(): string[] {
    const texts: string[] = [];
    for (let at = 1; at <= photoCount;) {
        const id = texts.length + 1;
        const own = numbers.slice(at - 1, at - 1 + (shares[texts.length % shares.length] ?? 0));
        at += own.length;
        texts.push(`finding F${id} "Matter ${id} of the frames" {
    place: "frame ${id}"
    urgency: ${['before-launch', 'in-upkeep', 'next-haul-out'][id % 3] ?? ''}
    seen: "Opening ${id} begins. ${'The paint is lifted in scales and the laminate under it sounds dull over the breadth of a hand. '.repeat(1 + id % 4)}"
    because: "Water that enters here reaches the core."
    recommend: "Act ${id} begins: open the place, dry it and renew the part in kind."
${own.map(photoLine).join('\n')}
}`);
    }
    return texts;
}

const findings = findingTexts();
const analysis = analyseText(`survey "MP-1" pre-purchase { client: "A. Client" }
vessel "Gannet" { type: sailing-yacht }
${findings.join('\n')}
`);
const input = (paper: 'a4' | 'letter') => {
    const photos = new Map(numbers.map(number => [`p${number}.jpg`, embedded(number)]));
    return { ...inputOf(analysis, { photos, paper }), gaps: [], problems: [] };
};

let browser: string;
beforeAll(async () => { browser = await findChromium(); }, 300_000);

interface PrintedPage {
    /** Without blanks, as a PDF keeps no trace of where lines end. */
    readonly text: string;
    readonly pictures: readonly number[];
}

async function printed(paper: 'a4' | 'letter'): Promise<{ html: string; pages: PrintedPage[]; bookmarks: string[] }> {
    const html = renderReport(input(paper));
    const pdf = await printPdf(html, { browser, paper, properties: documentProperties(input(paper)) });
    const document = await getDocument({ data: new Uint8Array(pdf), useSystemFonts: false, verbosity: 0 }).promise;
    try {
        const pages: PrintedPage[] = [];
        for (let number = 1; number <= document.numPages; number++) {
            const page = await document.getPage(number);
            const { items } = await page.getTextContent();
            const { fnArray, argsArray } = await page.getOperatorList();
            const pictures = fnArray.flatMap((operator, index) => operator === OPS.paintImageXObject ? [Number((argsArray[index] as unknown[])[1]) - baseWidth] : []);
            pages.push({ text: items.map(item => 'str' in item ? item.str : '').join('').replace(/\s+/g, ''), pictures });
        }
        const bookmarks = (await document.getOutline()).flatMap(function all(entry): string[] {
            return [entry.title.replace(/\s+/g, ''), ...(entry.items as typeof entry[]).flatMap(all)];
        });
        return { html, pages, bookmarks };
    } finally {
        await document.destroy();
    }
}

const ascending = (some: readonly number[]) => some.toSorted((a, b) => a - b);
const numbersIn = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map(([, number]) => Number(number));

describe.each(['a4', 'letter'] as const)('forty photographs on %s', paper => {
    let made: Awaited<ReturnType<typeof printed>>;
    beforeAll(async () => { made = await printed(paper); }, 120_000);

    test('each picture stands on the page of its caption, once with its finding and once at the end', () => {
        const captioned = made.pages.map(({ text }) => ascending(numbersIn(text, /Subject(\d+)ends/g)));
        expect(made.pages.map(({ pictures }) => ascending(pictures))).toEqual(captioned);
        expect(ascending(captioned.flat())).toEqual(numbers.flatMap(number => [number, number]));
    });

    test('each finding’s head stands with its first words, and its act with when it is due', () => {
        expect(findings.length).toBeGreaterThan(10);
        for (const id of [...findings.keys()].map(index => index + 1)) {
            const page = made.pages.find(({ text }) => text.includes(`Opening${id}begins.`))?.text;
            // The number stands in the margin, and is painted after the title.
            expect(page, `F${id}`).toContain(`Matter${id}oftheframesF${id}`);
            const act = made.pages.find(({ text }) => text.includes('Whattodo') && text.includes(`Act${id}begins:`))?.text ?? '';
            expect(act.slice(act.indexOf(`Act${id}begins:`)), `F${id}`).toMatch(/^Act\d+begins:opentheplace,dryitandrenewthepartinkind\.Due/);
        }
    });

    test('every section has its bookmark, in order, and every act is said with its finding and in the list', () => {
        const sections = [...made.html.matchAll(/<h2[^>]*><span class="n">(\d+)<\/span> ([^<]*)<\/h2>/g)].map(([, number, title]) => `${number}${title}`.replaceAll('&#39;', '\'').replace(/\s+/g, ''));
        expect(sections.length).toBeGreaterThan(5);
        expect(made.bookmarks.filter(title => /^\d/.test(title))).toEqual(sections);
        const whole = made.pages.map(({ text }) => text).join('');
        expect(ascending(numbersIn(whole, /Act(\d+)begins:/g))).toEqual([...findings.keys()].flatMap(index => [index + 1, index + 1]));
    });

    test('the photographs at the end fill their pages', () => {
        const annex = made.pages.slice(made.pages.findLastIndex(({ text }) => /\d+Photographs/.test(text)));
        expect(annex.flatMap(({ pictures }) => pictures)).toHaveLength(photoCount);
        // Three rows of pairs a page; one fewer where the section begins, and where long captions take the room.
        for (const { pictures } of annex.slice(0, -1)) {
            expect(pictures.length).toBeGreaterThanOrEqual(4);
        }
        expect(annex.length).toBeLessThanOrEqual(Math.ceil(photoCount / 6) + 1);
    });
});
