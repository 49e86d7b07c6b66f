/** A valve that cannot be shut in need: seized, without its handle, or stiff. */
import { flagOf, isKind, nameOf, ofKind, wordOf, type Component, type SurveyRecord, runsThrough } from '../../record/model.js';
import { heightOf, isBelowWaterline, openingOf } from '../hoses/waterline.js';
import { defineCheck, type Correction, type Raised, type Urgency } from '../contract.js';
import { floodCritical } from '../lies.js';

type Fault = 'seized' | 'no-handle' | 'spins' | 'does-not-shut' | 'needs-tools' | 'stiff';

const texts: Readonly<Record<Fault, string>> = {
    seized: 'is seized', 'no-handle': 'has no handle', spins: 'spins without moving its gate', 'does-not-shut': 'does not shut the water off',
    'needs-tools': 'cannot be reached or worked without tools', stiff: 'is stiff',
};

/** The fact that tells of each fault, and what it would say of a valve that works. */
const facts = {
    seized: ['works', 'free'], 'no-handle': ['handle', 'fitted'], spins: ['spins', 'no'], 'does-not-shut': ['shuts-off', 'yes'], 'needs-tools': ['needs-tools', 'no'], stiff: ['works', 'free'],
} as const satisfies Readonly<Record<Fault, readonly [property: string, value: string]>>;

