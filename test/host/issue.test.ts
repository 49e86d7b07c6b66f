/** Issuing: what is frozen, what is refused, and that an issue is there whole or not at all. */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { fileStem, isInside, issueFolderName, type Manifest } from '../../src/host/issue-folder.js';
import { verifyIssues } from '../../src/host/verify.js';
import type { RecordDocument } from '../../src/report/record-document.js';
import { textOf } from '../report/sample.js';
import { made, otherPicture, refused, workspace, type Workspace } from './issue-sample.js';

const opened: Workspace[] = [];
const fresh = (): Workspace => {
    const space = workspace();
    opened.push(space);
    return space;
};
afterAll(() => opened.forEach(({ root }) => rmSync(root, { recursive: true, force: true })));

const manifestOf = (folder: string): Manifest => JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8'));
const recordOf = (folder: string): RecordDocument => JSON.parse(readFileSync(join(folder, 'record.json'), 'utf8'));
const digest = (path: string): string => createHash('sha256').update(readFileSync(path)).digest('hex');
const entries = (folder: string): readonly string[] => existsSync(folder) ? readdirSync(folder).sort() : [];

describe('an issue', () => {
    it('freezes sources byte by byte, the record and the report, with the digest of each', async () => {
        const space = fresh();
        const result = made(await space.issue());
        expect(result).toMatchObject({ number: 'AR-77', issue: 1, date: '2026-02-01', signedBy: 'Ada Rowe', folder: join(space.issued, 'AR-77-issue-1') });
        expect(entries(space.issued)).toEqual(['AR-77-issue-1']);
        const manifest = manifestOf(result.folder);
        expect(manifest).toMatchObject({ survey: { number: 'AR-77', kind: 'part-survey', main: 'heron.survey' }, vessel: { name: 'Heron' }, issue: 1, date: '2026-02-01', signedBy: 'Ada Rowe', firm: 'Alder and Rowe, Surveyors' });
        expect(manifest.files.map(({ path, role, frozen }) => [path, role, frozen])).toEqual([
            ['report.html', 'output', undefined], ['record.json', 'record', undefined], ['heron.survey', 'source', 'sources/heron.survey.txt'],
            ['../house/house.survey', 'source', 'sources/above/house/house.survey.txt'], ['parts.survey', 'source', 'sources/parts.survey.txt'], ['photos/heron.png', 'photo', undefined],
        ]);
        for (const { path, role, frozen, sha256, bytes } of manifest.files) {
            const now = role === 'source' || role === 'photo' ? join(space.folder, path) : join(result.folder, path);
            expect([sha256, bytes], path).toEqual([digest(now), statSync(now).size]);
            if (frozen) {
                expect(readFileSync(join(result.folder, frozen)).equals(readFileSync(now)), frozen).toBe(true);
            }
        }
        // The form that sha256sum writes: two blanks between digest and name.
        expect(readFileSync(join(result.folder, 'manifest.sha256'), 'utf8')).toBe(`${digest(join(result.folder, 'manifest.json'))}  manifest.json\n`);
        expect(result.manifestSha256).toBe(digest(join(result.folder, 'manifest.json')));
        expect(recordOf(result.folder)).toMatchObject({ issue: { number: 1, date: '2026-02-01', signedBy: 'Ada Rowe' }, vessel: { photos: [{ file: 'heron.png', sha256: digest(join(space.folder, 'photos/heron.png')) }] } });
        const text = textOf(readFileSync(join(result.folder, 'report.html'), 'utf8'));
        expect(text).toContain('1 February 2026');
        expect(text).toContain('By 3 March 2026, 30 days after issue');
        expect(text).not.toContain('DRAFT');
    });

    it('is amended by another, numbered on, that says what changed and vouches for the one before', async () => {
        const space = fresh();
        const first = made(await space.issue());
        const before = entries(first.folder).map(name => [name, statSync(join(first.folder, name)).mtimeMs]);
        space.change('parts.survey', 'within-days 30', 'within-days 14');
        const second = made(await space.issue({ today: '2026-02-10' }));
        expect(second).toMatchObject({ issue: 2, date: '2026-02-10', folder: join(space.issued, 'AR-77-issue-2'), changes: 1 });
        expect(manifestOf(second.folder).previous).toEqual({ issue: 1, folder: 'AR-77-issue-1', manifestSha256: first.manifestSha256 });
        const text = textOf(readFileSync(join(second.folder, 'report.html'), 'utf8'));
        expect(text).toContain('Changes since issue 1 of 1 February 2026');
        expect(text).toMatch(/Sheave worn Due within 30 days within 14 days/);
        expect(entries(first.folder).map(name => [name, statSync(join(first.folder, name)).mtimeMs])).toEqual(before);
    });

    it('is refused while nothing differs for a reader, and made when a picture alone was replaced', async () => {
        const space = fresh();
        made(await space.issue());
        expect(refused(await space.issue({ today: '2026-03-01' }))).toEqual([expect.stringMatching(/^Nothing that is recorded differs from issue 1/)]);
        space.change('parts.survey', 'system rig', '// looked at again\nsystem rig');
        space.change('heron.survey', '31 ft', '31.0 ft');
        expect(refused(await space.issue({ today: '2026-03-01' }))).toEqual([expect.stringMatching(/^Nothing that is recorded differs from issue 1/)]);
        writeFileSync(join(space.folder, 'photos/heron.png'), otherPicture);
        const second = made(await space.issue({ today: '2026-03-01' }));
        expect(textOf(readFileSync(join(second.folder, 'report.html'), 'utf8'))).toContain('Photograph heron.png: the picture file');
    });
});

