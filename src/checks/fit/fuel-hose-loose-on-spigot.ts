/** A fuel hose whose bore exceeds its spud by more than the table allows. */
import { looseLimitM } from '../../trade/hose-fit.js';
import { nameOf, wordOf, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { isFuelHose } from '../hoses/service.js';
import { inAnotherUnit, setDiameter } from './fit-corrections.js';
import { boreAt, hoseJoints, isAdapter, tailAt, type Diameter, type HoseJoint } from './hose-ends.js';
import { both, factText, lengthBoth } from '../phrasing.js';

export const fuelHoseLooseOnSpigot = defineCheck({
    id: 'fuel-hose-loose-on-spigot',
    group: 'fit',
    severity: 'error',
    title: 'Fuel hose is loose on its spigot',
    why: 'A fuel hose larger than its tail leaks or comes off, and fuel or its vapor gathers in the bilge.',
    needs: ['run: service fuel-feed, fuel-return, fuel-fill or fuel-vent (or hose: class marked for fuel)', 'hose: bore', 'the neighbor: spigot, or port; or spigot at the joint'],
    computes: 'bore − minor outside diameter of the tail > 0.020 in (tail under 3/8 in), 0.035 in (3/8 to 1 in), 0.065 in (over 1 in).',
    sources: [
        { text: 'bore of a fuel hose may exceed its spud by no more than the table', standard: '33 CFR 183', clause: '183.558(d)', provenance: 'published' },
        { text: 'the figures of that table', standard: '33 CFR 183', clause: '183.558(d)', provenance: 'memory' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines; on other boats it is a yardstick of good practice.',
        'A fuel hose smaller than its tail is judged by hose-and-spigot-differ; adapters by adapter-does-not-match.',
        'Bead, flare or serrations of the tail are not known to it.',
    ],
    examples: [{
        name: 'half-inch hose on a 7/16 in spud',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { spigot: 7/16 in }
hose FH1 { bore: 1/2 in  class: fuel-a1 }
run F1 "Fuel feed" { service: fuel-feed }: T1 -> FH1
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-tank T1 { spigot: 7/16 in }
hose FH1 { bore: 7/16 in  class: fuel-a1 }
run F1 "Fuel feed" { service: fuel-feed }: T1 -> FH1
`,
        correction: 'Record the bore of FH1 as 7/16 in',
    }],
    silent: [
        { name: 'fuel hose of the size of its spud', text: 'fuel-tank T1 { spigot: 3/8 in }\nhose FH1 { bore: 10 mm  class: fuel-a1 }\nrun F1 { service: fuel-feed }: T1 -> FH1\n' },
        { name: 'the same difference on a water hose', text: 'valve T1 { spigot: 7/16 in }\nhose FH1 { bore: 1/2 in }\nrun F1 { service: sink-drain }: T1 -> FH1\n' },
        { name: 'fuel hose smaller than its spud', text: 'fuel-tank T1 { spigot: 1/2 in }\nhose FH1 { bore: 7/16 in  class: fuel-a1 }\nrun F1 { service: fuel-feed }: T1 -> FH1\n' },
        { name: 'spud not recorded', text: 'fuel-tank T1\nhose FH1 { bore: 1/2 in  class: fuel-a1 }\nrun F1 { service: fuel-feed }: T1 -> FH1\n' },
    ],
    run(record, raise) {
        for (const at of hoseJoints(record)) {
            const bore = boreAt(at.hose, at.hoseEnd);
            const tail = tailAt(at);
            if (bore && tail && isFuelHose(at.joint.run, at.hose) && !isAdapter(record, at.other) && bore.m - tail.m > looseLimitM(tail.m) + 1e-9) {
                raise(problem(record, at, bore, tail));
            }
        }
    },
});

function problem(record: SurveyRecord, { hose, other, joint }: HoseJoint, bore: Diameter, tail: Diameter): Raised {
    const limit = lengthBoth(looseLimitM(tail.m));
    const difference = lengthBoth(bore.m - tail.m);
    const isBound = record.vessel !== undefined && wordOf(record.vessel, 'fuel') === 'gasoline';
    return {
        components: [hose, other],
        at: bore.fact.span,
        message: `${nameOf(hose)} carries fuel and has a bore of ${both(bore.quantity)} on a tail of ${both(tail.quantity)} at ${nameOf(other)}: ${difference} loose, where the table allows ${limit}. The joint may leak fuel; fit hose of the tail’s size.`,
        figures: {
            bore: { value: bore.m * 1000, unit: 'mm' }, tail: { value: tail.m * 1000, unit: 'mm' },
            difference: { value: (bore.m - tail.m) * 1000, unit: 'mm' }, limit: { value: looseLimitM(tail.m) * 1000, unit: 'mm' },
        },
        related: [{ message: `The tail of ${other.id}`, span: tail.fact.span }],
        corrections: [
            ...inAnotherUnit(bore, joint, m => m - tail.m <= looseLimitM(tail.m) && m > tail.m * 0.8),
            setDiameter(`Record the bore of ${hose.id} as ${tail.quantity.figure.written}`, bore, joint, tail.quantity.figure.written),
            setDiameter(`Record the tail of ${other.id} as ${bore.quantity.figure.written}`, tail, joint, bore.quantity.figure.written),
        ],
        draft: {
            title: `Fuel hose ${hose.id} is loose on its tail at ${other.id}`,
            urgency: 'before-use',
            seen: `Fuel hose ${hose.id}, of bore ${factText(bore)}, is fitted on a tail of ${factText(tail)} at ${other.id}: ${difference} larger, where ${limit} is allowed${isBound ? '' : ' to builders of gasoline boats, taken here as a yardstick'}.`,
            because: 'A fuel hose larger than its tail is held by its clamp alone; it may leak, and fuel or its vapor gathers in the bilge.',
            recommend: `Renew fuel hose ${hose.id} in the size of its tail at ${other.id}, and prove the joint tight.`,
            cites: [['33 CFR 183', '183.558(d)']],
        },
    };
}
