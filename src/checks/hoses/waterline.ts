/** Whether a run lies below the waterline, as far as the record tells. */
import { isKind, siOf, type Component, type Run, type SurveyRecord, runsThrough } from '../../record/model.js';

export type Height = 'below' | 'above' | 'not-recorded' | 'not-from-hull';

/** A run that begins or ends at an opening below the waterline floods her when it fails, wherever it fails. */
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

/** The hull opening a run begins at, or ends at where it is written in the way the water goes; the one under water where both do. */
export function openingOf(record: SurveyRecord, run: Run): Component | undefined {
    const ends = [run.components[0], run.components.at(-1)].filter(end => end !== undefined && isKind(record, end, 'hull-opening'));
    return ends.find(end => (siOf(end, 'below-waterline') ?? 0) > 0) ?? ends[0];
}

/** The parts of a run from its opening inward. */
export function inwardFrom(opening: Component | undefined, run: Run): readonly Component[] {
    return opening !== undefined && run.components[0] !== opening && run.components.at(-1) === opening ? [...run.components].reverse() : run.components;
}

/** Whether any run the component belongs to lies below the waterline. */
export function isBelowWaterline(record: SurveyRecord, component: Component): boolean {
    return runsThrough(record, component).some(run => heightOf(record, run) === 'below');
}
