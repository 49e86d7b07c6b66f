/** The hull number as recorded, and whether the published rule is the one it follows. */
import { siOf, type Fact, type SurveyRecord } from '../../record/model.js';

/** The rule begins on 1 November 1972. */
const firstYear = 1972;

export interface HullNumberFact {
    readonly written: string;
    readonly fact: Fact;
    /** Built before the rule, or under another country's prefix. */
    readonly isUnderOtherRule: boolean;
}

export function hullNumberOf(record: SurveyRecord): HullNumberFact | undefined {
    const { vessel } = record;
    const fact = vessel?.facts.get('hull-number');
    const value = fact?.values[0];
    if (!vessel || !fact || value?.type !== 'text' || value.prose.text.trim() === '') {
        return undefined;
    }
    const written = value.prose.text.trim();
    const built = siOf(vessel, 'built');
    const signs = written.toUpperCase().replace(/[^A-Z0-9]/g, '');
    const country = /^([A-Z]{2})-/.exec(written.toUpperCase())?.[1] ?? (signs.length === 14 ? /^[A-Z]{2}/.exec(signs)?.[0] : undefined);
    return { written, fact, isUnderOtherRule: (built !== undefined && built <= firstYear) || (country !== undefined && country !== 'US') };
}
