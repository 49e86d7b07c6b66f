/**
 * Prose of the record in print: each reference in braces becomes the recorded value in both unit systems, so that
 * words and measurements cannot disagree. What is not recorded is printed as such, never left out.
 */
import { nameOf, type Prose, type ProseRef, type SurveyRecord, type Value } from '../record/model.js';
import { html, paragraphs, type Html } from './html.js';
import { computedText, figureText, inSentence, wordWithAmount } from './wording.js';

export interface ProseContext {
    readonly record: SurveyRecord;
    /** Computed facts by the name prose gives them: "TH4.flooding-rate". */
    readonly computed: ReadonlyMap<string, string>;
}

/** A text may refer to a fact that is itself text with references; past this depth it can only be a circle. */
const deepest = 5;

function valueText(context: ProseContext, value: Value, depth: number): string {
    switch (value.type) {
        case 'quantity':
        case 'date': return figureText(value.figure);
        case 'word': return wordWithAmount(value);
        case 'material': return inSentence(value.material.title);
        case 'component': {
            const component = context.record.components.get(value.id);
            return component ? nameOf(component) : `[${value.id}: not recorded]`;
        }
        case 'person': return context.record.vocabulary.people.get(value.id)?.name ?? `[${value.id}: not recorded]`;
        case 'text': return text(context, value.prose, depth + 1);
        case 'citation': return value.clause === undefined ? value.standard : `${value.standard}, ${value.clause}`;
        case 'check': return value.id;
    }
}

function referenceText(context: ProseContext, { component: id, property }: ProseRef, depth: number): string {
    const { record, computed } = context;
    const component = id === 'vessel' ? undefined : record.components.get(id);
    const set = id === 'vessel' ? record.vessel : component;
    if (property === undefined) {
        return id === 'vessel' ? record.vessel?.name ?? '[vessel: not recorded]' : component ? nameOf(component) : `[${id}: not recorded]`;
    }
    const name = `${id}.${property}`;
    const values = set?.facts.get(property)?.values ?? [];
    if (values.length > 0) {
        return values.map(value => valueText(context, value, depth)).join(', ');
    }
    const figure = computed.get(name);
    if (figure !== undefined) {
        return computedText(figure);
    }
    if (id === 'vessel' && property === 'name' && record.vessel) {
        return record.vessel.name;
    }
    if (component && property === 'title' && component.title !== undefined) {
        return component.title;
    }
    return `[${name}: not recorded]`;
}

function text(context: ProseContext, prose: Prose, depth: number): string {
    if (depth > deepest) {
        return '[refers to itself]';
    }
    return prose.segments.map(segment => typeof segment === 'string' ? segment : referenceText(context, segment, depth)).join('');
}

/** The prose as one text, references resolved. */
export function proseText(context: ProseContext, prose: Prose): string {
    return text(context, prose, 0);
}

/** A single value as it reads in a sentence. */
export function valueInSentence(context: ProseContext, value: Value): string {
    return valueText(context, value, 0);
}

function pieces(context: ProseContext, prose: Prose): (string | Html)[] {
    return prose.segments.map(segment => {
        if (typeof segment === 'string') {
            return segment;
        }
        const value = referenceText(context, segment, 0);
        return value.startsWith('[') ? html`<strong class="absent">${value}</strong>` : segment.property === undefined ? value : html`<span class="fact">${value}</span>`;
    });
}

/** The prose as paragraphs. */
export function proseHtml(context: ProseContext, prose: Prose): Html {
    return paragraphs(pieces(context, prose));
}

/** The prose within a line, as a caption is. */
export function proseInline(context: ProseContext, prose: Prose): Html {
    return html`${pieces(context, prose)}`;
}
