/** The trial as a section of its own: whether she was run, and what was read while she ran. */
import type { ReportContext, Section } from '../context.js';
import { html, nothing } from '../html.js';
import { sectionOfReading } from '../reading-places.js';
import { standing } from '../standing-words.js';
import { undoneAs } from '../undone.js';
import { readingBlock } from './measurements.js';

export function trial(context: ReportContext): Section | undefined {
    const { survey, readings } = context.record;
    const runs = readings.filter(reading => sectionOfReading(reading) === 'trial');
    const told = context.body(survey, 'trial');
    const undone = undoneAs(context, 'no-trial');
    if (runs.length === 0 && told === undefined) {
        return undone && { id: 'trial', title: 'Trial', body: html`${standing(context, 'no-trial')}` };
    }
    return {
        id: 'trial', title: 'Trial', body: html`
${runs.length > 0 ? standing(context, 'trial-lead') : nothing}
${told ?? nothing}
${runs.length === 0 ? html`<p>No readings of the runs are recorded.</p>` : runs.map(reading => readingBlock(context, reading))}`,
    };
}
