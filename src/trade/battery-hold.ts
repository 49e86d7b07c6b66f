/**
 * How a battery must be held: it moves no more than 1 in for one minute each way under 90 lbf or twice its weight,
 * whichever is less. 33 CFR 183.420(a), published; gasoline inboards, elsewhere a yardstick.
 */

/** Greatest movement, m. */
export const batteryMovementLimitM = 0.0254;

const gravityMs2 = 9.80665;
/** 90 lbf in newtons. */
const mostN = 90 * 0.45359237 * gravityMs2;

/** Test pull, N, for a battery of a mass in kilograms. */
export function batteryTestPullN(massKg: number): number {
    return Math.min(mostN, 2 * massKg * gravityMs2);
}
