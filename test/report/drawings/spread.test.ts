import { expect, test as single } from 'vitest';
import { spread } from '../../../src/report/drawings/spread.js';
import { fc, test } from '../property.js';

const places = fc.array(fc.double({ min: -50, max: 900, noNaN: true }), { maxLength: 60 });
const ascending = (from: readonly number[]) => [...from].sort((a, b) => a - b);

test('labels never overlap more than the room asks for, and stay between the ends', fc.tuple(places, fc.double({ min: 1, max: 60, noNaN: true })), ([wanted, gap]) => {
    const [low, high] = [10, 700];
    const found = spread(wanted, gap, low, high);
    expect(found).toHaveLength(wanted.length);
    const least = wanted.length < 2 ? 0 : Math.min(gap, (high - low) / (wanted.length - 1));
    const sorted = ascending(found);
    for (const [index, place] of sorted.entries()) {
        expect(place).toBeGreaterThanOrEqual(low - 1e-6);
        expect(place).toBeLessThanOrEqual(high + 1e-6);
        expect(index === 0 ? Infinity : place - (sorted[index - 1] ?? 0)).toBeGreaterThanOrEqual(least - 1e-6);
    }
});

test('labels keep the order of what they name', places, wanted => {
    const found = spread(wanted, 20, 0, 800);
    const order = (values: readonly number[]) => values.map((_, index) => index).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0) || a - b);
    expect(order(found)).toEqual(order(wanted));
});

single('what has room stays where it is; two at one place part evenly about it', () => {
    expect(spread([300, 100, 200], 20, 0, 400)).toEqual([300, 100, 200]);
    expect(spread([100, 100], 20, 0, 400)).toEqual([90, 110]);
    expect(spread([100, 100, 130], 20, 0, 400)).toEqual([90, 110, 130]);
    expect(spread([0, 0, 0], 20, 0, 400)).toEqual([0, 20, 40]);
    expect(spread([], 20, 0, 400)).toEqual([]);
    expect(spread([Number.NaN], 20, 5, 400)).toEqual([5]);
});
