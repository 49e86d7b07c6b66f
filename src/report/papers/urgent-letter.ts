/** The letter that lists, on the day they were told, the matters that cannot wait: what, where, and what to do now. */
import { asksNothing, byNumber, earlierFindings, isDoneAndSeen } from '../../record/earlier-findings.js';
import type { Finding } from '../../record/model.js';
import { definitions, ReportContext, table, urgencyTitle, type ReportInput } from '../context.js';
import { html, nothing, type Html } from '../html.js';
import { reportNumber, vesselName } from '../sections/opening.js';
import { standing } from '../standing-words.js';
import { listed } from '../../checks/phrasing.js';
import { capital, counted, dateText, wordText } from '../wording.js';
import { draftNote, gap, identity, letterhead, paperPage, signatures, surveyorName, whereOf } from './letter.js';

/** Words of urgency that are told the same day; their order is that of the word list. */
export const toldTheSameDay: readonly string[] = ['at-once', 'before-launch', 'before-departure', 'before-use'];

export function urgentLetter(input: ReportInput): string {
    const context = new ReportContext(input);
    const { survey } = context.record;
    const groups = context.groups.map(group => ({ ...group, findings: group.findings.filter(finding => !isDoneAndSeen(finding)).sort((a, b) => byNumber(a.id, b.id)) }))
        .filter(({ word, findings }) => word !== undefined && toldTheSameDay.includes(word) && findings.length > 0);
    const unrated = context.findings.filter(finding => !finding.facts.has('urgency'));
    const count = groups.reduce((sum, { findings }) => sum + findings.length, 0);
    const untold = earlierFindings(context.record).flatMap(({ issued, takenUpBy }) => !takenUpBy && !asksNothing(issued) && toldTheSameDay.includes(issued.urgency?.split(' ')[0] ?? '') ? [issued] : []);
    const told = context.first(survey, 'told-on');
    const day = told?.type === 'date' ? dateText(told.figure) : undefined;
    return paperPage(context, {
        title: 'Urgent matters', className: 'letter', body: html`
${letterhead(context)}
<main>
<div class="addressee">
<p class="to">${context.text(survey, 'client') ?? gap('the client')}</p>
<p class="of">${day ?? gap('date')}</p>
</div>
<h1>${vesselName(context)}: ${count === 0 ? 'no urgent matter is recorded' : 'matters that cannot wait'}</h1>
${draftNote(context, count === 0 ? '' : 'What is in it is told by word at once all the same.')}
${identity(context)}
${count === 0 ? html`<p>No finding of this survey is recorded as one to be dealt with ${listedWords()}. The letter says no more than that.</p>` : html`
<p>${capital(counted(count, 'matter'))} found at the survey ${count === 1 ? 'is' : 'are'} set out below, the most pressing first, because ${count === 1 ? 'it' : 'they'} should not wait for the report. The numbers are those of the report.</p>
${groups.map(group => html`
<section>
<h2>${urgencyTitle(group)}</h2>
${group.meaning === undefined ? nothing : html`<p>${group.meaning}</p>`}
${group.findings.map(finding => matter(context, finding))}
</section>`)}`}
${unrated.length === 0 ? nothing : html`<p><strong class="absent">No urgency is recorded yet for ${unrated.map(({ id }) => id).join(', ')};</strong> whether ${unrated.length === 1 ? 'it' : 'they'} can wait is not said here.</p>`}
${untold.length === 0 ? nothing : table('Urgent when last reported, and not taken up since', [{ title: 'No.' }, { title: 'What' }, { title: 'Due then' }], untold.map(({ id, title, due, urgency }) => ({ cells: [id, title, due ?? wordText(urgency ?? '')] })))}
<h2>How this was told</h2>
${toldHow(context, count > 0)}
<div class="limits-of-paper">
${standing(context, 'urgent-letter-limits')}
</div>
${signatures(context)}
<p>The rest stands in report ${reportNumber(context)}.</p>
</main>`,
    });
}

const listedWords = () => listed(toldTheSameDay.map(wordText), 'or');

function matter(context: ReportContext, finding: Finding): Html {
    const where = whereOf(context, finding);
    return html`<section class="matter"${context.source(finding.span)}>
<h3><span class="number">${finding.id}</span> ${finding.title || 'Without a title'}</h3>
${definitions([
        ['Where', where === '' ? gap('where') : where],
        ['Found', context.body(finding, 'seen') ?? gap('what was found')],
        ['Why it matters', context.body(finding, 'because') ?? gap('why it matters')],
        ['What to do', context.body(finding, 'recommend') ?? gap('what to do')],
    ], 'facts card')}
</section>
`;
}

/** By whom, to whom, when and how: each left open where it is not recorded. */
function toldHow(context: ReportContext, isSomethingTold: boolean): Html {
    const { survey } = context.record;
    const told = context.first(survey, 'told-on');
    const isRecorded = ['told-on', 'told-to', 'told-how'].some(property => survey?.facts.has(property));
    if (!isSomethingTold && !isRecorded) {
        return html`<p>There was nothing to tell.</p>`;
    }
    return definitions([
        ['Told by', surveyorName(context)],
        ['Told to', context.text(survey, 'told-to') ?? gap('to whom')],
        ['On', told?.type === 'date' ? dateText(told.figure) : gap('date')],
        ['How, and when', context.text(survey, 'told-how') ?? gap('how')],
    ]);
}
