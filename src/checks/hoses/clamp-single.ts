/** One clamp, or none, where a second hold is wanted. */
import { spigotLengthNeededM } from '../../trade/spigot-length.js';
import { nameOf, ofKind, runsThrough, siOf, wordOf, yardstickWord, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { hoseJoints, type HoseJoint } from '../fit/hose-ends.js';
import { floodCritical } from '../lies.js';
import { clampFact, clampWord, tailLengthFact, type ClampFact } from './clamps.js';
import { mayHoldSeaWater, serviceOf } from './service.js';
import { heightOf, openingOf } from './waterline.js';

/** The narrowest band usual on small hose, m (practice): a tail with no room for two such has room for no two. */
const narrowestBandM = 0.008;

export const clampSingle = defineCheck({
    id: 'clamp-single',
    aliases: ['clamp-single-below-waterline'],
    group: 'hoses',
    severity: 'warning',
    title: 'Single clamp',
    why: 'A second clamp holds when the first fails, where a hose that comes off floods her or fills her with gas.',
    needs: ['clamps, at the joint or of the hose (then at each end)', 'run: service', 'below-waterline or above-waterline of the opening the run begins at', 'vessel: fuel, for a fuel fill'],
    computes: 'Fewer than two clamps on a wet exhaust hose or a gasoline fill is a fault; elsewhere below the waterline it is advice, and none where the recorded tail-length is under that for two clamps: 2 × band + 6 mm + 6 mm.',
    sources: [
        { text: 'two clamps, not overlapping, at each end of a wet exhaust hose', standard: 'ABYC P-1', provenance: 'secondary' },
        { text: 'two clamps with bands of at least 1/2 in on a fuel fill', standard: 'ABYC H-24', provenance: 'secondary' },
        { text: 'a second clamp below the waterline; practice differs', provenance: 'practice' },
    ],
    yardsticks: ['second-clamp-below-waterline'],
    limits: [
        'Of a hose that lies in no run, only an exhaust hose and a gasoline fill are judged.',
        'Where the length of the tail is not recorded, the advice is given: only the tail can tell whether a second clamp has room.',
        'Swaged ends are not clamps and are left alone.',
        'One wide bolt clamp counts as one; where it is sufficient, accept the problem and say so.',
    ],
    examples: [{
        name: 'one clamp below the waterline',
        bad: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in }
valve SV1 { spigot: 38 mm  tail-length: 45 mm }
hose H1 { bore: 38 mm  clamps: 1 }
run R1 "Galley sink" { service: sink-drain }: TH1 -> SV1 -> H1
`,
        fixed: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in }
valve SV1 { spigot: 38 mm  tail-length: 45 mm }
hose H1 { bore: 38 mm  clamps: 2 }
run R1 "Galley sink" { service: sink-drain }: TH1 -> SV1 -> H1
`,
        correction: 'Record two clamps at SV1',
    }, {
        name: 'one clamp on a wet exhaust hose',
        bad: `vessel "Marram" { fuel: diesel }
through-hull TH1 { above-waterline: 6 in }
hose H1 { class: wet-exhaust }
run R1 "Exhaust" { service: exhaust }: TH1 -> { clamps: 1 } H1
`,
        fixed: `vessel "Marram" { fuel: diesel }
through-hull TH1 { above-waterline: 6 in }
hose H1 { class: wet-exhaust }
run R1 "Exhaust" { service: exhaust }: TH1 -> { clamps: 2 } H1
`,
        correction: 'Record two clamps at TH1',
    }],
    silent: [
        { name: 'tail too short for two, recorded so', text: 'through-hull TH1 { below-waterline: 10 in }\nvalve SV1 { tail-length: 22 mm }\nhose H1 { clamps: 1 }\nrun R1 { service: sink-drain }: TH1 -> SV1 -> H1\n' },
        { name: 'two clamps', text: 'through-hull TH1 { below-waterline: 10 in }\nvalve SV1\nhose H1 { clamps: 2 }\nrun R1 { service: sink-drain }: TH1 -> SV1 -> H1\n' },
        { name: 'the same hose above the waterline', text: 'through-hull TH1 { above-waterline: 10 in }\nvalve SV1\nhose H1 { clamps: 1 }\nrun R1 { service: sink-drain }: TH1 -> SV1 -> H1\n' },
        { name: 'clamps not recorded', text: 'through-hull TH1 { below-waterline: 10 in }\nvalve SV1\nhose H1\nrun R1 { service: sink-drain }: TH1 -> SV1 -> H1\n' },
        { name: 'one clamp on a diesel fill', text: 'vessel "Marram" { fuel: diesel }\nfuel-tank T1\nhose H1 { clamps: 1  class: fuel-a2 }\nrun R1 { service: fuel-fill }: T1 -> H1\n' },
        { name: 'a firm that asks for one below the waterline', text: 'yardsticks { second-clamp-below-waterline: ignore }\nthrough-hull TH1 { below-waterline: 10 in }\nvalve SV1 { spigot: 38 mm  tail-length: 45 mm }\nhose H1 { bore: 38 mm  clamps: 1 }\nrun R1 { service: sink-drain }: TH1 -> SV1 -> H1\n' },
        { name: 'swaged end', text: 'through-hull TH1 { below-waterline: 10 in }\nhose H1 { clamps: 1  clamp-type: swaged }\nrun R1 { service: sink-drain }: TH1 -> H1\n' },
    ],
    run(record, raise) {
        const asked = new Set<unknown>();
        for (const at of hoseJoints(record)) {
            const { joint, hose } = at;
            const count = clampFact(joint, hose, 'clamps');
            const value = count?.fact.values[0];
            if (!count || value?.type !== 'quantity' || value.si >= 2 || clampWord(joint, hose, 'clamp-type') === 'swaged') {
                continue;
            }
            const problem = judge(record, at, count, value.si);
            if (problem && !(problem.severity === 'hint' && asked.has(joint.run))) {
                raise(problem);
                if (problem.severity === 'hint') {
                    asked.add(joint.run);
                }
            }
        }
        for (const hose of ofKind(record, 'hose')) {
            const problem = runsThrough(record, hose).length === 0 ? outsideRuns(record, hose) : undefined;
            if (problem) {
                raise(problem);
            }
        }
    },
});

