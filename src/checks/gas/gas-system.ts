/** Which hoses carry cooking gas. */
import { isKind, runsThrough, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { serviceOf } from '../hoses/service.js';

/** By its kind, its marking, or the run it lies in. */
export function isGasHose(record: SurveyRecord, hose: Component): boolean {
    return isKind(record, hose, 'gas-hose') || wordOf(hose, 'class') === 'gas' || wordOf(hose, 'service') === 'gas' || runsThrough(record, hose).some(run => serviceOf(run, hose) === 'gas');
}
