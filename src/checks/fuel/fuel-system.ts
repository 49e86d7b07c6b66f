/** What fuel a part of the fuel system holds, and what the checks of fuel say alike. */
import { isKind, ofKind, wordOf, type Component, type Run, type SurveyRecord } from '../../record/model.js';
import type { Urgency } from '../contract.js';

export type Fuel = 'gasoline' | 'diesel';

const asFuel = (word: string | undefined): Fuel | undefined => (word === 'gasoline' || word === 'diesel' ? word : undefined);

/** Fuel of the vessel's propulsion, or else of all her engines where they burn the same. */
export function vesselFuel(record: SurveyRecord): Fuel | undefined {
    const stated = asFuel(record.vessel ? wordOf(record.vessel, 'fuel') : undefined);
    const burnt = new Set(ofKind(record, 'engine').map(engine => asFuel(wordOf(engine, 'fuel'))));
    return stated ?? (burnt.size === 1 ? [...burnt][0] : undefined);
}

/** Fuel in a run: that of the tank in it, else of the engine in it, else of the vessel. */
export function fuelOf(record: SurveyRecord, run: Run | undefined): Fuel | undefined {
    const stated = (kind: 'fuel-tank' | 'engine') => run?.components.filter(part => isKind(record, part, kind)).map(part => asFuel(wordOf(part, 'fuel'))).find(fuel => fuel !== undefined);
    return stated('fuel-tank') ?? stated('engine') ?? vesselFuel(record);
}

export function fuelOfTank(record: SurveyRecord, tank: Component): Fuel | undefined {
    return asFuel(wordOf(tank, 'fuel')) ?? vesselFuel(record);
}

/** Before a buyer accepts her where she is surveyed for one; else as given. */
export function beforeCompletion(record: SurveyRecord, otherwise: { readonly urgency: Urgency; readonly days?: number }): { readonly urgency: Urgency; readonly days?: number } {
    return record.survey?.surveyKind === 'pre-purchase' ? { urgency: 'before-completion' } : otherwise;
}
