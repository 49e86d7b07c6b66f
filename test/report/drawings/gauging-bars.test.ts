import * as fc from 'fast-check';
import { describe, expect, test as single } from 'vitest';
import { pageHeight } from '../../../src/report/drawings/drawing.js';
import { gaugingBars } from '../../../src/report/drawings/gauging-bars.js';
import type { Html } from '../../../src/report/html.js';
import { all, anyContextOf, contextOf, descriptionOf, expectSound, extentOf, number, pointsOf, surveys, svgsOf, textsOf, type Drawn } from './drawn.js';

const draw = (rows: string, { head = 'columns: original, pit, reading', on = 'plate P1 { metal: steel }', make = contextOf } = {}): Html => {
    const context = make(`${on}\nreading G1 "Bottom" on P1 { measures: thickness  ${head}\n${rows}\n}\n`);
    const [reading] = context.record.readings;
    return reading ? gaugingBars(context, reading, 'r') : ('' as unknown as Html);
};

/** The bars in order: outline of the original where there is one, the mean, and the limits. */
function barsOf(svg: Drawn | undefined): { outline: number | undefined; mean: number; tip: number | undefined; limits: number[] }[] {
    return (svg ? all([svg], 'g') : []).map(group => {
        const outline = all([group], 'rect')[0];
        const paths = all([group], 'path');
        const bar = paths[0];
        const points = bar ? pointsOf(bar.attributes.get('d') ?? '') : [];
        const end = bar ? extentOf(bar)?.right ?? 0 : 0;
        // A bar without a notch has only points at its ends.
        const inner = points.map(({ x }) => x).filter(x => x > 10.5 && x < end - 0.5);
        return {
            outline: outline && number(outline, 'width'), mean: end - 10, tip: inner.length === 0 ? undefined : Math.min(...inner) - 10,
            limits: paths.filter(path => /^M[\d.]+ [\d.]+v\d+$/.test(path.attributes.get('d') ?? '')).map(path => (extentOf(path)?.left ?? 0) - 10),
        };
    });
}

describe('a bottom of 6 mm', () => {
    const markup = draw('row "A": 6 mm, none, 5.8 mm, 5.9 mm, 5.7 mm\nrow "B": 6 mm, none, 4.4 mm\nrow "C": 8 mm, 2.2 mm, 7.6 mm\nrow "D": 6 mm, none, 6.4 mm');
    const [svg] = svgsOf(markup);
    const bars = barsOf(svg);
    single('each bar is to its outline as the mean to the original', () => {
        expectSound(markup);
        expect(bars.map(({ outline, mean }) => mean / (outline ?? Number.NaN))).toEqual([expect.closeTo(5.8 / 6, 3), expect.closeTo(4.4 / 6, 3), expect.closeTo(7.6 / 8, 3), expect.closeTo(6.4 / 6, 3)]);
    });
    single('all bars are on one scale', () => {
        expect((bars[0]?.outline ?? 0) / (bars[2]?.outline ?? 1)).toBeCloseTo(6 / 8, 3);
    });
    single('a pit is a notch as deep as it is', () => {
        expect(bars.map(({ tip }) => tip !== undefined)).toEqual([false, false, true, false]);
        expect((bars[2]?.tip ?? 0) / (bars[2]?.outline ?? 1)).toBeCloseTo((7.6 - 2.2) / 8, 3);
    });
    single('the limits stand at 20 % and 25 % lost, as plate-plan and plate-renew have it (NVIC 7-68, read: 25 %)', () => {
        for (const { limits, outline = 0 } of bars) {
            expect(limits.map(limit => limit / outline)).toEqual([expect.closeTo(0.8, 3), expect.closeTo(0.75, 3)]);
        }
    });
    single('words tell mean, loss and what is past which limit', () => {
        expect(svg && textsOf(svg)).toEqual(expect.arrayContaining([
            'mean 5.8 mm of 6 mm: 3.3 % lost', 'mean 4.4 mm of 6 mm: 26.7 % lost; past the limit of renewal', 'mean 7.6 mm of 8 mm: 5 % lost; pit 2.2 mm, 27.5 %', 'mean 6.4 mm of 6 mm: 6.7 % over the original',
            'renewal planned from 20 % lost (the usual limit)', 'renewed over 25 % lost (the usual limit)', '0 mm', '0 in',
        ]));
    });
    single('the text alternative names the greatest loss and the deepest pit', () => {
        expect(svg && descriptionOf(svg)).toBe('4 places as bars against the original thickness. Most is lost at B: 26.7 % lost. Deepest pit: 2.2 mm at C. Lines at 20 % lost, renewal planned, and 25 %, renewed.');
    });
});