/** A hose of exhaust or gasoline fill that no run leads through: what is recorded of it holds for both its ends. */
function outsideRuns(record: SurveyRecord, hose: Component): Raised | undefined {
    const service = serviceOf(undefined, hose) ?? (wordOf(hose, 'class') === 'wet-exhaust' ? 'exhaust' : undefined);
    const clamps = siOf(hose, 'clamps');
    const fact = hose.facts.get('clamps');
    const isFill = service === 'fuel-fill' && record.vessel !== undefined && wordOf(record.vessel, 'fuel') === 'gasoline';
    if (!fact || clamps === undefined || clamps >= 2 || wordOf(hose, 'clamp-type') === 'swaged' || (service !== 'exhaust' && !isFill)) {
        return undefined;
    }
    const [where, why] = isFill ? ['a gasoline fill', 'Fuel or its vapor gets into the hull when it comes off'] : ['a wet exhaust hose', 'A hose that comes off floods her and lets exhaust gas in'];
    return {
        components: [hose], at: fact.span, severity: 'error',
        message: `${nameOf(hose)} has ${clampsText(clamps)} at each end, where ${where} must have 2. ${why}; ${addText(clamps)}.`,
        figures: { clamps: { value: clamps, unit: '' }, wanted: { value: 2, unit: '' } },
        corrections: [{ kind: 'set-fact', title: `Record two clamps at each end of ${hose.id}`, component: hose, property: 'clamps', value: '2' }],
        draft: {
            title: `${clamps === 0 ? 'No clamps' : 'Single clamps'} on ${hose.id}`, urgency: isFill ? 'before-use' : 'before-departure',
            seen: `Hose ${hose.id} has ${clampsText(clamps)} at each end.`,
            because: `${why}${clamps === 0 ? '' : ', and a single clamp has no second to hold when it fails'}.`,
            recommend: `Fit two all-stainless clamps at each end of ${hose.id}, both standing wholly on the tail.`,
            cites: [[isFill ? 'ABYC H-24' : 'ABYC P-1']],
        },
    };
}

const addText = (clamps: number): string => clamps === 0 ? 'fit two clamps that stand wholly on the tail' : 'add a clamp that stands wholly on the tail';

