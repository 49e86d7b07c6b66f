/** Verifying: any changed byte is found, nothing outside is read, and what the surveyor worked on since is told apart. */
import { appendFileSync, cpSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isInside, parseManifest, sha256 } from '../../src/host/issue-folder.js';
import { verifiedText } from '../../src/cli/verify.js';
import { verifyIssues, type VerifiedIssue } from '../../src/host/verify.js';
import { made, workspace, type Workspace } from './issue-sample.js';

let space: Workspace;
/** A copy of the survey with two issues, which a test may spoil. */
let copies = 0;
const copy = (): { readonly folder: string; readonly issue: (number: number) => string } => {
    const root = join(space.root, `copy-${++copies}`);
    cpSync(space.folder, join(root, 'work'), { recursive: true });
    cpSync(join(space.root, 'house'), join(root, 'house'), { recursive: true });
    return { folder: join(root, 'work'), issue: number => join(root, 'work/issued', `AR-77-issue-${number}`) };
};
const one = async (folder: string): Promise<VerifiedIssue> => {
    const [issue] = await verifyIssues(folder);
    if (!issue) {
        throw new Error('No issue');
    }
    return issue;
};
const states = ({ files }: VerifiedIssue) => files.filter(({ state }) => state !== 'unchanged').map(({ path, state }) => `${path} ${state}`);

beforeAll(async () => {
    space = workspace();
    made(await space.issue());
    space.change('parts.survey', 'one side', 'port');
    made(await space.issue({ today: '2026-02-10' }));
}, 60_000);
afterAll(() => rmSync(space.root, { recursive: true, force: true }));

const filesUnder = (folder: string): string[] => readdirSync(folder, { withFileTypes: true, recursive: true }).filter(entry => entry.isFile()).map(entry => relative(folder, join(entry.parentPath, entry.name))).sort();

describe('an issue as it was made', () => {
    it('has nothing changed, wherever it is looked for', async () => {
        for (const folder of [space.root, space.folder, space.issued, join(space.issued, 'AR-77-issue-1')]) {
            const issues = await verifyIssues(folder);
            expect(issues.map(({ verdict, number }) => [verdict, number])).toEqual(Array.from({ length: folder.endsWith('-1') ? 1 : 2 }, () => ['unchanged', 'AR-77']));
        }
        const [first, second] = await verifyIssues(space.issued);
        expect(first).toMatchObject({ issue: 1, date: '2026-02-01', vessel: 'Heron', signedBy: 'Ada Rowe', signature: null, previous: null, extra: [], faults: [] });
        expect(second?.previous).toEqual({ issue: 1, folder: 'AR-77-issue-1', state: 'unchanged' });
        expect(first?.files.map(({ path }) => path).sort()).toEqual(filesUnder(first?.folder ?? ''));
    });

    it('says what the surveyor has worked on since, and holds it for no fault', async () => {
        const { folder, issue } = copy();
        appendFileSync(join(folder, 'heron.survey'), '\n');
        rmSync(join(folder, 'photos/heron.png'));
        const found = await one(issue(2));
        expect(found.verdict).toBe('unchanged');
        expect(found.working).toEqual([
            { path: 'heron.survey', role: 'source', state: 'changed-since' }, { path: '../house/house.survey', role: 'source', state: 'as-issued' },
            { path: 'parts.survey', role: 'source', state: 'as-issued' }, { path: 'photos/heron.png', role: 'photo', state: 'missing' },
        ]);
    });

    it('is verified on its own, sent elsewhere', async () => {
        const { issue } = copy();
        const sent = join(space.root, `sent-${copies}`);
        cpSync(issue(1), sent, { recursive: true });
        expect(await one(sent)).toMatchObject({ verdict: 'unchanged', working: [] });
    });
});

