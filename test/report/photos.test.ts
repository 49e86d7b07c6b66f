import jpeg from 'jpeg-js';
import piexif from 'piexifjs';
import { PNG } from 'pngjs';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { loadSharp, nativeReducer } from '../../src/host/photo-native.js';
import { positionText, readExif } from '../../src/report/photo-exif.js';
import { isWhole } from '../../src/report/photo-formats.js';
import { formatOf, knownPhoto, photosForPrint, preparePhoto, sizeOf, type EmbeddedPhoto, type PhotoReducer, type PreparedPhoto } from '../../src/report/photos.js';
import { shrink } from '../../src/report/pixels.js';
import { reducerWith } from '../../src/report/wasm-codec.js';
import { codec } from './sample.js';

const loaded = await loadSharp();
if (!loaded) {
    throw new Error('The native image library is among what the tests need.');
}
const wasm = reducerWith(codec);
const native = nativeReducer(loaded);

const width = 96;
const height = 64;
const colors = { topLeft: [220, 20, 20], topRight: [20, 200, 20], bottomLeft: [20, 20, 220], bottomRight: [240, 240, 240] } as const;

/** Which side of the picture as seen the first row and the first column stored are (CIPA DC-008, tag Orientation). */
const sides = [['top', 'left'], ['top', 'right'], ['bottom', 'right'], ['bottom', 'left'], ['left', 'top'], ['right', 'top'], ['right', 'bottom'], ['left', 'bottom']] as const;

function colorAt(x: number, y: number): readonly [number, number, number] {
    return y < height / 2 ? (x < width / 2 ? colors.topLeft : colors.topRight) : x < width / 2 ? colors.bottomLeft : colors.bottomRight;
}

/** The pixels of the picture as a camera in this orientation stores them. */
function storedPixels(orientation: number): { data: Uint8Array; width: number; height: number } {
    const [row0, column0] = sides[orientation - 1] ?? sides[0];
    const isSideways = row0 === 'left' || row0 === 'right';
    const [w, h] = isSideways ? [height, width] : [width, height];
    const data = new Uint8Array(w * h * 4).fill(255);
    const along = (side: string, steps: number) => side === 'top' || side === 'left' ? steps : side === 'bottom' ? height - 1 - steps : width - 1 - steps;
    for (let row = 0; row < h; row++) {
        for (let column = 0; column < w; column++) {
            const [x, y] = isSideways ? [along(row0, row), along(column0, column)] : [along(column0, column), along(row0, row)];
            data.set(colorAt(x, y), (row * w + column) * 4);
        }
    }
    return { data, width: w, height: h };
}

type Tags = Readonly<Record<string, Readonly<Record<number, unknown>>>>;

function withExif(bytes: Uint8Array, tags: Tags): Uint8Array {
    return new Uint8Array(Buffer.from(piexif.insert(piexif.dump(tags), Buffer.from(bytes).toString('binary')), 'binary'));
}

function stored(orientation: number): Uint8Array {
    return withExif(jpeg.encode(storedPixels(orientation), 95).data, {
        '0th': { [piexif.ImageIFD.Orientation]: orientation }, 'Exif': { [piexif.ExifIFD.DateTimeOriginal]: '2026:10:06 09:40:12' }, 'GPS': { [piexif.GPSIFD.GPSLatitudeRef]: 'N' },
    });
}

const upright = () => sharp(storedPixels(1).data, { raw: { width, height, channels: 4 } });

function bytesOf(photo: EmbeddedPhoto): Buffer {
    if ('error' in photo) {
        throw new Error(photo.error);
    }
    return Buffer.from(photo.dataUri.replace('data:image/jpeg;base64,', ''), 'base64');
}

/** Read by another decoder than those under test. */
function pixels(photo: EmbeddedPhoto): { width: number; height: number; at: (x: number, y: number) => number[] } {
    const image = jpeg.decode(bytesOf(photo), { useTArray: true });
    return { width: image.width, height: image.height, at: (x, y) => [...image.data.subarray((y * image.width + x) * 4, (y * image.width + x) * 4 + 3)] };
}

const near = (actual: number[], expected: readonly number[], by = 24) => actual.every((value, i) => Math.abs(value - (expected[i] ?? 0)) < by);

const quarters = [[12, 8], [84, 8], [12, 56], [84, 56]] as const;

