import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawRun } from '../../../src/report/drawings/schematic.js';
import { pageWidth } from '../../../src/report/drawings/drawing.js';
import { all, anyContextOf, contextOf, descriptionOf, expectSound, extentOf, number, surveys, svgsOf, textsOf, treeOf, type Drawn } from './drawn.js';

const draw = (text: string, make = contextOf) => {
    const context = make(text);
    const [run] = context.record.runs;
    if (!run) {
        throw new Error('no run');
    }
    return drawRun(context, run, 'run-R1');
};
/** Pipe walls of a part, from left to right. */
const wallsOf = (svg: Drawn | undefined, id: string) => {
    const group = (svg ? all([svg], 'g') : []).find(each => all([each], 'text').some(text => text.text === id));
    return (group ? all([group], 'path') : []).filter(path => path.attributes.get('fill') === '#dfe9ec');
};
const heightOf = (wall: Drawn | undefined) => {
    const extent = wall && extentOf(wall);
    return extent ? extent.bottom - extent.top : Number.NaN;
};

describe('a hose of 38 mm on a tail of 32 mm', () => {
    const markup = draw(`
through-hull TH1 "Drain" { size: 1-1/2 in  below-waterline: 6 in  metal: bronze  thread: nps }
seacock SV1 "Seacock" { size: 1-1/2 in  spigot: 32 mm  female-thread: npt }
hose H1 "Hose" { bore: 38 mm  clamps: 2 }
sink SK1 "Sink" { port: 38 mm }
run R1 "Sink drain" { service: sink-drain }: TH1 -> SV1 -> { clamps: 1 } H1 -> SK1
finding F1 "Hose too large" on H1, SV1 { answers: hose-and-spigot-differ, clamp-single  urgency: before-launch  seen: "s"  because: "b"  recommend: "r" }
`);
    const [svg] = svgsOf(markup);
    test('is drawn with a step: heights are as the sizes', () => {
        expectSound(markup);
        const [, tail] = wallsOf(svg, 'SV1');
        const [hose] = wallsOf(svg, 'H1');
        expect(heightOf(tail) / heightOf(hose)).toBeCloseTo(32 / 38, 2);
        expect(svg && textsOf(svg)).toEqual(expect.arrayContaining(['32 mm', '38 mm']));
    });
    test('carries a diamond at the joint at fault with a number that is told beneath', () => {
        const signs = (svg ? all([svg], 'g') : []).filter(group => all([group], 'path').some(path => path.attributes.get('d')?.endsWith('l15 15l-15 15l-15 -15z')));
        const [hose] = wallsOf(svg, 'H1');
        const atHose = signs.filter(sign => Math.abs(number(all([sign], 'text')[0], 'x') - ((hose && extentOf(hose)?.left) ?? Number.NaN)) < 0.5);
        // The first joint is at fault too, by its threads.
        expect(atHose.map(sign => sign.text)).toEqual(['2']);
        const told = all(treeOf(markup), 'ol').flatMap(list => all([list], 'li')).map(item => item.text.replace(/\s+/g, ' '));
        expect(told[0]).toMatch(/^TH1 to SV1: Open: /);
        expect(told[1]).toMatch(/^SV1 to H1: .*F1/);
    });
    test('clamps are bands on the hose, as many as recorded at each joint', () => {
        const bands = (svg ? all([svg], 'rect') : []).filter(rect => number(rect, 'width') === 5);
        expect(bands).toHaveLength(3);
    });
    test('threads stand by form and gender, the waterline as a wave, the flow outward', () => {
        expect(svg && textsOf(svg)).toEqual(expect.arrayContaining(['NPS', 'female NPT', 'flow']));
        expect((svg ? all([svg], 'path') : []).some(path => path.attributes.get('d')?.includes('q3.5 -5 7 0t7 0'))).toBe(true);
        expect(svg && descriptionOf(svg)).toContain('Water goes out to the sea.');
        expect(svg && descriptionOf(svg)).toContain('Drain (TH1), 1-1/2 in (38.1 mm), 6 in (152 mm) below waterline');
    });
    test('sizes are given in both systems', () => {
        expect(svg && textsOf(svg).map(text => text.replaceAll('\u00a0', ' '))).toEqual(expect.arrayContaining(['bore 38 mm (1-1/2 in)', 'tail 32 mm (1.26 in)']));
    });
});

