/** Exhaust hose hotter than it is made for, sides that differ, and bare hot parts within reach. */
import { convertTo } from '../../quantities/index.js';
import { flagOf, isKind, nameOf, type Component, type SurveyRecord } from '../../record/model.js';
import { hotK, isLikeRotation, sidesApartK } from '../../trade/exhaust.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { measured } from '../../record/trial-runs.js';
import { sideOf } from '../../record/drive-lines.js';
import { hotPoints, temperatureSeen, type HotPoint } from './hot-points.js';

export const exhaustRunsHot = defineCheck({
    id: 'exhaust-runs-hot',
    group: 'exhaust',
    severity: 'error',
    title: 'Exhaust runs hot',
    why: 'With too little water the hose burns through and lets gas and water in.',
    needs: ['exhaust-hose: temperature, rated-temperature', 'exhaust-riser and turbo: temperature, lagged, within-reach', 'side and rotation, to compare two sides', 'or a table of temperatures with part, rotation and temperature'],
    computes: 'A fault where the skin of a wet hose is over the temperature it is rated for, else over 200 F (93 C). Advice where it is over 200 F and rated for more, where like parts of the two sides differ by more than 20 F (11 K) at like engine speed (within 5 %), and where a dry part over 200 F lies bare within reach.',
    sources: [
        { text: 'guard over 200 F', standard: 'ABYC P-1', provenance: 'secondary' },
        { text: 'skin of a wet hose under about 140 F, alarms at 165 to 200 F; sides within 20 F', provenance: 'practice' },
    ],
    limits: [
        'A reading by infrared depends on the surface; shiny metal reads cold.',
        'Where no rating of the hose is recorded, 200 F is taken as its limit.',
        'Sides are compared only where one part of a kind stands on each, and the engine speed of both readings is recorded.',
    ],
    examples: [{
        name: 'hose at 210 F',
        bad: `vessel "Marram" {}
exhaust-hose XH1 { temperature: 210 F }
`,
        fixed: `vessel "Marram" {}
exhaust-hose XH1 { temperature: 120 F }
`,
    }, {
        name: 'Celsius typed for Fahrenheit',
        bad: `exhaust-hose XH1 { temperature: 115 C }
`,
        fixed: `exhaust-hose XH1 { temperature: 115 F }
`,
        correction: 'Read 115 C as 115 F',
    }, {
        name: 'port hotter than starboard',
        bad: `exhaust-hose XH1 { side: port  temperature: 160 F  rotation: 2400 rpm }
exhaust-hose XH2 { side: starboard  temperature: 125 F  rotation: 2400 rpm }
`,
        fixed: `exhaust-hose XH1 { side: port  temperature: 130 F  rotation: 2400 rpm }
exhaust-hose XH2 { side: starboard  temperature: 125 F  rotation: 2400 rpm }
`,
    }, {
        name: 'bare riser within reach',
        bad: `exhaust-riser ER1 { temperature: 350 F  lagged: no  within-reach: yes }
`,
        fixed: `exhaust-riser ER1 { temperature: 350 F  lagged: yes  within-reach: yes }
`,
        correction: 'Record ER1 as lagged',
    }],
    silent: [
        { name: 'hose at 200 F', text: 'exhaust-hose XH1 { temperature: 200 F }\n' },
        { name: 'sides 20 F apart', text: 'exhaust-hose XH1 { side: port  temperature: 145 F  rotation: 2400 rpm }\nexhaust-hose XH2 { side: starboard  temperature: 125 F  rotation: 2400 rpm }\n' },
        { name: 'sides at different engine speeds', text: 'exhaust-hose XH1 { side: port  temperature: 160 F  rotation: 3000 rpm }\nexhaust-hose XH2 { side: starboard  temperature: 125 F  rotation: 2400 rpm }\n' },
        { name: 'bare, out of reach', text: 'exhaust-riser ER1 { temperature: 350 F  lagged: no  within-reach: no }\n' },
        { name: 'bare, within reach and cool', text: 'exhaust-riser ER1 { temperature: 150 F  lagged: no  within-reach: yes }\n' },
        { name: 'not measured', text: 'exhaust-hose XH1\n' },
    ],
    run(record, raise) {
        const points = hotPoints(record);
        const problems = points.map(point => isKind(record, point.part, 'exhaust-hose') ? hotHose(point) : bareHotPart(point)).filter(problem => problem !== undefined);
        // A row that repeats what is recorded of the part says nothing new.
        const seen = new Set<Component>();
        for (const problem of problems) {
            const [part] = problem.components;
            if (part && !seen.has(part)) {
                seen.add(part);
                raise(problem);
            }
        }
        for (const apart of sidesApart(record, points.filter(({ part }) => !seen.has(part)))) {
            raise(apart);
        }
    },
});

