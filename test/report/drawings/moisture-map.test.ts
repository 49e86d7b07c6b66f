import { describe, expect, test as single } from 'vitest';
import { hatching, pageHeight, pageWidth } from '../../../src/report/drawings/drawing.js';
import { bandOf, bandsOf, moistureMap } from '../../../src/report/drawings/moisture-map.js';
import type { Html } from '../../../src/report/html.js';
import { fc, test } from '../property.js';
import { all, anyContextOf, contextOf, descriptionOf, expectSound, number, surveys, svgsOf, textsOf, type Drawn } from './drawn.js';

const draw = (head: string, rows: string, make = contextOf): Html => {
    const context = make(`hull-shell HS1 { material: grp }\nreading M1 "Bottom" on HS1 { measures: moisture  ${head}\n${rows}\n}\n`);
    const [reading] = context.record.readings;
    return reading ? moistureMap(context, reading, 'r') : ('' as unknown as Html);
};

/** Cells of a map by their place: 24 high, which nothing else in it is. */
const cellsOf = (svg: Drawn) => all([svg], 'rect').filter(rect => number(rect, 'height') === 24);
/** Lines of the hatching inside of a rectangle. */
function hatchingIn(svg: Drawn, cell: Drawn): string {
    const [x, y, width] = [number(cell, 'x'), number(cell, 'y'), number(cell, 'width')];
    return all([svg], 'path').map(path => path.attributes.get('d') ?? '').find(d => (['sparse', 'dense', 'crossed'] as const).some(hatch => d === hatching(x, y, width, 24, hatch))) ?? '';
}

describe('a grid with a dry reference', () => {
    const markup = draw('reference: 12  columns: "Station 1", "Station 2", "Station 3"', 'row "Port bottom": 12, 18, none\nrow "Starboard bottom": 24, 25, 20..26');
    const [svg] = svgsOf(markup);
    single('shows every value once, an empty cell as such, and the headings of rows and columns', () => {
        expectSound(markup);
        if (!svg) {
            throw new Error('nothing drawn');
        }
        const texts = textsOf(svg);
        for (const value of ['12', '18', '24', '25', '20 to 26']) {
            expect(texts.filter(text => text === value), value).toHaveLength(1);
        }
        expect(texts.filter(text => text === '–')).toHaveLength(1);
        expect(cellsOf(svg)).toHaveLength(6);
        for (const heading of ['Port bottom', 'Starboard bottom', 'Port side', 'Starboard side', 'Station 1', 'Station 2', 'Station 3']) {
            expect(texts).toContain(heading);
        }
    });
    single('hatches by the ratio to the reference: to 1, to 1.5, to 2, over 2 (twice the reference is the practice that trade/moisture.ts names)', () => {
        const cells = svg ? cellsOf(svg) : [];
        const kinds = cells.map(cell => svg ? hatchingIn(svg, cell) : '').map((lines, i) => {
            const cell = cells[i];
            return cell === undefined ? '' : (['sparse', 'dense', 'crossed'] as const).find(hatch => lines !== '' && lines === hatching(number(cell, 'x'), number(cell, 'y'), number(cell, 'width'), 24, hatch)) ?? 'none';
        });
        expect(kinds).toEqual(['none', 'sparse', 'none', 'dense', 'crossed', 'crossed']);
        expect(cells[2]?.attributes.get('stroke-dasharray')).toBeTruthy();
        expect(cells.map(cell => Number(cell.attributes.get('stroke-width') ?? 1) > 2)).toEqual([false, false, false, false, true, true]);
    });
    single('says in its text alternative what is highest and lowest, and where', () => {
        expect(svg && descriptionOf(svg)).toBe('5 readings on the meter’s own scale. Highest 20 to 26 at Starboard bottom, Station 3; lowest 12 at Port bottom, Station 1. Dry reference 12. 2 readings are over 2 times the reference.');
    });
    single('names the limits in its legend and whose they are', () => {
        expect(svg && textsOf(svg)).toEqual(expect.arrayContaining(['to 12, the dry reference', 'over 12, to 18', 'over 18, to 24', 'over 24, 2 times the reference (the usual limit)', 'not read', 'a range is hatched by its upper end']));
    });
});

