import type { Check } from '../contract.js';
import { adapterDoesNotMatch } from './adapter-does-not-match.js';
import { boreLimitsFlow } from './bore-limits-flow.js';
import { fuelHoseLooseOnSpigot } from './fuel-hose-loose-on-spigot.js';
import { hoseAndSpigotDiffer } from './hose-and-spigot-differ.js';
import { spigotTooShortForClamps } from './spigot-too-short-for-clamps.js';
import { threadFormsMixed } from './thread-forms-mixed.js';

export const fitChecks: readonly Check[] = [
    hoseAndSpigotDiffer, adapterDoesNotMatch, spigotTooShortForClamps, fuelHoseLooseOnSpigot, threadFormsMixed, boreLimitsFlow,
];
