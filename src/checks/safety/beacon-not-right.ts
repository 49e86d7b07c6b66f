/** A distress beacon with a spent battery, registered to another vessel, or coded otherwise than its papers say. */
import { flagOf, nameOf, ofKind, valueOf, wordOf, type Component, type DateFigure, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { hasPassed } from '../dates.js';
import { listed } from '../phrasing.js';
import { surveyedOn } from '../hoses/age.js';
import { offshoreUrgency, type GearFault } from './gear.js';

export const beaconNotRight = defineCheck({
    id: 'beacon-not-right',
    group: 'safety',
    severity: 'error',
    title: 'Distress beacon is out of date or not registered to her',
    why: 'Searchers call the house it is registered to, and a spent battery calls nobody.',
    needs: ['beacon: battery-expires, registered, registered-boat, registration-expires, code, code-on-papers, works', 'the name of the vessel', 'the day of the last attendance'],
    computes: 'A fault where the marked month of the battery or of the registration has ended before the day of the survey, where the beacon is recorded as not registered to her and her owner or names another vessel, where the code on it and on its papers differ, and where its own test failed.',
    sources: [
        { text: 'duty to register, and to register anew when owner or vessel change', provenance: 'secondary' },
        { text: 'registration and battery of beacons', standard: '47 CFR 80', provenance: 'memory' },
    ],
    limits: [
        'The owner is not known to it: registered says whether the registration names him.',
        'Names and codes are compared without regard to letter case, blanks and hyphens.',
        'Where no beacon is recorded, nothing is said.',
    ],
    examples: [{
        name: 'battery past its month',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
beacon B1 { battery-expires: 2026-09  registered: yes }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
beacon B1 { battery-expires: 2031-09  registered: yes }
`,
    }, {
        name: 'code differs from the papers',
        bad: 'beacon B1 { registered: yes  code: "2DCC4A1B3EFFBFF"  code-on-papers: "2DCC4A1B3EFFBFE" }\n',
        fixed: 'beacon B1 { registered: yes  code: "2DCC4A1B3EFFBFF"  code-on-papers: "2DCC4A1B3EFFBFF" }\n',
        correction: 'Copy the code of B1 to its papers',
    }, {
        name: 'registered to another vessel',
        bad: 'vessel "Marram" {}\nbeacon B1 { registered-boat: "Sandpiper" }\n',
        fixed: 'vessel "Marram" {}\nbeacon B1 { registered-boat: "Marram" }\n',
    }],
    silent: [
        { name: 'last day of the battery’s month', text: 'survey "1" pre-purchase { attended 2026-09-30 afloat "Berth" }\nbeacon B1 { battery-expires: 2026-09  registered: yes }\n' },
        { name: 'code written with blanks', text: 'beacon B1 { registered: yes  code: "2DCC 4A1B 3EFF BFF"  code-on-papers: "2dcc4a1b3effbff" }\n' },
        { name: 'name in capitals', text: 'vessel "Marram" {}\nbeacon B1 { registered-boat: "MARRAM" }\n' },
        { name: 'papers not seen', text: 'vessel "Marram" {}\nbeacon B1 { code: "2DCC4A1B3EFFBFF" }\n' },
    ],
    run(record, raise) {
        const today = surveyedOn(record);
        for (const beacon of ofKind(record, 'beacon')) {
            const faults = faultsOf(record, beacon, today);
            if (faults.length > 0) {
                raise(problem(record, beacon, faults));
            } else if (!today && (beacon.facts.has('battery-expires') || beacon.facts.has('registration-expires'))) {
                raise({ components: [beacon], at: beacon.idSpan, severity: 'hint', message: `${nameOf(beacon)} carries a date; record when she was attended to tell whether it has passed.` });
            }
        }
    },
});

const bare = (text: string) => text.toUpperCase().replace(/[\s-]/g, '');

function faultsOf(record: SurveyRecord, beacon: Component<'beacon'>, today: DateFigure | undefined): GearFault[] {
    const { id } = beacon;
    const faults: GearFault[] = [];
    const add = (property: string, what: string, seen: string, remedy: string) => {
        faults.push({ property, what, seen, remedy });
    };
    const battery = valueOf(beacon, 'battery-expires')?.figure;
    if (battery && today && hasPassed(battery, today)) {
        add('battery-expires', `has a battery marked ${battery.written}`, `has a battery marked {${id}.battery-expires}`, 'have its battery renewed');
    }
    if (wordOf(beacon, 'works') === 'no') {
        add('works', 'failed its own test', 'failed its own test', 'have it tested and put in order');
    }
    const boat = valueOf(beacon, 'registered-boat')?.prose.text;
    const name = record.vessel?.name;
    if (boat && name && bare(boat) !== bare(name)) {
        add('registered-boat', `is registered to ${boat}, not to ${name}`, `is registered to {${id}.registered-boat}, not to {vessel.name}`, 'register it to this vessel and owner');
    } else if (flagOf(beacon, 'registered') === false) {
        add('registered', 'is not registered to this vessel and owner', 'is not registered to this vessel and owner', 'register it to this vessel and owner');
    }
    const registration = valueOf(beacon, 'registration-expires')?.figure;
    if (registration && today && hasPassed(registration, today)) {
        add('registration-expires', `has a registration that ran to ${registration.written}`, `has a registration that ran to {${id}.registration-expires}`, 'renew its registration');
    }
    const code = valueOf(beacon, 'code')?.prose.text;
    const papers = valueOf(beacon, 'code-on-papers')?.prose.text;
    if (code && papers && bare(code) !== bare(papers)) {
        add('code-on-papers', `is coded ${code}, and its papers say ${papers}`, `is coded {${id}.code}, and its papers say {${id}.code-on-papers}`, 'register it anew with the code on it');
    }
    return faults;
}

function problem(record: SurveyRecord, beacon: Component<'beacon'>, faults: readonly GearFault[]): Raised {
    const remedy = listed([...new Set(faults.map(fault => fault.remedy))]);
    const isOf = (property: string) => faults.some(fault => fault.property === property);
    const code = valueOf(beacon, 'code')?.prose.text;
    const corrections: Correction[] = [
        ...(code && isOf('code-on-papers') ? [{ kind: 'set-fact' as const, title: `Copy the code of ${beacon.id} to its papers`, component: beacon, property: 'code-on-papers', value: `"${code}"` }] : []),
        ...(isOf('registered') ? [{ kind: 'set-fact' as const, title: `Record ${beacon.id} as registered`, component: beacon, property: 'registered', value: 'yes' }] : []),
    ];
    return {
        components: [beacon],
        at: beacon.facts.get(faults[0]?.property ?? '')?.span ?? beacon.idSpan,
        message: `${nameOf(beacon)} ${listed(faults.map(fault => fault.what))}. Searchers would not be called, or would call the wrong house; ${remedy}.`,
        corrections,
        draft: {
            title: `Distress beacon ${beacon.id} is not in order`,
            ...offshoreUrgency(record),
            seen: `Distress beacon ${beacon.id} ${listed(faults.map(fault => fault.seen))}.`,
            because: 'A spent battery sends nothing, and a wrong registration sends searchers to the wrong house.',
            recommend: `Distress beacon ${beacon.id}: ${remedy}.`,
            cites: [['47 CFR 80']],
        },
    };
}
