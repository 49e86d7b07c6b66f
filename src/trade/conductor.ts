/**
 * Copper conductors: American wire gauges, the current they may carry, and the voltage lost along them.
 *
 * Allowable amperes: 33 CFR 183.425, Table 5 (published; ambient 30 C read second-hand). Factors for engine spaces and
 * for bundles at 50 V and over are its notes 1 and 2: that the notes exist is published, their figures are from memory.
 * Voltage drop: circular mils = K I L / E with K = 10.75 ohm circular mils a foot, ABYC E-11, from memory; 3 and 10 %
 * are read second-hand. The table binds builders of boats with gasoline engines; elsewhere it is a yardstick.
 */

/** Rated temperature of the insulation, C. */
export type InsulationC = 60 | 75 | 80 | 90 | 105 | 125 | 200;

export const insulationClassesC: readonly InsulationC[] = [60, 75, 80, 90, 105, 125, 200];

/** Insulation taken where none is named; say so where it is used (chosen). */
export const assumedInsulationC: InsulationC = 75;

/** Gauges count downwards; 1/0 to 4/0 are 0, -1, -2 and -3. */
const table5: readonly (readonly [gauge: number, amperes: readonly number[]])[] = [
    [18, [10, 10, 15, 20, 20, 25, 25]], [16, [15, 15, 20, 25, 25, 30, 35]], [14, [20, 20, 25, 30, 35, 40, 45]], [12, [25, 25, 35, 40, 45, 50, 55]],
    [10, [40, 40, 50, 55, 60, 70, 70]], [8, [55, 65, 70, 70, 80, 90, 100]], [6, [80, 95, 100, 100, 120, 125, 135]], [4, [105, 125, 130, 135, 160, 170, 180]],
    [3, [120, 145, 150, 155, 180, 195, 210]], [2, [140, 170, 175, 180, 210, 225, 240]], [1, [165, 195, 210, 210, 245, 265, 280]], [0, [195, 230, 245, 245, 285, 305, 325]],
    [-1, [225, 265, 285, 285, 330, 355, 370]], [-2, [260, 310, 330, 330, 385, 410, 430]], [-3, [300, 360, 385, 385, 445, 475, 510]],
];

/** The class of the table next at or under a rating, C; undefined under 60 C. */
export function insulationClassC(ratedC: number): InsulationC | undefined {
    return insulationClassesC.findLast(rated => rated <= ratedC + 1e-6);
}

const engineSpaceFactors: Readonly<Record<InsulationC, number>> = { 60: 0.58, 75: 0.75, 80: 0.78, 90: 0.82, 105: 0.85, 125: 0.89, 200: 1 };

/** Gauges that the table holds, thinnest first. */
export const tabulatedGauges: readonly number[] = table5.map(([gauge]) => gauge);

/** Diameter of a solid conductor of a gauge, m: 0.005 x 92^((36 - n) / 39) in (computed; the definition of the gauge). */
export function gaugeDiameterM(gauge: number): number {
    return 0.005 * 92 ** ((36 - gauge) / 39) * 0.0254;
}

/** Area of copper of a gauge, m2. */
export function gaugeAreaM2(gauge: number): number {
    return Math.PI / 4 * gaugeDiameterM(gauge) ** 2;
}

/** A gauge as it is written: 14 AWG, 2/0 AWG. */
export function gaugeTitle(gauge: number): string {
    return gauge > 0 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`;
}

/** A circular mil is the area of a circle of 0.001 in. */
const circularMilM2 = Math.PI / 4 * (0.001 * 0.0254) ** 2;

export function circularMils(areaM2: number): number {
    return areaM2 / circularMilM2;
}

/** Areas are written to three figures at best: 2.08 mm2 is 14 AWG. */
const writtenShare = 0.005;

/** The tabulated gauge next at or under an area; undefined for less copper than 18 AWG (0.823 mm2). */
export function gaugeWithin(areaM2: number): number | undefined {
    return tabulatedGauges.findLast(gauge => gaugeAreaM2(gauge) <= areaM2 * (1 + writtenShare));
}

/** The thinnest tabulated gauge with at least an area; undefined over 4/0 AWG (107 mm2). */
export function gaugeFor(areaM2: number): number | undefined {
    return tabulatedGauges.find(gauge => gaugeAreaM2(gauge) >= areaM2 * (1 - 1e-9));
}

export interface Conductor {
    readonly areaM2: number;
    readonly insulationC: InsulationC;
    readonly isEngineSpace?: boolean;
    /** Current-carrying conductors in one bundle or sheath; counts at 50 V and over only. */
    readonly bundled?: number;
    readonly systemV?: number;
}

/** Factor for conductors bundled at 50 V and over (note 2, from memory). */
export function bundleFactor(conductors: number): number {
    return conductors >= 25 ? 0.4 : conductors >= 7 ? 0.5 : conductors >= 4 ? 0.6 : conductors >= 3 ? 0.7 : 1;
}

/** Allowable current, A, of a conductor; a metric one counts as the next smaller gauge. Undefined under 18 AWG. */
export function allowableCurrentA({ areaM2, insulationC, isEngineSpace = false, bundled = 1, systemV = 12 }: Conductor): number | undefined {
    const gauge = gaugeWithin(areaM2);
    const amperes = table5.find(row => row[0] === gauge)?.[1][insulationClassesC.indexOf(insulationC)];
    return amperes === undefined ? undefined : amperes * (isEngineSpace ? engineSpaceFactors[insulationC] : 1) * (systemV >= 50 ? bundleFactor(bundled) : 1);
}

/** The thinnest tabulated gauge that may carry a current; undefined where none may. */
export function gaugeForCurrent(currentA: number, conductor: Omit<Conductor, 'areaM2'>): number | undefined {
    return tabulatedGauges.find(gauge => (allowableCurrentA({ ...conductor, areaM2: gaugeAreaM2(gauge) }) ?? 0) >= currentA - 1e-9);
}

/** 10.75 ohm circular mils a foot, in ohm meters: warm stranded copper with its joints. */
export const resistivityOhmM = 10.75 * circularMilM2 / 0.3048;

export type Circuit = 'critical' | 'other';

/** Share of the voltage that may be lost: 3 % for panel feeders, blowers, bilge pumps, electronics and navigation lights; else 10 %. */
export function allowedDropShare(circuit: Circuit): number {
    return circuit === 'critical' ? 0.03 : 0.1;
}

/** Voltage lost, V, over the way there and back. */
export function voltageDropV({ currentA, roundTripM, areaM2 }: { readonly currentA: number; readonly roundTripM: number; readonly areaM2: number }): number {
    return resistivityOhmM * currentA * roundTripM / areaM2;
}

/** Share of the voltage lost between the source and the load, both measured under load. */
export function measuredDropShare({ sourceV, loadV }: { readonly sourceV: number; readonly loadV: number }): number {
    return (sourceV - loadV) / sourceV;
}

/** Area of copper, m2, that loses no more than a voltage. */
export function areaForDropM2({ currentA, roundTripM, dropV }: { readonly currentA: number; readonly roundTripM: number; readonly dropV: number }): number {
    return resistivityOhmM * currentA * roundTripM / dropV;
}

/** Thinnest gauge allowed: 16 AWG by itself, 18 AWG in a sheath that it leaves by at most 30 in (33 CFR 183.425, published). */
export function thinnestGauge(isSheathed: boolean): number {
    return isSheathed ? 18 : 16;
}
