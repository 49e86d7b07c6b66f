/** Command-line words to what is asked. */
import { extname } from 'node:path';
import { parseArgs } from 'node:util';
import { isOutputForm, outputForms, type OutputForm } from '../host/forms.js';
import type { Paper } from '../report/context.js';
import { documentKinds, type DocumentKind } from '../report/documents.js';

export const usage = `garboard check PATH…              problems of every survey under the paths
    --format text|json|sarif         how they are written (text)
    -o, --output FILE                write them to a file
    --hints                          show also what would be checked if it were known
    --answered                       show also problems that are answered
garboard report FILE              write the report of a survey, or another paper of it
    --to html,pdf,docx,json,csv      forms of output, one or several (that of the file's ending, or html)
    -o, --output FILE                where (out/NAME.FORM beside the survey); a folder where it is one, or ends in /
    --document ${documentKinds.join('|')}
                                     which paper (report)
    --paper a4|letter                sheet to print on (the firm's, or a4)
    --browser PATH                   Chromium, Chrome or Edge that prints the PDF (one that is found)
    --verbose                        say what goes on also where no terminal shows it
garboard issue FILE               issue the report: number, date and freeze it
    --to html,pdf,docx               forms beside the record (html)
    --signed-by NAME, --date DATE    who signs, and when (as the survey says)
    --sign, --key FILE               sign the manifest with the tool that git is set to use, or with this key
    --paper, --browser, --verbose    as for report
garboard verify DIR               say of every file of the issues under a folder whether it changed
    --allowed-signers FILE           whose signatures count
    --format text|json               how it is written (text)
garboard explain CHECK            what a check needs and computes, its source, its limits
    --list                           all checks, a line each

Exit status: check 0 no problem open at error, 1 some, 2 usage or unreadable input;
report 0 written, 1 written as DRAFT, 2 not written; issue 0 issued, 1 refused, 2 failed;
verify 0 nothing changed, 1 something did, 2 unreadable; explain 0, 2 unknown check;
130 stopped by Ctrl+C, nothing written.
`;

/** What printing needs to be told. */
interface Printing {
    readonly paper?: Paper;
    readonly browser?: string;
    readonly verbose: boolean;
}

export type Arguments =
    | { readonly command: 'help' }
    | { readonly command: 'check'; readonly paths: readonly string[]; readonly format: 'text' | 'json' | 'sarif'; readonly output?: string; readonly hints: boolean; readonly answered: boolean }
    | Printing & { readonly command: 'report'; readonly file: string; readonly forms: readonly OutputForm[]; readonly document: DocumentKind; readonly output?: string }
    | Printing & { readonly command: 'issue'; readonly file: string; readonly forms: readonly OutputForm[]; readonly signedBy?: string; readonly sign: boolean; readonly key?: string; readonly date?: string }
    | { readonly command: 'verify'; readonly dir: string; readonly allowedSigners?: string; readonly format: 'text' | 'json' }
    | { readonly command: 'explain'; readonly check?: string; readonly list: boolean };

interface Fault {
    readonly fault: string;
}

const options = {
    format: { type: 'string' }, output: { type: 'string', short: 'o' }, to: { type: 'string' }, hints: { type: 'boolean' }, answered: { type: 'boolean' },
    document: { type: 'string' }, paper: { type: 'string' }, browser: { type: 'string' }, verbose: { type: 'boolean' },
    'signed-by': { type: 'string' }, sign: { type: 'boolean' }, key: { type: 'string' }, date: { type: 'string' }, 'allowed-signers': { type: 'string' },
    list: { type: 'boolean' }, help: { type: 'boolean', short: 'h' },
} as const;

type Values = ReturnType<typeof parseArgs<{ options: typeof options; allowPositionals: true }>>['values'];

/** Options each command has; another one is a mistake, and nothing should be done that was not meant. */
const optionsOf: Readonly<Record<string, readonly string[]>> = {
    check: ['format', 'output', 'hints', 'answered'], report: ['to', 'output', 'document', 'paper', 'browser', 'verbose'],
    issue: ['to', 'signed-by', 'date', 'sign', 'key', 'paper', 'browser', 'verbose'], verify: ['allowed-signers', 'format'], explain: ['list'],
};

