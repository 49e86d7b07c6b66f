import type { Check } from '../contract.js';
import { hullNumberMalformed } from './hull-number-malformed.js';
import { hullNumberYearDisagrees } from './hull-number-year-disagrees.js';

export const papersChecks: readonly Check[] = [hullNumberMalformed, hullNumberYearDisagrees];
