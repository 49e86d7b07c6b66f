/** Fewer life jackets in order than persons, or no throwable device on a vessel long enough to need one. */
import { lifejacketsMissing, throwablesNeeded, type Wearables } from '../../trade/lifejackets.js';
import { flagOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { lengthBoth, listed } from '../phrasing.js';
import { lengthForCarriageM } from './bottles.js';
import { adding, countOf, isSaidAbsent, totalOf } from './gear.js';

/** Words of condition of gear that does not count. */
const outOfOrder: ReadonlySet<string> = new Set(['defective', 'failed']);

export const lifejacketsTooFew = defineCheck({
    id: 'lifejackets-too-few',
    group: 'safety',
    severity: 'error',
    title: 'Too few life jackets, or no throwable device',
    why: 'Each person must find one that fits, and the number is a rule of carriage.',
    needs: ['vessel: persons, and children among them', 'lifejacket: quantity, in-order, child-sizes, approved', 'throwable: quantity, approved', 'vessel: length-on-deck or length-overall'],
    computes: 'Missing = persons - children - jackets for adults, and children - jackets for children, counting those in order and not recorded as without approval. From 16 ft (4.88 m) on one throwable device as well.',
    sources: [
        { text: 'one wearable for each person, one throwable from 16 ft', standard: '33 CFR 175', clause: '175.15', provenance: 'published' },
        { text: 'in order and of a fitting size', standard: '33 CFR 175', clause: '175.21', provenance: 'memory' },
    ],
    limits: [
        'The rule holds in the United States; elsewhere it is a yardstick.',
        'Where neither a life jacket nor a throwable device is recorded, nothing is said: they may not have been looked for.',
        'Where the number of children is not recorded, jackets of all sizes count for all persons, unless that alone decides: then it is asked for.',
        'Canoes and kayaks need no throwable device; they are not kinds of craft here.',
    ],
    examples: [{
        name: 'four jackets for six persons',
        bad: `vessel "Marram" { length-on-deck: 34 ft  persons: 6 }
lifejacket LJ1 { quantity: 4 }
throwable THR1
`,
        fixed: `vessel "Marram" { length-on-deck: 34 ft  persons: 6 }
lifejacket LJ1 { quantity: 4 }
lifejacket LJ2 { quantity: 2 }
throwable THR1
`,
        correction: 'Add 2 life jackets',
    }, {
        name: 'no throwable device at 18 ft',
        bad: `vessel "Marram" { length-on-deck: 18 ft  persons: 4 }
lifejacket LJ1 { quantity: 4 }
`,
        fixed: `vessel "Marram" { length-on-deck: 18 ft  persons: 4 }
lifejacket LJ1 { quantity: 4 }
throwable THR1 { quantity: 1 }
`,
        correction: 'Add a throwable device',
    }, {
        name: 'not enough for children',
        bad: `vessel "Marram" { length-on-deck: 34 ft  persons: 6  children: 2 }
lifejacket LJ1 { quantity: 6  child-sizes: 1 }
throwable THR1
`,
        fixed: `vessel "Marram" { length-on-deck: 34 ft  persons: 6  children: 2 }
lifejacket LJ1 { quantity: 6  child-sizes: 2 }
throwable THR1
`,
    }],
    silent: [
        { name: 'one for each person and a throwable', text: 'vessel "Marram" { length-on-deck: 18 ft  persons: 4 }\nlifejacket LJ1 { quantity: 4 }\nthrowable THR1\n' },
        { name: 'no throwable under 16 ft', text: 'vessel "Marram" { length-on-deck: 15 ft  persons: 4 }\nlifejacket LJ1 { quantity: 4 }\n' },
        { name: 'children not told apart, with sizes for adults enough', text: 'vessel "Marram" { length-on-deck: 34 ft  persons: 4 }\nlifejacket LJ1 { quantity: 6  child-sizes: 2 }\nthrowable THR1\n' },
        { name: 'none recorded', text: 'vessel "Marram" { length-on-deck: 34 ft  persons: 6 }\n' },
    ],
    run(record, raise) {
        const jackets = ofKind(record, 'lifejacket');
        const rings = ofKind(record, 'throwable');
        const isNoneSaid = isSaidAbsent(record, /life[ -]?jacket/i);
        if (jackets.length > 0 || isNoneSaid || rings.length > 0) {
            judgeJackets(record, jackets, isNoneSaid, raise);
            judgeThrowable(record, rings, jackets, raise);
        }
    },
});

function usable(jacket: Component): number {
    return flagOf(jacket, 'approved') === false || outOfOrder.has(wordOf(jacket, 'condition') ?? '') ? 0 : siOf(jacket, 'in-order') ?? countOf(jacket);
}

/** Those in order, by size; of a lot that is partly in order the children's sizes are taken as in order first. */
function wearables(jackets: readonly Component[]): Wearables {
    return jackets.reduce(({ adult, child }, jacket) => {
        const all = usable(jacket);
        const small = Math.min(all, siOf(jacket, 'child-sizes') ?? 0);
        return { adult: adult + all - small, child: child + small };
    }, { adult: 0, child: 0 });
}

function judgeJackets(record: SurveyRecord, jackets: readonly Component[], isNoneSaid: boolean, raise: (problem: Raised) => void): void {
    const persons = record.vessel && siOf(record.vessel, 'persons');
    const [first] = jackets;
    if (!first && !isNoneSaid) {
        return;
    }
    if (persons === undefined) {
        if (record.vessel) {
            raise({ components: jackets, at: first?.idSpan ?? record.vessel.span, severity: 'hint', message: 'Life jackets are recorded; record the persons she carries to tell whether there is one for each.' });
        }
        return;
    }
    const have = wearables(jackets);
    const children = record.vessel && siOf(record.vessel, 'children');
    const total = have.adult + have.child;
    if (children === undefined && total >= persons && have.adult < persons) {
        raise({
            components: jackets, at: jackets.find(jacket => jacket.facts.has('child-sizes'))?.facts.get('child-sizes')?.span ?? first?.idSpan ?? { uri: record.mainUri, start: 0, end: 0 }, severity: 'hint',
            message: `${total} life jackets for ${persons} persons include ${have.child} in sizes for children; record how many children are among them to tell whether each finds one that fits.`,
        });
        return;
    }
    const missing = children === undefined ? { adult: Math.max(0, persons - total), child: 0 } : lifejacketsMissing(persons, children, have);
    if (missing.adult + missing.child > 0) {
        raise(tooFew(record, persons, children, have, missing, jackets));
    }
}

const lot = (count: number) => `${count} life ${count === 1 ? 'jacket' : 'jackets'}`;

function tooFew(record: SurveyRecord, persons: number, children: number | undefined, have: Wearables, missing: Wearables, jackets: readonly Component[]): Raised {
    const total = have.adult + have.child;
    const aboard = totalOf(jackets);
    const seen = `${total === 0 ? 'no life jacket' : lot(total)} in order${children === undefined ? '' : `, ${have.child} of them for children`}${aboard > total ? `, of ${aboard} aboard` : ''}`;
    const toAdd = listed([
        ...(missing.adult > 0 ? [`${lot(missing.adult)}${children === undefined ? '' : ' for adults'}`] : []),
        ...(missing.child > 0 ? [`${lot(missing.child)} for children`] : []),
    ]);
    const beside = jackets.at(-1);
    const carries = `${persons} persons${children === undefined ? '' : `, ${children} of them children`}`;
    return {
        components: jackets,
        at: beside?.facts.get('quantity')?.span ?? beside?.idSpan ?? record.vessel?.facts.get('persons')?.span ?? { uri: record.mainUri, start: 0, end: 0 },
        message: `She carries ${carries}; recorded ${total === 1 || total === 0 ? 'is' : 'are'} ${seen}. Each person must find one that fits; add ${toAdd}.`,
        figures: { persons: { value: persons, unit: '' }, 'in order': { value: total, unit: '' }, missing: { value: missing.adult + missing.child, unit: '' } },
        corrections: [
            ...(missing.adult > 0 ? [adding(record, beside, `Add ${lot(missing.adult)}`, 'lifejacket', 'LJ', [['quantity', String(missing.adult)]])] : []),
            ...(missing.child > 0 ? [adding(record, beside, `Add ${lot(missing.child)} for children`, 'lifejacket', 'LJ', [['quantity', String(missing.child)], ['child-sizes', String(missing.child)]])] : []),
        ],
        draft: {
            title: 'Too few life jackets',
            urgency: 'before-departure',
            seen: `She carries {vessel.persons} persons${children === undefined ? '' : ', {vessel.children} of them children'}. Seen: ${seen}.`,
            because: 'There is to be one life jacket in order, and of a fitting size, for each person aboard.',
            recommend: `Add ${toAdd}.`,
            cites: [['33 CFR 175', '175.15']],
        },
    };
}

function judgeThrowable(record: SurveyRecord, rings: readonly Component[], jackets: readonly Component[], raise: (problem: Raised) => void): void {
    const lengthM = lengthForCarriageM(record);
    const count = rings.reduce((sum, ring) => sum + usable(ring), 0);
    if (count > 0) {
        return;
    }
    const at = rings[0]?.idSpan ?? jackets.at(-1)?.idSpan ?? record.vessel?.span ?? { uri: record.mainUri, start: 0, end: 0 };
    if (lengthM === undefined) {
        if (record.vessel) {
            raise({ components: rings, at, severity: 'hint', message: 'No throwable device in order is recorded; record the length of the vessel to tell whether one is needed.' });
        }
        return;
    }
    if (throwablesNeeded(lengthM) === 0) {
        return;
    }
    const lengthFact = record.vessel?.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
    raise({
        components: rings,
        at,
        message: `At ${lengthBoth(lengthM)} she is to carry a throwable device, and none in order is recorded. It is the first help to a person overboard; add one.`,
        figures: { length: { value: lengthM / 0.3048, unit: 'ft' } },
        corrections: [adding(record, rings.at(-1) ?? jackets.at(-1), 'Add a throwable device', 'throwable', 'THR', [['quantity', '1']])],
        draft: {
            title: 'No throwable device',
            urgency: 'before-departure',
            seen: `She measures {vessel.${lengthFact}}. No throwable device in order was seen.`,
            because: 'From 16 ft (4.88 m) on a throwable device is to be carried; it is the first help to a person overboard.',
            recommend: 'Add a throwable device, such as a ring, horseshoe or cushion, where it is at hand.',
            cites: [['33 CFR 175', '175.15']],
        },
    });
}