const kelvin = (si: number) => computedBoth(si, 'temperature');
const fahrenheit = (si: number) => ({ value: Math.round(convertTo(si, 'F') * 10) / 10, unit: 'F' });

function hotHose(point: HotPoint): Raised | undefined {
    const { part, temperature } = point;
    const rated = measured(part, 'rated-temperature');
    const limitK = rated?.quantity.si ?? hotK;
    const isOverRating = temperature.quantity.si > limitK + 1e-6;
    if (!isOverRating && temperature.quantity.si <= hotK + 1e-6) {
        return undefined;
    }
    const at = point.rotation ? ` at ${both(point.rotation.quantity)}` : '';
    const atSeen = !point.rotation || point.row ? at : ` at {${part.id}.rotation}`;
    const limit = isOverRating ? (rated ? `the ${both(rated.quantity)} it is rated for` : `${kelvin(hotK)}, taken as its limit since no rating is recorded`) : kelvin(hotK);
    const limitSeen = isOverRating && rated ? `the {${part.id}.rated-temperature} it is rated for` : limit;
    return {
        components: [part],
        at: temperature.fact.span,
        ...(isOverRating ? {} : { severity: 'warning' as const }),
        message: `The skin of ${nameOf(part)} reaches ${both(temperature.quantity)}${at}, over ${limit}. Too little water runs with the gas, and the hose ${isOverRating ? 'burns through and lets gas and water in' : 'ages fast, though it is rated for more'}; look to pump, injection elbow and strainer.`,
        figures: { temperature: fahrenheit(temperature.quantity.si), limit: fahrenheit(isOverRating ? limitK : hotK) },
        corrections: inFahrenheit(point, limitK),
        draft: {
            title: `Exhaust hose ${part.id} runs hot`,
            urgency: isOverRating ? 'before-use' : 'in-upkeep',
            seen: `The skin of exhaust hose ${part.id} reached ${temperatureSeen(point)}${atSeen}, over ${limitSeen}.`,
            because: 'Too little water runs with the gas; the hose burns from inside, parts, and lets exhaust gas and water into the hull.',
            recommend: `Overhaul the raw-water pump, clear strainer, injection elbow and heat exchanger, measure again under load, and renew hose ${part.id} if it is soft, hard or blistered.`,
        },
    };
}

/** A Celsius figure that would be an ordinary one in Fahrenheit. */
function inFahrenheit({ part, temperature, row }: HotPoint, limitK: number): Correction[] {
    const { unit, value } = temperature.quantity.figure;
    const readK = (value - 32) / 1.8 + 273.15;
    const title = `Read ${temperature.fact.written} as ${value} F`;
    return unit !== 'C' || value < 80 || readK > Math.min(limitK, hotK) ? []
        : row ? [{ kind: 'replace-text', title, span: temperature.fact.span, text: `${value} F` }]
            : [{ kind: 'set-fact', title, component: part, property: 'temperature', value: `${value} F` }];
}

function bareHotPart(point: HotPoint): Raised | undefined {
    const { part, temperature } = point;
    const [lagged, reached] = [flagOf(part, 'lagged'), flagOf(part, 'within-reach')];
    if (temperature.quantity.si <= hotK + 1e-6 || lagged === true || reached === false || (lagged === undefined && reached === undefined)) {
        return undefined;
    }
    if (lagged === undefined || reached === undefined) {
        return {
            components: [part], at: temperature.fact.span, severity: 'hint',
            message: `${nameOf(part)} reaches ${both(temperature.quantity)}; record ${lagged === undefined ? 'lagged' : 'within-reach'} to tell whether it needs a guard.`,
        };
    }
    return {
        components: [part],
        at: temperature.fact.span,
        severity: 'warning',
        message: `${nameOf(part)} reaches ${both(temperature.quantity)}, lies bare and within reach; over ${kelvin(hotK)} a guard or lagging is good practice per ABYC P-1. It burns whoever touches it and chars what lies near; lag or guard it.`,
        figures: { temperature: fahrenheit(temperature.quantity.si), limit: fahrenheit(hotK) },
        corrections: [{ kind: 'set-fact', title: `Record ${part.id} as lagged`, component: part, property: 'lagged', value: 'yes' }],
        draft: {
            title: `Bare hot part ${part.title ?? part.id}`,
            urgency: 'in-upkeep',
            seen: `${part.title ?? 'The part'} (${part.id}) reached ${temperatureSeen(point)} and lies bare within reach.`,
            because: `Over ${kelvin(hotK)} a bare part burns whoever touches it and chars what lies near.`,
            recommend: `Lag ${part.id}, or fit a guard.`,
            cites: [['ABYC P-1']],
        },
    };
}

