/**
 * What the capacity label of a small outboard boat may say, 33 CFR 183.41 and 183.53 (published): monohulls under 20 ft,
 * not sailing boats, canoes, kayaks or inflatables.
 */

const footM = 0.3048;
const poundKg = 0.45359237;
const hpW = 550 * footM * poundKg * 9.80665;

/** Length under which the rule holds, m (20 ft). */
export const labelUnderM = 20 * footM;

/** Least height of the transom for the greater power with remote steering, m (20 in). */
export const highTransomM = 20 * 0.0254;

export interface OutboardBoat {
    readonly lengthM: number;
    /** Greatest width of the transom, or of the aftermost quarter where there is no full transom. */
    readonly transomWidthM: number;
    /** Remote steering on a transom of at least 20 in. */
    readonly isRemoteOnHighTransom: boolean;
    readonly isFlatBottom: boolean;
}

/** Length by transom width in feet. */
export function powerFactor(lengthM: number, transomWidthM: number): number {
    return lengthM / footM * (transomWidthM / footM);
}

/** Table 183.53: greatest factor, to the nearest integer, and the horsepower. */
const steps: readonly (readonly [toFactor: number, hp: number])[] = [[35, 3], [39, 5], [42, 7.5], [45, 10], [52, 15]];

/**
 * Greatest engine power by computation, W. F = length x transom width in feet. Up to 52.5 by the table, a flat bottom
 * with hard chines one step lower (there is none below 3 hp, which is kept). Over 52.5: 2F - 90 with remote steering
 * and a transom of 20 in, else 0.8F - 25, or 0.5F - 15 with a flat bottom; raised to the next multiple of 5 hp.
 */
export function powerCapacityW(boat: OutboardBoat): number {
    const factor = powerFactor(boat.lengthM, boat.transomWidthM);
    return horsepower(factor, boat) * hpW;
}

function horsepower(factor: number, { isRemoteOnHighTransom, isFlatBottom }: OutboardBoat): number {
    if (factor <= 52.5 + 1e-9) {
        const at = steps.findIndex(([to]) => Math.min(Math.round(factor), 52) <= to);
        return steps[Math.max(0, at - (isFlatBottom ? 1 : 0))]?.[1] ?? 0;
    }
    const computed = isRemoteOnHighTransom ? 2 * factor - 90 : isFlatBottom ? 0.5 * factor - 15 : 0.8 * factor - 25;
    return Math.ceil((computed - 1e-9) / 5) * 5;
}

/** Persons that a load in the label's pounds stands for: (lb + 32) / 141, to the nearest, halves upward. */
export function personsOfLoad(massKg: number): number {
    return Math.floor((massKg / poundKg + 32) / 141 + 0.5 + 1e-9);
}
