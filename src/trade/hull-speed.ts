/** Speed and displacement against the length of the waterline, by the textbook rules in feet, knots and long tons (practice). */

const footM = 0.3048;
const knotMs = 1852 / 3600;
const longTonKg = 2240 * 0.45359237;

/** Speed of a displacement hull's own wave, m/s: 1.34 sqrt(LWL ft) knots. */
export function hullSpeedMs(waterlineM: number): number {
    return 1.34 * Math.sqrt(waterlineM / footM) * knotMs;
}

/** Speed over the square root of the waterline, knots and feet: above about 1.5 no displacement hull goes. */
export function speedLengthRatio(speedMs: number, waterlineM: number): number {
    return speedMs / knotMs / Math.sqrt(waterlineM / footM);
}

/** Displacement in long tons over (0.01 LWL ft)^3: under 100 ultralight, over 350 heavy. */
export function displacementLengthRatio(displacementKg: number, waterlineM: number): number {
    return displacementKg / longTonKg / (0.01 * waterlineM / footM) ** 3;
}

/** Block coefficient in sea water of 1025 kg/m3; outside 0.12 to 0.85 a figure is wrong (practice). Of multihulls, for one hull. */
export function blockCoefficient(displacementKg: number, waterlineM: number, beamM: number, draftM: number): number {
    return displacementKg / (1025 * waterlineM * beamM * draftM);
}
