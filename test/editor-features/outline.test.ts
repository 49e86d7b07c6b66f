import type { CodeLens, DocumentSymbol } from 'vscode-languageserver-types';
import { CancellationToken } from 'vscode-jsonrpc';
import { describe, expect, test } from 'vitest';
import { inEveryGuise, open } from './editor.js';
import { sample } from './sample.js';

const whole = { start: { line: 0, character: 0 }, end: { line: 9999, character: 0 } };
const textDocument = { uri: '' };

async function outline(text: string): Promise<string[]> {
    const { services, document } = await open(text);
    const symbols = await services.lsp.DocumentSymbolProvider?.getSymbols(document, { textDocument }) ?? [];
    const write = (list: readonly DocumentSymbol[], depth: string): string[] => list.flatMap(s => {
        expect(document.textDocument.getText(s.range)).toContain(document.textDocument.getText(s.selectionRange));
        return [`${depth}${s.name} [${s.detail ?? ''}]`, ...write(s.children ?? [], `${depth}  `)];
    });
    return write(symbols, '');
}

describe('outline', () => {
    inEveryGuise('of a survey', 'survey "TC-1" pre-purchase {}\nvessel "Marram" {}\nsystem skin "Skin" {\n    through-hull TH4 "Old heads" {}\n    run R1 "Sink": TH4 -> open\n    finding F3 "Left open" on TH4 { urgency: within-days 30 }\n    accept x on TH4 because ""\n}\n', async text => {
        expect(await outline(text)).toEqual([
            'survey TC-1 [pre-purchase]', 'vessel Marram []', 'skin Skin [system]', '  TH4 Old heads [through-hull]', '  R1 Sink [TH4 → open]', '  F3 Left open [within-days 30]', '  accept x [TH4]',
        ]);
    });
    inEveryGuise('of half-typed text', 'system\nhose\nfinding F1\nkind\nunseen\ncontact\n', async text => expect((await outline(text)).length).toBeGreaterThan(3));
    inEveryGuise('with open problems', 'valve SV1 { spigot: 1-1/4 in }\nhose H1 { bore: 1-1/2 in }\nrun R1: SV1 -> H1\n', async text => expect(await outline(text)).toContain('H1 [hose, 1 open]'));
});

describe('folding', () => {
    const folds = (name: string, text: string, ...expected: string[]) => test.each(['\n', '\r\n'])(`${name} %j`, async feed => {
        const { services, document } = await open(text.replaceAll('\n', feed));
        const found = await services.lsp.FoldingRangeProvider?.getFoldingRanges(document, { textDocument }) ?? [];
        expect(found.map(f => `${f.startLine}-${f.endLine}${f.kind === undefined ? '' : ` ${f.kind}`}`).sort()).toEqual(expected.sort());
    });
    folds('blocks', 'hose H1 {\n    bore: 1 in\n    x: 1\n}\nhose H2 { bore: 1 in }\n', '0-2');
    folds('texts and comments', '/* a\n b */\nhose H1 { note """a\n b\n""" }\n// c\n// d\n', '0-1 comment', '2-4', '2-3', '5-6 comment');
    folds('used files', 'use "a"\nuse "b"\n\nuse "c"\nhose H1\n', '0-3 imports');
    folds('a block not closed', 'hose H1 {\n  bore: 1 in\n');
});

describe('lenses', () => {
    const titles = async (text: string) => {
        const { services, document } = await open(text);
        const lenses: CodeLens[] = await services.lsp.CodeLensProvider?.provideCodeLens(document, { textDocument }) ?? [];
        return lenses.map(lens => `${lens.range.start.line - (text.startsWith('/*') ? 1 : 0)} ${lens.command?.title ?? ''}`);
    };
    const parts = 'survey "1" pre-purchase {}\nvalve SV1 { spigot: 1-1/4 in }\nhose H1 { bore: 1-1/2 in }\nrun R1: SV1 -> H1\n';
    inEveryGuise('open', parts, async text => expect(await titles(text)).toEqual(['0 1 open problem', '0 0 findings', '2 1 open']));
    inEveryGuise('answered', `${parts}finding F1 "x" on H1, SV1 { answers: hose-and-spigot-differ }\n`, async text => {
        const found = await titles(text);
        expect(found).toContain('2 1 answered by F1');
        expect(found).toContain('4 answers 1 problem');
        expect(found).toContain('0 1 finding');
    });
    inEveryGuise('accepted', `${parts}accept hose-and-spigot-differ on H1, SV1 because "x"\n`, async text => expect(await titles(text)).toContain('2 1 accepted'));
    inEveryGuise('stale', 'hose H1\nfinding F1 "x" on H1 { answers: hose-and-spigot-differ }\n', async text => expect(await titles(text)).toContain('1 stale answer'));
});

