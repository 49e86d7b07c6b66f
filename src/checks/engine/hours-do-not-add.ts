/** Running hours of an engine that contradict each other, run backward, or are odd for the years. */
import { flagOf, nameOf, ofKind, rowsOf, valueOf, wordOf, type Component, type DateFigure, type SurveyRecord } from '../../record/model.js';
import { hoursAYear, isSameReading, judgeHours, leastHoursAYear, mostHoursAYear } from '../../trade/engine-hours.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { firstDay, lastDay, surveyedOn, yearsBetween } from '../hoses/age.js';
import { measured, type Measured } from '../../record/trial-runs.js';
import { dueBeforeCompletion } from './completion.js';

export const hoursDoNotAdd = defineCheck({
    id: 'hours-do-not-add',
    group: 'engine',
    severity: 'error',
    title: 'Running hours do not add up',
    why: 'Hours set the price and the care of an engine; a wrong meter or a wrong text misleads both.',
    needs: ['engine: hours, hours-stated', 'engine: earlier-hours and earlier-date, and the date she was attended', 'engine: oil-hours; a table of oil samples with engine-hours, oil-hours and drawn', 'engine: fitted or made, for hours by the year; meter-changed, hours-before-meter'],
    computes: 'A fault where hours by papers differ from the meter by more than 2 % (at least 20 hours), where the meter shows less than an earlier report or oil sample and was not changed since, more hours than have passed, or where the oil has more hours than the engine. Advice to ask where a private craft has run over 800 or under 5 hours a year.',
    sources: [{ text: 'hours against hours, and against the time that passed', provenance: 'computed' }, { text: '5 to 800 hours a year', provenance: 'practice' }, { text: '2 %, at least 20 hours, for one reading', provenance: 'chosen' }],
    limits: [
        'Hours named in prose are not read.',
        'Less than half a year between two readings tells nothing of hours a year.',
        'Hours by the year over her life are judged only where the engine itself is dated: she may have been given another.',
        'A meter counts while it has current, which is not always while the engine runs.',
    ],
    examples: [{
        name: 'fewer hours than three years ago',
        bad: `survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }
vessel "Marram" {}
main-engine E1 { hours: 1240  earlier-hours: 1890  earlier-date: 2023-05-10  earlier-source: "survey report of May 2023" }
`,
        fixed: `survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }
vessel "Marram" {}
main-engine E1 { hours: 1240  earlier-hours: 1890  earlier-date: 2023-05-10  earlier-source: "survey report of May 2023"  meter-changed: 2026 }
`,
        correction: 'Record the hour meter of E1 as changed in 2026',
    }, {
        name: 'papers and meter differ',
        bad: `main-engine E1 { hours: 1240  hours-stated: 900 }
`,
        fixed: `main-engine E1 { hours: 1240  hours-stated: 1240 }
`,
        correction: 'Keep 1240, what the meter shows',
    }, {
        name: 'a digit too many',
        bad: `survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }
main-engine E1 { hours: 12470  earlier-hours: 1190  earlier-date: 2025-08-10 }
`,
        fixed: `survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }
main-engine E1 { hours: 1247  earlier-hours: 1190  earlier-date: 2025-08-10 }
`,
        correction: 'Read 12470 as 1247',
    }, {
        name: 'oil sample with more hours than the meter',
        bad: `survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }
main-engine E1 { hours: 1240 }
reading OS1 "Oil samples" {
    measures: oil-sample
    row "Engine": E1, "A1", 1420, 60, 2026-04-02
}
`,
        fixed: `survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }
main-engine E1 { hours: 1240 }
reading OS1 "Oil samples" {
    measures: oil-sample
    row "Engine": E1, "A1", 1220, 60, 2026-04-02
}
`,
    }],
    silent: [
        { name: 'fifty hours a year', text: 'survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }\nmain-engine E1 { hours: 2040  earlier-hours: 1890  earlier-date: 2023-05-10 }\n' },
        { name: 'papers in round figures', text: 'main-engine E1 { hours: 1247  hours-stated: 1250 }\n' },
        { name: 'meter changed, hours before it added', text: 'main-engine E1 { hours: 140  hours-before-meter: 1100  meter-changed: 2024-03  hours-stated: 1240 }\n' },
        { name: 'the same hours on the same day', text: 'survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }\nmain-engine E1 { hours: 1240 }\nreading OS1 "Oil samples" {\n    measures: oil-sample\n    row "Engine": E1, "A1", 1240, 60, 2026-10-06\n}\n' },
        { name: 'a work boat of 1500 hours a year', text: 'survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }\nvessel "Marram" { type: aluminum-workboat }\nmain-engine E1 { hours: 5000  earlier-hours: 2000  earlier-date: 2024-10-06 }\n' },
        { name: 'hours alone', text: 'main-engine E1 { hours: 1240 }\n' },
    ],
    run(record, raise) {
        for (const engine of ofKind(record, 'engine')) {
            const problem = judge(record, engine);
            if (problem) {
                raise(problem);
            }
        }
    },
});

