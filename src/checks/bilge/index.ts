import type { Check } from '../contract.js';
import { automaticPumpFails } from './automatic-pump-fails.js';
import { pumpDeratedByLift } from './pump-derated-by-lift.js';
import { pumpingBelowYardstick } from './pumping-below-yardstick.js';

export const bilgeChecks: readonly Check[] = [pumpingBelowYardstick, pumpDeratedByLift, automaticPumpFails];
