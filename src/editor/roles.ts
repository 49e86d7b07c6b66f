/**
 * What each token of a file is: a kind, an id being declared, an id in use, a property, a word of choice, prose. One
 * pass over the tokens with a small memory of the statement being read; the syntax tree is not used, so a half-typed
 * line costs nothing but itself. Completion reads the tokens before the cursor and asks what is due; colours, names
 * and references read all of them. What a word *means* is for resolve.ts: here no vocabulary is known.
 */
import type { IToken } from 'chevrotain';
import type { LangiumDocument, Lexer } from 'langium';

export type RoleName =
    | 'keyword' | 'sign' | 'kind' | 'component' | 'system' | 'run' | 'finding' | 'reading' | 'comparable' | 'material' | 'standard' | 'word-list'
    | 'word' | 'phrase' | 'person' | 'property' | 'type' | 'choice' | 'value' | 'run-end' | 'check' | 'figure' | 'text' | 'title' | 'prose' | 'photo'
    | 'use' | 'survey-kind' | 'lies' | 'clause' | 'argument' | 'half-typed' | 'stray';

/** A block being read: its properties are those of the kind `owner`. */
export interface Frame {
    readonly parent?: Frame;
    readonly statement?: Statement;
    readonly holds: 'elements' | 'members' | 'words' | 'arguments';
    /** The kind whose properties the block takes: `valve`, `finding`, `joint`; empty where it takes none. */
    readonly owner: string;
    readonly recorded: Set<string>;
    readonly answers: string[];
    readonly token?: IToken;
    /** The property whose value the arguments are part of, and the phrase they are for. */
    readonly property?: string;
    readonly phrase?: string;
}

/** A statement being read, from its first word to the end of its block. */
export interface Statement {
    /** The keyword, or `component`. */
    readonly word: string;
    readonly first: IToken;
    /** Kind of a component. */
    readonly kind?: string;
    id?: string;
    readonly targets: string[];
    readonly chain: string[];
    check?: string;
}

export interface Role {
    readonly token: IToken;
    readonly name: RoleName;
    readonly declares: boolean;
    readonly frame: Frame;
    readonly statement?: Statement;
    /** The property whose value this is. */
    readonly property?: string;
    /** For a use in a kind declaration: the type the choices belong to. */
    readonly type?: string;
}

/** What may come next. */
export type Due =
    | 'element' | 'member' | 'id' | 'head' | 'parent' | 'target' | 'targets' | 'chain' | 'arrow' | 'check' | 'reason' | 'survey-number' | 'survey-kind'
    | 'standard' | 'use' | 'value' | 'after-word' | 'after-figure' | 'after-text' | 'phrase' | 'after-phrase' | 'after-value' | 'prose' | 'photo'
    | 'caption' | 'marks' | 'mark' | 'takes' | 'colon' | 'type' | 'choice' | 'after-choice' | 'attended' | 'lies' | 'place' | 'what' | 'label' | 'amount' | 'adjusted' | 'words' | 'meaning';

const elementKeywords = new Set([
    'use', 'survey', 'vessel', 'system', 'valuation', 'kind', 'material', 'standard', 'words', 'phrase', 'person', 'firm', 'yardsticks', 'coverage', 'outline', 'wording', 'run', 'contact', 'finding',
    'accept', 'reading', 'unseen', 'absent',
]);
const runEnds = new Set(['open', 'capped', 'blanked']);
/** What is still due on the next line; everything else ends with its line as far as completion is concerned. */
const goesOn = new Set<Due>(['target', 'chain', 'parent', 'element', 'member', 'words']);

const declared: Readonly<Record<string, RoleName>> = {
    component: 'component', system: 'system', run: 'run', finding: 'finding', reading: 'reading', comparable: 'comparable', kind: 'kind', material: 'material',
    words: 'word-list', phrase: 'phrase', person: 'person', coverage: 'word', outline: 'word',
};

const firstDue: Readonly<Record<string, Due>> = {
    use: 'use', survey: 'survey-number', vessel: 'head', valuation: 'head', firm: 'head', yardsticks: 'head', wording: 'head', standard: 'standard', contact: 'target', accept: 'check', unseen: 'what', absent: 'what',
};

