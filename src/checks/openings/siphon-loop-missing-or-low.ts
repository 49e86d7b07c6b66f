/** An appliance or muffler below the waterline, or a low bilge outlet, without a vented loop high enough. */
import { flagOf, isKind, nameOf, siOf, wordOf, type Component, type Run, type SurveyRecord, runsThrough } from '../../record/model.js';
import { computedBoth } from '../fit/wording.js';
import { openingOf } from '../hoses/waterline.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';

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
    needs: ['appliance: rim-above-waterline or rim-below-waterline', 'vented loop: top-above-heeled-waterline or top-above-waterline', 'muffler: inlet-above-waterline', 'bilge pump: outlet-above-waterline, looped'],
    computes: 'A fault where a run from the hull ends in an appliance or muffler below the waterline and holds no vented loop, or one whose top is less than 150 mm (6 in) above the waterline; and where a bilge outlet lies less than 200 mm (8 in) above the waterline and its hose has no loop.',
    sources: [{ text: 'loop 150 mm above the heeled waterline, outlet 200 mm above the waterline at rest; makers differ, 6 to 12 in', provenance: 'practice' }],
    limits: ['The heeled waterline is not computed: where only the height at rest is recorded, that height is judged.', 'An appliance whose rim is not recorded is not judged.'],
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
    }],
    silent: [
        { name: 'rim above the waterline', text: 'through-hull TH1 { size: 3/4 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock }\ntoilet T1 { rim-above-waterline: 8 in }\nrun R1 { service: toilet-intake }: TH1 -> SC1 -> T1\n' },
        { name: 'rim not recorded', text: 'through-hull TH1 { size: 3/4 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock }\ntoilet T1\nrun R1 { service: toilet-intake }: TH1 -> SC1 -> T1\n' },
        { name: 'bilge outlet high enough', text: 'bilge-pump BP1 { rated-flow: 2000 gph  outlet-above-waterline: 9 in  looped: no  works: yes }\n' },
    ],
    run(record, raise) {
        for (const run of record.runs) {
            const opening = openingOf(record, run);
            const last = run.components.at(-1);
            if (opening && last && last !== opening && run.end === 'component' && !isKind(record, last, 'bilge-pump') && liesBelow(record, last)) {
                const loop = run.components.find(c => isKind(record, c, 'vented-loop'));
                const fault = loop ? loopFault(loop) : 'missing';
                if (fault) {
                    raise(atAppliance(run, last, loop));
                }
            }
        }
        for (const pump of record.components.values()) {
            if (isKind(record, pump, 'bilge-pump')) {
                const height = siOf(pump, 'outlet-above-waterline');
                const hasLoop = flagOf(pump, 'looped') === true || runsThrough(record, pump).some(run => run.components.some(c => isKind(record, c, 'vented-loop')));
                if (height !== undefined && height < leastOutletM - 1e-6 && !hasLoop) {
                    raise(flagOf(pump, 'looped') === undefined
                        ? { components: [pump], at: pump.idSpan, severity: 'hint', message: `The outlet of ${nameOf(pump)} is ${computedBoth(height, 'length')} above the waterline; record whether its hose is looped to tell whether the sea can siphon in.` }
                        : atPump(pump, height));
                }
            }
        }
    },
});

function liesBelow(record: SurveyRecord, part: Component): boolean {
    const below = siOf(part, 'rim-below-waterline');
    const inlet = isKind(record, part, 'muffler') ? siOf(part, 'inlet-above-waterline') : undefined;
    return (below !== undefined && below > 0) || (inlet !== undefined && inlet < 0);
}

function loopFault(loop: Component): boolean {
    const height = siOf(loop, 'top-above-heeled-waterline') ?? siOf(loop, 'top-above-waterline');
    return height !== undefined && height < leastLoopM - 1e-6;
}

function atAppliance(run: Run, part: Component, loop: Component | undefined): Raised {
    const height = loop && (siOf(loop, 'top-above-heeled-waterline') ?? siOf(loop, 'top-above-waterline'));
    const what = loop && height !== undefined ? `the top of its vented loop (${loop.id}) is only ${computedBoth(height, 'length')} above the waterline` : 'its run has no vented loop';
    const joint = run.joints.at(-1);
    const heeled = loop?.facts.has('top-above-heeled-waterline') ? 'top-above-heeled-waterline' : 'top-above-waterline';
    const corrections: Correction[] = [
        ...(loop ? [{ kind: 'set-fact', title: `Record the top of ${loop.id} as 300 mm above the waterline`, component: loop, property: heeled, value: '300 mm' } as const]
            : joint ? [{ kind: 'insert-in-run', title: `Insert a vented loop before ${part.id}`, joint, componentKind: 'vented-loop', idStem: 'VL', facts: [['top-above-waterline', '300 mm']] } as const] : []),
    ];
    const service = wordOf(run, 'service');
    return {
        components: loop ? [loop, part] : [part], at: loop ? loop.facts.get(heeled)?.span ?? loop.idSpan : part.idSpan,
        message: `${nameOf(part)} lies below the waterline and ${what}: once the hose is full, the sea siphons in. Fit a vented loop at least 150 mm (6 in) above the heeled waterline.`,
        figures: height === undefined ? {} : { loop: { value: Math.round(height * 1000), unit: 'mm' }, least: { value: leastLoopM * 1000, unit: 'mm' } },
        corrections,
        draft: {
            title: loop ? `Vented loop ${loop.id} is too low` : `No vented loop before ${part.title ?? part.id}`,
            urgency: service === undefined || service === 'sink-drain' || service === 'shower-drain' ? 'in-upkeep' : 'before-departure',
            seen: `${part.title ?? 'The appliance'} (${part.id}) lies below the waterline and ${what}.`,
            because: 'Once its hose is full the sea siphons in by itself.',
            recommend: 'Fit, or raise, a vented loop whose top stands at least 150 mm (6 in) above the heeled waterline, and keep its air valve clear.',
            cites: [['Good practice']],
        },
    };
}

function atPump(pump: Component, heightM: number): Raised {
    return {
        components: [pump], at: pump.facts.get('outlet-above-waterline')?.span ?? pump.idSpan,
        message: `The outlet of ${nameOf(pump)} is ${computedBoth(heightM, 'length')} above the waterline, under 200 mm (8 in), and its hose has no loop: heeled or laden, the sea siphons back. Raise the outlet or lead the hose in a vented loop.`,
        figures: { outlet: { value: Math.round(heightM * 1000), unit: 'mm' }, least: { value: leastOutletM * 1000, unit: 'mm' } },
        corrections: [{ kind: 'set-fact', title: `Record the hose of ${pump.id} as looped`, component: pump, property: 'looped', value: 'yes' }],
        draft: {
            title: `Low outlet of ${pump.title ?? pump.id}`,
            urgency: 'in-upkeep',
            seen: `The outlet of ${pump.title ?? 'the pump'} (${pump.id}) lies {${pump.id}.outlet-above-waterline} above the waterline, and its hose has no loop.`,
            because: 'Heeled or laden, the sea siphons back through the pump.',
            recommend: 'Raise the outlet, or lead the hose in a vented loop.',
            cites: [['Good practice']],
        },
    };
}
