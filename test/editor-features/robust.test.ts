/** Half-typed text is normal: no feature may fail on any beginning of a file, or on its end. */
import { EmptyFileSystem, URI, type LangiumDocument } from 'langium';
import { CancellationToken } from 'vscode-jsonrpc';
import { expect, test } from 'vitest';
import { catalogueFiles } from '../../src/catalogue/bundled.js';
import { explainCheck } from '../../src/editor/explain.js';
import { allChecks } from '../../src/checks/all-checks.js';
import { createGarboardLspServices } from '../../src/editor/services.js';
import { sample } from './sample.js';

const { shared, language: services } = createGarboardLspServices(EmptyFileSystem);
const uri = URI.parse('file:///survey/main.survey');
const textDocument = { uri: uri.toString() };

async function opened(text: string): Promise<LangiumDocument> {
    const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder } = shared.workspace;
    if (LangiumDocuments.hasDocument(uri)) {
        LangiumDocuments.deleteDocument(uri);
    }
    const document = LangiumDocumentFactory.fromString(text, uri);
    LangiumDocuments.addDocument(document);
    await DocumentBuilder.build([document], { validation: true });
    return document;
}

async function everythingAt(document: LangiumDocument, offset: number): Promise<void> {
    const at = { textDocument, position: document.textDocument.positionAt(offset) };
    const { lsp } = services;
    await lsp.HoverProvider?.getHoverContent(document, at);
    await lsp.CompletionProvider?.getCompletion(document, at);
    await lsp.DefinitionProvider?.getDefinition(document, at);
    await lsp.DocumentHighlightProvider?.getDocumentHighlight(document, at);
}

async function everythingOf(document: LangiumDocument): Promise<void> {
    const range = { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } };
    const options = { tabSize: 4, insertSpaces: true };
    const { lsp } = services;
    await lsp.DocumentSymbolProvider?.getSymbols(document, { textDocument });
    await lsp.FoldingRangeProvider?.getFoldingRanges(document, { textDocument });
    await lsp.SemanticTokenProvider?.semanticHighlight(document, { textDocument });
    await lsp.SemanticTokenProvider?.semanticHighlightRange(document, { textDocument, range });
    await lsp.InlayHintProvider?.getInlayHints(document, { textDocument, range });
    await lsp.DocumentLinkProvider?.getDocumentLinks(document, { textDocument }, CancellationToken.None);
    await lsp.CodeLensProvider?.provideCodeLens(document, { textDocument });
    await lsp.Formatter?.formatDocument(document, { textDocument, options });
}

test.each([
    ['LF', 1, (text: string) => text], ['CRLF', 5, (text: string) => text.replaceAll('\n', '\r\n')], ['after characters that take more room', 7, (text: string) => `// °C ½ é 😀\n${text}`],
] as const)('prefixes of a survey, %s', async (_, step, change) => {
    const text = change(sample);
    for (let end = 0; end <= text.length; end += step) {
        const document = await opened(text.slice(0, end));
        await everythingAt(document, end);
        if (end % 2 === 0) {
            await everythingOf(document);
        }
    }
}, 240_000);

test('every place of a survey', async () => {
    const document = await opened(sample);
    for (let offset = 0; offset <= sample.length; offset++) {
        await everythingAt(document, offset);
    }
}, 60_000);

test('a survey with any one character gone', async () => {
    for (let at = 0; at < sample.length; at += 23) {
        const document = await opened(sample.slice(0, at) + sample.slice(at + 1));
        await everythingAt(document, at);
        await everythingOf(document);
    }
}, 120_000);

test.each(Object.keys(catalogueFiles))('the words of the catalogue file %s', async name => {
    const text = (catalogueFiles[name] ?? '').slice(0, 2500);
    for (let end = 0; end <= text.length; end += 83) {
        const document = await opened(text.slice(0, end));
        await everythingAt(document, end);
        await everythingOf(document);
    }
}, 60_000);

test.each(allChecks)('the page of $id says what it computes and how to answer it', check => {
    const page = explainCheck(check);
    expect(page).toContain(check.title);
    expect(page).toContain(check.isOfReport ? `accept ${check.id} on F1` : `answers: ${check.id}`);
    expect(page).toMatch(/## Sources/);
    expect(page).not.toMatch(/undefined|\n\n\n/);
});
