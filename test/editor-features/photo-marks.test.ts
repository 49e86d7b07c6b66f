import { describe, expect, test } from 'vitest';
import { formatText } from '../../src/editor/formatter.js';
import { completes, completionOf, hovers, inEveryGuise, open, taken } from './editor.js';

const within = (marks: string) => `hose H1 {\n    photo "a.jpg" "End" { ${marks} }\n    bore: 38 mm\n}\n`;

describe('completion', () => {
    completes('a mark in the block', within('<|>'), ['mark'], ['note', 'photo', 'bore']);
    completes('a mark after a mark', within('mark ring "x": 5 %, 5 %  ma<|>'), ['mark'], ['bore']);
    completes('the shapes', within('mark <|>'), ['arrow', 'ring', 'box', 'label']);
    completes('the shape being typed', within('mark ri<|>'), ['arrow', 'ring', 'box', 'label']);
    completes('its words', within('mark ring <|>'), ['"…"']);
    completes('its place', within('mark ring "x": <|>'), ['50 %, 50 %'], ['bore']);
    completes('the sign after a figure', within('mark ring "x": 50 <|>'), ['%'], ['mm', 'bore']);
    completes('a block after the caption', 'hose H1 {\n    photo "a.jpg" "End" <|>\n}\n', ['{ mark … }']);
    inEveryGuise('nothing of marks where no photograph stands before', 'hose H1 {\n    bore: 38 mm <|>\n}\n', async text => expect((await completionOf(text)).labels).not.toContain('{ mark … }'));
    inEveryGuise('what is taken reads', within('mark <|>'), async text => expect(taken(await completionOf(text), 'ring')).toContain('{ mark ring }'));
});

describe('hover', () => {
    hovers('a shape', within('mark ri<|>ng "x": 5 %, 5 %'), 'ring', 'A ring around a place');
    hovers('a shape without words', within('mark arr<|>ow: 5 %, 5 %'), 'arrow', 'An arrow to a place');
});

describe('format', () => {
    test.each([
        ['one line when short', 'hose H1 {\nphoto   "a.jpg"  "End" {mark ring"x":5 %,5 %}\n}\n', 'hose H1 {\n    photo "a.jpg" "End" { mark ring "x": 5 %, 5 % }\n}\n'],
        ['several marks on a line', 'hose H1 { photo "a.jpg" {mark ring :5 %, 5 %  mark arrow "y" : 1 %,2 %} }\n', 'hose H1 { photo "a.jpg" { mark ring: 5 %, 5 %  mark arrow "y": 1 %, 2 % } }\n'],
        ['marks on lines of their own', 'hose H1 {\n  photo "a.jpg" "End" {\n  mark ring "x": 5 %, 5 %\n      mark box: 1 %, 2 %, 3 %, 4 %\n  }\n  bore: 38 mm\n}\n',
            'hose H1 {\n    photo "a.jpg" "End" {\n        mark ring "x": 5 %, 5 %\n        mark box: 1 %, 2 %, 3 %, 4 %\n    }\n    bore: 38 mm\n}\n'],
        ['half-typed', 'hose H1 {\n  photo "a.jpg" {\n  mark\n  mark ring\n  mark ring "x":\n  }\n}\n', 'hose H1 {\n    photo "a.jpg" {\n        mark\n        mark ring\n        mark ring "x":\n    }\n}\n'],
    ])('%s', (_, messy, neat) => {
        for (const [text, expected] of [[messy, neat], [neat, neat], [messy.replaceAll('\n', '\r\n'), neat.replaceAll('\n', '\r\n')]] as const) {
            expect(formatText(text)).toBe(expected);
        }
    });
});

/** Tokens of a text with their kinds, in order. */
async function colored(text: string): Promise<string[]> {
    const { services, document } = await open(text);
    const provider = services.lsp.SemanticTokenProvider;
    const { data = [] } = await provider?.semanticHighlight(document, { textDocument: { uri: '' } }) ?? {};
    const names = Object.keys(provider?.tokenTypes ?? {});
    const tokens: string[] = [];
    let [line, character] = [0, 0];
    for (let i = 0; i < data.length; i += 5) {
        const [lines = 0, characters = 0, length = 0, type = 0] = data.slice(i, i + 4);
        character = lines > 0 ? characters : character + characters;
        line += lines;
        tokens.push(`${document.textDocument.getText({ start: { line, character }, end: { line, character: character + length } })} ${names[type] ?? ''}`);
    }
    return tokens;
}

inEveryGuise('a shape is colored as a word of choice, with or without words after it', within('mark ring "x": 5 %, 5 %  mark arrow: 5 %, 5 %'), async text => {
    const tokens = await colored(text);
    expect(tokens).toContain('ring enumMember');
    expect(tokens).toContain('arrow enumMember');
    expect(tokens).toContain('bore property');
});

inEveryGuise('marks leave the outline as it is', within('mark ring "x": 5 %, 5 %'), async text => {
    const { services, document } = await open(text);
    const symbols = await services.lsp.DocumentSymbolProvider?.getSymbols(document, { textDocument: { uri: '' } }) ?? [];
    expect(symbols.map(({ name, children }) => [name, children?.length ?? 0])).toEqual([['H1', 0]]);
});
