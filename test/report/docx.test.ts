/** Word documents, unpacked and read as the parts and the XML that ECMA-376 (Office Open XML) says they are. */
import { strFromU8, unzipSync } from 'fflate';
import sax from 'sax';
import { beforeAll, describe, expect, test } from 'vitest';
import { rasterizer } from '../../src/host/rasterize.js';
import { docxOf, type DocxOptions } from '../../src/report/docx/document.js';
import { documentProperties } from '../../src/report/properties.js';
import { renderReport } from '../../src/report/report.js';
import { sampleInput, sampleText } from './sample.js';

const options: DocxOptions = { paper: 'a4', properties: documentProperties(sampleInput()), running: { left: 'Heron', right: 'Report AR-77', foot: 'Alder and Rowe' }, accent: '#0b4a63' };

interface Parts {
    readonly files: Readonly<Record<string, Uint8Array>>;
    /** Text of a part; every XML part was found well-formed. */
    readonly part: (name: string) => string;
}

async function made(page: string, changes: Partial<DocxOptions> = {}): Promise<Parts> {
    const files = unzipSync(await docxOf(page, { ...options, ...changes }));
    for (const [name, bytes] of Object.entries(files)) {
        if (/\.(xml|rels)$/.test(name)) {
            const parser = sax.parser(true);
            parser.onerror = error => { throw new Error(`${name}: ${error.message}`); };
            parser.write(strFromU8(bytes)).close();
        }
    }
    return { files, part: name => strFromU8(files[name] ?? new Uint8Array()) };
}

const final = (text = sampleText) => {
    const input = sampleInput({}, text);
    return renderReport({ ...input, gaps: [], problems: input.problems.filter(p => p.answeredBy !== undefined) });
};
/** Texts of the paragraphs of a style. */
const ofStyle = (document: string, style: string) => [...document.matchAll(/<w:p>(?:(?!<\/w:p>).)*?<w:pStyle w:val="([^"]*)"\/>(?:(?!<\/w:p>).)*<\/w:p>/gs)].filter(([, name]) => name === style).map(([p]) => textOf(p));
const textOf = (xml: string) => [...xml.matchAll(/<w:t(?: [^>]*)?>([^<]*)<\/w:t>/g)].map(([, text = '']) => text).join('').replaceAll('&apos;', '\'').replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');

