/**
 * Lays a file out. Only the blanks between tokens change, never a token, a comment or the author's line breaks, so
 * half-typed text can be formatted too: what the lexer does not know is left as it stands.
 */
import { EmptyFileSystem, type LangiumDocument, type Lexer } from 'langium';
import type { Formatter } from 'langium/lsp';
import type { Range, TextEdit } from 'vscode-languageserver-types';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { IToken } from 'chevrotain';
import { createGarboardServices } from '../language/services.js';
import { endOf, Reader, startOf, type Role } from './roles.js';

const indentUnit = '    ';
/** What may be changed between tokens. Stray signs that show as nothing stay, for figures end at them. */
const blank = /[ \t\r\n\u00a0]/;

interface Item {
    readonly start: number;
    readonly end: number;
    readonly kind: 'token' | 'line-comment' | 'block-comment' | 'raw';
    /** The token's type, or its own text where the lexer knows none. */
    readonly type: string;
    readonly role?: Role;
    /** Open blocks before it; a closing brace counts as outside the block it closes. */
    readonly depth: number;
    /** The block it stands in, to tell groups of facts apart. */
    readonly block: number;
}

/** A change of the blanks between two tokens. */
export interface Respacing {
    readonly start: number;
    readonly end: number;
    readonly text: string;
}

let ownLexer: Lexer | undefined;

/** The text in the layout Garboard keeps. */
export function formatText(text: string, lexer: Lexer = ownLexer ??= createGarboardServices(EmptyFileSystem).language.parser.Lexer): string {
    let result = '';
    let at = 0;
    for (const { start, end, text: blanks } of respace(text, lexer)) {
        result += text.slice(at, start) + blanks;
        at = end;
    }
    return result + text.slice(at);
}

/** The changes that lay a text out, in order. */
export function respace(text: string, lexer: Lexer): Respacing[] {
    const items = itemsOf(text, lexer);
    const breaks = breaksOf(items, text);
    const newline = newlineOf(items, breaks, text);
    const values = alignments(items, breaks);
    const changes: Respacing[] = [];
    const change = (start: number, end: number, blanks: string) => {
        if (text.slice(start, end) !== blanks) {
            changes.push({ start, end, text: blanks });
        }
    };
    const first = items[0];
    const last = items.at(-1);
    const begin = text.charCodeAt(0) === 0xfeff ? 1 : 0;
    if (!first || !last) {
        change(begin, text.length, '');
        return changes;
    }
    change(begin, first.start, '');
    for (let i = 1; i < items.length; i++) {
        const previous = items[i - 1];
        const item = items[i];
        if (!previous || !item) {
            continue;
        }
        const lines = breaks[i] ?? 0;
        const blanks = lines > 0 ? newline.repeat(lines) + indentUnit.repeat(item.depth + (continues(items, i) ? 1 : 0))
            : values.get(i) ?? (isGlued(items, breaks, i) ? '' : between(previous, item, (breaks[i + 1] ?? 1) > 0));
        change(previous.end, item.start, blanks);
    }
    change(last.end, text.length, newline);
    return changes;
}

/** Tokens, comments and what the lexer passed over, in order of the text. */
function itemsOf(text: string, lexer: Lexer): Item[] {
    const { tokens, hidden, errors } = lexer.tokenize(text);
    const notClosed = new Set(errors.map(error => error.offset));
    const items: Item[] = [];
    const reader = new Reader();
    const blocks = [0];
    let opened = 0;
    let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
    let comment = 0;
    const here = () => ({ depth: blocks.length - 1, block: blocks.at(-1) ?? 0 });
    const rawUntil = (end: number) => {
        while (at < end) {
            while (at < end && blank.test(text.charAt(at))) {
                at++;
            }
            const start = at;
            while (at < end && !blank.test(text.charAt(at))) {
                at++;
            }
            if (at > start) {
                items.push({ start, end: at, kind: 'raw', type: 'raw', ...here() });
            }
        }
    };
    const commentsUntil = (end: number) => {
        for (let token = hidden[comment]; token && startOf(token) < end; token = hidden[++comment]) {
            rawUntil(startOf(token));
            const isLine = token.tokenType.name === 'LINE_COMMENT';
            const written = isLine ? token.image.replace(/[ \t\r\u00a0\ufeff]+$/, '') : token.image;
            items.push({ start: startOf(token), end: startOf(token) + written.length, kind: isLine ? 'line-comment' : 'block-comment', type: 'comment', ...here() });
            at = endOf(token);
        }
    };
    for (let i = 0; i < tokens.length; i++) {
        const token: IToken | undefined = tokens[i];
        if (!token) {
            continue;
        }
        const role = reader.read(token, tokens[i + 1]);
        const type = token.tokenType.name;
        if (type === '}' && blocks.length > 1) {
            if (!token.isInsertedInRecovery) {
                commentsUntil(startOf(token));
                rawUntil(startOf(token));
            }
            blocks.pop();
        }
        if (token.isInsertedInRecovery) {
            continue;
        }
        commentsUntil(startOf(token));
        rawUntil(startOf(token));
        items.push({ start: startOf(token), end: endOf(token), kind: 'token', type: type === 'TEXT' && notClosed.has(startOf(token)) ? 'open-text' : type, role, ...here() });
        at = endOf(token);
        if (type === '{') {
            blocks.push(++opened);
        }
    }
    commentsUntil(text.length);
    rawUntil(text.length);
    return items;
}