describe('refused, with what is to be mended and where', () => {
    it.each<[string, (space: Workspace) => void, RegExp, Parameters<Workspace['issue']>[0]?]>([
        ['an open problem', space => space.change('parts.survey', 'recommend: "Renew the sheave at the masthead."', ''), /^parts\.survey:3: F1 does not say/],
        ['text that cannot be read', space => space.change('parts.survey', 'condition: sound', 'condition: soun'), /^parts\.survey:2: soun is not a word for condition/],
        ['a photograph that is not there', space => rmSync(join(space.folder, 'photos/heron.png')), /^heron\.survey:15: heron\.png is not there/],
        ['a photograph that is none', space => writeFileSync(join(space.folder, 'photos/heron.png'), 'no picture'), /heron\.png/],
        ['no surveyor', space => space.change('heron.survey', 'surveyor: A-Rowe', ''), /does not say who signs; write surveyor:/],
        ['no number', space => space.change('heron.survey', 'survey "AR-77"', 'survey ""'), /The report has no number/],
        ['another number of issue', space => space.change('heron.survey', 'client:', 'issue: 3\n    client:'), /^heron\.survey:5: The survey says issue: 3, and this is issue 1, for none is made yet\. Write issue: 1/],
        ['a month for a day', space => space.change('heron.survey', 'client:', 'issued: 2026-02\n    client:'), /issued: 2026-02 does not name the day/],
        ['two dates', space => space.change('heron.survey', 'client:', 'issued: 2026-02-03\n    client:'), /says issued: 2026-02-03, and --date says 2026-02-04/, { date: '2026-02-04' }],
        ['a date ahead', () => undefined, /^2062-02-01 is after today, 2026-02-01 by the clock of this machine.*Give the day of this issue after --date/, { date: '2062-02-01' }],
        ['a date ahead in the survey', space => space.change('heron.survey', 'client:', 'issued: 2026-02-03\n    client:'), /^heron\.survey:5: 2026-02-03 is after today.*after issued:, or take the line out/],
        ['a date before the attendance', () => undefined, /^heron\.survey:4: 2026-01-19 is before 2026-01-20, the last attendance/, { date: '2026-01-19' }],
        ['a date that is none', () => undefined, /--date yesterday is no day/, { date: 'yesterday' }],
        ['somebody else who signs', () => undefined, /Bo Lind is neither the surveyor of the survey, Ada Rowe/, { signedBy: 'Bo Lind' }],
    ])('%s', async (_, spoil, expected, options) => {
        const space = fresh();
        spoil(space);
        const reasons = refused(await space.issue(options));
        expect(reasons.some(reason => expected.test(reason)), reasons.join('\n')).toBe(true);
        expect(entries(space.issued)).toEqual([]);
    });

    it('an amendment dated before its issue, or still dated as it', async () => {
        const space = fresh();
        space.change('heron.survey', 'client:', 'issued: 2026-02-01\n    client:');
        made(await space.issue());
        space.change('parts.survey', 'one side', 'port');
        expect(refused(await space.issue({ today: '2026-02-10' }))).toEqual([expect.stringMatching(/issued: 2026-02-01 is still the date of issue 1/)]);
        space.change('heron.survey', 'issued: 2026-02-01', 'issued: 2026-01-31');
        expect(refused(await space.issue({ today: '2026-02-10' }))).toEqual([expect.stringMatching(/2026-01-31 is before 2026-02-01, the date of issue 1/)]);
    });

    it('a number that an issue before the last gave to another matter', async () => {
        const space = fresh();
        made(await space.issue());
        space.change('parts.survey', 'finding F1 "Sheave worn" on MA1', 'finding F2 "Masthead box cracked" on MA1');
        made(await space.issue({ today: '2026-02-02' }));
        space.change('parts.survey', 'finding F2', 'boom BO1 "Boom" { condition: sound  basis: seen }\n    finding F1 "Gooseneck bent" on BO1 {\n urgency: in-upkeep\n seen: "The pin of the gooseneck is bent."\n because: "It binds."\n recommend: "Renew the pin of the gooseneck."\n}\n    finding F2');
        expect(refused(await space.issue({ today: '2026-02-03' }))).toEqual([expect.stringMatching(/^parts\.survey:4: F1 is “Gooseneck bent” here and was “Sheave worn” in issue 1\. Numbers never change/)]);
    });

    it('an amendment of an issue that was tampered with', async () => {
        const space = fresh();
        const first = made(await space.issue());
        writeFileSync(join(first.folder, 'record.json'), readFileSync(join(first.folder, 'record.json'), 'utf8').replace('to one side', 'to no side'));
        space.change('parts.survey', 'one side', 'port');
        expect(refused(await space.issue({ today: '2026-02-10' }))).toEqual([expect.stringMatching(/^issued\/AR-77-issue-1 is no longer as it was issued: its record differs from its manifest/)]);
    });

    it('a part of a survey in the place of its main file', async () => {
        const space = fresh();
        const { issueReport } = await import('../../src/host/issue.js');
        const { nodePhotoSource } = await import('../../src/host/node-photos.js');
        expect(refused(await issueReport(join(space.folder, 'parts.survey'), { today: '2026-02-01', photos: nodePhotoSource({ cacheFolder: undefined }) }))).toEqual([expect.stringMatching(/parts\.survey has no survey block/)]);
    });
});

