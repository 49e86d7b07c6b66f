/** Headings of a table of readings, shared by the table and by what is drawn of it. */
import type { Reading } from '../record/model.js';
import type { ReportContext } from './context.js';
import { propertyTitle } from './wording.js';

/** Heading of the cells at a place: as written after `columns:`, else the name of the column they stand in. */
export function headings(context: ReportContext, reading: Reading, width: number): { readonly corner: string; readonly heads: readonly string[] } {
    const written = reading.facts.get('columns')?.values ?? [];
    const texts = written.flatMap(value => value.type === 'text' ? [context.plain(value.prose)] : []);
    if (texts.length === written.length) {
        const named = texts.length === 1 && width > 1 ? (texts[0] ?? '').split(',').map(name => name.trim()) : texts;
        if (named.length > 0) {
            return named.length > width ? { corner: named[0] ?? '', heads: named.slice(1) } : { corner: 'Place', heads: named };
        }
    }
    const heads = Array.from({ length: width }, (_, i) => {
        const value = written[i];
        const column = reading.rows.map(row => row.cells[i]?.column).find(name => name !== undefined);
        return value?.type === 'text' ? context.plain(value.prose) : column === undefined ? '' : propertyTitle(column);
    });
    // A column that is repeated is numbered.
    return { corner: 'Place', heads: heads.map((head, i) => heads.filter(other => other === head).length < 2 || head === '' ? head : `${head} ${heads.slice(0, i + 1).filter(other => other === head).length}`) };
}