/** A reading of the meter before the survey, in a report or an oil sample. */
interface Earlier extends Measured {
    readonly date: DateFigure | undefined;
    /** "the survey report of May 2023", in a sentence. */
    readonly source: string;
    /** The same for a finding, with references. */
    readonly seen: string;
}

const hours = ({ quantity }: Measured) => quantity.figure.written;
const ordered = [firstDay, lastDay] as const;

function judge(record: SurveyRecord, engine: Component<'engine'>): Raised | undefined {
    const now = measured(engine, 'hours');
    const today = surveyedOn(record);
    const earlier = [...earlierReport(engine), ...samplesOf(record, engine)];
    const backward = now && earlier.find(one => runsBackward(engine, now, one, today));
    if (now && backward) {
        return backwardProblem(record, engine, now, backward, today);
    }
    return oilProblem(record, engine, now) ?? (now && (statedProblem(record, engine, now) ?? tooManyProblem(record, engine, now, earlier, today) ?? oddYears(record, engine, now, earlier, today)))
        ?? amongSamples(record, engine, earlier);
}

function earlierReport(engine: Component<'engine'>): Earlier[] {
    const reading = measured(engine, 'earlier-hours');
    const text = valueOf(engine, 'earlier-source')?.prose.text;
    const date = valueOf(engine, 'earlier-date')?.figure;
    const when = date ? ` (${date.written})` : '';
    return reading ? [{
        ...reading, date, source: text ? `“${text}”${when}` : `an earlier report${when}`,
        seen: `{${engine.id}.earlier-hours} by ${text ? `{${engine.id}.earlier-source}` : 'an earlier report'}${date ? ` ({${engine.id}.earlier-date})` : ''}`,
    }] : [];
}

/** Hours on the engine by its oil samples. */
function samplesOf(record: SurveyRecord, engine: Component): Earlier[] {
    const isOnly = ofKind(record, 'engine').length === 1;
    return rowsOf(record, 'oil-sample').flatMap(({ reading, row }): Earlier[] => {
        const unit = row.facts.get('unit')?.values[0];
        const isOf = unit?.type === 'component' ? unit.id === engine.id : isOnly || (reading.on.length === 1 && reading.on[0] === engine);
        const taken = measured(row, 'engine-hours');
        const date = valueOf(row, 'drawn')?.figure ?? valueOf(reading, 'taken')?.figure;
        const source = `oil sample “${row.label}” in ${reading.title ?? reading.id}${date ? ` of ${date.written}` : ''}`;
        return isOf && taken ? [{ ...taken, date, source, seen: `the hours of ${source}` }] : [];
    });
}

/** Whether the meter was changed after a reading, or may have been. */
function isChangedSince(engine: Component<'engine'>, date: DateFigure | undefined): boolean {
    const changed = valueOf(engine, 'meter-changed')?.figure;
    const [first, last] = ordered;
    return changed !== undefined && (date === undefined || last(changed) >= first(date));
}

function runsBackward(engine: Component<'engine'>, now: Measured, earlier: Earlier, today: DateFigure | undefined): boolean {
    const isLater = earlier.date !== undefined && today !== undefined && firstDay(earlier.date) > lastDay(today);
    return !isLater && !isChangedSince(engine, earlier.date) && now.quantity.si < earlier.quantity.si - 1e-9;
}