export class Reader {
    frame: Frame = { holds: 'elements', owner: '', recorded: new Set(), answers: [] };
    statement: Statement | undefined;
    due: Due = 'element';
    property: string | undefined;
    type: string | undefined;
    last: IToken | undefined;

    /** What is due at a place on a line: most of what a line leaves open is not looked for on the next one. */
    dueOn(line: number): Due {
        if (!this.last || (this.last.endLine ?? 1) >= line || goesOn.has(this.due)) {
            return this.due;
        }
        return this.frame.holds === 'elements' ? 'element' : this.frame.holds === 'words' ? 'words' : 'member';
    }

    read(token: IToken, next: IToken | undefined): Role {
        const role = this.frame.holds === 'elements' ? this.element(token, next) : this.frame.holds === 'words' ? this.word(token)
            : this.frame.holds === 'arguments' ? this.value(token) ?? this.stray(token) : this.member(token);
        this.last = token;
        return role;
    }

    private role(token: IToken, name: RoleName, declares = false, more: Partial<Role> = {}): Role {
        return { token, name, declares, frame: this.frame, ...(this.statement ? { statement: this.statement } : {}), ...more };
    }

    private stray(token: IToken): Role {
        return this.role(token, isWord(token) ? 'stray' : token.tokenType.name === 'TEXT' ? 'text' : token.tokenType.name === 'FIGURE' ? 'figure' : isSign(token) ? 'sign' : 'keyword');
    }

    private begin(word: string, first: IToken, due: Due, kind?: string): void {
        this.statement = { word, first, targets: [], chain: [], ...(kind === undefined ? {} : { kind }) };
        this.due = due;
        this.property = undefined;
    }

    private open(token: IToken, holds: Frame['holds'], owner: string): void {
        this.frame = {
            parent: this.frame, ...(this.statement ? { statement: this.statement } : {}), holds, owner, recorded: new Set(), answers: [], token,
            ...(holds === 'arguments' && this.property !== undefined ? { property: this.property } : {}),
            ...(holds === 'arguments' && this.last ? { phrase: this.last.image } : {}),
        };
        this.due = holds === 'elements' ? 'element' : holds === 'words' ? 'words' : 'member';
        this.property = undefined;
    }

    private close(): void {
        const closed = this.frame;
        if (!closed.parent) {
            return;
        }
        this.frame = closed.parent;
        this.property = undefined;
        if (closed.holds === 'arguments') {
            this.due = 'after-phrase';
            this.property = closed.property;
        } else if (closed.owner === 'photo') {
            this.statement = closed.statement;
            this.due = 'member';
        } else if (closed.owner === 'joint') {
            this.statement = closed.statement;
            this.due = 'chain';
        } else if (closed.statement?.word === 'run') {
            this.statement = closed.statement;
            this.due = 'head';
        } else {
            this.statement = this.frame.statement;
            this.due = this.frame.holds === 'elements' ? 'element' : 'member';
        }
    }

    /** Opens the block of the statement being read. */
    private openBlock(token: IToken): void {
        const statement = this.statement;
        const word = statement?.word ?? '';
        if (this.due === 'caption' || this.due === 'marks') {
            this.open(token, 'members', 'photo');
        } else if (this.due === 'chain' && word === 'run') {
            this.open(token, 'members', 'joint');
        } else if (word === 'system') {
            this.open(token, 'elements', '');
        } else if (word === 'words') {
            this.open(token, 'words', '');
        } else {
            this.open(token, 'members', word === 'component' ? statement?.kind ?? '' : word === 'accept' ? '' : word);
        }
    }

