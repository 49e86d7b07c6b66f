/** What became of the recommendations of the report that is followed: every one of them, in the order of its number, and what is new. */
import { isDoneAndSeen } from '../../record/earlier-findings.js';
import type { Finding } from '../../record/model.js';
import { table, type ReportContext, type Section } from '../context.js';
import { countsByState, countsInWords, followUpOf, lookedAt, reportTitle, stateTitle, type FollowUp, type Recommendation } from '../follow-up.js';
import { html, joined, nothing, type Html } from '../html.js';
import { standing } from '../standing-words.js';
import { capital, counted, isWord } from '../wording.js';

/** None where the survey follows no report and records no outcome. */
export function earlier(context: ReportContext): Section | undefined {
    const followUp = followUpOf(context);
    const { follows, recommendations, fresh } = followUp;
    if (follows === undefined && recommendations.every(({ state }) => state === 'not-said')) {
        return undefined;
    }
    const counts = countsByState(context, followUp);
    const passed = recommendations.filter(({ state }) => state === 'not-taken-up');
    return {
        id: 'earlier', title: follows === undefined ? 'What became of the recommendations' : 'What became of the earlier recommendations', body: html`
${standing(context, 'earlier-lead')}
${follows === undefined ? nothing : sourceOf(followUp)}
${passed.length === 0 ? nothing : html`<p><strong class="absent">${capital(counted(passed.length, 'recommendation is', 'recommendations are'))} not taken up: ${passed.map(({ number }) => number).join(', ')}.</strong> What became of ${passed.length === 1 ? 'it' : 'them'} is not known from this report.</p>`}
${recommendations.length === 0 ? html`<p>No earlier recommendation is known.</p>` : html`
${table('Recommendations by what became of them', [{ title: 'State' }, { title: 'Number', isNumber: true }, { title: 'Which' }, { title: 'Meaning' }], counts.map(({ state, meaning, recommendations: some }) => ({
        cells: [stateTitle(state), String(some.length), joined(some.map(each => numberOf(context, each)), ', '), meaning],
    })), 'outcomes')}
${table('Each recommendation, by its number', [{ title: 'No.' }, { title: 'Recommendation' }, { title: 'State' }, { title: 'What shows it' }, { title: 'What remains' }], recommendations.map(each => ({
        attributes: each.finding ? context.source(each.finding.span) : nothing,
        cells: [numberOf(context, each), asked(context, each), html`<strong>${stateTitle(each.state)}</strong>`, shown(context, each), remains(context, each)],
    })), 'recommendations followed')}`}
${follows === undefined ? nothing : fresh.length === 0 ? html`<h3>New</h3>
<p>Nothing new is recorded beyond what was reported before.</p>` : html`<h3>New</h3>
${table(`New since ${reportTitle(followUp)}`, [{ title: 'No.' }, { title: 'What' }, { title: 'Due' }], fresh.map(finding => ({
        attributes: context.source(finding.span), cells: [context.linkTo(finding), finding.title, context.dueOf(finding)],
    })))}`}`,
    };
}

/** Where the earlier recommendations were read, and how far that can be relied on. */
function sourceOf(followUp: FollowUp): Html {
    const { report, wasSought } = followUp;
    if (!report) {
        return html`<p>Follows ${reportTitle(followUp)}. <strong class="absent">${wasSought ? 'That report was not found' : 'That report was not read'} when this one was drawn:</strong> the list holds what this survey says of it, and may lack recommendations.</p>`;
    }
    return html`<p>Follows ${reportTitle(followUp)}${report.vessel === undefined ? nothing : html`, on ${report.vessel}`}. Its recommendations keep their numbers. ${report.isFrozen ? 'They were read from its record as issued.' : html`<strong>They were read from the survey itself and not from a record as issued;</strong> it may have been changed since.`}</p>`;
}

/** For the summary: how many recommendations are in which state. */
export function followedUp(context: ReportContext): Html | undefined {
    const counts = countsInWords(context);
    return counts === undefined ? undefined : html`${counts} (<a href="#earlier">each of them</a>)`;
}

