/** Potentials of the fittings on a scale of millivolts, with the protective range of the hull as a band. */
import { scaleLinear } from 'd3-scale';
import { siOf, wordOf, yardstick, type Reading, type Row, type SurveyRecord } from '../../record/model.js';
import { computedColumnsOf } from '../../record/reading-columns.js';
import type { ReportContext } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { counted } from '../wording.js';
import { box, called, drawing, figure, hatched, hatching, legend, letter, n, path, pieces, quiet, shortened, swatchHeight, swatchWidth } from './drawing.js';

const width = 420;
const margin = 12;
const pitch = 34;
const mostRows = 18;

type Gear = 'fiberglass-bronze' | 'fiberglass-aluminum-drive' | 'aluminum' | 'steel' | 'wood';
const gears: ReadonlySet<string> = new Set<Gear>(['fiberglass-bronze', 'fiberglass-aluminum-drive', 'aluminum', 'steel', 'wood']);
const isGear = (word: string | undefined): word is Gear => word !== undefined && gears.has(word);

const millivolts = (v: number) => `${String(Math.round(v * 1000)).replace('-', '−')} mV`;

interface Point {
    readonly row: Row;
    /** Against silver chloride in sea water. */
    readonly volts: number;
}

function pointsOf(record: SurveyRecord, reading: Reading): Point[] {
    const cell = wordOf(reading, 'cell');
    const converted = computedColumnsOf(reading, record).find(({ name }) => name === 'silver-chloride');
    return reading.rows.flatMap(row => {
        const volts = cell === undefined || cell === 'silver-chloride' ? siOf(row, 'potential') : converted?.of(row, reading, record);
        return volts === undefined ? [] : [{ row, volts }];
    });
}

export function potentialPoints({ record }: ReportContext, reading: Reading, id: string): Html {
    const points = pointsOf(record, reading);
    if (points.length < 2) {
        return nothing;
    }
    const gear = wordOf(reading, 'gear');
    const range = isGear(gear) ? yardstick(record, `potential-${gear}`) : undefined;
    const title = called(reading);
    const [least, most] = [points.reduce((a, b) => b.volts < a.volts ? b : a), points.reduce((a, b) => b.volts > a.volts ? b : a)];
    const outside = range ? points.filter(({ volts }) => volts < range.low - 1e-9 || volts > range.high + 1e-9).length : 0;
    const description = `${counted(points.length, 'fitting')} against silver chloride. Most negative ${millivolts(least.volts)} at ${least.row.label}, least ${millivolts(most.volts)} at ${most.row.label}.${range
        ? ` Range ${millivolts(range.low)} to ${millivolts(range.high)}, ${range.whose}: ${outside === 0 ? 'all lie within it' : `${outside} ${outside === 1 ? 'lies' : 'lie'} outside`}.` : ' No range is recorded to compare with.'}`;
    const scale = scaleLinear([Math.min(least.volts, range?.low ?? Infinity), Math.max(most.volts, range?.high ?? -Infinity)].map(v => v * 1000) as [number, number], [margin + 6, width - margin - 6]).nice(6);
    const x = (volts: number) => scale(volts * 1000);
    const parts = pieces(points, mostRows);
    return figure(`${title}, in millivolts against silver chloride.`, parts.map((some, index) => {
        const bottom = 8 + some.length * pitch;
        const band = range ? { from: x(range.low), to: x(range.high) } : undefined;
        const signs = legend([
            { text: 'reading', swatch: (left, top) => dot(left + 11, top + 6.5, true) },
            ...range ? [
                { text: `range ${millivolts(range.low)} to ${millivolts(range.high)} (${range.whose})`, swatch: (left: number, top: number) => hatched(left, top, swatchWidth, swatchHeight, 'dense', { stroke: quiet }) },
                ...outside > 0 ? [{ text: 'reading outside the range', swatch: (left: number, top: number) => dot(left + 11, top + 6.5, false) }] : [],
            ] : [],
        ], margin, bottom + 28, width - 2 * margin);
        return drawing({
            id: `${id}-points-${index + 1}`, title: parts.length === 1 ? title : `${title}, part ${index + 1} of ${parts.length}`, width, height: bottom + 28 + signs.height + 4,
            description: index === 0 ? description : `Continued: ${some[0]?.row.label ?? ''} to ${some.at(-1)?.row.label ?? ''}.`,
            body: html`${some.map(({ row, volts }, i) => {
                const y = 8 + i * pitch;
                const isIn = range === undefined || volts >= range.low - 1e-9 && volts <= range.high + 1e-9;
                return html`<g>${letter(margin, y + 11, shortened(row.label, 250))}${letter(width - margin, y + 11, `${millivolts(volts)}${isIn ? '' : ', outside'}`, { anchor: 'end', isBold: !isIn })}${band ? html`${box(band.from, y + 15, band.to - band.from, 13, { stroke: quiet, width: 0.7 })}${path(hatching(band.from, y + 15, band.to - band.from, 13, 'dense'), { stroke: quiet, width: 0.5 })}` : nothing}${path(`M${margin} ${n(y + 21.5)}H${width - margin}`, { stroke: quiet, width: 0.6 })}${dot(x(volts), y + 21.5, isIn)}</g>
`;
            })}${path(`M${margin} ${n(bottom)}H${width - margin}${scale.ticks(6).map(tick => `M${n(scale(tick))} ${n(bottom)}v4`).join('')}`)}${scale.ticks(6).map(tick => letter(scale(tick), bottom + 15, String(tick).replace('-', '−'), { anchor: 'middle', size: 9.5, isQuiet: true }))}${signs.body}`,
        });
    }));
}

const dot = (x: number, y: number, isIn: boolean): Html => isIn ? html`<circle cx="${n(x)}" cy="${n(y)}" r="4.5" fill="#17212b" stroke="#fff"/>` : path(`M${n(x)} ${n(y - 7)}l7 7l-7 7l-7 -7z`, { fill: '#fff', width: 2.4 });
