/** Clamps that are rusty, broken, loose, of the wrong metal, range or type. */
import { isKind, materialOf, nameOf, ofKind, type Component, type Fact, type Joint, type Run, type SurveyRecord, runsThrough } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, listed } from '../phrasing.js';
import { floodCritical } from '../lies.js';
import { isFuelHose, placesOf as runsOrNone } from './service.js';
import { heightOf } from './waterline.js';

/** Classes of material that rust or waste in a clamp at sea. */
const poorClasses: ReadonlySet<string> = new Set(['iron-or-steel', 'aluminum', 'zinc-anode', 'plastic']);

export const clampPoor = defineCheck({
    id: 'clamp-poor',
    group: 'hoses',
    severity: 'error',
    title: 'Clamp is in poor order or of the wrong kind',
    why: 'A clamp rusts under its screw housing, where nobody sees it, and breaks there.',
    needs: ['clamp-condition, clamp-material or clamp-type, at the joint or of the hose', 'clamp-range at the joint and outside-diameter of the hose', 'run: service, for spring clamps on fuel'],
    computes: 'A fault where a clamp is recorded rusty, cracked, broken or loose; where its metal is plain steel, aluminum or zinc, or it is of plastic; where the outside diameter of the hose lies outside its range; where a spring clamp holds a fuel hose.',
    sources: [
        { text: 'a fuel hose is not held by spring tension alone', standard: '33 CFR 183', clause: '183.560', provenance: 'published' },
        { text: 'all-stainless clamps within their range', provenance: 'practice' },
    ],
    limits: [
        'Clamps recorded as a part of their own are judged by their metal, and by their range and pattern where the hose that they serve is recorded.',
        'The screw and the band of one clamp may be of different metals; record the baser one.',
        'Brass and bronze clamps are left alone.',
    ],
    examples: [{
        name: 'rusty clamps',
        bad: `vessel "Marram" {}
valve SV1 { spigot: 38 mm }
hose H1 { bore: 38 mm  clamps: 2  clamp-condition: rusty }
run R1 "Galley sink": SV1 -> H1
`,
        fixed: `vessel "Marram" {}
valve SV1 { spigot: 38 mm }
hose H1 { bore: 38 mm  clamps: 2  clamp-condition: sound }
run R1 "Galley sink": SV1 -> H1
`,
        correction: 'Record the clamps of H1 as sound',
    }, {
        name: 'spring clamp on a fuel hose',
        bad: `fuel-tank T1
hose FH1 { class: fuel-a1 }
run F1 { service: fuel-feed }: T1 -> { clamp-type: spring } FH1
`,
        fixed: `fuel-tank T1
hose FH1 { class: fuel-a1 }
run F1 { service: fuel-feed }: T1 -> { clamp-type: worm } FH1
`,
        correction: 'Record the clamp of FH1 at T1 as worm',
    }, {
        name: 'hose larger than the range of the clamp',
        bad: `valve SV1
hose H1 { outside-diameter: 48 mm }
run R1: SV1 -> { clamp-range: 32 mm..44 mm } H1
`,
        fixed: `valve SV1
hose H1 { outside-diameter: 48 mm }
run R1: SV1 -> { clamp-range: 40 mm..60 mm } H1
`,
    }],
    silent: [
        { name: 'sound stainless clamps', text: 'valve SV1\nhose H1 { clamp-condition: sound  clamp-material: stainless-316 }\nrun R1: SV1 -> H1\n' },
        { name: 'spring clamp on a coolant hose', text: 'valve SV1\nhose H1 { clamp-type: spring }\nrun R1 { service: coolant }: SV1 -> H1\n' },
        { name: 'hose within the range of the clamp', text: 'valve SV1\nhose H1 { outside-diameter: 44 mm }\nrun R1: SV1 -> { clamp-range: 40 mm..60 mm } H1\n' },
        { name: 'nothing recorded of the clamps', text: 'valve SV1\nhose H1\nrun R1: SV1 -> H1\n' },
    ],
    run(record, raise) {
        for (const place of placesOf(record)) {
            const faults = faultsAt(place);
            if (faults.length > 0) {
                raise(problem(record, place, faults));
            }
            const question = ask(place);
            if (question) {
                raise(question);
            }
        }
        for (const clamp of ofKind(record, 'clamp')) {
            const raised = ofPart(record, clamp);
            if (raised) {
                raise(raised);
            }
        }
    },
});

