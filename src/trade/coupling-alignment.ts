/**
 * Greatest difference of the gap round the faces of a shaft coupling, afloat and with tanks full: 0.001 in for each inch
 * of diameter (an engine maker's manual, published; an Army manual has a fixed 0.003 in). Measured at four points with a
 * feeler, after a day or two in the water; ashore the hull lies otherwise, and the figure decides nothing.
 */
export function couplingGapLimitM(couplingM: number): number {
    return 0.001 * couplingM;
}
