/** The way water takes from an opening of the hull inward: what closes it, how narrow it is, where it ends. */
import { computedBoth, both } from '../phrasing.js';
import { flagOf, isKind, ofKind, siOf, wordOf, yardstick, type Component, type Run, type SurveyRecord, runsThrough } from '../../record/model.js';
import { narrowestBoreM } from '../../record/computed.js';
import { inwardFrom } from '../hoses/waterline.js';
import { defaultDischargeCoefficient, inflowM3s } from '../../trade/orifice-inflow.js';
import { pumpFlow } from '../bilge/pump-flow.js';
import type { ProblemFigure } from '../contract.js';

export interface Path {
    readonly opening: Component;
    readonly run?: Run;
    /** The parts of the run from the opening inward, whichever way it is written; the opening alone without a run. */
    readonly parts: readonly Component[];
    /** Whether the run ends open on the inside; one that ends at the opening is open to the sea. */
    readonly endsOpen: boolean;
    /** The first part that can shut the water off. */
    readonly valve?: Component;
    /** Closed for good or by a cap: nothing flows. */
    readonly isClosed: boolean;
    readonly isCapped: boolean;
}

/** How an opening stands that is not closed off as it should be. */
export type OpenState = 'open' | 'plug-in-hose' | 'valve-shut';

/** Depth of an opening below the waterline, m; undefined where it is not below or not recorded. */
export function depthM(opening: Component): number | undefined {
    const depth = siOf(opening, 'below-waterline');
    return depth !== undefined && depth > 0 ? depth : undefined;
}

const closedForGood = new Set(['blanked', 'glassed-over', 'welded']);

export function pathsFrom(record: SurveyRecord, opening: Component): Path[] {
    const closure = wordOf(opening, 'closure');
    const runs = runsAt(record, opening);
    const path = (run?: Run): Path => {
        const parts = run ? inwardFrom(opening, run) : [opening];
        const blank = parts.find(c => isKind(record, c, 'blank'));
        const isCapped = closure === 'capped' || run?.end === 'capped' || (blank !== undefined && isKind(record, blank, 'cap'));
        const isClosed = isCapped || (closure !== undefined && closedForGood.has(closure)) || run?.end === 'blanked' || blank !== undefined;
        const valve = parts.find(c => canShut(record, c)) ?? (run ? undefined : valveServing(record, opening));
        return { opening, parts, isClosed, isCapped, endsOpen: run?.end === 'open' && run.components[0] === opening, ...(run ? { run } : {}), ...(valve ? { valve } : {}) };
    };
    return runs.length > 0 ? runs.map(path) : [path()];
}

/** The runs that begin or end at an opening. */
function runsAt(record: SurveyRecord, opening: Component): Run[] {
    return runsThrough(record, opening).filter(run => run.components[0] === opening || run.components.at(-1) === opening);
}

/** The valve recorded as serving an opening, where no run tells of it. */
function valveServing(record: SurveyRecord, opening: Component): Component | undefined {
    return ofKind(record, 'valve').find(valve => canShut(record, valve) && (valve.facts.get('serves')?.values.some(v => v.type === 'component' && v.id === opening.id) ?? false));
}

/** Whether a part can shut water off: a check valve lets it back past grit, a diverter only sends it another way. */
function canShut(record: SurveyRecord, part: Component): boolean {
    const pattern = wordOf(part, 'pattern');
    return isKind(record, part, 'valve') && !isKind(record, part, 'check-valve') && !isKind(record, part, 'y-valve') && pattern !== 'check-valve' && pattern !== 'diverter';
}

/** Openings through which the sea could reach the inside: transducers and drain plugs carry no plumbing, but a transducer can be drawn. */
export function plumbedOpenings(record: SurveyRecord, which?: 'with-transducers'): Component[] {
    return ofKind(record, 'hull-opening').filter(c => !isKind(record, c, 'drain-plug') && (which === 'with-transducers' || !isKind(record, c, 'transducer')));
}

export interface Inflow {
    readonly flowM3s: number;
    readonly boreM: number;
    readonly depthM: number;
    readonly text: string;
    readonly figures: Readonly<Record<string, ProblemFigure>>;
}

/** What a path admits if it stands open inside; undefined where bore or depth is not recorded. */
export function inflowOf(record: SurveyRecord, path: Path): Inflow | undefined {
    const depth = depthM(path.opening);
    const boreM = narrowestBoreM(record, path.opening, path.run);
    if (depth === undefined || boreM === undefined) {
        return undefined;
    }
    const { si: dischargeCoefficient, isFirms } = yardstick(record, 'flow-coefficient');
    const flowM3s = inflowM3s({ boreM, depthM: depth, dischargeCoefficient });
    return {
        flowM3s, boreM, depthM: depth,
        text: `about ${computedBoth(flowM3s, 'flow')} (narrowest bore ${computedBoth(boreM, 'length')}, sharp-edged, coefficient ${dischargeCoefficient}${isFirms ? ' as the firm takes it' : ''})`,
        figures: {
            inflow: { value: Math.round(flowM3s * 60_000 * 10) / 10, unit: 'L/min' }, bore: { value: Math.round(boreM * 1e5) / 100, unit: 'mm' },
            depth: { value: Math.round(depth * 1e4) / 10, unit: 'mm' }, coefficient: { value: dischargeCoefficient, unit: '' },
        },
    };
}

