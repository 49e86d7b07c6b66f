/**
 * A moisture grid as a map: every reading in its cell, hatched the denser the further it stands over the dry reference of
 * the same meter. Readings on laminate compare places and are no percent, so that without a reference nothing is hatched.
 */
import { wordOf, siOf, yardstick, type Cell, type Quantity, type Reading, type Row } from '../../record/model.js';
import { significant } from '../../quantities/index.js';
import type { ReportContext } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { headings } from '../reading-headings.js';
import { capital, counted, figureParts, wordText } from '../wording.js';
import { box, called, drawing, figure, hatched, hatching, legend, letter, n, pageWidth, path, pieces, plated, shortened, swatchHeight, swatchWidth, textWidth, wrapped, type Hatch, type LegendItem,
} from './drawing.js';

const cellHeight = 26;
const mostRows = 22;
const margin = 8;
const misleading: ReadonlySet<string> = new Set(['tank', 'metal', 'wet-locker']);

interface Band {
    readonly hatch: Hatch;
    /** Highest reading of the band; the last has none. */
    readonly upTo: number | undefined;
    readonly text: string;
}

interface MapRow {
    readonly row: Row;
    readonly cells: readonly (Cell | undefined)[];
    readonly side: 'port' | 'starboard' | undefined;
    readonly behind: string | undefined;
}

/** The highest that a reading may stand for: the upper end of a range. */
export const highOf = (value: Quantity): number => value.high ?? value.si;

/** Bands of readings against a dry reference and the ratio from which a contrast is told; one alone where there is no reference. */
export function bandsOf(reference: number | undefined, ratio: number, whose: string): readonly Band[] {
    if (reference === undefined || reference <= 0 || ratio <= 1) {
        return [];
    }
    const show = (value: number) => significant(value, 3);
    const [half, limit] = [reference * (1 + ratio) / 2, reference * ratio];
    return [
        { hatch: 'none', upTo: reference, text: `to ${show(reference)}, the dry reference` },
        { hatch: 'sparse', upTo: half, text: `over ${show(reference)}, to ${show(half)}` },
        { hatch: 'dense', upTo: limit, text: `over ${show(half)}, to ${show(limit)}` },
        { hatch: 'crossed', upTo: undefined, text: `over ${show(limit)}, ${show(ratio)} times the reference (${whose})` },
    ];
}

export const bandOf = (bands: readonly Band[], value: number): Band | undefined => bands.find(({ upTo }) => upTo === undefined || value <= upTo + 1e-9);

const sideOfLabel = (label: string): MapRow['side'] => {
    const [port, starboard] = [/\bport\b/i.test(label), /\b(?:starboard|stbd)\b/i.test(label)];
    return port === starboard ? undefined : port ? 'port' : 'starboard';
};

function isReading(cell: Cell): boolean {
    return cell.column === 'reading' || cell.column === undefined && cell.value?.type === 'quantity';
}

