/** `garboard check`: problems of every survey under the paths. */
import { relative } from 'node:path';
import { analyseSurvey, recordOf, surveysAmong } from '../checks/survey.js';
import { allChecks } from '../checks/all-checks.js';
import { readOutsideFacts } from '../report/outside.js';
import { nodePhotoSource } from '../host/node-photos.js';
import { nodeShelf } from '../host/shelf.js';
import { listProblems, type FileProblems, type ListedProblem } from '../report/problem-list.js';
import { printable } from '../report/html.js';
import { sarif } from '../report/sarif.js';
import type { Arguments } from './arguments.js';
import { expectWritable, load, pathOf, positionIn, surveyFilesUnder, writeWhole } from '../host/files.js';

export async function check(options: Extract<Arguments, { command: 'check' }>): Promise<number> {
    if (options.output !== undefined) {
        await expectWritable(options.output);
    }
    const paths = await surveyFilesUnder(options.paths);
    const { parsed, texts } = await load(paths);
    const photos = nodePhotoSource();
    const shelf = nodeShelf();
    const files = new Map([...parsed].map(([uri, { file }]) => [uri, file]));
    const analyses = await Promise.all(surveysAmong(files).map(async uri => analyseSurvey(uri, files, await readOutsideFacts(recordOf(uri, files), photos, shelf))));
    const listed = listProblems(analyses, [...parsed.values()].flatMap(p => p.gaps), {
        position: (uri, offset) => positionIn(texts.get(uri) ?? '', offset),
        name: uri => relative(process.cwd(), pathOf(uri)).replaceAll('\\', '/') || pathOf(uri),
        files: [...texts.keys()],
    });
    const open = listed.flatMap(f => f.problems).filter(p => p.severity === 'error' && p.answeredBy === null);

    let output: string;
    switch (options.format) {
        case 'json':
            output = `${JSON.stringify({ version: 1, files: listed }, undefined, 2)}\n`;
            break;
        case 'sarif':
            output = `${JSON.stringify(sarif(listed, allChecks), undefined, 2)}\n`;
            break;
        case 'text':
            output = asText(listed, options);
    }
    if (options.output === undefined) {
        process.stdout.write(output);
    } else {
        await writeWhole(options.output, output);
    }
    return open.length > 0 ? 1 : 0;
}

function asText(files: readonly FileProblems[], { hints, answered }: { readonly hints: boolean; readonly answered: boolean }): string {
    const lines: string[] = [];
    const shown = (problem: ListedProblem) => (hints || problem.severity !== 'hint') && (answered || problem.answeredBy === null);
    const count = { error: 0, warning: 0, info: 0, hint: 0, answered: 0 };
    for (const { file, problems } of files) {
        for (const problem of problems) {
            count[problem.answeredBy === null ? problem.severity : 'answered']++;
            if (shown(problem)) {
                const answer = problem.answeredBy === null ? '' : `  [answered by ${problem.answeredBy}]`;
                // Texts of a survey stand in messages: none may begin a line of its own, or move the cursor.
                lines.push(printable(`${file}:${problem.line}:${problem.column}: ${problem.severity}: ${problem.message} (${problem.check})${answer}`).replaceAll('\n', ' '));
            }
        }
    }
    const total = [`${count.error} open ${count.error === 1 ? 'problem' : 'problems'}`, `${count.warning} of advice`, ...(count.info > 0 ? [`${count.info} remarks`] : []),
        `${count.hint} that a further fact would decide${hints || count.hint === 0 ? '' : ' (--hints shows them)'}`, `${count.answered} answered${answered || count.answered === 0 ? '' : ' (--answered shows them)'}`];
    return `${lines.length > 0 ? `${lines.join('\n')}\n\n` : ''}${total.join(', ')}.\n`;
}
