/**
 * Life jackets and throwable devices to be carried, 33 CFR 175.15 and 175.17 (published): one wearable of a fitting size
 * for each person, and one throwable as well from 16 ft on; canoes and kayaks are excepted from the throwable.
 */

/** Length of the hull from which a throwable device is carried, m (16 ft). */
export const throwableFromM = 16 * 0.3048;

export interface Wearables {
    /** Usable jackets in sizes for adults. */
    readonly adult: number;
    /** Usable jackets in sizes for children. */
    readonly child: number;
}

/**
 * Jackets that are missing, for adults and for children. A size does not stand in for the other: a jacket counts only
 * on a person it fits.
 */
export function lifejacketsMissing(persons: number, children: number, { adult, child }: Wearables): Wearables {
    return { adult: Math.max(0, persons - children - adult), child: Math.max(0, children - child) };
}

export function throwablesNeeded(lengthM: number): number {
    return lengthM >= throwableFromM - 1e-9 ? 1 : 0;
}