export const valveDoesNotWork = defineCheck({
    id: 'valve-does-not-work',
    group: 'openings',
    severity: 'error',
    title: 'Valve does not work',
    why: 'It cannot be shut in need.',
    needs: ['valve: works, handle, shuts-off, spins, needs-tools; position, for the urgency', 'its run, where the handle is off by the sewage rule', 'vessel: no-discharge-waters'],
    computes: 'A fault where a valve is recorded as seized, without its handle, spinning, not shutting off, or to be reached only with tools; advice where it is stiff. A handle off a shut toilet discharge in no-discharge waters is as the rule has it; whether she is kept there must be recorded.',
    sources: [
        { text: 'efficient and accessible means of closing, on inspected vessels', standard: '46 CFR 56.50-95', provenance: 'published' },
        { text: 'handle off as a way to secure a sewage valve shut', standard: '33 CFR 159', clause: '159.7', provenance: 'published' },
        { text: 'valves are worked at every survey', provenance: 'practice' },
    ],
    limits: ['A valve not recorded as worked is not judged.', 'One problem a valve, the gravest: what else is wrong with it shows when that is put right.', 'A gate or globe valve that spins below the waterline is told by valve-or-fitting-unsuitable.'],
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
        { name: 'free, handle tied', text: 'seacock SC1 { pattern: flanged-seacock  works: free  handle: tied }\n' },
        { name: 'not tried', text: 'seacock SC1 { pattern: flanged-seacock  works: not-tried }\n' },
    ],
    run(record, raise) {
        for (const valve of ofKind(record, 'valve')) {
            const fault = faultOf(record, valve);
            if (fault === 'no-handle' && mayBeByRule(record, valve)) {
                raise({
                    components: [valve], at: valve.facts.get('handle')?.span ?? valve.idSpan, severity: 'hint',
                    message: `The handle of ${nameOf(valve)} is off, as a sewage valve may be where nothing may be let out; record no-discharge-waters of the vessel to tell whether it must be fitted.`,
                    corrections: waters(record),
                });
            } else if (fault) {
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
    if (wordOf(valve, 'handle') === 'gone' && !isByRule(record, valve)) {
        return 'no-handle';
    }
    if (flagOf(valve, 'spins') === true && !isToldAsUnsuitable(record, valve)) {
        return 'spins';
    }
    return flagOf(valve, 'shuts-off') === false ? 'does-not-shut' : flagOf(valve, 'needs-tools') === true ? 'needs-tools' : works === 'stiff' ? 'stiff' : undefined;
}

/** A shut sewage valve: 33 CFR 159.7 takes its handle off as a way to secure it. */
function isShutSewage(record: SurveyRecord, valve: Component): boolean {
    return runsThrough(record, valve).some(run => wordOf(run, 'service') === 'toilet-discharge') && wordOf(valve, 'position') !== 'open';
}

function isByRule(record: SurveyRecord, valve: Component): boolean {
    return isShutSewage(record, valve) && record.vessel !== undefined && flagOf(record.vessel, 'no-discharge-waters') === true;
}

function mayBeByRule(record: SurveyRecord, valve: Component): boolean {
    return isShutSewage(record, valve) && (record.vessel === undefined || flagOf(record.vessel, 'no-discharge-waters') === undefined);
}

function isToldAsUnsuitable(record: SurveyRecord, valve: Component): boolean {
    const pattern = wordOf(valve, 'pattern');
    return (pattern === 'gate-valve' || pattern === 'globe-valve') && isBelowWaterline(record, valve);
}

function waters(record: SurveyRecord): Correction[] {
    return record.vessel ? [{ kind: 'set-vessel-fact', title: 'Record that she is kept in no-discharge waters', property: 'no-discharge-waters', value: 'yes' }] : [];
}

const remedies: Readonly<Record<Fault, string>> = {
    seized: 'Free or renew it', 'no-handle': 'Fit a handle', spins: 'Renew it', 'does-not-shut': 'Lap it in or renew it', 'needs-tools': 'Clear its access', stiff: 'Free or renew it',
};

function problem(record: SurveyRecord, valve: Component, fault: Fault): Raised {
    const run = runsThrough(record, valve).find(r => openingOf(record, r));
    const opening = run && openingOf(record, run);
    const isBelow = run !== undefined && heightOf(record, run) === 'below';
    const position = wordOf(valve, 'position');
    const stuck = position === undefined ? '' : `, ${position === 'open' ? 'open' : 'shut'}`;
    const [property, value] = facts[fault];
    const corrections: Correction[] = [
        fault === 'seized' || fault === 'stiff' ? { kind: 'set-fact', title: `Record ${valve.id} as freed in the survey`, component: valve, property, value }
            : { kind: 'set-fact', title: fault === 'no-handle' ? `Record the handle of ${valve.id} as fitted` : `Record ${property} of ${valve.id} as ${value}`, component: valve, property, value },
    ];
    const isAdvice = fault === 'stiff';
    const urgency: Urgency = isAdvice ? 'in-upkeep' : position === 'shut' ? 'next-haul-out' : position === 'open' && isBelow && hasFaultyHose(record, valve) ? floodCritical(record) : 'before-departure';
    return {
        components: [valve], severity: isAdvice ? 'warning' : 'error',
        at: valve.facts.get(property)?.span ?? valve.idSpan,
        message: `${nameOf(valve)}${opening ? ` on ${opening.id}` : ''} ${texts[fault]}${stuck}: ${harmOf(fault, position)}. ${remedies[fault]}, and work it at regular intervals.`,
        corrections,
        draft: {
            title: `${valve.title ?? valve.id} ${texts[fault]}`,
            urgency,
            seen: `${valve.title ?? 'The valve'} (${valve.id})${opening ? ` on ${opening.id}` : ''} ${texts[fault]}${stuck}.`,
            because: isAdvice ? 'A stiff valve is left alone until it seizes.' : fault === 'needs-tools' ? 'It must be shut at once when its hose fails.' : fault === 'does-not-shut' ? 'It does not stop the water when its hose fails.' : position === 'shut' ? 'What it feeds or drains is out of use, and forced open it may not shut again.' : 'It cannot be shut when its hose fails, or opened when it is needed.',
            recommend: `${remedies[fault]}, keep its access clear, and work it at regular intervals.`,
            cites: [['Good practice']],
        },
    };
}

/** What follows, for the sentence of the message. */
function harmOf(fault: Fault, position: string | undefined): string {
    return fault === 'stiff' ? 'it may not be shut in time' : fault === 'needs-tools' ? 'it cannot be shut in time'
        : position === 'shut' && (fault === 'seized' || fault === 'no-handle' || fault === 'spins') ? 'it cannot be opened, nor be relied on to shut again' : 'it cannot be shut in need';
}

function hasFaultyHose(record: SurveyRecord, valve: Component): boolean {
    const poorClamps = new Set(['broken', 'cracked', 'loose']);
    const faulty = new Set(['defective', 'failed', 'perished', 'cracked', 'soft', 'swollen', 'chafed']);
    return runsThrough(record, valve).some(run => run.components.some(c => isKind(record, c, 'hose') && (faulty.has(wordOf(c, 'condition') ?? '') || flagOf(c, 'cracked-to-cord') === true || poorClamps.has(wordOf(c, 'clamp-condition') ?? '')))
        || run.joints.some(joint => poorClamps.has(wordOf(joint, 'clamp-condition') ?? '')));
}
