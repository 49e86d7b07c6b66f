/** An appliance or muffler below the waterline, or a low bilge outlet, without a vented loop high enough. */
import { flagOf, isKind, nameOf, ofKind, siOf, wordOf, type Component, type Run, type SurveyRecord, runsThrough } from '../../record/model.js';
import { computedBoth } from '../phrasing.js';
import { openingOf } from '../hoses/waterline.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { depthM, pathsFrom, plumbedOpenings, type Path } from './paths.js';

/** Least height of the loop's top above the heeled waterline, m (6 in; makers say 6 to 12). */
const leastLoopM = 0.15;
/** Least height of a bilge outlet above the waterline at rest without a loop, m (8 in). */
const leastOutletM = 0.2;

export const siphonLoopMissingOrLow = defineCheck({
    id: 'siphon-loop-missing-or-low',
    group: 'openings',
    severity: 'error',
    title: 'Vented loop is missing or too low',
    why: 'Once the hose is full the sea siphons in by itself.',
    needs: ['appliance: rim-above-waterline or rim-below-waterline', 'vented loop: top-above-heeled-waterline or top-above-waterline, vent-works', 'muffler: inlet-above-waterline', 'bilge pump: outlet-above-waterline or the height of its outlet, looped'],
    computes: 'A fault where a run from the hull leads to an appliance or muffler below the waterline and holds no vented loop before it, or one whose top is less than 150 mm (6 in) above the waterline or whose air valve does not work; and where a bilge outlet lies less than 200 mm (8 in) above the waterline and its hose has no loop.',
    sources: [{ text: 'loop 150 mm above the heeled waterline, outlet 200 mm above the waterline at rest; makers differ, 6 to 12 in', provenance: 'practice' }],
    limits: [
        'The heeled waterline is not computed: where only the height at rest is recorded, that height is judged, and a rim above the waterline at rest is taken as above.',
        'An appliance whose rim is not recorded is not judged; for a toilet or muffler the rim is asked for.',
        'A run is read from the hull inward, whichever way it is written.',
    ],
    examples: [{
        name: 'toilet below the waterline without a loop',
        bad: `through-hull TH1 { size: 3/4 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
toilet T1 { rim-below-waterline: 2 in }
run R1 "Intake" { service: toilet-intake }: TH1 -> SC1 -> T1
`,
        fixed: `through-hull TH1 { size: 3/4 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
vented-loop VL1 { top-above-waterline: 18 in }
toilet T1 { rim-below-waterline: 2 in }
run R1 "Intake" { service: toilet-intake }: TH1 -> SC1 -> VL1 -> T1
`,
        correction: 'Insert a vented loop before T1',
    }, {
        name: 'loop too low',
        bad: `through-hull TH1 { size: 3/4 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
vented-loop VL1 { top-above-waterline: 4 in }
toilet T1 { rim-below-waterline: 2 in }
run R1 "Intake" { service: toilet-intake }: TH1 -> SC1 -> VL1 -> T1
`,
        fixed: `through-hull TH1 { size: 3/4 in  metal: gunmetal  below-waterline: 1 ft }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
vented-loop VL1 { top-above-waterline: 12 in }
toilet T1 { rim-below-waterline: 2 in }
run R1 "Intake" { service: toilet-intake }: TH1 -> SC1 -> VL1 -> T1
`,
        correction: 'Record the top of VL1 as 300 mm above the waterline',
    }],
    silent: [
        { name: 'rim above the waterline', text: 'through-hull TH1 { size: 3/4 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock }\ntoilet T1 { rim-above-waterline: 8 in }\nrun R1 { service: toilet-intake }: TH1 -> SC1 -> T1\n' },
        { name: 'rim not recorded', text: 'through-hull TH1 { size: 3/4 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock }\nsink S1\nrun R1 { service: sink-drain }: TH1 -> SC1 -> S1\n' },
        { name: 'capped', text: 'through-hull TH1 { size: 3/4 in  below-waterline: 1 ft  closure: capped }\nseacock SC1 { pattern: flanged-seacock }\ntoilet T1 { rim-below-waterline: 2 in }\nrun R1 { service: toilet-intake }: TH1 -> SC1 -> T1\n' },
        { name: 'loop exactly 150 mm up', text: 'through-hull TH1 { size: 3/4 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock }\nvented-loop VL1 { top-above-waterline: 150 mm }\ntoilet T1 { rim-below-waterline: 2 in }\nrun R1 { service: toilet-intake }: TH1 -> SC1 -> VL1 -> T1\n' },
        { name: 'bilge outlet high enough', text: 'bilge-pump BP1 { rated-flow: 2000 gph  outlet-above-waterline: 9 in  looped: no  works: yes }\n' },
    ],
    run(record, raise) {
        for (const opening of plumbedOpenings(record)) {
            for (const path of pathsFrom(record, opening)) {
                const raised = path.isClosed ? undefined : atRun(record, path);
                if (raised) {
                    raise(raised);
                }
            }
        }
        for (const pump of ofKind(record, 'bilge-pump')) {
            const outlet = outletOf(record, pump);
            const hasLoop = flagOf(pump, 'looped') === true || runsThrough(record, pump).some(run => run.components.some(c => isKind(record, c, 'vented-loop')));
            if (outlet && outlet.heightM < leastOutletM - 1e-6 && !hasLoop) {
                raise(flagOf(pump, 'looped') === undefined
                    ? { components: [pump], at: pump.idSpan, severity: 'hint', message: `The outlet of ${nameOf(pump)} is ${heightText(outlet.heightM)}; record whether its hose is looped to tell whether the sea can siphon in.` }
                    : atPump(pump, outlet));
            }
        }
    },
});

