/**
 * Finds a Chromium, Chrome or Edge on this machine to print with. Nothing is downloaded and no registry of the system is asked: the places
 * where these browsers install themselves are looked at, and what the user named goes before all of them.
 */
import { constants } from 'node:fs';
import { access, open, stat } from 'node:fs/promises';
import { homedir } from 'node:os';
import { posix, win32 } from 'node:path';

/** No browser to print with. The message says where one was looked for, how to name one, and the way without. */
export class NoBrowserError extends Error {
    override readonly name = 'NoBrowserError';
}

export interface Machine {
    readonly platform: NodeJS.Platform;
    readonly env: Readonly<Record<string, string | undefined>>;
    readonly home: string;
}

const thisMachine = (): Machine => ({ platform: process.platform, env: process.env, home: homedir() });

const linuxNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge', 'microsoft-edge-stable'] as const;
const windowsPrograms = ['Microsoft\\Edge\\Application\\msedge.exe', 'Google\\Chrome\\Application\\chrome.exe', 'Chromium\\Application\\chrome.exe'] as const;
const macPrograms = ['Google Chrome.app/Contents/MacOS/Google Chrome', 'Microsoft Edge.app/Contents/MacOS/Microsoft Edge', 'Chromium.app/Contents/MacOS/Chromium'] as const;

/** Where browsers that can print a PDF install themselves, in the order they are tried. */
export function browserPlaces({ platform, env, home }: Machine = thisMachine()): string[] {
    if (platform === 'win32') {
        const folders = [env['ProgramFiles(x86)'], env.ProgramFiles, env.ProgramW6432, env.LOCALAPPDATA].filter(folder => folder !== undefined && folder !== '') as string[];
        return [...new Set(windowsPrograms.flatMap(program => folders.map(folder => win32.join(folder, program))))];
    }
    const onPath = (env.PATH ?? '').split(':').filter(folder => folder.startsWith('/'));
    const named = linuxNames.flatMap(name => onPath.map(folder => posix.join(folder, name)));
    return platform === 'darwin' ? [...macPrograms.flatMap(program => [posix.join('/Applications', program), posix.join(home, 'Applications', program)]), ...named] : named;
}

/** A browser named by the user: its path, and where it was named. */
export interface NamedBrowser {
    readonly path: string;
    readonly by: string;
}

/**
 * Path of the browser to print with: the one named, else that of the environment variable GARBOARD_BROWSER, else the first found.
 * @throws NoBrowserError where there is none, or the one named is no program.
 */
export async function findBrowser(named: NamedBrowser | undefined, machine = thisMachine()): Promise<string> {
    const fromEnvironment = machine.env.GARBOARD_BROWSER;
    const chosen = named ?? (fromEnvironment ? { path: fromEnvironment, by: 'GARBOARD_BROWSER' } : undefined);
    if (chosen) {
        if (!await isProgram(chosen.path)) {
            throw new NoBrowserError(`${chosen.by} names ${chosen.path}, which is not a program that can be run. Name the program itself of a Chromium, Chrome or Edge, or leave it out so that one is looked for.`);
        }
        return chosen.path;
    }
    for (const place of browserPlaces(machine)) {
        if (await isProgram(place)) {
            return place;
        }
    }
    throw new NoBrowserError(`No Chromium, Chrome or Edge was found to print the PDF with; looked for ${lookedFor(machine)}. `
        + 'Install one of them, or name its program by --browser PATH, the setting garboard.pdf.browser or the environment variable GARBOARD_BROWSER. '
        + 'Without one, write the report as HTML and print it from any browser: it is laid out for paper.');
}

function lookedFor(machine: Machine): string {
    switch (machine.platform) {
        case 'win32': return 'Edge, Chrome and Chromium in the program folders and in that of the user';
        case 'darwin': return 'Chrome, Edge and Chromium in /Applications and in ~/Applications';
        default: return `${linuxNames.join(', ')} on the PATH`;
    }
}

async function isProgram(path: string): Promise<boolean> {
    try {
        await access(path, constants.X_OK);
        return (await stat(path)).isFile();
    } catch {
        return false;
    }
}

/**
 * Whether the program is a snap, or the script that Ubuntu puts in its place: a snap reads neither the system's temporary folder nor hidden
 * ones, only its own.
 */
export async function isSnap(path: string): Promise<boolean> {
    if (path.startsWith('/snap/')) {
        return true;
    }
    try {
        const file = await open(path);
        try {
            const { buffer, bytesRead } = await file.read(Buffer.alloc(4096), 0, 4096, 0);
            const text = buffer.subarray(0, bytesRead).toString('latin1');
            return text.startsWith('#!') && text.includes('/snap/bin/');
        } finally {
            await file.close();
        }
    } catch {
        return false;
    }
}
