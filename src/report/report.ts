/**
 * Draws the report: one self-contained HTML page from the record, its problems and their answers. It computes nothing
 * anew; it never leaves out a problem without an answer. Dates come from the record alone, so the same record gives the
 * same page.
 */
import { ReportContext, type ReportInput, type Section } from './context.js';
import { sectionsOf } from './outline.js';
import { cssString, html, nothing, trusted } from './html.js';
import { contents, cover, reportNumber, surveyKind, vesselName } from './sections/opening.js';
import { styleSheet } from './style.js';

export type { ReportInput } from './context.js';

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
    const name = vesselName(context);
    const number = reportNumber(context);
    const css = styleSheet({
        head: cssString(name), number: cssString(`Report ${number}`), foot: cssString(context.record.vocabulary.firm?.name ?? surveyKind(context)),
        draft: context.isDraft ? cssString('DRAFT, not issued') : undefined,
    });
    return html`<!DOCTYPE html>
<html lang="en"${context.isPreview ? html` class="preview"` : nothing}>
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${context.isDraft ? 'DRAFT. ' : ''}${name}, ${surveyKind(context).toLowerCase()}, report ${number}</title>
<style>${trusted(css)}</style>
</head>
<body class="${context.isDraft ? 'draft' : 'final'}">
<a class="skip" href="#summary">Skip to the summary</a>
${context.isDraft ? html`<div class="draft-band" role="note" aria-label="State of this report">DRAFT</div>
<svg class="draft-mark" viewBox="0 0 180 260" preserveAspectRatio="xMidYMid meet" aria-hidden="true" focusable="false"><text x="90" y="140">DRAFT</text></svg>` : nothing}
${cover(context)}
<main id="report">
${sections.slice(0, before).map(draw)}
${contents(sections)}
${sections.slice(before).map((section, index) => draw(section, index + before))}
</main>
<footer class="end"><p>${name}, report ${number}. End of the report.</p></footer>
</body>
</html>
`.toString();
}
