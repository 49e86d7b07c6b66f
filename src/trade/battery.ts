/**
 * Batteries: what is left of their rating, whether the units of a bank agree, what they are charged with, and what a bank
 * holds. All limits are practice; that a lithium battery takes a device of its own is ABYC E-13, from memory.
 */

/** Greatest difference of voltages at rest within a bank, V, and of ages, months (practice). */
export const mostRestDifferenceV = 0.2;
const mostAgeDifferenceMonths = 12;

/** Time after charging, s, before which a reading tells nothing: the surface is still full (practice). */
export const restBeforeReadingS = 3600;

/** Case temperature, K, from which a battery under charge is hot (practice: chargers cut out at 50 C). */
export const hotK = 323.15;

/** Share of a rating that was measured. */
export function shareLeft({ measured, rated }: { readonly measured: number; readonly rated: number }): number {
    return measured / rated;
}

/** Difference between the highest and the lowest of a bank's voltages at rest, V. */
export function restDifferenceV(restV: readonly number[]): number {
    return restV.length === 0 ? 0 : Math.max(...restV) - Math.min(...restV);
}

/** Whether two days, in milliseconds since 1970, are more than 12 months of the calendar apart. */
export function areAgesApart({ olderMs, newerMs }: { readonly olderMs: number; readonly newerMs: number }): boolean {
    const latest = new Date(olderMs);
    latest.setUTCMonth(latest.getUTCMonth() + mostAgeDifferenceMonths);
    return newerMs > latest.getTime();
}

export interface ChargeRange {
    readonly lowV: number;
    readonly highV: number;
}

/** Voltage that limits of a 12 V battery are stated for, and the temperature, K. */
const statedV = 12;
const statedK = 298.15;
/** Compensation of lead batteries, V a cell and K: 3 to 5 mV (practice); the wider is taken. */
const compensationV = 0.005;
const cellV = 2;

/**
 * A range stated for 12 V and 25 C, at another nominal voltage and case temperature. Chargers may or may not compensate:
 * the range is widened to the compensated one and never narrowed.
 */
export function chargeRangeAt({ lowV, highV }: ChargeRange, { nominalV, caseK = statedK }: { readonly nominalV: number; readonly caseK?: number }): ChargeRange {
    const scale = nominalV / statedV;
    const shiftV = -compensationV * (nominalV / cellV) * (caseK - statedK);
    return { lowV: lowV * scale + Math.min(0, shiftV), highV: highV * scale + Math.max(0, shiftV) };
}

/** Charging voltages of a 12 V battery lie here; what lies outside at its nominal voltage is of another bank. */
export function isChargingVoltage(voltageV: number, nominalV: number): boolean {
    const at12V = voltageV * statedV / nominalV;
    return at12V >= 9 && at12V <= 18;
}

export interface BankUnit {
    readonly capacityC: number;
    /** Nominal voltage; 12 V where it is not known. */
    readonly nominalV?: number;
}

/**
 * Capacity of a bank, C, at its voltage: the sum of what its units hold, over the voltage. Two of 6 V and 220 Ah make
 * 220 Ah at 12 V; two of 12 V and 100 Ah make 200 Ah at 12 V, or 100 Ah at 24 V.
 */
export function bankCapacityC(units: readonly BankUnit[], bankV: number): number {
    return units.reduce((sum, { capacityC, nominalV = statedV }) => sum + capacityC * nominalV, 0) / bankV;
}
