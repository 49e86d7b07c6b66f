/**
 * The yard's work list: by system or place, each line with its number, where it is, sizes in both unit systems, what
 * is to be done and by when. It says what to do and not why: no value, no cost, nothing of the client or the sale.
 */
import { byNumber, isDoneAndSeen } from '../../record/earlier-findings.js';
import type { AnyFacts } from '../../record/generated/kinds.js';
import { wordOf, type Component, type Finding, type Value } from '../../record/model.js';
import { definitions, ReportContext, table, type ReportInput } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { vesselName } from '../sections/opening.js';
import { valueInSentence } from '../prose.js';
import { standing } from '../standing-words.js';
import { capital, counted, dateText, inSentence, labelOfWord, propertyTitle, wordText } from '../wording.js';
import { draftNote, gap, letterhead, paperPage } from './letter.js';

/** What a yard needs of a part: where it is, how large, of what, and of which class. In this order. */
const ofPart: readonly (keyof AnyFacts & string)[] = [
    'place', 'side', 'level', 'quantity',
    'size', 'bore', 'ends', 'spigot', 'tail-length', 'thread', 'diameter', 'outside-diameter', 'length', 'width', 'thickness', 'link-original', 'capacity', 'mass', 'voltage', 'rating', 'rated-flow', 'rated-power',
    'metal', 'material', 'pattern', 'class', 'reinforcement', 'chemistry', 'build', 'terminal', 'light', 'signal', 'agent', 'service', 'fuel', 'marking', 'maker', 'model', 'serial',
];

/** The day of a sale is no matter of the yard's. */
const dueByOrder = 'By the day that whoever orders the work gives';

export function workList(input: ReportInput): string {
    const context = new ReportContext(input);
    const { record } = context;
    const left = context.findings.map(finding => ({ finding, why: whyLeftOut(finding) }));
    const work = left.flatMap(({ finding, why }) => why === undefined ? [finding] : []);
    const notWork = ['not ordered', 'done and seen', 'a remark'].flatMap(reason => {
        const ids = left.flatMap(({ finding, why }) => why === reason ? [finding.id] : []).sort(byNumber);
        return ids.length === 0 ? [] : [`${ids.join(', ')} (${reason})`];
    });
    const isWatched = (finding: Finding) => wordOf(finding, 'urgency') === 'keep-watch';
    const groups = grouped(context, work.filter(finding => !isWatched(finding)));
    const watched = work.filter(isWatched);
    const place = record.survey?.attendances.at(-1);
    return paperPage(context, {
        title: 'Work list', className: 'work-list', body: html`
${letterhead(context)}
<main>
<h1>${vesselName(context)}: work list</h1>
${draftNote(context)}
${definitions([
        ['Vessel', ['type', 'built', 'model'].flatMap(property => vesselFact(context, property)).join(', ')],
        ['Hull number', context.text(record.vessel, 'hull-number') ?? gap('hull number')],
        ['Length, beam, draft', ['length-overall', 'beam', 'draft'].flatMap(property => context.text(record.vessel, property) ?? []).join('; ')],
        ['Hull', record.vessel?.facts.has('hull-material') ? capital(context.text(record.vessel, 'hull-material') ?? '') : undefined],
        ['Last attended', place ? [place.date ? dateText(place.date) : undefined, place.state, place.place].filter(part => part !== undefined).join(', ') : undefined],
    ])}
${work.length === 0 ? html`<p>No finding asks for work.</p>` : html`<p>${capital(counted(groups.reduce((sum, [, findings]) => sum + findings.length, 0), 'line'))} of work${watched.length === 0 ? '' : ` and ${counted(watched.length, 'thing')} to be measured again`}, under the numbers of the report.</p>`}
${groups.map(([title, findings]) => html`
<section>
<h2>${title}</h2>
${lines(context, findings)}
</section>`)}
${watched.length === 0 ? nothing : html`
<section>
<h2>To be measured again, no work now</h2>
${lines(context, watched)}
</section>`}
${notWork.length === 0 ? nothing : html`<p>Not in this list: ${notWork.join('; ')}.</p>`}
<div class="limits-of-paper">
${standing(context, 'work-list-limits')}
</div>
</main>`,
    });
}

