/** Runs of the trial as curves over engine speed: boat speed, slip and coolant, each side by its own line and marker. */
import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import { convertTo, units } from '../../quantities/index.js';
import { sideOf } from '../../record/drive-lines.js';
import { nameOf, siOf, type Component, type Quantity, type Reading, type Row, type SurveyRecord } from '../../record/model.js';
import { computedColumnsOf, meanOf, seriesOf } from '../../record/reading-columns.js';
import type { ReportContext } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { capital, computedText } from '../wording.js';
import { box, called, drawing, figure, legend, letter, n, path, pieces, quiet, shortened, swatchHeight, swatchWidth } from './drawing.js';

/** Two charts, or three of them, beside each other on a printed page. */
const widths = { two: 312, three: 210 };
const plot = { left: 40, toRight: 40, top: 26, height: 150 };

export interface TrialPoint {
    readonly rpm: number;
    /** In SI. */
    readonly value: number;
    readonly row: Row;
}

export interface TrialSeries {
    readonly name: string;
    /** Place among the looks of lines and markers: port 0, starboard 1. */
    readonly look: number;
    readonly points: readonly TrialPoint[];
    /** Rated speed of the engine, in revolutions a minute. */
    readonly ratedRpm: number | undefined;
}

interface Run {
    readonly row: Row;
    readonly rpm: number;
    readonly isShown: boolean;
    readonly engine: Component | undefined;
}

const looks = [
    { dash: undefined, marker: (x: number, y: number) => html`<circle cx="${n(x)}" cy="${n(y)}" r="4" fill="#17212b" stroke="#17212b"/>` },
    { dash: '6 3', marker: (x: number, y: number) => box(x - 3.8, y - 3.8, 7.6, 7.6, { fill: '#fff', width: 1.6 }) },
    { dash: '2 3', marker: (x: number, y: number) => path(`M${n(x)} ${n(y - 5)}l5 9h-10z`, { fill: '#fff', width: 1.6 }) },
    { dash: '8 3 2 3', marker: (x: number, y: number) => path(`M${n(x)} ${n(y - 5)}l5 5l-5 5l-5 -5z`, { fill: '#17212b' }) },
] as const;

function runsOf(record: SurveyRecord, reading: Reading): Run[] {
    return reading.rows.flatMap((row): Run[] => {
        const rotation = siOf(row, 'rotation') ?? siOf(row, 'rotation-shown');
        const named = row.facts.get('engine')?.values[0];
        const [only, second] = reading.on;
        const engine = named?.type === 'component' ? record.components.get(named.id) : second ? undefined : only;
        return rotation === undefined ? [] : [{ row, rpm: convertTo(rotation, 'rpm'), isShown: siOf(row, 'rotation') === undefined, engine }];
    });
}

/** One series for each engine, by engine speed; `valueOf` gives a row's value in SI. */
export function seriesByEngine(record: SurveyRecord, reading: Reading, valueOf: (row: Row) => number | undefined): TrialSeries[] {
    const groups = new Map<string, { engine: Component | undefined; points: TrialPoint[] }>();
    for (const { row, rpm, engine } of runsOf(record, reading)) {
        const value = valueOf(row);
        const group = groups.get(engine?.id ?? '') ?? { engine, points: [] };
        groups.set(engine?.id ?? '', group);
        if (value !== undefined && Number.isFinite(value)) {
            group.points.push({ rpm, value, row });
        }
    }
    let others = 2;
    return [...groups.values()].sort((a, b) => rankOf(a.engine) - rankOf(b.engine)).map(({ engine, points }, _, { length }) => {
        const side = engine && sideOf(engine);
        const rated = engine && siOf(engine, 'rated-rotation');
        return {
            name: side !== undefined ? capital(side) : engine ? nameOf(engine) : 'Runs', look: side === 'port' || length === 1 ? 0 : side === 'starboard' ? 1 : others++ % looks.length,
            points: [...points].sort((a, b) => a.rpm - b.rpm), ratedRpm: rated === undefined ? undefined : convertTo(rated, 'rpm'),
        };
    }).filter(({ points }) => points.length > 0);
}

const rankOf = (engine: Component | undefined) => {
    const side = engine && sideOf(engine);
    return side === 'port' ? 0 : side === 'starboard' ? 1 : 2;
};