function expectUpright(photo: EmbeddedPhoto): void {
    const image = pixels(photo);
    expect([image.width, image.height]).toEqual([width, height]);
    for (const [x, y] of quarters) {
        expect(near(image.at(x, y), colorAt(x, y)), `${x},${y} is ${image.at(x, y).join(' ')}`).toBe(true);
    }
}

const prepare = (bytes: Uint8Array, reducer: PhotoReducer, file = 'a.jpg', size = photosForPrint) => preparePhoto(bytes, reducer, { size, file });

describe.each([['WebAssembly', wasm], ['the native library', native]])('preparePhoto with %s', (_, reducer) => {
    test.each([1, 2, 3, 4, 5, 6, 7, 8])('turns orientation %i upright', async orientation => {
        expectUpright(await prepare(stored(orientation), reducer));
    });

    test('keeps the time and leaves all other metadata behind', async () => {
        const photo = await prepare(stored(6), reducer, 'photos/a.jpg');
        expect(photo).toMatchObject({ taken: '2026-10-06 09:40:12', alt: 'a.jpg' });
        expect(bytesOf(photo).includes('Exif')).toBe(false);
    });

    test('reduces to the longest edge and makes the small version', async () => {
        expect(await prepare(stored(1), reducer, 'a.jpg', { maxEdge: 48, quality: 80, smallEdge: 24 })).toMatchObject({ width: 48, height: 32, small: { width: 24, height: 16 } });
    });

    test('never enlarges, and makes no small version that is hardly smaller', async () => {
        const photo = await prepare(stored(1), reducer, 'a.jpg', { maxEdge: 400, quality: 80, smallEdge: 90 });
        expect(photo).toMatchObject({ width, height });
        expect(photo).not.toHaveProperty('small');
    });

    test('reads PNG, over white where it is transparent', async () => {
        const png = new PNG({ width: 8, height: 8 });
        png.data.fill(0);
        expect(pixels(await prepare(new Uint8Array(PNG.sync.write(png)), reducer)).at(4, 4)).toEqual([255, 255, 255]);
    });

    test.each([
        ['a progressive JPEG', () => upright().jpeg({ progressive: true, quality: 95 })],
        ['a JPEG of full chroma', () => upright().jpeg({ chromaSubsampling: '4:4:4', quality: 95 })],
        ['a PNG of 16 bits', () => upright().toColourspace('rgb16').png()],
        ['a PNG with a palette', () => upright().png({ palette: true })],
        ['an interlaced PNG', () => upright().png({ progressive: true })],
        ['a WebP', () => upright().webp({ quality: 95 })],
        ['a WebP without loss', () => upright().webp({ lossless: true })],
    ])('reads %s', async (_kind, make) => {
        expectUpright(await prepare(new Uint8Array(await make().toBuffer()), reducer));
    });

    test('turns a WebP by its EXIF data', async () => {
        const { data, width: w, height: h } = storedPixels(6);
        const webp = await sharp(data, { raw: { width: w, height: h, channels: 4 } }).webp({ quality: 95 }).withMetadata({ orientation: 6 }).toBuffer();
        expect((await readExif(new Uint8Array(webp))).orientation).toBe(6);
        expectUpright(await prepare(new Uint8Array(webp), reducer));
    });

    test('reads a gray JPEG', async () => {
        const gray = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#808080' } }).grayscale().jpeg({ quality: 95 }).toBuffer();
        expect(near(pixels(await prepare(new Uint8Array(gray), reducer)).at(20, 15), [128, 128, 128], 4)).toBe(true);
    });

    test('takes a film behind the picture for no part of it', async () => {
        expectUpright(await prepare(new Uint8Array(Buffer.concat([stored(1), Buffer.from('MotionPhoto_Data....ftypmp42')])), reducer));
    });

    test.each([
        ['half a JPEG', async () => stored(1).slice(0, Math.floor(stored(1).length / 2)), 'the file is cut short; copy it again from the camera'],
        ['a JPEG without its end', async () => stored(1).slice(0, -2), 'the file is cut short; copy it again from the camera'],
        ['half a PNG', async () => { const png = await upright().png().toBuffer(); return png.subarray(0, png.length / 2); }, 'the file is cut short; copy it again from the camera'],
        ['half a WebP', async () => { const webp = await upright().webp().toBuffer(); return webp.subarray(0, webp.length / 2); }, 'the file is cut short; copy it again from the camera'],
        ['a film', async () => Buffer.from([0, 0, 0, 20, ...Buffer.from('ftypmp42'), 0, 0, 0, 0, ...Buffer.from('isom')]), 'not a photograph that can be read here; use JPEG, PNG or WebP'],
        ['markup', async () => Buffer.from('<svg onload=alert(1)>'), 'not a photograph that can be read here; use JPEG, PNG or WebP'],
        ['nothing', async () => Buffer.alloc(0), 'the file is empty; copy it again from the camera'],
        ['a head alone', async () => Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 4]), 'the file is damaged; copy it again from the camera'],
        ['a claim of 4,294 megapixels', async () => Buffer.from([0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0xff, 0xff, 0xff, 0xff, 3, 0, 0, 0, 0]), '65535 × 65535 pixels are too many; reduce it first'],
        ['a TIFF', () => upright().tiff().toBuffer(), 'TIFF cannot be read here; export it as JPEG and name the new file'],
        ['a GIF', () => upright().gif().toBuffer(), 'GIF cannot be read here; export it as JPEG and name the new file'],
    ])('says what is wrong with %s', async (_kind, make, error) => {
        expect(await prepare(new Uint8Array(await make()), reducer, 'x.jpg')).toEqual({ error: `x.jpg: ${error}` });
    });

    test('works on after a photograph that breaks the decoder', async () => {
        const broken = stored(1);
        broken.fill(0xab, 650, broken.length - 2);
        await prepare(broken, reducer, 'broken.jpg');
        expectUpright(await prepare(stored(1), reducer));
    });
});

