/**
 * Draws the report: one self-contained HTML page from the record, its problems and their answers. It computes nothing
 * anew; it never leaves out a problem without an answer. Dates come from the record alone, so the same record gives the
 * same page.
 */
import { ReportContext, type ReportInput, type Section } from './context.js';
import { mayMissTargets, sectionsOf, withoutDeadLinks } from './outline.js';
import { html } from './html.js';
import { page, type Running } from './page.js';
import { contents, cover, reportNumber, surveyKind, vesselName } from './sections/opening.js';

export type { ReportInput } from './context.js';
export { page, type PageParts, type Running } from './page.js';

/** What every printed page of the report says of itself: vessel, report and issue, and whose it is. */
export function runningHeads(context: ReportContext): Running {
    const issue = context.issueNumber === undefined ? '' : `, issue ${context.issueNumber}`;
    return { left: vesselName(context), right: `Report ${reportNumber(context)}${issue}`, foot: context.record.vocabulary.firm?.name ?? surveyKind(context) };
}

export function renderReport(input: ReportInput): string {
    const context = new ReportContext(input);
    const sections = sectionsOf(context);
    // The list of contents stands after the summary, so that the summary is the first page a reader meets.
    const before = sections.findIndex(section => section.id === 'summary') + 1;
    const draw = (section: Section, index: number) => html`
<section class="section section-${section.id.replace(/-.*/, '')}" id="${section.id}" aria-labelledby="${section.id}-title">
<h2 id="${section.id}-title"><span class="n">${index + 1}</span> ${section.title}</h2>
${section.body}
</section>
`;
    const running = runningHeads(context);
    const whole = page(context, {
        title: `${running.left}, ${surveyKind(context).toLowerCase()}, report ${reportNumber(context)}`, running,
        body: html`<a class="skip" href="#summary">Skip to the summary</a>
${cover(context)}
<main id="report">
${sections.slice(0, before).map(draw)}
${contents(sections)}
${sections.slice(before).map((section, index) => draw(section, index + before))}
</main>
<footer class="end"><p>${running.left}, report ${reportNumber(context)}. End of the report.</p></footer>`,
    });
    return mayMissTargets(context.record) ? withoutDeadLinks(whole) : whole;
}
