/** Findings by due event, what is accepted, and all recommendations in one list. */
import type { Problem } from '../../checks/contract.js';
import type { Finding, Standard } from '../../record/model.js';
import { altOf, definitions, gauge, picture, table, urgencyTitle, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { proseHtml, proseInline } from '../prose.js';
import { computedText, counted, machineFigure, propertyTitle, wordText } from '../wording.js';
import { costText, costTotal } from './opening.js';

const standing: Readonly<Record<string, string>> = { law: 'law where it applies', voluntary: 'a voluntary standard', practice: 'practice of the trade' };

export function standingOf(standard: Standard | undefined): string | undefined {
    const value = standard?.facts.get('standing')?.values[0];
    return value?.type === 'word' ? standing[value.word] ?? wordText(value.word) : undefined;
}

function isVoluntary(standard: Standard | undefined): boolean {
    const value = standard?.facts.get('standing')?.values[0];
    return value?.type === 'word' && value.word === 'voluntary';
}

/** Whether a wording is only recalled and so must be confirmed before anybody relies on it. */
export function isRecalled(standard: Standard | undefined): boolean {
    const value = standard?.facts.get('provenance')?.values[0];
    return value?.type === 'word' && value.word === 'memory';
}

export function findings(context: ReportContext): Section | undefined {
    return context.groups.length === 0 ? undefined : {
        id: 'findings', title: 'Findings', body: html`
<p>Grouped by the event that makes them due, the most pressing first. The gauge beside each heading stands the higher, the sooner the matter is due.</p>
${context.groups.map(group => html`
<section class="group">
<h3 class="due">${gauge(group)} ${urgencyTitle(group)} <span class="muted">${counted(group.findings.length, 'finding')}</span></h3>
${group.meaning === undefined ? nothing : html`<p class="meaning">${group.meaning}</p>`}
${group.findings.map(finding => card(context, finding))}
</section>`)}`,
    };
}

function card(context: ReportContext, finding: Finding): Html {
    const answered = context.problems.filter(problem => problem.answeredBy === finding.id);
    const place = context.text(finding, 'place');
    return html`
<article class="finding" id="${context.anchorOf(finding)}"${context.source(finding.span)}>
<h4><span class="number">${finding.id}</span> ${finding.title || 'Without a title'}</h4>
${finding.on.length === 0 && place === undefined ? nothing : html`<p class="on">On ${joined([...finding.on.map(c => context.linkToComponent(c)), ...place === undefined ? [] : [place]], '; ')}</p>`}
<div class="body${finding.photos.length > 0 ? ' beside' : ''}">
<div>${definitions([
        ['Seen', context.body(finding, 'seen') ?? missing('what was seen')],
        ['Why it matters', context.body(finding, 'because') ?? missing('why it matters')],
        ['What to do', context.body(finding, 'recommend') ?? missing('what is to be done')],
        ['Due', html`<p>${context.dueOf(finding)}${finding.facts.has('reason-for-urgency') ? html`. ${context.values(finding, 'reason-for-urgency')}` : nothing}</p>`],
        ['Authority', authority(context, finding)],
        ['Cost allowed', context.body(finding, 'cost')],
        ['Related', context.body(finding, 'related')],
    ], 'facts card')}
${finding.notes.map(note => proseHtml(context, note))}</div>
${finding.photos.length === 0 ? nothing : html`<div class="photos">${finding.photos.map(photo => {
        const numbered = context.photo(photo);
        return numbered === undefined ? nothing : html`<figure>${'error' in numbered.image ? picture(numbered, undefined, '') : html`<a href="#photo-${numbered.number}">${picture(numbered, numbered.image.small ?? numbered.image, altOf(context, numbered))}</a>`}
<figcaption><a href="#photo-${numbered.number}">Photo ${numbered.number}</a>${photo.caption ? html`. ${proseInline(context, photo.caption)}` : nothing}</figcaption></figure>
`;
    })}</div>`}
</div>
${definitions([['Computed', answered.length === 0 ? undefined : html`<ul>${answered.map(problem => computedLine(problem))}</ul>`]], 'facts card computed')}
</article>`;
}

const missing = (what: string) => html`<p class="absent">Not recorded: ${what}.</p>`;

function computedLine(problem: Problem): Html {
    const figures = Object.entries(problem.figures ?? {});
    return html`<li>${computedText(problem.message)}${figures.length === 0 ? nothing : html` <span class="figures">${joined(figures.map(([name, figure]) => `${propertyTitle(name.replace(/([a-z])([A-Z])/g, '$1 $2')).toLowerCase()} ${machineFigure(figure)}`), ', ')}</span>`}</li>
`;
}

function authority(context: ReportContext, finding: Finding): Html | undefined {
    const cites = (finding.facts.get('cites')?.values ?? []).flatMap(value => value.type === 'citation' ? [value] : []);
    return cites.length === 0 ? undefined : html`<ul>${cites.map(({ standard: name, clause }) => {
        const standard = context.record.vocabulary.standards.get(name);
        const standingText = standingOf(standard);
        // Without its clause a voluntary standard is cited as practice and no more.
        const lead = clause === undefined && isVoluntary(standard) ? 'Good practice per ' : '';
        return html`<li>${lead}${name}${clause === undefined ? nothing : `, ${clause}`}${standard?.title ? html`, ${standard.title}` : nothing}. ${standingText === undefined ? 'Standing not recorded' : capitalFirst(standingText)}.${isRecalled(standard) ? html` <strong>Clause to be confirmed.</strong>` : nothing}</li>
`;
    })}</ul>`;
}

const capitalFirst = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export function accepted(context: ReportContext): Section | undefined {
    const { acceptances } = context.record;
    return acceptances.length === 0 ? undefined : {
        id: 'accepted', title: 'Accepted as they stand', body: html`
<p>The surveyor has weighed these matters and lets them stand, for the reasons given. They remain as described.</p>
${table('Accepted, with the reasons', [{ title: 'On' }, { title: 'What stands' }, { title: 'Reason' }], acceptances.map(acceptance => {
        const met = context.problems.filter(problem => problem.answeredBy === 'accept' && (problem.check.id === acceptance.check.id || (problem.check.aliases ?? []).includes(acceptance.check.id))
            && (problem.components.length === 0 ? acceptance.on.length === 0 : problem.components.some(c => acceptance.on.includes(c))));
        return {
            attributes: context.source(acceptance.span),
            cells: [
                acceptance.on.length === 0 ? 'The vessel' : joined(acceptance.on.map(c => context.linkToComponent(c)), ', '),
                met.length === 0 ? capitalFirst(wordText(acceptance.check.id)) : html`${met.map(problem => html`<p>${computedText(problem.message)}</p>`)}`,
                acceptance.reason ? proseInline(context, acceptance.reason) : html`<strong class="absent">No reason is recorded</strong>`,
            ],
        };
    }))}`,
    };
}

export function recommendations(context: ReportContext): Section | undefined {
    const cost = costTotal(context);
    return context.findings.length === 0 ? undefined : {
        id: 'recommendations', title: 'Recommendations in one list', body: html`
<p>The same recommendations as under the findings, for handing to a yard or an underwriter.${cost ? ` Costs allowed come to ${costText(cost)}, for the ${counted(cost.count, 'finding')} that state one.` : ''}</p>
${table('Recommendations', [{ title: 'No.' }, { title: 'What to do' }, { title: 'Due' }, { title: 'Cost allowed' }], context.findings.map(finding => ({
        attributes: context.source(finding.span),
        cells: [context.linkTo(finding), html`<strong>${finding.title}</strong> ${context.body(finding, 'recommend') ?? nothing}`, context.dueOf(finding), context.text(finding, 'cost') ?? ''],
    })), 'recommendations')}`,
    };
}

