/** What a host knows of things outside the text of a survey: its picture files, and the reports issued earlier. */
import type { IssuedReport, OutsideFacts, SurveyRecord } from '../record/model.js';
import type { PhotoSource } from './assemble.js';
import { readPhotoFacts } from './photo-facts.js';

/** Where issued reports are found. */
export interface ReportShelf {
    /** The report that a survey follows, by its number; undefined where there is none to be found. */
    followed(number: string, mainUri: string): Promise<IssuedReport | undefined>;
    /** The last issue of the survey itself. */
    lastIssue(number: string, mainUri: string): Promise<IssuedReport | undefined>;
}

export async function readOutsideFacts(record: SurveyRecord, photos: PhotoSource, shelf?: ReportShelf): Promise<OutsideFacts> {
    const follows = record.survey?.facts.get('follows')?.values[0];
    const earlier = follows?.type === 'text' ? follows.prose.text.trim() : '';
    const own = record.survey?.number ?? '';
    const followed = shelf && earlier !== '' ? await shelf.followed(earlier, record.mainUri) ?? 'not-found' : undefined;
    const lastIssue = shelf && own !== '' ? await shelf.lastIssue(own, record.mainUri) : undefined;
    return { photos: await readPhotoFacts(record, photos), ...(followed ? { followed } : {}), ...(lastIssue ? { lastIssue } : {}) };
}

/** Whether two readings tell the same, so that nothing need be judged again. */
export function isSameOutside(one: OutsideFacts, other: OutsideFacts): boolean {
    const photos = (facts: OutsideFacts) => [...facts.photos ?? []].sort(([a], [b]) => a < b ? -1 : a > b ? 1 : 0);
    return JSON.stringify([photos(one), one.followed, one.lastIssue]) === JSON.stringify([photos(other), other.followed, other.lastIssue]);
}
