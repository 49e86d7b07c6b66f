/**
 * The vocabulary in force for a survey: the built-in catalogue and the house files it uses, as data. Kinds inherit
 * the properties of the kind they are.
 */
import { isCoverage, isDeclaration, isFirm, isKind, isMaterial, isOutline, isPerson, isPhrase, isStandard, isWording, isWordList, isYardsticks, type Choice, type Kind, type Takes } from '../language/generated/ast.js';
import { parseFigure } from '../quantities/index.js';
import { lowerFacts, type ValueContext } from './facts.js';
import { Gaps } from './gaps.js';
import { isEmptyText, judgeOutline, judgeWording, mayBeEmpty } from './house-report.js';
import type { Fact, FactSet, Firm, Gap, KindInfo, Material, Person, PhraseText, PropertyType, Span, Standard, Vocabulary, WordingFact, WordList, YardstickFact } from './model.js';
import { parseProse, plainText } from './prose.js';
import { headSpan, partSpan, spanOf, type SourceFile } from './source.js';

const metalClasses = new Set(['copper-alloy', 'nickel-alloy', 'stainless', 'iron-or-steel', 'aluminum', 'zinc-anode', 'magnesium-anode', 'titanium', 'carbon', 'lead', 'tin', 'metal']);

/** Types of property that are not the names of word lists. */
export const plainTypes: ReadonlySet<string> = new Set([
    'number', 'length', 'area', 'volume', 'mass', 'time', 'temperature', 'pressure', 'flow', 'speed', 'voltage', 'current', 'resistance',
    'power', 'charge', 'energy', 'force', 'torque', 'angle', 'fraction', 'rotation', 'rate', 'money', 'date', 'frequency', 'density-per-area',
    'time-of-day', 'text', 'word', 'flag', 'material', 'component', 'person', 'checks', 'standards', 'photo', 'figure', 'columns',
]);

export interface VocabularyResult {
    readonly vocabulary: Vocabulary;
    readonly gaps: readonly Gap[];
    /** Where each kind, property, material, … is declared, by `kind:valve`, `property:valve.size`, `material:brass` … */
    readonly declarations: ReadonlyMap<string, Span>;
}

interface Kept {
    readonly key: readonly unknown[];
    readonly result: VocabularyResult;
}

let last: Kept | undefined;

/**
 * Merges the declarations of the files, built-in ones first. The last result is kept while the same declarations come
 * in at the same places, so that an edit of facts costs nothing here.
 */
export function vocabularyOf(files: readonly SourceFile[]): VocabularyResult {
    const key = files.flatMap((file): unknown[] => file.isBuiltIn ? [file.root] : [file.uri, ...file.root.elements.flatMap((element): unknown[] =>
        isDeclaration(element) ? [element, element.$cstNode?.offset, element.$cstNode?.end] : [])]);
    if (last && last.key.length === key.length && last.key.every((part, i) => part === key[i])) {
        return last.result;
    }
    const result = buildVocabulary(files);
    last = { key, result };
    return result;
}