/** Line breaks before each item: the author's, at most one blank line; an opening brace joins the line above. */
function breaksOf(items: readonly Item[], text: string): number[] {
    return items.map((item, i) => {
        const previous = items[i - 1];
        if (!previous) {
            return 0;
        }
        const gap = text.slice(previous.end, item.start);
        let lines = 0;
        for (let at = gap.indexOf('\n'); at !== -1; at = gap.indexOf('\n', at + 1)) {
            lines++;
        }
        // After a figure a brace may decide where the figure ends, and a text not closed ends with its line.
        if (item.type === '{' && previous.kind === 'token' && !['FIGURE', 'open-text', '{', '}'].includes(previous.type)) {
            return 0;
        }
        return Math.min(lines, 2);
    });
}

/** The line break of the file: the first that stays, so that laying out twice changes nothing. */
function newlineOf(items: readonly Item[], breaks: readonly number[], text: string): string {
    const first = (from: number, to: number) => /\r?\n/.exec(text.slice(from, to))?.[0];
    for (let i = 0; i < items.length; i++) {
        const item = items[i];
        const found = item && (((breaks[i] ?? 0) > 0 ? first(items[i - 1]?.end ?? 0, item.start) : undefined) ?? first(item.start, item.end));
        if (found !== undefined) {
            return found;
        }
    }
    return first(items.at(-1)?.end ?? 0, text.length) ?? '\n';
}

const goOnAfter = new Set([',', '->', ':', 'on', 'is', 'because', '(']);
const goOnWith = new Set(['->', ',', 'because', 'on', ')', ':']);

/** Whether the line an item begins goes on with the statement of the line above. */
function continues(items: readonly Item[], index: number): boolean {
    const item = items[index];
    let before = index - 1;
    while (items[before] && items[before]?.kind !== 'token') {
        before--;
    }
    const previous = items[before];
    if (!item || previous?.kind !== 'token' || item.type === '}') {
        return false;
    }
    if (item.kind === 'token' && goOnWith.has(item.type)) {
        return true;
    }
    if (!goOnAfter.has(previous.type)) {
        return false;
    }
    // A property left without its value does not draw in what follows.
    return !(item.role?.name === 'property' || item.role?.name === 'keyword') || previous.type === '(';
}

/** A comment written right against a figure's line stays so: in `38 mm//new` a blank would change where the figure ends. */
function isGlued(items: readonly Item[], breaks: readonly number[], index: number): boolean {
    const item = items[index];
    if (item?.type !== 'comment' || items[index - 1]?.end !== item.start) {
        return false;
    }
    let at = index - 1;
    while (at > 0 && items[at]?.type !== 'FIGURE' && (breaks[at] ?? 0) === 0) {
        at--;
    }
    return items[at]?.type === 'FIGURE';
}

/** Blanks between two items of one line. */
function between(previous: Item, item: Item, endsLine: boolean): string {
    if (previous.kind === 'raw' || item.kind === 'raw') {
        return item.start > previous.end ? ' ' : '';
    }
    if (item.kind === 'line-comment' || (item.kind === 'block-comment' && endsLine)) {
        return '  ';
    }
    if (item.kind === 'block-comment' || previous.kind === 'block-comment') {
        return ' ';
    }
    const { type } = item;
    if (type === ',' || type === ':' || type === ')' || previous.type === '(' || (type === '(' && previous.type === 'ID') || (previous.type === '{' && type === '}')) {
        return '';
    }
    if (previous.type !== '{' && beginsFact(item)) {
        return '  ';
    }
    return ' ';
}

function beginsFact({ role }: Item): boolean {
    return role !== undefined && ((role.name === 'property' && !role.declares) || role.name === 'half-typed'
        || (role.name === 'keyword' && role.frame.holds === 'members' && ['note', 'photo', 'takes', 'row', 'adjust', 'attended', 'unseen', 'absent', 'comparable', 'mark'].includes(role.token.image)));
}

interface Line {
    /** Index of the value's first item. */
    readonly value: number;
    /** Length of what stands before the colon. */
    readonly width: number;
    readonly gap: number;
}

/** A line whose name reaches further than this past the author's column does not move the others. */
const overhang = 6;

