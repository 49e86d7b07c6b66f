/** Every check, in the order of the catalogue of checks. */
import type { Check } from './contract.js';
import { bilgeChecks } from './bilge/index.js';
import { deckChecks } from './deck/index.js';
import { electricalChecks } from './electrical/index.js';
import { engineChecks } from './engine/index.js';
import { exhaustChecks } from './exhaust/index.js';
import { fitChecks } from './fit/index.js';
import { fuelChecks } from './fuel/index.js';
import { gasChecks } from './gas/index.js';
import { hoseChecks } from './hoses/index.js';
import { metalChecks } from './metals/index.js';
import { openingChecks } from './openings/index.js';
import { papersChecks } from './papers/index.js';
import { particularsChecks } from './particulars/index.js';
import { recordChecks } from './record/index.js';
import { rigChecks } from './rig/index.js';
import { safetyChecks } from './safety/index.js';
import { sanitationChecks } from './sanitation/index.js';
import { shaftChecks } from './shaft/index.js';
import { structureChecks } from './structure/index.js';
import { valuationChecks } from './valuation/index.js';
import { ventilationChecks } from './ventilation/index.js';
import { wordingChecks } from './wording/index.js';

export const allChecks: readonly Check[] = [
    ...fitChecks, ...metalChecks, ...openingChecks, ...hoseChecks, ...shaftChecks, ...fuelChecks, ...ventilationChecks, ...exhaustChecks,
    ...engineChecks, ...electricalChecks, ...bilgeChecks, ...gasChecks, ...safetyChecks, ...sanitationChecks, ...structureChecks, ...rigChecks,
    ...deckChecks, ...papersChecks, ...particularsChecks, ...valuationChecks, ...recordChecks, ...wordingChecks,
];
