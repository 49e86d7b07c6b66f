/** Which sections a report has, and in which order: by the outline of its kind of survey, and by what there is to tell. */
import type { ReportContext, Section } from './context.js';
import { accepted, findings, recommendations } from './sections/findings.js';
import { assumptions, photographs, standards, statement } from './sections/closing.js';
import { limits, particulars, words } from './sections/limits.js';
import { measurements } from './sections/measurements.js';
import { openProblems, scope, summary } from './sections/opening.js';
import { systemSections } from './sections/systems.js';
import { valuation } from './sections/valuation.js';

export function sectionsOf(context: ReportContext): Section[] {
    const open = openProblems(context);
    const given = (...sections: readonly (Section | undefined)[]) => sections.filter(section => section !== undefined);
    return given(
        context.isDraft ? open : undefined,
        summary(context), scope(context), limits(context), words(context), particulars(context), ...systemSections(context), measurements(context),
        findings(context), context.isDraft ? undefined : open, accepted(context), recommendations(context), valuation(context), standards(context), assumptions(context),
        statement(context), photographs(context),
    );
}
