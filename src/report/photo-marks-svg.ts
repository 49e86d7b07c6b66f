/**
 * Marks over a photograph: arrows, rings, boxes and words as SVG that lies over the picture, in the picture's own
 * pixels. Every line is dark within a white casing, so that it reads on any ground; words stand on a ground of their
 * own, beside what they name. The picture itself is never changed.
 */
import type { PhotoMark } from '../record/model.js';
import { ink, n, textWidth, wrapped } from './drawings/drawing.js';
import { html, joined, nothing, type Html } from './html.js';
import type { EncodedImage } from './photos.js';

interface Point {
    readonly x: number;
    readonly y: number;
}

interface Box extends Point {
    readonly width: number;
    readonly height: number;
}

/** A picture with the measure that lines and letters are drawn in: a hundredth of its mean edge. */
interface Picture {
    readonly width: number;
    readonly height: number;
    readonly unit: number;
}

const family = '\'Source Sans 3\', \'Liberation Sans\', Arial, sans-serif';

/** Sizes in units of the picture. */
const line = 0.55;
const casing = 1.25;
const letters = 3.5;
const lineHeight = 1.2;
const mostLines = 3;

/** What the marks show, for those who do not see them: "Arrow: Cut end. Ring." */
export function marksInWords(marks: readonly PhotoMark[]): string {
    const names = { arrow: 'Arrow', ring: 'Ring', box: 'Box', label: 'Label' } as const;
    return marks.map(({ shape, label }) => label === undefined ? `${names[shape]}.` : `${names[shape]}: ${label.replace(/\s+/g, ' ').trim().replace(/\.$/, '')}.`).join(' ');
}

/**
 * The marks as an `svg` element to lie over a picture of these pixels. `idPrefix` begins the ids in it and is unique in
 * the document. Nothing where there are no marks.
 */
export function marksOverlay(marks: readonly PhotoMark[], width: number, height: number, idPrefix: string): Html {
    return marks.length === 0 ? nothing : html`<svg class="photo-marks" viewBox="0 0 ${n(width)} ${n(height)}" role="img" aria-labelledby="${idPrefix}-title" preserveAspectRatio="none"><title id="${idPrefix}-title">${marksInWords(marks)}</title>${drawn(marks, width, height)}</svg>`;
}

/** The picture with its marks as an SVG document of its own, for programs that cannot lay one over the other. */
export function markedSvg({ dataUri, width, height }: EncodedImage, marks: readonly PhotoMark[]): string {
    return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}"><title>${marksInWords(marks)}</title><image href="${dataUri}" width="${n(width)}" height="${n(height)}"/>${drawn(marks, width, height)}</svg>`.toString();
}

function drawn(marks: readonly PhotoMark[], width: number, height: number): Html {
    const picture: Picture = { width, height, unit: Math.sqrt(width * height) / 100 };
    const shapes = marks.map(mark => placed(mark, picture));
    const taken: Box[] = shapes.flatMap(({ covers }) => covers);
    const labels = shapes.flatMap(shape => {
        const lettering = shape.label === undefined ? undefined : letteringOf(shape.label, picture);
        if (!lettering) {
            return [];
        }
        const place = freePlace(lettering.box, shape, taken, picture);
        taken.push(place);
        return [{ shape, place, lines: lettering.lines }];
    });
    const u = picture.unit;
    // Casings of all lines lie under all lines, so that crossing marks stay whole; words lie over everything.
    return html`<g font-family="${family}" font-size="${n(letters * u)}" font-weight="600" fill="none" stroke-linecap="round" stroke-linejoin="round">
<g stroke="#ffffff" stroke-width="${n(casing * u)}">${shapes.map(({ path }) => path)}${labels.map(({ shape, place }) => leader(shape, place))}</g>
<g stroke="${ink}" stroke-width="${n(line * u)}">${shapes.map(({ path }) => path)}${labels.map(({ shape, place }) => leader(shape, place))}</g>
${joined(shapes.flatMap(({ head }) => head ? [html`<path d="${head}" fill="${ink}" stroke="#ffffff" stroke-width="${n(0.35 * u)}"/>`] : []), '')}
${labels.map(({ place, lines }) => html`<rect x="${n(place.x)}" y="${n(place.y)}" width="${n(place.width)}" height="${n(place.height)}" rx="${n(0.7 * u)}" fill="#ffffff" stroke="${ink}" stroke-width="${n(0.3 * u)}"/><g fill="${ink}">${lines.map((text, index) => html`<text x="${n(place.x + place.width / 2)}" y="${n(place.y + (index * lineHeight + 1.25) * letters * u)}" text-anchor="middle">${text}</text>`)}</g>`)}
</g>`;
}

