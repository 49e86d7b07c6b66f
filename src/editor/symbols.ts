/** The outline: the survey, its systems with their components, runs and findings, and the vocabulary a file declares. */
import type { LangiumDocument } from 'langium';
import type { DocumentSymbolProvider } from 'langium/lsp';
import { SymbolKind, type DocumentSymbol, type Range } from 'vscode-languageserver-types';
import { isSurveyFile, type Element, type Finding, type Member } from '../language/generated/ast.js';
import { plainText } from '../record/prose.js';
import { headSpan, partSpan } from '../record/source.js';
import type { GarboardServices } from './services.js';

interface Entry {
    readonly name: string;
    readonly detail: string;
    readonly kind: SymbolKind;
    /** The part of the node that bears the name. */
    readonly part?: string;
    readonly children?: readonly Element[];
}

export class SurveyDocumentSymbolProvider implements DocumentSymbolProvider {
    constructor(private readonly services: GarboardServices) {}

    getSymbols(document: LangiumDocument): DocumentSymbol[] {
        const root = document.parseResult.value;
        if (!isSurveyFile(root)) {
            return [];
        }
        const analysis = this.services.editor.Analyser.analysisOf(document.uri);
        const open = new Map<string, number>();
        for (const problem of analysis?.problems ?? []) {
            const id = problem.components[0]?.id;
            if (problem.answeredBy === undefined && problem.severity !== 'hint' && id !== undefined) {
                open.set(id, (open.get(id) ?? 0) + 1);
            }
        }
        return root.elements.map(element => symbolOf(element, document, open)).filter(s => s !== undefined);
    }
}

function symbolOf(element: Element, document: LangiumDocument, open: ReadonlyMap<string, number>): DocumentSymbol | undefined {
    const entry = entryOf(element, open);
    const cst = element.$cstNode;
    if (!entry || !cst) {
        return undefined;
    }
    const uri = document.uri.toString();
    const { textDocument } = document;
    const span = entry.part === undefined ? headSpan(element, uri) : partSpan(element, entry.part, uri);
    const rangeOf = (start: number, end: number): Range => ({ start: textDocument.positionAt(start), end: textDocument.positionAt(end) });
    const within = span.start >= cst.offset && span.end <= cst.end;
    const children = (entry.children ?? []).map(child => symbolOf(child, document, open)).filter(s => s !== undefined);
    return {
        name: entry.name.trim() === '' ? element.$type.toLowerCase() : entry.name, kind: entry.kind, range: rangeOf(cst.offset, cst.end),
        selectionRange: within ? rangeOf(span.start, span.end) : rangeOf(cst.offset, cst.offset),
        ...(entry.detail === '' ? {} : { detail: entry.detail }), ...(children.length > 0 ? { children } : {}),
    };
}

const titled = (id: string | undefined, title: string | undefined): string => [id ?? '', title === undefined ? '' : oneLine(plainText(title))].filter(part => part !== '').join(' ');

function oneLine(text: string): string {
    const line = text.replace(/\s+/g, ' ').trim();
    return line.length > 80 ? `${line.slice(0, 79)}…` : line;
}

function entryOf(node: Element, open: ReadonlyMap<string, number>): Entry | undefined {
    switch (node.$type) {
        case 'Survey': return { name: titled('survey', node.number), detail: node.kind ?? '', kind: SymbolKind.File, part: 'number' };
        case 'Vessel': return { name: titled('vessel', node.title), detail: '', kind: SymbolKind.Module, part: 'title' };
        case 'System': return { name: titled(node.name, node.title), detail: 'system', kind: SymbolKind.Namespace, part: 'name', children: node.elements };
        case 'Component': {
            const count = node.name === undefined ? 0 : open.get(node.name) ?? 0;
            return { name: titled(node.name ?? node.kind, node.title), detail: count === 0 ? node.kind : `${node.kind}, ${count} open`, kind: SymbolKind.Object, part: 'name' };
        }
        case 'Run': return { name: titled(node.name, node.title), detail: [node.first, ...node.steps.map(step => step.target)].filter(id => id !== undefined).join(' → '), kind: SymbolKind.Event, part: 'name' };
        case 'Finding': return { name: titled(node.name, node.title), detail: urgencyOf(node), kind: SymbolKind.Key, part: 'name' };
        case 'Acceptance': return { name: `accept ${node.check ?? ''}`.trim(), detail: targets(node.targets), kind: SymbolKind.Constant, part: 'check' };
        case 'Contact': return { name: `contact ${targets(node.targets)}`.trim(), detail: '', kind: SymbolKind.Operator };
        case 'Reading': return { name: titled(node.name, node.title), detail: 'reading', kind: SymbolKind.Array, part: 'name' };
        case 'Unseen': return { name: `${node.keyword} ${node.what === undefined ? '' : oneLine(plainText(node.what))}`.trim(), detail: '', kind: SymbolKind.Null };
        case 'Valuation': return { name: titled('valuation', node.title), detail: '', kind: SymbolKind.Number };
        case 'Kind': return { name: titled(node.name, node.title), detail: node.parent === undefined ? 'kind' : `kind, is ${node.parent}`, kind: SymbolKind.Class, part: 'name' };
        case 'Material': return { name: titled(node.name, node.title), detail: 'material', kind: SymbolKind.Struct, part: 'name' };
        case 'Standard': return { name: titled(node.name === undefined ? 'standard' : plainText(node.name), node.title), detail: 'standard', kind: SymbolKind.Interface, part: 'name' };
        case 'WordList': return { name: titled(node.name, node.title), detail: 'words', kind: SymbolKind.Enum, part: 'name' };
        case 'Phrase': return { name: node.name ?? 'phrase', detail: node.text === undefined ? 'phrase' : oneLine(plainText(node.text)), kind: SymbolKind.String, part: 'name' };
        case 'Person': return { name: titled(node.name, node.title), detail: 'person', kind: SymbolKind.Variable, part: 'name' };
        case 'Firm': return { name: titled('firm', node.title), detail: '', kind: SymbolKind.Package, part: 'title' };
        case 'Yardsticks': return { name: titled('yardsticks', node.title), detail: '', kind: SymbolKind.Package };
        case 'Coverage': return { name: titled(node.name === undefined ? 'coverage' : `coverage ${node.name}`, node.title), detail: '', kind: SymbolKind.Package, part: 'name' };
        case 'Outline': return { name: titled(node.name === undefined ? 'outline' : `outline ${node.name}`, node.title), detail: '', kind: SymbolKind.Package, part: 'name' };
        case 'Wording': return { name: titled('wording', node.title), detail: '', kind: SymbolKind.Package };
        default: return undefined;
    }
}

function targets(list: readonly { readonly name?: string }[]): string {
    return list.map(target => target.name).filter(name => name !== undefined).join(', ');
}

function urgencyOf(finding: Finding): string {
    const urgency = finding.members.find((member: Member) => member.$type === 'Property' && member.name === 'urgency');
    return urgency?.$type === 'Property' ? urgency.value?.$cstNode?.text ?? '' : '';
}