single('a lightly built craft is planned from 15 %', () => {
    const [svg] = svgsOf(draw('row "A": 6 mm, none, 5 mm', { on: 'plate P1 { metal: steel  lightly-built: yes }' }));
    expect(barsOf(svg)[0]?.limits.map(limit => limit / (barsOf(svg)[0]?.outline ?? 1))).toEqual([expect.closeTo(0.85, 3), expect.closeTo(0.75, 3)]);
    expect(svg && textsOf(svg)).toContain('mean 5 mm of 6 mm: 16.7 % lost; renewal to be planned');
});

single('laminate is drawn without limits, an unknown original without an outline', () => {
    const [laminate] = svgsOf(draw('row "A": 20 mm, 12 mm', { on: 'hull-shell P1 { material: grp }', head: 'columns: original, reading' }));
    expect(barsOf(laminate)[0]?.limits).toEqual([]);
    expect(laminate && textsOf(laminate).some(text => /renew/.test(text))).toBe(false);
    const [unknown] = svgsOf(draw('row "A": none, 1 mm, 6.4 mm'));
    expect(barsOf(unknown)[0]).toMatchObject({ outline: undefined, limits: [] });
    expect(unknown && textsOf(unknown)).toContain('mean 6.4 mm, original not recorded; pit 1 mm');
    expect(unknown && descriptionOf(unknown)).toContain('No loss can be told');
});

single('inches are drawn in inches to a thousandth', () => {
    const [svg] = svgsOf(draw('row "A": 0.190 in, none, 0.160 in, 0.158 in, 0.162 in'));
    expect(svg && textsOf(svg)).toContain('mean 0.160 in of 0.190 in: 15.8 % lost; to be watched');
});

single('200 places go over several drawings on one scale, each fit for a page', () => {
    const markup = draw(Array.from({ length: 200 }, (_, i) => `row "Frame ${i}": 6 mm, none, ${(4 + i / 100).toFixed(2)} mm`).join('\n'));
    const svgs = svgsOf(markup);
    expect(svgs.flatMap(barsOf)).toHaveLength(200);
    for (const svg of svgs) {
        expect(number(svg, 'height')).toBeLessThanOrEqual(pageHeight);
    }
    expectSound(markup);
});

single('an original alone is not drawn, nor is nothing', () => {
    expect(String(draw('row "A": 6 mm'))).toBe('');
    expect(String(draw(''))).toBe('');
});

surveys('any gauging gives a sound drawing whose bars keep the ratio of mean and original', fc.array(fc.tuple(fc.option(fc.integer({ min: 20, max: 300 }), { nil: undefined }), fc.integer({ min: 5, max: 300 }), fc.option(fc.integer({ min: 0, max: 200 }), { nil: undefined })), { minLength: 1, maxLength: 15 }), rows => {
    const markup = draw(rows.map(([original, reading, pit], i) => `row "Straße ${i} <b>": ${original === undefined ? 'none' : `${original / 10} mm`}, ${pit === undefined ? 'none' : `${pit / 10} mm`}, ${reading / 10} mm`).join('\n'), { make: anyContextOf });
    expectSound(markup);
    const bars = svgsOf(markup).flatMap(barsOf);
    expect(bars).toHaveLength(rows.length);
    for (const [index, [original, reading]] of rows.entries()) {
        if (original !== undefined && (bars[index]?.outline ?? 0) > 40) {
            expect((bars[index]?.mean ?? 0) / (bars[index]?.outline ?? 1)).toBeCloseTo(reading / original, 1);
        }
    }
});
