/** Drops to volume: about 20 drops to the milliliter (a pharmacist's figure; calculation with it). */
export const dropM3 = 1e-6 / 20;

/** Volume a day, m3, of a rate in drops a second. */
export function dripsPerDayM3(dropsPerS: number): number {
    return dropsPerS * dropM3 * 86_400;
}
