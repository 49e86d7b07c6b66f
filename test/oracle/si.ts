import { parseFigure } from '../../src/quantities/index.js';

/** A written figure in SI; throws on anything else, so that no row compares against nothing. */
export function si(written: string): number {
    const parsed = parseFigure(written);
    if (!parsed.ok || parsed.figure.kind !== 'quantity') {
        throw new Error(`${written}: ${parsed.ok ? 'a date' : parsed.problem}`);
    }
    return parsed.figure.si;
}
