/**
 * Running hours: what a year brings. Private craft run between about 5 and 800 hours a year (practice); more than the
 * hours that passed no engine runs (calculation).
 */

export const leastHoursAYear = 5;
export const mostHoursAYear = 800;
export const hoursInAYear = 365.2425 * 24;

/** Hours a year between two readings; undefined where no time passed between them. */
export function hoursAYear(hoursRun: number, years: number): number | undefined {
    return years > 0 ? hoursRun / years : undefined;
}

export type HoursStep = 'fewer' | 'usual' | 'more' | 'more-than-passed';

/** How the hours run in some years stand to what is usual. */
export function judgeHours(hoursRun: number, years: number): HoursStep | undefined {
    const rate = hoursAYear(hoursRun, years);
    return rate === undefined ? undefined : rate > hoursInAYear ? 'more-than-passed' : rate > mostHoursAYear ? 'more' : rate < leastHoursAYear ? 'fewer' : 'usual';
}

/** Whether two mentions of one reading agree: within 2 %, or 20 hours of rounding (chosen). */
export function isSameReading(a: number, b: number): boolean {
    return Math.abs(a - b) <= Math.max(20, 0.02 * Math.max(a, b));
}
