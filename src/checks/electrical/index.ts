import type { Check } from '../contract.js';
import { batteryLooseOrBare } from './battery-loose-or-bare.js';
import { batteryWeakOrMixed } from './battery-weak-or-mixed.js';
import { chargeVoltageWrong } from './charge-voltage-wrong.js';
import { fuseMissingOrFar } from './fuse-missing-or-far.js';
import { fuseTooBig } from './fuse-too-big.js';
import { inletOverheated } from './inlet-overheated.js';
import { leakageBreakerMissing } from './leakage-breaker-missing.js';
import { leakageCurrent } from './leakage-current.js';
import { polarityOrEarth } from './polarity-or-earth.js';
import { pumpEnduranceShort } from './pump-endurance-short.js';
import { voltageDrop } from './voltage-drop.js';
import { wireTooSmall } from './wire-too-small.js';

export const electricalChecks: readonly Check[] = [
    wireTooSmall, fuseTooBig, fuseMissingOrFar, voltageDrop,
    leakageCurrent, leakageBreakerMissing, polarityOrEarth, inletOverheated,
    batteryLooseOrBare, batteryWeakOrMixed, chargeVoltageWrong, pumpEnduranceShort,
];
