/**
 * What tests of checks ask of a text: which problems it raises, and what it becomes when a correction is taken.
 * The only place in these tests that knows the engine.
 */
import type { Analysis } from '../../src/checks/analyse.js';
import type { Check, Correction, IssuedBefore, Problem } from '../../src/checks/contract.js';
import { analyseText as analyse, parseTexts } from '../../src/checks/survey.js';
import { Writer } from '../../src/editor/edits.js';
import type { PhotoFacts, Span } from '../../src/record/model.js';

const uri = 'memory:/survey.survey';

const analysed = new Map<string, Analysis>();

/** Analyses a single text with the built-in catalogue. Tests ask several things of one text, so results are kept. */
export function analyseText(text: string, photos?: Readonly<Record<string, PhotoFacts>>, issued?: IssuedBefore): Analysis {
    const key = photos || issued ? `${text}\n${JSON.stringify([photos, issued])}` : text;
    const known = analysed.get(key) ?? analyse(text, uri, photos, issued);
    analysed.set(key, known);
    return known;
}

/** Gaps that would keep a text from saying what it means. */
export function faultsOf(text: string): string[] {
    return analyseText(text).gaps.filter(gap => gap.severity === 'error').map(gap => `${gap.code}: ${gap.message}`);
}

/** Everything a check raises on a text, hints included. A text that is not understood fails here, not in the check. */
export function raisedBy(check: Check | string, text: string, photos?: Readonly<Record<string, PhotoFacts>>, issued?: IssuedBefore): Problem[] {
    const id = typeof check === 'string' ? check : check.id;
    const faults = faultsOf(text);
    if (faults.length > 0) {
        throw new Error(`The text is not clean:\n${faults.join('\n')}\n${text}`);
    }
    return analyseText(text, photos, issued).problems.filter(problem => problem.check.id === id);
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
export function corrected(text: string, check: Check | string, title: string, photos?: Readonly<Record<string, PhotoFacts>>, issued?: IssuedBefore): string {
    const corrections = raisedBy(check, text, photos, issued).flatMap(problem => problem.corrections ?? []);
    const correction = corrections.find(candidate => candidate.title === title);
    if (!correction) {
        throw new Error(`No correction is called "${title}"; there are: ${corrections.map(c => `"${c.title}"`).join(', ') || 'none'}`);
    }
    return applyCorrection(text, correction, issued);
}

function applyCorrection(text: string, correction: Correction, issued?: IssuedBefore): string {
    const files = new Map([...parseTexts(new Map([[uri, text]]))].map(([at, { file }]) => [at, file]));
    const edits = new Writer(analyseText(text, undefined, issued).record, files).correct(correction);
    return [...edits].sort((x, y) => y.start - x.start).reduce((done, edit) => done.slice(0, edit.start) + edit.text + done.slice(edit.end), text);
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
