/** Pixels in memory: reducing by averaging areas, and turning by the eight EXIF orientations. */

/** Red, green, blue and alpha, a byte each, rows from the top. */
export interface Pixels {
    readonly data: Uint8ClampedArray;
    readonly width: number;
    readonly height: number;
}

/**
 * Reduces by the mean of the area each new pixel covers, over white where the picture is transparent. For reductions
 * by half or more this keeps what a sharper filter keeps, at a fraction of its cost. The result is opaque.
 */
export function shrink(source: Pixels, size: { readonly width: number; readonly height: number }): Pixels {
    const { width, height } = size;
    const data = new Uint8ClampedArray(width * height * 4);
    const stepX = source.width / width;
    const stepY = source.height / height;
    const row = new Float32Array(source.width * 3);
    for (let y = 0; y < height; y++) {
        row.fill(0);
        const top = y * stepY;
        const bottom = Math.min(source.height, top + stepY);
        for (let line = Math.floor(top); line < bottom; line++) {
            addLine(source, line, (Math.min(bottom, line + 1) - Math.max(top, line)) / (bottom - top), row);
        }
        for (let x = 0; x < width; x++) {
            const left = x * stepX;
            const right = Math.min(source.width, left + stepX);
            let red = 0;
            let green = 0;
            let blue = 0;
            for (let column = Math.floor(left); column < right; column++) {
                const share = Math.min(right, column + 1) - Math.max(left, column);
                red += share * (row[column * 3] ?? 0);
                green += share * (row[column * 3 + 1] ?? 0);
                blue += share * (row[column * 3 + 2] ?? 0);
            }
            const at = (y * width + x) * 4;
            const area = right - left;
            data[at] = red / area;
            data[at + 1] = green / area;
            data[at + 2] = blue / area;
            data[at + 3] = 255;
        }
    }
    return { data, width, height };
}

function addLine({ data, width }: Pixels, line: number, share: number, row: Float32Array): void {
    let from = line * width * 4;
    for (let to = 0; to < width * 3; to += 3, from += 4) {
        const alpha = data[from + 3] ?? 255;
        if (alpha === 255) {
            row[to] = (row[to] ?? 0) + share * (data[from] ?? 0);
            row[to + 1] = (row[to + 1] ?? 0) + share * (data[from + 1] ?? 0);
            row[to + 2] = (row[to + 2] ?? 0) + share * (data[from + 2] ?? 0);
        } else {
            for (let color = 0; color < 3; color++) {
                row[to + color] = (row[to + color] ?? 0) + share * (255 + ((data[from + color] ?? 0) - 255) * alpha / 255);
            }
        }
    }
}

/** Turns a picture upright from the EXIF orientation 1 to 8 (CIPA DC-008, tag 0x0112). */
export function turn(source: Pixels, orientation: number): Pixels {
    if (orientation < 2 || orientation > 8) {
        return source;
    }
    const isTurned = orientation >= 5;
    const width = isTurned ? source.height : source.width;
    const height = isTurned ? source.width : source.height;
    const from = new Uint32Array(source.data.buffer, source.data.byteOffset, source.width * source.height);
    const to = new Uint32Array(width * height);
    const mirrorsX = orientation === 2 || orientation === 3 || orientation === 7 || orientation === 8;
    const mirrorsY = orientation === 3 || orientation === 4 || orientation === 6 || orientation === 7;
    for (let y = 0; y < height; y++) {
        for (let x = 0; x < width; x++) {
            const column = isTurned ? y : x;
            const line = isTurned ? x : y;
            const sx = mirrorsX ? source.width - 1 - column : column;
            const sy = mirrorsY ? source.height - 1 - line : line;
            to[y * width + x] = from[sy * source.width + sx] ?? 0;
        }
    }
    return { data: new Uint8ClampedArray(to.buffer), width, height };
}
