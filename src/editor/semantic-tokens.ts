/**
 * Colours by meaning: kinds, ids, properties, figures with their units, words, materials, and references inside prose.
 * Linear in the tokens of the file; the text is not parsed again where another feature has read it already.
 */
import type { LangiumDocument } from 'langium';
import { AllSemanticTokenModifiers, AllSemanticTokenTypes, SemanticTokensBuilder, type SemanticTokenProvider } from 'langium/lsp';
import type { SemanticTokens, SemanticTokensDelta, SemanticTokensDeltaParams, SemanticTokensOptions, SemanticTokensRangeParams } from 'vscode-languageserver';
import type { IToken } from 'chevrotain';
import type { Vocabulary } from '../record/model.js';
import { proseRefs, typeOf, viewOf, type View } from './resolve.js';
import { endOf, indexAt, startOf, type Role } from './roles.js';
import type { GarboardServices } from './services.js';

type ColourName = 'keyword' | 'type' | 'variable' | 'property' | 'number' | 'enumMember' | 'class' | 'string' | 'comment' | 'function';

/** A stretch of one line with its colour. */
export interface Colour {
    readonly start: number;
    readonly end: number;
    readonly type: ColourName;
    readonly declares: boolean;
}

/** Colours between two offsets, in order of the text, none across a line's end. */
export function coloursOf(view: View, from = 0, to = Number.MAX_SAFE_INTEGER): Colour[] {
    const colours: Colour[] = [];
    const { roles, comments } = view.reading;
    const add = (start: number, end: number, type: ColourName, declares = false) => {
        if (end > start) {
            colours.push({ start, end, type, declares });
        }
    };
    let comment = 0;
    const commentsBefore = (offset: number) => {
        for (let token = comments[comment]; token && startOf(token) < offset; token = comments[++comment]) {
            if (endOf(token) >= from && startOf(token) <= to) {
                byLine(token.image, startOf(token), (start, end) => add(start, end, 'comment'));
            }
        }
    };
    for (let i = from === 0 ? 0 : indexAt(roles, from); i < roles.length; i++) {
        const role = roles[i];
        if (!role || startOf(role.token) > to) {
            break;
        }
        commentsBefore(startOf(role.token));
        colourRole(role, view, add);
    }
    commentsBefore(to);
    return colours;
}

function colourRole(role: Role, view: View, add: (start: number, end: number, type: ColourName, declares?: boolean) => void): void {
    const { token, declares } = role;
    const start = startOf(token);
    const end = endOf(token);
    switch (role.name) {
        case 'keyword': case 'run-end': case 'lies': return add(start, end, 'keyword');
        case 'kind': case 'type': case 'word-list': return add(start, end, 'type', declares);
        case 'component': case 'run': case 'system': case 'finding': case 'reading': case 'comparable': case 'person': return add(start, end, 'variable', declares);
        case 'property': case 'argument': case 'half-typed': return add(start, end, 'property', declares);
        case 'material': return add(start, end, 'class', declares);
        case 'phrase': case 'check': return add(start, end, 'function', declares);
        case 'word': case 'survey-kind': return add(start, end, 'enumMember', declares);
        case 'choice': return add(start, end, role.type === 'component' ? 'type' : 'enumMember');
        case 'value': return add(start, end, valueColour(role, view.vocabulary));
        case 'figure': return colourFigure(token, add);
        case 'text': case 'title': case 'prose': case 'photo': case 'use': case 'clause': case 'standard': return colourText(role, view, add);
        default: return;
    }
}

function valueColour(role: Role, vocabulary: Vocabulary): ColourName {
    switch (typeOf(role, vocabulary)?.type) {
        case 'material': return 'class';
        case 'component': case 'person': return 'variable';
        case 'checks': return 'function';
        default: return 'enumMember';
    }
}

const vulgar = '½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘';
const number = new RegExp(`[-−]?(?:(?:(?<![.\\d])\\.)?\\d|[${vulgar}])(?:[-\\d,/:${vulgar}]|\\.(?=\\d)|[ \\t\\u00a0]+(?=\\d+/\\d|[${vulgar}]))*`, 'u').source;
const figurePart = new RegExp(`(${number})|(?:[\\p{L}°%′″℃]|/(?=\\p{L}))[^\\s.+±]*`, 'gu');

