import { mkdtemp, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';
import { assembleReport, preparePhotos, type PhotoSource } from '../../src/report/assemble.js';
import { nodePhotoSource } from '../../src/host/node-photos.js';
import { photosForPrint } from '../../src/report/photos.js';
import { PNG } from 'pngjs';

async function survey(photos: string) {
    const folder = await mkdtemp(join(tmpdir(), 'garboard-photos-'));
    await writeFile(join(folder, 'a.png'), PNG.sync.write(new PNG({ width: 8, height: 6 })));
    const text = `survey "N-1" condition-and-value { client: "X"  issued: 2026-01-30  attended 2026-01-20 ashore "yard" }
vessel "Tern" { type: sailing-yacht
${photos} }`;
    const analysis = analyseText(text, pathToFileURL(join(folder, 'a.survey')).href);
    return assembleReport({ ...analysis, problems: [], gaps: [] }, { photos: nodePhotoSource(), mode: 'file', lineOf: () => 3 });
}

it('shows a photograph from the disk', async () => {
    const { html, openErrors, photoFaults } = await survey('photo "a.png" "Afloat"');
    expect(photoFaults).toEqual([]);
    expect(openErrors).toBe(0);
    expect(html).toContain('data:image/jpeg;base64,');
});

it('makes a draft of a report whose photograph is missing, and lists it', async () => {
    const { html, openErrors, photoFaults } = await survey('photo "gone.jpg" "Afloat"');
    expect(photoFaults).toEqual(['gone.jpg: there is no such file']);
    expect(openErrors).toBe(1);
    expect(html).toContain('class="draft"');
    expect(html).toMatch(/line 3<\/span>[^]*gone\.jpg: there is no such file/);
});

const six = ['a', 'b', 'c', 'd', 'e', 'f'];
const shown = (names: readonly string[]) => analyseText(`vessel "Tern" { type: sailing-yacht
${names.map(name => `photo "${name}.png" "Afloat"`).join('\n')} }`, 'file:///s/a.survey').record;

/** Photographs that take as long as the test says. */
function slowSource(reduce: (name: string) => Promise<void>, atOnce?: number): PhotoSource {
    return {
        read: uri => Promise.resolve(new Uint8Array(PNG.sync.write(new PNG({ width: 8 + (uri.charCodeAt(uri.length - 5) - 97), height: 6 })))),
        reducer: () => Promise.resolve({
            id: 'slow', reads: () => true,
            reduce: async bytes => {
                const width = bytes[19] ?? 0;
                await reduce(six[width - 8] ?? '?');
                return { large: { bytes, width, height: 6 } };
            },
        }),
        cache: new Map(), ...(atOnce === undefined ? {} : { atOnce }),
    };
}

const pause = (ms: number) => new Promise<void>(resolve => { setTimeout(resolve, ms); });

describe('many photographs', () => {
    it('are worked at so many at once, and come in the order of the record', async () => {
        let working = 0;
        let most = 0;
        const source = slowSource(async name => {
            most = Math.max(most, ++working);
            await pause(name === 'a' ? 40 : 5);
            working--;
        }, 3);
        const photos = await preparePhotos(shown([...six, 'a']), source, photosForPrint);
        expect(most).toBe(3);
        expect([...photos.keys()]).toEqual(six.map(name => `${name}.png`));
        expect([...photos.values()].map(photo => 'width' in photo && photo.width)).toEqual([8, 9, 10, 11, 12, 13]);
    });

    it('tell how far they are', async () => {
        const told: (string | number)[][] = [];
        await preparePhotos(shown(six.slice(0, 2)), slowSource(() => Promise.resolve()), photosForPrint, { onProgress: (...args) => told.push(args.filter(arg => arg !== undefined)) });
        expect(told).toEqual([[0, 2], [1, 2, 'a.png'], [2, 2, 'b.png']]);
    });

    it('stop when told to', async () => {
        const stop = new AbortController();
        const begun: string[] = [];
        const source = slowSource(async name => { begun.push(name); await pause(1); }, 2);
        await expect(preparePhotos(shown(six), source, photosForPrint, { signal: stop.signal, onProgress: done => { if (done === 2) { stop.abort(); } } })).rejects.toMatchObject({ name: 'AbortError' });
        await pause(20);
        expect(begun.length).toBeLessThan(6);
        await expect(preparePhotos(shown(six), source, photosForPrint, { signal: AbortSignal.abort() })).rejects.toMatchObject({ name: 'AbortError' });
    });
});

it('an unchanged photograph is neither read nor reduced by the next process', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'garboard-photos-'));
    const cacheFolder = await mkdtemp(join(tmpdir(), 'garboard-cache-'));
    const path = join(folder, 'a.png');
    await writeFile(path, PNG.sync.write(new PNG({ width: 8, height: 6 })));
    const record = { ...shown(['a']), mainUri: pathToFileURL(join(folder, 'a.survey')).href };
    const first = await preparePhotos(record, nodePhotoSource({ cacheFolder }), photosForPrint);
    const refusing: PhotoSource = { ...nodePhotoSource({ cacheFolder }), read: () => Promise.reject(new Error('read again')), reducer: () => Promise.reject(new Error('reduced again')) };
    expect(await preparePhotos(record, refusing, photosForPrint)).toEqual(first);

    // A file of the same content under another time is read, but not reduced.
    await utimes(path, 1, 1);
    const native = nodePhotoSource({ cacheFolder });
    const reducer = await native.reducer();
    let reductions = 0;
    const counting: PhotoSource = { ...native, reducer: () => Promise.resolve({ ...reducer, reduce: (...args) => { reductions++; return reducer.reduce(...args); } }) };
    expect(await preparePhotos(record, counting, photosForPrint)).toEqual(first);
    expect(reductions).toBe(0);
    await writeFile(path, PNG.sync.write(new PNG({ width: 9, height: 6 })));
    expect((await preparePhotos(record, counting, photosForPrint)).get('a.png')).toMatchObject({ width: 9 });
    expect(reductions).toBe(1);
});

it('without the native library the report has its photographs all the same', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'garboard-photos-'));
    await writeFile(join(folder, 'a.png'), PNG.sync.write(new PNG({ width: 8, height: 6 })));
    const record = { ...shown(['a']), mainUri: pathToFileURL(join(folder, 'a.survey')).href };
    const photos = await preparePhotos(record, nodePhotoSource({ cacheFolder: undefined, loadNative: () => Promise.resolve(undefined) }), photosForPrint);
    expect(photos.get('a.png')).toMatchObject({ width: 8, height: 6 });
});
