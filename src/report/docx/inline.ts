/** Runs of text of the page as runs of a Word document. */
import { Bookmark, InternalHyperlink, TextRun, type IRunOptions, type ParagraphChild } from 'docx';
import { attribute, descendants, elementsOf, hasClass, isElement, isTextNode, textOf, type Element, type Node } from './tree.js';
import type { Room, Pictures } from './pictures.js';
import { altOf, isDrawing, isMarks } from './pictures.js';
import { quiet, rust, sans } from './styles.js';

type Looks = Pick<IRunOptions, 'bold' | 'italics' | 'color' | 'font' | 'size' | 'superScript' | 'subScript' | 'style'>;

/** Names of bookmarks for the places that something links to. Word allows letters, digits and underscores, and 40 of them. */
export class Anchors {
    readonly #names = new Map<string, string>();

    constructor(body: Element) {
        for (const element of descendants(body)) {
            const target = targetOf(element);
            if (target !== undefined && !this.#names.has(target)) {
                this.#names.set(target, `g${this.#names.size + 1}_${target.replace(/[^A-Za-z0-9_]/g, '_').slice(0, 30)}`);
            }
        }
    }

    nameOf(id: string | undefined): string | undefined {
        return id === undefined ? undefined : this.#names.get(id);
    }
}

function targetOf(element: Element): string | undefined {
    const href = element.tagName === 'a' ? attribute(element, 'href') : undefined;
    return href?.startsWith('#') && href.length > 1 ? href.slice(1) : undefined;
}

/** Elements that end a line of text and stand for themselves. */
const blockTags: ReadonlySet<string> = new Set([
    'address', 'article', 'aside', 'blockquote', 'details', 'div', 'dl', 'figure', 'footer', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'header', 'hr', 'main', 'nav', 'ol', 'p', 'section', 'table', 'ul',
]);

export const isBlock = (node: Node): node is Element => isElement(node) && blockTags.has(node.tagName);

/** Whether there are blocks within, at any depth. */
export const holdsBlocks = (element: Element): boolean => elementsOf(element).some(child => isBlock(child) || holdsBlocks(child));

export interface InlineTools {
    readonly anchors: Anchors;
    readonly pictures: Pictures;
    readonly room: Room;
}

/** Runs of nodes that hold no blocks. Blanks are drawn together as a browser does it. */
export function runsOf(nodes: readonly Node[], tools: InlineTools, looks: Looks = {}): ParagraphChild[] {
    const line = new Line();
    for (const node of nodes) {
        addNode(node, line, tools, looks);
    }
    return line.done();
}

/** Runs written so far; a blank waits until something follows it. */
class Line {
    readonly #stack: ParagraphChild[][] = [[]];
    #isBlank = true;
    #blankLooks: Looks | undefined;

    text(text: string, looks: Looks): void {
        const words = text.replace(/[^\S\u00a0\u202f\u2009]+/g, ' ');
        const start = words.startsWith(' ') ? 1 : 0;
        const body = words.slice(start).replace(/ $/, '');
        if (start === 1 && !this.#isBlank) {
            this.#blankLooks ??= looks;
        }
        if (body === '') {
            return;
        }
        this.#flush();
        this.#push(new TextRun({ text: body, ...looks }));
        this.#isBlank = false;
        if (words.length > start + body.length) {
            this.#blankLooks = looks;
        }
    }

    /** Something that is no text. */
    other(child: ParagraphChild): void {
        this.#flush();
        this.#push(child);
        this.#isBlank = false;
    }

    lineBreak(): void {
        this.#blankLooks = undefined;
        this.#push(new TextRun({ break: 1 }));
        this.#isBlank = true;
    }

    /** What is added within goes into one child, such as a link. */
    within(add: () => void, wrap: (children: ParagraphChild[]) => ParagraphChild): void {
        this.#flush();
        this.#stack.push([]);
        add();
        const children = this.#stack.pop() ?? [];
        if (children.length > 0) {
            this.#push(wrap(children));
        }
    }

    done(): ParagraphChild[] {
        return this.#stack[0] ?? [];
    }

    #flush(): void {
        if (this.#blankLooks) {
            this.#push(new TextRun({ text: ' ', ...this.#blankLooks }));
            this.#blankLooks = undefined;
            this.#isBlank = true;
        }
    }

    #push(child: ParagraphChild): void {
        this.#stack.at(-1)?.push(child);
    }
}

function addNode(node: Node, line: Line, tools: InlineTools, looks: Looks): void {
    if (isTextNode(node)) {
        line.text(textOf(node), looks);
        return;
    }
    if (!isElement(node) || isHidden(node)) {
        return;
    }
    if (node.tagName === 'br') {
        line.lineBreak();
        return;
    }
    if (isMarks(node)) {
        return; // Drawn into the photograph, and among its words.
    }
    if (node.tagName === 'img' || isDrawing(node)) {
        const picture = tools.pictures.run(node, tools.room);
        if (picture) {
            line.other(picture);
        } else if (altOf(node) !== '') {
            line.text(`[${node.tagName === 'img' ? 'Picture' : 'Drawing'} not shown: ${altOf(node)}]`, { ...looks, color: quiet });
        }
        return;
    }
    if (node.tagName === 'svg') {
        return; // An ornament; the words beside it say the same.
    }
    const own = { ...looks, ...looksOf(node) };
    const add = () => {
        for (const child of node.childNodes) {
            addNode(child, line, tools, own);
        }
        if (isSpaced(node)) {
            line.text(' ', own);
        }
    };
    const link = tools.anchors.nameOf(targetOf(node));
    const id = attribute(node, 'id');
    const mark = tools.anchors.nameOf(id);
    if (link !== undefined) {
        line.within(add, children => new InternalHyperlink({ anchor: link, children }));
    } else if (mark !== undefined) {
        line.within(add, children => new Bookmark({ id: mark, children }) as unknown as ParagraphChild); // The library's type of a child leaves out this one that it takes.
    } else {
        add();
    }
}

/** What a page hides from print, or fills in by itself. */
const isHidden = (element: Element): boolean => ['style', 'script', 'title', 'desc'].includes(element.tagName) || hasClass(element, 'skip') || hasClass(element, 'page') || attribute(element, 'hidden') !== undefined;

/** Pieces that the page sets apart by room, where there is no blank in the text. */
const isSpaced = (element: Element): boolean => hasClass(element, 'n') || hasClass(element, 'number') || hasClass(element, 'part-id');

function looksOf(element: Element): Looks {
    const looks: { -readonly [K in keyof Looks]: Looks[K] } = {};
    switch (element.tagName) {
        case 'strong': case 'b':
            looks.bold = true;
            break;
        case 'em': case 'i': case 'cite':
            looks.italics = true;
            break;
        case 'sup':
            looks.superScript = true;
            break;
        case 'sub':
            looks.subScript = true;
            break;
        case 'small':
            looks.size = 18;
            break;
        case 'a':
            looks.style = 'Hyperlink';
    }
    if (hasClass(element, 'muted') || hasClass(element, 'other')) {
        looks.color = quiet;
    }
    if (hasClass(element, 'absent')) {
        looks.color = rust;
    }
    if (hasClass(element, 'part-id')) {
        looks.bold = true;
        looks.font = sans;
    }
    return looks;
}
