/**
 * What a name in the text means, and where else it stands. All of the editor's going-to, finding, renaming and
 * colouring asks here, so they agree. Positions are offsets into the document named; the catalogue's own included.
 */
import type { LangiumDocument } from 'langium';
import { URI } from 'langium';
import { checkById, type Analysis } from '../checks/analyse.js';
import { catalogueScheme, catalogueSources, catalogueText } from '../record/catalogue.js';
import { computedProperties } from '../record/computed.js';
import { closureOf, resolveUse } from '../record/documents.js';
import { choicesOf } from '../record/facts.js';
import { wordOf, type PropertyType, type ProseRef, type Span, type SurveyRecord, type Vocabulary } from '../record/model.js';
import { parseProse, plainText } from '../record/prose.js';
import { rowKindOf } from '../record/readings.js';
import { vocabularyOf } from '../record/vocabulary.js';
import { explanationUri } from './diagnostics.js';
import { photoUris } from './links.js';
import { endOf, indexAt, readingOf, readText, startOf, type Reading, type Role } from './roles.js';
import type { GarboardServices } from './services.js';

export type SymbolKind =
    | 'component' | 'system' | 'run' | 'finding' | 'reading' | 'comparable' | 'kind' | 'property' | 'computed' | 'word' | 'word-list' | 'material' | 'standard'
    | 'phrase' | 'person' | 'check' | 'file' | 'photo' | 'figure' | 'block';

export interface GarboardSymbol {
    readonly kind: SymbolKind;
    readonly id: string;
    /** Of a property: the kind that declares it; of a word: its list, or `kind.property` where it has none. */
    readonly owner?: string;
    /** Of a fact in use: the component it is recorded of. */
    readonly of?: string;
    readonly declarations: readonly Span[];
    /** Where a file, a photo or a check's page is found. */
    readonly uri?: string;
}

export interface Found {
    readonly symbol: GarboardSymbol;
    readonly span: Span;
    readonly declares: boolean;
    readonly role: Role;
}

/** A document with what is known of the survey it belongs to. */
export interface View {
    readonly document: LangiumDocument;
    readonly uri: string;
    readonly text: string;
    readonly reading: Reading;
    readonly analysis: Analysis | undefined;
    readonly record: SurveyRecord | undefined;
    readonly vocabulary: Vocabulary;
    readonly declarations: ReadonlyMap<string, Span>;
}

export function viewOf(services: GarboardServices, document: LangiumDocument): View {
    const uri = document.uri.toString();
    const analyser = services.editor.Analyser;
    const analysis = analyser.analysisOf(uri);
    const files = analyser.files();
    const sources = (analysis?.record.uris ?? [uri]).flatMap(file => files.get(file) ?? []);
    const { vocabulary, declarations } = vocabularyOf([...catalogueSources(), ...sources]);
    return {
        document, uri, text: document.textDocument.getText(), reading: readingOf(document, services.parser.Lexer),
        analysis, record: analysis?.record, vocabulary, declarations,
    };
}

/** What stands at an offset, where it has a meaning. */
export function symbolAt(view: View, offset: number): Found | undefined {
    const { roles } = view.reading;
    const at = indexAt(roles, offset);
    // Between two tokens that touch, a name wins over the sign beside it.
    for (const role of [roles[at + 1], roles[at]]) {
        if (role && startOf(role.token) <= offset && offset <= endOf(role.token)) {
            const found = meaningsOf(role, view).find(({ span }) => span.start <= offset && offset <= span.end);
            if (found) {
                return found;
            }
        }
    }
    return undefined;
}

