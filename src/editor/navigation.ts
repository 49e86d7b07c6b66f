/** Going to a declaration, finding every use, renaming, and marking the uses in view. */
import { URI, type LangiumDocument } from 'langium';
import type { DefinitionProvider, DocumentHighlightProvider, ReferencesProvider, RenameProvider } from 'langium/lsp';
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import { DocumentHighlightKind, type DocumentHighlight, type Location, type LocationLink, type Position, type Range, type TextEdit, type WorkspaceEdit } from 'vscode-languageserver-types';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { scanName } from '../language/lexer.js';
import { runEnds } from '../record/lower.js';
import { catalogueScheme, catalogueText } from '../record/catalogue.js';
import type { Span } from '../record/model.js';
import { existingPhoto } from './links.js';
import { occurrences, occurrencesIn, symbolAt, viewOf, type Found, type GarboardSymbol, type SymbolKind, type View } from './resolve.js';
import type { GarboardServices } from './services.js';

const start: Range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** The text a span lies in: an open or saved file, or a file of the catalogue. */
function textAt(services: GarboardServices, uri: string): TextDocument | undefined {
    const text = uri.startsWith(catalogueScheme) ? catalogueText(uri) : undefined;
    return text === undefined ? services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri))?.textDocument : TextDocument.create(uri, 'garboard', 0, text);
}

export function rangeAt(services: GarboardServices, span: Span): Range | undefined {
    const text = textAt(services, span.uri);
    return text && { start: text.positionAt(span.start), end: text.positionAt(span.end) };
}

function rangeIn({ document }: View, span: Span): Range {
    return { start: document.textDocument.positionAt(span.start), end: document.textDocument.positionAt(span.end) };
}

interface At {
    readonly position: Position;
}

function findAt(services: GarboardServices, document: LangiumDocument, position: Position): { view: View; found: Found } | undefined {
    const view = viewOf(services, document);
    const found = symbolAt(view, document.textDocument.offsetAt(position));
    return found && { view, found };
}

export class SurveyDefinitionProvider implements DefinitionProvider {
    constructor(private readonly services: GarboardServices) {}

    async getDefinition(document: LangiumDocument, { position }: At): Promise<LocationLink[] | undefined> {
        const at = findAt(this.services, document, position);
        if (!at) {
            return undefined;
        }
        const { view, found: { symbol, span } } = at;
        const originSelectionRange = rangeIn(view, span);
        let { uri } = symbol;
        if (symbol.kind === 'photo' && view.record) {
            uri = await existingPhoto(this.services, view.record, symbol.id) ?? uri;
        }
        if (uri !== undefined) {
            return [{ originSelectionRange, targetUri: uri, targetRange: start, targetSelectionRange: start }];
        }
        const spans = symbol.kind === 'property' && symbol.of !== undefined ? [...recordedAt(view, symbol), ...symbol.declarations] : symbol.declarations;
        const links = spans.flatMap(target => {
            const range = rangeAt(this.services, target);
            return range ? [{ originSelectionRange, targetUri: target.uri, targetRange: range, targetSelectionRange: range }] : [];
        });
        return links.length > 0 ? links : undefined;
    }
}

/** In prose a fact's name leads to where the fact is recorded, before the catalogue. */
function recordedAt({ record }: View, { id, of }: GarboardSymbol): Span[] {
    const set = of === 'vessel' ? record?.vessel : of === 'survey' ? record?.survey : record?.components.get(of ?? '');
    const fact = set?.facts.get(id);
    return fact ? [fact.nameSpan] : [];
}

export class SurveyReferencesProvider implements ReferencesProvider {
    constructor(private readonly services: GarboardServices) {}

    findReferences(document: LangiumDocument, { position, context }: At & { readonly context: { readonly includeDeclaration: boolean } }): Location[] {
        const at = findAt(this.services, document, position);
        if (!at || at.found.symbol.kind === 'figure') {
            return [];
        }
        return occurrences(this.services, at.view, at.found.symbol).filter(o => context.includeDeclaration || !o.declares).flatMap(({ span }) => {
            const range = rangeAt(this.services, span);
            return range ? [{ uri: span.uri, range }] : [];
        });
    }
}

