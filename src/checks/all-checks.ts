/** Every check, in the order of the catalogue of checks. */
import type { Check } from './contract.js';
import { fitChecks } from './fit/index.js';
import { metalChecks } from './metals/index.js';
import { openingChecks } from './openings/index.js';
import { hoseChecks } from './hoses/index.js';
import { coolantChecks } from './coolant/index.js';
import { otherChecks } from './other/index.js';
import { recordChecks } from './record/index.js';

export const allChecks: readonly Check[] = [
    ...fitChecks, ...metalChecks, ...openingChecks, ...hoseChecks, ...coolantChecks, ...otherChecks, ...recordChecks,
];