describe('what only the native library reads', () => {
    test('AVIF', async () => {
        const avif = new Uint8Array(await upright().avif({ quality: 90, effort: 0 }).toBuffer());
        expect(formatOf(avif)).toBe('avif');
        expect(sizeOf(avif, 'avif')).toEqual({ width, height });
        expectUpright(await prepare(avif, native));
        expect(await prepare(avif, wasm, 'a.avif')).toEqual({ error: 'a.avif: AVIF cannot be read here; export it as JPEG and name the new file' });
    });

    test('CMYK', async () => {
        const cmyk = new Uint8Array(await sharp({ create: { width: 40, height: 30, channels: 3, background: '#c83c28' } }).toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer());
        expect((await sharp(cmyk).metadata()).space).toBe('cmyk');
        // There and back through an ink profile; red stays red.
        expect(near(pixels(await prepare(cmyk, native)).at(20, 15), [200, 60, 40], 30)).toBe(true);
        expect(await prepare(cmyk, wasm)).toEqual({ error: 'a.jpg: the file is damaged or of an unusual kind; save it again as JPEG' });
    });

    test('a PNG with a wrong byte is told', async () => {
        const png = await upright().png().toBuffer();
        png[png.length >> 1] = (png[png.length >> 1] ?? 0) ^ 0xff;
        expect(await prepare(new Uint8Array(png), native)).toEqual({ error: 'a.jpg: the file is damaged or of an unusual kind; save it again as JPEG' });
    });

    test('a wide color space is brought to sRGB', async () => {
        const [red, green, blue] = [200, 100, 50];
        const wide = new Uint8Array(await sharp({ create: { width: 40, height: 30, channels: 3, background: { r: red, g: green, b: blue } } }).withIccProfile('p3').jpeg({ quality: 98 }).toBuffer());
        // The numbers in the file are those of Display P3: as sRGB they would be another color.
        const inFile = jpeg.decode(wide, { useTArray: true }).data.subarray(0, 3);
        expect(near([...inFile], [red, green, blue], 8)).toBe(false);
        expect(near(pixels(await prepare(wide, native)).at(20, 15), [red, green, blue], 5)).toBe(true);
    });

    test('the first picture of an animation', async () => {
        const frames = await sharp(await Promise.all([[255, 0, 0], [0, 0, 255]].map(([r = 0, g = 0, b = 0]) => sharp({ create: { width: 20, height: 20, channels: 3, background: { r, g, b } } }).png().toBuffer())), { join: { animated: true } })
            .webp({ lossless: true }).toBuffer();
        expect(near(pixels(await prepare(new Uint8Array(frames), native)).at(10, 10), [255, 0, 0])).toBe(true);
        expect(await prepare(new Uint8Array(frames), wasm, 'moving.webp')).toEqual({ error: 'moving.webp: the file is damaged or of an unusual kind; save it again as JPEG' });
    });
});

