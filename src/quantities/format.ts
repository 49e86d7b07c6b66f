/** Figures for reading: sensible units and rounding, both unit systems side by side. */
import { convertTo, type Figure, type QuantityFigure } from './parse.js';
import { units, type Dimension } from './units.js';

export type UnitSystem = 'us' | 'metric';

export interface FormatOptions {
    /** Shortest length, in metres, written in feet and inches or in metres. */
    readonly longFromM?: number;
    /** Longest length, in metres, written in mils or microns. */
    readonly fineBelowM?: number;
}

/** Rounds to so many significant figures, without an exponent and without trailing zeros. */
export function significant(value: number, figures: number): string {
    if (value === 0 || !Number.isFinite(value)) {
        return String(value === 0 ? 0 : value);
    }
    const decimals = Math.max(0, Math.min(8, figures - 1 - Math.floor(Math.log10(Math.abs(value)))));
    const text = value.toFixed(decimals);
    const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
    return trimmed === '-0' ? '0' : trimmed;
}

function sixteenths(inches: number): string | undefined {
    const rounded = Math.round(inches * 16) / 16;
    // 38 mm is 1-1/2 in and 1.6 mm is 1/16 in, but 1.44 mm is not.
    if (Math.abs(rounded - inches) > Math.min(0.006, 0.01 * Math.abs(inches)) || rounded === 0) {
        return undefined;
    }
    const negative = rounded < 0 ? '-' : '';
    const whole = Math.floor(Math.abs(rounded));
    let numerator = Math.round((Math.abs(rounded) - whole) * 16);
    let denominator = 16;
    while (numerator > 0 && numerator % 2 === 0) {
        numerator /= 2;
        denominator /= 2;
    }
    if (numerator === 0) {
        return `${negative}${whole}`;
    }
    return `${negative}${whole === 0 ? '' : `${whole}-`}${numerator}/${denominator}`;
}

function length(m: number, system: UnitSystem, { longFromM = 1, fineBelowM = 0.0005 }: FormatOptions): string {
    const size = Math.abs(m);
    if (system === 'metric') {
        return size >= 2000 ? `${significant(m / 1000, 3)} km` : size >= longFromM ? `${significant(m, 4)} m` : size !== 0 && size < fineBelowM ? `${significant(m * 1e6, 3)} micron` : `${significant(m * 1000, 3)} mm`;
    }
    const inches = m / 0.0254;
    if (size >= 1609) {
        return `${significant(m / 1609.344, 3)} mi`;
    }
    if (size >= 1 && size >= longFromM) {
        const sign = m < 0 ? '-' : '';
        const rounded = Math.round(Math.abs(inches) * 2) / 2;
        const feet = Math.floor(rounded / 12);
        const rest = rounded - feet * 12;
        return rest === 0 ? `${sign}${feet} ft` : `${sign}${feet} ft ${sixteenths(rest) ?? significant(rest, 3)} in`;
    }
    if (size !== 0 && size < fineBelowM) {
        return `${significant(inches * 1000, 3)} mil`;
    }
    const fraction = Math.abs(inches) < 12 ? sixteenths(inches) : undefined;
    return `${fraction ?? significant(inches, Math.abs(inches) < 1 ? 2 : 3)} in`;
}

