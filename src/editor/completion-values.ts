/** Statements, facts and values at the cursor. */
import { CompletionItemKind } from 'vscode-languageserver-types';
import { allUnits, type Dimension } from '../quantities/index.js';
import { nextFindingNumber } from '../record/earlier-findings.js';
import { choicesOf, typeTitle } from '../record/facts.js';
import { wordOf, type FactSet, type KindInfo, type PropertyType } from '../record/model.js';
import { columnsOf, rowKindOf, type Columns } from '../record/readings.js';
import { firstLine, literal, parametersOf, type Offers, type Where } from './completion-offers.js';
import { offerChecks, offerIds, nextId, openProblems } from './completion-names.js';
import { offerInText } from './completion-texts.js';
import { typeOf, type View } from './resolve.js';
import type { GarboardServices } from './services.js';

interface Statement {
    readonly word: string;
    readonly detail: string;
    readonly snippet: string;
}

const anywhere: readonly Statement[] = [
    { word: 'run', detail: 'components that water, fuel or gas passes through, in order', snippet: 'run ${1:R1} "${2:what it is}": $0' },
    { word: 'finding', detail: 'what is wrong, and what is to be done', snippet: 'finding ${1:F1} "${2:title}" on $3 {\n    answers: $4\n    urgency: $5\n    seen: "$6"\n    because: "$7"\n    recommend: "$8"\n}' },
    { word: 'accept', detail: 'a problem that may stay as it is, with the reason', snippet: 'accept $0' },
    { word: 'contact', detail: 'parts that touch, metal to metal', snippet: 'contact $1, $2' },
    { word: 'reading', detail: 'a table of readings', snippet: 'reading ${1:M1} "${2:title}" on $3 {\n    row "$4": $5\n}' },
    { word: 'unseen', detail: 'what could not be inspected, and why', snippet: 'unseen "$1": "$2"' },
    { word: 'absent', detail: 'what is not fitted, and why that matters', snippet: 'absent "$1": "$2"' },
];

const atTop: readonly Statement[] = [
    { word: 'system', detail: 'a section of the report', snippet: 'system ${1:skin} "${2:Through-hulls and sea valves}" {\n    $0\n}' },
    { word: 'survey', detail: 'the engagement: number, client, dates, limits', snippet: 'survey "${1:number}" ${2:pre-purchase} {\n    client: "$3"\n    surveyor: $4\n    attended ${5:2026-10-06} ${6|ashore,afloat|} "$7"\n}' },
    { word: 'vessel', detail: 'the vessel and her particulars', snippet: 'vessel "${1:name}" {\n    $0\n}' },
    { word: 'use', detail: 'another file of this survey, or a house file', snippet: 'use "$1"' },
    { word: 'valuation', detail: 'value from comparables', snippet: 'valuation "${1:title}" {\n    comparable ${2:C1} "${3:vessel}" {\n        $0\n    }\n}' },
    { word: 'person', detail: 'a person the files refer to', snippet: 'person ${1:id} "${2:name}" {\n    $0\n}' },
    { word: 'firm', detail: 'the surveyor’s firm', snippet: 'firm "${1:name}" {\n    $0\n}' },
    { word: 'yardsticks', detail: 'the firm’s limits where practice differs', snippet: 'yardsticks "${1:title}" {\n    $0\n}' },
    { word: 'coverage', detail: 'what a kind of survey, or of craft, is to speak of', snippet: 'coverage ${1:sailing-yacht} {\n    parts: $0\n}' },
    { word: 'outline', detail: 'the sections of a report, in order, for a kind of survey', snippet: 'outline ${1:pre-purchase} {\n    sections: $0\n}' },
    { word: 'wording', detail: 'the standing words of the firm’s reports', snippet: 'wording "${1:title}" {\n    $0\n}' },
    { word: 'phrase', detail: 'standard wording of the firm', snippet: 'phrase ${1:id} "$2"' },
    { word: 'kind', detail: 'a kind of component of the firm’s own', snippet: 'kind ${1:id} "${2:title}" is ${3:component} {\n    takes $4: $5\n}' },
    { word: 'material', detail: 'a material', snippet: 'material ${1:id} "${2:title}" {\n    $0\n}' },
    { word: 'standard', detail: 'a standard or a law that findings cite', snippet: 'standard "${1:name}" "${2:title}" {\n    $0\n}' },
    { word: 'words', detail: 'a list of defined words', snippet: 'words ${1:id} "${2:title}" {\n    $0\n}' },
];

