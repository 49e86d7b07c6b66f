/** A gasoline line that would siphon the tank empty if it broke. */
import { needsSecondValve, secondValveLengthM } from '../../trade/fuel-line.js';
import { anyValue, flagOf, isKind, nameOf, ofKind, runsThrough, siOf, wordOf, type Component, type Run, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { lengthBoth, listed } from '../phrasing.js';
import { fuelOf } from './fuel-system.js';

const rule = '33 CFR 183.568';

export const fuelSiphonsOrNoValve = defineCheck({
    id: 'fuel-siphons-or-no-valve',
    group: 'fuel',
    severity: 'error',
    title: 'Fuel would siphon out of the tank',
    why: 'Where a line lies below the top of the tank, one break empties the tank into the bilge.',
    needs: [
        'run: service fuel-feed, from a fuel-tank', 'fuel-hose, fuel-line, fuel-pump or fuel-filter: below-tank-top', 'anti-siphon-device, or fuel-valve: drive, at-tank, at-engine, remote',
        'fuel-tank: top-below-engine-inlet', 'hose or pipe: length', 'fuel-tank: fuel, or vessel: fuel',
    ],
    computes: 'Gasoline, where a part of the line lies below the top of the tank: no fault if an anti-siphon device or electric valve stands before it. Else no fault only if the top of the tank lies below the engine’s inlet, the line is metal or A1 hose, a manual valve sits at the tank and is worked from outside, and over 12 ft of line a second one at the engine.',
    sources: [{ text: 'line above the tank, or anti-siphon device, or valves', standard: '33 CFR 183', clause: '183.568', provenance: 'published' }],
    limits: [
        'The rule binds builders of boats with gasoline engines; on a boat in service it is good practice. Lines to outboards are outside it and left alone.',
        'Whether an anti-siphon device works is not known to it.',
        'Nothing is said of diesel, whose lines commonly lie low.',
        'The line is the run from the tank on; a line recorded in two runs is judged as far as the first goes.',
        'A line in no run that lies low is a fault only where the survey says that no device is fitted (absent), else the device is asked for.',
        'Hose whose mark is not recorded is asked for by fuel-hose-class and not held against the line here.',
    ],
    examples: [{
        name: 'line below the tank top with nothing to stop it',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-tank T1
fuel-hose FH1 { class: fuel-a1  below-tank-top: yes }
engine E1
run F1 "Fuel feed" { service: fuel-feed }: T1 -> FH1 -> E1
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-tank T1
anti-siphon-device AS1
fuel-hose FH1 { class: fuel-a1  below-tank-top: yes }
engine E1
run F1 "Fuel feed" { service: fuel-feed }: T1 -> AS1 -> FH1 -> E1
`,
        correction: 'Record an anti-siphon device at T1',
    }, {
        name: 'long line with one valve',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { top-below-engine-inlet: yes }
fuel-valve V1 { at-tank: yes  remote: yes }
fuel-hose FH1 { class: fuel-a1  below-tank-top: yes  length: 14 ft }
engine E1
run F1 "Fuel feed" { service: fuel-feed }: T1 -> V1 -> FH1 -> E1
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { top-below-engine-inlet: yes }
fuel-valve V1 { at-tank: yes  remote: yes }
fuel-hose FH1 { class: fuel-a1  below-tank-top: yes  length: 14 ft }
fuel-valve V2 { at-engine: yes }
engine E1
run F1 "Fuel feed" { service: fuel-feed }: T1 -> V1 -> FH1 -> V2 -> E1
`,
    }],
    silent: [
        { name: 'line above the tank top', text: 'vessel "Marram" { fuel: gasoline }\nfuel-tank T1\nfuel-hose FH1 { class: fuel-a1  below-tank-top: no }\nengine E1\nrun F1 { service: fuel-feed }: T1 -> FH1 -> E1\n' },
        { name: 'the same line on diesel', text: 'vessel "Marram" { fuel: diesel }\nfuel-tank T1\nfuel-hose FH1 { class: fuel-a1  below-tank-top: yes }\nengine E1\nrun F1 { service: fuel-feed }: T1 -> FH1 -> E1\n' },
        { name: 'electric stop valve at the tank', text: 'vessel "Marram" { fuel: gasoline }\nfuel-tank T1\nfuel-valve V1 { drive: electric }\nfuel-hose FH1 { class: fuel-a1  below-tank-top: yes }\nengine E1\nrun F1 { service: fuel-feed }: T1 -> V1 -> FH1 -> E1\n' },
        { name: 'one valve on a line of 12 ft', text: 'vessel "Marram" { fuel: gasoline }\nfuel-tank T1 { top-below-engine-inlet: yes }\nfuel-valve V1 { remote: yes }\nfuel-hose FH1 { class: fuel-a1  below-tank-top: yes  length: 12 ft }\nengine E1\nrun F1 { service: fuel-feed }: T1 -> V1 -> FH1 -> E1\n' },
    ],
    run(record, raise) {
        for (const run of record.runs) {
            const line = lineOf(record, run);
            const problem = line && judge(record, line);
            if (problem) {
                raise(problem);
            }
        }
        const loose = looseLine(record);
        if (loose) {
            raise(loose);
        }
    },
});

/** Words of an absent entry that mean a device against siphoning. */
const deviceWords = /anti-?\s?si?y?phon/i;

/** A feed line in no run that lies below the top of the tank, where no device or valve is recorded. */
function looseLine(record: SurveyRecord): Raised | undefined {
    const stops = [...ofKind(record, 'anti-siphon-device'), ...ofKind(record, 'fuel-valve')];
    const engines = ofKind(record, 'engine');
    const isOfOutboard = engines.length > 0 && engines.every(engine => isKind(record, engine, 'outboard'));
    const [low] = [...ofKind(record, 'fuel-hose'), ...ofKind(record, 'fuel-line'), ...ofKind(record, 'fuel-pump'), ...ofKind(record, 'fuel-filter')].filter(part =>
        flagOf(part, 'below-tank-top') === true && runsThrough(record, part).length === 0 && [undefined, 'fuel-feed'].includes(wordOf(part, 'service')) && fuelOf(record, undefined, part) === 'gasoline');
    if (!low || stops.length > 0 || isOfOutboard) {
        return undefined;
    }
    const tanks = ofKind(record, 'fuel-tank');
    const tank = tanks.length === 1 ? tanks[0] : undefined;
    return record.unseen.some(({ absent, what }) => absent && deviceWords.test(what))
        ? problem({ low, faults: ['no anti-siphon device is fitted'], corrections: [], ...(tank ? { tank } : {}) })
        : hint(low, `${nameOf(low)} lies below the top of its tank; record what stops it (an anti-siphon-device or fuel-valve), or that nothing does (absent "Anti-siphon device").`);
}

interface Line {
    readonly run: Run;
    readonly tank: Component;
    /** Index of the tank in the run. */
    readonly start: number;
    readonly parts: readonly Component[];
    readonly low: readonly Component[];
    readonly isGasoline: boolean | undefined;
}

/** The line from a tank to an engine; undefined for other runs, and for lines to outboards. */
function lineOf(record: SurveyRecord, run: Run): Line | undefined {
    const service = wordOf(run, 'service');
    const start = run.components.findIndex(part => isKind(record, part, 'fuel-tank'));
    const tank = run.components[start];
    const parts = run.components.slice(start + 1);
    const isFeed = service === undefined ? parts.some(part => isKind(record, part, 'engine') || isKind(record, part, 'carburetor')) : service === 'fuel-feed';
    if (!tank || !isFeed || parts.some(part => isKind(record, part, 'outboard'))) {
        return undefined;
    }
    const fuel = fuelOf(record, run);
    return { run, tank, start, parts, low: parts.filter(part => flagOf(part, 'below-tank-top') === true), isGasoline: fuel === undefined ? undefined : fuel === 'gasoline' };
}

function judge(record: SurveyRecord, line: Line): Raised | undefined {
    if (line.isGasoline === false || isStopped(record, line)) {
        return undefined;
    }
    const [lowest] = line.low;
    if (!lowest) {
        const unknown = line.parts.find(part => (isKind(record, part, 'fuel-hose') || isKind(record, part, 'fuel-line')) && flagOf(part, 'below-tank-top') === undefined);
        return unknown && line.isGasoline
            ? hint(unknown, `Record whether ${nameOf(unknown)} lies below the top of ${nameOf(line.tank)} (below-tank-top), to tell whether a break in it would empty the tank.`)
            : undefined;
    }
    if (line.isGasoline === undefined) {
        return hint(line.tank, `${nameOf(lowest)} lies below the top of ${nameOf(line.tank)}; record the fuel of the tank, or of the vessel, to tell whether a device must stop it.`);
    }
    const { faults, missing } = valveOption(record, line);
    if (faults.length > 0) {
        return ofRun(line, lowest, faults);
    }
    return missing.length > 0
        ? hint(line.tank, `${nameOf(lowest)} lies below the top of ${nameOf(line.tank)} and a valve alone is to stop it; record ${listed(missing)}, to tell whether that will do.`)
        : undefined;
}

/** An anti-siphon device or electric valve at the tank, or before every part that lies low. */
function isStopped(record: SurveyRecord, { parts, tank, low }: Line): boolean {
    const stops = (part: Component) => isKind(record, part, 'anti-siphon-device') || (isKind(record, part, 'fuel-valve') && wordOf(part, 'drive') === 'electric');
    const isOnTank = (part: Component) => part.facts.get('serves')?.values.some(value => value.type === 'component' && value.id === tank.id) ?? false;
    const before = parts.slice(0, Math.min(parts.length, ...low.map(part => parts.indexOf(part))));
    return before.some(stops) || [...ofKind(record, 'anti-siphon-device'), ...ofKind(record, 'fuel-valve')].some(part => stops(part) && (isOnTank(part) || (parts.includes(part) && flagOf(part, 'at-tank') === true)));
}

interface Option {
    readonly faults: readonly string[];
    readonly missing: readonly string[];
}

/** What speaks against valves alone, and what is not recorded of them. */
function valveOption(record: SurveyRecord, line: Line): Option {
    const { tank, parts } = line;
    const valves = parts.filter(part => isKind(record, part, 'fuel-valve'));
    const atTank = valves.find(valve => flagOf(valve, 'at-tank') === true) ?? (parts[0] === valves[0] && flagOf(valves[0] ?? tank, 'at-tank') !== false ? valves[0] : undefined);
    if (!atTank) {
        return { faults: ['no anti-siphon device, electric stop valve or valve at the tank stands before it'], missing: [] };
    }
    const soft = parts.find(part => isKind(record, part, 'hose') && !['fuel-a1', undefined].includes(wordOf(part, 'class')));
    const isBelow = flagOf(tank, 'top-below-engine-inlet');
    const isRemote = flagOf(atTank, 'remote');
    const { lengthM, isWhole } = lengthOf(record, parts);
    const hasSecond = valves.some(valve => valve !== atTank && (flagOf(valve, 'at-engine') ?? isLastBeforeEngine(record, parts, valve)));
    const faults = [
        ...(isBelow === false ? [`the top of ${tank.id} lies above the engine’s inlet, so that valve ${atTank.id} alone does not do`] : []),
        ...(isRemote === false ? [`valve ${atTank.id} at the tank cannot be worked from outside the space it is in`] : []),
        ...(soft ? [`${soft.id} is not A1 hose, as the line must be where valves alone stop it`] : []),
        ...(!hasSecond && needsSecondValve(lengthM) ? [`the line is ${isWhole ? '' : 'at least '}${lengthBoth(lengthM)} long, over ${lengthBoth(secondValveLengthM)}, and no second valve sits at the engine`] : []),
    ];
    const missing = [
        ...(isBelow === undefined ? [`top-below-engine-inlet of ${tank.id}`] : []),
        ...(isRemote === undefined ? [`remote of ${atTank.id}`] : []),
        ...(!hasSecond && !isWhole ? ['the lengths of the line'] : []),
    ];
    return { faults, missing };
}

function lengthOf(record: SurveyRecord, parts: readonly Component[]): { readonly lengthM: number; readonly isWhole: boolean } {
    const lines = parts.filter(part => isKind(record, part, 'hose') || isKind(record, part, 'pipe'));
    const lengths = lines.map(part => siOf(part, 'length'));
    return { lengthM: lengths.reduce((sum: number, length) => sum + (length ?? 0), 0), isWhole: lines.length > 0 && lengths.every(length => length !== undefined) };
}

function isLastBeforeEngine(record: SurveyRecord, parts: readonly Component[], valve: Component): boolean {
    const next = parts[parts.indexOf(valve) + 1];
    return next !== undefined && (isKind(record, next, 'engine') || isKind(record, next, 'carburetor'));
}

function hint(component: Component, message: string): Raised {
    return { components: [component], at: component.idSpan, severity: 'hint', message };
}

function ofRun({ run, tank, start }: Line, low: Component, faults: readonly string[]): Raised {
    const joint = run.joints[start];
    const corrections: Correction[] = joint ? [{ kind: 'insert-in-run', title: `Record an anti-siphon device at ${tank.id}`, joint, componentKind: 'anti-siphon-device', idStem: 'AS', facts: [['at-tank', 'yes']] }] : [];
    return problem({ low, tank, faults, corrections });
}

interface Siphon {
    readonly low: Component;
    readonly tank?: Component;
    readonly faults: readonly string[];
    readonly corrections: readonly Correction[];
}

function problem({ low, tank, faults, corrections }: Siphon): Raised {
    const its = tank ? `gasoline tank ${tank.id}` : 'its gasoline tank';
    const why = 'If the line breaks, the tank siphons empty into the boat';
    return {
        components: tank ? [low, tank] : [low],
        at: low.facts.get('below-tank-top')?.span ?? low.idSpan,
        message: `${nameOf(low)} lies below the top of ${its}, and ${listed(faults)} (good practice per ${rule}). ${why}; fit an anti-siphon device at the tank, or the valves that are missing.`,
        ...(tank ? { related: [{ message: `The tank, ${tank.id}`, span: tank.idSpan }] } : {}),
        corrections,
        draft: {
            title: `Fuel would siphon out of ${tank ? `tank ${tank.id}` : 'the tank'}`,
            urgency: 'before-use',
            seen: `Part of the gasoline line from ${tank ? `tank ${tank.id}` : 'the tank'}, ${nameOf(low)}, lies below the top of the tank, and ${listed(faults)}.`,
            because: `${why}. By good practice, per the rule for builders, the line lies above the tank, or a device or valves stop it.`,
            recommend: `Fit an anti-siphon device or an electric stop valve at ${tank ? tank.id : 'the tank'}, or lead the line above the tank.${tank && anyValue(tank, 'top-below-engine-inlet') ? ' Where valves are to do instead, fit those that are missing.' : ''}`,
            cites: [['33 CFR 183', '183.568']],
        },
    };
}
