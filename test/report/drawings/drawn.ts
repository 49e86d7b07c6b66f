/** Reads drawings back from their markup, to hold them against the record they were drawn from. */
import { parseFragment, type DefaultTreeAdapterMap } from 'parse5';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyseText } from '../../../src/checks/survey.js';
import { ReportContext } from '../../../src/report/context.js';
import { textWidth } from '../../../src/report/drawings/drawing.js';
import type { Html } from '../../../src/report/html.js';
import { inputOf } from '../sample.js';

export interface Drawn {
    readonly tag: string;
    readonly attributes: ReadonlyMap<string, string>;
    /** Its own text and that of everything in it. */
    readonly text: string;
    readonly children: readonly Drawn[];
}

export function contextOf(text: string): ReportContext {
    const analysis = analyseText(text);
    expect(analysis.gaps.filter(gap => gap.severity === 'error').map(gap => gap.message)).toEqual([]);
    return new ReportContext(inputOf(analysis));
}

/** A context of text that may be half-typed or wrong. */
export const anyContextOf = (text: string): ReportContext => new ReportContext(inputOf(analyseText(text)));

function read(node: DefaultTreeAdapterMap['node']): Drawn[] {
    if (!('childNodes' in node)) {
        return [];
    }
    const children = node.childNodes.flatMap(read);
    if (!('tagName' in node)) {
        return children;
    }
    const text = (each: DefaultTreeAdapterMap['node']): string => 'value' in each ? each.value : 'childNodes' in each ? each.childNodes.map(text).join('') : '';
    return [{ tag: node.tagName, attributes: new Map(node.attrs.map(({ name, value }) => [name, value])), text: text(node), children }];
}

export const treeOf = (markup: Html | string): Drawn[] => read(parseFragment(String(markup)));

export function all(nodes: readonly Drawn[], tag: string): Drawn[] {
    return nodes.flatMap(node => [...node.tag === tag ? [node] : [], ...all(node.children, tag)]);
}

export const svgsOf = (markup: Html | string): Drawn[] => all(treeOf(markup), 'svg').filter(svg => svg.attributes.get('role') === 'img');
export const textsOf = (node: Drawn): string[] => all([node], 'text').map(({ text }) => text);
export const descriptionOf = (svg: Drawn): string => all([svg], 'desc')[0]?.text ?? '';
export const number = (node: Drawn | undefined, name: string): number => Number(node?.attributes.get(name));

/** A property of whole surveys, each of which has to be read first: fewer inputs than for a computation. */
export function surveys<T>(name: string, inputs: fc.Arbitrary<T>, holds: (input: T) => void): void {
    test(name, { timeout: 120_000 }, () => { fc.assert(fc.property(inputs, input => { holds(input); }), { numRuns: 40 }); });
}

export interface Extent {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
}

/** Corner points of a path, those that steer its curves included, which never lie inside of what is drawn. */
export function pointsOf(d: string): { x: number; y: number }[] {
    const found: { x: number; y: number }[] = [];
    let [x, y, startX, startY] = [0, 0, 0, 0];
    for (const [, command = '', rest = ''] of d.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
        const figures = (rest.match(/-?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/g) ?? []).map(Number);
        const isRelative = command === command.toLowerCase();
        const step = ({ m: 2, l: 2, h: 1, v: 1, c: 6, q: 4, t: 2, z: 0 } as Record<string, number>)[command.toLowerCase()];
        if (step === undefined) {
            throw new Error(`unread command ${command} in ${d}`);
        }
        if (step === 0) {
            [x, y] = [startX, startY];
            continue;
        }
        if (figures.length % step !== 0) {
            throw new Error(`odd figures of ${command} in ${d}`);
        }
        for (let i = 0; i < figures.length; i += step) {
            const some = figures.slice(i, i + step);
            const [fromX, fromY] = [x, y];
            if (step === 1) {
                const [value = 0] = some;
                [x, y] = command.toLowerCase() === 'h' ? [isRelative ? fromX + value : value, fromY] : [fromX, isRelative ? fromY + value : value];
                found.push({ x, y });
                continue;
            }
            for (let pair = 0; pair < step; pair += 2) {
                x = (isRelative ? fromX : 0) + (some[pair] ?? 0);
                y = (isRelative ? fromY : 0) + (some[pair + 1] ?? 0);
                found.push({ x, y });
            }
            if (command.toLowerCase() === 'm' && i === 0) {
                [startX, startY] = [x, y];
            }
        }
    }
    return found;
}

