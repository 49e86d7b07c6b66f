/**
 * Plate gaugings: each place as a bar of its mean against the outline of the original, pits as notches, with the limits of
 * wastage as lines. Lengths are true to one scale in a table.
 */
import { scaleLinear } from 'd3-scale';
import { gaugings, type GaugedPlace } from '../../checks/structure/gauged-places.js';
import { percent } from '../../checks/phrasing.js';
import { convertTo, significant } from '../../quantities/index.js';
import { siOf, yardstick, type Reading, type SurveyRecord } from '../../record/model.js';
import { meanOf, seriesOf } from '../../record/reading-columns.js';
import { wastageShare, wastageStep, type WastageLimits } from '../../trade/wastage.js';
import type { ReportContext } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { counted } from '../wording.js';
import { box, called, drawing, figure, hatching, legend, letter, n, pale, path, pieces, quiet, shortened, swatchHeight, swatchWidth, type LegendItem } from './drawing.js';

const width = 420;
const margin = 10;
const barHeight = 16;
const pitch = 52;
const mostBars = 12;

/** Places of a table with whether they are of metal, which alone wastes as plate does. */
function placesOf(record: SurveyRecord, reading: Reading): { readonly places: readonly GaugedPlace[]; readonly isMetal: boolean; readonly isLight: boolean; readonly basis: string | undefined } {
    const known = gaugings(record).find(gauging => gauging.reading === reading);
    if (known) {
        return { places: known.places, isMetal: true, isLight: known.isLight, basis: known.basis };
    }
    const places = reading.rows.map((row): GaugedPlace => {
        const [originalM, gaugedM, pitM] = [siOf(row, 'original'), meanOf(seriesOf(row, 'reading')), siOf(row, 'pit')];
        return { label: row.label, at: row.span, ...(originalM === undefined ? {} : { originalM }), ...(gaugedM === undefined ? {} : { gaugedM }), ...(pitM === undefined ? {} : { pitM }) };
    });
    return { places, isMetal: false, isLight: false, basis: undefined };
}

export function gaugingBars({ record }: ReportContext, reading: Reading, id: string): Html {
    const { places: all, isMetal, isLight, basis } = placesOf(record, reading);
    const places = all.filter(place => place.originalM !== undefined || place.gaugedM !== undefined);
    const longest = Math.max(0, ...places.flatMap(({ originalM, gaugedM }) => [originalM ?? 0, gaugedM ?? 0]));
    if (!places.some(({ gaugedM, pitM }) => gaugedM !== undefined || pitM !== undefined) || longest <= 0) {
        return nothing;
    }
    const [plan, renew, watch] = [yardstick(record, isLight ? 'plate-plan-light' : 'plate-plan'), yardstick(record, 'plate-renew'), yardstick(record, 'plate-watch')];
    const limits: WastageLimits = { watch: watch.si, plan: yardstick(record, 'plate-plan').si, planLight: yardstick(record, 'plate-plan-light').si, renew: renew.si };
    const title = `${called(reading)}, as bars`;
    const unit = unitOf(reading);
    const lost = places.flatMap(place => {
        const share = shareOf(place);
        return share === undefined ? [] : [{ place, share }];
    });
    const most = lost.reduce<(typeof lost)[number] | undefined>((worst, each) => worst && worst.share >= each.share ? worst : each, undefined);
    const deepest = places.reduce<GaugedPlace | undefined>((worst, each) => each.pitM === undefined || (worst?.pitM ?? -1) >= each.pitM ? worst : each, undefined);
    const description = [
        `${counted(places.length, 'place')} as bars against the original thickness.`,
        most === undefined ? 'No loss can be told, since no place has both an original and a reading.' : `Most is lost at ${most.place.label ?? ''}: ${lossText(most.share)}.`,
        deepest?.pitM === undefined ? '' : `Deepest pit: ${thickness(deepest.pitM, unit)} at ${deepest.label ?? ''}.`,
        isMetal ? `Lines at ${percent(plan.si)} lost, renewal planned, and ${percent(renew.si)}, renewed.` : '',
    ].filter(part => part !== '').join(' ');
    const lines = isMetal ? { plan, renew } : undefined;
    const parts = pieces(places, mostBars);
    return figure(`${title} against the original thickness.${basis === 'assumed' ? ' The original thickness is assumed.' : ''}`, parts.map((some, index) => draw({
        id: `${id}-bars-${index + 1}`, title: parts.length === 1 ? title : `${title}, part ${index + 1} of ${parts.length}`, unit, longest, some,
        description: index === 0 ? description : `Continued: ${some[0]?.label ?? ''} to ${some.at(-1)?.label ?? ''}.`,
        says: place => wordsOf(place, unit, isMetal ? share => wastageStep(share, isLight, limits) : undefined), ...(lines ? { lines } : {}),
    })));
}