describe('names of folders', () => {
    it.each([['TC-2026-041', 'TC-2026-041'], ['2026.7_B', '2026.7_B']])('%s stays as it is', (number, stem) => expect(fileStem(number)).toBe(stem));

    it('are fit for every system, and differ where the numbers differ, even by case alone', () => {
        const numbers = fc.oneof(fc.string({ unit: 'binary', minLength: 1, maxLength: 90 }), fc.constantFrom('AR-77', 'ar-77', 'Ar-77', 'AR/77', 'AR\\77', 'AR:77', 'CON', 'COM1.7', '..', '.', 'NUL', ' AR-77', 'AR-77 ', 'ÅR-77', 'A'.repeat(61), '7/2026', '７７'));
        fc.assert(fc.property(numbers, numbers, (one, other) => {
            for (const number of [one, other]) {
                const name = issueFolderName(number, 12);
                expect(name).toMatch(/^[A-Za-z0-9][A-Za-z0-9._-]*-issue-12$/);
                expect(name.length).toBeLessThanOrEqual(80);
                // Device names: Microsoft, "Naming Files, Paths, and Namespaces".
                expect(name).not.toMatch(/^(?:CON|PRN|AUX|NUL|COM\d|LPT\d)\./i);
                expect(isInside(name)).toBe(true);
            }
            expect(fileStem(one).toLowerCase() === fileStem(other).toLowerCase()).toBe(one === other);
        }), { numRuns: 500 });
    });
});

