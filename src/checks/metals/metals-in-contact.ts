/** Two metals far apart in the galvanic series that touch under water. */
import { flagOf, isKind, materialOf, nameOf, ofKind, siOf, wordOf, type Component, type Material, type SurveyRecord } from '../../record/model.js';
import { significant } from '../../quantities/index.js';
import { coupleStep, differenceAllowedV, faultDifferenceV, isApartInAir, midV, potentialDifferenceV, watchDifferenceV, type Environment } from '../../trade/galvanic.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { lies } from '../lies.js';
import { materialName as plain, millivolts } from '../phrasing.js';
import { touches, type Touch } from './contacts.js';

export const metalsInContact = defineCheck({
    id: 'metals-in-contact',
    group: 'metals',
    severity: 'error',
    title: 'Metals far apart touch under water',
    why: 'The baser one is eaten, quickest when it is the small one.',
    needs: ['metal of both parts', 'a joint of a run, or a contact', 'wetted', 'area-ratio or exposed-area, anode-left, insulated, where they are known'],
    computes: 'D = difference of the midpoints of the two ranges, from one table in flowing sea water. A fault where D > 400 mV, or 200 mV < D ≤ 400 mV with less than 50 % of the anode left; where nothing is recorded of an anode at a joint, or of which one protects them, it is asked for. An area of the nobler part over ten times the baser’s raises one step, under a tenth lowers one. Where no water joins them and the contact says what they lie in: advice over 150 mV in spray and salt air, 250 indoors, 500 in a controlled climate.',
    sources: [
        { text: '150, 250 and 500 mV out of water, by a guide on the anodic index', provenance: 'published' },
        { text: 'more than 200 mV apart needs protection', standard: 'ABYC E-2', provenance: 'secondary' },
        { text: 'attack goes inversely as the area of the baser part over that of the nobler', standard: 'MIL-STD-1250A', provenance: 'published' },
        { text: '400 mV and the steps by area', provenance: 'practice' },
    ],
    limits: [
        'Potentials are of flowing sea water: in fresh water the order holds and the attack is slower.', 'Stainless steel is taken as passive; starved of oxygen it turns active, up to 0.35 V baser.', 'Paint and films are not counted.', 'A material without a published potential is not judged.',
        'A joint behind a valve found shut is not taken as wetted; nor is a part only for lying below the waterline.', 'In a contact of more than two parts each is taken to touch the next, as they are written.', 'Of a contact recorded as such in a survey that records no anode at all, none is taken to be there; at a joint of a run the anode is asked for.', 'A fitting in a metal hull is judged against the material of the hull only where it is recorded whether it is insulated.', 'An anode that touches what it protects is left out: it is there to be eaten.'],
    examples: [{
        name: 'stainless fitting on a steel one',
        bad: `valve SV1 { metal: mild-steel }
through-hull TH1 { size: 1 in  metal: stainless-316  below-waterline: 1 ft }
sink S1
run R1: TH1 -> SV1 -> S1
`,
        fixed: `valve SV1 { metal: mild-steel }
through-hull TH1 { size: 1 in  metal: stainless-316  below-waterline: 1 ft }
sink S1
run R1: TH1 -> { insulated: yes } SV1 -> S1
`,
        correction: 'Record the joint of TH1 and SV1 as insulated',
    }, {
        name: 'stainless fastening in an aluminum plate',
        bad: `plate P1 { metal: aluminum-5083 }
trim-tab TT1 { metal: stainless-316 }
contact TT1, P1 { wetted: yes }
`,
        fixed: `plate P1 { metal: aluminum-5083 }
trim-tab TT1 { metal: stainless-316 }
contact TT1, P1 { wetted: yes  insulated: yes }
`,
        correction: 'Record the contact of TT1 and P1 as insulated',
    }, {
        name: 'stainless shaft in a bronze propeller, its anode spent',
        bad: `shaft SH1 { metal: stainless-316 }
propeller PR1 { metal: manganese-bronze }
contact SH1, PR1 { wetted: yes  anode-left: 30 % }
`,
        fixed: `shaft SH1 { metal: stainless-316 }
propeller PR1 { metal: manganese-bronze }
contact SH1, PR1 { wetted: yes  anode-left: 100 % }
`,
        correction: 'Record the anode at SH1 and PR1 as renewed',
    }, {
        name: 'in spray, out of the water',
        bad: 'mast M1 { metal: aluminum }\ncleat C1 "Cleats on the mast" { metal: stainless-316 }\ncontact M1, C1 { wetted: no  environment: weather }\n',
        fixed: 'mast M1 { metal: aluminum }\ncleat C1 "Cleats on the mast" { metal: stainless-316 }\ncontact M1, C1 { wetted: no  environment: weather  insulated: yes }\n',
        correction: 'Record the contact of M1 and C1 as insulated',
    }],
    silent: [
        { name: 'in the cabin, 225 mV apart', text: 'trim-tab TT1 { metal: silicon-bronze }\ncleat C1 { metal: stainless-316 }\ncontact TT1, C1 { wetted: no  environment: indoors }\n' },
        { name: 'gunmetal and silicon bronze', text: 'valve SV1 { metal: gunmetal }\nthrough-hull TH1 { size: 1 in  metal: silicon-bronze  below-waterline: 1 ft }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n' },
        { name: 'bronze with nickel-copper', text: 'shaft SH1 { metal: nickel-copper }\npropeller PR1 { metal: gunmetal }\ncontact SH1, PR1 { wetted: yes }\n' },
        { name: 'dry', text: 'plate P1 { metal: aluminum-5083 }\ntrim-tab TT1 { metal: stainless-316 }\ncontact TT1, P1 { wetted: no }\n' },
        { name: 'stainless shaft in a bronze propeller with a good anode', text: 'shaft SH1 { metal: stainless-316 }\npropeller PR1 { metal: manganese-bronze }\ncontact SH1, PR1 { wetted: yes  anode-left: 70 % }\n' },
        { name: 'an anode on its shaft', text: 'anode A1 { metal: zinc }\nshaft SH1 { metal: stainless-316 }\ncontact A1, SH1 { wetted: yes }\n' },
        { name: 'insulated at one part', text: 'plate P1 { metal: aluminum-5083 }\ntrim-tab TT1 { metal: stainless-316  insulated: yes }\ncontact TT1, P1 { wetted: yes }\n' },
        { name: 'fuel line', text: 'valve SV1 { metal: gunmetal }\nadapter AD1 { metal: aluminum }\nrun R1 { service: fuel-feed }: SV1 -> AD1\n' },
        { name: 'a hose between', text: 'valve SV1 { metal: gunmetal }\nhose H1 { bore: 25 mm }\nheat-exchanger HX1 { metal: aluminum }\nrun R1: SV1 -> H1 -> HX1\n' },
    ],
    run(record, raise) {
        for (const raised of inMetalHull(record)) {
            raise(raised);
        }
        for (const touch of touches(record)) {
            const raised = judge(record, touch);
            if (raised) {
                raise(raised);
            }
        }
    },
});

