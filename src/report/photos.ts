/**
 * Photographs for the report: turned upright, reduced, encoded again (which leaves serial numbers and all other
 * metadata behind) and held as data; the time and the place the camera recorded are kept beside them. Bytes, the
 * library that reduces, and the place for results are handed in; nothing is read here. A photograph that cannot be used
 * yields its reason, so that the report still comes.
 */
import { readExif, type CameraPosition } from './photo-exif.js';
import { formatOf, isWhole, sizeOf, type PhotoFormat, type PictureSize } from './photo-formats.js';

export { formatOf, sizeOf };

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
    /** Where it was taken, by the camera's receiver. */
    readonly position?: CameraPosition;
    readonly alt: string;
}

export type EmbeddedPhoto = EmbeddedImage | { readonly error: string };

export interface PhotoSize {
    /** Longest edge, in pixels. */
    readonly maxEdge: number;
    /** Quality of the encoded JPEG, 0 to 100. */
    readonly quality: number;
    /** Longest edge of the small version; none where left out. */
    readonly smallEdge?: number;
}

/** For the report that is sent: fine enough to fill the width of a page. */
export const photosForPrint: PhotoSize = { maxEdge: 1600, quality: 75, smallEdge: 560 };
/** For the preview, which is drawn again after every edit. */
export const photosForPreview: PhotoSize = { maxEdge: 560, quality: 65 };

export interface EncodedJpeg extends PictureSize {
    readonly bytes: Uint8Array;
}

/** Upright, opaque, in sRGB, without metadata. */
export interface ReducedPhoto {
    readonly large: EncodedJpeg;
    readonly small?: EncodedJpeg;
}

export interface ReducingWork {
    readonly format: PhotoFormat;
    /** EXIF orientation of the file, 1 to 8. */
    readonly orientation: number;
    readonly size: PhotoSize;
}

/** The library that decodes, reduces and encodes. */
export interface PhotoReducer {
    /** Names the library and its version: what one made is not taken for what another would make. */
    readonly id: string;
    reads(format: PhotoFormat): boolean;
    /** @throws where the file cannot be decoded. */
    reduce(bytes: Uint8Array, work: ReducingWork): Promise<ReducedPhoto>;
}

/** A reduced photograph with what its camera told. */
export interface PreparedPhoto extends ReducedPhoto {
    readonly taken?: string;
    readonly position?: CameraPosition;
}

/** Results by content, so that an unchanged photograph costs nothing. A `Map` will do; a folder may stand behind it. */
export interface PhotoCache {
    get(key: string): PreparedPhoto | undefined | Promise<PreparedPhoto | undefined>;
    set(key: string, photo: PreparedPhoto): unknown;
    /** The key that the content of a file had when it bore this stamp; with it the file is not even read. */
    keyOfStamp?(stamp: string): string | undefined | Promise<string | undefined>;
    setKeyOfStamp?(stamp: string, key: string): unknown;
}

export interface PhotoOptions {
    readonly size: PhotoSize;
    /** Name of the file as the survey writes it, for messages. */
    readonly file: string;
    readonly cache?: PhotoCache;
    /** What changes when the file does, with its address. */
    readonly stamp?: string;
}

/** More pixels than any camera a surveyor carries takes; a file that claims more is not decoded. */
export const mostPixels = 120_000_000;

/** Counted up when the same library would make something else of the same file. */
const pipelineVersion = 1;

const sizeName = ({ maxEdge, quality, smallEdge }: PhotoSize) => `${maxEdge}-${quality}-${smallEdge ?? 0}-v${pipelineVersion}`;

async function keyOf(bytes: Uint8Array, reducer: PhotoReducer, size: PhotoSize): Promise<string> {
    // Bytes read from a file never lie in shared memory, which is all the wider type allows for.
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>));
    return `${[...digest].map(byte => byte.toString(16).padStart(2, '0')).join('')}-${sizeName(size)}-${reducer.id}`;
}

