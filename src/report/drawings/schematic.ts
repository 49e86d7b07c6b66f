/**
 * A plumbing run drawn from its record: each part as high as its recorded size where it meets its neighbor, so that two
 * sizes that do not meet are seen to do so. What is at fault is marked by shape and number and told in words beneath.
 */
import { boreAt, endOf, tailAt } from '../../checks/fit/hose-ends.js';
import { anyValue, isKind, materialOf, nameOf, siOf, wordOf, type Component, type Joint, type Run, type SurveyRecord } from '../../record/model.js';
import type { ReportContext } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { capital, figureText, wordText } from '../wording.js';
import { alarm, box, called, drawing, letter, n, pale, path, quiet, textWidth, wrapped } from './drawing.js';
import { endText, flowOf, idAt, isAtEnd, marksInWords, marksOf, runFacts, type RunMark } from './run-marks.js';

/** Width of a part. */
const cell = 111;
/** As many as a printed line holds without the lettering growing too small; one less where the end of the run takes room. */
const mostInRow = 6;
const inset = 22;
/** From the top of a row to the middle of its pipes. */
const axis = 74;
const tallest = 52;
const lineHeight = 12.5;
const small = 10;
/** Room for how the run ends. */
const endRoom = 46;

interface Size {
    readonly m: number;
    readonly text: string;
    /** What was measured; only sizes of one sort are compared. */
    readonly sort: 'hose' | 'nominal' | 'other';
}

