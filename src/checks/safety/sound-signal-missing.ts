/** A vessel without the whistle, the bell or any means of a sound signal that her length calls for. */
import { bellFromM, soundSignalsNeeded, whistleFromM } from '../../trade/signals.js';
import { ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { lengthBoth, listed } from '../phrasing.js';
import { adding, countOf, isSaidAbsent, lengthByTheRulesM } from './gear.js';

export const soundSignalMissing = defineCheck({
    id: 'sound-signal-missing',
    group: 'safety',
    severity: 'error',
    title: 'Sound signal is missing for her length',
    why: 'In fog she is heard or she is run down.',
    needs: ['sound-device: device, works, quantity', 'vessel: length-overall or length-on-deck'],
    computes: 'From 12 m (39.4 ft) on a whistle, from 20 m (65.6 ft) on a bell as well; below 12 m any means. A horn counts as a whistle; a device that does not work, or of quantity 0, does not count.',
    sources: [
        { text: 'whistle from 12 m, bell from 20 m', standard: 'Rules of the road', clause: 'Rule 33', provenance: 'published' },
        { text: 'inland text; an older one asks for the bell from 12 m', standard: '33 CFR 83', clause: '83.33', provenance: 'memory' },
    ],
    limits: [
        'Where no sound device is recorded and none is said to be absent, nothing is said: they may not have been looked for.',
        'Length is the length overall, as the rules count it, or that of the hull where only this is recorded.',
        'The older inland text, which asks for a bell from 12 m, is not judged by.',
        'How far a whistle carries is not judged.',
    ],
    examples: [{
        name: 'bell but no whistle at 42 ft',
        bad: `vessel "Marram" { length-overall: 42 ft }
sound-device SD1 { device: bell }
`,
        fixed: `vessel "Marram" { length-overall: 42 ft }
sound-device SD1 { device: bell }
sound-device SD2 { device: whistle }
`,
        correction: 'Add a whistle',
    }, {
        name: 'whistle but no bell at 20 m',
        bad: `vessel "Marram" { length-overall: 20 m }
sound-device SD1 { device: whistle }
`,
        fixed: `vessel "Marram" { length-overall: 20 m }
sound-device SD1 { device: whistle }
sound-device SD2 { device: bell }
`,
        correction: 'Add a bell',
    }, {
        name: 'the only horn is dead at 30 ft',
        bad: `vessel "Marram" { length-overall: 30 ft }
sound-device SD1 { device: horn  works: no }
`,
        fixed: `vessel "Marram" { length-overall: 30 ft }
sound-device SD1 { device: horn  works: yes }
`,
    }],
    silent: [
        { name: 'whistle just under 20 m', text: 'vessel "Marram" { length-overall: 19.9 m }\nsound-device SD1 { device: whistle }\n' },
        { name: 'a bell alone under 12 m', text: 'vessel "Marram" { length-overall: 11.9 m }\nsound-device SD1 { device: bell }\n' },
        { name: 'horn at 42 ft', text: 'vessel "Marram" { length-overall: 42 ft }\nsound-device SD1 { device: horn }\n' },
        { name: 'none recorded', text: 'vessel "Marram" { length-overall: 42 ft }\n' },
    ],
    run(record, raise) {
        const devices = ofKind(record, 'sound-device');
        const { vessel } = record;
        if (!vessel || (devices.length === 0 && !isSaidAbsent(record, /\b(horn|whistle|sound (signal|device))/i))) {
            return;
        }
        const working = devices.filter(device => countOf(device) > 0 && wordOf(device, 'works') !== 'no');
        const length = lengthByTheRulesM(record);
        if (!length) {
            const isEnough = working.some(isWhistle) && working.some(isBell);
            if (!isEnough) {
                raise({ components: devices, at: devices[0]?.idSpan ?? vessel.span, severity: 'hint', message: 'Record the length of the vessel to tell which sound signals she must have.' });
            }
            return;
        }
        const unnamed = working.find(device => !device.facts.has('device'));
        const missing = missingFor(length.m, working);
        if (missing.length === 0) {
            return;
        }
        if (unnamed && length.m >= whistleFromM - 1e-9) {
            raise({ components: [unnamed], at: unnamed.idSpan, severity: 'hint', message: `Record the device of ${unnamed.id}, whistle or bell, to tell whether she has the sound signals for ${lengthBoth(length.m)}.` });
            return;
        }
        raise(problem(record, length, missing, devices));
    },
});

function isWhistle(device: Component): boolean {
    return ['whistle', 'horn'].includes(wordOf(device, 'device') ?? '');
}

function isBell(device: Component): boolean {
    return wordOf(device, 'device') === 'bell';
}

type Missing = 'whistle' | 'bell' | 'horn';

function missingFor(lengthM: number, working: readonly Component[]): Missing[] {
    const needed = soundSignalsNeeded(lengthM);
    if (!needed.whistle) {
        return working.length === 0 ? ['horn'] : [];
    }
    return [...(working.some(isWhistle) ? [] : ['whistle' as const]), ...(needed.bell && !working.some(isBell) ? ['bell' as const] : [])];
}

function problem(record: SurveyRecord, length: { readonly m: number; readonly property: string }, missing: readonly Missing[], devices: readonly Component[]): Raised {
    const isAny = missing.includes('horn');
    const wanted = isAny ? 'some means of a sound signal' : listed(missing.map(what => `a ${what}`));
    const dead = devices.filter(device => wordOf(device, 'works') === 'no' || siOf(device, 'quantity') === 0);
    const deadText = dead.length === 0 ? '' : ` (${listed(dead.map(device => device.id))} ${dead.length === 1 ? 'does' : 'do'} not count)`;
    const rule = isAny ? '' : missing.includes('bell') && !missing.includes('whistle') ? `From ${lengthBoth(bellFromM)} on` : `From ${lengthBoth(whistleFromM)} on`;
    return {
        components: devices,
        at: dead[0]?.facts.get('works')?.span ?? devices[0]?.idSpan ?? record.vessel?.span ?? { uri: record.mainUri, start: 0, end: 0 },
        message: `At ${lengthBoth(length.m)} she is to have ${wanted}, and none that works is recorded${deadText}. In fog she could not be heard; fit ${isAny ? 'one' : wanted}.`,
        figures: { length: { value: length.m, unit: 'm' } },
        corrections: missing.map(what => adding(record, devices.at(-1), `Add a ${what}`, 'sound-device', 'SD', [['device', what]])),
        draft: {
            title: isAny ? 'No means of a sound signal' : `No ${listed(missing)}`,
            urgency: 'before-departure',
            seen: `She measures {vessel.${length.property}}. ${isAny ? 'No means of a sound signal that works' : `No ${listed(missing, 'or')} that works`} was seen.`,
            because: isAny ? 'Every vessel is to have some means of an efficient sound signal; in fog she could not be heard.' : `${rule} a vessel is to have ${missing.includes('bell') && !missing.includes('whistle') ? 'a bell besides her whistle' : wanted}; in fog she could not be heard.`,
            recommend: `Fit ${isAny ? 'a horn or whistle' : wanted} and try it.`,
            cites: [['Rules of the road', 'Rule 33']],
        },
    };
}
