/** The firm's mark: read beside its house file, looked at, and held as data. It is only ever shown as a picture, never as markup. */
import type { SurveyRecord } from '../record/model.js';
import { base64, formatOf, sizeOf, type EncodedImage } from './photos.js';

/** A mark that can be shown, or the reason why it cannot. */
export type FirmMark = EncodedImage | { readonly error: string };

/** A mark is a drawing of a few kilobytes; a larger file is something else. In bytes. */
const largestMark = 512 * 1024;

/** The mark that the house file names; undefined where it names none. */
export async function readFirmMark(record: SurveyRecord, source: { read(uri: string): Promise<Uint8Array | undefined> }): Promise<FirmMark | undefined> {
    const { firm } = record.vocabulary;
    const named = firm?.facts.get('mark')?.values[0];
    if (!firm || named?.type !== 'text') {
        return undefined;
    }
    const file = named.prose.text.trim().replaceAll('\\', '/');
    if (file === '' || file.startsWith('/') || /^[A-Za-z][A-Za-z0-9+.-]*:/.test(file)) {
        return { error: `${file === '' ? 'The firm’s mark' : file}: name the firm’s mark by its path beside the house file` };
    }
    const bytes = await source.read(firm.span.uri.slice(0, firm.span.uri.lastIndexOf('/') + 1) + file.split('/').map(encodeURIComponent).join('/'));
    return bytes ? markOf(bytes, file) : { error: `${file}: there is no such file beside the house file; the firm’s mark is left out` };
}

/** The picture in the bytes of an SVG or PNG file. `file` is its name for messages. */
export function markOf(bytes: Uint8Array, file: string): FirmMark {
    if (bytes.length > largestMark) {
        return { error: `${file}: ${Math.ceil(bytes.length / 1024)} kB is too much for a firm’s mark; reduce it below 512 kB` };
    }
    if (formatOf(bytes) === 'png') {
        const size = sizeOf(bytes, 'png');
        return size && size.width > 0 && size.height > 0
            ? { dataUri: `data:image/png;base64,${base64(bytes)}`, ...size }
            : { error: `${file}: the file is damaged; save the firm’s mark again` };
    }
    const head = new TextDecoder().decode(bytes.subarray(0, 16_384));
    const root = /<svg\b[^>]*>/i.exec(head)?.[0];
    return root === undefined
        ? { error: `${file}: the firm’s mark must be an SVG or PNG file` }
        : { dataUri: `data:image/svg+xml;base64,${base64(bytes)}`, ...svgSize(root) };
}

/** Width and height by the root element, in pixels or in units of its own; square where it tells neither. */
function svgSize(root: string): { readonly width: number; readonly height: number } {
    const attribute = (name: string) => new RegExp(`\\s${name}\\s*=\\s*["']([^"']*)["']`, 'i').exec(root)?.[1];
    const [, , boxWidth = NaN, boxHeight = NaN] = (attribute('viewBox') ?? '').trim().split(/[\s,]+/).map(Number);
    const [width, height] = boxWidth > 0 && boxHeight > 0 ? [boxWidth, boxHeight] : [parseFloat(attribute('width') ?? ''), parseFloat(attribute('height') ?? '')];
    return width > 0 && height > 0 && Number.isFinite(width / height) ? { width: Math.max(1, Math.round(width)), height: Math.max(1, Math.round(height)) } : { width: 100, height: 100 };
}
