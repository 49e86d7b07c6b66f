/**
 * Issues a report: everything it was made from and all that was made is frozen in a folder of its own beside the
 * survey, with a manifest of digests. The folder is built under a name of its own and then renamed once, so that an
 * issue is there whole or not at all, whenever the work is cut off.
 */
import { randomBytes } from 'node:crypto';
import { lstat, mkdir, open, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, extname, isAbsolute, join, relative } from 'node:path';
import { version } from '../../package.json';
import type { Analysis } from '../checks/analyse.js';
import { analyseSurvey, recordOf } from '../checks/survey.js';
import { parseFigure, type DateFigure } from '../quantities/index.js';
import { isMainFile } from '../record/documents.js';
import { isSameMatter } from '../record/earlier-findings.js';
import type { PhotoFacts, Span, SurveyRecord } from '../record/model.js';
import { fileName, photoAddresses, photosOf, type PhotoSource } from '../report/assemble.js';
import { changesBetween } from '../report/changes.js';
import type { IssueStamp, Paper } from '../report/context.js';
import { issuedReportOf } from '../report/issued-report.js';
import { readOutsideFacts } from '../report/outside.js';
import { listProblems } from '../report/problem-list.js';
import { recordJson, recordText, type RecordDocument } from '../report/record-json.js';
import type { NamedBrowser } from './browser.js';
import { addressOf, fileTrouble, load, makeFolder, pathOf, positionIn } from './files.js';
import { makeForms, type FormStep, type OutputForm } from './forms.js';
import {
    digestLines, digestName, issuedFolder, issueFolderName, issueFoldersOf, manifestName, parseManifest, printedNumber, recordName, sha256, sha256OfFile, type Manifest, type ManifestFile,
} from './issue-folder.js';
import { nodeShelf, readRecord, type FrozenRecord, type NodeShelf } from './shelf.js';
import { signManifest, type SigningKey } from './signing.js';

export interface IssueOptions {
    /** Forms to freeze; HTML is always among them, and the record as JSON. */
    readonly forms?: readonly OutputForm[];
    /** ISO date where the survey gives none. */
    readonly date?: string;
    /** Today by the user's clock, as an ISO date: the date of issue where neither survey nor `date` gives one. */
    readonly today: string;
    /** Name of who signs, where it is not the surveyor of the survey. */
    readonly signedBy?: string;
    /** Signs the manifest with git's signing tool, or the key named. */
    readonly sign?: SigningKey;
    readonly photos: PhotoSource;
    readonly shelf?: NodeShelf;
    readonly paper?: Paper;
    readonly browser?: NamedBrowser;
    readonly signal?: AbortSignal;
    readonly onProgress?: (step: FormStep) => void;
}

/** A reason not to issue: what is wrong and how to mend it, and where that is known. */
export interface Refusal {
    readonly message: string;
    /** Path beside the main file, one-based line and column. */
    readonly at?: { readonly file: string; readonly line: number; readonly column: number };
}

export type IssueResult =
    | { readonly state: 'refused'; readonly refusals: readonly Refusal[] }
    | {
        readonly state: 'issued'; readonly folder: string; readonly number: string; readonly issue: number; readonly date: string; readonly signedBy: string;
        /** Digest of the manifest: kept elsewhere, as in the letter the report goes out with, it vouches for all. */
        readonly manifestSha256: string;
        /** File of the signature. */
        readonly signature?: string;
        /** Changes told against the issue before; undefined for a first issue. */
        readonly changes?: number;
    };

class Refused extends Error {
    constructor(readonly refusals: readonly Refusal[]) {
        super(refusals.map(({ message }) => message).join('\n'));
    }
}

/**
 * Issues the report of the survey with this main file.
 * @throws Error where a file cannot be read or written, or a form cannot be made; DOMException "AbortError" where the signal says stop. Nothing is left behind then.
 */
export async function issueReport(file: string, options: IssueOptions): Promise<IssueResult> {
    try {
        return await issue(file, options);
    } catch (error) {
        if (error instanceof Refused) {
            return { state: 'refused', refusals: error.refusals };
        }
        throw error;
    }
}