function whyLeftOut(finding: Finding): 'done and seen' | 'not ordered' | 'a remark' | undefined {
    return isDoneAndSeen(finding) ? 'done and seen' : wordOf(finding, 'outcome') === 'declined' ? 'not ordered' : wordOf(finding, 'urgency') === 'note-only' ? 'a remark' : undefined;
}

function vesselFact(context: ReportContext, property: string): string[] {
    const value = context.first(context.record.vessel, property);
    return value === undefined ? [] : [value.type === 'word' ? capital(wordText(value.word)) : value.type === 'quantity' ? value.figure.written : context.text(context.record.vessel, property) ?? ''];
}

/** By the system a finding lies in, in the order of the systems; what lies in none by its place in words. */
function grouped(context: ReportContext, findings: readonly Finding[]): [string, Finding[]][] {
    const groups = new Map<string, Finding[]>(context.record.systems.map(({ title, id }) => [title || id, []]));
    for (const finding of findings) {
        const system = context.record.systems.find(({ id }) => id === (finding.system ?? finding.on.find(part => part.system !== undefined)?.system));
        const title = system ? system.title || system.id : context.text(finding, 'place')?.trim() || (finding.on[0] && context.text(finding.on[0], 'place')?.trim()) || 'Elsewhere';
        groups.set(title, [...groups.get(title) ?? [], finding]);
    }
    const rank = new Map(context.groups.flatMap(group => group.findings.map(finding => [finding, group.rank] as const)));
    const inOrder = (a: Finding, b: Finding) => (rank.get(a) ?? 0) - (rank.get(b) ?? 0) || byNumber(a.id, b.id);
    return [...groups].flatMap(([title, some]) => some.length === 0 ? [] : [[title, some.toSorted(inOrder)]]);
}

function lines(context: ReportContext, findings: readonly Finding[]): Html {
    return table(counted(findings.length, 'line'), [{ title: 'No.' }, { title: 'What to do' }, { title: 'On what, where and how large' }, { title: 'Due' }, { title: 'Done' }], findings.map(finding => ({
        attributes: context.source(finding.span),
        cells: [
            html`<span class="number">${finding.id}</span>`,
            html`<p><strong>${finding.title || 'Without a title'}</strong></p>${context.body(finding, 'recommend') ?? gap('what to do')}`,
            partsOf(context, finding),
            html`${wordOf(finding, 'urgency') === 'before-completion' ? dueByOrder : context.dueOf(finding)}${wordOf(finding, 'outcome') === 'done-as-stated' ? ' (said to be done; to be shown)' : wordOf(finding, 'outcome') === 'in-part' ? ' (done in part)' : ''}`,
            html`<span class="tick" role="img" aria-label="To be ticked"></span>`,
        ],
    })), 'work');
}

function partsOf(context: ReportContext, finding: Finding): Html {
    const place = context.text(finding, 'place')?.trim();
    return html`<ul>${finding.on.map(part => html`<li>${partText(context, part)}</li>
`)}${place === undefined || place === '' ? finding.on.length === 0 ? html`<li>${gap('where')}</li>` : nothing : html`<li>${place}</li>`}</ul>`;
}

function partText(context: ReportContext, part: Component): Html {
    const facts = ofPart.filter(name => part.facts.has(name)).map(name => {
        const type = context.record.vocabulary.kinds.get(part.kind)?.properties.get(name);
        const text = (part.facts.get(name)?.values ?? []).map((value: Value) => value.type === 'word' ? inSentence(labelOfWord(value, type, context.record.vocabulary)) : valueInSentence(context, value)).join(', ');
        return name === 'place' || name === 'side' ? text : `${propertyTitle(name).toLowerCase()} ${text}`;
    });
    return html`<span class="part-name">${part.title ?? part.id}</span>${part.title === undefined ? nothing : ` (${part.id})`}${facts.length === 0 ? nothing : html`: ${joined(facts, '; ')}`}`;
}
