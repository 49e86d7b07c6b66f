/** Ages at the time of the survey. Dates known to the month or year count from their last day: no age is overstated. */
import { valueOf, type DateFigure, type SurveyRecord } from '../../record/model.js';

/** The day she was last attended; else the day the report was issued. */
export function surveyedOn(record: SurveyRecord): DateFigure | undefined {
    const { survey } = record;
    return survey?.attendances.findLast(attendance => attendance.date !== undefined)?.date ?? (survey ? valueOf(survey, 'issued')?.figure : undefined);
}

/** Years from a date to another, at least; the earlier date counts as its last day, the later one as its first. */
export function yearsBetween(from: DateFigure, to: DateFigure): number {
    return (firstDay(to) - lastDay(from)) / (365.2425 * 86_400_000);
}

export function firstDay({ year, month, day, precision }: DateFigure): number {
    return Date.UTC(year, precision === 'year' ? 0 : month - 1, precision === 'day' ? day ?? 1 : 1);
}

export function lastDay({ year, month, day, precision }: DateFigure): number {
    return precision === 'day' ? Date.UTC(year, month - 1, day ?? 1) : precision === 'month' ? Date.UTC(year, month, 0) : Date.UTC(year, 12, 0);
}
