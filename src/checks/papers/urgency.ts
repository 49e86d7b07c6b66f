/** When a matter of papers is due: before a buyer accepts her, else within 30 days. */
import type { SurveyRecord } from '../../record/model.js';
import type { Urgency } from '../contract.js';

export function beforeCompletion(record: SurveyRecord): { readonly urgency: Urgency; readonly days?: number } {
    return record.survey?.surveyKind === 'pre-purchase' ? { urgency: 'before-completion' } : { urgency: 'within-days', days: 30 };
}
