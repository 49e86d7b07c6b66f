/** What the shorter papers share: head, addressee, gaps, where a finding lies, signature, and how they are laid out. */
import type { Finding, Person } from '../../record/model.js';
import { definitions, type ReportContext } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { withoutDeadLinks } from '../outline.js';
import { page } from '../page.js';
import { firmHead, reportNumber, surveyKind, vesselName } from '../sections/opening.js';
import { counted, dateText } from '../wording.js';
import { paperStyle } from './style.js';

/** The title, the text, and what a draft of the paper must say of itself. */
export interface Paper {
    readonly title: string;
    readonly body: Html;
    readonly className: 'letter' | 'work-list';
}

/** A whole page. What the text refers to stands in the report and not here, so that references become plain text. */
export function paperPage(context: ReportContext, { title, body, className }: Paper): string {
    const name = vesselName(context);
    const issue = context.issueNumber === undefined ? '' : `, issue ${context.issueNumber}`;
    return withoutDeadLinks(page(context, {
        title: `${title}: ${name}, report ${reportNumber(context)}`, className: `paper ${className}`, style: paperStyle,
        running: { left: `${name}: ${title.toLowerCase()}`, right: `Report ${reportNumber(context)}${issue}`, foot: context.record.vocabulary.firm?.name ?? surveyKind(context) },
        body,
    }));
}

/** A place left open, marked as such: what is not recorded is never made up. */
export const gap = (what: string): Html => html`<strong class="absent gap">[${what}: not recorded]</strong>`;

/** The firm, its mark and its address; the surveyor alone where no firm is named. */
export function letterhead(context: ReportContext): Html {
    const { firm } = context.record.vocabulary;
    const lines = firm ? ['address', 'telephone', 'email', 'website'].flatMap(property => context.text(firm, property) ?? []) : [];
    return html`<header class="letterhead">
${firm ? firmHead(context) : html`<p>${surveyorName(context)}</p>`}
${lines.length === 0 ? nothing : html`<address>${joined(lines, html`<br>`)}</address>`}
</header>`;
}

/** Why a draft is not to leave the house. */
export function draftNote(context: ReportContext, more = ''): Html {
    return context.isDraft ? html`<p class="draft-note"><strong>DRAFT.</strong> ${counted(context.openErrors, 'problem is', 'problems are')} open in the survey that this is drawn from; it is not to be signed or sent until each is answered.${more === '' ? '' : ` ${more}`}</p>` : nothing;
}

/** Which boat, which report, which days: enough that nobody takes the paper for another boat's. */
export function identity(context: ReportContext, more: readonly (readonly [string, Html | string | undefined])[] = []): Html {
    const { survey, vessel } = context.record;
    const days = (survey?.attendances ?? []).map(({ date, state, place }) => [date ? dateText(date) : undefined, state, place].filter(part => part !== undefined).join(', '));
    return definitions([
        ['Vessel', html`<strong>${vesselName(context)}</strong>`],
        ['Hull number', context.text(vessel, 'hull-number') ?? gap('hull number')],
        ['Official number', context.text(vessel, 'official-number')],
        ['Report', html`${reportNumber(context)}${context.issueNumber === undefined ? nothing : `, issue ${context.issueNumber}`}, ${surveyKind(context).toLowerCase()}`],
        ['Attended', days.length === 0 ? gap('attendance') : joined(days, html`<br>`)],
        ...more,
    ]);
}

/** The components a finding is on, and its place in words. */
export function whereOf(context: ReportContext, finding: Finding): string {
    const place = context.text(finding, 'place');
    return [...finding.on.map(part => part.title ?? part.id), ...place === undefined ? [] : [place]].join('; ');
}

export function personOf(context: ReportContext, property: 'surveyor' | 'reviewer'): Person | undefined {
    const value = context.first(context.record.survey, property);
    return value?.type === 'person' ? context.record.vocabulary.people.get(value.id) : undefined;
}

/** "the surveyor", by name where one is recorded. */
export function surveyorName(context: ReportContext): Html {
    const name = personOf(context, 'surveyor')?.name ?? context.text(context.record.survey, 'surveyor');
    return name === undefined ? gap('the surveyor') : html`${name}`;
}

/** Room to sign: the surveyor, and whoever else must. */
export function signatures(context: ReportContext, others: readonly { readonly role: string; readonly words: string }[] = []): Html {
    const surveyor = personOf(context, 'surveyor');
    const credentials = surveyor ? context.text(surveyor, 'credentials') : undefined;
    return html`${context.isDraft ? html`<p><strong>This is a draft and is not to be signed.</strong></p>` : nothing}
<div class="signatures">
<div class="signature">
<p class="line-for">${context.signedBy === undefined ? 'Signature' : `Signed by ${context.signedBy}`}</p>
<p><strong>${surveyorName(context)}</strong><br>Surveyor${credentials === undefined ? nothing : html`<br>${credentials}`}</p>
<p class="line-for">Date</p>
</div>
${others.map(({ role, words }) => html`<div class="signature">
<p>${words}</p>
<p class="line-for">Signature</p>
<p>${role}</p>
<p class="line-for">Date</p>
</div>
`)}</div>`;
}
