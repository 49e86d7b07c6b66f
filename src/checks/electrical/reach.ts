/** Reach of the federal rule on electrics: it binds builders of boats with gasoline engines, and is good practice elsewhere. */
import { wordOf, type SurveyRecord } from '../../record/model.js';

/** A clause of 33 CFR 183 with its standing on this boat, to follow "by" or "against". */
export function federalRule(record: SurveyRecord, clause: string): string {
    return isGasoline(record) ? `33 CFR ${clause}` : `good practice per 33 CFR ${clause}`;
}

export function isGasoline(record: SurveyRecord): boolean {
    return record.vessel !== undefined && wordOf(record.vessel, 'fuel') === 'gasoline';
}
