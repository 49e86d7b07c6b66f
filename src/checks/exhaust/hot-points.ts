/** Temperatures taken on the exhaust: recorded of the part, or in a table of temperatures. */
import { isKind, ofKind, rowsOf, type Component, type Reading, type Row, type SurveyRecord } from '../../record/model.js';
import { measured, type Measured } from '../../record/trial-runs.js';

export interface HotPoint {
    readonly part: Component;
    readonly temperature: Measured;
    readonly rotation?: Measured;
    /** The row it was read from; without, a fact of the part. */
    readonly row?: { readonly reading: Reading; readonly row: Row };
}

const kinds = ['exhaust-hose', 'exhaust-riser', 'turbo'] as const;

export function hotPoints(record: SurveyRecord): HotPoint[] {
    const own = kinds.flatMap(kind => [...ofKind(record, kind)] as Component[]).map(part => pointFrom(part, measured(part, 'temperature'), measured(part, 'rotation')));
    const rows = rowsOf(record, 'temperature').map(entry => {
        const value = entry.row.facts.get('part')?.values[0];
        const part = value?.type === 'component' ? record.components.get(value.id) : entry.reading.on.length === 1 ? entry.reading.on[0] : labeled(record, entry.row.label);
        return part && kinds.some(kind => isKind(record, part, kind)) ? pointFrom(part, measured(entry.row, 'temperature'), measured(entry.row, 'rotation'), entry) : undefined;
    });
    return [...own, ...rows].filter(point => point !== undefined);
}

/** The part that a row bears the name of, by its id or title. */
function labeled(record: SurveyRecord, label: string): Component | undefined {
    const name = label.trim().toLowerCase();
    const named = kinds.flatMap(kind => [...ofKind(record, kind)] as Component[]).filter(part => part.id.toLowerCase() === name || part.title?.toLowerCase() === name);
    return named.length === 1 ? named[0] : undefined;
}

function pointFrom(part: Component, temperature: Measured | undefined, rotation: Measured | undefined, row?: HotPoint['row']): HotPoint | undefined {
    return temperature && { part, temperature, ...(rotation ? { rotation } : {}), ...(row ? { row } : {}) };
}

/** Where a temperature was read, for a finding: a reference to the fact, or the row of its table. */
export function temperatureSeen({ part, row }: HotPoint): string {
    return row ? `what “${row.row.label}” in ${row.reading.title ?? row.reading.id} tells` : `{${part.id}.temperature}`;
}
