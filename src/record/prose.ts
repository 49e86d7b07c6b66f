/** Texts as written, decoded: quotes and escapes off, references in braces found with their positions. */
import type { Prose, ProseRef, Span } from './model.js';

const reference = /\\[{}"\\nt]|\{([^{}\r\n]*)\}/g;
const referencePath = /^\s*([\p{L}_][\p{L}\p{N}_-]*)(?:\.([\p{L}_][\p{L}\p{N}_-]*))?\s*$/u;

/** Length of the opening quote of a text token. */
export function quoteLength(token: string): number {
    return token.startsWith('"""') && token.length >= 6 ? 3 : token.startsWith('"') ? 1 : 0;
}

/** The token without its quotes; a missing closing quote is allowed. */
function inside(token: string): string {
    const quote = quoteLength(token);
    const closed = quote === 3 ? token.endsWith('"""') : token.length > 1 && token.endsWith('"') && !endsEscaped(token);
    return token.slice(quote, closed ? -quote || undefined : undefined);
}

function endsEscaped(token: string): boolean {
    let slashes = 0;
    for (let i = token.length - 2; i >= 0 && token.charAt(i) === '\\'; i--) {
        slashes++;
    }
    return slashes % 2 === 1;
}

function unescape(escape: string): string {
    const sign = escape.charAt(1);
    return sign === 'n' ? '\n' : sign === 't' ? '\t' : sign;
}

/** Plain text of a token, braces kept as written. */
export function plainText(token: string): string {
    return dedent(inside(token)).replace(/\\([{}"\\nt])/g, unescape);
}

/** Common indentation of a text over several lines is layout, not content. */
function dedent(text: string): string {
    if (!text.includes('\n')) {
        return text;
    }
    const lines = text.replaceAll('\r\n', '\n').split('\n');
    const depths = lines.slice(1).filter(line => line.trim() !== '').map(line => /^[ \t]*/.exec(line)?.[0].length ?? 0);
    const depth = depths.length > 0 ? Math.min(...depths) : 0;
    return [lines[0], ...lines.slice(1).map(line => line.slice(depth))].join('\n').trim();
}

/** Decodes a text token. `malformed` receives braces that hold no name. */
export function parseProse(token: string, start: number, uri: string, malformed?: (span: Span, inner: string) => void): Prose {
    const body = inside(token);
    if (!body.includes('{') && !body.includes('\\') && !body.includes('\n')) {
        return { text: body, segments: body === '' ? [] : [body], raw: token, span: { uri, start, end: start + token.length } };
    }
    const offset = start + quoteLength(token);
    const segments: (string | ProseRef)[] = [];
    let pending = '';
    let last = 0;
    for (const match of body.matchAll(reference)) {
        pending += body.slice(last, match.index);
        last = match.index + match[0].length;
        if (match[1] === undefined) {
            pending += unescape(match[0]);
            continue;
        }
        const span = { uri, start: offset + match.index + 1, end: offset + last - 1 };
        const path = referencePath.exec(match[1]);
        if (!path?.[1]) {
            malformed?.(span, match[1]);
            pending += match[0];
            continue;
        }
        if (pending !== '') {
            segments.push(pending);
            pending = '';
        }
        segments.push(path[2] === undefined ? { component: path[1], span } : { component: path[1], property: path[2], span });
    }
    pending += body.slice(last);
    if (pending !== '') {
        segments.push(pending);
    }
    return { text: plainText(token), segments: body.includes('\n') ? dedentSegments(segments) : segments, raw: token, span: { uri, start, end: start + token.length } };
}

function dedentSegments(segments: (string | ProseRef)[]): (string | ProseRef)[] {
    const depths = segments.filter(s => typeof s === 'string').flatMap(s => [...s.matchAll(/\n([ \t]*)(?=[^\s])/g)].map(m => m[1]?.length ?? 0));
    const depth = depths.length > 0 ? Math.min(...depths) : 0;
    const indent = new RegExp(`\\r?\\n[ \\t]{0,${depth}}`, 'g');
    return segments.map((segment, index) => {
        if (typeof segment !== 'string') {
            return segment;
        }
        let text = segment.replace(indent, '\n');
        if (index === 0) {
            text = text.trimStart();
        }
        return index === segments.length - 1 ? text.trimEnd() : text;
    });
}
