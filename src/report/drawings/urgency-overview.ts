/** Which systems ask for work, and when: findings by system and by the event that makes them due. */
import type { Finding } from '../../record/model.js';
import { gauge, urgencyTitle, type ReportContext } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { capital, counted, wordText } from '../wording.js';
import { ink, n } from './drawing.js';

/** The system a finding counts under: its own, else that of the first part it is on. Each finding counts once. */
function systemOf(finding: Finding): string | undefined {
    return finding.system ?? finding.on.find(component => component.system !== undefined)?.system;
}

/** A square for each finding; told in figures beside it. */
function squares(count: number): Html {
    const drawn = Math.min(count, 24);
    const perRow = 8;
    return html`<svg viewBox="0 0 ${Math.min(drawn, perRow) * 10} ${Math.ceil(drawn / perRow) * 10}" width="${Math.min(drawn, perRow) * 10}" height="${Math.ceil(drawn / perRow) * 10}" aria-hidden="true" focusable="false">${Array.from({ length: drawn }, (_, i) => html`<rect x="${n(i % perRow * 10 + 0.5)}" y="${n(Math.floor(i / perRow) * 10 + 0.5)}" width="8" height="8" fill="${ink}"/>`)}</svg>`;
}

/** A table of systems by due event with counts and the numbers of the findings; undefined where there are too few to compare. */
export function urgencyOverview(context: ReportContext): Html | undefined {
    const { groups, record } = context;
    if (context.findings.length < 2) {
        return undefined;
    }
    const known = new Map(record.systems.map(system => [system.id, system.title || capital(wordText(system.id))]));
    const titles = [...new Map(record.systems.map(({ id }) => [id, known.get(id) ?? id])), ['', 'The vessel as a whole'] as const];
    const inSystem = (id: string) => (finding: Finding) => {
        const own = systemOf(finding);
        return own !== undefined && known.has(own) ? own === id : id === '';
    };
    const rows = titles.map(([id, title]) => ({ title, cells: groups.map(group => group.findings.filter(inSystem(id))) })).filter(({ cells }) => cells.some(cell => cell.length > 0));
    const total = (cells: readonly (readonly Finding[])[]) => cells.reduce((sum, cell) => sum + cell.length, 0);
    return html`<div class="table" role="group" tabindex="0" aria-label="Findings by system and due event"><table class="overview">
<caption>${counted(total(groups.map(group => group.findings)), 'finding')} by system and due event</caption>
<thead><tr><th scope="col">System</th>${groups.map(group => html`<th scope="col">${gauge(group)} ${urgencyTitle(group)}</th>`)}<th scope="col" class="number total">All</th></tr></thead>
<tbody>
${rows.map(({ title, cells }) => html`<tr><th scope="row">${title}</th>${cells.map(cell => html`<td>${cell.length === 0 ? nothing : html`${squares(cell.length)} <strong>${cell.length}:</strong> ${joined(cell.map(finding => context.linkTo(finding)), ', ')}`}</td>`)}<td class="number total">${total(cells)}</td></tr>
`)}<tr class="total"><th scope="row">All systems</th>${groups.map(group => html`<td><strong>${group.findings.length}</strong></td>`)}<td class="number total"><strong>${context.findings.length}</strong></td></tr>
</tbody>
</table></div>`;
}
