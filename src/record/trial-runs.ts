/** Runs of the trial by propeller: recorded on the propeller itself, or in a table of the trial. */
import type { Component, Fact, FactSet, Quantity, Reading, Row, Span, SurveyRecord } from './model.js';
import { rowsOf } from './model.js';
import { meanOfRunsMs } from '../trade/propeller-slip.js';
import type { DriveLine } from './drive-lines.js';

export interface Measured {
    readonly fact: Fact;
    readonly quantity: Quantity;
}

export interface TrialRun {
    readonly line: DriveLine;
    readonly rotation: Measured;
    /** Speed, and the speed the other way where it was taken. */
    readonly speeds: readonly Measured[];
    readonly speedMs: number;
    /** The row it stands in, with its table; without, the propeller's own facts. */
    readonly row?: { readonly reading: Reading; readonly row: Row };
    readonly at: Span;
}

export function measured(set: FactSet, property: string): Measured | undefined {
    const fact = set.facts.get(property);
    const value = fact?.values[0];
    return fact && value?.type === 'quantity' ? { fact, quantity: value } : undefined;
}

function runFrom(line: DriveLine, set: FactSet, row?: TrialRun['row']): TrialRun | undefined {
    const rotation = measured(set, 'rotation');
    const [speed, against] = [measured(set, 'speed'), measured(set, 'speed-against')];
    const speeds = [speed, against].filter(one => one !== undefined);
    const [first, second] = speeds;
    return !rotation || !first ? undefined : {
        line, rotation, speeds, speedMs: second ? meanOfRunsMs(first.quantity.si, second.quantity.si) : first.quantity.si, at: first.fact.span, ...(row ? { row } : {}),
    };
}

/** The runs of each line. A row that names no part of any line, in a table on none, is of every line. */
export function trialRuns(record: SurveyRecord, lines: readonly DriveLine[]): TrialRun[] {
    const rows = rowsOf(record, 'trial');
    return lines.flatMap(line => [
        ...[runFrom(line, line.propeller)],
        ...rows.filter(({ reading, row }) => isOf(line, lines, reading, row)).map(entry => runFrom(line, entry.row, entry)),
    ].filter(run => run !== undefined));
}

function isOf(line: DriveLine, lines: readonly DriveLine[], reading: Reading, row: Row): boolean {
    const named = row.facts.get('engine')?.values[0];
    const isPart = (of: DriveLine, id: string) => parts(of).some(part => part.id === id);
    if (named?.type === 'component') {
        return isPart(line, named.id);
    }
    return reading.on.some(on => isPart(line, on.id)) || !lines.some(other => reading.on.some(on => isPart(other, on.id)));
}

const parts = ({ propeller, reducer, engine }: DriveLine): Component[] => [propeller, reducer, engine].filter(part => part !== undefined);