interface Shape {
    readonly mark: PhotoMark;
    readonly path: Html;
    /** Outline of an arrow's head, or the dot of a label. */
    readonly head?: string;
    readonly box: Box;
    /** What words should not cover. */
    readonly covers: readonly Box[];
    /** Where words are looked for around, and where a leader begins. */
    readonly anchor: Point;
    readonly label?: string;
}

function placed(mark: PhotoMark, picture: Picture): Shape {
    const { width, height, unit: u } = picture;
    const [first = { x: width / 2, y: height / 2 }, second] = mark.points.map(({ across, down }) => ({ x: across * width, y: down * height }));
    const words = mark.label === undefined ? {} : { label: mark.label };
    switch (mark.shape) {
        case 'arrow': {
            const tip = second ?? first;
            const tail = second ? first : tailFor(first, picture);
            const length = Math.hypot(tip.x - tail.x, tip.y - tail.y);
            const along = length === 0 ? { x: 1, y: 0 } : { x: (tip.x - tail.x) / length, y: (tip.y - tail.y) / length };
            const reach = 4.2 * u;
            const half = 1.7 * u;
            const back = { x: tip.x - along.x * reach, y: tip.y - along.y * reach };
            const neck = { x: tip.x - along.x * reach * 0.8, y: tip.y - along.y * reach * 0.8 };
            const wing = (side: number) => `${n(back.x - side * along.y * half)} ${n(back.y + side * along.x * half)}`;
            return {
                mark, ...words, path: html`<path d="M${n(tail.x)} ${n(tail.y)}L${n(neck.x)} ${n(neck.y)}"/>`, anchor: tail,
                head: `M${n(tip.x)} ${n(tip.y)}L${wing(1)}L${n(neck.x)} ${n(neck.y)}L${wing(-1)}Z`, box: boxAround([tail, tip], u), covers: piecesOf(tail, tip, u),
            };
        }
        case 'ring': {
            const radius = Math.max(u, (mark.radius ?? 0.08) * width);
            const box = boxAround([first], radius);
            return { mark, ...words, path: html`<circle cx="${n(first.x)}" cy="${n(first.y)}" r="${n(radius)}"/>`, anchor: first, box, covers: [box] };
        }
        case 'box': {
            const box = boxAround([first, second ?? first], 0);
            return { mark, ...words, path: html`<rect x="${n(box.x)}" y="${n(box.y)}" width="${n(box.width)}" height="${n(box.height)}" rx="${n(0.5 * u)}"/>`, anchor: { x: box.x + box.width / 2, y: box.y + box.height / 2 }, box, covers: [box] };
        }
        case 'label': {
            const dot = 0.9 * u;
            const box = boxAround([first], dot);
            return {
                mark, ...words, path: nothing, anchor: first, box, covers: [box],
                head: `M${n(first.x - dot)} ${n(first.y)}a${n(dot)} ${n(dot)} 0 1 0 ${n(2 * dot)} 0a${n(dot)} ${n(dot)} 0 1 0 ${n(-2 * dot)} 0Z`,
            };
        }
    }
}

