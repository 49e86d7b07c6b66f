/** What a PDF or a Word document says of itself in its properties, beside its title. */
import { ReportContext, type ReportInput } from './context.js';
import { printable } from './html.js';
import { reportNumber, surveyKind, vesselName } from './sections/opening.js';

export interface DocumentProperties {
    /** The surveyor and the firm. */
    readonly author: string;
    /** Kind of survey, vessel, number and issue of the report. */
    readonly subject: string;
    readonly keywords: readonly string[];
}

export function documentProperties(input: ReportInput): DocumentProperties {
    const context = new ReportContext(input);
    const { survey, vessel, vocabulary } = context.record;
    const issue = context.issueNumber === undefined ? '' : `, issue ${context.issueNumber}`;
    const said = (texts: readonly (string | undefined)[]) => texts.flatMap(text => text === undefined || text === '' ? [] : [printable(text).replace(/\s+/g, ' ').trim()]);
    return {
        author: said([context.text(survey, 'surveyor'), vocabulary.firm?.name]).join(', '),
        subject: printable(`${surveyKind(context)} of ${vesselName(context)}, report ${reportNumber(context)}${issue}`),
        keywords: said([vesselName(context), context.text(vessel, 'hull-number'), reportNumber(context)]),
    };
}
