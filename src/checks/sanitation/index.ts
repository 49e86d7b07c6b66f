import type { Check } from '../contract.js';
import { sewageValveNotSecured } from './sewage-valve-not-secured.js';
import { treatmentDeviceWrong } from './treatment-device-wrong.js';

export const sanitationChecks: readonly Check[] = [sewageValveNotSecured, treatmentDeviceWrong];