function judge(record: SurveyRecord, at: HoseJoint, count: ClampFact, clamps: number): Raised | undefined {
    const { joint } = at;
    const service = serviceOf(joint.run, at.hose);
    if (service === 'exhaust') {
        return problem(at, count, clamps, 'a wet exhaust hose', 'before-departure', true, 'A hose that comes off here floods her and lets exhaust gas in', [['ABYC P-1']]);
    }
    const fuel = record.vessel ? wordOf(record.vessel, 'fuel') : undefined;
    if (service === 'fuel-fill') {
        if (fuel === undefined) {
            return {
                components: [at.hose, at.other], at: count.fact.span, severity: 'hint',
                message: `${nameOf(at.hose)} has ${clampsText(clamps)} at ${at.other.id} on a fuel fill. Record the fuel of the vessel: a gasoline fill wants two.`,
            };
        }
        return fuel === 'gasoline' ? problem(at, count, clamps, 'a gasoline fill', 'before-use', true, 'Fuel or its vapor gets into the hull when this joint fails', [['ABYC H-24']]) : undefined;
    }
    if (!mayHoldSeaWater(joint.run, at.hose)) {
        return undefined;
    }
    switch (heightOf(record, joint.run)) {
        case 'below': {
            if (yardstickWord(record, 'second-clamp-below-waterline') === 'ignore' && clamps > 0) {
                return undefined;
            }
            const tail = tailLengthFact(joint, at.other);
            const length = tail?.fact.values[0];
            const bandM = siOf(joint, 'clamp-band') ?? siOf(at.hose, 'clamp-band') ?? narrowestBandM;
            if (clamps === 1 && length?.type === 'quantity' && length.si < spigotLengthNeededM({ clamps: 2, bandM }) - 1e-9) {
                return undefined;
            }
            const room = tail ? '' : ' If its tail is too short for two, record tail-length.';
            return problem(at, count, clamps, 'a hose below the waterline', clamps === 0 ? floodCritical(record) : 'in-upkeep', clamps === 0, 'A hose that comes off here floods her', [], room);
        }
        case 'not-recorded': {
            const opening = openingOf(record, joint.run);
            return opening && {
                components: [opening, at.hose], at: opening.idSpan, severity: 'hint',
                message: `${nameOf(at.hose)} has ${clampsText(clamps)} at ${at.other.id}. Record below-waterline or above-waterline of ${nameOf(opening)}: below the waterline a second clamp is good practice.`,
                related: [{ message: `${clampsText(clamps)} here`, span: count.fact.span }],
            };
        }
        default: return undefined;
    }
}

function clampsText(clamps: number): string {
    return clamps === 0 ? 'no clamp' : '1 clamp';
}

function problem(
    { hose, other, joint }: HoseJoint, count: ClampFact, clamps: number, where: string, urgency: Urgency, isFault: boolean, why: string,
    cites: readonly (readonly [string])[], room = ''
): Raised {
    return {
        components: [hose, other],
        at: count.fact.span,
        severity: isFault ? 'error' : 'warning',
        message: `${nameOf(hose)} has ${clampsText(clamps)} at ${nameOf(other)}, where ${where} ${isFault && clamps > 0 ? 'must' : 'should'} have 2. ${why}; ${addText(clamps)}.${room}`,
        figures: { clamps: { value: clamps, unit: '' }, wanted: { value: 2, unit: '' } },
        related: [{ message: `The joint of ${joint.from.id} and ${joint.to.id}`, span: joint.span }],
        corrections: [count.on.kind === 'joint'
            ? { kind: 'set-joint-fact', title: `Record two clamps at ${other.id}`, joint, property: 'clamps', value: '2' }
            : { kind: 'set-fact', title: `Record two clamps at ${other.id}`, component: hose, property: 'clamps', value: '2' }],
        draft: {
            title: `${clamps === 0 ? 'No clamp' : 'Single clamp'} on ${hose.id} at ${other.id}`,
            urgency,
            seen: `Hose ${hose.id} has ${clampsText(clamps)} at ${other.id}.`,
            because: clamps === 0 ? `${why}, and nothing holds it.` : `${why}, and a single clamp has no second to hold when it fails.`,
            recommend: clamps === 0 ? `Fit two all-stainless clamps to ${hose.id} at ${other.id}, both standing wholly on the tail.` : `Add a second all-stainless clamp to ${hose.id} at ${other.id}, both standing wholly on the tail.`,
            ...(cites.length > 0 ? { cites } : {}),
        },
    };
}
