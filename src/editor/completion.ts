/**
 * What may be written at the cursor. The tokens before it say what is due (roles.ts); the record and the vocabulary
 * say which words fit; completion-values.ts writes them out. Text in quotes is a place of its own: paths, standards,
 * and references in braces.
 */
import type { LangiumDocument, Lexer } from 'langium';
import type { CompletionProvider } from 'langium/lsp';
import type { CompletionList, Position } from 'vscode-languageserver-types';
import { isSurveyFile } from '../language/generated/ast.js';
import { Offers, type Where } from './completion-offers.js';
import { offerInText, type TextPlace } from './completion-texts.js';
import { offerArguments, offerElements, offerMembers, offerUnits, offerValues } from './completion-values.js';
import { offerCheck, offerChain, offerKinds, offerNewId, offerTargets, offerTypes } from './completion-names.js';
import { viewOf, type View } from './resolve.js';
import { endOf, indexAt, readTokens, Reader, startOf, type Due } from './roles.js';
import type { GarboardServices } from './services.js';

const wordBefore = /[\p{L}\p{N}\p{M}_-]*$/u;

/** Start of the word being typed: letters, digits and hyphens before the offset, from its first letter on. */
export function wordStart(text: string, offset: number): number {
    const from = Math.max(0, offset - 120);
    const word = wordBefore.exec(text.slice(from, offset))?.[0] ?? '';
    const letter = /[\p{L}_]/u.exec(word);
    return letter ? offset - word.length + letter.index : offset;
}

/** Reads the tokens before an offset; the statement at the top of the file that the offset is in suffices. */
export function readBefore({ document, text }: View, offset: number, lexer: Lexer): { reader: Reader; due: Due } {
    const root = document.parseResult.value;
    let anchor = 0;
    if (isSurveyFile(root)) {
        for (const { $cstNode } of root.elements) {
            if (!$cstNode || $cstNode.offset > offset) {
                break;
            }
            anchor = $cstNode.offset;
        }
    }
    const before = text.slice(anchor, offset);
    const { tokens } = lexer.tokenize(before);
    let count = tokens.length;
    // Blocks still open at the cursor have been closed by the layout's repair.
    while (tokens[count - 1]?.isInsertedInRecovery && tokens[count - 1]?.tokenType.name === '}') {
        count--;
    }
    const reader = new Reader();
    readTokens(tokens.slice(0, count), reader);
    let line = 1;
    for (let at = before.indexOf('\n'); at !== -1; at = before.indexOf('\n', at + 1)) {
        line++;
    }
    const due = reader.dueOn(line);
    // Without a name after it `phrase` reads as a word of choice.
    return { reader, due: due === 'after-word' && reader.last?.image === 'phrase' ? 'phrase' : due };
}

/** The text in quotes that an offset is in. */
function textPlace({ reading, text }: View, offset: number): TextPlace | undefined {
    const { roles } = reading;
    const at = indexAt(roles, offset);
    for (const role of [roles[at], roles[at - 1]]) {
        if (role?.token.tokenType.name !== 'TEXT' || startOf(role.token) >= offset) {
            continue;
        }
        const { image } = role.token;
        const isClosed = image.startsWith('"""') && image.length >= 6 ? image.endsWith('"""') : /^"(\\.|[^"\\])*"$/s.test(image);
        const isInside = isClosed ? offset < endOf(role.token) && (!image.startsWith('"""') || image === '""' || offset < endOf(role.token) - 2)
            : offset <= endOf(role.token) || text.slice(endOf(role.token), offset).trim() === '' && !text.slice(endOf(role.token), offset).includes('\n');
        if (isInside) {
            return { role, isClosed };
        }
    }
    return undefined;
}

