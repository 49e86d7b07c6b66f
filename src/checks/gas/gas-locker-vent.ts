/** A gas locker whose vent is too small or lets gas into the hull. */
import { reachesBore, reachesGap } from '../../trade/gas.js';
import { flagOf, nameOf, ofKind, valueOf, yardstick, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, lengthBoth, listed } from '../phrasing.js';
import { inAnotherUnit } from '../other-unit.js';
import { isSaidAbsent } from '../safety/gear.js';

export const gasLockerVent = defineCheck({
    id: 'gas-locker-vent',
    group: 'gas',
    severity: 'error',
    title: 'Vent of the gas locker is not right',
    why: 'Gas that leaks in the locker runs inboard, where its own vent does not lead it overboard.',
    needs: ['gas-locker: vent-bore, vent-at-bottom, vent-outlet-below-floor, vent-outlet-above-waterline, distance-to-opening, vent-shared, vent-dips, vented'],
    computes: 'A fault where there is no vent; where its bore is under the limit (usually 1/2 in, 12.7 mm); where it does not leave from the bottom, comes out above the floor of the locker or not above the waterline, is shared, dips or rises; or comes out nearer than the limit (usually 20 in) to an opening.',
    sources: [
        { text: 'own vent of 1/2 in from the bottom, without dips, out below the locker and above the waterline, 20 in from openings', standard: 'ABYC A-1', provenance: 'secondary' },
        { text: '19 mm of vent bore in some inland rules', provenance: 'published' },
    ],
    yardsticks: ['gas-vent-bore', 'gas-vent-gap'],
    limits: [
        'Where a rule asks for 19 mm, the firm sets gas-vent-bore: 19 mm.',
        'Sizes of the trade pair as equal: 12 mm and 13 mm are 1/2 in, 500 mm is 20 in.',
        'Cylinders that stand on deck in the open need no vent; they have no gas-locker.',
    ],
    examples: [{
        name: 'vent of 3/8 in',
        bad: `vessel "Marram" {}
gas-locker GL1 { vent-bore: 3/8 in }
`,
        fixed: `vessel "Marram" {}
gas-locker GL1 { vent-bore: 1/2 in }
`,
    }, {
        name: 'outlet near a portlight',
        bad: `gas-locker GL1 { vent-bore: 3/4 in  distance-to-opening: 14 in }
`,
        fixed: `gas-locker GL1 { vent-bore: 3/4 in  distance-to-opening: 20 in }
`,
    }, {
        name: 'shared vent that leaves from above the bottom',
        bad: `gas-locker GL1 { vent-at-bottom: no  vent-shared: yes }
`,
        fixed: `gas-locker GL1 { vent-at-bottom: yes  vent-shared: no }
`,
    }, {
        name: 'bore in the wrong unit',
        bad: `gas-locker GL1 { vent-bore: 3/4 mm }
`,
        fixed: `gas-locker GL1 { vent-bore: 3/4 in }
`,
        correction: 'Read 3/4 mm as 3/4 in',
    }],
    silent: [
        { name: 'good vent', text: 'gas-locker GL1 { vent-bore: 3/4 in  vent-at-bottom: yes  vent-outlet-below-floor: yes  vent-outlet-above-waterline: 8 in  distance-to-opening: 30 in  vent-shared: no  vent-dips: no }\n' },
        { name: 'vent of 13 mm', text: 'gas-locker GL1 { vent-bore: 13 mm }\n' },
        { name: 'nothing recorded of its vent', text: 'gas-locker GL1 { vapor-tight: yes }\n' },
    ],
    run(record, raise) {
        for (const locker of ofKind(record, 'gas-locker')) {
            const faults = faultsOf(record, locker);
            const [first] = faults;
            if (first) {
                raise(problem(record, locker, first, faults));
            }
        }
    },
});

interface Fault {
    readonly property: string;
    /** In a message, with figures. */
    readonly what: string;
    /** In a draft, with references. */
    readonly seen: string;
}

type Locker = Component<'gas-locker'>;

