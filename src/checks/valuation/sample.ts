/** A sound valuation as text, for the examples of these checks, each of which changes a word or two of it. */

export const soundValuation = `valuation {
    effective: 2026-06-15
    method: "Comparison of sales. Cost was taken as a ceiling; income was left out, for she is not hired."
    replacement: 310000 USD
    opinion: 84500 USD
    comparable A { sold: 84000 USD  sold-on: 2026-02  adjust "Prices since": 1680 USD  adjust "Rigging": -2500 USD  adjust "Condition": 1000 USD  adjusted: 84180 USD  weight: 0.5 }
    comparable B { sold: 79500 USD  sold-on: 2025-08  adjust "Prices since": 3975 USD  adjust "Engine": 4000 USD  adjust "Electronics": 1500 USD  adjusted: 88975 USD  weight: 0.2 }
    comparable C { sold: 91000 USD  sold-on: 2026-04  adjust "Prices since": 910 USD  adjust "Engine": -3500 USD  adjust "Electronics": -4000 USD  adjust "Brightwork": -2000 USD  adjusted: 82410 USD  weight: 0.3 }
}
`;

/** The sound valuation with some of its words changed; each must be in it. */
export function changedValuation(...changes: readonly (readonly [from: string, to: string])[]): string {
    return changes.reduce((text, [from, to]) => {
        if (!text.includes(from)) {
            throw new Error(`The sample has no ${from}`);
        }
        return text.replace(from, () => to);
    }, soundValuation);
}
