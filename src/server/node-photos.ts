/** Photographs on Node: files from disk, the codec from the bundle. */
import { readFile, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { PhotoSource } from '../report/assemble.js';
import { bundledWasm } from '../report/wasm-bundled.js';
import { createWasmCodec } from '../report/wasm-codec.js';

export function nodePhotoSource(): PhotoSource {
    return {
        codec: createWasmCodec(bundledWasm),
        cache: new Map(),
        read: async uri => {
            try {
                return new Uint8Array(await readFile(fileURLToPath(uri)));
            } catch {
                return undefined; // Not there, or not to be read: the report names it.
            }
        },
        stamp: async uri => {
            try {
                const { size, mtimeMs } = await stat(fileURLToPath(uri));
                return `${size}:${mtimeMs}`;
            } catch {
                return undefined;
            }
        },
    };
}
