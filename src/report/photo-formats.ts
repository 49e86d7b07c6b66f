/**
 * What a picture file says of itself before anything is decoded: its format by its first bytes, whatever it is called,
 * its size in pixels, and whether it is there to its end. Nothing is decoded here.
 */

export type PhotoFormat = 'jpeg' | 'png' | 'webp' | 'avif' | 'heic';

const startsWith = (bytes: Uint8Array, signature: readonly number[]) => signature.every((byte, index) => bytes[index] === byte);
const ascii = (bytes: Uint8Array, at: number, length: number) => String.fromCharCode(...bytes.subarray(at, at + length));
const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

export function formatOf(bytes: Uint8Array): PhotoFormat | 'gif' | 'tiff' | undefined {
    if (startsWith(bytes, [0xff, 0xd8, 0xff])) {
        return 'jpeg';
    }
    if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) {
        return 'png';
    }
    if (ascii(bytes, 4, 4) === 'ftyp') {
        return stillFormat(bytes);
    }
    if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP') {
        return 'webp';
    }
    if (ascii(bytes, 0, 4) === 'GIF8') {
        return 'gif';
    }
    return startsWith(bytes, [0x49, 0x49, 0x2a, 0]) || startsWith(bytes, [0x4d, 0x4d, 0, 0x2a]) ? 'tiff' : undefined;
}

/** Major and compatible brands of an ISO base media file (ISO/IEC 14496-12, 23008-12); a film is none of ours. */
function stillFormat(bytes: Uint8Array): 'avif' | 'heic' | undefined {
    const end = Math.min(bytes.length, viewOf(bytes).getUint32(0), 256);
    const brands: string[] = [];
    for (let at = 8; at + 4 <= end; at += at === 8 ? 8 : 4) { // After the major brand stands its version.
        brands.push(ascii(bytes, at, 4));
    }
    return brands.some(brand => /^avi[fs]$/.test(brand)) ? 'avif' : /^(hei[cxms]|hev[cxms]|mif1|msf1)$/.test(brands[0] ?? '') ? 'heic' : undefined;
}

export interface PictureSize {
    readonly width: number;
    readonly height: number;
}

/** Pixels by the file's own header; undefined where it does not say them properly. */
export function sizeOf(bytes: Uint8Array, format: PhotoFormat): PictureSize | undefined {
    switch (format) {
        case 'jpeg': return jpegSize(bytes);
        case 'png': return bytes.length >= 24 ? { width: viewOf(bytes).getUint32(16), height: viewOf(bytes).getUint32(20) } : undefined;
        case 'webp': return webpSize(bytes);
        case 'avif': case 'heic': return stillSize(bytes);
    }
}

/** Each marker segment of a JPEG up to the first scan, with the place of its length. */
function* jpegSegments(bytes: Uint8Array): Generator<{ readonly marker: number; readonly at: number }> {
    const view = viewOf(bytes);
    for (let at = 2; at + 4 <= bytes.length;) {
        if (bytes[at] !== 0xff) {
            return;
        }
        const marker = bytes[at + 1] ?? 0;
        if (marker === 0xff) {
            at++; // Fill bytes may stand before a marker.
            continue;
        }
        yield { marker, at: at + 2 };
        if (marker === 0xda) {
            return;
        }
        at += 2 + view.getUint16(at + 2);
    }
}

function jpegSize(bytes: Uint8Array): PictureSize | undefined {
    for (const { marker, at } of jpegSegments(bytes)) {
        if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) {
            return at + 7 <= bytes.length ? { height: viewOf(bytes).getUint16(at + 3), width: viewOf(bytes).getUint16(at + 5) } : undefined;
        }
    }
    return undefined;
}

/** WebP's three kinds of header (RFC 9649, sections 2.5 to 2.7). */
function webpSize(bytes: Uint8Array): PictureSize | undefined {
    if (bytes.length < 30) {
        return undefined;
    }
    const view = viewOf(bytes);
    switch (ascii(bytes, 12, 4)) {
        case 'VP8 ': return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
        case 'VP8L': {
            const bits = view.getUint32(21, true);
            return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
        }
        case 'VP8X': return { width: (view.getUint32(24, true) & 0xffffff) + 1, height: ((view.getUint32(26, true) >>> 8) & 0xffffff) + 1 };
        default: return undefined;
    }
}

/** The largest of the picture's extents (box `ispe`, ISO/IEC 23008-12): thumbnails and tiles have their own. */
function stillSize(bytes: Uint8Array): PictureSize | undefined {
    const view = viewOf(bytes);
    let largest: PictureSize | undefined;
    const end = Math.min(bytes.length - 16, 1 << 20);
    for (let at = bytes.indexOf(0x69, 8); at !== -1 && at < end; at = bytes.indexOf(0x69, at + 1)) {
        if (ascii(bytes, at, 4) === 'ispe') {
            const size = { width: view.getUint32(at + 8), height: view.getUint32(at + 12) };
            largest = !largest || size.width * size.height > largest.width * largest.height ? size : largest;
        }
    }
    return largest;
}

/**
 * Whether the file is there to its end. A decoder fills what a broken copy lacks with gray; a report must not show
 * that as if it were the photograph. Formats whose decoders refuse such a file themselves are taken as whole.
 */
export function isWhole(bytes: Uint8Array, format: PhotoFormat): boolean {
    switch (format) {
        case 'jpeg': return isWholeJpeg(bytes);
        case 'png': return isWholePng(bytes);
        case 'webp': return bytes.length >= viewOf(bytes).getUint32(4, true) + 8 - 1; // An odd chunk's padding byte may be missing.
        case 'avif': case 'heic': return true;
    }
}

/** Looked for from the end, where cameras may append a film or a trailer of their own. */
function isWholeJpeg(bytes: Uint8Array): boolean {
    const scan = [...jpegSegments(bytes)].find(({ marker }) => marker === 0xda);
    if (!scan) {
        return false;
    }
    // Inside a scan 0xff 0xd9 cannot stand for anything but the end of the picture.
    for (let at = bytes.lastIndexOf(0xd9); at > scan.at; at = bytes.lastIndexOf(0xd9, at - 1)) {
        if (bytes[at - 1] === 0xff) {
            return true;
        }
    }
    return false;
}

function isWholePng(bytes: Uint8Array): boolean {
    const view = viewOf(bytes);
    for (let at = 8; at + 12 <= bytes.length; at += 12 + view.getUint32(at)) {
        if (ascii(bytes, at + 4, 4) === 'IEND') {
            return true;
        }
    }
    return false;
}

/** What stands before the picture's own data in a JPEG: all that a camera writes beside it, at a hundredth of the length. */
export function jpegHead(bytes: Uint8Array): Uint8Array {
    const scan = [...jpegSegments(bytes)].find(({ marker }) => marker === 0xda);
    return scan ? bytes.subarray(0, scan.at) : bytes;
}

/** EXIF data of a WebP as the TIFF structure it is; undefined where there is none. */
export function webpExif(bytes: Uint8Array): Uint8Array | undefined {
    const view = viewOf(bytes);
    for (let at = 12; at + 8 <= bytes.length; at += 8 + view.getUint32(at + 4, true) + (view.getUint32(at + 4, true) & 1)) {
        if (ascii(bytes, at, 4) === 'EXIF') {
            const start = ascii(bytes, at + 8, 4) === 'Exif' ? at + 14 : at + 8;
            return bytes.subarray(start, at + 8 + view.getUint32(at + 4, true));
        }
    }
    return undefined;
}
