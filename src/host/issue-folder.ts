/**
 * The folder of an issue: how it is named, what its manifest says, and how issues are found beside a survey. Making
 * one is `issue.ts`, comparing one with its manifest `verify.ts`.
 */
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { printable } from '../report/html.js';

export const issuedFolder = 'issued';
export const manifestName = 'manifest.json';
/** Digests of the manifest and of its signature, as `sha256sum` writes and checks them. */
export const digestName = 'manifest.sha256';
export const recordName = 'record.json';
/** Signatures lie beside the manifest, by what made them. */
export const signatureNames = { ssh: 'manifest.json.sig', openpgp: 'manifest.json.asc' } as const;

export type FileRole = 'source' | 'photo' | 'mark' | 'output' | 'record';

export interface ManifestFile {
    /** Of an output or the record its path in the issue's folder; of a source, photo or mark its path beside the survey's main file. Forward slashes. */
    readonly path: string;
    readonly role: FileRole;
    /** In hexadecimal. */
    readonly sha256: string;
    readonly bytes: number;
    /** Of a source: its copy in the issue's folder. */
    readonly frozen?: string;
}

export interface Manifest {
    readonly kind: 'garboard-issue';
    readonly version: 1;
    /** Version of Garboard that made it. */
    readonly garboard: string;
    /** `number` of the report; `main` is the name of its main file. */
    readonly survey: { readonly number: string; readonly kind?: string; readonly main: string };
    readonly vessel: { readonly name: string; readonly hullNumber?: string };
    readonly issue: number;
    /** ISO date. */
    readonly date: string;
    /** The surveyor who signs, by name. */
    readonly signedBy: string;
    readonly firm?: string;
    /** The issue before it, by the digest of its manifest: a later issue thus vouches for the earlier ones. */
    readonly previous?: { readonly issue: number; readonly folder: string; readonly manifestSha256: string };
    readonly files: readonly ManifestFile[];
}

/** The number of a report as it is printed and kept in a record: without signs that no reader sees, and blanks at its ends. */
export const printedNumber = (number: string): string => printable(number).trim();

/** Names that Windows keeps for devices, whatever follows the first dot. */
const device = /^(?:CON|PRN|AUX|NUL|COM\d|LPT\d)(?:\.|$)/i;
const longestStem = 60;

/**
 * The number of a report as the beginning of a file name on any system. Different numbers give different names where
 * case does not count, too: what is not plain capitals and digits carries a digest of the number.
 */