single('the firm’s own limit is drawn by and named', () => {
    const context = contextOf('yardsticks { moisture-ratio: 2.5 }\nreading M1 "Deck" { measures: moisture  reference: 10  row "Deck": 24, 26 }\n');
    const [reading] = context.record.readings;
    const [svg] = reading ? svgsOf(moistureMap(context, reading, 'r')) : [];
    expect(svg && textsOf(svg).join(' ')).toContain('over 25, 2.5 times the reference (the firm’s limit)');
    expect(svg && descriptionOf(svg)).toContain('1 reading is over 2.5 times the reference.');
});

single('without a reference nothing is hatched or judged, and only the highest is framed', () => {
    const markup = draw('behind: nothing', 'row "Keel": 11, 40, 12');
    const [svg] = svgsOf(markup);
    const cells = svg ? cellsOf(svg) : [];
    expect(cells.map(cell => svg && hatchingIn(svg, cell))).toEqual(['', '', '']);
    expect(cells.map(cell => Number(cell.attributes.get('stroke-width') ?? 1) > 2)).toEqual([false, true, false]);
    expect(svg && descriptionOf(svg)).toContain('No dry reference is recorded');
    expect(String(markup)).toContain('no dry reference is recorded to compare with');
});

single('places before a tank, metal or a wet locker are marked and told', () => {
    const [svg] = svgsOf(draw('reference: 10', 'row "Port": 11, 22, tank\nrow "Starboard": 11, 12, nothing'));
    expect(svg && textsOf(svg)).toContain('tank behind');
    expect(svg && descriptionOf(svg)).toContain('A tank lies behind Port.');
    expect(svg && all([svg], 'path').filter(path => path.attributes.get('d')?.endsWith('v9l-9 -9z'))).toHaveLength(3); // Two cells and the legend.
});

single('200 rows of 16 stations go over several drawings, each fit for a page, and no reading is lost', () => {
    const rows = Array.from({ length: 200 }, (_, i) => `row "Frame ${i}": ${Array.from({ length: 16 }, (_, j) => (i * 16 + j) % 97).join(', ')}`).join('\n');
    const markup = draw('reference: 20', rows);
    const svgs = svgsOf(markup);
    expect(svgs.length).toBeGreaterThan(9);
    expect(svgs.reduce((sum, svg) => sum + cellsOf(svg).length, 0)).toBe(3200);
    for (const svg of svgs) {
        expect(number(svg, 'width')).toBeLessThanOrEqual(pageWidth);
        expect(number(svg, 'height')).toBeLessThanOrEqual(pageHeight);
    }
    expectSound(markup);
});

single('one reading is no map; words and nothing are none', () => {
    expect(String(draw('reference: 10', 'row "A": 11'))).toBe('');
    expect(String(draw('', ''))).toBe('');
    expect(String(draw('', 'row "A": none, none', anyContextOf))).toBe('');
});

surveys('any figures and labels give a sound drawing', fc.tuple(fc.option(fc.integer({ min: -5, max: 50 }), { nil: undefined }), fc.array(fc.tuple(fc.string({ maxLength: 60 }), fc.array(fc.oneof(fc.integer({ min: -20, max: 2000 }), fc.constant('none'), fc.constant('3..90')), { maxLength: 14 })), { maxLength: 8 })), ([reference, rows]) => {
    expectSound(draw(reference === undefined ? '' : `reference: ${reference}`, rows.map(([label, values]) => `row "${label.replace(/["\\{}]/g, '<')}": ${values.join(', ')}`).join('\n'), anyContextOf));
});

test('a higher reading is never in a lower band', fc.tuple(fc.double({ min: 0.1, max: 60, noNaN: true }), fc.double({ min: 1.1, max: 10, noNaN: true }), fc.double({ min: -10, max: 500, noNaN: true }), fc.double({ min: -10, max: 500, noNaN: true })), ([reference, ratio, one, other]) => {
    const bands = bandsOf(reference, ratio, 'the usual limit');
    const rank = (value: number) => bands.findIndex(band => band === bandOf(bands, value));
    expect(rank(Math.min(one, other))).toBeLessThanOrEqual(rank(Math.max(one, other)));
    expect(rank(one)).toBeGreaterThanOrEqual(0);
    expect(rank(one) === 3).toBe(one > reference * ratio + 1e-9);
});
