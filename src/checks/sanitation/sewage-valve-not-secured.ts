/** A way for sewage to leave the hull that is not secured shut where nothing may be let out. */
import { flagOf, nameOf, ofKind, runsThrough, wordOf, type Component, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { dischargesOf, isDoorLocked, looseValvesOf, securingOf, type Discharge } from './sewage.js';

export const sewageValveNotSecured = defineCheck({
    id: 'sewage-valve-not-secured',
    group: 'sanitation',
    severity: 'error',
    title: 'Sewage valve is not secured shut',
    why: 'Where sewage may not be let out, the way to the sea is to be held shut.',
    needs: ['vessel: no-discharge-waters', 'the run of the toilet discharge, to its hull opening', 'its valves: position, handle, secured-by; a diverter: set-to, secured', 'treatment-device: secured-by'],
    computes: 'A fault where, in no-discharge waters, no valve of a sewage run that ends at a hull opening is shut with its handle off, tied or padlocked, and no treatment device stands behind a locked door.',
    sources: [{ text: 'ways of securing a device: shut with the handle off, padlocked, a non-releasable tie, a locked door', standard: '33 CFR 159', clause: '159.7(b), (c)', provenance: 'published' }],
    limits: [
        'The rule holds on waters of the United States.',
        'A valve whose position is not recorded is taken as shut where its handle is off, tied or padlocked.',
        'Where no run of sewage is recorded, a diverter, a valve that serves a toilet or tank and a treatment device are judged by themselves.',
        'One secured valve on the way to the sea is enough; a diverter held towards the tank counts.',
        'An opening that is capped, blanked, glassed over or welded needs no securing.',
        'What she is secured by is judged as found at the survey, also ashore.',
    ],
    examples: [{
        name: 'valve open in no-discharge waters',
        bad: `vessel "Marram" { no-discharge-waters: yes }
through-hull TH1 { size: 1-1/2 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { size: 1-1/2 in  metal: gunmetal  pattern: flanged-seacock  works: free  position: open }
holding-tank HT1
run R1 "Discharge" { service: toilet-discharge }: TH1 -> SC1 -> HT1
`,
        fixed: `vessel "Marram" { no-discharge-waters: yes }
through-hull TH1 { size: 1-1/2 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { size: 1-1/2 in  metal: gunmetal  pattern: flanged-seacock  works: free  position: shut  handle: tied }
holding-tank HT1
run R1 "Discharge" { service: toilet-discharge }: TH1 -> SC1 -> HT1
`,
    }, {
        name: 'shut but held by nothing',
        bad: `vessel "Marram" { no-discharge-waters: yes }
through-hull TH1 { size: 1-1/2 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { size: 1-1/2 in  metal: gunmetal  pattern: flanged-seacock  works: free  position: shut  secured-by: none }
holding-tank HT1
run R1 "Discharge" { service: toilet-discharge }: TH1 -> SC1 -> HT1
`,
        fixed: `vessel "Marram" { no-discharge-waters: yes }
through-hull TH1 { size: 1-1/2 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { size: 1-1/2 in  metal: gunmetal  pattern: flanged-seacock  works: free  position: shut  secured-by: tie }
holding-tank HT1
run R1 "Discharge" { service: toilet-discharge }: TH1 -> SC1 -> HT1
`,
        correction: 'Record SC1 as tied shut',
    }],
    silent: [
        { name: 'handle off, shut', text: 'vessel "Marram" { no-discharge-waters: yes }\nthrough-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock  works: free  position: shut  handle: gone }\nholding-tank HT1\nrun R1 { service: toilet-discharge }: TH1 -> SC1 -> HT1\n' },
        { name: 'open where it may be let out', text: 'vessel "Marram" { no-discharge-waters: no }\nthrough-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock  works: free  position: open }\nholding-tank HT1\nrun R1 { service: toilet-discharge }: TH1 -> SC1 -> HT1\n' },
        { name: 'padlocked', text: 'vessel "Marram" { no-discharge-waters: yes }\nthrough-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock  works: free  position: shut  secured-by: padlock }\nholding-tank HT1\nrun R1 { service: toilet-discharge }: TH1 -> SC1 -> HT1\n' },
        { name: 'treatment device behind a locked door', text: 'vessel "Marram" { no-discharge-waters: yes }\nthrough-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock  works: free  position: open }\ntreatment-device TD1 { certified-type: type-i  secured-by: locked-door }\nrun R1 { service: toilet-discharge }: TH1 -> SC1 -> TD1\n' },
        { name: 'diverter secured towards the tank', text: 'vessel "Marram" { no-discharge-waters: yes }\nthrough-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock  works: free  position: open }\ny-valve YV1 { secured: yes  set-to: holding-tank }\nholding-tank HT1\nrun R1 { service: toilet-discharge }: TH1 -> SC1 -> YV1 -> HT1\n' },
        { name: 'intake open', text: 'vessel "Marram" { no-discharge-waters: yes }\nthrough-hull TH1 { size: 3/4 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock  works: free  position: open }\ntoilet T1 { rim-above-waterline: 4 in }\nrun R1 { service: toilet-intake }: TH1 -> SC1 -> T1\n' },
    ],
    run(record, raise) {
        const { vessel } = record;
        const isForbidden = vessel && flagOf(vessel, 'no-discharge-waters');
        if (!vessel || isForbidden === false) {
            return;
        }
        for (const discharge of dischargesOf(record)) {
            const states = discharge.valves.map(valve => securingOf(record, valve));
            const open = states.indexOf('not-recorded');
            const unknown = open < 0 ? undefined : discharge.valves[open];
            if (states.includes('secured') || isDoorLocked(record, discharge)) {
                continue;
            }
            if (isForbidden === undefined) {
                askWaters(discharge, states.length > 0 && !unknown, raise);
            } else if (unknown || states.length === 0) {
                raise({
                    components: [unknown ?? discharge.opening], at: unknown?.idSpan ?? discharge.run.idSpan, severity: 'hint',
                    message: unknown ? `Nothing may be let out where she is kept; record how ${nameOf(unknown)} is secured (secured-by, or its handle).` : `Nothing may be let out where she is kept, and run ${discharge.run.id} leads to ${discharge.opening.id} without a valve; record the valve and how it is secured.`,
                });
            } else {
                raise(problem(discharge.valves, `On sewage run ${discharge.run.id} to ${discharge.opening.id}`, discharge.opening.id, [discharge.opening], discharge.run.idSpan));
            }
        }
        const loose = looseProblem(record, isForbidden);
        if (loose) {
            raise(loose);
        }
    },
});

/** Where no run of sewage is recorded, its valves and devices speak for themselves. */
function looseProblem(record: SurveyRecord, isForbidden: boolean | undefined): Raised | undefined {
    const valves = looseValvesOf(record);
    const states = valves.map(valve => securingOf(record, valve));
    const devices = ofKind(record, 'treatment-device').filter(device => runsThrough(record, device).length === 0 && wordOf(device, 'certified-type') !== 'type-iii');
    const isLocked = devices.some(device => wordOf(device, 'secured-by') === 'locked-door');
    const open = [...valves.filter((_, at) => states[at] === 'not-secured'), ...devices.filter(device => wordOf(device, 'secured-by') === 'none')];
    const [first] = open;
    if (!first || states.includes('secured') || isLocked || record.runs.some(run => wordOf(run, 'service') === 'toilet-discharge')) {
        return undefined;
    }
    if (isForbidden === undefined) {
        return {
            components: [first], at: first.idSpan, severity: 'hint', corrections: watersCorrections,
            message: `${nameOf(first)} ${stateText(first)}; record no-discharge-waters of the vessel to tell whether that will do.`,
        };
    }
    return problem(open, 'On the way of sewage to the sea', 'the sea', []);
}

const watersCorrections: readonly Correction[] = [
    { kind: 'set-vessel-fact', title: 'Record that she is kept in no-discharge waters', property: 'no-discharge-waters', value: 'yes' },
    { kind: 'set-vessel-fact', title: 'Record that she is not kept in no-discharge waters', property: 'no-discharge-waters', value: 'no' },
];

function askWaters({ run, valves }: Discharge, isOpen: boolean, raise: (problem: Raised) => void): void {
    const [valve] = valves;
    if (isOpen && valve) {
        raise({
            components: [valve], at: valve.facts.get('position')?.span ?? valve.idSpan, severity: 'hint',
            message: `No valve of sewage run ${run.id} is secured shut; record no-discharge-waters of the vessel to tell whether one must be.`,
            corrections: watersCorrections,
        });
    }
}

function stateText(valve: Component): string {
    const isOpen = wordOf(valve, 'position') === 'open';
    return valve.kind === 'treatment-device' ? 'is behind no locked door' : wordOf(valve, 'set-to') === 'overboard' ? 'is set to lead overboard' : isOpen ? 'stands open' : 'is not secured shut';
}

/** Parts that hold nothing shut on a way of sewage, named in words that begin a sentence. */
function problem(parts: readonly Component[], way: string, to: string, others: readonly Component[], fallback?: Span): Raised {
    const said = listed(parts.map(part => `${nameOf(part)} ${stateText(part)}`));
    const [first] = parts;
    const property = ['secured-by', 'position', 'set-to', 'secured'].find(name => first?.facts.has(name)) ?? '';
    const corrections: Correction[] = [
        ...parts.flatMap((part): Correction[] => wordOf(part, 'secured-by') === 'none' && part.kind !== 'treatment-device' && wordOf(part, 'position') !== 'open' && wordOf(part, 'set-to') !== 'overboard'
            ? [{ kind: 'set-fact', title: `Record ${part.id} as tied shut`, component: part, property: 'secured-by', value: 'tie' }] : []),
        { kind: 'set-vessel-fact', title: 'Record that she is not kept in no-discharge waters', property: 'no-discharge-waters', value: 'no' },
    ];
    const valves = parts.filter(part => part.kind !== 'treatment-device');
    const hold = valves.length > 0 ? `shut ${listed(valves.map(valve => valve.id), 'or')} and hold it shut: handle taken off, a padlock, or a tie that must be cut` : `lock the door of the space of ${first?.id ?? 'the device'}, or hold its way to the sea shut`;
    return {
        components: [...parts, ...others],
        at: first?.facts.get(property)?.span ?? fallback ?? first?.idSpan ?? { uri: '', start: 0, end: 0 },
        message: `${way}, ${said}, and nothing may be let out where she is kept. ${valves.length > 0 ? 'Shut it and hold it shut: handle off, a padlock, or a tie that must be cut' : 'Lock its door, or hold the way to the sea shut'}.`,
        corrections,
        draft: {
            title: `Sewage discharge ${to === 'the sea' ? 'to the sea' : `at ${to}`} is not secured`,
            urgency: 'before-use',
            seen: `On the way of sewage to ${to}, ${said}. She is kept in waters where sewage may not be let out.`,
            because: 'In such waters the way to the sea is to be held shut, so that nothing is let out by mistake.',
            recommend: `Before the toilet is used, ${hold}.`,
            cites: [['33 CFR 159', '159.7']],
        },
    };
}
