/** A figure that would suit if it had been written with another unit of its dimension. */
import { allUnits, type Dimension } from '../../quantities/index.js';
import type { Component, Quantity } from '../../record/model.js';
import type { Correction } from '../contract.js';

/** Units that are written by hand in surveys and mistaken for each other. */
const mistaken: Partial<Record<Dimension, readonly string[]>> = {
    length: ['mm', 'cm', 'in', 'ft', 'm'], volume: ['ft3', 'm3'], flow: ['cfm', 'm3/h', 'gph', 'gpm', 'L/min'], area: ['in2', 'cm2'], resistance: ['ohm', 'kohm', 'megohm'],
};

/** The same number in other units, where the figure would then suit. */
export function inAnotherUnit(component: Component, property: string, { figure }: Quantity, suits: (si: number) => boolean): Correction[] {
    const names = mistaken[figure.dimension] ?? [];
    const number = figure.written.slice(0, figure.written.length - figure.unit.length).trim();
    if (!names.includes(figure.unit) || !figure.written.endsWith(figure.unit) || number === '') {
        return [];
    }
    return allUnits
        .filter(unit => unit.dimension === figure.dimension && names.includes(unit.name) && unit.name !== figure.unit && suits(figure.value * unit.factor))
        .map(unit => ({ kind: 'set-fact', title: `Read ${figure.written} as ${number} ${unit.name}`, component, property, value: `${number} ${unit.name}` }));
}
