import type { Check } from '../contract.js';

export const exhaustChecks: readonly Check[] = [];
