import type { Check } from '../contract.js';

export const fuelChecks: readonly Check[] = [];