const refuse = (message: string, at?: Refusal['at']): never => {
    throw new Refused([{ message, ...(at ? { at } : {}) }]);
};

interface Survey {
    readonly main: string;
    readonly folder: string;
    readonly analysis: Analysis;
    readonly texts: ReadonlyMap<string, string>;
    readonly pictures: readonly Picture[];
    readonly place: (span: Span) => NonNullable<Refusal['at']>;
}

/** A picture that goes into the report, as it was when it was looked at. */
interface Picture {
    readonly path: string;
    readonly role: 'photo' | 'mark';
    readonly sha256: string;
    readonly bytes: number;
    readonly stamp: string;
}

async function issue(file: string, options: IssueOptions): Promise<IssueResult> {
    const { forms = ['html'], photos, shelf = nodeShelf(), signal } = options;
    const survey = await readSurvey(file, photos, shelf);
    const { analysis, folder } = survey;
    const { record } = analysis;
    const issued = join(folder, issuedFolder);
    const number = printedNumber(record.survey?.number ?? '');
    const earlier = number === '' ? [] : await earlierIssues(number, issued);
    const stamp = stampOf(survey, earlier, options);
    const after = recordJson(analysis, { ...positions(survey), issue: stamp });
    const last = earlier[0]?.document;
    const changes = last && changesBetween(last, after).filter(change => !change.followsFromIssue);
    if (changes?.length === 0) {
        refuse(`Nothing that is recorded differs from issue ${last?.issue?.number ?? ''}, so there is nothing to amend; send that issue again.`);
    }
    const made = await makeForms(analysis, {
        forms: [...new Set<OutputForm>(['html', ...forms.filter(form => form !== 'json')])], document: 'report', issue: stamp, photos, position: positions(survey).position,
        ...(last ? { lastRecord: last } : {}), ...(options.paper ? { paper: options.paper } : {}), ...(options.browser ? { browser: options.browser } : {}), ...(signal ? { signal } : {}),
        ...(options.onProgress ? { onProgress: options.onProgress } : {}),
    });
    if (made.openErrors > 0) {
        throw new Refused(made.photoFaults.map(message => ({ message })));
    }
    const sources = await readSources(survey);
    await lookAgain(survey.pictures, folder);

    const outputs = [...[...made.contents].map(([form, content]) => ({ path: `report.${form}`, role: 'output' as const, content })), { path: recordName, role: 'record' as const, content: recordText(after) }];
    const manifest: Manifest = {
        kind: 'garboard-issue', version: 1, garboard: version, survey: { number, ...(record.survey?.surveyKind === undefined ? {} : { kind: record.survey.surveyKind }), main: fileName(survey.main, survey.main) },
        vessel: vesselOf(after), issue: stamp.number, date: stamp.date.iso, signedBy: stamp.signedBy ?? '', ...(after.firm ? { firm: after.firm.name } : {}), ...(earlier[0] ? { previous: await previousOf(earlier[0]) } : {}),
        files: [
            ...outputs.map(({ path, role, content }): ManifestFile => ({ path, role, sha256: sha256(content), bytes: Buffer.byteLength(content) })),
            ...sources.map(({ path, frozen, content }): ManifestFile => ({ path, role: 'source', sha256: sha256(content), bytes: content.length, frozen })),
            ...survey.pictures.map(({ path, role, sha256: digest, bytes }): ManifestFile => ({ path, role, sha256: digest, bytes })),
        ],
    };
    const manifestText = `${JSON.stringify(manifest, undefined, 2)}\n`;
    parseManifest(manifestText); // What verifying would refuse is not issued.
    signal?.throwIfAborted();
    const name = issueFolderName(number, stamp.number);
    const signature = await freeze(issued, name, [...outputs, ...sources.map(({ frozen, content }) => ({ path: frozen, content })), { path: manifestName, content: manifestText }], options.sign);
    return {
        state: 'issued', folder: join(issued, name), number, issue: stamp.number, date: stamp.date.iso, signedBy: stamp.signedBy ?? '', manifestSha256: sha256(manifestText),
        ...(signature === undefined ? {} : { signature }), ...(changes ? { changes: changes.length } : {}),
    };
}

