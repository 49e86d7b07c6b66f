/** In a re-inspection the editor knows the numbers that the earlier report gave out. */
import { afterEach, describe, expect, test } from 'vitest';
import type { CompletionList } from 'vscode-languageserver-types';
import { issuedFinding, issuedReport } from '../../src/checks/record/earlier-reports.js';
import { guises, open, type Editor } from './editor.js';

const head = 'survey "TC-2027-009" re-inspection {\n    follows: "TC-2026-041"\n}\nvessel "Marram" { hull-number: "XQZ12045K989" }\n';
const followed = issuedReport([issuedFinding('F1', 'Gas hose cracked'), issuedFinding('F2', 'Chain worn'), issuedFinding('F24', 'A remark', { urgency: 'note-only' })]);

let opened: Editor | undefined;
afterEach(() => opened?.services.editor.Analyser.setOutside(opened.document.uri.toString(), {}));

async function opening(text: string): Promise<Editor> {
    opened = await open(text);
    opened.services.editor.Analyser.setOutside(opened.document.uri.toString(), { followed });
    return opened;
}

async function offered(text: string): Promise<{ label: string; detail: string | undefined; text: string | undefined }[]> {
    const { services, document, position } = await opening(text);
    const list: CompletionList | undefined = await services.lsp.CompletionProvider?.getCompletion(document, { textDocument: { uri: document.uri.toString() }, position });
    return [...list?.items ?? []].sort((a, b) => (a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1).map(({ label, detail, textEdit }) => ({ label, detail, text: textEdit?.newText }));
}

describe.each(guises)('%s', (_, change) => {
    test('a new finding gets the next number after those of the earlier report; its open recommendations are offered after it', async () => {
        const items = await offered(change(`${head}finding F1 "Gas hose" { outcome: open }\nfinding <|>`));
        expect(items.slice(0, 2).map(({ label, detail }) => `${label}: ${detail}`)).toEqual(['F25: the next free id', 'F2: Chain worn, of report TC-2026-041']);
        expect(items.map(({ label }) => label)).not.toContain('F24');
    });
    test('the snippet of a finding has that number too', async () => {
        const items = await offered(change(`${head}<|>`));
        expect(items.find(({ label }) => label === 'finding')?.text).toContain('F25');
    });
});

test('drafts of findings pass over earlier numbers', async () => {
    const { services, document } = await opening(`${head}bilge-pump BP1 "Pump" { condition: failed }\n<|>`);
    const actions = await services.lsp.CodeActionProvider?.getCodeActions(document, {
        textDocument: { uri: document.uri.toString() }, range: { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } }, context: { diagnostics: [], only: ['source.draftFindings'] },
    });
    const edits = (actions ?? []).flatMap(action => 'edit' in action ? Object.values(action.edit?.changes ?? {}).flat() : []);
    expect(edits.map(({ newText }) => /finding (\S+)/.exec(newText)?.[1])).toEqual(['F25']);
});