/**
 * Blanks before the values of lines that hold one fact, where the author aligned them. Lines of one sort in a block,
 * with no blank line between, are aligned together as soon as one of them is, to the longest name among them.
 */
function alignments(items: readonly Item[], breaks: readonly number[]): Map<number, string> {
    const aligned = new Map<number, string>();
    const groups = new Map<string, Line[]>();
    const settle = () => {
        groups.forEach(group => settleGroup(group, aligned));
        groups.clear();
    };
    for (let i = 0; i < items.length; i++) {
        if (i > 0 && (breaks[i] ?? 0) === 0) {
            continue;
        }
        if ((breaks[i] ?? 0) > 1) {
            settle();
        }
        const line = lineAt(items, breaks, i);
        if (line) {
            const key = `${items[i]?.block ?? 0} ${items[i]?.type ?? ''}`;
            const group = groups.get(key);
            if (group) {
                group.push(line);
            } else {
                groups.set(key, [line]);
            }
        }
    }
    settle();
    return aligned;
}

function settleGroup(group: readonly Line[], aligned: Map<number, string>): void {
    const wide = group.filter(line => line.gap > 1);
    if (wide.length === 0) {
        return;
    }
    let column = Math.max(...wide.map(line => line.width + line.gap));
    const taking = [...wide];
    for (const line of group.filter(l => l.gap <= 1).sort((a, b) => a.width - b.width)) {
        if (line.width + 1 <= column + overhang) {
            column = Math.max(column, line.width + 1);
            taking.push(line);
        }
    }
    const width = Math.max(...taking.map(line => line.width));
    taking.forEach(line => aligned.set(line.value, ' '.repeat(width - line.width + 1)));
}

/** A line of one fact, `name: value`, `takes name: value` or `row "label": value`, that begins at an item. */
function lineAt(items: readonly Item[], breaks: readonly number[], index: number): Line | undefined {
    const first = items[index];
    const hasWord = first?.type === 'takes' || first?.type === 'row';
    const at = hasWord ? index + 1 : index;
    const name = items[at];
    const colon = items[at + 1];
    const value = items[at + 2];
    const isNamed = first?.type === 'row' ? name?.type === 'TEXT' : name?.role?.name === 'property' && name.role.declares === hasWord;
    if (!first || !name || !isNamed || colon?.type !== ':' || value?.kind !== 'token' || value.type === '}') {
        return undefined;
    }
    if ((hasWord && (breaks[at] ?? 0) > 0) || (breaks[at + 1] ?? 0) > 0 || (breaks[at + 2] ?? 0) > 0) {
        return undefined;
    }
    for (let i = at + 2; i < items.length && (breaks[i] ?? 0) === 0; i++) {
        const other = items[i];
        if (other && other.block === first.block && beginsFact(other)) {
            return undefined;
        }
    }
    return { value: at + 2, width: name.end - name.start + (hasWord ? first.end - first.start + 1 : 0), gap: value.start - colon.end };
}

export class SurveyFormatter implements Formatter {
    constructor(private readonly lexer: () => Lexer) {}

    get formatOnTypeOptions(): { firstTriggerCharacter: string } {
        return { firstTriggerCharacter: '}' };
    }

    formatDocument(document: LangiumDocument): TextEdit[] {
        return this.edits(document.textDocument, 0, Number.MAX_SAFE_INTEGER);
    }

    formatDocumentRange(document: LangiumDocument, { range }: { readonly range: Range }): TextEdit[] {
        const { textDocument } = document;
        const from = textDocument.offsetAt({ line: range.start.line, character: 0 });
        // A range that ends at the start of a line does not take that line in.
        const lastLine = range.end.character === 0 && range.end.line > range.start.line ? range.end.line - 1 : range.end.line;
        return this.edits(textDocument, from, lineEnd(textDocument, lastLine));
    }

    /** A closing brace just typed takes its place; the rest of the line is left to its author. */
    formatDocumentOnType(document: LangiumDocument, { position }: { readonly position: Range['start'] }): TextEdit[] {
        const { textDocument } = document;
        const from = textDocument.offsetAt({ line: position.line, character: 0 });
        return this.edits(textDocument, from, textDocument.offsetAt(position) - 1);
    }

    private edits(textDocument: TextDocument, from: number, to: number): TextEdit[] {
        return respace(textDocument.getText(), this.lexer()).filter(({ start, end }) => end >= from && start <= to).map(({ start, end, text }) => ({
            range: { start: textDocument.positionAt(start), end: textDocument.positionAt(end) }, newText: text,
        }));
    }
}

function lineEnd(textDocument: TextDocument, line: number): number {
    return textDocument.offsetAt({ line: line + 1, character: 0 }) - (line + 1 < textDocument.lineCount ? 1 : 0);
}
