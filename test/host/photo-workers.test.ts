import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import jpeg from 'jpeg-js';
import { beforeAll, expect, test } from 'vitest';
import { workerReducer } from '../../src/host/photo-workers.js';
import type { ReducingWork } from '../../src/report/photos.js';

let script = '';
let folder = '';

beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'garboard-worker-'));
    script = join(folder, 'photo-worker.cjs');
    // As the bundle is built.
    await build({
        entryPoints: ['src/host/photo-worker.ts'], outfile: script, bundle: true, platform: 'node', format: 'cjs', target: 'node20', loader: { '.wasm': 'binary' }, mainFields: ['module', 'main'],
        define: { 'import.meta.url': '""' }, logOverride: { 'empty-import-meta': 'silent' }, logLevel: 'error',
    });
});

const picture = (width: number, height: number) => new Uint8Array(jpeg.encode({ data: new Uint8Array(width * height * 4).fill(150), width, height }, 90).data);
const work: ReducingWork = { format: 'jpeg', orientation: 6, size: { maxEdge: 200, quality: 75, smallEdge: 50 } };

test('photographs are reduced on threads, more of them than there are threads', { timeout: 120_000 }, async () => {
    const reducer = workerReducer({ script, threads: 2, idleMs: 50 });
    const photos = await Promise.all(Array.from({ length: 5 }, (_, index) => reducer.reduce(picture(400, 200 + index * 10), work)));
    expect(photos.map(({ large }) => [large.width, large.height])).toEqual([200, 210, 220, 230, 240].map(height => [height / 2, 200]));
    const decoded = jpeg.decode(photos[0]?.large.bytes ?? new Uint8Array(), { useTArray: true });
    expect([decoded.width, decoded.height]).toEqual([100, 200]);
    expect(photos[0]?.small).toMatchObject({ width: 25, height: 50 });
});

test('the thread that asks goes on meanwhile', { timeout: 120_000 }, async () => {
    const reducer = workerReducer({ script, threads: 1, idleMs: 50 });
    let turns = 0;
    const timer = setInterval(() => turns++, 5);
    await reducer.reduce(picture(1500, 1000), work);
    clearInterval(timer);
    expect(turns).toBeGreaterThan(5);
});

test('a damaged photograph is told, and the next one is reduced', { timeout: 120_000 }, async () => {
    const reducer = workerReducer({ script, threads: 1, idleMs: 50 });
    await expect(reducer.reduce(new Uint8Array([0xff, 0xd8, 0xff, 0, 0]), work)).rejects.toThrow();
    expect((await reducer.reduce(picture(400, 200), work)).large).toMatchObject({ width: 100, height: 200 });
});

test('a thread that dies takes one photograph with it and no more', async () => {
    const dying = join(folder, 'dying.cjs');
    await writeFile(dying, `const { parentPort } = require('node:worker_threads');
        parentPort.on('message', ({ id, bytes }) => bytes[0] === 1 ? process.exit(3) : parentPort.postMessage({ id, photo: { large: { bytes, width: 1, height: 1 } } }));`);
    const reducer = workerReducer({ script: dying, threads: 1, idleMs: 50 });
    const results = await Promise.allSettled([2, 1, 3].map(first => reducer.reduce(new Uint8Array([first]), work)));
    expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
});

test('a script that is not there rejects', async () => {
    await expect(workerReducer({ script: join(folder, 'gone.cjs'), threads: 1 }).reduce(picture(20, 20), work)).rejects.toThrow();
});
