/** Hose of a class or build that its service does not suffer. */
import { isKind, nameOf, ofKind, wordOf, type Component, type Run, type SurveyRecord, runsThrough } from '../../record/model.js';
import { defineCheck, type Correction, type Raised, type Severity, type Urgency } from '../contract.js';
import { floodCritical } from '../lies.js';
import { isRawWater, mayHoldSeaWater, placesOf, serviceOf, serviceTitle } from './service.js';
import { heightOf } from './waterline.js';

export const hoseWrongForService = defineCheck({
    id: 'hose-wrong-for-service',
    group: 'hoses',
    severity: 'error',
    title: 'Hose is not made for its service',
    why: 'Hose that is not made for its service softens, kinks, collapses or burns.',
    needs: ['hose: class, reinforcement', 'run: service', 'below-waterline of the opening the run begins at'],
    computes: 'A fault where a hose of no reinforcement, or of clear or ribbed PVC, lies below the waterline; where a hose in a wet exhaust, on fuel or on gas is of a class for something else. Advice where a hose in the suction of a raw-water pump has no wire.',
    sources: [
        { text: 'hose below the waterline', standard: 'ABYC H-27', provenance: 'memory' },
        { text: 'exhaust hose', standard: 'ABYC P-1', provenance: 'memory' },
        { text: 'fuel hose', standard: 'ABYC H-24', provenance: 'memory' },
    ],
    limits: [
        'A hose that lies in no run is judged by the service recorded of itself, and only for exhaust, fuel and gas.',
        'Fuel hose whose class is not recorded, that bears no mark, or that is of a fuel class its place does not allow is left to fuel-hose-class.',
        'Water hose on a toilet discharge lets smell through and is not judged.',
        'Suction is known only in a run of service raw-water-cooling that leads from the hull to a pump or an engine.',
    ],
    examples: [{
        name: 'clear PVC below the waterline',
        bad: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in }
seacock SV1
hose H1 { class: clear-pvc }
run R1 "Galley sink" { service: sink-drain }: TH1 -> SV1 -> H1
`,
        fixed: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in }
seacock SV1
hose H1 { class: water  reinforcement: textile }
run R1 "Galley sink" { service: sink-drain }: TH1 -> SV1 -> H1
`,
    }, {
        name: 'water hose on fuel',
        bad: `fuel-tank T1
hose FH1 { class: water }
run F1 "Fuel feed" { service: fuel-feed }: T1 -> FH1
`,
        fixed: `fuel-tank T1
hose FH1 { class: fuel-a1 }
run F1 "Fuel feed" { service: fuel-feed }: T1 -> FH1
`,
        correction: 'Record FH1 as fuel-a1',
    }, {
        name: 'water hose in a wet exhaust',
        bad: `hose H1 { class: water  clamps: 2 }
muffler M1
run X1 "Exhaust" { service: exhaust }: M1 -> H1
`,
        fixed: `hose H1 { class: wet-exhaust  clamps: 2 }
muffler M1
run X1 "Exhaust" { service: exhaust }: M1 -> H1
`,
        correction: 'Record H1 as wet-exhaust',
    }],
    silent: [
        { name: 'reinforced water hose below the waterline', text: 'through-hull TH1 { below-waterline: 10 in }\nhose H1 { class: water  reinforcement: wire }\nrun R1 { service: sink-drain }: TH1 -> H1\n' },
        { name: 'clear PVC above the waterline', text: 'through-hull TH1 { above-waterline: 10 in }\nhose H1 { class: clear-pvc }\nrun R1 { service: sink-drain }: TH1 -> H1\n' },
        { name: 'class not recorded in a water run', text: 'through-hull TH1 { below-waterline: 10 in }\nhose H1\nrun R1 { service: sink-drain }: TH1 -> H1\n' },
        { name: 'hose marked for fuel on fuel', text: 'fuel-tank T1\nhose FH1 { class: fuel-b1 }\nrun F1 { service: fuel-vent }: T1 -> FH1\n' },
    ],
    run(record, raise) {
        for (const hose of ofKind(record, 'hose')) {
            for (const run of placesOf(runsThrough(record, hose))) {
                const problem = judge(record, hose, run);
                if (problem) {
                    raise(problem);
                    break;
                }
            }
        }
    },
});

/** Services that ask for hose of a class of their own. */
const classFor: Readonly<Record<string, { readonly suits: (cls: string) => boolean; readonly proposed: string; readonly marked: string; readonly why: string; readonly urgency: Urgency; readonly standard?: string }>> = {
    exhaust: {
        suits: cls => cls === 'wet-exhaust', proposed: 'wet-exhaust', marked: 'wet exhaust hose', why: 'Other hose softens or burns when the cooling water fails, and then floods her and lets gas in',
        urgency: 'before-departure', standard: 'ABYC P-1',
    },
    gas: { suits: cls => cls === 'gas', proposed: 'gas', marked: 'hose marked for gas', why: 'Gas passes through the wall of other hose or hardens it', urgency: 'before-use', standard: 'ABYC A-1' },
    ...Object.fromEntries(['fuel-feed', 'fuel-return', 'fuel-fill', 'fuel-vent'].map(service => [service, {
        suits: (cls: string) => cls.startsWith('fuel-'), proposed: service === 'fuel-feed' || service === 'fuel-return' ? 'fuel-a1' : 'fuel-a2', marked: 'hose marked for fuel',
        why: 'Fuel softens other hose and its vapor passes through the wall', urgency: 'before-use' as const, standard: 'ABYC H-24',
    }])),
};

