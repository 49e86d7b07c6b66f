import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { CancellationTokenSource } from 'vscode-jsonrpc/node';
import type { CodeAction, Diagnostic, WorkspaceEdit } from 'vscode-languageserver-protocol';
import { TestClient } from './client.js';

const unfit = `survey "1" pre-purchase { attended 2026-10-06 ashore "yard" }
vessel "Marram" { water: salt }
system skin "Openings" {
    through-hull TH1 "Sink drain" { size: 1-1/2 in  metal: gunmetal  below-waterline: 14 in }
    seacock SC1 "Sink valve" { size: 1-1/2 in  metal: gunmetal  pattern: flanged-seacock  spigot: 1-1/2 in }
    hose H1 "Sink hose" { bore: 1-1/4 in  reinforcement: wire }
    sink S1 { rim-above-waterline: 1 ft }

    run R1 "Sink drain": TH1 -> SC1 -> H1 -> S1
}
`;

function offsetAt(text: string, { line, character }: { line: number; character: number }): number {
    const lines = text.split('\n');
    return lines.slice(0, line).reduce((sum, l) => sum + l.length + 1, 0) + character;
}

function applied(text: string, uri: string, edit: WorkspaceEdit | undefined): string {
    const edits = [...edit?.changes?.[uri] ?? []].sort((a, b) => offsetAt(text, b.range.start) - offsetAt(text, a.range.start));
    return edits.reduce((done, e) => done.slice(0, offsetAt(text, e.range.start)) + e.newText + done.slice(offsetAt(text, e.range.end)), text);
}

