/** Plating that has lost thickness, is pitted, or whose gauging proves nothing. */
import { isGaugeOff, overthickness, wastageShare, wastageStep, type WastageLimits, type WastageStep } from '../../trade/wastage.js';
import { nameOf, siOf, yardstick, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised, type Urgency } from '../contract.js';
import { listed, percent } from '../phrasing.js';
import { lies } from '../lies.js';
import { thicknessBoth } from './figures.js';
import { gaugings, type GaugedPlace, type Gauging } from './gauged-places.js';

const circular = 'NVIC 7-68';

export const plateWasted = defineCheck({
    id: 'plate-wasted',
    group: 'structure',
    severity: 'error',
    title: 'Plating is wasted',
    why: 'Strength goes with thickness.',
    needs: ['plate: original-thickness and thickness, pit-depth and pits, least-thickness, lightly-built', 'reading that measures thickness: original and readings of each row; block-original and block-reading'],
    computes: 'w = (original − mean of the readings) ÷ original. Under 10 % sound; from 10 % watched; from 20 % (lightly built: 15 %) its renewal is planned; over 25 %, or under the least thickness stated, it is renewed. '
        + 'A pit over 33 % of the original is repaired by itself; of grouped pits the readings decide. Gauging is void where the gauge was off by more than 0.1 mm on its block, or the plate reads thicker than it can be.',
    sources: [
        { text: '25 % local wastage; 15 % on lightly built craft', standard: circular, provenance: 'published' },
        { text: '20 % as the average of a belt', standard: circular, provenance: 'memory' },
        { text: 'a lone pit of 1/3 to 1/2 of the thickness; 10 % watched; 0.1 mm on the block', provenance: 'practice' },
        { text: 'new plate is rolled up to 14 % thicker than its nominal', provenance: 'published' },
    ],
    yardsticks: ['plate-watch', 'plate-plan', 'plate-plan-light', 'plate-renew', 'lone-pit'],
    limits: [
        'The circular is for steel hulls and names cases where less than 25 % calls for renewal. Aluminum is judged by the same shares, though 10 to 15 % is often asked of it.',
        'A plate over its original by 5 to 14 % is asked about, not accused: plate is rolled so. Where the original is the thickest reading, 5 % over it is a contradiction.',
        'Where pits are grouped the readings decide; should one of them still pass the limit of a lone pit, advice is given. Where it is not recorded how pits lie, a deep one counts as lone.',
        'The rows of one table are reported together. A table on laminate or planks is not judged.',
        'Some limit the absolute loss too (about 1 mm on plate of 4 to 6 mm): record least-thickness.',
    ],
    examples: [{
        name: 'over a quarter gone',
        bad: 'plate P1 "Plating, frame 12" { original-thickness: 6 mm  thickness: 4.4 mm }\n',
        fixed: 'plate P1 "Plating, frame 12" { original-thickness: 6 mm  thickness: 5.6 mm }\n',
    }, {
        name: 'gauged over several frames',
        bad: `plate P1 "Bottom plating" { material: mild-steel }
reading M1 "Gauging, bottom" on P1 {
    measures: thickness
    columns: original, reading, reading, reading
    row "Frame 12": 6 mm, 4.5 mm, 4.4 mm, 4.3 mm
    row "Frame 14": 6 mm, 5.2 mm, 5.2 mm, 5.1 mm
    row "Frame 16": 6 mm, 5.9 mm, 5.8 mm, 5.9 mm
}
`,
        fixed: `plate P1 "Bottom plating" { material: mild-steel }
reading M1 "Gauging, bottom" on P1 {
    measures: thickness
    columns: original, reading, reading, reading
    row "Frame 12": 6 mm, 5.9 mm, 5.9 mm, 5.8 mm
    row "Frame 16": 6 mm, 5.9 mm, 5.8 mm, 5.9 mm
}
`,
    }, {
        name: 'thicker than plate is rolled',
        bad: 'plate P1 { original-thickness: 5 mm  thickness: 6 mm  original-basis: plan }\n',
        fixed: 'plate P1 { original-thickness: 6 mm  thickness: 6 mm  original-basis: thickest-reading }\n',
        correction: 'Take the thickest reading as the original thickness',
    }],
    silent: [
        { name: 'nine percent gone', text: 'plate P1 { original-thickness: 6 mm  thickness: 5.46 mm }\n' },
        { name: 'the same plate a little thicker', text: 'plate P1 "Plating, frame 12" { original-thickness: 6 mm  thickness: 5.5 mm }\n' },
        { name: 'a lone pit of a third', text: 'plate P1 { original-thickness: 6 mm  thickness: 5.8 mm  pit-depth: 1.98 mm  pits: lone }\n' },
        { name: 'grouped pits over plating that has lost little', text: 'plate P1 { original-thickness: 6 mm  thickness: 5.6 mm  pit-depth: 1.5 mm  pits: grouped }\n' },
        { name: 'readings of a laminate', text: 'hull-shell HS1 { material: grp }\nreading M1 "Thickness" on HS1 { measures: thickness  columns: original, reading  row "Keel": 20 mm, 12 mm }\n' },
        { name: 'nothing gauged', text: 'plate P1 { original-thickness: 6 mm }\n' },
    ],
    run(record, raise) {
        for (const gauging of gaugings(record)) {
            const off = gaugeOffM(gauging);
            const problem = off === undefined ? judged(record, gauging) : gaugeProblem(record, gauging, off);
            if (problem) {
                raise(problem);
            }
        }
    },
});

