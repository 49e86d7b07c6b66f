import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { TestClient } from './client.js';

const sample = readFileSync(fileURLToPath(new URL('../../examples/unanswered/dunlin.survey', import.meta.url)), 'utf8');
const uri = 'file:///mutations/dunlin.survey';

let client: TestClient;
beforeAll(async () => { client = await TestClient.start(); });
afterAll(async () => { await client.stop(); });

const mutation = fc.record({
    at: fc.nat(sample.length), remove: fc.oneof(fc.nat(3), fc.nat(200)),
    insert: fc.oneof(
        fc.constantFrom('{', '}', '"', '"""', '->', ':', ',', '..', '+/-', '\n', '\r\n', '\u0000', '😀', '½ in', 'run R9: ->', 'finding', 'survey "2" damage {', 'use "dunlin"', 'kind hose is hose {}', 'accept x on y because "z"', '{H1.bore', '/*', '99999999999999999999 mm', '1/0 in'),
        fc.string({ unit: 'grapheme', maxLength: 6 }),
    ),
});

it('survives mutated surveys: it answers every request and goes on publishing', async () => {
    await client.open(uri, sample);
    await client.diagnostics(uri);
    await fc.assert(fc.asyncProperty(fc.array(mutation, { minLength: 1, maxLength: 5 }), fc.nat(2000), async (mutations, where) => {
        const text = mutations.reduce((now, { at, remove, insert }) => now.slice(0, at) + insert + now.slice(at + remove), sample);
        client.forget(uri);
        await client.change(uri, text);
        const offset = Math.min(where, text.length);
        const before = text.slice(0, offset).split('\n');
        const position = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
        const at = { textDocument: { uri }, position };
        const ask = (method: string, params: object = at) => client.request(`textDocument/${method}`, params);
        await client.diagnostics(uri);
        await Promise.all([
            ask('hover'), ask('completion'), ask('definition'), ask('references', { ...at, context: { includeDeclaration: true } }), ask('documentHighlight'), ask('documentSymbol', { textDocument: { uri } }),
            ask('foldingRange', { textDocument: { uri } }), ask('semanticTokens/full', { textDocument: { uri } }), ask('codeLens', { textDocument: { uri } }), ask('documentLink', { textDocument: { uri } }),
            ask('inlayHint', { textDocument: { uri }, range: { start: { line: 0, character: 0 }, end: position } }), ask('formatting', { textDocument: { uri }, options: { tabSize: 4, insertSpaces: true } }),
            ask('codeAction', { textDocument: { uri }, range: { start: position, end: position }, context: { diagnostics: [] } }),
        ]);
        const report = await client.request<{ html: string }>('garboard/report', { uri, mode: 'preview' });
        expect(report.html).toContain('</html>');
        expect(client.isAlive).toBe(true);
    }), { numRuns: 60, endOnFailure: true });
    // And it is still right about the text it began with.
    client.forget(uri);
    await client.change(uri, sample);
    const found = await client.diagnostics(uri, all => all.filter(d => d.severity === 1).length === 7);
    expect(found.some(d => d.code === 'hose-and-spigot-differ')).toBe(true);
}, 120_000);
