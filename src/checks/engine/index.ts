import type { Check } from '../contract.js';
import { coolantOutOfRange } from './coolant-out-of-range.js';

export const engineChecks: readonly Check[] = [coolantOutOfRange];
