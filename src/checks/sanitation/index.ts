import type { Check } from '../contract.js';

export const sanitationChecks: readonly Check[] = [];
