/**
 * Potentials between reference electrodes: E(new) = E(old) + V(old) - V(new), volts against the standard hydrogen
 * electrode at 25 C. Calomel and saturated silver chloride: published tables. Silver chloride in sea water and zinc:
 * from memory. Copper sulfate: published.
 */

export type ReferenceElectrode = 'hydrogen' | 'calomel' | 'silver-chloride-saturated' | 'silver-chloride-sea-water' | 'copper-sulfate' | 'zinc-sea-water';

export const electrodeV: Readonly<Record<ReferenceElectrode, number>> = {
    hydrogen: 0, calomel: 0.241, 'silver-chloride-saturated': 0.199, 'silver-chloride-sea-water': 0.25, 'copper-sulfate': 0.318, 'zinc-sea-water': -0.78,
};

export function convertPotentialV(potentialV: number, from: ReferenceElectrode, to: ReferenceElectrode): number {
    return potentialV + electrodeV[from] - electrodeV[to];
}

/** The cells surveyors carry, by their words in the language; silver chloride stands in the sea water itself. */
export const cellElectrodes: Readonly<Record<string, ReferenceElectrode>> = {
    'silver-chloride': 'silver-chloride-sea-water', 'copper-sulfate': 'copper-sulfate', zinc: 'zinc-sea-water',
};
