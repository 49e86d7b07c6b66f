/**
 * Engine coolant: water and glycol by volume.
 *
 * Freezing points (first ice) to 60 %: computed with an open property library's fits to ASHRAE data, fluids for
 * ethylene and propylene glycol, volume basis from memory. Ethylene beyond 60 %: car and engine makers' bulletins
 * (about 69 % freezes lowest at -69 C, 80 % at -45, 85 % at -30, 100 % at -13; basis of the share not stated).
 * Boiling points at 1 atm: from memory of tables for heat-transfer fluids, within 2 K; Raoult's law with the vapor
 * pressure of water gives the same to 80 % within 3 K (calculation). Sources differ by 2 to 3 K. Propylene mixes past
 * 60 % do not freeze to ice but stiffen, and no table goes on.
 */

export type Glycol = 'ethylene' | 'propylene';

const zeroC = 273.15;

/** Share of ethylene glycol by volume past which the mix freezes sooner again (makers' bulletins). */
export const strongestUsefulShare = 0.68;
/** Share past which engine makers will have none for fear of gel (two of them, published; from 65 % pumps and heat flow suffer too). */
export const gelShare = 0.6;
/** Share past which silicates are to be expected out of solution, so that only flushing helps (chosen). */
export const flushShare = 0.8;

type Points = readonly (readonly [share: number, celsius: number])[];

const freezing: Readonly<Record<Glycol, Points>> = {
    ethylene: [
        [0, 0], [0.1, -3.6], [0.15, -6.2], [0.2, -9], [0.25, -12.1], [0.3, -15.7], [0.33, -18.1], [0.35, -19.9], [0.4, -24.8], [0.45, -30.5], [0.5, -37.1],
        [0.55, -44.4], [0.6, -52], [0.69, -69], [0.8, -45], [0.85, -30], [1, -13],
    ],
    propylene: [
        [0, 0], [0.1, -3.4], [0.15, -5.2], [0.2, -7.4], [0.25, -10], [0.3, -13.1], [0.33, -15.3], [0.35, -16.9], [0.4, -21.5], [0.45, -27], [0.5, -33.7], [0.55, -41.6], [0.6, -51.1],
    ],
};

/** By mass, from the same library; both fits end at 60 %. */
const freezingByMass: Readonly<Record<Glycol, Points>> = {
    ethylene: [[0, 0], [0.1, -3.4], [0.15, -5.4], [0.2, -7.9], [0.25, -11], [0.3, -14.6], [0.33, -17.1], [0.35, -18.8], [0.4, -23.8], [0.45, -29.5], [0.5, -36], [0.55, -43.2], [0.6, -51.2]],
    propylene: [[0, 0], [0.1, -2.9], [0.15, -4.9], [0.2, -7.2], [0.25, -9.8], [0.3, -12.8], [0.33, -14.8], [0.35, -16.3], [0.4, -20.6], [0.45, -25.8], [0.5, -32.2], [0.55, -40.2], [0.6, -50]],
};

const boiling: Readonly<Record<Glycol, Points>> = {
    ethylene: [[0, 100], [0.2, 102.2], [0.3, 104.4], [0.4, 105.2], [0.5, 107.2], [0.6, 110.5], [0.7, 115.5], [0.8, 124], [0.9, 140], [1, 197]],
    propylene: [[0, 100], [0.2, 100.6], [0.25, 101.1], [0.3, 102.2], [0.4, 103.9], [0.5, 105.6], [0.6, 107.2], [0.7, 110], [0.8, 118.3], [0.9, 132.2], [0.95, 154.4], [1, 188]],
};

function interpolate(points: Points, share: number): number {
    const last = points.at(-1);
    if (last && share >= last[0]) {
        return last[1];
    }
    for (let i = 1; i < points.length; i++) {
        const [x0, y0] = points[i - 1] ?? [0, 0];
        const [x1, y1] = points[i] ?? [1, 0];
        if (share <= x1) {
            return y0 + (y1 - y0) * (share - x0) / (x1 - x0);
        }
    }
    return points[0]?.[1] ?? 0;
}

/** Freezing point, K, of a share by volume from 0 to 1. Propylene is known to 60 %, the last point holding beyond. */
export function coolantFreezingK(glycol: Glycol, share: number): number {
    return interpolate(freezing[glycol], Math.min(1, Math.max(0, share))) + zeroC;
}

/** Whether a share by volume lies within the tables, so that its freezing point is more than a bound: propylene ends at 60 %. */
export function isFreezingTabulated(glycol: Glycol, share: number): boolean {
    return share >= 0 && share <= (glycol === 'ethylene' ? 1 : 0.6) + 1e-9;
}

/** Freezing point, K, of a share by mass from 0 to 0.6; undefined beyond, where the fits end. */
export function coolantFreezingByMassK(glycol: Glycol, massShareOf: number): number | undefined {
    return massShareOf < 0 || massShareOf > 0.6 + 1e-9 ? undefined : interpolate(freezingByMass[glycol], massShareOf) + zeroC;
}

