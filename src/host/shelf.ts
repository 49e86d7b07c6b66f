/**
 * Finds reports issued earlier on disk: a survey's own last issue beside its main file, and the report that a survey
 * follows in the folders around it. The search is bounded; what it found is kept until the files change, so that an
 * editor may ask at every pause.
 */
import { open, readdir, readFile, stat } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { basename, dirname, join, relative } from 'node:path';
import { analyseSurvey } from '../checks/survey.js';
import { isMainFile } from '../record/documents.js';
import type { IssuedReport } from '../record/model.js';
import { fileName } from '../report/assemble.js';
import { issuedReportOf } from '../report/issued-report.js';
import type { ReportShelf } from '../report/outside.js';
import { recordJson, type RecordDocument } from '../report/record-json.js';
import { addressOf, load, pathOf, positionIn } from './files.js';
import { issuedFolder, issueFoldersOf, manifestName, parseManifest, printedNumber, recordName, sha256 } from './issue-folder.js';

/** Levels above the folder of the main file that are looked through. */
const levelsUp = 3;
/** Levels below each of these, one more for each level up. */
const levelsDown = 2;
/** Folders looked into for one report at most. */
const mostFolders = 2000;
/** Head of a survey in which its block is looked for, in bytes. */
const headBytes = 32 * 1024;
/** A search that found nothing is made again only after this while. */
const searchAgainMs = 15_000;

const passedOver: ReadonlySet<string> = new Set(['node_modules', 'out', 'dist', 'photos', 'sources']);

/** A record of an issue, with where it lies. `isFrozen` is false where it is no longer what its manifest says. */
export interface FrozenRecord {
    readonly document: RecordDocument;
    readonly folder: string;
    readonly isFrozen: boolean;
}

export interface NodeShelf extends ReportShelf {
    /** The record of the survey's last issue, as it was frozen. */
    lastRecord(number: string, mainUri: string): Promise<FrozenRecord | undefined>;
}

export function nodeShelf(): NodeShelf {
    const records = new Map<string, { readonly stamp: string; readonly record: FrozenRecord | undefined }>();
    const live = new Map<string, { readonly stamps: ReadonlyMap<string, string>; readonly report: IssuedReport }>();
    const found = new Map<string, { readonly place: Place | undefined; readonly at: number }>();

    /** The newest readable record of a report in an `issued` folder. */
    const newestIn = async (number: string, issued: string): Promise<FrozenRecord | undefined> => {
        for (const { name } of await issueFoldersOf(number, issued)) {
            const folder = join(issued, name);
            const stamp = `${await stampOf(join(folder, recordName))} ${await stampOf(join(folder, manifestName))}`;
            let kept = records.get(folder);
            if (kept?.stamp !== stamp) {
                kept = { stamp, record: await readRecord(folder) };
                records.set(folder, kept);
            }
            if (kept.record && printedNumber(kept.record.document.survey?.number ?? '') === number) {
                return kept.record;
            }
        }
        return undefined;
    };
    // A text that is not saved yet has nothing beside it.
    const isSaved = (mainUri: string) => mainUri.startsWith('file:');
    const lastRecord = async (written: string, mainUri: string) => {
        const number = printedNumber(written);
        return number !== '' && isSaved(mainUri) ? newestIn(number, join(dirname(pathOf(mainUri)), issuedFolder)) : undefined;
    };

    const liveReport = async (path: string, mainUri: string): Promise<IssuedReport | undefined> => {
        const kept = live.get(path);
        if (kept && (await Promise.all([...kept.stamps].map(async ([file, stamp]) => await stampOf(file) === stamp))).every(Boolean)) {
            return kept.report;
        }
        const read = await readLive(path, mainUri);
        if (read) {
            live.set(path, read);
        }
        return read?.report;
    };
    const reportAt = async (place: Place, number: string, mainUri: string): Promise<IssuedReport | undefined> => {
        if (place.type === 'live') {
            return liveReport(place.path, mainUri);
        }
        const record = await newestIn(number, place.path);
        return record && reportOf(record, mainUri);
    };

    return {
        lastRecord,
        async lastIssue(number, mainUri) {
            const record = await lastRecord(number, mainUri);
            return record && reportOf(record, mainUri);
        },
        async followed(written, mainUri) {
            const number = printedNumber(written);
            if (number === '' || !isSaved(mainUri)) {
                return undefined;
            }
            const key = JSON.stringify([number, mainUri]);
            const before = found.get(key);
            // A report issued since stands before a survey that may be edited, so that one is looked for again now and then.
            const isFresh = before !== undefined && (before.place?.type === 'issued' || Date.now() - before.at < searchAgainMs);
            if (isFresh) {
                const report = before.place && await reportAt(before.place, number, mainUri);
                if (!before.place || report && printedNumber(report.number) === number) {
                    return report;
                }
            }
            const place = await search(number, pathOf(mainUri), newestIn);
            found.set(key, { place, at: Date.now() });
            return place && reportAt(place, number, mainUri);
        },
    };
}

type Place = { readonly type: 'issued' | 'live'; readonly path: string };

