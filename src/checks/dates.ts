/** Dates marked on gear against the day of the survey. A month runs to its last day, a year to the end of December. */
import { firstDay, lastDay } from './hoses/age.js';
import type { DateFigure } from '../record/model.js';

const dayMs = 86_400_000;

/** Whole days from the day of the survey to the last day of a marked date; negative once it has passed. */
export function daysLeft(marked: DateFigure, today: DateFigure): number {
    return Math.floor((lastDay(marked) - firstDay(today)) / dayMs);
}

export function hasPassed(marked: DateFigure, today: DateFigure): boolean {
    return daysLeft(marked, today) < 0;
}

/** Whether more than so many months lie between the last day of a date and the day of the survey. */
export function isOlderThanMonths(since: DateFigure, months: number, today: DateFigure): boolean {
    const from = new Date(lastDay(since));
    const due = Date.UTC(from.getUTCFullYear(), from.getUTCMonth() + months, 1);
    const lastOfMonth = new Date(Date.UTC(from.getUTCFullYear(), from.getUTCMonth() + months + 1, 0)).getUTCDate();
    return firstDay(today) > due + (Math.min(from.getUTCDate(), lastOfMonth) - 1) * dayMs;
}
