/** A main anchor lighter than its table asks for her length. */
import { isAnchorTooLight, leastAnchorShare, leastWaterlineShare, mainAnchorKg, meanLengthM } from '../../trade/ground-tackle.js';
import { flagOf, nameOf, ofKind, siOf, valueOf, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { both, computedBoth, lengthBoth, percent } from '../phrasing.js';

import { converted, inAnotherUnit } from '../other-unit.js';

const code = 'MGN 280';
const clause = '20.5, Table 20.1';

export const anchorTooLight = defineCheck({
    id: 'anchor-too-light',
    group: 'deck',
    severity: 'error',
    title: 'Main anchor is light for her length',
    why: 'A light anchor drags.',
    needs: ['anchor: mass, main, high-holding or makers-mass', 'vessel: length-on-deck or length-overall, and length-waterline; commercial'],
    computes: 'Mean length = (hull + waterline length) ÷ 2. Mass of the main anchor by the table of a code for small commercial craft (8 m 10 kg, 10 m 13 kg, 12 m 18 kg, 14 m 24 kg, 16 m 30 kg, 18 m 38 kg, 20 m 47 kg), interpolated from 6 to 24 m. A fault under 90 % of it. Where her maker’s chart gives a mass, that is the limit.',
    sources: [
        { text: 'masses of main anchors by mean length; 90 % in the lesser areas', standard: code, clause, provenance: 'published' },
        { text: 'mean length is that of hull and waterline; a waterline is at least 70 % of the hull', provenance: 'memory' },
    ],
    limits: [
        'The code binds small commercial craft in the United Kingdom; on others it is a yardstick.',
        'Its masses are for anchors of high holding power; ordinary ones would have to be heavier, which is not judged.',
        'The main anchor is the one recorded so, else the heaviest. One that its maker’s chart allows lighter (high-holding) is left alone.',
        'Windage and unusual form are not known. Without a waterline length only an anchor too light for any waterline is told.',
    ],
    examples: [{
        name: '10 kg on 12 m',
        bad: `vessel "Marram" { length-on-deck: 12.5 m  length-waterline: 11.5 m }
anchor ANC1 "Bower anchor" { mass: 10 kg }
`,
        fixed: `vessel "Marram" { length-on-deck: 12.5 m  length-waterline: 11.5 m }
anchor ANC1 "Bower anchor" { mass: 20 kg }
`,
    }, {
        name: 'pounds for kilograms',
        bad: `vessel "Marram" { length-on-deck: 12.5 m  length-waterline: 11.5 m }
anchor ANC1 { mass: 20 lb }
`,
        fixed: `vessel "Marram" { length-on-deck: 12.5 m  length-waterline: 11.5 m }
anchor ANC1 { mass: 20 kg }
`,
        correction: 'Read 20 lb as 20 kg',
    }],
    silent: [
        { name: 'exactly 90 % of the table', text: 'vessel "Marram" { length-on-deck: 12.5 m  length-waterline: 11.5 m }\nanchor ANC1 { mass: 16.2 kg }\n' },
        { name: 'the same anchor by its maker’s chart', text: 'vessel "Marram" { length-on-deck: 12.5 m  length-waterline: 11.5 m }\nanchor ANC1 "Bower anchor" { mass: 10 kg  high-holding: yes }\n' },
        { name: 'a light second anchor', text: 'vessel "Marram" { length-on-deck: 12.5 m  length-waterline: 11.5 m }\nanchor ANC1 { mass: 20 kg }\nanchor ANC2 "Kedge" { mass: 9 kg }\n' },
        { name: 'longer than the table', text: 'vessel "Marram" { length-on-deck: 28 m  length-waterline: 26 m }\nanchor ANC1 { mass: 20 kg }\n' },
        { name: 'no length recorded', text: 'vessel "Marram" {}\nanchor ANC1 { mass: 5 kg }\n' },
    ],
    run(record, raise) {
        const problem = judge(record, mainAnchor(record));
        if (problem) {
            raise(problem);
        }
    },
});

function mainAnchor(record: SurveyRecord): Component<'anchor'> | undefined {
    const anchors = ofKind(record, 'anchor');
    const said = anchors.find(anchor => flagOf(anchor, 'main') === true);
    const weighed = [...anchors].filter(anchor => siOf(anchor, 'mass') !== undefined && flagOf(anchor, 'main') !== false).sort((a, b) => (siOf(b, 'mass') ?? 0) - (siOf(a, 'mass') ?? 0));
    // One that was not weighed may be the heavier.
    return said ?? (anchors.every(anchor => siOf(anchor, 'mass') !== undefined || flagOf(anchor, 'main') === false) ? weighed[0] : undefined);
}

interface Lengths {
    readonly hullM: number;
    readonly hull: 'length-on-deck' | 'length-overall';
    readonly waterlineM: number | undefined;
}

function lengthsOf({ vessel }: SurveyRecord): Lengths | undefined {
    const onDeck = vessel && siOf(vessel, 'length-on-deck');
    const overall = vessel && siOf(vessel, 'length-overall');
    const hullM = onDeck ?? overall;
    return vessel && hullM !== undefined ? { hullM, hull: onDeck === undefined ? 'length-overall' : 'length-on-deck', waterlineM: siOf(vessel, 'length-waterline') } : undefined;
}

function judge(record: SurveyRecord, anchor: Component<'anchor'> | undefined): Raised | undefined {
    const mass = anchor && valueOf(anchor, 'mass');
    if (!anchor || !mass) {
        return undefined;
    }
    const makers = siOf(anchor, 'makers-mass');
    if (makers !== undefined) {
        return mass.si < makers - 1e-9 ? tooLight(record, anchor, mass, makers, { by: 'makers' }) : undefined;
    }
    const lengths = lengthsOf(record);
    if (flagOf(anchor, 'high-holding') === true || !lengths) {
        return undefined;
    }
    const { hullM, waterlineM } = lengths;
    const longest = meanLengthM(hullM, waterlineM ?? hullM);
    const shortest = meanLengthM(hullM, waterlineM ?? leastWaterlineShare * hullM);
    const [most, least] = [mainAnchorKg(longest), mainAnchorKg(shortest)];
    if (least !== undefined && isAnchorTooLight(mass.si, least)) {
        return tooLight(record, anchor, mass, leastAnchorShare * least, { by: 'table', tableKg: least, meanM: shortest, lengths });
    }
    return most !== undefined && isAnchorTooLight(mass.si, most) ? {
        components: [anchor], at: anchor.facts.get('mass')?.span ?? anchor.idSpan, severity: 'hint',
        message: `${nameOf(anchor)} of ${both(mass)} may be light for her; record her length-waterline to tell, for the mean of hull and waterline length decides.`,
    } : undefined;
}

type Limit = { readonly by: 'makers' } | { readonly by: 'table'; readonly tableKg: number; readonly meanM: number; readonly lengths: Lengths };

const massBoth = (kg: number): string => computedBoth(kg, 'mass');

function tooLight(record: SurveyRecord, anchor: Component, mass: Quantity, leastKg: number, limit: Limit): Raised {
    const isCommercial = record.vessel !== undefined && flagOf(record.vessel, 'commercial') === true;
    const urgency: Urgency = isCommercial ? 'before-departure' : 'in-upkeep';
    const standing = isCommercial ? '' : ' (a yardstick for a private boat)';
    const name = anchor.title ?? 'The main anchor';
    const against = limit.by === 'makers' ? `its maker’s chart asks for ${massBoth(leastKg)} on her`
        : `the table of ${code}${standing} asks for ${massBoth(limit.tableKg)} at a mean length of ${lengthBoth(limit.meanM)}${limit.lengths.waterlineM === undefined ? ' at the least' : ''}, and it is ${percent(mass.si / limit.tableKg)} of that`;
    const lengthRefs = limit.by === 'table' ? `, on a hull of {vessel.${limit.lengths.hull}}${limit.lengths.waterlineM === undefined ? '' : ` with a waterline of {vessel.length-waterline}`}` : '';
    return {
        components: [anchor], at: anchor.facts.get('mass')?.span ?? anchor.idSpan,
        message: `${nameOf(anchor)} is of ${both(mass)}; ${against}${limit.by === 'table' ? `, under ${percent(leastAnchorShare)}` : ''}. A light anchor drags; carry a heavier one.`,
        figures: { mass: { value: Math.round(mass.si * 10) / 10, unit: 'kg' }, least: { value: Math.round(leastKg * 10) / 10, unit: 'kg' } },
        corrections: [
            ...inAnotherUnit(anchor, 'mass', mass, kg => kg >= leastKg - 1e-9 && kg <= 4 * leastKg),
            ...converted(anchor, 'mass', mass),
            ...(limit.by === 'table' ? [{ kind: 'set-fact' as const, title: 'Record that its maker’s chart allows it', component: anchor, property: 'high-holding', value: 'yes' }] : []),
        ],
        draft: {
            title: `${name} is light for her`, urgency,
            seen: `${name} (${anchor.id}) is of {${anchor.id}.mass}${lengthRefs}${limit.by === 'makers' ? `, against {${anchor.id}.makers-mass} by its maker’s chart` : ''}.`,
            because: limit.by === 'makers' ? 'An anchor lighter than its maker asks for drags before its time.' : `A light anchor drags. The table of ${code}${standing} asks for ${massBoth(limit.tableKg)} at her mean length.`,
            recommend: `Carry a main anchor of at least ${massBoth(limit.by === 'makers' ? leastKg : limit.tableKg)}, or one that its maker’s chart allows on her.`,
            cites: [limit.by === 'makers' ? ['Maker\'s manual'] : [code, clause]],
        },
    };
}
