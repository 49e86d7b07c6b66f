/** Openings below the waterline. */
import type { Check } from '../contract.js';
import { abandonedOpeningNotClosed } from './abandoned-opening-not-closed.js';
import { cockpitDrainsSlow } from './cockpit-drains-slow.js';
import { floodingBeatsPumps } from './flooding-beats-pumps.js';
import { openingWithoutValve } from './opening-without-valve.js';
import { openingsCountDiffers } from './openings-count-differs.js';
import { siphonLoopMissingOrLow } from './siphon-loop-missing-or-low.js';
import { valveDoesNotWork } from './valve-does-not-work.js';
import { valveNotFlanged } from './valve-not-flanged.js';
import { valveOrFittingUnsuitable } from './valve-or-fitting-unsuitable.js';

export const openingChecks: readonly Check[] = [
    abandonedOpeningNotClosed, floodingBeatsPumps, openingWithoutValve, valveOrFittingUnsuitable, valveNotFlanged, valveDoesNotWork, siphonLoopMissingOrLow,
    openingsCountDiffers, cockpitDrainsSlow,
];
