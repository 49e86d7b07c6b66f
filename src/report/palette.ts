/**
 * The one color a firm may choose, and what follows from it: a shade that text can stand in, what can be read upon it,
 * and a tint. Contrast is computed as WCAG 2.2 defines it.
 */

export interface Palette {
    /** The color as chosen: grounds of bands, rules. */
    readonly accent: string;
    /** The color, darkened where that is needed for text on white and on the tint. */
    readonly accentText: string;
    /** White or ink, whichever stands out more upon the accent. */
    readonly onAccent: string;
    /** A pale ground with a breath of the color. */
    readonly tint: string;
}

type Rgb = readonly [red: number, green: number, blue: number];

export const defaultColor = '#0b4a63';
const ink: Rgb = [0x17, 0x21, 0x2b];
const white: Rgb = [255, 255, 255];
/** WCAG 2.2, 1.4.3 Contrast (Minimum), for text of ordinary size. */
const leastContrast = 4.5;

/** A color written #rgb or #rrggbb; undefined for anything else, so that nothing else ever reaches the style sheet. */
export function parseColor(written: string): Rgb | undefined {
    const digits = /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/i.test(written.trim()) ? written.trim().slice(1) : undefined;
    if (digits === undefined) {
        return undefined;
    }
    const channel = (index: number) => digits.length === 3 ? parseInt(digits.charAt(index).repeat(2), 16) : parseInt(digits.slice(index * 2, index * 2 + 2), 16);
    return [channel(0), channel(1), channel(2)];
}

const hex = (color: Rgb) => `#${color.map(channel => Math.round(channel).toString(16).padStart(2, '0')).join('')}`;
const mix = (a: Rgb, b: Rgb, share: number): Rgb => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share];

/** WCAG 2.2, "relative luminance": 0 for black to 1 for white. */
function luminance(color: Rgb): number {
    const [red, green, blue] = color.map(channel => {
        const share = channel / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}

/** WCAG 2.2, "contrast ratio": 1 to 21. */
export function contrast(a: Rgb, b: Rgb): number {
    const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
    return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

/** The palette of a color; of the default one where the firm gives none or what it gives is no color. */
export function paletteOf(written: string | undefined): Palette {
    const accent = parseColor(written ?? defaultColor) ?? parseColor(defaultColor) ?? ink;
    const tint = mix(white, accent, 0.07);
    let text = accent;
    for (let share = 0; contrast(text, tint) < leastContrast && share < 1; share += 0.02) {
        text = mix(accent, [0, 0, 0], share);
    }
    return { accent: hex(accent), accentText: hex(text), onAccent: contrast(white, accent) >= contrast(ink, accent) ? '#ffffff' : hex(ink), tint: hex(tint) };
}
