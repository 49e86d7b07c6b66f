/**
 * Ventilation of spaces with gasoline engines or tanks. Powered: 33 CFR 183.610 (clause published; its table read in an
 * engine maker's manual and a school's page). Natural: 33 CFR 183.630, A = 5 ln(V / 5) in2 with V in ft3, published.
 * Diesel spaces and spaces open to the atmosphere are outside both.
 */

const cubicFootM3 = 0.3048 ** 3;
const cfmM3s = cubicFootM3 / 60;
const squareInchM2 = 0.0254 ** 2;
/** Volumes reckoned from feet to the inch meet 34 and 100 ft3 no nearer than this. */
const slack = 1e-9;

/** Rated flow of the blower, m3/s, for a net compartment volume in m3: 50 cfm under 34 ft3, 1.5 V to 100 ft3, then V/2 + 100. */
export function blowerRatingM3s(netVolumeM3: number): number {
    const v = netVolumeM3 / cubicFootM3;
    return (v < 34 - slack ? 50 : v <= 100 + slack ? 1.5 * v : v / 2 + 100) * cfmM3s;
}

/** Flow to be measured at the outlet of the installed system, m3/s: 20 cfm under 34 ft3, 0.6 V to 100 ft3, then 0.2 V + 40. */
export function blowerOutputM3s(netVolumeM3: number): number {
    const v = netVolumeM3 / cubicFootM3;
    return (v < 34 - slack ? 20 : v <= 100 + slack ? 0.6 * v : 0.2 * v + 40) * cfmM3s;
}

/** What each opening must exceed, m2: 3.0 in2. */
export const leastVentAreaM2 = 3 * squareInchM2;
/** Least area of a terminal fitting as a share of what is required of its duct. */
export const terminalShare = 0.8;

/** Area of supply and of exhaust openings, each, m2; the floor of 3.0 in2 governs below 9.11 ft3. */
export function naturalVentAreaM2(netVolumeM3: number): number {
    const v = netVolumeM3 / cubicFootM3;
    return v <= 5 ? leastVentAreaM2 : Math.max(leastVentAreaM2, 5 * Math.log(v / 5) * squareInchM2);
}

/** Whether a single opening or duct is of the least size: it must exceed 3.0 in2, not just reach it. */
export function exceedsLeastVent(areaM2: number): boolean {
    return areaM2 > leastVentAreaM2 * (1 + slack);
}

/** Whether openings come up to an area; areas from bores read in millimeters meet it no nearer than a thousandth. */
export function reachesArea(areaM2: number, neededM2: number): boolean {
    return areaM2 >= neededM2 * (1 - 1e-3);
}

/** Area of a round duct of a bore, m2. */
export function ductAreaM2(boreM: number): number {
    return Math.PI / 4 * boreM ** 2;
}

/**
 * Least area of the fitting at the end of a duct, m2: 80 % of the area that is required of the duct, which is its share
 * of what the space needs and never more than the duct itself (33 CFR 183.630(f), published).
 */
export function terminalAreaM2(ductM2: number, allDuctsM2: number, neededM2: number): number {
    return terminalShare * Math.min(ductM2, neededM2 * ductM2 / allDuctsM2);
}

/** Whether direct openings leave a space open to the atmosphere: 15 in2 a ft3 (33 CFR 183.605, published). */
export function isOpenToAtmosphere(openingAreaM2: number, netVolumeM3: number): boolean {
    return openingAreaM2 / squareInchM2 >= 15 * netVolumeM3 / cubicFootM3 - slack;
}
