/** The built command: forms of output, where they go, and how it is stopped. */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium } from '../../.scripts/ensure-chromium.mjs';
import { TestClient } from '../protocol/client.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cli = join(root, 'dist/cli.cjs');

describe('forms of output', () => {
    let folder: string;
    let browser: string;
    const environment = () => ({ ...process.env, GARBOARD_BROWSER: browser, TMPDIR: join(folder, 'tmp') });
    const garboard = (args: readonly string[], env: NodeJS.ProcessEnv = environment()) => {
        const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], { cwd: folder, encoding: 'utf8', env });
        return { status, stdout, stderr };
    };
    const left = () => readdirSync(join(folder, 'tmp')).filter(name => name.startsWith('garboard-'));

    beforeAll(async () => {
        browser = await findChromium();
        folder = mkdtempSync(join(tmpdir(), 'forms-'));
        mkdirSync(join(folder, 'tmp'));
        cpSync(join(root, 'examples'), join(folder, 'examples'), { recursive: true, filter: source => !source.endsWith('/out') });
    }, 300_000);
    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    const start = (path: string) => readFileSync(join(folder, path)).subarray(0, 5).toString('latin1');

    it('writes several at once, each by its own name', () => {
        const { status, stderr, stdout } = garboard(['report', 'examples/marram/marram.survey', '--to', 'html,pdf,docx,csv,json', '-o', 'made/', '--verbose']);
        expect(status, stderr).toBe(0);
        expect(readdirSync(join(folder, 'made')).sort()).toEqual(['marram.csv', 'marram.docx', 'marram.html', 'marram.json', 'marram.pdf']);
        expect(start('made/marram.pdf')).toBe('%PDF-');
        expect(start('made/marram.docx').slice(0, 2)).toBe('PK');
        expect(JSON.parse(readFileSync(join(folder, 'made/marram.json'), 'utf8'))).toMatchObject({ version: 1, vessel: { name: 'Marram' } });
        expect(stderr).toMatch(/marram\.survey: photos \d+\/\d+\n[\s\S]*printing\n/);
        expect(stdout).toContain('marram.pdf');
        expect(left()).toEqual([]);
    }, 180_000);

    it('takes the form from the file’s ending, and another paper by its kind', () => {
        expect(garboard(['report', 'examples/marram/marram.survey', '-o', 'a/list.csv']).status).toBe(0);
        expect(readFileSync(join(folder, 'a/list.csv'), 'utf8')).toMatch(/^\ufeffReport,Number,Title,/);
        expect(garboard(['report', 'examples/marram/marram.survey', '--document', 'work-list', '-o', 'a/']).status).toBe(0);
        expect(readdirSync(join(folder, 'a')).sort()).toEqual(['list.csv', 'marram-work-list.html']);
    }, 60_000);

    it('says quietly nothing where no terminal shows it', () => {
        expect(garboard(['report', 'examples/marram/marram.survey', '-o', 'quiet/m.html']).stderr).toBe('');
    });

    it.each([
        [['--to', 'odt'], /html, pdf, docx, json or csv, not odt/], [['--to', ''], /not nothing/], [['--to', 'pdf', '-o', 'x.html'], /pdf would be written to a file that ends in \.html/],
        [['--document', 'poem'], /--document is report, .*not poem/], [['--document', 'work-list', '--to', 'json'], /json is the whole record/], [['--paper', 'a3'], /a4 or letter, not a3/], [['--hints'], /report has no option --hints/],
    ])('%j is refused, and nothing written', (args, says) => {
        const { status, stderr } = garboard(['report', 'examples/marram/marram.survey', ...args]);
        expect(status).toBe(2);
        expect(stderr).toMatch(says);
        expect(existsSync(join(folder, 'examples/marram/out'))).toBe(false);
        expect(existsSync(join(folder, 'x.html'))).toBe(false);
    });

    it('without a browser no form is written, and it says how to have one', () => {
        const { status, stderr } = garboard(['report', 'examples/marram/marram.survey', '--to', 'html,pdf', '-o', 'none/'], { ...environment(), GARBOARD_BROWSER: '', PATH: '/nowhere' });
        expect(status).toBe(2);
        expect(stderr).toMatch(/No Chromium, Chrome or Edge was found.*--browser PATH.*Nothing is written\./);
        expect(existsSync(join(folder, 'none'))).toBe(false);
    });

    // A terminal tells a whole group of programs, and one between, as npm is, passes it on: the second may come while the first is dealt with, or after.
    it.skipIf(process.platform === 'win32').each([
        ['once', ['printing']], ['twice at once', ['printing', 'printing']], ['again when it says that it stopped', ['printing', 'stopped']],
    ])('Ctrl+C while printing, told %s, ends the browser, removes what was begun and ends with 130', async (_, moments) => {
        const child = spawn(process.execPath, [cli, 'report', 'examples/marram/marram.survey', '--to', 'html,pdf', '-o', 'stopped/', '--verbose'], { cwd: folder, env: environment() });
        let said = '';
        const due = [...moments];
        child.stderr.on('data', (chunk: Buffer) => {
            said += chunk.toString();
            while (due[0] !== undefined && said.includes(due[0])) {
                due.shift();
                child.kill('SIGINT');
            }
        });
        // What it said is whole only once its pipes are closed, which may be after its end.
        const [status, signal] = await new Promise<unknown[]>(resolve => child.once('close', (...ended) => resolve(ended)));
        expect(said).toMatch(/stopped, nothing is written/);
        expect({ status, signal }).toEqual({ status: 130, signal: null });
        expect(existsSync(join(folder, 'stopped'))).toBe(false);
        expect(left()).toEqual([]);
    }, 120_000);

    it('the server writes the same papers, tells what goes on, and stops when told', async () => {
        const client = await TestClient.start(folder);
        try {
            const path = join(folder, 'examples/marram/marram.survey');
            const uri = pathToFileURL(path).href;
            await client.open(uri, readFileSync(path, 'utf8'));
            await client.diagnostics(uri);
            const told: string[] = [];
            client.connection.onNotification('$/progress', ({ token, value }: { token: string; value: string }) => { told.push(`${token}: ${value}`); });
            const written = await client.request<{ state: string; paths: string[]; openErrors: number }>('garboard/write', { uri, document: 'report', forms: ['html', 'pdf'], folder: 'by-editor', browser, progress: 't1' });
            expect(written).toMatchObject({ state: 'written', openErrors: 0 });
            expect(written.paths.map(p => readFileSync(p).subarray(0, 5).toString('latin1'))).toEqual(['<!DOC', '%PDF-']);
            expect(told).toContain('t1: printing');
            expect(await client.request('garboard/write', { uri, document: 'report', forms: ['pdf'], folder: 'by-editor', browser: join(folder, 'no-such-browser') }))
                .toMatchObject({ state: 'no-browser', message: expect.stringContaining('garboard.pdf.browser') });
            expect(await client.request('garboard/signers', { uri })).toMatchObject({ names: expect.arrayContaining(['Liv Norgaard']), openErrors: 0 });
        } finally {
            await client.stop();
        }
    }, 120_000);
});
