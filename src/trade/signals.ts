/**
 * Distress and sound signals to be carried, by length and day.
 *
 * Distress signals, 33 CFR 175.101 to 175.130 (published), on coastal waters, the Great Lakes and the high seas: from
 * 16 ft (4.88 m) on enough for day and night; pyrotechnics three for the day and three for the night, of which those
 * that count by both serve both; a flag 3 ft by 3 ft with square and ball serves the day, an electric light the night.
 * A hand flare, parachute flare or meteor counts by day and night, orange smoke by day.
 *
 * Sound signals, rule 33 of the international and inland rules of the road (published): from 12 m on a whistle, from
 * 20 m on a bell as well; below 12 m some means of an efficient signal. (From 100 m on a gong, out of reach here.)
 */

/** Length of the hull from which signals for day and night are carried, m (16 ft). */
export const signalsFromM = 16 * 0.3048;

/** Pyrotechnics for the day, and for the night. */
export const pyrotechnicsNeeded = 3;

export type SignalKind = 'red-hand' | 'red-parachute' | 'red-meteor' | 'orange-smoke' | 'flag' | 'electric-light';

export interface SignalUse {
    readonly day: boolean;
    readonly night: boolean;
    readonly isPyrotechnic: boolean;
}

export function signalUse(kind: SignalKind): SignalUse {
    switch (kind) {
        case 'red-hand': case 'red-parachute': case 'red-meteor': return { day: true, night: true, isPyrotechnic: true };
        case 'orange-smoke': return { day: true, night: false, isPyrotechnic: true };
        case 'flag': return { day: true, night: false, isPyrotechnic: false };
        case 'electric-light': return { day: false, night: true, isPyrotechnic: false };
    }
}

export interface SignalLot extends SignalUse {
    readonly count: number;
}

export interface SignalShortage {
    /** Usable pyrotechnics that count by day and by night. */
    readonly dayHave: number;
    readonly nightHave: number;
    /** Pyrotechnics that are missing; none where a flag or an electric light serves. */
    readonly dayMissing: number;
    readonly nightMissing: number;
}

/** What is missing of the usable signals given. */
export function signalShortage(lots: readonly SignalLot[]): SignalShortage {
    const have = (use: 'day' | 'night') => lots.reduce((sum, lot) => sum + (lot.isPyrotechnic && lot[use] ? lot.count : 0), 0);
    const isServed = (use: 'day' | 'night') => lots.some(lot => !lot.isPyrotechnic && lot[use] && lot.count > 0);
    const missing = (use: 'day' | 'night') => isServed(use) ? 0 : Math.max(0, pyrotechnicsNeeded - have(use));
    return { dayHave: have('day'), nightHave: have('night'), dayMissing: missing('day'), nightMissing: missing('night') };
}

export interface SoundSignalsNeeded {
    readonly whistle: boolean;
    readonly bell: boolean;
}

/** Length from which a whistle, and from which a bell, is carried, m. */
export const whistleFromM = 12;
export const bellFromM = 20;

/** What a vessel of a length must have; below 12 m neither, but some means. */
export function soundSignalsNeeded(lengthM: number): SoundSignalsNeeded {
    return { whistle: lengthM >= whistleFromM - 1e-9, bell: lengthM >= bellFromM - 1e-9 };
}
