/** Whether a run lies below the waterline, as far as the record tells. */
import { isKind, siOf, type Component, type Run, type SurveyRecord, runsThrough } from '../../record/model.js';

export type Height = 'below' | 'above' | 'not-recorded' | 'not-from-hull';

/** A run that begins at an opening below the waterline floods her when it fails, wherever it fails. */
export function heightOf(record: SurveyRecord, run: Run): Height {
    const opening = openingOf(record, run);
    if (!opening) {
        return 'not-from-hull';
    }
    const below = siOf(opening, 'below-waterline');
    if (below !== undefined) {
        return below > 0 ? 'below' : 'above';
    }
    return siOf(opening, 'above-waterline') === undefined ? 'not-recorded' : 'above';
}

/** The hull opening a run begins at. */
export function openingOf(record: SurveyRecord, run: Run): Component | undefined {
    const [first] = run.components;
    return first && isKind(record, first, 'hull-opening') ? first : undefined;
}


/** Whether any run the component belongs to lies below the waterline. */
export function isBelowWaterline(record: SurveyRecord, component: Component): boolean {
    return runsThrough(record, component).some(run => heightOf(record, run) === 'below');
}
