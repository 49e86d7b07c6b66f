/** Reading surveys from disk and writing results whole or not at all. */
import { randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { URI } from 'langium';
import { parseTexts, type ParsedText } from '../checks/survey.js';
import { usesOf } from '../record/documents.js';

/** The address of a file as the language writes it: the same form as an editor's. */
export const addressOf = (path: string): string => URI.parse(pathToFileURL(resolve(path)).href).toString();
export const pathOf = (uri: string): string => fileURLToPath(URI.parse(uri).toString());

const passedOver = new Set(['node_modules', 'out', 'dist']);

/** The .survey files under the paths. @throws Error naming a path that cannot be read. */
export async function surveyFilesUnder(paths: readonly string[]): Promise<string[]> {
    const found: string[] = [];
    for (const path of paths) {
        let isDirectory: boolean;
        try {
            isDirectory = (await stat(path)).isDirectory();
        } catch {
            throw new Error(`${path} cannot be read: there is no such file or folder.`);
        }
        if (isDirectory) {
            await collect(path, found);
        } else if (path.endsWith('.survey')) {
            found.push(path);
        } else {
            throw new Error(`${path} is not a survey: its name does not end in .survey.`);
        }
    }
    return found;
}

async function collect(folder: string, found: string[]): Promise<void> {
    const entries = await readdir(folder, { withFileTypes: true });
    for (const entry of entries.sort((a, b) => a.name.localeCompare(b.name, 'en'))) {
        if (entry.isDirectory()) {
            if (!entry.name.startsWith('.') && !passedOver.has(entry.name)) {
                await collect(join(folder, entry.name), found);
            }
        } else if (entry.name.endsWith('.survey')) {
            found.push(join(folder, entry.name));
        }
    }
}

export interface Loaded {
    readonly parsed: Map<string, ParsedText>;
    readonly texts: Map<string, string>;
}

/** Looks whether a path is one survey file. @throws Error that says why it is none. */
export async function expectSurveyFile(path: string): Promise<void> {
    const info = await stat(path).catch((error: unknown) => { throw new Error(fileTrouble(error, path, 'read')); });
    if (info.isDirectory()) {
        throw new Error(`${path} is a folder; name the survey's main file in it, the one that begins with survey "…".`);
    }
    await surveyFilesUnder([path]);
}

const reasons: Readonly<Record<string, string>> = {
    EACCES: 'permission is denied. Change the permissions of the file or of its folder',
    EPERM: 'it is not permitted. Close the file where it is open, or change its permissions',
    EBUSY: 'another program has it open. Close it there',
    EROFS: 'the disk can only be read. Copy the survey to a disk that can be written',
    ENOSPC: 'the disk is full. Make room on it',
    EDQUOT: 'your share of the disk is used up. Make room on it',
    ENOENT: 'there is no such file or folder. Look at its name',
    ENOTDIR: 'a part of its path is a file, not a folder. Look at the path',
    EEXIST: 'a part of its path is a file, not a folder. Look at the path',
    EISDIR: 'it is a folder. Name a file',
    ENAMETOOLONG: 'its name is too long. Give it a shorter one',
    ELOOP: 'links in its path lead to each other. Give the path without them',
    EMFILE: 'too many files are open. Close other programs',
};

/** Why a file could not be read or written, and what is to be done, in a sentence. */
export function fileTrouble(error: unknown, path: string, act: 'read' | 'written'): string {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    const reason = Object.hasOwn(reasons, code) ? reasons[code] : undefined;
    return `${path} cannot be ${act}: ${reason === undefined ? error instanceof Error ? error.message : String(error) : `${reason}, then try again.`}`;
}

/**
 * Looks whether a result may be written to a path: never in the place of a survey, a picture, something issued, or what
 * is kept from being changed. @throws Error that says why not.
 */
export async function expectWritable(path: string): Promise<void> {
    const target = resolve(path);
    if (isSurveyOrPicture(target)) {
        throw new Error(`${path} is not written: its name is that of a survey or a picture, which a result must not take the place of. Name another file after --output.`);
    }
    if (/[/\\]issued[/\\][^/\\]+-issue-\d+[/\\]/i.test(target)) {
        throw new Error(`${path} is not written: it lies in the folder of an issue, which stays as it was made. Name a file elsewhere after --output.`);
    }
    const info = await stat(target).catch(() => undefined);
    if (info?.isDirectory()) {
        throw new Error(`${path} is not written: it is a folder. Name a file after --output.`);
    }
    if (info && (info.mode & 0o222) === 0) {
        throw new Error(`${path} is not written: it is kept from being changed (read-only). Name another file after --output, or change its permissions.`);
    }
}

const isSurveyOrPicture = (path: string): boolean => /\.(?:survey|jpe?g|jpe|jfif|png|webp|hei[cf]|avif|tiff?|gif|bmp|svg)$/i.test(basename(path));

/** Parses the files and all that they use. Files that are used but missing are left to the record to report. */
export async function load(paths: readonly string[]): Promise<Loaded> {
    const texts = new Map<string, string>();
    const parsed = new Map<string, ParsedText>();
    let pending = paths.map(addressOf);
    let first = true;
    while (pending.length > 0) {
        const read = new Map<string, string>();
        for (const uri of new Set(pending)) {
            if (texts.has(uri)) {
                continue;
            }
            try {
                const text = await readFile(pathOf(uri), 'utf8');
                read.set(uri, text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
            } catch (error) {
                if (first) {
                    throw new Error(fileTrouble(error, pathOf(uri), 'read'));
                }
            }
        }
        first = false;
        read.forEach((text, uri) => texts.set(uri, text));
        const added = parseTexts(read);
        added.forEach((value, uri) => parsed.set(uri, value));
        pending = [...added.values()].flatMap(({ file }) => usesOf(file)).filter(uri => !texts.has(uri));
    }
    return { parsed, texts };
}

/** Makes a folder with those above it. @throws as the system says why it cannot be made. */
export async function makeFolder(path: string): Promise<void> {
    try {
        await mkdir(path, { recursive: true });
    } catch (error) {
        if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) {
            throw error;
        }
        // Node says so too where the disk can only be read; the first folder that is missing tells the reason.
        let first = resolve(path);
        while (dirname(first) !== first && !await stat(dirname(first)).catch(() => undefined)) {
            first = dirname(first);
        }
        await mkdir(first);
        await mkdir(path, { recursive: true });
    }
}

/** Writes through a temporary file beside the target, then renames: never a half-written file. */
export const writeWhole = (path: string, content: string | Uint8Array): Promise<void> => writeAllWhole([[path, content]]);

/** Writes files that belong together: all of them stand beside their targets before the first is put in its place. */
export async function writeAllWhole(files: readonly (readonly [path: string, content: string | Uint8Array])[]): Promise<void> {
    const ready: { readonly temporary: string; readonly target: string }[] = [];
    let at = '';
    try {
        for (const [path, content] of files) {
            const target = resolve(path);
            at = target;
            await makeFolder(dirname(target));
            const temporary = `${target}.${randomBytes(6).toString('hex')}.tmp`;
            ready.push({ temporary, target });
            await writeFile(temporary, content);
        }
        for (const { temporary, target } of ready) {
            at = target;
            await rename(temporary, target);
        }
    } catch (error) {
        await Promise.all(ready.map(({ temporary }) => rm(temporary, { force: true }).catch(() => undefined))); // What went wrong first is what is told.
        throw new Error(fileTrouble(error, at, 'written'), { cause: error });
    }
}

/** Positions in a text, one-based as editors show them. */
export function positionIn(text: string, offset: number): { line: number; column: number } {
    let line = 1;
    let start = 0;
    for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) {
        line++;
        start = at + 1;
    }
    return { line, column: offset - start + 1 };
}
