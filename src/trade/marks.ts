/**
 * Marks, numbers and placards: least heights of letters and sizes.
 *
 * Official number inside, 3 in, after the letters NO. (46 CFR 67.121, secondary); name and hailing port outside, 4 in
 * (46 CFR 67.123, published); state number on each side of the bow, 3 in (33 CFR 173.27, published). From 26 ft on an
 * oil placard of at least 5 in by 8 in (33 CFR 155.450, secondary) and a garbage placard of at least 9 in wide by 4 in
 * high (33 CFR 151.59, published); from 40 ft on, with galley and berths and going to sea, a waste plan (33 CFR 151.57,
 * from memory).
 */

const inchM = 0.0254;

export const leastLetterM = { 'official-number': 3 * inchM, 'name-and-port': 4 * inchM, 'state-number': 3 * inchM } as const;

export const placardsFromM = 26 * 0.3048;
export const wastePlanFromM = 40 * 0.3048;

export const leastPlacard = {
    oil: { widthM: 8 * inchM, heightM: 5 * inchM, text: '5 in by 8 in (127 mm by 203 mm)' },
    garbage: { widthM: 9 * inchM, heightM: 4 * inchM, text: '9 in wide by 4 in high (229 mm by 102 mm)' },
} as const;

/** Whether a placard is large enough; an oil placard may hang either way up. A side not known counts as enough. */
export function isPlacardLargeEnough(kind: keyof typeof leastPlacard, widthM: number | undefined, heightM: number | undefined): boolean {
    const least = leastPlacard[kind];
    const slack = 1e-6;
    const fits = (w: number | undefined, h: number | undefined) => (w ?? Infinity) >= least.widthM - slack && (h ?? Infinity) >= least.heightM - slack;
    return fits(widthM, heightM) || (kind === 'oil' && fits(heightM, widthM));
}

/** Official number with the letters before it, as "NO. 123456". */
export function hasNumberPrefix(text: string): boolean {
    return /^\s*no\.?\s*\d/i.test(text);
}
