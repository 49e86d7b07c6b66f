/**
 * The page of a check, drawn from the check's own data: what it looks at, why, on what authority, what it cannot
 * know, and how to answer it. The editor opens it beside the text; the command line prints it.
 */
import { catalogueSources } from '../record/catalogue.js';
import { vocabularyOf } from '../record/vocabulary.js';
import { capital, lowerFirst } from '../checks/phrasing.js';
import type { Check, Provenance, Severity, Source } from '../checks/contract.js';

/** What a word of provenance says to a reader. */
export const provenanceTitles: Readonly<Record<Provenance, string>> = {
    published: 'read in the published text',
    secondary: 'as quoted by others; the text itself was not at hand',
    computed: 'computed from first principles',
    memory: 'recalled, not yet compared with the text; look it up before citing it',
    practice: 'customary practice of the trade',
    chosen: 'chosen by Garboard, for want of a published figure',
};

const severityTitles: Readonly<Record<Severity, string>> = {
    error: 'An open problem of this check marks the report as a draft.',
    warning: 'A reader of the report would object to it; the report can still be made.',
    info: 'For information.',
    hint: 'A reminder of a fact that is not recorded.',
};

const standings: Readonly<Record<string, string>> = { law: 'law where it applies', voluntary: 'voluntary', practice: 'practice' };

/** Whether a standard is law or voluntary, and whom it binds. */
function standingText(name: string): string {
    const facts = vocabularyOf(catalogueSources()).vocabulary.standards.get(name)?.facts;
    const [standing, scope] = [facts?.get('standing')?.values[0], facts?.get('scope')?.values[0]];
    const says = [standing?.type === 'word' ? standings[standing.word] : undefined, scope?.type === 'text' ? lowerFirst(scope.prose.text) : undefined].filter(part => part !== undefined);
    return says.length === 0 ? '' : `; ${says.join(': ')}`;
}

/** A source in one line: what is relied on, where it stands, and how it is known. */
export function sourceLine({ text, standard, clause, provenance }: Source): string {
    const where = standard === undefined ? '' : ` (${standard}${clause === undefined ? '' : `, ${clause}`}${standingText(standard)})`;
    return `${capital(text)}${where}: ${provenanceTitles[provenance]}.`;
}

/** A Markdown page on a check. */
export function explainCheck(check: Check): string {
    const lines: string[] = [`# ${check.title}`, '', `\`${check.id}\` · ${check.severity} · ${check.group}`, '', sentence(check.why), '', severityTitles[check.severity], ''];
    const list = (title: string, entries: readonly string[]) => {
        if (entries.length > 0) {
            lines.push(`## ${title}`, '', ...entries.map(entry => `- ${sentence(entry)}`), '');
        }
    };
    list('What it needs', check.needs);
    lines.push('## What it computes', '', ended(check.computes.trim()), '');
    list('Sources', check.sources.map(sourceLine));
    list('Limits a firm may set in its house file', (check.yardsticks ?? []).map(yardstickLine));
    list('Limits', check.limits);
    lines.push('## How to answer it', '', ...answering(check));
    for (const example of check.examples) {
        lines.push(`## Example: ${example.name}`, '', 'Raises it:', '', ...fenced(example.bad));
        lines.push(example.correction === undefined ? 'Put right:' : `Put right by *${example.correction}*:`, '', ...fenced(example.fixed));
    }
    if (check.silent.length > 0) {
        lines.push('## Where it stays silent', '');
        for (const example of check.silent) {
            lines.push(`${capital(example.name)}:`, '', ...fenced(example.text));
        }
    }
    if (check.aliases && check.aliases.length > 0) {
        lines.push('## Earlier names', '', `Answers may still say ${check.aliases.map(alias => `\`${alias}\``).join(', ')}.`, '');
    }
    return `${lines.join('\n').trimEnd()}\n`;
}

/** A yardstick with the catalogue's figure, and how it is set. */
function yardstickLine(name: string): string {
    const { vocabulary } = vocabularyOf(catalogueSources());
    const about = vocabulary.kinds.get('yardsticks')?.properties.get(name)?.about ?? name;
    return `${about}: ${vocabulary.yardsticks.get(name)?.fact.written ?? 'none'}, unless set by \`yardsticks { ${name}: … }\``;
}

function answering(check: Check): string[] {
    if (check.isOfReport) {
        return [
            '1. Correct the text or the fact: the light bulb beside the problem offers what fits.',
            '2. Accept it as it stands, with the reason; on a finding, where it is that finding’s own words:',
            '', ...fenced(`accept ${check.id} on F1 because "The reason."`),
        ];
    }
    return [
        '1. Correct the fact, where it was recorded wrongly: the light bulb beside the problem offers what fits.',
        '2. Answer it in a finding on the same components:',
        '', ...fenced(`finding F1 "What is wrong" on ID1, ID2 {\n    answers: ${check.id}\n}`),
        '3. Accept it as it stands, with the reason:',
        '', ...fenced(`accept ${check.id} on ID1, ID2 because "The reason."`),
    ];
}

function fenced(text: string): string[] {
    return ['```garboard', ...text.replaceAll('\r\n', '\n').trimEnd().split('\n'), '```', ''];
}


function sentence(text: string): string {
    return ended(capital(text.trim()));
}

/** With its full stop. A formula keeps its small letter: d = bore − tail. */
function ended(text: string): string {
    return /[.!?:]$/.test(text) ? text : `${text}.`;
}
