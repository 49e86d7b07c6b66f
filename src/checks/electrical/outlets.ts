/** AC outlets: what is recorded of each, on it or in a table. */
import { outletTripA } from '../../trade/shore-power.js';
import { flagOf, ofKind, rowsOf, siOf, valueOf, wordOf, type Component, type Quantity, type Span, type SurveyRecord } from '../../record/model.js';

export type Outlet = Component<'outlet'>;

/** Voltage from which outlets are of the kind that a 30 mA breaker guards, not a device of 5 mA each. */
const highV = 200;

/** A reading of polarity and earth. */
export interface OutletReading {
    /** The outlet, where the row of a table names it. */
    readonly on?: Component;
    readonly label: string;
    readonly isReversed: boolean;
    readonly polarityAt: Span;
    readonly earth?: Quantity;
    readonly earthAt: Span;
    readonly isInTable: boolean;
}

export function outletReadings(record: SurveyRecord): readonly OutletReading[] {
    const ofOutlets = ofKind(record, 'outlet').map((outlet): OutletReading => {
        const earth = valueOf(outlet, 'earth-resistance');
        return {
            on: outlet, label: outlet.id, isInTable: false, isReversed: wordOf(outlet, 'polarity') === 'reversed', ...(earth ? { earth } : {}),
            polarityAt: outlet.facts.get('polarity')?.span ?? outlet.idSpan, earthAt: outlet.facts.get('earth-resistance')?.span ?? outlet.idSpan,
        };
    });
    const ofRows = rowsOf(record, 'polarity').map(({ reading, row }): OutletReading => {
        const on = record.components.get(valueOf(row, 'outlet')?.id ?? '') ?? (reading.on.length === 1 ? reading.on[0] : undefined);
        const earth = valueOf(row, 'earth');
        return {
            ...(on ? { on } : {}), label: row.label || reading.id, isInTable: true, isReversed: wordOf(row, 'polarity') === 'reversed', ...(earth ? { earth } : {}),
            polarityAt: row.facts.get('polarity')?.span ?? row.span, earthAt: row.facts.get('earth')?.span ?? row.span,
        };
    });
    return [...ofOutlets, ...ofRows];
}

/** Whether a device of 5 mA guards an outlet: as recorded, else by the current it tripped at. */
export function isDeviceProtected(record: SurveyRecord, outlet: Outlet): boolean | undefined {
    const tripA = siOf(outlet, 'trip-current') ?? rowsOf(record, 'polarity').map(({ row }) => valueOf(row, 'outlet')?.id === outlet.id ? siOf(row, 'trip-current') : undefined).find(value => value !== undefined);
    return flagOf(outlet, 'leakage-protected') ?? (tripA === undefined ? undefined : tripA <= outletTripA + 1e-9);
}

/** Voltage of an outlet: its own, else that of the shore inlet. */
export function outletVoltage(record: SurveyRecord, outlet: Outlet): number | undefined {
    return siOf(outlet, 'voltage') ?? ofKind(record, 'shore-inlet').map(inlet => siOf(inlet, 'voltage')).find(voltage => voltage !== undefined);
}

/** Outlets of 230 V are guarded by a breaker of 30 mA by custom. */
export function takesOwnDevice(record: SurveyRecord, outlet: Outlet): boolean {
    return (outletVoltage(record, outlet) ?? 0) < highV;
}

/** Whether the neutral is joined to earth at an isolation transformer, where it belongs; undefined where a transformer does not say. */
export function isBondedAtTransformer(record: SurveyRecord): boolean | undefined {
    const bonds = ofKind(record, 'transformer').map(transformer => flagOf(transformer, 'neutral-bonded'));
    return bonds.includes(true) ? true : bonds.includes(undefined) ? undefined : false;
}