const positions = ({ main, texts }: Survey) => ({
    position: (uri: string, offset: number) => positionIn(texts.get(uri) ?? '', offset), name: (uri: string) => fileName(uri, main),
});

async function readSurvey(file: string, photos: PhotoSource, shelf: NodeShelf): Promise<Survey> {
    const { parsed, texts } = await load([file]);
    const main = addressOf(file);
    const files = new Map([...parsed].map(([uri, each]) => [uri, each.file]));
    const root = files.get(main)?.root;
    if (!root || !isMainFile(root)) {
        refuse(`${basename(file)} has no survey block; name the survey’s main file, the one that begins with survey "…".`);
    }
    const bare = recordOf(main, files);
    const folder = dirname(pathOf(main));
    const pictures = await readPictures(bare, folder);
    const outside = await readOutsideFacts(bare, photos, shelf);
    const facts = new Map<string, PhotoFacts>([...outside.photos ?? []].map(([name, known]) => {
        const digest = pictures.byFile.get(name)?.sha256;
        return [name, digest === undefined ? known : { ...known, sha256: digest }];
    }));
    const analysis = analyseSurvey(main, files, { ...outside, photos: facts });
    return {
        main, folder, texts, pictures: pictures.all, analysis: { ...analysis, gaps: [...[...parsed.values()].flatMap(each => each.gaps), ...analysis.gaps] },
        place: span => ({ file: fileName(span.uri, main), ...positionIn(texts.get(span.uri) ?? '', span.start) }),
    };
}

/** Path from the folder of the main file, with forward slashes. Refused where it leads to another drive. */
function pathFrom(folder: string, path: string): string {
    const from = relative(folder, path);
    return isAbsolute(from) ? refuse(`${path} lies on another drive than the survey; put it beside the survey, so that an issue can name it.`) : from.replaceAll('\\', '/');
}

async function readPictures(record: SurveyRecord, folder: string): Promise<{ readonly all: readonly Picture[]; readonly byFile: ReadonlyMap<string, Picture> }> {
    const byPath = new Map<string, Picture>();
    const byFile = new Map<string, Picture>();
    const look = async (uri: string, role: Picture['role']): Promise<Picture | undefined> => {
        const path = pathOf(uri);
        try {
            const stamp = await stampOfFile(path);
            const picture = { path: pathFrom(folder, path), role, stamp, ...await sha256OfFile(path) };
            byPath.set(path, picture);
            return picture;
        } catch (error) {
            if (error instanceof Refused) {
                throw error;
            }
            return undefined; // Not there: the report says so, and is not issued.
        }
    };
    for (const { file } of photosOf(record)) {
        for (const address of byFile.has(file) ? [] : photoAddresses(file, record)) {
            const picture = byPath.get(pathOf(address)) ?? await look(address, 'photo');
            if (picture) {
                byFile.set(file, picture);
                break;
            }
        }
    }
    const { firm } = record.vocabulary;
    const mark = firm?.facts.get('mark')?.values[0];
    if (firm && mark?.type === 'text' && mark.prose.text.trim() !== '') {
        await look(new URL(mark.prose.text.trim().replaceAll('\\', '/').split('/').map(encodeURIComponent).join('/'), firm.span.uri).href, 'mark');
    }
    return { all: [...byPath.values()], byFile };
}

async function stampOfFile(path: string): Promise<string> {
    const { size, mtimeMs, ctimeMs } = await stat(path);
    return `${size}:${mtimeMs}:${ctimeMs}`;
}

/** Pictures must be the ones that were read into the report. */
async function lookAgain(pictures: readonly Picture[], folder: string): Promise<void> {
    for (const { path, stamp } of pictures) {
        if (await stampOfFile(join(folder, ...path.split('/'))).catch(() => '') !== stamp) {
            refuse(`${path} was changed while the report was made; issue it again.`);
        }
    }
}

/** Issues of the report made before, the newest first. Refused where one of them cannot be relied on any more. */
async function earlierIssues(number: string, issued: string): Promise<readonly FrozenRecord[]> {
    const folders = await issueFoldersOf(number, issued);
    return Promise.all(folders.map(async ({ name }) => {
        const record = await readRecord(join(issued, name));
        if (!record?.isFrozen || printedNumber(record.document.survey?.number ?? '') !== number || !record.document.issue) {
            return refuse(`${issuedFolder}/${name} is no longer as it was issued: its record ${record ? 'differs from its manifest' : 'cannot be read'}. Restore it from a copy before another issue is made; garboard verify tells what changed.`);
        }
        return record;
    }));
}

