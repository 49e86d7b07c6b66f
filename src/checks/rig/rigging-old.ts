/** Standing rigging past its term by age, with no recent report of a rigger. */
import { convertTo } from '../../quantities/index.js';
import { isPastTerm, reportMonths, riggingStep, veryOldYears, type RiggingStep } from '../../trade/rigging.js';
import { anyValue, nameOf, ofKind, siOf, valueOf, wordOf, yardstick, type Component, type SurveyRecord, type DateFigure } from '../../record/model.js';
import { surveyedOn, yearsBetween } from '../hoses/age.js';
import { defineCheck, type Correction, type Raised, type Urgency } from '../contract.js';
import { listed } from '../phrasing.js';

export const riggingOld = defineCheck({
    id: 'rigging-old',
    group: 'rig',
    severity: 'warning',
    title: 'Standing rigging is old by age',
    why: 'Fatigue leaves no mark until a wire parts.',
    needs: ['shroud, stay, wire: fitted (or made) and build, rigger-report, insurers-term', 'the date she was attended; vessel: built, where the age is not recorded'],
    computes: 'Years since fitted over the term: the insurer’s where recorded, else 12 for wire and 10 for rod. Silent with a rigger’s report of the last 2 years. Over 20 years, or of unknown age on a boat older than the term: more urgent.',
    sources: [{ text: 'insurers ask for 10 to 20 years, most about 10 to 15', provenance: 'published' }, { text: 'a report speaks for 2 years; 20 years', provenance: 'practice' }],
    yardsticks: ['wire-rigging-life', 'rod-rigging-life'],
    limits: ['Age tells nothing of the state of a wire; what was seen is judged by strand-or-terminal-broken.', 'Wires of one date and build are reported together.', 'Synthetic rigging is not judged: its makers’ terms differ too much.', 'Where the age is not recorded, the boat’s own age bounds it; where that is not known either, it is asked for.'],
    examples: [{
        name: 'wire of seventeen years',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }
vessel "Marram" {}
shroud SH1 "Shrouds" { build: one-by-nineteen  fitted: 2009 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }
vessel "Marram" {}
shroud SH1 "Shrouds" { build: one-by-nineteen  fitted: 2009  rigger-report: 2026-03 }
`,
    }, {
        name: 'an insurer with a longer term',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }
stay ST1 { build: one-by-nineteen  fitted: 2013-05 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }
stay ST1 { build: one-by-nineteen  fitted: 2013-05  insurers-term: 15 years }
`,
        correction: 'Record an insurer’s term of 15 years',
    }],
    silent: [
        { name: 'wire of eleven years', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }\nshroud SH1 { build: one-by-nineteen  fitted: 2015-05 }\n' },
        { name: 'the same wire on a day when it is younger', text: 'survey "1" pre-purchase { attended 2020-10-06 afloat "Yard" }\nvessel "Marram" {}\nshroud SH1 "Shrouds" { build: one-by-nineteen  fitted: 2009 }\n' },
        { name: 'age not recorded on a boat within the term', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }\nvessel "M" { built: 2018 }\nshroud SH1\n' },
    ],
    run(record, raise) {
        const groups = new Map<string, Component<'wire'>[]>();
        for (const wire of ofKind(record, 'wire')) {
            const key = `${wire.facts.get(dateOf(wire))?.written ?? ''} ${wordOf(wire, 'build') === 'rod'} ${wordOf(wire, 'build') === 'synthetic'} ${wire.facts.get('insurers-term')?.written ?? ''} ${hasReport(record, wire)}`;
            groups.set(key, [...groups.get(key) ?? [], wire]);
        }
        for (const wires of groups.values()) {
            const problem = judge(record, wires);
            if (problem) {
                raise(problem);
            }
        }
    },
});

function hasReport(record: SurveyRecord, wire: Component<'wire'>): boolean {
    const report = valueOf(wire, 'rigger-report')?.figure;
    const today = surveyedOn(record);
    return report !== undefined && (today === undefined || !isPastTerm(report, today, reportMonths));
}

interface Term {
    readonly years: number;
    readonly says: string;
}

function termOf(record: SurveyRecord, wire: Component): Term {
    const insurers = siOf(wire, 'insurers-term');
    const isRod = wordOf(wire, 'build') === 'rod';
    const limit = yardstick(record, isRod ? 'rod-rigging-life' : 'wire-rigging-life');
    return insurers === undefined ? { years: convertTo(limit.si, 'years'), says: `${limit.whose} of ${limit.written} for ${isRod ? 'rod' : 'wire'}` }
        : { years: convertTo(insurers, 'years'), says: `the insurer’s term of ${wire.facts.get('insurers-term')?.written ?? ''}` };
}

