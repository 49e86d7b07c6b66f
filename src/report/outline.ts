/**
 * Which sections a report has, and in which order: by the outline of its kind of survey, the firm's or else the
 * catalogue's, and by what there is to tell. A firm's outline cannot hide what a reader must find.
 */
import type { FactsOf } from '../record/generated/kinds.js';
import { anyKind, obligatorySections } from '../record/house-report.js';
import type { SurveyRecord } from '../record/model.js';
import type { ReportContext, Section } from './context.js';
import { changes } from './sections/changes.js';
import { assumptions, photographs, standards, statement } from './sections/closing.js';
import { damage } from './sections/damage.js';
import { contract } from './sections/delivery.js';
import { documents } from './sections/documents.js';
import { earlier } from './sections/earlier.js';
import { accepted, findings, recommendations } from './sections/findings.js';
import { limits, particulars, words } from './sections/limits.js';
import { measurements } from './sections/measurements.js';
import { openProblems, scope, summary } from './sections/opening.js';
import { systemSections } from './sections/systems.js';
import { trial } from './sections/trial.js';
import { valuation } from './sections/valuation.js';

export type SectionWord = FactsOf<'outline'>['sections']['word'];

const builders: Readonly<Record<SectionWord, (context: ReportContext) => Section | readonly Section[] | undefined>> = {
    summary, scope, limits, particulars, damage, contract, measurements, trial, findings, accepted, recommendations, assumptions, standards, statement, documents,
    earlier, changes,
    definitions: words, systems: systemSections, value: valuation, photos: photographs,
};

const isSection = (word: string): word is SectionWord => Object.hasOwn(builders, word);

/** The words of the sections in their order, with those put in that the outline leaves out and a reader must find. */
export function sectionWords({ survey, vocabulary: { outlines, wordLists } }: SurveyRecord): SectionWord[] {
    const kind = survey?.surveyKind;
    const outline = (kind === undefined ? undefined : outlines.get(kind)) ?? outlines.get(anyKind);
    const written = (outline?.facts.get('sections')?.values ?? []).flatMap(value => value.type === 'word' && isSection(value.word) ? [value.word] : []);
    // An outline that lists nothing is one not yet written.
    const words = [...new Set(written.length > 0 ? written : [...wordLists.get('section')?.words.keys() ?? []].filter(isSection))];
    let after = 0;
    for (const word of obligatorySections(kind).filter(isSection)) {
        const at = words.indexOf(word);
        if (at >= 0) {
            after = Math.max(after, at + 1);
        } else {
            words.splice(word === 'statement' ? words.length : after, 0, word);
            after++;
        }
    }
    return words;
}

export function sectionsOf(context: ReportContext): Section[] {
    const sections = sectionWords(context.record).flatMap(word => builders[word](context) ?? []);
    const open = openProblems(context);
    if (!open) {
        return sections;
    }
    // In a draft they come first; else they follow the findings, or the summary where there are none.
    const at = context.isDraft ? 0 : 1 + Math.max(sections.findIndex(({ id }) => id === 'summary'), sections.findIndex(({ id }) => id === 'findings'));
    return sections.toSpliced(at, 0, open);
}

/** Sections that others link into. */
const linked: readonly SectionWord[] = ['scope', 'particulars', 'systems', 'measurements', 'photos'];

/** Whether the outline leaves out a section that others link into. */
export function mayMissTargets(record: SurveyRecord): boolean {
    const words = sectionWords(record);
    return linked.some(word => !words.includes(word));
}

/**
 * Links to what stands nowhere on the page, as to a system that the outline leaves out, become plain text. It reads
 * only markup of our own making, in which an attribute holds no quote and links do not nest.
 */
export function withoutDeadLinks(markup: string): string {
    const ids = new Set([...markup.matchAll(/ id="([^"]*)"/g)].map(match => match[1]));
    return markup.replace(/<a href="#([^"]*)"[^>]*>([\s\S]*?)<\/a>/g, (link, id: string, inside: string) => ids.has(id) ? link : inside);
}
