/** Fixed extinguishing systems of a machinery space: what the agent has lost, and the limits of practice. */

/** Months between services (label and practice). */
export const serviceMonths = 12;

/** Share of the agent's mass that may be gone (label and practice). */
export const agentLossLimit = 0.05;

/**
 * Share of the agent that is gone: (label - weighed) / label. Negative where more was weighed than the label says,
 * which a different container explains. Both masses of the agent alone, or both with the same container.
 */
export function agentLoss(labelKg: number, weighedKg: number): number {
    return (labelKg - weighedKg) / labelKg;
}
