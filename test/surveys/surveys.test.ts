/**
 * Invented surveys, one for each kind of craft and of survey, each with the problems that a competent surveyor would
 * expect written beside it. Editor engine and command line must both find exactly these.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Analysis } from '../../src/checks/analyse.js';
import { checkById } from '../../src/checks/analyse.js';
import { analyseSurvey, parseTexts, recordOf } from '../../src/checks/survey.js';
import { addressOf } from '../../src/host/files.js';
import { photosOf } from '../../src/report/assemble.js';
import { readOutsideFacts } from '../../src/report/outside.js';
import type { FileProblems } from '../../src/report/problem-list.js';
import { nodePhotoSource } from '../../src/host/node-photos.js';
import { nodeShelf } from '../../src/host/shelf.js';

const here = fileURLToPath(new URL('.', import.meta.url));
const cli = join(here, '../../dist/cli.cjs');
const names = readdirSync(here).filter(name => name.endsWith('.expected')).map(name => name.slice(0, -'.expected'.length)).sort();

interface Expected {
    readonly check: string;
    readonly on: string | undefined;
}

/** `problem check-id on ID -- reason`, `silent check-id on ID -- reason`; `#` begins a comment. */
function expectations(name: string, word: 'problem' | 'silent'): Expected[] {
    return readFileSync(join(here, `${name}.expected`), 'utf8').split(/\r?\n/).flatMap(line => {
        const match = /^(problem|silent)\s+([a-z0-9-]+)(?:\s+on\s+([^\s,]+))?/u.exec(line);
        if (!match && line.trim() !== '' && !line.startsWith('#')) {
            throw new Error(`${name}.expected: not understood: ${line}`);
        }
        return match?.[1] === word ? [{ check: match[2] ?? '', on: match[3] }] : [];
    });
}

const text = ({ check, on }: Expected) => `${check}${on === undefined ? '' : ` on ${on}`}`;
const sorted = (expected: readonly Expected[]) => expected.map(text).sort();

/** The smallest picture there is: the surveys name photographs, and none is kept here. */
const picture = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64');

let folder: string;
const analyses = new Map<string, Analysis>();
let listed: FileProblems[] = [];

beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'garboard-surveys-'));
    for (const name of names) {
        // All are there before the first is read, for one may follow up another.
        cpSync(join(here, `${name}.survey`), join(folder, `${name}.survey`));
    }
    const shelf = nodeShelf();
    for (const name of names) {
        const path = join(folder, `${name}.survey`);
        const uri = addressOf(path);
        const parsed = parseTexts(new Map([[uri, readFileSync(path, 'utf8')]]));
        const files = new Map([...parsed].map(([address, { file }]) => [address, file]));
        const record = recordOf(uri, files);
        for (const { file } of photosOf(record)) {
            mkdirSync(dirname(join(folder, file)), { recursive: true });
            writeFileSync(join(folder, file), picture);
        }
        const analysis = analyseSurvey(uri, files, await readOutsideFacts(record, nodePhotoSource(), shelf));
        analyses.set(name, { ...analysis, gaps: [...[...parsed.values()].flatMap(p => p.gaps), ...analysis.gaps] });
    }
    const { stdout, stderr } = spawnSync(process.execPath, [cli, 'check', '--format', 'json', '.'], { cwd: folder, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
    expect(stderr).toBe('');
    listed = (JSON.parse(stdout) as { files: FileProblems[] }).files; // The schema of the output is tested elsewhere.
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('there is a survey for every kind of craft and every kind of survey', () => {
    const records = [...analyses.values()].map(analysis => analysis.record);
    const first = records[0];
    const craft = records.map(record => record.vessel?.facts.get('type')?.written);
    const kinds = records.map(record => record.survey?.surveyKind);
    expect([...first?.vocabulary.wordLists.get('vessel-type')?.words.keys() ?? []].filter(type => !craft.includes(type))).toEqual([]);
    expect([...first?.vocabulary.wordLists.get('survey-kind')?.words.keys() ?? []].filter(kind => !kinds.includes(kind))).toEqual([]);
});

describe.each(names)('%s', name => {
    const raised = (): Expected[] => (analyses.get(name)?.problems ?? []).filter(problem => problem.severity !== 'hint')
        .map(problem => ({ check: problem.check.id, on: problem.components[0]?.id }));

    it('is written in clean Garboard', () => {
        // An answer whose problem is not raised shows among the problems below.
        expect(analyses.get(name)?.gaps.filter(gap => gap.severity === 'error' && gap.code !== 'stale-answer').map(gap => `${gap.code}: ${gap.message}`)).toEqual([]);
    });
    it('expects only checks that exist', () => {
        expect([...expectations(name, 'problem'), ...expectations(name, 'silent')].filter(({ check }) => !checkById(check))).toEqual([]);
    });
    it('raises what was expected, and nothing else', () => {
        expect(sorted(raised())).toEqual(sorted(expectations(name, 'problem')));
    });
    it('answers only what is raised', () => {
        expect(analyses.get(name)?.gaps.filter(gap => gap.code === 'stale-answer').map(gap => gap.message)).toEqual([]);
    });
    it('is silent where nothing is wrong', () => {
        const traps = expectations(name, 'silent');
        expect(traps.length).toBeGreaterThanOrEqual(4);
        const all = raised();
        expect(traps.filter(trap => all.some(({ check, on }) => check === trap.check && (trap.on === undefined || on === trap.on))).map(text)).toEqual([]);
    });
    it('is judged alike by the command line', () => {
        const file = listed.find(each => each.file === `${name}.survey`);
        const found = (file?.problems ?? []).filter(problem => checkById(problem.check) && problem.severity !== 'hint').map(problem => ({ check: problem.check, on: problem.components[0] }));
        expect(sorted(found)).toEqual(sorted(raised()));
    });
});