/** The curve of a series: one point for each engine speed, several runs at one speed by their mean. */
export function curvePoints(points: readonly TrialPoint[]): { readonly rpm: number; readonly value: number }[] {
    const speeds = new Map<number, number[]>();
    for (const { rpm, value } of points) {
        speeds.set(rpm, [...speeds.get(rpm) ?? [], value]);
    }
    return [...speeds].map(([rpm, values]) => ({ rpm, value: values.reduce((sum, value) => sum + value, 0) / values.length })).sort((a, b) => a.rpm - b.rpm);
}

interface Axis {
    readonly name: string;
    readonly title: string;
    /** Unit drawn at the left, and the one of the other system at the right. */
    readonly unit: string;
    readonly other?: string;
    readonly fromZero: boolean;
    readonly valueOf: (row: Row) => number | undefined;
}

function unitWritten(reading: Reading, column: string, fallback: string): string {
    const value = reading.rows.map(row => row.facts.get(column)?.values[0]).find((each): each is Quantity => each?.type === 'quantity');
    return value && value.figure.unit !== '' && units.has(value.figure.unit) ? value.figure.unit : fallback;
}

export function trialCurves(context: ReportContext, reading: Reading, id: string): Html {
    const { record } = context;
    const slip = computedColumnsOf(reading, record).find(({ name }) => name === 'slip');
    const speedUnit = unitWritten(reading, 'speed', 'kn');
    const heat = unitWritten(reading, 'coolant', 'C');
    const column = (name: string) => (row: Row) => meanOf(seriesOf(row, name));
    const axes: Axis[] = [
        { name: 'speed', title: 'Speed', unit: speedUnit, fromZero: true, valueOf: row => meanOf([...seriesOf(row, 'speed'), ...seriesOf(row, 'speed-against')]), ...speedUnit === 'mph' || speedUnit === 'km/h' ? { other: 'kn' } : {} },
        ...slip ? [{ name: 'slip', title: 'Slip', unit: '%', fromZero: true, valueOf: (row: Row) => slip.of(row, reading, record) }] : [],
        { name: 'coolant', title: 'Coolant', unit: heat, other: heat === 'F' ? 'C' : 'F', fromZero: false, valueOf: column('coolant') },
    ];
    const isShown = runsOf(record, reading).some(run => run.isShown);
    const charts = axes.flatMap(axis => {
        const series = seriesByEngine(record, reading, axis.valueOf);
        // Two looks at most tell two engines apart; beyond that the lines would only be counted.
        return pieces(series, looks.length).filter(some => some.reduce((sum, { points }) => sum + points.length, 0) > 1)
            .map((some, index) => ({ id: `${id}-${axis.name}-${index + 1}`, axis, series: some }));
    });
    const width = charts.length % 3 === 0 ? widths.three : widths.two;
    const drawings = charts.map(each => chart(each.id, reading, each.axis, each.series, width));
    return figure(`${called(reading)}, as curves over engine speed. Runs are the marks; lines only join them.${isShown ? ' Some engine speeds are those shown at the helm, not those of an independent tachometer.' : ''}`, drawings);
}

const decimals = (value: number) => String(Math.round(value * 10) / 10).replace('-', '−');
const grouped = (value: number) => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ',');
const degree = (unit: string) => computedText(`1 ${unit}`).slice(2);