export function extentOf(node: Drawn): Extent | undefined {
    switch (node.tag) {
        case 'rect': return { left: number(node, 'x'), top: number(node, 'y'), right: number(node, 'x') + number(node, 'width'), bottom: number(node, 'y') + number(node, 'height') };
        case 'circle': return { left: number(node, 'cx') - number(node, 'r'), top: number(node, 'cy') - number(node, 'r'), right: number(node, 'cx') + number(node, 'r'), bottom: number(node, 'cy') + number(node, 'r') };
        case 'path': {
            const points = pointsOf(node.attributes.get('d') ?? '');
            return { left: Math.min(...points.map(({ x }) => x)), top: Math.min(...points.map(({ y }) => y)), right: Math.max(...points.map(({ x }) => x)), bottom: Math.max(...points.map(({ y }) => y)) };
        }
        case 'text': {
            const size = Number(node.attributes.get('font-size') ?? 11);
            const width = textWidth(node.text, size, node.attributes.get('font-weight') === '700');
            const anchor = node.attributes.get('text-anchor');
            const left = number(node, 'x') - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
            return { left, top: number(node, 'y') - size * 0.75, right: left + width, bottom: number(node, 'y') + size * 0.22 };
        }
        default: return undefined;
    }
}

const marks = ['rect', 'circle', 'path', 'text'];

/** Every mark of a drawing must lie inside its view box, and every figure in it be a number. */
export function expectInside(svg: Drawn): void {
    const [left = 0, top = 0, width = 0, height = 0] = (svg.attributes.get('viewbox') ?? svg.attributes.get('viewBox') ?? '').split(' ').map(Number);
    expect(width).toBeGreaterThan(0);
    const drawn = marks.flatMap(tag => all([svg], tag));
    expect(drawn.length).toBeGreaterThan(0);
    // Gathered before they are expected to be none: there may be thousands.
    expect(drawn.flatMap(mark => {
        const extent = extentOf(mark);
        const isInside = extent !== undefined && Object.values(extent).every(Number.isFinite)
            && extent.left >= left - 1 && extent.top >= top - 1 && extent.right <= left + width + 1 && extent.bottom <= top + height + 1;
        return isInside ? [] : [`${mark.tag} ${mark.text} ${JSON.stringify([...mark.attributes])} ${JSON.stringify(extent)}`];
    })).toEqual([]);
}

/** The drawing must also be well-formed XML, since it is taken out of the page: every tag closed, every value quoted, every sign escaped. */
export function expectWellFormed(markup: string): void {
    const open: string[] = [];
    const rest = markup.replace(/<(\/?)([a-z][a-z0-9]*)((?:\s[a-zA-Z][a-zA-Z-]*="[^"<>]*")*)\s*(\/?)>/g, (_, close: string, tag: string, attributes: string, self: string) => {
        const names = [...attributes.matchAll(/\s([a-zA-Z-]+)=/g)].map(match => match[1]);
        if (new Set(names).size !== names.length) {
            throw new Error(`an attribute twice: ${attributes}`);
        }
        if (close !== '') {
            const last = open.pop();
            if (last !== tag) {
                throw new Error(`</${tag}> closes <${last ?? ''}>`);
            }
        } else if (self === '') {
            open.push(tag);
        }
        return '';
    });
    expect(open).toEqual([]);
    expect(rest).not.toMatch(/[<>]/);
    expect(markup).not.toMatch(/&(?!amp;|lt;|gt;|quot;|#39;|#96;)/);
}

/** What holds of every drawing, whatever it shows. */
export function expectSound(markup: Html): void {
    for (const svg of svgsOf(markup)) {
        expectInside(svg);
        const [title, description] = [all([svg], 'title')[0], all([svg], 'desc')[0]];
        expect(svg.attributes.get('aria-labelledby')).toBe(`${title?.attributes.get('id') ?? ''} ${description?.attributes.get('id') ?? ''}`);
        expect(title?.text.trim()).not.toBe('');
        expect(description?.text.trim()).not.toBe('');
    }
    for (const [element] of String(markup).matchAll(/<svg\b[\s\S]*?<\/svg>/g)) {
        expectWellFormed(element);
    }
    const ids = [...String(markup).matchAll(/ id="([^"]*)"/g)].map(match => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
}
