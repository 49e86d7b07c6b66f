import type { Check } from '../contract.js';
import { anchorTooLight } from './anchor-too-light.js';
import { chainWorn } from './chain-worn.js';
import { lifelineLowOrLoose } from './lifeline-low-or-loose.js';
import { rodeShort } from './rode-short.js';
import { tubeLosesPressure } from './tube-loses-pressure.js';

export const deckChecks: readonly Check[] = [anchorTooLight, chainWorn, rodeShort, lifelineLowOrLoose, tubeLosesPressure];