function judge(record: SurveyRecord, wires: readonly Component<'wire'>[]): Raised | undefined {
    const [wire] = wires;
    if (!wire || hasReport(record, wire) || wordOf(wire, 'build') === 'synthetic') {
        return undefined;
    }
    const today = surveyedOn(record);
    const fitted = anyValue(wire, dateOf(wire))?.figure;
    const term = termOf(record, wire);
    if (!fitted) {
        return ofUnknownAge(record, wires, wire, term, today);
    }
    if (!today) {
        return { components: wires, at: wire.facts.get(dateOf(wire))?.span ?? wire.idSpan, severity: 'hint', message: `${named(wires)}: ${dateOf(wire)} in ${fitted.written}; record when she was attended to tell the age.` };
    }
    const step = riggingStep(fitted, today, Math.round(term.years * 12));
    // A day's slack, for a calendar year may be a quarter of a day short of one.
    return step === 'within' ? undefined : old(record, wires, wire, { term, step, years: Math.floor(yearsBetween(fitted, today) + 1 / 365) });
}

/** When it was fitted, or else when it was made, as its label says. */
const dateOf = (wire: Component): 'fitted' | 'made' => wire.facts.has('fitted') || !wire.facts.has('made') ? 'fitted' : 'made';

const named = (wires: readonly Component[]): string => listed(wires.map(nameOf));
const raisedUrgency = (record: SurveyRecord): Pick<NonNullable<Raised['draft']>, 'urgency' | 'days'> => record.survey?.surveyKind === 'pre-purchase' ? { urgency: 'before-completion' } : { urgency: 'within-days', days: 30 };

const because = 'Rigging tires without a mark, so that age is all there is to go by; insurers set terms for it.';
const recommend = 'Have a rigger inspect the standing rigging aloft and report in writing, and ask the insurer what age is accepted.';

function old(record: SurveyRecord, wires: readonly Component[], wire: Component, { term, step, years }: { readonly term: Term; readonly step: RiggingStep; readonly years: number }): Raised {
    const isVeryOld = step === 'very-old';
    const urgency: { readonly urgency: Urgency; readonly days?: number } = isVeryOld ? raisedUrgency(record) : { urgency: 'keep-watch' };
    return {
        components: wires, at: wire.facts.get(dateOf(wire))?.span ?? wire.idSpan,
        message: `${named(wires)}: ${dateOf(wire)} in ${wire.facts.get(dateOf(wire))?.written ?? ''}, at least ${years} years before the survey, old by age against ${term.says}${isVeryOld ? `, and over ${veryOldYears} years` : ''}, with no rigger’s report of the last two years. Fatigue leaves no mark; have a rigger report.`,
        figures: { age: { value: years, unit: 'year' }, term: { value: term.years, unit: 'year' } },
        corrections: insurersTerm(wire, years, wires.length),
        draft: {
            title: 'Standing rigging is old by age', ...urgency,
            seen: `${listed(wires.map(({ id, title }) => title ? `${title} (${id})` : id))}: ${dateOf(wire)} {${wire.id}.${dateOf(wire)}}, at least ${years} years before the survey, past ${term.says}. No rigger’s report of the last two years was shown.`,
            because, recommend, cites: [['Good practice']],
        },
    };
}

/** A term that the age is within, in steps of five years; the insurer's own is for the surveyor to know. */
function insurersTerm(wire: Component, years: number, count: number): Correction[] {
    const term = Math.ceil((years + 1) / 5) * 5;
    return count === 1 && term <= 30 ? [{ kind: 'set-fact', title: `Record an insurer’s term of ${term} years`, component: wire, property: 'insurers-term', value: `${term} years` }] : [];
}

function ofUnknownAge(record: SurveyRecord, wires: readonly Component[], wire: Component, term: Term, today: DateFigure | undefined): Raised | undefined {
    const built = record.vessel ? siOf(record.vessel, 'built') : undefined;
    if (built === undefined || !today) {
        return { components: wires, at: wire.idSpan, severity: 'hint', message: `${named(wires)}: record when it was fitted, and how that is known, to tell its age.` };
    }
    if (today.year - built <= term.years) {
        return undefined;
    }
    return {
        components: wires, at: wire.idSpan,
        message: `${named(wires)}: the date fitted is not known, she was built in ${built}, and no rigger’s report of the last two years is recorded. The age may be past ${term.says}; find it out, or have a rigger report.`,
        figures: { boat: { value: today.year - built, unit: 'year' } },
        draft: {
            title: 'Age of the standing rigging is not known', ...raisedUrgency(record),
            seen: `The date of the standing rigging (${listed(wires.map(({ id }) => id))}) is not known; she was built in {vessel.built}. No rigger’s report of the last two years was shown.`,
            because, recommend, cites: [['Good practice']],
        },
    };
}
