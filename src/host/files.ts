/** Reading surveys from disk and writing results whole or not at all. */
import { randomBytes } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
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
                    throw new Error(`${pathOf(uri)} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
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

/** Writes through a temporary file beside the target, then renames: never a half-written file. */
export const writeWhole = (path: string, content: string | Uint8Array): Promise<void> => writeAllWhole([[path, content]]);

/** Writes files that belong together: all of them stand beside their targets before the first is put in its place. */
export async function writeAllWhole(files: readonly (readonly [path: string, content: string | Uint8Array])[]): Promise<void> {
    const ready: { readonly temporary: string; readonly target: string }[] = [];
    try {
        for (const [path, content] of files) {
            const target = resolve(path);
            await mkdir(dirname(target), { recursive: true });
            const temporary = `${target}.${randomBytes(6).toString('hex')}.tmp`;
            ready.push({ temporary, target });
            await writeFile(temporary, content);
        }
        for (const { temporary, target } of ready) {
            await rename(temporary, target);
        }
    } catch (error) {
        await Promise.all(ready.map(({ temporary }) => rm(temporary, { force: true })));
        throw error;
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