/** The major brand of HEIC with its compatible brands (ISO/IEC 23008-12, annex B). */
const heic = new Uint8Array([0, 0, 0, 24, ...Buffer.from('ftypheic'), 0, 0, 0, 0, ...Buffer.from('mif1heic')]);

test('HEIC is told with a way out', async () => {
    expect(formatOf(heic)).toBe('heic');
    for (const reducer of [wasm, native]) {
        if (!reducer.reads('heic')) {
            expect(await prepare(heic, reducer, 'photos/x.heic')).toEqual({
                error: 'photos/x.heic: HEIC cannot be read here; set the phone\'s camera to save JPEG, or export it as JPEG (on macOS: sips -s format jpeg FILE --out FILE.jpg), and name the new file',
            });
        }
    }
});

test('an AVIF that names the general brand first is one', () => {
    expect(formatOf(new Uint8Array([0, 0, 0, 28, ...Buffer.from('ftypmif1'), 0, 0, 0, 0, ...Buffer.from('mif1avifmiaf')]))).toBe('avif');
});

test('where the native library does not know a file, the codec takes it; what it calls damaged stays so', async () => {
    const failing = (message: string) => Object.assign(() => { throw new Error(message); }, { format: loaded.format, versions: loaded.versions }) as unknown as typeof loaded; // Called, and asked for these two alone.
    expectUpright(await prepare(stored(1), nativeReducer(failing('Input buffer contains unsupported image format'), wasm)));
    expect(await prepare(stored(1), nativeReducer(failing('VipsJpeg: premature end of JPEG image'), wasm), 'a.jpg')).toEqual({ error: 'a.jpg: the file is damaged or of an unusual kind; save it again as JPEG' });
});

describe('results by content and stamp', () => {
    const refusing: PhotoReducer = { ...wasm, reduce: () => Promise.reject(new Error('reduced again')) };

    test('nothing is decoded when the content is known, whatever the file is called', async () => {
        const cache = new Map<string, PreparedPhoto>();
        const first = await preparePhoto(stored(3), wasm, { size: photosForPrint, file: 'a.jpg', cache });
        expect(await preparePhoto(stored(3), refusing, { size: photosForPrint, file: 'b.jpg', cache })).toEqual({ ...first, alt: 'b.jpg' });
        expect(await preparePhoto(stored(4), refusing, { size: photosForPrint, file: 'a.jpg', cache })).toHaveProperty('error');
        expect(await preparePhoto(stored(3), refusing, { size: { ...photosForPrint, quality: 60 }, file: 'a.jpg', cache })).toHaveProperty('error');
    });

    test('an unchanged stamp finds it without the bytes', async () => {
        const entries = new Map<string, PreparedPhoto>();
        const stamps = new Map<string, string>();
        const cache = { get: (key: string) => entries.get(key), set: (key: string, photo: PreparedPhoto) => entries.set(key, photo), keyOfStamp: (stamp: string) => stamps.get(stamp), setKeyOfStamp: (stamp: string, key: string) => stamps.set(stamp, key) };
        const options = { size: photosForPrint, file: 'a.jpg', cache, stamp: 'file:///a.jpg 100:5' };
        expect(await knownPhoto(options)).toBeUndefined();
        const photo = await preparePhoto(stored(1), wasm, options);
        expect(await knownPhoto(options)).toEqual(photo);
        expect(await knownPhoto({ ...options, stamp: 'file:///a.jpg 100:6' })).toBeUndefined();
        expect(await knownPhoto({ ...options, size: { maxEdge: 50, quality: 75 } })).toBeUndefined();
    });
});

