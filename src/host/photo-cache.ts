/**
 * Prepared photographs in a folder, by content: what was reduced once is never reduced again, in this process or the
 * next, whatever the file is called. One file an entry, holding a head of JSON, the pictures' own bytes and their
 * checksum, written whole; an entry that does not check is as good as none. A folder that cannot be written to, or
 * another process at work in it, changes nothing but the time things take.
 */
import { createHash } from 'node:crypto';
import { readdir, readFile, rm, stat, utimes } from 'node:fs/promises';
import { join } from 'node:path';
import envPaths from 'env-paths';
import type { PhotoCache, PreparedPhoto } from '../report/photos.js';
import { writeWhole } from './files.js';

/** Where entries are kept; undefined where the variable is set to nothing: then none are. */
export function cacheFolder(): string | undefined {
    const named = process.env.GARBOARD_CACHE;
    return named === '' ? undefined : named ?? envPaths('garboard', { suffix: '' }).cache;
}

export interface FolderCacheOptions {
    readonly folder: string;
    /** Entries beyond this are dropped, least recently used first. In bytes. */
    readonly mostBytes?: number;
}

const usualMostBytes = 1024 ** 3;
/** Entries are counted again after so much was written, in bytes. */
const countAfter = 64 * 1024 ** 2;
/** An entry in use is marked as used this often, in milliseconds. */
const markAfter = 24 * 3600 * 1000;

const hash = (content: string | Uint8Array) => createHash('sha256').update(content).digest('hex');

export function folderCache({ folder, mostBytes = usualMostBytes }: FolderCacheOptions): PhotoCache {
    const entries = join(folder, 'prepared-photos');
    const stamps = join(folder, 'photo-stamps');
    // Keys are hashes and words of our own, but a stamp holds a path, and a library's version may hold anything.
    const entryPath = (key: string) => join(entries, hash(key));
    const stampPath = (stamp: string) => join(stamps, hash(stamp));
    let written = countAfter; // Counted with the first entry too.

    const write = async (path: string, content: Uint8Array) => {
        try {
            await writeWhole(path, content);
            return true;
        } catch {
            return false; // Full, or not to be written to: the photograph is prepared again next time.
        }
    };
    return {
        get: async key => {
            const path = entryPath(key);
            try {
                const photo = unpack(await readFile(path));
                if (!photo) {
                    await rm(path, { force: true });
                    return undefined;
                }
                await markUsed(path);
                return photo;
            } catch {
                return undefined;
            }
        },
        set: async (key, photo) => {
            const content = pack(photo);
            if (await write(entryPath(key), content)) {
                written += content.length;
                if (written >= countAfter) {
                    written = 0;
                    await prune([entries, stamps], mostBytes);
                }
            }
        },
        keyOfStamp: async stamp => {
            const path = stampPath(stamp);
            try {
                const key = await readFile(path, 'utf8');
                await markUsed(path);
                return key;
            } catch {
                return undefined;
            }
        },
        setKeyOfStamp: (stamp, key) => write(stampPath(stamp), Buffer.from(key)),
    };
}

/** Names that are given here, with those of writes that never came to their end; anything else is somebody's own. */
const ours = /^[0-9a-f]{64}(?:\.[0-9a-f]{12}\.tmp)?$/;

async function markUsed(path: string): Promise<void> {
    const now = Date.now();
    try {
        if (now - (await stat(path)).mtimeMs > markAfter) {
            await utimes(path, now / 1000, now / 1000);
        }
    } catch {
        // Of a folder that only can be read.
    }
}

/** Drops the entries used longest ago until nine tenths of the limit are left. */
async function prune(folders: readonly string[], mostBytes: number): Promise<void> {
    const found: { path: string; size: number; used: number }[] = [];
    for (const folder of folders) {
        const names = (await readdir(folder).catch((): string[] => [])).filter(name => ours.test(name));
        found.push(...(await Promise.all(names.map(async name => {
            const path = join(folder, name);
            const entry = await stat(path).catch(() => undefined); // Another process may have dropped it.
            return entry?.isFile() ? [{ path, size: Math.max(entry.size, 4096), used: entry.mtimeMs }] : []; // Small files take a block.
        }))).flat());
    }
    let total = found.reduce((sum, { size }) => sum + size, 0);
    if (total <= mostBytes) {
        return;
    }
    for (const { path, size } of found.sort((a, b) => a.used - b.used)) {
        if (total <= mostBytes * 0.9) {
            return;
        }
        await rm(path, { force: true }).catch(() => undefined);
        total -= size;
    }
}