export function parseArguments(words: readonly string[]): Arguments | Fault {
    let values: Values;
    let positionals: string[];
    try {
        ({ values, positionals } = parseArgs({ args: [...words], allowPositionals: true, options }));
    } catch (error) {
        return { fault: error instanceof Error ? error.message : String(error) };
    }
    const [command, ...rest] = positionals;
    if (values.help || command === 'help') {
        return { command: 'help' };
    }
    const own = command === undefined ? undefined : optionsOf[command];
    const foreign = own && Object.keys(values).find(name => !own.includes(name));
    if (foreign !== undefined) {
        return { fault: `${command} has no option --${foreign}` };
    }
    switch (command) {
        case 'check': return checkArguments(rest, values);
        case 'report': return reportArguments(rest, values);
        case 'issue': return issueArguments(rest, values);
        case 'verify': {
            const format = values.format ?? 'text';
            if (format !== 'text' && format !== 'json') {
                return { fault: `--format is text or json, not ${format}` };
            }
            const [dir] = rest;
            return dir === undefined || rest.length > 1 ? { fault: 'verify needs one folder' }
                : { command, dir, format, ...given('allowedSigners', values['allowed-signers']) };
        }
        case 'explain':
            if (rest.length !== 1 && !values.list) {
                return { fault: 'explain needs the id of one check, or --list' };
            }
            return { command, ...given('check', rest[0]), list: values.list ?? false };
        default:
            return { fault: command === undefined ? 'say what to do' : `there is no command ${command}` };
    }
}

function checkArguments(paths: readonly string[], values: Values): Arguments | Fault {
    const format = values.format ?? 'text';
    if (format !== 'text' && format !== 'json' && format !== 'sarif') {
        return { fault: `--format is text, json or sarif, not ${format}` };
    }
    if (paths.length === 0) {
        return { fault: 'check needs at least one file or folder' };
    }
    return { command: 'check', paths, format, ...given('output', values.output), hints: values.hints ?? false, answered: values.answered ?? false };
}

function reportArguments(rest: readonly string[], values: Values): Arguments | Fault {
    const [file] = rest;
    if (file === undefined || rest.length > 1) {
        return { fault: 'report needs one survey file' };
    }
    const document = documentKinds.find(kind => kind === (values.document ?? 'report'));
    if (document === undefined) {
        return { fault: `--document is ${inWords(documentKinds)}, not ${values.document}` };
    }
    const ending = values.output === undefined ? '' : extname(values.output).slice(1).toLowerCase();
    const forms = formsOf(values.to, isOutputForm(ending) ? ending : 'html');
    if ('fault' in forms) {
        return forms;
    }
    if (forms.length === 1 && isOutputForm(ending) && ending !== forms[0]) {
        return { fault: `--to ${forms[0]} would be written to a file that ends in .${ending}` };
    }
    if (forms.includes('json') && document !== 'report') {
        return { fault: 'json is the whole record: it goes with --document report' };
    }
    const printing = printingOf(values);
    return 'fault' in printing ? printing : { command: 'report', file, forms, document, ...given('output', values.output), ...printing };
}

function issueArguments(rest: readonly string[], values: Values): Arguments | Fault {
    const [file] = rest;
    if (file === undefined || rest.length > 1) {
        return { fault: 'issue needs one survey file' };
    }
    const forms = formsOf(values.to, 'html');
    const printing = printingOf(values);
    return 'fault' in forms ? forms : 'fault' in printing ? printing : {
        command: 'issue', file, forms, sign: (values.sign ?? false) || values.key !== undefined,
        ...given('signedBy', values['signed-by']), ...given('key', values.key), ...given('date', values.date), ...printing,
    };
}

/** Forms named, each once, parted by commas. */
function formsOf(to: string | undefined, otherwise: OutputForm): readonly OutputForm[] | Fault {
    const named = (to ?? otherwise).split(',').map(word => word.trim().toLowerCase());
    const unknown = named.find(word => !isOutputForm(word));
    return unknown === undefined ? [...new Set(named.filter(isOutputForm))] : { fault: `--to is ${inWords(outputForms)}, not ${unknown === '' ? 'nothing' : unknown}` };
}

function printingOf({ paper, browser, verbose = false }: Values): Printing | Fault {
    if (paper !== undefined && paper !== 'a4' && paper !== 'letter') {
        return { fault: `--paper is a4 or letter, not ${paper}` };
    }
    return { verbose, ...given<'paper', Paper>('paper', paper), ...given('browser', browser) };
}

const inWords = (words: readonly string[]): string => words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;

/** A property that is left out where it is not given. */
function given<K extends string, V>(key: K, value: V | undefined): { readonly [P in K]?: V } {
    return value === undefined ? {} : { [key]: value } as { readonly [P in K]: V }; // The one key is K.
}
