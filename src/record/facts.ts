/**
 * Lowers written properties to facts: checks that the kind takes the property and that the value is of its type, and
 * says in the trade's words what is not right. A value that is not right is left out of the record, so that no check
 * reads it.
 */
import type { Member, Property, ValueItem } from '../language/generated/ast.js';
import { dimensionTitle, parseFigure, type Dimension } from '../quantities/index.js';
import type { Gaps } from './gaps.js';
import type { Fact, PropertyType, Prose, ProseRef, Span, Value, Vocabulary } from './model.js';
import { parseProse, plainText } from './prose.js';
import { headSpan, partSpan, spanOf } from './source.js';

export interface ValueContext {
    readonly uri: string;
    readonly vocabulary: Vocabulary;
    readonly gaps: Gaps;
    /** Kind of the component with an id, where there is one. */
    readonly componentKind: (id: string) => string | undefined;
    readonly componentIds: () => Iterable<string>;
    /** Ids a bare `{bore}` in a phrase may refer to: the components a finding is about. */
    readonly targets: readonly string[];
    /** Columns that a table of readings may name. */
    readonly columns?: ReadonlySet<string>;
    /** Receives every prose with its span, to be checked once all facts are known. */
    readonly prose?: (prose: Prose) => void;
}

const dimensions: ReadonlySet<string> = new Set<Dimension>([
    'number', 'length', 'area', 'volume', 'mass', 'time', 'temperature', 'pressure', 'flow', 'speed', 'voltage', 'current', 'resistance',
    'power', 'charge', 'energy', 'force', 'torque', 'angle', 'fraction', 'rotation', 'rate', 'money', 'frequency', 'density-per-area', 'time-of-day',
]);

export const flagWords = ['yes', 'no'] as const;

/** The properties written among members, by name. */
export function lowerFacts(members: readonly Member[], kind: string, context: ValueContext): Map<string, Fact> {
    const facts = new Map<string, Fact>();
    for (const member of members) {
        if (member.$type === 'Property') {
            lowerProperty(member, kind, context, facts);
        } else if (member.$type === 'HalfTyped') {
            const span = spanOf(member, context.uri);
            const properties = context.vocabulary.kinds.get(kind)?.properties;
            if (properties?.has(member.name)) {
                context.gaps.add('error', 'value-missing', span, `${member.name} has no value; write ${member.name}: and the value.`,
                    [{ title: 'Add the colon', span: { ...span, start: span.end }, text: ': ' }]);
            } else {
                context.gaps.unknown('property-unknown', span, member.name, `${member.name} is not a property; a fact is written name: value.`, properties?.keys() ?? []);
            }
        }
    }
    return facts;
}

export function lowerProperty(property: Property, kind: string, context: ValueContext, facts: Map<string, Fact>): void {
    const { vocabulary, gaps, uri } = context;
    const start = property.$cstNode?.offset ?? 0;
    const nameSpan: Span = { uri, start, end: start + property.name.length };
    const info = vocabulary.kinds.get(kind);
    const type = info?.properties.get(property.name);
    if (!info) {
        return; // An unknown kind has been reported; its properties cannot be judged.
    }
    if (!type) {
        gaps.unknown('property-unknown', nameSpan, property.name, `A ${info.title.toLowerCase()} has no property ${property.name}.`, info.properties.keys(),
            'error', `It takes ${[...info.properties.keys()].slice(0, 6).join(', ')} and others.`);
        return;
    }
    if (!property.value || property.value.items.length === 0) {
        gaps.add('error', 'value-missing', nameSpan, `${property.name} has no value yet; it takes ${typeTitle(type, vocabulary)}.`);
        return;
    }
    const earlier = facts.get(property.name);
    if (earlier) {
        gaps.add('error', 'fact-twice', nameSpan, `${property.name} is recorded twice here; keep the one that is right.`,
            [{ title: 'Remove this one', span: spanOf(property, uri), text: '' }], [{ message: `${property.name} is first recorded here`, span: earlier.nameSpan }]);
        return;
    }
    const items = property.value.items;
    if (items.length > 1 && !type.isList) {
        gaps.add('error', 'value-not-single', spanOf(property.value, uri), `${property.name} takes one value, and ${items.length} are written; keep one.`);
        return;
    }
    const values: Value[] = [];
    for (const item of items) {
        const value = lowerItem(item, property.name, type, context);
        if (value) {
            values.push(value);
        }
    }
    if (values.length > 0) {
        const span = spanOf(property.value, uri);
        const text = property.$cstNode?.root.fullText ?? '';
        facts.set(property.name, { name: property.name, values, written: text.slice(span.start, span.end), span, nameSpan });
    }
}

