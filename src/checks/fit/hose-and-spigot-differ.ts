/** A hose on a tail that is not of its size. Fuel hoses that are loose and adapters are judged by checks of their own. */
import { hoseFit, isSameNominalSize, looseLimitM, pushFitM, wireForceLimitM } from '../../trade/hose-fit.js';
import { isKind, siOf, nameOf, wordOf, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised, type Urgency } from '../contract.js';
import { heightOf } from '../hoses/waterline.js';
import { isFuelHose } from '../hoses/service.js';
import { floodCritical } from '../lies.js';
import { inAnotherUnit, setDiameter } from './fit-corrections.js';
import { boreAt, endOf, hoseJoints, isAdapter, tailAt, type Diameter, type HoseJoint } from './hose-ends.js';
import { both, factText, lengthBoth } from '../phrasing.js';

export const hoseAndSpigotDiffer = defineCheck({
    id: 'hose-and-spigot-differ',
    group: 'fit',
    severity: 'error',
    title: 'Hose and spigot are of different sizes',
    why: 'A loose hose slides off under its clamp, and a hose forced over too large a tail splits.',
    needs: ['hose: bore, or ends where it has two', 'the neighbor: spigot (outside diameter of its tail), ends or port; or spigot at the joint', 'for the urgency: below-waterline of the opening the run begins at'],
    computes: 'd = bore − outside diameter of the tail, at each joint of a hose with another part. A fault where d < −1.6 mm, or d > 0.51 mm on a tail under 3/8 in, 0.89 mm to 1 in, 1.65 mm above.',
    sources: [
        { text: 'loose limits, borrowed from the table for fuel hose', standard: '33 CFR 183', clause: '183.558(d)', provenance: 'memory' },
        { text: 'push fit up to 1.6 mm smaller than the tail; wire hose cannot be forced over 3.2 mm', provenance: 'chosen' },
        { text: 'hose is matched to the outside diameter of its tail, not to the pipe size', provenance: 'practice' },
    ],
    limits: [
        'Makers’ tolerances of hose and tail are not known to it; both are taken as recorded.',
        'A nominal pipe size says nothing certain of the tail: where only that is recorded, the check asks for the tail.',
        'Two hoses joined to each other are not judged; a hose cannot be joined to a hose without a part between.',
    ],
    examples: [{
        name: 'hose larger than the tail, below the waterline',
        bad: `vessel "Marram" {}
through-hull TH1 { below-waterline: 12 in }
valve SV1 { spigot: 1-1/4 in }
hose H1 { bore: 1-1/2 in }
run R1 "Galley sink": TH1 -> SV1 -> H1
`,
        fixed: `vessel "Marram" {}
through-hull TH1 { below-waterline: 12 in }
valve SV1 { spigot: 1-1/4 in }
hose H1 { bore: 1-1/2 in }
stepped-adapter A1 { ends: 1-1/4 in, 1-1/2 in }
run R1 "Galley sink": TH1 -> SV1 -> A1 -> H1
`,
        correction: 'Insert a stepped adapter of 1-1/4 in to 1-1/2 in between SV1 and H1',
    }, {
        name: 'inches typed for millimeters',
        bad: `valve SV1 { spigot: 38 mm }
hose H1 { bore: 38 in }
run R1 "Galley sink": SV1 -> H1
`,
        fixed: `valve SV1 { spigot: 38 mm }
hose H1 { bore: 38 mm }
run R1 "Galley sink": SV1 -> H1
`,
        correction: 'Read 38 in as 38 mm',
    }, {
        name: 'hose forced over a larger tail',
        bad: `valve SV1 { spigot: 41 mm }
hose H1 { bore: 38 mm }
run R1: SV1 -> H1
`,
        fixed: `valve SV1 { spigot: 38 mm }
hose H1 { bore: 38 mm }
run R1: SV1 -> H1
`,
        correction: 'Record the tail of SV1 as 38 mm',
    }],
    silent: [
        { name: '38 mm hose on a 1-1/2 in tail', text: 'valve SV1 { spigot: 1-1/2 in }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> H1\n' },
        { name: 'two sizes joined by a stepped adapter', text: 'valve SV1 { spigot: 1-1/4 in }\nstepped-adapter A1 { ends: 1-1/4 in, 1-1/2 in }\nhose H1 { bore: 1-1/2 in }\nrun R1: SV1 -> A1 -> H1\n' },
        { name: 'two sizes joined by a hose of two bores', text: 'valve SV1 { spigot: 1-1/4 in }\nhose H1 { ends: 1-1/4 in, 1-1/2 in }\nstrainer ST1 { spigot: 1-1/2 in }\nrun R1: SV1 -> H1 -> ST1\n' },
        { name: 'hose of the valve’s nominal size, tail not recorded', text: 'valve SV1 { size: 1-1/2 in }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> H1\n' },
        { name: 'nothing recorded of the tail', text: 'valve SV1\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> H1\n' },
        { name: 'no bore and only a nominal size recorded', text: 'valve SV1 { size: 1-1/2 in }\nhose H1\nrun R1: SV1 -> H1\n' },
    ],
    run(record, raise) {
        const asked = new Set<unknown>();
        for (const at of hoseJoints(record)) {
            if (isAdapter(record, at.other)) {
                continue; // Taken by adapter-does-not-match.
            }
            const bore = boreAt(at.hose, at.hoseEnd);
            const tail = tailAt(at);
            if (bore && tail) {
                const problem = judge(record, at, bore, tail);
                if (problem) {
                    raise(problem);
                }
            } else {
                const question = ask(at, bore, tail);
                if (question && !asked.has(question.components[0])) {
                    asked.add(question.components[0]);
                    raise(question);
                }
            }
        }
    },
});

