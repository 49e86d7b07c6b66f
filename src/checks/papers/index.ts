import type { Check } from '../contract.js';
import { hullNumberMalformed } from './hull-number-malformed.js';
import { hullNumberVsPapers } from './hull-number-vs-papers.js';
import { hullNumberYearDisagrees } from './hull-number-year-disagrees.js';
import { marksOrPlacardsShort } from './marks-or-placards-short.js';
import { powerOrPersonsOver } from './power-or-persons-over.js';

export const papersChecks: readonly Check[] = [hullNumberMalformed, hullNumberYearDisagrees, hullNumberVsPapers, marksOrPlacardsShort, powerOrPersonsOver];