function inComment({ reading }: View, offset: number): boolean {
    const { comments } = reading;
    let low = 0;
    let high = comments.length;
    while (low < high) {
        const middle = (low + high) >> 1;
        const comment = comments[middle];
        if (comment && endOf(comment) < offset) {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    const comment = comments[low];
    return comment !== undefined && startOf(comment) < offset && (offset < endOf(comment) || (offset === endOf(comment) && comment.tokenType.name === 'LINE_COMMENT'));
}

/** After these a blank alone opens the list; elsewhere it would only be in the way. */
const afterBlank: ReadonlySet<Due> = new Set(['value', 'target', 'chain', 'check', 'phrase', 'parent', 'type', 'lies', 'survey-kind', 'after-figure', 'attended', 'photo', 'use', 'mark']);

export class SurveyCompletionProvider implements CompletionProvider {
    readonly completionOptions = { triggerCharacters: ['{', '.', '"', '/', '>', ' '] };
    private hasSnippets = true;

    constructor(private readonly services: GarboardServices) {
        services.shared.lsp.LanguageServer.onInitialize(params => {
            this.hasSnippets = params.capabilities.textDocument?.completion?.completionItem?.snippetSupport ?? false;
        });
    }

    async getCompletion(
        document: LangiumDocument, { position, context }: { readonly position: Position; readonly context?: { readonly triggerCharacter?: string } }
    ): Promise<CompletionList> {
        const view = viewOf(this.services, document);
        const offset = document.textDocument.offsetAt(position);
        if (inComment(view, offset)) {
            return { isIncomplete: false, items: [] };
        }
        const inText = textPlace(view, offset);
        if (inText) {
            const offers = new Offers(view, offset, offset, this.hasSnippets);
            await offerInText(inText, offset, view, offers, this.services);
            return offers.list();
        }
        const start = wordStart(view.text, offset);
        const { reader, due } = readBefore(view, start, this.services.parser.Lexer);
        const offers = new Offers(view, start, offset, this.hasSnippets);
        const { triggerCharacter } = context ?? {};
        const isUncalledFor = triggerCharacter === ' ' ? !afterBlank.has(due) : triggerCharacter === '.' || triggerCharacter === '/' || triggerCharacter === '"'
            || (triggerCharacter === '>' && due !== 'chain');
        if (!isUncalledFor) {
            await this.offer({ view, reader, due }, offers, triggerCharacter === ' ');
        }
        return offers.list();
    }

    private async offer(where: Where, offers: Offers, isBlankOnly: boolean): Promise<void> {
        const { reader, due } = where;
        const word = reader.statement?.word ?? '';
        const isBlock = reader.frame.holds === 'members';
        switch (due) {
            case 'element': return offerElements(where, offers);
            case 'id': return offerNewId(where, offers);
            case 'head': case 'targets':
                return this.offerHead(word, due, offers);
            case 'parent': return offerKinds(where, offers);
            case 'target': return offerTargets(where, offers);
            case 'chain': return offerChain(where, offers);
            case 'arrow': return offers.add('->', { rank: 0, detail: 'the next component of the run', insert: '-> ', again: true });
            case 'check': return offerCheck(where, offers);
            case 'what':
                if (reader.last && ['unseen', 'absent'].includes(reader.last.image)) {
                    offers.words(where.view.vocabulary.wordLists.get('part')?.words ?? new Map<string, string>(), 1);
                }
                return offers.add('"…"', { rank: 0, snippet: '"$1"', filter: '"' });
            case 'reason': case 'prose': case 'place': case 'label': case 'survey-number':
                return offers.add('"…"', { rank: 0, snippet: '"$1"', filter: '"' });
            case 'survey-kind': return offers.words(where.view.vocabulary.wordLists.get('survey-kind')?.words ?? new Map<string, string>());
            case 'lies': return offers.words(new Map([['ashore', 'out of the water, on stands or in slings'], ['afloat', 'in the water']]));
            case 'attended': return offers.dates();
            case 'use': case 'photo': return offerInText({ isClosed: true, wanted: due }, 0, where.view, offers, this.services);
            case 'value': return offerValues(where, offers, this.services);
            case 'type': return offerTypes(where, offers);
            case 'mark': return offers.words(where.view.vocabulary.wordLists.get('photo-mark')?.words ?? new Map<string, string>());
            case 'choice': return reader.type === 'component' ? offerKinds(where, offers) : undefined;
            case 'phrase': return offers.phrases('', reader.frame.statement?.targets ?? []);
            case 'after-figure':
                if (reader.last && !/[\p{L}%°]/u.test(reader.last.image)) {
                    offerUnits(where, offers);
                }
                return isBlock && !isBlankOnly ? offerMembers(where, offers) : undefined;
            case 'member': case 'after-word': case 'after-text': case 'after-value': case 'after-phrase': case 'after-choice': case 'caption': case 'marks': case 'adjusted':
                return isBlock ? offerMembers(where, offers) : reader.frame.holds === 'arguments' ? offerArguments(where, offers) : undefined;
            default: return undefined;
        }
    }

    private offerHead(word: string, due: Due, offers: Offers): void {
        const keyword = (text: string, detail: string) => offers.add(text, { rank: 0, detail, insert: `${text} `, again: true });
        if (word === 'finding' && due === 'head' || word === 'accept' && due === 'head' || word === 'reading' && due === 'head') {
            keyword('on', 'the components it is about');
        }
        if (word === 'accept') {
            offers.add('because', { rank: 1, detail: 'the reason', snippet: 'because "$1"' });
        }
        if (word === 'kind') {
            keyword('is', 'the kind it inherits from');
        }
    }
}
