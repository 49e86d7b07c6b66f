import type { Check } from '../contract.js';
import { extinguisherOutOfDate } from './extinguisher-out-of-date.js';
import { extinguishersTooFew } from './extinguishers-too-few.js';

export const safetyChecks: readonly Check[] = [extinguishersTooFew, extinguisherOutOfDate];
