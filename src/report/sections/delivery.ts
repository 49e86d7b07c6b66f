/** A new vessel against her contract: each matter as ordered and as found, then the papers and spares that came with her. */
import { rowsOf, wordOf, type Row } from '../../record/model.js';
import { definitions, table, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { sectionOfReading } from '../reading-places.js';
import { standing } from '../standing-words.js';
import { undoneAs } from '../undone.js';
import { capital, counted, propertyTitle, wordText } from '../wording.js';

const agreements = [['yes', 'agrees'], ['no', 'differs'], ['in-part', 'agrees in part'], ['not-yet', 'not yet done'], ['not-seen', 'not seen']] as const;
const states = [['handed-over', 'handed over'], ['to-follow', 'to follow'], ['missing', 'missing'], ['not-due', 'not due']] as const;
const agreementText = new Map<string, string>(agreements);

export function contract(context: ReportContext): Section | undefined {
    const { record } = context;
    const { survey, readings } = record;
    const compared = rowsOf(record, 'contract');
    const handed = rowsOf(record, 'handover');
    const undone = undoneAs(context, 'no-contract');
    const paper = context.body(survey, 'contract');
    const tables = readings.filter(reading => sectionOfReading(reading) === 'contract');
    if (tables.length === 0 && paper === undefined && !undone) {
        return undefined;
    }
    return {
        id: 'contract', title: 'The vessel against her contract', body: html`
${compared.length > 0 ? standing(context, 'contract-lead') : nothing}
${undone ? standing(context, 'no-contract') : nothing}
${definitions([
        ['Contract', paper ?? (compared.length > 0 ? html`<p class="absent">Not recorded: which contract.</p>` : undefined)],
        ['Compared', compared.length === 0 ? undefined : tally(compared.map(({ row }) => row), 'agrees', agreements)],
        ['Handed over', handed.length === 0 ? undefined : tally(handed.map(({ row }) => row), 'state', states)],
    ])}
${tables.map(reading => {
        const isContract = wordOf(reading, 'measures') === 'contract';
        const title = reading.title ?? (isContract ? 'Contract list' : 'Papers, keys and spares');
        const head = definitions([...reading.facts.keys()].filter(name => !['measures', 'columns', 'remarks'].includes(name)).map(name => [propertyTitle(name), context.values(reading, name)] as const));
        const columns = isContract ? ['contract', 'found', 'agrees', 'remark'] : ['state', 'remark'];
        const titles = isContract ? ['Matter', 'By contract', 'Found', 'Agrees', 'Remark'] : ['What', 'State', 'Remark'];
        return html`<section class="reading"${context.source(reading.span)}>
<h3>${title}</h3>
${head}
${table(`${title}: ${counted(reading.rows.length, isContract ? 'matter' : 'item')}`, titles.map(title => ({ title })), reading.rows.map(row => ({
            attributes: context.source(row.span), cells: [row.label, ...columns.map(column => cell(context, row, column))],
        })), 'contract')}
${context.body(reading, 'remarks') ?? nothing}
</section>`;
    })}`,
    };
}

function cell(context: ReportContext, row: Row, column: string): Html | string {
    const value = context.first(row, column);
    if (value === undefined) {
        return column === 'remark' ? '' : html`<span class="muted">none</span>`;
    }
    if (value.type !== 'word') {
        return context.values(row, column);
    }
    const text = column === 'agrees' ? capital(agreementText.get(value.word) ?? wordText(value.word)) : capital(wordText(value.word));
    return value.word === 'no' || value.word === 'missing' ? html`<strong>${text}</strong>` : text;
}

/** "12 agree, 2 differ, 1 is not said": what a list comes to. */
function tally(rows: readonly Row[], property: 'agrees' | 'state', words: readonly (readonly [word: string, text: string])[]): Html {
    const parts = words.flatMap(([word, text]) => {
        const count = rows.filter(row => wordOf(row, property) === word).length;
        return count === 0 ? [] : [`${text}: ${count}`];
    });
    const open = rows.filter(row => !row.facts.has(property)).length;
    return html`${counted(rows.length, 'matter')}; ${joined([...parts, ...open === 0 ? [] : [`not said: ${open}`]], ', ')}`;
}
