import { describe, expect, test as single } from 'vitest';
import { curvePoints, trialCurves } from '../../../src/report/drawings/trial-curves.js';
import type { Html } from '../../../src/report/html.js';
import { fc, test } from '../property.js';
import { all, anyContextOf, contextOf, descriptionOf, expectSound, number, pointsOf, surveys, svgsOf, textsOf, type Drawn } from './drawn.js';

const engines = 'main-engine EP "Port engine" { side: port  rated-rotation: 2800 rpm }\nmain-engine ES "Starboard engine" { side: starboard  rated-rotation: 2800 rpm }\n';
const draw = (rows: string, { head = 'columns: engine, rotation, speed, coolant', parts = engines, make = contextOf } = {}): Html => {
    const context = make(`${parts}reading T1 "Trial" { measures: trial  ${head}\n${rows}\n}\n`);
    const [reading] = context.record.readings;
    return reading ? trialCurves(context, reading, 'r') : ('' as unknown as Html);
};

/** Marks of the first group, filled circles, by their place. */
const circlesOf = (svg: Drawn | undefined) => (svg ? all(all([svg], 'g').slice(0, 1), 'circle') : []).map(circle => ({ x: number(circle, 'cx'), y: number(circle, 'cy') }));
const squaresOf = (svg: Drawn | undefined) => svg ? all(all([svg], 'g').slice(1, 2), 'rect') : [];

describe('two engines', () => {
    const markup = draw(`row "Full": EP, 2800 rpm, 24 kn, 190 F
row "Slow": EP, 1000 rpm, 7 kn, 160 F
row "Half": EP, 1800 rpm, 11 kn, 170 F
row "Slow": ES, 1000 rpm, 7 kn, 158 F
row "Full": ES, 2700 rpm, 24 kn, 181 F`);
    const [speed, coolant] = svgsOf(markup);
    single('marks stand at the engine speeds and speeds recorded, on linear scales', () => {
        expectSound(markup);
        const marks = circlesOf(speed);
        expect(marks).toHaveLength(3);
        const [slow, half, full] = marks;
        expect(((half?.x ?? 0) - (slow?.x ?? 0)) / ((full?.x ?? 1) - (slow?.x ?? 0))).toBeCloseTo((1800 - 1000) / (2800 - 1000), 2);
        expect(((half?.y ?? 0) - (slow?.y ?? 0)) / ((full?.y ?? 1) - (slow?.y ?? 0))).toBeCloseTo((11 - 7) / (24 - 7), 2);
    });
    single('the curve passes through them, never turning back', () => {
        const curve = speed && all(all([speed], 'g').slice(0, 1), 'path')[0];
        const points = pointsOf(curve?.attributes.get('d') ?? '');
        const xs = points.map(({ x }) => x);
        expect(xs).toEqual([...xs].sort((a, b) => a - b));
        for (const mark of circlesOf(speed)) {
            expect(points.some(point => Math.hypot(point.x - mark.x, point.y - mark.y) < 0.05)).toBe(true);
        }
    });
    single('port and starboard differ by mark and by line, not by color', () => {
        expect(squaresOf(speed)).toHaveLength(2);
        const lines = speed ? all([speed], 'g').slice(0, 2).map(group => all([group], 'path')[0]?.attributes) : [];
        expect(lines.map(line => line?.get('stroke-dasharray'))).toEqual([undefined, '6 3']);
        expect(new Set(lines.map(line => line?.get('stroke'))).size).toBe(1);
        expect(speed && textsOf(speed)).toEqual(expect.arrayContaining(['Port', 'Starboard', 'rated engine speed, 2,800 rpm']));
    });
    single('the text alternatives name the extremes', () => {
        expect(speed && descriptionOf(speed)).toBe('Port: 3 runs; Starboard: 2 runs. Highest 24 kn at 2,800 rpm (Full), lowest 7 kn at 1,000 rpm (Slow). Rated engine speed 2,800 rpm.');
        expect(coolant && descriptionOf(coolant)).toContain('Highest 190 °F at 2,800 rpm (Full), lowest 158 °F at 1,000 rpm (Slow).');
    });
    single('temperatures stand in both systems, the ticks of both on one scale', () => {
        expect(coolant && textsOf(coolant)).toContain('Coolant, °F; right, °C');
        // Ticks at the left are black and end at the axis, those at the right quiet.
        const ticks = (coolant ? all([coolant], 'text') : []).filter(text => /^-?\d+$/.test(text.text));
        const left = ticks.filter(text => text.attributes.get('text-anchor') === 'end').map(text => ({ value: Number(text.text), y: number(text, 'y') }));
        const right = ticks.filter(text => text.attributes.get('text-anchor') === undefined).map(text => ({ value: Number(text.text), y: number(text, 'y') }));
        const [a, b] = [left[0], left.at(-1)];
        const fahrenheit = (y: number) => (a?.value ?? 0) + (y - (a?.y ?? 0)) * ((b?.value ?? 0) - (a?.value ?? 0)) / ((b?.y ?? 1) - (a?.y ?? 0));
        expect(right.length).toBeGreaterThan(1);
        for (const { value, y } of right) {
            expect(fahrenheit(y)).toBeCloseTo(value * 1.8 + 32, 0);
        }
    });
});