/** What a property takes, for a message: "a length, such as 1-1/2 in or 38 mm". */
export function typeTitle(type: PropertyType, vocabulary: Vocabulary): string {
    if (dimensions.has(type.type)) {
        return dimensionTitle(type.type as Dimension);
    }
    const words = choicesOf(type, vocabulary);
    if (words) {
        const list = [...words];
        return list.length > 8 ? `one of ${list.slice(0, 8).join(', ')} …` : `one of ${list.join(', ')}`;
    }
    switch (type.type) {
        case 'date': return 'a date, such as 2026-10-06 or 2026-10';
        case 'text': return 'text in quotes';
        case 'material': return 'a material, such as bronze';
        case 'component': return 'the id of a component';
        case 'person': return 'the id of a person declared in a house file';
        case 'checks': return 'the ids of the checks it answers';
        case 'standards': return 'a standard and its clause, each in quotes';
        case 'photo': return 'the path of a picture in quotes';
        case 'columns': return 'the names of the columns, or headings in quotes';
        default: return 'a value';
    }
}

/** The words a property may take, where it takes words. */
export function choicesOf(type: PropertyType, vocabulary: Vocabulary): Iterable<string> | undefined {
    if (type.type === 'flag') {
        return flagWords;
    }
    if (type.type === 'word') {
        return type.words ?? [];
    }
    return vocabulary.wordLists.get(type.type)?.words.keys();
}

