import type { Check } from '../contract.js';
import { couplingOutOfLine } from './coupling-out-of-line.js';
import { glandDrips } from './gland-drips.js';
import { propellerSlipOdd } from './propeller-slip-odd.js';
import { rudderPlay } from './rudder-play.js';
import { sealRubberOld } from './seal-rubber-old.js';
import { sternBearingWorn } from './stern-bearing-worn.js';

export const shaftChecks: readonly Check[] = [sternBearingWorn, glandDrips, sealRubberOld, propellerSlipOdd, rudderPlay, couplingOutOfLine];