const rank: Readonly<Record<WastageStep, number>> = { sound: 0, watch: 1, plan: 2, renew: 3 };

/** What is to be said of one place, worst first: its step, and the words for message and draft. */
interface Verdict {
    readonly place: GaugedPlace;
    readonly step: WastageStep;
    readonly share?: number;
    readonly says: string;
    /** Pits that are judged apart from general loss. */
    readonly isPit: boolean;
}

function limitsOf(record: SurveyRecord): WastageLimits {
    return {
        watch: yardstick(record, 'plate-watch').si, plan: yardstick(record, 'plate-plan').si, planLight: yardstick(record, 'plate-plan-light').si, renew: yardstick(record, 'plate-renew').si,
    };
}

/** How far the gauge was off on its block, where that voids the table. */
function gaugeOffM({ reading }: Gauging): number | undefined {
    const block = reading && siOf(reading, 'block-original');
    const read = reading && siOf(reading, 'block-reading');
    return block !== undefined && read !== undefined && isGaugeOff(block, read) ? read - block : undefined;
}

function judged(record: SurveyRecord, gauging: Gauging): Raised | undefined {
    const verdicts = gauging.places.flatMap(place => [...lossOf(record, gauging, place), ...pitOf(record, gauging, place)]).sort((a, b) => rank[b.step] - rank[a.step]);
    const [worst] = verdicts;
    return worst ? wasted(record, gauging, verdicts, worst) : tooThick(record, gauging) ?? lacking(record, gauging);
}

function lossOf(record: SurveyRecord, { isLight }: Gauging, place: GaugedPlace): Verdict[] {
    const { originalM, gaugedM, leastM } = place;
    if (gaugedM === undefined) {
        return [];
    }
    const share = originalM === undefined ? undefined : wastageShare(originalM, gaugedM);
    const step = share === undefined ? 'sound' : wastageStep(share, isLight, limitsOf(record));
    if (leastM !== undefined && gaugedM < leastM - 1e-9) {
        return [{ place, step: 'renew', isPit: false, ...(share === undefined ? {} : { share }), says: `is at ${thicknessBoth(gaugedM)}, under the least thickness stated for it, ${thicknessBoth(leastM)}` }];
    }
    if (step === 'sound' || share === undefined) {
        return [];
    }
    const limit = yardstick(record, step === 'renew' ? 'plate-renew' : step === 'watch' ? 'plate-watch' : isLight ? 'plate-plan-light' : 'plate-plan');
    const asks = step === 'renew' ? 'past which plating is renewed' : step === 'plan' ? `from which its renewal is planned${isLight ? ' on a lightly built craft' : ''}` : 'from which plating is watched';
    if (place.label !== undefined) {
        const verb = step === 'renew' ? 'renewed over' : step === 'plan' ? 'renewal planned from' : 'watched from';
        return [{ place, step, share, isPit: false, says: `has lost ${percent(share)} of its original thickness (${verb} ${limit.written}, ${limit.whose})` }];
    }
    return [{ place, step, share, isPit: false, says: `has lost ${percent(share)} of its original thickness against ${limit.whose} of ${limit.written} ${asks}` }];
}

