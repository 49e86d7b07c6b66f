import type { Check } from '../contract.js';
import { pumpingBelowYardstick } from './pumping-below-yardstick.js';

export const bilgeChecks: readonly Check[] = [pumpingBelowYardstick];
