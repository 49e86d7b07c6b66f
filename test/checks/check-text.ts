/**
 * What tests of checks ask of a text: which problems it raises, and what it becomes when a correction is taken.
 * The only place in these tests that knows the engine.
 */
import type { Analysis } from '../../src/checks/analyse.js';
import type { Check, Correction, Problem } from '../../src/checks/contract.js';
import { analyseText as analyse } from '../../src/checks/survey.js';
import type { Span } from '../../src/record/model.js';

const uri = 'memory:/survey.survey';

const analysed = new Map<string, Analysis>();

/** Analyses a single text with the built-in catalogue. Tests ask several things of one text, so results are kept. */
export function analyseText(text: string): Analysis {
    const known = analysed.get(text) ?? analyse(text, uri);
    analysed.set(text, known);
    return known;
}

/** Gaps that would keep a text from saying what it means. */
export function faultsOf(text: string): string[] {
    return analyseText(text).gaps.filter(gap => gap.severity === 'error').map(gap => `${gap.code}: ${gap.message}`);
}

/** Everything a check raises on a text, hints included. A text that is not understood fails here, not in the check. */
export function raisedBy(check: Check | string, text: string): Problem[] {
    const id = typeof check === 'string' ? check : check.id;
    const faults = faultsOf(text);
    if (faults.length > 0) {
        throw new Error(`The text is not clean:\n${faults.join('\n')}\n${text}`);
    }
    return analyseText(text).problems.filter(problem => problem.check.id === id);
}

/** Problems proper: all that is not a hint for a fact that is not recorded. */
export function judged(problems: readonly Problem[]): Problem[] {
    return problems.filter(problem => problem.severity !== 'hint');
}

export function idsOf(problems: readonly Problem[]): string[] {
    return [...new Set(problems.map(problem => problem.check.id))].sort();
}

/** The text a problem points at. */
export function pointedAt(text: string, problem: { readonly at: Span }): string {
    return text.slice(problem.at.start, problem.at.end);
}

/** The text after the correction with a title is taken, from the first problem of the check that offers it. */
export function corrected(text: string, check: Check | string, title: string): string {
    const corrections = raisedBy(check, text).flatMap(problem => problem.corrections ?? []);
    const correction = corrections.find(candidate => candidate.title === title);
    if (!correction) {
        throw new Error(`No correction is called "${title}"; there are: ${corrections.map(c => `"${c.title}"`).join(', ') || 'none'}`);
    }
    return applyCorrection(text, correction);
}

interface Edit {
    readonly start: number;
    readonly end: number;
    readonly text: string;
}

function applyCorrection(text: string, correction: Correction): string {
    const edits = editsOf(text, correction).sort((a, b) => b.start - a.start);
    return edits.reduce((done, edit) => done.slice(0, edit.start) + edit.text + done.slice(edit.end), text);
}

function editsOf(text: string, correction: Correction): Edit[] {
    switch (correction.kind) {
        case 'set-fact': {
            const { component, property, value } = correction;
            return [setFact(text, component.span, component.facts.get(property)?.span, property, value)];
        }
        case 'set-joint-fact': {
            const { joint, property, value } = correction;
            const written = joint.facts.get(property)?.span;
            if (written) {
                return [{ ...written, text: value }];
            }
            const arrow = joint.span.start + 2;
            const brace = /^\s*\{/.exec(text.slice(arrow, joint.span.end));
            return brace ? [insert(arrow + brace[0].length, ` ${property}: ${value} `)] : [insert(arrow, ` { ${property}: ${value} }`)];
        }
        case 'insert-in-run': {
            const { joint, componentKind, idStem, facts } = correction;
            const id = freeId(text, idStem);
            return [insert(joint.from.span.end, `\n${declaration(componentKind, id, facts)}`), insert(joint.span.start, `-> ${id} `)];
        }
        case 'end-run': {
            const { run, end } = correction;
            const written = /(?:open|capped|blanked)\s*$/.exec(text.slice(run.span.start, run.span.end));
            return written ? [{ start: run.span.start + written.index, end: run.span.end, text: end }] : [insert(run.span.end, ` -> ${end}`)];
        }
        case 'set-vessel-fact': {
            const { property, value } = correction;
            const vessel = analyseText(text).record.vessel;
            return vessel ? [setFact(text, vessel.span, vessel.facts.get(property)?.span, property, value)] : [insert(0, `vessel "" { ${property}: ${value} }\n`)];
        }
        case 'declare': {
            const { beside, componentKind, idStem, facts } = correction;
            return [insert(beside.span.end, `\n${declaration(componentKind, freeId(text, idStem), facts)}`)];
        }
        case 'replace-text':
            return [{ start: correction.span.start, end: correction.span.end, text: correction.text }];
    }
}

function insert(at: number, text: string): Edit {
    return { start: at, end: at, text };
}

/** Replaces a written value, or adds the fact at the end of the block. */
function setFact(text: string, block: Span, written: Span | undefined, property: string, value: string): Edit {
    if (written) {
        return { start: written.start, end: written.end, text: value };
    }
    const hasBlock = text.slice(block.start, block.end).endsWith('}');
    return hasBlock ? insert(block.end - 1, ` ${property}: ${value} `) : insert(block.end, ` { ${property}: ${value} }`);
}

function freeId(text: string, stem: string): string {
    let number = 1;
    while (new RegExp(`\\b${stem}${number}\\b`).test(text)) {
        number++;
    }
    return `${stem}${number}`;
}

function declaration(kind: string, id: string, facts: readonly (readonly [string, string])[]): string {
    return `${kind} ${id} { ${facts.map(([property, value]) => `${property}: ${value}`).join('  ')} }`;
}

/** A line for each problem a check raises: severity and the ids concerned, the one at fault first. */
export function summary(check: Check | string, text: string): string[] {
    return raisedBy(check, text).map(({ severity, components }) => `${severity} ${components.map(component => component.id).join(' ')}`);
}

/** The urgency each problem of a check proposes. */
export function urgencies(check: Check | string, text: string): string[] {
    return raisedBy(check, text).map(({ draft }) => draft?.urgency ?? '-');
}

/** Titles of the corrections offered. */
export function correctionsIn(check: Check | string, text: string): string[] {
    return raisedBy(check, text).flatMap(problem => problem.corrections ?? []).map(correction => correction.title);
}
