import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { contrast, defaultColor, paletteOf, parseColor } from '../../src/report/palette.js';

const rgb = (written: string) => parseColor(written) ?? [NaN, NaN, NaN] as const;

describe('contrast', () => {
    // WCAG 2.2, definition of contrast ratio: 21 for black on white. The grays are the pair that "Understanding SC 1.4.3"
    // and color tools of the W3C's techniques (G18) give as just enough and just too little: #767676 4.54, #777777 4.48.
    test.each([['#000', '#fff', 21], ['#767676', '#ffffff', 4.54], ['#777777', '#ffffff', 4.48], ['#fff', '#fff', 1]])('%s on %s is %d', (a, b, ratio) => {
        expect(contrast(rgb(a), rgb(b))).toBeCloseTo(ratio, 2);
    });
});

describe('colors', () => {
    test.each(['#0b4a63', '#ABC', ' #fff '])('%j is one', written => expect(parseColor(written)).toBeDefined());
    test.each(['', '0b4a63', '#12', '#1234', '#12345g', 'red', '#fff; } body { display: none', 'url(//evil.example)', '#fff"', '#fff\n#000'])('%j is none', written => {
        expect(parseColor(written)).toBeUndefined();
        expect(paletteOf(written)).toEqual(paletteOf(defaultColor));
    });
    test('three digits are short for six', () => expect(parseColor('#1ac')).toEqual(parseColor('#11aacc')));
});

test('whatever the color, text in it and on it can be read, and nothing but a color reaches the style sheet', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 0xffffff }), value => {
        const palette = paletteOf(`#${value.toString(16).padStart(6, '0')}`);
        expect(contrast(rgb(palette.accentText), rgb('#fff'))).toBeGreaterThanOrEqual(4.5);
        // Rounding to whole channels may cost a hair.
        expect(contrast(rgb(palette.accentText), rgb(palette.tint))).toBeGreaterThanOrEqual(4.45);
        expect(contrast(rgb(palette.onAccent), rgb(palette.accent))).toBeGreaterThanOrEqual(4);
        for (const color of Object.values(palette)) {
            expect(color).toMatch(/^#[0-9a-f]{6}$/);
        }
    }));
});

test('a color dark enough is kept as it is', () => {
    expect(paletteOf('#0b4a63')).toMatchObject({ accent: '#0b4a63', accentText: '#0b4a63', onAccent: '#ffffff' });
    expect(paletteOf('#ffcc00').accent).toBe('#ffcc00');
    expect(paletteOf('#ffcc00').accentText).not.toBe('#ffcc00');
    expect(paletteOf('#ffcc00').onAccent).not.toBe('#ffffff');
});