/** A contact written as such where the survey records no anode anywhere. */
function isWithoutAnode(record: SurveyRecord, touch: Touch): boolean {
    return touch.contact !== undefined && touch.joint === undefined && ofKind(record, 'anode').length === 0;
}

/** Fittings under water in a hull of another metal, where no contact or joint with the hull itself is recorded. */
function inMetalHull(record: SurveyRecord): Raised[] {
    const stated = record.vessel?.facts.get('hull-material')?.values[0];
    const hull = stated?.type === 'material' ? stated.material : undefined;
    if (!hull?.isMetal || !hull.potentialV) {
        return [];
    }
    const range = hull.potentialV;
    const told = new Set(touches(record).flatMap(({ a, b }) => isKind(record, a, 'hull-shell') || isKind(record, b, 'hull-shell') ? [a, b] : []));
    return ofKind(record, 'hull-opening').flatMap(opening => {
        const metal = materialOf(opening);
        const insulated = flagOf(opening, 'insulated');
        if (!metal?.potentialV || told.has(opening) || insulated === true || (siOf(opening, 'below-waterline') ?? 0) <= 0) {
            return [];
        }
        const differenceV = potentialDifferenceV(metal.potentialV, range);
        if (differenceV <= watchDifferenceV || (insulated === false && differenceV <= faultDifferenceV)) {
            return [];
        }
        return [insulated === false ? problemInHull(opening, plain(metal), plain(hull), differenceV, midV(range) < midV(metal.potentialV)) : {
            components: [opening], at: opening.idSpan, severity: 'hint' as const,
            message: `${nameOf(opening)}, of ${plain(metal)}, stands in a hull of ${plain(hull)}, ${millivolts(differenceV)} mV apart; record insulated to tell whether the one eats the other.`,
        }];
    });
}

