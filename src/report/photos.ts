/**
 * Photographs for the report: turned upright by their EXIF orientation, reduced, encoded again (which leaves place,
 * serial numbers and all other metadata behind) and held as data. Bytes and codec are handed in; nothing is read here.
 * A photograph that cannot be used yields its reason, so that the report still comes.
 */
import exifr from 'exifr';
import { shrink, turn, type Pixels } from './pixels.js';

export interface EncodedImage {
    readonly dataUri: string;
    readonly width: number;
    readonly height: number;
}

export interface EmbeddedImage extends EncodedImage {
    /** A small version for places where the photograph is only referred to. */
    readonly small?: EncodedImage;
    /** When it was taken, by the camera's clock: "2026-10-06 09:40:12 -04:00". */
    readonly taken?: string;
    readonly alt: string;
}

export type EmbeddedPhoto = EmbeddedImage | { readonly error: string };

export type PhotoFormat = 'jpeg' | 'png';

export interface PhotoCodec {
    decode(bytes: Uint8Array, format: PhotoFormat): Promise<Pixels>;
    encodeJpeg(pixels: Pixels, quality: number): Promise<Uint8Array>;
}

/** Results by content, so that an unchanged photograph costs nothing. A `Map` will do; a folder may stand behind it. */
export interface PhotoCache {
    get(key: string): EmbeddedPhoto | undefined | Promise<EmbeddedPhoto | undefined>;
    set(key: string, photo: EmbeddedPhoto): unknown;
}

export interface PhotoSize {
    /** Longest edge, in pixels. */
    readonly maxEdge: number;
    /** Quality of the encoded JPEG, 0 to 100. */
    readonly quality: number;
    /** Longest edge of the small version; none where left out. */
    readonly smallEdge?: number;
}

export interface PhotoOptions extends PhotoSize {
    /** Name of the file as the survey writes it, for messages. */
    readonly file: string;
    readonly cache?: PhotoCache;
}

/** For the report that is sent: fine enough to fill the width of a page. */
export const photosForPrint: PhotoSize = { maxEdge: 1600, quality: 75, smallEdge: 560 };
/** For the preview, which is drawn again after every edit. */
export const photosForPreview: PhotoSize = { maxEdge: 560, quality: 65 };

/** More pixels than any camera a surveyor carries takes; a file that claims more is not decoded. */
const mostPixels = 120_000_000;

const startsWith = (bytes: Uint8Array, signature: readonly number[]) => signature.every((byte, index) => bytes[index] === byte);
const ascii = (bytes: Uint8Array, at: number, length: number) => String.fromCharCode(...bytes.subarray(at, at + length));

/** The format by its first bytes, whatever the file is called. */
export function formatOf(bytes: Uint8Array): PhotoFormat | 'heic' | 'avif' | 'webp' | 'gif' | 'tiff' | undefined {
    if (startsWith(bytes, [0xff, 0xd8, 0xff])) {
        return 'jpeg';
    }
    if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) {
        return 'png';
    }
    if (ascii(bytes, 4, 4) === 'ftyp') {
        const brand = ascii(bytes, 8, 4);
        return brand.startsWith('avi') ? 'avif' : /^(hei|hev|mif|msf)/.test(brand) ? 'heic' : undefined;
    }
    if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP') {
        return 'webp';
    }
    if (ascii(bytes, 0, 4) === 'GIF8') {
        return 'gif';
    }
    return startsWith(bytes, [0x49, 0x49, 0x2a, 0]) || startsWith(bytes, [0x4d, 0x4d, 0, 0x2a]) ? 'tiff' : undefined;
}

/** Size by the file's own header, before anything is decoded. */
export function sizeOf(bytes: Uint8Array, format: PhotoFormat): { readonly width: number; readonly height: number } | undefined {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    if (format === 'png') {
        return bytes.length >= 24 ? { width: view.getUint32(16), height: view.getUint32(20) } : undefined;
    }
    for (let at = 2; at + 9 < bytes.length;) {
        if (bytes[at] !== 0xff) {
            return undefined;
        }
        const marker = bytes[at + 1] ?? 0;
        if (marker === 0xff) {
            at++;
        } else if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) {
            return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
        } else {
            at += 2 + view.getUint16(at + 2);
        }
    }
    return undefined;
}

interface Exif {
    readonly orientation: number;
    readonly taken?: string;
}