function judge(record: SurveyRecord, at: HoseJoint, bore: Diameter, tail: Diameter): Raised | undefined {
    const { hose, other, joint } = at;
    const fit = hoseFit({ boreM: bore.m, spigotM: tail.m });
    const isLoose = fit === 'loose';
    if (fit === 'fits' || (isLoose && isFuelHose(joint.run, hose))) {
        return undefined;
    }
    const difference = lengthBoth(Math.abs(bore.m - tail.m));
    const isImpossible = fit === 'tight' && tail.m - bore.m > wireForceLimitM && wordOf(hose, 'reinforcement') === 'wire';
    const measured = `${nameOf(hose)} has a bore of ${both(bore.quantity)} and ${isKind(record, other, 'hose-tail') ? nameOf(other) : `the tail of ${nameOf(other)}`} measures ${both(tail.quantity)} outside`;
    const message = isLoose
        ? `${measured}: ${difference} loose, where ${lengthBoth(looseLimitM(tail.m))} is the most. A loose hose slides off under its clamp; fit hose of the tail’s size, or a stepped adapter between the two.`
        : isImpossible
            ? `${measured}: ${difference} too small, and hose with a wire helix cannot be pushed over more than ${lengthBoth(wireForceLimitM)}. Measure both again; a forced hose splits.`
            : `${measured}: ${difference} too small, where ${lengthBoth(pushFitM)} is a push fit. A hose forced over too large a tail splits; fit hose of the tail’s size, or a stepped adapter between the two.`;
    const turned = turnedRound(record, at);
    return {
        components: [hose, other],
        at: bore.fact.span,
        message: turned ? `${message} Turned round, ${hose.id} fits at both ends.` : message,
        figures: {
            bore: { value: bore.m * 1000, unit: 'mm' }, tail: { value: tail.m * 1000, unit: 'mm' }, difference: { value: (bore.m - tail.m) * 1000, unit: 'mm' },
            limit: { value: (isLoose ? looseLimitM(tail.m) : -pushFitM) * 1000, unit: 'mm' },
        },
        related: [{ message: `The tail of ${other.id}`, span: tail.fact.span }],
        corrections: [...(turned ? [turned] : []), ...correctionsOf(at, bore, tail)],
        draft: {
            title: isLoose ? `Hose ${hose.id} is too large for the tail of ${other.id}` : `Hose ${hose.id} is too small for the tail of ${other.id}`,
            urgency: urgencyOf(record, at, isLoose),
            seen: `Hose ${hose.id}, of bore ${factText(bore)}, is fitted on the tail of ${other.id}, which measures ${factText(tail)} outside: a difference of ${difference}.`,
            because: isLoose ? 'A hose larger than its tail is held by its clamp alone and may slide off.' : 'A hose forced over a tail larger than its bore is stretched at its end and may split there.',
            recommend: isImpossible ? `Measure the hose and the tail at ${other.id} again, and renew the hose in the size of its tail.` : `Renew hose ${hose.id} in the size of the tail at ${other.id}, or fit a stepped adapter between the two.`,
        },
    };
}