/** Width and height within a longest edge; never enlarged. */
export function fit({ width, height }: PictureSize, edge: number): { width: number; height: number } {
    const scale = Math.min(1, edge / Math.max(width, height));
    return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** Longest edge of the small version, where one is worth having beside a large one of this size. */
export function smallEdgeFor(large: PictureSize, { smallEdge }: PhotoSize): number | undefined {
    return smallEdge !== undefined && Math.max(large.width, large.height) > smallEdge * 1.2 ? smallEdge : undefined;
}

/** A plain name for a photograph without a caption. */
export function nameOfFile(file: string): string {
    return file.split(/[\\/]/).at(-1) ?? file;
}

/** The photograph as it was prepared when its file bore this stamp; undefined where that is not known. */
export async function knownPhoto(options: PhotoOptions): Promise<EmbeddedImage | undefined> {
    const { cache, stamp, size, file } = options;
    const key = stamp === undefined ? undefined : await cache?.keyOfStamp?.(`${stamp} ${sizeName(size)}`);
    const known = key === undefined ? undefined : await cache?.get(key);
    return known && embedded(known, file);
}

/** Reads, turns, reduces and encodes one photograph. Never throws. */
export async function preparePhoto(bytes: Uint8Array, reducer: PhotoReducer, options: PhotoOptions): Promise<EmbeddedPhoto> {
    const { file, cache, stamp, size } = options;
    const format = formatOf(bytes);
    if (bytes.length === 0) {
        return { error: `${file}: the file is empty; copy it again from the camera` };
    }
    if (format === undefined) {
        return { error: `${file}: not a photograph that can be read here; use JPEG, PNG or WebP` };
    }
    if (format === 'gif' || format === 'tiff' || !reducer.reads(format)) {
        return { error: `${file}: ${unreadable(format)}` };
    }
    try {
        const pixels = sizeOf(bytes, format);
        if (!pixels || pixels.width < 1 || pixels.height < 1) {
            return { error: `${file}: the file is damaged; copy it again from the camera` };
        }
        if (pixels.width * pixels.height > mostPixels) {
            return { error: `${file}: ${pixels.width} × ${pixels.height} pixels are too many; reduce it first` };
        }
        if (!isWhole(bytes, format)) {
            return { error: `${file}: the file is cut short; copy it again from the camera` };
        }
        const key = cache ? await keyOf(bytes, reducer, size) : '';
        let prepared = await cache?.get(key);
        if (!prepared) {
            const { orientation, ...told } = await readExif(bytes);
            prepared = { ...await reducer.reduce(bytes, { format, orientation, size }), ...told };
            await cache?.set(key, prepared);
        }
        if (stamp !== undefined) {
            await cache?.setKeyOfStamp?.(`${stamp} ${sizeName(size)}`, key);
        }
        return embedded(prepared, file);
    } catch {
        return { error: `${file}: the file is damaged or of an unusual kind; save it again as JPEG` };
    }
}

function unreadable(format: PhotoFormat | 'gif' | 'tiff'): string {
    return format === 'heic'
        ? 'HEIC cannot be read here; set the phone\'s camera to save JPEG, or export it as JPEG (on macOS: sips -s format jpeg FILE --out FILE.jpg), and name the new file'
        : `${format.toUpperCase()} cannot be read here; export it as JPEG and name the new file`;
}

/** Data addresses, for as long as the prepared photograph is kept: the preview asks for them after every edit. */
const dataUris = new WeakMap<EncodedJpeg, EncodedImage>();

function encodedImage(jpeg: EncodedJpeg): EncodedImage {
    const known = dataUris.get(jpeg) ?? { dataUri: `data:image/jpeg;base64,${base64(jpeg.bytes)}`, width: jpeg.width, height: jpeg.height };
    dataUris.set(jpeg, known);
    return known;
}

function embedded({ large, small, taken, position }: PreparedPhoto, file: string): EmbeddedImage {
    return {
        ...encodedImage(large), alt: nameOfFile(file), ...(small ? { small: encodedImage(small) } : {}),
        ...(taken === undefined ? {} : { taken }), ...(position ? { position } : {}),
    };
}

/** Bytes as base64, in one line. */
export function base64(bytes: Uint8Array): string {
    if (typeof Buffer === 'function') {
        return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('base64'); // Node's own is some twenty times as fast.
    }
    const pieces: string[] = [];
    // A multiple of three, so that pieces join without padding; small enough for an argument list.
    const step = 3 * 8192;
    for (let at = 0; at < bytes.length; at += step) {
        pieces.push(btoa(String.fromCharCode(...bytes.subarray(at, at + step))));
    }
    return pieces.join('');
}

/** The bytes of base64 in one line. */
export function fromBase64(text: string): Uint8Array {
    return typeof Buffer === 'function' ? new Uint8Array(Buffer.from(text, 'base64')) : Uint8Array.from(atob(text), sign => sign.charCodeAt(0));
}
