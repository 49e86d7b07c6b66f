/**
 * Units of measure as surveyors write them, each with its exact relation to SI.
 *
 * Factors are exact by definition where one exists: inch, pound and US gallon by the international agreements of
 * 1959 and NIST SP 811 (2008), appendix B; nautical mile 1852 m; standard gravity 9.80665 m/s2. Conventional water
 * and mercury columns as NIST SP 811 prints them.
 */

export type Dimension =
    | 'number' | 'length' | 'area' | 'volume' | 'mass' | 'time' | 'temperature' | 'pressure' | 'flow' | 'speed' | 'voltage' | 'current'
    | 'resistance' | 'power' | 'charge' | 'energy' | 'force' | 'torque' | 'angle' | 'fraction' | 'rotation' | 'rate' | 'money' | 'date'
    | 'frequency' | 'density-per-area' | 'time-of-day';

/** `si = value * factor + offset`; temperatures are in kelvin, angles in radians, fractions as 0 to 1. */
export interface Unit {
    readonly name: string;
    readonly dimension: Dimension;
    readonly factor: number;
    readonly offset?: number;
    readonly system: 'us' | 'metric' | 'both';
    readonly title: string;
    readonly aliases?: readonly string[];
}

const inch = 0.0254;
const foot = 0.3048;
const gallon = 0.003785411784;
const pound = 0.45359237;
const gravity = 9.80665;
const minute = 60;
const hour = 3600;

const unit = (name: string, dimension: Dimension, factor: number, system: Unit['system'], title: string, aliases: readonly string[] = [], offset?: number): Unit =>
    ({ name, dimension, factor, system, title, aliases, ...(offset === undefined ? {} : { offset }) });

