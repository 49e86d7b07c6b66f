/** `garboard issue`: freezes the report of one survey as an issue, or says why it cannot be issued yet. */
import { relative } from 'node:path';
import { NoBrowserError } from '../host/browser.js';
import { expectSurveyFile } from '../host/files.js';
import { issueReport, type IssueResult } from '../host/issue.js';
import { nodePhotoSource } from '../host/node-photos.js';
import { printable } from '../report/html.js';
import type { Arguments } from './arguments.js';
import { progressLine, stoppable } from './progress.js';

export function issue({ file, forms, date, signedBy, sign, key, paper, browser, verbose }: Extract<Arguments, { command: 'issue' }>): Promise<number> {
    return stoppable(async signal => {
        await expectSurveyFile(file);
        const progress = progressLine(file, verbose);
        const result = await issueReport(file, {
            forms, today: today(), photos: nodePhotoSource(), signal, onProgress: step => progress.show(step), ...(date === undefined ? {} : { date }), ...(signedBy === undefined ? {} : { signedBy }),
            ...(sign ? { sign: key === undefined ? {} : { key } } : {}), ...(paper ? { paper } : {}), ...(browser === undefined ? {} : { browser: { path: browser, by: '--browser' } }),
        }).catch((error: unknown) => {
            progress.clear();
            if (error instanceof NoBrowserError) {
                process.stderr.write(`garboard: ${error.message} Nothing is issued.\n`);
                return undefined;
            }
            throw error;
        });
        progress.clear();
        if (!result) {
            return 2;
        }
        if (result.state === 'refused') {
            process.stderr.write(refusedText(file, result));
            return 1;
        }
        process.stdout.write(issuedText(result));
        return 0;
    });
}

/** Today by the clock of the machine. */
function today(): string {
    const now = new Date();
    return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}

const fromHere = (path: string): string => (relative(process.cwd(), path) || '.').replaceAll('\\', '/');

function refusedText(file: string, { refusals }: IssueResult & { state: 'refused' }): string {
    const lines = refusals.map(({ message, at }) => at ? `${at.file}:${at.line}:${at.column}: ${message}` : message);
    return `garboard: ${file} is not issued. ${refusals.length === 1 ? 'This is' : `These ${refusals.length} matters are`} to be settled first:\n${lines.map(line => `  ${printable(line).replaceAll('\n', ' ')}\n`).join('')}`;
}

function issuedText({ folder, number, issue: turn, date, signedBy, manifestSha256, signature, changes }: IssueResult & { state: 'issued' }): string {
    return `${printable(`Report ${number}, issue ${turn} of ${date}, signed by ${signedBy}: ${fromHere(folder)}`)}
${changes === undefined ? '' : `${changes === 1 ? '1 change' : `${changes} changes`} since issue ${turn - 1} ${changes === 1 ? 'is' : 'are'} told in the report.\n`}${signature === undefined ? '' : `The manifest is signed: ${signature}\n`}SHA-256 of its manifest: ${manifestSha256}
Send that figure with the report: whoever holds it can show later that nothing of the issue was changed.
`;
}
