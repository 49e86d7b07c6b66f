import type { Check } from '../contract.js';

export const wordingChecks: readonly Check[] = [];
