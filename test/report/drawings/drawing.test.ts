import { describe, expect, test as single } from 'vitest';
import { drawing, figure, hatching, letter, n, pieces, shortened, standAlone, textWidth, wrapped, legend, box } from '../../../src/report/drawings/drawing.js';
import { html } from '../../../src/report/html.js';
import { fc, test } from '../property.js';
import { expectWellFormed, pointsOf } from './drawn.js';

const anyText = fc.string({ unit: 'grapheme', maxLength: 80 });

describe('lettering', () => {
    test('a shortened text fits, and is whole where it fits', fc.tuple(anyText, fc.integer({ min: 12, max: 300 })), ([text, width]) => {
        const short = shortened(text, width);
        const plain = text.replace(/[^\S\u00a0]+/g, ' ').trim();
        expect(short === '…' || textWidth(short) <= width).toBe(true);
        expect(short === plain || short.endsWith('…')).toBe(true);
        expect(short === plain || textWidth(plain) > width).toBe(true);
    });
    test('lines fit their width and their number, and lose words only behind an ellipsis', fc.tuple(anyText, fc.integer({ min: 30, max: 300 }), fc.integer({ min: 1, max: 4 })), ([text, width, most]) => {
        const lines = wrapped(text, width, most);
        expect(lines.length).toBeLessThanOrEqual(most);
        for (const line of lines) {
            expect(line === '…' || textWidth(line) <= width).toBe(true);
        }
        const plain = text.replace(/[^\S\u00a0]+/g, ' ').trim();
        expect(lines.join(' ') === plain || lines.some(line => line.endsWith('…'))).toBe(true);
    });
    single('a sign is never parted, whatever its length in code units', () => {
        expect(shortened('😀😀😀😀', 40)).toMatch(/^(?:😀)+…$/u);
    });
});

describe('hatching', () => {
    const sides = fc.tuple(fc.double({ min: 0, max: 200, noNaN: true }), fc.double({ min: 0, max: 200, noNaN: true }), fc.double({ min: 0.5, max: 120, noNaN: true }), fc.double({ min: 0.5, max: 60, noNaN: true }));
    test('stays inside its rectangle', sides, ([x, y, width, height]) => {
        for (const hatch of ['sparse', 'dense', 'crossed'] as const) {
            for (const point of pointsOf(hatching(x, y, width, height, hatch))) {
                expect(point.x).toBeGreaterThanOrEqual(x - 0.03);
                expect(point.x).toBeLessThanOrEqual(x + width + 0.03);
                expect(point.y).toBeGreaterThanOrEqual(y - 0.03);
                expect(point.y).toBeLessThanOrEqual(y + height + 0.03);
            }
        }
    });
    single('is the denser the higher its band, so that black and white tell bands apart', () => {
        const lines = (['none', 'sparse', 'dense', 'crossed'] as const).map(hatch => [...hatching(0, 0, 60, 26, hatch).matchAll(/M/g)].length);
        expect(lines[0]).toBe(0);
        for (const [index, count] of lines.entries()) {
            expect(count).toBeGreaterThan(index === 0 ? -1 : (lines[index - 1] ?? 0) * 1.5);
        }
    });
});

test('pieces hold all in order, none too long', fc.tuple(fc.array(fc.integer(), { maxLength: 80 }), fc.integer({ min: 1, max: 20 })), ([list, most]) => {
    const parts = pieces(list, most);
    expect(parts.flat()).toEqual(list);
    expect(parts.every(part => part.length > 0 && part.length <= most)).toBe(true);
});

test('a legend stays within its width', fc.array(fc.string({ minLength: 1, maxLength: 90 }), { maxLength: 8 }), texts => {
    const { body, height } = legend(texts.map(text => ({ text, swatch: (x, y) => box(x, y, 22, 13) })), 8, 0, 300);
    for (const [, x = '', y = ''] of String(body).matchAll(/<text x="([^"]*)" y="([^"]*)"/g)) {
        expect(Number(x)).toBeLessThan(308);
        expect(Number(y)).toBeLessThanOrEqual(height);
    }
});

single('a drawing stands alone with its namespace, once, and is well-formed whatever its texts', () => {
    const hostile = '"><script>alert(1)</script>&amp;<![CDATA[';
    const markup = String(figure(hostile, [drawing({ id: 'd', title: hostile, description: hostile, width: 100, height: 50, body: letter(0, 10, hostile) })]));
    const alone = standAlone(markup);
    expect(alone).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" class="drawn fits" viewBox="0 0 100 50"/);
    expect(alone.endsWith('</svg>')).toBe(true);
    expect(standAlone(alone)).toBe(alone);
    expectWellFormed(alone);
    expect(String(figure('nothing to draw', []))).toBe('');
    expect(standAlone('<p>no drawing</p>')).toBe('');
    expect(String(html`${n(Number.NaN)} ${n(-0)} ${n(1.005)}`)).toMatch(/^0 0 1(?:\.01)?$/);
});
