/**
 * Hostile text in every place of the language that takes a text comes out as text. The survey is made from the
 * vocabulary, the texts by a generator of markup, schemes, signs that turn writing round, and words without end.
 */
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { expect, test } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';
import { documentKinds, renderDocument } from '../../src/report/documents.js';
import { inputOf } from './sample.js';
import { asShown, hostileSurvey } from './hostile-words.js';
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

/** Tags with the names of their attributes. */
const shapes = (html: string) => new Set([...elementsOf(parse(html))].flatMap(({ tagName, attrs }) => attrs.length === 0 ? [tagName] : attrs.map(({ name }) => `${tagName} ${name}`)));

/** Places whose words the report of this survey does not print, each with the reason. */
const notPrinted = (place: string): boolean => [
    /^firm\.(statement|scope)$/, // The survey's own words stand in the place of the firm's.
    /^person\.(address|email|telephone)$/, // People are reached through the firm.
    /^material\.(series|source|remarks)$/, // Tell a surveyor where the figures come from, not a reader.
    /^(yardsticks|outline|wording)$/, // Titles for whoever reads the house file.
    /^valuation\.letter$/, // The covering letter's words, compared and not repeated.
    /^wording\.(contract-lead|no-|not-|earlier-lead|caution-(stated|sounding|potentials)|statement)/, // Stand only where the record calls for them.
    /^wording\.definition-of-value$/, // The valuation gives its own.
    /^wording\.(work-list|urgent-letter|compliance)-limits$/, // Of the other papers.
].some(pattern => pattern.test(place));

test.each(documentKinds)('in the HTML of the %s, from every place', kind => {
    const plain = renderDocument(kind, inputOf(analyseText(wholeSurvey(() => ' plain words').text)));
    const allowed = shapes(plain);
    for (const seed of [1, 2, 3]) {
        const { text, places, written } = hostileSurvey(seed);
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
            const lost = [...places].filter(([mark]) => !words.includes(mark)).map(([, place]) => place).filter(place => !notPrinted(place));
            expect(lost, 'texts that the report does not print').toEqual([]);
        }
        const garbled = [...places].filter(([mark, place]) => words.includes(mark) && !words.includes(asShown(`${mark}${written(place)}`, place))).map(([, place]) => place);
        expect(garbled, 'texts that are printed otherwise than written').toEqual([]);
    }
}, 120_000);
