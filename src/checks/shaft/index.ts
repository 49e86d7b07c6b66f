import type { Check } from '../contract.js';
import { glandDrips } from './gland-drips.js';
import { sternBearingWorn } from './stern-bearing-worn.js';

export const shaftChecks: readonly Check[] = [sternBearingWorn, glandDrips];
