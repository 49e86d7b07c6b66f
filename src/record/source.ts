/** Where text comes from, and spans into it. The only place that reads positions off the concrete syntax tree. */
import { GrammarUtils, type AstNode } from 'langium';
import type { SurveyFile } from '../language/generated/ast.js';
import type { Span } from './model.js';

/** A parsed file of the language. `isBuiltIn` marks the catalogue that comes with Garboard. */
export interface SourceFile {
    readonly uri: string;
    readonly root: SurveyFile;
    readonly isBuiltIn: boolean;
}

export function spanOf(node: AstNode, uri: string): Span {
    const cst = node.$cstNode;
    return cst ? { uri, start: cst.offset, end: cst.end } : { uri, start: 0, end: 0 };
}

/** Span of one property of a node, such as its name; the node's own where it is not written. */
export function partSpan(node: AstNode, property: string, uri: string, index?: number): Span {
    const cst = GrammarUtils.findNodeForProperty(node.$cstNode, property, index);
    return cst ? { uri, start: cst.offset, end: cst.end } : headSpan(node, uri);
}

/**
 * Span of a name that stands after `after` in a node, most often with only blanks between: found in the text, which is
 * many times quicker than through the grammar and is done for every component.
 */
export function nameSpan(node: AstNode, property: string, name: string, after: number, uri: string): Span {
    const text = node.$cstNode?.root.fullText ?? '';
    let start = after;
    while (start < text.length && text.charCodeAt(start) <= 32) {
        start++;
    }
    return text.startsWith(name, start) ? { uri, start, end: start + name.length } : partSpan(node, property, uri);
}

/** The first word of a node: what to underline when the part at fault is not written. */
export function headSpan(node: AstNode, uri: string): Span {
    const cst = node.$cstNode;
    if (!cst) {
        return { uri, start: 0, end: 0 };
    }
    const first = /^[^\s:{]+/.exec(cst.root.fullText.slice(cst.offset, cst.end));
    return { uri, start: cst.offset, end: cst.offset + (first?.[0].length ?? 0) };
}
