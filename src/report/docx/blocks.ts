/** Blocks of the page as paragraphs and tables of a Word document. */
import { Bookmark, BorderStyle, HeadingLevel, LineRuleType, Paragraph, SequentialIdentifier, type Table, TableOfContents, TextRun, type IParagraphOptions, type ParagraphChild } from 'docx';
import { holdsBlocks, isBlock, runsOf, type Anchors } from './inline.js';
import { isDrawing, isMarks, type Pictures } from './pictures.js';
import { bullets, ink, numbers, own, twipsOfPixel, type Sheet } from './styles.js';
import { pairsTable, photoGrid, spacer, tableOf } from './tables.js';
import { attribute, descendants, elementsOf, hasClass, isElement, plainText, type Element, type Node } from './tree.js';

export type Block = Paragraph | Table | TableOfContents;
export type CellBlock = Paragraph | Table;

/** Where a block stands. */
export interface Place {
    /** Width there is, in twips. */
    readonly width: number;
    readonly style?: string;
    /** Lists stand without bullets, as answers to a term do. */
    readonly isInDefinition?: boolean;
    readonly isInCell?: boolean;
    /** Photographs stand at full size. */
    readonly isInAnnex?: boolean;
    readonly indent?: number;
}

const headings = { h2: HeadingLevel.HEADING_1, h3: HeadingLevel.HEADING_2, h4: HeadingLevel.HEADING_3, h5: HeadingLevel.HEADING_4, h6: HeadingLevel.HEADING_4 } as const;

/** Sections that begin a page, as they do where the page is printed. */
const newPages: ReadonlySet<string> = new Set(['summary', 'findings', 'statement', 'photographs', 'open']);
/** A full-size photograph leaves room for another on its page, or for its caption and a heading. */
const annexShare = 0.42;
const drawingShare = 0.8;
/** A photograph that stands beside its finding on the page. */
const besideShare = 0.55;
/** A narrower place shows a term above its answer. */
const narrow = 5200;

const sequences = { table: 'Table', figure: 'Figure' } as const;

export class BlockWriter {
    readonly anchors: Anchors;
    readonly pictures: Pictures;
    readonly sheet: Sheet;
    /** Contents of the report, where the page has a list of them. */
    readonly #contents: () => TableOfContents;
    #marks: string[] = [];
    #isPageDue = false;
    #lists = 0;

    constructor({ anchors, pictures, sheet, contents }: { readonly anchors: Anchors; readonly pictures: Pictures; readonly sheet: Sheet; readonly contents: () => TableOfContents }) {
        this.anchors = anchors;
        this.pictures = pictures;
        this.sheet = sheet;
        this.#contents = contents;
    }

    /** All blocks below an element. */
    blocks(element: Element, place: Place): Block[] {
        return this.#children(element.childNodes, place);
    }

    /** What stands in a cell: it ends in a paragraph, as Word demands. */
    cell(nodes: readonly Node[], place: Place): CellBlock[] {
        const blocks = this.#children(nodes, { ...place, isInCell: true }).filter((block): block is CellBlock => !(block instanceof TableOfContents));
        return blocks.at(-1) instanceof Paragraph ? blocks : [...blocks, spacer()];
    }

    /** A paragraph of runs; the places that links lead to begin in it. */
    paragraph(children: readonly ParagraphChild[], options: IParagraphOptions): Paragraph {
        const marked = this.#marks.reduce<ParagraphChild[]>((inner, id) => [new Bookmark({ id, children: inner }) as unknown as ParagraphChild], [...children]); // As in inline.ts: the type leaves it out.
        this.#marks = [];
        const pageBreakBefore = this.#isPageDue || options.pageBreakBefore === true;
        this.#isPageDue = false;
        return new Paragraph({ ...options, ...(pageBreakBefore ? { pageBreakBefore } : {}), children: marked });
    }

    runs(nodes: readonly Node[], width: number, height = this.sheet.textHeight * drawingShare): ParagraphChild[] {
        return runsOf(nodes, { anchors: this.anchors, pictures: this.pictures, room: { width: width / twipsOfPixel, height: height / twipsOfPixel } });
    }

    /** Notes that what comes next is what this element's id stands for. */
    mark(element: Element): void {
        const name = this.anchors.nameOf(attribute(element, 'id'));
        if (name !== undefined) {
            this.#marks.push(name);
        }
    }

