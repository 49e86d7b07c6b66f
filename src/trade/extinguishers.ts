/**
 * Portable fire extinguishers to be carried, 33 CFR 175.320 (clause published, counts from two state course tables),
 * boats to 65 ft. One B-I counts as one 5-B, one B-II as one 20-B, on boats of model year 2017 and before.
 */

/** Each way that satisfies the rule, in bottles of at least the rating. Undefined over 65 ft, where tonnage counts. */
export function extinguishersNeeded(lengthM: number, hasFixedSystem: boolean): readonly { readonly b5: number; readonly b20: number }[] | undefined {
    const lengthFt = lengthM / 0.3048;
    if (lengthFt > 65) {
        return undefined;
    }
    if (lengthFt < 26) {
        return [{ b5: hasFixedSystem ? 0 : 1, b20: 0 }];
    }
    if (lengthFt < 40) {
        return hasFixedSystem ? [{ b5: 1, b20: 0 }] : [{ b5: 2, b20: 0 }, { b5: 0, b20: 1 }];
    }
    return hasFixedSystem ? [{ b5: 2, b20: 0 }, { b5: 0, b20: 1 }] : [{ b5: 3, b20: 0 }, { b5: 1, b20: 1 }];
}

/** Last day that a disposable bottle of a year counts: 31 December, twelve years on (rule in force since 20 April 2022). */
export function disposableExpiry(madeYear: number): number {
    return madeYear + 12;
}
