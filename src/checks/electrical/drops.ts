/** Voltage lost along wires: as measured on the wire or in a table, else computed from its load, length and size. */
import { measuredDropShare, voltageDropV } from '../../trade/conductor.js';
import { isKind, ofKind, rowsOf, siOf, valueOf, type Component, type Quantity, type Span, type SurveyRecord } from '../../record/model.js';
import { systemVoltageOf, type Wire } from './wires.js';

export interface Drop {
    /** The wire, where the row of a table names it. */
    readonly wire?: Wire;
    /** What the circuit is called in a sentence, where no wire is named. */
    readonly label: string;
    readonly lostV: number;
    /** The voltage the share is of: at the source as measured, or nominal. */
    readonly ofV: number;
    readonly at: Span;
    readonly measured?: { readonly source: Quantity; readonly load: Quantity; readonly isInTable: boolean };
}

export function dropShare({ lostV, ofV }: Drop): number {
    return lostV / ofV;
}

/** One for each wire, the worst that is known of it, and one for each row of a table that names no wire. */
export function dropsOf(record: SurveyRecord): readonly Drop[] {
    const rows = rowDrops(record);
    const ofWires = ofKind(record, 'conductor').flatMap(wire => {
        const measured = [...ofFacts(wire), ...rows.filter(drop => drop.wire === wire)].sort((x, y) => dropShare(y) - dropShare(x));
        return (measured.length > 0 ? measured : computed(wire, systemVoltageOf(wire))).slice(0, 1);
    });
    return [...ofWires, ...rows.filter(drop => drop.wire === undefined)];
}

function measuredDrop(source: Quantity | undefined, load: Quantity | undefined, rest: Pick<Drop, 'wire' | 'label' | 'at'>, isInTable: boolean): Drop[] {
    if (!source || !load || source.si <= 0 || load.si > source.si) {
        return [];
    }
    return [{ ...rest, lostV: measuredDropShare({ sourceV: source.si, loadV: load.si }) * source.si, ofV: source.si, measured: { source, load, isInTable } }];
}

function ofFacts(wire: Wire): Drop[] {
    const at = wire.facts.get('load-voltage')?.span ?? wire.idSpan;
    return measuredDrop(valueOf(wire, 'source-voltage'), valueOf(wire, 'load-voltage'), { wire, label: wire.id, at }, false);
}

function rowDrops(record: SurveyRecord): readonly Drop[] {
    return rowsOf(record, 'voltage-drop').flatMap(({ reading, row }) => {
        const named = record.components.get(valueOf(row, 'conductor')?.id ?? '') ?? only(reading.on);
        const wire = named && isKind(record, named, 'conductor') ? named : undefined;
        const at = row.facts.get('load')?.span ?? row.span;
        return measuredDrop(valueOf(row, 'source'), valueOf(row, 'load'), { ...(wire ? { wire } : {}), label: row.label || reading.title || reading.id, at }, true);
    });
}

const only = (components: readonly Component[]): Component | undefined => components.length === 1 ? components[0] : undefined;

/** What its load loses along its length by calculation, at a nominal voltage. */
export function computed(wire: Wire, nominalV: number | undefined): Drop[] {
    const [currentA, roundTripM, areaM2] = [siOf(wire, 'load'), siOf(wire, 'length'), siOf(wire, 'gauge')];
    if (currentA === undefined || roundTripM === undefined || areaM2 === undefined || nominalV === undefined || areaM2 <= 0) {
        return [];
    }
    return [{ wire, label: wire.id, lostV: voltageDropV({ currentA, roundTripM, areaM2 }), ofV: nominalV, at: wire.facts.get('gauge')?.span ?? wire.idSpan }];
}