/** Statements and components, at the top of a file and in a system. */
export function offerElements({ view, reader }: Where, offers: Offers): void {
    const isTop = reader.frame.parent === undefined;
    const hasSurvey = view.record?.survey !== undefined;
    for (const { word, detail, snippet } of isTop ? [...anywhere, ...atTop] : anywhere) {
        const rank = isTop ? (word === 'survey' && !hasSurvey ? 0 : anywhere.some(s => s.word === word) ? 3 : 2) : 1;
        const numbered = word === 'run' || word === 'finding' ? snippet.replace(word === 'run' ? 'R1' : 'F1', nextOf(view, word)) : snippet;
        offers.add(word, { rank, kind: CompletionItemKind.Keyword, detail, snippet: numbered, again: word === 'accept' || word === 'run' });
    }
    for (const kind of view.vocabulary.kinds.values()) {
        if (!kind.isForm && kind.id !== 'component') {
            offers.add(kind.id, { rank: isTop ? 4 : 2, kind: CompletionItemKind.Class, detail: kind.title, docs: kind.about ?? '', snippet: componentSnippet(kind, view) });
        }
    }
}

function nextOf({ record }: View, word: 'run' | 'finding'): string {
    if (word === 'finding') {
        return record ? nextFindingNumber(record) : 'F1';
    }
    const numbers = (record?.runs ?? []).map(({ id }) => id.startsWith('R') ? Number(id.slice(1)) : 0).filter(Number.isInteger);
    return `R${Math.max(0, ...numbers) + 1}`;
}

/** Facts that tell most of a component, one of each group. */
const telling: readonly (readonly string[])[] = [
    ['size', 'bore', 'diameter', 'capacity', 'rating'], ['metal', 'material'], ['below-waterline', 'pattern', 'reinforcement', 'hose-type', 'type'],
];

/** A whole component of a kind: next free id, title, and the facts that tell most. */
export function componentSnippet(kind: KindInfo, view: View): string {
    const root = kind.lineage.at(-1);
    const isOwn = (name: string) => kind.properties.has(name) && (kind.properties.get(name)?.declaredBy !== root || kind.lineage.length === 1);
    const chosen = telling.flatMap(group => {
        // Every component may have a metal; only of a fitting, which has a size, is it worth asking first.
        const name = group.find(isOwn) ?? (group.includes('metal') && isOwn('size') ? 'metal' : undefined);
        return name === undefined || !kind.properties.has(name) ? [] : [name];
    });
    const own = [...kind.properties].filter(([name, type]) => type.declaredBy === kind.id && !chosen.includes(name) && type.type !== 'text').map(([name]) => name);
    const shown = [...chosen, ...own.slice(0, Math.max(0, 2 - chosen.length))];
    const facts = shown.map((name, i) => {
        const type = kind.properties.get(name);
        return `${name}: ${type ? valuePlace(type, i + 3, view) : ''}`;
    });
    return `${kind.id} \${1:${nextId(view, kind.id)}} "\${2:${literal(kind.title.toLowerCase())}}" {${facts.length > 0 ? ` ${facts.join('  ')} ` : ' $0 '}}`;
}

function valuePlace(type: PropertyType, place: number, { vocabulary }: View): string {
    const choices = [...choicesOf(type, vocabulary) ?? []];
    return choices.length > 1 && choices.length <= 12 ? `\${${place}|${choices.join(',')}|}` : type.type === 'text' ? `"$${place}"` : `$${place}`;
}

const inBlocks: Readonly<Record<string, readonly Statement[]>> = {
    survey: [
        { word: 'attended', detail: 'a day of attendance', snippet: 'attended ${1:2026-10-06} ${2|ashore,afloat|} "$3"' },
        { word: 'unseen', detail: 'what could not be inspected, and why', snippet: 'unseen "$1": "$2"' },
        { word: 'absent', detail: 'what is not fitted', snippet: 'absent "$1": "$2"' },
    ],
    reading: [{ word: 'row', detail: 'a row of the table', snippet: 'row "$1": $2' }],
    valuation: [{ word: 'comparable', detail: 'a vessel she is compared with', snippet: 'comparable ${1:C1} "${2:vessel}" {\n    $0\n}' }],
    comparable: [{ word: 'adjust', detail: 'an adjustment toward the vessel surveyed', snippet: 'adjust "$1": $2' }],
    photo: [{ word: 'mark', detail: 'a mark drawn over the photograph', snippet: 'mark ${1|arrow,ring,box,label|} "$2": ${3:50 %, 50 %}' }],
    kind: [{ word: 'takes', detail: 'a property of the kind', snippet: 'takes ${1:name}: $2' }],
};

