/**
 * Speed of an engine at full throttle against its rating: a loaded diesel reaches 97 to 103 % of it (makers and
 * practice). Under that it is overloaded; over it the propeller is light, or a figure false. The tachometer at the helm
 * agrees within 2 % with an independent one, twins with each other within 3 % (practice). Speeds in any one unit.
 */

export const leastRatedShare = 0.97;
export const mostRatedShare = 1.03;
export const tachometerShare = 0.02;
export const twinSpeedShare = 0.03;

const tolerance = 1e-9;

/** How the speed reached stands to the rating. */
export function judgeRatedSpeed(reached: number, rated: number): 'overloaded' | 'reached' | 'light' {
    return reached < (leastRatedShare - tolerance) * rated ? 'overloaded' : reached > (mostRatedShare + tolerance) * rated ? 'light' : 'reached';
}

/** Error of a tachometer against an independent one, a share: positive where it shows too much. */
export function tachometerError(shown: number, independent: number): number {
    return shown / independent - 1;
}

/** True speed behind a shown one, by an error found at another speed. */
export function trueSpeed(shown: number, errorShare: number): number {
    return shown / (1 + errorShare);
}

/** Share by which the slower of twins lies under the faster. */
export function twinSpeedDifference(a: number, b: number): number {
    return Math.abs(a - b) / Math.max(a, b);
}
