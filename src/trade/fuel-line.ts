/**
 * The line from a gasoline tank to the engine, 33 CFR 183.568, published: it lies above the top of the tank; or an
 * anti-siphon device or electric stop valve stands at the tank, or before any part that lies lower; or, where the top
 * of the tank is below the inlet of the engine, it is metal or A1 hose with a manual valve at the tank that is reached
 * from outside the space, and a second one at the engine where the line is longer than 12 ft. The rule binds builders
 * of boats with gasoline engines other than outboards.
 */

/** Length over which a line under the valve option takes a second valve, m: 12 ft. */
export const secondValveLengthM = 12 * 0.3048;

/** Lengths are read to a millimeter: 3.658 m is 12 ft. */
const readingM = 0.001;

export function needsSecondValve(lineLengthM: number): boolean {
    return lineLengthM > secondValveLengthM + readingM;
}

/** Resistance that fill and tank to ground stay under, ohm (33 CFR 183.572, from memory). */
export const staticGroundLimitOhm = 100;

/** Whether static electricity finds its way to ground: less than 100 ohm. */
export function isStaticallyGrounded(resistanceOhm: number): boolean {
    return resistanceOhm < staticGroundLimitOhm * (1 - 1e-9);
}

/** Most that a fuel tank may move at its mounting surface, m: 1/4 in (33 CFR 183.550(b), published). */
export const tankMovementLimitM = 0.25 * 0.0254;

/** Whether it moves more than that; movement is read to a tenth of a millimeter at best. */
export function movesTooMuch(movementM: number): boolean {
    return movementM > tankMovementLimitM + 0.0001;
}