const because = 'Hours set the price and the care of an engine: either the meter was changed or stood still, or a figure is wrong.';
const name = (engine: Component) => engine.title ?? 'the engine';

interface Contradiction {
    readonly title: string;
    readonly message: string;
    readonly seen: string;
    readonly corrections?: readonly Correction[];
    readonly figures?: Raised['figures'];
    readonly other?: Measured;
    readonly isQuestion?: boolean;
}

function raised(record: SurveyRecord, engine: Component, at: Measured, { title, message, seen, corrections = [], figures, other, isQuestion = false }: Contradiction): Raised {
    return {
        components: [engine],
        at: at.fact.span,
        ...(isQuestion ? { severity: 'warning' as const } : {}),
        message,
        ...(figures ? { figures } : {}),
        ...(other ? { related: [{ message: 'The other figure', span: other.fact.span }] } : {}),
        corrections,
        draft: {
            title, ...dueBeforeCompletion(record), seen,
            because: isQuestion ? 'Hours set the price and the care of an engine; odd ones call for an explanation.' : because,
            recommend: `State which meter the hours of ${engine.id} come from and since when it counts, and settle the figure from log, service papers and owner.`,
        },
    };
}

const hour = (value: number) => ({ value, unit: 'h' });

function backwardProblem(record: SurveyRecord, engine: Component<'engine'>, now: Measured, earlier: Earlier, today: DateFigure | undefined): Raised {
    const year = today?.year ?? earlier.date?.year;
    return raised(record, engine, now, {
        title: `Hours of ${engine.title ?? engine.id} are fewer than before`,
        message: `The meter of ${nameOf(engine)} shows ${hours(now)} hours, fewer than the ${hours(earlier)} of ${earlier.source}. The meter was changed, or one figure is wrong; find out which.`,
        seen: `The meter of ${name(engine)} (${engine.id}) shows {${engine.id}.hours} hours, fewer than ${earlier.seen}.`,
        figures: { hours: hour(now.quantity.si), earlier: hour(earlier.quantity.si) }, other: earlier,
        corrections: [
            ...digitsOff(engine, now, earlier, today),
            ...(year === undefined ? [] : [{ kind: 'set-fact', title: `Record the hour meter of ${engine.id} as changed in ${year}`, component: engine, property: 'meter-changed', value: String(year) } as const]),
        ],
    });
}

/** A reading with a digit too many or too few, where it then follows the earlier one. */
function digitsOff(engine: Component, now: Measured, earlier: Earlier, today: DateFigure | undefined): Correction[] {
    const years = earlier.date && today ? yearsBetween(earlier.date, today) : undefined;
    const written = hours(now);
    return [now.quantity.si / 10, now.quantity.si * 10].flatMap((read): Correction[] => {
        const run = read - earlier.quantity.si;
        const isUsual = Number.isInteger(read) && run >= 0 && years !== undefined && years > 0 && judgeHours(run, years) === 'usual';
        return isUsual ? [{ kind: 'set-fact', title: `Read ${written} as ${read}`, component: engine, property: 'hours', value: String(read) }] : [];
    });
}

