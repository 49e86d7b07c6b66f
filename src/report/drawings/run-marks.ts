/** What concerns a run: where its problems and the findings on its parts lie, and the run in words. */
import type { Component, Finding, Joint, Run } from '../../record/model.js';
import type { Problem } from '../../checks/contract.js';
import type { ReportContext } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { computedText, figureText, inSentence, isWord, labelOfWord, propertyTitle } from '../wording.js';

export interface RunMark {
    /** Index of the part, or of the joint before the part of the next index. */
    readonly at: { readonly part: number } | { readonly joint: number };
    readonly texts: Html[];
    isOpen: boolean;
}

const known = new WeakMap<ReportContext, Map<Run, readonly RunMark[]>>();

/** Marks of a run, in its order. Empty where nothing concerns it. */
export function marksOf(context: ReportContext, run: Run): readonly RunMark[] {
    const ofContext = known.get(context) ?? new Map<Run, readonly RunMark[]>();
    known.set(context, ofContext);
    const marks = ofContext.get(run) ?? findMarks(context, run);
    ofContext.set(run, marks);
    return marks;
}

function findMarks(context: ReportContext, run: Run): RunMark[] {
    const marks: RunMark[] = [];
    const add = (at: RunMark['at'], text: Html, isOpen: boolean) => {
        const known = marks.find(mark => 'part' in at ? 'part' in mark.at && mark.at.part === at.part : 'joint' in mark.at && mark.at.joint === at.joint);
        if (!known) {
            marks.push({ at, texts: [text], isOpen });
        } else {
            known.isOpen ||= isOpen;
            if (!known.texts.some(other => String(other) === String(text))) {
                known.texts.push(text);
            }
        }
    };
    // Several parts may share a problem or a finding: each is told once, in its order.
    for (const problem of new Set(run.components.flatMap(component => context.problemsOn(component)))) {
        const at = problem.severity === 'hint' ? undefined : placeIn(run, problem);
        if (at) {
            const finding = context.findingOf(problem.answeredBy);
            add(at, finding && finding.answers.length > 0 ? html`${problem.check.title}, ${context.linkTo(finding)}` : problem.answeredBy === undefined ? html`<strong>Open:</strong> ${computedText(problem.message)}` : html`${problem.check.title}, accepted`, problem.answeredBy === undefined);
        }
    }
    for (const finding of [...new Set(run.components.flatMap(component => context.findingsOn(component)))].filter(f => f.answers.length === 0 || !answersIn(context, run, f))) {
        const part = run.components.findIndex(component => finding.on.includes(component));
        if (part >= 0) {
            add({ part }, html`${finding.title}, ${context.linkTo(finding)}`, false);
        }
    }
    const order = (mark: RunMark) => 'part' in mark.at ? mark.at.part : mark.at.joint + 0.5;
    return marks.sort((a, b) => order(a) - order(b));
}

function answersIn(context: ReportContext, run: Run, finding: Finding): boolean {
    return context.answeredBy(finding).some(problem => placeIn(run, problem) !== undefined);
}

function placeIn(run: Run, problem: Problem): RunMark['at'] | undefined {
    const { at, components } = problem;
    const joint = run.joints.findIndex(({ span, from, to }) =>
        (span.uri === at.uri && at.start >= span.start && at.end <= span.end && components.includes(to)) || (components.length > 1 && components.includes(from) && components.includes(to)));
    if (joint >= 0) {
        return { joint };
    }
    const subject = components[0];
    const part = subject ? run.components.indexOf(subject) : -1;
    return part < 0 ? undefined : { part };
}

export const endText = { component: '', open: 'left open', capped: 'capped', blanked: 'blanked' } as const;

/** What is recorded of a run as a whole, to stand behind its name. */
export function runFacts(context: ReportContext, run: Run): Html {
    return run.facts.size === 0 ? nothing : html`<span class="muted">. ${joined([...run.facts.keys()].map(name => html`${propertyTitle(name)}: ${context.values(run, name)}`), '; ')}</span>`;
}

/** The run in words, part by part. */
export function runInWords(context: ReportContext, run: Run): Html {
    return html`${joined(run.components.map(component => context.linkToComponent(component)), ' → ')}${run.end === 'component' ? nothing : ` → ${endText[run.end]}`}`;
}

export const idAt = (run: Run, index: number): string => run.components[index]?.id ?? '';

/** What is told beneath a drawing: its marks by number, and what is recorded at the joints. */
export function marksInWords(context: ReportContext, run: Run, marks: readonly RunMark[]): Html {
    const told = run.joints.filter(joint => joint.facts.size > 0);
    return html`${marks.length === 0 ? nothing : html`<ol class="marks">${marks.map(mark => html`<li><span>${placeName(run, mark)}:</span> ${joined(mark.texts, '; ')}</li>
`)}</ol>`}
${told.length === 0 ? nothing : html`<p class="small">Recorded at the joints: ${joined(told.map(joint => `${joint.from.id} to ${joint.to.id}, ${jointText(context, joint)}`), '. ')}.</p>`}`;
}

const placeName = (run: Run, { at }: RunMark) => 'part' in at ? idAt(run, at.part) : `${idAt(run, at.joint)} to ${idAt(run, at.joint + 1)}`;

function jointText(context: ReportContext, joint: Joint): string {
    return [...joint.facts.values()].map(fact => `${inSentence(propertyTitle(fact.name))} ${fact.values.map(value => value.type === 'quantity' || value.type === 'date' ? figureText(value.figure)
        : isWord(value) ? labelOfWord(value, undefined, context.record.vocabulary) : value.type === 'material' ? inSentence(value.material.title) : value.type === 'text' ? context.plain(value.prose) : '').join(', ')}`).join('; ');
}

/** Whether water comes in from the sea along a run or goes out to it, where its service tells. */
export function flowOf(run: Run): 'in' | 'out' | undefined {
    const value = run.facts.get('service')?.values[0];
    return value?.type !== 'word' ? undefined : inward.has(value.word) ? 'in' : outward.has(value.word) ? 'out' : undefined;
}

const inward: ReadonlySet<string> = new Set(['raw-water-cooling', 'toilet-intake', 'wash-down', 'generator-cooling', 'air-conditioning']);
const outward: ReadonlySet<string> = new Set(['toilet-discharge', 'sink-drain', 'shower-drain', 'cockpit-drain', 'deck-drain', 'bilge-discharge', 'exhaust']);

/** Whether the component lies at the first or the last place of the run, as a hull opening does. */
export const isAtEnd = (run: Run, component: Component): 'first' | 'last' | undefined =>
    run.components[0] === component ? 'first' : run.components.at(-1) === component ? 'last' : undefined;
