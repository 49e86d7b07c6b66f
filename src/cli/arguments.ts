/** Command-line words to what is asked. */
import { parseArgs } from 'node:util';

export const usage = `garboard check PATH…              problems of every survey under the paths
    --format text|json|sarif         how they are written (text)
    -o, --output FILE                write them to a file
    --hints                          show also what would be checked if it were known
    --answered                       show also problems that are answered
garboard report FILE              write the report of a survey
    --to html                        form of output (html)
    -o, --output FILE                where (out/NAME.html beside the survey)
garboard explain CHECK            what a check needs and computes, its source, its limits
    --list                           all checks, a line each

Exit status: check 0 no problem open at error, 1 some, 2 usage or unreadable input;
report 0 written, 1 written as DRAFT, 2 not written; explain 0, 2 unknown check.
`;

export type Arguments =
    | { readonly command: 'help' }
    | { readonly command: 'check'; readonly paths: readonly string[]; readonly format: 'text' | 'json' | 'sarif'; readonly output?: string; readonly hints: boolean; readonly answered: boolean }
    | { readonly command: 'report'; readonly file: string; readonly output?: string }
    | { readonly command: 'explain'; readonly check?: string; readonly list: boolean };

export function parseArguments(words: readonly string[]): Arguments | { readonly fault: string } {
    let values: { format?: string; output?: string; to?: string; hints?: boolean; answered?: boolean; list?: boolean; help?: boolean };
    let positionals: string[];
    try {
        ({ values, positionals } = parseArgs({
            args: [...words], allowPositionals: true,
            options: {
                format: { type: 'string' }, output: { type: 'string', short: 'o' }, to: { type: 'string' }, hints: { type: 'boolean' }, answered: { type: 'boolean' },
                list: { type: 'boolean' }, help: { type: 'boolean', short: 'h' },
            },
        }));
    } catch (error) {
        return { fault: error instanceof Error ? error.message : String(error) };
    }
    const [command, ...rest] = positionals;
    if (values.help || command === 'help') {
        return { command: 'help' };
    }
    switch (command) {
        case 'check': {
            const format = values.format ?? 'text';
            if (format !== 'text' && format !== 'json' && format !== 'sarif') {
                return { fault: `--format is text, json or sarif, not ${format}` };
            }
            if (rest.length === 0) {
                return { fault: 'check needs at least one file or folder' };
            }
            return { command, paths: rest, format, ...(values.output === undefined ? {} : { output: values.output }), hints: values.hints ?? false, answered: values.answered ?? false };
        }
        case 'report': {
            const [file, ...more] = rest;
            if (file === undefined || more.length > 0) {
                return { fault: 'report needs one survey file' };
            }
            if (values.to !== undefined && values.to !== 'html') {
                return { fault: `--to is html, not ${values.to}` };
            }
            return { command, file, ...(values.output === undefined ? {} : { output: values.output }) };
        }
        case 'explain':
            if (rest.length !== 1 && !values.list) {
                return { fault: 'explain needs the id of one check, or --list' };
            }
            return { command, ...(rest[0] === undefined ? {} : { check: rest[0] }), list: values.list ?? false };
        default:
            return { fault: command === undefined ? 'say what to do' : `there is no command ${command}` };
    }
}
