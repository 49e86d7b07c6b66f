import type { Check } from '../contract.js';

export const openingChecks: readonly Check[] = [];
