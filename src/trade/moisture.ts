/**
 * Moisture meters on laminate, and moisture of wood.
 *
 * On laminate a meter tells of capacitance or resistance on a scale of its own, never percent by weight; paint, gelcoat,
 * foil, carbon, tanks and bilge water fool it (published, surveyors' writings agree). So a reading is only compared with
 * that of a dry place by the same meter in the same mode: ratio = reading / dry reference. That a ratio over 2 tells of
 * water is practice. A code of practice of 1998 asks for at least 24 hours ashore (secondary).
 *
 * In wood percent of the dry weight is proper. 12 to 16 % is air dry; over 20 % it can rot; 28 to 30 % is saturation of
 * the fiber (practice and wood science, from memory). Immersed planking is saturated and sound, so that only a probe tells.
 */

export type Sound = 'clear' | 'dull' | 'hollow';

/** Reading over dry reference; undefined where the reference is not positive. */
export function moistureRatio(reading: number, dryReference: number): number | undefined {
    return dryReference > 0 ? reading / dryReference : undefined;
}

/** Ratio from which, when passed, a contrast is told (practice). */
export const contrastRatio = 2;
/** Readings taken sooner after lifting or washing are early. */
export const settledS = 24 * 3600;

const slack = 1e-9;

export type ContrastStep = 'none' | 'watch' | 'fault' | 'unsounded';

/** A contrast that sounds dull or hollow is a fault, one that sounds clear is watched. */
export function contrastStep(ratio: number, sound: Sound | undefined, limit = contrastRatio): ContrastStep {
    return ratio <= limit + slack ? 'none' : sound === undefined ? 'unsounded' : sound === 'clear' ? 'watch' : 'fault';
}

/** Whether readings are early: under 24 hours since she was lifted or washed. Not told where neither is known. */
export function isEarly(sinceLiftS: number | undefined, sinceWashS: number | undefined): boolean {
    return [sinceLiftS, sinceWashS].some(s => s !== undefined && s < settledS - slack);
}

/** Moisture of wood past which it can rot. */
export const dampWoodShare = 0.2;
/** Moisture of wood past which its fiber is saturated. */
export const saturatedWoodShare = 0.28;
/** A probe that goes further in than this has met decay (practice). */
export const softProbeM = 0.005;

export type WoodStep = 'none' | 'damp' | 'decay' | 'unprobed';

/**
 * Over 28 % with a probe past 5 mm is decay; over 20 % is damp. Immersed wood is never merely damp, and is probed where
 * it is saturated. Wood that is not immersed and saturated without a probe is damp: the probe would only make it worse.
 */
export function woodStep({ share, probeM, isImmersed = false }: { readonly share: number; readonly probeM?: number | undefined; readonly isImmersed?: boolean }): WoodStep {
    const isSaturated = share > saturatedWoodShare + slack;
    if (isSaturated && probeM !== undefined && probeM > softProbeM + slack) {
        return 'decay';
    }
    if (isImmersed) {
        return isSaturated && probeM === undefined ? 'unprobed' : 'none';
    }
    return share > dampWoodShare + slack ? 'damp' : 'none';
}