export function fileStem(number: string): string {
    if (/^[A-Z0-9][A-Z0-9._-]*$/.test(number) && number.length <= longestStem && !device.test(number)) {
        return number;
    }
    const plain = number.normalize('NFKD').replace(/\p{M}/gu, '').replace(/[^A-Za-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, longestStem - 12);
    // The x keeps it apart from every plain number, which has capitals only.
    return `${plain === '' ? 'report' : plain}-x${createHash('sha256').update(number).digest('hex').slice(0, 10)}`;
}

export const issueFolderName = (number: string, issue: number): string => `${fileStem(number)}-issue-${issue}`;

/** Folders of issues of a report in an `issued` folder, the newest first; none where there is no such folder. */
export async function issueFoldersOf(number: string, issued: string): Promise<{ readonly issue: number; readonly name: string }[]> {
    const start = `${fileStem(number)}-issue-`;
    let entries;
    try {
        entries = await readdir(issued, { withFileTypes: true });
    } catch {
        return []; // Nothing is issued yet, or nothing can be read: issuing itself will say so.
    }
    return entries.flatMap(entry => {
        const turn = entry.isDirectory() && entry.name.startsWith(start) ? /^[1-9]\d{0,3}$/.exec(entry.name.slice(start.length))?.[0] : undefined;
        return turn === undefined ? [] : [{ issue: Number(turn), name: entry.name }];
    }).sort((a, b) => b.issue - a.issue);
}

export const sha256 = (bytes: string | Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Digest and length of a file, read in pieces. @throws where it cannot be read. */
export function sha256OfFile(path: string): Promise<{ readonly sha256: string; readonly bytes: number }> {
    return new Promise((resolve, reject) => {
        const hash = createHash('sha256');
        let bytes = 0;
        createReadStream(path).on('data', piece => {
            hash.update(piece);
            bytes += piece.length;
        }).on('error', reject).on('end', () => resolve({ sha256: hash.digest('hex'), bytes }));
    });
}

/** Content of `manifest.sha256`. */
export const digestLines = (files: readonly { readonly name: string; readonly sha256: string }[]): string => files.map(file => `${file.sha256}  ${file.name}\n`).join('');

/** Whether a path stays in the folder it is seen from, on any system: no root, no drive, no way up, no sign that Windows would read otherwise. */
export function isInside(path: string): boolean {
    return path !== '' && !/[\\:*?"<>|\u0000-\u001f]/.test(path) && path.split('/').every(part => part !== '' && part !== '.' && part !== '..' && !/[. ]$/.test(part));
}

const picture = /\.(?:jpe?g|jpe|jfif|png|webp|hei[cf]|avif|tiff?|gif|bmp|svg)$/i;

/** Whether a path beside the main file is one that a survey may use: a survey or a picture, at most eight folders up. */
function isOfWork(path: string, role: FileRole): boolean {
    const down = path.replace(/^(?:\.\.\/){1,8}/, '');
    const isFit = !/[\\\u0000-\u001f]/.test(down) && !/^(?:\/|[A-Za-z]:)/.test(down) && down.split('/').every(part => part !== '' && part !== '.' && part !== '..');
    return isFit && (role === 'source' ? /\.survey$/.test(down) : picture.test(down));
}

/** Reads a manifest. A manifest that could lead anywhere else than to its survey's files is refused. @throws Error that says what is wrong with it. */
export function parseManifest(text: string): Manifest {
    let manifest: Partial<Manifest> | null;
    try {
        // Every part that is used is looked at below.
        manifest = JSON.parse(text) as Partial<Manifest> | null;
    } catch (error) {
        throw new Error(`it is not JSON (${error instanceof Error ? error.message : String(error)})`);
    }
    if (typeof manifest !== 'object' || manifest === null || manifest.kind !== 'garboard-issue') {
        throw new Error('it is not the manifest of an issue');
    }
    if (manifest.version !== 1) {
        throw new Error(`it is of version ${String(manifest.version)}, which this Garboard does not know; use a newer one`);
    }
    const { survey, vessel, issue, date, signedBy, files, previous } = manifest;
    const isText = (value: unknown): value is string => typeof value === 'string';
    if (!isText(survey?.number) || !isText(survey.main) || !isText(vessel?.name) || !Number.isSafeInteger(issue) || !isText(date) || !/^\d{4}-\d{2}-\d{2}$/.test(date) || !isText(signedBy) || !Array.isArray(files)
        || previous !== undefined && (!Number.isSafeInteger(previous.issue) || !isText(previous.folder) || !isInside(previous.folder) || previous.folder.includes('/') || !isText(previous.manifestSha256))) {
        throw new Error('parts of it are missing or are not what they should be');
    }
    if (!files.some(file => file?.role === 'record' && file.path === recordName) || !files.some(file => file?.role === 'output')) {
        throw new Error(`it names no report or no ${recordName}, which every issue has`);
    }
    for (const file of files as readonly Partial<ManifestFile>[]) {
        const { path, role, frozen } = file ?? {};
        if (!isText(path) || !isText(role) || !/^[0-9a-f]{64}$/.test(String(file.sha256)) || !Number.isSafeInteger(file.bytes) || !['source', 'photo', 'mark', 'output', 'record'].includes(role)) {
            throw new Error('an entry of its files is not what it should be');
        }
        const isFit = role === 'output' || role === 'record' ? isInside(path) && frozen === undefined : isOfWork(path, role) && (role === 'source' ? isText(frozen) && isInside(frozen) : frozen === undefined);
        if (!isFit) {
            throw new Error(`${JSON.stringify(path)}${frozen === undefined ? '' : ` or ${JSON.stringify(frozen)}`} leads out of the issue’s folder, or to what is no survey and no picture`);
        }
    }
    return manifest as Manifest; // Looked at part by part above.
}
