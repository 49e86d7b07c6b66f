/**
 * Flow of water in through an opening below the waterline, as through a sharp-edged orifice.
 *
 * Q = Cd x A x sqrt(2 g h), textbook hydraulics. It holds for a free opening whose depth is large against its
 * bore, with no water yet inside above it; hose, bends and valves behind it lessen the flow.
 */

/** Standard gravity, m/s2 (exact by convention). */
export const gravityMs2 = 9.80665;

/**
 * Discharge coefficient of a sharp-edged hole in a thin wall, about 0.60 to 0.62 (published hydraulics texts). Tables
 * that circulate among owners use 1.0, which no opening reaches.
 */
export const defaultDischargeCoefficient = 0.6;

export interface Orifice {
    /** Clear bore, m. */
    readonly boreM: number;
    /** Depth of the opening's center below the outside water, m. */
    readonly depthM: number;
    readonly dischargeCoefficient?: number;
}

/** Inflow in m3/s; 0 at or above the waterline. */
export function inflowM3s({ boreM, depthM, dischargeCoefficient = defaultDischargeCoefficient }: Orifice): number {
    return depthM <= 0 ? 0 : dischargeCoefficient * Math.PI / 4 * boreM ** 2 * Math.sqrt(2 * gravityMs2 * depthM);
}

/** Time in seconds to fill a volume at a net inflow; undefined where the pumps keep up. */
export function timeToFillS(volumeM3: number, inflow: number, pumpedM3s = 0): number | undefined {
    return inflow > pumpedM3s ? volumeM3 / (inflow - pumpedM3s) : undefined;
}
