/**
 * Pressure lost by an air chamber between two readings, with the change of temperature taken out.
 *
 * p2' = (p2 + pa) T1 / T2 - pa: the second gauge reading brought to the temperature of the first by the gas law at
 * constant volume (exact for a rigid chamber; a tube stretches a little, so small falls mean nothing). pa is standard
 * air pressure, as the barometer is not recorded. Computed.
 */
export const standardAtmospherePa = 101_325;

export interface TubeTest {
    readonly startPa: number;
    readonly endPa: number;
    readonly airStartK?: number;
    readonly airEndK?: number;
}

/** Fall in Pa, positive where pressure was lost; uncorrected where a temperature is missing. */
export function tubeFallPa({ startPa, endPa, airStartK, airEndK }: TubeTest): number {
    const isCorrected = airStartK !== undefined && airEndK !== undefined && airStartK > 0 && airEndK > 0;
    return startPa - (isCorrected ? (endPa + standardAtmospherePa) * airStartK / airEndK - standardAtmospherePa : endPa);
}
