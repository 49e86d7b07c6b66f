/** The drawing of a table of readings, where what it measures is drawn. */
import { wordOf, type Reading } from '../../record/model.js';
import type { ReportContext } from '../context.js';
import { nothing, type Html } from '../html.js';
import { gaugingBars } from './gauging-bars.js';
import { moistureMap } from './moisture-map.js';
import { percussionMap } from './percussion-map.js';
import { potentialPoints } from './potential-points.js';
import { trialCurves } from './trial-curves.js';

const drawn: Readonly<Record<string, (context: ReportContext, reading: Reading, id: string) => Html>> = {
    moisture: moistureMap, percussion: percussionMap, thickness: gaugingBars, potential: potentialPoints, trial: trialCurves,
};

/** Draws the table; nothing where its readings are too few, or where what it measures is not drawn. */
export function drawReading(context: ReportContext, reading: Reading): Html {
    // Its place among the tables makes the ids in the drawing unique in the report, whatever the table is called.
    return drawn[wordOf(reading, 'measures') ?? '']?.(context, reading, `reading-${context.record.readings.indexOf(reading) + 1}`) ?? nothing;
}
