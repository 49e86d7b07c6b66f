/**
 * What a firm's outlines and wording may not take away from a report: the sections that a reader must always find, and
 * the standing words that may be put otherwise but not left out. The report keeps them whatever the house file says;
 * here the house file is told.
 */
import type { Gaps } from './gaps.js';
import type { Fact, FactSet, Span, WordList } from './model.js';

/** The outline for a survey without a kind, and for a kind without an outline. */
export const anyKind = 'any-kind';

/** Sections that stand in every report where there is matter for them, in the order in which they are put in. */
export function obligatorySections(surveyKind: string | undefined): readonly string[] {
    return ['summary', 'earlier', 'changes', 'limits', ...surveyKind === 'damage' ? ['damage'] : [], 'findings', 'accepted', 'value', 'statement'];
}

/** Whether standing words may be set empty: those that lead into a section, and the definition of value, which a valuation gives itself. */
export function mayBeEmpty(name: string): boolean {
    return name.endsWith('-lead') || name === 'definition-of-value';
}

/** Whether a text says nothing. */
export function isEmptyText(fact: Fact): boolean {
    return fact.values.every(value => value.type === 'text' && value.prose.text.trim() === '');
}

/** Tells what an outline leaves out that the report prints all the same, and an outline for no kind of survey. */
export function judgeOutline(name: string, at: Span, outline: FactSet<'outline'>, surveyKinds: WordList | undefined, gaps: Gaps): void {
    if (surveyKinds && name !== anyKind && !surveyKinds.words.has(name)) {
        gaps.unknown('word-unknown', at, name, `${name} is not a kind of survey, so no report follows this outline.`, [...surveyKinds.words.keys(), anyKind]);
    }
    const fact = outline.facts.get('sections');
    if (!fact) {
        return;
    }
    const named = new Set(fact.values.flatMap(value => value.type === 'word' ? [value.word] : []));
    const missing = obligatorySections(name).filter(section => !named.has(section));
    if (missing.length > 0) {
        gaps.add('warning', 'outline-leaves-out', fact.nameSpan, `This outline leaves out ${missing.join(', ')}. A reader must find them, so the report prints them all the same wherever there is matter for them; give them their places in the list.`,
            [{ title: 'Add them at the end', span: { ...fact.span, start: fact.span.end }, text: `, ${missing.join(', ')}` }]);
    }
}

/** Tells of standing words that are set empty and may not be. */
export function judgeWording(name: string, fact: Fact, gaps: Gaps): void {
    if (isEmptyText(fact) && !mayBeEmpty(name)) {
        gaps.add('warning', 'wording-empty', fact.span, `${name} may be put in the firm’s own words but not left out; the report prints the usual words for it. Write your own, or take the line out.`);
    }
}