/**
 * The inflow in drafted prose: a reference, so that it follows the facts; a figure where the opening feeds several runs
 * or stands at the end of one, or where the firm takes another coefficient than the computed fact does.
 */
export function inflowInProse(record: SurveyRecord, { opening }: Path, inflow: Inflow): string {
    const runs = runsAt(record, opening);
    const isComputed = yardstick(record, 'flow-coefficient').si === defaultDischargeCoefficient && runs.length < 2 && runs.every(run => run.components[0] === opening);
    return isComputed ? `about {${opening.id}.flooding-rate}` : inflow.text;
}

/** " If its hose fails, the opening admits about 28.6 gpm …" or nothing. */
export function admits(record: SurveyRecord, path: Path, when: string): string {
    const inflow = inflowOf(record, path);
    return inflow ? ` ${when} admits ${inflow.text}.` : '';
}

export function depthText(opening: Component): string {
    const value = opening.facts.get('below-waterline')?.values[0];
    return value?.type === 'quantity' ? `${both(value)} below the waterline` : 'below the waterline';
}

export interface Pumps {
    readonly pumps: readonly Component[];
    readonly flowM3s: number;
    /** Whether any figure is a share of a rating, the rule of thumb. */
    readonly isDerated: boolean;
    /** Power pumps with neither rating nor real flow. */
    readonly unknown: readonly Component[];
    /** Power pumps that count nothing, and why: they do not work, or their float switch does not. */
    readonly idle: readonly Component[];
    readonly unstarted: readonly Component[];
}

/**
 * What the power pumps aboard move: the real flow where recorded, else as estimated at its lift, else a share of the rating. A pump that does not work, or
 * whose float switch does not, counts nothing.
 */
export function pumpsAboard(record: SurveyRecord): Pumps {
    const isStarted = (pump: Component) => !ofKind(record, 'float-switch').some(float => wordOf(float, 'works') === 'no'
        && float.facts.get('serves')?.values.some(v => v.type === 'component' && v.id === pump.id));
    const power = powerPumps(record);
    const idle = power.filter(pump => wordOf(pump, 'works') === 'no');
    const unstarted = power.filter(pump => !idle.includes(pump) && !isStarted(pump));
    const pumps = power.filter(pump => !idle.includes(pump) && !unstarted.includes(pump));
    let flow = 0;
    let isDerated = false;
    const unknown: Component[] = [];
    for (const pump of pumps) {
        const moved = pumpFlow(record, pump);
        if (moved) {
            flow += moved.flowM3s;
            isDerated ||= moved.by === 'share';
        } else {
            unknown.push(pump);
        }
    }
    return { pumps, flowM3s: flow, isDerated, unknown, idle, unstarted };
}

export function powerPumps(record: SurveyRecord): Component[] {
    return ofKind(record, 'bilge-pump').filter(pump => !isKind(record, pump, 'manual-bilge-pump'));
}

/** Whether an opening or its run is recorded as out of use. */
export function isOutOfUse({ opening, run }: Path): boolean {
    return flagOf(opening, 'in-use') === false || (run !== undefined && flagOf(run, 'in-use') === false);
}

/**
 * How an opening stands that is left open or closed by less than a cap. A cockpit or deck drain that is in use ends
 * open by its nature, outside the living space.
 */
export function openStateOf(path: Path): OpenState | undefined {
    const { opening, run, valve, parts } = path;
    const closure = wordOf(opening, 'closure');
    const isUnused = isOutOfUse(path);
    if (path.isClosed) {
        return undefined;
    }
    if (closure === 'plug-in-hose' || (closure === 'valve-shut' && isUnused)) {
        return closure;
    }
    if (isUnused && closure === undefined && run && valve && parts.at(-1) === valve && wordOf(valve, 'position') === 'shut') {
        return 'valve-shut'; // Nothing is recorded behind the shut valve.
    }
    const service = (run && wordOf(run, 'service')) ?? wordOf(opening, 'service');
    const drainsOutside = service === 'cockpit-drain' || service === 'deck-drain';
    return (path.endsOpen && (isUnused || !drainsOutside)) || (closure === 'open' && isUnused) ? 'open' : undefined;
}

/** What is known to be wrong with the one thing that could stop the water: nothing there, or a valve that fails it. */
export function weaknessOf({ parts, valve }: Path): string | undefined {
    if (parts.length < 2) {
        return undefined;
    }
    if (!valve) {
        return 'no valve stands in its way';
    }
    const pattern = wordOf(valve, 'pattern');
    const works = wordOf(valve, 'works');
    return works === 'seized' ? `its valve ${valve.id} is seized`
        : flagOf(valve, 'spins') === true ? `the stem of its valve ${valve.id} spins`
            : flagOf(valve, 'shuts-off') === false ? `its valve ${valve.id} does not shut the water off`
                : pattern === 'gate-valve' || pattern === 'globe-valve' ? `its valve ${valve.id} is a ${pattern.replace('-', ' ')}` : undefined;
}
