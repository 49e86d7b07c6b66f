/** Limits and what was not seen; the words used; the particulars of the vessel. */
import type { Unseen } from '../../record/model.js';
import { cautionsFor } from '../cautions.js';
import { definitions, table, type ReportContext, type Section } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { proseHtml, proseInline } from '../prose.js';
import { capital, isWord, propertyTitle, wordText } from '../wording.js';
import { standing } from '../standing-words.js';
import { undoneOf, whyOf } from '../undone.js';
import { unproved } from './opening.js';

export function limits(context: ReportContext): Section {
    const { record } = context;
    const own = [context.body(record.survey, 'limits'), context.body(record.vocabulary.firm, 'limits')].filter(body => body !== undefined);
    const systemTitle = (id: string | undefined) => record.systems.find(system => system.id === id)?.title ?? (id === undefined ? '' : wordText(id));
    const partTitle = ({ part, system }: Unseen) => part === undefined ? systemTitle(system) : record.vocabulary.wordLists.get('part')?.words.get(part) ?? wordText(part);
    const notSeen = record.unseen.filter(unseen => !unseen.absent);
    const absent = record.unseen.filter(unseen => unseen.absent);
    const doubtful = unproved(context);
    const undone = undoneOf(context);
    const reasons = (reason: Html | undefined) => reason ?? html`<strong class="absent">No reason is recorded</strong>`;
    return {
        id: 'limits', title: 'Limits, and what was not seen', body: html`
${standing(context, 'limits-lead')}
${record.survey?.surveyKind === 'part-survey' ? standing(context, 'part-only') : nothing}
${own}
${undone.length === 0 ? nothing : table('Not done', [{ title: 'What' }, { title: 'What follows' }, { title: 'Reason' }], undone.map(entry => ({ cells: [entry.title, entry.text, whyOf(entry)] })))}
${notSeen.length + doubtful.length === 0 ? html`<p>Nothing is recorded as unseen beyond the general limits below.</p>` : table('Not seen, or seen and not proved', [{ title: 'What' }, { title: 'Of' }, { title: 'Reason' }], [
        ...notSeen.map(unseen => ({ attributes: context.source(unseen.span), cells: [unseen.what, partTitle(unseen), reasons(unseen.reason ? html`${capital(context.plain(unseen.reason))}` : undefined)] })),
        ...doubtful.map(component => {
            const words = component.notes[0] ? proseInline(context, component.notes[0]) : component.facts.has('remarks') ? context.values(component, 'remarks') : component.facts.has('access') ? context.values(component, 'access') : undefined;
            return {
                attributes: context.source(component.span),
                cells: [context.linkToComponent(component), systemTitle(component.system), html`${capital(wordText(context.conditionOf(component) ?? ''))}: ${reasons(words)}`],
            };
        }),
    ])}
${absent.length === 0 ? nothing : table('Not fitted', [{ title: 'What' }, { title: 'Of' }, { title: 'Remark' }], absent.map(unseen => ({
        attributes: context.source(unseen.span), cells: [unseen.what, partTitle(unseen), unseen.reason ? capital(context.plain(unseen.reason)) : ''],
    })))}
<h3>General limits</h3>
${definitions(cautionsFor(context).map(({ title, text }) => [title, text] as const), 'facts limits')}`,
    };
}

/** Only the words this report uses, in the order of their list. */
export function words(context: ReportContext): Section | undefined {
    const { record } = context;
    const used = { condition: new Set<string>(), urgency: new Set<string>(), basis: new Set<string>() };
    for (const set of [...record.components.values(), ...record.runs, ...record.findings]) {
        for (const name of ['condition', 'urgency', 'basis'] as const) {
            for (const value of set.facts.get(name)?.values ?? []) {
                if (isWord(value)) {
                    used[name].add(value.word);
                }
            }
        }
    }
    const lists = (['condition', 'urgency', 'basis'] as const).flatMap(name => {
        const list = record.vocabulary.wordLists.get(name);
        const entries = [...list?.words ?? []].filter(([word]) => used[name].has(word));
        return list && entries.length > 0 ? [html`<h3>${list.title ?? capital(name)}</h3>
${definitions(entries.map(([word, meaning]) => [capital(wordText(word)), meaning] as const))}`] : [];
    });
    const own = context.body(record.vocabulary.firm, 'definitions');
    return lists.length === 0 && own === undefined ? undefined : { id: 'words', title: 'Words used', body: html`${standing(context, 'definitions-lead')}
${own ?? nothing}
${lists}` };
}

const identity = ['type', 'hull-number', 'official-number', 'registration', 'flag', 'port', 'builder', 'designer', 'model', 'built', 'model-year'];
const sizes = ['length-overall', 'length-on-deck', 'length-waterline', 'beam', 'draft', 'air-draft', 'displacement', 'ballast', 'gross-tonnage', 'net-tonnage'];

export function particulars(context: ReportContext): Section | undefined {
    const { vessel } = context.record;
    if (!vessel) {
        return undefined;
    }
    const rest = [...vessel.facts.keys()].filter(name => !identity.includes(name) && !sizes.includes(name) && name !== 'particulars');
    const group = (title: string, names: readonly string[]) => {
        const rows = names.filter(name => vessel.facts.has(name)).map(name => [propertyTitle(name), context.values(vessel, name)] as const);
        return rows.length === 0 ? nothing : html`<section class="facts-group"><h3>${title}</h3>${definitions(rows)}</section>`;
    };
    return {
        id: 'particulars', title: 'Particulars', body: html`<div${context.source(vessel.span)}>
<div class="columns">
${group('Identity', identity)}
${group('Dimensions and weights', sizes)}
${group('Construction and use', rest)}
</div>
${context.body(vessel, 'particulars') ?? nothing}
${vessel.notes.map(note => proseHtml(context, note))}
${vessel.photos.length === 0 ? nothing : html`<p>Shown in ${context.photoLinks(vessel.photos)}</p>`}
</div>`,
    };
}
