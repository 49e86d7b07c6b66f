import type { Check } from '../contract.js';

export const fitChecks: readonly Check[] = [];