function faultsOf(record: SurveyRecord, locker: Locker): readonly Fault[] {
    const same = (property: string, what: string): Fault => ({ property, what, seen: what });
    const height = valueOf(locker, 'vent-outlet-above-waterline');
    const faults: readonly (Fault | undefined)[] = [
        flagOf(locker, 'vented') === false || isWithoutVent(record, locker) ? same('vented', 'it has no vent') : undefined,
        boreFault(record, locker),
        flagOf(locker, 'vent-at-bottom') === false ? same('vent-at-bottom', 'its vent does not leave from the bottom') : undefined,
        flagOf(locker, 'vent-outlet-below-floor') === false ? same('vent-outlet-below-floor', 'its vent comes out above the floor of the locker') : undefined,
        height && height.si <= 0 ? same('vent-outlet-above-waterline', 'its vent does not come out above the waterline') : undefined,
        gapFault(record, locker),
        flagOf(locker, 'vent-shared') === true ? same('vent-shared', 'its vent is shared') : undefined,
        flagOf(locker, 'vent-dips') === true ? same('vent-dips', 'its vent dips or rises on the way') : undefined,
    ];
    return faults.filter(fault => fault !== undefined);
}

/** The only locker, of whose vent nothing is recorded, where the survey says that it has none. */
function isWithoutVent(record: SurveyRecord, locker: Locker): boolean {
    return ofKind(record, 'gas-locker').length === 1 && ![...locker.facts.keys()].some(property => property.startsWith('vent'))
        && isSaidAbsent(record, /\bvent\b.*\b(gas|locker|cylinder)|\b(gas|cylinder) locker\b.*\bvent/i);
}

function boreFault(record: SurveyRecord, locker: Locker): Fault | undefined {
    const bore = valueOf(locker, 'vent-bore');
    const { si, whose } = yardstick(record, 'gas-vent-bore');
    const rest = `of bore, under ${whose} of ${lengthBoth(si)}`;
    return bore && !reachesBore(bore.si, si) ? { property: 'vent-bore', what: `its vent has ${both(bore)} ${rest}`, seen: `its vent has {${locker.id}.vent-bore} ${rest}` } : undefined;
}

function gapFault(record: SurveyRecord, locker: Locker): Fault | undefined {
    const gap = valueOf(locker, 'distance-to-opening');
    const { si, whose } = yardstick(record, 'gas-vent-gap');
    const rest = `from an opening into the hull, nearer than ${whose} of ${lengthBoth(si)}`;
    return gap && !reachesGap(gap.si, si) ? { property: 'distance-to-opening', what: `its vent comes out ${both(gap)} ${rest}`, seen: `its vent comes out {${locker.id}.distance-to-opening} ${rest}` } : undefined;
}

function problem(record: SurveyRecord, locker: Locker, first: Fault, faults: readonly Fault[]): Raised {
    const bore = valueOf(locker, 'vent-bore');
    const least = yardstick(record, 'gas-vent-bore').si;
    const figures = { ...(bore ? { bore: { value: bore.si * 1000, unit: 'mm' }, 'least bore': { value: least * 1000, unit: 'mm' } } : {}) };
    const remedy = `lead a vent of its own, of ${lengthBoth(least)} or more, from the bottom of the locker down and out above the waterline, ${lengthBoth(yardstick(record, 'gas-vent-gap').si)} from any opening`;
    return {
        components: [locker],
        at: locker.facts.get(first.property)?.span ?? locker.idSpan,
        message: `${nameOf(locker)}: ${listed(faults.map(fault => fault.what))} (good practice per ABYC A-1). Gas that leaks in the locker may run inboard; ${remedy}.`,
        figures,
        corrections: bore && faults.some(fault => fault.property === 'vent-bore') ? inAnotherUnit(locker, 'vent-bore', bore, m => reachesBore(m, least) && m <= 0.1) : [],
        draft: {
            title: `Vent of gas locker ${locker.id} is not right`,
            urgency: 'before-use',
            seen: `Of gas locker ${locker.id}, ${listed(faults.map(fault => fault.seen))}.`,
            because: 'Gas is heavier than air. What leaks in the locker runs inboard, where its vent does not lead it overboard.',
            recommend: `At gas locker ${locker.id}, ${remedy}.`,
            cites: [['ABYC A-1']],
        },
    };
}
