import type { Check } from '../contract.js';
import { chainplateDoubtful } from './chainplate-doubtful.js';
import { riggingOld } from './rigging-old.js';
import { strandOrTerminalBroken } from './strand-or-terminal-broken.js';

export const rigChecks: readonly Check[] = [riggingOld, strandOrTerminalBroken, chainplateDoubtful];
