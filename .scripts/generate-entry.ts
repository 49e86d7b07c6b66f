// What .scripts/generate.mjs runs through the project's own language and record.
import { allChecks } from '../src/checks/all-checks.js';
import { catalogueSources } from '../src/record/catalogue.js';
import type { KindInfo, PropertyType } from '../src/record/model.js';
import { vocabularyOf } from '../src/record/vocabulary.js';
import { keywords } from '../src/language/keywords.js';

function typeName(kind: string): string {
    return kind.split('-').map(part => part.charAt(0).toUpperCase() + part.slice(1)).join('') + 'Facts';
}

function valueType(type: PropertyType, wordLists: ReadonlyMap<string, { words: ReadonlyMap<string, string> }>): string {
    const union = (words: Iterable<string>) => `Word<${[...words].map(word => `'${word}'`).join(' | ') || 'string'}>`;
    switch (type.type) {
        case 'date': return 'DateValue';
        case 'text': case 'photo': return 'Text';
        case 'word': return union(type.words ?? []);
        case 'flag': return `Word<'yes' | 'no'>`;
        case 'material': return 'MaterialValue';
        case 'component': return 'ComponentRef';
        case 'person': return 'PersonRef';
        case 'checks': return 'CheckRef';
        case 'standards': return 'Citation';
        case 'figure': return 'Quantity | DateValue';
        case 'columns': return 'Word | Text';
        default: {
            const list = wordLists.get(type.type);
            return list ? union(list.words.keys()) : 'Quantity';
        }
    }
}

export async function kindsModule(): Promise<string> {
    const { vocabulary, gaps } = vocabularyOf(await catalogueSources());
    const errors = gaps.filter(gap => gap.severity === 'error');
    if (errors.length > 0) {
        throw new Error(`The catalogue has faults:\n${errors.map(gap => `${gap.span.uri}:${gap.span.start} ${gap.message}`).join('\n')}`);
    }
    const lines: string[] = [
        '// Generated from the catalogue by `npm run generate`. Do not edit.',
        '/* eslint-disable */',
        `import type { CheckRef, Citation, ComponentRef, DateValue, MaterialValue, PersonRef, Quantity, Text, Word } from '../model.js';`,
        '',
    ];
    const all = new Map<string, Set<string>>();
    const kinds: KindInfo[] = [...vocabulary.kinds.values()];
    for (const kind of kinds) {
        const parent = kind.parent ? vocabulary.kinds.get(kind.parent) : undefined;
        const own = [...kind.properties].filter(([, type]) => type.declaredBy === kind.id);
        const redeclared = own.filter(([name]) => parent?.properties.has(name)).map(([name]) => `'${name}'`);
        const base = parent ? (redeclared.length > 0 ? `Omit<${typeName(parent.id)}, ${redeclared.join(' | ')}>` : typeName(parent.id)) : '';
        lines.push(`/** ${kind.title}. ${kind.about ?? ''} */`.replaceAll('\n', ' '));
        lines.push(`export interface ${typeName(kind.id)}${base ? ` extends ${base}` : ''} {`);
        for (const [name, type] of own) {
            const value = valueType(type, vocabulary.wordLists);
            if (type.about) {
                lines.push(`    /** ${type.about.replaceAll('*/', '')} */`);
            }
            lines.push(`    readonly '${name}': ${value};`);
            all.set(name, (all.get(name) ?? new Set()).add(value));
        }
        lines.push('}', '');
    }
    lines.push('/** The facts of each kind, by its id. */', 'export interface KindFacts {');
    for (const kind of kinds) {
        lines.push(`    readonly '${kind.id}': ${typeName(kind.id)};`);
    }
    lines.push('}', '', 'export type KindName = keyof KindFacts;', 'export type FactsOf<K extends KindName> = KindFacts[K];', '');
    lines.push('/** Every property that some kind declares. */', 'export interface AnyFacts {');
    for (const [name, types] of [...all].sort(([a], [b]) => a.localeCompare(b, 'en'))) {
        lines.push(`    readonly '${name}': ${[...types].join(' | ')};`);
    }
    lines.push('}', '');
    return lines.join('\n');
}