function urgencyOf(record: SurveyRecord, { joint }: HoseJoint, isLoose: boolean): Urgency {
    switch (heightOf(record, joint.run)) {
        case 'below': return isLoose || wordOf(joint, 'weeps') === 'yes' ? floodCritical(record) : 'next-haul-out';
        case 'not-recorded': return 'next-haul-out';
        default: return 'in-upkeep';
    }
}

function correctionsOf({ joint, hose, other }: HoseJoint, bore: Diameter, tail: Diameter): Correction[] {
    const [boreWritten, tailWritten] = [bore.quantity.figure.written, tail.quantity.figure.written];
    const [first, second] = joint.from === hose ? [boreWritten, tailWritten] : [tailWritten, boreWritten];
    return [
        ...inAnotherUnit(bore, joint, m => hoseFit({ boreM: m, spigotM: tail.m }) === 'fits'),
        ...inAnotherUnit(tail, joint, m => hoseFit({ boreM: bore.m, spigotM: m }) === 'fits'),
        {
            kind: 'insert-in-run', title: `Insert a stepped adapter of ${first} to ${second} between ${joint.from.id} and ${joint.to.id}`,
            joint, componentKind: 'stepped-adapter', idStem: 'AD', facts: [['ends', `${first}, ${second}`]],
        },
        setDiameter(`Record the bore of ${hose.id} as ${tailWritten}`, bore, joint, tailWritten),
        setDiameter(`Record the tail of ${other.id} as ${boreWritten}`, tail, joint, boreWritten),
    ];
}

/** A hose of two bores that fits its two neighbours only the other way round. */
function turnedRound(record: SurveyRecord, at: HoseJoint): Correction | undefined {
    const { hose } = at;
    const fact = hose.facts.get('ends');
    const joints = hoseJoints(record).filter(joint => joint.hose === hose);
    const tails = joints.map(joint => ({ tail: tailAt(joint), turned: endOf(hose, joint.hoseEnd === 0 ? 1 : 0) }));
    if (fact?.values.length !== 2 || !tails.every(({ tail, turned }) => tail && turned && hoseFit({ boreM: turned.m, spigotM: tail.m }) === 'fits')) {
        return undefined;
    }
    const value = fact.values.map(end => end.type === 'quantity' ? end.figure.written : '').reverse().join(', ');
    return { kind: 'set-fact', title: `Turn ${hose.id} round: ends ${value}`, component: hose, property: 'ends', value };
}

/** Where one of the two diameters is recorded, what would decide the question. */
function ask({ hose, other }: HoseJoint, bore: Diameter | undefined, tail: Diameter | undefined): Raised | undefined {
    if (tail && !bore) {
        return {
            components: [hose, other], at: hose.idSpan, severity: 'hint',
            message: `The tail of ${nameOf(other)} measures ${both(tail.quantity)}; record the bore of ${hose.id} to tell whether the hose is of its size.`,
        };
    }
    const size = other.facts.get('size');
    const sizeM = siOf(other, 'size');
    const quantity = size?.values[0];
    if (!bore || !size || sizeM === undefined || quantity?.type !== 'quantity' || isSameNominalSize(bore.m, sizeM)) {
        return undefined;
    }
    return {
        components: [other, hose], at: size.span, severity: 'hint',
        message: `${nameOf(hose)} has a bore of ${both(bore.quantity)} and ${nameOf(other)} is of size ${both(quantity)}, but pipe size is not hose size. Record the outside diameter of the tail (spigot) of ${other.id} to tell whether the hose fits.`,
        related: [{ message: `The bore of ${hose.id}`, span: bore.fact.span }],
    };
}
