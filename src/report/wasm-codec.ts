/**
 * The photo codec in WebAssembly: one code path for editor, command line and browser, nothing native to install. The
 * modules' bytes come from a loader, so that a bundle can carry them; nothing is loaded before the first photograph.
 */
import type { PhotoCodec, PhotoFormat } from './photos.js';
import type { Pixels } from './pixels.js';

export type WasmName = 'jpeg-decoder' | 'jpeg-encoder' | 'png-decoder';
export type WasmLoader = (name: WasmName) => Promise<Uint8Array>;

/**
 * Baseline JPEG: for photographs of this size about as small as progressive, in half the time. The numbers are the
 * encoder's own: YCbCr, its default table, chroma halved both ways.
 */
const encodeOptions = { baseline: true, progressive: false, optimize_coding: true, auto_subsample: true } as const;

/** The module is handed over; without this the glue would look for its file, and in a bundle there is none. */
const placed = { locateFile: (name: string) => name };

/** Both arguments are taken; the package's types name only the first. */
type Init = (module: WebAssembly.Module, overrides: typeof placed) => Promise<void>;

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
    return {
        decode: (bytes: Uint8Array, format: PhotoFormat) => format === 'png' ? decodePng(bytes) : decodeJpeg(bytes),
        encodeJpeg: async (pixels, quality) => {
            const { default: encode, init } = await import('@jsquash/jpeg/encode.js');
            await once('jpeg-encoder', async () => (init as Init)(await compiled('jpeg-encoder'), placed));
            return using('jpeg-encoder', async () => new Uint8Array(await encode(pixels as unknown as ImageData, { ...encodeOptions, quality }))); // Only data, width and height are read.
        },
    };
}