function problemInHull(opening: Component, metal: string, hull: string, differenceV: number, hullIsBaser: boolean): Raised {
    const eaten = hullIsBaser ? `the ${hull} around it` : `the ${metal}`;
    return {
        components: [opening], at: opening.facts.get('insulated')?.span ?? opening.idSpan,
        message: `${nameOf(opening)}, of ${metal}, is not insulated from the hull of ${hull}: ${millivolts(differenceV)} mV apart, and ${eaten} is eaten. Insulate it, or fit one of the metal of the hull.`,
        figures: { difference: { value: millivolts(differenceV), unit: 'mV' } },
        corrections: [{ kind: 'set-fact', title: `Record ${opening.id} as insulated`, component: opening, property: 'insulated', value: 'yes' }],
        draft: {
            title: `${opening.title ?? opening.id} is not insulated from the hull`, urgency: 'next-haul-out',
            seen: `${opening.title ?? 'The fitting'} (${opening.id}), of {${opening.id}.${opening.facts.has('metal') ? 'metal' : 'material'}}, stands {${opening.id}.below-waterline} below the waterline in a hull of {vessel.hull-material} and is not insulated from it.`,
            because: `The two lie about ${millivolts(differenceV)} mV apart in flowing sea water, and ${eaten} is eaten.`,
            recommend: 'Insulate the fitting by bushes and a sleeve and prove it with a meter, or replace it by one of the metal of the hull.',
            cites: [['ABYC E-2']],
        },
    };
}

