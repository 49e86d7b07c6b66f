import type { Check } from '../contract.js';

export const coolantChecks: readonly Check[] = [];
