/** Tables of readings, each with its instrument and conditions; registers drawn from the record. */
import { nameOf, type Reading, type Row, type Value } from '../../record/model.js';
import { computedCellText, computedColumnsOf, type ComputedColumn } from '../../record/reading-columns.js';
import { definitions, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { sectionOfReading } from '../reading-places.js';
import { standing } from '../standing-words.js';
import { undoneAs } from '../undone.js';
import { drawReading } from '../drawings/of-reading.js';
import { headings } from '../reading-headings.js';
import { registers } from './registers.js';
import { computedText, figureParts, propertyTitle } from '../wording.js';
import { significant } from '../../quantities/index.js';

/** Told elsewhere: what is measured by the title and the heads of the columns. */
const aside = ['columns', 'remarks', 'measures'];

export function measurements(context: ReportContext): Section | undefined {
    const readings = context.record.readings.filter(reading => sectionOfReading(reading) === 'measurements');
    const drawn = registers(context);
    const undone = undoneAs(context, 'no-measurements');
    return readings.length + drawn.length === 0 && !undone ? undefined : {
        id: 'measurements', title: 'Measurements and registers', body: html`${undone ? standing(context, 'no-measurements') : nothing}${readings.map(reading => readingBlock(context, reading))}
${drawn}`,
    };
}

/** One table of readings with its instrument and conditions. */
export function readingBlock(context: ReportContext, reading: Reading): Html {
    return html`
<section class="reading"${context.source(reading.span)}>
<h3>${reading.title ?? reading.id}</h3>
${reading.on.length === 0 ? nothing : html`<p>On ${joined(reading.on.map(c => context.linkToComponent(c)), ', ')}.</p>`}
${definitions([...reading.facts.keys()].filter(name => !aside.includes(name)).map(name => [propertyTitle(name), context.values(reading, name)] as const), 'run-in conditions')}
${readingTable(context, reading)}
${drawReading(context, reading)}
${context.body(reading, 'remarks') ?? nothing}
</section>`;
}

function readingTable(context: ReportContext, reading: Reading): Html {
    if (reading.rows.length === 0) {
        return html`<p class="absent">No reading is recorded.</p>`;
    }
    const width = Math.max(0, ...reading.rows.map(row => row.cells.length));
    const { corner, heads } = headings(context, reading, width);
    const computed = computedColumnsOf(reading, context.record);
    return html`<div class="table" tabindex="0" role="group" aria-label="Readings of ${reading.title ?? reading.id}"><table class="readings">
<caption>${reading.title ?? reading.id}${reading.on.length > 0 ? `, ${reading.on.map(nameOf).join(', ')}` : ''}</caption>
<thead><tr><th scope="col">${corner}</th>${Array.from({ length: width }, (_, i) => html`<th scope="col" class="number">${heads[i] || (width === 1 ? 'Reading' : `Reading ${i + 1}`)}</th>`)}${computed.map(column => html`<th scope="col" class="number computed">${column.title}</th>`)}</tr></thead>
<tbody>
${reading.rows.map(row => html`<tr${context.source(row.span)}><th scope="row">${row.label}</th>${Array.from({ length: width }, (_, i) => html`<td class="number">${cell(context, reading, row.cells[i]?.value)}</td>`)}${computed.map(column => html`<td class="number computed">${computedCell(context, reading, row, column)}</td>`)}</tr>
`)}</tbody>
</table></div>
${computed.length === 0 ? nothing : html`<p class="formulas">Computed: ${computed.map(column => `${column.title} = ${column.formula}`).join('; ')}.</p>`}
${range(reading)}`;
}

function computedCell(context: ReportContext, reading: Reading, row: Row, column: ComputedColumn): Html {
    const si = column.of(row, reading, context.record);
    if (si === undefined) {
        return html`<span class="muted">none</span>`;
    }
    const [metric, us] = [computedText(computedCellText(si, column, 'metric')), computedText(computedCellText(si, column, 'us'))];
    return html`${metric}${metric === us ? nothing : html` <span class="other">${us}</span>`}`;
}

function cell(context: ReportContext, reading: Reading, value: Value | undefined): Html {
    if (!value) {
        return html`<span class="muted">none</span>`;
    }
    if (value.type !== 'quantity') {
        return context.value(reading, '', value);
    }
    const { written, other } = figureParts(value.figure);
    return html`${written}${other === undefined ? nothing : html` <span class="other">${other}</span>`}`;
}

/** Lowest, highest and mean of a grid on one meter's own scale, where such a sum means something. */
function range(reading: Reading): Html {
    const measures = reading.facts.get('measures')?.values[0];
    if (measures?.type !== 'word' || measures.word !== 'moisture') {
        return nothing;
    }
    const figures = reading.rows.flatMap(row => row.cells).flatMap(({ value }) => value?.type === 'quantity' ? [value.figure] : []);
    const units = new Set(figures.map(figure => figure.unit));
    if (figures.length < 2 || units.size !== 1) {
        return nothing;
    }
    const values = figures.map(figure => figure.value);
    const unit = figures[0]?.unit ?? '';
    const show = (value: number) => `${significant(value, 3)}${unit === '' ? '' : ` ${unit}`}`;
    return html`<p>Of ${values.length} readings the lowest is ${show(Math.min(...values))}, the highest ${show(Math.max(...values))}, the mean ${show(values.reduce((a, b) => a + b, 0) / values.length)}.</p>`;
}
