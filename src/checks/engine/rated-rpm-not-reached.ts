/** A diesel that does not reach its rated speed at full throttle, or turns past it; a tachometer that shows otherwise; twins that differ. */
import { convertTo } from '../../quantities/index.js';
import { nameOf, rowsOf, wordOf, type Component, type Reading, type Row, type SurveyRecord } from '../../record/model.js';
import { judgeRatedSpeed, leastRatedShare, mostRatedShare, tachometerError, tachometerShare, trueSpeed, twinSpeedDifference, twinSpeedShare } from '../../trade/engine-speed.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth, percent } from '../phrasing.js';
import { drivingEngines, twinsOf } from '../../record/drive-lines.js';
import { measured, type Measured } from '../../record/trial-runs.js';
import { dueBeforeCompletion } from './completion.js';

export const ratedRpmNotReached = defineCheck({
    id: 'rated-rpm-not-reached',
    group: 'engine',
    severity: 'error',
    title: 'Engine does not reach its rated speed',
    why: 'A diesel held under its rated speed is overloaded, and lives the shorter for it.',
    needs: ['engine: rated-rotation, reached-rotation (by an independent tachometer), dash-rotation', 'engine or vessel: fuel', 'or a table of the trial, with rotation in a row labeled as at full throttle, and rotation-shown for the tachometer'],
    computes: 'Diesel: reached ÷ rated under 97 % is a fault, over 103 % calls for a closer look. Shown ÷ independent off by more than 2 %: that is settled first, unless both are under 97 %. Twins of one rating more than 3 % apart.',
    sources: [{ text: 'rated speed, −0 to +3 % loaded; tachometers within 2 %, twins within 3 %', provenance: 'practice' }],
    limits: [
        'A row of the trial is taken as at full throttle only where its label or remark says so.',
        'Gasoline engines are rated over a range of speeds and are not judged.',
        'How she was loaded, and how foul she was, is not asked; both lower the speed reached.',
        'What the helm shows alone decides nothing; an independent tachometer is asked for.',
    ],
    examples: [{
        name: 'overloaded diesel',
        bad: `vessel "Marram" { fuel: diesel }
main-engine E1 { rated-rotation: 2800 rpm  reached-rotation: 2600 rpm }
`,
        fixed: `vessel "Marram" { fuel: diesel }
main-engine E1 { rated-rotation: 2800 rpm  reached-rotation: 2790 rpm }
`,
    }, {
        name: 'tachometer that shows too much',
        bad: `main-engine E1 { fuel: diesel  rated-rotation: 2800 rpm  reached-rotation: 2700 rpm  dash-rotation: 2850 rpm }
`,
        fixed: `main-engine E1 { fuel: diesel  rated-rotation: 2800 rpm  reached-rotation: 2800 rpm  dash-rotation: 2850 rpm }
`,
    }, {
        name: 'twins apart',
        bad: `main-engine E1 { side: port  fuel: diesel  rated-rotation: 2800 rpm  reached-rotation: 2870 rpm }
main-engine E2 { side: starboard  fuel: diesel  rated-rotation: 2800 rpm  reached-rotation: 2730 rpm }
`,
        fixed: `main-engine E1 { side: port  fuel: diesel  rated-rotation: 2800 rpm  reached-rotation: 2810 rpm }
main-engine E2 { side: starboard  fuel: diesel  rated-rotation: 2800 rpm  reached-rotation: 2780 rpm }
`,
    }],
    silent: [
        { name: 'exactly 97 %', text: 'main-engine E1 { fuel: diesel  rated-rotation: 3000 rpm  reached-rotation: 2910 rpm }\n' },
        { name: 'exactly 103 %', text: 'main-engine E1 { fuel: diesel  rated-rotation: 3000 rpm  reached-rotation: 3090 rpm }\n' },
        { name: 'gasoline', text: 'main-engine E1 { fuel: gasoline  rated-rotation: 4600 rpm  reached-rotation: 4200 rpm }\n' },
        { name: 'tachometer within 2 %', text: 'main-engine E1 { fuel: diesel  rated-rotation: 2800 rpm  reached-rotation: 2800 rpm  dash-rotation: 2855 rpm }\n' },
        { name: 'generator', text: 'generator G1 { fuel: diesel  rated-rotation: 2000 rpm  reached-rotation: 1800 rpm }\n' },
        { name: 'not tried', text: 'main-engine E1 { fuel: diesel  rated-rotation: 2800 rpm }\n' },
    ],
    run(record, raise) {
        const engines = drivingEngines(record);
        const odd = new Set<Component>();
        for (const engine of engines) {
            const problem = judge(record, engine);
            if (problem) {
                odd.add(engine);
                raise(problem);
            }
        }
        for (const [port, starboard] of twinsOf(engines)) {
            const apart = odd.has(port) || odd.has(starboard) ? undefined : twinsApart(record, port, starboard);
            if (apart) {
                raise(apart);
            }
        }
    },
});

