import type { Check } from '../contract.js';
import { comparableSumWrong } from './comparable-sum-wrong.js';
import { comparableTooWeak } from './comparable-too-weak.js';
import { repairTakenTwice } from './repair-taken-twice.js';
import { valueOutsideComparables } from './value-outside-comparables.js';
import { valueWordsFiguresDiffer } from './value-words-figures-differ.js';

export const valuationChecks: readonly Check[] = [comparableSumWrong, comparableTooWeak, valueOutsideComparables, valueWordsFiguresDiffer, repairTakenTwice];
