/** Papers of the vessel that were shown: what each says, and whether it was in date on the day of the survey. */
import { daysLeft } from '../../checks/dates.js';
import { surveyedOn } from '../../checks/hoses/age.js';
import { ofKind } from '../../record/model.js';
import { definitions, table, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { standing } from '../standing-words.js';
import { dateText, propertyTitle } from '../wording.js';

/** Facts that stand in columns of their own. */
const columns = ['paper', 'expires', 'condition'];

export function documents(context: ReportContext): Section | undefined {
    const { record } = context;
    const papers = [...ofKind(record, 'certificate'), ...ofKind(record, 'manual')];
    const today = surveyedOn(record);
    return papers.length === 0 ? undefined : {
        id: 'documents', title: 'Papers seen', body: html`
${standing(context, 'documents-lead')}
${table('Papers seen', [{ title: 'Paper' }, { title: 'What it says' }, { title: 'Expires' }, { title: 'See' }], papers.map(paper => {
        const expires = context.first(paper, 'expires');
        const says = [...paper.facts.keys()].filter(name => !columns.includes(name)).map(name => [propertyTitle(name), context.values(paper, name)] as const);
        const state = (left: number): Html => left < 0 ? html` <strong>Passed</strong> on the day of the survey.` : nothing;
        return {
            attributes: context.source(paper.span),
            cells: [
                context.linkToComponent(paper), html`${paper.facts.has('paper') ? html`<p>${context.values(paper, 'paper')}</p>` : nothing}${definitions(says, 'run-in')}`,
                expires?.type === 'date' ? html`${dateText(expires.figure)}${today ? state(daysLeft(expires.figure, today)) : nothing}` : 'No date is recorded',
                joined([...context.findingsOn(paper).map(finding => context.linkTo(finding)), ...paper.photos.length > 0 ? [context.photoLinks(paper.photos)] : []], ', '),
            ],
        };
    }))}`,
    };
}