describe('the report of the sample survey', () => {
    const page = final();
    let parts: Parts;
    let document: string;
    beforeAll(async () => {
        const rasterize = await rasterizer();
        parts = await made(page, rasterize ? { rasterize } : {});
        document = parts.part('word/document.xml');
    }, 60_000);

    test('has Word’s own headings for sections and findings', () => {
        const titles = [...page.matchAll(/<h2[^>]*><span class="n">(\d+)<\/span> ([^<]*)<\/h2>/g)].map(([, number, title]) => `${number} ${title}`);
        expect(titles.length).toBeGreaterThan(8);
        expect(ofStyle(document, 'Heading1')).toEqual(titles);
        expect(ofStyle(document, 'Heading3')).toEqual(expect.arrayContaining(['F1 Sink hose larger than its tail', 'F2 Fenders chafe']));
        expect(ofStyle(document, 'Title')).toEqual(['Heron']);
    });

    test('has a field of contents, and every link leads to a bookmark', () => {
        expect(document).toMatch(/<w:instrText[^>]*>TOC [^<]*\\h[^<]*<\/w:instrText>/);
        const bookmarks = new Set([...document.matchAll(/<w:bookmarkStart [^>]*w:name="([^"]*)"/g)].map(([, name]) => name));
        const links = [...document.matchAll(/<w:hyperlink [^>]*w:anchor="([^"]*)"/g)].map(([, name]) => name);
        expect(links.length).toBeGreaterThan(20);
        expect(links.filter(name => !bookmarks.has(name))).toEqual([]);
        // ECMA-376 part 1, 17.13.6.2 with Word's own bound of 40 signs.
        expect([...bookmarks].filter(name => !/^[A-Za-z_]\w{0,39}$/.test(name ?? ''))).toEqual([]);
    });

    test('every table of the page is one with a head that repeats and a numbered caption', () => {
        const tables = [...page.matchAll(/<thead>/g)].length;
        expect(tables).toBeGreaterThan(3);
        expect([...document.matchAll(/<w:tblHeader\/>/g)].length).toBeGreaterThanOrEqual(tables);
        const captions = ofStyle(document, 'Caption').filter(text => text.startsWith('Table '));
        expect(captions.length).toBe([...page.matchAll(/<caption>/g)].length);
        expect([...document.matchAll(/<w:instrText[^>]*>\s*SEQ Table\s*<\/w:instrText>/g)].length).toBe(captions.length);
    });

    test('a photograph used again is embedded once; each has its alternative text', () => {
        const media = Object.keys(parts.files).filter(name => name.startsWith('word/media/'));
        expect(media.filter(name => name.endsWith('.jpg')).length).toBe(1); // The sample's photographs are all the same dot.
        const described = [...document.matchAll(/<wp:docPr [^>]*descr="([^"]*)"/g)].map(([, text]) => text);
        expect(described).toEqual(expect.arrayContaining(['Hose at the seacock', 'The tail']));
        expect(described.every(text => text !== '')).toBe(true);
    });

    test('says the page’s words in the page’s order', () => {
        const text = textOf(document).replace(/\s+/g, '');
        let at = -1;
        for (const words of ['1 Summary', 'Through-hulls and sea valves', 'Sink hose larger than its tail', 'Hang them otherwise.', 'Opinion of value']) {
            const next = text.indexOf(words.replace(/\s+/g, ''), at + 1);
            expect(next, words).toBeGreaterThan(at);
            at = next;
        }
    });

    test('heads, feet, size and properties', () => {
        expect(textOf(parts.part('word/header1.xml'))).toContain('Heron');
        expect(parts.part('word/footer1.xml')).toMatch(/<w:instrText[^>]*>\s*PAGE\s*<[\s\S]*<w:instrText[^>]*>\s*NUMPAGES\s*</);
        expect(parts.part('docProps/core.xml')).toContain('<dc:subject>Pre-purchase survey of Heron, report AR-77</dc:subject>');
        expect(parts.part('word/styles.xml')).toContain('<w:lang w:val="en-US"/>');
        // A4 in twentieths of a point: 210 mm and 297 mm at 1,440 to the inch.
        expect(document).toMatch(/<w:pgSz [^>]*w:h="16838"/);
        expect(document).toMatch(/<w:pgSz [^>]*w:w="11906"/);
        expect(JSON.stringify(Object.keys(parts.files))).not.toMatch(/vba|embeddings|attachedTemplate/i);
        expect(Object.entries(parts.files).filter(([name, bytes]) => name.endsWith('.rels') && strFromU8(bytes).includes('TargetMode="External"'))).toEqual([]);
    });
});

test('Letter has its size, 8.5 by 11 in', async () => {
    expect((await made('<!DOCTYPE html><body><p>x', { paper: 'letter' })).part('word/document.xml')).toMatch(/<w:pgSz (?=[^>]*w:w="12240")(?=[^>]*w:h="15840")/);
});

test('a draft says so in the head of every page and over it; a final one nowhere', async () => {
    const draft = await made(renderReport(sampleInput({}, sampleText.replace('answers:   hose-and-spigot-differ', ''))));
    for (const name of ['word/header1.xml', 'word/header2.xml']) {
        expect(textOf(draft.part(name))).toContain('DRAFT, not issued');
        expect(draft.part(name)).toMatch(/<v:textpath [^>]*string="DRAFT"/);
    }
    const issued = await made(final());
    expect(issued.part('word/header1.xml') + issued.part('word/header2.xml')).not.toContain('DRAFT');
}, 60_000);

test('drawings without a way to make pictures of them are told in words', async () => {
    const text = textOf((await made(final())).part('word/document.xml'));
    expect(text).toMatch(/\[Drawing not shown: .*Sink drain/);
});

test('text that looks like markup, or that XML forbids, comes out as text or not at all', async () => {
    const hostile = '</w:t><w:x> & \\"]]> \u0000\u0001\ufffe\ud800 &#x0; é 漢 <script>alert(1)</script>';
    const { part } = await made(final(sampleText.replace('Fenders chafe', () => hostile)));
    const text = textOf(part('word/document.xml'));
    expect(text).toContain('</w:t><w:x> & "]]>');
    expect(text).toContain('<script>alert(1)</script>');
    expect(text).not.toMatch(/[\u0000-\u0008\ufffe\ud800]/);
}, 60_000);

test('marks are drawn into their photograph, and said where they cannot be', async () => {
    const dot = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
    const page = `<!DOCTYPE html><body><figure><span class="marked"><img src="data:image/png;base64,${dot}" width="40" height="30" alt="Hose"><svg class="photo-marks" viewBox="0 0 40 30" role="img" aria-labelledby="t"><title id="t">Arrow: cut end</title><path d="M0 0h9"/></svg></span><figcaption>Photo 1</figcaption></figure>`;
    const drawn: string[] = [];
    const { part, files } = await made(page, { rasterize: async svg => { drawn.push(svg); return new Uint8Array([0xff, 0xd8, 0xff]); } });
    expect(drawn).toHaveLength(1);
    expect(drawn[0]).toMatch(/<image href="data:image\/png;base64,[^"]*" width="40" height="30"\/><svg x="0" y="0"[^>]*>.*<path d="M0 0h9">/);
    expect(Object.keys(files).filter(name => name.endsWith('.jpg'))).toHaveLength(1);
    expect(part('word/document.xml')).toContain('descr="Hose. Arrow: cut end"');
});
