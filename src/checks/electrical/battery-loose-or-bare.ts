/** A battery that can move, or whose live parts are bare. */
import { batteryMovementLimitM, batteryTestPullN } from '../../trade/battery-hold.js';
import { flagOf, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth, lengthBoth, listed } from '../phrasing.js';
import { federalRule } from './reach.js';

type Battery = Component<'battery'>;

export const batteryLooseOrBare = defineCheck({
    id: 'battery-loose-or-bare',
    group: 'electrical',
    severity: 'error',
    title: 'Battery is loose, or its terminals are bare',
    why: 'A battery that moves spills acid and shorts, and a dropped tool on a bare post makes an arc.',
    needs: ['battery: movement, mass', 'restraint, where movement is not recorded', 'terminals-covered', 'spring-clips', 'ignition-space'],
    computes: 'movement > 1 in under a pull of 90 lbf or twice its weight, whichever is less; nothing that holds it, where its movement is not recorded; a live terminal that is not covered; spring clips.',
    sources: [
        { text: 'at most 1 in under the lesser of 90 lbf and twice the weight; terminals covered; no spring clips', standard: '33 CFR 183', clause: '183.420', provenance: 'published' },
        { text: 'the same for other boats', standard: 'ABYC E-10', provenance: 'memory' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline inboards; elsewhere it is named as good practice.',
        'The pull is to be held for a minute each way; that it was is not known to it.',
        'ISO 10133 is stricter, with 10 mm under twice the weight; that is not judged.',
        'A battery that nothing holds and that was found to move no more than 1 in is left alone.',
    ],
    examples: [{
        name: 'moves 1-1/4 in',
        bad: `vessel "Marram" { fuel: diesel }
battery B1 "House battery" { mass: 60 lb  movement: 1-1/4 in  restraint: strap  terminals-covered: yes }
`,
        fixed: `vessel "Marram" { fuel: diesel }
battery B1 "House battery" { mass: 60 lb  movement: 1/4 in  restraint: strap  terminals-covered: yes }
`,
    }, {
        name: 'nothing holds it',
        bad: `battery B1 { restraint: none  terminals-covered: yes }
`,
        fixed: `battery B1 { restraint: strap  terminals-covered: yes }
`,
        correction: 'Record B1 as strapped',
    }, {
        name: 'bare posts in a space with gasoline',
        bad: `vessel "Marram" { fuel: gasoline }
battery B1 { movement: 0 mm  restraint: box  terminals-covered: no  ignition-space: yes }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
battery B1 { movement: 0 mm  restraint: box  terminals-covered: yes  ignition-space: yes }
`,
        correction: 'Record the terminals of B1 as covered',
    }, {
        name: 'spring clips',
        bad: `battery B1 { spring-clips: yes  terminals-covered: yes  restraint: clamp }
`,
        fixed: `battery B1 { spring-clips: no  terminals-covered: yes  restraint: clamp }
`,
        correction: 'Record B1 as without spring clips',
    }],
    silent: [
        { name: 'moves 1 in', text: 'battery B1 { movement: 1 in  restraint: strap  terminals-covered: yes }\n' },
        { name: 'held and covered', text: 'battery B1 { restraint: box  terminals-covered: yes  spring-clips: no }\n' },
        { name: 'nothing recorded of its hold', text: 'battery B1 { mass: 60 lb }\n' },
    ],
    run(record, raise) {
        for (const battery of ofKind(record, 'battery')) {
            const faults = faultsOf(battery);
            if (faults.length > 0) {
                raise(problem(record, battery, faults));
            }
        }
    },
});

interface Fault {
    readonly property: 'movement' | 'restraint' | 'terminals-covered' | 'spring-clips';
    /** What is wrong, to follow the name of the battery. */
    readonly says: string;
    readonly seen: string;
    /** What to do, in short and for a finding. */
    readonly act: string;
    readonly recommend: string;
    readonly correction?: Correction;
}

/** Pull it is held against, with its weight where that is recorded. */
function pullText(battery: Battery): string {
    const massKg = siOf(battery, 'mass');
    return massKg === undefined ? `the lesser of ${computedBoth(batteryTestPullN(Infinity), 'force')} and twice its weight` : computedBoth(batteryTestPullN(massKg), 'force');
}

function faultsOf(battery: Battery): readonly Fault[] {
    const movement = valueOf(battery, 'movement');
    const most = lengthBoth(batteryMovementLimitM);
    const isLoose = movement !== undefined && movement.si > batteryMovementLimitM + 1e-9;
    const set = (property: Fault['property'], value: string, title: string): Correction => ({ kind: 'set-fact', title, component: battery, property, value });
    const pull = pullText(battery);
    return [
        ...(isLoose ? [{
            property: 'movement', says: `moves ${both(movement)}, where ${most} is the most under a pull of ${pull}`, seen: `moves {${battery.id}.movement}`,
            act: 'hold it by a strap, bar or box', recommend: `fit a strap, bar or box that holds it within ${most} against a pull of ${pull}`,
        } as const] : []),
        ...(movement === undefined && wordOf(battery, 'restraint') === 'none' ? [{
            property: 'restraint', says: 'is held by nothing', seen: 'is held by nothing', act: 'hold it by a strap, bar or box', recommend: `fit a strap, bar or box that holds it within ${most} against a pull of ${pull}`,
            correction: set('restraint', 'strap', `Record ${battery.id} as strapped`),
        } as const] : []),
        ...(flagOf(battery, 'terminals-covered') === false ? [{
            property: 'terminals-covered', says: 'has live terminals that are not covered', seen: 'has live terminals that are not covered', act: 'cover the terminals', recommend: 'cover its live terminals',
            correction: set('terminals-covered', 'yes', `Record the terminals of ${battery.id} as covered`),
        } as const] : []),
        ...(flagOf(battery, 'spring-clips') === true ? [{
            property: 'spring-clips', says: 'is joined by spring clips', seen: 'is joined by spring clips', act: 'fit bolted lugs', recommend: 'put bolted lugs in the place of the spring clips',
            correction: set('spring-clips', 'no', `Record ${battery.id} as without spring clips`),
        } as const] : []),
    ];
}

function problem(record: SurveyRecord, battery: Battery, faults: readonly Fault[]): Raised {
    const rule = federalRule(record, '183.420');
    // The longest, with its limit, stands last.
    const says = listed([...faults].reverse().map(fault => fault.says));
    const act = listed(faults.map(fault => fault.act));
    const movement = siOf(battery, 'movement');
    const spanOf = (fault: Fault) => battery.facts.get(fault.property)?.span ?? battery.idSpan;
    const [first, ...others] = faults;
    return {
        components: [battery],
        at: first ? spanOf(first) : battery.idSpan,
        message: `${nameOf(battery)} ${says}. It can spill acid or make an arc, and ${rule} asks for better; ${act}.`,
        ...(movement !== undefined && first?.property === 'movement'
            ? { figures: { movement: { value: movement * 1000, unit: 'mm' }, most: { value: batteryMovementLimitM * 1000, unit: 'mm' } } } : {}),
        related: others.map(fault => ({ message: `${nameOf(battery)} ${fault.says}`, span: spanOf(fault) })),
        corrections: faults.flatMap(fault => fault.correction ?? []),
        draft: {
            title: faults.every(fault => fault.property === 'movement' || fault.property === 'restraint') ? `Battery ${battery.id} is loose` : `Battery ${battery.id} is ${faults.length > 1 ? 'loose or bare' : 'bare at its terminals'}`,
            urgency: flagOf(battery, 'ignition-space') === true ? 'before-use' : 'before-departure',
            seen: `Battery ${battery.id} ${listed(faults.map(fault => fault.seen))}.`,
            because: `By ${rule} a battery moves no more than ${lengthBoth(batteryMovementLimitM)} under a pull of ${pullText(battery)}, its live terminals are covered, and no spring clips are on them. Else it spills acid, or makes an arc.`,
            recommend: `On ${battery.id}: ${listed(faults.map(fault => fault.recommend))}.`,
            cites: [['33 CFR 183', '183.420']],
        },
    };
}