function buildVocabulary(files: readonly SourceFile[]): VocabularyResult {
    const gaps = new Gaps();
    const declarations = new Map<string, Span>();
    const kindNodes = new Map<string, { node: Kind; uri: string }>();
    const wordLists = new Map<string, WordList>();
    const phrases = new Map<string, PhraseText>();
    const builtInPhrases = new Set<string>();

    const declare = (what: string, name: string, span: Span, article: string): boolean => {
        const key = `${what}:${name}`;
        const earlier = declarations.get(key);
        if (earlier) {
            gaps.add('error', 'declared-twice', span, `The ${article} ${name} is declared already; give this one another name.`, [],
                [{ message: `${name} is first declared here`, span: earlier }]);
            return false;
        }
        declarations.set(key, span);
        return true;
    };

    for (const { root, uri, isBuiltIn } of files) {
        for (const element of root.elements) {
            if (isKind(element) && element.name) {
                const span = partSpan(element, 'name', uri);
                if (declare('kind', element.name, span, 'kind')) {
                    kindNodes.set(element.name, { node: element, uri });
                }
            } else if (isWordList(element) && element.name && declare('words', element.name, partSpan(element, 'name', uri), 'word list')) {
                const words = new Map<string, string>();
                for (const word of element.words) {
                    if (word.name) {
                        words.set(word.name, word.meaning ? plainText(word.meaning) : '');
                        declarations.set(`word:${element.name}.${word.name}`, spanOf(word, uri));
                    }
                }
                wordLists.set(element.name, element.title ? { id: element.name, title: plainText(element.title), words } : { id: element.name, words });
            } else if (isPhrase(element) && element.name) {
                const nameSpan = partSpan(element, 'name', uri);
                // A firm's own wording takes the place of the catalogue's phrase of that name; within one's own files a name is given once.
                if (!isBuiltIn && builtInPhrases.delete(element.name)) {
                    declarations.set(`phrase:${element.name}`, nameSpan);
                } else if (!declare('phrase', element.name, nameSpan, 'phrase')) {
                    continue;
                } else if (isBuiltIn) {
                    builtInPhrases.add(element.name);
                }
                const textSpan = partSpan(element, 'text', uri);
                phrases.set(element.name, { id: element.name, prose: parseProse(element.text ?? '""', textSpan.start, uri) });
            }
        }
    }

    const kinds = new Map<string, KindInfo>();
    const build = (id: string, trail: readonly string[]): KindInfo | undefined => {
        const known = kinds.get(id);
        if (known) {
            return known;
        }
        const found = kindNodes.get(id);
        if (!found) {
            return undefined;
        }
        const { node, uri } = found;
        let parent: KindInfo | undefined;
        if (node.parent) {
            const span = partSpan(node, 'parent', uri);
            if (trail.includes(node.parent) || node.parent === id) {
                gaps.add('error', 'kind-is-itself', span, `The kind ${id} cannot be a ${node.parent}: that is a ${id} in turn.`);
            } else {
                parent = build(node.parent, [...trail, id]);
                if (!parent) {
                    gaps.unknown('kind-unknown', span, node.parent, `No kind is called ${node.parent}.`, kindNodes.keys());
                }
            }
        }
        const properties = new Map(parent?.properties ?? []);
        for (const takes of node.takes) {
            if (takes.name) {
                declarations.set(`property:${id}.${takes.name}`, { ...headSpan(takes, uri), ...nameSpan(takes, uri) });
                properties.set(takes.name, propertyType(takes, id, wordLists, uri, gaps));
            }
        }
        let about: string | undefined;
        let isForm = parent?.isForm ?? false;
        let vesselPart = parent?.vesselPart;
        for (const member of node.members) {
            if (member.$type === 'Property') {
                const item = member.value?.items[0];
                if (member.name === 'about' && item?.$type === 'TextItem') {
                    about = plainText(item.text);
                } else if (member.name === 'form' && item?.$type === 'WordItem') {
                    isForm = item.word === 'yes';
                } else if (member.name === 'part' && item?.$type === 'WordItem') {
                    vesselPart = item.word;
                }
            }
        }
        const info: KindInfo = {
            id, title: node.title ? plainText(node.title) : id, about, parent: parent?.id,
            lineage: [id, ...(parent?.lineage ?? [])], isForm, ...(vesselPart === undefined ? {} : { vesselPart }), properties,
        };
        kinds.set(id, info);
        return info;
    };
    for (const id of kindNodes.keys()) {
        build(id, []);
    }

    const materials = new Map<string, Material>();
    const standards = new Map<string, Standard>();
    const people = new Map<string, Person>();
    const yardsticks = new Map<string, YardstickFact>();
    const coverages = new Map<string, FactSet<'coverage'>>();
    const outlines = new Map<string, FactSet<'outline'>>();
    const wording = new Map<string, WordingFact>();
    let firm: Firm | undefined;
    const vocabulary: Vocabulary = { kinds, materials, standards, wordLists, phrases, people, yardsticks, coverages, outlines, wording };
    const context = (uri: string): ValueContext => ({ uri, vocabulary, gaps, componentKind: () => undefined, componentIds: () => [], targets: [] });

    for (const { root, uri, isBuiltIn } of files) {
        for (const element of root.elements) {
            if (isMaterial(element) && element.name && declare('material', element.name, partSpan(element, 'name', uri), 'material')) {
                const facts = lowerFacts(element.members, 'material', context(uri));
                materials.set(element.name, material(element.name, element.title ? plainText(element.title) : element.name, facts));
            } else if (isStandard(element) && element.name) {
                const name = plainText(element.name);
                if (declare('standard', name, partSpan(element, 'name', uri), 'standard')) {
                    standards.set(name, { name, title: element.title ? plainText(element.title) : name, facts: lowerFacts(element.members, 'standard', context(uri)) });
                }
            } else if (isPerson(element) && element.name && declare('person', element.name, partSpan(element, 'name', uri), 'person')) {
                people.set(element.name, {
                    kind: 'person', id: element.name, name: element.title ? plainText(element.title) : element.name,
                    facts: lowerFacts(element.members, 'person', context(uri)), span: spanOf(element, uri),
                });
            } else if (isYardsticks(element)) {
                for (const [name, fact] of lowerFacts(element.members, 'yardsticks', context(uri))) {
                    yardsticks.set(name, { fact, isFirms: !isBuiltIn });
                }
            } else if (isCoverage(element) && element.name) {
                // A firm's own plan for a kind takes the place of the catalogue's.
                coverages.set(element.name, { kind: 'coverage', facts: lowerFacts(element.members, 'coverage', context(uri)) });
            } else if (isOutline(element) && element.name) {
                const outline: FactSet<'outline'> = { kind: 'outline', facts: lowerFacts(element.members, 'outline', context(uri)) };
                if (!isBuiltIn) {
                    judgeOutline(element.name, partSpan(element, 'name', uri), outline, wordLists.get('survey-kind'), gaps);
                }
                outlines.set(element.name, outline);
            } else if (isWording(element)) {
                for (const [name, fact] of lowerFacts(element.members, 'wording', context(uri))) {
                    judgeWording(name, fact, gaps);
                    if (!isEmptyText(fact) || mayBeEmpty(name)) {
                        wording.set(name, { fact, isFirms: !isBuiltIn });
                    }
                }
            } else if (isFirm(element)) {
                firm = { kind: 'firm', name: element.title ? plainText(element.title) : '', facts: lowerFacts(element.members, 'firm', context(uri)), span: spanOf(element, uri) };
            }
        }
    }
    return { vocabulary: firm ? { ...vocabulary, firm } : vocabulary, gaps: gaps.list, declarations };
}

