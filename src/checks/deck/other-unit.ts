/** A figure that was most likely typed with the wrong unit. */
import { convertTo, formatQuantity } from '../../quantities/index.js';
import type { Component, Quantity } from '../../record/model.js';
import type { Correction } from '../contract.js';

const factors: Readonly<Record<'mass' | 'length', Readonly<Record<string, number>>>> = { mass: { kg: 1, lb: 0.45359237 }, length: { mm: 0.001, cm: 0.01, in: 0.0254 } };

/** The same number in another unit, where the figure would then suit. */
export function inAnotherUnit(component: Component, property: string, quantity: Quantity, dimension: 'mass' | 'length', suits: (si: number) => boolean): Correction[] {
    const { unit, value, written } = quantity.figure;
    const known = factors[dimension];
    return !(unit in known) || quantity.low !== undefined ? [] : Object.entries(known).filter(([other, factor]) => other !== unit && suits(value * factor)).map(([other]) => ({
        kind: 'set-fact', title: `Read ${written} as ${value} ${other}`, component, property, value: `${value} ${other}`,
    }));
}

/** The figure converted into the other system: "45 lb" as "20.4 kg". */
export function converted(component: Component, property: string, quantity: Quantity): Correction[] {
    const { unit } = quantity.figure;
    const other = unit === 'lb' ? `${Math.round(convertTo(quantity.si, 'kg') * 10) / 10} kg` : unit === 'kg' ? `${Math.round(convertTo(quantity.si, 'lb') * 10) / 10} lb`
        : unit === 'mm' || unit === 'cm' ? formatQuantity(quantity.si, 'length', 'us') : unit === 'in' ? `${Math.round(quantity.si * 1000)} mm` : undefined;
    return other === undefined ? [] : [{ kind: 'set-fact', title: `Write it as ${other}`, component, property, value: other }];
}
