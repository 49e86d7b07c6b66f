import type { Check } from '../contract.js';
import { beaconNotRight } from './beacon-not-right.js';
import { coAlarmMissingOrOld } from './co-alarm-missing-or-old.js';
import { extinguisherOutOfDate } from './extinguisher-out-of-date.js';
import { extinguishersTooFew } from './extinguishers-too-few.js';
import { fixedSystemOverdue } from './fixed-system-overdue.js';
import { flaresOutOfDate } from './flares-out-of-date.js';
import { lifejacketsTooFew } from './lifejackets-too-few.js';
import { lightOutOrContradictory } from './light-out-or-contradictory.js';
import { lightRangeOrHeightShort } from './light-range-or-height-short.js';
import { raftOrReleaseOverdue } from './raft-or-release-overdue.js';
import { soundSignalMissing } from './sound-signal-missing.js';

export const safetyChecks: readonly Check[] = [
    extinguishersTooFew, extinguisherOutOfDate, fixedSystemOverdue, coAlarmMissingOrOld, lifejacketsTooFew, flaresOutOfDate, raftOrReleaseOverdue, beaconNotRight, soundSignalMissing,
    lightRangeOrHeightShort, lightOutOrContradictory,
];