const list: readonly Unit[] = [
    unit('in', 'length', inch, 'us', 'inch', ['inch', 'inches', '″']),
    unit('ft', 'length', foot, 'us', 'foot', ['feet', 'foot', '′']),
    unit('yd', 'length', 0.9144, 'us', 'yard'),
    unit('mil', 'length', inch / 1000, 'us', 'thousandth of an inch', ['mils', 'thou']),
    unit('nmi', 'length', 1852, 'both', 'nautical mile', ['NM']),
    unit('mi', 'length', 1609.344, 'us', 'statute mile', ['mile', 'miles']),
    unit('mm', 'length', 0.001, 'metric', 'millimeter', ['millimeter', 'millimeters', 'millimetre', 'millimetres']),
    unit('cm', 'length', 0.01, 'metric', 'centimeter', ['centimeter', 'centimeters', 'centimetre', 'centimetres']),
    unit('m', 'length', 1, 'metric', 'meter', ['meter', 'meters', 'metre', 'metres']),
    unit('km', 'length', 1000, 'metric', 'kilometer', ['kilometer', 'kilometers', 'kilometre', 'kilometres']),
    unit('micron', 'length', 1e-6, 'metric', 'micrometer', ['microns', 'µm', 'μm', 'um']),

    unit('in2', 'area', inch ** 2, 'us', 'square inch', ['in²', 'sqin']),
    unit('ft2', 'area', foot ** 2, 'us', 'square foot', ['ft²', 'sqft']),
    unit('mm2', 'area', 1e-6, 'metric', 'square millimeter', ['mm²']),
    unit('cm2', 'area', 1e-4, 'metric', 'square centimeter', ['cm²']),
    unit('m2', 'area', 1, 'metric', 'square meter', ['m²']),

    unit('gal', 'volume', gallon, 'us', 'US gallon', ['gallon', 'gallons', 'US gal', 'US gallon', 'US gallons']),
    unit('qt', 'volume', gallon / 4, 'us', 'US quart'),
    unit('fl-oz', 'volume', gallon / 128, 'us', 'US fluid ounce'),
    unit('ft3', 'volume', foot ** 3, 'us', 'cubic foot', ['ft³', 'cuft']),
    unit('L', 'volume', 0.001, 'metric', 'liter', ['l', 'liter', 'liters', 'litre', 'litres']),
    unit('mL', 'volume', 1e-6, 'metric', 'milliliter', ['ml']),
    unit('m3', 'volume', 1, 'metric', 'cubic meter', ['m³']),

    unit('lb', 'mass', pound, 'us', 'pound', ['lbs', 'pound', 'pounds']),
    unit('oz', 'mass', pound / 16, 'us', 'ounce', ['ounce', 'ounces']),
    unit('ton', 'mass', 2240 * pound, 'us', 'long ton (2240 lb)', ['tons']),
    unit('kg', 'mass', 1, 'metric', 'kilogram', ['kilogram', 'kilograms', 'kgs']),
    unit('g', 'mass', 0.001, 'metric', 'gram'),
    unit('t', 'mass', 1000, 'metric', 'metric ton', ['tonne', 'tonnes']),

    unit('s', 'time', 1, 'both', 'second', ['sec', 'second', 'seconds']),
    unit('min', 'time', minute, 'both', 'minute', ['minute', 'minutes']),
    unit('h', 'time', hour, 'both', 'hour', ['hr', 'hrs', 'hour', 'hours']),
    unit('day', 'time', 24 * hour, 'both', 'day', ['days', 'd']),
    unit('week', 'time', 7 * 24 * hour, 'both', 'week', ['weeks']),
    unit('month', 'time', 365.25 / 12 * 24 * hour, 'both', 'month (a twelfth of 365.25 days)', ['months']),
    unit('year', 'time', 365.25 * 24 * hour, 'both', 'year (365.25 days)', ['years', 'yr', 'yrs']),
    unit('ms', 'time', 0.001, 'both', 'millisecond'),

    unit('F', 'temperature', 5 / 9, 'us', 'degree Fahrenheit', ['°F', 'degF'], 273.15 - 32 * 5 / 9),
    unit('C', 'temperature', 1, 'metric', 'degree Celsius', ['°C', 'degC', '℃'], 273.15),
    unit('K', 'temperature', 1, 'metric', 'kelvin', [], 0),

    unit('psi', 'pressure', pound * gravity / inch ** 2, 'us', 'pound-force per square inch'),
    unit('inHg', 'pressure', 3386.389, 'us', 'inch of mercury (conventional)'),
    unit('inWC', 'pressure', 249.08891, 'us', 'inch of water (conventional)', ['inH2O']),
    unit('bar', 'pressure', 1e5, 'metric', 'bar'),
    unit('mbar', 'pressure', 100, 'metric', 'millibar'),
    unit('kPa', 'pressure', 1000, 'metric', 'kilopascal'),
    unit('MPa', 'pressure', 1e6, 'metric', 'megapascal'),
    unit('Pa', 'pressure', 1, 'metric', 'pascal'),

    unit('gpm', 'flow', gallon / minute, 'us', 'US gallon a minute', ['gal/min']),
    unit('gph', 'flow', gallon / hour, 'us', 'US gallon an hour', ['gal/h']),
    unit('cfm', 'flow', foot ** 3 / minute, 'us', 'cubic foot a minute', ['ft3/min']),
    unit('L/min', 'flow', 0.001 / minute, 'metric', 'liter a minute', ['l/min', 'lpm']),
    unit('L/h', 'flow', 0.001 / hour, 'metric', 'liter an hour', ['l/h']),
    unit('L/s', 'flow', 0.001, 'metric', 'liter a second', ['l/s']),
    unit('m3/h', 'flow', 1 / hour, 'metric', 'cubic meter an hour', ['m³/h']),
    unit('m3/s', 'flow', 1, 'metric', 'cubic meter a second', ['m³/s']),

    unit('kn', 'speed', 1852 / hour, 'both', 'knot', ['kt', 'kts', 'knots', 'knot']),
    unit('mph', 'speed', 1609.344 / hour, 'us', 'statute mile an hour'),
    unit('ft/s', 'speed', foot, 'us', 'foot a second'),
    unit('km/h', 'speed', 1 / 3.6, 'metric', 'kilometer an hour'),
    unit('m/s', 'speed', 1, 'metric', 'meter a second'),

    unit('V', 'voltage', 1, 'both', 'volt', ['volt', 'volts']),
    unit('mV', 'voltage', 0.001, 'both', 'millivolt'),
    unit('kV', 'voltage', 1000, 'both', 'kilovolt'),
    unit('A', 'current', 1, 'both', 'ampere', ['amp', 'amps']),
    unit('mA', 'current', 0.001, 'both', 'milliampere'),
    unit('ohm', 'resistance', 1, 'both', 'ohm', ['Ω', 'Ω', 'ohms']),
    unit('mohm', 'resistance', 0.001, 'both', 'milliohm', ['mΩ']),
    unit('kohm', 'resistance', 1000, 'both', 'kilohm', ['kΩ']),
    unit('megohm', 'resistance', 1e6, 'both', 'megohm', ['MΩ', 'megohms']),
    unit('hp', 'power', 550 * foot * pound * gravity, 'us', 'mechanical horsepower', ['HP']),
    unit('kW', 'power', 1000, 'metric', 'kilowatt'),
    unit('W', 'power', 1, 'both', 'watt', ['watt', 'watts']),
    unit('Ah', 'charge', hour, 'both', 'ampere-hour'),
    unit('mAh', 'charge', hour / 1000, 'both', 'milliampere-hour'),
    unit('Wh', 'energy', hour, 'both', 'watt-hour'),
    unit('kWh', 'energy', 1000 * hour, 'both', 'kilowatt-hour'),
    unit('lbf', 'force', pound * gravity, 'us', 'pound-force'),
    unit('N', 'force', 1, 'metric', 'newton'),
    unit('kN', 'force', 1000, 'metric', 'kilonewton'),
    unit('kgf', 'force', gravity, 'metric', 'kilogram-force'),
    unit('lbf-ft', 'torque', pound * gravity * foot, 'us', 'pound-force foot', ['ft-lbf']),
    unit('Nm', 'torque', 1, 'metric', 'newton meter', ['N-m']),
    unit('deg', 'angle', Math.PI / 180, 'both', 'degree', ['°', 'degrees', 'degree']),
    unit('%', 'fraction', 0.01, 'both', 'percent', ['percent']),
    unit('rpm', 'rotation', Math.PI / 30, 'both', 'revolution a minute'),
    unit('drops/min', 'rate', 1 / minute, 'both', 'drops a minute', ['drop/min']),
    unit('per-day', 'rate', 1 / (24 * hour), 'both', 'times a day', ['/day']),
    unit('Hz', 'frequency', 1, 'both', 'hertz'),
    unit('per-m2', 'density-per-area', 1, 'metric', 'count a square meter', ['/m2', '/m²']),
    unit('per-ft2', 'density-per-area', 1 / foot ** 2, 'us', 'count a square foot', ['/ft2', '/ft²']),
    // Conductors: the number is a gauge, not a multiple; parse.ts turns it into an area.
    unit('AWG', 'area', Number.NaN, 'us', 'American wire gauge', ['awg']),
];