/** The first appliance or muffler of a run that lies below the waterline, judged by the loop before it. */
function atRun(record: SurveyRecord, { opening, run, parts: components }: Path): Raised | undefined {
    const index = components.findIndex(c => c !== opening && !isKind(record, c, 'bilge-pump') && liesBelow(record, c));
    const part = components[index];
    if (!run || !part) {
        return run && depthM(opening) !== undefined ? rimAsked(record, run) : undefined;
    }
    const isOutward = run.components[0] !== opening;
    const loop = components.slice(0, index).find(c => isKind(record, c, 'vented-loop'));
    if (!loop) {
        return atAppliance(run, isOutward, part, undefined, 'its run has no vented loop before it');
    }
    const height = loopHeightM(loop);
    if (height !== undefined && height < leastLoopM - 1e-6) {
        return atAppliance(run, isOutward, part, loop, `the top of its vented loop (${loop.id}) is only ${heightText(height)}`);
    }
    if (flagOf(loop, 'vent-works') === false) {
        return atAppliance(run, isOutward, part, loop, `the air valve of its vented loop (${loop.id}) does not work`);
    }
    return height !== undefined ? undefined : {
        components: [loop, part], at: loop.idSpan, severity: 'hint',
        message: `${nameOf(part)} lies below the waterline; record top-above-waterline of ${loop.id} to tell whether its loop keeps the sea from siphoning in.`,
    };
}

/** Asks for the height of a toilet or muffler that no loop stands before. */
function rimAsked(record: SurveyRecord, run: Run): Raised | undefined {
    if (run.components.some(c => isKind(record, c, 'vented-loop'))) {
        return undefined;
    }
    for (const part of run.components) {
        const isMuffler = isKind(record, part, 'muffler');
        if (isMuffler ? !part.facts.has('inlet-above-waterline') : isKind(record, part, 'toilet') && !part.facts.has('rim-above-waterline') && !part.facts.has('rim-below-waterline')) {
            const fact = isMuffler ? 'inlet-above-waterline' : 'rim-above-waterline or rim-below-waterline';
            return { components: [part], at: part.idSpan, severity: 'hint', message: `${nameOf(part)} has no vented loop in ${run.title ?? run.id}; record ${fact} to tell whether the sea can siphon in.` };
        }
    }
    return undefined;
}

function liesBelow(record: SurveyRecord, part: Component): boolean {
    const below = siOf(part, 'rim-below-waterline');
    const inlet = isKind(record, part, 'muffler') ? siOf(part, 'inlet-above-waterline') : undefined;
    return (below !== undefined && below > 0) || (inlet !== undefined && inlet < 0);
}

const loopHeightM = (loop: Component): number | undefined => siOf(loop, 'top-above-heeled-waterline') ?? siOf(loop, 'top-above-waterline');

function heightText(heightM: number): string {
    return heightM === 0 ? 'at the waterline' : `${computedBoth(Math.abs(heightM), 'length')} ${heightM > 0 ? 'above' : 'below'} the waterline`;
}