export function moistureMap(context: ReportContext, reading: Reading, id: string): Html {
    const { record } = context;
    const tableBehind = wordOf(reading, 'behind');
    const rows = reading.rows.map((row): MapRow => ({
        row, cells: row.cells.map(cell => isReading(cell) ? cell : undefined), side: sideOfLabel(row.label), behind: wordOf(row, 'behind') ?? tableBehind,
    }));
    const columns = Array.from({ length: Math.max(0, ...reading.rows.map(row => row.cells.length)) }, (_, i) => i).filter(i => rows.some(({ cells }) => cells[i] !== undefined));
    const read = rows.flatMap(({ row, cells }) => columns.flatMap(column => {
        const value = cells[column]?.value;
        return value?.type === 'quantity' ? [{ row, column, value }] : [];
    }));
    if (read.length < 2) {
        return nothing;
    }
    const { heads } = headings(context, reading, Math.max(0, ...reading.rows.map(row => row.cells.length)));
    const headOf = (column: number) => heads[column] || `Reading ${column + 1}`;
    const limit = yardstick(record, 'moisture-ratio');
    const reference = siOf(reading, 'reference');
    const bands = bandsOf(reference, limit.si, limit.whose);
    const title = `${called(reading)}, as a map`;
    const place = ({ row, column }: { readonly row: Row; readonly column: number }) => `${row.label}, ${headOf(column)}`;
    const highest = read.reduce((a, b) => highOf(b.value) > highOf(a.value) ? b : a);
    const lowest = read.reduce((a, b) => b.value.si < a.value.si ? b : a);
    const over = bands.length === 0 ? [] : read.filter(({ value }) => bandOf(bands, highOf(value))?.upTo === undefined);
    const description = [
        `${counted(read.length, 'reading')} on the meter’s own scale. Highest ${text(highest.value)} at ${place(highest)}; lowest ${text(lowest.value)} at ${place(lowest)}.`,
        bands.length === 0 ? 'No dry reference is recorded, so that the readings are not compared with one.'
            : `Dry reference ${significant(reference ?? 0, 3)}. ${over.length === 0 ? 'No reading is' : `${counted(over.length, 'reading')} ${over.length === 1 ? 'is' : 'are'}`} over ${significant(limit.si, 3)} times the reference.`,
        ...[...new Set(rows.flatMap(({ behind }) => behind !== undefined && misleading.has(behind) ? [behind] : []))].map(behind =>
            `A ${wordText(behind)} lies behind ${rows.filter(row => row.behind === behind).map(({ row }) => row.label).join('; ')}.`),
    ].join(' ');

    const labelWidth = Math.min(150, Math.max(56, ...rows.map(({ row }) => textWidth(row.label) + 8)));
    const cellWidth = Math.min(64, Math.max(40, ...read.map(({ value }) => textWidth(text(value), 12, true) + 14), ...columns.flatMap(column => headOf(column).split(/\s+/).map(word => Math.min(58, textWidth(word, 10) + 6)))));
    const tail = rows.some(({ behind }) => behind !== undefined && misleading.has(behind)) ? 104 : 0;
    const perBlock = Math.max(1, Math.floor((pageWidth - 2 * margin - labelWidth - tail) / cellWidth));
    const blocks = pieces(columns, perBlock).flatMap(some => pieces(rows, mostRows).map(part => ({ some, part })));
    return figure(`${title}. ${bands.length === 0 ? 'The meter’s own scale; no dry reference is recorded to compare with.' : 'The meter’s own scale, which compares places and is no percentage.'}`, blocks.map(({ some, part }, index) => block(
        { id: `${id}-map-${index + 1}`, title: blocks.length === 1 ? title : `${title}, part ${index + 1} of ${blocks.length}`, description: index === 0 ? description : `Continued from part 1: ${part[0]?.row.label ?? ''} to ${part.at(-1)?.row.label ?? ''}, ${headOf(some[0] ?? 0)} to ${headOf(some.at(-1) ?? 0)}.` },
        some, part, { labelWidth, cellWidth, tail, bands, headOf, highest: bands.length === 0 ? highOf(highest.value) : undefined },
    )));
}

const text = (value: Quantity): string => figureParts(value.figure).written;

interface Measures {
    readonly labelWidth: number;
    readonly cellWidth: number;
    readonly tail: number;
    readonly bands: readonly Band[];
    readonly headOf: (column: number) => string;
    /** The reading to frame as the highest, where nothing else tells the cells apart. */
    readonly highest: number | undefined;
}

