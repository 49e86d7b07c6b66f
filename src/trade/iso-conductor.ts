/**
 * Copper conductors in metric sizes: the current they may carry by ISO 10133 and ISO 13297, Table A.1, at 30 C, and the
 * least sizes by ISO 10133. The table and its factors for engine spaces are from memory, to be confirmed in the current
 * text; the least sizes are published. Bundles of four and more are reduced by factors not held here: count such a wire
 * as the next smaller American gauge instead.
 */

/** Insulation classes that the table holds, C; 85 and 90 share a column. */
const classesC = [60, 70, 85, 105] as const;

/** Amperes by class, by nominal area in mm2. */
const tableA1: readonly (readonly [mm2: number, amperes: readonly number[]])[] = [
    [0.75, [6, 10, 12, 16]], [1, [8, 14, 18, 20]], [1.5, [12, 18, 21, 25]], [2.5, [17, 25, 30, 35]], [4, [22, 35, 40, 45]], [6, [29, 45, 50, 60]],
    [10, [40, 65, 70, 90]], [16, [54, 90, 100, 130]], [25, [71, 120, 140, 170]], [35, [87, 160, 185, 210]], [50, [105, 210, 230, 270]], [70, [135, 265, 285, 330]],
];

/** Factors for engine spaces by class; none is held for 60 C. */
const engineSpaceFactors: readonly (number | undefined)[] = [undefined, 0.75, 0.82, 0.86];

/** Nominal areas of the table, m2, thinnest first. */
export const isoAreasM2: readonly number[] = tableA1.map(([mm2]) => mm2 * 1e-6);

/** Whether an area is one of the nominal sizes. */
const isNominal = (areaM2: number, mm2: number): boolean => Math.abs(areaM2 * 1e6 - mm2) <= 1e-6;

export interface IsoConductor {
    readonly areaM2: number;
    /** Rating of the insulation, C; the class next at or under it counts. */
    readonly insulationC: number;
    readonly isEngineSpace?: boolean;
}

/**
 * Allowable current, A, of a single conductor of a nominal size from 0.75 to 70 mm2. Undefined for other sizes, for
 * insulation under 60 C, and for 60 C in an engine space.
 */
export function isoAllowableCurrentA({ areaM2, insulationC, isEngineSpace = false }: IsoConductor): number | undefined {
    const column = classesC.findLastIndex(rated => rated <= insulationC + 1e-6);
    const amperes = tableA1.find(([mm2]) => isNominal(areaM2, mm2))?.[1][column];
    const factor = isEngineSpace ? engineSpaceFactors[column] : 1;
    return amperes === undefined || factor === undefined ? undefined : amperes * factor;
}

/** The thinnest nominal size, m2, that may carry a current; undefined where none may. */
export function isoAreaForCurrentM2(currentA: number, conductor: Omit<IsoConductor, 'areaM2'>): number | undefined {
    return isoAreasM2.find(areaM2 => (isoAllowableCurrentA({ ...conductor, areaM2 }) ?? 0) >= currentA - 1e-9);
}

/** Least area, m2: 1 mm2 by itself, 0.75 mm2 in a sheath (ISO 10133:2012, published). */
export function isoLeastAreaM2(isSheathed: boolean): number {
    return isSheathed ? 0.75e-6 : 1e-6;
}
