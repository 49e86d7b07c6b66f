/** Figures in sentences: recorded ones as written, computed ones rounded, each in both unit systems. */
import { formatQuantity, inBothSystems, type Dimension } from '../quantities/index.js';
import type { Material, Quantity } from '../record/model.js';
import type { Diameter } from './fit/hose-ends.js';

/** A recorded figure as written, with the other system after it. */
export function both(quantity: Quantity): string {
    return inBothSystems(quantity.figure);
}

/** A computed figure in both systems: "6.35 mm (1/4 in)". */
export function computedBoth(si: number, dimension: Dimension): string {
    const [metric, us] = [formatQuantity(si, dimension, 'metric'), formatQuantity(si, dimension, 'us')];
    return metric === us ? metric : `${metric} (${us})`;
}

export function lengthBoth(m: number): string {
    return computedBoth(m, 'length');
}

/** A recorded diameter in drafted prose: a reference where it is a fact of a component, else the figure as written. */
export function factText({ on, fact, quantity }: Diameter): string {
    return on === 'joint' || fact.values.length > 1 ? both(quantity) : `{${on.id}.${fact.name}}`;
}

/** The name of a material in a sentence; what stands after a comma in its title goes into parentheses. */
export function materialName({ title }: Material): string {
    const [name = title, ...rest] = title.split(', ');
    const lower = /^[A-Z][a-z]/.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
    return rest.length === 0 ? lower : `${lower} (${rest.join(', ')})`;
}

/** "a, b and c", or with another last word. */
export function listed(words: readonly string[], last: 'and' | 'or' = 'and'): string {
    return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1) ?? ''}`;
}

/** A share to a tenth of a percent: "18 %", "17.5 %". */
export function percent(share: number): string {
    return `${Math.round(share * 1000) / 10} %`;
}

/** Volts as whole millivolts. */
export const millivolts = (v: number): number => Math.round(v * 1000);

/** With a capital, to begin a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A title inside a sentence: "Fuel" → "fuel", but "DC electrical" as it is. */
export const lowerFirst = (title: string): string => /^\p{Lu}\p{Ll}/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
