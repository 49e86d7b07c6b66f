/** Which section of the report a table of readings stands in. */
import { wordOf, type Reading } from '../record/model.js';

/** Runs of the trial, lists of a delivery, and every other table among the measurements. */
export function sectionOfReading(reading: Reading): 'trial' | 'contract' | 'measurements' {
    switch (wordOf(reading, 'measures')) {
        case 'trial': return 'trial';
        case 'contract':
        case 'handover': return 'contract';
        default: return 'measurements';
    }
}