    private element(token: IToken, next: IToken | undefined): Role {
        const name = token.tokenType.name;
        if (name === '{') {
            const role = this.role(token, 'sign');
            this.openBlock(token);
            return role;
        }
        if (name === '}') {
            const role = this.role(token, 'sign');
            this.close();
            return role;
        }
        if (elementKeywords.has(name)) {
            this.begin(name, token, firstDue[name] ?? 'id');
            return this.role(token, 'keyword');
        }
        if (name === 'MISSING') {
            this.due = 'head';
            return this.role(token, 'sign');
        }
        const startsLine = !this.last || this.last.endLine !== token.startLine;
        const opensComponent = name === 'ID' && next?.tokenType.name === 'ID' && next.startLine === token.startLine && this.due !== 'survey-kind';
        if (name === 'ID' && (this.due === 'element' || (startsLine && (opensComponent || !goesOn.has(this.due))))) {
            this.begin('component', token, 'id', token.image);
            return this.role(token, 'kind');
        }
        return this.headToken(token, name);
    }

    /** A token between the first word of a statement and its block. */
    private headToken(token: IToken, name: string): Role {
        const statement = this.statement;
        const word = statement?.word ?? '';
        switch (name) {
            case 'is': this.due = 'parent'; return this.role(token, 'keyword');
            case 'on': this.due = 'target'; return this.role(token, 'keyword');
            case 'because': this.due = 'reason'; return this.role(token, 'keyword');
            case '->': this.due = 'chain'; return this.role(token, 'sign');
            case ',': this.due = this.due === 'targets' ? 'target' : this.due; return this.role(token, 'sign');
            case ':': this.due = word === 'run' ? 'chain' : word === 'unseen' || word === 'absent' ? 'reason' : this.due; return this.role(token, 'sign');
            case 'TEXT': return this.headText(token, word);
            case 'ID': case 'PROPERTY': return this.headWord(token, statement);
            default: return this.stray(token);
        }
    }

    private headText(token: IToken, word: string): Role {
        switch (this.due) {
            case 'use': this.due = 'head'; return this.role(token, 'use');
            case 'survey-number': this.due = 'survey-kind'; return this.role(token, 'title');
            case 'standard': this.due = 'head'; return this.role(token, 'standard', true);
            case 'reason': this.due = 'after-value'; return this.role(token, 'prose');
            case 'what': this.due = 'head'; return this.role(token, 'text');
            default:
                this.due = word === 'survey' ? 'survey-kind' : 'head';
                return this.role(token, word === 'phrase' ? 'prose' : 'title', word === 'phrase');
        }
    }

    private headWord(token: IToken, statement: Statement | undefined): Role {
        switch (this.due) {
            case 'id': {
                this.due = 'head';
                if (statement) {
                    statement.id = token.image;
                }
                return this.role(token, declared[statement?.word ?? ''] ?? 'stray', true);
            }
            case 'parent': this.due = 'head'; return this.role(token, 'kind');
            case 'target': this.due = 'targets'; statement?.targets.push(token.image); return this.role(token, 'component');
            case 'chain':
                this.due = 'arrow';
                statement?.chain.push(token.image);
                return this.role(token, runEnds.has(token.image) ? 'run-end' : 'component');
            case 'check':
                this.due = 'head';
                if (statement) {
                    statement.check = token.image;
                }
                return this.role(token, 'check');
            case 'survey-number': case 'survey-kind': this.due = 'head'; return this.role(token, 'survey-kind');
            case 'what': return this.role(token, 'word');
            default:
                if (token.tokenType.name === 'PROPERTY') {
                    return this.role(token, 'stray');
                }
                this.begin('component', token, 'id', token.image);
                return this.role(token, 'kind');
        }
    }

    private word(token: IToken): Role {
        switch (token.tokenType.name) {
            case 'ID': case 'PROPERTY': this.due = 'meaning'; return this.role(token, 'word', true);
            case 'TEXT': this.due = 'words'; return this.role(token, 'title');
            case '}': { const role = this.role(token, 'sign'); this.close(); return role; }
            default: return this.stray(token);
        }
    }