/** Orientation and time. A photograph without them, or with broken ones, is taken as it is stored. */
export async function readExif(bytes: Uint8Array): Promise<Exif> {
    try {
        const tags: unknown = await exifr.parse(bytes, {
            pick: ['Orientation', 'DateTimeOriginal', 'CreateDate', 'OffsetTimeOriginal', 'OffsetTime'], translateValues: false, reviveValues: false,
        });
        const tag = (name: string): unknown => typeof tags === 'object' && tags !== null ? Reflect.get(tags, name) : undefined;
        const orientation = tag('Orientation');
        const taken = takenText(tag('DateTimeOriginal') ?? tag('CreateDate'), tag('OffsetTimeOriginal') ?? tag('OffsetTime'));
        return { orientation: typeof orientation === 'number' && orientation >= 1 && orientation <= 8 ? orientation : 1, ...(taken === undefined ? {} : { taken }) };
    } catch {
        return { orientation: 1 };
    }
}

function takenText(time: unknown, offset: unknown): string | undefined {
    const parts = typeof time === 'string' ? /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d(?::\d\d)?)/.exec(time) : null;
    if (!parts || parts[1] === '0000') {
        return undefined;
    }
    const zone = typeof offset === 'string' ? /^[+-]\d\d:\d\d/.exec(offset.trim())?.[0] : undefined;
    return `${parts.slice(1, 4).join('-')} ${parts[4] ?? ''}${zone === undefined ? '' : ` ${zone}`}`;
}

function base64(bytes: Uint8Array): string {
    const pieces: string[] = [];
    // A multiple of three, so that pieces join without padding; small enough for an argument list.
    const step = 3 * 8192;
    for (let at = 0; at < bytes.length; at += step) {
        pieces.push(btoa(String.fromCharCode(...bytes.subarray(at, at + step))));
    }
    return pieces.join('');
}

async function keyOf(bytes: Uint8Array, { maxEdge, quality, smallEdge }: PhotoSize): Promise<string> {
    // Bytes read from a file never lie in shared memory, which is all the wider type allows for.
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>));
    return `${[...digest].map(byte => byte.toString(16).padStart(2, '0')).join('')}-${maxEdge}-${quality}-${smallEdge ?? 0}`;
}

function fit({ width, height }: { readonly width: number; readonly height: number }, edge: number): { width: number; height: number } {
    const scale = Math.min(1, edge / Math.max(width, height));
    return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** A plain name for a photograph without a caption. */
export function nameOfFile(file: string): string {
    return file.split(/[\\/]/).at(-1) ?? file;
}

/** Reads, turns, reduces and encodes one photograph. Never throws. */
export async function preparePhoto(bytes: Uint8Array, codec: PhotoCodec, options: PhotoOptions): Promise<EmbeddedPhoto> {
    const { file, cache } = options;
    const format = formatOf(bytes);
    if (format !== 'jpeg' && format !== 'png') {
        return { error: format === undefined ? `${file}: not a photograph that can be read here; use JPEG or PNG` : `${file}: ${format.toUpperCase()} cannot be read here; convert it to JPEG` };
    }
    try {
        const size = sizeOf(bytes, format);
        if (!size || size.width < 1 || size.height < 1) {
            return { error: `${file}: the file is damaged; copy it again from the camera` };
        }
        if (size.width * size.height > mostPixels) {
            return { error: `${file}: ${size.width} × ${size.height} pixels are too many; reduce it first` };
        }
        const key = cache ? await keyOf(bytes, options) : '';
        const known = await cache?.get(key);
        if (known && !('error' in known)) {
            return { ...known, alt: nameOfFile(file) };
        }
        const pixels = await codec.decode(bytes, format);
        const exif = await readExif(bytes);
        const large = turn(shrink(pixels, fit(pixels, options.maxEdge)), exif.orientation);
        const small = options.smallEdge !== undefined && Math.max(large.width, large.height) > options.smallEdge * 1.2 ? shrink(large, fit(large, options.smallEdge)) : undefined;
        const encode = async (image: Pixels): Promise<EncodedImage> =>
            ({ dataUri: `data:image/jpeg;base64,${base64(await codec.encodeJpeg(image, options.quality))}`, width: image.width, height: image.height });
        const photo: EmbeddedImage = {
            ...await encode(large), alt: nameOfFile(file), ...(small ? { small: await encode(small) } : {}), ...(exif.taken === undefined ? {} : { taken: exif.taken }),
        };
        await cache?.set(key, photo);
        return photo;
    } catch {
        return { error: `${file}: the file is damaged or of an unusual kind; save it again as JPEG` };
    }
}
