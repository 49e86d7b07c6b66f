/** What fuel a part of the fuel system holds, and what the checks of fuel say alike. */
import { isKind, ofKind, wordOf, type Component, type Run, type SurveyRecord } from '../../record/model.js';
import type { Urgency } from '../contract.js';

export type Fuel = 'gasoline' | 'diesel';

const asFuel = (word: string | undefined): Fuel | undefined => (word === 'gasoline' || word === 'diesel' ? word : undefined);

/** Fuel of the vessel's propulsion, or else of all her engines, or else of all her fuel tanks, where they are alike; or else by her kind. */
export function vesselFuel(record: SurveyRecord): Fuel | undefined {
    const stated = asFuel(record.vessel ? wordOf(record.vessel, 'fuel') : undefined);
    if (stated) {
        return stated;
    }
    for (const kind of ['engine', 'fuel-tank'] as const) {
        const held = new Set(ofKind(record, kind).map(part => asFuel(wordOf(part, 'fuel'))).filter(fuel => fuel !== undefined));
        if (held.size > 0) {
            return held.size === 1 ? [...held][0] : undefined;
        }
    }
    return record.vessel && wordOf(record.vessel, 'type') === 'gasoline-cruiser' ? 'gasoline' : undefined;
}

/** Fuel in a run: that of the tank in it, else of the engine in it, else of what a part serves, else of the vessel. */
export function fuelOf(record: SurveyRecord, run: Run | undefined, part?: Component): Fuel | undefined {
    const stated = (kind: 'fuel-tank' | 'engine') => run?.components.filter(other => isKind(record, other, kind)).map(other => asFuel(wordOf(other, 'fuel'))).find(fuel => fuel !== undefined);
    const served = part?.facts.get('serves')?.values[0];
    const servedPart = served?.type === 'component' ? record.components.get(served.id) : undefined;
    return stated('fuel-tank') ?? stated('engine') ?? (servedPart && asFuel(wordOf(servedPart, 'fuel'))) ?? vesselFuel(record);
}

export function fuelOfTank(record: SurveyRecord, tank: Component): Fuel | undefined {
    return asFuel(wordOf(tank, 'fuel')) ?? vesselFuel(record);
}

/** Before a buyer accepts her where she is surveyed for one; else as given. */
export function beforeCompletion(record: SurveyRecord, otherwise: { readonly urgency: Urgency; readonly days?: number }): { readonly urgency: Urgency; readonly days?: number } {
    return record.survey?.surveyKind === 'pre-purchase' ? { urgency: 'before-completion' } : otherwise;
}
