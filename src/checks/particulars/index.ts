import type { Check } from '../contract.js';

export const particularsChecks: readonly Check[] = [];