const rpm = (radS: number) => ({ value: Math.round(convertTo(radS, 'rpm') * 10) / 10, unit: 'rpm' });

interface Shown {
    readonly shown: Measured;
    readonly independent: Measured;
    /** Label of the row it was read in; without, facts of the engine. */
    readonly row?: string;
}

/** Tachometer at the helm against the independent one: as recorded of the engine, else the row furthest off. */
function tachometersOf(record: SurveyRecord, engine: Component): Shown | undefined {
    const [shown, independent] = [measured(engine, 'dash-rotation'), measured(engine, 'reached-rotation')];
    if (shown && independent) {
        return { shown, independent };
    }
    const off = ({ shown: s, independent: i }: Shown) => Math.abs(tachometerError(s.quantity.si, i.quantity.si));
    return rowsOf(record, 'trial').flatMap(({ reading, row }): Shown[] => {
        const isOf = isOfEngine(record, engine, reading, row);
        const [s, i] = [measured(row, 'rotation-shown'), measured(row, 'rotation')];
        return isOf && s && i ? [{ shown: s, independent: i, row: `“${row.label}” in ${reading.title ?? reading.id}` }] : [];
    }).reduce<Shown | undefined>((worst, one) => !worst || off(one) > off(worst) ? one : worst, undefined);
}

/** Speed at full throttle by an independent tachometer, and the row of the trial it was read in where it is no fact of the engine. */
interface Reached extends Measured {
    readonly row?: string;
}

const fullThrottle = /\bfull[- ]?(throttle|power|speed|ahead|load)|\bwide[- ]?open|\bwot\b|\bflat out\b/i;

/** As recorded of the engine, else the fastest run of the trial whose label or remark says that it was at full throttle. */
function reachedOf(record: SurveyRecord, engine: Component): Reached | undefined {
    const own = measured(engine, 'reached-rotation');
    if (own) {
        return own;
    }
    return rowsOf(record, 'trial').flatMap(({ reading, row }): Reached[] => {
        const rotation = measured(row, 'rotation');
        const remark = row.facts.get('remark')?.written ?? '';
        return rotation && isOfEngine(record, engine, reading, row) && fullThrottle.test(`${row.label} ${remark}`)
            ? [{ ...rotation, row: `“${row.label}” in ${reading.title ?? reading.id}` }] : [];
    }).reduce<Reached | undefined>((fastest, one) => !fastest || one.quantity.si > fastest.quantity.si ? one : fastest, undefined);
}

/** Whether a row of the trial tells of an engine: by its name, by what the table is on, or because she has no other. */
function isOfEngine(record: SurveyRecord, engine: Component, reading: Reading, row: Row): boolean {
    const named = row.facts.get('engine')?.values[0];
    return named?.type === 'component' ? named.id === engine.id : drivingEngines(record).length === 1 || (reading.on.length === 1 && reading.on[0] === engine);
}

const reachedSeen = (engine: Component, { row, quantity }: Reached) => row ? `${both(quantity)} (${row})` : `{${engine.id}.reached-rotation}`;

