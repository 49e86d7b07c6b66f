/**
 * Time for a full cockpit to drain to 0.1 m: t = 2 A (sqrt h1 - sqrt 0.1) / (C a sqrt(2 g)), textbook hydraulics for
 * a tank of constant area emptied through openings of total area a. It neglects drain hoses and what stands outside.
 */
import { defaultDischargeCoefficient, gravityMs2 } from './orifice-inflow.js';

/** Longest time for use offshore, s; the limits of ISO 11812 are from memory. */
export const offshoreLimitS = 300;
export const remainingDepthM = 0.1;

export interface Cockpit {
    readonly soleAreaM2: number;
    readonly depthM: number;
    readonly drainAreaM2: number;
    readonly dischargeCoefficient?: number;
}

/** 0 where it is not deeper than what may remain. */
export function drainTimeS({ soleAreaM2, depthM, drainAreaM2, dischargeCoefficient = defaultDischargeCoefficient }: Cockpit): number {
    const fall = Math.sqrt(depthM) - Math.sqrt(remainingDepthM);
    return fall <= 0 ? 0 : 2 * soleAreaM2 * fall / (dischargeCoefficient * drainAreaM2 * Math.sqrt(2 * gravityMs2));
}
