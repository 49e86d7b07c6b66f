import fc from 'fast-check';
import { EmptyFileSystem } from 'langium';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { describe, expect, test } from 'vitest';
import { catalogueFiles } from '../../src/catalogue/bundled.js';
import { formatText } from '../../src/editor/formatter.js';
import { createGarboardServices } from '../../src/language/services.js';
import { guises, open } from './editor.js';
import { sample } from './sample.js';

const lexer = createGarboardServices(EmptyFileSystem).language.parser.Lexer;

function images(text: string): { tokens: string[]; comments: string[] } {
    const { tokens, hidden } = lexer.tokenize(text);
    return { tokens: tokens.filter(t => !t.isInsertedInRecovery).map(t => `${t.tokenType.name} ${t.image}`), comments: hidden.map(t => t.image.trimEnd()) };
}

/** What must hold of any text at all. */
function holds(text: string): void {
    const once = formatText(text);
    expect(formatText(once)).toBe(once);
    expect(images(once)).toEqual(images(text));
    expect(once.replace(/\s/g, '')).toBe(text.replace(/\ufeff/g, once.startsWith('\ufeff') ? '$&' : '').replace(/\s/g, ''));
}

const formats = (name: string, messy: string, neat: string) => test(name, () => {
    expect(formatText(messy)).toBe(neat);
    expect(formatText(neat)).toBe(neat);
    if (messy.includes('\n')) {
        expect(formatText(messy.replaceAll('\n', '\r\n'))).toBe(neat.replaceAll('\n', '\r\n'));
    }
});

describe('layout', () => {
    formats('depth of braces', 'system skin "S" {\nhose H1 {\nbore: 1 in\n}\n  }\n', 'system skin "S" {\n    hose H1 {\n        bore: 1 in\n    }\n}\n');
    formats('one-line braces', 'hose H1 {bore:38 mm   length:2 m}', 'hose H1 { bore: 38 mm  length: 2 m }\n');
    formats('an empty block', 'hose H1 {  }\n', 'hose H1 {}\n');
    formats('a brace on a line of its own', 'hose H1\n{\nbore: 1 in\n}\n', 'hose H1 {\n    bore: 1 in\n}\n');
    formats('blank lines', '\n\nhose H1\n\n\n\nhose H2   \n\n\n', 'hose H1\n\nhose H2\n');
    formats('arrows and joints', 'run R1 "x" :A->B ->{clamps:2}C', 'run R1 "x": A -> B -> { clamps: 2 } C\n');
    formats('a run over several lines', 'run R1: A ->\nB\n-> C\nhose H1\n', 'run R1: A ->\n    B\n    -> C\nhose H1\n');
    formats('lists', 'finding F1 "x" on A,B ,C {\nanswers: a,b\n}\n', 'finding F1 "x" on A, B, C {\n    answers: a, b\n}\n');
    formats('a phrase with parameters', 'finding F1 "x" { recommend: phrase p ( a: 1 mm b: "x" ) }\n', 'finding F1 "x" { recommend: phrase p(a: 1 mm b: "x") }\n');
    formats('figures as written', 'hose H1 { bore: 1 1/2 in  length: 5 ft  9 in  x: 5 mm +/-  0.5 mm }\n', 'hose H1 { bore: 1 1/2 in  length: 5 ft  9 in  x: 5 mm +/-  0.5 mm }\n');
    formats('texts as written', 'hose H1 {\nnote """\n  as\n it is\n"""\n}\n', 'hose H1 {\n    note """\n  as\n it is\n"""\n}\n');
    formats('comments', '// a  \nhose H1 { // b\n/* c */ bore: 1 in // d\n// e\n}\n', '// a\nhose H1 {  // b\n    /* c */ bore: 1 in  // d\n    // e\n}\n');
    formats('rows', 'reading M1 {row "a":1 %,2 %\nrow "b" :3 %}\n', 'reading M1 { row "a": 1 %, 2 %\n    row "b": 3 % }\n');
    formats('declarations', 'kind k "K"is fitting{\ntakes a:length 1 mm..2 mm "x"\n}\n', 'kind k "K" is fitting {\n    takes a: length 1 mm..2 mm "x"\n}\n');
    formats('a value on the next line', 'hose H1 {\nnote\n"x"\nplace:\n"y"\n}\n', 'hose H1 {\n    note\n    "x"\n    place:\n        "y"\n}\n');
});

