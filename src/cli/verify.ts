/** `garboard verify`: says, file by file, whether anything of an issue has changed since it was made. */
import { relative } from 'node:path';
import { verifyIssues, type VerifiedFile, type VerifiedIssue } from '../host/verify.js';
import { printable } from '../report/html.js';
import type { Arguments } from './arguments.js';

export async function verify({ dir, allowedSigners, format }: Extract<Arguments, { command: 'verify' }>): Promise<number> {
    const issues = (await verifyIssues(dir, allowedSigners === undefined ? {} : { allowedSigners })).map(issue => ({ ...issue, folder: (relative(process.cwd(), issue.folder) || '.').replaceAll('\\', '/') }));
    process.stdout.write(format === 'json' ? `${JSON.stringify({ version: 1, issues }, undefined, 2)}\n` : issues.map(verifiedText).join('\n'));
    return Math.max(...issues.map(({ verdict }) => verdict === 'unreadable' ? 2 : verdict === 'changed' ? 1 : 0));
}

const words: Readonly<Record<VerifiedFile['state'], string>> = { unchanged: 'unchanged', changed: 'CHANGED', missing: 'MISSING', 'not-read': 'NOT READ' };

/** Names and details come from a folder that anybody may have made: none may begin a line of its own, or move the cursor. */
const inLine = (text: string): string => printable(text).replace(/[\n\t]+/g, ' ');

/** What is found, as text. */
export function verifiedText(issue: VerifiedIssue): string {
    const { folder, verdict, files, extra, faults } = issue;
    const name = issue.number === undefined ? '' : `: report ${issue.number}, issue ${issue.issue ?? ''} of ${issue.date ?? ''}, ${issue.vessel ?? ''}, signed by ${issue.signedBy ?? ''}`;
    const lines = [
        ...files.map(file => `  ${words[file.state].padEnd(9)}  ${file.path}${file.detail === undefined ? '' : ` (${file.detail})`}`),
        ...extra.map(path => `  not of it  ${path}`),
        ...faults.map(fault => `  ${fault}`),
        ...verdict === 'unreadable' ? [] : [...previousLine(issue), ...workingLines(issue), ...signatureLines(issue)],
    ];
    const put = extra.length === 0 ? '' : ` ${extra.length === 1 ? 'A file was' : `${extra.length} files were`} put beside it: nothing vouches for ${extra.length === 1 ? 'it' : 'them'}.`;
    const isOfSignature = issue.signature?.state === 'bad' && faults.length === 1 && files.every(({ state }) => state === 'unchanged');
    const verdicts = { unchanged: `Nothing of this issue has changed.${put}`, changed: `${isOfSignature ? 'Its files agree with its manifest, but its signature CANNOT be relied on.' : 'This issue is NOT as it was made.'}${put}`, unreadable: 'This issue cannot be verified.' };
    return `${inLine(`${folder}${name}`)}\n${[...lines, `  ${verdicts[verdict]}`].map(line => `${inLine(line)}\n`).join('')}`;
}

function previousLine({ previous }: VerifiedIssue): string[] {
    return !previous || previous.state === 'changed' ? [] : [previous.state === 'unchanged' ? `  It was made after issue ${previous.issue}, whose manifest is unchanged.` : `  It was made after issue ${previous.issue}, which does not lie beside it.`];
}

function workingLines({ working }: VerifiedIssue): string[] {
    const since = working.filter(({ state }) => state !== 'as-issued');
    return working.length === 0 ? ['  The folder does not lie beside its survey, so sources and photographs there are not compared.']
        : since.length === 0 ? [`  In the survey's folder all ${working.length} sources and photographs are as they were.`]
            : [`  In the survey's folder, worked on since or gone (no fault of the issue): ${since.map(({ path, state }) => `${path}${state === 'changed-since' ? '' : state === 'missing' ? ' (gone)' : ' (not read)'}`).join(', ')}; ${working.length - since.length} others are as they were.`];
}

function signatureLines({ signature, manifestSha256 }: VerifiedIssue): string[] {
    const by = [signature?.signer, signature?.key && `key ${signature.key}`].filter(Boolean).join(', ');
    switch (signature?.state) {
        case 'good': return [`  The signature is good, by ${by}.`];
        case 'good-unknown': return [`  The signature is good, by ${by}, but who that is stays open: ${signature.detail}.`];
        case 'not-checked': return [`  The signature could not be checked: ${signature.detail}.`];
        case 'bad': return [];
        case undefined: return [
            `  The manifest is not signed. Its digest lies beside it, and whoever can change the one can change the other: compare it with the figure that was sent with the report.`,
            `  SHA-256 of the manifest: ${manifestSha256 ?? ''}`,
        ];
    }
}