describe('whole or not at all', () => {
    it('of two runs at once one issues and the other is told', async () => {
        const space = fresh();
        const results = await Promise.all([space.issue(), space.issue(), space.issue()]);
        expect(results.map(({ state }) => state).sort()).toEqual(['issued', 'refused', 'refused']);
        expect(results.flatMap(refused).filter(reason => reason !== 'issued')).toEqual(Array.from({ length: 2 }, () => expect.stringMatching(/AR-77-issue-1 was made meanwhile by another run/)));
        expect(entries(space.issued)).toEqual(['AR-77-issue-1']);
        expect((await verifyIssues(space.issued))[0]?.verdict).toBe('unchanged');
    });

    it('a form that cannot be made leaves nothing behind', async () => {
        const space = fresh();
        await expect(space.issue({ forms: ['pdf'], browser: { path: join(space.root, 'no-browser'), by: '--browser' } })).rejects.toThrow();
        await expect(space.issue({ sign: { key: join(space.root, 'no-key') } })).rejects.toThrow(/ssh-keygen did not sign/);
        expect(entries(space.issued)).toEqual([]);
        const stop = new AbortController();
        stop.abort();
        await expect(space.issue({ signal: stop.signal })).rejects.toThrow(/abort/i);
        expect(entries(space.issued)).toEqual([]);
    });

    it('what an interrupted run left is cleared by the next one, once it can be nobody’s any more', async () => {
        const space = fresh();
        const [old, young, foreign] = ['.AR-77-issue-1.tmp-0123456789ab', '.AR-77-issue-1.tmp-ba9876543210', '.AR-77-issue-1.tmp-mine'];
        for (const name of [old, young, foreign]) {
            mkdirSync(join(space.issued, name), { recursive: true });
            writeFileSync(join(space.issued, name, 'report.html'), 'half');
        }
        const before = new Date(Date.now() - 2 * 60 * 60 * 1000);
        utimesSync(join(space.issued, old), before, before);
        utimesSync(join(space.issued, foreign), before, before);
        made(await space.issue());
        expect(entries(space.issued)).toEqual([foreign, young, 'AR-77-issue-1'].sort());
    });

    it('killed at any point it leaves the old state or the new', async () => {
        const cli = fileURLToPath(new URL('../../dist/cli.cjs', import.meta.url));
        const space = fresh();
        let killed = 0;
        for (let turn = 0; turn < 8; turn++) {
            const have = entries(space.issued).filter(name => !name.startsWith('.'));
            space.change('parts.survey', 'recommend: "', `recommend: "Turn ${turn}. `);
            const day = `2026-02-${String(turn + 2).padStart(2, '0')}`;
            const child = spawn(process.execPath, [cli, 'issue', '--date', day, space.main], { stdio: 'ignore' });
            const ended = new Promise<NodeJS.Signals | null>(resolve => child.on('close', (_, signal) => resolve(signal)));
            let isRunning = true;
            void ended.then(() => { isRunning = false; });
            const building = () => entries(space.issued).find(name => name.startsWith('.') && !seen.has(name));
            const seen = new Set(entries(space.issued));
            // As soon as it writes, and then up to some milliseconds later: into the writing, the signing or the renaming.
            while (isRunning && building() === undefined) {
                await pause(1);
            }
            await pause(turn % 4 === 0 ? 0 : turn * 3);
            child.kill('SIGKILL');
            killed += await ended === 'SIGKILL' ? 1 : 0;
            const now = entries(space.issued).filter(name => !name.startsWith('.'));
            expect([have, [...have, issueFolderName('AR-77', have.length + 1)]], `turn ${turn}`).toContainEqual(now);
            for (const { verdict, files } of now.length > 0 ? await verifyIssues(space.issued) : []) {
                expect(verdict, JSON.stringify(files.filter(({ state }) => state !== 'unchanged'))).toBe('unchanged');
            }
        }
        expect(killed).toBeGreaterThan(0);
        const last = made(await space.issue({ today: '2026-03-01' }).then(result => {
            // The last run that was killed may have come to its end all the same.
            if (result.state === 'refused') {
                space.change('parts.survey', 'recommend: "', 'recommend: "At last. ');
            }
            return result.state === 'refused' ? space.issue({ today: '2026-03-01' }) : result;
        }));
        expect(last.issue).toBe(entries(space.issued).filter(name => !name.startsWith('.')).length);
    }, 180_000);
});

describe('an issue again', () => {
    it.each([['blanks at its ends', ' AR-78 '], ['signs that turn the writing round', 'AR\u202e87\u202c'], ['a device of Windows', 'CON'], ['300 signs', 'A'.repeat(300)], ['signs that no file name takes', 'A/B: 7?'], ['a picture', '🚤 12']])('is numbered on where the number has %s', async (_, number) => {
        const space = fresh();
        space.change('heron.survey', 'survey "AR-77"', `survey "${number}"`);
        expect(made(await space.issue()).issue).toBe(1);
        space.change('parts.survey', 'within-days 30', 'within-days 14');
        expect(made(await space.issue({ today: '2026-02-05' }))).toMatchObject({ issue: 2, changes: 1 });
        expect((await verifyIssues(space.issued)).map(({ verdict }) => verdict)).toEqual(['unchanged', 'unchanged']);
    });

    it('is refused where a finding was given another number, by the number it had', async () => {
        const space = fresh();
        made(await space.issue());
        space.change('parts.survey', 'finding F1', 'finding F4');
        expect(refused(await space.issue({ today: '2026-02-05' }))).toEqual([expect.stringMatching(/^parts\.survey:3: F4, “Sheave worn”, was F1 in report AR-77, issue 1\./)]);
    });
});
