/** Fuses and breakers with the wires they guard. */
import { flagOf, isKind, ofKind, siOf, valueOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { purposeOf, systemVoltageOf, type Wire } from './wires.js';

export type Guard = Component<'fuse'> | Component<'breaker'>;

/** In the order of the text, so that what is said does not hang on the kind. */
export function guardsOf(record: SurveyRecord): readonly Guard[] {
    return [...ofKind(record, 'fuse'), ...ofKind(record, 'breaker')].sort((x, y) => x.span.start - y.span.start);
}

/** The wire a fuse or breaker guards, or else is said to serve; a cranking wire needs no guard and is left out. */
export function guardedWire(record: SurveyRecord, guard: Guard): Wire | undefined {
    const wire = record.components.get((valueOf(guard, 'protects') ?? valueOf(guard, 'serves'))?.id ?? '');
    return wire && isKind(record, wire, 'conductor') && purposeOf(record, wire) !== 'cranking' ? wire : undefined;
}

/** Voltage of the circuit guarded; a main breaker is of shore power. */
export function guardedVoltage(record: SurveyRecord, guard: Guard, wire: Wire): number | undefined {
    return systemVoltageOf(wire) ?? (isKind(record, guard, 'main-breaker') ? 120 : undefined);
}

/** Whether the wire is sheathed or enclosed from its source to the guard. */
export function isSheathedTo(record: SurveyRecord, guard: Guard): boolean | undefined {
    const wire = guardedWire(record, guard);
    return flagOf(guard, isKind(record, guard, 'fuse') ? 'sheathed-to-fuse' : 'sheathed-to-breaker') ?? (wire && flagOf(wire, 'sheathed'));
}

export function sourceOf(guard: Guard): string | undefined {
    return wordOf(guard, 'source');
}

/** "Fuse" or "Breaker", to begin a sentence. */
export function guardTitle(record: SurveyRecord, guard: Guard): 'Fuse' | 'Breaker' {
    return isKind(record, guard, 'fuse') ? 'Fuse' : 'Breaker';
}

/** Other fuses and breakers on the same wire that stand no farther along it, as far as that is recorded. */
export function guardsBefore(record: SurveyRecord, guard: Guard, wire: Wire): readonly Guard[] {
    const reach = siOf(guard, 'distance');
    return guardsOf(record).filter(other => other !== guard && guardedWire(record, other) === wire && (siOf(other, 'distance') ?? reach ?? 0) <= (reach ?? Infinity));
}
