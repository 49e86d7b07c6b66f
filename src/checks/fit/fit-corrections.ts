/** Corrections of a recorded diameter, shared by the checks of fit. */
import type { Correction } from '../contract.js';
import type { Joint } from '../../record/model.js';
import type { Diameter } from './hose-ends.js';

/** Units in which a diameter is typed by hand, in metres. */
const unitsM: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, in: 0.0254 };

/** Sizes of hose and tail aboard small craft, m: a reading outside them is not offered. */
const smallest = 0.003;
const largest = 0.2;

/** The value of a fact with one diameter put in place of the one recorded. */
function valueWith(diameter: Diameter, written: string): string {
    return diameter.fact.values.map((value, index) => index === diameter.index || value.type !== 'quantity' ? written : value.figure.written).join(', ');
}

/** Records another figure for a diameter. */
export function setDiameter(title: string, diameter: Diameter, joint: Joint, written: string): Correction {
    const property = diameter.fact.name;
    const value = valueWith(diameter, written);
    return diameter.on === 'joint' ? { kind: 'set-joint-fact', title, joint, property, value } : { kind: 'set-fact', title, component: diameter.on, property, value };
}

/** The same number in another unit, where the diameter would then suit: it was most likely typed with the wrong one. */
export function inAnotherUnit(diameter: Diameter, joint: Joint, suits: (m: number) => boolean): Correction[] {
    const { unit: recordedUnit, value, written } = diameter.quantity.figure;
    if (!(recordedUnit in unitsM)) {
        return [];
    }
    return Object.entries(unitsM)
        .filter(([unit, factor]) => unit !== recordedUnit && value * factor >= smallest && value * factor <= largest && suits(value * factor))
        .map(([unit]) => setDiameter(`Read ${written} as ${value} ${unit}`, diameter, joint, `${value} ${unit}`));
}
