/**
 * Hostile text in every place of the language that takes a text comes out as text. The survey is made from the
 * vocabulary, the texts by a generator of markup, schemes, signs that turn writing round, and words without end.
 */
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { expect, test } from 'vitest';
import * as fc from 'fast-check';
import { analyseText } from '../../src/checks/survey.js';
import { documentKinds, renderDocument } from '../../src/report/documents.js';
import { printable } from '../../src/report/html.js';
import { inputOf } from './sample.js';
import { wholeSurvey } from './whole-language.js';

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;

const isElement = (node: Node): node is Element => 'tagName' in node;

function* elementsOf(node: { readonly childNodes: readonly Node[] }): Generator<Element> {
    for (const child of node.childNodes) {
        if (isElement(child)) {
            yield child;
            yield* elementsOf(child);
        }
    }
}

function textWithin(node: { readonly childNodes: readonly Node[] }): string {
    return node.childNodes.map(child => child.nodeName === '#text' && 'value' in child ? child.value : isElement(child) && child.tagName !== 'style' ? textWithin(child) : '').join('');
}

/** Fragments that do harm where they are taken for anything but text. */
const fragments = [
    '<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '\' onmouseover=\'alert(1)', '</style><script>alert(1)</script>', '</title></svg></table></body><iframe src=//evil.example>',
    '<marquee onstart=alert(1)>', 'javascript:alert(1)', 'data:text/html,<script>alert(1)</script>', 'file:///etc/passwd', '\u202Egnp.exe\u202C', '\u2066\u2069\u200F', '\u0000\u0008\u001B', ']]><!-- -->', '&lt;b&gt;&amp;&#60;',
    '=cmd|\'/C calc\'!A0', '+1+1', '-2+3', '@SUM(A1)', '\t=1', '${alert(1)}', '{{7*7}}', '\\', 'url(https://evil.example/x)', '}</style>', '<svg/onload=alert(1)>', '<base href=//evil.example>', '😀é½ °C Ωמ',
    'W'.repeat(400), '\ud800', '%00%0d%0aSet-Cookie:a=b', '<a href="https://evil.example">here</a>', '<link rel=stylesheet href=//evil.example>', '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/passwd">]>&e;',
] as const;

/** Texts for all places, drawn anew for each. */
export const hostileTexts = (seed: number): (() => string) => {
    const texts = fc.sample(fc.array(fc.constantFrom(...fragments), { minLength: 1, maxLength: 3 }).map(parts => parts.join('')), { seed, numRuns: 4000 });
    let next = 0;
    return () => texts[next++ % texts.length] ?? '';
};

const shown = (text: string) => printable(text).replace(/\s+/g, ' ').trim();

/** Tags with the names of their attributes. */
const shapes = (html: string) => new Set([...elementsOf(parse(html))].flatMap(({ tagName, attrs }) => attrs.length === 0 ? [tagName] : attrs.map(({ name }) => `${tagName} ${name}`)));

/** Places whose words no paper prints, since they are not for the reader of a report. */
const notPrinted = new Set<string>([]);

test.each(documentKinds)('in the HTML of the %s, from every place', kind => {
    const plain = renderDocument(kind, inputOf(analyseText(wholeSurvey(() => ' plain words').text)));
    const allowed = shapes(plain);
    for (const seed of [1, 2, 3]) {
        const next = hostileTexts(seed);
        const written = new Map<string, string>();
        const { text, places } = wholeSurvey(place => {
            const payload = next();
            written.set(place, payload);
            return payload;
        });
        const analysis = analyseText(text);
        const html = renderDocument(kind, inputOf(analysis));
        expect([...shapes(html)].filter(shape => !allowed.has(shape)), 'markup that plain words do not make').toEqual([]);
        const page = parse(html);
        for (const { tagName, attrs } of elementsOf(page)) {
            for (const { name, value } of attrs) {
                if (name === 'href') {
                    expect(value, tagName).toMatch(/^#/);
                } else if (name === 'src') {
                    expect(value, tagName).toMatch(/^data:image\/(?:jpeg|png|webp|svg\+xml);base64,[A-Za-z0-9+/=]+$/);
                }
            }
        }
        const words = textWithin(page).replace(/\s+/g, ' ');
        expect(words).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000-\u0008]/);
        if (kind === 'report') {
            const lost = [...places].filter(([mark]) => !words.includes(mark)).map(([, place]) => place).filter(place => !notPrinted.has(place));
            expect(lost, 'texts that the report does not print').toEqual([]);
        }
        const garbled = [...places].filter(([mark, place]) => words.includes(mark) && !words.includes(shown(`${mark}${written.get(place) ?? ''}`))).map(([, place]) => place);
        expect(garbled, 'texts that are printed otherwise than written').toEqual([]);
    }
}, 120_000);
