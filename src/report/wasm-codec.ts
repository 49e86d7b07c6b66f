/**
 * The photo codec in WebAssembly: one code path for editor, command line and browser, nothing native to install. The
 * modules' bytes come from a loader, so that a bundle can carry them; nothing is loaded before the first photograph.
 */
import type { PhotoFormat } from './photo-formats.js';
import { fit, smallEdgeFor, type EncodedJpeg, type PhotoReducer } from './photos.js';
import { shrink, turn, type Pixels } from './pixels.js';

export type WasmName = 'jpeg-decoder' | 'jpeg-encoder' | 'png-decoder' | 'webp-decoder';
export type WasmLoader = (name: WasmName) => Promise<Uint8Array>;

/**
 * Baseline JPEG: for photographs of this size about as small as progressive, in half the time. The numbers are the
 * encoder's own: YCbCr, its default table, chroma halved both ways.
 */
const encodeOptions = { baseline: true, progressive: false, optimize_coding: true, auto_subsample: true } as const;

/**
 * The module is handed over; without this the glue would look for its file, and in a bundle there is none. What a
 * decoder writes of a damaged file has no place on the terminal: the photograph is told by its name.
 */
const placed = { locateFile: (name: string) => name, printErr: () => undefined };

/** Both arguments are taken; the package's types name only the first. */
type Init = (module: WebAssembly.Module, overrides: typeof placed) => Promise<void>;

/** Formats that can be decoded here. */
export const wasmFormats: ReadonlySet<PhotoFormat> = new Set(['jpeg', 'png', 'webp']);

export interface PhotoCodec {
    decode(bytes: Uint8Array, format: PhotoFormat): Promise<Pixels>;
    encodeJpeg(pixels: Pixels, quality: number): Promise<Uint8Array>;
}

/** Reduces with a codec, in the thread it is called in. */
export function reducerWith(codec: PhotoCodec): PhotoReducer {
    const encode = async (image: Pixels, quality: number): Promise<EncodedJpeg> => ({ bytes: await codec.encodeJpeg(image, quality), width: image.width, height: image.height });
    return {
        id: 'wasm-1',
        reads: format => wasmFormats.has(format),
        reduce: async (bytes, { format, orientation, size }) => {
            const pixels = await codec.decode(bytes, format);
            const large = turn(shrink(pixels, fit(pixels, size.maxEdge)), orientation);
            const edge = smallEdgeFor(large, size);
            return { large: await encode(large, size.quality), ...(edge === undefined ? {} : { small: await encode(shrink(large, fit(large, edge)), size.quality) }) };
        },
    };
}

export function createWasmCodec(load: WasmLoader): PhotoCodec {
    const ready = new Map<WasmName, Promise<unknown>>();
    const compiled = async (name: WasmName) => WebAssembly.compile(await load(name) as Uint8Array<ArrayBuffer>); // A loader reads from a file or a bundle, never into shared memory.
    const once = async (name: WasmName, start: () => Promise<unknown>) => {
        const starting = ready.get(name) ?? start();
        ready.set(name, starting);
        try {
            await starting;
        } catch (error) {
            ready.delete(name);
            throw error;
        }
    };
    /** A module that has failed in the middle of its work is not used again. */
    const using = async <T>(name: WasmName, work: () => Promise<T>) => {
        try {
            return await work();
        } catch (error) {
            ready.delete(name);
            throw error;
        }
    };

    const decodeJpeg = async (bytes: Uint8Array): Promise<Pixels> => {
        const { default: decode, init } = await import('@jsquash/jpeg/decode.js');
        await once('jpeg-decoder', async () => (init as Init)(await compiled('jpeg-decoder'), placed));
        return using('jpeg-decoder', async () => decode(bytes as unknown as ArrayBuffer)); // The module copies any view of bytes; its types name only the buffer.
    };
    const decodePng = async (bytes: Uint8Array): Promise<Pixels> => {
        const { default: decode, init } = await import('@jsquash/png/decode.js');
        await once('png-decoder', async () => init(await compiled('png-decoder')));
        return using('png-decoder', async () => decode(bytes as unknown as ArrayBuffer)); // As above.
    };
    const decodeWebp = async (bytes: Uint8Array): Promise<Pixels> => {
        const { default: decode, init } = await import('@jsquash/webp/decode.js');
        await once('webp-decoder', async () => (init as Init)(await compiled('webp-decoder'), placed));
        return using('webp-decoder', async () => decode(bytes as unknown as ArrayBuffer)); // As above.
    };
    return {
        decode: (bytes: Uint8Array, format: PhotoFormat) => format === 'png' ? decodePng(bytes) : format === 'webp' ? decodeWebp(bytes) : decodeJpeg(bytes),
        encodeJpeg: async (pixels, quality) => {
            const { default: encode, init } = await import('@jsquash/jpeg/encode.js');
            await once('jpeg-encoder', async () => (init as Init)(await compiled('jpeg-encoder'), placed));
            return using('jpeg-encoder', async () => new Uint8Array(await encode(pixels as unknown as ImageData, { ...encodeOptions, quality }))); // Only data, width and height are read.
        },
    };
}