/** Like parts of the two sides whose temperatures differ; asks for the engine speed where that would decide. */
function sidesApart(record: SurveyRecord, points: readonly HotPoint[]): Raised[] {
    return [...new Set(points.map(({ part }) => part.kind))].flatMap(kind => {
        const [port, starboard] = (['port', 'starboard'] as const).map(side => points.filter(({ part }) => part.kind === kind && sideOf(part) === side));
        if (!port || !starboard || new Set(port.map(p => p.part)).size !== 1 || new Set(starboard.map(p => p.part)).size !== 1) {
            return [];
        }
        const pairs = port.flatMap(p => starboard.map(s => [p, s] as const)).filter(([p, s]) => Math.abs(p.temperature.quantity.si - s.temperature.quantity.si) > sidesApartK + 1e-6);
        const like = pairs.find(([p, s]) => p.rotation && s.rotation && isLikeRotation(p.rotation.quantity.si, s.rotation.quantity.si));
        const open = pairs.find(([p, s]) => !p.rotation || !s.rotation);
        return like ? [apartProblem(...like)] : open ? [askRotation(...open)] : [];
    });
}

function askRotation(p: HotPoint, s: HotPoint): Raised {
    const open = p.rotation ? s : p;
    return {
        components: [p.part, s.part], at: open.temperature.fact.span, severity: 'hint',
        message: `${nameOf(p.part)} reaches ${both(p.temperature.quantity)} and ${nameOf(s.part)} ${both(s.temperature.quantity)}; record the rotation at which each was taken to tell whether one side runs hot.`,
    };
}

function apartProblem(p: HotPoint, s: HotPoint): Raised {
    const [hot, cool] = p.temperature.quantity.si > s.temperature.quantity.si ? [p, s] : [s, p];
    const differenceK = hot.temperature.quantity.si - cool.temperature.quantity.si;
    const apart = `${Math.round(differenceK * 18) / 10} F (${Math.round(differenceK * 10) / 10} K)`;
    const at = hot.rotation ? both(hot.rotation.quantity) : '';
    const atSeen = hot.row ? at : `{${hot.part.id}.rotation}`;
    return {
        components: [hot.part, cool.part],
        at: hot.temperature.fact.span,
        severity: 'warning',
        message: `At ${at} ${nameOf(hot.part)} reaches ${both(hot.temperature.quantity)} and ${nameOf(cool.part)} ${both(cool.temperature.quantity)}, ${apart} apart, where the two sides keep within 20 F (11 K). The hotter side lacks water or works harder; look to its pump, elbow and heat exchanger.`,
        figures: { hot: fahrenheit(hot.temperature.quantity.si), cool: fahrenheit(cool.temperature.quantity.si) },
        related: [{ message: `The temperature of ${cool.part.id}`, span: cool.temperature.fact.span }],
        draft: {
            title: `Exhaust ${hot.part.id} runs hotter than ${cool.part.id}`,
            urgency: 'in-upkeep',
            seen: `At ${atSeen} of the engine ${hot.part.id} reached ${temperatureSeen(hot)} and ${cool.part.id} ${temperatureSeen(cool)}, ${apart} apart.`,
            because: 'Two sides at like engine speed keep within 20 F (11 K); the hotter one lacks water or works harder.',
            recommend: `Overhaul the raw-water pump of the side of ${hot.part.id}, open its injection elbow and heat exchanger, and measure both sides again at like engine speed.`,
        },
    };
}
