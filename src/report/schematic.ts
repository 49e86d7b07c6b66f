/**
 * A plumbing run drawn from its record: each part as high as its recorded size, so that two sizes that do not meet are
 * seen to do so. What is at fault is marked by shape and number and told in words beneath; color only repeats it.
 */
import type { Component, Finding, Joint, Run } from '../record/model.js';
import { materialOf, nameOf } from '../record/model.js';
import type { Problem } from '../checks/contract.js';
import type { ReportContext } from './context.js';
import { html, joined, nothing, type Html } from './html.js';
import { capital, computedText, figureText, inSentence, isWord, labelOfWord, propertyTitle, wordText } from './wording.js';

interface Mark {
    /** Index of the part, or of the joint before the part of the next index. */
    readonly at: { readonly part: number } | { readonly joint: number };
    readonly texts: Html[];
    isOpen: boolean;
}

const cell = 132;
const mostInRow = 5;
/** Height of a row of parts without its labels. */
const drawnHeight = 126;
const lineHeight = 12.5;
const inset = 22;
const axis = 52;
const tallest = 52;

/** Marks of a run: where its problems and the findings on its parts lie. Empty where nothing concerns it. */
export function marksOf(context: ReportContext, run: Run): Mark[] {
    const marks: Mark[] = [];
    const add = (at: Mark['at'], text: Html, isOpen: boolean) => {
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
    for (const problem of context.problems) {
        const at = problem.severity === 'hint' ? undefined : placeIn(run, problem);
        if (at) {
            const finding = context.findings.find(f => f.id === problem.answeredBy && f.answers.length > 0);
            add(at, finding ? html`${problem.check.title}, ${context.linkTo(finding)}` : problem.answeredBy === undefined ? html`<strong>Open:</strong> ${computedText(problem.message)}` : html`${problem.check.title}, accepted`, problem.answeredBy === undefined);
        }
    }
    for (const finding of context.findings.filter(f => f.answers.length === 0 || !answersIn(context, run, f))) {
        const part = run.components.findIndex(component => finding.on.includes(component));
        if (part >= 0) {
            add({ part }, html`${finding.title}, ${context.linkTo(finding)}`, false);
        }
    }
    const order = (mark: Mark) => 'part' in mark.at ? mark.at.part : mark.at.joint + 0.5;
    return marks.sort((a, b) => order(a) - order(b));
}

function answersIn(context: ReportContext, run: Run, finding: Finding): boolean {
    return context.problems.some(problem => problem.answeredBy === finding.id && placeIn(run, problem) !== undefined);
}

function placeIn(run: Run, problem: Problem): Mark['at'] | undefined {
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

/** Size that meets a neighbor, in metres, at the first and second end. */
function sizesOf(context: ReportContext, component: Component): readonly [number | undefined, number | undefined] {
    const ends = (component.facts.get('ends')?.values ?? []).flatMap(value => value.type === 'quantity' ? [value.si] : []);
    if (ends.length > 0) {
        return [ends[0], ends[1] ?? ends[0]];
    }
    for (const name of ['bore', 'spigot', 'port', 'size', 'diameter']) {
        const value = context.first(component, name);
        if (value?.type === 'quantity') {
            return [value.si, value.si];
        }
    }
    return [undefined, undefined];
}

function sizeText(component: Component): string {
    for (const [name, label] of [['ends', ''], ['bore', 'bore '], ['spigot', 'tail '], ['port', 'port '], ['size', ''], ['diameter', '']] as const) {
        const values = component.facts.get(name)?.values.flatMap(value => value.type === 'quantity' ? [figureText(value.figure)] : []) ?? [];
        if (values.length > 0) {
            return label + values.join(' to ');
        }
    }
    return 'size not recorded';
}

function lines(text: string, width: number, most: number): string[] {
    const found: string[] = [];
    for (const word of text.split(/\s+/)) {
        const last = found.at(-1);
        if (last !== undefined && last.length + 1 + word.length <= width) {
            found[found.length - 1] = `${last} ${word}`;
        } else {
            found.push(word.length > width ? `${word.slice(0, width - 1)}…` : word);
        }
    }
    if (found.length > most) {
        const last = found[most - 1] ?? '';
        return [...found.slice(0, most - 1), `${last.slice(0, width - 1)}…`];
    }
    return found;
}

function shapeOf(context: ReportContext, component: Component): 'opening' | 'valve' | 'tube' | 'box' | 'loop' | 'part' {
    const lineage = context.record.vocabulary.kinds.get(component.kind)?.lineage ?? [component.kind];
    const is = (...kinds: string[]) => lineage.some(kind => kinds.includes(kind));
    return is('hull-opening') ? 'opening' : is('valve', 'seacock') ? 'valve' : is('hose', 'pipe') ? 'tube' : is('vented-loop') ? 'loop' : is('appliance') || !is('fitting') ? 'box' : 'part';
}

function drawPart(shape: ReturnType<typeof shapeOf>, x: number, y: number, [a, b]: readonly [number, number], isKnown: boolean): Html {
    const dash = isKnown ? nothing : html` stroke-dasharray="4 3"`;
    const tube = (from: number, to: number, h1: number, h2: number) => html`<path class="wall" d="M${from} ${y - h1 / 2}L${to} ${y - h2 / 2}V${y + h2 / 2}L${from} ${y + h1 / 2}Z"${dash}/>`;
    const middle = x + cell / 2;
    switch (shape) {
        case 'opening': return html`<path class="hull" d="M${x + 26} ${y - 40}V${y + 40}"/>${tube(x + 18, x + cell, a, b)}<path class="wall" d="M${x + 12} ${y - a / 2 - 7}h8v${a + 14}h-8z"/>`;
        case 'valve': return html`${tube(x, x + cell, a, b)}<path class="body" d="M${middle - 24} ${y - a / 2 - 6}L${middle + 24} ${y + a / 2 + 6}V${y - a / 2 - 6}L${middle - 24} ${y + a / 2 + 6}Z"/><path class="line" d="M${middle} ${y}V${y - a / 2 - 14}M${middle - 9} ${y - a / 2 - 14}h18"/>`;
        case 'tube': return html`${tube(x, x + cell, a, b)}${[0.2, 0.4, 0.6, 0.8].map(share => html`<path class="hair" d="M${x + cell * share - 5} ${y + (a + (b - a) * share) / 2}l10 -${a + (b - a) * share}"/>`)}`;
        case 'loop': return html`<path class="wall" fill-rule="evenodd" d="M${x} ${y + a / 2}V${y - a / 2}H${x + 30}C${x + 36} ${y - 52} ${x + cell - 36} ${y - 52} ${x + cell - 30} ${y - b / 2}H${x + cell}V${y + b / 2}H${x + cell - 48}C${x + cell - 56} ${y - 14} ${x + 56} ${y - 14} ${x + 48} ${y + a / 2}Z"${dash}/>`;
        case 'box': return html`${tube(x, x + 26, a, a)}${tube(x + cell - 26, x + cell, b, b)}<rect class="body" x="${x + 24}" y="${y - 34}" width="${cell - 48}" height="68" rx="5"/>`;
        case 'part': return html`${tube(x, x + cell, a, b)}<rect class="body" x="${middle - 18}" y="${y - Math.max(a, b) / 2 - 5}" width="36" height="${Math.max(a, b) + 10}"/>`;
    }
}

function jointText(context: ReportContext, joint: Joint): string {
    const facts = [...joint.facts.values()].map(fact => `${inSentence(propertyTitle(fact.name))} ${fact.values.map(value => value.type === 'quantity' || value.type === 'date' ? figureText(value.figure)
        : isWord(value) ? labelOfWord(value, undefined, context.record.vocabulary) : value.type === 'material' ? inSentence(value.material.title) : value.type === 'text' ? context.plain(value.prose) : '').join(', ')}`);
    return facts.join('; ');
}

const endText = { component: '', open: 'left open', capped: 'capped', blanked: 'blanked' } as const;

/** The run in words, part by part. */
export function runInWords(context: ReportContext, run: Run): Html {
    return html`${joined(run.components.map(component => context.linkToComponent(component)), ' → ')}${run.end === 'component' ? nothing : ` → ${endText[run.end]}`}`;
}

/** The drawing with its marks, or nothing for a run without parts. */
export function drawRun(context: ReportContext, run: Run, id: string): Html {
    const marks = marksOf(context, run);
    const sizes = run.components.map(component => sizesOf(context, component));
    const largest = Math.max(0.01, ...sizes.flat().flatMap(size => size ?? []));
    const height = (size: number | undefined) => size === undefined ? 20 : Math.max(9, size / largest * tallest);
    const labels = run.components.map(component => {
        const material = materialOf(component);
        return [...lines(component.title ?? capital(wordText(component.kind)), 21, 3), ...sizeText(component).split(/ (?=\()/).flatMap(part => lines(part, 23, 2)), ...material ? lines(material.title, 22, 2) : []];
    });
    const rows = Math.max(1, Math.ceil(run.components.length / mostInRow));
    const perRow = Math.max(1, Math.ceil(run.components.length / rows));
    const tops = [0];
    for (let row = 0; row < rows; row++) {
        tops.push((tops[row] ?? 0) + drawnHeight + lineHeight * Math.max(0, ...labels.slice(row * perRow, (row + 1) * perRow).map(label => label.length)) - lineHeight);
    }
    const totalHeight = tops[rows] ?? 0;
    const width = Math.max(Math.min(perRow, run.components.length) * cell + (run.end === 'component' ? 0 : 46), 2 * cell) + 2 * inset;
    const place = (index: number) => ({ x: (index % perRow) * cell + inset, y: (tops[Math.floor(index / perRow)] ?? 0) + axis });
    const description = [
        `Parts in order: ${run.components.map(c => `${nameOf(c)}, ${sizeText(c)}`).join('; ')}${run.end === 'component' ? '' : `; then ${endText[run.end]}`}.`,
        ...marks.map((mark, i) => `Mark ${i + 1} is ${'part' in mark.at ? `on ${idAt(run, mark.at.part)}` : `at the joint of ${idAt(run, mark.at.joint)} and ${idAt(run, mark.at.joint + 1)}`}.`),
    ].join(' ');
    const last = run.components.length - 1;
    const end = place(last);
    return html`<figure class="run" id="${id}"${context.source(run.span)}>
<figcaption><strong>${run.title ?? run.id}</strong> (${run.id})</figcaption>
<div class="drawing" tabindex="0" role="group" aria-label="Drawing of ${run.title ?? run.id}">
<svg viewBox="0 0 ${width} ${totalHeight}" width="${width}" height="${totalHeight}" role="img" aria-labelledby="${id}-title ${id}-desc">
<title id="${id}-title">${run.title ?? `Run ${run.id}`}</title>
<desc id="${id}-desc">${description}</desc>
${run.components.map((component, index) => {
        const { x, y } = place(index);
        const [first, second] = sizes[index] ?? [undefined, undefined];
        const isReversed = run.joints[index - 1]?.toEnd === 1 || run.joints[index]?.fromEnd === 0 && first !== second;
        const ends = [height(isReversed ? second : first), height(isReversed ? first : second)] as const;
        const isContinued = index > 0 && index % perRow === 0;
        return html`<g>${isContinued ? html`<text class="from" x="${x}" y="${y - 34}">from ${idAt(run, index - 1)}</text>` : nothing}${drawPart(shapeOf(context, component), x, y, ends, first !== undefined)}<text class="id" x="${x + cell / 2}" y="${y + 56}">${component.id}</text>${(labels[index] ?? []).map((line, row) => html`<text x="${x + cell / 2}" y="${y + 70 + row * lineHeight}">${line}</text>`)}</g>
`;
    })}
${run.end === 'component' ? nothing : run.end === 'open'
        ? html`<g><path class="line" d="M${end.x + cell} ${end.y - 24}l7 8l-7 8l7 8l-7 8l7 8l-7 8"/><text class="end" x="${end.x + cell + 12}" y="${end.y + 4}">open</text></g>`
        : html`<g><path class="hull" d="M${end.x + cell + 3} ${end.y - 28}v56"/><text class="end" x="${end.x + cell + 12}" y="${end.y + 4}">${run.end}</text></g>`}
${marks.map((mark, i) => {
        const { x, y } = 'part' in mark.at ? place(mark.at.part) : place(mark.at.joint + 1);
        return 'part' in mark.at
            ? html`<g class="mark"><path d="M${x + cell / 2 - 30} ${y - 10}v-34h19v17h-17"/><text x="${x + cell / 2 - 20.5}" y="${y - 31}">${i + 1}</text></g>`
            : html`<g class="mark"><path d="M${x} ${y - 15}l15 15l-15 15l-15 -15z"/><text x="${x}" y="${y + 4}">${i + 1}</text></g>`;
    })}
</svg>
</div>
${marks.length === 0 ? nothing : html`<ol class="marks">${marks.map(mark => html`<li><span>${'part' in mark.at ? idAt(run, mark.at.part) : `${idAt(run, mark.at.joint)} to ${idAt(run, mark.at.joint + 1)}`}:</span> ${joined(mark.texts, '; ')}</li>
`)}</ol>`}
${jointList(context, run)}
</figure>`;
}

function jointList(context: ReportContext, run: Run): Html {
    const told = run.joints.filter(joint => joint.facts.size > 0);
    return told.length === 0 ? nothing : html`<p class="small">Recorded at the joints: ${joined(told.map(joint => `${joint.from.id} to ${joint.to.id}, ${jointText(context, joint)}`), '. ')}.</p>`;
}

const idAt = (run: Run, index: number): string => run.components[index]?.id ?? '';
