import type { Check } from '../contract.js';

export const valuationChecks: readonly Check[] = [];