describe('what is found', () => {
    it('any byte that differs, in any file of the issue', async () => {
        const { issue } = copy();
        const folder = issue(2);
        const names = filesUnder(folder);
        expect(names.length).toBe(7);
        await fc.assert(fc.asyncProperty(fc.constantFrom(...names), fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), fc.integer({ min: 1, max: 255 }), async (name, place, flip) => {
            const path = join(folder, name);
            const bytes = readFileSync(path);
            const at = Math.floor(place * bytes.length);
            const spoiled = Buffer.from(bytes);
            spoiled[at] = (spoiled[at] ?? 0) ^ flip;
            writeFileSync(path, spoiled);
            const found = await one(folder);
            writeFileSync(path, bytes);
            expect(found.verdict, `${name} at ${at}`).not.toBe('unchanged');
            expect(found.files.some(file => file.path === name && file.state === 'changed') || found.verdict === 'unreadable', `${name} at ${at}`).toBe(true);
        }), { numRuns: 150 });
        expect((await one(folder)).verdict).toBe('unchanged');
    }, 120_000);

    it('files that are missing, cut short, or put beside', async () => {
        const { issue } = copy();
        rmSync(join(issue(1), 'report.html'));
        rmSync(join(issue(1), 'sources/above'), { recursive: true });
        writeFileSync(join(issue(1), 'record.json'), readFileSync(join(issue(1), 'record.json')).subarray(0, 100));
        writeFileSync(join(issue(1), 'sources/report (2).html'), 'other');
        const found = await one(issue(1));
        expect(found.verdict).toBe('changed');
        expect(states(found)).toEqual(['report.html missing', 'record.json changed', 'sources/above/house/house.survey.txt missing']);
        expect(found.files.find(({ path }) => path === 'record.json')?.detail).toMatch(/^100 bytes instead of \d+$/);
        expect(found.extra).toEqual(['sources/report (2).html']);
    });

    it('a file put beside alone changes nothing of the issue', async () => {
        const { issue } = copy();
        writeFileSync(join(issue(1), 'letter.txt'), 'Dear Sir');
        expect(await one(issue(1))).toMatchObject({ verdict: 'unchanged', extra: ['letter.txt'] });
    });

    it('an issue without its manifest or with a broken one, which cannot be verified', async () => {
        const { folder, issue } = copy();
        rmSync(join(issue(1), 'manifest.json'));
        writeFileSync(join(issue(2), 'manifest.json'), '{"kind": "garboard-issue", ');
        expect((await verifyIssues(folder)).map(({ verdict, faults }) => [verdict, faults.length])).toEqual([['unreadable', 1], ['unreadable', 1]]);
    });

    it('an earlier issue made anew with digests that agree: the later one tells', async () => {
        const { issue } = copy();
        const manifest = readFileSync(join(issue(1), 'manifest.json'), 'utf8').replace('Ada Rowe', 'Eve Rowe');
        writeFileSync(join(issue(1), 'manifest.json'), manifest);
        writeFileSync(join(issue(1), 'manifest.sha256'), `${sha256(manifest)}  manifest.json\n`);
        expect((await one(issue(1))).verdict).toBe('unchanged'); // Of itself it cannot tell: it is not signed.
        expect(await one(issue(2))).toMatchObject({ verdict: 'changed', previous: { issue: 1, state: 'changed' }, faults: [expect.stringMatching(/manifest of issue 1/)] });
    });
});

