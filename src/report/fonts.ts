/**
 * The typefaces of every paper, held in the page itself: Source Serif 4 for what is read, Source Sans 3 for labels,
 * tables and captions. Latin signs always; the signs of other scripts only where the page holds some.
 */
import serifRanges from '@fontsource/source-serif-4/unicode.json';
import sansRanges from '@fontsource/source-sans-3/unicode.json';
import serif400Latin from '@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff2';
import serif400LatinExt from '@fontsource/source-serif-4/files/source-serif-4-latin-ext-400-normal.woff2';
import serif400Cyrillic from '@fontsource/source-serif-4/files/source-serif-4-cyrillic-400-normal.woff2';
import serif400Greek from '@fontsource/source-serif-4/files/source-serif-4-greek-400-normal.woff2';
import serif400Vietnamese from '@fontsource/source-serif-4/files/source-serif-4-vietnamese-400-normal.woff2';
import serif400ItalicLatin from '@fontsource/source-serif-4/files/source-serif-4-latin-400-italic.woff2';
import serif400ItalicLatinExt from '@fontsource/source-serif-4/files/source-serif-4-latin-ext-400-italic.woff2';
import serif400ItalicCyrillic from '@fontsource/source-serif-4/files/source-serif-4-cyrillic-400-italic.woff2';
import serif400ItalicGreek from '@fontsource/source-serif-4/files/source-serif-4-greek-400-italic.woff2';
import serif400ItalicVietnamese from '@fontsource/source-serif-4/files/source-serif-4-vietnamese-400-italic.woff2';
import serif600Latin from '@fontsource/source-serif-4/files/source-serif-4-latin-600-normal.woff2';
import serif600LatinExt from '@fontsource/source-serif-4/files/source-serif-4-latin-ext-600-normal.woff2';
import serif600Cyrillic from '@fontsource/source-serif-4/files/source-serif-4-cyrillic-600-normal.woff2';
import serif600Greek from '@fontsource/source-serif-4/files/source-serif-4-greek-600-normal.woff2';
import serif600Vietnamese from '@fontsource/source-serif-4/files/source-serif-4-vietnamese-600-normal.woff2';
import sans400Latin from '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2';
import sans400LatinExt from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-400-normal.woff2';
import sans400Cyrillic from '@fontsource/source-sans-3/files/source-sans-3-cyrillic-400-normal.woff2';
import sans400Greek from '@fontsource/source-sans-3/files/source-sans-3-greek-400-normal.woff2';
import sans400Vietnamese from '@fontsource/source-sans-3/files/source-sans-3-vietnamese-400-normal.woff2';
import sans600Latin from '@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff2';
import sans600LatinExt from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-600-normal.woff2';
import sans600Cyrillic from '@fontsource/source-sans-3/files/source-sans-3-cyrillic-600-normal.woff2';
import sans600Greek from '@fontsource/source-sans-3/files/source-sans-3-greek-600-normal.woff2';
import sans600Vietnamese from '@fontsource/source-sans-3/files/source-sans-3-vietnamese-600-normal.woff2';

/** In the order in which they are asked for a sign that several hold. */
const subsets = ['latin', 'latin-ext', 'cyrillic', 'greek', 'vietnamese'] as const;
type Subset = (typeof subsets)[number];

interface Face {
    readonly family: string;
    readonly weight: number;
    readonly style: 'normal' | 'italic';
    /** Signs of each subset, as a style sheet writes them. */
    readonly ranges: Readonly<Record<Subset, string>>;
    /** The files in base64. */
    readonly files: Readonly<Record<Subset, string>>;
}

const faces: readonly Face[] = [
    { family: 'Source Serif 4', weight: 400, style: 'normal', ranges: serifRanges, files: { latin: serif400Latin, 'latin-ext': serif400LatinExt, cyrillic: serif400Cyrillic, greek: serif400Greek, vietnamese: serif400Vietnamese } },
    { family: 'Source Serif 4', weight: 400, style: 'italic', ranges: serifRanges, files: { latin: serif400ItalicLatin, 'latin-ext': serif400ItalicLatinExt, cyrillic: serif400ItalicCyrillic, greek: serif400ItalicGreek, vietnamese: serif400ItalicVietnamese } },
    { family: 'Source Serif 4', weight: 600, style: 'normal', ranges: serifRanges, files: { latin: serif600Latin, 'latin-ext': serif600LatinExt, cyrillic: serif600Cyrillic, greek: serif600Greek, vietnamese: serif600Vietnamese } },
    { family: 'Source Sans 3', weight: 400, style: 'normal', ranges: sansRanges, files: { latin: sans400Latin, 'latin-ext': sans400LatinExt, cyrillic: sans400Cyrillic, greek: sans400Greek, vietnamese: sans400Vietnamese } },
    { family: 'Source Sans 3', weight: 600, style: 'normal', ranges: sansRanges, files: { latin: sans600Latin, 'latin-ext': sans600LatinExt, cyrillic: sans600Cyrillic, greek: sans600Greek, vietnamese: sans600Vietnamese } },
];

/** Goes with the fonts wherever they go, as their licence asks. */
const licence = '/* Source Serif 4, © 2014-2021 Adobe Systems Incorporated, and Source Sans 3, © 2023 Adobe, with Reserved Font Name "Source": SIL Open Font License, Version 1.1. */';

/** The style sheet's `@font-face` rules for the signs that the markup holds. */
export function fontFaces(...markup: readonly string[]): string {
    const needed = subsetsFor(...markup);
    const rules = faces.flatMap(({ family, weight, style, ranges, files }) => needed.map(subset =>
        `@font-face { font-family: "${family}"; font-weight: ${weight}; font-style: ${style}; font-display: swap; src: url(data:font/woff2;base64,${files[subset]}) format("woff2"); unicode-range: ${ranges[subset]}; }`));
    return [licence, ...rules].join('\n');
}

/** The subsets to embed: Latin, and for every other sign the first that holds it. A sign that none holds is left to the reader's fonts. */
export function subsetsFor(...markup: readonly string[]): Subset[] {
    const needed = new Set<Subset>(['latin']);
    for (const sign of markup.flatMap(text => [...signsBeyondLatin1(text)])) {
        const subset = subsets.find(name => isIn(sign, name));
        if (subset !== undefined) {
            needed.add(subset);
        }
    }
    return subsets.filter(subset => needed.has(subset));
}

/** Every sign past U+00FF once. Pictures are passed over: they are long, and hold none. */
function signsBeyondLatin1(markup: string): Set<string> {
    const signs = new Set<string>();
    for (let at = 0; at < markup.length;) {
        const picture = markup.indexOf('"data:', at);
        const end = picture < 0 ? markup.length : picture;
        for (const [sign] of markup.slice(at, end).matchAll(/[^\u0000-\u00ff]/gu)) {
            signs.add(sign);
        }
        const closing = picture < 0 ? -1 : markup.indexOf('"', picture + 1);
        at = closing < 0 ? markup.length : closing + 1;
    }
    return signs;
}

const bounds = new Map<Subset, readonly (readonly [number, number])[]>(subsets.map(subset => [subset, serifRanges[subset].split(',').map(range => {
    const [first = '', last = first] = range.replace('U+', '').split('-');
    return [parseInt(first, 16), parseInt(last, 16)] as const;
})]));

function isIn(sign: string, subset: Subset): boolean {
    const code = sign.codePointAt(0) ?? 0;
    return (bounds.get(subset) ?? []).some(([first, last]) => code >= first && code <= last);
}