    private member(token: IToken): Role {
        const name = token.tokenType.name;
        if (name === 'ID' && this.due === 'what') {
            return this.role(token, 'word');
        }
        switch (name) {
            case '}': { const role = this.role(token, 'sign'); this.close(); return role; }
            case '{': { const role = this.role(token, 'sign'); this.openBlock(token); return role; }
            case 'PROPERTY':
                if (this.due === 'mark' && this.frame.owner === 'photo') {
                    return this.markShape(token);
                }
                return this.propertyName(token);
            case 'note': this.due = 'prose'; break;
            case 'photo': this.due = 'photo'; break;
            case 'takes': this.due = 'takes'; break;
            case 'attended': this.due = 'attended'; break;
            case 'row': this.due = 'label'; break;
            case 'adjust': this.due = 'what'; break;
            case 'mark': this.due = 'mark'; break;
            case 'unseen': case 'absent': this.due = 'what'; break;
            case 'comparable': this.begin(name, token, 'id'); return this.role(token, 'keyword');
            default: return this.statementToken(token) ?? this.value(token) ?? this.halfTyped(token);
        }
        this.property = undefined;
        return this.role(token, 'keyword');
    }

    private propertyName(token: IToken): Role {
        if (this.due === 'id') {
            return this.memberId(token);
        }
        const declares = this.due === 'takes';
        this.property = token.image;
        this.due = declares ? 'type' : 'colon';
        this.type = undefined;
        if (!declares) {
            this.frame.recorded.add(token.image);
        }
        return this.role(token, 'property', declares);
    }

    private markShape(token: IToken): Role {
        this.due = 'label';
        return this.role(token, 'choice', false, { type: 'photo-mark' });
    }

    private memberId(token: IToken): Role {
        this.due = 'head';
        if (this.statement) {
            this.statement.id = token.image;
        }
        return this.role(token, declared[this.statement?.word ?? ''] ?? 'stray', true);
    }

    /** Tokens of the statements that stand in blocks: attendances, photos, rows, `takes`. */
    private statementToken(token: IToken): Role | undefined {
        const name = token.tokenType.name;
        const { due } = this;
        if (name === 'TEXT') {
            switch (due) {
                case 'prose': case 'reason': this.due = 'member'; return this.role(token, 'prose');
                case 'photo': this.due = 'caption'; return this.role(token, 'photo');
                case 'caption': this.due = 'marks'; return this.role(token, 'prose');
                case 'what': case 'label': case 'mark': this.due = 'adjusted'; return this.role(token, 'text');
                case 'place': case 'lies': this.due = 'member'; return this.role(token, 'text');
                case 'type': case 'choice': case 'after-choice': this.due = 'member'; return this.role(token, 'title');
                case 'head': return this.role(token, 'title');
                default: return undefined;
            }
        }
        if (name === 'ID') {
            switch (due) {
                case 'id': return this.memberId(token);
                case 'attended': case 'lies': this.due = 'place'; return this.role(token, 'lies');
                case 'mark': return this.markShape(token);
                case 'takes': this.property = token.image; this.due = 'type'; return this.role(token, 'property', true);
                case 'type': this.due = 'choice'; this.type = token.image; return this.role(token, 'type');
                case 'choice': this.due = 'after-choice'; return this.role(token, 'choice', false, { ...(this.type ? { type: this.type } : {}), ...(this.property ? { property: this.property } : {}) });
                default: return undefined;
            }
        }
        if (name === 'FIGURE') {
            switch (due) {
                case 'attended': this.due = 'lies'; return this.role(token, 'figure');
                case 'choice': case 'after-choice': this.due = 'after-choice'; return this.role(token, 'figure');
                case 'amount': this.due = 'member'; return this.role(token, 'figure');
                default: return undefined;
            }
        }
        if (name === ':' && (due === 'adjusted' || (due === 'label' && this.frame.owner === 'photo'))) {
            this.due = this.frame.owner === 'reading' || this.frame.owner === 'photo' ? 'value' : this.frame.owner === 'comparable' ? 'amount' : 'reason';
            return this.role(token, 'sign');
        }
        if (name === ',' && due === 'after-choice') {
            this.due = 'choice';
            return this.role(token, 'sign');
        }
        return undefined;
    }