/** An arrow of one point comes from the side where the picture has room: from its middle, or from above left at the middle itself. */
function tailFor(tip: Point, { width, height, unit }: Picture): Point {
    const toMiddle = { x: width / 2 - tip.x, y: height / 2 - tip.y };
    const distance = Math.hypot(toMiddle.x, toMiddle.y);
    const from = distance < 8 * unit ? { x: -Math.SQRT1_2, y: -Math.SQRT1_2 } : { x: toMiddle.x / distance, y: toMiddle.y / distance };
    return { x: tip.x + from.x * 18 * unit, y: tip.y + from.y * 18 * unit };
}

function boxAround(points: readonly Point[], margin: number): Box {
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    const [x, y] = [Math.min(...xs) - margin, Math.min(...ys) - margin];
    return { x, y, width: Math.max(...xs) + margin - x, height: Math.max(...ys) + margin - y };
}

/** A line in short pieces: the box around all of a slanting line is mostly empty. */
function piecesOf(from: Point, to: Point, margin: number): Box[] {
    const count = 8;
    const at = (share: number): Point => ({ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
    return Array.from({ length: count }, (_, index) => boxAround([at(index / count), at((index + 1) / count)], margin));
}

function letteringOf(label: string, { width, unit: u }: Picture): { readonly lines: readonly string[]; readonly box: { readonly width: number; readonly height: number } } | undefined {
    const size = letters * u;
    const lines = wrapped(label, width * 0.42, mostLines, size, true);
    return lines.length === 0 ? undefined : {
        lines, box: { width: Math.max(...lines.map(text => textWidth(text, size, true))) + 1.1 * size, height: (lines.length * lineHeight + 0.45) * size },
    };
}

const overlap = (one: Box, other: Box) =>
    Math.max(0, Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x)) * Math.max(0, Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y));

/** The place for words that covers least of other marks and words, near its own mark and within the picture. */
function freePlace(size: { readonly width: number; readonly height: number }, { mark, box, anchor }: Shape, taken: readonly Box[], { width, height, unit: u }: Picture): Box {
    // Words of an arrow stand at its tail, those of other marks outside of them.
    const around = mark.shape === 'arrow' ? { x: anchor.x, y: anchor.y, width: 0, height: 0 } : box;
    const gap = (mark.shape === 'label' ? 3.5 : 1.2) * u;
    const middle = { x: around.x + around.width / 2 - size.width / 2, y: around.y + around.height / 2 - size.height / 2 };
    const [left, right, above, below] = [around.x - gap - size.width, around.x + around.width + gap, around.y - gap - size.height, around.y + around.height + gap];
    const places: readonly Point[] = mark.shape === 'label'
        ? [{ x: right, y: above }, { x: left, y: above }, { x: right, y: below }, { x: left, y: below }, { x: middle.x, y: above }, { x: middle.x, y: below }]
        : [{ x: middle.x, y: above }, { x: middle.x, y: below }, { x: right, y: middle.y }, { x: left, y: middle.y }, { x: right, y: above }, { x: left, y: above }, { x: right, y: below }, { x: left, y: below }];
    const within = (value: number, room: number) => Math.min(Math.max(value, u), Math.max(u, room - u));
    let best: { readonly box: Box; readonly cost: number } | undefined;
    for (const place of places) {
        const put = { x: within(place.x, width - size.width), y: within(place.y, height - size.height), ...size };
        const moved = Math.abs(put.x - place.x) + Math.abs(put.y - place.y);
        const cost = taken.reduce((sum, other) => sum + overlap(put, other), 0) + moved * u;
        if (!best || cost < best.cost) {
            best = { box: put, cost };
        }
    }
    return best?.box ?? { x: u, y: u, ...size };
}

/** A line from words to the dot they name; the words of other shapes stand at them. */
function leader({ mark, anchor }: Shape, place: Box): Html {
    if (mark.shape !== 'label') {
        return nothing;
    }
    const end = { x: Math.min(Math.max(anchor.x, place.x), place.x + place.width), y: Math.min(Math.max(anchor.y, place.y), place.y + place.height) };
    return html`<path d="M${n(anchor.x)} ${n(anchor.y)}L${n(end.x)} ${n(end.y)}"/>`;
}
