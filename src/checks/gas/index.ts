import type { Check } from '../contract.js';

export const gasChecks: readonly Check[] = [];
