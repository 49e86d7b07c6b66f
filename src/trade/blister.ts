/**
 * Blisters in gelcoat and laminate, by count on a square meter, diameter and depth.
 *
 * Under 5 on a square meter and shallow they are watched; over 20, over 50 mm across, or reaching into the laminate they
 * are treated (practice). Gelcoat is 0.5 to 0.8 mm thick as laid (practice), so a blister deeper than 1.5 mm reaches
 * the laminate where nothing else is said of it (chosen).
 */

export const manyPerM2 = 20;
export const fewPerM2 = 5;
export const largeM = 0.05;
export const deepM = 0.0015;

const slack = 1e-9;

export interface Blisters {
    readonly densityPerM2?: number;
    readonly diameterM?: number;
    readonly depthM?: number;
    readonly isIntoLaminate?: boolean;
}

export type BlisterFault = 'many' | 'large' | 'into-laminate';

/** What makes blisters a fault; none of these, they are watched. */
export function blisterFaults({ densityPerM2, diameterM, depthM, isIntoLaminate }: Blisters): BlisterFault[] {
    return [
        ...(densityPerM2 !== undefined && densityPerM2 > manyPerM2 + slack ? ['many' as const] : []),
        ...(diameterM !== undefined && diameterM > largeM + slack ? ['large' as const] : []),
        ...(isIntoLaminate ?? (depthM !== undefined && depthM > deepM + slack) ? ['into-laminate' as const] : []),
    ];
}

/** Count over area; undefined where no area is given. */
export function densityPerM2(count: number, areaM2: number): number | undefined {
    return areaM2 > 0 ? count / areaM2 : undefined;
}
