/**
 * The lexer: a hand scanner in place of a table of regular expressions, because figures (`1-1/2 in`,
 * `5 ft 9 in`, `250 USD..400 USD`) are scanned by src/quantities, because a name before a colon is a property even
 * when it is also a keyword, and because it is called on every keystroke. Token types come from the grammar.
 *
 * It never fails: a character it does not know becomes an error and is passed over. Missing braces and names are
 * supplied afterwards by `repairLayout`.
 */
import type { IToken, TokenType } from 'chevrotain';
import { DefaultLexer, type LexerResult, type LangiumCoreServices } from 'langium';
import { scanFigure } from '../quantities/index.js';
import { repairLayout } from './repair-layout.js';

/** A fault of spelling found before parsing; `mend` is text that puts it right when inserted or replaced. */
export interface LayoutError {
    readonly offset: number;
    readonly length: number;
    readonly line: number;
    readonly column: number;
    readonly message: string;
    readonly code: string;
    readonly mend?: { readonly title: string; readonly offset: number; readonly length: number; readonly text: string };
}

const NEWLINE = 10;
const RETURN = 13;
const QUOTE = 34;
const SLASH = 47;
const STAR = 42;
const COLON = 58;
const BACKSLASH = 92;

const letter = /[\p{L}_]/u;
const letterOrDigit = /[\p{L}\p{N}_]/u;

function isLetterAt(text: string, offset: number): boolean {
    const code = text.charCodeAt(offset);
    if (code < 128) {
        return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code === 95;
    }
    return letter.test(String.fromCodePoint(text.codePointAt(offset) ?? 0));
}

function isWordCharAt(text: string, offset: number): boolean {
    const code = text.charCodeAt(offset);
    if (code < 128) {
        return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code === 95 || (code >= 48 && code <= 57);
    }
    if (Number.isNaN(code)) {
        return false;
    }
    return letterOrDigit.test(String.fromCodePoint(text.codePointAt(offset) ?? 0)) || /\p{M}/u.test(text.charAt(offset));
}

const width = (text: string, offset: number) => ((text.codePointAt(offset) ?? 0) > 0xffff ? 2 : 1);

/** End of the name that starts at `offset`: letters, digits and single hyphens inside. */
export function scanName(text: string, offset: number): number {
    let end = offset + width(text, offset);
    for (;;) {
        if (isWordCharAt(text, end)) {
            end += width(text, end);
        } else if (text.charCodeAt(end) === 45 && isWordCharAt(text, end + 1)) {
            end += 1;
        } else {
            return end;
        }
    }
}

/** Whether a colon follows, with nothing but blanks of the same line between. */
function colonFollows(text: string, offset: number): boolean {
    let at = offset;
    let code = text.charCodeAt(at);
    while (code === 32 || code === 9 || code === 0xa0 || code === 0x202f) {
        code = text.charCodeAt(++at);
    }
    return code === COLON;
}

export class GarboardLexer extends DefaultLexer {
    private readonly keywords = new Map<string, TokenType>();

    constructor(services: LangiumCoreServices) {
        super(services);
        for (const [name, type] of Object.entries(this.tokenTypes)) {
            this.keywords.set(name, type);
        }
    }

    private type(name: string): TokenType {
        const type = this.tokenTypes[name];
        if (!type) {
            throw new Error(`The grammar has no token ${name}.`);
        }
        return type;
    }

