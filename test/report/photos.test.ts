import jpeg from 'jpeg-js';
import piexif from 'piexifjs';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { formatOf, photosForPrint, preparePhoto, sizeOf, type EmbeddedPhoto } from '../../src/report/photos.js';
import { shrink } from '../../src/report/pixels.js';
import { codec } from './sample.js';

const width = 96;
const height = 64;
const colors = { topLeft: [220, 20, 20], topRight: [20, 200, 20], bottomLeft: [20, 20, 220], bottomRight: [240, 240, 240] } as const;

/** Which side of the picture as seen the first row and the first column stored are (CIPA DC-008, tag Orientation). */
const sides = [['top', 'left'], ['top', 'right'], ['bottom', 'right'], ['bottom', 'left'], ['left', 'top'], ['right', 'top'], ['right', 'bottom'], ['left', 'bottom']] as const;

function colorAt(x: number, y: number): readonly [number, number, number] {
    return y < height / 2 ? (x < width / 2 ? colors.topLeft : colors.topRight) : x < width / 2 ? colors.bottomLeft : colors.bottomRight;
}

function stored(orientation: number): Uint8Array {
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
    const plain = Buffer.from(jpeg.encode({ data, width: w, height: h }, 95).data).toString('binary');
    const exif = piexif.dump({ '0th': { [piexif.ImageIFD.Orientation]: orientation }, 'Exif': { [piexif.ExifIFD.DateTimeOriginal]: '2026:10:06 09:40:12' }, 'GPS': { [piexif.GPSIFD.GPSLatitudeRef]: 'N' } });
    return new Uint8Array(Buffer.from(piexif.insert(exif, plain), 'binary'));
}

function pixels(photo: EmbeddedPhoto): { width: number; height: number; at: (x: number, y: number) => number[] } {
    if ('error' in photo) {
        throw new Error(photo.error);
    }
    const bytes = Buffer.from(photo.dataUri.replace('data:image/jpeg;base64,', ''), 'base64');
    const image = jpeg.decode(bytes, { useTArray: true });
    return { width: image.width, height: image.height, at: (x, y) => [...image.data.subarray((y * image.width + x) * 4, (y * image.width + x) * 4 + 3)] };
}

const near = (actual: number[], expected: readonly number[]) => actual.every((value, i) => Math.abs(value - (expected[i] ?? 0)) < 24);

describe('preparePhoto', () => {
    test.each([1, 2, 3, 4, 5, 6, 7, 8])('turns orientation %i upright', async orientation => {
        const photo = await preparePhoto(stored(orientation), codec, { ...photosForPrint, file: 'a.jpg' });
        const image = pixels(photo);
        expect([image.width, image.height]).toEqual([width, height]);
        for (const [x, y] of [[12, 8], [84, 8], [12, 56], [84, 56]] as const) {
            expect(near(image.at(x, y), colorAt(x, y)), `${x},${y} is ${image.at(x, y).join(' ')}`).toBe(true);
        }
    });

    test('keeps the time and leaves all other metadata behind', async () => {
        const photo = await preparePhoto(stored(6), codec, { ...photosForPrint, file: 'photos/a.jpg' });
        expect(photo).toMatchObject({ taken: '2026-10-06 09:40:12', alt: 'a.jpg' });
        expect('dataUri' in photo && Buffer.from(photo.dataUri.split(',')[1] ?? '', 'base64').includes('Exif')).toBe(false);
    });

    test('reduces to the longest edge and makes the small version', async () => {
        const photo = await preparePhoto(stored(1), codec, { file: 'a.jpg', maxEdge: 48, quality: 80, smallEdge: 24 });
        expect(photo).toMatchObject({ width: 48, height: 32, small: { width: 24, height: 16 } });
    });

    test('reads PNG, over white where it is transparent', async () => {
        const png = new PNG({ width: 8, height: 8 });
        png.data.fill(0);
        expect(pixels(await preparePhoto(new Uint8Array(PNG.sync.write(png)), codec, { ...photosForPrint, file: 'a.png' })).at(4, 4)).toEqual([255, 255, 255]);
    });

    test.each([
        ['photos/x.heic', [0, 0, 0, 24, ...Buffer.from('ftypheic'), 0, 0, 0, 0], 'photos/x.heic: HEIC cannot be read here; convert it to JPEG'],
        ['x.webp', [...Buffer.from('RIFF0000WEBPVP8 ')], 'x.webp: WEBP cannot be read here; convert it to JPEG'],
        ['x.jpg', [...Buffer.from('<svg onload=alert(1)>')], 'x.jpg: not a photograph that can be read here; use JPEG or PNG'],
        ['empty.jpg', [], 'empty.jpg: not a photograph that can be read here; use JPEG or PNG'],
        ['cut.jpg', [0xff, 0xd8, 0xff, 0xe0, 0, 4], 'cut.jpg: the file is damaged; copy it again from the camera'],
        ['bomb.jpg', [0xff, 0xd8, 0xff, 0xc0, 0, 11, 8, 0xff, 0xff, 0xff, 0xff, 3, 0, 0, 0, 0], 'bomb.jpg: 65535 × 65535 pixels are too many; reduce it first'],
    ])('says what is wrong with %s', async (file, bytes, error) => {
        expect(await preparePhoto(new Uint8Array(bytes), codec, { ...photosForPrint, file })).toEqual({ error });
    });

    test('works on after a photograph that breaks the decoder', async () => {
        const broken = stored(1).slice(0, 700);
        broken.fill(0xab, 650);
        await preparePhoto(broken, codec, { ...photosForPrint, file: 'broken.jpg' });
        expect(await preparePhoto(stored(1), codec, { ...photosForPrint, file: 'a.jpg' })).toMatchObject({ width, height });
    });

    test('decodes nothing when the content is known', async () => {
        const cache = new Map<string, EmbeddedPhoto>();
        const first = await preparePhoto(stored(3), codec, { ...photosForPrint, file: 'a.jpg', cache });
        const refusing = { decode: () => Promise.reject(new Error('decoded again')), encodeJpeg: codec.encodeJpeg };
        expect(await preparePhoto(stored(3), refusing, { ...photosForPrint, file: 'b.jpg', cache })).toEqual({ ...first, alt: 'b.jpg' });
    });
});

test('formats and sizes are read from the first bytes', () => {
    expect(formatOf(stored(6))).toBe('jpeg');
    expect(sizeOf(stored(6), 'jpeg')).toEqual({ width: height, height: width });
});

test('shrinking is the mean of the area covered', () => {
    const data = new Uint8ClampedArray([0, 0, 0, 255, 100, 100, 100, 255, 200, 200, 200, 255]);
    expect([...shrink({ data, width: 3, height: 1 }, { width: 2, height: 1 }).data]).toEqual([33, 33, 33, 255, 167, 167, 167, 255]);
});
