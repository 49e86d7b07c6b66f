/**
 * The record: a survey as typed, readonly data, every quantity in SI and every name resolved.
 *
 * Produced only by `lowerSurvey` and read by checks and the report. It knows source positions as spans and nothing
 * else of the text it came from.
 */
import type { Figure } from '../quantities/index.js';
import type { AnyFacts, FactsOf, KindName } from './generated/kinds.js';

/** A stretch of source text: UTF-16 offsets in the document `uri`. */
export interface Span {
    readonly uri: string;
    readonly start: number;
    readonly end: number;
}

export type QuantityFigure = Extract<Figure, { kind: 'quantity' }>;
export type DateFigure = Extract<Figure, { kind: 'date' }>;

/** A number with its dimension; `si` is in SI units (metres, kelvin, pascals …), money in units of `figure.currency`. */
export interface Quantity {
    readonly type: 'quantity';
    readonly si: number;
    /** Ends of a range, in SI, where one was written. */
    readonly low?: number;
    readonly high?: number;
    readonly figure: QuantityFigure;
}

export interface DateValue {
    readonly type: 'date';
    readonly figure: DateFigure;
}

/** A word of choice; `amount` is the figure some words carry, as in `within-days 30`. */
export interface Word<W extends string = string> {
    readonly type: 'word';
    readonly word: W;
    readonly amount?: Quantity;
}

export interface MaterialValue {
    readonly type: 'material';
    readonly material: Material;
}

/** A reference to a component, by id. */
export interface ComponentRef {
    readonly type: 'component';
    readonly id: string;
}

export interface PersonRef {
    readonly type: 'person';
    readonly id: string;
}

export interface Text {
    readonly type: 'text';
    readonly prose: Prose;
}

export interface Citation {
    readonly type: 'citation';
    readonly standard: string;
    readonly clause?: string;
    readonly span: Span;
}

/** The id of a check, as written after `answers:`. */
export interface CheckRef {
    readonly type: 'check';
    readonly id: string;
    readonly span: Span;
}

export type Value = Quantity | DateValue | Word | MaterialValue | ComponentRef | PersonRef | Text | Citation | CheckRef;

/** Prose with references to facts in braces, kept apart so that the report can print the recorded value. */
export interface Prose {
    /** The text as the surveyor sees it, quotes and escapes removed, braces kept. */
    readonly text: string;
    readonly segments: readonly (string | ProseRef)[];
    /** The token as written, quotes included; absent where the words come from a phrase. */
    readonly raw?: string;
    readonly span?: Span;
}

export interface ProseRef {
    /** `H9.bore` has component `H9` and property `bore`; `vessel.draft` has component `vessel`. */
    readonly component: string;
    readonly property?: string;
    readonly span: Span;
}

/** A recorded fact: one property with its values, usually one. */
export interface Fact<V extends Value = Value> {
    readonly name: string;
    readonly values: readonly V[];
    /** The value as written. */
    readonly written: string;
    readonly span: Span;
    readonly nameSpan: Span;
}

/** A block of facts of one kind. */
export interface FactSet<K extends KindName = KindName> {
    readonly kind: K;
    readonly facts: ReadonlyMap<string, Fact>;
}

export interface Photo {
    /** Path as written, relative to the survey's main file. */
    readonly file: string;
    readonly caption?: Prose;
    /** Marks to be drawn over it. */
    readonly marks: readonly PhotoMark[];
    readonly span: Span;
}

/**
 * A mark over a photograph. Places are shares, 0 to 1, of the upright picture's width and height from its upper left
 * corner. An `arrow` runs from its first point to its second; a `ring` has a center and a radius (share of the width);
 * a `box` has two corners; a `label` stands at its point.
 */
export interface PhotoMark {
    readonly shape: 'arrow' | 'ring' | 'box' | 'label';
    readonly label?: string;
    readonly points: readonly { readonly across: number; readonly down: number }[];
    /** Of a ring. */
    readonly radius?: number;
    readonly span: Span;
}

