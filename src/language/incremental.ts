/**
 * Parses again only the statement an edit lies in. A survey is a long list of short statements, and most edits stay
 * inside the braces of one; reading 20 000 lines anew at each keystroke would be most of the time spent.
 *
 * The result is the same tree as a whole parse gives (a test compares the two on random edits). Where that is not
 * certain (the edit touches a statement's head or end, or either text has an error) the caller parses it all.
 */
import type { CompositeCstNode, CstNode, LangiumParser, LeafCstNode, ParseResult, Lexer } from 'langium';
import { isCompositeCstNode, isLeafCstNode } from 'langium';
import type { Element, SurveyFile, System } from './generated/ast.js';

/** The fields of a leaf that move with the text before it. Langium fills them once, in the parser. */
interface MovableLeaf {
    _offset: number;
    _startLine: number;
    _startColumn: number;
    _endLine: number;
    _endColumn: number;
}

interface MutableRoot {
    _text: string;
}

interface MutableComposite {
    content: CstNode[];
    _rangeCache: unknown;
}

/** The stretch in which two texts differ: offsets in the old and in the new text. */
export interface Change {
    readonly start: number;
    readonly oldEnd: number;
    readonly newEnd: number;
}

export function changeBetween(before: string, after: string): Change {
    const shorter = Math.min(before.length, after.length);
    let start = 0;
    while (start < shorter && before.charCodeAt(start) === after.charCodeAt(start)) {
        start++;
    }
    let tail = 0;
    while (tail < shorter - start && before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)) {
        tail++;
    }
    return { start, oldEnd: before.length - tail, newEnd: after.length - tail };
}

/** A new parse result for the edited text, or undefined where only a whole parse is certain. The old tree is used up. */
export function reparse(old: ParseResult<SurveyFile>, text: string, parser: LangiumParser, lexer: Lexer): ParseResult<SurveyFile> | undefined {
    const root = old.value;
    const rootCst = root.$cstNode;
    if (!rootCst || old.lexerErrors.length > 0 || old.parserErrors.length > 0) {
        return undefined;
    }
    const before = rootCst.root.fullText;
    const change = changeBetween(before, text);
    const found = statementAround(root, change);
    if (!found) {
        return undefined;
    }
    const { list, index, element } = found;
    const cst = element.$cstNode;
    if (!isCompositeCstNode(cst)) {
        return undefined;
    }
    const start = cst.offset;
    const oldEnd = cst.end;
    const delta = text.length - before.length;
    const snippet = text.slice(start, oldEnd + delta);
    // The head, up to the brace, is as it was; so is the brace at the end. In between, braces must balance.
    const lexed = lexer.tokenize(snippet);
    if (lexed.errors.length > 0 || !isOneBlock(lexed.tokens)) {
        return undefined;
    }
    const result = parser.parse<Element>(snippet, { rule: 'SystemElement' });
    const fresh = result.value;
    const freshCst = fresh.$cstNode;
    if (result.parserErrors.length > 0 || result.lexerErrors.length > 0 || fresh.$type !== element.$type || !isCompositeCstNode(freshCst) || freshCst.end !== snippet.length) {
        return undefined;
    }

    // Everything after the statement moves; so do, within it, the new nodes by its start.
    const lineShift = countLines(snippet) - countLines(before.slice(start, oldEnd));
    const endLine = lineOf(before, oldEnd);
    const columnShift = columnOf(text, oldEnd + delta) - columnOf(before, oldEnd);
    const startLine = lineOf(text, start);
    const startColumn = columnOf(text, start);
    moveAfter(cst, delta, lineShift, endLine, columnShift);
    for (const leaf of leavesOf(freshCst)) {
        leaf._startColumn += leaf._startLine === 0 ? startColumn : 0;
        leaf._endColumn += leaf._endLine === 0 ? startColumn : 0;
        leaf._offset += start;
        leaf._startLine += startLine;
        leaf._endLine += startLine;
    }
    const composite = cst as unknown as MutableComposite & CompositeCstNode;
    composite.content = [...freshCst.content];
    for (const child of composite.content) {
        (child as { container?: CompositeCstNode }).container = composite;
    }
    (composite as unknown as { astNode: Element }).astNode = fresh;
    const container = element.$container as SurveyFile | System;
    Object.assign(fresh, { $container: container, $containerProperty: element.$containerProperty, $containerIndex: index, $cstNode: composite });
    list[index] = fresh;
    (rootCst as unknown as MutableRoot)._text = text;

    // A new root tells whoever keeps results by tree that this one differs.
    const newRoot: SurveyFile = { ...root };
    Object.assign(rootCst, { astNode: newRoot });
    for (const child of [...newRoot.elements, ...newRoot.uses]) {
        (child as { $container: SurveyFile }).$container = newRoot;
    }
    return { ...old, value: newRoot };
}

