/**
 * The recommendations as a table for a yard or an underwriter: comma-separated as RFC 4180 has it, with a byte-order mark, so that spreadsheet
 * programs take it for UTF-8. No cell is left for a spreadsheet to take for a formula.
 */
import { stringify } from 'csv-stringify/sync';
import { nameOf, type Component, type Finding } from '../record/model.js';
import { ReportContext, type ReportInput } from './context.js';
import { printable } from './html.js';
import { dueDateOf } from './record-json.js';
import { reportNumber } from './sections/opening.js';
import { isWord, labelOfWord } from './wording.js';

type Cell = string | number | undefined;

const columns: readonly (readonly [title: string, cell: (finding: Finding, context: ReportContext, report: string) => Cell])[] = [
    ['Report', (_, __, report) => report],
    ['Number', finding => finding.id],
    ['Title', finding => finding.title],
    ['Place', placesOf],
    ['On', finding => finding.on.map(nameOf).join('; ')],
    ['Side', (finding, context) => eachOf(finding, component => wordsOf(context, component, 'side'))],
    ['Size', (finding, context) => eachOf(finding, component => ['size', 'bore', 'diameter', 'thickness'].map(name => context.text(component, name)).find(text => text !== undefined))],
    ['Quantity', (finding, context) => eachOf(finding, component => context.text(component, 'quantity'))],
    ['What to do', (finding, context) => context.text(finding, 'recommend')],
    ['Due', (finding, context) => context.dueOf(finding)],
    ['Due date', (finding, context) => dueDateOf(context, finding)],
    ['Authority', (finding, context) => context.text(finding, 'cites')],
    ['Cost low', (finding, context) => costOf(context, finding)?.low],
    ['Cost high', (finding, context) => costOf(context, finding)?.high],
    ['Currency', (finding, context) => costOf(context, finding)?.currency],
    ['Outcome', (finding, context) => wordsOf(context, finding, 'outcome')],
    ['Photos', (finding, context) => finding.photos.map(photo => `${context.photo(photo)?.number ?? ''} ${photo.file}`.trim()).join('; ')],
];

/** The table of recommendations; each row says of which report it is, and that it is a draft where it is one. */
export function recommendationsCsv(input: ReportInput, isDraft: boolean): string {
    const context = new ReportContext(input);
    const report = [`${reportNumber(context)}${context.issueNumber === undefined ? '' : `, issue ${context.issueNumber}`}`, ...isDraft ? ['DRAFT'] : []].join(', ');
    const rows = context.findings.map(finding => columns.map(([, cell]) => plain(cell(finding, context, report))));
    return stringify([columns.map(([title]) => title), ...rows], { bom: true, record_delimiter: 'windows', escape_formulas: true });
}

/** Blanks at the ends are left out: some programs drop them, and what then comes first must not be the sign of a formula. */
const plain = (cell: Cell): string | number => typeof cell === 'number' ? cell : printable(cell ?? '').replace(/[\t ]+/g, ' ').trim();

function placesOf(finding: Finding, context: ReportContext): string {
    return [...new Set([context.text(finding, 'place'), ...finding.on.map(component => context.text(component, 'place'))])].filter(place => place !== undefined).join('; ');
}

/** What is recorded of the components: once where it is of one component, else with the number of each. */
function eachOf({ on }: Finding, read: (component: Component) => string | undefined): string {
    const found = on.flatMap(component => {
        const text = read(component);
        return text === undefined ? [] : [{ id: component.id, text }];
    });
    return on.length === 1 ? found[0]?.text ?? '' : found.map(({ id, text }) => `${id} ${text}`).join('; ');
}

function wordsOf(context: ReportContext, set: Component | Finding, property: string): string | undefined {
    const type = context.record.vocabulary.kinds.get(set.kind)?.properties.get(property);
    const words = (set.facts.get(property)?.values ?? []).filter(isWord).map(word => labelOfWord(word, type, context.record.vocabulary));
    return words.length === 0 ? undefined : words.join(', ');
}

function costOf(context: ReportContext, finding: Finding): { readonly low: number; readonly high: number; readonly currency: string } | undefined {
    const cost = context.first(finding, 'cost');
    return cost?.type === 'quantity' ? { low: cost.low ?? cost.si, high: cost.high ?? cost.si, currency: cost.figure.currency ?? '' } : undefined;
}
