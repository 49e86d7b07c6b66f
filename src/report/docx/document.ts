/**
 * A paper as a Word document, made from its own page: real headings, tables whose heads repeat, captions that Word numbers, links within, the
 * photographs embedded. It says what the page says, in the order of the page; nothing is drawn from the record a second time.
 */
import { Document, Footer, Header, Packer, PageNumber, Paragraph, TableOfContents, TabStopType, TextRun, type ISectionOptions } from 'docx';
import { estimatePageNumbers } from 'docx/layout';
import { TextWatermark } from 'docx/watermarks';
import type { Paper } from '../context.js';
import type { DocumentProperties } from '../properties.js';
import { BlockWriter } from './blocks.js';
import { Anchors } from './inline.js';
import { Pictures, type Rasterize } from './pictures.js';
import { margins, numbering, quiet, rust, sans, sheetOf, stylesOf, type Sheet } from './styles.js';
import { find, hasClass, pageOf } from './tree.js';

export interface DocxOptions {
    readonly paper: Paper;
    readonly properties: DocumentProperties;
    /** What the head and the foot of every page say. */
    readonly running: { readonly left: string; readonly right: string; readonly foot: string };
    /** Color of titles, as `#rrggbb`. */
    readonly accent: string;
    /** Draws the drawings for programs that show no SVG; without it they are left out, and said in words. */
    readonly rasterize?: Rasterize;
    readonly signal?: AbortSignal;
}

/** The bytes of a .docx file. @throws DOMException "AbortError" where the signal says stop. */
export async function docxOf(page: string, { paper, properties, running, accent, rasterize, signal }: DocxOptions): Promise<Uint8Array> {
    const { body, title, lang } = pageOf(page);
    const language = lang === 'en' ? 'en-US' : lang;
    const isDraft = hasClass(body, 'draft');
    const hasCover = find(body, element => hasClass(element, 'cover')) !== undefined;
    const sheet = sheetOf(paper);
    const writer = new BlockWriter({
        anchors: new Anchors(body), pictures: await Pictures.of(body, rasterize, signal), sheet,
        contents: () => new TableOfContents('Contents', { hyperlink: true, headingStyleRange: '1-1' }),
    });
    const children = writer.blocks(body, { width: sheet.textWidth });
    signal?.throwIfAborted();
    const section: ISectionOptions = {
        properties: { titlePage: hasCover, page: { size: { width: sheet.width, height: sheet.height }, margin: margins } },
        headers: { default: head(sheet, running, isDraft), first: head(sheet, undefined, isDraft) },
        footers: { default: foot(sheet, running.foot), first: foot(sheet, running.foot) },
        children,
    };
    const document = new Document({
        title, subject: properties.subject, creator: properties.author, lastModifiedBy: properties.author, keywords: properties.keywords.join(', '), description: `Made by Garboard.${isDraft ? ' DRAFT, not issued.' : ''}`,
        styles: stylesOf(accent.replace('#', '').toUpperCase(), language), numbering, sections: [section], pageNumbers: estimatePageNumbers,
    });
    return new Uint8Array(await Packer.toArrayBuffer(document));
}

function head(sheet: Sheet, running: DocxOptions['running'] | undefined, isDraft: boolean): Header {
    const looks = { font: sans, size: 16, color: quiet };
    return new Header({
        children: [new Paragraph({
            tabStops: [{ type: TabStopType.CENTER, position: Math.round(sheet.textWidth / 2) }, { type: TabStopType.RIGHT, position: sheet.textWidth }],
            children: [
                ...isDraft ? [new TextWatermark({ text: 'DRAFT', font: sans, color: '#D9B5AA', bold: true })] : [],
                new TextRun({ text: running?.left ?? '', ...looks }),
                new TextRun({ text: isDraft ? '\tDRAFT, not issued\t' : '\t\t', ...looks, color: rust, bold: true }),
                new TextRun({ text: running?.right ?? '', ...looks }),
            ],
        })],
    });
}

function foot(sheet: Sheet, text: string): Footer {
    const looks = { font: sans, size: 16, color: quiet };
    return new Footer({
        children: [new Paragraph({
            tabStops: [{ type: TabStopType.RIGHT, position: sheet.textWidth }],
            children: [new TextRun({ text: `${text}\t`, ...looks }), new TextRun({ children: ['page ', PageNumber.CURRENT, ' of ', PageNumber.TOTAL_PAGES], ...looks })],
        })],
    });
}
