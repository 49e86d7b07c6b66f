import type { Check } from '../contract.js';

export const rigChecks: readonly Check[] = [];
