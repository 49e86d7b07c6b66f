/**
 * Greatest difference of the gap round the faces of a shaft coupling, afloat and with tanks full: 0.001 in for each inch
 * of diameter (an engine maker's manual, published; an Army manual has a fixed 0.003 in).
 */
export function couplingGapLimitM(couplingM: number): number {
    return 0.001 * couplingM;
}
