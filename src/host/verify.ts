/**
 * Compares issues with their manifests, file by file: what was issued is unchanged, changed or missing, and what has
 * been put beside it. That the survey's own files have been worked on since is told apart; it is no fault of the issue.
 * Nothing outside the issue's folder and the survey's own files is read, and no link is followed.
 */
import { lstat, readdir, readFile, realpath, stat } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import {
    digestLines, digestName, issuedFolder, manifestName, parseManifest, sha256, sha256OfFile, signatureNames, type FileRole, type Manifest, type ManifestFile,
} from './issue-folder.js';
import { fileTrouble } from './files.js';
import { verifySignature, type SignatureFormat, type SignatureReport, type VerifyOptions } from './signing.js';

export type FileState = 'unchanged' | 'changed' | 'missing' | 'not-read';

export interface VerifiedFile {
    /** In the folder of the issue. */
    readonly path: string;
    readonly role: FileRole | 'manifest' | 'digest' | 'signature';
    readonly state: FileState;
    /** What is wrong, where more can be said than the state does. */
    readonly detail?: string;
}

export interface WorkingFile {
    /** Beside the survey's main file. */
    readonly path: string;
    readonly role: FileRole;
    readonly state: 'as-issued' | 'changed-since' | 'missing' | 'not-read';
}

export interface VerifiedIssue {
    readonly folder: string;
    /** `unreadable` where its manifest cannot be read; nothing can be said of its files then. */
    readonly verdict: 'unchanged' | 'changed' | 'unreadable';
    readonly number?: string;
    readonly issue?: number;
    readonly date?: string;
    readonly vessel?: string;
    readonly signedBy?: string;
    readonly manifestSha256?: string;
    readonly files: readonly VerifiedFile[];
    /** Files of the folder that the manifest does not name, links among them. */
    readonly extra: readonly string[];
    /** The survey's own files now; empty where the folder does not lie beside its survey. */
    readonly working: readonly WorkingFile[];
    /** The signature of the manifest; null where it has none. */
    readonly signature: SignatureReport | null;
    /** The issue before, by the digest that this one keeps of it; null for a first issue. */
    readonly previous: { readonly issue: number; readonly folder: string; readonly state: FileState } | null;
    /** Faults that concern no single file. */
    readonly faults: readonly string[];
}

/** Folders looked into for issues at most. */
const mostFolders = 20_000;
const passedOver: ReadonlySet<string> = new Set(['node_modules', '.git']);

/** Longest manifest, digest or signature that is read, in bytes: a hundred times what a survey with a thousand photographs has. */
const longestOwnFile = 32 * 1024 * 1024;

/** Every issue at or under a folder, in the order of their names. @throws Error where the folder cannot be read or holds no issue. */
export async function verifyIssues(folder: string, options: VerifyOptions = {}): Promise<VerifiedIssue[]> {
    const info = await stat(folder).catch((error: unknown) => { throw new Error(fileTrouble(error, folder, 'read')); });
    if (!info.isDirectory()) {
        throw new Error(`${folder} is a file; name the folder of an issue, or one that holds issues.`);
    }
    const folders = await issuesUnder(resolve(folder));
    if (folders.length === 0) {
        throw new Error(`${folder} holds no issue: no folder in it has a ${manifestName} of one. garboard issue makes them, in a folder ${issuedFolder} beside the survey.`);
    }
    const verified: VerifiedIssue[] = [];
    for (const each of folders) {
        verified.push(await verifyIssue(each, options));
    }
    return verified;
}

async function issuesUnder(start: string): Promise<string[]> {
    const found: string[] = [];
    let pending = [start];
    for (let looked = 0; pending.length > 0;) {
        const next: string[] = [];
        for (const folder of pending) {
            if (++looked > mostFolders) {
                throw new Error(`${start} holds more than ${mostFolders} folders; name one that holds the issues.`);
            }
            const entries = await readdir(folder, { withFileTypes: true }).catch((error: unknown) => {
                if (folder === start) {
                    throw new Error(fileTrouble(error, start, 'read'));
                }
                return [];
            });
            if (await isIssue(folder, entries.map(({ name }) => name))) {
                found.push(folder);
            } else {
                next.push(...entries.filter(entry => entry.isDirectory() && !passedOver.has(entry.name) && !/^\..*\.tmp-[0-9a-f]{12}$/.test(entry.name)).map(entry => join(folder, entry.name)));
            }
        }
        pending = next;
    }
    const order = new Intl.Collator('en', { numeric: true });
    return found.sort((a, b) => order.compare(a, b) || (a < b ? -1 : 1));
}

