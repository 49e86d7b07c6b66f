import type { Check } from '../contract.js';

export const recordChecks: readonly Check[] = [];
