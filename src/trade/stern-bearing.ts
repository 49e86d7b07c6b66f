/**
 * Clearance at which a stern bearing is worn: the smaller of 2 % of the shaft and 1/16 in (practice; 1/32 to 1/8 in are
 * quoted, and a firm may set both). New bearings have 0.001 to 0.003 in per inch of shaft (published by forum engineers;
 * practice).
 */
export function bearingLimitM(shaftM: number, share = 0.02, mostM = 0.0254 / 16): number {
    return Math.min(share * shaftM, mostM);
}
