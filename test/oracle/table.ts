/**
 * Check values from outside the project. Every row names its source and how well the source is known; a test asserts
 * it within the tolerance given, and the coverage by topic is printed.
 */
import { afterAll, describe, expect, it } from 'vitest';

export type Provenance = 'published' | 'secondary' | 'computed' | 'memory' | 'practice' | 'chosen';

export interface CheckValue {
    readonly id: string;
    readonly says: string;
    readonly actual: () => number | string | boolean | undefined;
    readonly expected: number | string | boolean | undefined;
    /** Absolute tolerance of a number. */
    readonly within?: number;
    readonly source: string;
    readonly provenance: Provenance;
}

export function oracle(topic: string, rows: readonly CheckValue[]): void {
    describe(`against the world: ${topic}`, () => {
        for (const row of rows) {
            it(`${row.id} ${row.says} [${row.provenance}: ${row.source}]`, () => {
                const actual = row.actual();
                if (typeof row.expected === 'number') {
                    expect(typeof actual).toBe('number');
                    expect(Math.abs(Number(actual) - row.expected)).toBeLessThanOrEqual(row.within ?? 1e-9);
                } else {
                    expect(actual).toEqual(row.expected);
                }
            });
        }
        it('names each row once', () => {
            expect(new Set(rows.map(row => row.id)).size).toBe(rows.length);
        });
        afterAll(() => {
            const count = (provenance: Provenance) => rows.filter(row => row.provenance === provenance).length;
            const parts = (['published', 'secondary', 'computed', 'memory', 'practice', 'chosen'] as const).filter(p => count(p) > 0).map(p => `${count(p)} ${p}`);
            console.log(`${topic}: ${rows.length} check values (${parts.join(', ')})`);
        });
    });
}