function pitOf(record: SurveyRecord, { pits }: Gauging, place: GaugedPlace): Verdict[] {
    const { originalM, pitM, gaugedM } = place;
    const limit = yardstick(record, 'lone-pit');
    if (originalM === undefined || pitM === undefined || pits === 'none' || pitM <= limit.si * originalM + 1e-9) {
        return [];
    }
    const depth = `${percent(pitM / originalM)} of its original thickness`;
    return pits === 'grouped'
        ? gaugedM === undefined ? [] : [{ place, step: 'plan', share: pitM / originalM, isPit: true, says: `has grouped pits, the deepest ${depth}, which the mean of its readings does not show` }]
        : [{ place, step: 'renew', share: pitM / originalM, isPit: true, says: `is pitted to ${thicknessBoth(pitM)}, ${depth}, past ${limit.whose} of ${limit.written} for a pit that stands alone` }];
}

const urgencyOf = (record: SurveyRecord, step: WastageStep): Urgency => step === 'watch' ? 'keep-watch' : step === 'renew' && lies(record) !== 'afloat' ? 'before-launch' : 'next-haul-out';

const advice: Readonly<Record<'watch' | 'plan' | 'renew', string>> = {
    watch: 'gauge it again at the same places at the next haul-out',
    plan: 'plan its renewal for the next haul-out',
    renew: 'crop it out and renew it; a doubler only where class or insurer accepts one',
};

/** Steps there are, each with the places it holds for. */
function wasted(record: SurveyRecord, gauging: Gauging, verdicts: readonly Verdict[], worst: Verdict): Raised {
    const { plate, reading } = gauging;
    const worstStep = worst.step === 'sound' ? 'watch' : worst.step;
    const name = reading ? `${reading.title ?? 'Gauging'} (${reading.id})` : plate ? nameOf(plate) : 'Plating';
    const said = verdicts.map(({ place, says }) => place.label === undefined ? says : `${place.label} ${says}`);
    const doing = worst.isPit && verdicts.length === 1 ? worstStep === 'renew' ? 'weld it up or cut it out' : 'gauge among the pits, and judge by what is left' : advice[worstStep];
    const places = [...new Set(verdicts.flatMap(({ place }) => place.label ?? []))];
    const isAssumed = gauging.basis === 'assumed';
    return {
        components: gauging.components, at: worst.place.at,
        ...(worstStep === 'renew' ? {} : { severity: 'warning' as const }),
        message: `${name}${reading ? ':' : ''} ${said.slice(0, 6).join('; ')}${said.length > 6 ? `; and ${said.length - 6} more` : ''}${isAssumed ? ' (the original is assumed)' : ''}. Strength goes with thickness; ${doing}.`,
        figures: worst.share === undefined ? {} : { [worst.isPit ? 'pit' : 'lost']: { value: Math.round(worst.share * 1000) / 10, unit: '%' } },
        corrections: corrections(gauging),
        draft: {
            title: `${plate?.title ?? (plate ? `Plate ${plate.id}` : 'Plating')} is ${worst.isPit ? 'pitted' : 'wasted'}${places.length > 0 ? ` at ${listed(places.slice(0, 3))}` : ''}`,
            urgency: urgencyOf(record, worstStep),
            seen: seen(gauging, verdicts, said),
            because: worstStep === 'renew' ? 'Strength goes with thickness; what is left no longer makes up for what was built.' : 'Strength goes with thickness; the plating still has some in hand, and goes on losing it.',
            recommend: recommend(verdicts, plate),
            cites: [worst.isPit ? ['Good practice'] : [circular]],
        },
    };
}

