/** Links on the paths of photos and used files. Where a photo lies is decided here, for the report too. */
import { URI, UriUtils, type LangiumDocument } from 'langium';
import type { DocumentLinkProvider } from 'langium/lsp';
import type { DocumentLink } from 'vscode-languageserver-types';
import { resolveUse } from '../record/documents.js';
import type { SurveyRecord } from '../record/model.js';
import { plainText, quoteLength } from '../record/prose.js';
import { endOf, readingOf, startOf } from './roles.js';
import type { GarboardServices } from './services.js';

/** The folder a survey keeps its photos in, as written after `photos:`. */
export function photosFolder(record: SurveyRecord): string | undefined {
    const value = record.survey?.facts.get('photos')?.values[0];
    return value?.type === 'text' && value.prose.text.trim() !== '' ? value.prose.text.replaceAll('\\', '/').replace(/\/+$/, '') : undefined;
}

/**
 * Addresses a photo may have, the likeliest first: its path is relative to the survey's main file, and where no file
 * is there, to the survey's photos folder.
 */
export function photoUris(record: SurveyRecord, file: string): string[] {
    const path = file.replaceAll('\\', '/');
    const base = UriUtils.dirname(URI.parse(record.mainUri));
    const folder = photosFolder(record);
    const candidates = [UriUtils.joinPath(base, path).toString()];
    if (folder !== undefined) {
        candidates.push(UriUtils.joinPath(base, folder, path).toString());
    }
    return [...new Set(candidates)];
}

/** The first address of a photo that a file lies at; undefined where none does. */
export async function existingPhoto(services: GarboardServices, record: SurveyRecord, file: string): Promise<string | undefined> {
    for (const uri of photoUris(record, file)) {
        if (await exists(services, uri)) {
            return uri;
        }
    }
    return undefined;
}

async function exists(services: GarboardServices, uri: string): Promise<boolean> {
    try {
        return (await services.shared.workspace.FileSystemProvider.stat(URI.parse(uri))).isFile;
    } catch {
        return false;
    }
}

export class SurveyDocumentLinkProvider implements DocumentLinkProvider {
    constructor(private readonly services: GarboardServices) {}

    async getDocumentLinks(document: LangiumDocument): Promise<DocumentLink[]> {
        const { roles } = readingOf(document, this.services.parser.Lexer);
        const { textDocument } = document;
        const record = this.services.editor.Analyser.analysisOf(document.uri)?.record;
        const links: DocumentLink[] = [];
        for (const { name, token } of roles) {
            const path = name === 'use' || name === 'photo' ? plainText(token.image) : '';
            if (path === '') {
                continue;
            }
            const quote = quoteLength(token.image);
            const closed = token.image.length > quote && token.image.endsWith('"') ? quote : 0;
            const range = { start: textDocument.positionAt(startOf(token) + quote), end: textDocument.positionAt(endOf(token) - closed) };
            if (name === 'use') {
                links.push({ range, target: resolveUse(document.uri.toString(), path), tooltip: 'Open the file' });
            } else if (record) {
                const target = await existingPhoto(this.services, record, path) ?? photoUris(record, path)[0];
                links.push({ range, ...(target === undefined ? {} : { target }), tooltip: 'Open the photo' });
            }
        }
        return links;
    }
}