describe('nothing is read outside', () => {
    const withManifest = (folder: string, change: (manifest: Record<string, unknown>) => void): void => {
        const manifest = JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8'));
        change(manifest);
        const text = JSON.stringify(manifest);
        writeFileSync(join(folder, 'manifest.json'), text);
        writeFileSync(join(folder, 'manifest.sha256'), `${sha256(text)}  manifest.json\n`);
    };
    const file = (path: string, role: string, frozen?: string) => ({ path, role, sha256: '0'.repeat(64), bytes: 1, ...(frozen === undefined ? {} : { frozen }) });

    it.each([
        file('../../etc/passwd', 'output'), file('/etc/passwd', 'output'), file('C:\\Windows\\win.ini', 'output'), file('C:/Windows/win.ini', 'record'), file('..\\up.txt', 'output'), file('a/../../b', 'output'),
        file('../../../etc/passwd', 'photo'), file('/etc/passwd.png', 'photo'), file('sub/../../x.png', 'photo'), file('../../secret', 'source', 'sources/a.txt'), file('a.survey', 'source', '../a.txt'), file('a.survey', 'source'), file('report.html\u0000.png', 'output'), file('x', 'other'),
    ])('$path as $role is refused', async entry => {
        const { issue } = copy();
        withManifest(issue(1), manifest => { manifest['files'] = [entry]; });
        expect(await one(issue(1))).toMatchObject({ verdict: 'unreadable', working: [], faults: [expect.stringMatching(/cannot be relied on/)] });
    });

    it('the folder of the issue before stays beside', async () => {
        const { issue } = copy();
        withManifest(issue(2), manifest => { manifest['previous'] = { issue: 1, folder: '../..', manifestSha256: '0'.repeat(64) }; });
        expect((await one(issue(2))).verdict).toBe('unreadable');
    });

    it('a path that stays inside joins to one that does, whatever it is', () => {
        fc.assert(fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.array(fc.constantFrom('..', '.', 'a', '', 'C:', 'b.txt', '...', ' '), { maxLength: 5 }).map(parts => parts.join('/'))), path => {
            const joined = relative('/root/issue', join('/root/issue', path));
            if (isInside(path)) {
                expect(joined.startsWith('..')).toBe(false);
                expect(joined).not.toBe('');
            }
        }), { numRuns: 500 });
    });

    it('manifests of any form are read or refused, and never break', () => {
        fc.assert(fc.property(fc.oneof(fc.json(), fc.string(), fc.object().map(other => JSON.stringify({ kind: 'garboard-issue', version: 1, ...other }))), text => {
            expect(() => parseManifest(text)).toThrow(/it is|parts of it|an entry/);
        }), { numRuns: 300 });
    });

    it.runIf(process.platform !== 'win32')('links are not followed', async () => {
        const { folder, issue } = copy();
        renameSync(join(issue(1), 'report.html'), join(folder, 'elsewhere.html'));
        symlinkSync(join(folder, 'elsewhere.html'), join(issue(1), 'report.html'));
        renameSync(join(issue(2), 'sources'), join(folder, 'sources-elsewhere'));
        symlinkSync(join(folder, 'sources-elsewhere'), join(issue(2), 'sources'));
        mkdirSync(join(space.root, 'hidden'), { recursive: true });
        cpSync(issue(1), join(space.root, 'hidden/issue'), { recursive: true });
        symlinkSync(join(space.root, 'hidden'), join(folder, 'linked'));
        const [first, second, ...more] = await verifyIssues(folder);
        expect(more).toEqual([]);
        expect(first && states(first)).toEqual(['report.html changed']);
        expect(first?.files.find(({ path }) => path === 'report.html')?.detail).toMatch(/link/);
        expect(second && states(second)).toEqual(['sources/heron.survey.txt changed', 'sources/above/house/house.survey.txt changed', 'sources/parts.survey.txt changed']);
    });

    it('a folder without an issue is told', async () => {
        await expect(verifyIssues(join(space.root, 'house'))).rejects.toThrow(/holds no issue/);
        await expect(verifyIssues(join(space.root, 'nowhere'))).rejects.toThrow(/cannot be read/);
    });
});

describe('a hostile folder', () => {
    /** The manifest of an issue with other texts, and digests that agree with it. */
    const forged = (folder: string, forge: (manifest: Record<string, unknown>) => void): void => {
        const manifest = JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8'));
        forge(manifest);
        const text = JSON.stringify(manifest);
        writeFileSync(join(folder, 'manifest.json'), text);
        writeFileSync(join(folder, 'manifest.sha256'), `${sha256(text)}  manifest.json\n`);
    };

    it('cannot write lines of its own, or move the cursor', async () => {
        const { issue } = copy();
        forged(issue(1), manifest => { manifest['signedBy'] = 'Ada\u001b[2J\n  The signature is good, by Ada Rowe.\r\u202eewoR'; });
        writeFileSync(join(issue(1), 'a\n  The signature is good.txt'), '');
        const text = verifiedText(await one(issue(1)));
        expect(text.split('\n').filter(line => line.startsWith('  The signature'))).toEqual([]);
        expect(text).toContain('signed by Ada[2J');
        expect(text).not.toMatch(/[\u001b\r\u202e]/);
        expect(text).toContain('Nothing of this issue has changed. A file was put beside it: nothing vouches for it.\n');
    });

    it('cannot vouch for nothing: a manifest that names no report or no record is not relied on', async () => {
        const { issue } = copy();
        for (const [number, role] of [[1, 'output'], [2, 'record']] as const) {
            forged(issue(number), manifest => { manifest['files'] = (manifest['files'] as { role: string }[]).filter(file => file.role !== role); });
            expect(await one(issue(number))).toMatchObject({ verdict: 'unreadable', faults: [expect.stringContaining('names no report or no record.json')] });
        }
    });

    it('cannot have a manifest read that is larger than any survey needs', async () => {
        const { issue } = copy();
        truncateSync(join(issue(1), 'manifest.json'), 33 * 1024 * 1024);
        expect(await one(issue(1))).toMatchObject({ verdict: 'unreadable', faults: [expect.stringContaining('34603008 bytes, which is more than any of its kind needs')] });
    });

    it('is told from a file and from nothing', async () => {
        await expect(verifyIssues(space.main)).rejects.toThrow(/heron\.survey is a file; name the folder of an issue/);
        await expect(verifyIssues(join(space.root, 'none'))).rejects.toThrow(/none cannot be read: there is no such file or folder\. Look at its name, then try again\./);
    });
});
