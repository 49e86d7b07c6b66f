/** The hull number as recorded, and whether the published rule is the one it follows. */
import { ofKind, siOf, valueOf, type Component, type Fact, type SurveyRecord } from '../../record/model.js';
import type { Correction } from '../contract.js';

/** The rule begins on 1 November 1972. */
const firstYear = 1972;

export interface HullNumberFact {
    readonly written: string;
    readonly fact: Fact;
    /** How drafted prose refers to it. */
    readonly reference: string;
    /** Where it was read, if the vessel does not record it herself. */
    readonly component?: Component;
    /** Built before the rule, or under another country’s prefix. */
    readonly isUnderOtherRule: boolean;
}

/** The number of the vessel, else as read at the first place on the hull. */
export function hullNumberOf(record: SurveyRecord): HullNumberFact | undefined {
    const { vessel } = record;
    const own = vessel && valueOf(vessel, 'hull-number')?.prose.text.trim();
    const read = own ? undefined : ofKind(record, 'hull-number').find(one => valueOf(one, 'text')?.prose.text.trim());
    const fact = own ? vessel?.facts.get('hull-number') : read?.facts.get('text');
    const written = own ?? (read && valueOf(read, 'text')?.prose.text.trim());
    if (!fact || !written) {
        return undefined;
    }
    const built = vessel && siOf(vessel, 'built');
    const signs = written.toUpperCase().replace(/[^A-Z0-9]/g, '');
    const country = /^([A-Z]{2})-/.exec(written.toUpperCase())?.[1] ?? (signs.length === 14 ? /^[A-Z]{2}/.exec(signs)?.[0] : undefined);
    return {
        written, fact, reference: read ? `{${read.id}.text}` : '{vessel.hull-number}', ...(read ? { component: read } : {}),
        isUnderOtherRule: (built !== undefined && built <= firstYear) || (country !== undefined && country !== 'US'),
    };
}

/** A correction that records another reading where the number stands. */
export function rereading({ component }: HullNumberFact, title: string, text: string): Correction {
    return component
        ? { kind: 'set-fact', title, component, property: 'text', value: `"${text}"` }
        : { kind: 'set-vessel-fact', title, property: 'hull-number', value: `"${text}"` };
}