/** The size that a part offers at one of its ends: to a hose its bore or tail, to another fitting its nominal size; failing these any size, which then compares with nothing. */
function sizeAt(record: SurveyRecord, part: Component, joint: Joint | undefined): Size | undefined {
    const end = joint === undefined ? 0 : joint.from === part ? joint.fromEnd : joint.toEnd;
    const other = joint && (joint.from === part ? joint.to : joint.from);
    const first = (...names: readonly string[]) => names.map(name => part.facts.get(name)?.values[0]).find(value => value?.type === 'quantity');
    const found = isKind(record, part, 'hose') ? boreAt(part, end) : joint && other && isKind(record, other, 'hose') ? tailAt({ joint, other: part, otherEnd: end }) : undefined;
    const nominal = found ? undefined : endOf(part, end)?.quantity ?? first('size');
    const quantity = found?.quantity ?? nominal ?? first('size', 'bore', 'spigot', 'port', 'diameter');
    return quantity?.type === 'quantity' && quantity.si > 0 ? { m: quantity.si, text: quantity.figure.written, sort: found ? 'hose' : nominal ? 'nominal' : 'other' } : undefined;
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

const heights = [['below-waterline', 'below waterline'], ['above-waterline', 'above waterline'], ['top-above-waterline', 'top, above waterline'], ['rim-above-waterline', 'rim, above waterline'], ['rim-below-waterline', 'rim, below waterline']] as const;

/** Height against the waterline, where it is recorded. */
function heightText(component: Component): string | undefined {
    for (const [name, says] of heights) {
        const value = anyValue(component, name);
        if (value?.type === 'quantity') {
            return `${figureText(value.figure)} ${says}`;
        }
    }
    return undefined;
}

/** A figure with its unit, not to be parted at the end of a line. */
const whole = (text: string) => text.replace(/(?<=\d) (?=\d|(?:mm|cm|m|in|ft)\b)/g, '\u00a0');

function labelsOf(component: Component): string[] {
    const material = materialOf(component);
    const height = heightText(component);
    const width = cell - 2;
    return [
        ...wrapped(component.title ?? capital(wordText(component.kind)), width, 3, small), ...wrapped(whole(sizeText(component)), width, 2, small),
        ...material ? wrapped(material.title, width, 2, small) : [], ...height === undefined ? [] : wrapped(whole(height), width, 2, small),
    ];
}

type Shape = 'opening' | 'valve' | 'tube' | 'box' | 'loop' | 'part';

function shapeOf(record: SurveyRecord, component: Component): Shape {
    const lineage = record.vocabulary.kinds.get(component.kind)?.lineage ?? [component.kind];
    const is = (...kinds: string[]) => lineage.some(kind => kinds.includes(kind));
    return is('hull-opening') ? 'opening' : is('valve', 'seacock') ? 'valve' : is('hose', 'pipe') ? 'tube' : is('vented-loop') ? 'loop' : is('appliance') || !is('fitting') ? 'box' : 'part';
}

const wall = { fill: pale, width: 1.3 };
const body = { fill: '#fff', width: 1.6 };

function drawPart(shape: Shape, x: number, y: number, [a, b]: readonly [number, number], isKnown: boolean, isLast: boolean): Html {
    const look = isKnown ? wall : { ...wall, dash: '4 3' };
    const tube = (from: number, to: number, h1: number, h2: number) => path(`M${n(from)} ${n(y - h1 / 2)}L${n(to)} ${n(y - h2 / 2)}V${n(y + h2 / 2)}L${n(from)} ${n(y + h1 / 2)}Z`, look);
    const middle = x + cell / 2;
    switch (shape) {
        case 'opening': {
            // The hull stands at the outer end of the run: before the first part, behind the last.
            const [hull, outside] = isLast ? [x + cell - 26, x + cell - 20] : [x + 26, x + 12];
            return html`${path(`M${hull} ${y - 38}V${y + 38}`, { width: 7 })}${isLast ? tube(x, x + cell - 18, a, b) : tube(x + 18, x + cell, a, b)}${path(`M${outside} ${n(y - (isLast ? b : a) / 2 - 7)}h8v${n((isLast ? b : a) + 14)}h-8z`, wall)}`;
        }
        case 'valve': {
            const h = Math.max(a, b) / 2;
            return html`${tube(x, middle, a, a)}${tube(middle, x + cell, b, b)}${path(`M${middle - 22} ${n(y - h - 6)}L${middle + 22} ${n(y + h + 6)}V${n(y - h - 6)}L${middle - 22} ${n(y + h + 6)}Z`, body)}${path(`M${middle} ${y}V${n(y - h - 14)}M${middle - 9} ${n(y - h - 14)}h18`, { width: 2 })}`;
        }
        case 'tube': return html`${tube(x, x + cell, a, b)}${path([0.2, 0.4, 0.6, 0.8].map(share => `M${n(x + cell * share - 5)} ${n(y + (a + (b - a) * share) / 2)}l10 -${n(a + (b - a) * share)}`).join(''), { stroke: quiet, width: 0.7 })}`;
        case 'loop': return html`<path d="M${x} ${n(y + a / 2)}V${n(y - a / 2)}H${x + 26}C${x + 32} ${y - 52} ${x + cell - 32} ${y - 52} ${x + cell - 26} ${n(y - b / 2)}H${x + cell}V${n(y + b / 2)}H${x + cell - 42}C${x + cell - 50} ${y - 14} ${x + 50} ${y - 14} ${x + 42} ${n(y + a / 2)}Z" fill-rule="evenodd" fill="${pale}" stroke="#17212b" stroke-width="1.3"${isKnown ? nothing : html` stroke-dasharray="4 3"`}/>`;
        case 'box': return html`${tube(x, x + 24, a, a)}${isLast ? nothing : tube(x + cell - 24, x + cell, b, b)}<rect x="${x + 22}" y="${y - 32}" width="${cell - 44}" height="64" rx="5" fill="#fff" stroke="#17212b" stroke-width="1.6"/>`;
        case 'part': return html`${tube(x, middle, a, a)}${tube(middle, x + cell, b, b)}${box(middle - 18, y - Math.max(a, b) / 2 - 5, 36, Math.max(a, b) + 10, body)}`;
    }
}

/** The thread that a part shows to its neighbor: "male NPT". */
function threadText(part: Component): string | undefined {
    for (const [name, says] of [['male-thread', 'male '], ['female-thread', 'female '], ['thread', '']] as const) {
        const word = wordOf(part, name);
        if (word !== undefined && word !== 'none') {
            return says + wordText(word);
        }
    }
    return undefined;
}

interface Place {
    readonly x: number;
    readonly y: number;
}

/** What is drawn where two parts meet: clamps on the hose, threads, and the two sizes where they differ. */
function drawJoint(record: SurveyRecord, joint: Joint, places: readonly [Place, Place], sizes: readonly [Size | undefined, Size | undefined], heightsHere: readonly [number, number]): Html {
    const { from, to } = joint;
    // Where the run goes on in the next row, what belongs to the part before is drawn at its end.
    const { x, y } = places[1];
    const hoses = [isKind(record, from, 'hose'), isKind(record, to, 'hose')] as const;
    const hose = hoses[0] === hoses[1] ? undefined : hoses[0] ? from : to;
    const clamps = hose ? siOf(joint, 'clamps') ?? siOf(hose, 'clamps') : undefined;
    const sign = hose === to ? 1 : -1;
    const height = heightsHere[sign === 1 ? 1 : 0] + 6;
    const at = places[sign === 1 ? 1 : 0];
    const bands = clamps === undefined ? nothing : clamps === 0 ? letter(at.x + sign * 4, at.y + height / 2 + 10, 'no clamp', { size: 9, anchor: sign === 1 ? 'start' : 'end', isBold: true })
        : Array.from({ length: Math.min(4, Math.round(clamps)) }, (_, i) => box(at.x + sign * (9 + i * 9) - 2.5, at.y - height / 2, 5, height, { fill: '#fff', width: 1.3 }));
    const atJoint = [['male-thread', 'male '], ['female-thread', 'female '], ['thread', '']].flatMap(([name = '', says = '']) => {
        const value = joint.facts.get(name)?.values[0];
        return value?.type === 'word' && value.word !== 'none' ? [says + wordText(value.word)] : [];
    });
    const [own, others] = hoses[0] || hoses[1] ? [] : [threadText(from), threadText(to)];
    const end = places[0];
    const threads = atJoint.length > 0 ? letter(x, y - 54, atJoint.join(', '), { anchor: end.y === y ? 'middle' : 'start', size: 9.5 })
        : own === undefined && others === undefined ? nothing : html`${letter(end.x - 4, end.y - 54, own ?? 'not recorded', { anchor: 'end', size: 9.5 })}${letter(x + 4, y - 54, others ?? 'not recorded', { size: 9.5 })}`;
    const teeth = threads === nothing ? nothing : path(`M${n(x - 3)} ${n(y - 50)}${'l6 3l-6 3'.repeat(4)}`, { width: 1.1 });
    const [a, b] = sizes;
    const differ = a && b && a.sort === b.sort && a.sort !== 'other' && Math.abs(a.m - b.m) / Math.max(a.m, b.m) > 0.03;
    return html`${bands}${teeth}${threads}${differ ? html`${letter(end.x - 3, end.y + 44, a.text, { anchor: 'end', size: 9.5, isBold: true })}${letter(x + 3, y + 44, b.text, { size: 9.5, isBold: true })}${path(`M${n(x)} ${n(y + 34)}v12`, { width: 1 })}` : nothing}`;
}

/** A wave at the hull, above an opening that lies below the waterline and beneath one above it. */
function drawWaterline(part: Component, x: number, y: number, isLast: boolean): Html {
    const level = siOf(part, 'below-waterline') !== undefined ? -46 : siOf(part, 'above-waterline') !== undefined ? 46 : undefined;
    return level === undefined ? nothing : path(`M${n(isLast ? x + cell - 20 : x - 8)} ${n(y + level)}${'q3.5 -5 7 0t7 0'.repeat(2)}`, { width: 1.4 });
}

/** The drawing with its marks and the words to them. `id` begins the ids in it. */
export function drawRun(context: ReportContext, run: Run, id: string): Html {
    const { record } = context;
    const marks = marksOf(context, run);
    const { components, joints } = run;
    const sizes = components.map((part, i) => [sizeAt(record, part, joints[i - 1]) ?? sizeAt(record, part, joints[i]), sizeAt(record, part, joints[i]) ?? sizeAt(record, part, joints[i - 1])] as const);
    const largest = Math.max(0.01, ...sizes.flatMap(pair => pair.map(size => size?.m ?? 0)));
    const height = (size: Size | undefined) => size === undefined ? 20 : Math.max(9, size.m / largest * tallest);
    const tall = sizes.map(([a, b]) => [height(a), height(b)] as const);
    const labels = components.map(labelsOf);
    const rows = Math.max(1, Math.ceil(components.length / (run.end === 'component' ? mostInRow : mostInRow - 1)));
    const perRow = Math.max(1, Math.ceil(components.length / rows));
    const tops = [0];
    for (let row = 0; row < rows; row++) {
        tops.push((tops[row] ?? 0) + axis + 70 + lineHeight * Math.max(1, ...labels.slice(row * perRow, (row + 1) * perRow).map(label => label.length)));
    }
    const place = (index: number) => ({ x: (index % perRow) * cell + inset, y: (tops[Math.floor(index / perRow)] ?? 0) + axis });
    const last = components.length - 1;
    const end = place(last);
    const flow = flowOf(run);
    const sea = components.findIndex(part => shapeOf(record, part) === 'opening' && isAtEnd(run, part) !== undefined);
    const forward = sea < 0 || flow === undefined ? undefined : (sea === 0) === (flow === 'in');
    const width = Math.max(Math.min(perRow, components.length) * cell + (run.end === 'component' ? 0 : endRoom), 2 * cell) + 2 * inset;
    const title = called(run);
    const description = [
        `Parts in order: ${components.map(part => [nameOf(part), sizeText(part), ...heightText(part) === undefined ? [] : [heightText(part)]].join(', ')).join('; ')}${run.end === 'component' ? '' : `; then ${endText[run.end]}`}.`,
        ...flow === undefined ? [] : [flow === 'in' ? 'Water comes in from the sea.' : 'Water goes out to the sea.'],
        ...marks.map((mark, i) => `Mark ${i + 1} is ${'part' in mark.at ? `on ${idAt(run, mark.at.part)}` : `at the joint of ${idAt(run, mark.at.joint)} and ${idAt(run, mark.at.joint + 1)}`}.`),
    ].join(' ');
    return html`<figure class="run" id="${id}"${context.source(run.span)}>
<figcaption><strong>${called(run)}</strong> (${run.id})${runFacts(context, run)}</figcaption>
${drawing({
        id, title, description, width, height: tops[rows] ?? 0, body: html`${forward === undefined ? nothing : drawFlow(width - inset, forward)}${components.map((part, index) => {
            const { x, y } = place(index);
            const shape = shapeOf(record, part);
            const isLast = index === last && index > 0;
            const isContinued = index > 0 && index % perRow === 0;
            const goesOn = index < last && (index + 1) % perRow === 0;
            return html`<g>${isContinued ? html`${path(`M${x} ${y - 40}v80`, { stroke: quiet, dash: '2 3' })}${letter(x - 2, y - 46, `from ${idAt(run, index - 1)}`, { size: small, isQuiet: true })}` : nothing}${goesOn ? html`${path(`M${x + cell} ${y - 40}v80`, { stroke: quiet, dash: '2 3' })}${letter(x + cell + 2, y - 46, `to ${idAt(run, index + 1)}`, { size: small, isQuiet: true, anchor: 'end' })}` : nothing}${drawPart(
                shape, x, y, tall[index] ?? [20, 20], sizes[index]?.some(size => size !== undefined) ?? false, isLast)}${shape === 'opening' ? drawWaterline(part, x, y, isLast) : nothing}${letter(x + cell / 2, y + 58, wrapped(part.id, cell - 4, 1, 12, true)[0] ?? '', { anchor: 'middle', size: 12, isBold: true })}${(labels[index] ?? []).map((line, row) =>
                letter(x + cell / 2, y + 72 + row * lineHeight, line, { anchor: 'middle', size: small }))}</g>
`;
        })}${joints.map((joint, index) => {
            const before = place(index);
            return drawJoint(record, joint, [{ x: before.x + cell, y: before.y }, place(index + 1)], [sizes[index]?.[1], sizes[index + 1]?.[0]], [tall[index]?.[1] ?? 20, tall[index + 1]?.[0] ?? 20]);
        })}
${drawEnd(run, end.x + cell, end.y)}
${marks.map((mark, i) => drawMark(mark, String(i + 1), 'part' in mark.at ? place(mark.at.part) : place(mark.at.joint + 1)))}`,
    })}
${marksInWords(context, run, marks)}
</figure>`;
}

function drawFlow(right: number, forward: boolean): Html {
    const says = 'flow';
    const x = right - textWidth(says) - 6;
    return html`${path(forward ? `M${n(x - 40)} 10h34m-7 -4l7 4l-7 4` : `M${n(x - 6)} 10h-34m7 -4l-7 4l7 4`, { width: 1.6 })}${letter(x, 13.5, says)}`;
}

function drawEnd(run: Run, x: number, y: number): Html {
    const told = (word: string) => letter(x + 10, y + 4, word, { size: 11, isBold: true });
    switch (run.end) {
        case 'component': return nothing;
        case 'open': return html`<g>${path(`M${x} ${y - 24}l7 8l-7 8l7 8l-7 8l7 8l-7 8`, { width: 2 })}${told('open')}</g>`;
        default: return html`<g>${path(`M${x + 3} ${y - 28}v56`, { width: 7 })}${told(run.end)}</g>`;
    }
}

/** A flag on a part, a diamond on a joint, with the number of the mark. */
function drawMark({ at }: RunMark, sign: string, { x, y }: Place): Html {
    const look = { fill: '#fff', stroke: alarm, width: 2.6 };
    const size = sign.length > 1 ? 9.5 : 11.5;
    return 'part' in at
        ? html`<g>${path(`M${x + cell / 2 - 30} ${y - 12}v-34h19v17h-17`, look)}${letter(x + cell / 2 - 20.5, y - 33, sign, { anchor: 'middle', size, isBold: true, fill: alarm })}</g>`
        : html`<g>${path(`M${x} ${y - 15}l15 15l-15 15l-15 -15z`, look)}${letter(x, y + 4, sign, { anchor: 'middle', size, isBold: true, fill: alarm })}</g>`;
}
