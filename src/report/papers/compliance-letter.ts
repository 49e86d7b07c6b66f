/**
 * The letter of compliance: to the underwriter, which recommendations are met, under the numbers of the report. What
 * the surveyor saw and what others state are kept apart, and it never says more than was seen.
 */
import { ReportContext, table, type ReportInput } from '../context.js';
import { countsByState, followUpOf, reportTitle, stateTitle, type FollowUp, type Recommendation } from '../follow-up.js';
import { html, nothing, type Html } from '../html.js';
import { numberOf, remains, shown } from '../sections/earlier.js';
import { reportNumber, surveyKind, vesselName } from '../sections/opening.js';
import { standing } from '../standing-words.js';
import { counted, dateText, wordText } from '../wording.js';
import { draftNote, gap, identity, letterhead, paperPage, signatures } from './letter.js';

/** Headings by state; a state without one goes by its own name. */
const headings: Readonly<Record<string, string>> = {
    'done-and-seen': 'Met, and seen by the surveyor', 'done-as-stated': 'Stated to be done, and not seen by the surveyor', 'in-part': 'Met in part', open: 'Open', declined: 'Declined by the owner',
    'not-said': 'No outcome recorded', 'not-taken-up': 'Not taken up: nothing is known of them', 'closed-before': 'Met before, as the earlier report records',
};

export function complianceLetter(input: ReportInput): string {
    const context = new ReportContext(input);
    const { survey } = context.record;
    const followUp = followUpOf(context);
    const counts = countsByState(context, followUp).filter(({ state }) => state !== 'remark');
    const stated = counts.find(({ state }) => state === 'done-as-stated')?.recommendations ?? [];
    return paperPage(context, {
        title: 'Letter of compliance', className: 'letter', body: html`
${letterhead(context)}
<main>
<div class="addressee">
<p class="to">${context.text(survey, 'underwriter') ?? gap('the underwriter')}</p>
<p class="of">${context.issued ? dateText(context.issued) : gap('date')}</p>
</div>
<h1>${vesselName(context)}: what became of the recommendations</h1>
${draftNote(context)}
${identity(context, [['Your number', context.text(survey, 'policy') ?? gap('number of the policy')], ['Client', context.text(survey, 'client') ?? gap('the client')]])}
${lead(context, followUp, counts.flatMap(({ recommendations }) => recommendations).length)}
${counts.length === 0 ? nothing : table('In short', [{ title: 'What became of them' }, { title: 'Number', isNumber: true }, { title: 'Which' }], counts.map(({ state, recommendations }) => ({
        cells: [headings[state] ?? stateTitle(state), String(recommendations.length), recommendations.map(({ number }) => number).join(', ')],
    })), 'outcomes')}
${counts.map(({ state, meaning, recommendations }) => html`
<section>
<h2>${headings[state] ?? stateTitle(state)}</h2>
${answered(context, state, meaning, recommendations)}
</section>`)}
${followUp.follows === undefined ? nothing : fresh(context, followUp)}
<div class="limits-of-paper">
${standing(context, 'compliance-limits')}
</div>
${signatures(context, stated.length === 0 ? [] : [{ role: 'Owner', words: `I state that the work under ${stated.map(({ number }) => number).join(', ')} has been done. The surveyor did not see it.` }])}
<p>The rest stands in report ${reportNumber(context)}, ${surveyKind(context).toLowerCase()}.</p>
</main>`,
    });
}

function lead(context: ReportContext, followUp: FollowUp, count: number): Html {
    const { follows, report, wasSought } = followUp;
    const whose = follows === undefined ? html`of this report` : html`of ${reportTitle(followUp)}`;
    const doubt = follows === undefined || report ? nothing
        : html` <strong class="absent">${wasSought ? 'That report was not found' : 'That report was not read'} when this letter was drawn, so the list may lack recommendations.</strong>`;
    return html`<p>${count === 0 ? html`No recommendation ${whose} is known, so nothing can be said to be met.` : html`The ${counted(count, 'recommendation')} ${whose} ${count === 1 ? 'is' : 'are'} set out below by what became of ${count === 1 ? 'it' : 'them'}, under ${count === 1 ? 'its number' : 'their numbers'} in that report.`}${doubt}</p>`;
}

function answered(context: ReportContext, state: string, meaning: string, recommendations: readonly Recommendation[]): Html {
    const isMet = state === 'done-and-seen' || state === 'closed-before';
    const heading = state === 'done-as-stated' ? 'What is stated' : 'What shows it';
    return table(meaning === '' ? stateTitle(state) : meaning, [
        { title: 'No.' }, { title: 'Recommendation' }, ...state === 'not-said' ? [] : [{ title: heading }], ...isMet ? [] : [{ title: 'What remains' }],
    ], recommendations.map(each => ({
        cells: [numberOf(context, each, false), each.title || 'Without a title', ...state === 'not-said' ? [] : [evidence(context, each)], ...isMet ? [] : [remains(context, each, false)]],
    })), 'answered');
}

/** What shows it; that nothing does is said, never passed over. */
function evidence(context: ReportContext, recommendation: Recommendation): Html {
    const what = shown(context, recommendation, false);
    return what.toString().trim() !== '' ? what : recommendation.state === 'done-as-stated' ? html`<p>${gap('who stated it, and how')}</p>` : recommendation.state === 'closed-before' ? html`<p>As the earlier report records.</p>` : html`<p>Nothing is recorded.</p>`;
}

function fresh(context: ReportContext, { fresh: findings }: FollowUp): Html {
    return html`<h2>New since that report</h2>
${findings.length === 0 ? html`<p>Nothing new is recorded. The vessel was not surveyed anew for this letter.</p>` : table('New findings', [{ title: 'No.' }, { title: 'What' }, { title: 'Due' }, { title: 'State' }], findings.map(finding => {
        const outcome = context.first(finding, 'outcome');
        return { cells: [finding.id, finding.title, context.dueOf(finding), outcome?.type === 'word' ? wordText(outcome.word) : 'open'] };
    }))}`;
}