export function lowerItem(item: ValueItem, property: string, type: PropertyType, context: ValueContext): Value | undefined {
    const { uri, gaps, vocabulary } = context;
    const wrong = () => {
        gaps.add('error', 'value-of-wrong-kind', spanOf(item, uri), `${property} takes ${typeTitle(type, vocabulary)}; ${item.$cstNode?.text ?? 'this'} is not that.`);
        return undefined;
    };
    if (dimensions.has(type.type)) {
        return item.$type === 'FigureItem' ? lowerFigure(item.figure, item, property, type, context) : wrong();
    }
    switch (type.type) {
        case 'figure':
            if (item.$type !== 'FigureItem') {
                return wrong();
            }
            return readFigure(item.figure, item, context);
        case 'date':
            return item.$type === 'FigureItem' ? lowerDate(item.figure, item, property, type, context) : wrong();
        case 'text':
        case 'photo':
            if (item.$type === 'TextItem') {
                if (item.clause !== undefined) {
                    gaps.add('error', 'text-in-two-parts', partSpan(item, 'clause', uri), `${property} is one text; join the two, or write an inch mark inside text as in.`);
                }
                const prose = parseProse(item.text, item.$cstNode?.offset ?? 0, uri, (span, inner) => badBraces(span, inner, context));
                context.prose?.(prose);
                return { type: 'text', prose };
            }
            return item.$type === 'PhraseItem' ? lowerPhrase(item, context) : wrong();
        case 'material': {
            if (item.$type !== 'WordItem') {
                return wrong();
            }
            const material = vocabulary.materials.get(item.word);
            if (!material) {
                gaps.unknown('material-unknown', spanOf(item, uri), item.word, `No material is called ${item.word}.`, vocabulary.materials.keys(), 'error', 'Declare it in the house file, or write the nearest one in the catalogue.');
                return undefined;
            }
            return { type: 'material', material };
        }
        case 'component': {
            if (item.$type !== 'WordItem') {
                return wrong();
            }
            const kind = context.componentKind(item.word);
            if (kind === undefined) {
                gaps.unknown('id-unknown', spanOf(item, uri), item.word, `No component has the id ${item.word}.`, context.componentIds());
                return undefined;
            }
            const lineage = vocabulary.kinds.get(kind)?.lineage ?? [];
            if (type.words && lineage.length > 0 && !type.words.some(word => lineage.includes(word))) {
                gaps.add('warning', 'component-of-wrong-kind', spanOf(item, uri), `${item.word} is a ${kind}; ${property} names ${type.words.map(w => `a ${w}`).join(' or ')}.`);
            }
            return { type: 'component', id: item.word };
        }
        case 'person':
            if (item.$type !== 'WordItem') {
                return wrong();
            }
            if (!vocabulary.people.has(item.word)) {
                gaps.unknown('person-unknown', spanOf(item, uri), item.word, `No person is called ${item.word}.`, vocabulary.people.keys(), 'error', 'Declare people in the house file: person L-Norgaard "Liv Norgaard" { … }.');
                return undefined;
            }
            return { type: 'person', id: item.word };
        case 'columns': {
            if (item.$type === 'TextItem') {
                return { type: 'text', prose: parseProse(item.text, item.$cstNode?.offset ?? 0, uri) };
            }
            if (item.$type !== 'WordItem') {
                return wrong();
            }
            if (context.columns && !context.columns.has(item.word)) {
                gaps.unknown('column-unknown', spanOf(item, uri), item.word, `Such a table has no column ${item.word}.`, context.columns, 'error',
                    context.columns.size === 0 ? 'Say what it measures first.' : `It has ${[...context.columns].join(', ')}.`);
                return undefined;
            }
            return { type: 'word', word: item.word };
        }
        case 'checks':
            return item.$type === 'WordItem' ? { type: 'check', id: item.word, span: spanOf(item, uri) } : wrong();
        case 'standards': {
            if (item.$type !== 'TextItem') {
                return wrong();
            }
            const standard = plainText(item.text);
            if (!vocabulary.standards.has(standard)) {
                gaps.unknown('standard-unknown', partSpan(item, 'text', uri), standard, `The standard ${standard} is not in the catalogue, so the report cannot say whether it is law or voluntary.`,
                    vocabulary.standards.keys(), 'warning', 'Declare it in the house file: standard "…" "title" { standing: voluntary }.');
            }
            return { type: 'citation', standard, ...(item.clause === undefined ? {} : { clause: plainText(item.clause) }), span: spanOf(item, uri) };
        }
        default: {
            if (item.$type !== 'WordItem') {
                return wrong();
            }
            const choices = choicesOf(type, vocabulary);
            if (!choices) {
                return undefined; // The type itself is unknown and has been reported where it is declared.
            }
            const known = new Set(choices);
            if (!known.has(item.word)) {
                gaps.unknown('word-unknown', headSpan(item, uri), item.word, `${item.word} is not a word for ${property}.`, known, 'error', `It takes ${typeTitle(type, vocabulary)}.`);
                return undefined;
            }
            if (item.figure !== undefined) {
                const amount = readFigure(item.figure, item, context, partSpan(item, 'figure', uri));
                return amount?.type === 'quantity' ? { type: 'word', word: item.word, amount } : undefined;
            }
            return { type: 'word', word: item.word };
        }
    }
}

function badBraces(span: Span, inner: string, context: ValueContext): void {
    context.gaps.add('error', 'reference-malformed', span, `{${inner}} names no fact; write {H9.bore}, or \\{ for a brace that is meant as text.`);
}

function readFigure(written: string, item: ValueItem, { gaps, uri }: ValueContext, at?: Span): Value | undefined {
    const parsed = parseFigure(written);
    const span = at ?? spanOf(item, uri);
    if (!parsed.ok) {
        gaps.add('error', 'figure-malformed', span, parsed.problem, parsed.suggestion === undefined ? [] : [{ title: `Write ${parsed.suggestion}`, span, text: parsed.suggestion }]);
        return undefined;
    }
    const { figure } = parsed;
    if (figure.kind === 'date') {
        return { type: 'date', figure };
    }
    return {
        type: 'quantity', si: figure.si, figure,
        ...(figure.low !== undefined ? { low: figure.low } : {}), ...(figure.high !== undefined ? { high: figure.high } : {}),
    };
}