/** Facts a block may record and does not yet, its own kind's before inherited ones; notes and photos. */
export function offerMembers(where: Where, offers: Offers): void {
    const { view, reader } = where;
    const { owner, recorded } = reader.frame;
    const kind = view.vocabulary.kinds.get(owner);
    const set = blockOf(where);
    const written = new Set([...recorded, ...(set?.facts.keys() ?? [])]);
    for (const [name, type] of kind?.properties ?? []) {
        if (!written.has(name)) {
            offers.add(name, {
                rank: 1 + Math.max(0, kind?.lineage.indexOf(type.declaredBy) ?? 0), kind: CompletionItemKind.Property, detail: firstLine(typeTitle(type, view.vocabulary)),
                docs: [type.about, type.usual ? `Usual: ${type.usual.written}.` : undefined].filter(part => part !== undefined).join('\n\n'),
                ...(type.type === 'text' ? { snippet: `${name}: "$1"` } : { insert: `${name}: `, again: true }),
            });
        }
    }
    for (const { word, detail, snippet } of inBlocks[owner] ?? []) {
        offers.add(word, { rank: 2, kind: CompletionItemKind.Keyword, detail, snippet });
    }
    if (where.due === 'caption' || where.due === 'marks') {
        offers.add('{ mark … }', { rank: 0, kind: CompletionItemKind.Snippet, detail: 'marks drawn over the photograph', snippet: '{ mark ${1|arrow,ring,box,label|} "$2": ${3:50 %, 50 %} }', filter: '{' });
    }
    if (owner !== 'joint' && owner !== '' && owner !== 'kind' && owner !== 'photo') {
        offers.add('note', { rank: 30, kind: CompletionItemKind.Keyword, detail: 'a remark in your own words', snippet: 'note "$1"' });
        offers.add('photo', { rank: 30, kind: CompletionItemKind.Keyword, detail: 'a picture with its caption', snippet: 'photo "$1" "$2"' });
    }
}

/** What the phrase before the bracket leaves open. */
export function offerArguments({ view, reader: { frame } }: Where, offers: Offers): void {
    const phrase = view.vocabulary.phrases.get(frame.phrase ?? '');
    for (const name of phrase ? parametersOf(phrase, view, frame.statement?.targets ?? []) : []) {
        offers.add(name, { rank: 0, kind: CompletionItemKind.TypeParameter, detail: `of the phrase ${frame.phrase ?? ''}`, snippet: `${name}: "$1"` });
    }
}

/** The recorded block around the cursor, whose facts after the cursor count too. */
function blockOf({ view: { record }, reader: { frame } }: Where): FactSet | undefined {
    const { word, id } = frame.statement ?? {};
    switch (word) {
        case 'component': return record?.components.get(id ?? '');
        case 'finding': return record?.findings.find(finding => finding.id === id);
        case 'survey': return record?.survey;
        case 'vessel': return record?.vessel;
        default: return undefined;
    }
}

/** Units of the property's dimension, those used for it in this survey first. */
export function offerUnits({ view, reader }: Where, offers: Offers): void {
    const type = reader.frame.owner === 'photo' ? 'fraction' : typeOf({ ...(reader.property === undefined ? {} : { property: reader.property }), frame: reader.frame }, view.vocabulary)?.type;
    const used = new Set<string>();
    for (const component of view.record?.components.values() ?? []) {
        const value = reader.property === undefined ? undefined : component.facts.get(reader.property)?.values[0];
        if (value?.type === 'quantity' && value.figure.dimension === type) {
            used.add(value.figure.unit);
        }
    }
    const common = new Set(['mm', 'in', 'ft', 'm', 'V', 'mV', 'A', 'psi', 'bar', 'gal', 'L', 'lb', 'kg', 'F', 'C', 'USD', 'year', 'gph', 'L/min', 'kn', 'hp', 'kW', '%']);
    if (type === 'money') {
        ['USD', 'EUR', 'GBP', 'NOK', 'CAD', 'AUD'].forEach(currency => offers.add(currency, { rank: used.has(currency) ? 0 : 1, kind: CompletionItemKind.Unit }));
        return;
    }
    for (const unit of allUnits) {
        if (unit.dimension === type) {
            offers.add(unit.name, { rank: used.has(unit.name) ? 0 : common.has(unit.name) ? 0 : 1, kind: CompletionItemKind.Unit, detail: unit.title });
        }
    }
}

