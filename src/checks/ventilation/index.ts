import type { Check } from '../contract.js';
import { blowerTooSmall } from './blower-too-small.js';
import { flameControlMissing } from './flame-control-missing.js';
import { sparkInGasolineSpace } from './spark-in-gasoline-space.js';
import { ventAreaSmall } from './vent-area-small.js';

export const ventilationChecks: readonly Check[] = [blowerTooSmall, ventAreaSmall, sparkInGasolineSpace, flameControlMissing];
