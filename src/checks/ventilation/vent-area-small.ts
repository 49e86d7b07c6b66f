/** Natural ventilation of a gasoline space whose openings are too small or stand in the wrong place. */
import { ductAreaM2, exceedsLeastVent, leastVentAreaM2, naturalVentAreaM2, reachesArea, terminalAreaM2 } from '../../trade/ventilation.js';
import { flagOf, nameOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { capital, listed } from '../phrasing.js';
import { inAnotherUnit } from '../other-unit.js';
import { recordOpen, spaceBoth, ventBoth, ventilatedSpaces, type VentilatedSpace } from './spaces.js';

const squareInchM2 = 0.0254 ** 2;

export const ventAreaSmall = defineCheck({
    id: 'vent-area-small',
    group: 'ventilation',
    severity: 'error',
    title: 'Ventilation of a gasoline space is too small or misplaced',
    why: 'Gasoline vapor lies low and stays, where the openings are small, end high or stand in water.',
    needs: ['vent-duct: way, area or bore, in-lower-third, above-bilge-water', 'cowl: area, serves', 'machinery-space: volume, or vent-duct: space-volume', 'vessel or engine: fuel, or machinery-space: gasoline'],
    computes: 'Supply and exhaust each: sum of areas at least 5 ln(V/5) in2, V in ft3; each opening over 3.0 in2; the fitting at the end of a duct at least 80 % of what its duct must have; exhaust from the lower third; all above the usual bilge water.',
    sources: [{ text: 'area and place of openings', standard: '33 CFR 183', clause: '183.630', provenance: 'published' }],
    limits: [
        'The rule binds builders of boats with gasoline engines; on a boat in service it is good practice. Diesel and spaces open to the air are left alone.',
        'Volume is net, with spaces joined to it by openings of more than 2 % of the wall between them; that sum is the surveyor’s.',
        'Bends and grilles within a duct are not known to it: area is the clear area.',
        'Just 3.0 in2 is too small: the rule asks for more.',
        'A way of which no duct is recorded is asked for.',
    ],
    examples: [{
        name: 'two ducts of 2 in for 60 cubic feet',
        bad: `vessel "Marram" { fuel: gasoline }
machinery-space S1 { volume: 60 ft3 }
vent-duct D1 { way: supply  bore: 4 in  serves: S1 }
vent-duct D2 { way: exhaust  bore: 2 in  serves: S1  in-lower-third: yes  above-bilge-water: yes }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
machinery-space S1 { volume: 60 ft3 }
vent-duct D1 { way: supply  bore: 4 in  serves: S1 }
vent-duct D2 { way: exhaust  bore: 4 in  serves: S1  in-lower-third: yes  above-bilge-water: yes }
`,
    }, {
        name: 'volume in the wrong unit',
        bad: `vessel "Marram" { fuel: gasoline }
machinery-space S1 { volume: 60 m3 }
vent-duct D1 { way: supply  bore: 4 in  serves: S1 }
vent-duct D2 { way: exhaust  bore: 4 in  serves: S1 }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
machinery-space S1 { volume: 60 ft3 }
vent-duct D1 { way: supply  bore: 4 in  serves: S1 }
vent-duct D2 { way: exhaust  bore: 4 in  serves: S1 }
`,
        correction: 'Read 60 m3 as 60 ft3',
    }, {
        name: 'exhaust duct that ends high',
        bad: `vessel "Marram" { fuel: gasoline }
vent-duct D1 { way: supply  bore: 4 in  space-volume: 60 ft3 }
vent-duct D2 { way: exhaust  bore: 4 in  in-lower-third: no }
`,
        fixed: `vessel "Marram" { fuel: gasoline }
vent-duct D1 { way: supply  bore: 4 in  space-volume: 60 ft3 }
vent-duct D2 { way: exhaust  bore: 4 in  in-lower-third: yes }
`,
    }],
    silent: [
        { name: 'the same ducts on diesel', text: 'vessel "Marram" { fuel: diesel }\nmachinery-space S1 { volume: 60 ft3 }\nvent-duct D1 { way: supply  bore: 2 in  serves: S1 }\nvent-duct D2 { way: exhaust  bore: 2 in  serves: S1  in-lower-third: no }\n' },
        { name: 'two ducts that add up', text: 'vessel "Marram" { fuel: gasoline }\nmachinery-space S1 { volume: 60 ft3 }\nvent-duct D1 { way: supply  bore: 3 in  quantity: 2  serves: S1 }\nvent-duct D2 { way: exhaust  bore: 3 in  quantity: 2  serves: S1 }\n' },
        { name: 'open to the air', text: 'vessel "Marram" { fuel: gasoline }\nmachinery-space S1 { volume: 60 ft3  space-open: yes }\nvent-duct D1 { way: supply  bore: 2 in  serves: S1 }\nvent-duct D2 { way: exhaust  bore: 2 in  serves: S1 }\n' },
    ],
    run(record, raise) {
        for (const space of ventilatedSpaces(record)) {
            const problem = space.ducts.length > 0 && !space.isOpen && space.isGasoline !== false ? judge(record, space) : undefined;
            if (problem) {
                raise(problem);
            }
        }
    },
});

type Way = 'supply' | 'exhaust';

interface Fault {
    readonly on: Component;
    readonly property: string;
    readonly what: string;
    readonly remedy: string;
}

/** Clear area of a duct, one of them where several are alike. */
function areaOf(duct: Component): number | undefined {
    const bore = siOf(duct, 'bore');
    return siOf(duct, 'area') ?? (bore === undefined ? undefined : ductAreaM2(bore));
}

function judge(record: SurveyRecord, space: VentilatedSpace): Raised | undefined {
    const ways = (['supply', 'exhaust'] as const).map(way => totalOf(space, way));
    const faults = [...ways.flatMap(way => areaFaults(space, way)), ...ways.flatMap(way => terminalFaults(record, space, way)), ...placeFaults(space)];
    const [worst] = faults;
    const [first] = space.ducts;
    if (worst && space.isGasoline) {
        return problem(space, worst, faults, ways);
    }
    const missing = faults.length > 0 ? `whether a gasoline engine or tank is in ${space.title} (the fuel of its engine, or gasoline of the space)` : missingOf(space, ways);
    return first && missing !== undefined && (space.isGasoline || faults.length > 0)
        ? { components: [first], at: first.idSpan, severity: 'hint', message: `Record ${missing}, to tell whether its ventilation will do.` } : undefined;
}

interface Total {
    readonly way: Way;
    readonly ducts: readonly Component[];
    /** Sum of the areas recorded, m2. */
    readonly areaM2: number;
    readonly isWhole: boolean;
}

function totalOf(space: VentilatedSpace, way: Way): Total {
    const ducts = space.ducts.filter(duct => wordOf(duct, 'way') === way);
    const areas = ducts.map(duct => {
        const area = areaOf(duct);
        return area === undefined ? undefined : area * (siOf(duct, 'quantity') ?? 1);
    });
    return { way, ducts, areaM2: areas.reduce((sum: number, area) => sum + (area ?? 0), 0), isWhole: ducts.length > 0 && areas.every(area => area !== undefined) };
}

function areaFaults({ volume, ducts: all }: VentilatedSpace, { way, ducts, areaM2, isWhole }: Total): readonly Fault[] {
    const neededM2 = volume && naturalVentAreaM2(volume.quantity.si);
    const [first] = ducts;
    // A duct whose way is not recorded may belong to either.
    if (first && isWhole && neededM2 !== undefined && !reachesArea(areaM2, neededM2) && all.every(duct => duct.facts.has('way'))) {
        return [{ on: first, property: first.facts.has('area') ? 'area' : 'bore', what: `${way} ${listed(ducts.map(duct => duct.id))} ${ducts.length > 1 ? 'have' : 'has'} ${ventBoth(areaM2)} of area, where ${ventBoth(neededM2)} is asked for`, remedy: `enlarge the ${way}` }];
    }
    return ducts.flatMap(duct => {
        const area = areaOf(duct);
        return area === undefined || exceedsLeastVent(area) ? []
            : [{ on: duct, property: duct.facts.has('area') ? 'area' : 'bore', what: `${way} ${duct.id} has ${ventBoth(area)} of area, where each must exceed ${ventBoth(leastVentAreaM2)}`, remedy: `enlarge ${duct.id}` }];
    });
}

function terminalFaults(record: SurveyRecord, { volume }: VentilatedSpace, { way, ducts, areaM2, isWhole }: Total): readonly Fault[] {
    const neededM2 = volume && naturalVentAreaM2(volume.quantity.si);
    return ofKind(record, 'cowl').flatMap(cowl => {
        const serves = cowl.facts.get('serves')?.values[0];
        const duct = serves?.type === 'component' ? ducts.find(candidate => candidate.id === serves.id) : undefined;
        const [ductM2, cowlM2] = [duct && areaOf(duct), siOf(cowl, 'area')];
        if (!duct || ductM2 === undefined || cowlM2 === undefined || neededM2 === undefined || !isWhole) {
            return [];
        }
        const leastM2 = terminalAreaM2(ductM2, areaM2, neededM2);
        return reachesArea(cowlM2, leastM2) ? []
            : [{ on: cowl, property: 'area', what: `cowl ${cowl.id} of ${way} ${duct.id} has ${ventBoth(cowlM2)} of area, where ${ventBoth(leastM2)} is asked for`, remedy: `fit a larger cowl at ${duct.id}` }];
    });
}

function placeFaults({ ducts }: VentilatedSpace): readonly Fault[] {
    return ducts.flatMap(duct => [
        ...(wordOf(duct, 'way') === 'exhaust' && flagOf(duct, 'in-lower-third') === false
            ? [{ on: duct, property: 'in-lower-third', what: `exhaust ${duct.id} does not start in the lower third of the space`, remedy: `lead ${duct.id} down into the lower third` }] : []),
        ...(flagOf(duct, 'above-bilge-water') === false
            ? [{ on: duct, property: 'above-bilge-water', what: `${wordOf(duct, 'way') ?? 'duct'} ${duct.id} ends in the usual bilge water`, remedy: `raise ${duct.id} above the bilge water` }] : []),
    ]);
}

/** The one fact that would decide, where the rest is known. */
function missingOf(space: VentilatedSpace, ways: readonly Total[]): string | undefined {
    const unmeasured = space.ducts.find(duct => areaOf(duct) === undefined);
    const lacking = ways.find(way => way.ducts.length === 0);
    const missing = [
        ...(space.volume ? [] : [`the net volume of ${space.title}`]),
        ...(unmeasured ? [`area or bore of ${nameOf(unmeasured)}`] : []),
        ...(lacking ? [`${space.ducts.some(duct => !duct.facts.has('way')) ? 'the way' : `the ${lacking.way}`} of ${space.title}`] : []),
    ];
    return missing.length === 1 ? missing[0] : undefined;
}

function problem(space: VentilatedSpace, worst: Fault, faults: readonly Fault[], ways: readonly Total[]): Raised {
    const { volume } = space;
    const neededM2 = volume && naturalVentAreaM2(volume.quantity.si);
    const suits = (m3: number) => m3 >= 0.1 && ways.every(way => way.isWhole && reachesArea(way.areaM2, naturalVentAreaM2(m3)));
    const what = listed(faults.map(fault => fault.what));
    const remedy = listed([...new Set(faults.map(fault => fault.remedy))]);
    const isArea = neededM2 !== undefined && ways.some(way => way.isWhole && !reachesArea(way.areaM2, neededM2));
    return {
        components: [...new Set(faults.map(fault => fault.on))],
        at: worst.on.facts.get(worst.property)?.span ?? worst.on.idSpan,
        message: `${capital(space.title)}${volume ? `, ${spaceBoth(volume.quantity.si)} with gasoline` : ' with gasoline'}: ${what} (good practice per 33 CFR 183.630). Heavy vapor stays behind; ${remedy}.`,
        figures: neededM2 === undefined ? {} : { ...Object.fromEntries(ways.filter(way => way.isWhole).map(way => [way.way, { value: way.areaM2 / squareInchM2, unit: 'in2' }])), 'asked for': { value: neededM2 / squareInchM2, unit: 'in2' } },
        corrections: [...(volume && isArea ? inAnotherUnit(volume.on, volume.property, volume.quantity, suits) : []), ...recordOpen(space)],
        draft: {
            title: `Ventilation of ${space.title} is too small or misplaced`,
            urgency: 'before-use',
            seen: `${capital(space.title)}${volume ? `, of {${volume.on.id}.${volume.property}} net,` : ''} holds gasoline: ${what}.`,
            because: 'Gasoline vapor is heavier than air; it lies in the lower part of the space and stays where small or high openings, or water in a duct, do not let it out.',
            recommend: `${capital(remedy)}.`,
            cites: [['33 CFR 183', '183.630']],
        },
    };
}