function nameSpan(takes: Takes, uri: string): Span {
    return partSpan(takes, 'name', uri);
}

function propertyType(takes: Takes, kind: string, wordLists: ReadonlyMap<string, WordList>, uri: string, gaps: Gaps): PropertyType {
    const type = takes.type ?? 'text';
    if (!plainTypes.has(type) && !wordLists.has(type)) {
        gaps.unknown('type-unknown', partSpan(takes, 'type', uri), type, `${type} is neither a type of value nor a list of words.`, [...plainTypes, ...wordLists.keys()]);
    }
    const words: string[] = [];
    let isList = type === 'checks' || type === 'standards' || type === 'component' || type === 'text' || type === 'material' || type === 'photo';
    let usual: PropertyType['usual'];
    const readRange = (written: string) => {
        const parsed = parseFigure(written);
        if (parsed.ok && parsed.figure.kind === 'quantity' && parsed.figure.low !== undefined && parsed.figure.high !== undefined) {
            usual = { low: parsed.figure.low, high: parsed.figure.high, written };
        }
    };
    for (const choice of takes.choices as readonly Choice[]) {
        if (choice.$type === 'WordItem') {
            if (choice.word === 'many' && words.length === 0) {
                isList = true;
            } else {
                words.push(choice.word);
            }
            if (choice.figure) {
                readRange(choice.figure);
            }
        } else {
            readRange(choice.figure);
        }
    }
    return {
        type, isList, declaredBy: kind,
        ...(words.length > 0 ? { words } : {}), ...(usual ? { usual } : {}), ...(takes.about ? { about: plainText(takes.about) } : {}),
    };
}

function material(id: string, title: string, facts: ReadonlyMap<string, Fact>): Material {
    const range = (property: string) => {
        const value = facts.get(property)?.values[0];
        return value?.type === 'quantity' ? { low: value.low ?? value.si, high: value.high ?? value.si } : undefined;
    };
    const zinc = facts.get('zinc')?.values[0];
    const cls = facts.get('class')?.values[0];
    const className = cls?.type === 'word' ? cls.word : 'other';
    const conducts = facts.get('conducts')?.values[0];
    const isMetal = conducts?.type === 'word' ? conducts.word === 'yes' : metalClasses.has(className);
    return {
        id, title, class: className, facts, isMetal,
        ...(range('potential') ? { potentialV: range('potential') } : {}),
        ...(range('active-potential') ? { activePotentialV: range('active-potential') } : {}),
        ...(zinc?.type === 'quantity' ? { zinc: zinc.si } : {}),
    };
}
