import type { Check } from '../contract.js';

export const structureChecks: readonly Check[] = [];
