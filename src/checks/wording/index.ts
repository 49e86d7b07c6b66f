/** Checks of the words of the report; they read prose only. */
import type { Check } from '../contract.js';
import { actTooVague } from './act-too-vague.js';
import { causeOrBlameClaimed } from './cause-or-blame-claimed.js';
import { wordsThatWarrant } from './words-that-warrant.js';

export const wordingChecks: readonly Check[] = [wordsThatWarrant, causeOrBlameClaimed, actTooVague];