function seen({ plate, reading, basis }: Gauging, verdicts: readonly Verdict[], said: readonly string[]): string {
    const assumed = basis === 'assumed' ? ' The original thickness is assumed.' : '';
    if (reading || !plate) {
        return `By the gauging (${reading?.id ?? 'see the table'}), ${said.join('; ')}.${assumed}`;
    }
    const loss = verdicts.find(verdict => !verdict.isPit);
    const pit = verdicts.find(verdict => verdict.isPit);
    const original = plate.facts.has('original-thickness') ? ` against an original {${plate.id}.original-thickness}` : '';
    return [
        ...(loss ? [`${plate.title ?? 'The plate'} (${plate.id}) was gauged at {${plate.id}.thickness}${original}${loss.share === undefined ? '' : `, a loss of ${percent(loss.share)}`}`
            + `${plate.facts.has('least-thickness') ? `; the least stated for it is {${plate.id}.least-thickness}` : ''}.`] : []),
        ...(pit ? [`${loss ? 'It' : `${plate.title ?? 'The plate'} (${plate.id})`} is pitted to {${plate.id}.pit-depth}${loss ? '' : original}, ${percent(pit.share ?? 0)} of the original thickness.`] : []),
    ].join(' ') + assumed;
}

function recommend(verdicts: readonly Verdict[], plate: { readonly id: string } | undefined): string {
    const where = (among: readonly Verdict[]) => {
        const labels = [...new Set(among.flatMap(({ place }) => place.label ?? []))];
        return labels.length > 0 ? `the plating at ${listed(labels)}` : plate ? `plate ${plate.id}` : 'the plating';
    };
    const of = (step: WastageStep, isPit: boolean) => verdicts.filter(verdict => verdict.step === step && verdict.isPit === isPit);
    const parts: readonly (readonly [readonly Verdict[], (where: string) => string])[] = [
        [of('renew', false), place => `Crop out and renew ${place}; fit a doubler only where class or insurer accepts one.`],
        [of('renew', true), place => `Weld up or cut out the pits in ${place}.`],
        [of('plan', true), place => `Gauge ${place} among the pits, and judge by what is left.`],
        [of('plan', false), place => `Plan the renewal of ${place} for the next haul-out.`],
        [of('watch', false), place => `Gauge ${place} again at the next haul-out, at the same points.`],
    ];
    return parts.flatMap(([among, say]) => among.length > 0 ? [say(where(among))] : []).join(' ');
}

function corrections({ plate, reading, places, basis }: Gauging): Correction[] {
    const [place, ...others] = places;
    return [
        ...(plate && basis === undefined && plate.facts.has('original-thickness') ? [{ kind: 'set-fact' as const, title: `Mark the original thickness of ${plate.id} as assumed`, component: plate, property: 'original-basis', value: 'assumed', isStep: true }] : []),
        ...(plate && reading && place?.gaugedM !== undefined && others.length === 0 && !plate.facts.has('thickness')
            ? [{ kind: 'set-fact' as const, title: `Record the mean of the readings as the thickness of ${plate.id}`, component: plate, property: 'thickness', value: `${Math.round(place.gaugedM * 1e5) / 100} mm`, isStep: true }] : []),
    ];
}

/** Places that read thicker than they can be, or than they were said to be. */
function tooThick(record: SurveyRecord, gauging: Gauging): Raised | undefined {
    const over = (place: GaugedPlace) => place.originalM === undefined || place.gaugedM === undefined ? 'none' : overthickness(place.originalM, place.gaugedM);
    const impossible = gauging.places.find(place => over(place) === 'impossible' || (over(place) === 'as-rolled' && gauging.basis === 'thickest-reading'));
    const place = impossible ?? gauging.places.find(candidate => over(candidate) === 'as-rolled');
    if (place?.originalM === undefined || place.gaugedM === undefined) {
        return undefined;
    }
    const { plate, reading } = gauging;
    const name = place.label ?? (plate ? nameOf(plate) : 'The plating');
    const thicker = percent((place.gaugedM - place.originalM) / place.originalM);
    const taken: Correction[] = plate && !reading ? [{
        kind: 'set-fact', title: 'Take the thickest reading as the original thickness', component: plate, property: 'original-thickness', value: plate.facts.get('thickness')?.written ?? '',
    }] : [];
    if (!impossible) {
        return {
            components: gauging.components, at: place.at, severity: 'hint', corrections: taken,
            message: `${name} reads ${thicknessBoth(place.gaugedM)}, thicker by ${thicker} than the original recorded, as rolled plate may be; take the thickest reading as the original, or losses elsewhere are understated.`,
        };
    }
    const why = gauging.basis === 'thickest-reading' ? 'and the original is said to be the thickest reading' : 'more than plate is rolled over its nominal';
    return {
        components: gauging.components, at: place.at, severity: 'warning', corrections: taken,
        message: `${name} reads ${thicknessBoth(place.gaugedM)}, thicker by ${thicker} than its original of ${thicknessBoth(place.originalM)}, ${why}. A loss reckoned from that original means nothing; settle the original, or gauge again.`,
        figures: { over: { value: Math.round((place.gaugedM / place.originalM - 1) * 1000) / 10, unit: '%' } },
        draft: {
            title: 'Gauging does not agree with the original thickness', urgency: gaugeAgain(record),
            seen: plate && !reading ? `${plate.title ?? 'The plate'} (${plate.id}) was gauged at {${plate.id}.thickness} against an original {${plate.id}.original-thickness}.` : `${name} was gauged thicker than its original by ${thicker}.`,
            because: 'A loss reckoned from an original that is not so means nothing.',
            recommend: 'Settle the original thickness from drawings or the thickest reading, and gauge again on cleaned metal.',
            cites: [['Good practice']],
        },
    };
}