/** Preferred units by dimension and system, largest first, each with the smallest value it is used for. */
const preferred: Partial<Record<Dimension, Record<UnitSystem, readonly (readonly [unit: string, from: number])[]>>> = {
    area: { us: [['ft2', 1], ['in2', 0]], metric: [['m2', 0.5], ['cm2', 10], ['mm2', 0]] },
    volume: { us: [['gal', 0.25], ['fl-oz', 0]], metric: [['m3', 10], ['L', 0.25], ['mL', 0]] },
    mass: { us: [['lb', 0.25], ['oz', 0]], metric: [['t', 10], ['kg', 0.1], ['g', 0]] },
    temperature: { us: [['F', -Infinity]], metric: [['C', -Infinity]] },
    pressure: { us: [['psi', 0.5], ['inWC', 0]], metric: [['bar', 0.5], ['mbar', 0]] },
    flow: { us: [['gpm', 0]], metric: [['L/min', 0]] },
    speed: { us: [['kn', 0]], metric: [['kn', 0]] },
    power: { us: [['hp', 0]], metric: [['kW', 0]] },
    force: { us: [['lbf', 0]], metric: [['kN', 10], ['N', 0]] },
    torque: { us: [['lbf-ft', 0]], metric: [['Nm', 0]] },
    'density-per-area': { us: [['per-ft2', 0]], metric: [['per-m2', 0]] },
    voltage: { us: [['V', 1], ['mV', 0]], metric: [['V', 1], ['mV', 0]] },
    current: { us: [['A', 1], ['mA', 0]], metric: [['A', 1], ['mA', 0]] },
    resistance: { us: [['megohm', 1], ['ohm', 0]], metric: [['megohm', 1], ['ohm', 0]] },
    charge: { us: [['Ah', 0]], metric: [['Ah', 0]] },
    energy: { us: [['kWh', 1], ['Wh', 0]], metric: [['kWh', 1], ['Wh', 0]] },
    time: { us: [['year', 2], ['month', 2], ['day', 2], ['h', 2], ['min', 2], ['s', 0]], metric: [['year', 2], ['month', 2], ['day', 2], ['h', 2], ['min', 2], ['s', 0]] },
    fraction: { us: [['%', -Infinity]], metric: [['%', -Infinity]] },
    angle: { us: [['deg', 0]], metric: [['deg', 0]] },
    rotation: { us: [['rpm', 0]], metric: [['rpm', 0]] },
    rate: { us: [['drops/min', 0]], metric: [['drops/min', 0]] },
    frequency: { us: [['Hz', 0]], metric: [['Hz', 0]] },
};

/** A quantity in a unit fit for reading, rounded to what a surveyor measures. */
export function formatQuantity(si: number, dimension: Dimension, system: UnitSystem, options: FormatOptions = {}): string {
    if (dimension === 'length') {
        return length(si, system, options);
    }
    const choices = preferred[dimension]?.[system];
    if (!choices) {
        return significant(si, 4);
    }
    for (const [name, from] of choices) {
        const value = convertTo(si, name);
        if (Math.abs(value) >= from || from === -Infinity) {
            return `${dimension === 'temperature' ? String(Math.round(value * 10) / 10) : significant(value, 3)} ${name}`;
        }
    }
    return significant(si, 4);
}

/** A figure in the other unit system, where there is another and it says something new. */
export function otherSystem(figure: Figure): string | undefined {
    if (figure.kind === 'date' || figure.dimension === 'money' || figure.dimension === 'number' || figure.dimension === 'time-of-day') {
        return undefined;
    }
    const unit = units.get(figure.unit);
    if (!unit || unit.system === 'both') {
        return undefined;
    }
    const system: UnitSystem = unit.system === 'us' ? 'metric' : 'us';
    if (unit.name === 'cfm') {
        return span(figure, si => `${significant(convertTo(si, 'm3/h'), 3)} m3/h`);
    }
    if (unit.name === 'AWG') {
        return `${significant(figure.si * 1e6, 3)} mm2`;
    }
    // A length keeps to millimeters or meters as it keeps to inches or feet, and to mils or microns as it is written in them.
    const options = figure.dimension !== 'length' ? {} : {
        longFromM: unit.name === 'in' || unit.name === 'mm' ? 2 : 1,
        fineBelowM: unit.name === 'mil' || unit.name === 'micron' ? 0.002 : 0.00005,
    };
    const write = (si: number): string => formatQuantity(si, figure.dimension, system, options);
    // A difference of temperatures has no zero of its own.
    return span(figure, write, figure.dimension === 'temperature' ? k => `${significant(k * (system === 'us' ? 1.8 : 1), 3)} ${system === 'us' ? 'F' : 'C'}` : write);
}

function span(figure: QuantityFigure, write: (si: number) => string, writeMargin = write): string {
    if (figure.low !== undefined && figure.high !== undefined) {
        return `${write(figure.low)}..${write(figure.high)}`;
    }
    if (figure.tolerance !== undefined) {
        return `${write(figure.si)} +/- ${writeMargin(figure.tolerance)}`;
    }
    return write(figure.si);
}

/** A figure as written, with the other unit system after it: "1-1/2 in (38.1 mm)". */
export function inBothSystems(figure: Figure): string {
    const other = otherSystem(figure);
    return other === undefined ? figure.written : `${figure.written} (${other})`;
}
