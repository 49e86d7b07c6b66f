/**
 * All prose of a survey with what it is said of: what the checks of wording read. References in braces, and words in
 * quotation, are blanked, so that a check reads only what the surveyor says himself; positions stay those of the text.
 */
import type { Acceptance, Component, FactSet, Finding, Prose, Span, SurveyRecord, Value } from './model.js';

/** What a text belongs to. */
export type ProseOwner =
    | { readonly type: 'finding'; readonly finding: Finding }
    | { readonly type: 'component'; readonly component: Component }
    | { readonly type: 'acceptance'; readonly acceptance: Acceptance }
    | { readonly type: 'survey' | 'vessel' | 'run' | 'reading' | 'valuation' | 'comparable' | 'unseen' };

export interface ProseEntry {
    readonly owner: ProseOwner;
    /** Property, or `note`, `caption`, `title`, `reason`. */
    readonly property: string;
    readonly prose: Prose;
    /** The token as written, quotes included, or the words of a phrase. */
    readonly raw: string;
    /** The same length as `raw`, with references, quotations and the quotes blanked. */
    readonly said: string;
    readonly span: Span;
    /** Whether offsets into `raw` are offsets from `span.start`. */
    readonly isWritten: boolean;
}

const blank = (text: string) => text.replace(/[^\n]/g, ' ');

/** The words said, of the same length: braces, escapes and quotations blanked. */
export function saidIn(raw: string): string {
    return raw
        .replace(/^"""|"""$|^"|"$/g, blank)
        .replace(/\\"(?:[^"\\]|\\[^"])*\\"/g, blank)
        .replace(/[“«][^”»]*[”»]/g, blank)
        .replace(/(?<![\p{L}\p{N}])[‘'](?=\S)[^‘’'\n]{2,}?[’'](?![\p{L}\p{N}])/gu, blank)
        .replace(/\{[^{}\n]*\}/g, blank);
}

const entriesOf = new WeakMap<SurveyRecord, readonly ProseEntry[]>();

/** Every text of the survey, in no order that means anything. */
export function proseOf(record: SurveyRecord): readonly ProseEntry[] {
    const known = entriesOf.get(record);
    if (known) {
        return known;
    }
    const entries: ProseEntry[] = [];
    const add = (owner: ProseOwner, property: string, prose: Prose | undefined, at?: Span) => {
        const span = prose?.span ?? at;
        if (prose && span && prose.text.trim() !== '') {
            const raw = prose.raw ?? prose.text;
            entries.push({ owner, property, prose, raw, said: saidIn(raw), span, isWritten: prose.raw !== undefined });
        }
    };
    const addFacts = (owner: ProseOwner, set: FactSet) => {
        for (const fact of set.facts.values()) {
            for (const value of fact.values as readonly Value[]) {
                if (value.type === 'text') {
                    add(owner, fact.name, value.prose, fact.span);
                }
            }
        }
    };
    const addNotes = (owner: ProseOwner, { notes, photos }: { readonly notes?: readonly Prose[]; readonly photos?: readonly { readonly caption?: Prose }[] }) => {
        notes?.forEach(note => add(owner, 'note', note));
        photos?.forEach(photo => add(owner, 'caption', photo.caption));
    };
    if (record.survey) {
        addFacts({ type: 'survey' }, record.survey);
        addNotes({ type: 'survey' }, record.survey);
    }
    if (record.vessel) {
        addFacts({ type: 'vessel' }, record.vessel);
        addNotes({ type: 'vessel' }, record.vessel);
    }
    for (const component of record.components.values()) {
        addFacts({ type: 'component', component }, component);
        addNotes({ type: 'component', component }, component);
    }
    for (const finding of record.findings) {
        add({ type: 'finding', finding }, 'title', { text: finding.title, segments: [finding.title] }, finding.idSpan);
        addFacts({ type: 'finding', finding }, finding);
        addNotes({ type: 'finding', finding }, finding);
    }
    for (const acceptance of record.acceptances) {
        add({ type: 'acceptance', acceptance }, 'reason', acceptance.reason, acceptance.span);
    }
    record.runs.forEach(run => addFacts({ type: 'run' }, run));
    record.unseen.forEach(unseen => add({ type: 'unseen' }, 'reason', unseen.reason, unseen.span));
    for (const reading of record.readings) {
        addFacts({ type: 'reading' }, reading);
    }
    for (const valuation of record.valuations) {
        addFacts({ type: 'valuation' }, valuation);
        valuation.comparables.forEach(comparable => addFacts({ type: 'comparable' }, comparable));
    }
    entriesOf.set(record, entries);
    return entries;
}

const entriesByFinding = new WeakMap<SurveyRecord, ReadonlyMap<Finding, readonly ProseEntry[]>>();

/** The texts of one finding. */
export function proseOfFinding(record: SurveyRecord, finding: Finding): readonly ProseEntry[] {
    let byFinding = entriesByFinding.get(record);
    if (!byFinding) {
        const found = new Map<Finding, ProseEntry[]>();
        for (const entry of proseOf(record)) {
            if (entry.owner.type === 'finding') {
                found.set(entry.owner.finding, [...found.get(entry.owner.finding) ?? [], entry]);
            }
        }
        byFinding = found;
        entriesByFinding.set(record, byFinding);
    }
    return byFinding.get(finding) ?? [];
}

/** Where a stretch of an entry's `raw` stands in the text; the whole entry where its words come from a phrase. */
export function spanIn({ span, isWritten }: ProseEntry, index: number, length: number): Span {
    return isWritten ? { uri: span.uri, start: span.start + index, end: span.start + index + length } : span;
}

/** What the entry is about, for the components of a problem: those of the finding, or the component itself. */
export function componentsOf({ owner }: ProseEntry): readonly Component[] {
    return owner.type === 'finding' ? owner.finding.on : owner.type === 'component' ? [owner.component] : owner.type === 'acceptance' ? owner.acceptance.on : [];
}
