/** A bore in a pump's run that keeps the pump from its flow. */
import { flowVelocityLimitMs, flowVelocityMs } from '../../trade/flow-velocity.js';
import { hoseFit } from '../../trade/hose-fit.js';
import { isKind, nameOf, siOf, type Component, type Quantity, type Run, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { serviceOf } from '../hoses/service.js';
import { endOf, type Diameter } from './hose-ends.js';
import { both, lengthBoth } from '../phrasing.js';

/** Smallest share of the area of the pump's port that the run may narrow to (practice). */
const leastAreaShare = 0.9;

export const boreLimitsFlow = defineCheck({
    id: 'bore-limits-flow',
    group: 'fit',
    severity: 'warning',
    title: 'A narrow bore limits the pump',
    why: 'A pump that must force its water through a narrow bore never reaches its rating.',
    needs: ['pump: real-flow, flow or rated-flow, or flow of its run; and port', 'bore (or ends) of every part in its run', 'run: service, to know the suction side from the discharge side'],
    computes: 'v = Q ÷ (π/4 × bore²) at the narrowest recorded bore: more than 6 ft/s (1.8 m/s) in suction, 10 ft/s (3.0 m/s) in discharge; or an area there under 0.9 of that of the pump’s port.',
    sources: [
        { text: 'mean velocity from flow and bore', provenance: 'computed' },
        { text: '6 and 10 ft/s, and 0.9 of the port’s area', provenance: 'practice' },
    ],
    limits: [
        'Length, bends and lift are not counted; a run may lose more than its bore shows.',
        'The port is known by its outside diameter: a bore that is a push fit on it is never called narrow.',
        'Only recorded bores are judged; nominal sizes of valves and fittings are not taken for bores.',
        'A rated flow is the pump’s flow with nothing attached; where real-flow is recorded, that is used.',
    ],
    examples: [{
        name: 'three-quarter-inch hose on a pump of 2000 gallons an hour',
        bad: `vessel "Marram" {}
through-hull TH1 { above-waterline: 8 in }
hose H1 { bore: 3/4 in }
bilge-pump BP1 { rated-flow: 2000 gph }
run R1 "Bilge" { service: bilge-discharge }: TH1 -> H1 -> BP1
`,
        fixed: `vessel "Marram" {}
through-hull TH1 { above-waterline: 8 in }
hose H1 { bore: 1-1/2 in }
bilge-pump BP1 { rated-flow: 2000 gph }
run R1 "Bilge" { service: bilge-discharge }: TH1 -> H1 -> BP1
`,
    }],
    silent: [
        { name: 'hose of the pump’s port', text: 'through-hull TH1\nhose H1 { bore: 1-1/2 in }\nbilge-pump BP1 { rated-flow: 2000 gph  port: 1-1/2 in }\nrun R1 { service: bilge-discharge }: TH1 -> H1 -> BP1\n' },
        { name: 'flow of the pump not recorded', text: 'through-hull TH1\nhose H1 { bore: 3/4 in }\nbilge-pump BP1\nrun R1 { service: bilge-discharge }: TH1 -> H1 -> BP1\n' },
        { name: 'narrow nominal size of a valve, its bore not recorded', text: 'through-hull TH1\nvalve SV1 { size: 3/4 in }\nhose H1 { bore: 1-1/2 in }\nbilge-pump BP1 { rated-flow: 2000 gph }\nrun R1 { service: bilge-discharge }: TH1 -> SV1 -> H1 -> BP1\n' },
    ],
    run(record, raise) {
        for (const run of record.runs) {
            for (const pump of run.components) {
                if (isKind(record, pump, 'pump')) {
                    const problem = judge(record, run, pump);
                    if (problem) {
                        raise(problem);
                    }
                }
            }
        }
    },
});

function judge(record: SurveyRecord, run: Run, pump: Component): Raised | undefined {
    const flow = pump.facts.get('real-flow') ?? pump.facts.get('flow') ?? pump.facts.get('rated-flow') ?? run.facts.get('flow');
    const flowValue = flow?.values[0];
    const portM = siOf(pump, 'port');
    const bores = run.components.filter(c => c !== pump).flatMap(component => narrowest(component));
    const least = bores.reduce<Found | undefined>((a, b) => a === undefined || b.diameter.m < a.diameter.m ? b : a, undefined);
    if (!least) {
        return undefined;
    }
    const isSuction = serviceOf(run) !== undefined && serviceOf(run) !== 'bilge-discharge' && run.components.indexOf(least.component) < run.components.indexOf(pump);
    const limitMs = flowVelocityLimitMs(isSuction ? 'suction' : 'discharge');
    const velocityMs = flowValue?.type === 'quantity' ? flowVelocityMs({ flowM3s: flowValue.si, boreM: least.diameter.m }) : undefined;
    const isFast = velocityMs !== undefined && velocityMs > limitMs * (1 + 1e-9);
    const isNarrow = portM !== undefined && least.diameter.m ** 2 < leastAreaShare * portM ** 2 && hoseFit({ boreM: least.diameter.m, spigotM: portM }) !== 'fits';
    if (!isFast && !isNarrow) {
        return undefined;
    }
    const { component, diameter } = least;
    const speed = velocityMs === undefined ? '' : `${(velocityMs / 0.3048).toFixed(1)} ft/s (${velocityMs.toFixed(1)} m/s)`;
    const limit = `${(limitMs / 0.3048).toFixed(0)} ft/s (${limitMs.toFixed(1)} m/s)`;
    const side = isSuction ? 'suction' : 'discharge';
    const share = portM === undefined ? '' : `${Math.round(100 * diameter.m ** 2 / portM ** 2)} % of the area of the pump’s ${lengthBoth(portM)} port`;
    const fast = isFast && flowValue?.type === 'quantity' ? [`at ${both(flowValue)} its water runs at ${speed} there, where ${limit} is the most that is usual in a ${side} line`] : [];
    const why = [...fast, ...(isNarrow ? [`that is ${share}`] : [])].join(', and ');
    return {
        components: [component, pump],
        at: diameter.fact.span,
        message: `${nameOf(component)}, with a bore of ${both(diameter.quantity)}, is the narrowest part of the run of ${nameOf(pump)}: ${why}. The pump never reaches its rating; enlarge the narrowest part.`,
        figures: {
            bore: { value: diameter.m * 1000, unit: 'mm' },
            ...(velocityMs === undefined ? {} : { velocity: { value: velocityMs, unit: 'm/s' }, limit: { value: limitMs, unit: 'm/s' } }),
        },
        ...(flow ? { related: [{ message: `The flow of ${pump.id}`, span: flow.span }] } : {}),
        corrections: [],
        draft: {
            title: `${component.id} limits the flow of ${pump.id}`,
            ...(isKind(record, pump, 'bilge-pump') ? { urgency: 'within-days' as const, days: 30 } : { urgency: 'in-upkeep' as const }),
            seen: `${component.id} is the narrowest part in the run of pump ${pump.id}${diameter.fact.values.length === 1 ? `, with a bore of {${component.id}.${diameter.fact.name}}` : ''}; ${isFast && flow ? `at {${pump.id}.${flow.name}} the water would run there at ${speed}, where ${limit} is usual` : `that is ${share}`}.`,
            because: 'A pump that must force its water through a narrow bore never reaches its rating.',
            recommend: `Enlarge ${component.id} to at least the bore of the rest of the run, and try the pump.`,
        },
    };
}

interface Found {
    readonly component: Component;
    readonly diameter: Diameter;
}

/** The smallest bore recorded of a part: its own, or that of its narrower end. */
function narrowest(component: Component): Found[] {
    const fact = component.facts.get('bore');
    const bore = fact?.values[0];
    const isAdapter = component.kind !== 'hose' && component.facts.has('ends');
    const found: Diameter[] = fact && bore?.type === 'quantity' ? [{ m: bore.si, quantity: bore as Quantity, fact, on: component, index: 0 }] : [];
    if (!isAdapter) {
        found.push(...[endOf(component, 0), endOf(component, 1)].filter(end => end !== undefined));
    }
    const least = found.sort((a, b) => a.m - b.m)[0];
    return least ? [{ component, diameter: least }] : [];
}
