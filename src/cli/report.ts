/** `garboard report`: the report of one survey, written whole or not at all. */
import { basename, dirname, join } from 'node:path';
import { analyseSurvey, recordOf } from '../checks/survey.js';
import { isMainFile, mainFilesOf } from '../record/documents.js';
import { assembleReport } from '../report/assemble.js';
import { readOutsideFacts } from '../report/outside.js';
import { nodePhotoSource } from '../host/node-photos.js';
import type { Arguments } from './arguments.js';
import { addressOf, load, pathOf, positionIn, surveyFilesUnder, writeWhole } from '../host/files.js';

export async function report({ file, output }: Extract<Arguments, { command: 'report' }>): Promise<number> {
    await surveyFilesUnder([file]);
    const { parsed, texts } = await load([file]);
    const files = new Map([...parsed].map(([uri, p]) => [uri, p.file]));
    const uri = addressOf(file);
    const main = mainFilesOf(uri, files)[0] ?? uri;
    const root = files.get(main)?.root;
    if (!root || !isMainFile(root)) {
        process.stderr.write(`garboard: ${file} has no survey block; name the survey's main file, the one that begins with survey "…".\n`);
        return 2;
    }
    const photos = nodePhotoSource();
    const analysis = analyseSurvey(main, files, await readOutsideFacts(recordOf(main, files), photos));
    const syntax = [...parsed.values()].flatMap(p => p.gaps);
    const result = await assembleReport({ ...analysis, gaps: [...syntax, ...analysis.gaps] }, {
        photos, mode: 'file', lineOf: span => positionIn(texts.get(span.uri) ?? '', span.start).line,
    });
    const path = output ?? join(dirname(pathOf(main)), 'out', `${basename(pathOf(main), '.survey')}.html`);
    await writeWhole(path, result.html);
    for (const fault of result.photoFaults) {
        process.stderr.write(`garboard: ${fault}\n`);
    }
    const draft = result.openErrors > 0;
    process.stdout.write(`${draft ? `Written as DRAFT, ${result.openErrors} open ${result.openErrors === 1 ? 'problem' : 'problems'}: ` : 'Report written: '}${path}\n`);
    return draft ? 1 : 0;
}
