import { parseFragment, type DefaultTreeAdapterTypes } from 'parse5';
import { describe, expect, test } from 'vitest';
import type { PhotoMark } from '../../src/record/model.js';
import { markedSvg, marksInWords, marksOverlay } from '../../src/report/photo-marks-svg.js';
import { dot } from './sample.js';

const span = { uri: 'file:///a', start: 0, end: 0 };
const mark = (shape: PhotoMark['shape'], points: readonly (readonly [number, number])[], label?: string, radius?: number): PhotoMark =>
    ({ shape, points: points.map(([across, down]) => ({ across, down })), span, ...(label === undefined ? {} : { label }), ...(radius === undefined ? {} : { radius }) });

type Element = DefaultTreeAdapterTypes.Element;
const elements = (node: DefaultTreeAdapterTypes.ParentNode): Element[] => node.childNodes.flatMap(child => 'tagName' in child ? [child, ...elements(child)] : []);
const drawn = (marks: readonly PhotoMark[], width = 1600, height = 1200) => elements(parseFragment(String(marksOverlay(marks, width, height, 'p1'))));
const named = (all: readonly Element[], tagName: string) => all.filter(element => element.tagName === tagName);
const attributes = (element: Element | undefined) => Object.fromEntries(element?.attrs.map(({ name, value }) => [name, value]) ?? []);
const numbers = (element: Element | undefined, ...names: string[]) => names.map(name => Number(attributes(element)[name]));
const textOf = (element: Element | undefined) => element?.childNodes.map(child => 'value' in child ? child.value : '').join('');

describe('places', () => {
    test('a ring stands at its share of width and height, its radius a share of the width', () => {
        const rings = named(drawn([mark('ring', [[0.25, 0.5]], undefined, 0.1)]), 'circle');
        expect(rings.map(ring => numbers(ring, 'cx', 'cy', 'r'))).toEqual([[400, 600, 160], [400, 600, 160]]); // Casing and line.
    });

    test('a box lies between its corners, whichever are named', () => {
        for (const points of [[[0.1, 0.2], [0.5, 0.6]], [[0.5, 0.6], [0.1, 0.2]], [[0.1, 0.6], [0.5, 0.2]]] as const) {
            expect(numbers(named(drawn([mark('box', points)]), 'rect')[0], 'x', 'y', 'width', 'height')).toEqual([160, 240, 640, 480]);
        }
    });

    test('an arrow ends with its point where it points', () => {
        const head = named(drawn([mark('arrow', [[0.1, 0.1], [0.5, 0.5]])]), 'path').find(path => attributes(path)['d']?.endsWith('Z'));
        expect(attributes(head)['d']).toMatch(/^M800 600L/);
    });

    test.each([[0.02, 0.02], [0.98, 0.03], [0.5, 0.97], [0.5, 0.5]])('an arrow of one point comes from within the picture (%d, %d)', (across, down) => {
        const line = named(drawn([mark('arrow', [[across, down]])]), 'path')[0];
        const [x = NaN, y = NaN] = attributes(line)['d']?.match(/[\d.-]+/g)?.map(Number) ?? [];
        expect(x > 0 && x < 1600 && y > 0 && y < 1200, `${x}, ${y}`).toBe(true);
    });

    test('line and lettering grow with the picture', () => {
        const widths = [800, 1600].map(width => Number(attributes(named(drawn([mark('ring', [[0.5, 0.5]], 'x')], width, width * 0.75), 'g')[0])['font-size']));
        expect((widths[1] ?? 0) / (widths[0] ?? 1)).toBeCloseTo(2, 3);
    });
});

describe('words', () => {
    const grounds = (marks: readonly PhotoMark[], width = 1600, height = 1200) => named(drawn(marks, width, height), 'rect').filter(rect => attributes(rect)['fill'] === '#ffffff').map(rect => numbers(rect, 'x', 'y', 'width', 'height'));

    test.each([[0, 0], [1, 0], [0, 1], [1, 1], [0.5, 0.5]])('stay within the picture (%d, %d)', (across, down) => {
        for (const shape of ['ring', 'label', 'arrow'] as const) {
            const [[x = NaN, y = NaN, width = NaN, height = NaN] = []] = grounds([mark(shape, [[across, down]], 'One clamp only, too near the end')]);
            expect(x >= 0 && y >= 0 && x + width <= 1600 && y + height <= 1200, `${shape} ${x} ${y} ${width} ${height}`).toBe(true);
        }
    });

    test('of several marks side by side do not cover one another', () => {
        const boxes = grounds([0.2, 0.35, 0.5, 0.65].map(across => mark('ring', [[across, 0.5]], 'A clamp', 0.05)));
        expect(boxes).toHaveLength(4);
        for (const [index, [x = 0, y = 0, width = 0, height = 0]] of boxes.entries()) {
            for (const [x2 = 0, y2 = 0, width2 = 0, height2 = 0] of boxes.slice(index + 1)) {
                expect(x + width <= x2 || x2 + width2 <= x || y + height <= y2 || y2 + height2 <= y).toBe(true);
            }
        }
    });

    test('that are long take lines, and are cut at last', () => {
        const lines = named(drawn([mark('label', [[0.5, 0.5]], 'word '.repeat(60))]), 'text').map(textOf);
        expect(lines.length).toBe(3);
        expect(lines.at(-1)).toMatch(/…$/);
    });

    test('are text, whatever they hold', () => {
        const hostile = '"><script>alert(1)</script>';
        const all = drawn([mark('label', [[0.5, 0.5]], hostile)]);
        expect(named(all, 'script')).toEqual([]);
        expect(textOf(named(all, 'title')[0])).toContain(hostile);
        expect(markedSvg({ dataUri: dot, width: 10, height: 10 }, [mark('ring', [[0.5, 0.5]], hostile)])).not.toContain('<script');
    });
});

test('the marks are told in words', () => {
    const marks = [mark('arrow', [[0.5, 0.5]], 'Cut  end.'), mark('ring', [[0.5, 0.5]]), mark('label', [[0.5, 0.5]], 'SV4')];
    expect(marksInWords(marks)).toBe('Arrow: Cut end. Ring. Label: SV4.');
    const [svg, title] = drawn(marks);
    expect(attributes(svg)).toMatchObject({ 'class': 'photo-marks', 'role': 'img', 'aria-labelledby': 'p1-title' });
    expect([attributes(title)['id'], textOf(title)]).toEqual(['p1-title', 'Arrow: Cut end. Ring. Label: SV4.']);
});

test('no marks draw nothing', () => {
    expect(String(marksOverlay([], 100, 100, 'p'))).toBe('');
});

test('the picture with its marks is a document of its own', () => {
    const svg = markedSvg({ dataUri: dot, width: 40, height: 30 }, [mark('ring', [[0.5, 0.5]])]);
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 40 30" width="40" height="30">/);
    expect(svg).toContain(`<image href="${dot}"`);
});
