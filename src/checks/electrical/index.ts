import type { Check } from '../contract.js';

export const electricalChecks: readonly Check[] = [];
