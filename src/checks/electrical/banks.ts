/** Batteries with what was measured of them, on them or in a table, and the banks they are joined in. */
import { ofKind, rowsOf, siOf, valueOf, wordOf, type Component, type DateFigure, type Quantity, type Span, type SurveyRecord } from '../../record/model.js';

export type Battery = Component<'battery'>;

/** A measured figure with its rating. */
export interface Measured {
    readonly what: 'capacity' | 'cranking';
    readonly rated: Quantity;
    readonly measured: Quantity;
    readonly at: Span;
    /** Whether both stand on the battery, where drafted prose can refer to them. */
    readonly isOnBattery: boolean;
}

export interface Unit {
    /** The battery, where the row of a table names it. */
    readonly battery?: Battery;
    readonly label: string;
    readonly measured: readonly Measured[];
    readonly rest?: Quantity;
    readonly made?: DateFigure;
    readonly chemistry?: string;
    /** Time since it was charged, s. */
    readonly sinceChargeS?: number;
}

/** Every battery, and every row of a table that names none. */
export function unitsOf(record: SurveyRecord): readonly Unit[] {
    const rows = rowsOf(record, 'battery').map(({ reading, row }) => ({ reading, row, id: valueOf(row, 'unit')?.id ?? (reading.on.length === 1 && reading.rows.length === 1 ? reading.on[0]?.id : undefined) }));
    return [
        ...ofKind(record, 'battery').map(battery => unitOf(battery, rows.find(({ id }) => id === battery.id))),
        ...rows.filter(({ id }) => id === undefined).map(row => unitOf(undefined, row)),
    ];
}

type TableRow = ReturnType<typeof rowsOf<'battery'>>[number];

function unitOf(battery: Battery | undefined, table: TableRow | undefined): Unit {
    const row = table?.row;
    const rest = (battery && valueOf(battery, 'rest-voltage')) ?? (row && valueOf(row, 'rest'));
    const made = (battery && (valueOf(battery, 'made') ?? valueOf(battery, 'fitted'))) ?? (row && valueOf(row, 'made'));
    const chemistry = battery && wordOf(battery, 'chemistry');
    const sinceChargeS = (battery && siOf(battery, 'hours-since-charge')) ?? (table && siOf(table.reading, 'hours-since-charge'));
    return {
        ...(battery ? { battery } : {}), label: battery?.id ?? (row?.label || table?.reading.id || ''),
        measured: [measuredOf(battery, row, 'capacity'), measuredOf(battery, row, 'cranking')].filter(found => found !== undefined),
        ...(rest ? { rest } : {}), ...(made ? { made: made.figure } : {}), ...(chemistry === undefined ? {} : { chemistry }), ...(sinceChargeS === undefined ? {} : { sinceChargeS }),
    };
}

function measuredOf(battery: Battery | undefined, row: TableRow['row'] | undefined, what: Measured['what']): Measured | undefined {
    const isCapacity = what === 'capacity';
    const ratedOn = battery && valueOf(battery, what);
    const measuredOn = battery && valueOf(battery, isCapacity ? 'capacity-measured' : 'cranking-measured');
    const rated = ratedOn ?? (row && valueOf(row, isCapacity ? 'rated-capacity' : 'rated'));
    const measured = measuredOn ?? (row && valueOf(row, isCapacity ? 'measured-capacity' : 'measured'));
    const at = measuredOn ? battery?.facts.get(isCapacity ? 'capacity-measured' : 'cranking-measured')?.span : row?.facts.get(isCapacity ? 'measured-capacity' : 'measured')?.span;
    return rated && measured && at && rated.si > 0 ? { what, rated, measured, at, isOnBattery: ratedOn !== undefined && measuredOn !== undefined } : undefined;
}

export interface Bank {
    readonly name: string;
    readonly units: readonly (Unit & { readonly battery: Battery })[];
}

/** Name of a bank, however it is capitalized. */
function bankOf(battery: Battery): string | undefined {
    return valueOf(battery, 'bank')?.prose.text.trim().toLowerCase() || undefined;
}

/** Banks of two batteries and more, in the order of the text. */
export function banksOf(record: SurveyRecord): readonly Bank[] {
    const banks = new Map<string, (Unit & { readonly battery: Battery })[]>();
    for (const unit of unitsOf(record)) {
        const name = unit.battery && bankOf(unit.battery);
        if (unit.battery && name !== undefined) {
            banks.set(name, [...(banks.get(name) ?? []), { ...unit, battery: unit.battery }]);
        }
    }
    return [...banks].filter(([, units]) => units.length > 1).map(([name, units]) => ({ name, units }));
}

/** The batteries joined with one, itself included. */
export function bankWith(record: SurveyRecord, battery: Battery): readonly Battery[] {
    const name = bankOf(battery);
    return name === undefined ? [battery] : ofKind(record, 'battery').filter(other => bankOf(other) === name);
}

/** All batteries, where they are one bank; undefined where there are none or several. */
export function onlyBank(record: SurveyRecord): readonly Battery[] | undefined {
    const [first, ...others] = ofKind(record, 'battery');
    const bank = first && bankWith(record, first);
    return bank && bank.length === others.length + 1 ? bank : undefined;
}
