/** Findings by due event, what is accepted, and all recommendations in one list. */
import type { Problem } from '../../checks/contract.js';
import { isDoneAndSeen } from '../../record/earlier-findings.js';
import type { Finding, Photo, Standard } from '../../record/model.js';
import { urgencyOverview } from '../drawings/urgency-overview.js';
import { altOf, definitions, gauge, picture, table, urgencyTitle, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { proseHtml, proseInline } from '../prose.js';
import { standing } from '../standing-words.js';
import { capital, computedText, counted, wordText } from '../wording.js';
import { relationText } from './damage.js';
import { outcomeRows } from './earlier.js';
import { costText, costTotal } from './opening.js';

const standings: Readonly<Record<string, string>> = { law: 'law where it applies', voluntary: 'a voluntary standard', practice: 'practice of the trade' };

export function standingOf(standard: Standard | undefined): string | undefined {
    const value = standard?.facts.get('standing')?.values[0];
    return value?.type === 'word' ? standings[value.word] ?? wordText(value.word) : undefined;
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
${standing(context, 'findings-lead')}
<p class="small">The gauge beside each heading stands the higher, the sooner the matter is due.</p>
${urgencyOverview(context) ?? nothing}
${context.groups.map(group => html`
<section class="group">
<h3 class="due">${gauge(group)} ${urgencyTitle(group)} <span class="muted">${counted(group.findings.length, 'finding')}</span></h3>
${group.meaning === undefined ? nothing : html`<p class="meaning">${group.meaning}</p>`}
${group.findings.map(finding => card(context, finding))}
</section>`)}`,
    };
}

/** A card that is short enough to be moved whole to the next page, in characters of its texts. */
const briefCard = 350;

function card(context: ReportContext, finding: Finding): Html {
    const answered = context.answeredBy(finding);
    const place = context.text(finding, 'place');
    // One photograph stands beside what was seen; more stand beneath, in pairs of one height.
    const single = finding.photos.length === 1 ? finding.photos[0] : undefined;
    const length = ['seen', 'because', 'recommend'].reduce((sum, property) => sum + (context.text(finding, property) ?? '').length, 0);
    const isBrief = length <= briefCard && finding.photos.length === 0 && answered.length <= 1;
    return html`
<article class="finding${isBrief ? ' brief' : ''}" id="${context.anchorOf(finding)}" aria-labelledby="${context.anchorOf(finding)}-title"${context.source(finding.span)}>
<div class="opening${single ? ' beside' : ''}">
<div>
<h4 id="${context.anchorOf(finding)}-title"><span class="number">${finding.id}</span> ${finding.title || 'Without a title'}</h4>
${finding.on.length === 0 && place === undefined ? nothing : html`<p class="on">On ${joined([...finding.on.map(c => context.linkToComponent(c)), ...place === undefined ? [] : [place]], '; ')}</p>`}
${definitions([
        ['Seen', context.body(finding, 'seen') ?? missing('what was seen')],
        ['Why it matters', context.body(finding, 'because') ?? missing('why it matters')],
    ], 'facts card')}
</div>
${single ? figureOf(context, single, `${context.anchorOf(finding)}-picture`) : nothing}
</div>
${definitions([
        ['What to do', context.body(finding, 'recommend') ?? missing('what is to be done')],
        ...outcomeRows(context, finding),
        ['Due', isDoneAndSeen(finding) ? undefined : html`<p><strong>${context.dueOf(finding)}</strong>${finding.facts.has('reason-for-urgency') ? html`. ${ended(context.values(finding, 'reason-for-urgency'))}` : nothing}</p>`],
        ['Authority', authority(context, finding)],
        ['Cost allowed', context.body(finding, 'cost')],
        ['Of it betterment', context.body(finding, 'betterment')],
        ['And the occurrence', relationText(context, finding)],
        ['Related', context.body(finding, 'related')],
    ], 'facts card')}
${finding.notes.map(note => proseHtml(context, note))}
${single ? nothing : photoPairs(context, finding.photos, `${context.anchorOf(finding)}-picture`)}
${definitions([['Computed', answered.length === 0 ? undefined : html`<ul>${answered.map(problem => computedLine(problem))}</ul>`]], 'facts card computed')}
</article>`;
}

/** A photograph at the size of a reference, linked to where it is shown in full. */
function figureOf(context: ReportContext, photo: Photo, id: string, className = ''): Html {
    const numbered = context.photo(photo);
    return numbered === undefined ? nothing : html`<figure${className === '' ? nothing : html` class="${className}"`}>${'error' in numbered.image ? picture(numbered, undefined, '') : html`<a href="#photo-${numbered.number}">${picture(numbered, numbered.image.small ?? numbered.image, altOf(context, numbered), { marks: photo.marks, id })}</a>`}
<figcaption><a href="#photo-${numbered.number}">Photo ${numbered.number}</a>${photo.caption ? html`. ${proseInline(context, photo.caption)}` : nothing}</figcaption></figure>
`;
}

/** Width over height as cameras make pictures, by the class that gives a picture its share of a row. */
const aspects = [['aspect-9-16', 9 / 16], ['aspect-2-3', 2 / 3], ['aspect-3-4', 3 / 4], ['aspect-1-1', 1], ['aspect-4-3', 4 / 3], ['aspect-3-2', 3 / 2], ['aspect-16-9', 16 / 9]] as const;

/** The nearest of those to a picture; 4:3 where there is no picture. */
function aspectOf(context: ReportContext, photo: Photo): (typeof aspects)[number] {
    const image = context.photo(photo)?.image;
    const ratio = !image || 'error' in image ? 4 / 3 : image.width / image.height;
    return aspects.reduce((nearest, aspect) => Math.abs(Math.log(aspect[1] / ratio)) < Math.abs(Math.log(nearest[1] / ratio)) ? aspect : nearest);
}

/** Two photographs side by side have one height, as each is given width by its aspect; a row is never parted by the end of a page. */
function photoPairs(context: ReportContext, photos: readonly Photo[], id: string): Html {
    const rows = photos.flatMap((_, index) => index % 2 === 0 ? [photos.slice(index, index + 2)] : []);
    return rows.length === 0 ? nothing : html`<div class="photos">${rows.map((row, rowIndex) => {
        const sum = row.reduce((total, photo) => total + aspectOf(context, photo)[1], 0);
        // The narrower the pictures, the narrower the row, so that tall ones leave room for text.
        return html`<div class="pair${sum < 1.4 ? ' narrow' : sum < 2.2 ? ' middling' : ''}">${row.map((photo, index) => figureOf(context, photo, `${id}-${rowIndex * 2 + index + 1}`, aspectOf(context, photo)[0]))}</div>
`;
    })}</div>`;
}

const missing = (what: string) => html`<p class="absent">Not recorded: ${what}.</p>`;

/** With a full stop at its end. */
const ended = (text: Html): Html => html`${text}${/[.!?…]$/.test(plainOf(text).trimEnd()) ? nothing : '.'}`;

const plainOf = (text: Html): string => String(text).replace(/<[^>]*>/g, '');

/** The sentence alone: its figures stand in it, and bare in the record that goes with the report. */
function computedLine(problem: Problem): Html {
    return html`<li>${computedText(problem.message)}</li>
`;
}

function authority(context: ReportContext, finding: Finding): Html | undefined {
    const cites = (finding.facts.get('cites')?.values ?? []).flatMap(value => value.type === 'citation' ? [value] : []);
    return cites.length === 0 ? undefined : html`<ul>${cites.map(({ standard: name, clause }) => {
        const standard = context.record.vocabulary.standards.get(name);
        const standingText = standingOf(standard);
        // Without its clause a voluntary standard is cited as practice and no more.
        const lead = clause === undefined && isVoluntary(standard) ? 'Good practice per ' : '';
        // A practice that is nobody's text has no name beside its title.
        const title = standard?.title ?? '';
        const cited = clause === undefined && title.startsWith(name) ? title : `${name}${clause === undefined ? '' : `, ${clause}`}${title === '' ? '' : `, ${title}`}`;
        const isSaid = standingText !== undefined && cited.toLowerCase().endsWith(standingText);
        return html`<li>${lead}${cited}.${isSaid ? nothing : ` ${standingText === undefined ? 'Standing not recorded' : capital(standingText)}.`}${isRecalled(standard) ? html` <strong>Clause to be confirmed.</strong>` : nothing}</li>
`;
    })}</ul>`;
}


export function accepted(context: ReportContext): Section | undefined {
    const { acceptances } = context.record;
    return acceptances.length === 0 ? undefined : {
        id: 'accepted', title: 'Accepted as they stand', body: html`
${standing(context, 'accepted-lead')}
${table('Accepted, with the reasons', [{ title: 'On' }, { title: 'What stands' }, { title: 'Reason' }], acceptances.map(acceptance => {
        const met = context.problems.filter(problem => problem.answeredBy === 'accept' && (problem.check.id === acceptance.check.id || (problem.check.aliases ?? []).includes(acceptance.check.id))
            && (problem.components.length === 0 ? acceptance.on.length === 0 : problem.components.some(c => acceptance.on.includes(c))));
        return {
            attributes: context.source(acceptance.span),
            cells: [
                acceptance.on.length === 0 ? 'The vessel' : joined(acceptance.on.map(c => context.linkToComponent(c)), ', '),
                met.length === 0 ? capital(wordText(acceptance.check.id)) : html`${met.map(problem => html`<p>${computedText(problem.message)}</p>`)}`,
                acceptance.reason ? proseInline(context, acceptance.reason) : html`<strong class="absent">No reason is recorded</strong>`,
            ],
        };
    }))}`,
    };
}

export function recommendations(context: ReportContext): Section | undefined {
    const cost = costTotal(context);
    const ahead = context.findings.filter(finding => !isDoneAndSeen(finding));
    const done = context.findings.filter(isDoneAndSeen);
    return context.findings.length === 0 ? undefined : {
        id: 'recommendations', title: 'Recommendations in one list', body: html`
${standing(context, 'recommendations-lead')}
${cost ? html`<p>Costs allowed come to ${costText(cost)}, for the ${counted(cost.count, 'finding')} that state${cost.count === 1 ? 's' : ''} one.</p>` : nothing}
${done.length === 0 ? nothing : html`<p>Done and seen, and not listed again: ${joined(done.map(finding => context.linkTo(finding)), ', ')}.</p>`}
${ahead.length === 0 ? nothing : table('Recommendations', [{ title: 'No.' }, { title: 'What to do' }, { title: 'Due' }, ...cost ? [{ title: 'Cost allowed' }] : []], ahead.map(finding => ({
        attributes: context.source(finding.span),
        cells: [context.linkTo(finding), html`<strong>${finding.title}</strong> ${context.body(finding, 'recommend') ?? nothing}`, context.dueOf(finding), ...cost ? [context.text(finding, 'cost') ?? ''] : []],
    })), 'recommendations')}`,
    };
}