/** Where facts of clamps are recorded: on a hose for both ends, or at a joint of a hose. */
interface Place {
    readonly set: Component | Joint;
    readonly hose: Component;
    readonly other?: Component;
    readonly runs: readonly Run[];
}

function placesOf(record: SurveyRecord): Place[] {
    const places: Place[] = [];
    for (const hose of record.components.values()) {
        if (isKind(record, hose, 'hose')) {
            places.push({ set: hose, hose, runs: runsThrough(record, hose) });
        }
    }
    for (const joint of record.runs.flatMap(run => run.joints)) {
        const hose = isKind(record, joint.from, 'hose') ? joint.from : isKind(record, joint.to, 'hose') ? joint.to : undefined;
        if (hose) {
            places.push({ set: joint, hose, other: hose === joint.from ? joint.to : joint.from, runs: [joint.run] });
        }
    }
    return places;
}

interface Fault {
    readonly fact: Fact;
    readonly what: string;
    readonly remedy: string;
    readonly sound: string;
    readonly isBroken: boolean;
}

function faultsAt({ set, hose, runs }: Place): Fault[] {
    const faults: Fault[] = [];
    const add = (property: string, what: string, remedy: string, sound: string, isBroken = false) => {
        const fact = set.facts.get(property);
        if (fact) {
            faults.push({ fact, what, remedy, sound, isBroken });
        }
    };
    const condition = set.facts.get('clamp-condition')?.values[0];
    if (condition?.type === 'word' && condition.word !== 'sound') {
        add('clamp-condition', condition.word, condition.word === 'loose' ? 'tighten it, or renew it if it does not hold' : 'renew with all-stainless clamps', 'sound', condition.word !== 'rusty');
    }
    const metal = set.facts.get('clamp-material')?.values[0];
    if (metal?.type === 'material' && poorClasses.has(metal.material.class)) {
        add('clamp-material', `of ${metal.material.title.toLowerCase()}`, 'renew with all-stainless clamps', 'stainless-316');
    }
    const type = set.facts.get('clamp-type')?.values[0];
    if (type?.type === 'word' && type.word === 'spring' && runsOrNone(runs).some(run => isFuelHose(run, hose))) {
        add('clamp-type', 'a spring clamp on fuel hose', 'fit a clamp that is drawn up by a screw', 'worm');
    }
    const range = set.facts.get('clamp-range')?.values[0];
    const outside = hose.facts.get('outside-diameter')?.values[0];
    if (range?.type === 'quantity' && range.low !== undefined && range.high !== undefined && outside?.type === 'quantity'
        && (outside.si < range.low - 1e-9 || outside.si > range.high + 1e-9)) {
        add('clamp-range', `made for ${both(range)} on a hose of ${both(outside)} outside`, 'fit a clamp of the right range', '');
    }
    return faults;
}

function problem(record: SurveyRecord, { set, hose, other, runs }: Place, faults: readonly Fault[]): Raised {
    const where = other ? ` at ${nameOf(other)}` : '';
    const whereId = other ? ` at ${other.id}` : '';
    const [first] = faults;
    const isFuel = runsOrNone(runs).some(run => isFuelHose(run, hose));
    const isBelow = runs.some(run => heightOf(record, run) === 'below');
    const isBroken = faults.some(fault => fault.isBroken);
    const subject = other ? 'clamp' : 'clamps';
    const what = listed(faults.map(fault => fault.what));
    const remedy = [...new Set(faults.map(fault => fault.remedy))].join('; ');
    const corrections = faults.filter(fault => fault.sound !== '').map((fault): Correction => {
        const title = `Record the ${subject} of ${hose.id}${whereId} as ${fault.sound}`;
        return set.kind === 'joint'
            ? { kind: 'set-joint-fact', title, joint: set as Joint, property: fault.fact.name, value: fault.sound } // A set of kind joint is a joint.
            : { kind: 'set-fact', title, component: hose, property: fault.fact.name, value: fault.sound };
    });
    return {
        components: other ? [hose, other] : [hose],
        at: first?.fact.span ?? hose.idSpan,
        message: `The ${subject} of ${nameOf(hose)}${where} ${other ? 'is' : 'are'} ${what}. A poor clamp gives way unseen and the hose comes off; ${remedy}.`,
        corrections,
        draft: {
            title: `Poor ${subject} on ${hose.id}${whereId}`,
            urgency: isFuel ? 'before-use' : isBroken && isBelow ? floodCritical(record) : 'in-upkeep',
            seen: `The ${subject} of hose ${hose.id}${whereId} ${other ? 'is' : 'are'} ${what}.`,
            because: isFuel ? 'A fuel hose whose clamp gives way leaks fuel into the hull.' : 'A clamp wastes under its screw housing, where it is not seen, and lets the hose go when it breaks.',
            recommend: `At hose ${hose.id}${whereId}, ${remedy}.`,
            ...(isFuel && faults.some(fault => fault.fact.name === 'clamp-type') ? { cites: [['33 CFR 183', '183.560'] as const] } : {}),
        },
    };
}

