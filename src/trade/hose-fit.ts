/**
 * Whether a hose seals on a tail: the hose's bore against the tail's outside diameter.
 *
 * How loose a hose may be is published for fuel hose only (33 CFR 183.558(d), its Table 8 from memory) and borrowed
 * here for all hose. How tight it may be is chosen: hose is pushed over a tail up to 1/16 in larger, and one with a
 * wire helix cannot be pushed over one more than 1/8 in larger. Pipe size is not hose size: compare with the tail's
 * measured diameter, never with the name of its thread.
 */

/** Tighter by up to this is a push fit, m (1/16 in, chosen). */
export const pushFitM = 0.0016;
/** Wire-reinforced hose cannot have been pushed over a tail larger by more than this, m (1/8 in, chosen). */
export const wireForceLimitM = 0.0032;

/** Sizes are read to a twentieth of a millimeter at best: 50.8 mm and "2 in" are one. */
const readingM = 0.00005;

/** Most that the bore may exceed a tail of the outside diameter given, m: 0.020, 0.035, 0.065 in by size. */
export function looseLimitM(spigotM: number): number {
    return spigotM < 0.009525 - readingM ? 0.000508 : spigotM <= 0.0254 + readingM ? 0.000889 : 0.001651;
}

export type HoseFit = 'fits' | 'loose' | 'tight';

export function hoseFit({ boreM, spigotM }: { readonly boreM: number; readonly spigotM: number }): HoseFit {
    const difference = boreM - spigotM;
    if (difference > looseLimitM(spigotM) + readingM) {
        return 'loose';
    }
    return difference < -pushFitM - readingM ? 'tight' : 'fits';
}

/** Nominal hose sizes with what they are sold as in millimeters (practice of the trade). */
const nominal: readonly (readonly [inches: number, soldAsMm: readonly number[]])[] = [
    [1 / 4, [6]], [3 / 8, [10]], [1 / 2, [12, 12.5, 13]], [5 / 8, [16]], [3 / 4, [19, 20]], [7 / 8, [22]], [1, [25]], [1 + 1 / 8, [28, 29]], [1 + 1 / 4, [32]],
    [1 + 1 / 2, [38]], [1 + 5 / 8, [41, 42]], [1 + 3 / 4, [44, 45]], [2, [50, 51]], [2 + 1 / 2, [63, 64]], [3, [75, 76]], [4, [100, 102]],
];

/** The exact nominal size, m, that a written size stands for; itself where it is none of the trade's sizes. */
export function nominalSizeM(sizeM: number): number {
    const mm = sizeM * 1000;
    for (const [inches, soldAs] of nominal) {
        if (Math.abs(mm - inches * 25.4) < 0.06 || soldAs.some(sold => Math.abs(mm - sold) < 0.06)) {
            return inches * 0.0254;
        }
    }
    return sizeM;
}

/** Whether two written sizes pair as equal: 38 mm and 1-1/2 in, 50 mm and 2 in. */
export function isSameNominalSize(aM: number, bM: number): boolean {
    return Math.abs(nominalSizeM(aM) - nominalSizeM(bM)) < 2 * readingM;
}
