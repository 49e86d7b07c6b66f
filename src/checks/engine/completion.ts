/** When a matter is due that a buyer should know before he accepts her. */
import type { SurveyRecord } from '../../record/model.js';
import type { Urgency } from '../contract.js';

/** Before completion in a survey for a buyer, else within thirty days. */
export function dueBeforeCompletion(record: SurveyRecord): { readonly urgency: Urgency; readonly days?: number } {
    return record.survey?.surveyKind === 'pre-purchase' ? { urgency: 'before-completion' } : { urgency: 'within-days', days: 30 };
}
