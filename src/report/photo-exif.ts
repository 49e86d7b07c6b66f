/** What the camera wrote beside the picture: which way up it was held, when, and where. */
import exifr from 'exifr';
import { formatOf, jpegHead, webpExif } from './photo-formats.js';

/** Degrees by the camera's own satellite receiver (WGS 84), north and east positive. */
export interface CameraPosition {
    readonly latitude: number;
    readonly longitude: number;
}

export interface Exif {
    /** 1 to 8 (CIPA DC-008, tag 0x0112). */
    readonly orientation: number;
    /** By the camera's clock: "2026-10-06 09:40:12 -04:00". */
    readonly taken?: string;
    readonly position?: CameraPosition;
}

/** A photograph without these tags, or with broken ones, is taken as it is stored. Never throws. */
export async function readExif(bytes: Uint8Array): Promise<Exif> {
    try {
        const format = formatOf(bytes);
        // The library copies what it is given.
        const data = format === 'webp' ? webpExif(bytes) : format === 'jpeg' ? jpegHead(bytes) : bytes;
        const tags: unknown = data && await exifr.parse(data, {
            pick: ['Orientation', 'DateTimeOriginal', 'CreateDate', 'OffsetTimeOriginal', 'OffsetTime', 'GPSLatitude', 'GPSLatitudeRef', 'GPSLongitude', 'GPSLongitudeRef'],
            translateValues: false, reviveValues: false,
        });
        const tag = (name: string): unknown => typeof tags === 'object' && tags !== null ? Reflect.get(tags, name) : undefined;
        const orientation = tag('Orientation');
        const taken = takenText(tag('DateTimeOriginal') ?? tag('CreateDate'), tag('OffsetTimeOriginal') ?? tag('OffsetTime'));
        const latitude = degrees(tag('GPSLatitude'), tag('GPSLatitudeRef'), 'N', 'S', 90);
        const longitude = degrees(tag('GPSLongitude'), tag('GPSLongitudeRef'), 'E', 'W', 180);
        return {
            orientation: typeof orientation === 'number' && orientation >= 1 && orientation <= 8 ? orientation : 1, ...(taken === undefined ? {} : { taken }),
            // Cameras without a fix write zeros.
            ...(latitude === undefined || longitude === undefined || (latitude === 0 && longitude === 0) ? {} : { position: { latitude, longitude } }),
        };
    } catch {
        return { orientation: 1 };
    }
}

function takenText(time: unknown, offset: unknown): string | undefined {
    const parts = typeof time === 'string' ? /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d(?::\d\d)?)/.exec(time) : null;
    if (!parts || parts[1] === '0000') {
        return undefined;
    }
    const zone = typeof offset === 'string' ? /^[+-]\d\d:\d\d/.exec(offset.trim())?.[0] : undefined;
    return `${parts.slice(1, 4).join('-')} ${parts[4] ?? ''}${zone === undefined ? '' : ` ${zone}`}`;
}

/** Degrees, minutes and seconds with the side they are counted to (CIPA DC-008, GPS tags 1 to 4). */
function degrees(parts: unknown, side: unknown, positive: string, negative: string, most: number): number | undefined {
    const letter = typeof side === 'string' ? side.charAt(0).toUpperCase() : '';
    if (!Array.isArray(parts) || (letter !== positive && letter !== negative)) {
        return undefined;
    }
    const [whole, minutes, seconds] = [0, 1, 2].map(index => Number(parts[index] ?? 0));
    const value = (whole ?? 0) + (minutes ?? 0) / 60 + (seconds ?? 0) / 3600;
    return Number.isFinite(value) && value >= 0 && value <= most ? letter === negative ? -value : value : undefined;
}

/** "41.1234° N, 70.1234° W": a ten-thousandth of a degree is some 11 m, about what a camera's receiver holds. */
export function positionText({ latitude, longitude }: CameraPosition): string {
    const side = (value: number, positive: string, negative: string) => `${Math.abs(value).toFixed(4)}° ${value < 0 ? negative : positive}`;
    return `${side(latitude, 'N', 'S')}, ${side(longitude, 'E', 'W')}`;
}
