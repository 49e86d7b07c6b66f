/** Metals and corrosion. */
import type { Check } from '../contract.js';
import { anodeMetalForWater } from './anode-metal-for-water.js';
import { anodeNearlyGone } from './anode-nearly-gone.js';
import { bondingResistanceHigh } from './bonding-resistance-high.js';
import { brassBelowWaterline } from './brass-below-waterline.js';
import { copperPaintOnAluminum } from './copper-paint-on-aluminum.js';
import { hullPotentialOutsideRange } from './hull-potential-outside-range.js';
import { metalsInContact } from './metals-in-contact.js';
import { potentialMovesWithSwitch } from './potential-moves-with-switch.js';

export const metalChecks: readonly Check[] = [
    metalsInContact, brassBelowWaterline, copperPaintOnAluminum, anodeMetalForWater, anodeNearlyGone, hullPotentialOutsideRange, potentialMovesWithSwitch,
    bondingResistanceHigh,
];
