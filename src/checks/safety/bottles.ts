/** The portable extinguishers recorded aboard, by what they count for, and the length the rule of carriage goes by. */
import { ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';

/** Last model year on which the older markings B-I and B-II still count. */
const lastOlderModelYear = 2017;

export interface Bottle {
    readonly component: Component;
    readonly count: number;
    /** What it counts for; undefined where its rating counts for nothing, or is not recorded. */
    readonly counts: 'b5' | 'b20' | undefined;
    /** It carries the older marking, and no year tells whether that still counts. */
    readonly needsYear: boolean;
}

export function bottlesOf(record: SurveyRecord): Bottle[] {
    const year = record.vessel ? siOf(record.vessel, 'model-year') ?? siOf(record.vessel, 'built') : undefined;
    return ofKind(record, 'extinguisher').map(component => {
        const rating = wordOf(component, 'rating');
        const isOlder = rating === 'b-i' || rating === 'b-ii';
        const isLarge = rating === 'b-20' || rating === 'b-ii';
        const isKnown = rating === 'b-5' || rating === 'b-10' || rating === 'b-20' || (isOlder && (year === undefined || year <= lastOlderModelYear));
        return { component, count: siOf(component, 'quantity') ?? 1, counts: isKnown ? (isLarge ? 'b20' : 'b5') : undefined, needsYear: isOlder && year === undefined };
    });
}

export function hasFixedSystem(record: SurveyRecord): boolean {
    return ofKind(record, 'fixed-extinguisher').length > 0;
}

/** Length of the hull without fittings where recorded, else overall. */
export function lengthForCarriageM(record: SurveyRecord): number | undefined {
    return record.vessel ? siOf(record.vessel, 'length-on-deck') ?? siOf(record.vessel, 'length-overall') : undefined;
}

/** Whether the bottles satisfy one of the ways; a 20-B may stand for a 5-B. */
export function satisfies(ways: readonly { readonly b5: number; readonly b20: number }[], bottles: readonly Bottle[]): boolean {
    const large = bottles.reduce((sum, bottle) => sum + (bottle.counts === 'b20' ? bottle.count : 0), 0);
    const small = bottles.reduce((sum, bottle) => sum + (bottle.counts === 'b5' ? bottle.count : 0), 0);
    return ways.some(way => large >= way.b20 && small + (large - way.b20) >= way.b5);
}
