/** "Did you mean …?": the nearest of known words by edit distance with swaps of neighbours. */

/** The candidate nearest to a misspelt word, or undefined where none is near enough to be meant. */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
    const wanted = word.toLowerCase();
    const limit = Math.max(1, Math.floor(wanted.length / 3));
    let best: string | undefined;
    let bestDistance = limit + 1;
    for (const candidate of candidates) {
        if (candidate === word || Math.abs(candidate.length - word.length) > limit) {
            continue;
        }
        const distance = editDistance(wanted, candidate.toLowerCase(), bestDistance);
        if (distance < bestDistance) {
            best = candidate;
            bestDistance = distance;
        }
    }
    return best;
}

/** Optimal string alignment distance; stops counting at `limit`. */
function editDistance(a: string, b: string, limit: number): number {
    let beforeLast: number[] = [];
    let last = Array.from({ length: b.length + 1 }, (_, j) => j);
    for (let i = 1; i <= a.length; i++) {
        const row = [i];
        let smallest = i;
        for (let j = 1; j <= b.length; j++) {
            const same = a.charCodeAt(i - 1) === b.charCodeAt(j - 1);
            let value = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
            if (i > 1 && j > 1 && a.charCodeAt(i - 1) === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === b.charCodeAt(j - 1)) {
                value = Math.min(value, (beforeLast[j - 2] ?? 0) + 1);
            }
            row.push(value);
            smallest = Math.min(smallest, value);
        }
        if (smallest >= limit) {
            return limit;
        }
        beforeLast = last;
        last = row;
    }
    return last[b.length] ?? limit;
}
