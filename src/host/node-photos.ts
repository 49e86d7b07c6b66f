/** Photographs on Node: files from disk, a native library or else the bundle's codec, and a folder of results. */
import { existsSync } from 'node:fs';
import { open, readFile, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PhotoSource } from '../report/assemble.js';
import type { PhotoReducer } from '../report/photos.js';
import { bundledWasm } from '../report/wasm-bundled.js';
import { createWasmCodec, reducerWith } from '../report/wasm-codec.js';
import { cacheFolder, folderCache, memoryBefore } from './photo-cache.js';
import { loadSharp, nativeReducer } from './photo-native.js';
import { workerReducer } from './photo-workers.js';

/** Cameras write their data in the first segments of a file. */
const headBytes = 128 * 1024;

/** More at once would wait for the four threads that Node gives to such work. */
const mostAtOnce = 4;

export interface NodePhotoOptions {
    /** Folder for prepared photographs; by default the user's own (`GARBOARD_CACHE`), none where undefined. */
    readonly cacheFolder?: string | undefined;
    /** The native library; asked for with the first photograph. */
    readonly loadNative?: typeof loadSharp;
}

export function nodePhotoSource(options: NodePhotoOptions = {}): PhotoSource {
    const folder = 'cacheFolder' in options ? options.cacheFolder : cacheFolder();
    const { loadNative = loadSharp } = options;
    let reducer: Promise<PhotoReducer> | undefined;
    return {
        reducer: () => reducer ??= loadNative().then(sharp => sharp ? nativeReducer(sharp, wasmReducer()) : wasmReducer()),
        cache: memoryBefore(folder === undefined ? undefined : folderCache({ folder })),
        // One more than there are cores: while one photograph is read, hashed or written, the others fill them.
        atOnce: Math.min(availableParallelism() + 1, mostAtOnce),
        read: async uri => {
            try {
                return new Uint8Array(await readFile(fileURLToPath(uri)));
            } catch {
                return undefined; // Not there, or not to be read: the report names it.
            }
        },
        head: async uri => {
            try {
                const file = await open(fileURLToPath(uri));
                try {
                    const { bytesRead, buffer } = await file.read(new Uint8Array(headBytes), 0, headBytes, 0);
                    return buffer.subarray(0, bytesRead);
                } finally {
                    await file.close();
                }
            } catch {
                return undefined;
            }
        },
        stamp: async uri => {
            try {
                // The time of change too: a copy may keep the time of its original.
                const { size, mtimeMs, ctimeMs } = await stat(fileURLToPath(uri));
                return `${size}:${mtimeMs}:${ctimeMs}`;
            } catch {
                return undefined;
            }
        },
    };
}

/** On threads where the worker lies beside the bundle; from the sources, in the thread that asks. */
function wasmReducer(): PhotoReducer {
    const script = typeof __dirname === 'string' ? join(__dirname, 'photo-worker.cjs') : '';
    return script !== '' && existsSync(script)
        ? workerReducer({ script, threads: Math.min(availableParallelism(), mostAtOnce) }) : reducerWith(createWasmCodec(bundledWasm));
}
