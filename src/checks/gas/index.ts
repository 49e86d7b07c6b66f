import type { Check } from '../contract.js';
import { gasLockerVent } from './gas-locker-vent.js';
import { gasPressureFalls } from './gas-pressure-falls.js';

export const gasChecks: readonly Check[] = [gasPressureFalls, gasLockerVent];
