/**
 * What every drawing of the report is made of: the frame with its text alternative, lettering that is measured and cut,
 * hatching, and legends. Marks carry their looks as presentation attributes, so that a drawing stands alone in a document
 * without the page's style sheet; color only repeats what shape and words say.
 */
import { html, joined, nothing, printable, type Html } from '../html.js';

export const ink = '#17212b';
export const quiet = '#45525c';
export const pale = '#dfe9ec';
export const alarm = '#8a2b10';

/** Width that prints at nearly full size on A4 and Letter, in units of a drawing. */
export const pageWidth = 672;
/** Height that stays on one printed page together with its caption. */
export const pageHeight = 800;

const family = '\'Source Sans 3\', \'Liberation Sans\', Arial, sans-serif';
/** Size of lettering unless said otherwise. */
export const letterSize = 11;

/** How drawings lie in the page; the looks of their marks are in the drawings themselves. */
export const drawingCss = `
.drawing { overflow-x: auto; max-width: 100%; }
.drawing svg { display: block; max-width: 100%; height: auto; }
.drawing-figure { margin: .8rem 0 1.4rem; }
.drawing-figure > figcaption { padding: 0 0 .4rem; break-after: avoid; }
.drawing-row { display: flex; flex-wrap: wrap; gap: .6rem 1.2rem; align-items: flex-start; }
.drawing-row > .drawing { flex: 0 1 auto; break-inside: avoid; }
figure.drawing-figure.several { break-inside: auto; }
.run { margin: 1.2rem 0 1.8rem; padding-top: .6rem; border-top: 1px solid var(--rule); }
.run > figcaption { padding: 0 0 .5rem; font-size: 1rem; break-after: avoid; }
ol.marks { margin: .5rem 0; }
ol.marks li span { font-family: var(--sans); font-size: .92em; font-weight: 700; }
.overview tbody :is(th, td) { font-size: .86rem; }
.overview thead th { font-size: .76rem; }
.overview td.total, .overview th.total { white-space: nowrap; min-width: 2.4em; border-left: 1px solid var(--rule); padding-left: .6rem; }
.overview tr.total > * { border-top: 1.5px solid var(--ink); }
.overview svg { display: block; margin-bottom: .15rem; }
@media screen and (max-width: 640px) { .drawing svg { max-width: none; } .drawing svg.fits { max-width: 100%; } }
@media print { .drawing { overflow: visible; } .drawing svg, .drawing-figure { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
`;

export interface Drawing {
    /** Part of the ids of its title and description; unique in the report. */
    readonly id: string;
    readonly title: string;
    /** What the drawing shows, for those who do not see it: extremes and where they lie. */
    readonly description: string;
    /** In units of the drawing, which are CSS pixels at full size. */
    readonly width: number;
    readonly height: number;
    readonly body: Html;
}

/** A drawing with its text alternative, in a frame that scrolls where the screen is narrower than can be read. */
export function drawing({ id, title, description, width, height, body }: Drawing): Html {
    // What is hardly wider than a phone is made smaller to fit it; anything wider would become too small to read.
    const fits = width <= 440 ? ' fits' : '';
    return html`<div class="drawing" tabindex="0" role="group" aria-label="Drawing of ${title}">
<svg class="drawn${fits}" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" role="img" aria-labelledby="${id}-title ${id}-desc" font-family="${family}" font-size="${letterSize}" fill="${ink}">
<title id="${id}-title">${title}</title>
<desc id="${id}-desc">${description}</desc>
${body}
</svg>
</div>`;
}

/** Drawings under one caption. */
export function figure(caption: Html | string, drawings: readonly Html[]): Html {
    return drawings.length === 0 ? nothing : html`<figure class="drawing-figure${drawings.length > 1 ? ' several' : ''}">
<figcaption>${caption}</figcaption>
${drawings.length === 1 ? drawings : html`<div class="drawing-row">${joined(drawings, '\n')}</div>`}
</figure>
`;
}

/** The markup of a drawing as a document of its own: the `svg` element alone, with its namespace. */
export function standAlone(svg: string): string {
    const element = /<svg\b[\s\S]*<\/svg>/.exec(svg)?.[0] ?? '';
    return /^<svg\b[^>]*\sxmlns=/.test(element) ? element : element.replace(/^<svg\b/, '<svg xmlns="http://www.w3.org/2000/svg"');
}