/** What the picture file itself tells, where files can be read. */
export interface PhotoFacts {
    readonly isMissing?: boolean;
    /** When it was taken by the camera's clock, as 2026-10-06T14:05:00 without a zone. */
    readonly taken?: string;
    /** Where it was taken by the camera's receiver: degrees (WGS 84), north and east positive. */
    readonly position?: { readonly latitude: number; readonly longitude: number };
    /** SHA-256 of the file in hexadecimal, where the report is being issued. */
    readonly sha256?: string;
}

export interface Component<K extends KindName = KindName> extends FactSet<K> {
    readonly id: string;
    readonly title?: string;
    readonly system?: string;
    readonly notes: readonly Prose[];
    readonly photos: readonly Photo[];
    readonly span: Span;
    readonly idSpan: Span;
}

export interface System {
    readonly id: string;
    readonly title: string;
    readonly span: Span;
}

export type RunEnd = 'component' | 'open' | 'capped' | 'blanked';

/** A plumbing run: components in order, and how it ends. */
export interface Run extends FactSet<'run'> {
    readonly id: string;
    readonly title?: string;
    readonly system?: string;
    readonly components: readonly Component[];
    readonly joints: readonly Joint[];
    readonly end: RunEnd;
    readonly span: Span;
    readonly idSpan: Span;
}

/**
 * Two neighbours of a run and what is recorded of their joint. `fromEnd` and `toEnd` say which end of a part with
 * two different ends meets the neighbour: 0 the first, 1 the second.
 */
export interface Joint extends FactSet<'joint'> {
    readonly run: Run;
    readonly index: number;
    readonly from: Component;
    readonly to: Component;
    readonly fromEnd: 0 | 1;
    readonly toEnd: 0 | 1;
    /** From the arrow to the component after it. */
    readonly span: Span;
}

/** Parts that touch metal to metal, apart from a run. */
export interface Contact extends FactSet<'contact'> {
    readonly components: readonly Component[];
    readonly span: Span;
}

export interface Finding extends FactSet<'finding'> {
    readonly id: string;
    readonly title: string;
    readonly system?: string;
    readonly on: readonly Component[];
    readonly answers: readonly CheckRef[];
    readonly photos: readonly Photo[];
    readonly notes: readonly Prose[];
    readonly span: Span;
    readonly idSpan: Span;
}

export interface Acceptance {
    readonly check: CheckRef;
    readonly on: readonly Component[];
    /** Findings whose own words are accepted, by id. */
    readonly onFindings: readonly string[];
    readonly reason?: Prose;
    readonly system?: string;
    readonly span: Span;
}

export interface Attendance {
    readonly date?: DateFigure;
    readonly state: 'ashore' | 'afloat' | undefined;
    readonly place?: string;
    readonly span: Span;
}

export interface Unseen {
    readonly absent: boolean;
    readonly what: string;
    /** The part of the vessel it speaks for, where one is named. */
    readonly part?: string;
    readonly reason?: Prose;
    readonly system?: string;
    readonly span: Span;
}

export interface SurveyHead extends FactSet<'survey'> {
    readonly number?: string;
    readonly surveyKind?: string;
    readonly attendances: readonly Attendance[];
    readonly photos: readonly Photo[];
    readonly span: Span;
}

export interface Vessel extends FactSet<'vessel'> {
    readonly name: string;
    readonly photos: readonly Photo[];
    readonly notes: readonly Prose[];
    readonly span: Span;
}

export interface Reading extends FactSet<'reading'> {
    readonly id: string;
    readonly title?: string;
    readonly system?: string;
    readonly on: readonly Component[];
    readonly rows: readonly Row[];
    readonly span: Span;
    readonly idSpan: Span;
}

/** One cell of a row: its column where it is known, its value unless it is left empty. */
export interface Cell {
    readonly column?: string;
    readonly value?: Value;
    readonly span: Span;
}

/** A row of a table: its values by column as facts, and its cells as they stand. */
export interface Row<K extends KindName = KindName> extends FactSet<K> {
    readonly label: string;
    readonly cells: readonly Cell[];
    readonly span: Span;
}

export interface Comparable extends FactSet<'comparable'> {
    readonly id: string;
    readonly title?: string;
    readonly adjustments: readonly { readonly reason: string; readonly amount?: Quantity; readonly span: Span }[];
    readonly span: Span;
}

export interface Valuation extends FactSet<'valuation'> {
    readonly title?: string;
    readonly comparables: readonly Comparable[];
    readonly span: Span;
}

