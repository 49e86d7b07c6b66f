/** What sounding told: rows of percussion maps, and the row of a map that speaks of the same place as a row of another table. */
import { rowsOf, wordOf, type Component, type Reading, type Row, type SurveyRecord } from '../../record/model.js';
import type { Sound } from '../../trade/moisture.js';

export interface SoundedRow {
    readonly reading: Reading;
    readonly row: Row<'percussion-row'>;
}

const worst: readonly Sound[] = ['hollow', 'dull', 'clear'];

export function soundOf(word: string | undefined): Sound | undefined {
    return worst.find(sound => sound === word);
}

const labelOf = (label: string): string => label.trim().toLowerCase().replace(/\s+/g, ' ');

/** The worst sound at a place of a table: of rows of a map with the same label on one of the same components. */
export function soundAt(record: SurveyRecord, components: readonly Component[], label: string): Sound | undefined {
    const sounds = rowsOf(record, 'percussion').filter(({ reading, row }) => labelOf(row.label) === labelOf(label) && (reading.on.length === 0 || reading.on.some(on => components.includes(on))))
        .map(({ row }) => wordOf(row, 'sound'));
    return worst.find(sound => sounds.includes(sound));
}
