/**
 * Wastage of plate, (original - gauged) / original.
 *
 * 25 % locally and 15 % in lightly built craft are read in a federal regulator's circular 7-68 as an Army bulletin
 * reprints it (published in part: it names cases where less calls for renewal); 20 % as average of a belt is from
 * memory of the same. The steps under it are practice. Steel plate is rolled up to 14 % thicker than nominal (published,
 * for 3/16 in in widths to 120 in), so a reading over the nominal is no error by itself.
 */

/** Share lost; negative where the plate is thicker than it was said to be. Undefined where no original is positive. */
export function wastageShare(originalM: number, gaugedM: number): number | undefined {
    return originalM > 0 ? (originalM - gaugedM) / originalM : undefined;
}

/** Local wastage past which plate is renewed. */
export const renewShare = 0.25;
/** The bound of the same circular for lightly built craft; renewal is planned from here. */
export const lightCraftShare = 0.15;
/** Average over a belt past which it is renewed (from memory). */
export const renewBeltShare = 0.2;
/** From here plate is watched (practice). */
export const watchShare = 0.1;
/** A lone pit deeper than this share of the plate is to be filled or cut out (practice; 1/3 to 1/2 are used). */
export const lonePitShare = 1 / 3;
/** Most that new plate may be thicker than nominal. */
export const overthicknessShare = 0.14;

export type WastageStep = 'sound' | 'watch' | 'plan' | 'renew';

/** What a share lost asks for: watch from 10 %, plan from 20 % (light craft from 15 %), renew over 25 %. */
export function wastageStep(share: number, isLightlyBuilt = false): WastageStep {
    const slack = 1e-9;
    return share > renewShare + slack ? 'renew' : share >= (isLightlyBuilt ? lightCraftShare : renewBeltShare) - slack ? 'plan' : share >= watchShare - slack ? 'watch' : 'sound';
}