function judge(record: SurveyRecord, engine: Component): Raised | undefined {
    const rated = measured(engine, 'rated-rotation');
    const reached = reachedOf(record, engine);
    const tachometers = tachometersOf(record, engine);
    const error = tachometers && tachometerError(tachometers.shown.quantity.si, tachometers.independent.quantity.si);
    const isTachometerOff = error !== undefined && Math.abs(error) > tachometerShare + 1e-9;
    const fuel = wordOf(engine, 'fuel') ?? (record.vessel && wordOf(record.vessel, 'fuel'));
    const step = rated && reached ? judgeRatedSpeed(reached.quantity.si, rated.quantity.si) : undefined;
    const dash = measured(engine, 'dash-rotation');
    const bothUnder = rated && dash ? judgeRatedSpeed(dash.quantity.si, rated.quantity.si) === 'overloaded' : false;
    if (tachometers && error !== undefined && isTachometerOff && !(step === 'overloaded' && bothUnder && fuel === 'diesel')) {
        return tachometerProblem(engine, tachometers, error);
    }
    if (rated && reached && step !== 'reached' && step !== undefined) {
        return fuel === undefined ? {
            components: [engine], at: reached.fact.span, severity: 'hint',
            message: `${nameOf(engine)} reached ${both(reached.quantity)} of ${both(rated.quantity)}; record its fuel to tell whether that is enough.`,
        } : fuel === 'diesel' ? speedProblem(record, engine, reached, rated, step) : undefined;
    }
    return rated && !reached && dash && bothUnder && fuel === 'diesel' ? {
        components: [engine], at: dash.fact.span, severity: 'hint',
        message: `The helm shows ${both(dash.quantity)} for ${nameOf(engine)}, which is rated at ${both(rated.quantity)}; record reached-rotation by an independent tachometer to tell whether it is overloaded.`,
    } : undefined;
}

function speedProblem(record: SurveyRecord, engine: Component, reached: Reached, rated: Measured, step: 'overloaded' | 'light'): Raised {
    const share = reached.quantity.si / rated.quantity.si;
    const isLow = step === 'overloaded';
    const cause = isLow ? 'A foul bottom or propeller, too much pitch, or an engine out of tune holds it down, and overload shortens its life' : 'The propeller is too light for it, or a figure is false';
    return {
        components: [engine],
        at: reached.fact.span,
        ...(isLow ? {} : { severity: 'warning' as const }),
        message: `${nameOf(engine)} reached ${both(reached.quantity)} at full throttle, ${percent(share)} of its rated ${both(rated.quantity)}, where a loaded diesel reaches ${percent(leastRatedShare)} to ${percent(mostRatedShare)}. ${cause}; check bottom, propeller and tachometer.`,
        figures: { reached: rpm(reached.quantity.si), rated: rpm(rated.quantity.si), share: { value: share * 100, unit: '%' } },
        related: [{ message: 'The rated speed', span: rated.fact.span }],
        draft: {
            title: isLow ? `${engine.title ?? `Engine ${engine.id}`} does not reach its rated speed` : `${engine.title ?? `Engine ${engine.id}`} turns past its rated speed`,
            ...(isLow ? dueBeforeCompletion(record) : { urgency: 'in-upkeep' as const }),
            seen: `${engine.title ?? 'The engine'} (${engine.id}) reached ${reachedSeen(engine, reached)} at full throttle by an independent tachometer, ${percent(share)} of its rated {${engine.id}.rated-rotation}.`,
            because: `A loaded diesel reaches ${percent(leastRatedShare)} to ${percent(mostRatedShare)} of its rated speed. ${cause}.`,
            recommend: isLow ? `Clean bottom and propeller and run her again at full throttle; if ${engine.id} still falls short, have propeller, fuel and air supply looked into and the load taken off it.`
                : `Prove the rating on the plate of ${engine.id}, and have pitch and diameter of the propeller compared with what the engine is to turn.`,
        },
    };
}

