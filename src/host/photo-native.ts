/**
 * Photographs reduced by a native library, where it is installed: it decodes at a fraction of the size where the format
 * allows, and works on threads of its own. The packed extension carries none; then the WebAssembly codec does the work.
 */
import type sharpPackage from 'sharp';
import type { PhotoFormat } from '../report/photo-formats.js';
import { mostPixels, smallEdgeFor, type EncodedJpeg, type PhotoReducer } from '../report/photos.js';

type Sharp = typeof sharpPackage;

/** The library, or undefined where it is not installed or cannot be loaded on this machine. */
export async function loadSharp(): Promise<Sharp | undefined> {
    try {
        // Left out of the bundles: found beside them where the surveyor has installed it.
        const { default: sharp } = await import('sharp');
        // Several photographs at once fill the cores; threads within one would only wait for one another.
        sharp.concurrency(1);
        sharp.cache(false);
        return sharp;
    } catch {
        return undefined;
    }
}

/** What the library says of a damaged file, apart from what it merely does not know. */
const saysDamaged = (error: unknown) => error instanceof Error && /premature|corrupt|read error|bogus|truncated|end of file|out of order|bad seek|decod/i.test(error.message);

/** @param fallback takes what the library does not know. */
export function nativeReducer(sharp: Sharp, fallback?: PhotoReducer): PhotoReducer {
    // A libvips of the system's own may read HEIC, which the prebuilt one must not for its patents.
    const readsHeic = sharp.format.heif?.input.fileSuffix?.includes('.heic') ?? false;
    const reads = (format: PhotoFormat) => format !== 'heic' || readsHeic;
    const reduce: PhotoReducer['reduce'] = async (bytes, { size }) => {
        const inside = (edge: number) => ({ width: edge, height: edge, fit: 'inside', withoutEnlargement: true }) as const;
        const jpeg = { quality: size.quality, chromaSubsampling: '4:2:0' };
        // Decoded and reduced once; the large and the small picture are both made from the pixels.
        const { data, info } = await sharp(bytes, { limitInputPixels: mostPixels, sequentialRead: true }).autoOrient()
            .resize(inside(size.maxEdge)).flatten({ background: '#ffffff' }).toColorspace('srgb').raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true });
        const raw = { raw: { width: info.width, height: info.height, channels: info.channels } };
        const large: EncodedJpeg = { bytes: await sharp(data, raw).jpeg(jpeg).toBuffer(), width: info.width, height: info.height };
        const edge = smallEdgeFor(large, size);
        if (edge === undefined) {
            return { large };
        }
        const small = await sharp(data, raw).resize(inside(edge)).jpeg(jpeg).toBuffer({ resolveWithObject: true });
        return { large, small: { bytes: small.data, width: small.info.width, height: small.info.height } };
    };
    return {
        id: `sharp-${sharp.versions.sharp ?? ''}-${sharp.versions.vips}`, reads,
        reduce: async (bytes, work) => {
            try {
                return await reduce(bytes, work);
            } catch (error) {
                if (!fallback?.reads(work.format) || saysDamaged(error)) {
                    throw error;
                }
                return fallback.reduce(bytes, work);
            }
        },
    };
}
