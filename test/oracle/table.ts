/**
 * Check values from outside the project. Every row names its source and how well the source is known; a test asserts
 * it within the tolerance given, and a table of coverage by topic is printed after the run.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
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

/** How many check values a topic has, by provenance. */
export interface TopicCount {
    readonly topic: string;
    readonly counts: Readonly<Partial<Record<Provenance, number>>>;
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
            const folder = process.env['GARBOARD_ORACLE'];
            const counts: Partial<Record<Provenance, number>> = {};
            rows.forEach(({ provenance }) => { counts[provenance] = (counts[provenance] ?? 0) + 1; });
            const count: TopicCount = { topic, counts };
            if (folder !== undefined) {
                writeFileSync(join(folder, `${topic.replace(/[^a-z0-9]+/giu, '-')}.json`), JSON.stringify(count));
            }
        });
    });
}