async function previousOf({ document, folder }: FrozenRecord): Promise<NonNullable<Manifest['previous']>> {
    return { issue: document.issue?.number ?? 0, folder: basename(folder), manifestSha256: sha256(await readFile(join(folder, manifestName))) };
}

function vesselOf({ vessel }: RecordDocument): Manifest['vessel'] {
    const hullNumber = vessel?.facts['hull-number']?.[0]?.text;
    return { name: vessel?.name ?? '', ...(hullNumber === undefined ? {} : { hullNumber }) };
}

/** Number, date and signature of the issue. Refused, with every reason there is, where the survey is not ready for it. */
function stampOf(survey: Survey, earlier: readonly FrozenRecord[], options: IssueOptions): IssueStamp {
    const { analysis, place } = survey;
    const { record } = analysis;
    const head = record.survey;
    const refusals: Refusal[] = listProblems([analysis], [], { ...positions(survey), files: record.uris }).flatMap(({ file, problems }) => problems
        .filter(problem => problem.severity === 'error' && problem.answeredBy === null).map(({ line, column, message }) => ({ at: { file, line, column }, message })));
    const add = (message: string, span: Span | undefined) => refusals.push({ message, ...(span ? { at: place(span) } : {}) });
    if (printedNumber(head?.number ?? '') === '') {
        add('The report has no number; write it after survey, as in survey "TC-2026-041" pre-purchase.', head?.span);
    }
    const last = earlier[0]?.document.issue;
    const number = (last?.number ?? 0) + 1;
    const written = head?.facts.get('issue')?.values[0];
    if (written?.type === 'quantity' && written.si !== number) {
        add(`The survey says issue: ${written.figure.written}, and this is issue ${number}${last ? `, for issue ${last.number} of ${last.date} is made` : ', for none is made yet'}. Write issue: ${number}, or take the line out.`, head?.facts.get('issue')?.span);
    }
    const date = dateOf(survey, last, options, add);
    const signedBy = signerOf(record, options, add);
    for (const message of numbersUsedAgain(record, earlier)) {
        add(message.text, message.span);
    }
    if (refusals.length > 0 || !date) {
        throw new Refused(refusals);
    }
    return { number, date, ...(signedBy === undefined ? {} : { signedBy }) };
}

type Add = (message: string, span: Span | undefined) => void;

function dayOf(written: string): DateFigure | undefined {
    const parsed = parseFigure(written);
    return parsed.ok && parsed.figure.kind === 'date' && parsed.figure.precision === 'day' ? parsed.figure : undefined;
}

function dateOf({ analysis: { record } }: Survey, last: RecordDocument['issue'] | undefined, { date: given, today }: IssueOptions, add: Add): DateFigure | undefined {
    const fact = record.survey?.facts.get('issued');
    const written = fact?.values[0];
    if (written?.type === 'date' && written.figure.precision !== 'day') {
        add(`issued: ${written.figure.written} does not name the day; write it in full, as 2026-10-13, or take the line out.`, fact?.span);
        return undefined;
    }
    const asked = given === undefined ? undefined : dayOf(given);
    if (given !== undefined && !asked) {
        add(`--date ${given} is no day; write it as 2026-10-13.`, undefined);
        return undefined;
    }
    if (written?.type === 'date' && asked && written.figure.iso !== asked.iso) {
        add(`The survey says issued: ${written.figure.written}, and --date says ${asked.iso}. Change one of them.`, fact?.span);
        return undefined;
    }
    const date = written?.type === 'date' ? written.figure : asked ?? dayOf(today);
    if (date && date.iso > dayAfter(today)) {
        add(`${date.iso} is after today, ${today} by the clock of this machine, and a report is not dated ahead. ${written ? 'Write the day of this issue after issued:, or take the line out' : 'Give the day of this issue after --date, or leave it out'}; or set the clock.`, fact?.span);
        return undefined;
    }
    const attended = record.survey?.attendances.map(each => each.date?.iso ?? '').sort().at(-1) ?? '';
    // Where the survey itself says issued:, a check compares the two.
    if (date && !written && date.iso < attended) {
        add(`${date.iso} is before ${attended}, the last attendance, so the report would be dated before what it tells. Give the day of this issue after --date, or correct the attendance.`, record.survey?.span);
        return undefined;
    }
    if (date && last && date.iso < last.date) {
        add(`${date.iso} is before ${last.date}, the date of issue ${last.number}. ${written ? 'Write the day of this issue after issued:, or take the line out.' : 'Write issued: and the day of this issue in the survey block.'}`, fact?.span);
        return undefined;
    }
    if (date && last && written && date.iso === last.date && date.iso !== today) {
        add(`issued: ${written.type === 'date' ? written.figure.written : date.iso} is still the date of issue ${last.number}. Write the day of this issue, or take the line out.`, fact?.span);
        return undefined;
    }
    return date;
}