/** What a drawing is called: the title, or where that is empty the id. */
export const called = ({ title, id }: { readonly title?: string; readonly id: string }): string => printable(title ?? '').trim() || id;

/** A coordinate, to a hundredth. */
export function n(value: number): number {
    return Number.isFinite(value) ? Math.round(value * 100) / 100 + 0 : 0;
}

/** Width of lettering, estimated a little too wide, since the reader's font is not known. */
export function textWidth(text: string, size = letterSize, isBold = false): number {
    let ems = 0;
    for (const sign of text) {
        ems += (sign.codePointAt(0) ?? 0) >= 0x1100 && !/[\u2000-\u2bff]/u.test(sign) ? 1.1
            : /[iljtfrI.,:;'’|!()[\]\s/-]/u.test(sign) ? 0.36 : /[mwMW@%…—–→]/u.test(sign) ? 0.95 : /[\p{Lu}\p{So}]/u.test(sign) ? 0.73 : 0.57;
    }
    return ems * size * (isBold ? 1.06 : 1);
}

/** The text, cut with an ellipsis where it is too wide. */
export function shortened(text: string, width: number, size = letterSize, isBold = false): string {
    const plain = text.replace(/[^\S\u00a0]+/g, ' ').trim();
    if (textWidth(plain, size, isBold) <= width) {
        return plain;
    }
    const signs = [...plain];
    let kept = signs.length;
    while (kept > 0 && textWidth(`${signs.slice(0, kept).join('')}…`, size, isBold) > width) {
        kept--;
    }
    return kept === 0 ? '…' : `${signs.slice(0, kept).join('').trimEnd()}…`;
}

/** The text in lines of a width, at most so many; what does not fit is cut with an ellipsis. */
export function wrapped(text: string, width: number, most: number, size = letterSize, isBold = false): string[] {
    const lines: string[] = [];
    // A no-break space holds a figure and its unit together.
    const words = text.replace(/[^\S\u00a0]+/g, ' ').trim().split(' ').filter(word => word !== '');
    for (const [index, word] of words.entries()) {
        const last = lines.at(-1);
        if (last !== undefined && textWidth(`${last} ${word}`, size, isBold) <= width) {
            lines[lines.length - 1] = `${last} ${word}`;
        } else if (lines.length === most) {
            lines[most - 1] = shortened(`${last ?? ''} ${words.slice(index).join(' ')}`, width, size, isBold);
            break;
        } else {
            lines.push(word);
        }
    }
    return lines.map(line => shortened(line, width, size, isBold));
}

export interface Lettering {
    readonly anchor?: 'start' | 'middle' | 'end';
    readonly size?: number;
    readonly isBold?: boolean;
    readonly isQuiet?: boolean;
    readonly fill?: string;
}

/** A line of text; `y` is its baseline. */
export function letter(x: number, y: number, text: string, { anchor = 'start', size = letterSize, isBold = false, isQuiet = false, fill }: Lettering = {}): Html {
    const color = fill ?? (isQuiet ? quiet : undefined);
    return html`<text x="${n(x)}" y="${n(y)}"${anchor === 'start' ? nothing : html` text-anchor="${anchor}"`}${size === letterSize ? nothing : html` font-size="${size}"`}${isBold ? html` font-weight="700"` : nothing}${color === undefined ? nothing : html` fill="${color}"`}>${text}</text>`;
}

export interface Stroke {
    readonly fill?: string;
    readonly stroke?: string;
    readonly width?: number;
    readonly dash?: string;
}

/** A path; without a fill it is a line. */
export function path(d: string, { fill = 'none', stroke = ink, width = 1, dash }: Stroke = {}): Html {
    return html`<path d="${d}" fill="${fill}" stroke="${stroke}"${width === 1 ? nothing : html` stroke-width="${width}"`}${dash === undefined ? nothing : html` stroke-dasharray="${dash}"`}/>`;
}

export function box(x: number, y: number, width: number, height: number, { fill = 'none', stroke = ink, width: line = 1, dash }: Stroke = {}): Html {
    return html`<rect x="${n(x)}" y="${n(y)}" width="${n(Math.max(0, width))}" height="${n(Math.max(0, height))}" fill="${fill}" stroke="${stroke}"${line === 1 ? nothing : html` stroke-width="${line}"`}${dash === undefined ? nothing : html` stroke-dasharray="${dash}"`}/>`;
}

/**
 * A hatching, from none to cross-hatched: told apart in black and white and by those who see no colors. Drawn as plain
 * lines, since patterns are lost where a drawing is turned into another format.
 */
export type Hatch = 'none' | 'sparse' | 'dense' | 'crossed';

/** Lines of a hatching inside a rectangle, as the data of a path. */
export function hatching(x: number, y: number, width: number, height: number, hatch: Hatch): string {
    if (hatch === 'none' || width <= 0 || height <= 0) {
        return '';
    }
    const step = hatch === 'sparse' ? 12 : 6;
    const rising: string[] = [];
    const falling: string[] = [];
    for (let c = step / 2; c < width + height; c += step) {
        const [x1, x2] = [Math.max(0, c - height), Math.min(c, width)];
        const [y1, y2] = [c - x1, c - x2];
        if (x2 - x1 > 0.5) {
            rising.push(`M${n(x + x1)} ${n(y + y1)}l${n(x2 - x1)} ${n(y2 - y1)}`);
            falling.push(`M${n(x + width - x1)} ${n(y + y1)}l${n(x1 - x2)} ${n(y2 - y1)}`);
        }
    }
    return rising.join('') + (hatch === 'crossed' ? falling.join('') : '');
}

/** A rectangle with its hatching. */
export function hatched(x: number, y: number, width: number, height: number, hatch: Hatch, frame: Stroke = {}): Html {
    const lines = hatching(x, y, width, height, hatch);
    return html`${box(x, y, width, height, { fill: '#fff', ...frame })}${lines === '' ? nothing : path(lines, { stroke: ink, width: 0.7 })}`;
}

/** Lettering on a white ground, so that it reads over hatching. */
export function plated(x: number, y: number, text: string, size = letterSize, isBold = false): Html {
    const width = textWidth(text, size, isBold) + 4;
    return html`<rect x="${n(x - width / 2)}" y="${n(y - size * 0.88)}" width="${n(width)}" height="${n(size * 1.14)}" fill="#fff"/>${letter(x, y, text, { anchor: 'middle', size, isBold })}`;
}

export interface LegendItem {
    /** Drawn in a box of `swatchWidth` by `swatchHeight` with its upper left corner at the place given. */
    readonly swatch: (x: number, y: number) => Html;
    readonly text: string;
}

export const swatchWidth = 22;
export const swatchHeight = 13;

/** Signs with their meaning, in as many lines as the width asks for. */
export function legend(items: readonly LegendItem[], x: number, y: number, width: number): { readonly body: Html; readonly height: number } {
    let [left, top] = [x, y];
    const drawn = items.map(({ swatch, text }) => {
        const lines = wrapped(text, width - swatchWidth - 6, 4);
        const wide = swatchWidth + 6 + Math.max(0, ...lines.map(line => textWidth(line)));
        if (left > x && left + wide > x + width) {
            [left, top] = [x, top + 18];
        }
        const at = { left, top };
        if (lines.length > 1) {
            [left, top] = [x, top + 18 + (lines.length - 1) * 13];
        } else {
            left += wide + 14;
        }
        return html`${swatch(at.left, at.top)}${lines.map((line, index) => letter(at.left + swatchWidth + 6, at.top + 10.5 + index * 13, line))}
`;
    });
    return { body: html`${drawn}`, height: items.length === 0 ? 0 : top - y + (left > x ? 18 : 0) };
}

/** Pieces of a list, each of at most so many. */
export function pieces<T>(all: readonly T[], most: number): T[][] {
    const count = Math.max(1, Math.ceil(all.length / Math.max(1, most)));
    const each = Math.ceil(all.length / count);
    return all.length === 0 ? [] : Array.from({ length: count }, (_, i) => all.slice(i * each, (i + 1) * each));
}
