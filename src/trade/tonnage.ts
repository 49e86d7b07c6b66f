/**
 * Simplified admeasurement: gross tons = k L B D / 100 in feet, 46 CFR 69.209 (published, a measuring office's sheet).
 * L stem to stern without rudder, bowsprit or bracket, B outside the skin, D sheer to outside of the bottom skin, each
 * to a tenth of a foot. Of multihulls the hulls are summed and deckhouses as large as the hull are counted (from
 * memory); neither is done here. Certificates carry whole tons.
 */

/** `sailing-keel-in-depth`: the keel cannot be told from the hull and is measured into the depth. */
export type HullForm = 'sailing' | 'sailing-keel-in-depth' | 'ship' | 'box';

const coefficients: Readonly<Record<HullForm, number>> = { sailing: 0.5, 'sailing-keel-in-depth': 0.375, ship: 0.67, box: 0.84 };

export interface Hull {
    readonly lengthM: number;
    readonly beamM: number;
    readonly depthM: number;
    readonly form: HullForm;
}

export function grossTons({ lengthM, beamM, depthM, form }: Hull): number {
    return coefficients[form] * lengthM * beamM * depthM / 0.3048 ** 3 / 100;
}

/** Net tons: 0.9 of gross for sailing hulls, 0.8 for others, all of it with no engine inside the hull. */
export function netTons(gross: number, form: HullForm, hasEngineInHull: boolean): number {
    return !hasEngineInHull ? gross : gross * (form === 'sailing' || form === 'sailing-keel-in-depth' ? 0.9 : 0.8);
}

/** Least net tons of a vessel that can be documented (46 CFR 67, from memory). */
export const documentedFromNetTons = 5;

/** A length as it is taken for tonnage: to a tenth of a foot. */
export function toTenthOfFootM(lengthM: number): number {
    return Math.round(lengthM / 0.3048 * 10) / 10 * 0.3048;
}

/** Share by which a certificate may differ from what her dimensions give before the difference is queried (chosen). */
export const tonnageTolerance = 0.05;

/**
 * Whether tons on a certificate can come of the tons computed: within 5 %, the result being cut or rounded to a whole
 * ton (from memory) where the certificate carries whole tons.
 */
export function tonsAgree(certificate: number, computed: number): boolean {
    const [least, most] = [computed * (1 - tonnageTolerance), computed * (1 + tonnageTolerance)];
    return Number.isInteger(certificate) ? certificate >= Math.floor(least) && certificate <= Math.round(most) : certificate >= least - 1e-9 && certificate <= most + 1e-9;
}
