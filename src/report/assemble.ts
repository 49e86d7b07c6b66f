/** From an analysed survey to its report: photographs read and prepared, then everything drawn. */
import type { Analysis } from '../checks/analyse.js';
import { photosOf as namedPhotos } from '../checks/record/photos-named.js';
import { computedFacts } from '../record/computed.js';
import type { Photo, Span, SurveyRecord } from '../record/model.js';
import { photosForPreview, photosForPrint, preparePhoto, type EmbeddedPhoto, type PhotoCache, type PhotoCodec, type PhotoSize } from './photos.js';
import type { IssueStamp, Paper } from './context.js';
import { renderDocument, type DocumentKind } from './documents.js';

/** What a host gives: files, a codec, and a place where prepared photographs are kept. */
export interface PhotoSource {
    /** Bytes of a file, undefined where there is none or it cannot be read. */
    read(uri: string): Promise<Uint8Array | undefined>;
    /** The first part of a file, enough for what the camera wrote; undefined as for `read`. */
    head?(uri: string): Promise<Uint8Array | undefined>;
    /** What changes when the file does, such as its size and time; with it an unchanged file is not even read. */
    stamp?(uri: string): Promise<string | undefined>;
    readonly codec: PhotoCodec;
    readonly cache: PhotoCache;
}

export interface AssembleOptions {
    readonly photos: PhotoSource;
    readonly mode: 'preview' | 'file';
    /** One-based line of a span in its file. */
    readonly lineOf: (span: Span) => number;
    /** Which paper; the report where left out. */
    readonly document?: DocumentKind;
    readonly paper?: Paper;
    readonly issue?: IssueStamp;
}

export interface Assembled {
    readonly html: string;
    readonly mainUri: string;
    /** Open problems and gaps of error severity, and photographs that cannot be shown: with any the report is a draft. */
    readonly openErrors: number;
    /** Photographs that could not be read, each with the reason. The report says so where they should stand. */
    readonly photoFaults: readonly string[];
}

export async function assembleReport({ record, problems, gaps }: Analysis, { photos: source, mode, lineOf, document = 'report', paper, issue }: AssembleOptions): Promise<Assembled> {
    const photos = new Map<string, EmbeddedPhoto>();
    for (const { file } of photosOf(record)) {
        if (!photos.has(file)) {
            photos.set(file, await prepare(file, record, source, mode === 'preview' ? photosForPreview : photosForPrint));
        }
    }
    const photoFaults = [...photos.values()].flatMap(photo => 'error' in photo ? [photo.error] : []);
    const html = renderDocument(document, {
        record, problems, gaps, photos, mode, computed: computedFacts(record), ...(paper ? { paper } : {}), ...(issue ? { issue } : {}), lineOf: span => ({ file: fileName(span.uri, record.mainUri), line: lineOf(span) }),
    });
    return {
        html, mainUri: record.mainUri, photoFaults,
        openErrors: problems.filter(p => p.severity === 'error' && p.answeredBy === undefined).length + gaps.filter(g => g.severity === 'error').length
            // A file that is not there is a problem already, where files could be read before.
            + [...photos].filter(([file, photo]) => 'error' in photo && !record.photoFacts.get(file)?.isMissing).length,
    };
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
        const key = mark === undefined ? undefined : `${address} ${mark} ${size.maxEdge} ${size.quality}`;
        const known = key === undefined ? undefined : await source.cache.get(key);
        if (known) {
            return known;
        }
        const bytes = await source.read(address);
        if (bytes) {
            const photo = await preparePhoto(bytes, source.codec, { ...size, file, cache: source.cache });
            if (key !== undefined) {
                await source.cache.set(key, photo);
            }
            return photo;
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