const gaugeAgain = (record: SurveyRecord): Urgency => lies(record) === 'ashore' ? 'before-launch' : 'next-haul-out';

function gaugeProblem(record: SurveyRecord, { components, reading, at }: Gauging, offM: number): Raised {
    const name = reading ? `${reading.title ?? 'Gauging'} (${reading.id})` : 'Gauging';
    const by = `${Math.round(Math.abs(offM) * 1e5) / 100} mm (${Math.round(Math.abs(offM) / 0.0254 * 1000) / 1000} in) ${offM > 0 ? 'too thick' : 'too thin'}`;
    return {
        components, at: reading?.facts.get('block-reading')?.span ?? at,
        message: `${name}: the gauge read ${by} on its test block, more than 0.1 mm off. Its readings are void and nothing is judged by them; set the gauge on the block and gauge again.`,
        figures: { off: { value: Math.round(Math.abs(offM) * 1e5) / 100, unit: 'mm' } },
        draft: {
            title: 'Gauging is void', urgency: gaugeAgain(record),
            seen: `The gauge of ${reading?.id ?? 'the table'} read ${by} on its test block.`,
            because: 'A gauge that is not right on its block tells nothing of the plating.',
            recommend: 'Set the gauge on a block of known thickness and gauge the same points again.',
            cites: [['Good practice']],
        },
    };
}

/** The one fact that would let the gauging be judged. */
function lacking(record: SurveyRecord, gauging: Gauging): Raised | undefined {
    const { plate, reading, places, components } = gauging;
    const hint = (place: GaugedPlace, message: string): Raised => ({ components, at: place.at, severity: 'hint', message });
    const unknown = places.find(({ originalM, gaugedM, leastM }) => gaugedM !== undefined && originalM === undefined && leastM === undefined);
    if (unknown?.gaugedM !== undefined) {
        return hint(unknown, `${unknown.label ?? (plate ? nameOf(plate) : 'The plating')} was gauged at ${thicknessBoth(unknown.gaugedM)}; record its original thickness, with its source, to tell what it has lost.`);
    }
    const grouped = gauging.pits === 'grouped' && !reading
        ? places.find(({ originalM, gaugedM, pitM }) => originalM !== undefined && gaugedM === undefined && pitM !== undefined && pitM >= yardstick(record, 'plate-watch').si * originalM - 1e-9) : undefined;
    if (grouped && plate && !record.readings.some(table => table.on.includes(plate))) {
        return hint(grouped, `${nameOf(plate)} has grouped pits, which are judged by what is left among them; record its thickness, the mean of readings there.`);
    }
    const pitted = places.find(({ originalM, pitM }) => originalM === undefined && pitM !== undefined && pitM > 0);
    return pitted?.pitM === undefined ? undefined : hint(pitted, `${pitted.label ?? (plate ? nameOf(plate) : 'The plating')} is pitted to ${thicknessBoth(pitted.pitM)}; record its original thickness to tell what share that is.`);
}