describe('alignment', () => {
    formats('kept to the longest name where one line is aligned', 'survey "1" {\n    client:  "a"\n    surveyor: B\n    attended 2026-10-06 ashore "x"\n    photos: "p"\n}\n', 'survey "1" {\n    client:   "a"\n    surveyor: B\n    attended 2026-10-06 ashore "x"\n    photos:   "p"\n}\n');
    formats('not brought in where none is', 'survey "1" {\n    client: "a"\n    surveyor: B\n}\n', 'survey "1" {\n    client: "a"\n    surveyor: B\n}\n');
    formats('not across a blank line', 'survey "1" {\n    client:   "a"\n\n    surveyor: B\n}\n', 'survey "1" {\n    client: "a"\n\n    surveyor: B\n}\n');
    formats('not for several facts on a line', 'hose H1 {\n    bore:   1 in   length:  2 m\n    size: 1 in\n}\n', 'hose H1 {\n    bore: 1 in  length: 2 m\n    size: 1 in\n}\n');
    formats('of rows and of declarations too', 'reading M1 {\n    row "a":  1 %\n    row "bcd": 2 %\n    scale: "x"\n}\n', 'reading M1 {\n    row "a":   1 %\n    row "bcd": 2 %\n    scale: "x"\n}\n');
    formats('of a phrase with arguments', 'finding F1 "x" {\n    seen:      "x"\n    recommend: phrase p(a: 1 mm b: "x")\n}\n', 'finding F1 "x" {\n    seen:      "x"\n    recommend: phrase p(a: 1 mm b: "x")\n}\n');
    formats('without a name far longer than the others', 'finding F1 "x" {\n    seen:      "x"\n    reason-for-urgency: "y"\n    recommend: "z"\n}\n', 'finding F1 "x" {\n    seen:      "x"\n    reason-for-urgency: "y"\n    recommend: "z"\n}\n');
    formats('with a name a little longer', 'survey "1" {\n    client:   "x"\n    surveyor: B\n    requested-for: "y"\n}\n', 'survey "1" {\n    client:        "x"\n    surveyor:      B\n    requested-for: "y"\n}\n');
    formats('block by block', 'a A1 {\n    b:  1\n    ccc: 2\n}\na A2 {\n    b: 1\n    ccc: 2\n}\n', 'a A1 {\n    b:   1\n    ccc: 2\n}\na A2 {\n    b: 1\n    ccc: 2\n}\n');
});

describe('half-typed text', () => {
    formats('a block not closed', 'hose H1 {\nbore: 1 in\nvalve SV1 { size: 1 in }\n', 'hose H1 {\n    bore: 1 in\nvalve SV1 { size: 1 in }\n');
    formats('characters without a meaning', 'hose H1 { @  # }\n', 'hose H1 { @ # }\n');
    formats('a text not closed', 'hose H1 {\nplace:  "abc\nbore:1 in\n}\n', 'hose H1 {\n    place: "abc\n    bore:  1 in\n}\n');
    formats('a brace too many', 'hose H1 {}\n}\n', 'hose H1 {}\n}\n');
    formats('nothing', '', '');
    formats('only blanks', '  \n\n', '');
    formats('blanks that do not break', 'hose\u00a0H1\u00a0{ bore:\u00a038\u00a0mm }\n', 'hose H1 { bore: 38\u00a0mm }\n');
    test('a mark of byte order stays', () => expect(formatText('\ufeffhose  H1\n')).toBe('\ufeffhose H1\n'));
});

describe('of any text', () => {
    test.each(Object.entries(catalogueFiles))('catalogue: %s', (_, text) => holds(text));
    test.each(guises)('the sample, %s', (_, change) => holds(change(sample)));
    test('every prefix of the sample', () => {
        for (let end = 0; end <= sample.length; end++) {
            holds(sample.slice(0, end));
        }
    });
    const piece = fc.constantFrom('hose', 'H1', 'valve SV1', 'run', 'R1', 'finding', 'on', 'use', 'note', 'photo', 'phrase p', 'takes', 'kind', 'system', ' is ', 'because', 'row', 'bore:', 'a :', '{', '}', '{', '}', '(', ')',
        ',', ':', '->', '-', '>', '"', '"x"', '"""', '"""a\n  b"""', '"a {H1.b}"', '38', '38 mm', '1-1/2 in', '5 ..', '-5', '½', '°C', '2026-10-06', '// c', '/* d */', '/*', '*/', '/', '\\', '@', 'é', '😀', ' ', '  ', '\n', '\n\n\n', '\r\n', '\t');
    test('made of pieces', () => fc.assert(fc.property(fc.array(piece, { maxLength: 30 }), fc.constantFrom('', ' '), fc.constantFrom('', '\ufeff'), (pieces, glue, first) => holds(first + pieces.join(glue))), { numRuns: Number(process.env['FORMAT_RUNS'] ?? 3000) }));
    test('lines of the sample in any order', () => fc.assert(fc.property(fc.array(fc.constantFrom(...sample.split('\n')), { maxLength: 12 }), fc.constantFrom('\n', '\r\n', '\n\n\n'), (lines, feed) => holds(lines.join(feed))), { numRuns: 1000 }));
});

describe('in the editor', () => {
    const options = { tabSize: 4, insertSpaces: true };
    test('only what differs is edited', async () => {
        const { services, document } = await open('hose  H1 { bore: 1 in }\nhose H2\n');
        const edits = await services.lsp.Formatter?.formatDocument(document, { textDocument: { uri: '' }, options }) ?? [];
        expect(edits).toEqual([{ range: { start: { line: 0, character: 4 }, end: { line: 0, character: 6 } }, newText: ' ' }]);
    });
    test('a range keeps to its lines', async () => {
        const text = 'hose  H1\nhose  H2\nhose  H3\n';
        const { services, document } = await open(text);
        const range = { start: { line: 1, character: 3 }, end: { line: 1, character: 8 } };
        const edits = await services.lsp.Formatter?.formatDocumentRange(document, { textDocument: { uri: '' }, options, range }) ?? [];
        expect(TextDocument.applyEdits(document.textDocument, edits)).toBe('hose  H1\nhose H2\nhose  H3\n');
    });
    test('a brace just typed takes its place', async () => {
        const { services, document } = await open('hose H1 {\n    bore: 1 in\n    }\n');
        const edits = await services.lsp.Formatter?.formatDocumentOnType(document, { textDocument: { uri: '' }, options, ch: '}', position: { line: 2, character: 5 } }) ?? [];
        expect(TextDocument.applyEdits(document.textDocument, edits)).toBe('hose H1 {\n    bore: 1 in\n}\n');
    });
});
