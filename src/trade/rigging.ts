/**
 * Standing rigging and chainplates by age.
 *
 * About 10 years are commonly asked by insurers and 15 accepted by many; terms from 10 to 20 years are in use (owners'
 * forums, published; practice). The terms by which Garboard judges are yardsticks; what stands here is what does not
 * depend on them.
 */

/** Past this age rigging is more urgent, whatever its term (practice). */
export const veryOldYears = 20;
/** A rigger's report speaks for rigging for this long (practice). */
export const reportMonths = 24;
/** Stainless chainplates never drawn are doubtful past this age (practice). */
export const chainplateYears = 25;

export type RiggingStep = 'within' | 'old' | 'very-old';

/** Of rigging fitted on a date, at another: old past its term, very old past 20 years too. */
export function riggingStep(fitted: KnownDate, on: KnownDate, termMonths: number): RiggingStep {
    return !isPastTerm(fitted, on, termMonths) ? 'within' : isPastTerm(fitted, on, veryOldYears * 12) ? 'very-old' : 'old';
}

/** A date of the calendar, as exactly as it is known. */
export interface KnownDate {
    readonly year: number;
    /** 1 to 12. */
    readonly month: number;
    readonly day?: number;
    readonly precision: 'day' | 'month' | 'year';
}

/**
 * Whether more than so many calendar months lie between two dates: from the last day the earlier one allows to the first
 * day the later one does, so that no age is overstated. A term ends on the same day of the month, or on the last one
 * where the month lacks it.
 */
export function isPastTerm(from: KnownDate, to: KnownDate, months: number): boolean {
    const month = from.precision === 'year' ? 12 : from.month;
    const day = from.precision === 'day' ? from.day ?? 1 : daysIn(from.year, month);
    const dueMonth = from.year * 12 + month - 1 + months;
    const [dueYear, dueIn] = [Math.floor(dueMonth / 12), dueMonth % 12 + 1];
    const dueDay = Math.min(day, daysIn(dueYear, dueIn));
    const first = Date.UTC(to.year, to.precision === 'year' ? 0 : to.month - 1, to.precision === 'day' ? to.day ?? 1 : 1);
    return first > Date.UTC(dueYear, dueIn - 1, dueDay);
}

function daysIn(year: number, month: number): number {
    return new Date(Date.UTC(year, month, 0)).getUTCDate();
}
