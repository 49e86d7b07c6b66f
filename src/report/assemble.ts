/** From an analysed survey to its report: photographs read and prepared, then everything drawn. */
import type { Analysis } from '../checks/analyse.js';
import { photosOf as namedPhotos } from '../checks/record/photos-named.js';
import { computedFacts } from '../record/computed.js';
import type { Photo, Span, SurveyRecord } from '../record/model.js';
import { knownPhoto, photosForPreview, photosForPrint, preparePhoto, type EmbeddedPhoto, type PhotoCache, type PhotoReducer, type PhotoSize } from './photos.js';
import type { IssueStamp, Paper } from './context.js';
import type { RecordDocument } from './record-document.js';
import { renderDocument, type DocumentKind } from './documents.js';
import { readFirmMark } from './firm-mark.js';

/** What a host gives: files, what reduces photographs, and a place where prepared ones are kept. */
export interface PhotoSource {
    /** Bytes of a file, undefined where there is none or it cannot be read. */
    read(uri: string): Promise<Uint8Array | undefined>;
    /** The first part of a file, enough for what the camera wrote; undefined as for `read`. */
    head?(uri: string): Promise<Uint8Array | undefined>;
    /** What changes when the file does, such as its size and time; with it an unchanged file is not even read. */
    stamp?(uri: string): Promise<string | undefined>;
    /** Asked for with the first photograph that is not known yet. */
    reducer(): Promise<PhotoReducer>;
    readonly cache: PhotoCache;
    /** How many photographs are worth working at at once; one where left out. */
    readonly atOnce?: number;
}

export interface PhotoRun {
    /** Told before the first photograph, and after each. `file` is its path as written. */
    readonly onProgress?: (done: number, total: number, file?: string) => void;
    /** Stops the work between two photographs. */
    readonly signal?: AbortSignal;
}

export interface AssembleOptions extends PhotoRun {
    readonly photos: PhotoSource;
    readonly mode: 'preview' | 'file';
    /** One-based line of a span in its file. */
    readonly lineOf: (span: Span) => number;
    /** Which paper; the report where left out. */
    readonly document?: DocumentKind;
    readonly paper?: Paper;
    readonly issue?: IssueStamp;
    /** The record of the last issue, to say what has changed since. */
    readonly lastRecord?: RecordDocument;
}

export interface Assembled {
    readonly html: string;
    readonly mainUri: string;
    /** Open problems and gaps of error severity, and photographs that cannot be shown: with any the report is a draft. */
    readonly openErrors: number;
    /** Photographs that could not be read, each with the reason. The report says so where they should stand. */
    readonly photoFaults: readonly string[];
}

/** @throws DOMException "AbortError" where the signal says stop. */
export async function assembleReport({ record, problems, gaps }: Analysis, { photos: source, mode, lineOf, document = 'report', paper, issue, lastRecord, ...run }: AssembleOptions): Promise<Assembled> {
    const photos = await preparePhotos(record, source, mode === 'preview' ? photosForPreview : photosForPrint, run);
    const firmMark = await readFirmMark(record, source);
    const markFaults = firmMark && 'error' in firmMark ? [firmMark.error] : [];
    const photoFaults = [...[...photos.values()].flatMap(photo => 'error' in photo ? [photo.error] : []), ...markFaults];
    const html = renderDocument(document, {
        record, problems, gaps, photos, mode, computed: computedFacts(record), ...(paper ? { paper } : {}), ...(issue ? { issue } : {}), ...(lastRecord ? { lastRecord } : {}), ...(firmMark ? { firmMark } : {}), lineOf: span => ({ file: fileName(span.uri, record.mainUri), line: lineOf(span) }),
    });
    return {
        html, mainUri: record.mainUri, photoFaults,
        openErrors: problems.filter(p => p.severity === 'error' && p.answeredBy === undefined).length + gaps.filter(g => g.severity === 'error').length
            // A file that is not there is a problem already, where files could be read before.
            + [...photos].filter(([file, photo]) => 'error' in photo && !record.photoFacts.get(file)?.isMissing).length + markFaults.length,
    };
}

/**
 * Every photograph that the record names, by its path as written, in the order of the record. As many are worked at at
 * once as the source says; no more than these are ever held in full.
 * @throws DOMException "AbortError" where the signal says stop.
 */
export async function preparePhotos(record: SurveyRecord, source: PhotoSource, size: PhotoSize, { onProgress, signal }: PhotoRun = {}): Promise<Map<string, EmbeddedPhoto>> {
    signal?.throwIfAborted();
    const files = [...new Set(photosOf(record).map(({ file }) => file))];
    const photos: EmbeddedPhoto[] = [];
    let next = 0;
    let done = 0;
    const work = async () => {
        for (let index = next++; index < files.length; index = next++) {
            const file = files[index] ?? '';
            photos[index] = await prepare(file, record, source, size);
            signal?.throwIfAborted();
            onProgress?.(++done, files.length, file);
        }
    };
    if (files.length > 0) {
        onProgress?.(0, files.length);
    }
    await Promise.all(Array.from({ length: Math.min(files.length, Math.max(1, source.atOnce ?? 1)) }, work));
    signal?.throwIfAborted();
    return new Map(files.map((file, index) => [file, photos[index] ?? { error: `${file}: not read` }]));
}

/** All photographs that the record names. */
export function photosOf(record: SurveyRecord): Photo[] {
    return namedPhotos(record).map(({ photo }) => photo);
}

/** Where a photograph may lie: beside the main file, or in the survey's folder of photographs. None for an address of another place. */
export function photoAddresses(file: string, record: SurveyRecord): string[] {
    const path = file.replaceAll('\\', '/');
    if (path === '' || path.startsWith('/') || /^[A-Za-z][A-Za-z0-9+.-]*:/.test(path)) {
        return [];
    }
    const base = record.mainUri.slice(0, record.mainUri.lastIndexOf('/') + 1);
    const folder = record.survey?.facts.get('photos')?.values[0];
    const inFolder = folder?.type === 'text' ? folder.prose.text.replaceAll('\\', '/').replace(/\/+$/, '') : '';
    const address = (parts: string) => base + parts.split('/').map(encodeURIComponent).join('/');
    return inFolder === '' || inFolder.startsWith('/') || inFolder.includes(':') ? [address(path)] : [address(path), address(`${inFolder}/${path}`)];
}

async function prepare(file: string, record: SurveyRecord, source: PhotoSource, size: PhotoSize): Promise<EmbeddedPhoto> {
    const addresses = photoAddresses(file, record);
    if (addresses.length === 0) {
        return { error: `${file}: name the photograph by its path beside the survey's main file` };
    }
    for (const address of addresses) {
        const mark = await source.stamp?.(address);
        const options = { size, file, cache: source.cache, ...(mark === undefined ? {} : { stamp: `${address} ${mark}` }) };
        const known = await knownPhoto(options);
        if (known) {
            return known;
        }
        const bytes = await source.read(address);
        if (bytes) {
            return preparePhoto(bytes, await source.reducer(), options);
        }
    }
    return { error: `${file}: there is no such file` };
}

/** The name of a survey's file as its surveyor knows it: the path beside the main file. */
export function fileName(uri: string, mainUri: string): string {
    const base = mainUri.slice(0, mainUri.lastIndexOf('/') + 1);
    const name = uri.startsWith(base) ? uri.slice(base.length) : uri.split('/').slice(-2).join('/');
    try {
        return decodeURIComponent(name);
    } catch {
        return name;
    }
}
