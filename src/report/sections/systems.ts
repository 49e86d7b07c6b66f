/** One section a system: its parts with all that is recorded, its runs, and what touches what. */
import type { Component, Finding, Run, System } from '../../record/model.js';
import { componentAnchor, definitions, table, type ReportContext, type Section } from '../context.js';
import { html, idPart, joined, nothing, type Html } from '../html.js';
import { proseHtml, proseInline } from '../prose.js';
import { marksOf, runFacts, runInWords } from '../drawings/run-marks.js';
import { drawRun } from '../drawings/schematic.js';
import { capital, counted, propertyTitle, wordText } from '../wording.js';

export function systemSections(context: ReportContext): Section[] {
    const { record } = context;
    const known = new Set(record.systems.map(system => system.id));
    const rest = { id: '', title: 'Other parts' };
    const homeOf = ({ system }: { readonly system?: string }) => system !== undefined && known.has(system) ? system : rest.id;
    const grouped = <T extends { readonly system?: string }>(items: Iterable<T>) => {
        const groups = new Map<string, T[]>();
        for (const item of items) {
            const home = homeOf(item);
            groups.set(home, [...groups.get(home) ?? [], item]);
        }
        return groups;
    };
    const [componentsBy, runsBy, unseenBy] = [grouped(record.components.values()), grouped(record.runs), grouped(record.unseen.filter(entry => entry.system !== undefined))];
    const contactsBy = grouped(record.contacts.flatMap(contact => contact.components[0] ? [{ contact, ...(contact.components[0].system === undefined ? {} : { system: contact.components[0].system }) }] : []));
    // A finding is told where it is written and wherever it is on a part.
    const findingsBy = new Map<string, Set<Finding>>();
    for (const finding of context.findings) {
        for (const home of new Set([...(finding.system === undefined ? [] : [finding.system]), ...finding.on.map(homeOf)])) {
            findingsBy.set(home, (findingsBy.get(home) ?? new Set()).add(finding));
        }
    }
    // How to read the drawings is told where the first of them stands.
    const firstDrawn = [...record.systems, rest].find(system => (runsBy.get(system.id) ?? []).some(isDrawn(context)));
    return [...record.systems, rest].flatMap((system: Pick<System, 'id' | 'title'> & Partial<System>) => {
        const components = componentsBy.get(system.id) ?? [];
        const runs = runsBy.get(system.id) ?? [];
        const unseen = unseenBy.get(system.id) ?? [];
        const contacts = (contactsBy.get(system.id) ?? []).map(({ contact }) => contact);
        if (components.length + runs.length + unseen.length === 0) {
            return [];
        }
        const findings = [...findingsBy.get(system.id) ?? []];
        const id = `system-${idPart(system.id === '' ? 'other' : system.id)}`;
        return [{
            id, title: system.title || capital(wordText(system.id)), body: html`
<p${system.span ? context.source(system.span) : nothing}>${capital(counted(components.length, 'part is', 'parts are'))} recorded here. ${findings.length === 0 ? 'No finding concerns this system.' : html`${findings.length === 1 ? 'Finding' : 'Findings'}: ${joined(findings.map(f => html`${context.linkTo(f)} ${f.title}`), '; ')}.`}</p>
${components.length === 0 ? nothing : table(`${system.title || capital(wordText(system.id))}: parts`, [{ title: 'Part' }, { title: 'Recorded' }, { title: 'Condition' }, { title: 'See' }], components.map(component => ({
            attributes: html` id="${componentAnchor(component)}"${context.source(component.span)}`,
            cells: [partName(context, component), recorded(context, component), condition(context, component), references(context, component)],
        })), 'parts')}
${runs.length === 0 ? nothing : html`<h3>Runs</h3>
${system === firstDrawn ? html`<p class="small">Runs that a finding or problem concerns are drawn. Each part is as high as its recorded size, dashed where none is recorded; two sizes that do not meet stand in figures under the joint. Bands on a hose are its clamps, teeth a thread, a wave the waterline. A diamond marks a joint, a flag a part; the numbers are told beneath.</p>` : nothing}
${runs.map(run => isDrawn(context)(run)
        ? drawRun(context, run, `run-${idPart(run.id)}`)
        : html`<p class="run-words" id="run-${idPart(run.id)}"${context.source(run.span)}><strong>${run.title ?? run.id}</strong> (${run.id}): ${runInWords(context, run)}${runFacts(context, run)}</p>
`)}`}
${contacts.length === 0 ? nothing : html`<h3>Metals in contact</h3>
<ul>${contacts.map(contact => html`<li${context.source(contact.span)}>${joined(contact.components.map(c => context.linkToComponent(c)), ' with ')}${contact.facts.size === 0 ? nothing : html`: ${joined([...contact.facts.keys()].map(name => html`${propertyTitle(name).toLowerCase()} ${context.text(contact, name) ?? ''}`), ', ')}`}</li>
`)}</ul>`}
${unseen.length === 0 ? nothing : html`<ul class="unseen">${unseen.map(entry => html`<li><strong>${entry.absent ? 'Not fitted' : 'Not seen'}:</strong> ${entry.what}${entry.reason ? html`: ${proseInline(context, entry.reason)}` : nothing}</li>
`)}</ul>`}`,
        }];
    });
}

const isDrawn = (context: ReportContext) => (run: Run): boolean => run.components.length > 0 && marksOf(context, run).length > 0;

function partName(context: ReportContext, component: Component): Html {
    const kind = context.record.vocabulary.kinds.get(component.kind)?.title ?? capital(wordText(component.kind));
    return html`<span class="part-id">${component.id}</span> ${component.title ?? kind}${component.title !== undefined && component.title.toLowerCase() !== kind.toLowerCase() ? html` <span class="muted kind-name">${kind}</span>` : nothing}`;
}

function recorded(context: ReportContext, component: Component): Html {
    const names = [...component.facts.keys()].filter(name => name !== 'condition');
    return html`${names.length === 0 ? html`<span class="muted">No fact is recorded</span>` : definitions(names.map(name => [propertyTitle(name), context.values(component, name)] as const), 'run-in')}${component.notes.map(note => proseHtml(context, note))}`;
}

function condition(context: ReportContext, component: Component): Html {
    return component.facts.has('condition') ? html`<span class="condition">${context.values(component, 'condition')}</span>` : html`<span class="muted">Not stated</span>`;
}

function references(context: ReportContext, component: Component): Html {
    const parts = [...context.findingsOn(component).map(finding => context.linkTo(finding)), ...component.photos.length > 0 ? [context.photoLinks(component.photos)] : []];
    return joined(parts, ', ');
}
