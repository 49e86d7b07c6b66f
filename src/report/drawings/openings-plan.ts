/**
 * The plan of the openings: the hull seen from above, bow up, with every opening whose position is recorded. Positions are
 * to scale; the form of the hull is a plain one by the kind of craft and claims nothing of hers.
 */
import { scaleLinear } from 'd3-scale';
import { curveMonotoneY, line } from 'd3-shape';
import { pathsFrom, type Path } from '../../checks/openings/paths.js';
import { flagOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { computedBoth } from '../../checks/phrasing.js';
import type { ReportContext } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { capital, computedText, counted, wordText } from '../wording.js';
import { box, drawing, figure, legend, letter, n, path, quiet, shortened, swatchHeight, swatchWidth, wrapped, type LegendItem } from './drawing.js';
import { spread } from './spread.js';

/** How the water is kept out at an opening, as far as is recorded. */
export type OpeningState = 'works' | 'fault' | 'untried' | 'closed' | 'open' | 'none';

interface Placed {
    readonly opening: Component;
    readonly state: OpeningState;
    readonly isBelow: boolean | undefined;
    /** From the foremost point of the hull, in metres. */
    readonly fromBowM: number;
    /** To starboard of the centerline, in metres; undefined where it is not recorded, with the side it lies on. */
    readonly acrossM: number | undefined;
    readonly side: -1 | 0 | 1;
}

const meanings: Readonly<Record<OpeningState, string>> = {
    works: 'valve works', fault: 'valve stiff, seized or otherwise at fault', untried: 'valve, not recorded as worked', closed: 'closed off: capped, blanked or filled', open: 'out of use and not closed off', none: 'no valve recorded',
};

export function stateOf(record: SurveyRecord, opening: Component): OpeningState {
    const paths = pathsFrom(record, opening);
    const closure = wordOf(opening, 'closure');
    if (paths.some(({ isClosed }) => isClosed) || closure === 'capped') {
        return 'closed';
    }
    if (paths.some(({ endsOpen }) => endsOpen) || closure === 'open' || closure === 'plug-in-hose') {
        return 'open';
    }
    const valves = paths.flatMap(({ valve }: Path) => valve ?? []);
    // Of several valves behind one opening the worst decides.
    const states = valves.map(valveState);
    return (['fault', 'untried', 'works'] as const).find(state => states.includes(state)) ?? 'none';
}

function valveState(valve: Component): 'works' | 'fault' | 'untried' {
    const works = wordOf(valve, 'works');
    return works === 'stiff' || works === 'seized' || works === 'no' || wordOf(valve, 'handle') === 'gone' || flagOf(valve, 'spins') === true || flagOf(valve, 'shuts-off') === false || flagOf(valve, 'leaks') === true ? 'fault'
        : works === 'free' || works === 'yes' ? 'works' : 'untried';
}

/** Openings that can be drawn, and those with a position that lacks something. */
export function placedOpenings(record: SurveyRecord, lengthM: number | undefined): { readonly placed: readonly Placed[]; readonly unplaced: readonly Component[] } {
    const placed: Placed[] = [];
    const unplaced: Component[] = [];
    for (const opening of ofKind(record, 'hull-opening') as readonly Component[]) {
        const [bow, stern, across] = [siOf(opening, 'from-bow'), siOf(opening, 'from-stern'), siOf(opening, 'from-centerline')];
        const fromBowM = bow ?? (stern === undefined || lengthM === undefined ? undefined : lengthM - stern);
        const written = wordOf(opening, 'side');
        const sides = written === 'port' ? [-1] as const : written === 'starboard' ? [1] as const : written === 'both' ? [-1, 1] as const : written === 'centerline' || across === 0 ? [0] as const : undefined;
        if (fromBowM === undefined || !sides) {
            unplaced.push(opening);
            continue;
        }
        const isBelow = siOf(opening, 'below-waterline') !== undefined ? true : siOf(opening, 'above-waterline') !== undefined ? false : undefined;
        const state = stateOf(record, opening);
        placed.push(...sides.map(side => ({ opening, state, isBelow, fromBowM, side, acrossM: side === 0 ? 0 : across === undefined ? undefined : side * across })));
    }
    return { placed, unplaced };
}

type Form = readonly (readonly [fromBow: number, halfBreadth: number])[];

/** Half breadths along the length as shares of the greatest: plain forms of our own, not hers. */
const forms = {
    sailing: [[0, 0], [0.06, 0.25], [0.15, 0.52], [0.3, 0.83], [0.45, 0.97], [0.57, 1], [0.75, 0.94], [0.9, 0.78], [1, 0.6]],
    motor: [[0, 0], [0.05, 0.34], [0.12, 0.6], [0.25, 0.87], [0.4, 0.98], [0.55, 1], [0.8, 0.99], [1, 0.92]],
    box: [[0, 0.8], [0.03, 0.96], [0.1, 1], [0.9, 1], [0.97, 0.96], [1, 0.9]],
    slim: [[0, 0], [0.06, 0.4], [0.15, 0.7], [0.3, 0.94], [0.5, 1], [0.8, 0.96], [1, 0.75]],
} satisfies Record<string, Form>;

interface Hull {
    readonly form: Form;
    /** Its centerline to starboard of hers, and half its greatest breadth, in metres. */
    readonly acrossM: number;
    readonly halfM: number;
    /** Where it begins and ends, as shares of her length. */
    readonly from: number;
    readonly to: number;
}

function hullsOf(type: string | undefined, beamM: number, hullBeamM: number | undefined): readonly Hull[] {
    const half = beamM / 2;
    const single = (form: Form): Hull[] => [{ form, acrossM: 0, halfM: half, from: 0, to: 1 }];
    switch (type) {
        case 'catamaran': {
            const own = Math.min(hullBeamM ?? beamM * 0.27, half) / 2;
            return [-1, 1].map(side => ({ form: forms.slim, acrossM: side * (half - own), halfM: own, from: 0, to: 1 }));
        }
        case 'trimaran': {
            const [main, outer] = [Math.min(hullBeamM ?? beamM * 0.22, half) / 2, beamM * 0.05];
            return [{ form: forms.slim, acrossM: 0, halfM: main, from: 0, to: 1 }, ...[-1, 1].map(side => ({ form: forms.slim, acrossM: side * (half - outer), halfM: outer, from: 0.12, to: 0.9 }))];
        }
        case 'houseboat': return single(forms.box);
        case 'sailing-yacht': case 'wooden-classic': return single(forms.sailing);
        default: return single(forms.motor);
    }
}

/** Half breadth of a form at a share of its length, between its given ones. */
export function halfBreadthAt(form: Form, share: number): number {
    const at = Math.min(1, Math.max(0, share));
    const after = Math.max(1, form.findIndex(([from]) => from >= at));
    const [a, b] = [form[after - 1] ?? [0, 0], form[after] ?? [1, 0]];
    return b[0] === a[0] ? b[1] : a[1] + (b[1] - a[1]) * (at - a[0]) / (b[0] - a[0]);
}

/** Where an opening without a distance from the centerline may be drawn, in metres to starboard, best first: part-way out on its side, or about the middle of its hull. */
function likelyAcross({ side, fromBowM }: Placed, hulls: readonly Hull[], lengthM: number): number[] {
    const own = hulls.length === 2 ? hulls.find(hull => Math.sign(hull.acrossM) === side) : undefined;
    const hull = own ?? hulls[0];
    const half = (hull?.halfM ?? 0) * halfBreadthAt(hull?.form ?? forms.motor, fromBowM / lengthM);
    return own ? [0, -0.5, 0.5].map(share => own.acrossM + share * half) : [0.6, 0.9, 0.3].map(share => side * share * half);
}

const width = 440;
const margin = 8;
const labelWidth = 122;
const labelGap = 32;
const twoLineGap = 43;
const top = 30;
const radius = 6.5;

/** The sign of an opening: its shape by its state, full below the waterline, hollow above. */
function sign(x: number, y: number, state: OpeningState, isBelow: boolean | undefined): Html {
    const r = radius;
    const dark = isBelow === true;
    const [fill, mark] = dark ? ['#17212b', '#fff'] : ['#fff', '#17212b'];
    const look = { fill, width: 1.8, ...isBelow === undefined ? { dash: '2 1.5' } : {} };
    const circle = html`<circle cx="${n(x)}" cy="${n(y)}" r="${r}" fill="${fill}" stroke="#17212b" stroke-width="1.8"${isBelow === undefined ? html` stroke-dasharray="2 1.5"` : nothing}/>`;
    const square = box(x - r, y - r, 2 * r, 2 * r, look);
    switch (state) {
        case 'works': return circle;
        case 'untried': return html`${circle}<circle cx="${n(x)}" cy="${n(y)}" r="2" fill="${mark}"/>`;
        case 'fault': return html`${square}${path(`M${n(x - 3.5)} ${n(y - 3.5)}l7 7m0 -7l-7 7`, { stroke: mark, width: 1.8 })}`;
        case 'closed': return html`${square}${path(`M${n(x - 4)} ${n(y)}h8`, { stroke: mark, width: 2.2 })}`;
        case 'open': return path(`M${n(x)} ${n(y - r - 2)}l${r + 2} ${r + 2}l${-r - 2} ${r + 2}l${-r - 2} ${-r - 2}z`, { ...look, width: 2.6 });
        case 'none': return path(`M${n(x)} ${n(y - r - 1)}l${r + 1} ${2 * r + 1}h${-2 * r - 2}z`, look);
    }
}

/** The plan, or nothing where no opening has a position. */
export function openingsPlan(context: ReportContext): Html {
    const { record } = context;
    const { vessel } = record;
    const all = ofKind(record, 'hull-opening');
    if (!all.some(opening => opening.facts.has('from-bow') || opening.facts.has('from-stern'))) {
        return nothing;
    }
    const [onDeck, overall, beam] = vessel ? [siOf(vessel, 'length-on-deck'), siOf(vessel, 'length-overall'), siOf(vessel, 'beam')] : [];
    const recorded = onDeck ?? overall;
    const { placed, unplaced } = placedOpenings(record, recorded);
    if (placed.length === 0) {
        return nothing;
    }
    const aftermost = Math.max(...placed.map(({ fromBowM }) => fromBowM));
    const lengthM = recorded !== undefined && recorded > 0 ? recorded : Math.max(aftermost * 1.05, 1);
    const widest = Math.max(0, ...placed.map(({ acrossM }) => Math.abs(acrossM ?? 0)));
    const beamM = beam !== undefined && beam > 0 ? beam : Math.max(lengthM * 0.32, widest * 2.1);
    const hulls = hullsOf(vessel ? wordOf(vessel, 'type') : undefined, beamM, vessel && siOf(vessel, 'hull-beam'));

    // Labels stand beside the hull, on the side of their opening; those on the centerline where there is more room.
    const sided = placed.map(each => ({ each, side: each.side }));
    const count = (side: number) => sided.filter(entry => entry.side === side).length;
    let balance = count(-1) - count(1);
    const entries = sided.map(({ each, side }) => {
        const at: -1 | 1 = side !== 0 ? side : balance > 0 ? 1 : -1;
        balance += side === 0 ? -at : 0;
        return { each, labelSide: at };
    });
    const most = Math.max(...[-1, 1].map(side => entries.filter(({ labelSide }) => labelSide === side).length));
    // One scale along and across, as large as the room beside the labels and the page allow.
    const room = width - 2 * (margin + labelWidth + 18);
    const height = Math.min(520, room / beamM * lengthM);
    const hullHeight = Math.max(Math.min(height, 640), 220);
    // Names have two lines where there is room for them.
    const gap = most * twoLineGap <= Math.max(hullHeight, 400) ? twoLineGap : labelGap;
    const plotHeight = Math.max(hullHeight, most * gap);
    const hullTop = top + (plotHeight - hullHeight) / 2;
    const perM = hullHeight / lengthM;
    const outer = Math.max(beamM / 2, widest);
    const perMAcross = Math.min(perM, room / 2 / outer);
    const middle = width / 2;
    const y = scaleLinear([0, lengthM], [hullTop, hullTop + hullHeight]).clamp(true);
    const x = (acrossM: number) => middle + acrossM * perMAcross;
    const isStretched = perMAcross < perM * 0.98;

    // Recorded places are drawn where they are; the others where they hide none of these.
    const marks: { each: Placed; labelSide: -1 | 1; x: number; y: number }[] = [];
    for (const { each, labelSide } of [...entries].sort((a, b) => Number(a.each.acrossM === undefined) - Number(b.each.acrossM === undefined))) {
        const at = y(each.fromBowM);
        const likely = each.acrossM === undefined ? likelyAcross(each, hulls, lengthM).map(x) : [x(each.acrossM)];
        const nearest = (place: number) => Math.min(Infinity, ...marks.map(mark => Math.hypot(mark.x - place, mark.y - at)));
        marks.push({ each, labelSide, y: at, x: likely.find(place => nearest(place) > 2 * radius + 4) ?? likely.reduce((best, place) => nearest(place) > nearest(best) ? place : best) });
    }
    const labels = ([-1, 1] as const).flatMap(side => {
        const own = marks.filter(mark => mark.labelSide === side);
        const places = spread(own.map(mark => mark.y), gap, top + 10, top + plotHeight - (gap === labelGap ? 18 : 29));
        return own.map((mark, i) => ({ ...mark, labelY: places[i] ?? mark.y }));
    });
    const states = (Object.keys(meanings) as OpeningState[]).filter(state => placed.some(each => each.state === state));
    const items: LegendItem[] = [
        ...states.map((state): LegendItem => ({ text: meanings[state], swatch: (left, at) => sign(left + swatchWidth / 2, at + swatchHeight / 2, state, false) })),
        ...placed.some(({ isBelow }) => isBelow === true) ? [{ text: 'filled: below the waterline', swatch: (left: number, at: number) => sign(left + swatchWidth / 2, at + swatchHeight / 2, 'works', true) }] : [],
        ...placed.some(({ isBelow }) => isBelow === undefined) ? [{ text: 'dashed: height not recorded', swatch: (left: number, at: number) => sign(left + swatchWidth / 2, at + swatchHeight / 2, 'works', undefined) }] : [],
    ];
    const bottom = top + plotHeight;
    const signs = legend(items, margin, bottom + 26, width - 2 * margin);
    const guessed = placed.filter(({ acrossM }) => acrossM === undefined);
    const below = placed.filter(({ isBelow }) => isBelow === true).length;
    const beyond = placed.filter(({ fromBowM }) => fromBowM < 0 || fromBowM > lengthM + 1e-9).map(({ opening }) => opening.id);
    const sorted = [...placed].sort((a, b) => a.fromBowM - b.fromBowM);
    const told = (each: Placed | undefined) => each ? `${each.opening.id} ${computedText(computedBoth(each.fromBowM, 'length'))} from the bow` : '';
    const description = `${counted(placed.length, 'opening')}, bow up: ${([[-1, 'to port'], [0, 'on the centerline'], [1, 'to starboard']] as const).filter(([side]) => placed.some(each => each.side === side)).map(([side, says]) => `${placed.filter(each => each.side === side).length} ${says}`).join(', ')}; ${below} below the waterline. ${
        states.map(state => `${capital(meanings[state])}: ${placed.filter(each => each.state === state).map(({ opening }) => opening.id).join(', ')}.`).join(' ')} Foremost ${told(sorted[0])}; aftermost ${told(sorted.at(-1))}.`;
    const notes = [
        recorded === undefined ? 'Her length is not recorded, so that the plan is drawn to the aftermost opening.' : `Along the length to scale of ${onDeck !== undefined ? 'the length on deck' : 'the length over all'}${isStretched ? '; across drawn narrower' : ''}.`,
        'The form of the hull is a plain one, not hers.',
        ...guessed.length > 0 ? [`Where the distance from the centerline is not recorded (${[...new Set(guessed.map(({ opening }) => opening.id))].join(', ')}), an opening is drawn part-way out on its side.`] : [],
        ...beyond.length > 0 ? [`Recorded beyond the ends of the hull and drawn at its end: ${[...new Set(beyond)].join(', ')}.`] : [],
        ...unplaced.length > 0 ? [`Not drawn, for want of a position or a side: ${unplaced.map(({ id }) => id).join(', ')}.`] : [],
    ];
    return html`${figure('Plan of the openings, seen from above, bow up.', [drawing({
        id: 'openings-plan', title: 'Plan of the openings', description, width, height: bottom + 26 + signs.height + 4,
        body: html`${letter(margin, 16, 'Port', { isBold: true })}${letter(width - margin, 16, 'Starboard', { anchor: 'end', isBold: true })}${letter(middle, hullTop - 8, 'bow', { anchor: 'middle', isQuiet: true })}${letter(middle, hullTop + hullHeight + 14, 'stern', { anchor: 'middle', isQuiet: true })}
${hulls.length > 1 ? path(`M${n(x(-beamM / 2))} ${n(y(lengthM * 0.3))}H${n(x(beamM / 2))}M${n(x(-beamM / 2))} ${n(y(lengthM * 0.75))}H${n(x(beamM / 2))}`, { stroke: quiet, dash: '4 3' }) : nothing}
${hulls.map(hull => path(outline(hull, x, y, lengthM), { width: 1.8, fill: '#fff' }))}
${path(`M${middle} ${n(hullTop)}V${n(hullTop + hullHeight)}`, { stroke: quiet, width: 0.7, dash: '8 3 2 3' })}
${labels.map(({ each, labelSide, x: cx, y: cy, labelY }) => {
            const name = wrapped(`${each.opening.id} ${each.opening.title ?? capital(wordText(each.opening.kind))}`, labelWidth - 2, gap === labelGap ? 1 : 2, 10.5, true);
            const edge = labelSide === -1 ? margin + labelWidth : width - margin - labelWidth;
            return html`<g>${path(`M${n(edge + labelSide * -4)} ${n(labelY)}H${n(edge - labelSide * 10)}L${n(cx)} ${n(cy)}`, { stroke: quiet, width: 0.8 })}${name.map((text, index) => letter(edge, labelY - 1 + index * 11.5, text, { size: 10.5, isBold: true, anchor: labelSide === -1 ? 'end' : 'start' }))}${letter(
                edge, labelY - 0.5 + name.length * 11.5, shortened(detail(each.opening), labelWidth - 2, 9.5), { size: 9.5, isQuiet: true, anchor: labelSide === -1 ? 'end' : 'start' })}</g>
`;
        })}${marks.map(({ each, x: cx, y: cy }) => html`<g>${sign(cx, cy, each.state, each.isBelow)}</g>
`)}${signs.body}`,
    })])}<p class="small">${notes.join(' ')}</p>`;
}

/** Size and height in a few words, as written; both systems stand in the register. */
function detail(opening: Component): string {
    const of = (...names: readonly string[]) => names.map(name => opening.facts.get(name)?.values[0]).find(value => value?.type === 'quantity');
    const size = of('size', 'bore');
    const [below, above] = [of('below-waterline'), of('above-waterline')];
    return [...size?.type === 'quantity' ? [size.figure.written] : [], ...below?.type === 'quantity' ? [`${below.figure.written} below`] : above?.type === 'quantity' ? [`${above.figure.written} above`] : []].join(', ');
}

function outline({ form, acrossM, halfM, from, to }: Hull, x: (m: number) => number, y: (m: number) => number, lengthM: number): string {
    const along = (share: number) => y((from + (to - from) * share) * lengthM);
    const side = (sign: -1 | 1) => line<readonly [number, number]>().x(([, half]) => n(x(acrossM + sign * half * halfM))).y(([share]) => n(along(share))).curve(curveMonotoneY);
    const port = side(-1)([...form]) ?? '';
    const starboard = side(1)([...form].reverse()) ?? '';
    return `${port}${starboard.replace(/^M/, 'L')}Z`.replace(/-?\d+\.\d{3,}(?:e[-+]\d+)?/g, number => String(n(Number(number))));
}
