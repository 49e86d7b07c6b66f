/**
 * Length of tail that clamps need: each band wholly on the tail, 6 mm (1/4 in) between bands and to the hose's end.
 * The end gap is that of ABYC H-24 for fuel hose (read second-hand); the gap between bands is practice.
 */

export const clampGapM = 0.006;
export const hoseEndGapM = 0.006;

export function spigotLengthNeededM({ clamps, bandM }: { readonly clamps: number; readonly bandM: number }): number {
    return clamps <= 0 ? 0 : clamps * bandM + (clamps - 1) * clampGapM + hoseEndGapM;
}
