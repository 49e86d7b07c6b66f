import { fc, test as property } from './property.js';
import { describe, expect, test } from 'vitest';
import { cssString, html, idPart, isImageData, joined, paragraphs, trusted } from '../../src/report/html.js';

describe('html', () => {
    test('escapes values, keeps markup of its own, joins lists and drops what is absent', () => {
        expect(String(html`<p title="${'"a" & <b>'}">${['<', html`<b>${'x'}</b>`, undefined, false, 0]}</p>`)).toBe('<p title="&quot;a&quot; &amp; &lt;b&gt;">&lt;<b>x</b>0</p>');
    });
    test('leaves out control characters and signs that turn the direction of writing', () => {
        expect(String(html`${'a\u0000b\u202Ec\u2066d\u0085e\uD800f😀'}`)).toBe('abcdef😀');
    });
    property('a value never makes markup', fc.string({ unit: 'binary' }), text => {
        expect(String(html`${text}`)).not.toMatch(/[<>"']/);
    });
    property('a string for the style sheet ends where it should', fc.string({ unit: 'binary' }), text => {
        expect(cssString(text)).toMatch(/^"(?:[A-Za-z0-9 ,.:;()/-]|\\[0-9a-f]+ )*"$/);
    });
    property('ids hold plain signs only and differ where names do', fc.tuple(fc.string({ unit: 'grapheme' }), fc.string({ unit: 'grapheme' })), ([a, b]) => {
        expect(idPart(a)).toMatch(/^[A-Za-z0-9_-]*$/);
        expect(idPart(a) === idPart(b)).toBe(a === b);
    });
    test('paragraphs part at blank lines, other line breaks are blanks', () => {
        expect(String(paragraphs(['one\ntwo\n\n', html`<b>3</b>`, ' < 4']))).toBe('<p>one two</p>\n<p><b>3</b> &lt; 4</p>');
    });
    test('joins with a separator', () => {
        expect(String(joined(['a', trusted('<i>')], ' & '))).toBe('a &amp; <i>');
    });
    test.each([['data:image/jpeg;base64,AAAA', true], ['data:image/svg+xml;base64,AAAA', false], ['https://example.org/a.jpg', false], ['data:image/png;base64,AA"onload=', false]])('%s as a picture: %s', (uri, is) => {
        expect(isImageData(uri)).toBe(is);
    });
});