/** The same without what stands in parentheses. */
const short = (material: Material): string => plain(material).replace(/ \(.*$/, '');

interface Couple {
    readonly noble: Component;
    readonly base: Component;
    readonly nobleMetal: Material;
    readonly baseMetal: Material;
    readonly nobleMid: number;
    readonly baseMid: number;
    readonly differenceV: number;
    readonly areaRatio?: number;
}

function coupleOf(touch: Touch): Couple | undefined {
    const { aMetal, bMetal } = touch;
    if (!aMetal.potentialV || !bMetal.potentialV) {
        return undefined;
    }
    const aIsNoble = midV(aMetal.potentialV) >= midV(bMetal.potentialV);
    const ratio = touch.writtenRatio ?? (touch.areaRatioAToB === undefined ? undefined : aIsNoble ? touch.areaRatioAToB : 1 / touch.areaRatioAToB);
    return {
        noble: aIsNoble ? touch.a : touch.b, base: aIsNoble ? touch.b : touch.a, nobleMetal: aIsNoble ? aMetal : bMetal, baseMetal: aIsNoble ? bMetal : aMetal,
        nobleMid: midV(aIsNoble ? aMetal.potentialV : bMetal.potentialV), baseMid: midV(aIsNoble ? bMetal.potentialV : aMetal.potentialV),
        differenceV: potentialDifferenceV(aMetal.potentialV, bMetal.potentialV), ...(ratio === undefined ? {} : { areaRatio: ratio }),
    };
}

/** Asks for the fact that would decide. */
function hint(touch: Touch, { noble, base, nobleMetal, baseMetal, differenceV }: Couple, ask: string): Raised {
    return {
        components: [base, noble], at: touch.at, severity: 'hint',
        message: `${nameOf(base)} and ${nameOf(noble)} are of ${plain(baseMetal)} and ${plain(nobleMetal)}, ${millivolts(differenceV)} mV apart; ${ask} to tell whether the ${short(baseMetal)} is at risk.`,
    };
}

/** No water joins them: salt air may, where the contact says that they lie in it. Advice, as no current is kept up. */
function inAir(touch: Touch, { noble, base, nobleMetal, baseMetal, differenceV }: Couple): Raised | undefined {
    const environment = touch.contact ? wordOf(touch.contact, 'environment') as Exclude<Environment, 'immersed'> | undefined : undefined; // The catalogue's words are these.
    if (environment === undefined || !isApartInAir(differenceV, environment)) {
        return undefined;
    }
    const where = environment === 'weather' ? 'in spray and salt air' : environment === 'indoors' ? 'indoors' : 'in a controlled climate';
    const allowed = millivolts(differenceAllowedV[environment]);
    return {
        components: [base, noble], at: touch.at, severity: 'warning',
        message: `${nameOf(base)}, of ${plain(baseMetal)}, and ${nameOf(noble)}, of ${plain(nobleMetal)}, touch ${where}: ${millivolts(differenceV)} mV apart, where ${allowed} mV is the most. Where damp lies between them the ${short(baseMetal)} is eaten; bed them on an insulating compound, or sleeve them apart.`,
        figures: { difference: { value: millivolts(differenceV), unit: 'mV' }, most: { value: allowed, unit: 'mV' } },
        corrections: [{ kind: 'replace-text', title: `Record the contact of ${touch.a.id} and ${touch.b.id} as insulated`, ...factAt(touch, 'insulated', 'yes') }],
        draft: {
            title: `${base.id} and ${noble.id} touch, of metals far apart`, urgency: 'in-upkeep',
            seen: `${base.title ?? base.id} (${base.id}), of ${plain(baseMetal)}, and ${noble.title ?? noble.id} (${noble.id}), of ${plain(nobleMetal)}, touch ${where} without insulation.`,
            because: `They lie about ${millivolts(differenceV)} mV apart; where damp lies between them the ${short(baseMetal)} is eaten.`,
            recommend: 'Part them, bed them on an insulating compound or fit a sleeve and washers, and clean off what is eaten.',
            cites: [['Good practice']],
        },
    };
}

function judge(record: SurveyRecord, touch: Touch): Raised | undefined {
    const couple = coupleOf(touch);
    if (!couple || touch.isInsulated) {
        return undefined;
    }
    if (touch.isWetted === false || touch.contact?.facts.has('environment') === true && touch.isWetted === undefined) {
        return inAir(touch, couple);
    }
    const { noble, base, nobleMetal, baseMetal, nobleMid, baseMid, differenceV, areaRatio } = couple;
    const step = coupleStep({ differenceV, ...(areaRatio === undefined ? {} : { areaRatio }), ...(touch.anodeLeft === undefined ? {} : { anodeLeft: touch.anodeLeft }) });
    if (step === 0) {
        return undefined;
    }
    const place = touch.joint ? 'the joint' : 'the contact';
    if (touch.isWetted === undefined) {
        return differenceV <= watchDifferenceV ? undefined : hint(touch, couple, touch.joint && !touch.contact ? `record contains of ${touch.joint.run.id}, or wetted of the parts,` : 'record wetted');
    }
    // Between the two limits the anode decides, unless the step is due to the areas.
    if (touch.anodeLeft === undefined && step === 1 && !isWithoutAnode(record, touch)) {
        return hint(touch, couple, touch.contact ? 'record anode-left' : 'record the anode that protects them, and what is left of it,');
    }
    const area = areaRatio === undefined ? '' : `, the nobler part exposing ${significant(areaRatio, 2)} times its area`;
    const mids = `${millivolts(baseMid)} and ${millivolts(nobleMid)} mV`;
    const anode = touch.anodeLeft === undefined ? 'no anode is recorded' : `${Math.round(touch.anodeLeft * 100)} % of the anode is left`;
    const water = record.vessel?.facts.get('water')?.written;
    const waterText = water === 'fresh' ? ' (a sea-water figure; fresh water is slower)' : '';
    const title = `Record ${place} of ${touch.a.id} and ${touch.b.id} as insulated`;
    const corrections: Correction[] = [
        ...(touch.joint ? [{ kind: 'set-joint-fact', title, joint: touch.joint, property: 'insulated', value: 'yes' } as const] : []),
        ...(touch.contact && !touch.joint ? [{ kind: 'replace-text', title, ...factAt(touch, 'insulated', 'yes') } as const] : []),
        ...(touch.contact && step === 1 ? [{ kind: 'replace-text', title: `Record the anode at ${touch.a.id} and ${touch.b.id} as renewed`, ...factAt(touch, 'anode-left', '100 %') } as const] : []),
        { kind: 'set-fact', title: `Record ${base.id} as ${plain(nobleMetal)} like ${noble.id}`, component: base, property: base.facts.has('metal') ? 'metal' : 'material', value: nobleMetal.id },
    ];
    return {
        components: [base, noble], at: touch.at,
        message: `${nameOf(base)}, of ${plain(baseMetal)}, and ${nameOf(noble)}, of ${plain(nobleMetal)}, touch in water: ${millivolts(differenceV)} mV apart (${mids})${area}; ${anode}${waterText}. The ${short(baseMetal)} is eaten: insulate them, change one, or protect them.`,
        figures: {
            difference: { value: millivolts(differenceV), unit: 'mV' }, noble: { value: millivolts(nobleMid), unit: 'mV' }, base: { value: millivolts(baseMid), unit: 'mV' },
            ...(areaRatio === undefined ? {} : { areaRatio: { value: Math.round(areaRatio * 100) / 100, unit: '' } }), ...(touch.anodeLeft === undefined ? {} : { anodeLeft: { value: Math.round(touch.anodeLeft * 100), unit: '%' } }),
        },
        related: [{ message: `${noble.id}, ${plain(nobleMetal)}`, span: noble.idSpan }, { message: `${base.id}, ${plain(baseMetal)}`, span: base.idSpan }],
        corrections,
        draft: {
            title: `${base.title ?? base.id} is at risk from ${noble.title ?? noble.id}`,
            urgency: step === 1 ? 'in-upkeep' : isWasted(base) && lies(record) !== 'afloat' ? 'before-launch' : 'next-haul-out',
            seen: `${base.title ?? 'The part'} (${base.id}), of {${base.id}.${base.facts.has('metal') ? 'metal' : 'material'}}, and ${noble.title ?? 'the part'} (${noble.id}), of {${noble.id}.${noble.facts.has('metal') ? 'metal' : 'material'}}, touch in water; ${anode}.`,
            because: `The two lie about ${millivolts(differenceV)} mV apart in flowing sea water; the baser is eaten, the quicker the smaller it is.`,
            recommend: 'Separate the two with insulating bushes or a length of hose, change one of them, or protect them with an anode bonded to both.',
            cites: [['ABYC E-2']],
        },
    };
}

const isWasted = (part: Component): boolean => ['defective', 'failed'].includes(wordOf(part, 'condition') ?? '');

/** The place and text of a fact of the contact, written or new. */
function factAt(touch: Touch, property: 'insulated' | 'anode-left', value: string): { span: Touch['at']; text: string } {
    const fact = touch.contact?.facts.get(property);
    if (fact) {
        return { span: fact.span, text: value };
    }
    const last = [...(touch.contact?.facts.values() ?? [])].reduce<Touch['at'] | undefined>((a, { span }) => a && a.end > span.end ? a : span, undefined);
    const end = last?.end ?? touch.contact?.span.end ?? touch.at.end;
    // A contact without facts is wetted by what is recorded at its parts, and has no braces yet.
    return { span: { ...(touch.contact?.span ?? touch.at), start: end, end }, text: last ? `  ${property}: ${value}` : ` { ${property}: ${value} }` };
}