/** The names a token holds: itself, or the references in braces of its prose. */
export function meaningsOf(role: Role, view: Omit<View, 'document' | 'reading' | 'text' | 'analysis'>): Found[] {
    const { token } = role;
    const span: Span = { uri: view.uri, start: startOf(token), end: endOf(token) };
    const found = (symbol: GarboardSymbol | undefined): Found[] => symbol ? [{ symbol, span, declares: role.declares, role }] : [];
    switch (role.name) {
        case 'component':
            // An acceptance may speak of a finding's own words.
            return found(named(view.record?.components.has(token.image) || !view.record?.findings.some(f => f.id === token.image) ? 'component' : 'finding', token.image, view));
        case 'run': case 'system': case 'finding': case 'reading': case 'comparable':
            return found(named(role.name, token.image, view));
        case 'kind': return found(named('kind', token.image, view));
        case 'material': case 'person': case 'phrase': case 'word-list': case 'check':
            return found(named(role.name, token.image, view));
        case 'standard': return found(named('standard', plainText(token.image), view));
        case 'type': return view.vocabulary.wordLists.has(token.image) ? found(named('word-list', token.image, view)) : [];
        case 'choice':
            return role.type === 'component' ? found(named('kind', token.image, view)) : role.type === 'photo-mark' ? found(word(token.image, 'photo-mark', view, span)) : role.type !== 'word' ? [] : found(word(token.image, `${role.frame.statement?.id ?? ''}.${role.property ?? ''}`, view, span));
        case 'word':
            // A word being defined, or one that a statement takes by itself: the part after unseen, the kind after coverage.
            return found(word(token.image, role.frame.statement?.id ?? '', view, span) ?? ['part', 'vessel-type', 'survey-kind'].map(list => word(token.image, list, view)).find(symbol => symbol !== undefined));
        case 'property': case 'half-typed':
            return found(role.declares ? declaredProperty(token.image, role.frame.statement?.id ?? '', view) : property(token.image, role.frame.owner, view, recordedOf(role)));
        case 'value': return found(valueSymbol(role, view));
        case 'survey-kind': return found(word(token.image, 'survey-kind', view, span));
        case 'figure': return found({ kind: 'figure', id: token.image, declarations: [] });
        case 'use': {
            const path = plainText(token.image);
            return path === '' ? [] : found({ kind: 'file', id: path, declarations: [], uri: resolveUse(view.uri, path) });
        }
        case 'photo': {
            const path = plainText(token.image);
            const uri = view.record ? photoUris(view.record, path)[0] : undefined;
            return path === '' || uri === undefined ? [] : found({ kind: 'photo', id: path, declarations: [], uri });
        }
        case 'text': {
            const type = typeOf(role, view.vocabulary)?.type;
            return type === 'standards' ? found(named('standard', plainText(token.image), view)) : type === 'text' || type === 'photo' ? references(role, view) : [];
        }
        case 'prose': return references(role, view);
        default: return [];
    }
}

/** Id of the component whose block a role stands in. */
function recordedOf({ frame }: Role): string | undefined {
    return frame.statement?.word === 'component' ? frame.statement.id : undefined;
}

/** The declared type of the property whose value a token is. */
export function typeOf({ property: name, frame }: Pick<Role, 'property' | 'frame'>, vocabulary: Vocabulary): PropertyType | undefined {
    return name === undefined ? undefined : vocabulary.kinds.get(frame.owner)?.properties.get(name);
}

type Context = Omit<View, 'document' | 'reading' | 'text' | 'analysis'>;

function named(kind: SymbolKind, id: string, { record, declarations }: Context): GarboardSymbol | undefined {
    const spans = (found: readonly ({ readonly idSpan: Span } | undefined)[]): readonly Span[] => found.flatMap(f => f ? [f.idSpan] : []);
    switch (kind) {
        case 'component': return { kind, id, declarations: spans([record?.components.get(id)]) };
        case 'run': return { kind, id, declarations: spans([record?.runs.find(run => run.id === id)]) };
        case 'finding': return { kind, id, declarations: spans([record?.findings.find(finding => finding.id === id)]) };
        case 'system': return { kind, id, declarations: record?.systems.filter(system => system.id === id).map(system => system.span) ?? [] };
        case 'check': return checkById(id) ? { kind, id, declarations: [], uri: explanationUri(checkById(id)?.id ?? id) } : undefined;
        case 'reading': return { kind, id, declarations: spans([record?.readings.find(reading => reading.id === id)]) };
        case 'comparable': return { kind, id, declarations: [] };
        default: {
            const span = declarations.get(`${kind === 'word-list' ? 'words' : kind}:${id}`);
            return span ? { kind, id, declarations: [span] } : undefined;
        }
    }
}

