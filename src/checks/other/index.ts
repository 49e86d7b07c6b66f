import type { Check } from '../contract.js';
import { extinguisherOutOfDate } from './extinguisher-out-of-date.js';
import { extinguishersTooFew } from './extinguishers-too-few.js';
import { faultWithoutFinding } from './fault-without-finding.js';
import { glandDrips } from './gland-drips.js';
import { hullNumberMalformed } from './hull-number-malformed.js';
import { hullNumberYearDisagrees } from './hull-number-year-disagrees.js';
import { pumpingBelowYardstick } from './pumping-below-yardstick.js';
import { sternBearingWorn } from './stern-bearing-worn.js';

export const otherChecks: readonly Check[] = [
    sternBearingWorn, glandDrips, pumpingBelowYardstick, extinguishersTooFew, extinguisherOutOfDate, hullNumberMalformed, hullNumberYearDisagrees,
    faultWithoutFinding,
];
