import { chmod, mkdir, mkdtemp, readdir, readFile, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cacheFolder, folderCache, memoryBefore, pack, unpack } from '../../src/host/photo-cache.js';
import type { PreparedPhoto } from '../../src/report/photos.js';

const newFolder = () => mkdtemp(join(tmpdir(), 'garboard-cache-'));
const photo = (size: number, fill = 7): PreparedPhoto => ({
    large: { bytes: new Uint8Array(size).fill(fill), width: 1600, height: 1200 }, small: { bytes: new Uint8Array([1, 2, 3]), width: 560, height: 420 },
    taken: '2026-10-06 09:40:12', position: { latitude: 41.5, longitude: -70.25 },
});
/** Buffers and arrays of bytes alike. */
const plain = (prepared: PreparedPhoto | undefined) => prepared && { ...prepared, large: { ...prepared.large, bytes: [...prepared.large.bytes] }, ...(prepared.small ? { small: { ...prepared.small, bytes: [...prepared.small.bytes] } } : {}) };
const entriesIn = async (folder: string) => (await readdir(join(folder, 'prepared-photos'))).map(name => join(folder, 'prepared-photos', name));

test('an entry comes back as it was kept, in another process too', async () => {
    const folder = await newFolder();
    await folderCache({ folder }).set('key', photo(1000));
    expect(plain(await folderCache({ folder }).get('key') ?? undefined)).toEqual(plain(photo(1000)));
    expect(await folderCache({ folder }).get('other')).toBeUndefined();
});

test('any picture survives being packed, and no changed byte goes unseen', () => {
    const bytes = fc.uint8Array({ maxLength: 200 });
    fc.assert(fc.property(bytes, fc.option(bytes, { nil: undefined }), fc.nat(), fc.integer({ min: 1, max: 255 }), (large, small, at, change) => {
        const prepared: PreparedPhoto = { large: { bytes: large, width: 3, height: 2 }, ...(small ? { small: { bytes: small, width: 1, height: 1 } } : {}) };
        const content = Buffer.from(pack(prepared));
        expect(plain(unpack(content))).toEqual(plain(prepared));
        const index = at % content.length;
        content[index] = (content[index] ?? 0) ^ change;
        expect(unpack(content)).toBeUndefined();
    }));
});

test.each([['cut short', (content: Buffer) => content.subarray(0, 100)], ['emptied', () => Buffer.alloc(0)], ['overwritten', () => Buffer.from('null and void, and long enough')]])('an entry that was %s is as good as none, and mended', async (_, damage) => {
    const folder = await newFolder();
    const cache = folderCache({ folder });
    await cache.set('key', photo(1000));
    const [path = ''] = await entriesIn(folder);
    await writeFile(path, damage(await readFile(path)));
    expect(await cache.get('key')).toBeUndefined();
    await cache.set('key', photo(1000));
    expect(plain(await cache.get('key') ?? undefined)).toEqual(plain(photo(1000)));
});

test('stamps lead to keys', async () => {
    const folder = await newFolder();
    await folderCache({ folder }).setKeyOfStamp?.('file:///C:/Fotos/über%20Bord.jpg 1:2', 'key');
    expect(await folderCache({ folder }).keyOfStamp?.('file:///C:/Fotos/über%20Bord.jpg 1:2')).toBe('key');
    expect(await folderCache({ folder }).keyOfStamp?.('file:///C:/Fotos/über%20Bord.jpg 1:3')).toBeUndefined();
});

test('what was used longest ago is dropped first, and nothing that is not ours', async () => {
    const folder = await newFolder();
    await mkdir(join(folder, 'prepared-photos'), { recursive: true });
    await writeFile(join(folder, 'prepared-photos', 'holiday.jpg'), new Uint8Array(5_000_000));
    const filling = folderCache({ folder });
    for (let index = 0; index < 4; index++) {
        await filling.set(`key ${index}`, photo(100_000, index));
        const time = new Date(2026, 0, 10 + index);
        for (const path of await entriesIn(folder)) {
            if ((await stat(path)).mtimeMs > Date.now() - 3600_000 && !path.endsWith('.jpg')) {
                await utimes(path, time, time);
            }
        }
    }
    await filling.get('key 0'); // Used now, so no longer the oldest.
    await folderCache({ folder, mostBytes: 350_000 }).set('key 4', photo(100_000, 4));
    const left = await Promise.all([0, 1, 2, 3, 4].map(async index => await filling.get(`key ${index}`) !== undefined));
    expect(left).toEqual([true, false, false, true, true]);
    expect((await readdir(join(folder, 'prepared-photos'))).includes('holiday.jpg')).toBe(true);
});

test('two at once write the same entries without harm', async () => {
    const folder = await newFolder();
    const [one, other] = [folderCache({ folder, mostBytes: 60_000 }), folderCache({ folder, mostBytes: 60_000 })];
    await Promise.all(Array.from({ length: 40 }, (_, index) => (index % 2 ? one : other).set(`key ${index % 7}`, photo(10_000, index % 7))));
    for (let key = 0; key < 7; key++) {
        const kept = await one.get(`key ${key}`);
        expect(kept === undefined || kept.large.bytes.every(byte => byte === key)).toBe(true);
    }
    expect((await entriesIn(folder)).some(path => path.endsWith('.tmp'))).toBe(false);
});

describe('a folder that cannot be written to', () => {
    test('changes nothing but the time', async () => {
        const folder = await newFolder();
        await writeFile(join(folder, 'taken'), 'a file where the folder should be');
        const cache = memoryBefore(folderCache({ folder: join(folder, 'taken') }));
        await cache.set('key', photo(10));
        await cache.setKeyOfStamp?.('stamp', 'key');
        expect(plain(await cache.get('key'))).toEqual(plain(photo(10)));
        expect(await folderCache({ folder: join(folder, 'taken') }).get('key')).toBeUndefined();
    });

    test('is still read', async () => {
        const folder = await newFolder();
        await folderCache({ folder }).set('key', photo(10));
        await chmod(join(folder, 'prepared-photos'), 0o500);
        expect(plain(await folderCache({ folder }).get('key') ?? undefined)).toEqual(plain(photo(10)));
        await chmod(join(folder, 'prepared-photos'), 0o700);
    });
});

test('memory holds what was used last, up to a limit', async () => {
    const asked: string[] = [];
    const behind = { get: (key: string) => { asked.push(key); return undefined; }, set: () => undefined };
    const cache = memoryBefore(behind, 2500);
    await cache.set('a', photo(1000));
    await cache.set('b', photo(1000));
    await cache.get('a');
    await cache.set('c', photo(1000));
    expect(await Promise.all(['a', 'c', 'b'].map(async key => await cache.get(key) !== undefined))).toEqual([true, true, false]);
    expect(asked).toEqual(['b']);
});

test('the folder is the named one, the user\'s own, or none', () => {
    const before = process.env.GARBOARD_CACHE;
    try {
        process.env.GARBOARD_CACHE = '/somewhere/else';
        expect(cacheFolder()).toBe('/somewhere/else');
        process.env.GARBOARD_CACHE = '';
        expect(cacheFolder()).toBeUndefined();
        delete process.env.GARBOARD_CACHE;
        expect(cacheFolder()).toMatch(/garboard/);
    } finally {
        process.env.GARBOARD_CACHE = before ?? '';
    }
});
