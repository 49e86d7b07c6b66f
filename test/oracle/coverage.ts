/** Prints, after a run, how many check values stand behind each topic and how well their sources are known. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TopicCount } from './table.js';

const provenances = ['published', 'secondary', 'computed', 'memory', 'practice', 'chosen'] as const;

export default function setup(): () => void {
    const folder = mkdtempSync(join(tmpdir(), 'garboard-oracle-'));
    process.env['GARBOARD_ORACLE'] = folder;
    return () => {
        // Written by `oracle` in this run.
        const topics = readdirSync(folder).map(name => JSON.parse(readFileSync(join(folder, name), 'utf8')) as TopicCount).sort((a, b) => a.topic.localeCompare(b.topic, 'en'));
        rmSync(folder, { recursive: true, force: true });
        if (topics.length === 0) {
            return;
        }
        const width = Math.max(...topics.map(({ topic }) => topic.length), 'topic'.length);
        const line = (name: string, cells: readonly (string | number)[]) => `${name.padEnd(width)}${cells.map(cell => String(cell || '').padStart(11)).join('')}`;
        const sum = (count: (topic: TopicCount) => number) => topics.reduce((total, topic) => total + count(topic), 0);
        console.log([
            '', 'Check values against the world, by topic and by how their source is known:',
            line('topic', ['values', ...provenances]),
            ...topics.map(({ topic, counts }) => line(topic, [provenances.reduce((total, p) => total + (counts[p] ?? 0), 0), ...provenances.map(p => counts[p] ?? 0)])),
            line('all', [sum(({ counts }) => provenances.reduce((total, p) => total + (counts[p] ?? 0), 0)), ...provenances.map(p => sum(({ counts }) => counts[p] ?? 0))]), '',
        ].join('\n'));
    };
}