function atAppliance(run: Run, isOutward: boolean, part: Component, loop: Component | undefined, what: string): Raised {
    const height = loop && loopHeightM(loop);
    const isLow = height !== undefined && height < leastLoopM - 1e-6;
    // The side of the part that looks to the sea: in a run written outward it is the one behind it.
    const joint = isOutward ? run.joints.find(j => j.from === part) : run.joints.find(j => j.to === part);
    const property = loop?.facts.has('top-above-heeled-waterline') ? 'top-above-heeled-waterline' : 'top-above-waterline';
    const corrections: Correction[] = [
        ...(loop && isLow ? [{ kind: 'set-fact', title: `Record the top of ${loop.id} as 300 mm above the waterline`, component: loop, property, value: '300 mm' } as const]
            : loop ? [{ kind: 'set-fact', title: `Record the air valve of ${loop.id} as working`, component: loop, property: 'vent-works', value: 'yes' } as const]
                : joint ? [{ kind: 'insert-in-run', title: `Insert a vented loop before ${part.id}`, joint, componentKind: 'vented-loop', idStem: 'VL', facts: [['top-above-waterline', '300 mm']] } as const] : []),
    ];
    const service = wordOf(run, 'service');
    return {
        components: loop ? [loop, part] : [part], at: loop ? loop.facts.get(isLow ? property : 'vent-works')?.span ?? loop.idSpan : part.idSpan,
        message: `${nameOf(part)} lies below the waterline and ${what}: once the hose is full, the sea siphons in. ${loop && !isLow ? 'Renew its air valve' : 'Fit a vented loop at least 150 mm (6 in) above the heeled waterline'}.`,
        figures: height === undefined ? {} : { loop: { value: Math.round(height * 1000), unit: 'mm' }, least: { value: leastLoopM * 1000, unit: 'mm' } },
        related: [{ message: `The run ${run.title ?? run.id}`, span: run.idSpan }],
        corrections,
        draft: {
            title: loop ? `Vented loop ${loop.id} ${isLow ? 'is too low' : 'does not let air in'}` : `No vented loop before ${part.title ?? part.id}`,
            urgency: service === undefined || service === 'sink-drain' || service === 'shower-drain' ? 'in-upkeep' : 'before-departure',
            seen: `${part.title ?? 'The appliance'} (${part.id}) lies below the waterline and ${loop && isLow ? `the top of its vented loop (${loop.id}) stands only {${loop.id}.${property}} above the waterline` : what}.`,
            because: 'Once its hose is full the sea siphons in by itself.',
            recommend: loop && !isLow ? 'Renew the air valve of the loop and prove that it lets air in.' : 'Fit, or raise, a vented loop whose top stands at least 150 mm (6 in) above the heeled waterline, and keep its air valve clear.',
            cites: [['Good practice']],
        },
    };
}

interface Outlet {
    readonly heightM: number;
    readonly on: Component;
    readonly property: 'outlet-above-waterline' | 'above-waterline' | 'below-waterline';
}

/** Height of a bilge pump's outlet: as recorded of the pump, else of the opening its run begins at. */
function outletOf(record: SurveyRecord, pump: Component): Outlet | undefined {
    const own = siOf(pump, 'outlet-above-waterline');
    if (own !== undefined) {
        return { heightM: own, on: pump, property: 'outlet-above-waterline' };
    }
    const run = runsThrough(record, pump).find(r => openingOf(record, r) !== undefined);
    const opening = run && openingOf(record, run);
    const below = opening && siOf(opening, 'below-waterline');
    const above = opening && siOf(opening, 'above-waterline');
    return !opening ? undefined : below !== undefined ? { heightM: -below, on: opening, property: 'below-waterline' }
        : above !== undefined ? { heightM: above, on: opening, property: 'above-waterline' } : undefined;
}

function atPump(pump: Component, { heightM, on, property }: Outlet): Raised {
    return {
        components: on === pump ? [pump] : [pump, on], at: on.facts.get(property)?.span ?? pump.idSpan,
        message: `The outlet of ${nameOf(pump)} is ${heightText(heightM)}, where 200 mm (8 in) above it is the least, and its hose has no loop: heeled or laden, the sea siphons back. Raise the outlet or lead the hose in a vented loop.`,
        figures: { outlet: { value: Math.round(heightM * 1000), unit: 'mm' }, least: { value: leastOutletM * 1000, unit: 'mm' } },
        corrections: [{ kind: 'set-fact', title: `Record the hose of ${pump.id} as looped`, component: pump, property: 'looped', value: 'yes' }],
        draft: {
            title: `Low outlet of ${pump.title ?? pump.id}`,
            urgency: 'in-upkeep',
            seen: `The outlet of ${pump.title ?? 'the pump'} (${pump.id}) lies {${on.id}.${property}} ${property === 'below-waterline' ? 'below' : 'above'} the waterline, and its hose has no loop.`,
            because: 'Heeled or laden, the sea siphons back through the pump.',
            recommend: 'Raise the outlet, or lead the hose in a vented loop.',
            cites: [['Good practice']],
        },
    };
}
