/**
 * What the tests of editor features ask: one text with a mark `<|>`, one answer. The only place in them that knows
 * the services. Several files in one text are parted by lines `//- name.survey`; pictures are named by `//= path`.
 */
import { EmptyFileSystemProvider, URI, UriUtils, type FileSystemNode, type LangiumDocument } from 'langium';
import type { CompletionItem, CompletionList, Hover, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { describe, expect, test } from 'vitest';
import { createGarboardLspServices, type GarboardServices } from '../../src/editor/services.js';

const folder = 'file:///survey/';
const mark = '<|>';

export interface Editor {
    readonly services: GarboardServices;
    readonly documents: ReadonlyMap<string, LangiumDocument>;
    readonly document: LangiumDocument;
    readonly offset: number;
    readonly position: { readonly line: number; readonly character: number };
}

/** Names of files, without their contents. */
class NamedFiles extends EmptyFileSystemProvider {
    readonly paths = new Set<string>();

    override stat(uri: URI): Promise<FileSystemNode> {
        const isFile = this.paths.has(uri.path);
        return isFile ? Promise.resolve({ isFile, isDirectory: false, uri }) : Promise.reject(new Error('There is no such file.'));
    }

    override readDirectory(...[folder]: URI[]): Promise<FileSystemNode[]> {
        const start = folder?.path.replace(/\/?$/, '/') ?? '/';
        const inside = [...this.paths].filter(path => path.startsWith(start)).map(path => path.slice(start.length));
        return Promise.resolve([...new Set(inside.map(path => path.split('/')[0] ?? ''))].map(name => ({
            isFile: inside.includes(name), isDirectory: !inside.includes(name), uri: UriUtils.joinPath(folder ?? URI.file('/'), name),
        })));
    }
}

const provider = new NamedFiles();
let services: GarboardServices | undefined;

function ourServices(): GarboardServices {
    services ??= createGarboardLspServices({ fileSystemProvider: () => provider }).language;
    return services;
}

/** Opens the files of a text; the document is the one that holds the mark, or the first. */
export async function open(marked: string): Promise<Editor> {
    const language = ourServices();
    const { workspace } = language.shared;
    const old = workspace.LangiumDocuments.all.map(document => document.uri).toArray();
    await workspace.DocumentBuilder.update([], old);
    provider.paths.clear();
    const files = new Map<string, string>();
    let name = 'main.survey';
    for (const line of marked.split(/(?<=\n)/)) {
        const heading = /^\/\/- (\S+)\s*$/.exec(line);
        const picture = /^\/\/= (.+?)\s*$/.exec(line);
        if (heading) {
            name = heading[1] ?? name;
            files.set(name, '');
        } else if (picture) {
            provider.paths.add(`/survey/${picture[1] ?? ''}`);
        } else {
            files.set(name, (files.get(name) ?? '') + line);
        }
    }
    const documents = new Map<string, LangiumDocument>();
    let found: { document: LangiumDocument; offset: number } | undefined;
    for (const [file, text] of files) {
        const offset = text.indexOf(mark);
        const document = workspace.LangiumDocumentFactory.fromString(text.replace(mark, ''), URI.parse(folder + file));
        workspace.LangiumDocuments.addDocument(document);
        documents.set(file, document);
        if (offset !== -1 || !found) {
            found = { document, offset: Math.max(0, offset) };
        }
    }
    await workspace.DocumentBuilder.build([...documents.values()], { validation: true });
    if (!found) {
        throw new Error('There is no file in the text.');
    }
    return { services: language, documents, ...found, position: found.document.textDocument.positionAt(found.offset) };
}

/** The same text as it may come from other machines: LF, CRLF, and with characters that take more room before the mark. */
export const guises: readonly (readonly [name: string, change: (text: string) => string])[] = [
    ['LF', text => text],
    ['CRLF', text => text.replaceAll('\n', '\r\n')],
    ['°C ½ é 😀 before it', text => text.replace(/^(?!\/\/-)/, '/* °C ½ é 😀 */ // é 😀\n').replace(/(\/\/- \S+\n)/g, '$1/* °C ½ é 😀 */ /* \u00a0 */ ')],
];

export function inEveryGuise(name: string, text: string, check: (text: string) => Promise<void>): void {
    describe(name, () => {
        for (const [guise, change] of guises) {
            test(guise, () => check(change(text)));
        }
    });
}

const at = ({ document, position }: Editor) => ({ textDocument: { uri: document.uri.toString() }, position });

export async function completionOf(text: string, triggerCharacter?: string): Promise<{ editor: Editor; items: CompletionItem[]; labels: string[] }> {
    const editor = await open(text);
    const context = triggerCharacter === undefined ? {} : { context: { triggerKind: 2 as const, triggerCharacter } };
    const list: CompletionList | undefined = await editor.services.lsp.CompletionProvider?.getCompletion(editor.document, { ...at(editor), ...context });
    const items = [...list?.items ?? []].sort((a, b) => (a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1);
    return { editor, items, labels: items.map(item => item.label) };
}

/** The marked document's text after an item is taken. */
export function taken({ editor, items }: { editor: Editor; items: readonly CompletionItem[] }, label: string): string {
    const item = items.find(i => i.label === label);
    if (!item?.textEdit || !('range' in item.textEdit)) {
        throw new Error(`${label} is not offered; there are: ${items.map(i => i.label).join(', ')}`);
    }
    return TextDocument.applyEdits(editor.document.textDocument, [item.textEdit]);
}

/** The first labels offered, in order, are those given. */
export function completes(name: string, text: string, first: readonly string[], never: readonly string[] = []): void {
    inEveryGuise(name, text, async guise => {
        const { labels, items, editor } = await completionOf(guise);
        expect(labels.slice(0, first.length)).toEqual(first);
        never.forEach(label => expect(labels).not.toContain(label));
        for (const item of items) {
            const edit = item.textEdit;
            const range = edit && 'range' in edit ? edit.range : undefined;
            expect(range?.end.line).toBe(editor.position.line);
        }
    });
}

export async function hoverOf(text: string): Promise<{ value: string; over: string }> {
    const editor = await open(text);
    const hover: Hover | undefined = await editor.services.lsp.HoverProvider?.getHoverContent(editor.document, at(editor));
    const contents = hover?.contents;
    return {
        value: contents && typeof contents === 'object' && 'value' in contents ? contents.value : '',
        over: hover?.range ? editor.document.textDocument.getText(hover.range) : '',
    };
}

export function hovers(name: string, text: string, over: string, ...parts: readonly string[]): void {
    inEveryGuise(name, text, async guise => {
        const hover = await hoverOf(guise);
        expect(hover.over).toBe(over);
        parts.forEach(part => expect(hover.value).toContain(part));
    });
}

function shown(editor: Editor, uri: string, range: { start: { line: number; character: number }; end: { line: number; character: number } }): string {
    const document = [...editor.documents.values()].find(d => d.uri.toString() === uri);
    return document ? document.textDocument.getText(range) : uri;
}

/** Where a definition leads: `file:text`, or the address alone outside the files given. */
export async function definitionOf(text: string): Promise<string[]> {
    const editor = await open(text);
    const links = await editor.services.lsp.DefinitionProvider?.getDefinition(editor.document, at(editor)) ?? [];
    return links.map(link => {
        const name = link.targetUri.replace(folder, '');
        const target = shown(editor, link.targetUri, link.targetSelectionRange);
        return target === link.targetUri ? name : `${name}:${target}@${link.targetSelectionRange.start.line}`;
    });
}

export async function referencesTo(text: string, includeDeclaration = true): Promise<string[]> {
    const editor = await open(text);
    const found = await editor.services.lsp.ReferencesProvider?.findReferences(editor.document, { ...at(editor), context: { includeDeclaration } }) ?? [];
    return found.map(({ uri, range }) => `${uri.replace(folder, '')}:${range.start.line}:${shown(editor, uri, range)}`);
}

export async function highlightsOf(text: string): Promise<string[]> {
    const editor = await open(text);
    const found = await editor.services.lsp.DocumentHighlightProvider?.getDocumentHighlight(editor.document, at(editor)) ?? [];
    return found.map(({ range, kind }) => `${range.start.line}:${editor.document.textDocument.getText(range)}:${kind === 3 ? 'write' : 'read'}`);
}

/** All files after a rename, by name. */
export async function renamed(text: string, newName: string): Promise<Record<string, string>> {
    const editor = await open(text);
    await editor.services.lsp.RenameProvider?.prepareRename(editor.document, at(editor));
    const edit: WorkspaceEdit | undefined = await editor.services.lsp.RenameProvider?.rename(editor.document, { ...at(editor), newName });
    const result: Record<string, string> = {};
    for (const [name, document] of editor.documents) {
        const edits: TextEdit[] = edit?.changes?.[document.uri.toString()] ?? [];
        result[name] = TextDocument.applyEdits(document.textDocument, edits);
    }
    return result;
}