describe('the server over stdio', () => {
    let client: TestClient;
    let folder: string;
    let uri: string;

    beforeAll(async () => {
        folder = mkdtempSync(join(tmpdir(), 'garboard-'));
        writeFileSync(join(folder, 'main.survey'), unfit);
        uri = pathToFileURL(join(folder, 'main.survey')).href;
        client = await TestClient.start(folder);
    });
    afterAll(async () => {
        await client.stop();
        rmSync(folder, { recursive: true, force: true });
    });
    afterEach(async () => {
        await client.close(uri);
        client.forget(uri);
    });

    const fitProblem = (d: Diagnostic[]) => d.some(p => p.code === 'hose-and-spigot-differ');
    const actionsAt = (d: Diagnostic) => client.request<CodeAction[]>('textDocument/codeAction', { textDocument: { uri }, range: d.range, context: { diagnostics: [d] } });

    it('says what it can do', () => {
        const { capabilities } = client;
        for (const name of ['completionProvider', 'hoverProvider', 'definitionProvider', 'referencesProvider', 'renameProvider', 'documentSymbolProvider', 'foldingRangeProvider', 'semanticTokensProvider',
            'documentFormattingProvider', 'documentRangeFormattingProvider', 'inlayHintProvider', 'codeActionProvider', 'documentLinkProvider', 'codeLensProvider'] as const) {
            expect(capabilities[name], name).toBeTruthy();
        }
    });

    it('reports a hose that does not fit, with figures, a link and the check’s id', async () => {
        await client.open(uri, unfit);
        const found = (await client.diagnostics(uri, fitProblem)).find(d => d.code === 'hose-and-spigot-differ');
        expect(found?.message).toMatch(/1-1\/4 in/);
        expect(found?.message).toMatch(/6\.35 mm/);
        expect(found?.codeDescription?.href).toContain('hose-and-spigot-differ');
        expect(found?.severity).toBe(1);
    });

    it('follows edits, and offers corrections, a finding and an acceptance that each clear the problem', async () => {
        await client.open(uri, unfit);
        const problem = (await client.diagnostics(uri, fitProblem)).find(d => d.code === 'hose-and-spigot-differ');
        expect(problem).toBeDefined();
        if (!problem) {
            return;
        }
        const actions = await actionsAt(problem);
        const titles = actions.map(a => a.title);
        expect(titles.some(t => t.startsWith('Draft a finding'))).toBe(true);
        expect(titles.some(t => t.startsWith('Accept'))).toBe(true);
        expect(titles.some(t => /stepped adapter/i.test(t))).toBe(true);
        for (const action of actions.filter(a => a.diagnostics?.some(d => d.code === 'hose-and-spigot-differ'))) {
            const after = applied(unfit, uri, action.edit);
            expect(after).not.toBe(unfit);
            client.forget(uri);
            await client.change(uri, after);
            const left = await client.diagnostics(uri, d => !fitProblem(d));
            // The reason of an acceptance is the surveyor's to write; nothing else may be wrong with the text.
            const faults = left.filter(d => d.severity === 1 && !/^(reason-missing)$/.test(String(d.code)));
            expect(faults.map(d => `${action.title}: ${d.message}`)).toEqual([]);
            const formatted = await client.request<unknown[] | null>('textDocument/formatting', { textDocument: { uri }, options: { tabSize: 4, insertSpaces: true } });
            expect(formatted ?? [], `formatting after “${action.title}” of\n${after}`).toEqual([]);
            client.forget(uri);
            await client.change(uri, unfit);
            await client.diagnostics(uri, fitProblem);
        }
    });

    it('drafts findings for all open problems of a file in one edit', async () => {
        const text = unfit.replace('pattern: flanged-seacock', 'pattern: gate-valve  works: seized');
        await client.open(uri, text);
        await client.diagnostics(uri, d => fitProblem(d) && d.some(p => p.code === 'valve-does-not-work'));
        const action = await client.request<CodeAction | null>('garboard/draftAll', { uri });
        const after = applied(text, uri, action?.edit);
        client.forget(uri);
        await client.change(uri, after);
        const left = await client.diagnostics(uri, d => !d.some(p => p.severity === 1));
        expect(left.filter(d => d.severity === 1)).toEqual([]);
        expect(after.match(/\n {4}finding F\d/g)?.length).toBeGreaterThan(1);
    });

    it('a half-typed component does not hide the others’ problems', async () => {
        for (const half of ['    hose', '    hose H2', '    hose H2 {', '    hose H2 { bore:', '    hose H2 { bore: 3', '    hose H2 { bore: 38 mm  reinf', '    hose H2 { marking: "PVC', '    run R2 "x": TH1 ->']) {
            const text = unfit.replace('    sink S1', `${half}\n    sink S1`);
            await client.open(uri, text);
            const found = await client.diagnostics(uri, fitProblem);
            expect(found.some(d => d.code === 'hose-and-spigot-differ'), half).toBe(true);
            await client.close(uri);
            client.forget(uri);
        }
    });

    it('forgets text that is closed without saving', async () => {
        await client.open(uri, unfit.replace('bore: 1-1/4 in', 'bore: 1-1/2 in'));
        await client.diagnostics(uri, d => !d.some(p => p.code === 'property-unknown'));
        await client.close(uri);
        client.forget(uri);
        await client.open(uri, unfit);
        expect(fitProblem(await client.diagnostics(uri, fitProblem))).toBe(true);
    });

    it('reads a file that a survey uses and that no watcher has told of', async () => {
        mkdirSync(join(folder, 'late'));
        writeFileSync(join(folder, 'late', 'house.survey'), 'person A-Rowe "Ada Rowe" { role: "Surveyor" }\n');
        const late = pathToFileURL(join(folder, 'late', 'late.survey')).href;
        await client.open(late, 'use "house"\nuse "nowhere"\nsurvey "L-1" part-survey { surveyor: A-Rowe }\nvessel "Heron" { type: sailing-yacht }\n');
        await client.diagnostics(late, found => !found.some(d => d.code === 'person-unknown'));
        const missing = await client.diagnostics(late, found => found.some(d => d.code === 'file-unknown'));
        expect(missing.filter(d => d.code === 'file-unknown').map(d => d.range.start.line)).toEqual([1]);
        await client.close(late);
    });

    it('outlives a survey that was never saved, and one that is deleted under it', async () => {
        const unsaved = pathToFileURL(join(folder, 'never-saved.survey')).href;
        for (const address of ['untitled:Untitled-1', unsaved]) {
            await client.open(address, unfit);
            expect(fitProblem(await client.diagnostics(address, fitProblem))).toBe(true);
            await client.close(address);
        }
        await client.connection.sendNotification('workspace/didChangeWatchedFiles', { changes: [{ uri: unsaved, type: 1 }, { uri: unsaved, type: 3 }, { uri: unsaved, type: 2 }] });
        await client.open(uri, unfit);
        expect(fitProblem(await client.diagnostics(uri, fitProblem))).toBe(true);
        expect(client.isAlive).toBe(true);
    });

    it('offers a kind while it is being typed, at once after the keystroke', async () => {
        await client.open(uri, unfit);
        await client.diagnostics(uri, fitProblem);
        const typed = unfit.replace('    sink S1', '    seac\n    sink S1');
        const line = typed.split('\n').findIndex(l => l.endsWith('seac'));
        await client.change(uri, typed);
        const list = await client.request<{ items: { label: string }[] } | { label: string }[]>('textDocument/completion', { textDocument: { uri }, position: { line, character: 8 }, context: { triggerKind: 1 } });
        expect(('items' in list ? list.items : list).map(item => item.label)).toContain('seacock');
    });

    it('looks at the picture files: one that is not there, one of another day', async () => {
        const pictures = pathToFileURL(join(folder, 'pictures.survey')).href;
        const text = `survey "2" pre-purchase {\n    attended 2026-10-20 ashore "yard"\n}\nvessel "Marram" {}\nhose H1 {\n    photo "a.jpg" "Hose"\n    photo "b.jpg" "Clamp"\n}\n`;
        // Taken on 2026-10-05 by its camera.
        cpSync(fileURLToPath(new URL('../../examples/marram/photos/0101-marram-afloat.jpg', import.meta.url)), join(folder, 'a.jpg'));
        await client.open(pictures, text);
        const codes = (found: readonly Diagnostic[]) => found.map(d => `${String(d.code)} ${String(d.range.start.line)}`).sort();
        expect(codes(await client.diagnostics(pictures, found => found.length >= 2))).toEqual(['photo-loose-or-wrong-side 6', 'photo-wrong-day 5']);
        writeFileSync(join(folder, 'b.jpg'), 'x');
        await client.change(pictures, text.replace('"Hose"', '"Hose, supplied by the owner"'));
        expect(codes(await client.diagnostics(pictures, found => found.length === 0))).toEqual([]);
        await client.close(pictures);
    });

    it('draws the report and explains a check', async () => {
        await client.open(uri, unfit);
        await client.diagnostics(uri, fitProblem);
        const report = await client.request<{ html: string; openErrors: number }>('garboard/report', { uri, mode: 'file' });
        expect(report.html).toContain('<!DOCTYPE html>');
        expect(report.html).toContain('DRAFT');
        expect(report.openErrors).toBeGreaterThan(0);
        const page = await client.request<string>('garboard/explain', { check: 'hose-and-spigot-differ' });
        expect(page).toContain('# ');
    });

    it('stops writing where the word to stop comes with the request', async () => {
        await client.open(uri, unfit);
        await client.diagnostics(uri, fitProblem);
        const stop = new CancellationTokenSource();
        const answer = client.connection.sendRequest('garboard/write', { uri, document: 'report', forms: ['html'], folder: 'stopped' }, stop.token);
        stop.cancel();
        expect(await answer).toMatchObject({ state: 'stopped' });
        expect(existsSync(join(folder, 'stopped'))).toBe(false);
    });

    it('tells every survey that a file is part of, and who may sign each', async () => {
        writeFileSync(join(folder, 'people.survey'), 'person A-Rowe "Ada Rowe" { role: "Surveyor" }\nperson B-Rowe "Bo Rowe" { role: "Clerk" }\n');
        writeFileSync(join(folder, 'shared.survey'), 'system rig "Rig" { mast MA1 "Mast" { condition: sound } }\n');
        for (const [name, number, surveyor] of [['one', 'S-1', 'surveyor: A-Rowe'], ['two', 'S-2', '']]) {
            writeFileSync(join(folder, `${name}.survey`), `use "people"\nuse "shared"\nsurvey "${number}" part-survey { ${surveyor} }\nvessel "Heron" { water: salt }\n`);
        }
        const other = await TestClient.start(folder);
        try {
            const address = (name: string) => pathToFileURL(join(folder, name)).href;
            await other.open(address('shared.survey'), 'system rig "Rig" { mast MA1 "Mast" { condition: sound } }\n');
            await other.diagnostics(address('shared.survey'));
            const surveys = await other.request<{ uri: string; number: string; vessel: string }[]>('garboard/surveys', { uri: address('shared.survey') });
            expect([...surveys].sort((a, b) => a.number < b.number ? -1 : 1)).toEqual([
                { uri: address('one.survey'), number: 'S-1', vessel: 'Heron' }, { uri: address('two.survey'), number: 'S-2', vessel: 'Heron' },
            ]);
            const signers = await other.request<{ names: string[]; files: string[] }>('garboard/signers', { uri: address('one.survey') });
            expect(signers.names).toEqual(['Ada Rowe']);
            expect(signers.files).toEqual(expect.arrayContaining(['one', 'people', 'shared'].map(name => address(`${name}.survey`))));
            expect(await other.request('garboard/signers', { uri: address('two.survey') })).toMatchObject({ names: [] });
        } finally {
            await other.stop();
        }
    });

    it('answers nothing and stays alive for unknown files and nonsense', async () => {
        await client.open(uri, '}}} "" -> {{{ \u0000 survey survey kind kind {');
        await client.diagnostics(uri, d => d.length > 0);
        const at = { textDocument: { uri }, position: { line: 0, character: 5 } };
        await client.request('textDocument/hover', at);
        await client.request('textDocument/completion', at);
        expect(await client.request('garboard/explain', { check: 'no-such-check' })).toBeNull();
        expect(client.isAlive).toBe(true);
    });
});
