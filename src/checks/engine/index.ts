import type { Check } from '../contract.js';
import { coolantOutOfRange } from './coolant-out-of-range.js';
import { cylinderSpread } from './cylinder-spread.js';
import { hoursDoNotAdd } from './hours-do-not-add.js';
import { ratedRpmNotReached } from './rated-rpm-not-reached.js';

export const engineChecks: readonly Check[] = [coolantOutOfRange, cylinderSpread, ratedRpmNotReached, hoursDoNotAdd];
