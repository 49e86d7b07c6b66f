import type { Check } from '../contract.js';

export const ventilationChecks: readonly Check[] = [];