function property(name: string, owner: string, { vocabulary, declarations }: Context, of?: string): GarboardSymbol | undefined {
    const kind = vocabulary.kinds.get(owner);
    const type = kind?.properties.get(name);
    if (type) {
        const span = declarations.get(`property:${type.declaredBy}.${name}`);
        return { kind: 'property', id: name, owner: type.declaredBy, ...(of === undefined ? {} : { of }), declarations: span ? [span] : [] };
    }
    return computedProperties(kind?.lineage ?? []).has(name) ? { kind: 'computed', id: name, owner, ...(of === undefined ? {} : { of }), declarations: [] } : undefined;
}

function declaredProperty(name: string, kind: string, { declarations }: Context): GarboardSymbol {
    const span = declarations.get(`property:${kind}.${name}`);
    return { kind: 'property', id: name, owner: kind, declarations: span ? [span] : [] };
}

function word(id: string, list: string, { vocabulary, declarations }: Context, at?: Span): GarboardSymbol | undefined {
    const span = declarations.get(`word:${list}.${id}`);
    if (span) {
        return { kind: 'word', id, owner: list, declarations: [{ ...span, end: span.start + id.length }] };
    }
    return at && vocabulary.kinds.has(list.split('.')[0] ?? '') ? { kind: 'word', id, owner: list, declarations: [at] } : undefined;
}

function valueSymbol(role: Role, view: Context): GarboardSymbol | undefined {
    const type = typeOf(role, view.vocabulary);
    const id = role.token.image;
    switch (type?.type) {
        case undefined:
            // In a row of readings an id is a component's; its columns are not known here.
            return role.frame.owner === 'reading' && view.record?.components.has(id) ? named('component', id, view) : undefined;
        case 'columns': {
            const reading = view.record?.readings.find(each => each.id === role.frame.statement?.id);
            return property(id, rowKindOf(reading ? wordOf(reading, 'measures') : undefined, view.vocabulary) ?? '', view);
        }
        case 'material': return named('material', id, view);
        case 'component': return named('component', id, view);
        case 'person': return named('person', id, view);
        case 'checks': return named('check', id, view);
        default: {
            if (!type || ![...choicesOf(type, view.vocabulary) ?? []].includes(id)) {
                return undefined;
            }
            if (type.type !== 'word' && type.type !== 'flag') {
                return word(id, type.type, view);
            }
            const span = view.declarations.get(`property:${type.declaredBy}.${role.property ?? ''}`);
            return { kind: 'word', id, owner: `${type.declaredBy}.${role.property ?? ''}`, declarations: span ? [span] : [] };
        }
    }
}

/** References in braces of a prose token: the id, and the property after the dot. */
export function proseRefs(role: Role, uri: string): ProseRef[] {
    const { image } = role.token;
    return image.includes('{') ? parseProse(image, startOf(role.token), uri).segments.filter(s => typeof s !== 'string') : [];
}