/** Boiling point at 1 atm, K, of a share by volume from 0 to 1. */
export function coolantBoilingK(share: number, glycol: Glycol = 'ethylene'): number {
    return interpolate(boiling[glycol], Math.min(1, Math.max(0, share))) + zeroC;
}

const atmospherePa = 101_325;
/** Antoine's equation for water from 99 to 374 C, pressure in mmHg (published coefficients, from memory). */
const antoine = { a: 8.14019, b: 1810.94, c: 244.485 } as const;
const mmHgPa = atmospherePa / 760;

/** Boiling point of water, K, at a pressure of 1 atm or more. */
export function waterBoilingK(pressurePa: number): number {
    return antoine.b / (antoine.a - Math.log10(pressurePa / mmHgPa)) - antoine.c + zeroC;
}

/** Boiling point, K, under a pressure cap: as much higher as that of water (calculation; 129 C at half and half and 15 psi is published). */
export function coolantBoilingUnderCapK(share: number, capPa: number, glycol: Glycol = 'ethylene'): number {
    return coolantBoilingK(share, glycol) + waterBoilingK(atmospherePa + capPa) - waterBoilingK(atmospherePa);
}

/** The share by volume up to 0.6 that freezes at a temperature, K; undefined where none does. */
export function shareForFreezing(glycol: Glycol, freezingK: number): number | undefined {
    const celsius = freezingK - zeroC;
    const points = freezing[glycol].filter(([share]) => share <= 0.6);
    for (let i = 1; i < points.length; i++) {
        const [x0, y0] = points[i - 1] ?? [0, 0];
        const [x1, y1] = points[i] ?? [1, 0];
        if (celsius <= y0 && celsius >= y1) {
            return x0 + (x1 - x0) * (celsius - y0) / (y1 - y0);
        }
    }
    return undefined;
}

export interface Exchange {
    readonly volumeM3: number;
    /** Share of glycol now. */
    readonly share: number;
    readonly targetShare: number;
    /** Share of glycol in what is filled in: 1 concentrate, 0.5 premix, 0 water. */
    readonly addedShare: number;
}

/**
 * Volume to drain and to fill anew, m3: x = V (target - now) / (added - now). Undefined where what is added cannot
 * bring the mix to the target short of a full change.
 */
export function exchangedVolumeM3({ volumeM3, share, targetShare, addedShare }: Exchange): number | undefined {
    const drained = volumeM3 * (targetShare - share) / (addedShare - share);
    return Number.isFinite(drained) && drained >= 0 && drained < volumeM3 - 1e-12 ? drained : undefined;
}

export interface TopUp extends Exchange {
    /** What the system lacks to be full. */
    readonly shortByM3: number;
}

export interface Filling {
    readonly drainM3: number;
    /** Of what is added, with its share of glycol. */
    readonly addM3: number;
    /** Water beside it. */
    readonly waterM3: number;
}

/**
 * What to drain and fill where the system is not full: the glycol wanted, V target - now (V - short), comes with what is
 * added; where that is less than what is lacking, water makes up the rest and nothing is drained. A mix that holds more
 * glycol than is wanted is drained by the surplus and filled with water. Undefined where what is added cannot bring it to
 * the target short of a full change.
 */
export function topUp({ volumeM3, share, targetShare, addedShare, shortByM3 }: TopUp): Filling | undefined {
    const wanted = volumeM3 * targetShare - share * (volumeM3 - shortByM3);
    if (wanted < 0) {
        return { drainM3: -wanted / share, addM3: 0, waterM3: shortByM3 - wanted / share };
    }
    const alone = wanted / addedShare;
    if (alone <= shortByM3 + 1e-12) {
        return { drainM3: 0, addM3: alone, waterM3: Math.max(0, shortByM3 - alone) };
    }
    const drainM3 = (wanted - addedShare * shortByM3) / (addedShare - share);
    return addedShare > share && drainM3 < volumeM3 - shortByM3 - 1e-12 ? { drainM3, addM3: drainM3 + shortByM3, waterM3: 0 } : undefined;
}

/** Concentrate and water, m3, that a flushed system is filled with. */
export function freshMixM3(volumeM3: number, targetShare: number): { readonly concentrateM3: number; readonly waterM3: number } {
    return { concentrateM3: volumeM3 * targetShare, waterM3: volumeM3 * (1 - targetShare) };
}

const densityKgL = { ethylene: 1.113, propylene: 1.036, water: 0.998 } as const;

/** Share by mass of a share by volume at 20 C (densities: ethylene published, the others from memory). */
export function massShare(glycol: Glycol, volumeShare: number): number {
    const mass = volumeShare * densityKgL[glycol];
    return mass / (mass + (1 - volumeShare) * densityKgL.water);
}