single('a run and its opposite are averaged; the dial is said to be one', () => {
    const markup = draw('row "A": 1000 rpm, 6 kn, 8 kn\nrow "B": 2000 rpm, 10 kn, 12 kn', { head: 'columns: rotation-shown, speed, speed-against', parts: '' });
    const [svg] = svgsOf(markup);
    expect(svg && descriptionOf(svg)).toContain('Highest 11 kn at 2,000 rpm (B), lowest 7 kn');
    expect(String(markup)).toContain('Some engine speeds are those shown at the helm');
});

single('slip is drawn where ratio and pitch are recorded', () => {
    const markup = draw('row "A": 1000 rpm, 3.4 kn\nrow "B": 2400 rpm, 6.6 kn', { head: 'columns: rotation, speed', parts: 'main-engine E1 { }\ngearbox G1 { ratio: 2 }\npropeller P1 { pitch: 12 in }\n' });
    const slip = svgsOf(markup).find(svg => textsOf(svg).includes('Slip, %'));
    // By hand, with 1 kn = 30.8667 m/min: 1 - 3.4 × 30.8667 × 2 / (1000 × 0.3048) = 31.1 %, 1 - 6.6 × 30.8667 × 2 / (2400 × 0.3048) = 44.3 %.
    expect(slip && descriptionOf(slip)).toContain('Highest 44.3 % at 2,400 rpm (B), lowest 31.1 % at 1,000 rpm (A).');
});

single('one run, or none, is no curve', () => {
    expect(String(draw('row "A": EP, 1000 rpm, 7 kn'))).toBe('');
    expect(String(draw(''))).toBe('');
});

surveys('any runs give a sound drawing', fc.array(fc.tuple(fc.constantFrom('EP', 'ES', 'none', 'E9'), fc.integer({ min: 200, max: 8000 }), fc.oneof(fc.constant('none'), fc.integer({ min: 0, max: 80 }).map(v => `${v} kn`), fc.integer({ min: 0, max: 80 }).map(v => `${v} mph`)), fc.oneof(fc.constant('none'), fc.integer({ min: -20, max: 130 }).map(v => `${v} C`))), { maxLength: 12 }), rows => {
    expectSound(draw(rows.map((row, i) => `row "Lauf ${i} é<": ${row[0]}, ${row[1]} rpm, ${row[2]}, ${row[3]}`).join('\n'), { make: anyContextOf }));
});

const row = contextOf('reading T { measures: trial  row "A": 1000 rpm, 7 kn }\n').record.readings[0]?.rows[0];
test('the curve has one point for each engine speed, rising, between the least and the greatest run there', fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.double({ min: -10, max: 50, noNaN: true })), { minLength: 1, maxLength: 30 }), runs => {
    if (!row) {
        throw new Error('no row');
    }
    const points = curvePoints(runs.map(([step, value]) => ({ rpm: step * 500, value, row })));
    expect(points.map(({ rpm }) => rpm)).toEqual([...new Set(runs.map(([step]) => step * 500))].sort((a, b) => a - b));
    for (const { rpm, value } of points) {
        const there = runs.filter(([step]) => step * 500 === rpm).map(([, each]) => each);
        expect(value).toBeGreaterThanOrEqual(Math.min(...there) - 1e-9);
        expect(value).toBeLessThanOrEqual(Math.max(...there) + 1e-9);
    }
});