export interface Person extends FactSet<'person'> {
    readonly id: string;
    readonly name: string;
    readonly span: Span;
}

export interface Firm extends FactSet<'firm'> {
    readonly name: string;
    readonly span: Span;
}

/** Potentials are in volts against the saturated calomel electrode in flowing sea water, from one table. */
export interface Material {
    readonly id: string;
    readonly title: string;
    readonly class: string;
    readonly potentialV?: { readonly low: number; readonly high: number };
    readonly activePotentialV?: { readonly low: number; readonly high: number };
    /** Share of zinc by mass, 0 to 1. */
    readonly zinc?: number;
    readonly isMetal: boolean;
    readonly facts: ReadonlyMap<string, Fact>;
}

export interface Standard {
    readonly name: string;
    readonly title: string;
    readonly facts: ReadonlyMap<string, Fact>;
}

export interface WordList {
    readonly id: string;
    readonly title?: string;
    readonly words: ReadonlyMap<string, string>;
}

export interface PhraseText {
    readonly id: string;
    readonly prose: Prose;
}

export interface PropertyType {
    /** `length`, `word`, `material`, `component`, the id of a word list … */
    readonly type: string;
    readonly words?: readonly string[];
    /** Usual range in SI, to catch slips. */
    readonly usual?: { readonly low: number; readonly high: number; readonly written: string };
    readonly about?: string;
    /** Whether several values may be written, parted by commas. */
    readonly isList: boolean;
    readonly declaredBy: string;
}

export interface KindInfo {
    readonly id: string;
    readonly title: string;
    readonly about?: string;
    readonly parent?: string;
    /** Itself and its ancestors, nearest first. */
    readonly lineage: readonly string[];
    /** A block of the language (survey, joint, finding …), not a component. */
    readonly isForm: boolean;
    /** The part of the vessel that such a component belongs to. */
    readonly vesselPart?: string;
    /** Own and inherited properties. */
    readonly properties: ReadonlyMap<string, PropertyType>;
}

/** Something the text does not say properly: an unknown name, a wrong unit, a value not yet typed. */
export interface Gap {
    readonly code: string;
    readonly severity: 'error' | 'warning' | 'info' | 'hint';
    readonly message: string;
    readonly span: Span;
    /** Texts that would mend it, best first. */
    readonly mends: readonly { readonly title: string; readonly span: Span; readonly text: string }[];
    readonly related?: readonly { readonly message: string; readonly span: Span }[];
}

/** A limit with who set it. */
export interface YardstickFact {
    readonly fact: Fact;
    readonly isFirms: boolean;
}

/** Standing words with whose they are. */
export interface WordingFact {
    readonly fact: Fact;
    readonly isFirms: boolean;
}

/** A recommendation of an issued report, as its frozen record has it. */
export interface IssuedFinding {
    /** Its number, which never changes. */
    readonly id: string;
    readonly title: string;
    readonly urgency?: string;
    /** When it is due, in words. */
    readonly due?: string;
    /** What it was on, by name. */
    readonly on: readonly string[];
    readonly place?: string;
    readonly seen?: string;
    readonly because?: string;
    readonly recommend?: string;
    /** What had become of it when that report was issued, where it followed up another. */
    readonly outcome?: string;
}

/** What an issued report says: the one a survey follows, or the survey's own last issue. */
export interface IssuedReport {
    readonly number: string;
    readonly issue?: number;
    /** ISO date of issue. */
    readonly issued?: string;
    readonly vessel?: string;
    readonly hullNumber?: string;
    readonly findings: readonly IssuedFinding[];
    /** Where it was read, for messages: a path as a surveyor knows it. */
    readonly source: string;
    /** Whether it was read from its frozen record and not from a survey that may have been edited since. */
    readonly isFrozen: boolean;
}

/** What a host tells of things outside the text: picture files, and reports issued earlier. */
export interface OutsideFacts {
    /** By path as written; empty where no files can be read. */
    readonly photos?: ReadonlyMap<string, PhotoFacts>;
    /** The report that the survey follows; `not-found` where the host has looked and there is none. */
    readonly followed?: IssuedReport | 'not-found';
    /** This survey's own last issue. */
    readonly lastIssue?: IssuedReport;
}

