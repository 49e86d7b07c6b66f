/**
 * Finds the end of a figure in text: number, unit, range, tolerance, date, time or ratio as one token. Called by the
 * lexer at each place where a figure may begin, so it looks at single characters and never backtracks far.
 */
import { units } from './units.js';

const vulgar = '½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘';
/** Words that follow a figure but are no unit of it. */
const stops = new Set(['photo', 'note', 'because', 'on', 'at', 'and', 'with', 'ashore', 'afloat', 'to', 'phrase', 'clause', 'is', 'row', 'adjust', 'takes', 'unseen', 'absent', 'attended', 'comparable', 'mark']);

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isBlank = (code: number): boolean => code === 32 || code === 9 || code === 0xa0 || code === 0x202f;
const letter = /[\p{L}\p{M}]/u;

function isLetter(text: string, at: number): boolean {
    const code = text.charCodeAt(at);
    return code < 128 ? (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code === 95 : letter.test(text.charAt(at));
}

/** A character that may stand inside a unit word. */
function isUnitChar(text: string, at: number): boolean {
    const code = text.charCodeAt(at);
    return isLetter(text, at) || isDigit(code) || code === 0xb0 || code === 37 || (code === 47 && text.charAt(at + 1) !== '/' && text.charAt(at + 1) !== '*') || code === 0xb2 || code === 0xb3
        || code === 0x2032 || code === 0x2033 || code === 0x2103 || (code === 45 && isLetter(text, at + 1));
}

function skipBlanks(text: string, at: number): number {
    let end = at;
    while (isBlank(text.charCodeAt(end))) {
        end++;
    }
    return end;
}

/** Length of the figure that starts at an offset, 0 where none does. Never throws. */
export function scanFigure(text: string, offset: number): number {
    const before = offset > 0 ? text.charCodeAt(offset - 1) : 32;
    const sign = text.charAt(offset) === '-' || text.charAt(offset) === '−';
    if (sign && (isDigit(before) || isLetter(text, offset - 1))) {
        return 0;
    }
    let end = scanQuantity(text, offset);
    if (end === offset) {
        return 0;
    }
    // A range or a tolerance.
    const next = skipBlanks(text, end);
    if (text.startsWith('..', next)) {
        const second = skipBlanks(text, next + 2);
        const after = scanQuantity(text, second);
        end = after > second ? after : next + 2;
    } else if (text.startsWith('+/-', next) || text.charAt(next) === '±') {
        const second = skipBlanks(text, next + (text.charAt(next) === '±' ? 1 : 3));
        const after = scanQuantity(text, second);
        end = after > second ? after : second;
    } else if ((text.charAt(end) === '-' || text.charAt(end) === '–') && isDigit(text.charCodeAt(end + 1))) {
        end = scanQuantity(text, end + 1); // 10-12 mm, to be told about
    }
    return end - offset;
}

/** End of a number with its unit; the offset itself where no number stands there. */
function scanQuantity(text: string, offset: number): number {
    let end = scanNumber(text, offset);
    if (end === offset) {
        return offset;
    }
    const number = text.slice(offset, end);
    if (/^\d{4}-\d{1,2}(?:-|$)/.test(number) || /^\d{1,2}:\d{2}$/.test(number) || number.endsWith(':1')) {
        return end;
    }
    for (let part = 0; part < 2; part++) {
        const unitStart = skipBlanks(text, end);
        const unitEnd = scanUnit(text, unitStart, unitStart === end);
        if (unitEnd === unitStart) {
            return end;
        }
        const word = text.slice(unitStart, unitEnd);
        end = unitEnd;
        // Feet go on in inches and pounds in ounces: 38 ft 4 in.
        const larger = units.get(word)?.name;
        if (part > 0 || (larger !== 'ft' && larger !== 'lb')) {
            return end;
        }
        const nextNumber = skipBlanks(text, end);
        const nextEnd = isDigit(text.charCodeAt(nextNumber)) || vulgar.includes(text.charAt(nextNumber) || ' ') ? scanNumber(text, nextNumber) : nextNumber;
        if (nextEnd === nextNumber) {
            return end;
        }
        const smaller = skipBlanks(text, nextEnd);
        const smallerEnd = scanUnit(text, smaller, false);
        const name = units.get(text.slice(smaller, smallerEnd))?.name;
        if (name !== (larger === 'ft' ? 'in' : 'oz')) {
            return end;
        }
        end = nextEnd;
    }
    return end;
}

/** End of a number: decimal, fraction, mixed number, date, time, ratio, with a sign. */
function scanNumber(text: string, offset: number): number {
    let at = offset;
    if (text.charAt(at) === '-' || text.charAt(at) === '−') {
        at++;
    }
    const start = at;
    while (isDigit(text.charCodeAt(at))) {
        at++;
    }
    const digits = at - start;
    const follows = text.charAt(at);
    if (digits === 0) {
        if (follows === '.' && isDigit(text.charCodeAt(at + 1))) {
            at++;
            while (isDigit(text.charCodeAt(at))) {
                at++;
            }
            return at;
        }
        return follows !== '' && vulgar.includes(follows) ? at + 1 : offset;
    }
    if (follows !== '' && vulgar.includes(follows)) {
        return at + 1;
    }
    if (digits === 4 && follows === '-' && isDigit(text.charCodeAt(at + 1)) && isDigit(text.charCodeAt(at + 2)) && !isDigit(text.charCodeAt(at + 3)) && text.charAt(at + 3) !== '/') {
        at += 3;
        if (text.charAt(at) === '-' && isDigit(text.charCodeAt(at + 1))) {
            at++;
            while (isDigit(text.charCodeAt(at))) {
                at++;
            }
        }
        return at;
    }
    if (digits === 4 && follows === '-' && isDigit(text.charCodeAt(at + 1)) && text.charAt(at + 2) === '-' && isDigit(text.charCodeAt(at + 3))) {
        at += 3; // 2026-1-06, to be told about
        while (isDigit(text.charCodeAt(at))) {
            at++;
        }
        return at;
    }
    if (follows === ':' && isDigit(text.charCodeAt(at + 1))) {
        const first = at + 1;
        let end = first;
        while (isDigit(text.charCodeAt(end))) {
            end++;
        }
        if ((end - first === 2 && digits <= 2) || text.slice(first, end) === '1') {
            return end;
        }
    }
    if (follows === '/' && isDigit(text.charCodeAt(at + 1))) {
        at++;
        while (isDigit(text.charCodeAt(at))) {
            at++;
        }
        return at; // A further /2026 is scanned as a unit, so that 10/06/2026 is told about as one token.
    }
    // The fraction of a mixed number, after a hyphen or a blank: 1-1/2, 1 1/2.
    if (follows === '-' || isBlank(text.charCodeAt(at))) {
        const fraction = /^(?:-|[ \t\u00a0\u202f]+)(?:\d+\/\d+|[½¼¾⅓⅔⅛⅜⅝⅞⅙⅚⅕⅖⅗⅘])/.exec(text.slice(at, at + 12));
        if (fraction) {
            return at + fraction[0].length;
        }
        return at;
    }
    // Decimals. A comma between digits is taken in, so that it can be told about: 38,1 or 12,500.
    for (;;) {
        const sign = text.charAt(at);
        if ((sign === '.' || sign === ',') && isDigit(text.charCodeAt(at + 1))) {
            at++;
            while (isDigit(text.charCodeAt(at))) {
                at++;
            }
            continue;
        }
        if (sign === '.' && text.charAt(at + 1) !== '.' && !isLetter(text, at + 1)) {
            return at + 1; // 12. as some write it
        }
        break;
    }
    if (text.startsWith(':1', at) && !isDigit(text.charCodeAt(at + 2))) {
        return at + 2;
    }
    if ((text.charAt(at) === 'e' || text.charAt(at) === 'E') && /^[eE][-+]?\d+(?![\p{L}\d])/u.test(text.slice(at, at + 6))) {
        at += /^[eE][-+]?\d+/.exec(text.slice(at, at + 6))?.[0].length ?? 0;
    }
    return at;
}

/**
 * End of the unit that starts at an offset, the offset itself where none does. A known unit belongs to the figure
 * unless a colon follows; so does an unknown word, so that it can be named, unless what follows shows it to be
 * something else: the name of a property, a statement, an id before a text or a brace.
 */
function scanUnit(text: string, start: number, isAttached: boolean): number {
    let end = start;
    while (end < text.length && isUnitChar(text, end)) {
        end++;
    }
    if (end === start) {
        return start;
    }
    const word = text.slice(start, end);
    const after = skipBlanks(text, end);
    if (word === 'US' && after > end) {
        // "US gal" is the one unit of two words.
        let second = after;
        while (second < text.length && isUnitChar(text, second)) {
            second++;
        }
        const last = skipBlanks(text, second);
        if (units.has(`US ${text.slice(after, second)}`) && text.charAt(last) !== ':') {
            return second;
        }
    }
    const next = text.charAt(after);
    if (next === ':') {
        return start;
    }
    if (units.has(word) || /^[A-Z]{3}$/.test(word)) {
        return end;
    }
    if (isAttached) {
        return end;
    }
    if (stops.has(word) || next === '"' || next === '{' || text.startsWith('->', after) || !isLetter(text, start)) {
        return start;
    }
    // Two words in a row, the second not a unit: more likely the next statement than a unit.
    return /^[\p{L}]/u.test(next) && after > end ? start : end;
}
