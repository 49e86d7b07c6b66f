/** Earlier reports on disk: the survey's own last issue, and the report that it follows. */
import { cpSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addressOf } from '../../src/host/files.js';
import { nodeShelf } from '../../src/host/shelf.js';
import { made, workspace, type Workspace } from './issue-sample.js';

let space: Workspace;
let turn = 0;
/** A copy of the folder with both issues, under `firm/NAME/work`. */
const copy = (): { readonly root: string; readonly work: string; readonly main: string } => {
    const root = join(space.root, `firm-${++turn}`);
    const work = join(root, 'heron/work');
    mkdirSync(join(root, '.git'), { recursive: true });
    cpSync(space.folder, work, { recursive: true });
    cpSync(join(space.root, 'house'), join(root, 'heron/house'), { recursive: true });
    return { root, work, main: addressOf(join(work, 'heron.survey')) };
};
/** A survey in a folder of its own that follows AR-77. */
const follower = (root: string, folder = 'again'): string => {
    mkdirSync(join(root, folder), { recursive: true });
    writeFileSync(join(root, folder, 'again.survey'), 'survey "AR-90" re-inspection { follows: "AR-77" }\n');
    return addressOf(join(root, folder, 'again.survey'));
};

beforeAll(async () => {
    space = workspace();
    made(await space.issue());
    space.change('parts.survey', 'within-days 30', 'within-days 14');
    made(await space.issue({ today: '2026-02-10' }));
}, 60_000);
afterAll(() => rmSync(space.root, { recursive: true, force: true }));

describe('the last issue', () => {
    it('is the newest of that number beside the main file', async () => {
        const { main } = copy();
        expect(await nodeShelf().lastIssue('AR-77', main)).toEqual({
            number: 'AR-77', issue: 2, issued: '2026-02-10', vessel: 'Heron', source: 'issued/AR-77-issue-2', isFrozen: true, findings: [{
                id: 'F1', title: 'Sheave worn', urgency: 'within-days', due: 'By 24 February 2026, 14 days after issue', on: ['Mast (MA1)'],
                seen: 'The sheave at the masthead is worn to one side.', because: 'The halyard chafes on its cheek.', recommend: 'Renew the sheave at the masthead.',
            }],
        });
        expect((await nodeShelf().lastRecord('AR-77', main))?.document.issue).toEqual({ number: 2, date: '2026-02-10', signedBy: 'Ada Rowe' });
    });

    it('is none for another number, and for a text that is not saved', async () => {
        const { main } = copy();
        expect(await nodeShelf().lastIssue('AR-7', main)).toBeUndefined();
        expect(await nodeShelf().lastIssue('ar-77', main)).toBeUndefined();
        expect(await nodeShelf().lastIssue('', main)).toBeUndefined();
        expect(await nodeShelf().lastIssue('AR-77', 'untitled:Untitled-1')).toBeUndefined();
    });

    it('tells a record that was changed since from a frozen one', async () => {
        const { main, work } = copy();
        const path = join(work, 'issued/AR-77-issue-2/record.json');
        const shelf = nodeShelf();
        expect((await shelf.lastIssue('AR-77', main))?.isFrozen).toBe(true);
        writeFileSync(path, readFileSync(path, 'utf8').replace('to one side', 'to no side'));
        expect(await shelf.lastIssue('AR-77', main)).toMatchObject({ isFrozen: false, findings: [{ seen: 'The sheave at the masthead is worn to no side.' }] });
    });

    it('follows the folder: an issue made or taken away is seen at the next look', async () => {
        const { main, work } = copy();
        const shelf = nodeShelf();
        expect((await shelf.lastIssue('AR-77', main))?.issue).toBe(2);
        renameSync(join(work, 'issued/AR-77-issue-2'), join(work, 'kept'));
        expect((await shelf.lastIssue('AR-77', main))?.issue).toBe(1);
        renameSync(join(work, 'kept'), join(work, 'issued/AR-77-issue-2'));
        expect((await shelf.lastIssue('AR-77', main))?.issue).toBe(2);
    });
});

describe('the report that is followed', () => {
    it('is found issued in a folder beside, two levels up and down', async () => {
        const { root } = copy();
        expect(await nodeShelf().followed('AR-77', follower(root, 'osprey/2027/again'))).toMatchObject({ number: 'AR-77', issue: 2, isFrozen: true, source: '../../../heron/work/issued/AR-77-issue-2' });
    });

    it('is the live survey where none is issued, and follows its text', async () => {
        const { root, work } = copy();
        rmSync(join(work, 'issued'), { recursive: true });
        const main = follower(root);
        const shelf = nodeShelf();
        expect(await shelf.followed('AR-77', main)).toMatchObject({ number: 'AR-77', isFrozen: false, source: '../heron/work/heron.survey', findings: [{ id: 'F1', title: 'Sheave worn' }] });
        const parts = join(work, 'parts.survey');
        writeFileSync(parts, readFileSync(parts, 'utf8').replace('Sheave worn', 'Sheave at the masthead worn'));
        expect((await shelf.followed('AR-77', main))?.findings[0]?.title).toBe('Sheave at the masthead worn');
    });

    it('is found beside the survey itself', async () => {
        const { work } = copy();
        expect(await nodeShelf().followed('AR-77', follower(work, '.'))).toMatchObject({ issue: 2, source: 'issued/AR-77-issue-2' });
    });

    it('is not found under another number, above the repository, or among installed packages', async () => {
        const { root, work } = copy();
        expect(await nodeShelf().followed('AR-770', follower(root))).toBeUndefined();
        expect(await nodeShelf().followed('AR.77', follower(root))).toBeUndefined();
        mkdirSync(join(root, 'inner/.git'), { recursive: true });
        expect(await nodeShelf().followed('AR-77', follower(root, 'inner'))).toBeUndefined();
        mkdirSync(join(root, 'node_modules'));
        renameSync(work, join(root, 'node_modules/work'));
        expect(await nodeShelf().followed('AR-77', follower(root))).toBeUndefined();
    });

    it('takes a number with any signs as it is', async () => {
        const { root } = copy();
        const number = 'A (1) [x].*+?^$|';
        mkdirSync(join(root, 'odd'));
        writeFileSync(join(root, 'odd/odd.survey'), `survey "${number}" part-survey {}\n`);
        expect(await nodeShelf().followed(number, follower(root))).toMatchObject({ number, source: '../odd/odd.survey' });
    });
});
