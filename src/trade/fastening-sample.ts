/**
 * Fastenings drawn from planking as a sample for the rest.
 *
 * Over 10 % bad calls for advice, over 25 % for refastening (practice; a federal regulator's circular 7-95 treats of
 * it, its figures from memory). A sample speaks for the rest only when at least 4 were drawn on each side and not all in
 * one place (practice: both sides, garboards and hood ends). A fastening is bad when a quarter of its shank is gone.
 */

export const adviceShare = 0.1;
export const refastenShare = 0.25;
export const leastPerSide = 4;
/** Share of the shank gone from which a fastening is bad (practice). */
export const badShankShare = 0.25;

const slack = 1e-9;

export type FasteningStep = 'sound' | 'advice' | 'refasten';

export function fasteningStep(bad: number, sampled: number): FasteningStep | undefined {
    if (!(sampled > 0) || bad > sampled) {
        return undefined;
    }
    const share = bad / sampled;
    return share > refastenShare + slack ? 'refasten' : share > adviceShare + slack ? 'advice' : 'sound';
}

export interface Sample {
    readonly sampled: number;
    readonly port?: number | undefined;
    readonly starboard?: number | undefined;
    readonly places?: number | undefined;
}

/** Why a sample is too thin to speak for the rest; where sides are not told apart, fewer than twice the least is too few. */
export function thinSample({ sampled, port, starboard, places }: Sample): 'few' | 'one-side' | 'one-place' | undefined {
    const sides = port !== undefined || starboard !== undefined ? [port ?? sampled - (starboard ?? 0), starboard ?? sampled - (port ?? 0)] : [];
    return sides.some(side => side <= 0) ? 'one-side' : sampled < 2 * leastPerSide || sides.some(side => side < leastPerSide) ? 'few' : places === 1 ? 'one-place' : undefined;
}
