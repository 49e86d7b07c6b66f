import fc from 'fast-check';
import { EmptyFileSystem, isCompositeCstNode, isLeafCstNode, type AstNode, type CstNode } from 'langium';
import { describe, expect, it } from 'vitest';
import type { SurveyFile } from '../../src/language/generated/ast.js';
import { changeBetween, reparse } from '../../src/language/incremental.js';
import { createGarboardServices } from '../../src/language/services.js';

const { language } = createGarboardServices(EmptyFileSystem);
const parse = (text: string) => language.parser.LangiumParser.parse<SurveyFile>(text);

/** Everything of a tree that can be told apart: nodes, values, and where every token stands. */
function describeTree(root: AstNode): unknown {
    const ast = (value: unknown): unknown => {
        if (Array.isArray(value)) {
            return value.map(ast);
        }
        if (value !== null && typeof value === 'object' && '$type' in value) {
            const node = value as AstNode;
            return Object.fromEntries([
                ...Object.entries(node).filter(([key]) => !key.startsWith('$')).map(([key, v]) => [key, ast(v)] as const),
                ['$type', node.$type], ['$at', node.$cstNode && [node.$cstNode.offset, node.$cstNode.end, node.$cstNode.range]],
                ['$in', node.$container?.$type], ['$index', node.$containerIndex], ['$property', node.$containerProperty],
            ]);
        }
        return value;
    };
    const leaves: unknown[] = [];
    const visit = (node: CstNode) => {
        if (isCompositeCstNode(node)) {
            node.content.forEach(visit);
        } else if (isLeafCstNode(node)) {
            leaves.push([node.tokenType.name, node.offset, node.end, node.range, node.text, node.astNode.$type]);
        }
    };
    if (root.$cstNode) {
        visit(root.$cstNode);
    }
    return { ast: ast(root), leaves };
}

const survey = `use "house"
// before
system skin "Openings" { // after the brace
    through-hull TH1 "Intake °C ½ 😀" { size: 1 in  metal: bronze } valve SV1 { size: 1 in }
    hose H1 {
        bore: 25 mm // a comment
        length: 2 ft 3 in
        photo "a.jpg" "End" { mark arrow "Cut": 20 %, 30 %, 45 %, 52 %  mark ring: 5 %, 6 % }
    }
    run R1 "Intake": TH1 -> SV1 -> { clamps: 2 } H1
    finding F1 "Old hose" on H1 {
        seen: "The hose {H1.bore} is old."
        because: """It may
            fail."""
    }
}
hose H2 { bore: 3 in } /* end */
finding F2 "Other" on H2 { seen: "…" }
`;

describe('reparse', () => {
    it('finds the stretch that changed', () => {
        expect(changeBetween('aaa', 'aaaa')).toEqual({ start: 3, oldEnd: 3, newEnd: 4 });
        expect(changeBetween('abcd', 'abXd')).toEqual({ start: 2, oldEnd: 3, newEnd: 3 });
        expect(changeBetween('same', 'same')).toEqual({ start: 4, oldEnd: 4, newEnd: 4 });
    });

    it('takes the short way for an edit inside a component', () => {
        const after = survey.replace('25 mm', '38 mm');
        expect(reparse(parse(survey), after, language.parser.LangiumParser, language.parser.Lexer)).toBeDefined();
    });

    it('takes the short way for an edit among the marks of a photograph', () => {
        for (const after of [survey.replace('45 %', '46 %'), survey.replace('"Cut"', '"Cut end"'), survey.replace('mark ring: 5 %, 6 %', 'mark'), survey.replace('  mark ring: 5 %, 6 % }', ' }')]) {
            const short = reparse(parse(survey), after, language.parser.LangiumParser, language.parser.Lexer);
            expect(short && describeTree(short.value)).toEqual(describeTree(parse(after).value));
        }
    });

    it('parses it all where a statement’s head or end is touched', () => {
        for (const after of [survey.replace('H1 {', 'H9 {'), survey.replace('3 in }', '3 in'), survey.replace('system skin', 'system deck')]) {
            expect(reparse(parse(survey), after, language.parser.LangiumParser, language.parser.Lexer)).toBeUndefined();
        }
    });

    for (const [name, base] of [['LF', survey], ['CRLF', survey.replaceAll('\n', '\r\n')]] as const) {
        it(`gives the tree of a whole parse after random edits (${name})`, () => {
            let shortWays = 0;
            fc.assert(fc.property(
                fc.array(fc.record({
                    at: fc.nat(base.length), remove: fc.nat(6),
                    insert: fc.oneof(fc.constantFrom('', ' ', '\n', 'x', '1 in', '  length: 3 mm', '{', '}', '"', '// c\n', '\n\n', 'photo "a" "b"', 'mark ', ' ring', ': ', ' %', ','), fc.string({ maxLength: 4 })),
                }), { minLength: 1, maxLength: 6 }),
                edits => {
                    let text = base;
                    let result = parse(text);
                    for (const { at, remove, insert } of edits) {
                        const after = text.slice(0, at) + insert + text.slice(at + remove);
                        const short = reparse(result, after, language.parser.LangiumParser, language.parser.Lexer);
                        if (short) {
                            shortWays++;
                            expect(describeTree(short.value)).toEqual(describeTree(parse(after).value));
                        }
                        result = short ?? parse(after);
                        text = after;
                    }
                },
            ), { numRuns: 400 });
            expect(shortWays).toBeGreaterThan(50);
        });
    }
});
