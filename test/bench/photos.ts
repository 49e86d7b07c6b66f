/**
 * Photographs of twelve megapixels into the report, beside the bare resize of the same files by the image library
 * (sharp, Apache-2.0) with as many at once on the same cores: from an empty cache, and again when nothing has changed.
 */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import sharp from 'sharp';
import { analyseText } from '../../src/checks/survey.js';
import { nodePhotoSource } from '../../src/host/node-photos.js';
import { preparePhotos } from '../../src/report/assemble.js';
import { photosForPrint } from '../../src/report/photos.js';
import { median } from './checks.js';

const [width, height] = [4000, 3000];
/** Pictures drawn; the files differ in their last bytes, so that no two have the same content. */
const drawnPictures = 8;

async function draw(folder: string, count: number): Promise<string[]> {
    await mkdir(folder, { recursive: true });
    const drawn: Buffer[] = [];
    for (let index = 0; index < Math.min(count, drawnPictures); index++) {
        // Grain of several pixels, as of a photograph: noise of single pixels would be nothing but size.
        const grain = sharp({ create: { width: width / 4, height: height / 4, channels: 3, background: '#888888', noise: { type: 'gaussian', mean: 128, sigma: 40 } } });
        drawn.push(await sharp(await grain.png().toBuffer()).resize(width, height).jpeg({ quality: 92 }).withMetadata({ orientation: index % 2 === 0 ? 1 : 6 }).toBuffer());
    }
    const files = Array.from({ length: count }, (_, index) => `${String(index + 1).padStart(4, '0')}.jpg`);
    await Promise.all(files.map((file, index) => writeFile(join(folder, file), Buffer.concat([drawn[index % drawn.length] ?? Buffer.alloc(0), Buffer.from(file)]))));
    return files;
}

async function bareResize(folder: string, files: readonly string[], atOnce: number): Promise<void> {
    let next = 0;
    await Promise.all(Array.from({ length: atOnce }, async () => {
        for (let index = next++; index < files.length; index = next++) {
            const { maxEdge, quality } = photosForPrint;
            await sharp(await readFile(join(folder, files[index] ?? ''))).autoOrient().resize(maxEdge, maxEdge, { fit: 'inside' }).jpeg({ quality }).toBuffer();
        }
    }));
}

interface Cost {
    /** By the clock, and of all cores together, in seconds. */
    readonly wall: number;
    readonly cpu: number;
}

async function timed(work: () => Promise<unknown>): Promise<Cost> {
    const start = performance.now();
    const before = process.cpuUsage();
    await work();
    const { user, system } = process.cpuUsage(before);
    return { wall: (performance.now() - start) / 1000, cpu: (user + system) / 1e6 };
}

/** Prints the comparison. */
export async function benchPhotos(count = 200, rounds = 3): Promise<void> {
    const root = await mkdtemp(join(tmpdir(), 'garboard-bench-photos-'));
    try {
        const folder = join(root, 'photos');
        const files = await draw(folder, count);
        const { record } = analyseText(`vessel "Bench" { type: sailing-yacht\n${files.map(file => `photo "photos/${file}"`).join('\n')} }`, pathToFileURL(join(root, 'a.survey')).href);
        sharp.concurrency(1);
        sharp.cache(false);
        const ratios = { cold: [] as number[], again: [] as number[], coldCpu: [] as number[], againCpu: [] as number[] };
        const seconds = { bare: [] as number[], cold: [] as number[], again: [] as number[] };
        for (let round = 0; round < rounds; round++) {
            const cacheFolder = join(root, `cache-${round}`);
            const prepare = async () => {
                const photos = await preparePhotos(record, nodePhotoSource({ cacheFolder }), photosForPrint);
                const faults = [...photos.values()].filter(photo => 'error' in photo);
                if (faults.length > 0) {
                    throw new Error(JSON.stringify(faults[0]));
                }
            };
            const atOnce = nodePhotoSource({ cacheFolder }).atOnce ?? 1;
            const bare = await timed(() => bareResize(folder, files, atOnce));
            const cold = await timed(prepare);
            const again = await timed(prepare);
            // The resize once more: what else the machine does weighs on both alike.
            const bareAfter = await timed(() => bareResize(folder, files, atOnce));
            const mean = { wall: (bare.wall + bareAfter.wall) / 2, cpu: (bare.cpu + bareAfter.cpu) / 2 };
            seconds.bare.push(mean.wall);
            seconds.cold.push(cold.wall);
            seconds.again.push(again.wall);
            ratios.cold.push(cold.wall / mean.wall);
            ratios.again.push(again.wall / mean.wall);
            ratios.coldCpu.push(cold.cpu / mean.cpu);
            ratios.againCpu.push(again.cpu / mean.cpu);
            await rm(cacheFolder, { recursive: true, force: true });
        }
        const { maxEdge, smallEdge } = photosForPrint;
        console.log(`\nPhotographs: ${count} of ${width * height / 1e6} megapixels to ${maxEdge} and ${smallEdge ?? 0} pixels, ${availableParallelism()} cores, p50 of ${rounds} rounds.`);
        console.log(`bare resize ${median(seconds.bare).toFixed(1)} s, into the report ${median(seconds.cold).toFixed(1)} s, unchanged ${median(seconds.again).toFixed(2)} s`);
        const list = (values: readonly number[]) => values.map(value => value.toFixed(2)).join(', ');
        console.log(`Garboard/bare resize by the clock: cold ${median(ratios.cold).toFixed(2)} (budget 1.15; rounds ${list(ratios.cold)}), unchanged ${median(ratios.again).toFixed(3)}`);
        // On a machine that is busy otherwise the clock tells little, and this about the same.
        console.log(`Garboard/bare resize in processor time: cold ${median(ratios.coldCpu).toFixed(2)} (rounds ${list(ratios.coldCpu)}), unchanged ${median(ratios.againCpu).toFixed(3)}`);
    } finally {
        await rm(root, { recursive: true, force: true });
    }
}
