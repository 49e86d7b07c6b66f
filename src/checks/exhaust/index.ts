import type { Check } from '../contract.js';
import { exhaustRunsHot } from './exhaust-runs-hot.js';
import { injectionPointTooLow } from './injection-point-too-low.js';
import { mufflerTooSmall } from './muffler-too-small.js';

export const exhaustChecks: readonly Check[] = [injectionPointTooLow, exhaustRunsHot, mufflerTooSmall];
