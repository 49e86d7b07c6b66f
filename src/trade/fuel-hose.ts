/**
 * Which hose for gasoline may lie where, by the letters marked on it. 33 CFR 183.540 and 183.558(a), (b), published.
 *
 * A stood a fire test of 2-1/2 minutes, B did not; 1 is for liquid fuel, 2 for vent and fill. The rule binds builders
 * of boats with gasoline engines other than outboards. It does not speak of diesel nor of return lines, which are
 * taken here as feed lines because they carry liquid fuel.
 */

export type FuelHoseType = 'a1' | 'a2' | 'b1' | 'b2';
export type FuelHosePlace = 'pump-to-carburetor' | 'tank-to-engine' | 'vent-or-fill';

/** Most fuel that may run out in 2-1/2 minutes of a B hose cut where most would drain, m3: 5 US fluid ounces. */
export const leakLimitM3 = 5 * 0.003785411784 / 128;

/** Volumes are read to a twentieth of a milliliter at best: 148 mL is more than the limit, 147.9 mL is it. */
const readingM3 = 5e-8;

export type FuelHoseVerdict = 'suits' | 'leak-not-known' | 'leaks-too-much' | 'wrong-type';

/** Whether a hose suits its place; `leakM3` is what runs out of it when cut, boat at rest and tank full. */
export function judgeFuelHose(type: FuelHoseType, place: FuelHosePlace, leakM3?: number): FuelHoseVerdict {
    const suits = place === 'vent-or-fill' ? ['a1', 'a2'] : ['a1'];
    const suitsIfLittleLeaks = place === 'vent-or-fill' ? ['b1', 'b2'] : place === 'tank-to-engine' ? ['b1'] : [];
    if (suits.includes(type)) {
        return 'suits';
    }
    if (!suitsIfLittleLeaks.includes(type)) {
        return 'wrong-type';
    }
    return leakM3 === undefined ? 'leak-not-known' : leakM3 <= leakLimitM3 + readingM3 ? 'suits' : 'leaks-too-much';
}