/** For the card of a finding: what became of it, its number elsewhere, and what shows it; only what is recorded. */
export function outcomeRows(context: ReportContext, finding: Finding): (readonly [string, Html | string | undefined])[] {
    const outcome = context.first(finding, 'outcome');
    const state = isWord(outcome) ? outcome.word : undefined;
    const day = lookedAt(context, finding);
    return [
        ['What became of it', state === undefined ? undefined : html`<p>${stateTitle(state)}</p>`],
        ['Looked at', day],
        ['Earlier number', finding.facts.has('earlier') ? context.values(finding, 'earlier') : undefined],
        ['What shows it', context.body(finding, 'evidence')],
    ];
}

/** Its number; where it has another one in this survey, that too. */
export function numberOf(context: ReportContext, { number, finding }: Recommendation, isLinked = true): Html {
    if (!finding) {
        return html`${number}`;
    }
    const link = isLinked ? context.linkTo(finding) : html`${finding.id}`;
    return finding.id === number ? link : html`${number} (here ${link})`;
}

/** What was recommended then, in the words of then; the survey's own words where the earlier report is not at hand. */
function asked(context: ReportContext, { title, issued, finding }: Recommendation): Html {
    const where = [...issued?.on ?? [], ...issued?.place === undefined ? [] : [issued.place]].join('; ');
    return html`<p><strong>${title || 'Without a title'}</strong>${where === '' ? nothing : html`<br><span class="muted">${where}</span>`}</p>
${issued?.recommend !== undefined ? html`<p>${issued.recommend}</p>` : finding && !issued ? context.body(finding, 'recommend') ?? nothing : nothing}
${issued?.due === undefined ? nothing : html`<p class="muted">Due then: ${issued.due}</p>`}`;
}

/** Evidence, photographs and the day; that there is none is said where the state rests on it. */
export function shown(context: ReportContext, recommendation: Recommendation, isLinked = true): Html {
    const { finding, state } = recommendation;
    if (!finding) {
        return nothing;
    }
    const evidence = context.body(finding, 'evidence');
    const text = context.text(finding, 'evidence')?.trim() ?? '';
    const day = lookedAt(context, finding);
    // In the survey that found the fault its photographs show the fault; they show what was done only where that is said.
    const isOfOutcome = context.record.survey?.facts.has('follows') === true || state === 'done-and-seen' || state === 'in-part';
    const photos = finding.photos.length === 0 || !isOfOutcome ? nothing : isLinked ? html`<p>${context.photoLinks(finding.photos)}</p>` : html`<p>${joined(finding.photos.flatMap(photo => context.photo(photo)?.number ?? []).map(number => `Photo ${number}`), ', ')} of the report</p>`;
    return html`${text !== '' ? evidence : isDoneAndSeen(finding) && finding.photos.length === 0 ? html`<p class="absent">Not recorded: what shows it.</p>` : nothing}
${photos}
${day !== undefined ? html`<p>Looked at on ${day}.</p>` : state === 'done-and-seen' || state === 'in-part' ? html`<p class="absent">Not recorded: when it was looked at.</p>` : nothing}`;
}

/** What is still to be done, in the words of now; where those of then stand beside it and are the same, that they are. */
export function remains(context: ReportContext, { state, issued, finding }: Recommendation, isBesideEarlier = true): Html {
    if (state === 'done-and-seen' || state === 'closed-before' || state === 'remark') {
        return html`<p>Nothing further is asked.</p>`;
    }
    if (!finding) {
        return isBesideEarlier || issued?.recommend === undefined ? html`<p>Not known.</p>` : html`<p>Not known. Recommended then: ${issued.recommend}</p>`;
    }
    const now = context.text(finding, 'recommend')?.trim() ?? '';
    const isAsThen = isBesideEarlier && issued?.recommend !== undefined && now === issued.recommend.trim();
    const due = finding.facts.has('urgency') ? html`<p class="muted">${context.dueOf(finding)}</p>` : nothing;
    const lead = state === 'done-as-stated' ? html`<p>The work is to be shown: it was not seen.</p>` : state === 'declined' ? html`<p>The recommendation stands.</p>` : nothing;
    return html`${lead}${state === 'done-as-stated' ? nothing : now === '' ? html`<p class="absent">Not recorded: what remains.</p>` : isAsThen ? html`<p>As recommended then.</p>` : context.body(finding, 'recommend')}
${due}`;
}