    #children(nodes: readonly Node[], place: Place): Block[] {
        const blocks: Block[] = [];
        let line: Node[] = [];
        const endLine = () => {
            const children = this.runs(line, place.width);
            if (children.length > 0) {
                blocks.push(this.paragraph(children, paragraphOptions(place)));
            }
            line = [];
        };
        for (const node of nodes) {
            if (isBlock(node) || isElement(node) && holdsBlocks(node)) {
                endLine();
                blocks.push(...this.#block(node, place));
            } else if (!isElement(node) || !hasClass(node, 'skip')) {
                line.push(node);
            }
        }
        endLine();
        return blocks;
    }

    #block(element: Element, place: Place): Block[] {
        if (hasClass(element, 'draft-band')) {
            return []; // The header and the watermark say so on every page.
        }
        if (element.tagName === 'nav') {
            return hasClass(element, 'contents') ? this.#contentsList(element) : [];
        }
        this.mark(element);
        if (hasClass(element, 'cover')) {
            const blocks = this.blocks(element, place);
            this.#isPageDue = true;
            return blocks;
        }
        switch (element.tagName) {
            case 'h1':
                return [this.paragraph(this.runs(element.childNodes, place.width), { heading: HeadingLevel.TITLE })];
            case 'h2': case 'h3': case 'h4': case 'h5': case 'h6':
                return this.#heading(element, element.tagName, place);
            case 'p':
                return this.#inParagraph(element, place);
            case 'ul': case 'ol':
                return this.#list(element, place, 0);
            case 'dl':
                return this.#definitions(element, place);
            case 'table':
                return this.#table(element, place);
            case 'figure':
                return this.#figure(element, place);
            case 'hr':
                return [this.paragraph([], { border: { bottom: { style: BorderStyle.SINGLE, size: 4, color: ink } } })];
        }
        const isInAnnex = place.isInAnnex === true || hasClass(element, 'annex');
        const photos = elementsOf(element).filter(isPhotoFigure);
        if (photos.length > 1 && photos.length === elementsOf(element).length && !isInAnnex) {
            return photoGrid(this, photos, place);
        }
        return this.#children(element.childNodes, isInAnnex ? { ...place, isInAnnex } : place);
    }

    #heading(element: Element, tag: keyof typeof headings, place: Place): Block[] {
        const section = element.parentNode && 'tagName' in element.parentNode ? attribute(element.parentNode, 'id') : undefined;
        const children = this.runs(element.childNodes, place.width);
        if (children.length === 0) {
            return [];
        }
        return [this.paragraph(children, place.isInCell
            ? { style: own.cellHead, keepNext: true }
            : { heading: headings[tag], ...(tag === 'h2' && section !== undefined && newPages.has(section) ? { pageBreakBefore: true } : {}) })];
    }

    #inParagraph(element: Element, place: Place): Block[] {
        const children = this.runs(element.childNodes, place.width);
        if (hasClass(element, 'line-for')) {
            return [this.paragraph(children, { style: own.small, spacing: { before: 700, after: 160 }, border: { bottom: { style: BorderStyle.SINGLE, size: 6, color: ink, space: 1 } }, indent: { right: Math.round(place.width / 2) }, keepNext: true })];
        }
        const style = hasClass(element, 'draft-note') || hasClass(element, 'notice') ? own.notice : hasClass(element, 'lead') ? own.lead : hasClass(element, 'small') && !place.isInCell ? own.small : place.style;
        return children.length === 0 ? [] : [this.paragraph(children, { ...paragraphOptions(place), ...(style === undefined ? {} : { style }), ...(hasClass(element, 'on') || hasClass(element, 'meaning') ? { keepNext: true } : {}) })];
    }

    #list(element: Element, place: Place, level: number): Block[] {
        const isPlain = place.isInDefinition === true || hasClass(element, 'first');
        const reference = element.tagName === 'ol' ? numbers : bullets;
        const instance = ++this.#lists;
        return elementsOf(element).flatMap(item => {
            this.mark(item);
            const blocks: Block[] = [];
            let line: Node[] = [];
            let isFirst = true;
            const end = () => {
                const children = this.runs(line, place.width);
                line = [];
                if (children.length > 0) {
                    blocks.push(this.paragraph(children, {
                        ...paragraphOptions(place), spacing: { after: 50 },
                        ...isPlain ? {} : isFirst ? { numbering: { reference, level: Math.min(level, 2), instance } } : { indent: { left: 320 * (level + 1) } },
                    }));
                    isFirst = false;
                }
            };
            for (const node of item.childNodes) {
                if (isElement(node) && node.tagName === 'p') {
                    end();
                    line = [...node.childNodes];
                    end();
                } else if (isElement(node) && (node.tagName === 'ul' || node.tagName === 'ol')) {
                    end();
                    blocks.push(...this.#list(node, place, level + 1));
                } else if (isBlock(node)) {
                    end();
                    blocks.push(...this.#block(node, place));
                } else {
                    line.push(node);
                }
            }
            end();
            return blocks;
        });
    }

    #definitions(element: Element, place: Place): Block[] {
        const pairs: { terms: Element[]; answers: Element[] }[] = [];
        for (const part of elementsOf(element).flatMap(child => child.tagName === 'div' ? elementsOf(child) : [child])) {
            const last = pairs.at(-1);
            if (part.tagName === 'dt') {
                if (last && last.answers.length === 0) {
                    last.terms.push(part);
                } else {
                    pairs.push({ terms: [part], answers: [] });
                }
            } else if (part.tagName === 'dd' && last) {
                last.answers.push(part);
            }
        }
        if (hasClass(element, 'run-in')) {
            const runs = pairs.flatMap(({ terms, answers }, index) => [
                ...terms.flatMap(term => [new TextRun({ text: `${index === 0 ? '' : '; '}${plainText(term)} `, color: '45525C' })]), ...answers.flatMap(answer => this.runs(answer.childNodes, place.width)),
            ]);
            return runs.length === 0 ? [] : [this.paragraph(runs, paragraphOptions(place))];
        }
        if (place.width < narrow) {
            return pairs.flatMap(({ terms, answers }) => [
                ...terms.map(term => this.paragraph(this.runs(term.childNodes, place.width), { style: own.term, keepNext: true })),
                ...answers.flatMap(answer => this.#children(answer.childNodes, { ...place, isInDefinition: true })),
            ]);
        }
        return pairs.length === 0 ? [] : [pairsTable(this, pairs, place), spacer()];
    }

    #table(element: Element, place: Place): Block[] {
        const caption = elementsOf(element).find(child => child.tagName === 'caption');
        const head = caption ? this.runs(caption.childNodes, place.width) : [];
        const table = tableOf(this, element, place);
        return [
            ...head.length === 0 ? [] : [this.paragraph([...numbered('table'), ...head], { style: 'Caption', keepNext: true })],
            ...table ? [table, spacer()] : [],
        ];
    }

    #figure(element: Element, place: Place): Block[] {
        const isPhoto = isPhotoFigure(element);
        const share = !isPhoto || place.isInCell || place.isInAnnex ? 1 : hasClass(element, 'cover-photo') ? 0.8 : besideShare;
        const children = elementsOf(element);
        return children.flatMap((child, index) => {
            const isLast = index === children.length - 1;
            if (child.tagName === 'figcaption') {
                this.mark(child);
                const runs = this.runs(child.childNodes, place.width);
                return runs.length === 0 ? [] : [this.paragraph(isPhoto ? runs : [...numbered('figure'), ...runs], { style: 'Caption', ...(isLast ? {} : { keepNext: true }) })];
            }
            if (isBlock(child) || holdsBlocks(child)) {
                return this.#block(child, place);
            }
            const runs = this.runs([child], place.width * share, this.sheet.textHeight * (isPhoto && !place.isInCell ? annexShare : drawingShare));
            return runs.length === 0 ? [] : [this.paragraph(runs, { spacing: { before: 60, after: 40, line: 240, lineRule: LineRuleType.AUTO }, ...(isLast ? {} : { keepNext: true }) })];
        });
    }

    #contentsList(element: Element): Block[] {
        const title = elementsOf(element).find(child => child.tagName === 'h2');
        this.#isPageDue = true;
        return [
            ...title ? [this.paragraph([new TextRun({ text: plainText(title), bold: true, size: 34, font: 'Calibri' })], { spacing: { after: 200 }, keepNext: true })] : [],
            this.#contents(),
        ];
    }
}

const isPhotoFigure = (element: Element): boolean => element.tagName === 'figure' && [...descendants(element)].some(({ tagName }) => tagName === 'img') && ![...descendants(element)].some(found => isDrawing(found) && !isMarks(found));

function paragraphOptions({ style, indent }: Place): IParagraphOptions {
    return { ...(style === undefined ? {} : { style }), ...(indent === undefined ? {} : { indent: { left: indent } }) };
}

/** "Table 3. ", with a number that Word counts itself. */
const numbered = (kind: keyof typeof sequences): ParagraphChild[] => [
    new TextRun({ text: `${sequences[kind]} `, bold: true }), new SequentialIdentifier(sequences[kind]), new TextRun({ text: '. ' }),
];
