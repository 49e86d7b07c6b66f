import type { Check } from '../contract.js';
import { blistersMany } from './blisters-many.js';
import { fasteningsFailed } from './fastenings-failed.js';
import { hollowArea } from './hollow-area.js';
import { keelBoltsUnknown } from './keel-bolts-unknown.js';
import { listUnexplained } from './list-unexplained.js';
import { moistureContrast } from './moisture-contrast.js';
import { plateWasted } from './plate-wasted.js';
import { woodTooWet } from './wood-too-wet.js';

export const structureChecks: readonly Check[] = [
    plateWasted, moistureContrast, blistersMany, hollowArea, woodTooWet, fasteningsFailed, keelBoltsUnknown, listUnexplained,
];
