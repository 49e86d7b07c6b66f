/**
 * Play of a rudder: a bearing is worn where its clearance is over 2 % of the stock, a rudder is loose where its tip moves
 * more than 6 mm (practice; both differ, and a firm may set its own). From double the limit on she is not to sail.
 */

export type PlayStep = 'within' | 'over' | 'double';

/** Clearance over which a bearing of a stock is worn, m. */
export function rudderBearingLimitM(stockM: number, share = 0.02): number {
    return share * stockM;
}

/** Measured play against its limit, both in one unit; a limit that is met exactly is kept. */
export function playStep(played: number, limit: number): PlayStep {
    const tolerance = 1e-9;
    return played <= limit + tolerance ? 'within' : played < 2 * limit - tolerance ? 'over' : 'double';
}