function chart(id: string, reading: Reading, { title, unit, other, fromZero }: Axis, series: readonly TrialSeries[], width: number): Html {
    const plotRight = width - (other === undefined ? 12 : plot.toRight);
    const all = series.flatMap(({ points }) => points);
    const shown = (point: { readonly value: number }) => convertTo(point.value, unit);
    const values = all.map(shown);
    const rated = [...new Set(series.flatMap(({ ratedRpm }) => ratedRpm ?? []))];
    const [low, high] = [Math.min(...values, ...fromZero ? [0] : []), Math.max(...values, ...fromZero ? [0] : [])];
    const rpms = [...all.map(({ rpm }) => rpm), ...rated];
    const [slow, fast] = [Math.min(...rpms), Math.max(...rpms)];
    const pad = (fast - slow || fast || 1) * 0.05;
    const x = scaleLinear([slow - pad, fast + pad], [plot.left, plotRight]);
    const bottom = plot.top + plot.height;
    const y = scaleLinear(low === high ? [low - 1, high + 1] : [low, high], [bottom, plot.top]).nice(5);
    const best = all.reduce((a, b) => b.value > a.value ? b : a);
    const least = all.reduce((a, b) => b.value < a.value ? b : a);
    const at = (point: TrialPoint) => `${decimals(shown(point))} ${degree(unit)} at ${grouped(point.rpm)} rpm${point.row.label === '' ? '' : ` (${point.row.label})`}`;
    const [from, to] = y.domain().map(value => fromUnit(value, unit));
    const right = other === undefined || from === undefined || to === undefined ? undefined : scaleLinear([convertTo(from, other), convertTo(to, other)], [bottom, plot.top]);
    const signs = legend([
        ...series.map(({ name, look }) => ({ text: shortened(name, width - 70), swatch: (left: number, top: number) => html`${path(`M${n(left)} ${n(top + swatchHeight / 2)}h${swatchWidth}`, { width: 1.6, ...dashOf(look) })}${looks[look]?.marker(left + swatchWidth / 2, top + swatchHeight / 2)}` })),
        ...rated.length > 0 ? [{ text: `rated engine speed, ${rated.map(grouped).join(' and ')} rpm`, swatch: (left: number, top: number) => path(`M${n(left + 11)} ${n(top)}v13`, { dash: '5 2 1 2', width: 1.4 }) }] : [],
    ], 8, bottom + 44, width - 16);
    const body = html`${joined(y.ticks(5).map(tick => html`${path(`M${plot.left} ${n(y(tick))}H${plotRight}`, { stroke: '#b7c3ca', width: 0.7 })}${letter(plot.left - 5, y(tick) + 3.5, decimals(tick), { anchor: 'end', size: 10 })}`), '')}${right ? right.ticks(5).map(tick => html`${path(`M${plotRight} ${n(right(tick))}h4`)}${letter(plotRight + 7, right(tick) + 3.5, decimals(tick), { size: 10, isQuiet: true })}`) : nothing}
${x.ticks(width < widths.two ? 3 : 5).map(tick => html`${path(`M${n(x(tick))} ${bottom}v4`)}${letter(x(tick), bottom + 15, grouped(tick), { anchor: 'middle', size: 10 })}`)}${path(`M${plot.left} ${plot.top}V${bottom}H${plotRight}${right ? `V${plot.top}` : ''}`)}
${letter(8, 12, `${title}, ${degree(unit)}${other === undefined ? '' : `; right, ${degree(other)}`}`, { isBold: true })}${letter(plotRight, bottom + 31, 'engine speed, rpm', { anchor: 'end' })}
${rated.map(rpm => path(`M${n(x(rpm))} ${plot.top}V${bottom}`, { dash: '5 2 1 2', width: 1.4, stroke: quiet }))}
${series.map(({ points, look }) => {
        const curve = line<{ readonly rpm: number; readonly value: number }>().x(point => n(x(point.rpm))).y(point => n(y(shown(point)))).curve(curveMonotoneX)(curvePoints(points));
        return html`<g>${curve === null || points.length < 2 ? nothing : path(tidy(curve), { width: 1.6, ...dashOf(look) })}${points.map(point => looks[look]?.marker(x(point.rpm), y(shown(point))))}</g>
`;
    })}${signs.body}`;
    return drawing({
        id, title: `${title} over engine speed: ${called(reading)}`, width, height: bottom + 44 + signs.height + 4, body,
        description: `${series.map(({ name, points }) => `${name}: ${points.length} ${points.length === 1 ? 'run' : 'runs'}`).join('; ')}. Highest ${at(best)}, lowest ${at(least)}.${rated.length === 0 ? '' : ` Rated engine speed ${rated.map(grouped).join(' and ')} rpm.`}`,
    });
}

const dashOf = (look: number): { dash?: string } => {
    const dash = looks[look]?.dash;
    return dash === undefined ? {} : { dash };
};
const tidy = (d: string) => d.replace(/-?\d+\.\d{3,}(?:e[-+]\d+)?/g, number => String(n(Number(number))));

/** The inverse of `convertTo`: SI of a value in a unit. */
function fromUnit(value: number, unit: string): number {
    const zero = convertTo(0, unit);
    const slope = convertTo(1, unit) - zero;
    return slope === 0 ? value : (value - zero) / slope;
}