function references(role: Role, view: Context): Found[] {
    return proseRefs(role, view.uri).flatMap(ref => {
        const lead = leadingBlanks(role, ref);
        const idSpan: Span = { ...ref.span, start: ref.span.start + lead, end: ref.span.start + lead + ref.component.length };
        const results: Found[] = [];
        const add = (symbol: GarboardSymbol | undefined, span: Span) => {
            if (symbol) {
                results.push({ symbol, span, declares: false, role });
            }
        };
        const isBlock = ref.component === 'vessel' || ref.component === 'survey';
        if (isBlock) {
            const block = view.record?.[ref.component as 'vessel' | 'survey']; // It is one of the two.
            add({ kind: 'block', id: ref.component, declarations: block ? [{ ...block.span, end: block.span.start + ref.component.length }] : [] }, idSpan);
        } else if (view.record?.components.has(ref.component)) {
            add(named('component', ref.component, view), idSpan);
        }
        const owner = isBlock ? ref.component : view.record?.components.get(ref.component)?.kind;
        if (ref.property !== undefined && owner !== undefined) {
            add(property(ref.property, owner, view, ref.component), { ...idSpan, start: idSpan.end + 1, end: idSpan.end + 1 + ref.property.length });
        }
        return results;
    });
}

function leadingBlanks({ token }: Role, { span }: ProseRef): number {
    const inner = token.image.slice(span.start - startOf(token), span.end - startOf(token));
    return inner.length - inner.trimStart().length;
}

export interface Occurrence {
    readonly span: Span;
    readonly declares: boolean;
}

const ofSurvey: ReadonlySet<SymbolKind> = new Set(['component', 'system', 'run', 'finding', 'reading', 'comparable', 'block']);

/** Every place a symbol stands, in all files of its surveys; the catalogue's declaration among them. */
export function occurrences(services: GarboardServices, view: View, symbol: GarboardSymbol): Occurrence[] {
    const analyser = services.editor.Analyser;
    const files = analyser.files();
    const uris = new Set<string>([view.uri]);
    const addSurveysOf = (uri: string) => analyser.analysesOf(uri).forEach(({ record }) => record.uris.forEach(file => uris.add(file)));
    addSurveysOf(view.uri);
    for (const { uri } of symbol.declarations) {
        if (files.has(uri)) {
            addSurveysOf(uri);
            if (!ofSurvey.has(symbol.kind)) {
                // House vocabulary reaches every file that uses the house file.
                for (const user of files.keys()) {
                    if (closureOf(user, files).some(file => file.uri === uri)) {
                        addSurveysOf(user);
                    }
                }
            }
        }
    }
    const found: Occurrence[] = [];
    for (const uri of uris) {
        const document = services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
        if (document) {
            const other = uri === view.uri ? view : viewOf(services, document);
            collect(other, symbol, other.reading, found);
        }
    }
    for (const { uri } of symbol.declarations) {
        const text = uri.startsWith(catalogueScheme) ? catalogueText(uri) : undefined;
        if (text !== undefined && !uris.has(uri)) {
            uris.add(uri);
            found.push(...symbol.declarations.filter(span => span.uri === uri).map(span => ({ span, declares: true })));
        }
    }
    return found;
}

/** Places of a symbol within one document. */
export function occurrencesIn(view: View, symbol: GarboardSymbol): Occurrence[] {
    const found: Occurrence[] = [];
    collect(view, symbol, view.reading, found);
    return found;
}

function collect(view: View, symbol: GarboardSymbol, { roles }: Reading, found: Occurrence[]): void {
    for (const role of roles) {
        if (!role.token.image.includes(symbol.id)) {
            continue;
        }
        for (const meaning of meaningsOf(role, view)) {
            if (isSame(meaning.symbol, symbol)) {
                found.push({ span: meaning.span, declares: meaning.declares });
            }
        }
    }
}

export function isSame(a: GarboardSymbol, b: GarboardSymbol): boolean {
    return a.kind === b.kind && a.id === b.id && (a.owner ?? '') === (b.owner ?? '');
}

/** Reads a catalogue file, for its positions. */
export function readCatalogue(services: GarboardServices, uri: string): Reading | undefined {
    const text = catalogueText(uri);
    return text === undefined ? undefined : readText(text, services.parser.Lexer);
}