describe('inlay hints', () => {
    const hints = async (text: string, range = whole) => {
        const { services, document } = await open(text);
        const found = await services.lsp.InlayHintProvider?.getInlayHints(document, { textDocument, range }) ?? [];
        return found.map(hint => `${document.textDocument.getText({ start: { line: hint.position.line, character: hint.position.character - 2 }, end: hint.position })}|${String(hint.label)}`);
    };
    inEveryGuise('the other system, nothing for money, numbers, dates and volts', 'hose H1 { bore: 38 mm  length: 2 ft  cost: 5 USD..6 USD  n: 3  v: 12 V }\nsurvey "1" { attended 2026-10-06 ashore "" }\n', async text => {
        expect(await hints(text)).toEqual(['mm|1-1/2 in', 'ft|610 mm'].map((hint, i) => i === 1 ? expect.stringMatching(/^ft\|/) as unknown : hint));
    });
    test('only in the range asked for', async () => expect(await hints('hose H1 { bore: 38 mm }\nhose H2 { bore: 25 mm }\n', { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } })).toEqual(['mm|1 in'].map(() => expect.stringMatching(/^mm\|/) as unknown)));
    test('not in declarations of kinds', async () => expect(await hints('kind k { takes a: length 1 mm..2 mm }')).toEqual([]));
});

describe('links', () => {
    test('on photos and used files', async () => {
        const { services, document } = await open('//= bilder/b é.jpg\n//= a.jpg\n//- main.survey\nuse "house"\nsurvey "1" { photos: "bilder" }\nhose H1 { photo "a.jpg"  photo "b é.jpg" "x"  photo "" }\n');
        const links = await services.lsp.DocumentLinkProvider?.getDocumentLinks(document, { textDocument }, CancellationToken.None) ?? [];
        expect(links.map(link => `${document.textDocument.getText(link.range)} ${link.target ?? ''}`)).toEqual([
            'house file:///survey/house.survey', 'a.jpg file:///survey/a.jpg', 'b é.jpg file:///survey/bilder/b%20%C3%A9.jpg',
        ]);
    });
});

describe('colours', () => {
    async function colours(text: string, range?: typeof whole): Promise<string[]> {
        const { services, document } = await open(text);
        const provider = services.lsp.SemanticTokenProvider;
        const { data = [] } = await (range ? provider?.semanticHighlightRange(document, { textDocument, range }) : provider?.semanticHighlight(document, { textDocument })) ?? {};
        const names = Object.keys(provider?.tokenTypes ?? {});
        const found: string[] = [];
        let line = 0;
        let character = 0;
        for (let i = 0; i < data.length; i += 5) {
            const [down = 0, right = 0, length = 0, type = 0, modifiers = 0] = data.slice(i, i + 5);
            line += down;
            character = down > 0 ? right : character + right;
            const word = document.textDocument.getText({ start: { line, character }, end: { line, character: character + length } });
            expect(word).toHaveLength(length);
            found.push(`${word}:${names[type] ?? ''}${modifiers > 0 ? '!' : ''}`);
        }
        return found;
    }
    inEveryGuise('by meaning', 'valve SV4 "é" { size: 1-1/2 in  metal: brass  pattern: gate-valve }\nrun R1: SV4 -> open\nfinding F1 "x" on SV4 { seen: "😀 {SV4.size} in"  recommend: phrase p }\n', async text => {
        const found = (await colours(text)).filter(c => !c.endsWith(':comment'));
        expect(found).toEqual([
            'valve:type', 'SV4:variable!', '"é":string', 'size:property', '1-1/2:number', 'in:keyword', 'metal:property', 'brass:class', 'pattern:property', 'gate-valve:enumMember',
            'run:keyword', 'R1:variable!', 'SV4:variable', 'open:keyword', 'finding:keyword', 'F1:variable!', '"x":string', 'on:keyword', 'SV4:variable', 'seen:property',
            '"😀 {:string', 'SV4:variable', 'size:property', '} in":string', 'recommend:property', 'phrase:keyword', 'p:function',
        ]);
    });
    inEveryGuise('line by line in long texts', 'hose H1 { note """a\n  {H1.bore}\nb""" }', async text => {
        expect((await colours(text)).filter(c => c.endsWith(':string') || c.endsWith(':property'))).toEqual(['"""a:string', '  {:string', 'bore:property', '}:string', 'b""":string']);
    });
    inEveryGuise('figures in parts', 'hose H1 { a: 38 ft 4 in  b: 250 USD..400 USD  c: 5 mm +/- 0.5 mm  d: 14 °C  e: 2026-10-06 }', async text => {
        expect((await colours(text)).filter(c => c.endsWith(':number') || c.endsWith(':keyword'))).toEqual([
            '38:number', 'ft:keyword', '4:number', 'in:keyword', '250:number', 'USD:keyword', '400:number', 'USD:keyword', '5:number', 'mm:keyword', '0.5:number', 'mm:keyword', '14:number', '°C:keyword', '2026-10-06:number',
        ]);
    });
    test('in a range as in the whole', async () => {
        const all = await colours(sample);
        expect(all.join('\n')).toContain((await colours(sample, { start: { line: 18, character: 0 }, end: { line: 30, character: 0 } })).join('\n'));
    });
    test('an edit sends what it changed', async () => {
        const { services, document } = await open(sample);
        const provider = services.lsp.SemanticTokenProvider;
        const first = await provider?.semanticHighlight(document, { textDocument });
        const delta = await provider?.semanticHighlightDelta(document, { textDocument, previousResultId: first?.resultId ?? '' });
        expect(delta && 'edits' in delta ? delta.edits : undefined).toEqual([]);
    });
});