/** Numbers as numbers, the units between them as keywords. */
function colourFigure(token: IToken, add: (start: number, end: number, type: ColourName) => void): void {
    const start = startOf(token);
    for (const part of token.image.matchAll(figurePart)) {
        add(start + part.index, start + part.index + part[0].length, part[1] === undefined ? 'keyword' : 'number');
    }
}

function colourText(role: Role, view: View, add: (start: number, end: number, type: ColourName) => void): void {
    const { token } = role;
    const start = startOf(token);
    const type = role.name === 'text' ? typeOf(role, view.vocabulary)?.type : undefined;
    const refs = role.name === 'prose' || type === 'text' ? proseRefs(role, view.uri) : [];
    let from = 0;
    const plain = (to: number) => byLine(token.image.slice(from, to), start + from, (a, b) => add(a, b, 'string'));
    for (const ref of refs) {
        const at = ref.span.start - start;
        const inner = token.image.slice(at, ref.span.end - start);
        const idAt = at + inner.length - inner.trimStart().length;
        plain(idAt);
        const idEnd = idAt + ref.component.length;
        add(start + idAt, start + idEnd, 'variable');
        if (ref.property !== undefined) {
            add(start + idEnd + 1, start + idEnd + 1 + ref.property.length, 'property');
            from = idEnd + 1 + ref.property.length;
        } else {
            from = idEnd;
        }
    }
    plain(token.image.length);
}

/** Cuts a text at the ends of its lines. */
function byLine(text: string, offset: number, add: (start: number, end: number) => void): void {
    let from = 0;
    while (from < text.length) {
        const feed = text.indexOf('\n', from);
        const end = feed === -1 ? text.length : feed;
        add(offset + from, offset + (text.charAt(end - 1) === '\r' ? end - 1 : end));
        from = end + 1;
    }
}

export class SurveySemanticTokenProvider implements SemanticTokenProvider {
    readonly tokenTypes = AllSemanticTokenTypes;
    readonly tokenModifiers = AllSemanticTokenModifiers;
    /** What was sent last, by document, so that an edit sends only what it changed. */
    private readonly builders = new Map<string, SemanticTokensBuilder>();

    constructor(private readonly services: GarboardServices) {
        services.shared.workspace.TextDocuments.onDidClose(event => this.builders.delete(event.document.uri));
    }

    get semanticTokensOptions(): SemanticTokensOptions {
        return { legend: { tokenTypes: Object.keys(this.tokenTypes), tokenModifiers: Object.keys(this.tokenModifiers) }, full: { delta: true }, range: true };
    }

    semanticHighlight(document: LangiumDocument): SemanticTokens {
        const builder = new SemanticTokensBuilder();
        this.builders.set(document.uri.toString(), builder);
        this.fill(builder, document);
        return builder.build();
    }

    semanticHighlightRange(document: LangiumDocument, { range }: SemanticTokensRangeParams): SemanticTokens {
        const builder = new SemanticTokensBuilder();
        this.fill(builder, document, document.textDocument.offsetAt(range.start), document.textDocument.offsetAt(range.end));
        return builder.build();
    }

    semanticHighlightDelta(document: LangiumDocument, { previousResultId }: SemanticTokensDeltaParams): SemanticTokens | SemanticTokensDelta {
        const builder = this.builders.get(document.uri.toString());
        if (!builder) {
            return this.semanticHighlight(document);
        }
        builder.previousResult(previousResultId);
        this.fill(builder, document);
        return builder.buildEdits();
    }

    private fill(builder: SemanticTokensBuilder, document: LangiumDocument, from?: number, to?: number): void {
        const view = viewOf(this.services, document);
        const declaration = this.tokenModifiers['declaration'] ?? 0;
        const { text } = view;
        let line = 0;
        let lineStart = 0;
        let next = text.indexOf('\n');
        for (const colour of coloursOf(view, from, to)) {
            while (next !== -1 && next < colour.start) {
                line++;
                lineStart = next + 1;
                next = text.indexOf('\n', lineStart);
            }
            builder.push(line, colour.start - lineStart, colour.end - colour.start, this.tokenTypes[colour.type] ?? 0, colour.declares ? declaration : 0);
        }
    }
}
