/** `garboard issue` and `garboard verify` as a firm's own scripts call them: words and exit status. */
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { workspace, type Workspace } from '../host/issue-sample.js';

const cli = join(fileURLToPath(new URL('../..', import.meta.url)), 'dist/cli.cjs');
let space: Workspace;
const garboard = (...args: readonly string[]) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], { cwd: space.folder, encoding: 'utf8' });
    return { status, stdout, stderr };
};
beforeAll(() => { space = workspace(); });
afterAll(() => rmSync(space.root, { recursive: true, force: true }));

describe('issue and verify', () => {
    it('issues, verifies, and says by the exit status what is wrong', () => {
        expect(garboard('verify', '.')).toMatchObject({ status: 2, stderr: expect.stringContaining('holds no issue') });
        const done = garboard('issue', '--date', '2026-02-01', 'heron.survey');
        expect(done).toMatchObject({ status: 0, stderr: '' });
        expect(done.stdout).toMatch(/^Report AR-77, issue 1 of 2026-02-01, signed by Ada Rowe: issued\/AR-77-issue-1\nSHA-256 of its manifest: [0-9a-f]{64}\n/);

        const again = garboard('issue', '--date', '2026-02-02', 'heron.survey');
        expect(again).toMatchObject({ status: 1, stdout: '' });
        expect(again.stderr).toMatch(/heron\.survey is not issued\. This is to be settled first:\n {2}Nothing that is recorded differs from issue 1/);
        expect(garboard('issue', 'none.survey').status).toBe(2);

        const good = garboard('verify', '.');
        expect(good.status).toBe(0);
        expect(good.stdout).toMatch(/ {2}unchanged {2}report\.html\n/);
        expect(good.stdout).toMatch(/The manifest is not signed\. .* whoever can change the one can change the other/);

        const report = join(space.issued, 'AR-77-issue-1/report.html');
        const html = readFileSync(report, 'utf8');
        writeFileSync(report, html.replace('Heron', 'Heran'));
        const changed = garboard('verify', '--format', 'json', '.');
        expect(changed.status).toBe(1);
        const { version, issues } = JSON.parse(changed.stdout);
        expect(version).toBe(1);
        expect(issues).toMatchObject([{ folder: 'issued/AR-77-issue-1', verdict: 'changed', number: 'AR-77', signature: null }]);
        expect(issues[0].files.find((file: { path: string }) => file.path === 'report.html')).toEqual({ path: 'report.html', role: 'output', state: 'changed' });

        writeFileSync(join(space.issued, 'AR-77-issue-1/manifest.json'), '{');
        expect(garboard('verify', 'issued')).toMatchObject({ status: 2, stdout: expect.stringContaining('cannot be verified') });
    }, 60_000);
});
