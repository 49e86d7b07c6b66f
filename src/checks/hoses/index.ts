import type { Check } from '../contract.js';
import { clampPoor } from './clamp-poor.js';
import { clampSingle } from './clamp-single.js';
import { hoseOld } from './hose-old.js';
import { hoseWrongForService } from './hose-wrong-for-service.js';

export const hoseChecks: readonly Check[] = [clampSingle, clampPoor, hoseWrongForService, hoseOld];