/** The innermost statement whose braces hold the whole change, with the list it stands in. */
function statementAround(root: SurveyFile, change: Change): { list: Element[]; index: number; element: Element } | undefined {
    const holds = (node: Element): boolean => {
        const cst = node.$cstNode;
        return cst !== undefined && cst.offset < change.start && change.oldEnd < cst.end;
    };
    let list: Element[] = root.elements;
    let index = find(list, change.start);
    let element = list[index];
    if (element?.$type === 'System') {
        list = element.elements;
        index = find(list, change.start);
        element = list[index];
    }
    if (!element || !holds(element) || !reparsed.has(element.$type)) {
        return undefined;
    }
    const cst = element.$cstNode;
    if (!isCompositeCstNode(cst)) {
        return undefined;
    }
    const brace = cst.content.find(child => isLeafCstNode(child) && child.tokenType.name === '{') ?? braceInside(cst);
    return brace && brace.end <= change.start && cst.root.fullText.charAt(cst.end - 1) === '}' ? { list, index, element } : undefined;
}

const reparsed = new Set(['Component', 'Finding', 'Contact', 'Reading']);

function braceInside(cst: CompositeCstNode): CstNode | undefined {
    for (const child of cst.content) {
        if (isLeafCstNode(child) ? child.tokenType.name === '{' : isCompositeCstNode(child) && braceInside(child)) {
            return isLeafCstNode(child) ? child : isCompositeCstNode(child) ? braceInside(child) : undefined;
        }
    }
    return undefined;
}

/** Index of the last element that begins before an offset, -1 where none does. */
function find(list: readonly Element[], offset: number): number {
    let low = 0;
    let high = list.length;
    while (low < high) {
        const middle = (low + high) >> 1;
        if ((list[middle]?.$cstNode?.offset ?? 0) < offset) {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    return low - 1;
}

/** Whether the tokens are one statement whose outer brace opens once and closes with the last token. */
function isOneBlock(tokens: readonly { readonly image: string; readonly tokenType: { readonly name: string } }[]): boolean {
    let depth = 0;
    for (const [i, token] of tokens.entries()) {
        if (token.tokenType.name === '{') {
            depth++;
        } else if (token.tokenType.name === '}') {
            depth--;
            if (depth === 0 && i !== tokens.length - 1) {
                return false;
            }
        } else if (token.tokenType.name === 'MISSING') {
            return false;
        }
    }
    return depth === 0 && tokens.at(-1)?.image === '}';
}

function moveAfter(statement: CompositeCstNode, offsetShift: number, lineShift: number, endLine: number, columnShift: number): void {
    // From the statement outwards, everything that comes after it at each level.
    let node: CstNode = statement;
    while (node.container) {
        const parent: CompositeCstNode = node.container;
        (parent as unknown as MutableComposite)._rangeCache = undefined;
        for (let i = parent.content.indexOf(node) + 1; i < parent.content.length; i++) {
            const sibling = parent.content[i];
            if (sibling) {
                move(sibling, offsetShift, lineShift, endLine, columnShift);
            }
        }
        node = parent;
    }
    (statement as unknown as MutableComposite)._rangeCache = undefined;
}

function move(node: CstNode, offsetShift: number, lineShift: number, endLine: number, columnShift: number): void {
    if (isCompositeCstNode(node)) {
        (node as unknown as MutableComposite)._rangeCache = undefined;
        for (const child of node.content) {
            move(child, offsetShift, lineShift, endLine, columnShift);
        }
        return;
    }
    const leaf = node as unknown as MovableLeaf;
    leaf._offset += offsetShift;
    if (leaf._startLine === endLine) {
        leaf._startColumn += columnShift;
    }
    if (leaf._endLine === endLine) {
        leaf._endColumn += columnShift;
    }
    leaf._startLine += lineShift;
    leaf._endLine += lineShift;
}

function* leavesOf(node: CstNode): Generator<MovableLeaf> {
    if (isCompositeCstNode(node)) {
        for (const child of node.content) {
            yield* leavesOf(child);
        }
    } else {
        yield node as unknown as MovableLeaf & LeafCstNode;
    }
}

function countLines(text: string): number {
    let lines = 0;
    for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) {
        lines++;
    }
    return lines;
}

function lineOf(text: string, offset: number): number {
    return countLines(text.slice(0, offset));
}

function columnOf(text: string, offset: number): number {
    return offset - (text.lastIndexOf('\n', offset - 1) + 1);
}