/** By what lies in it or by its name and place: an issue that has lost its manifest is still one. */
async function isIssue(folder: string, names: readonly string[]): Promise<boolean> {
    if (names.includes(digestName) || (/-issue-\d+$/.test(basename(folder)) && basename(dirname(folder)) === issuedFolder)) {
        return true;
    }
    return names.includes(manifestName) && /"garboard-issue"/.test((await readPlain(join(folder, manifestName)).catch(() => undefined))?.toString('utf8') ?? '');
}

/** Reads a file that is a file and no link. @throws Error otherwise. */
async function readPlain(path: string): Promise<Buffer> {
    const info = await lstat(path);
    if (!info.isFile()) {
        throw new Error('it is no plain file');
    }
    if (info.size > longestOwnFile) {
        throw new Error(`it has ${info.size} bytes, which is more than any of its kind needs`);
    }
    return readFile(path);
}

/** Compares one issue with its manifest. */
export async function verifyIssue(folder: string, options: VerifyOptions = {}): Promise<VerifiedIssue> {
    const bare = { folder, extra: [], working: [], signature: null, previous: null };
    let bytes: Buffer;
    try {
        bytes = await readPlain(join(folder, manifestName));
    } catch (error) {
        const isMissing = error instanceof Error && 'code' in error && error.code === 'ENOENT';
        return { ...bare, verdict: 'unreadable', files: [{ path: manifestName, role: 'manifest', state: isMissing ? 'missing' : 'not-read' }], faults: [`${manifestName} ${isMissing ? 'is missing' : `cannot be read (${error instanceof Error ? error.message : String(error)})`}, so nothing can be said of the other files; restore it from a copy.`] };
    }
    const digest = sha256(bytes);
    const own = await ownFiles(folder, digest);
    let manifest: Manifest;
    try {
        manifest = parseManifest(bytes.toString('utf8'));
    } catch (error) {
        return { ...bare, verdict: 'unreadable', manifestSha256: digest, files: own.files, faults: [`${manifestName} cannot be relied on: ${error instanceof Error ? error.message : String(error)}. Nothing that it names was read; restore it from a copy.`] };
    }
    const root = await realpath(folder);
    const files = [...own.files];
    for (const file of manifest.files) {
        if (file.role === 'output' || file.role === 'record' || file.frozen !== undefined) {
            const path = file.frozen ?? file.path;
            files.push({ path, role: file.role, ...await stateOf(root, path, file) });
        }
    }
    const signature = await signatureOf(folder, own.signatures, { ...options, date: manifest.date });
    const previous = await previousOf(folder, manifest);
    const faults = [
        ...signature?.state === 'bad' ? [`The signature is wrong: ${signature.detail}.`] : [],
        ...previous?.state === 'changed' ? [`The manifest of issue ${previous.issue}, in ${previous.folder}, is not the one that this issue was made after.`] : [],
    ];
    const isChanged = faults.length > 0 || files.some(({ state }) => state !== 'unchanged');
    return {
        folder, verdict: isChanged ? 'changed' : 'unchanged', number: manifest.survey.number, issue: manifest.issue, date: manifest.date, vessel: manifest.vessel.name, signedBy: manifest.signedBy,
        manifestSha256: digest, files, extra: await extraFiles(folder, files), working: await workingFiles(folder, manifest), signature, previous, faults,
    };
}

/** The manifest, its digest and its signatures. */
async function ownFiles(folder: string, digest: string): Promise<{ readonly files: VerifiedFile[]; readonly signatures: readonly SignatureFormat[] }> {
    const signatures: SignatureFormat[] = [];
    const expected = [{ name: manifestName, sha256: digest }];
    const files: VerifiedFile[] = [];
    const text = await readPlain(join(folder, digestName)).then(bytes => bytes.toString('latin1'), () => undefined);
    for (const [format, name] of Object.entries(signatureNames) as [SignatureFormat, string][]) {
        const bytes = await readPlain(join(folder, name)).catch(() => undefined);
        const isNamed = text?.includes(name) ?? false;
        if (bytes) {
            signatures.push(format);
            if (isNamed) {
                expected.push({ name, sha256: sha256(bytes) });
                files.push({ path: name, role: 'signature', state: text?.includes(digestLines([{ name, sha256: sha256(bytes) }])) ? 'unchanged' : 'changed' });
            } else {
                files.push({ path: name, role: 'signature', state: 'unchanged', detail: `made later, so ${digestName} does not have it` });
            }
        } else if (isNamed) {
            files.push({ path: name, role: 'signature', state: 'missing' });
        }
    }
    const own = digestLines([{ name: manifestName, sha256: digest }]);
    const manifest: VerifiedFile = text === undefined ? { path: manifestName, role: 'manifest', state: 'unchanged', detail: `without ${digestName} nothing shows it` } : { path: manifestName, role: 'manifest', state: text.startsWith(own) ? 'unchanged' : 'changed' };
    return {
        signatures,
        files: [manifest, ...files, text === undefined ? { path: digestName, role: 'digest', state: 'missing' } : { path: digestName, role: 'digest', state: text === digestLines(expected) ? 'unchanged' : 'changed' }],
    };
}