function tachometerProblem(engine: Component, { shown, independent, row }: Shown, error: number): Raised {
    const much = `${percent(Math.abs(error))} too ${error > 0 ? 'much' : 'little'}`;
    const rated = measured(engine, 'rated-rotation');
    const at = rated ? ` At the rated {${engine.id}.rated-rotation} it would show ${computedBoth(Math.round(convertTo(rated.quantity.si * (1 + error), 'rpm')) * Math.PI / 30, 'rotation')}.` : '';
    return {
        components: [engine],
        at: shown.fact.span,
        severity: 'warning',
        message: `The helm shows ${both(shown.quantity)} for ${nameOf(engine)} where an independent tachometer reads ${both(independent.quantity)}, ${much}; within ${percent(tachometerShare)} is usual. Until that is settled nothing else can be told from engine speeds; prove both tachometers.`,
        figures: { shown: rpm(shown.quantity.si), independent: rpm(independent.quantity.si), error: { value: error * 100, unit: '%' } },
        related: [{ message: 'The independent reading', span: independent.fact.span }],
        corrections: withoutError(engine, error),
        draft: {
            title: `Tachometer of ${engine.title ?? engine.id} shows ${error > 0 ? 'too much' : 'too little'}`,
            urgency: 'in-upkeep',
            seen: row ? `In ${row} the helm showed ${much} for ${engine.id}, against an independent tachometer.`
                : `The helm showed {${engine.id}.dash-rotation} for ${engine.title ?? 'the engine'} (${engine.id}) where an independent tachometer read {${engine.id}.reached-rotation}, ${much}.${at}`,
            because: 'Who runs her by the helm overloads the engine or holds it back, and no reading of the trial can be relied on.',
            recommend: `Prove the tachometer of ${engine.id} against an independent one at two speeds, and set or renew it.`,
        },
    };
}

/** The speed at full throttle with the error taken off, where only the helm was read there. */
function withoutError(engine: Component, error: number): Correction[] {
    const dash = measured(engine, 'dash-rotation');
    if (!dash || engine.facts.has('reached-rotation')) {
        return [];
    }
    const value = `${Math.round(convertTo(trueSpeed(dash.quantity.si, error), 'rpm'))} rpm`;
    return [{ kind: 'set-fact', title: `Record ${value} as reached by ${engine.id}: ${dash.fact.written} less the error of its tachometer`, component: engine, property: 'reached-rotation', value }];
}

function twinsApart(record: SurveyRecord, port: Component, starboard: Component): Raised | undefined {
    const [p, s] = [reachedOf(record, port), reachedOf(record, starboard)];
    const [ratedP, ratedS] = [measured(port, 'rated-rotation'), measured(starboard, 'rated-rotation')];
    const isAlike = !ratedP || !ratedS || Math.abs(ratedP.quantity.si - ratedS.quantity.si) < 1e-6;
    const difference = p && s ? twinSpeedDifference(p.quantity.si, s.quantity.si) : 0;
    return !p || !s || !isAlike || difference <= twinSpeedShare + 1e-9 ? undefined : {
        components: [port, starboard],
        at: p.fact.span,
        severity: 'warning',
        message: `${nameOf(port)} reached ${both(p.quantity)} and ${nameOf(starboard)} ${both(s.quantity)} at full throttle, ${percent(difference)} apart, where twins keep within ${percent(twinSpeedShare)}. One propeller is fouled or of another pitch, or one engine is weak; compare them.`,
        figures: { port: rpm(p.quantity.si), starboard: rpm(s.quantity.si), difference: { value: difference * 100, unit: '%' } },
        related: [{ message: `The speed of ${starboard.id}`, span: s.fact.span }],
        draft: {
            title: `Engines ${port.id} and ${starboard.id} reach different speeds`,
            urgency: 'in-upkeep',
            seen: `At full throttle ${port.id} reached ${reachedSeen(port, p)} and ${starboard.id} ${reachedSeen(starboard, s)}, ${percent(difference)} apart.`,
            because: `Twins keep within ${percent(twinSpeedShare)}; a difference tells of a fouled or unlike propeller, or of an engine that is weak.`,
            recommend: `Compare the propellers of ${port.id} and ${starboard.id} in pitch, damage and growth, then governor, fuel and air of the slower engine.`,
        },
    };
}
