import type { Check } from '../contract.js';

export const hoseChecks: readonly Check[] = [];
