/** Drawings as pictures, for programs that show no SVG. */
import { loadSharp } from './photo-native.js';
import type { Rasterize } from '../report/docx/pictures.js';

/** Of a drawing at twice its size: twice the largest photograph that is shown. */
const mostPixels = 64e6;

/** How drawings are made into pictures where the native image library is there; undefined where it is not. */
export async function rasterizer(): Promise<Rasterize | undefined> {
    const sharp = await loadSharp();
    if (!sharp) {
        return undefined;
    }
    return async (svg, width, format) => {
        // Lettering is drawn at twice its size and then fitted, so that it stays sharp.
        const picture = sharp(new TextEncoder().encode(svg), { density: format === 'png' ? 192 : 96, limitInputPixels: mostPixels, unlimited: true }).resize({ width });
        return new Uint8Array(await (format === 'png' ? picture.png() : picture.flatten({ background: '#fff' }).jpeg({ quality: 82 })).toBuffer());
    };
}