/** The vocabulary in force: the built-in catalogue and the house files the survey uses. */
export interface Vocabulary {
    readonly kinds: ReadonlyMap<string, KindInfo>;
    readonly materials: ReadonlyMap<string, Material>;
    readonly standards: ReadonlyMap<string, Standard>;
    readonly wordLists: ReadonlyMap<string, WordList>;
    readonly phrases: ReadonlyMap<string, PhraseText>;
    readonly people: ReadonlyMap<string, Person>;
    readonly firm?: Firm;
    /** Limits where practice differs: the firm's where it gives one, else the catalogue's. */
    readonly yardsticks: ReadonlyMap<string, YardstickFact>;
    /** What a survey of a kind, or of a kind of craft, is to speak of, by that kind. */
    readonly coverages: ReadonlyMap<string, FactSet<'coverage'>>;
    /** Sections of a report in their order, by kind of survey: the firm's where it gives one, else the catalogue's. */
    readonly outlines: ReadonlyMap<string, FactSet<'outline'>>;
    /** Standing words by name: the firm's where it gives them, else the catalogue's. */
    readonly wording: ReadonlyMap<string, WordingFact>;
}

export interface SurveyRecord {
    readonly mainUri: string;
    /** Documents that hold facts of this survey, the main file first. */
    readonly uris: readonly string[];
    readonly survey?: SurveyHead;
    readonly vessel?: Vessel;
    readonly systems: readonly System[];
    readonly components: ReadonlyMap<string, Component>;
    readonly runs: readonly Run[];
    readonly contacts: readonly Contact[];
    readonly findings: readonly Finding[];
    readonly acceptances: readonly Acceptance[];
    readonly unseen: readonly Unseen[];
    readonly readings: readonly Reading[];
    readonly valuations: readonly Valuation[];
    /** By path as written; empty where no files can be read. */
    readonly photoFacts: ReadonlyMap<string, PhotoFacts>;
    /** The report that the survey follows; `not-found` where it was looked for in vain, undefined where nobody could look. */
    readonly followed?: IssuedReport | 'not-found';
    /** The survey's own last issue, where it was issued before. */
    readonly lastIssue?: IssuedReport;
    readonly vocabulary: Vocabulary;
    readonly gaps: readonly Gap[];
}

/** The value of a property, the first where several are written. The property must be one the kind takes. */
export function valueOf<K extends KindName, P extends keyof FactsOf<K> & string>(
    set: FactSet<K>, property: P
): FactsOf<K>[P] | undefined {
    // The lowering only stores values of the property's declared type.
    return set.facts.get(property)?.values[0] as FactsOf<K>[P] | undefined;
}

/** All values of a property that takes a list. */
export function valuesOf<K extends KindName, P extends keyof FactsOf<K> & string>(
    set: FactSet<K>, property: P
): readonly FactsOf<K>[P][] {
    return (set.facts.get(property)?.values ?? []) as readonly FactsOf<K>[P][];
}

/** The value of a property that some kind declares, on a component of any kind. */
export function anyValue<P extends keyof AnyFacts & string>(set: FactSet, property: P): AnyFacts[P] | undefined {
    return set.facts.get(property)?.values[0] as AnyFacts[P] | undefined;
}

/** SI value of a quantity property of any kind. */
export function siOf<P extends keyof AnyFacts & string>(set: FactSet, property: P): number | undefined {
    const value = set.facts.get(property)?.values[0];
    return value?.type === 'quantity' ? value.si : undefined;
}

/** The word recorded for a property of any kind. */
export function wordOf<P extends keyof AnyFacts & string>(set: FactSet, property: P): string | undefined {
    const value = set.facts.get(property)?.values[0];
    return value?.type === 'word' ? value.word : undefined;
}

/** True or false where a yes/no property is recorded, undefined where it is not. */
export function flagOf<P extends keyof AnyFacts & string>(set: FactSet, property: P): boolean | undefined {
    const word = wordOf(set, property);
    return word === 'yes' ? true : word === 'no' ? false : undefined;
}