export class SurveyDocumentHighlightProvider implements DocumentHighlightProvider {
    constructor(private readonly services: GarboardServices) {}

    getDocumentHighlight(document: LangiumDocument, { position }: At): DocumentHighlight[] | undefined {
        const at = findAt(this.services, document, position);
        if (!at || at.found.symbol.kind === 'figure') {
            return undefined;
        }
        return occurrencesIn(at.view, at.found.symbol).map(({ span, declares }) => ({
            range: rangeIn(at.view, span), kind: declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
        }));
    }
}

const renamed: ReadonlySet<SymbolKind> = new Set(['component', 'system', 'run', 'finding', 'phrase', 'person', 'kind', 'material', 'word-list']);

const refuse = (message: string): never => {
    throw new ResponseError(LSPErrorCodes.RequestFailed, message);
};

export class SurveyRenameProvider implements RenameProvider {
    constructor(private readonly services: GarboardServices) {}

    prepareRename(document: LangiumDocument, { position }: At): Range | undefined {
        const at = findAt(this.services, document, position);
        if (!at) {
            return undefined;
        }
        this.mustBeOurs(at.found);
        return rangeIn(at.view, at.found.span);
    }

    rename(document: LangiumDocument, { position, newName }: At & { readonly newName: string }): WorkspaceEdit | undefined {
        const at = findAt(this.services, document, position);
        if (!at) {
            return undefined;
        }
        const { view, found } = at;
        this.mustBeOurs(found);
        this.mustBeFree(newName, view, found.symbol);
        const changes: Record<string, TextEdit[]> = {};
        if (newName !== found.symbol.id) {
            for (const { span } of occurrences(this.services, view, found.symbol)) {
                const range = rangeAt(this.services, span);
                if (range && !span.uri.startsWith(catalogueScheme)) {
                    (changes[span.uri] ??= []).push({ range, newText: newName });
                }
            }
        }
        return { changes };
    }

    /** Only what is declared in the surveyor's own files can be renamed. */
    private mustBeOurs({ symbol }: Found): void {
        if (symbol.declarations.some(span => span.uri.startsWith(catalogueScheme))) {
            refuse(`${symbol.id} is a word of Garboard's catalogue and keeps its name; a house file may declare further ones.`);
        }
        if (!renamed.has(symbol.kind)) {
            refuse(symbol.kind === 'check' ? `${symbol.id} is the id of a check and keeps its name.` : `${symbol.id} cannot be renamed here; ids, phrases, people, kinds and materials can.`);
        }
        if (symbol.declarations.length === 0) {
            refuse(`${symbol.id} is not declared in this survey; correct it here.`);
        }
    }

    private mustBeFree(name: string, { record, vocabulary }: View, { kind, id }: GarboardSymbol): void {
        if (!/^[\p{L}_]/u.test(name) || scanName(name, 0) !== name.length) {
            refuse(`${name === '' ? 'An empty name' : `"${name}"`} is not a name; it begins with a letter and has letters, digits and hyphens between them, as in TH4 or L-Norgaard.`);
        }
        if (runEnds.has(name)) {
            refuse(`${name} says how a run ends and cannot be an id.`);
        }
        if (name === id) {
            return;
        }
        const taken = kind === 'component' ? record?.components.has(name) || name === 'vessel' || name === 'survey'
            : kind === 'run' ? record?.runs.some(run => run.id === name) : kind === 'finding' ? record?.findings.some(finding => finding.id === name)
                : kind === 'system' ? record?.systems.some(system => system.id === name) : kind === 'phrase' ? vocabulary.phrases.has(name)
                    : kind === 'person' ? vocabulary.people.has(name) : kind === 'kind' ? vocabulary.kinds.has(name)
                        : kind === 'material' ? vocabulary.materials.has(name) : vocabulary.wordLists.has(name);
        if (taken) {
            refuse(`There is a ${kind === 'word-list' ? 'list of words' : kind} ${name} already; choose another name.`);
        }
    }
}
