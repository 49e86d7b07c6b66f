import type { Check } from '../contract.js';
import { dimensionDisagrees } from './dimension-disagrees.js';
import { figureNotPlausible } from './figure-not-plausible.js';
import { tonnageDisagrees } from './tonnage-disagrees.js';

export const particularsChecks: readonly Check[] = [tonnageDisagrees, dimensionDisagrees, figureNotPlausible];
