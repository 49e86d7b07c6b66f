/** A figure in other units: read in the one that would suit, or converted so that it can be compared. */
import { allUnits, convertTo, formatQuantity, type Dimension } from '../quantities/index.js';
import type { Component, Quantity } from '../record/model.js';
import type { Correction } from './contract.js';

/** Units that are written by hand in surveys and mistaken for each other. */
const mistaken: Partial<Record<Dimension, readonly string[]>> = {
    length: ['mm', 'cm', 'in', 'ft', 'm'], volume: ['ft3', 'm3'], flow: ['cfm', 'm3/h', 'gph', 'gpm', 'L/min'], area: ['in2', 'cm2'], resistance: ['ohm', 'kohm', 'megohm'], mass: ['kg', 'lb', 't'], pressure: ['psi', 'bar', 'mbar', 'kPa'], speed: ['kn', 'mph', 'km/h'], power: ['hp', 'kW'], temperature: ['F', 'C'], voltage: ['V', 'mV'], current: ['A', 'mA'],
};

/** The same number in other units, where the figure would then suit: what is offered, and the text. */
export function readOtherwise({ figure }: Quantity, suits: (si: number) => boolean): { readonly title: string; readonly text: string }[] {
    const names = mistaken[figure.dimension] ?? [];
    const number = figure.written.slice(0, figure.written.length - figure.unit.length).trim();
    if (!names.includes(figure.unit) || !figure.written.endsWith(figure.unit) || number === '') {
        return [];
    }
    return allUnits
        .filter(unit => unit.dimension === figure.dimension && names.includes(unit.name) && unit.name !== figure.unit && suits(figure.value * unit.factor + (unit.offset ?? 0)))
        .map(unit => ({ title: `Read ${figure.written} as ${number} ${unit.name}`, text: `${number} ${unit.name}` }));
}

/** The same, as corrections of a component's fact. */
export function inAnotherUnit(component: Component, property: string, quantity: Quantity, suits: (si: number) => boolean): Correction[] {
    return readOtherwise(quantity, suits).map(({ title, text }) => ({ kind: 'set-fact', title, component, property, value: text }));
}

/** The same figure converted into the other system, "45 lb" as "20.4 kg": a step, which changes no verdict. */
export function converted(component: Component, property: string, { si, figure: { unit } }: Quantity): Correction[] {
    const other = unit === 'lb' ? `${Math.round(convertTo(si, 'kg') * 10) / 10} kg` : unit === 'kg' ? `${Math.round(convertTo(si, 'lb') * 10) / 10} lb`
        : unit === 'mm' || unit === 'cm' ? formatQuantity(si, 'length', 'us') : unit === 'in' ? `${Math.round(si * 1000)} mm` : undefined;
    return other === undefined ? [] : [{ kind: 'set-fact', title: `Write it as ${other}`, component, property, value: other, isStep: true }];
}