/** Values of the property before the cursor. */
export async function offerValues(where: Where, offers: Offers, services: GarboardServices): Promise<void> {
    const { view, reader } = where;
    const { vocabulary } = view;
    const type = typeOf({ ...(reader.property === undefined ? {} : { property: reader.property }), frame: reader.frame }, vocabulary);
    switch (type?.type) {
        case undefined: return reader.property !== undefined ? undefined : reader.frame.owner === 'reading' ? offerCells(where, offers) : reader.frame.owner === 'photo' ? offerPlace(offers) : undefined;
        case 'columns':
            for (const [name, column] of columnsHere(where)) {
                offers.add(name, { rank: 0, kind: CompletionItemKind.Field, detail: firstLine(typeTitle(column, vocabulary)), docs: column.about ?? '' });
            }
            return;
        case 'text':
            offers.add('"…"', { rank: 0, snippet: '"$1"', filter: '"' });
            return offers.phrases('phrase ', reader.frame.statement?.targets ?? []);
        case 'photo': return offerInText({ isClosed: true, wanted: 'photo' }, 0, view, offers, services);
        case 'date': return offers.dates();
        case 'material': {
            const metalFirst = reader.property === 'metal';
            for (const material of vocabulary.materials.values()) {
                offers.add(material.id, { rank: metalFirst === material.isMetal ? 0 : 1, kind: CompletionItemKind.Constant, detail: material.title, docs: material.class });
            }
            return;
        }
        case 'component': {
            const right = (kind: string) => type?.words === undefined || type.words.some(word => vocabulary.kinds.get(kind)?.lineage.includes(word));
            return offerIds(view, offers, component => right(component.kind) ? 0 : 1);
        }
        case 'person':
            for (const person of vocabulary.people.values()) {
                offers.add(person.id, { rank: 0, kind: CompletionItemKind.Variable, detail: person.name });
            }
            return;
        case 'checks': {
            const on = new Set(reader.frame.statement?.targets ?? []);
            const open = openProblems(view);
            const here = new Set(open.filter(p => p.components.some(c => on.has(c.id))).map(p => p.check.id));
            const elsewhere = new Set(open.map(p => p.check.id));
            return offerChecks(view, offers, ({ id }) => reader.frame.answers.includes(id) ? undefined : here.has(id) ? 0 : elsewhere.has(id) ? 1 : 2);
        }
        case 'standards':
            for (const standard of vocabulary.standards.values()) {
                const quoted = `"${standard.name}"`;
                offers.add(quoted, { rank: 0, kind: CompletionItemKind.Reference, detail: standard.title, snippet: `${literal(quoted)} "\${1:clause}"`, filter: `"${standard.name}` });
            }
            return;
        default: {
            const words = type && choicesOf(type, vocabulary);
            if (words) {
                const meanings = vocabulary.wordLists.get(type.type)?.words;
                return offers.words(new Map([...words].map(word => [word, meanings?.get(word) ?? ''])));
            }
            return offerFigures(where, offers, type?.type as Dimension | undefined); // What is left are dimensions.
        }
    }
}

/** Places of a mark, as shares of the photograph. */
function offerPlace(offers: Offers): void {
    offers.add('50 %, 50 %', { rank: 0, kind: CompletionItemKind.Value, detail: 'across and down, as shares of the photograph', snippet: '${1:50} %, ${2:50} %' });
    offers.add('20 %, 30 %, 45 %, 52 %', { rank: 1, kind: CompletionItemKind.Value, detail: 'from one place to another: an arrow, or two corners of a box', snippet: '${1:20} %, ${2:30} %, ${3:45} %, ${4:52} %' });
    offers.add('50 %, 50 %, 8 %', { rank: 2, kind: CompletionItemKind.Value, detail: 'a ring: its center, and its radius as a share of the width', snippet: '${1:50} %, ${2:50} %, ${3:8} %' });
}

/** The columns of the table the cursor stands in. */
function columnsHere({ view: { record, vocabulary }, reader: { frame } }: Where): Columns {
    const reading = record?.readings.find(each => each.id === frame.statement?.id);
    return columnsOf(rowKindOf(reading ? wordOf(reading, 'measures') : undefined, vocabulary), vocabulary);
}

/** Words and components that some column of the table takes. */
function offerCells(where: Where, offers: Offers): void {
    const { vocabulary } = where.view;
    const columns = columnsHere(where);
    for (const [name, type] of columns) {
        for (const word of choicesOf(type, vocabulary) ?? []) {
            offers.add(word, { rank: 0, kind: CompletionItemKind.EnumMember, detail: name });
        }
    }
    if (columns.some(([, type]) => type.type === 'component')) {
        offerIds(where.view, offers, () => 1);
    }
}

/** Figures recorded for the same property elsewhere, the most frequent first. */
function offerFigures({ view, reader }: Where, offers: Offers, dimension: Dimension | undefined): void {
    const counts = new Map<string, number>();
    for (const component of view.record?.components.values() ?? []) {
        const fact = reader.property === undefined ? undefined : component.facts.get(reader.property);
        if (fact?.values[0]?.type === 'quantity' && fact.values[0].figure.dimension === dimension) {
            counts.set(fact.written, (counts.get(fact.written) ?? 0) + 1);
        }
    }
    for (const [written, n] of [...counts].sort((a, b) => b[1] - a[1]).slice(0, 12)) {
        offers.add(written, { rank: 0, kind: CompletionItemKind.Value, detail: n === 1 ? 'recorded once' : `recorded ${n} times` });
    }
}
