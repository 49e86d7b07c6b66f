/** Registers drawn from the record: the openings in the hull, and the gear that carries a date. */
import { daysLeft } from '../../checks/dates.js';
import { surveyedOn } from '../../checks/hoses/age.js';
import { isKind, ofKind, runsThrough, siOf, type Component } from '../../record/model.js';
import { table, type ReportContext } from '../context.js';
import { openingsPlan } from '../drawings/openings-plan.js';
import { html, joined, nothing, type Html } from '../html.js';
import { counted, dateText, propertyTitle } from '../wording.js';

/** Facts that name the last day of something. */
const terms = ['expires', 'service-due', 'replace-by', 'battery-expires'] as const;

export function registers(context: ReportContext): Html[] {
    return [openings(context), datedGear(context)].filter(part => part !== nothing);
}

function openings(context: ReportContext): Html {
    const { record } = context;
    const all = ofKind(record, 'hull-opening');
    if (all.length === 0) {
        return nothing;
    }
    const fact = (component: Component | undefined, ...names: readonly string[]) => {
        const name = names.find(each => component?.facts.has(each));
        return component && name !== undefined ? context.values(component, name) ?? '' : '';
    };
    // A column for the position only where one is recorded: most registers have none, and the table is wide enough.
    const positions = all.some(opening => positionText(context, opening) !== nothing);
    return html`<section class="reading"><h3>Register of openings</h3>
${openingsPlan(context)}
${table('Openings in the hull', [{ title: 'Opening' }, ...positions ? [{ title: 'Position' }] : [], { title: 'Serves' }, { title: 'Bore or size' }, { title: 'Waterline' }, { title: 'Metal' }, { title: 'Valve' }, { title: 'Hose' }, { title: 'See' }], all.map(opening => {
        const run = runsThrough(record, opening).find(each => each.components[0] === opening);
        const valve = run?.components.find(part => isKind(record, part, 'valve'));
        const hose = run?.components.find(part => isKind(record, part, 'hose'));
        const height = opening.facts.has('below-waterline') ? html`${fact(opening, 'below-waterline')} below` : opening.facts.has('above-waterline') ? html`${fact(opening, 'above-waterline')} above` : '';
        return {
            attributes: context.source(opening.span),
            cells: [
                context.linkToComponent(opening), ...positions ? [positionText(context, opening)] : [], run?.facts.has('service') ? context.values(run, 'service') ?? '' : fact(opening, 'service'), fact(opening, 'bore', 'size'), height, fact(opening, 'metal', 'material'),
                valve ? html`${valve.id}${valve.facts.has('pattern') ? html`, ${fact(valve, 'pattern')}` : nothing}${valve.facts.has('works') ? html`, ${fact(valve, 'works')}` : nothing}` : fact(opening, 'closure'),
                hose ? html`${hose.id}${hose.facts.has('bore') ? html`, ${fact(hose, 'bore')}` : nothing}` : '',
                joined([...new Set([opening, ...(run?.components ?? [])].flatMap(part => context.findingsOn(part)))].map(finding => context.linkTo(finding)), ', '),
            ],
        };
    }), 'register')}
</section>`;
}

/** Where an opening lies: along the hull, on which side, how far from the centerline. */
function positionText(context: ReportContext, opening: Component): Html {
    const along = ['from-bow', 'from-stern'].filter(name => opening.facts.has(name)).map(name => html`${context.values(opening, name)} ${name === 'from-bow' ? 'from the bow' : 'from the stern'}`);
    if (along.length === 0) {
        return nothing;
    }
    return joined([...along, ...opening.facts.has('side') ? [html`${context.text(opening, 'side')}`] : [], ...opening.facts.has('from-centerline') ? [html`${context.values(opening, 'from-centerline')} from the centerline`] : []], ', ');
}

function datedGear(context: ReportContext): Html {
    const { record } = context;
    const today = surveyedOn(record);
    const dated = [...record.components.values()].flatMap(component => terms.flatMap(term => {
        const value = component.facts.get(term)?.values[0];
        return value?.type === 'date' ? [{ component, term, date: value.figure }] : [];
    }));
    if (dated.length === 0) {
        return nothing;
    }
    const state = (left: number) => left < 0 ? html`<strong>passed</strong>` : left <= 60 ? `in date for ${counted(left, 'day')}` : 'in date';
    return html`<section class="reading"><h3>Gear that carries a date</h3>
<p>A month without a day runs to its last day.${today ? ` Judged on ${dateText(today)}.` : ''}</p>
${table('Gear that carries a date', [{ title: 'Item' }, { title: 'Quantity' }, { title: 'Marked' }, { title: 'On the day of the survey' }], dated.map(({ component, term, date }) => ({
        attributes: context.source(component.span),
        cells: [context.linkToComponent(component), String(siOf(component, 'quantity') ?? 1), html`${propertyTitle(term)} ${dateText(date)}`, today ? state(daysLeft(date, today)) : 'the day of the survey is not recorded'],
    })), 'register')}
</section>`;
}
