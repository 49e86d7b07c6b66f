/** Clearance of a bearing: as recorded of the part, else the greatest of its rows in a table of play. */
import { rowsOf, type Component, type Reading, type Row, type Span, type SurveyRecord } from '../../record/model.js';
import { measured, type Measured } from '../../record/trial-runs.js';

export interface Clearance extends Measured {
    /** The row it was read from; without, a fact of the part. */
    readonly row?: { readonly reading: Reading; readonly row: Row };
    /** Diameter of the shaft or stock in the same row. */
    readonly shaft?: Measured;
    readonly at: Span;
}

export function clearanceOf(record: SurveyRecord, part: Component, property: 'clearance' | 'bearing-clearance'): Clearance | undefined {
    const own = measured(part, property);
    if (own) {
        return { ...own, at: own.fact.span };
    }
    let widest: Clearance | undefined;
    for (const { reading, row } of rowsOf(record, 'play')) {
        const named = row.facts.get('part')?.values[0];
        const isOfPart = named?.type === 'component' ? named.id === part.id : reading.on.length === 1 && reading.on[0] === part;
        const radial = isOfPart ? measured(row, 'radial') : undefined;
        if (radial && radial.quantity.si > (widest?.quantity.si ?? -1)) {
            const shaft = measured(row, 'shaft');
            widest = { ...radial, at: radial.fact.span, row: { reading, row }, ...(shaft ? { shaft } : {}) };
        }
    }
    return widest;
}

/** Where a clearance was seen, for a finding: a reference to the fact, or the row of its table. */
export function clearanceSeen(part: Component, property: string, { row }: Clearance): string {
    return row ? `(“${row.row.label}” in ${row.reading.title ?? row.reading.id})` : `of {${part.id}.${property}}`;
}
