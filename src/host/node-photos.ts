/** Photographs on Node: files from disk, the codec from the bundle. */
import { open, readFile, stat } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { PhotoSource } from '../report/assemble.js';
import { bundledWasm } from '../report/wasm-bundled.js';
import { createWasmCodec } from '../report/wasm-codec.js';

/** Cameras write their data in the first segments of a file. */
const headBytes = 128 * 1024;

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
                const { size, mtimeMs } = await stat(fileURLToPath(uri));
                return `${size}:${mtimeMs}`;
            } catch {
                return undefined;
            }
        },
    };
}
