/**
 * Years after which keel bolts that nobody has seen are drawn or imaged: 10 of iron or steel, 20 of stainless, bronze or
 * nickel-copper (practice; it differs). A gap over 1 mm at the joint, or one that weeps, tells of movement (practice).
 */

/** Undefined for a family of metal that no term is known for. */
export function unseenTermYears(materialClass: string): number | undefined {
    return materialClass === 'iron-or-steel' ? 10 : ['stainless', 'copper-alloy', 'nickel-alloy'].includes(materialClass) ? 20 : undefined;
}

/** The longest term, past which bolts of any metal are due. */
export const longestTermYears = 20;

export const openGapM = 0.001;

export function isOpenJoint(gapM: number | undefined, weeps: boolean | undefined): boolean {
    return weeps === true || (gapM !== undefined && gapM > openGapM + 1e-9);
}