/** The day after an ISO date: elsewhere it has begun already. */
function dayAfter(iso: string): string {
    return new Date(Date.parse(`${iso}T00:00:00Z`) + 86_400_000).toISOString().slice(0, 10);
}

/** Names of those who may sign, the surveyor first and then the reviewer. Empty where the survey names no surveyor: it is open then who signs. */
export function signersOf({ survey, vocabulary }: SurveyRecord): readonly string[] {
    const [surveyor, reviewer] = ['surveyor', 'reviewer'].map(property => {
        const value = survey?.facts.get(property)?.values[0];
        return value?.type === 'person' ? vocabulary.people.get(value.id)?.name ?? value.id : undefined;
    });
    return surveyor === undefined ? [] : [...new Set([surveyor, reviewer ?? surveyor])];
}

function signerOf(record: SurveyRecord, { signedBy }: IssueOptions, add: Add): string | undefined {
    const { survey } = record;
    const signers = signersOf(record);
    const [surveyor] = signers;
    const given = signedBy?.trim();
    if (surveyor === undefined && !given) {
        add('The survey does not say who signs; write surveyor: and the id of a person of the house file in the survey block.', survey?.span);
        return undefined;
    }
    if (given && surveyor !== undefined && !signers.includes(given)) {
        add(`${given} is neither the surveyor of the survey, ${surveyor}, nor its reviewer. The report names who signs: change surveyor: in the survey, or have one of them sign.`, survey?.facts.get('surveyor')?.span);
        return undefined;
    }
    return given || surveyor;
}

/** Findings under a number that an issue before the last gave to another matter; a check looks at the last one itself. */
function* numbersUsedAgain(record: SurveyRecord, earlier: readonly FrozenRecord[]): Generator<{ readonly text: string; readonly span: Span }> {
    for (const finding of record.findings) {
        for (const { document, folder } of earlier.slice(1)) {
            const issued = issuedReportOf(document, { source: basename(folder), isFrozen: true }).findings.find(({ id }) => id === finding.id);
            const isKept = earlier[0]?.document.findings.some(({ id }) => id === finding.id);
            if (issued && !isKept && !isSameMatter(finding, issued)) {
                yield { span: finding.idSpan, text: `${finding.id} is “${finding.title}” here and was “${issued.title}” in issue ${document.issue?.number ?? ''}. Numbers never change: give this finding a number that no issue has used.` };
                break;
            }
        }
    }
}

interface Source {
    /** From the folder of the main file. */
    readonly path: string;
    /** Its copy, in the folder of the issue. */
    readonly frozen: string;
    readonly content: Buffer;
}

/** The source files, byte by byte. Refused where one is no longer what the report was made from. */
async function readSources({ texts, folder, main }: Survey): Promise<Source[]> {
    const taken = new Set<string>();
    const sources: Source[] = [];
    for (const [uri, text] of texts) {
        const content = await readFile(pathOf(uri));
        const now = content.toString('utf8');
        if ((now.charCodeAt(0) === 0xfeff ? now.slice(1) : now) !== text) {
            refuse(`${fileName(uri, main)} was changed while the report was made; issue it again.`);
        }
        const path = pathFrom(folder, pathOf(uri));
        sources.push({ path, frozen: frozenPath(path, taken), content });
    }
    return sources;
}

