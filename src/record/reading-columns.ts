/**
 * Columns that are computed from the recorded ones: shown behind the row in the editor and printed in the report.
 * Each states its formula, so that no figure stands bare.
 */
import { formatQuantity, significant, type Dimension, type UnitSystem } from '../quantities/index.js';
import { propellerSlip } from '../trade/propeller-slip.js';
import { cellElectrodes, convertPotentialV } from '../trade/reference-electrode.js';
import { tubeFallPa } from '../trade/tube-pressure.js';
import { wastageShare } from '../trade/wastage.js';
import { driveLines } from './drive-lines.js';
import { siOf, wordOf, type Reading, type Row, type SurveyRecord } from './model.js';
import { trialRuns, type TrialRun } from './trial-runs.js';

export interface ComputedColumn {
    readonly name: string;
    readonly title: string;
    readonly dimension: Dimension;
    /** How it is computed, and what it assumes. */
    readonly formula: string;
    /** In SI; undefined where a column it needs is empty. */
    readonly of: (row: Row, reading: Reading, record: SurveyRecord) => number | undefined;
}

/** SI values of a column that may be repeated. */
export function seriesOf(row: Row, column: string): number[] {
    return (row.facts.get(column)?.values ?? []).flatMap(value => value.type === 'quantity' ? [value.si] : []);
}

