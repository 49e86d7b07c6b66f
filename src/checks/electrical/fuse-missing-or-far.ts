/** A wire that no fuse or breaker guards, or that one guards too far from its source. */
import { overcurrentReachM } from '../../trade/overcurrent.js';
import { flagOf, isKind, nameOf, ofKind, valueOf, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { both } from '../phrasing.js';
import { guardTitle, guardedWire, guardsOf, isSheathedTo, sourceOf, type Guard } from './guards.js';
import { federalRule, isGasoline } from './reach.js';
import { purposeOf, type Wire } from './wires.js';

export const fuseMissingOrFar = defineCheck({
    id: 'fuse-missing-or-far',
    group: 'electrical',
    severity: 'error',
    title: 'Fuse is missing, or far from the source',
    why: 'Between the source and the fuse a short circuit burns unchecked.',
    needs: ['conductor: fused, grounded, purpose', 'fuse or breaker: distance, source', 'sheathed-to-fuse, sheathed-to-breaker or sheathed'],
    computes: 'A wire recorded as fused: no is a fault, unless it is grounded or cranks an engine. A fuse or breaker more than 7 in along the wire from its source is too far; 40 in where the wire is sheathed or enclosed all the way; 72 in from a battery post.',
    sources: [
        { text: 'at the source, within 7 in, or within 40 in sheathed; in each ungrounded conductor', standard: '33 CFR 183', clause: '183.455', provenance: 'published' },
        { text: '72 in from a battery', standard: '33 CFR 183', clause: '183.460', provenance: 'memory' },
        { text: '7 in, and 72 in at a battery post', standard: 'ABYC E-11', provenance: 'secondary' },
        { text: 'cranking wires are exempt', provenance: 'memory' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines; elsewhere it is named as good practice.',
        'One page says of the 72 in that the wire must be sheathed; that is not asked here.',
        'Where no fuse is recorded nothing is said: it may not have been looked for. Record fused: no.',
        'What a wire is for is read from its purpose, else from what it serves or feeds or is called.',
        'Main breakers of shore power have a rule of their own and are left out, and fuses at chargers, many of which limit their current.',
    ],
    examples: [{
        name: 'fuse a foot along a bare wire',
        bad: `vessel "Marram" { fuel: gasoline }
fuse FU1 "Fuse of the radio" { distance: 12 in  source: bus  sheathed-to-fuse: no }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuse FU1 "Fuse of the radio" { distance: 12 in  source: bus  sheathed-to-fuse: yes }
`,
        correction: 'Record the wire as sheathed to FU1',
    }, {
        name: 'breaker over 40 in along a sheathed wire',
        bad: `breaker CB1 { distance: 42 in  source: switch  sheathed-to-breaker: yes }
`,
        fixed: `breaker CB1 { distance: 40 in  source: switch  sheathed-to-breaker: yes }
`,
    }, {
        name: 'no fuse',
        bad: `conductor W1 "Feed of the windlass" { fused: no  purpose: power }
`,
        fixed: `conductor W1 "Feed of the windlass" { fused: yes  purpose: power }
`,
        correction: 'Record W1 as fused',
    }],
    silent: [
        { name: 'at 7 in along a bare wire', text: 'fuse FU1 { distance: 7 in  source: bus  sheathed-to-fuse: no }\n' },
        { name: 'a foot along a sheathed wire', text: 'fuse FU1 { distance: 12 in  source: bus  sheathed-to-fuse: yes }\n' },
        { name: '72 in from a battery post', text: 'fuse FU1 { distance: 72 in  source: battery  sheathed-to-fuse: no }\n' },
        { name: 'cranking wire without a fuse', text: 'conductor W1 { fused: no  purpose: cranking }\n' },
        { name: 'grounded side', text: 'conductor W1 { fused: no  grounded: yes }\n' },
        { name: 'fuse not looked for', text: 'conductor W1 { gauge: 10 AWG }\n' },
    ],
    run(record, raise) {
        const guards = guardsOf(record).filter(guard => !isKind(record, guard, 'main-breaker'));
        for (const wire of ofKind(record, 'conductor')) {
            const isExempt = flagOf(wire, 'grounded') === true || purposeOf(record, wire) === 'cranking' || guards.some(guard => guardedWire(record, guard) === wire);
            if (flagOf(wire, 'fused') === false && !isExempt) {
                raise(missing(record, wire));
            }
        }
        for (const guard of guards) {
            const distance = valueOf(guard, 'distance');
            const isLeftOut = sourceOf(guard) === 'charger' || (valueOf(guard, 'protects') !== undefined && !guardedWire(record, guard));
            const problem = distance && !isLeftOut ? judge(record, guard, distance) : undefined;
            if (problem) {
                raise(problem);
            }
        }
    },
});

/** Where chafe or gasoline is at hand a short circuit is not far. */
function urgencyFor(record: SurveyRecord, wire: Wire | undefined): { readonly urgency: Urgency; readonly days?: number; readonly danger: string } {
    const isChafed = wire !== undefined && flagOf(wire, 'chafed') === true;
    const isNearGasoline = wire !== undefined && (flagOf(wire, 'gasoline-space') === true || (flagOf(wire, 'in-engine-space') === true && isGasoline(record)));
    const danger = isNearGasoline ? ' It runs through a space with gasoline.' : isChafed ? ' It is chafed.' : '';
    return isChafed || isNearGasoline ? { urgency: 'at-once', danger } : { urgency: 'within-days', days: 7, danger };
}

function missing(record: SurveyRecord, wire: Wire): Raised {
    const rule = federalRule(record, '183.455');
    const { danger, ...due } = urgencyFor(record, wire);
    const isPlaceOpen = purposeOf(record, wire) === undefined && !wire.facts.has('serves');
    return {
        components: [wire],
        at: wire.facts.get('fused')?.span ?? wire.idSpan,
        // Without its purpose it could be a cranking wire, which takes no fuse.
        ...(isPlaceOpen ? { severity: 'hint' as const } : {}),
        message: isPlaceOpen ? `${nameOf(wire)} has no fuse or breaker; record its purpose, for a cranking wire takes none.`
            : `${nameOf(wire)} has no fuse or breaker, where each wire that is not grounded takes one, by ${rule}.${danger} A short circuit burns until the battery is empty; fit one at the source.`,
        ...(isPlaceOpen ? {} : {
            corrections: [{ kind: 'set-fact', title: `Record ${wire.id} as fused`, component: wire, property: 'fused', value: 'yes' }],
            draft: {
                title: `Wire ${wire.id} has no fuse`,
                ...due,
                seen: `No fuse or breaker was found on wire ${wire.id}.${danger}`,
                because: `Each wire that is not grounded takes one, by ${rule}. Without it a short circuit burns until the battery is empty.`,
                recommend: `Fit a fuse or breaker at the source of ${wire.id}, of a rating that fits the wire.`,
                cites: [['33 CFR 183', '183.455']],
            },
        }),
    };
}

/** Lengths along a wire are read to a millimeter: 178 mm is 7 in. */
const readingM = 0.0005;

function judge(record: SurveyRecord, guard: Guard, distance: Quantity): Raised | undefined {
    const source = sourceOf(guard);
    const sheathed = isSheathedTo(record, guard);
    const isBeyond = (isSheathed: boolean, isAtBattery: boolean) => distance.si > overcurrentReachM({ isSheathed, isAtBattery }) + readingM;
    if (!isBeyond(sheathed ?? false, source === 'battery')) {
        return undefined;
    }
    const wants = [
        ...(source === undefined && !isBeyond(false, true) ? ['where the wire starts (source), for 72 in are allowed from a battery post'] : []),
        ...(sheathed === undefined && source !== 'battery' && !isBeyond(true, false) ? [`whether the wire is sheathed to it (${isKind(record, guard, 'fuse') ? 'sheathed-to-fuse' : 'sheathed-to-breaker'}), for 40 in are allowed in a sheath`] : []),
    ];
    const at = guard.facts.get('distance')?.span ?? guard.idSpan;
    return wants.length > 0 ? {
        components: [guard], at, severity: 'hint',
        message: `${nameOf(guard)} is ${both(distance)} along the wire from its source; record ${wants.join(', or ')}.`,
    } : far(record, guard, distance, sheathed ?? false, source === 'battery' || source === undefined);
}

/** A reach as the rule writes it, in inches. */
const reachText = (m: number): string => `${Math.round(m / 0.0254)} in (${m < 1 ? `${Math.round(m * 1000)} mm` : `${m.toFixed(2)} m`})`;

function far(record: SurveyRecord, guard: Guard, distance: Quantity, isSheathed: boolean, isAtBattery: boolean): Raised {
    const reachM = overcurrentReachM({ isSheathed, isAtBattery });
    const wire = guardedWire(record, guard);
    const where = isAtBattery ? 'from a battery post' : isSheathed ? 'along a sheathed wire' : 'along a wire without a sheath';
    const rule = federalRule(record, isAtBattery ? '183.460' : '183.455');
    const title = guardTitle(record, guard);
    const { danger, ...due } = urgencyFor(record, wire);
    const canBeSheathed = !isSheathed && !isAtBattery && distance.si <= overcurrentReachM({ isSheathed: true, isAtBattery }) + readingM;
    return {
        components: wire ? [guard, wire] : [guard],
        at: guard.facts.get('distance')?.span ?? guard.idSpan,
        message: `${nameOf(guard)} is ${both(distance)} along the wire from its source, where ${reachText(reachM)} is the most ${where}, by ${rule}.${danger} A short circuit before it burns unchecked; move it to the source.`,
        figures: { distance: { value: distance.si * 1000, unit: 'mm' }, limit: { value: reachM * 1000, unit: 'mm' } },
        corrections: canBeSheathed ? [{
            kind: 'set-fact', title: `Record the wire as sheathed to ${guard.id}`, component: guard,
            property: isKind(record, guard, 'fuse') ? 'sheathed-to-fuse' : 'sheathed-to-breaker', value: 'yes',
        }] : [],
        draft: {
            title: `${title} ${guard.id} is far from the source`,
            ...due,
            seen: `${title} ${guard.id} is {${guard.id}.distance} along the wire from its source.${danger}`,
            because: `${reachText(reachM)} is the most ${where}, by ${rule}. A short circuit in the wire before it burns unchecked.`,
            recommend: `Move ${guard.id} to within ${reachText(reachM)} of the source, or fit another there.`,
            cites: [['33 CFR 183', isAtBattery ? '183.460' : '183.455']],
        },
    };
}