function block(names: { readonly id: string; readonly title: string; readonly description: string }, columns: readonly number[], rows: readonly MapRow[], measures: Measures): Html {
    const { labelWidth, cellWidth, tail, bands, headOf, highest } = measures;
    const left = margin + labelWidth;
    const headLines = columns.map(column => wrapped(headOf(column), cellWidth - 4, 2, 10));
    let y = 6 + 12 * Math.max(1, ...headLines.map(lines => lines.length)) + 4;
    const parts: Html[] = headLines.map((lines, i) => html`${lines.map((line, row) => letter(left + (i + 0.5) * cellWidth, y - 6 - (lines.length - 1 - row) * 12, line, { anchor: 'middle', size: 10, isQuiet: true }))}`);
    let side: MapRow['side'];
    for (const { row, cells, side: own, behind } of rows) {
        if (own !== side && own !== undefined) {
            y += side === undefined ? 0 : 6;
            parts.push(letter(left, y + 10, `${capital(own)} side`, { size: 10, isBold: true }), path(`M${n(margin)} ${n(y + 6.5)}H${n(left - 6)}M${n(left + textWidth(`${own} side`, 10, true) + 10)} ${n(y + 6.5)}H${n(left + columns.length * cellWidth)}`));
            y += 16;
        }
        side = own ?? side;
        const misled = behind !== undefined && misleading.has(behind);
        parts.push(html`${letter(left - 6, y + 17, shortened(row.label, labelWidth - 8), { anchor: 'end' })}${columns.map((column, i) => drawCell(left + i * cellWidth, y, cellWidth, cells[column], bands, misled, highest))}${misled
            ? letter(left + columns.length * cellWidth + 8, y + 17, shortened(`${wordText(behind)} behind`, tail - 10), { isQuiet: true }) : nothing}
`);
        y += cellHeight;
    }
    const width = Math.max(left + columns.length * cellWidth + tail + margin, 300);
    const cells = rows.flatMap(row => columns.map(column => row.cells[column]));
    const signs = legend([
        ...bands.map((band): LegendItem => ({ text: band.text, swatch: (x, top) => hatched(x, top, swatchWidth, swatchHeight, band.hatch, frameOf(band)) })),
        ...highest !== undefined ? [{ text: 'highest reading', swatch: (x: number, top: number) => box(x + 1, top + 1, swatchWidth - 2, swatchHeight - 2, { width: 2.4 }) }] : [],
        ...rows.some(({ behind }) => behind !== undefined && misleading.has(behind)) ? [{ text: 'something behind makes the meter read wet', swatch: (x: number, top: number) => html`${box(x, top, swatchWidth, swatchHeight)}${corner(x, top, swatchWidth)}` }] : [],
        ...cells.some(cell => cell?.value === undefined) ? [{ text: 'not read', swatch: (x: number, top: number) => box(x, top, swatchWidth, swatchHeight, { dash: '3 2' }) }] : [],
        ...cells.some(cell => cell?.value?.type === 'quantity' && cell.value.high !== undefined) ? [{ text: 'a range is hatched by its upper end', swatch: (x: number, top: number) => letter(x + 2, top + 10, 'a–b', { size: 10 }) }] : [],
    ], margin, y + 10, Math.min(width - 2 * margin, 336));
    parts.push(signs.body);
    return drawing({ ...names, width, height: y + 10 + signs.height + 4, body: html`${parts}` });
}

const frameOf = ({ upTo }: Band) => upTo === undefined ? { width: 2.2 } : {};
const corner = (x: number, y: number, width: number) => html`<path d="M${n(x + width)} ${n(y)}v9l-9 -9z" fill="#17212b"/>`;

function drawCell(x: number, y: number, width: number, cell: Cell | undefined, bands: readonly Band[], misled: boolean, highest: number | undefined): Html {
    const value = cell?.value;
    if (value?.type !== 'quantity') {
        return html`${box(x + 1, y + 1, width - 2, cellHeight - 2, { dash: '3 2' })}${letter(x + width / 2, y + 17, '–', { anchor: 'middle', isQuiet: true })}`;
    }
    const band = bandOf(bands, highOf(value));
    const frame = highest !== undefined && highOf(value) === highest ? { width: 2.4 } : band ? frameOf(band) : {};
    const shown = shortened(text(value), width - 8, 12, true);
    const lines = hatching(x + 1, y + 1, width - 2, cellHeight - 2, band?.hatch ?? 'none');
    return html`${box(x + 1, y + 1, width - 2, cellHeight - 2, { fill: '#fff', ...frame })}${lines === '' ? nothing : path(lines, { width: 0.7 })}${misled ? corner(x + 1, y + 1, width - 2) : nothing}${lines === ''
        ? letter(x + width / 2, y + 17.5, shown, { anchor: 'middle', size: 12 }) : plated(x + width / 2, y + 17.5, shown, 12, band?.upTo === undefined)}`;
}