    /** A token of a property's value. */
    private value(token: IToken): Role | undefined {
        const of: Partial<Role> = this.property === undefined ? {} : { property: this.property };
        const to = (due: Due, name: RoleName): Role => {
            const role = this.role(token, name, false, of);
            this.due = due;
            return role;
        };
        const { due } = this;
        switch (token.tokenType.name) {
            case 'PROPERTY': // Only among the arguments of a phrase.
                this.property = token.image;
                this.due = 'colon';
                return this.role(token, 'argument');
            case ':':
                if (due === 'colon' || due === 'type') {
                    this.due = due === 'type' ? 'type' : 'value';
                    return this.role(token, 'sign');
                }
                return undefined;
            case ',':
                return due === 'member' || due === 'value' ? undefined : to('value', 'sign');
            case 'ID':
                if (due === 'value') {
                    if (this.property === 'answers' && this.frame.owner === 'finding') {
                        this.frame.answers.push(token.image);
                    }
                    return to('after-word', 'value');
                }
                return due === 'phrase' ? to('after-phrase', 'phrase') : undefined;
            case 'FIGURE':
                return due === 'value' ? to('after-figure', 'figure') : due === 'after-word' ? to('after-value', 'figure') : undefined;
            case 'TEXT':
                return due === 'value' ? to('after-text', 'text') : due === 'after-text' ? to('after-value', 'clause') : undefined;
            case 'phrase':
                return due === 'value' ? to('phrase', 'keyword') : undefined;
            case '(': {
                const role = this.role(token, 'sign');
                this.open(token, 'arguments', '');
                return role;
            }
            case ')': case '}': {
                const role = this.role(token, 'sign');
                if (this.frame.holds === 'arguments') {
                    this.close();
                    if (token.tokenType.name === '}') {
                        this.close();
                    }
                }
                return role;
            }
            default: return undefined;
        }
    }

    private halfTyped(token: IToken): Role {
        if (token.tokenType.name === 'ID') {
            this.due = 'member';
            this.property = undefined;
            return this.role(token, 'half-typed');
        }
        return this.stray(token);
    }
}

const isWord = (token: IToken): boolean => token.tokenType.name === 'ID' || token.tokenType.name === 'PROPERTY';
const isSign = (token: IToken): boolean => /^[^\p{L}]*$/u.test(token.image);

/** A file's tokens with their roles. Tokens supplied by the layout's repair take part but are not listed. */
export interface Reading {
    readonly roles: readonly Role[];
    readonly comments: readonly IToken[];
}

/** By syntax tree, for as long as the tree lives; a text that has moved on ahead of its tree is read afresh. */
const readings = new WeakMap<object, { readonly version: number; readonly reading: Reading }>();

export function readTokens(tokens: readonly IToken[], reader = new Reader()): Role[] {
    const roles: Role[] = [];
    for (let i = 0; i < tokens.length; i++) {
        const token = tokens[i];
        if (token) {
            const role = reader.read(token, tokens[i + 1]);
            if (!token.isInsertedInRecovery) {
                roles.push(role);
            }
        }
    }
    return roles;
}

/** The reading of a document, kept with its syntax tree. */
export function readingOf(document: LangiumDocument, lexer: Lexer): Reading {
    const { version } = document.textDocument;
    const kept = readings.get(document.parseResult.value);
    if (kept?.version === version) {
        return kept.reading;
    }
    const reading = readText(document.textDocument.getText(), lexer);
    readings.set(document.parseResult.value, { version, reading });
    return reading;
}

export function readText(text: string, lexer: Lexer): Reading {
    const result = lexer.tokenize(text);
    return { roles: readTokens(result.tokens), comments: result.hidden };
}

export const startOf = (token: IToken): number => token.startOffset;
export const endOf = (token: IToken): number => (token.endOffset ?? token.startOffset) + 1;

/** Index of the first role that ends at or after an offset. */
export function indexAt(roles: readonly Role[], offset: number): number {
    let low = 0;
    let high = roles.length;
    while (low < high) {
        const middle = (low + high) >> 1;
        const role = roles[middle];
        if (role && endOf(role.token) < offset) {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    return low;
}