/** What stands before the pictures' bytes. */
interface Head extends Pick<PreparedPhoto, 'taken' | 'position'> {
    readonly large: { readonly width: number; readonly height: number; readonly length: number };
    readonly small?: { readonly width: number; readonly height: number; readonly length: number };
    readonly sha256: string;
}

/** Length of the head in four bytes, the head, the large picture, the small one. */
export function pack({ large, small, taken, position }: PreparedPhoto): Uint8Array {
    const pictures = Buffer.concat([large.bytes, ...(small ? [small.bytes] : [])]);
    const part = ({ width, height, bytes }: PreparedPhoto['large']) => ({ width, height, length: bytes.length });
    const told = { large: part(large), ...(small ? { small: part(small) } : {}), ...(taken === undefined ? {} : { taken }), ...(position ? { position } : {}) };
    const head = Buffer.from(JSON.stringify({ ...told, sha256: checksum(told, pictures) } satisfies Head));
    const length = Buffer.alloc(4);
    length.writeUInt32BE(head.length);
    return Buffer.concat([length, head, pictures]);
}

const checksum = (told: Omit<Head, 'sha256'>, pictures: Uint8Array) => createHash('sha256').update(JSON.stringify(told)).update(pictures).digest('hex');

/** The photograph of an entry; undefined where the entry is damaged. */
export function unpack(content: Buffer): PreparedPhoto | undefined {
    if (content.length < 4 || content.length < 4 + content.readUInt32BE(0)) {
        return undefined;
    }
    const start = 4 + content.readUInt32BE(0);
    let head: Head;
    try {
        head = JSON.parse(content.subarray(4, start).toString('utf8')) as Head; // Checked below: what was not written by `pack` has another checksum.
    } catch {
        return undefined;
    }
    const { sha256, ...told } = head ?? {};
    const pictures = content.subarray(start);
    if (sha256 === undefined || checksum(told as Omit<Head, 'sha256'>, pictures) !== sha256) {
        return undefined;
    }
    const { large, small, ...camera } = head;
    return {
        large: { width: large.width, height: large.height, bytes: pictures.subarray(0, large.length) },
        ...(small ? { small: { width: small.width, height: small.height, bytes: pictures.subarray(large.length, large.length + small.length) } } : {}),
        ...(camera.taken === undefined ? {} : { taken: camera.taken }), ...(camera.position ? { position: camera.position } : {}),
    };
}

/** Keeps what was used last in memory, before another cache: a preview asks for the same photographs after every edit. */
export function memoryBefore(behind: PhotoCache | undefined, mostBytes = 64 * 1024 ** 2): PhotoCache {
    const kept = new Map<string, PreparedPhoto>();
    const keys = new Map<string, string>();
    let held = 0;
    const sizeOf = ({ large, small }: PreparedPhoto) => large.bytes.length + (small?.bytes.length ?? 0);
    const drop = (key: string) => {
        const photo = kept.get(key);
        held -= photo ? sizeOf(photo) : 0;
        kept.delete(key);
    };
    const keep = (key: string, photo: PreparedPhoto) => {
        drop(key);
        kept.set(key, photo); // Last in a Map's order: used last.
        held += sizeOf(photo);
        for (const oldest of kept.keys()) {
            if (held <= mostBytes) {
                break;
            }
            drop(oldest);
        }
    };
    return {
        get: async key => {
            const photo = kept.get(key) ?? await behind?.get(key);
            if (photo) {
                keep(key, photo);
            }
            return photo;
        },
        set: async (key, photo) => {
            keep(key, photo);
            await behind?.set(key, photo);
        },
        keyOfStamp: async stamp => {
            const key = keys.get(stamp) ?? await behind?.keyOfStamp?.(stamp);
            if (key !== undefined) {
                keys.set(stamp, key);
            }
            return key;
        },
        setKeyOfStamp: async (stamp, key) => {
            keys.set(stamp, key);
            await behind?.setKeyOfStamp?.(stamp, key);
        },
    };
}
