import * as fc from 'fast-check';
import { describe, expect, test as single } from 'vitest';
import { percussionMap } from '../../../src/report/drawings/percussion-map.js';
import type { Html } from '../../../src/report/html.js';
import { all, anyContextOf, contextOf, descriptionOf, expectSound, number, surveys, svgsOf, textsOf, type Drawn } from './drawn.js';

const draw = (rows: string, head = '', make = contextOf): Html => {
    const context = make(`deck DK1 { material: cored-grp }\nreading M1 "Deck" on DK1 { measures: percussion  ${head}\n${rows}\n}\n`);
    const [reading] = context.record.readings;
    return reading ? percussionMap(context, reading, 'r') : ('' as unknown as Html);
};

/** Parts of the bars, which are 24 high. */
const partsOf = (svg: Drawn | undefined) => svg ? all([svg], 'rect').filter(rect => number(rect, 'height') === 24) : [];

describe('a deck of two panels', () => {
    const markup = draw('row "Foredeck, port": dull, 0.15 m2, 4 m2\nrow "Foredeck, starboard": hollow, 0.09 m2, 4 m2\nrow "Foredeck, rest": clear, 3 m2, 4 m2\nrow "Side deck": clear, 2 m2, 2 m2\nrow "Coachroof": dull');
    const [svg] = svgsOf(markup);
    single('parts are as long as their share of the panel', () => {
        expectSound(markup);
        const widths = partsOf(svg).map(part => number(part, 'width'));
        // The rest of the first bar, then hollow, dull and clear of it; all of the second bar.
        const full = widths[4] ?? Number.NaN;
        expect(widths.slice(0, 4).map(width => width / full)).toEqual([expect.closeTo((4 - 3.24) / 4, 3), expect.closeTo(0.09 / 4, 3), expect.closeTo(0.15 / 4, 3), expect.closeTo(3 / 4, 3)]);
    });
    single('each place stands with its letter, sound and area; the share in words', () => {
        const texts = svg ? textsOf(svg) : [];
        for (const text of ['Foredeck, port', 'dull, 0.15 m² (1.61 ft²)', 'hollow, 0.09 m² (140 in²)', 'clear, 3 m² (32.3 ft²)', 'dull, extent not recorded', '6 % dull or hollow of 4 m² (43.1 ft²)', '0 % dull or hollow of 2 m² (21.5 ft²)']) {
            expect(texts).toContain(text);
        }
        expect(texts.filter(text => text === 'H')).toHaveLength(1);
        expect(texts.filter(text => text === 'D')).toHaveLength(2);
        expect(texts.filter(text => text === 'C')).toHaveLength(4); // Two places, two bars.
    });
    single('the text alternative names the largest share', () => {
        expect(svg && descriptionOf(svg)).toBe('5 places sounded: 1 hollow, 2 dull, 2 clear. The largest share that sounds dull or hollow is 6 %, of Foredeck.');
    });
});

single('rows in the panel of the table are summed over it', () => {
    const [svg] = svgsOf(draw('row "Fore": dull, 0.2 m2\nrow "Aft": hollow, 0.1 m2', 'panel-area: 3 m2'));
    expect(svg && textsOf(svg)).toContain('10 % dull or hollow of 3 m² (32.3 ft²)');
});

single('a patch whose extent is not recorded keeps the share from being told', () => {
    const [svg] = svgsOf(draw('row "Fore": dull, 0.2 m2\nrow "Aft": hollow', 'panel-area: 3 m2'));
    expect(svg && textsOf(svg).some(text => /% dull/.test(text))).toBe(false);
});

single('areas of more than the panel are told, and drawn within it', () => {
    const markup = draw('row "A": dull, 3 m2, 2 m2\nrow "A": clear, 1 m2, 2 m2');
    const [svg] = svgsOf(markup);
    expect(svg && textsOf(svg)).toContain('the areas recorded come to more than the panel');
    expectSound(markup);
});

single('300 places go over several drawings, and none is lost', () => {
    const markup = draw(Array.from({ length: 300 }, (_, i) => `row "Place ${i}": ${['clear', 'dull', 'hollow'][i % 3]}, 0.1 m2`).join('\n'), 'panel-area: 90 m2');
    const texts = svgsOf(markup).flatMap(textsOf);
    expect(texts.filter(text => /^Place \d+$/.test(text))).toHaveLength(300);
    expectSound(markup);
});

surveys('any rows give a sound drawing', fc.array(fc.tuple(fc.string({ maxLength: 40 }), fc.constantFrom('clear', 'dull', 'hollow', 'none'), fc.option(fc.integer({ min: 1, max: 500 }), { nil: undefined }), fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined })), { maxLength: 12 }), rows => {
    expectSound(draw(rows.map(([label, sound, area, panel]) => `row "${label.replace(/["\\{}]/g, '<')}": ${[sound, ...area === undefined ? [] : [`0.${String(area).padStart(2, '0')} m2`, ...panel === undefined ? [] : [`${panel} m2`]]].join(', ')}`).join('\n'), '', anyContextOf));
});