/** Share lost at a place; negative where the plate is thicker than its original. */
export const shareOf = ({ originalM, gaugedM }: GaugedPlace): number | undefined => originalM === undefined || gaugedM === undefined ? undefined : wastageShare(originalM, gaugedM);

const lossText = (share: number) => share < -5e-4 ? `${percent(-share)} over the original` : `${percent(share)} lost`;

/** Unit to draw in: that of the first figure written, if it is one of plate, else millimeters. */
function unitOf(reading: Reading): string {
    const figure = reading.rows.flatMap(row => row.cells).flatMap(({ value }) => value?.type === 'quantity' && value.figure.dimension === 'length' ? [value.figure] : [])[0];
    return figure?.unit === 'in' || figure?.unit === 'mil' ? 'in' : 'mm';
}

function thickness(m: number, unit: string): string {
    return unit === 'in' ? `${(convertTo(m, 'in')).toFixed(3)} in` : `${significant(convertTo(m, 'mm'), 3)} mm`;
}

const stepWords = { sound: '', watch: '; to be watched', plan: '; renewal to be planned', renew: '; past the limit of renewal' } as const;

function wordsOf(place: GaugedPlace, unit: string, stepOf: ((share: number) => keyof typeof stepWords) | undefined): string {
    const { originalM, gaugedM, pitM } = place;
    const share = shareOf(place);
    return [
        gaugedM === undefined ? 'not gauged' : `mean ${thickness(gaugedM, unit)}${originalM === undefined ? ', original not recorded' : ` of ${thickness(originalM, unit)}`}`,
        ...share === undefined ? [] : [`${lossText(share)}${stepOf ? stepWords[stepOf(share)] : ''}`],
        ...pitM === undefined ? [] : [`pit ${thickness(pitM, unit)}${originalM !== undefined && originalM > 0 ? `, ${percent(pitM / originalM)}` : ''}`],
    ].join(': ').replace(/: pit/, '; pit');
}

interface Bars {
    readonly id: string;
    readonly title: string;
    readonly description: string;
    readonly unit: string;
    /** Longest thickness of the table, in metres: the scale of all its drawings. */
    readonly longest: number;
    readonly some: readonly GaugedPlace[];
    readonly says: (place: GaugedPlace) => string;
    readonly lines?: { readonly plan: { readonly si: number; readonly whose: string }; readonly renew: { readonly si: number; readonly whose: string } };
}

