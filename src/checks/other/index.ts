import type { Check } from '../contract.js';

export const otherChecks: readonly Check[] = [];
