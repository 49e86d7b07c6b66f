/** Checks of the record itself: its findings. */
import type { Check } from '../contract.js';
import { findingIncomplete } from './finding-incomplete.js';

export const recordChecks: readonly Check[] = [findingIncomplete];