/** Oil older than its engine. */
function oilProblem(record: SurveyRecord, engine: Component<'engine'>, now: Measured | undefined): Raised | undefined {
    const oil = measured(engine, 'oil-hours');
    if (oil && now && oil.quantity.si > now.quantity.si + (valueOf(engine, 'hours-before-meter')?.si ?? 0) + 1e-9 && !engine.facts.has('meter-changed')) {
        return raised(record, engine, oil, {
            title: `Oil of ${engine.title ?? engine.id} has more hours than the engine`,
            message: `${nameOf(engine)} has ${hours(now)} hours on its meter and ${hours(oil)} on its oil: oil cannot have run longer than the engine. One figure is wrong, or the meter was changed; find out which.`,
            seen: `${upper(name(engine))} (${engine.id}) has {${engine.id}.hours} hours on its meter and {${engine.id}.oil-hours} on its oil.`,
            figures: { hours: hour(now.quantity.si), 'oil-hours': hour(oil.quantity.si) }, other: now,
        });
    }
    const row = rowsOf(record, 'oil-sample').find(({ row: one }) => {
        const unit = one.facts.get('unit')?.values[0];
        const [ofOil, ofEngine] = [measured(one, 'oil-hours'), measured(one, 'engine-hours')];
        return unit?.type === 'component' && unit.id === engine.id && ofOil && ofEngine && ofOil.quantity.si > ofEngine.quantity.si + 1e-9;
    });
    const [ofOil, ofEngine] = row ? [measured(row.row, 'oil-hours'), measured(row.row, 'engine-hours')] : [];
    return row && ofOil && ofEngine ? raised(record, engine, ofOil, {
        title: `Oil sample of ${engine.title ?? engine.id} has more hours than the engine`,
        message: `Oil sample “${row.row.label}” gives ${hours(ofOil)} hours on the oil and ${hours(ofEngine)} on ${nameOf(engine)}: oil cannot have run longer than the engine. The two may be exchanged; look at the bottle.`,
        seen: `Oil sample “${row.row.label}” in ${row.reading.title ?? row.reading.id} of ${name(engine)} (${engine.id}) gives more hours on the oil than on the engine.`,
        figures: { hours: hour(ofEngine.quantity.si), 'oil-hours': hour(ofOil.quantity.si) }, other: ofEngine,
    }) : undefined;
}

function statedProblem(record: SurveyRecord, engine: Component<'engine'>, now: Measured): Raised | undefined {
    const stated = measured(engine, 'hours-stated');
    const before = valueOf(engine, 'hours-before-meter')?.si;
    const isUnknownBefore = before === undefined && engine.facts.has('meter-changed') && stated !== undefined && stated.quantity.si > now.quantity.si;
    if (!stated || isUnknownBefore || isSameReading(stated.quantity.si, now.quantity.si) || (before !== undefined && isSameReading(stated.quantity.si, now.quantity.si + before))) {
        return undefined;
    }
    const keep = (kept: Measured, property: string, whose: string): Correction => ({ kind: 'set-fact', title: `Keep ${hours(kept)}, ${whose}`, component: engine, property, value: hours(kept) });
    const total = before === undefined ? '' : ` and ${before} before its meter was changed`;
    return raised(record, engine, stated, {
        title: `Hours of ${engine.title ?? engine.id} by papers and meter differ`,
        message: `The meter of ${nameOf(engine)} shows ${hours(now)} hours${total}, papers or word of mouth say ${hours(stated)}. Both cannot be true; find out which is, and whether the meter was changed.`,
        seen: `The meter of ${name(engine)} (${engine.id}) shows {${engine.id}.hours} hours${before === undefined ? '' : `, with {${engine.id}.hours-before-meter} before it was changed`}; papers or word of mouth say {${engine.id}.hours-stated}.`,
        figures: { hours: hour(now.quantity.si), stated: hour(stated.quantity.si) }, other: now,
        corrections: [keep(now, 'hours-stated', 'what the meter shows'), keep(stated, 'hours', 'what papers say')],
    });
}

/** Years between two readings; none where they lie too close to tell. */
function yearsSince(date: DateFigure | undefined, today: DateFigure | undefined): number | undefined {
    const years = date && today ? yearsBetween(date, today) : undefined;
    return years !== undefined && years >= 0.5 ? years : undefined;
}

function tooManyProblem(record: SurveyRecord, engine: Component<'engine'>, now: Measured, earlier: readonly Earlier[], today: DateFigure | undefined): Raised | undefined {
    const impossible = earlier.find(one => {
        // The longest time that may lie between, so that no hour is held for too many.
        const most = one.date && today ? (lastDay(today) + 86_400_000 - firstDay(one.date)) / 3_600_000 : undefined;
        return most !== undefined && most > 0 && !isChangedSince(engine, one.date) && now.quantity.si - one.quantity.si > most;
    });
    return impossible && raised(record, engine, now, {
        title: `${engine.title ?? engine.id} ran more hours than have passed`,
        message: `${nameOf(engine)} went from the ${hours(impossible)} hours of ${impossible.source} to ${hours(now)}: more hours than have passed since. One figure is wrong; look at the meter again.`,
        seen: `The meter of ${name(engine)} (${engine.id}) shows {${engine.id}.hours} hours, after ${impossible.seen}: more than have passed since.`,
        figures: { hours: hour(now.quantity.si), earlier: hour(impossible.quantity.si) }, other: impossible, corrections: digitsOff(engine, now, impossible, today),
    });
}