/** Where a copy lies: folders above the survey's become `above`, signs that some system does not take become dashes, and the ending keeps it from being taken for a survey. */
function frozenPath(path: string, taken: Set<string>): string {
    const parts = path.split('/').map(part => part === '..' ? 'above' : part.replace(/[\\:*?"<>|\u0000-\u001f]/g, '-').replace(/[. ]+$/, '-').replace(/^(CON|PRN|AUX|NUL|COM\d|LPT\d)(?=\.|$)/i, '$1-'));
    const plain = `sources/${parts.join('/')}`;
    const ending = extname(plain);
    for (let turn = 1; ; turn++) {
        const name = `${turn === 1 ? plain : `${plain.slice(0, plain.length - ending.length)}-${turn}${ending}`}.txt`;
        // On some systems neither case nor the way an accent is composed tells two names apart.
        const key = name.normalize('NFC').toLowerCase();
        if (!taken.has(key)) {
            taken.add(key);
            return name;
        }
    }
}

/** Folders that an interrupted run of ours left: its name, a point before it and random digits after. */
const leftover = /^\.[A-Za-z0-9._-]+-issue-\d+\.tmp-[0-9a-f]{12}$/;
/** A run takes minutes at most; what is older is no run's any more. */
const leftoverAgeMs = 60 * 60 * 1000;

async function removeLeftovers(issued: string): Promise<void> {
    for (const name of await readdir(issued)) {
        const path = join(issued, name);
        if (leftover.test(name)) {
            const info = await lstat(path).catch(() => undefined);
            if (info?.isDirectory() && Date.now() - info.mtimeMs > leftoverAgeMs) {
                await rm(path, { recursive: true, force: true });
            }
        }
    }
}

/** Writes all files into a folder of their own and gives it its name in one step. Gives the file of the signature. */
async function freeze(issued: string, name: string, files: readonly { readonly path: string; readonly content: string | Uint8Array }[], sign: SigningKey | undefined): Promise<string | undefined> {
    const building = join(issued, `.${name}.tmp-${randomBytes(6).toString('hex')}`);
    try {
        await makeFolder(issued);
        await removeLeftovers(issued);
        await mkdir(building);
    } catch (error) {
        throw notWritten(error, issued);
    }
    try {
        for (const { path, content } of files) {
            const target = join(building, ...path.split('/'));
            try {
                await mkdir(dirname(target), { recursive: true });
                await writeFile(target, content, { flag: 'wx', flush: true });
            } catch (error) {
                throw notWritten(error, join(issued, name, ...path.split('/')));
            }
        }
        const signature = sign ? await signManifest(join(building, manifestName), sign) : undefined;
        const digests = await Promise.all([manifestName, ...signature === undefined ? [] : [signature]].map(async each => ({ name: each, sha256: sha256(await readFile(join(building, each))) })));
        await writeFile(join(building, digestName), digestLines(digests), { flag: 'wx', flush: true });
        await syncFolder(building);
        try {
            // A folder that is there already and holds something is never put aside: of two runs at once one wins.
            await rename(building, join(issued, name));
        } catch (error) {
            if (await lstat(join(issued, name)).then(() => true, () => false)) {
                refuse(`${issuedFolder}/${name} was made meanwhile by another run, and stays as it is. Look at it; then issue again if anything is still to be amended.`);
            }
            throw notWritten(error, join(issued, name));
        }
        await syncFolder(issued);
        return signature;
    } catch (error) {
        await rm(building, { recursive: true, force: true }).catch(() => undefined); // What went wrong first is what is told; the next run clears up.
        throw error;
    }
}

const notWritten = (error: unknown, path: string): Error => new Error(`${fileTrouble(error, path, 'written')} Nothing is issued.`, { cause: error });

/** Has the system write a folder's entries to disk; Windows does so by itself and lets no folder be opened. */
async function syncFolder(path: string): Promise<void> {
    try {
        const folder = await open(path, 'r');
        try {
            await folder.sync();
        } finally {
            await folder.close();
        }
    } catch {
        // The files themselves are written through.
    }
}
