/** `garboard report`: the report of one survey, or another paper of it, in one form or several, each written whole or not at all. */
import { stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { NoBrowserError } from '../host/browser.js';
import { expectWritable, pathOf, positionIn } from '../host/files.js';
import { makeForms, outputPath, writeForms } from '../host/forms.js';
import { nodePhotoSource } from '../host/node-photos.js';
import type { Arguments } from './arguments.js';
import { progressLine, stoppable } from './progress.js';
import { analyseFile } from './survey-file.js';

export function report({ file, output, forms, document, paper, browser, verbose }: Extract<Arguments, { command: 'report' }>): Promise<number> {
    return stoppable(async signal => {
        const photos = nodePhotoSource();
        const survey = await analyseFile(file, photos);
        if (!survey) {
            return 2;
        }
        const { main, analysis, texts, lastRecord } = survey;
        const path = pathOf(main);
        const isFolder = output !== undefined && await stat(output).then(info => info.isDirectory(), () => false);
        const place = { stem: basename(path, '.survey'), folder: join(dirname(path), 'out'), document, forms, ...(output === undefined ? {} : { output: isFolder ? join(output, '/') : output }) };
        for (const form of forms) {
            await expectWritable(outputPath(form, place));
        }
        const progress = progressLine(file, verbose);
        const made = await makeForms(analysis, {
            forms, document, photos, signal, position: (uri, offset) => positionIn(texts.get(uri) ?? '', offset), onProgress: step => progress.show(step),
            ...(lastRecord ? { lastRecord } : {}), ...(paper ? { paper } : {}), ...(browser === undefined ? {} : { browser: { path: browser, by: '--browser' } }),
        }).catch((error: unknown) => {
            progress.clear();
            if (error instanceof NoBrowserError) {
                process.stderr.write(`garboard: ${error.message} Nothing is written.\n`);
                return undefined;
            }
            throw error;
        });
        if (!made) {
            return 2;
        }
        progress.clear();
        const written = await writeForms(made, form => outputPath(form, place));
        for (const fault of made.photoFaults) {
            process.stderr.write(`garboard: ${fault}\n`);
        }
        const isDraft = made.openErrors > 0;
        process.stdout.write(`${isDraft ? `Written as DRAFT, ${made.openErrors} open ${made.openErrors === 1 ? 'problem' : 'problems'}: ` : 'Report written: '}${written.join(', ')}\n`);
        return isDraft ? 1 : 0;
    });
}
