/** Photographs and drawings of the page as pictures of a Word document. */
import { ImageRun } from 'docx';
import { fromBase64 } from '../photos.js';
import { attribute, descendants, elementsOf, hasClass, plainText, svgMarkup, type Element } from './tree.js';

/** Draws an SVG as a picture of so many pixels in width: drawings as PNG, photographs with marks as JPEG. A host gives it where it can. */
export type Rasterize = (svg: string, width: number, format: 'png' | 'jpg') => Promise<Uint8Array>;

/** Room for a picture, in CSS pixels. */
export interface Room {
    readonly width: number;
    readonly height: number;
}

interface Picture {
    readonly type: 'jpg' | 'png' | 'svg';
    readonly data: Uint8Array;
    readonly fallback?: Uint8Array;
    readonly width: number;
    readonly height: number;
}

/** Pixels of a drawing's picture for one of its own: fine enough for print at the size it has on the page. */
const oversampling = 2.5;

/** The pictures of a page, ready to be placed. What cannot be one is not among them. */
export class Pictures {
    readonly #pictures = new Map<Element, Picture>();

    /** Draws what must be drawn, one after another. @throws DOMException "AbortError" where the signal says stop. */
    static async of(body: Element, rasterize: Rasterize | undefined, signal: AbortSignal | undefined): Promise<Pictures> {
        const pictures = new Pictures();
        for (const element of descendants(body)) {
            signal?.throwIfAborted();
            const picture = element.tagName === 'img' ? await fromImage(element, rasterize) : isDrawing(element) && !isMarks(element) ? await fromDrawing(element, rasterize) : undefined;
            if (picture) {
                pictures.#pictures.set(element, picture);
            }
        }
        return pictures;
    }

    /** The picture of an element, made smaller where it is larger than the room; undefined where it cannot be shown. */
    run(element: Element, room: Room): ImageRun | undefined {
        const picture = this.#pictures.get(element);
        if (!picture) {
            return undefined;
        }
        const scale = Math.min(1, room.width / picture.width, room.height / picture.height);
        const transformation = { width: Math.max(1, Math.round(picture.width * scale)), height: Math.max(1, Math.round(picture.height * scale)) };
        const altText = { name: nameOf(element), description: altOf(element) };
        return picture.type === 'svg'
            ? new ImageRun({ type: 'svg', data: picture.data, transformation, altText, fallback: { type: 'png', data: picture.fallback ?? new Uint8Array() } })
            : new ImageRun({ type: picture.type, data: picture.data, transformation, altText });
    }
}

/** A drawing that tells something; ornaments are hidden from those who listen, and from Word. */
export const isDrawing = (element: Element): boolean => element.tagName === 'svg' && attribute(element, 'aria-hidden') !== 'true';

/** Marks that lie over a photograph. */
export const isMarks = (element: Element): boolean => element.tagName === 'svg' && hasClass(element, 'photo-marks');

/** The marks over a photograph, where there are any. */
function marksOver(image: Element): Element | undefined {
    const { parentNode } = image;
    return parentNode && 'tagName' in parentNode ? elementsOf(parentNode).find(isMarks) : undefined;
}

/** What a picture shows, in words. */
export function altOf(element: Element): string {
    if (element.tagName === 'img') {
        const marks = marksOver(element);
        return [attribute(element, 'alt') ?? '', ...marks ? [altOf(marks)] : []].filter(text => text !== '').join('. ');
    }
    const told = elementsOf(element).filter(({ tagName }) => tagName === 'title' || tagName === 'desc').map(plainText).filter(text => text !== '');
    return told.length > 0 ? told.join('. ') : attribute(element, 'aria-label') ?? '';
}

const nameOf = (element: Element): string => altOf(element).slice(0, 60) || (element.tagName === 'img' ? 'Photograph' : 'Drawing');

async function fromImage(element: Element, rasterize: Rasterize | undefined): Promise<Picture | undefined> {
    const [, type, base64] = /^data:image\/(jpeg|png|svg\+xml);base64,([A-Za-z0-9+/]+=*)$/.exec(attribute(element, 'src') ?? '') ?? [];
    const width = Number(attribute(element, 'width'));
    const height = Number(attribute(element, 'height'));
    if (type === undefined || base64 === undefined || !(width > 0) || !(height > 0)) {
        return undefined;
    }
    const data = fromBase64(base64);
    if (type === 'svg+xml') {
        const fallback = await rasterize?.(new TextDecoder().decode(data), Math.round(width * oversampling), 'png');
        return fallback && { type: 'svg', data, fallback, width, height };
    }
    const marks = marksOver(element);
    if (marks && rasterize) {
        const over = svgMarkup(marks).replace(/^<svg\b/, `<svg x="0" y="0" width="${width}" height="${height}"`);
        const marked = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"><image href="${attribute(element, 'src') ?? ''}" width="${width}" height="${height}"/>${over}</svg>`;
        return { type: 'jpg', data: await rasterize(marked, width, 'jpg'), width, height };
    }
    return { type: type === 'jpeg' ? 'jpg' : 'png', data, width, height };
}

async function fromDrawing(element: Element, rasterize: Rasterize | undefined): Promise<Picture | undefined> {
    const [, , boxWidth, boxHeight] = (attribute(element, 'viewBox') ?? '').trim().split(/[\s,]+/).map(Number);
    const width = Number(attribute(element, 'width')) || boxWidth || 0;
    const height = Number(attribute(element, 'height')) || boxHeight || 0;
    if (!(width > 0) || !(height > 0) || !rasterize) {
        return undefined;
    }
    const markup = svgMarkup(element);
    return { type: 'svg', data: new TextEncoder().encode(markup), fallback: await rasterize(markup, Math.round(width * oversampling), 'png'), width, height };
}
