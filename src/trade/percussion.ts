/**
 * Percussion sounding: patches that sound dull or hollow, summed and set against the panel they lie in.
 *
 * Over 5 % of the panel is a fault; over 25 %, or where mast, chainplate or engine bears on it, it is more urgent
 * (practice). A patch larger than its panel makes a share over 1: a slip of the figures, which is not told here.
 */

export const hollowShare = 0.05;
export const wideHollowShare = 0.25;

const slack = 1e-9;

/** Sum of the patches over the panel; undefined where the panel has no area. */
export function shareHollow(patchesM2: readonly number[], panelM2: number): number | undefined {
    return panelM2 > 0 ? patchesM2.reduce((sum, patch) => sum + patch, 0) / panelM2 : undefined;
}

export type HollowStep = 'none' | 'fault' | 'urgent';

export function hollowStep(share: number, isUnderLoad: boolean): HollowStep {
    return share <= hollowShare + slack ? 'none' : share > wideHollowShare + slack || isUnderLoad ? 'urgent' : 'fault';
}