function judge(record: SurveyRecord, hose: Component<'hose'>, run: Run | undefined): Raised | undefined {
    const cls = wordOf(hose, 'class');
    const reinforcement = wordOf(hose, 'reinforcement');
    const service = serviceOf(run, hose);
    const rule = service === undefined ? undefined : classFor[service];
    if (service !== undefined && rule) {
        if (service.startsWith('fuel-') && (cls === undefined || cls === 'unmarked')) {
            return undefined;
        }
        if (cls === undefined) {
            return {
                components: [hose], at: hose.idSpan, severity: 'hint',
                message: `${nameOf(hose)} ${run ? `lies in a run of service ${service}` : `is for ${serviceTitle(service)}`}; record its class, as marked on it, to tell whether it is made for that.`,
            };
        }
        return rule.suits(cls) ? undefined : problem(hose, {
            property: 'class', what: run ? `is ${classTitle(cls)} in a run of ${serviceTitle(service)}` : `is ${classTitle(cls)} and serves for ${serviceTitle(service)}`, why: rule.why, remedy: `renew it with ${rule.marked}`, severity: 'error',
            urgency: isSwollen(hose) && service === 'exhaust' ? floodCritical(record) : rule.urgency,
            corrections: [{ kind: 'set-fact', title: `Record ${hose.id} as ${rule.proposed}`, component: hose, property: 'class', value: rule.proposed }],
            ...(rule.standard ? { standard: rule.standard } : {}),
        });
    }
    if (run && mayHoldSeaWater(run, hose) && heightOf(record, run) === 'below') {
        const isPvc = cls === 'clear-pvc' || cls === 'ribbed-pvc';
        if (isPvc || reinforcement === 'none') {
            return problem(hose, {
                property: isPvc ? 'class' : 'reinforcement', what: `is ${isPvc ? classTitle(cls) : 'not reinforced'} and lies below the waterline`,
                why: 'It softens, kinks and splits, and then floods her', remedy: 'renew it with reinforced hose marked for the service', severity: 'error',
                urgency: isSwollen(hose) ? floodCritical(record) : 'next-haul-out', standard: 'ABYC H-27',
                corrections: isPvc ? [] : [
                    { kind: 'set-fact', title: `Record ${hose.id} as reinforced with textile`, component: hose, property: 'reinforcement', value: 'textile' },
                    { kind: 'set-fact', title: `Record ${hose.id} as reinforced with wire`, component: hose, property: 'reinforcement', value: 'wire' },
                ],
            });
        }
        if (cls === 'unmarked' && reinforcement === undefined) {
            return {
                components: [hose], at: hose.facts.get('class')?.span ?? hose.idSpan, severity: 'hint',
                message: `${nameOf(hose)} is unmarked and lies below the waterline; record its reinforcement to tell whether it is fit to.`,
            };
        }
    }
    if (run && isRawWater(service) && isSuction(record, hose, run) && (reinforcement === 'textile' || reinforcement === 'none')) {
        return problem(hose, {
            property: 'reinforcement', what: 'has no wire and lies in the suction of the raw-water pump', why: 'It may collapse under suction and starve the engine of water',
            remedy: 'renew it with wire-reinforced hose', severity: 'warning', urgency: 'next-haul-out',
            corrections: [{ kind: 'set-fact', title: `Record ${hose.id} as reinforced with wire`, component: hose, property: 'reinforcement', value: 'wire' }],
        });
    }
    return undefined;
}

function isSwollen(hose: Component): boolean {
    const condition = wordOf(hose, 'condition');
    return condition === 'swollen' || condition === 'soft';
}

/** Between the hull and the first pump or engine of the run. */
function isSuction(record: SurveyRecord, hose: Component, run: Run): boolean {
    const drawing = run.components.findIndex(component => isKind(record, component, 'pump') || isKind(record, component, 'engine'));
    return drawing >= 0 && run.components.indexOf(hose) < drawing;
}

function classTitle(cls: string): string {
    return cls === 'unmarked' ? 'hose without a marking' : `${cls.replace('-pvc', ' PVC').replace(/^fuel-(.*)$/, (_, kind: string) => `fuel hose ${kind.toUpperCase()}`).replaceAll('-', ' ')}${/pvc|fuel/.test(cls) ? '' : ' hose'}`;
}

interface Wrong {
    readonly property: string;
    readonly what: string;
    readonly why: string;
    readonly remedy: string;
    readonly severity: Severity;
    readonly urgency: Urgency;
    readonly corrections: readonly Correction[];
    readonly standard?: string;
}

function problem(hose: Component, { property, what, why, remedy, severity, urgency, corrections, standard }: Wrong): Raised {
    return {
        components: [hose],
        at: hose.facts.get(property)?.span ?? hose.idSpan,
        severity,
        message: `${nameOf(hose)} ${what}. ${why}; ${remedy}.`,
        corrections,
        draft: {
            title: `Hose ${hose.id} is not made for its service`,
            urgency,
            seen: `Hose ${hose.id} ${what}.`,
            because: `${why}.`,
            recommend: `${remedy.replace('renew it', `Renew hose ${hose.id}`)}.`,
            ...(standard ? { cites: [[standard] as const] } : {}),
        },
    };
}
