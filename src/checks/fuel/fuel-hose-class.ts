/** Fuel hose without a mark, or of a mark that its place in the fuel system does not allow. */
import { judgeFuelHose, leakLimitM3, type FuelHosePlace, type FuelHoseType } from '../../trade/fuel-hose.js';
import { isKind, nameOf, ofKind, runsThrough, siOf, valueOf, wordOf, type Component, type Run, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { serviceOf } from '../hoses/service.js';
import { fuelOf, type Fuel } from './fuel-system.js';

export const fuelHoseClass = defineCheck({
    id: 'fuel-hose-class',
    group: 'fuel',
    severity: 'error',
    title: 'Fuel hose is not of a kind for its place',
    why: 'In a fire a hose that stood no fire test feeds it; a vapor hose that holds liquid fuel lets it through its wall.',
    needs: ['hose: class or marking, leak-when-cut', 'run or hose: service fuel-feed, fuel-return, fuel-fill or fuel-vent', 'fuel-tank: fuel, or vessel: fuel'],
    computes: 'Gasoline: between pump and carburetor A1 only; from tank to engine A1, or B1 if no more than 5 fl oz (148 mL) run out in 2-1/2 min when it is cut; vent and fill A1 or A2, or B1 or B2 by the same test, and a fault where that figure is not at hand. No mark is a fault. Where the class is not recorded, the letters are read from the marking. Diesel: advice where there is no mark, or where vapor hose (2) carries liquid fuel.',
    sources: [
        { text: 'kinds of hose by place', standard: '33 CFR 183', clause: '183.558', provenance: 'published' },
        { text: 'what the marks A1, A2, B1 and B2 mean, and that each hose is marked', standard: '33 CFR 183', clause: '183.540', provenance: 'published' },
        { text: 'the same marks looked for on diesel', provenance: 'practice' },
    ],
    limits: [
        'The rule binds builders of boats with gasoline engines other than outboards; on a boat in service it is good practice.',
        'It does not name return lines; they are taken as feed lines.',
        'Hose made for something else, as water hose on fuel, is left to hose-wrong-for-service; its age to hose-old.',
        'A B hose whose leak is not recorded is not shown to be allowed, and is reported until its maker’s figure is at hand.',
        'A fuel hose in no run and of no service is judged only where it bears no mark: any place asks for one.',
        'On diesel a fire-tested hose is not asked for.',
        'Pump to carburetor is known only where the run holds a fuel-pump before the hose and no tank after it.',
    ],
    examples: [{
        name: 'unmarked hose on gasoline',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-tank T1
hose FH1 { class: unmarked }
engine E1
run F1 "Fuel feed" { service: fuel-feed }: T1 -> FH1 -> E1
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-tank T1
hose FH1 { class: fuel-a1 }
engine E1
run F1 "Fuel feed" { service: fuel-feed }: T1 -> FH1 -> E1
`,
        correction: 'Record FH1 as fuel-a1',
    }, {
        name: 'B1 hose between pump and carburetor',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-pump FP1
hose FH1 { class: fuel-b1  leak-when-cut: 1 fl-oz }
carburetor C1
run F1 "Pump to carburetor" { service: fuel-feed }: FP1 -> FH1 -> C1
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-pump FP1
hose FH1 { class: fuel-a1 }
carburetor C1
run F1 "Pump to carburetor" { service: fuel-feed }: FP1 -> FH1 -> C1
`,
    }, {
        name: 'fill hose B2 whose leak is not known',
        bad: `vessel "Marram" { fuel: gasoline }
fuel-fill FF1
hose FH1 { class: fuel-b2  clamps: 2 }
fuel-tank T1
run F1 "Fuel fill" { service: fuel-fill }: FF1 -> FH1 -> T1
`,
        fixed: `vessel "Marram" { fuel: gasoline }
fuel-fill FF1
hose FH1 { class: fuel-a2  clamps: 2 }
fuel-tank T1
run F1 "Fuel fill" { service: fuel-fill }: FF1 -> FH1 -> T1
`,
        correction: 'Record FH1 as fuel-a2',
    }],
    silent: [
        { name: 'fill hose A2', text: 'fuel-fill FF1\nhose FH1 { class: fuel-a2  clamps: 2 }\nfuel-tank T1 { fuel: gasoline }\nrun F1 { service: fuel-fill }: FF1 -> FH1 -> T1\n' },
        { name: 'vent hose B2 that leaks little when cut', text: 'fuel-tank T1 { fuel: gasoline }\nhose FH1 { class: fuel-b2  leak-when-cut: 2 fl-oz }\nfuel-vent FV1\nrun F1 { service: fuel-vent }: T1 -> FH1 -> FV1\n' },
        { name: 'B1 from a diesel tank', text: 'fuel-tank T1 { fuel: diesel }\nhose FH1 { class: fuel-b1 }\nengine E1\nrun F1 { service: fuel-feed }: T1 -> FH1 -> E1\n' },
        { name: 'water hose on fuel, which another check reports', text: 'fuel-tank T1 { fuel: gasoline }\nhose FH1 { class: water }\nrun F1 { service: fuel-feed }: T1 -> FH1\n' },
        { name: 'fuel hose whose place is not recorded', text: 'vessel "Marram" { fuel: gasoline }\nhose FH1 { class: fuel-b2 }\n' },
    ],
    run(record, raise) {
        for (const hose of ofKind(record, 'hose')) {
            const problem = placesOf(record, hose).map(place => judge(record, hose, place)).find(found => found !== undefined);
            if (problem) {
                raise(problem);
            }
        }
    },
});

/** Where a hose lies; a fuel hose whose place is not recorded lies in the fuel system all the same. */
type Where = FuelHosePlace | 'fuel-system';

interface Place {
    readonly place: Where;
    readonly run?: Run;
}

const placeOfService: Readonly<Record<string, FuelHosePlace>> = { 'fuel-feed': 'tank-to-engine', 'fuel-return': 'tank-to-engine', 'fuel-fill': 'vent-or-fill', 'fuel-vent': 'vent-or-fill' };

const placeWords: Readonly<Record<Where, string>> = {
    'pump-to-carburetor': 'between the fuel pump and the carburetor', 'tank-to-engine': 'between tank and engine', 'vent-or-fill': 'in the vent or fill of the tank',
    'fuel-system': 'in the fuel system',
};

const allowedWords: Readonly<Record<Where, string>> = {
    'pump-to-carburetor': 'A1 hose alone belongs there', 'tank-to-engine': 'A1 hose belongs there', 'vent-or-fill': 'A1 or A2 hose belongs there', 'fuel-system': 'marked hose belongs there',
};

function placesOf(record: SurveyRecord, hose: Component<'hose'>): readonly Place[] {
    const runs = runsThrough(record, hose);
    if (runs.length === 0) {
        const place = placeOfService[wordOf(hose, 'service') ?? ''] ?? (isKind(record, hose, 'fuel-hose') && classOf(hose) === 'unmarked' ? 'fuel-system' as const : undefined);
        return place ? [{ place }] : [];
    }
    return runs.flatMap(run => {
        const place = placeOfService[serviceOf(run, hose) ?? serviceByParts(record, run) ?? ''];
        return place ? [{ place: place === 'tank-to-engine' && isAfterPump(record, hose, run) ? 'pump-to-carburetor' as const : place, run }] : [];
    });
}

/** Service of a run that does not say it, by the fuel parts in it. */
function serviceByParts(record: SurveyRecord, run: Run): string | undefined {
    const holds = (kind: 'fuel-fill' | 'fuel-vent' | 'fuel-tank' | 'fuel-pump' | 'engine' | 'carburetor') => run.components.some(part => isKind(record, part, kind));
    return holds('fuel-fill') ? 'fuel-fill' : holds('fuel-vent') ? 'fuel-vent' : (holds('fuel-tank') || holds('fuel-pump')) && (holds('engine') || holds('carburetor')) ? 'fuel-feed' : undefined;
}

function isAfterPump(record: SurveyRecord, hose: Component, run: Run): boolean {
    const at = run.components.indexOf(hose);
    return run.components.slice(0, at).some(part => isKind(record, part, 'fuel-pump')) && !run.components.slice(at).some(part => isKind(record, part, 'fuel-tank'));
}

const isType = (word: string): word is FuelHoseType => word === 'a1' || word === 'a2' || word === 'b1' || word === 'b2';

/** Class as recorded, else as the letters of the marking tell it; a marking of "none" is no mark. */
function classOf(hose: Component<'hose'>): string | undefined {
    const marking = valueOf(hose, 'marking')?.prose.text ?? '';
    const [, letters] = /\b([AB][12])\b/.exec(marking) ?? [];
    return wordOf(hose, 'class') ?? (letters ? `fuel-${letters.toLowerCase()}` : /^\W*(none|no mark(ing)?s?|unmarked|not marked)\b/i.test(marking) ? 'unmarked' : undefined);
}

/** What of the hose tells its class. */
const classFact = (hose: Component<'hose'>) => hose.facts.get('class') ?? hose.facts.get('marking');

function judge(record: SurveyRecord, hose: Component<'hose'>, { place, run }: Place): Raised | undefined {
    const cls = classOf(hose);
    const fuel = fuelOf(record, run, hose);
    const type = cls?.replace(/^fuel-/, '') ?? '';
    if (cls === undefined) {
        return hint(hose, `${nameOf(hose)} lies ${placeWords[place]}; record its class, as marked on it, to tell whether it belongs there.`);
    }
    if (cls !== 'unmarked' && !isType(type)) {
        return undefined;
    }
    const fault = faultOf(hose, type, place);
    if (fault && fuel === undefined) {
        return hint(hose, `${nameOf(hose)} ${fault.what}; record the fuel of its tank, or of the vessel, to tell whether that will do.`);
    }
    return fault && (fuel === 'gasoline' || fault.isOnDiesel) ? problem(hose, place, fault, fuel ?? 'gasoline') : undefined;
}

interface Fault {
    readonly what: string;
    readonly seen: string;
    readonly isOnDiesel: boolean;
}

function faultOf(hose: Component<'hose'>, type: string, place: Where): Fault | undefined {
    if (!isType(type) || place === 'fuel-system') {
        return { what: `lies ${placeWords[place]} and bears no mark that tells what it is made for`, seen: `lies ${placeWords[place]}; no mark was found on it`, isOnDiesel: true };
    }
    const verdict = judgeFuelHose(type, place, siOf(hose, 'leak-when-cut'));
    const mark = type.toUpperCase();
    const leak = valueOf(hose, 'leak-when-cut');
    const limit = computedBoth(leakLimitM3, 'volume');
    switch (verdict) {
        case 'suits': return undefined;
        case 'wrong-type': return {
            what: `is marked ${mark} and lies ${placeWords[place]}; ${allowedWords[place]}`, seen: `is marked ${mark} and lies ${placeWords[place]}`,
            isOnDiesel: type === 'a2' || type === 'b2',
        };
        case 'leaks-too-much': return {
            what: `is marked ${mark}, lies ${placeWords[place]} and loses ${leak ? both(leak) : 'more than allowed'} in 2-1/2 minutes when cut, where ${limit} is allowed`,
            seen: `is marked ${mark} and lies ${placeWords[place]}; when cut it loses {${hose.id}.leak-when-cut} in 2-1/2 minutes, where ${limit} is allowed`, isOnDiesel: false,
        };
        case 'leak-not-known': return {
            what: `is marked ${mark} and lies ${placeWords[place]}, where that counts only if no more than ${limit} runs out in 2-1/2 minutes when it is cut, and no such figure is recorded`,
            seen: `is marked ${mark} and lies ${placeWords[place]}, where that is allowed only if no more than ${limit} runs out in 2-1/2 minutes when it is cut; no such figure was at hand`,
            isOnDiesel: false,
        };
    }
}

function hint(hose: Component<'hose'>, message: string): Raised {
    return { components: [hose], at: classFact(hose)?.span ?? hose.idSpan, severity: 'hint', message };
}

function problem(hose: Component<'hose'>, place: Where, { what, seen }: Fault, fuel: Fuel): Raised {
    const proposed = place === 'vent-or-fill' ? 'fuel-a2' : 'fuel-a1';
    const isGasoline = fuel === 'gasoline';
    const because = isGasoline ? 'In a fire such hose may part and feed it, and its wall may let fuel through' : 'Hose that is not made for liquid fuel may soften and let it through its wall';
    const remedy = `hose marked ${place === 'vent-or-fill' ? 'A1 or A2' : place === 'fuel-system' ? 'for its place' : 'A1'}`;
    return {
        components: [hose],
        at: classFact(hose)?.span ?? hose.idSpan,
        severity: isGasoline ? 'error' : 'warning',
        message: `${nameOf(hose)} ${what}${isGasoline ? ' (good practice per 33 CFR 183.558)' : ''}. ${because}; renew it with ${remedy}.`,
        corrections: [{ kind: 'set-fact', title: `Record ${hose.id} as ${proposed}`, component: hose, property: 'class', value: proposed }],
        draft: {
            title: `Fuel hose ${hose.id} is not of a kind for its place`,
            urgency: isGasoline ? 'before-use' : 'in-upkeep',
            seen: `Fuel hose ${hose.id} ${seen}.`,
            because: `${because}.${isGasoline ? ` By good practice per the rule for builders of gasoline boats, ${allowedWords[place]}.` : ''}`,
            recommend: `Renew fuel hose ${hose.id} with ${remedy}.`,
            ...(isGasoline ? { cites: [['33 CFR 183', '183.558'] as const] } : {}),
        },
    };
}
