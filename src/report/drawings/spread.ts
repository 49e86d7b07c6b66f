/** Keeps labels apart along a line. */

/**
 * Places as near as may be to the wanted ones, in their order, `gap` apart and between `low` and `high`. Where there is no
 * room for all, they are set evenly over the whole length. All in units of the drawing.
 */
export function spread(wanted: readonly number[], gap: number, low: number, high: number): number[] {
    const order = wanted.map((place, index) => ({ place: Number.isFinite(place) ? place : low, index })).sort((a, b) => a.place - b.place || a.index - b.index);
    const step = order.length < 2 ? gap : Math.min(gap, (high - low) / (order.length - 1));
    // Neighbors that would overlap are moved together, as one block about the mean of their wanted places.
    const blocks: { sum: number; count: number; start: number }[] = [];
    const startOf = ({ sum, count }: { sum: number; count: number }) => Math.min(Math.max(sum / count, low), high - (count - 1) * step);
    for (const { place } of order) {
        let block = { sum: place, count: 1, start: 0 };
        block.start = startOf(block);
        for (let before = blocks.at(-1); before && before.start + before.count * step > block.start + 1e-9; before = blocks.at(-1)) {
            blocks.pop();
            // Wanted starts of the joined block: those of the later part, less the length of the earlier one.
            block = { sum: before.sum + block.sum - block.count * before.count * step, count: before.count + block.count, start: 0 };
            block.start = startOf(block);
        }
        blocks.push(block);
    }
    const places = blocks.flatMap(block => Array.from({ length: block.count }, (_, i) => block.start + i * step));
    const found = new Array<number>(wanted.length).fill(low);
    order.forEach(({ index }, rank) => { found[index] = places[rank] ?? low; });
    return found;
}