export function meanOf(values: readonly number[]): number | undefined {
    return values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** A column as SI where it was read; `undefined` flows through `compute`. */
function from(columns: readonly string[], compute: (...values: number[]) => number | undefined): ComputedColumn['of'] {
    return row => {
        const values = columns.map(column => meanOf(seriesOf(row, column)));
        return values.some(value => value === undefined) ? undefined : compute(...values as number[]); // None is undefined, as just tested.
    };
}

/** A temperature difference has no zero of its own: it is formatted as a number of kelvins. */
const degreesApart: Dimension = 'number';

/** Potential against silver chloride in sea water, by whatever cell it was read. */
function againstSilverChloride(row: Row, reading: Reading): number | undefined {
    const potential = siOf(row, 'potential');
    const cell = wordOf(reading, 'cell');
    const electrode = cell === undefined || cell === 'silver-chloride' ? undefined : cellElectrodes[cell];
    return potential === undefined || !electrode ? undefined : convertPotentialV(potential, electrode, 'silver-chloride-sea-water');
}

/** Trial runs of a record by their rows, looked up once. */
const runsByRow = new WeakMap<SurveyRecord, ReadonlyMap<Row, readonly TrialRun[]>>();

/** Slip of the propeller that the row's engine turns; none where the row is of several that differ. */
function slipOfRow(row: Row, _: Reading, record: SurveyRecord): number | undefined {
    let runs = runsByRow.get(record);
    if (!runs) {
        const found = new Map<Row, TrialRun[]>();
        for (const run of trialRuns(record, driveLines(record))) {
            if (run.row) {
                found.set(run.row.row, [...found.get(run.row.row) ?? [], run]);
            }
        }
        runs = found;
        runsByRow.set(record, runs);
    }
    const slips = (runs.get(row) ?? []).map(({ line: { propeller, reducer }, rotation, speedMs }) => {
        const [ratio, pitchM] = [reducer && siOf(reducer, 'ratio'), siOf(propeller, 'pitch')];
        return ratio === undefined || pitchM === undefined ? undefined : propellerSlip(speedMs, { rotationRadS: rotation.quantity.si, ratio, pitchM });
    });
    const [first] = slips;
    return first !== undefined && slips.every(slip => slip !== undefined && Math.abs(slip - first) < 1e-9) ? first : undefined;
}

const columnsByMeasure: Readonly<Record<string, readonly ComputedColumn[]>> = {
    moisture: [
        { name: 'mean', title: 'Mean', dimension: 'number', formula: 'mean of the row, on the meter’s own scale', of: from(['reading'], mean => mean) },
        {
            name: 'over-reference', title: 'Over reference', dimension: 'number', formula: 'highest reading of the row over the dry reference of the same meter and mode',
            of: (row, reading) => {
                const reference = siOf(reading, 'reference');
                const series = seriesOf(row, 'reading');
                return reference === undefined || reference <= 0 || series.length === 0 ? undefined : Math.max(...series) / reference;
            },
        },
    ],
    thickness: [
        { name: 'mean', title: 'Mean', dimension: 'length', formula: 'mean of the readings', of: from(['reading'], mean => mean) },
        { name: 'loss', title: 'Loss', dimension: 'fraction', formula: '(original − mean) / original', of: from(['original', 'reading'], wastageShare) },
        { name: 'pit-share', title: 'Pit', dimension: 'fraction', formula: 'deepest pit / original, kept apart from the loss', of: from(['pit', 'original'], (pit, original) => original > 0 ? pit / original : undefined) },
    ],
    potential: [
        { name: 'silver-chloride', title: 'Against silver chloride', dimension: 'voltage', formula: 'reading brought to the silver-chloride cell in sea water', of: againstSilverChloride },
        { name: 'dc-shift', title: 'Shift with DC', dimension: 'voltage', formula: 'with the DC main switch on − off', of: from(['dc-on', 'dc-off'], (on, off) => on - off) },
        { name: 'shore-shift', title: 'Shift with shore lead', dimension: 'voltage', formula: 'with the shore lead in − out', of: from(['shore-in', 'shore-out'], (plugged, out) => plugged - out) },
    ],
    compression: [{
        name: 'under-highest', title: 'Under highest', dimension: 'fraction', formula: '(highest of the table − this) / highest',
        of: (row, reading) => {
            const own = siOf(row, 'pressure');
            const highest = Math.max(0, ...reading.rows.flatMap(each => seriesOf(each, 'pressure')));
            return own === undefined || highest <= 0 ? undefined : (highest - own) / highest;
        },
    }],
    temperature: [{
        name: 'over-air', title: 'Over air, K', dimension: degreesApart, formula: 'temperature − air temperature of the table, in kelvins',
        of: (row, reading) => {
            const [own, air] = [siOf(row, 'temperature'), siOf(reading, 'air-temperature')];
            return own === undefined || air === undefined ? undefined : own - air;
        },
    }],
    trial: [
        { name: 'mean-speed', title: 'Mean speed', dimension: 'speed', formula: 'mean of the run and its opposite', of: from(['speed', 'speed-against'], (one, other) => (one + other) / 2) },
        { name: 'slip', title: 'Slip', dimension: 'fraction', formula: '1 − speed × ratio / (engine speed × pitch), the speed as the mean of both ways where both were run', of: slipOfRow },
        { name: 'dial-error', title: 'Dial error', dimension: 'fraction', formula: '(engine speed shown − by the independent tachometer) / by the tachometer', of: from(['rotation-shown', 'rotation'], (shown, true_) => true_ > 0 ? (shown - true_) / true_ : undefined) },
    ],
    battery: [
        { name: 'cranking-share', title: 'Cranking, of rated', dimension: 'fraction', formula: 'measured / rated cold-cranking current', of: from(['measured', 'rated'], (measured, rated) => rated > 0 ? measured / rated : undefined) },
        { name: 'capacity-share', title: 'Capacity, of rated', dimension: 'fraction', formula: 'measured / rated capacity', of: from(['measured-capacity', 'rated-capacity'], (measured, rated) => rated > 0 ? measured / rated : undefined) },
    ],
    'voltage-drop': [
        { name: 'drop', title: 'Drop', dimension: 'voltage', formula: 'source − load', of: from(['source', 'load'], (source, load) => source - load) },
        { name: 'drop-share', title: 'Drop', dimension: 'fraction', formula: '(source − load) / source', of: from(['source', 'load'], (source, load) => source > 0 ? (source - load) / source : undefined) },
    ],
    level: [{ name: 'used', title: 'Used', dimension: 'fraction', formula: 'at the start − at the end', of: from(['at-start', 'at-end'], (start, end) => start - end) }],
    freeboard: [
        { name: 'difference', title: 'Port over starboard', dimension: 'length', formula: 'port − starboard', of: from(['port', 'starboard'], (port, starboard) => port - starboard) },
        {
            name: 'list', title: 'List', dimension: 'angle', formula: 'atan of the difference / breadth there, or her beam; to starboard where positive',
            of: (row, _, record) => {
                const breadth = siOf(row, 'width') ?? (record.vessel ? siOf(record.vessel, 'beam') : undefined);
                const [port, starboard] = [siOf(row, 'port'), siOf(row, 'starboard')];
                return breadth === undefined || breadth <= 0 || port === undefined || starboard === undefined ? undefined : Math.atan((port - starboard) / breadth);
            },
        },
    ],
    play: [{ name: 'share', title: 'Of the shaft', dimension: 'fraction', formula: 'radial clearance / diameter', of: from(['radial', 'shaft'], (radial, shaft) => shaft > 0 ? radial / shaft : undefined) }],
    'gas-test': [{ name: 'fall', title: 'Fall', dimension: 'pressure', formula: 'start − end', of: from(['start', 'end'], (start, end) => start - end) }],
    'tube-pressure': [{
        name: 'fall', title: 'Fall', dimension: 'pressure', formula: 'start − end brought to the air temperature of the start by the gas law, barometer taken as standard',
        of: row => {
            const [startPa, endPa, airStartK, airEndK] = [siOf(row, 'start'), siOf(row, 'end'), siOf(row, 'air-start'), siOf(row, 'air-end')];
            return startPa === undefined || endPa === undefined ? undefined
                : tubeFallPa({ startPa, endPa, ...(airStartK === undefined ? {} : { airStartK }), ...(airEndK === undefined ? {} : { airEndK }) });
        },
    }],
};

/** The computed columns of a table that at least one of its rows can fill. */
export function computedColumnsOf(reading: Reading, record: SurveyRecord): readonly ComputedColumn[] {
    const columns = columnsByMeasure[wordOf(reading, 'measures') ?? ''] ?? [];
    return columns.filter(column => reading.rows.some(row => column.of(row, reading, record) !== undefined));
}

/** A computed figure as printed, in one unit system. */
export function computedCellText(si: number, { dimension }: ComputedColumn, system: UnitSystem): string {
    // A ratio or a mean of bare numbers is no finer than what it was read from.
    return dimension === 'number' ? significant(si, 3) : formatQuantity(si, dimension, system);
}

/** What is computed of one row, in a few words for the end of its line: "mean 5.1 mm, loss 15 %". */
export function rowSummary(row: Row, reading: Reading, record: SurveyRecord, system: UnitSystem): string {
    return computedColumnsOf(reading, record).flatMap(column => {
        const si = column.of(row, reading, record);
        return si === undefined ? [] : [`${column.title.charAt(0).toLowerCase()}${column.title.slice(1)} ${computedCellText(si, column, system)}`];
    }).join(', ');
}
