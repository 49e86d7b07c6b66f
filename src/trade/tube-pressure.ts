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

/** The second gauge reading brought to the temperature of the first, p2' = (p2 + pa) T1 / T2 - pa. Undefined where a temperature is missing. */
export function tubeEndAtStartPa({ endPa, airStartK, airEndK }: TubeTest): number | undefined {
    return airStartK !== undefined && airEndK !== undefined && airStartK > 0 && airEndK > 0
        ? (endPa + standardAtmospherePa) * airStartK / airEndK - standardAtmospherePa : undefined;
}

/** Fall in Pa, positive where pressure was lost; uncorrected where a temperature is missing. */
export function tubeFallPa(test: TubeTest): number {
    return test.startPa - (tubeEndAtStartPa(test) ?? test.endPa);
}

/** Share of the starting gauge pressure that fell, (p1 - p2') / p1, negative where it rose. Undefined of a tube that was not blown up. */
export function tubeFallShare(test: TubeTest): number | undefined {
    return test.startPa > 0 ? tubeFallPa(test) / test.startPa : undefined;
}

/**
 * How much colder the air must have grown to bring a fall down to a share of the starting pressure, in K, where it began
 * at `airK`: p2' = (1 - share) p1 gives T2 = T1 (p2 + pa) / (p2' + pa). Computed; negative where none is needed.
 */
export function coolingThatExplainsK({ startPa, endPa }: TubeTest, share: number, airK = 293.15): number {
    return airK * (1 - (endPa + standardAtmospherePa) / ((1 - share) * startPa + standardAtmospherePa));
}

/** No air cools by more than this over such a test (chosen). */
export const mostCoolingK = 40;
