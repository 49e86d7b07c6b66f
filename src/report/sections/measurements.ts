/** Tables of readings, each with its instrument and conditions; registers drawn from the record. */
import { nameOf, type Reading, type Row, type Value } from '../../record/model.js';
import { computedCellText, computedColumnsOf, type ComputedColumn } from '../../record/reading-columns.js';
import { definitions, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { registers } from './registers.js';
import { computedText, figureParts, propertyTitle } from '../wording.js';
import { significant } from '../../quantities/index.js';

const aside = ['columns', 'remarks'];

export function measurements(context: ReportContext): Section | undefined {
    const { readings } = context.record;
    const drawn = registers(context);
    return readings.length + drawn.length === 0 ? undefined : {
        id: 'measurements', title: 'Measurements and registers', body: html`${readings.map(reading => html`
<section class="reading"${context.source(reading.span)}>
<h3>${reading.title ?? reading.id}</h3>
${reading.on.length === 0 ? nothing : html`<p>On ${joined(reading.on.map(c => context.linkToComponent(c)), ', ')}.</p>`}
${definitions([...reading.facts.keys()].filter(name => !aside.includes(name)).map(name => [propertyTitle(name), context.values(reading, name)] as const))}
${readingTable(context, reading)}
${context.body(reading, 'remarks') ?? nothing}
</section>`)}
${drawn}`,
    };
}

/** Heading of the cells at a place: as written after `columns:`, else the name of the column they stand in. */
function headings(context: ReportContext, reading: Reading, width: number): { readonly corner: string; readonly heads: readonly string[] } {
    const written = reading.facts.get('columns')?.values ?? [];
    const texts = written.flatMap(value => value.type === 'text' ? [context.plain(value.prose)] : []);
    if (texts.length === written.length) {
        const named = texts.length === 1 && width > 1 ? (texts[0] ?? '').split(',').map(name => name.trim()) : texts;
        if (named.length > 0) {
            return named.length > width ? { corner: named[0] ?? '', heads: named.slice(1) } : { corner: 'Place', heads: named };
        }
    }
    const heads = Array.from({ length: width }, (_, i) => {
        const value = written[i];
        const column = reading.rows.map(row => row.cells[i]?.column).find(name => name !== undefined);
        return value?.type === 'text' ? context.plain(value.prose) : column === undefined ? '' : propertyTitle(column);
    });
    // A column that is repeated is numbered.
    return { corner: 'Place', heads: heads.map((head, i) => heads.filter(other => other === head).length < 2 || head === '' ? head : `${head} ${heads.slice(0, i + 1).filter(other => other === head).length}`) };
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
