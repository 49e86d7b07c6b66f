/** What is written where: results never take the place of what they were made from, and every failure says how to mend it. */
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectSurveyFile, expectWritable, fileTrouble, writeAllWhole } from '../../src/host/files.js';

let folder: string;
const at = (...names: string[]) => join(folder, ...names);
beforeAll(() => { folder = mkdtempSync(join(tmpdir(), 'garboard-files-')); });
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('a result', () => {
    it('never takes the place of a survey, a picture, an issue, a folder, or what is read-only', async () => {
        mkdirSync(at('there'));
        writeFileSync(at('kept.html'), 'kept');
        chmodSync(at('kept.html'), 0o444);
        const refused: readonly [string, RegExp][] = [
            ['heron.survey', /name is that of a survey or a picture/], ['HERON.SURVEY', /a survey or a picture/], ['mast.JPG', /a survey or a picture/],
            ['issued/AR-77-issue-1/report.html', /lies in the folder of an issue/], ['issued/AR-77-issue-12/sources/x.txt', /lies in the folder of an issue/],
            ['there', /is a folder\. Name a file/], ['kept.html', /read-only/],
        ];
        for (const [name, reason] of refused) {
            await expect(expectWritable(at(name)), name).rejects.toThrow(reason);
        }
        for (const name of ['heron.html', 'new/heron.pdf', 'issued/list.csv', 'survey', 'a.survey.html']) {
            await expect(expectWritable(at(name)), name).resolves.toBeUndefined();
        }
    });

    it('is written with all that belong to it or not at all, and says which could not be', async () => {
        mkdirSync(at('taken.html'));
        await expect(writeAllWhole([[at('one.csv'), 'a'], [at('taken.html'), 'b'], [at('kept.html', 'x.csv'), 'c']])).rejects.toThrow(/kept\.html[\\/]x\.csv cannot be written: .+, then try again\.$/);
        expect(existsSync(at('one.csv'))).toBe(false);
        expect(readdirSync(folder).filter(name => name.endsWith('.tmp'))).toEqual([]);
        expect(readFileSync(at('kept.html'), 'utf8')).toBe('kept');
    });
});

describe('a failure', () => {
    it('is told by what it is and what is to be done', () => {
        const of = (code: string) => Object.assign(new Error(`${code}: as the system says`), { code });
        expect(fileTrouble(of('ENOSPC'), 'out/x.pdf', 'written')).toBe('out/x.pdf cannot be written: the disk is full. Make room on it, then try again.');
        expect(fileTrouble(of('EROFS'), 'issued', 'written')).toContain('the disk can only be read. Copy the survey to a disk that can be written');
        expect(fileTrouble(of('toString'), 'x', 'read')).toBe('x cannot be read: toString: as the system says');
    });

    it('tells a folder and a file of another kind from a survey', async () => {
        writeFileSync(at('notes.txt'), '');
        await expect(expectSurveyFile(folder)).rejects.toThrow(/is a folder; name the survey's main file in it/);
        await expect(expectSurveyFile(at('notes.txt'))).rejects.toThrow(/does not end in \.survey/);
        await expect(expectSurveyFile(at('none.survey'))).rejects.toThrow(/there is no such file or folder/);
    });
});
