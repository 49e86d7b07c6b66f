/**
 * Water that runs back into a lift muffler when the engine stops: the contents of the hose between muffler and its
 * highest point, V = pi / 4 x d^2 x L, all of it taken as full (calculation, on the careful side: under way part of it
 * is gas). A muffler is to hold 1.3 times that (practice; makers differ), for water stands in it already. Lengths in m.
 */

/** Least ratio of the muffler's volume to what runs back (practice). */
export const mufflerMargin = 1.3;

/** Volume of a hose that runs back, m3. */
export function drainBackM3(boreM: number, lengthM: number): number {
    return Math.PI / 4 * boreM ** 2 * lengthM;
}

/** Least volume of the muffler, m3. */
export function leastMufflerM3(drainBack: number): number {
    return mufflerMargin * drainBack;
}

/** Longest hose, m, that a muffler holds when it runs back. */
export function longestDrainBackM(mufflerM3: number, boreM: number): number {
    return mufflerM3 / mufflerMargin / drainBackM3(boreM, 1);
}
