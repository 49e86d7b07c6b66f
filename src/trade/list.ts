/**
 * List from the freeboards of both sides: angle = atan((port - starboard) / breadth), computed. Positive to starboard,
 * the side with less freeboard. Valid where the deck edges are level with each other when she is upright and the
 * breadth is that at the station measured.
 *
 * Over 1 degree with even tanks asks for an explanation, over 3 is a fault (practice).
 */

export const listAskedRad = Math.PI / 180;
export const listFaultRad = 3 * Math.PI / 180;

/** In radians, positive to starboard; undefined where no breadth is positive. */
export function listRad(portM: number, starboardM: number, breadthM: number): number | undefined {
    return breadthM > 0 ? Math.atan((portM - starboardM) / breadthM) : undefined;
}

export type ListStep = 'none' | 'asked' | 'fault';

export function listStep(rad: number): ListStep {
    const slack = 1e-9;
    return Math.abs(rad) > listFaultRad + slack ? 'fault' : Math.abs(rad) > listAskedRad + slack ? 'asked' : 'none';
}
