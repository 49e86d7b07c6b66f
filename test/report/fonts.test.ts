import { expect, test } from 'vitest';
import { fontFaces, subsetsFor } from '../../src/report/fonts.js';

// The signs of each subset are those that the packages' own unicode.json lists.
test.each([
    ['1-1/2 in, 38 mm, −4 °C, “é”, ½, 250–400 €', ['latin']],
    ['Łódź', ['latin', 'latin-ext']],
    ['Nguyễn', ['latin', 'vietnamese']],
    ['Мария', ['latin', 'cyrillic']],
    ['Ωρα', ['latin', 'greek']],
    ['→ 船 😀', ['latin']],
])('%s needs %j', (text, subsets) => expect(subsetsFor(text)).toEqual(subsets));

test('what stands within data of a picture counts for nothing, what stands behind it does', () => {
    expect(subsetsFor('<img src="data:image/png;base64,Ω"> a')).toEqual(['latin']);
    expect(subsetsFor('<img src="data:image/png;base64,AA"> Ω')).toEqual(['latin', 'greek']);
    expect(subsetsFor('says "data: Ω')).toEqual(['latin']);
});

test('every face is a whole WOFF2 file in the page itself, with the licence beside it', () => {
    const css = fontFaces('Łódź');
    const files = [...css.matchAll(/url\(data:font\/woff2;base64,([A-Za-z0-9+/]+=*)\)/g)].map(([, data = '']) => Buffer.from(data, 'base64'));
    expect(files).toHaveLength(10);
    for (const file of files) {
        // W3C WOFF 2.0, section 4: the signature, and the length of the whole file at offset 8.
        expect(file.toString('latin1', 0, 4)).toBe('wOF2');
        expect(file.readUInt32BE(8)).toBe(file.length);
    }
    expect(css.match(/url\(/g)).toHaveLength(10);
    expect(css).toContain('SIL Open Font License');
});

test('the typefaces add less than 140 kB to a report of Latin text', () => {
    expect(fontFaces('Marram').length).toBeLessThan(140_000);
});