/** Hours that are odd for the years: since the oldest dated reading, else since the engine was fitted or made. */
function oddYears(record: SurveyRecord, engine: Component<'engine'>, now: Measured, earlier: readonly Earlier[], today: DateFigure | undefined): Raised | undefined {
    const isWork = record.vessel !== undefined && (wordOf(record.vessel, 'type') === 'aluminum-workboat' || flagOf(record.vessel, 'commercial') === true);
    const dated = earlier.filter(one => yearsSince(one.date, today) !== undefined && !isChangedSince(engine, one.date)).sort((a, b) => a.quantity.si - b.quantity.si)[0];
    const since = (['fitted', 'made'] as const).find(property => engine.facts.has(property));
    const newSince = since && valueOf(engine, since)?.figure;
    const years = dated ? yearsSince(dated.date, today) : engine.facts.has('meter-changed') ? undefined : yearsSince(newSince, today);
    const run = now.quantity.si - (dated?.quantity.si ?? 0);
    const step = years === undefined ? undefined : judgeHours(run, years);
    const rate = years === undefined ? undefined : hoursAYear(run, years);
    if (step === undefined || step === 'usual' || rate === undefined || (isWork && step !== 'fewer')) {
        return undefined;
    }
    const rateText = `about ${rate < 10 ? Math.round(rate * 10) / 10 : Math.round(rate)} hours a year`;
    const from = dated ? `the ${hours(dated)} of ${dated.source}` : `when it was ${since ?? 'made'} (${newSince?.written ?? ''})`;
    const few = step === 'fewer';
    return raised(record, engine, now, {
        title: `Hours of ${engine.title ?? engine.id} are odd for the years`,
        message: `${nameOf(engine)} shows ${hours(now)} hours, ${rateText} since ${from}, where a private craft runs ${leastHoursAYear} to ${mostHoursAYear}. ${few ? 'The meter stood still or was changed, or she lay unused' : 'She works for a living, or a figure is wrong'}; ask, and state which meter was read.`,
        seen: `The meter of ${name(engine)} (${engine.id}) shows {${engine.id}.hours} hours, ${rateText} since ${dated ? dated.seen : `it was ${since ?? 'made'} ({${engine.id}.${since ?? 'made'}})`}; ${leastHoursAYear} to ${mostHoursAYear} are usual for a private craft.`,
        figures: { hours: hour(now.quantity.si), 'a year': hour(rate) }, isQuestion: true, corrections: dated ? digitsOff(engine, now, dated, today) : [],
    });
}

/** Two dated readings before the survey of which the later has fewer hours. */
function amongSamples(record: SurveyRecord, engine: Component<'engine'>, earlier: readonly Earlier[]): Raised | undefined {
    for (const later of earlier) {
        const before = earlier.find(one => one.date && later.date && lastDay(one.date) < firstDay(later.date) && one.quantity.si > later.quantity.si + 1e-9 && !isChangedSince(engine, one.date));
        if (before) {
            return raised(record, engine, later, {
                title: `Hours of ${engine.title ?? engine.id} run backward`,
                message: `${upper(later.source)} gives ${hours(later)} hours for ${nameOf(engine)}, fewer than the ${hours(before)} of ${before.source}. The meter was changed, or one figure is wrong; find out which.`,
                seen: `${upper(later.seen)} are fewer for ${name(engine)} (${engine.id}) than ${before.seen}.`,
                figures: { later: hour(later.quantity.si), earlier: hour(before.quantity.si) }, other: before,
            });
        }
    }
    return undefined;
}

const upper = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
