/**
 * Runs other programs without a shell. A program is looked for in the folders of PATH that are given in full, never in
 * the working folder: on Windows that would let a workspace put its own in the place of the one meant.
 */
import { spawn } from 'node:child_process';
import { access, constants, stat } from 'node:fs/promises';
import { delimiter, dirname, isAbsolute, join } from 'node:path';

/** Where a program is; undefined where it is not installed. A full path is taken as it is. */
export async function findProgram(name: string): Promise<string | undefined> {
    const folders = isAbsolute(name) ? [''] : /[/\\]/.test(name) ? [] : (process.env['PATH'] ?? '').split(delimiter).filter(isAbsolute);
    const names = process.platform === 'win32' && !/\.exe$/i.test(name) ? [`${name}.exe`] : [name];
    for (const path of folders.flatMap(folder => names.map(each => folder === '' ? each : join(folder, each)))) {
        try {
            await access(path, constants.X_OK);
            if ((await stat(path)).isFile()) {
                return path;
            }
        } catch {
            // Not in this folder.
        }
    }
    return undefined;
}

export interface Ran {
    /** Exit status; undefined where the program was ended by a signal or did not start. */
    readonly status: number | undefined;
    readonly stdout: string;
    readonly stderr: string;
}

/** Kept of what a program says, in characters. */
const longestOutput = 100_000;

/** Runs a program found before, away from any workspace, its messages in English. `input` is what it reads. */
export function run(program: string, args: readonly string[], input?: Uint8Array): Promise<Ran> {
    return new Promise(resolve => {
        const child = spawn(program, args, { cwd: dirname(program), shell: false, windowsHide: true, stdio: ['pipe', 'pipe', 'pipe'], env: { ...process.env, LC_ALL: 'C', LANGUAGE: 'C' } });
        let [stdout, stderr] = ['', ''];
        child.stdout.setEncoding('utf8').on('data', (text: string) => { stdout = (stdout + text).slice(0, longestOutput); });
        child.stderr.setEncoding('utf8').on('data', (text: string) => { stderr = (stderr + text).slice(0, longestOutput); });
        child.stdin.on('error', () => undefined); // A program that ends before it has read all says why itself.
        child.on('error', error => resolve({ status: undefined, stdout, stderr: stderr || error.message }));
        child.on('close', status => resolve({ status: status ?? undefined, stdout, stderr }));
        child.stdin.end(input);
    });
}
