/** What the checks of gear to be carried share: how many are recorded, what is said to be absent, and how one is added. */
import { siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import type { Correction, Urgency } from '../contract.js';

/** How many a component stands for: its quantity, else one. */
export function countOf(component: Component): number {
    return siOf(component, 'quantity') ?? 1;
}

export function totalOf(components: readonly Component[]): number {
    return components.reduce((sum, component) => sum + countOf(component), 0);
}

/** Whether a line of the survey says that such a thing is not aboard. */
export function isSaidAbsent(record: SurveyRecord, what: RegExp): boolean {
    return record.unseen.some(entry => entry.absent && what.test(entry.what));
}

/** Length overall, as the rules of the road count it; else the length of the hull, which is no more. */
export function lengthByTheRulesM(record: SurveyRecord): { readonly m: number; readonly property: 'length-overall' | 'length-on-deck' } | undefined {
    const { vessel } = record;
    for (const property of ['length-overall', 'length-on-deck'] as const) {
        const m = vessel && siOf(vessel, property);
        if (m !== undefined) {
            return { m, property };
        }
    }
    return undefined;
}

/** A correction that adds a component: beside another of its like where there is one. */
export function adding(record: SurveyRecord, beside: Component | undefined, title: string, componentKind: string, idStem: string, facts: readonly (readonly [property: string, value: string])[]): Correction {
    const neighbor = beside ?? [...record.components.values()].at(-1);
    return neighbor
        ? { kind: 'declare', title, beside: neighbor, componentKind, idStem, facts }
        : { kind: 'add-statement', title, lines: [`${componentKind} ${idStem}1 { ${facts.map(([property, value]) => `${property}: ${value}`).join('  ')} }`] };
}

/** One thing wrong with a piece of gear: for the message, for the finding, and what cures it. */
export interface GearFault {
    readonly property: string;
    readonly what: string;
    readonly seen: string;
    readonly remedy: string;
}

/** Offshore, or where the waters are not recorded, before departure; nearer the shore it can wait for the workshop. */
export function offshoreUrgency(record: SurveyRecord): { readonly urgency: Urgency; readonly days?: number } {
    const waters = record.vessel && wordOf(record.vessel, 'used-on');
    return waters === 'inland' || waters === 'coastal' ? { urgency: 'within-days', days: 30 } : { urgency: 'before-departure' };
}