    override tokenize(text: string): LexerResult {
        const tokens: IToken[] = [];
        const hidden: IToken[] = [];
        const errors: LayoutError[] = [];
        const idType = this.type('ID');
        const propertyType = this.type('PROPERTY');
        const textType = this.type('TEXT');
        const figureType = this.type('FIGURE');
        const lineComment = this.type('LINE_COMMENT');
        const blockComment = this.type('BLOCK_COMMENT');
        const terminals = new Set(['ID', 'PROPERTY', 'TEXT', 'FIGURE', 'MISSING', 'WS', 'LINE_COMMENT', 'BLOCK_COMMENT']);

        let offset = 0;
        let line = 1;
        let lineStart = 0;

        const push = (list: IToken[], type: TokenType, end: number) => {
            const startLine = line;
            const startColumn = offset - lineStart + 1;
            if (type === textType || type === blockComment) {
                for (let i = text.indexOf('\n', offset); i !== -1 && i < end; i = text.indexOf('\n', i + 1)) {
                    line++;
                    lineStart = i + 1;
                }
            }
            list.push({
                image: text.substring(offset, end), startOffset: offset, endOffset: end - 1, startLine, endLine: line,
                startColumn, endColumn: end - lineStart, tokenTypeIdx: type.tokenTypeIdx ?? 0, tokenType: type,
            });
            offset = end;
        };

        while (offset < text.length) {
            const code = text.charCodeAt(offset);
            if (code === NEWLINE) {
                offset++;
                line++;
                lineStart = offset;
            } else if (code === 32 || code === 9 || code === RETURN || code === 0xa0 || code === 0xfeff) {
                offset++;
            } else if (code === SLASH && text.charCodeAt(offset + 1) === SLASH) {
                let end = text.indexOf('\n', offset);
                end = end === -1 ? text.length : end;
                if (text.charCodeAt(end - 1) === RETURN) {
                    end--;
                }
                push(hidden, lineComment, end);
            } else if (code === SLASH && text.charCodeAt(offset + 1) === STAR) {
                const close = text.indexOf('*/', offset + 2);
                if (close === -1) {
                    errors.push({
                        offset, length: 2, line, column: offset - lineStart + 1, code: 'comment-not-closed',
                        message: 'This comment is not closed; write */ where it ends.',
                    });
                    offset += 2;
                } else {
                    push(hidden, blockComment, close + 2);
                }
            } else if (code === QUOTE) {
                push(tokens, textType, this.scanText(text, offset, line, offset - lineStart + 1, errors));
            } else {
                const figure = this.mayStartFigure(text, offset) ? scanFigure(text, offset) : 0;
                if (figure > 0) {
                    push(tokens, figureType, offset + figure);
                } else if (isLetterAt(text, offset)) {
                    const end = scanName(text, offset);
                    const keyword = this.keywords.get(text.substring(offset, end));
                    const type = colonFollows(text, end) ? propertyType
                        : keyword && !terminals.has(keyword.name) && !this.isValueWord(tokens, line, keyword, text, end) ? keyword : idType;
                    push(tokens, type, end);
                } else if (code === 45 && text.charCodeAt(offset + 1) === 62) {
                    push(tokens, this.type('->'), offset + 2);
                } else {
                    const punctuation = this.keywords.get(text.charAt(offset));
                    if (punctuation) {
                        push(tokens, punctuation, offset + 1);
                    } else {
                        const length = width(text, offset);
                        const shown = text.substr(offset, length);
                        errors.push({
                            offset, length, line, column: offset - lineStart + 1, code: 'character-unknown',
                            message: `${shown} has no meaning here; text belongs in quotes, as in "${shown}".`,
                        });
                        offset += length;
                    }
                }
            }
        }
        const repaired = repairLayout(tokens, text, this.tokenTypes, errors);
        return { tokens: repaired, hidden, errors, report: { diagnostics: [] } } as LexerResult;
    }

    /**
     * Whether a keyword stands where a value does, as `material` in `takes metal: material` or `on` in
     * `switch: on`: then it is an ordinary word. `phrase` before a name stays a keyword.
     */
    private isValueWord(tokens: readonly IToken[], line: number, keyword: TokenType, text: string, end: number): boolean {
        const previous = tokens.at(-1);
        if (!previous || previous.endLine !== line) {
            return false;
        }
        const before = previous.tokenType.name;
        if (before === ':' || before === ',') {
            return keyword.name !== 'phrase' || !/^[ \t]+[\p{L}_]/u.test(text.slice(end, end + 80));
        }
        // The blocks of the language are kinds too: kind survey, kind finding.
        return before === 'kind' || (before === 'ID' && previous.image === 'word' && tokens.at(-2)?.tokenType.name === ':');
    }

    private mayStartFigure(text: string, offset: number): boolean {
        const code = text.charCodeAt(offset);
        return (code >= 48 && code <= 57) || code === 45 || code === 46 || code > 127;
    }

    /** End of the text that starts at a quote. A text without its closing quote ends with its line. */
    private scanText(text: string, offset: number, line: number, column: number, errors: LayoutError[]): number {
        if (text.startsWith('"""', offset)) {
            const close = text.indexOf('"""', offset + 3);
            if (close !== -1) {
                return close + 3;
            }
            errors.push({
                offset, length: 3, line, column, code: 'text-not-closed',
                message: 'This text opens with """ and is not closed; write """ where it ends.',
            });
            return this.endOfLine(text, offset);
        }
        for (let at = offset + 1; at < text.length; at++) {
            const code = text.charCodeAt(at);
            if (code === BACKSLASH) {
                at++;
                if (text.charCodeAt(at) === RETURN || text.charCodeAt(at) === NEWLINE) {
                    break;
                }
            } else if (code === QUOTE) {
                return at + 1;
            } else if (code === NEWLINE) {
                break;
            }
        }
        const end = this.endOfLine(text, offset);
        errors.push({
            offset, length: 1, line, column, code: 'text-not-closed',
            message: 'This text has no closing quote on its line; add ", or use """ for text over several lines. Write inches as in.',
            mend: { title: 'Add the closing quote', offset: end, length: 0, text: '"' },
        });
        return end;
    }

    private endOfLine(text: string, offset: number): number {
        let end = text.indexOf('\n', offset);
        end = end === -1 ? text.length : end;
        while (end > offset + 1 && /[\s]/.test(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }
}
