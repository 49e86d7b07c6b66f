/** A valve that cannot be shut in need: seized, without its handle, or stiff. */
import { flagOf, nameOf, ofKind, wordOf, type Component, type SurveyRecord, runsThrough } from '../../record/model.js';
import { heightOf, openingOf } from '../hoses/waterline.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { floodCritical } from '../lies.js';

type Fault = 'seized' | 'no-handle' | 'stiff';

const texts: Readonly<Record<Fault, string>> = { seized: 'is seized', 'no-handle': 'has no handle', stiff: 'is stiff' };

export const valveDoesNotWork = defineCheck({
    id: 'valve-does-not-work',
    group: 'openings',
    severity: 'error',
    title: 'Valve does not work',
    why: 'It cannot be shut in need.',
    needs: ['valve: works, handle', 'its run, where the handle is off by the sewage rule', 'vessel: no-discharge-waters'],
    computes: 'A fault where a valve is recorded as seized or its handle as gone; advice where it is stiff. A handle off a toilet discharge in no-discharge waters is as the rule has it.',
    sources: [
        { text: 'efficient and accessible means of closing, on inspected vessels', standard: '46 CFR 56.50-95', provenance: 'published' },
        { text: 'handle off as a way to secure a sewage valve shut', standard: '33 CFR 159', clause: '159.7', provenance: 'published' },
        { text: 'valves are worked at every survey', provenance: 'practice' },
    ],
    limits: ['A valve not recorded as worked is not judged.', 'Whether tools are needed to reach it is for the surveyor to say.'],
    examples: [{
        name: 'seized',
        bad: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { size: 1 in  metal: gunmetal  pattern: flanged-seacock  works: seized }
sink S1
run R1: TH1 -> SC1 -> S1
`,
        fixed: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { size: 1 in  metal: gunmetal  pattern: flanged-seacock  works: free }
sink S1
run R1: TH1 -> SC1 -> S1
`,
        correction: 'Record SC1 as freed in the survey',
    }],
    silent: [
        { name: 'handle off a sewage valve in no-discharge waters', text: 'vessel "M" { no-discharge-waters: yes }\nthrough-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock  works: free  handle: gone  position: shut }\ntoilet T1\nrun R1 "Discharge" { service: toilet-discharge }: TH1 -> SC1 -> T1\n' },
        { name: 'not tried', text: 'seacock SC1 { pattern: flanged-seacock  works: not-tried }\n' },
    ],
    run(record, raise) {
        for (const valve of ofKind(record, 'valve')) {
            const fault = faultOf(record, valve);
            if (fault) {
                raise(problem(record, valve, fault));
            }
        }
    },
});

function faultOf(record: SurveyRecord, valve: Component): Fault | undefined {
    const works = wordOf(valve, 'works');
    if (works === 'seized') {
        return 'seized';
    }
    if (wordOf(valve, 'handle') === 'gone') {
        const isSewage = runsThrough(record, valve).some(run => wordOf(run, 'service') === 'toilet-discharge');
        const isByRule = isSewage && record.vessel !== undefined && flagOf(record.vessel, 'no-discharge-waters') === true && wordOf(valve, 'position') !== 'open';
        return isByRule ? undefined : 'no-handle';
    }
    return works === 'stiff' ? 'stiff' : undefined;
}

function problem(record: SurveyRecord, valve: Component, fault: Fault): Raised {
    const run = runsThrough(record, valve).find(r => openingOf(record, r));
    const opening = run && openingOf(record, run);
    const isBelow = run !== undefined && heightOf(record, run) === 'below';
    const position = wordOf(valve, 'position');
    const stuck = position === undefined ? '' : `, ${position === 'open' ? 'open' : 'shut'}`;
    const corrections: Correction[] = [
        fault === 'no-handle' ? { kind: 'set-fact', title: `Record the handle of ${valve.id} as fitted`, component: valve, property: 'handle', value: 'fitted' }
            : { kind: 'set-fact', title: `Record ${valve.id} as freed in the survey`, component: valve, property: 'works', value: 'free' },
        ...(fault === 'no-handle' && record.vessel && run && wordOf(run, 'service') === 'toilet-discharge'
            ? [{ kind: 'set-vessel-fact', title: 'Record that she is kept in no-discharge waters', property: 'no-discharge-waters', value: 'yes' } as const] : []),
    ];
    return {
        components: [valve], severity: fault === 'stiff' ? 'warning' : 'error',
        at: valve.facts.get(fault === 'no-handle' ? 'handle' : 'works')?.span ?? valve.idSpan,
        message: `${nameOf(valve)}${opening ? ` on ${opening.id}` : ''} ${texts[fault]}${stuck}: ${fault === 'stiff' ? 'it may not be shut in time' : 'it cannot be shut in need'}. Free or renew it, and work it at regular intervals.`,
        corrections,
        draft: {
            title: `${valve.title ?? valve.id} ${texts[fault]}`,
            urgency: fault === 'stiff' ? 'in-upkeep' : position === 'shut' ? 'next-haul-out' : isBelow && position === undefined && fault === 'seized' ? 'before-departure' : isBelow && hasFaultyHose(record, valve) ? floodCritical(record) : 'before-departure',
            seen: `${valve.title ?? 'The valve'} (${valve.id})${opening ? ` on ${opening.id}` : ''} ${texts[fault]}${stuck}.`,
            because: fault === 'stiff' ? 'A stiff valve is left alone until it seizes.' : 'It cannot be shut when its hose fails, or opened when it is needed.',
            recommend: 'Free or renew it, keep its access clear, and work it at regular intervals.',
            cites: [['Good practice']],
        },
    };
}

function hasFaultyHose(record: SurveyRecord, valve: Component): boolean {
    const faulty = new Set(['defective', 'failed', 'perished', 'cracked', 'soft', 'swollen']);
    return runsThrough(record, valve).some(run => run.components.some(c => faulty.has(wordOf(c, 'condition') ?? '')));
}
