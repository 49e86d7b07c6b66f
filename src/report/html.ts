/**
 * HTML that escapes by default. A value in an `html` template is text unless it is itself `Html`; there is no way to
 * bring text of a survey into a document as markup. Attribute values stand in double quotes.
 */

/** Finished markup. Made only by this module. */
export class Html {
    readonly #markup: string;

    constructor(markup: string) {
        this.#markup = markup;
    }

    toString(): string {
        return this.#markup;
    }
}

export type HtmlValue = Html | string | number | false | null | undefined | readonly HtmlValue[];

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;', '`': '&#96;' };

/**
 * Signs that have no place in print: control characters, signs that reverse or embed the direction of writing and so
 * can make a line read as what it is not, noncharacters, and halves of surrogate pairs.
 */
const unprintable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufdd0-\ufdef\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** The text without signs that cannot or should not be printed. */
export function printable(text: string): string {
    return text.replace(unprintable, '').replace(/\r\n?|[\u2028\u2029]/g, '\n');
}

export function escapeHtml(text: string): string {
    return printable(text).replace(/[&<>"'`]/g, sign => entities[sign] ?? '');
}

function markupOf(value: HtmlValue): string {
    if (value instanceof Html) {
        return value.toString();
    }
    if (typeof value === 'object' && value !== null) {
        // One after another: an engine of our day then only notes what follows what, where `join` would copy every picture at each level of nesting.
        return value.reduce<string>((markup, each) => markup + markupOf(each), '');
    }
    return value === null || value === undefined || value === false ? '' : escapeHtml(String(value));
}

/** A template whose values are escaped unless they are `Html`; lists are joined, absent values leave nothing. */
export function html(parts: TemplateStringsArray, ...values: readonly HtmlValue[]): Html {
    let markup = parts[0] ?? '';
    values.forEach((value, index) => {
        markup += markupOf(value) + (parts[index + 1] ?? '');
    });
    return new Html(markup);
}

/** Markup written in this program, such as its style sheet. Never for text that comes from a survey. */
export function trusted(markup: string): Html {
    return new Html(markup);
}

export const nothing = new Html('');

/** Values with a separator between them. */
export function joined(values: readonly HtmlValue[], separator: HtmlValue): Html {
    return html`${values.map((value, index) => index === 0 ? value : [separator, value])}`;
}

/** Text over several lines as markup: a blank line parts paragraphs; a single line break is where the writer's editor ended a line. */
export function paragraphs(pieces: readonly (string | Html)[]): Html {
    const markup = pieces.map(piece => piece instanceof Html ? piece.toString() : escapeHtml(piece)).join('').trim();
    if (markup === '') {
        return nothing;
    }
    return new Html(markup.split(/\n\s*\n/).map(p => `<p>${p.trim().replace(/\s*\n\s*/g, ' ')}</p>`).join('\n'));
}

/** A part of an `id` that is the same for the same name, unlike for unlike names, and needs no escaping anywhere. */
export function idPart(name: string): string {
    return name.replace(/[^A-Za-z0-9-]/gu, sign => `_${sign.codePointAt(0)?.toString(16) ?? ''}_`);
}

/** A string for the style sheet; nothing in it can end the string or the style element. */
export function cssString(text: string): string {
    return `"${printable(text).replace(/\s+/g, ' ').trim().replace(/[^A-Za-z0-9 ,.:;()/-]/gu, sign => `\\${sign.codePointAt(0)?.toString(16) ?? ''} `)}"`;
}

/** A picture held in the document itself; anything else is refused. */
export function isImageData(uri: string): boolean {
    return /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/]+=*$/.test(uri);
}

/** A firm's mark held in the document: as a picture, or an SVG drawing, which may stand in an `img` alone, where it can neither run nor fetch anything. */
export function isMarkData(uri: string): boolean {
    return isImageData(uri) || /^data:image\/svg\+xml;base64,[A-Za-z0-9+/]+=*$/.test(uri);
}