describe('what the camera wrote', () => {
    const plain = jpeg.encode(storedPixels(1), 80).data;
    const gps = (latitude: unknown, north: string, longitude: unknown, east: string) => ({
        GPS: { [piexif.GPSIFD.GPSLatitudeRef]: north, [piexif.GPSIFD.GPSLatitude]: latitude, [piexif.GPSIFD.GPSLongitudeRef]: east, [piexif.GPSIFD.GPSLongitude]: longitude },
    });
    const positionOf = async (tags: Tags) => (await readExif(withExif(plain, tags))).position;

    // Expected degrees by hand from CIPA DC-008, 4.6.6 (GPSLatitude: degrees, minutes and seconds as three rationals).
    test.each([
        [[[41, 1], [7, 1], [2424, 100]], 'N', [[70, 1], [7, 1], [2424, 100]], 'W', 41.1234, -70.1234, '41.1234° N, 70.1234° W'],
        [[[33, 1], [51, 1], [2500, 100]], 'S', [[151, 1], [12, 1], [5400, 100]], 'E', -33.856944, 151.215, '33.8569° S, 151.2150° E'],
        [[[59, 1], [5430, 100], [0, 1]], 'N', [[10, 1], [4530, 100], [0, 1]], 'E', 59.905, 10.755, '59.9050° N, 10.7550° E'],
        [[[0, 1], [0, 1], [36, 1]], 'S', [[0, 1], [30, 1], [0, 1]], 'W', -0.01, -0.5, '0.0100° S, 0.5000° W'],
    ])('degrees, minutes and seconds %j %s', async (latitude, north, longitude, east, expectedLatitude, expectedLongitude, text) => {
        const position = await positionOf(gps(latitude, north, longitude, east));
        expect(position?.latitude).toBeCloseTo(expectedLatitude, 6);
        expect(position?.longitude).toBeCloseTo(expectedLongitude, 6);
        expect(position && positionText(position)).toBe(text);
    });

    test.each([
        ['no fix, written as zeros', gps([[0, 1], [0, 1], [0, 1]], 'N', [[0, 1], [0, 1], [0, 1]], 'E')],
        ['nothing over nothing', gps([[0, 0], [0, 0], [0, 0]], 'N', [[0, 0], [0, 0], [0, 0]], 'E')],
        ['beyond the pole', gps([[91, 1], [0, 1], [0, 1]], 'N', [[10, 1], [0, 1], [0, 1]], 'E')],
        ['no side', gps([[41, 1], [0, 1], [0, 1]], '', [[10, 1], [0, 1], [0, 1]], 'E')],
        ['half of it', { GPS: { [piexif.GPSIFD.GPSLatitudeRef]: 'N', [piexif.GPSIFD.GPSLatitude]: [[41, 1], [0, 1], [0, 1]] } }],
    ])('%s is no position', async (_kind, tags) => {
        expect(await positionOf(tags)).toBeUndefined();
    });

    test('goes with the prepared photograph', async () => {
        const photo = await prepare(withExif(plain, gps([[41, 1], [30, 1], [0, 1]], 'N', [[70, 1], [15, 1], [0, 1]], 'W')), native);
        expect(photo).toMatchObject({ position: { latitude: 41.5, longitude: -70.25 } });
        expect(bytesOf(photo).includes('Exif')).toBe(false);
    });

    test('broken data is taken for none', async () => {
        const broken = stored(6);
        const at = Buffer.from(broken).indexOf('Exif');
        broken.fill(0xee, at + 6, at + 60);
        expect(await readExif(broken)).toEqual({ orientation: 1 });
    });
});

test('formats and sizes are read from the first bytes', async () => {
    expect(formatOf(stored(6))).toBe('jpeg');
    expect(sizeOf(stored(6), 'jpeg')).toEqual({ width: height, height: width });
    const { data, width: w, height: h } = storedPixels(6);
    const webp = sharp(data, { raw: { width: w, height: h, channels: 4 } });
    for (const bytes of [await webp.clone().webp().toBuffer(), await webp.clone().webp({ lossless: true }).toBuffer(), await webp.clone().webp().withMetadata({ orientation: 3 }).toBuffer()]) {
        expect(sizeOf(new Uint8Array(bytes), 'webp')).toEqual({ width: w, height: h });
    }
});

test('a file is whole when its last byte is there', async () => {
    for (const [format, bytes] of [['jpeg', stored(1)], ['png', await upright().png().toBuffer()], ['webp', await upright().webp({ lossless: true }).toBuffer()]] as const) {
        expect(isWhole(new Uint8Array(bytes), format)).toBe(true);
        for (const share of [0.3, 0.6, 0.95]) {
            expect(isWhole(new Uint8Array(bytes).subarray(0, Math.floor(bytes.length * share)), format), `${format} ${share}`).toBe(false);
        }
    }
});

test('shrinking is the mean of the area covered', () => {
    const data = new Uint8ClampedArray([0, 0, 0, 255, 100, 100, 100, 255, 200, 200, 200, 255]);
    expect([...shrink({ data, width: 3, height: 1 }, { width: 2, height: 1 }).data]).toEqual([33, 33, 33, 255, 167, 167, 167, 255]);
});
