import type { Check } from '../contract.js';
import { fuelBondHigh } from './fuel-bond-high.js';
import { fuelHoseClass } from './fuel-hose-class.js';
import { fuelSiphonsOrNoValve } from './fuel-siphons-or-no-valve.js';
import { tankDoubtful } from './tank-doubtful.js';

export const fuelChecks: readonly Check[] = [fuelHoseClass, fuelSiphonsOrNoValve, fuelBondHigh, tankDoubtful];
