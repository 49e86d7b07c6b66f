/** Where she lies, as the record tells it, and what depends on it. */
import { wordOf, type SurveyRecord } from '../record/model.js';
import type { Urgency } from './contract.js';

/** Ashore or afloat at the survey: said in the survey block, else as last attended. */
export function lies(record: SurveyRecord): 'ashore' | 'afloat' | undefined {
    const stated = record.survey ? wordOf(record.survey, 'state') : undefined;
    if (stated === 'ashore' || stated === 'afloat') {
        return stated;
    }
    return record.survey?.attendances.findLast(attendance => attendance.state !== undefined)?.state;
}

/** Danger of flooding: at once when she lies afloat or it is not recorded, before launching when ashore. */
export function floodCritical(record: SurveyRecord): Urgency {
    return lies(record) === 'ashore' ? 'before-launch' : 'at-once';
}