/** Every unit by its name and by each alias. */
export const units: ReadonlyMap<string, Unit> = new Map(list.flatMap(u => [u.name, ...(u.aliases ?? [])].map(name => [name, u] as const)));

export const allUnits: readonly Unit[] = list;

const titles: Readonly<Record<Dimension, string>> = {
    number: 'a plain number, such as 2', length: 'a length, such as 1-1/2 in or 38 mm', area: 'an area, such as 12 in2 or 25 mm2', volume: 'a volume, such as 12 gal or 45 L',
    mass: 'a mass, such as 35 lb or 16 kg', time: 'a time, such as 20 min or 5 years', temperature: 'a temperature, such as -34 F or -37 C',
    pressure: 'a pressure, such as 15 psi or 1 bar', flow: 'a flow, such as 800 gph or 50 L/min', speed: 'a speed, such as 7.5 kn', voltage: 'a voltage, such as 12.6 V or -280 mV',
    current: 'a current, such as 10 A', resistance: 'a resistance, such as 0.4 ohm', power: 'a power, such as 55 hp or 41 kW', charge: 'a charge, such as 110 Ah',
    energy: 'an energy, such as 1.2 kWh', force: 'a force, such as 500 lbf or 2224 N', torque: 'a torque, such as 30 lbf-ft', angle: 'an angle, such as 7 deg',
    fraction: 'a share in percent, such as 45 %', rotation: 'a speed of rotation, such as 2800 rpm', rate: 'a rate, such as 3 drops/min', money: 'an amount with its currency, such as 250 USD',
    date: 'a date, such as 2026-10-06 or 2026-10', frequency: 'a frequency, such as 60 Hz', 'density-per-area': 'a count on an area, such as 20 per-m2', 'time-of-day': 'a time of day, such as 09:40',
};

/** What a dimension is called to a surveyor, with an example. */
export function dimensionTitle(dimension: Dimension): string {
    return titles[dimension];
}
