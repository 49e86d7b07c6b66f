/** One survey file named on the command line, read and judged. */
import type { Analysis } from '../checks/analyse.js';
import { analyseSurvey, recordOf } from '../checks/survey.js';
import { nodeShelf } from '../host/shelf.js';
import { addressOf, expectSurveyFile, load } from '../host/files.js';
import { isMainFile, mainFilesOf } from '../record/documents.js';
import type { PhotoSource } from '../report/assemble.js';
import { readOutsideFacts } from '../report/outside.js';
import type { RecordDocument } from '../report/record-document.js';

export interface SurveyFile {
    /** Address of the survey's main file. */
    readonly main: string;
    readonly analysis: Analysis;
    /** Texts of the main file and of all it uses, by address. */
    readonly texts: ReadonlyMap<string, string>;
    /** Record of the survey's last issue, where it was issued before. */
    readonly lastRecord?: RecordDocument;
}

/** The survey that a file belongs to; undefined, and said on standard error, where it belongs to none. @throws Error naming a file that cannot be read. */
export async function analyseFile(file: string, photos: PhotoSource): Promise<SurveyFile | undefined> {
    await expectSurveyFile(file);
    const { parsed, texts } = await load([file]);
    const files = new Map([...parsed].map(([uri, p]) => [uri, p.file]));
    const uri = addressOf(file);
    const main = mainFilesOf(uri, files)[0] ?? uri;
    const root = files.get(main)?.root;
    if (!root || !isMainFile(root)) {
        process.stderr.write(`garboard: ${file} has no survey block; name the survey's main file, the one that begins with survey "…".\n`);
        return undefined;
    }
    const shelf = nodeShelf();
    const bare = recordOf(main, files);
    const analysis = analyseSurvey(main, files, await readOutsideFacts(bare, photos, shelf));
    const last = await shelf.lastRecord(bare.survey?.number ?? '', main);
    const syntax = [...parsed.values()].flatMap(p => p.gaps);
    return { main, texts, ...(last ? { lastRecord: last.document } : {}), analysis: { ...analysis, gaps: [...syntax, ...analysis.gaps] } };
}