function draw({ id, title, description, unit, longest, some, says, lines }: Bars): Html {
    const x = scaleLinear([0, longest], [margin, width - margin]);
    const top = 8;
    const bottom = top + some.length * pitch;
    const other = unit === 'in' ? 'mm' : 'in';
    const axes = html`${axis(x, longest, unit, bottom)}${axis(x, longest, other, bottom + 22)}`;
    const bars = some.map((place, index) => {
        const y = top + index * pitch;
        const { label, originalM, gaugedM, pitM } = place;
        const surface = gaugedM ?? originalM ?? 0;
        const end = x(Math.max(0, surface));
        const tip = pitM === undefined ? undefined : x(Math.max(0, surface - pitM));
        const bar = tip === undefined ? `M${margin} ${n(y + 15)}H${n(end)}v${barHeight}H${margin}z`
            : `M${margin} ${n(y + 15)}H${n(end)}v${barHeight / 2 - 5}L${n(tip)} ${n(y + 15 + barHeight / 2)}L${n(end)} ${n(y + 15 + barHeight / 2 + 5)}v${barHeight / 2 - 5}H${margin}z`;
        const limit = (share: number) => originalM === undefined ? undefined : x(originalM * (1 - share));
        const [plan, renew] = lines ? [limit(lines.plan.si), limit(lines.renew.si)] : [];
        return html`<g>${letter(margin, y + 11, shortened(label ?? '', width - 2 * margin, 11, true), { isBold: true })}${originalM === undefined ? nothing : box(margin, y + 15, x(originalM) - margin, barHeight, { dash: '4 2' })}${path(bar, { fill: gaugedM === undefined ? 'none' : pale, width: 1.3, ...(gaugedM === undefined ? { dash: '1 3' } : {}) })}${gaugedM !== undefined && originalM !== undefined && gaugedM < originalM
            ? path(hatching(end, y + 15, x(originalM) - end, barHeight, 'dense'), { width: 0.6, stroke: quiet }) : nothing}${plan === undefined ? nothing : path(`M${n(plan)} ${n(y + 13)}v${barHeight + 4}`, { width: 1.4, dash: '2 2' })}${renew === undefined ? nothing : path(`M${n(renew)} ${n(y + 12)}v${barHeight + 6}`, { width: 2 })}${letter(margin, y + 43, shortened(says(place), width - 2 * margin), { isQuiet: true })}</g>
`;
    });
    const items: LegendItem[] = [
        { text: 'mean of the readings', swatch: (left, y) => box(left, y, swatchWidth, swatchHeight, { fill: pale, width: 1.3 }) },
        { text: 'original; hatched is what is lost', swatch: (left, y) => html`${box(left, y, swatchWidth, swatchHeight, { dash: '4 2' })}${path(hatching(left + 11, y, 11, swatchHeight, 'dense'), { width: 0.6, stroke: quiet })}` },
        ...some.some(({ pitM }) => pitM !== undefined) ? [{ text: 'notch: deepest pit', swatch: (left: number, y: number) => path(`M${n(left)} ${n(y)}h22l-9 6.5l9 6.5h-22`, { fill: pale, width: 1.3 }) }] : [],
        ...lines ? [
            { text: `renewal planned from ${percent(lines.plan.si)} lost (${lines.plan.whose})`, swatch: (left: number, y: number) => path(`M${n(left + 11)} ${n(y)}v13`, { width: 1.4, dash: '2 2' }) },
            { text: `renewed over ${percent(lines.renew.si)} lost (${lines.renew.whose})`, swatch: (left: number, y: number) => path(`M${n(left + 11)} ${n(y)}v13`, { width: 2 }) },
        ] : [],
    ];
    const signs = legend(items, margin, bottom + 50, width - 2 * margin);
    return drawing({ id, title, description, width, height: bottom + 50 + signs.height + 4, body: html`${bars}${axes}${signs.body}` });
}

/** A rule under the bars in one unit, with the unit at its end. */
function axis(x: (m: number) => number, longest: number, unit: string, y: number): Html {
    const perUnit = convertTo(1, unit);
    const ticks = scaleLinear([0, longest * perUnit], [0, 1]).ticks(5);
    return html`${path(`M${margin} ${n(y)}H${n(x(longest))}${ticks.map(tick => `M${n(x(tick / perUnit))} ${n(y)}v4`).join('')}`)}${ticks.map((tick, index) => letter(
        x(tick / perUnit), y + 14, index === 0 ? `0 ${unit}` : significant(tick, 3), { size: 9.5, isQuiet: true, anchor: index === 0 ? 'start' : x(tick / perUnit) > width - margin - 12 ? 'end' : 'middle' }))}`;
}