function lowerFigure(written: string, item: ValueItem, property: string, type: PropertyType, context: ValueContext): Value | undefined {
    const value = readFigure(written, item, context);
    if (!value) {
        return undefined;
    }
    const { gaps, uri } = context;
    const span = spanOf(item, uri);
    const expected = type.type as Dimension;
    if (value.type !== 'quantity') {
        gaps.add('error', 'dimension-wrong', span, `${property} takes ${dimensionTitle(expected)}; ${written} is a date.`);
        return undefined;
    }
    const { figure } = value;
    if (figure.dimension !== expected) {
        if (figure.unit === '' && expected !== 'number') {
            const units = expected === 'length' ? ['mm', 'in'] : expected === 'fraction' ? ['%'] : [];
            gaps.add('error', 'unit-missing', span, `${property} is ${written} with no unit; it takes ${dimensionTitle(expected)}.`,
                units.map(unit => ({ title: `Write ${written} ${unit}`, span, text: `${written} ${unit}` })));
        } else {
            gaps.add('error', 'dimension-wrong', span, `${property} takes ${dimensionTitle(expected)}; ${written} is ${dimensionTitle(figure.dimension).split(',')[0] ?? 'something else'}.`);
        }
        return undefined;
    }
    return value;
}

function lowerDate(written: string, item: ValueItem, property: string, type: PropertyType, context: ValueContext): Value | undefined {
    const value = readFigure(written, item, context);
    if (!value) {
        return undefined;
    }
    if (value.type === 'quantity' && value.figure.unit === '' && Number.isInteger(value.si) && value.si >= 1800 && value.si <= 2200) {
        return { type: 'date', figure: { kind: 'date', year: value.si, month: 1, precision: 'year', written, iso: String(value.si) } };
    }
    if (value.type !== 'date') {
        context.gaps.add('error', 'dimension-wrong', spanOf(item, context.uri), `${property} takes ${typeTitle(type, context.vocabulary)}; ${written} is not a date.`);
        return undefined;
    }
    return value;
}

function lowerPhrase(item: Extract<ValueItem, { $type: 'PhraseItem' }>, context: ValueContext): Value | undefined {
    const { vocabulary, gaps, uri } = context;
    const phrase = vocabulary.phrases.get(item.name);
    if (!phrase) {
        gaps.unknown('phrase-unknown', partSpan(item, 'name', uri), item.name, `No phrase is called ${item.name}.`, vocabulary.phrases.keys(), 'error', 'Declare it in the house file: phrase name "text".');
        return undefined;
    }
    const args = new Map<string, Prose>();
    for (const argument of item.arguments) {
        const first = argument.value?.items[0];
        const token = first?.$cstNode?.text ?? '';
        args.set(argument.name, first?.$type === 'TextItem'
            ? parseProse(first.text, first.$cstNode?.offset ?? 0, uri)
            : { text: token, segments: [token] });
    }
    const segments: (string | ProseRef)[] = [];
    const span = spanOf(item, uri);
    for (const segment of phrase.prose.segments) {
        if (typeof segment === 'string') {
            segments.push(segment);
        } else if (segment.property === undefined && args.has(segment.component)) {
            segments.push(...(args.get(segment.component)?.segments ?? []));
            args.delete(segment.component);
        } else if (segment.property === undefined && context.componentKind(segment.component) === undefined) {
            const target = context.targets.find(id => vocabulary.kinds.get(context.componentKind(id) ?? '')?.properties.has(segment.component));
            if (target === undefined) {
                gaps.add('error', 'phrase-parameter-missing', span, `The phrase ${item.name} asks for ${segment.component}; write phrase ${item.name}(${segment.component}: …).`);
            } else {
                segments.push({ component: target, property: segment.component, span });
            }
        } else {
            segments.push({ ...segment, span });
        }
    }
    const prose: Prose = { text: segments.map(s => typeof s === 'string' ? s : `{${s.component}${s.property ? `.${s.property}` : ''}}`).join(''), segments, span };
    context.prose?.(prose);
    return { type: 'text', prose };
}
