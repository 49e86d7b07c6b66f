/** Where a browser is looked for on each system, and what is said where there is none. */
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { browserPlaces, findBrowser, isSnap, NoBrowserError } from '../../src/host/browser.js';

let folder: string;
beforeAll(() => { folder = mkdtempSync(join(tmpdir(), 'browser-test-')); });
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function program(name: string, text = '#!/bin/sh\n'): string {
    const path = join(folder, name);
    mkdirSync(join(path, '..'), { recursive: true });
    writeFileSync(path, text);
    chmodSync(path, 0o755);
    return path;
}

test('Windows: Edge, Chrome and Chromium, for all users and for this one', () => {
    const places = browserPlaces({ platform: 'win32', home: 'C:\\Users\\u', env: { 'ProgramFiles(x86)': 'C:\\Program Files (x86)', ProgramFiles: 'C:\\Program Files', ProgramW6432: 'C:\\Program Files', LOCALAPPDATA: 'C:\\Users\\u\\AppData\\Local' } });
    expect(places).toContain('C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe');
    expect(places).toContain('C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe');
    expect(places).toContain('C:\\Users\\u\\AppData\\Local\\Chromium\\Application\\chrome.exe');
    expect(new Set(places).size).toBe(places.length);
});

test('macOS: for all users and for this one', () => {
    const places = browserPlaces({ platform: 'darwin', home: '/Users/u', env: {} });
    expect(places).toContain('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
    expect(places).toContain('/Users/u/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge');
});

test.skipIf(process.platform === 'win32')('Linux: the first on the PATH; a folder or a file that cannot be run is none; relative folders are not looked into', async () => {
    const found = program('bin/google-chrome');
    mkdirSync(join(folder, 'bin', 'chromium'));
    writeFileSync(join(folder, 'bin', 'chromium-browser'), 'not to be run');
    expect(await findBrowser(undefined, { platform: 'linux', home: folder, env: { PATH: `.:${join(folder, 'bin')}` } })).toBe(found);
    expect(browserPlaces({ platform: 'linux', home: folder, env: { PATH: '.::bin' } })).toEqual([]);
});

test.skipIf(process.platform === 'win32')('what is named goes first, and must be a program', async () => {
    const [one, other] = [program('one'), program('other')];
    const machine = { platform: 'linux' as const, home: folder, env: { PATH: '', GARBOARD_BROWSER: other } };
    expect(await findBrowser({ path: one, by: '--browser' }, machine)).toBe(one);
    expect(await findBrowser(undefined, machine)).toBe(other);
    await expect(findBrowser({ path: folder, by: '--browser' }, machine)).rejects.toThrow(`--browser names ${folder}, which is not a program`);
});

test('without one it says where it looked, how to name one, and the way out', async () => {
    const missing = findBrowser(undefined, { platform: 'linux', home: folder, env: { PATH: join(folder, 'empty') } });
    await expect(missing).rejects.toBeInstanceOf(NoBrowserError);
    await expect(missing).rejects.toThrow(/chromium, .*on the PATH.*--browser PATH.*garboard\.pdf\.browser.*GARBOARD_BROWSER.*HTML/);
});

test('a snap, or the script in its place, is known', async () => {
    expect(await isSnap('/snap/bin/chromium')).toBe(true);
    expect(await isSnap(program('snapped', '#!/bin/sh\nexec /snap/bin/chromium "$@"\n'))).toBe(true);
    expect(await isSnap(program('plain'))).toBe(false);
});
