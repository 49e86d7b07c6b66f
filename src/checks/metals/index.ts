import type { Check } from '../contract.js';

export const metalChecks: readonly Check[] = [];
