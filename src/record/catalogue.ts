/** The built-in catalogue, parsed once. */
import { EmptyFileSystem, URI } from 'langium';
import { catalogueFiles } from '../catalogue/bundled.js';
import type { SurveyFile } from '../language/generated/ast.js';
import { createGarboardServices, type GarboardCoreServices } from '../language/services.js';
import type { SourceFile } from './source.js';

export const catalogueScheme = 'garboard-catalogue';

/** Address of a catalogue file, as shown when its declaration is opened. */
export const catalogueUri = (name: string): string => `${catalogueScheme}:/${name}`;

let parsed: readonly SourceFile[] | undefined;

/** The catalogue's files, in order of name. The result is shared: its trees never change. */
export function catalogueSources(services?: GarboardCoreServices): readonly SourceFile[] {
    parsed ??= parseCatalogue(services ?? createGarboardServices(EmptyFileSystem));
    return parsed;
}

function parseCatalogue({ shared }: GarboardCoreServices): SourceFile[] {
    return Object.entries(catalogueFiles).map(([name, text]) => {
        const uri = catalogueUri(name);
        const document = shared.workspace.LangiumDocumentFactory.fromString<SurveyFile>(text, URI.parse(uri));
        const fault = document.parseResult.lexerErrors[0] ?? document.parseResult.parserErrors[0];
        if (fault) {
            throw new Error(`${name}: ${fault.message}`);
        }
        return { uri, root: document.parseResult.value, isBuiltIn: true };
    });
}

/** Text of a catalogue file, by its address. */
export function catalogueText(uri: string): string | undefined {
    return catalogueFiles[uri.slice(catalogueScheme.length + 2)];
}
