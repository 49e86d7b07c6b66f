/** Checks of the record itself: its faults, its findings. */
import type { Check } from '../contract.js';
import { faultWithoutFinding } from './fault-without-finding.js';
import { findingIncomplete } from './finding-incomplete.js';

export const recordChecks: readonly Check[] = [faultWithoutFinding, findingIncomplete];