/** A limit where practice differs, in SI; `low` and `high` where it is a range. */
export interface Yardstick {
    readonly si: number;
    readonly low: number;
    readonly high: number;
    /** As written, such as "8 years". */
    readonly written: string;
    /** Whose it is, for a sentence: "the firm's limit" or "the usual limit". */
    readonly whose: string;
    readonly isFirms: boolean;
}

/** The limit to judge by: the firm's where its house file gives one, else the catalogue's. */
export function yardstick<P extends keyof FactsOf<'yardsticks'> & string>(record: SurveyRecord, name: P): Yardstick {
    const known = record.vocabulary.yardsticks.get(name);
    const value = known?.fact.values[0];
    if (!known || value?.type !== 'quantity') {
        throw new Error(`The catalogue gives no figure for ${name}.`);
    }
    return {
        si: value.si, low: value.low ?? value.si, high: value.high ?? value.si, written: known.fact.written, isFirms: known.isFirms,
        whose: known.isFirms ? 'the firm’s limit' : 'the usual limit',
    };
}

/** The word to judge by, where practice differs in kind and not in a figure. */
export function yardstickWord<P extends keyof FactsOf<'yardsticks'> & string>(record: SurveyRecord, name: P): string | undefined {
    const value = record.vocabulary.yardsticks.get(name)?.fact.values[0];
    return value?.type === 'word' ? value.word : undefined;
}

/** Whether a component is of a kind or of one derived from it. */
export function isKind<K extends KindName>(record: SurveyRecord, component: Component, kind: K): component is Component<K> {
    return record.vocabulary.kinds.get(component.kind)?.lineage.includes(kind) ?? false;
}

/** Look-ups that checks repeat for every component, made once a record. Records never change, so neither do these. */
interface Index {
    /** Components by each kind of their lineage, in order of the text. */
    readonly byKind: ReadonlyMap<string, readonly Component[]>;
    readonly runs: ReadonlyMap<Component, readonly Run[]>;
}

const indexes = new WeakMap<SurveyRecord, Index>();

function indexOf(record: SurveyRecord): Index {
    let index = indexes.get(record);
    if (!index) {
        const runs = new Map<Component, Run[]>();
        for (const run of record.runs) {
            for (const component of new Set(run.components)) {
                const through = runs.get(component);
                if (through) {
                    through.push(run);
                } else {
                    runs.set(component, [run]);
                }
            }
        }
        const byKind = new Map<string, Component[]>();
        for (const component of record.components.values()) {
            for (const kind of record.vocabulary.kinds.get(component.kind)?.lineage ?? []) {
                const others = byKind.get(kind);
                if (others) {
                    others.push(component);
                } else {
                    byKind.set(kind, [component]);
                }
            }
        }
        index = { byKind, runs };
        indexes.set(record, index);
    }
    return index;
}

/** All components of a kind and its derived kinds, in order of the text. */
export function ofKind<K extends KindName>(record: SurveyRecord, kind: K): readonly Component<K>[] {
    return (indexOf(record).byKind.get(kind) ?? []) as readonly Component<K>[]; // Each has K in its lineage.
}

/** The rows of every table that measures a thing, each with its table. */
export function rowsOf<M extends Measured>(record: SurveyRecord, measures: M): readonly { readonly reading: Reading; readonly row: Row<`${M}-row`> }[] {
    return record.readings.filter(reading => wordOf(reading, 'measures') === measures).flatMap(reading =>
        // The lowering makes rows of the kind that is measured.
        reading.rows.map(row => ({ reading, row: row as Row<`${M}-row`> })));
}

/** What tables may measure: whatever the catalogue declares rows for. */
export type Measured = KindName extends infer K ? K extends `${infer M}-row` ? M : never : never;

/** The runs that a component is part of, in order of the text. */
export function runsThrough(record: SurveyRecord, component: Component): readonly Run[] {
    return indexOf(record).runs.get(component) ?? [];
}

/** What the part is made of, from `metal` or else `material`. */
export function materialOf(set: FactSet): Material | undefined {
    const value = set.facts.get('metal')?.values[0] ?? set.facts.get('material')?.values[0];
    return value?.type === 'material' ? value.material : undefined;
}

/** "SV4, Old heads valve" or "SV4" — how a component is named in a sentence. */
export function nameOf(component: Component): string {
    return component.title ? `${component.title} (${component.id})` : component.id;
}