/** State of a file against its digest. `path` was found to stay inside the root, which links could still lead out of. */
async function stateOf(root: string, path: string, expected: Pick<ManifestFile, 'sha256' | 'bytes'>): Promise<Pick<VerifiedFile, 'state' | 'detail'>> {
    const full = join(root, ...path.split('/'));
    try {
        const info = await lstat(full);
        if (!info.isFile()) {
            return { state: 'changed', detail: info.isSymbolicLink() ? 'a link stands in its place; it is not followed' : 'it is no plain file' };
        }
        if (await realpath(full) !== full) {
            return { state: 'changed', detail: 'a folder on its path is a link; it is not followed' };
        }
        const { sha256: digest, bytes } = await sha256OfFile(full);
        return digest === expected.sha256 && bytes === expected.bytes ? { state: 'unchanged' } : { state: 'changed', ...bytes === expected.bytes ? {} : { detail: `${bytes} bytes instead of ${expected.bytes}` } };
    } catch (error) {
        const code = error instanceof Error && 'code' in error ? error.code : undefined;
        return code === 'ENOENT' || code === 'ENOTDIR' ? { state: 'missing' } : { state: 'not-read', detail: error instanceof Error ? error.message : String(error) };
    }
}

async function signatureOf(folder: string, formats: readonly SignatureFormat[], options: VerifyOptions): Promise<SignatureReport | null> {
    const reports: SignatureReport[] = [];
    for (const format of formats) {
        reports.push(await verifySignature(join(folder, manifestName), join(folder, signatureNames[format]), format, options));
    }
    // Of several, one that is wrong counts most.
    return reports.find(({ state }) => state === 'bad') ?? reports[0] ?? null;
}

async function previousOf(folder: string, { previous }: Manifest): Promise<VerifiedIssue['previous']> {
    if (!previous) {
        return null;
    }
    const bytes = await readPlain(join(dirname(folder), previous.folder, manifestName)).catch(() => undefined);
    return { issue: previous.issue, folder: previous.folder, state: bytes === undefined ? 'missing' : sha256(bytes) === previous.manifestSha256 ? 'unchanged' : 'changed' };
}

async function extraFiles(folder: string, files: readonly VerifiedFile[]): Promise<string[]> {
    const known = new Set(files.map(({ path }) => path));
    const extra: string[] = [];
    const look = async (at: string): Promise<void> => {
        for (const entry of (await readdir(at, { withFileTypes: true }).catch(() => [])).sort((a, b) => a.name < b.name ? -1 : 1)) {
            const path = join(at, entry.name);
            const name = relative(folder, path).split(sep).join('/');
            if (entry.isDirectory()) {
                await look(path);
            } else if (!known.has(name)) {
                extra.push(name);
            }
        }
    };
    await look(folder);
    return extra;
}

/** The survey's own files as they are now, where the issue lies beside its survey. */
async function workingFiles(folder: string, manifest: Manifest): Promise<WorkingFile[]> {
    const issued = dirname(resolve(folder));
    const root = dirname(issued);
    const isBeside = basename(issued) === issuedFolder && await lstat(join(root, basename(manifest.survey.main))).then(info => info.isFile(), () => false);
    const working: WorkingFile[] = [];
    for (const file of isBeside ? manifest.files.filter(({ role }) => role !== 'output' && role !== 'record') : []) {
        const { state } = await stateOfWork(join(root, ...file.path.split('/')), file);
        working.push({ path: file.path, role: file.role, state });
    }
    return working;
}

async function stateOfWork(path: string, expected: ManifestFile): Promise<Pick<WorkingFile, 'state'>> {
    try {
        if (!(await lstat(path)).isFile()) {
            return { state: 'changed-since' };
        }
        return { state: (await sha256OfFile(path)).sha256 === expected.sha256 ? 'as-issued' : 'changed-since' };
    } catch (error) {
        const code = error instanceof Error && 'code' in error ? error.code : undefined;
        return { state: code === 'ENOENT' || code === 'ENOTDIR' ? 'missing' : 'not-read' };
    }
}
