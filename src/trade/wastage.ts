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
/** Most that new plate may be thicker than nominal. */
export const overthicknessShare = 0.14;
/** A reading this far over the original says that the original was thicker, or that the gauge misread (chosen). */
export const overOriginalShare = 0.05;
/** A gauge further off than this on its test block has proved nothing (practice). */
export const blockErrorM = 0.0001;

export type WastageStep = 'sound' | 'watch' | 'plan' | 'renew';

/** The shares lost at which plate is watched, planned for renewal, the same on a lightly built craft, and renewed. */
export interface WastageLimits {
    readonly watch: number;
    readonly plan: number;
    readonly planLight: number;
    readonly renew: number;
}

export const usualWastageLimits: WastageLimits = { watch: watchShare, plan: renewBeltShare, planLight: lightCraftShare, renew: renewShare };

const slack = 1e-9;

/** What a share lost asks for: watch from 10 %, plan from 20 % (light craft from 15 %), renew over 25 %. */
export function wastageStep(share: number, isLightlyBuilt = false, limits: WastageLimits = usualWastageLimits): WastageStep {
    return share > limits.renew + slack ? 'renew' : share >= (isLightlyBuilt ? limits.planLight : limits.plan) - slack ? 'plan' : share >= limits.watch - slack ? 'watch' : 'sound';
}

/** How far readings over the original tell against them: over 5 % the original is doubtful, over 14 % no plate is rolled so thick. */
export function overthickness(originalM: number, gaugedM: number): 'none' | 'as-rolled' | 'impossible' {
    const over = -(wastageShare(originalM, gaugedM) ?? 0);
    return over > overthicknessShare + slack ? 'impossible' : over > overOriginalShare + slack ? 'as-rolled' : 'none';
}

/** Whether a gauge that read `readingM` on a block of `blockM` is off by more than 0.1 mm. */
export function isGaugeOff(blockM: number, readingM: number): boolean {
    return Math.abs(blockM - readingM) > blockErrorM + slack;
}

/** Mean of readings in the unit given; undefined of none. */
export function meanOf(readings: readonly number[]): number | undefined {
    return readings.length === 0 ? undefined : readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
}