export function textMateGrammar(): string {
    const words = keywords.filter(word => /^[a-z]/.test(word));
    const name = '[\\p{L}_][\\p{L}\\p{N}_]*(?:-[\\p{L}\\p{N}_]+)*';
    const grammar = {
        $schema: 'https://raw.githubusercontent.com/martinring/tmlanguage/master/tmlanguage.json',
        name: 'Garboard', scopeName: 'source.garboard', fileTypes: ['survey'],
        patterns: [{ include: '#comments' }, { include: '#block-text' }, { include: '#text' }, { include: '#property' }, { include: '#declaration' }, { include: '#keyword' }, { include: '#figure' }, { include: '#arrow' }, { include: '#name' }],
        repository: {
            comments: { patterns: [
                { name: 'comment.line.double-slash.garboard', match: '//.*$' },
                { name: 'comment.block.garboard', begin: '/\\*', end: '\\*/' },
            ] },
            'block-text': { name: 'string.quoted.triple.garboard', begin: '"""', end: '"""', patterns: [{ include: '#reference' }] },
            text: { name: 'string.quoted.double.garboard', begin: '"', end: '"|$', patterns: [{ name: 'constant.character.escape.garboard', match: '\\\\.' }, { include: '#reference' }] },
            reference: { name: 'variable.other.reference.garboard', match: '\\{[^{}"\\n]*\\}' },
            property: { match: `(${name})(?=[ \\t]*:)`, captures: { 1: { name: 'variable.other.property.garboard' } } },
            declaration: { match: `(?<![\\p{L}\\p{N}_-])(${words.join('|')})[ \\t]+(${name})(?![\\p{L}\\p{N}_-]|[ \\t]*:)`, captures: { 1: { name: 'keyword.control.garboard' }, 2: { name: 'entity.name.garboard' } } },
            keyword: { name: 'keyword.control.garboard', match: `(?<![\\p{L}\\p{N}_-])(?:${words.join('|')})(?![\\p{L}\\p{N}_-])` },
            figure: { match: '(?<![\\p{L}\\p{N}_-])([-\\x{2212}]?(?:\\d[\\d.,]*(?:[- ]?\\d+/\\d+)?|[½¼¾⅛⅜⅝⅞⅓⅔])(?:-\\d{2}(?:-\\d{2})?)?)[ \\t]*([\\p{L}°%Ω][\\p{L}\\p{N}°/²³-]*)?(?![ \\t]*:)', captures: { 1: { name: 'constant.numeric.garboard' }, 2: { name: 'keyword.other.unit.garboard' } } },
            arrow: { name: 'keyword.operator.garboard', match: '->|\\.\\.|\\+/-' },
            name: { name: 'entity.name.type.garboard', match: `(?<=^\\s*)${name}(?=\\s+${name}\\s*(?:["{]|$))` },
        },
    };
    return JSON.stringify(grammar, undefined, 2) + '\n';
}

const provenances: Readonly<Record<string, string>> = {
    published: 'read', secondary: 'quoted', computed: 'computed', memory: 'recalled', practice: 'practice', chosen: 'chosen',
};

/** "33 CFR 183.558(d)" where the clause repeats the part, "ISO 9093 4.1" elsewhere. */
function cited(standard: string, clause: string | undefined): string {
    const part = standard.split(' ').at(-1) ?? '';
    return clause === undefined ? standard : clause.startsWith(`${part}.`) ? `${standard.slice(0, -part.length)}${clause}` : `${standard} ${clause}`;
}

/** Every check in one table, for contributors and for whoever asks what Garboard looks at. */
export function checksTable(): string {
    const cell = (text: string) => text.replaceAll('|', '\\|').replace(/\s+/g, ' ');
    const sources = (check: (typeof allChecks)[number]) => [...new Set(check.sources.map(({ standard, clause, provenance }) =>
        `${standard === undefined ? '' : `${cited(standard, clause)}, `}${provenances[provenance] ?? provenance}`))].join('; ');
    const lines = [
        '<!-- Generated from the checks by `npm run generate`. Do not edit. -->', '',
        '# Checks', '',
        `${allChecks.length} checks, in the order of their groups. \`garboard explain ID\` prints the page of one: what it needs, what it computes, its sources, examples and limits.`,
        'A source is *read* in its text, *quoted* by others, *computed*, *recalled* and to be confirmed, *practice* of the trade, or *chosen* for want of a published figure.',
        'Limits in the last column are yardsticks that a firm may set in its house file.', '',
    ];
    let group = '';
    for (const check of allChecks) {
        if (check.group !== group) {
            group = check.group;
            lines.push('', `## ${group.charAt(0).toUpperCase()}${group.slice(1)}`, '', '| Check | What it tells | Severity | Sources | Yardsticks |', '|---|---|---|---|---|');
        }
        lines.push(`| \`${check.id}\` | ${cell(check.title)} | ${check.severity} | ${cell(sources(check))} | ${(check.yardsticks ?? []).map(name => `\`${name}\``).join(', ')} |`);
    }
    return `${lines.join('\n').replace(/\n{3,}/g, '\n\n')}\n`;
}
