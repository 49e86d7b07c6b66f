import type { Check } from '../contract.js';
import { gasLockerVent } from './gas-locker-vent.js';
import { gasPartOutOfDate } from './gas-part-out-of-date.js';
import { gasPathIntoHull } from './gas-path-into-hull.js';
import { gasPressureFalls } from './gas-pressure-falls.js';

export const gasChecks: readonly Check[] = [gasPressureFalls, gasLockerVent, gasPathIntoHull, gasPartOutOfDate];
