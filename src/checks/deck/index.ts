import type { Check } from '../contract.js';

export const deckChecks: readonly Check[] = [];
