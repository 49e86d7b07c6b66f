import { expect, test } from 'vitest';
import { potentialPoints } from '../../../src/report/drawings/potential-points.js';
import type { Html } from '../../../src/report/html.js';
import { all, contextOf, descriptionOf, expectSound, number, pointsOf, svgsOf, textsOf, type Drawn } from './drawn.js';

const draw = (rows: string, head = 'cell: silver-chloride  gear: fiberglass-bronze'): Html => {
    const context = contextOf(`reading P1 "Fittings" { measures: potential  ${head}  columns: potential\n${rows}\n}\n`);
    const [reading] = context.record.readings;
    return reading ? potentialPoints(context, reading, 'r') : ('' as unknown as Html);
};
/** Where the marks stand: circles inside the range, diamonds outside. */
const marksOf = (svg: Drawn | undefined) => (svg ? all([svg], 'g') : []).map(group => {
    const circle = all([group], 'circle')[0];
    const diamond = all([group], 'path').at(-1);
    return circle ? { x: number(circle, 'cx'), isIn: true } : { x: pointsOf(diamond?.attributes.get('d') ?? '')[0]?.x ?? Number.NaN, isIn: false };
});

test('readings stand to scale against the range of the catalogue, -1000 to -750 mV, those outside by another sign and in words', () => {
    const markup = draw('row "Rudder": -640 mV\nrow "Shaft": -930 mV\nrow "Tab": -1080 mV');
    expectSound(markup);
    const [svg] = svgsOf(markup);
    const [rudder, shaft, tab] = marksOf(svg);
    expect([rudder, shaft, tab].map(mark => mark?.isIn)).toEqual([false, true, false]);
    expect(((rudder?.x ?? 0) - (shaft?.x ?? 0)) / ((rudder?.x ?? 0) - (tab?.x ?? 0))).toBeCloseTo((930 - 640) / (1080 - 640), 2);
    const band = svg && all([svg], 'rect')[0];
    expect((number(band, 'x') - (tab?.x ?? 0)) / ((rudder?.x ?? 0) - (tab?.x ?? 0))).toBeCloseTo((1080 - 1000) / (1080 - 640), 2);
    expect(number(band, 'width') / ((rudder?.x ?? 0) - (tab?.x ?? 0))).toBeCloseTo(250 / 440, 2);
    expect(svg && textsOf(svg)).toEqual(expect.arrayContaining(['−640 mV, outside', '−930 mV', '−1080 mV, outside', 'range −1000 mV to −750 mV (the usual limit)']));
    expect(svg && descriptionOf(svg)).toBe('3 fittings against silver chloride. Most negative −1080 mV at Tab, least −640 mV at Rudder. Range −1000 mV to −750 mV, the usual limit: 2 lie outside.');
});

test('without gear there is no range and nothing is judged', () => {
    const [svg] = svgsOf(draw('row "Rudder": -640 mV\nrow "Shaft": -930 mV', 'cell: silver-chloride'));
    expect(marksOf(svg).map(mark => mark.isIn)).toEqual([true, true]);
    expect(svg && all([svg], 'rect')).toEqual([]);
    expect(svg && descriptionOf(svg)).toContain('No range is recorded');
});

test('readings of another cell are brought to silver chloride', () => {
    // A copper-sulfate cell reads about 60 mV more negative than silver chloride in sea water (published: +316 mV and about +250 mV against hydrogen).
    const [svg] = svgsOf(draw('row "A": -960 mV\nrow "B": -860 mV', 'cell: copper-sulfate'));
    const shown = (svg ? textsOf(svg) : []).flatMap(text => /^−(\d+) mV$/.exec(text)?.[1] ?? []).map(Number);
    expect(shown).toHaveLength(2);
    expect((shown[0] ?? 0) - (shown[1] ?? 0)).toBe(100);
    expect(shown[0]).toBeGreaterThan(960 - 80);
    expect(shown[0]).toBeLessThan(960 - 40);
});

test('one reading is not drawn; a hundred go over several drawings', () => {
    expect(String(draw('row "A": -900 mV'))).toBe('');
    const markup = draw(Array.from({ length: 100 }, (_, i) => `row "Fitting ${i}": -${600 + i} mV`).join('\n'));
    expect(svgsOf(markup).flatMap(marksOf)).toHaveLength(100);
    expectSound(markup);
});
