/** A stepped adapter whose ends are not of the sizes they meet, or that stands the wrong way round. */
import { hoseFit } from '../../trade/hose-fit.js';
import { isKind, nameOf, ofKind, type Component, type Joint, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { heightOf } from '../hoses/waterline.js';
import { floodCritical } from '../lies.js';
import { setDiameter } from './fit-corrections.js';
import { boreAt, endOf, spigotOf, tailAt, type Diameter } from './hose-ends.js';
import { both, lengthBoth } from '../phrasing.js';

export const adapterDoesNotMatch = defineCheck({
    id: 'adapter-does-not-match',
    group: 'fit',
    severity: 'error',
    title: 'Adapter does not match what it joins',
    why: 'An adapter of the wrong sizes hides the very mismatch it should cure.',
    needs: ['adapter: ends, in order of the run', 'each neighbor: bore of a hose, or spigot, ends or port of another part', 'for the urgency: below-waterline of the opening the run begins at'],
    computes: 'Each end of the adapter against its own neighbor, by the limits of hose-and-spigot-differ: bore − outside diameter between −1.6 mm and the loose limit; for a tail met end to end, the two outside diameters within those limits.',
    sources: [
        { text: 'loose limits, borrowed from the table for fuel hose', standard: '33 CFR 183', clause: '183.558(d)', provenance: 'memory' },
        { text: 'an adapter has the two sizes it joins', provenance: 'practice' },
    ],
    limits: [
        'Whether the adapter is well made or of a fit material is not judged here.',
        'A tail met directly is taken as joined by a short sleeve of hose; threaded and soldered adapters should be recorded without ends.',
        'Two adapters in a row are not judged against each other.',
    ],
    examples: [{
        name: 'adapter the wrong way round',
        bad: `hose H1 { bore: 32 mm }
stepped-adapter A1 { ends: 1-1/2 in, 1-1/4 in }
hose H2 { bore: 38 mm }
run R1: H1 -> A1 -> H2
`,
        fixed: `hose H1 { bore: 32 mm }
stepped-adapter A1 { ends: 1-1/4 in, 1-1/2 in }
hose H2 { bore: 38 mm }
run R1: H1 -> A1 -> H2
`,
        correction: 'Turn A1 round: ends 1-1/4 in, 1-1/2 in',
    }, {
        name: 'one end of the wrong size',
        bad: `hose H1 { bore: 25 mm }
stepped-adapter A1 { ends: 1 in, 1-1/4 in }
hose H2 { bore: 38 mm }
run R1: H1 -> A1 -> H2
`,
        fixed: `hose H1 { bore: 25 mm }
stepped-adapter A1 { ends: 1 in, 38 mm }
hose H2 { bore: 38 mm }
run R1: H1 -> A1 -> H2
`,
        correction: 'Record the end of A1 at H2 as 38 mm',
    }],
    silent: [
        { name: 'adapter of the two sizes it joins', text: 'hose H1 { bore: 32 mm }\nstepped-adapter A1 { ends: 1-1/4 in, 1-1/2 in }\nhose H2 { bore: 38 mm }\nrun R1: H1 -> A1 -> H2\n' },
        { name: 'the same adapter and run, travelled the other way', text: 'hose H1 { bore: 32 mm }\nstepped-adapter A1 { ends: 1-1/2 in, 1-1/4 in }\nhose H2 { bore: 38 mm }\nrun R1: H2 -> A1 -> H1\n' },
        { name: 'two sizes that differ with no adapter between', text: 'valve SV1 { spigot: 1-1/4 in }\nhose H1 { bore: 1-1/2 in }\nrun R1: SV1 -> H1\n' },
        { name: 'nothing recorded of the adapter', text: 'hose H1 { bore: 32 mm }\nstepped-adapter A1\nhose H2\nrun R1: H1 -> A1 -> H2\n' },
    ],
    run(record, raise) {
        for (const adapter of ofKind(record, 'adapter')) {
            const meetings = record.runs.flatMap(run => run.joints).flatMap(joint => meetingOf(record, adapter, joint));
            const bad = meetings.filter(meeting => meeting.end && meeting.neighbour && !suits(meeting.end, meeting.neighbour, meeting.isHose));
            if (bad.length > 0) {
                const turned = turnedRound(adapter, meetings);
                if (turned && bad.length > 1) {
                    raise(problem(record, adapter, bad, turned));
                } else {
                    bad.forEach(one => raise(problem(record, adapter, [one], turned)));
                }
            }
            const question = ask(adapter, meetings);
            if (question) {
                raise(question);
            }
        }
    },
});

/** An end of the adapter and what it meets there. */
interface Meeting {
    readonly joint: Joint;
    readonly other: Component;
    readonly isHose: boolean;
    readonly end: Diameter | undefined;
    readonly otherEnd: Diameter | undefined;
    readonly neighbour: Diameter | undefined;
}

function meetingOf(record: SurveyRecord, adapter: Component, joint: Joint): Meeting[] {
    if (joint.from !== adapter && joint.to !== adapter) {
        return [];
    }
    const [end, other, otherEnd] = joint.from === adapter ? [joint.fromEnd, joint.to, joint.toEnd] as const : [joint.toEnd, joint.from, joint.fromEnd] as const;
    if (isKind(record, other, 'adapter')) {
        return [];
    }
    const isHose = isKind(record, other, 'hose');
    return [{
        joint, other, isHose, end: endOf(adapter, end) ?? spigotOf(adapter), otherEnd: endOf(adapter, end === 0 ? 1 : 0) ?? spigotOf(adapter),
        neighbour: isHose ? boreAt(other, otherEnd) : tailAt({ joint, other, otherEnd }),
    }];
}

function suits(end: Diameter, neighbour: Diameter, isHose: boolean): boolean {
    if (isHose) {
        return hoseFit({ boreM: neighbour.m, spigotM: end.m }) === 'fits';
    }
    // Both are tails: a sleeve of the size of either must fit the other.
    return hoseFit({ boreM: neighbour.m, spigotM: end.m }) === 'fits' || hoseFit({ boreM: end.m, spigotM: neighbour.m }) === 'fits';
}

function turnedRound(adapter: Component, meetings: readonly Meeting[]): Correction | undefined {
    const fact = adapter.facts.get('ends');
    const fitsTurned = meetings.length > 1 && meetings.every(({ otherEnd, neighbour, isHose }) => otherEnd && neighbour && suits(otherEnd, neighbour, isHose));
    if (fact?.values.length !== 2 || !fitsTurned) {
        return undefined;
    }
    const value = fact.values.map(end => end.type === 'quantity' ? end.figure.written : '').reverse().join(', ');
    return { kind: 'set-fact', title: `Turn ${adapter.id} round: ends ${value}`, component: adapter, property: 'ends', value };
}

function problem(record: SurveyRecord, adapter: Component, bad: readonly Meeting[], turned: Correction | undefined): Raised {
    const ends = bad.flatMap(({ end, neighbour, other, isHose }) => end && neighbour
        ? [{ end, neighbour, other, what: `its end of ${both(end.quantity)} meets ${isHose ? 'hose' : 'the tail of'} ${other.id}${isHose ? ' of bore' : ','} ${both(neighbour.quantity)}, ${lengthBoth(Math.abs(end.m - neighbour.m))} apart` }] : []);
    const remedy = turned ? 'it fits both neighbors when turned round.' : `fit an adapter of the two sizes it joins.`;
    const others = ends.map(({ other }) => other);
    const isLoose = bad.some(({ end, neighbour, isHose }) => end && neighbour && isHose && neighbour.m > end.m);
    const height = bad[0] && heightOf(record, bad[0].joint.run);
    return {
        components: [adapter, ...others],
        at: (adapter.facts.get('ends') ?? adapter.facts.get('spigot'))?.span ?? adapter.idSpan,
        message: `${nameOf(adapter)} does not match what it joins: ${ends.map(e => e.what).join(', and ')}. The mismatch it should cure remains; ${remedy}`,
        figures: Object.fromEntries(ends.map(({ end, neighbour, other }) => [`difference at ${other.id}`, { value: (neighbour.m - end.m) * 1000, unit: 'mm' }])),
        related: ends.map(({ neighbour, other }) => ({ message: `The size of ${other.id} here`, span: neighbour.fact.span })),
        corrections: [
            ...(turned ? [turned] : []),
            ...bad.flatMap(({ end, neighbour, other, joint }) => end && neighbour ? [
                setDiameter(`Record the end of ${adapter.id} at ${other.id} as ${neighbour.quantity.figure.written}`, end, joint, neighbour.quantity.figure.written),
                setDiameter(`Record ${other.id} at ${adapter.id} as ${end.quantity.figure.written}`, neighbour, joint, end.quantity.figure.written),
            ] : []),
        ],
        draft: {
            title: turned ? `Adapter ${adapter.id} is the wrong way round` : `Adapter ${adapter.id} does not match what it joins`,
            urgency: height === 'below' ? (isLoose ? floodCritical(record) : 'next-haul-out') : height === 'not-recorded' ? 'next-haul-out' : 'in-upkeep',
            seen: `Adapter ${adapter.id}, with ends of {${adapter.id}.${adapter.facts.has('ends') ? 'ends' : 'spigot'}}, does not match ${others.map(o => o.id).join(' and ')}: ${ends.map(e => e.what).join(', and ')}.`,
            because: 'An adapter of other sizes than those it joins leaves a hose loose or strained at its end, where it may come off or split.',
            recommend: turned ? `Turn adapter ${adapter.id} round and make both ends fast.` : `Replace adapter ${adapter.id} by one of the two sizes it joins.`,
        },
    };
}

function ask(adapter: Component, meetings: readonly Meeting[]): Raised | undefined {
    const known = meetings.filter(meeting => meeting.neighbour);
    if (!adapter.facts.has('ends') && !adapter.facts.has('spigot')) {
        return known.length < 2 ? undefined : {
            components: [adapter, ...known.map(m => m.other)], at: adapter.idSpan, severity: 'hint',
            message: `${nameOf(adapter)} joins ${known.map(m => m.other.id).join(' and ')}, whose sizes are recorded; record its ends to tell whether it matches them.`,
        };
    }
    const open = meetings.find(meeting => !meeting.neighbour && meeting.isHose);
    return open && {
        components: [open.other, adapter], at: open.other.idSpan, severity: 'hint',
        message: `${nameOf(adapter)} has ends of ${(adapter.facts.get('ends') ?? adapter.facts.get('spigot'))?.written ?? ''}; record the bore of ${open.other.id} to tell whether it matches.`,
    };
}