const reportOf = ({ document, folder, isFrozen }: FrozenRecord, mainUri: string): IssuedReport => issuedReportOf(document, { source: placeName(folder, mainUri), isFrozen });

/** A path as a surveyor knows it: from the folder of the survey. */
function placeName(path: string, mainUri: string): string {
    return (relative(dirname(pathOf(mainUri)), path) || basename(path)).replaceAll('\\', '/');
}

async function stampOf(path: string): Promise<string> {
    try {
        const { size, mtimeMs, ctimeMs } = await stat(path);
        return `${size}:${mtimeMs}:${ctimeMs}`;
    } catch {
        return 'none';
    }
}

/** The record in a folder of an issue; undefined where there is none or it cannot be read. */
export async function readRecord(folder: string): Promise<FrozenRecord | undefined> {
    try {
        const bytes = await readFile(join(folder, recordName));
        // Only version 1 is ever written; what is used of it is looked at here.
        const document = JSON.parse(bytes.toString('utf8')) as RecordDocument;
        if (document.version !== 1 || !Array.isArray(document.findings) || !Array.isArray(document.components)) {
            return undefined;
        }
        return { document, folder, isFrozen: await isAsFrozen(folder, bytes) };
    } catch {
        return undefined;
    }
}

async function isAsFrozen(folder: string, record: Uint8Array): Promise<boolean> {
    try {
        const manifest = parseManifest(await readFile(join(folder, manifestName), 'utf8'));
        return manifest.files.some(file => file.role === 'record' && file.path === recordName && file.sha256 === sha256(record));
    } catch {
        return false;
    }
}

async function readLive(path: string, mainUri: string): Promise<{ readonly stamps: ReadonlyMap<string, string>; readonly report: IssuedReport } | undefined> {
    try {
        const { parsed, texts } = await load([path]);
        const uri = addressOf(path);
        const files = new Map([...parsed].map(([at, { file }]) => [at, file]));
        const root = files.get(uri)?.root;
        if (!root || !isMainFile(root)) {
            return undefined;
        }
        const document = recordJson(analyseSurvey(uri, files), { position: (at, offset) => positionIn(texts.get(at) ?? '', offset), name: at => fileName(at, uri) });
        const stamps = new Map(await Promise.all([...texts.keys()].map(async at => [pathOf(at), await stampOf(pathOf(at))] as const)));
        return { stamps, report: issuedReportOf(document, { source: placeName(path, mainUri), isFrozen: false }) };
    } catch {
        return undefined; // Gone meanwhile, or not to be read.
    }
}

/** Where a report lies: an `issued` folder that holds it, else a survey of that number. Nearest first. */
async function search(number: string, mainPath: string, newestIn: (number: string, issued: string) => Promise<FrozenRecord | undefined>): Promise<Place | undefined> {
    const head = new RegExp(`(?:^|[\\s}])survey\\s+"\\s*${number.replace(/[\\"{}]/g, '\\$&').replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}\\s*"`, 'm');
    const seen = new Set<string>();
    let survey: string | undefined;
    let folder = dirname(mainPath);
    for (let level = 0; level <= levelsUp; level++) {
        let pending = [folder];
        for (let depth = 0; depth <= levelsDown + level && pending.length > 0; depth++) {
            const next: string[] = [];
            for (const at of pending) {
                if (seen.size >= mostFolders) {
                    return survey === undefined ? undefined : { type: 'live', path: survey };
                }
                if (seen.has(at)) {
                    continue;
                }
                seen.add(at);
                for (const entry of await entriesOf(at)) {
                    const path = join(at, entry.name);
                    if (entry.isDirectory()) {
                        if (entry.name === issuedFolder) {
                            if (await newestIn(number, path)) {
                                return { type: 'issued', path };
                            }
                        } else if (!entry.name.startsWith('.') && !passedOver.has(entry.name)) {
                            next.push(path);
                        }
                    } else if (survey === undefined && entry.isFile() && entry.name.endsWith('.survey') && path !== mainPath && head.test(await headOf(path))) {
                        survey = path;
                    }
                }
            }
            pending = next;
        }
        const above = dirname(folder);
        // A repository is the whole of a firm's or of a survey's files; nobody's other folders are looked through.
        if (above === folder || above === homedir() || above === tmpdir() || dirname(above) === above || (await entriesOf(folder)).some(entry => entry.name === '.git')) {
            break;
        }
        folder = above;
    }
    return survey === undefined ? undefined : { type: 'live', path: survey };
}

async function entriesOf(folder: string) {
    try {
        return (await readdir(folder, { withFileTypes: true })).sort((a, b) => a.name < b.name ? -1 : 1);
    } catch {
        return []; // Not to be read, so nothing is found there.
    }
}

async function headOf(path: string): Promise<string> {
    try {
        const file = await open(path);
        try {
            const { bytesRead, buffer } = await file.read(new Uint8Array(headBytes), 0, headBytes, 0);
            return Buffer.from(buffer.buffer, 0, bytesRead).toString('utf8');
        } finally {
            await file.close();
        }
    } catch {
        return '';
    }
}