test('nominal size and hose size are not compared with each other', () => {
    const [svg] = svgsOf(draw('through-hull TH1 { size: 1 in }\nadapter A1 { spigot: 38 mm }\nrun R1: TH1 -> A1\n'));
    expect(svg && textsOf(svg).filter(text => text === '1 in' || text === '38 mm')).toEqual([]);
});

test('where the run goes on in the next row, each part keeps what belongs to it', () => {
    const ids = Array.from({ length: 8 }, (_, i) => `P${i}`);
    const markup = draw(`${ids.map((id, i) => i === 4 ? `adapter ${id} { spigot: 50 mm  male-thread: npt }` : `hose ${id} { bore: 25 mm  clamps: 2 }`).join('\n')}\nrun R1: ${ids.join(' -> ')}\n`);
    expectSound(markup);
    const [svg] = svgsOf(markup);
    const size = (text: string) => (svg ? all([svg], 'text') : []).filter(each => each.text === text && each.attributes.get('font-weight') === '700').map(each => number(each, 'y'));
    // P3 ends the first row with 25 mm, P4 begins the second with 50 mm; P4 meets P5 in the second.
    expect(size('25 mm')[0]).toBeLessThan(size('50 mm')[0] ?? 0);
    expect(size('25 mm')[1]).toBe(size('50 mm')[1]);
});

test('a stepped adapter shows each end to its neighbor', () => {
    const [svg] = svgsOf(draw('hose H1 { bore: 38 mm }\nstepped-adapter A1 { ends: 38 mm, 25 mm }\nhose H2 { bore: 25 mm }\nrun R1: H1 -> A1 -> H2\n'));
    const [left, right] = wallsOf(svg, 'A1');
    expect(heightOf(right) / heightOf(left)).toBeCloseTo(25 / 38, 2);
});

test('how a run ends is drawn and said', () => {
    for (const [end, words] of [['open', 'left open'], ['capped', 'capped'], ['blanked', 'blanked']] as const) {
        const [svg] = svgsOf(draw(`through-hull TH1 { size: 1 in }\nrun R1: TH1 -> ${end}\n`));
        expect(svg && textsOf(svg)).toContain(end);
        expect(svg && descriptionOf(svg)).toContain(`then ${words}.`);
    }
});

test('no clamp recorded is not no clamp', () => {
    const texts = (clamps: string) => svgsOf(draw(`adapter A1 { spigot: 25 mm }\nhose H1 { bore: 25 mm ${clamps} }\nrun R1: A1 -> H1\n`)).flatMap(textsOf);
    expect(texts('')).not.toContain('no clamp');
    expect(texts('clamps: 0')).toContain('no clamp');
});

test('a run of 23 parts wraps within the page; each part is there once', () => {
    const ids = Array.from({ length: 23 }, (_, i) => `P${i}`);
    const markup = draw(`${ids.map((id, i) => i % 2 === 0 ? `hose ${id} { bore: 25 mm  clamps: 2 }` : `adapter ${id} { spigot: 25 mm }`).join('\n')}\nrun R1: ${ids.join(' -> ')} -> open\n`);
    const [svg] = svgsOf(markup);
    expectSound(markup);
    expect(number(svg, 'width')).toBeLessThanOrEqual(pageWidth + 40);
    for (const id of ids) {
        expect(svg && textsOf(svg).filter(text => text === id)).toHaveLength(1);
    }
    expect(svg && textsOf(svg)).toEqual(expect.arrayContaining(['from P4', 'to P5']));
});

const part = fc.tuple(fc.constantFrom('through-hull', 'seacock', 'hose', 'adapter', 'elbow', 'vented-loop', 'pump', 'sink', 'strainer'), fc.option(fc.integer({ min: 3, max: 200 }), { nil: undefined }), fc.string({ maxLength: 50 }), fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined }));
surveys('any run gives a sound drawing', fc.tuple(fc.array(part, { minLength: 1, maxLength: 14 }), fc.constantFrom('', ' -> open', ' -> capped', ' -> blanked')), ([parts, end]) => {
    const text = parts.map(([kind, size, title, clamps], i) => `${kind} P${i} "${title.replace(/["\\{}]/g, '<')}" { ${size === undefined ? '' : `${kind === 'hose' ? 'bore' : 'spigot'}: ${size} mm  `}${kind === 'hose' && clamps !== undefined ? `clamps: ${clamps}` : ''} }`).join('\n');
    expectSound(draw(`${text}\nrun R1: ${parts.map((_, i) => `P${i}`).join(' -> ')}${end}\n`, anyContextOf));
});