/** Clamps recorded as a part of their own: their metal, and their range where the hose that they serve is named. */
function ofPart(record: SurveyRecord, clamp: Component): Raised | undefined {
    const material = materialOf(clamp);
    const served = clamp.facts.get('serves')?.values.flatMap(value => value.type === 'component' ? [record.components.get(value.id)] : []).find(part => part && isKind(record, part, 'hose'));
    const range = clamp.facts.get('range')?.values[0];
    const outside = served?.facts.get('outside-diameter')?.values[0];
    const property = clamp.facts.has('metal') ? 'metal' : 'material';
    const isSpringOnFuel = served !== undefined && clamp.facts.get('pattern')?.written === 'spring' && runsOrNone(runsThrough(record, served)).some(run => isFuelHose(run, served));
    const isOffRange = range?.type === 'quantity' && outside?.type === 'quantity' && range.low !== undefined && range.high !== undefined && (outside.si < range.low - 1e-9 || outside.si > range.high + 1e-9);
    const fault = isSpringOnFuel ? { property: 'pattern', what: 'are spring clamps on fuel hose', remedy: 'fit clamps that are drawn up by a screw' }
        : material && poorClasses.has(material.class) ? { property, what: `are of ${material.title.toLowerCase()}`, remedy: 'renew them with all-stainless clamps' }
            : isOffRange ? { property: 'range', what: `are made for ${both(range)} and sit on a hose of ${both(outside)} outside`, remedy: 'fit clamps of the right range' } : undefined;
    return fault && {
        components: served ? [clamp, served] : [clamp],
        at: clamp.facts.get(fault.property)?.span ?? clamp.idSpan,
        message: `The clamps ${nameOf(clamp)} ${fault.what}. A poor clamp gives way unseen and the hose comes off; ${fault.remedy}.`,
        corrections: fault.property === property ? [{ kind: 'set-fact', title: `Record ${clamp.id} as stainless steel 316`, component: clamp, property, value: 'stainless-316' }] : [],
        draft: {
            title: `Poor clamps ${clamp.id}`,
            urgency: served && runsOrNone(runsThrough(record, served)).some(run => isFuelHose(run, served)) ? 'before-use' : 'in-upkeep',
            seen: `The clamps ${clamp.title ? `${clamp.title} (${clamp.id})` : clamp.id} ${fault.what}.`,
            because: 'A clamp that rusts, or is not made for its hose, lets the hose go when it breaks.',
            recommend: `${fault.remedy.charAt(0).toUpperCase()}${fault.remedy.slice(1).replace('them', `clamps ${clamp.id}`)}.`,
        },
    };
}

function ask({ set, hose, other }: Place): Raised | undefined {
    const range = set.facts.get('clamp-range');
    if (!range || hose.facts.has('outside-diameter')) {
        return undefined;
    }
    return {
        components: other ? [hose, other] : [hose], at: range.span, severity: 'hint',
        message: `The clamp of ${nameOf(hose)} is made for ${range.written}; record the outside-diameter of ${hose.id} to tell whether it suits.`,
    };
}
