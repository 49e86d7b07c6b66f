/** A tail too short to carry the clamps that are recorded on it. */
import { spigotLengthNeededM } from '../../trade/spigot-length.js';
import { nameOf, siOf, type Component, type Joint, type Quantity } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { clampFact, tailLengthFact, type ClampFact } from '../hoses/clamps.js';
import { hoseJoints } from './hose-ends.js';
import { both, lengthBoth } from '../phrasing.js';

/** The narrowest and widest bands usual on small hose, m (practice). Only to tell whether the band's width matters. */
const usualBandM = { narrowest: 0.008, widest: 0.014 };

export const spigotTooShortForClamps = defineCheck({
    id: 'spigot-too-short-for-clamps',
    group: 'fit',
    severity: 'error',
    title: 'Spigot is too short for its clamps',
    why: 'A clamp that stands beyond the end of the tail cuts into the hose and holds nothing.',
    needs: ['tail-length at the joint or of the part', 'clamps, at the joint or of the hose', 'clamp-band at the joint'],
    computes: 'need = n × band + (n − 1) × 6 mm + 6 mm clear at the hose end; a fault where the tail is shorter.',
    sources: [
        { text: 'clamp at least 1/4 in (6 mm) from the end of a fuel hose', standard: 'ABYC H-24', provenance: 'secondary' },
        { text: '6 mm between two clamps; the same for other hose', provenance: 'practice' },
    ],
    limits: [
        'A bead or serrations at the end of the tail, beyond which the clamp must stand, are not known to it.',
        'Where the width of the band is not recorded it only asks, and only if a usual band would decide.',
    ],
    examples: [{
        name: 'two clamps on a tail for one',
        bad: `vessel "Marram" {}
valve SV1 { spigot: 38 mm  tail-length: 25 mm }
hose H1 { bore: 38 mm  clamps: 2 }
run R1 "Galley sink": SV1 -> { clamp-band: 12 mm } H1
`,
        fixed: `vessel "Marram" {}
valve SV1 { spigot: 38 mm  tail-length: 25 mm }
hose H1 { bore: 38 mm  clamps: 2 }
run R1 "Galley sink": SV1 -> { clamp-band: 12 mm  clamps: 1 } H1
`,
        correction: 'Record one clamp at SV1 as sufficient',
    }],
    silent: [
        { name: 'tail long enough for two', text: 'valve SV1 { tail-length: 40 mm }\nhose H1 { clamps: 2 }\nrun R1: SV1 -> { clamp-band: 12 mm } H1\n' },
        { name: 'one clamp on a tail too short for two', text: 'valve SV1 { tail-length: 25 mm }\nhose H1 { clamps: 1 }\nrun R1: SV1 -> { clamp-band: 12 mm } H1\n' },
        { name: 'length of the tail not recorded', text: 'valve SV1\nhose H1 { clamps: 2 }\nrun R1: SV1 -> { clamp-band: 12 mm } H1\n' },
        { name: 'band not recorded, but any usual band has room', text: 'valve SV1 { tail-length: 2 in }\nhose H1 { clamps: 2 }\nrun R1: SV1 -> H1\n' },
    ],
    run(record, raise) {
        for (const { joint, hose, other } of hoseJoints(record)) {
            const tail = tailLengthFact(joint, other);
            const count = clampFact(joint, hose, 'clamps');
            if (!tail || !count) {
                continue;
            }
            const tailM = quantityOf(tail);
            const clamps = quantityOf(count);
            if (!tailM || !clamps || clamps.si < 1) {
                continue;
            }
            const bandM = siOf(joint, 'clamp-band') ?? siOf(hose, 'clamp-band');
            const need = (band: number) => spigotLengthNeededM({ clamps: clamps.si, bandM: band });
            if (bandM !== undefined) {
                if (tailM.si < need(bandM) - 1e-9) {
                    raise(problem(joint, hose, other, tail, tailM, clamps.si, bandM, need(bandM)));
                }
            } else if (tailM.si < need(usualBandM.widest) && clamps.si > 1) {
                raise({
                    components: [other, hose], at: tail.fact.span, severity: 'hint',
                    message: `The tail of ${nameOf(other)} is ${both(tailM)} long and carries ${clamps.si} clamps: they need ${lengthBoth(need(usualBandM.narrowest))} with the narrowest usual bands and ${lengthBoth(need(usualBandM.widest))} with the widest. Record clamp-band at this joint to tell.`,
                });
            }
        }
    },
});

function quantityOf({ fact }: ClampFact): Quantity | undefined {
    const value = fact.values[0];
    return value?.type === 'quantity' ? value : undefined;
}

function problem(joint: Joint, hose: Component, other: Component, tail: ClampFact, length: Quantity, clamps: number, bandM: number, needM: number): Raised {
    const many = clamps === 1 ? '1 clamp' : `${clamps} clamps`;
    const fitsOne = clamps > 1 && length.si >= spigotLengthNeededM({ clamps: 1, bandM }) - 1e-9;
    const corrections: Correction[] = fitsOne ? [{ kind: 'set-joint-fact', title: `Record one clamp at ${other.id} as sufficient`, joint, property: 'clamps', value: '1' }] : [];
    const lengthText = tail.on === other ? `{${other.id}.tail-length}` : both(length);
    return {
        components: [other, hose],
        at: tail.fact.span,
        message: `The tail of ${nameOf(other)} is ${both(length)} long, and ${clamps === 1 ? `1 clamp with a band of ${lengthBoth(bandM)} needs` : `${many} with bands of ${lengthBoth(bandM)} need`} ${lengthBoth(needM)}. A clamp beyond the tail cuts the hose and holds nothing; fit a longer tail, or one wide bolt clamp.`,
        figures: { tail: { value: length.si * 1000, unit: 'mm' }, needed: { value: needM * 1000, unit: 'mm' }, band: { value: bandM * 1000, unit: 'mm' }, clamps: { value: clamps, unit: '' } },
        related: [{ message: `The joint of ${joint.from.id} and ${joint.to.id}`, span: joint.span }],
        corrections,
        draft: {
            title: `Tail of ${other.id} is too short for ${many}`,
            urgency: 'next-haul-out',
            seen: `Hose ${hose.id} is held by ${many} on the tail of ${other.id}, which is ${lengthText} long; with ${clamps === 1 ? 'a band' : 'bands'} of ${lengthBoth(bandM)} a length of ${lengthBoth(needM)} is needed.`,
            because: 'A clamp that stands beyond the end of its tail cuts into the hose and holds nothing.',
            recommend: `Fit a longer tail at ${other.id}, or one wide bolt clamp that stands wholly on the tail.`,
            ...(joint.run.facts.has('service') && joint.run.facts.get('service')?.written.startsWith('fuel') ? { cites: [['ABYC H-24'] as const] } : {}),
        },
    };
}
