/** Current that leaks from the boat to the water or the earth of the dock, and insulation that would let it. */
import { insulationTestV, leakageTraceA, leakageTripA, leakageVerdict, leastInsulationOhm } from '../../trade/shore-power.js';
import { flagOf, isKind, nameOf, ofKind, rowsOf, siOf, valueOf, type Component, type Quantity, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { systemVoltageOf } from './wires.js';

/** Voltage from which a circuit is of shore power, or tested as such. */
const shoreV = 50;
const shoreTestV = 250;

export const leakageCurrent = defineCheck({
    id: 'leakage-current',
    group: 'electrical',
    severity: 'error',
    title: 'Current leaks, or insulation is low',
    why: 'AC that returns through the water electrocutes swimmers.',
    needs: ['shore-cord: leakage, or a table of leakage', 'conductor: insulation-resistance, voltage', 'shore-inlet: insulation-resistance, or a table of insulation'],
    computes: 'Leakage by a clamp on the whole cord: over 30 mA a fault, from 10 mA on to be traced. Insulation of a circuit to earth under 1 megohm at 500 V: a fault.',
    sources: [
        { text: 'trip level of 30 mA', standard: 'ABYC E-11', provenance: 'secondary' },
        { text: 'tracing from 10 mA on; 1 megohm at 500 V', provenance: 'practice' },
    ],
    limits: [
        'A clamp tells the leakage of the loads that are on; others may leak too.',
        'Where electronics stayed connected, or the test was made with more than 500 V, a low insulation is asked after and not judged.',
        'Circuits under 50 V are not judged.',
        'Of several readings of one cord or circuit the worst counts.',
    ],
    examples: [{
        name: '45 mA by clamp',
        bad: `vessel "Marram" {}
shore-cord SC1 { leakage: 45 mA  loads-on: "water heater, charger" }
`,
        fixed: `vessel "Marram" {}
shore-cord SC1 { leakage: 4 mA  loads-on: "water heater, charger" }
`,
    }, {
        name: '12 mA in a table',
        bad: `shore-cord SC1
reading M1 "Leakage" {
    measures: leakage
    row "All off": SC1, 2 mA
    row "Water heater on": SC1, 12 mA, "water heater"
}
`,
        fixed: `shore-cord SC1
reading M1 "Leakage" {
    measures: leakage
    row "All off": SC1, 2 mA
    row "Water heater on": SC1, 5 mA, "water heater"
}
`,
    }, {
        name: 'low insulation of a circuit',
        bad: `conductor W1 "Water heater circuit" { voltage: 120 V  insulation-resistance: 0.4 megohm  test-voltage: 500 V }
`,
        fixed: `conductor W1 "Water heater circuit" { voltage: 120 V  insulation-resistance: 20 megohm  test-voltage: 500 V }
`,
    }],
    silent: [
        { name: '9 mA', text: 'shore-cord SC1 { leakage: 9 mA }\n' },
        { name: '1 megohm', text: 'conductor W1 { voltage: 120 V  insulation-resistance: 1 megohm  test-voltage: 500 V }\n' },
        { name: 'circuit of 12 V', text: 'conductor W1 { voltage: 12 V  insulation-resistance: 0.4 megohm }\n' },
        { name: 'nothing measured', text: 'shore-cord SC1\nconductor W1 { voltage: 120 V }\n' },
    ],
    run(record, raise) {
        for (const problem of [...worst(leakages(record), (x, y) => y.value.si - x.value.si).map(leak), ...worst(insulations(record), (x, y) => x.value.si - y.value.si).map(lowInsulation)]) {
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface Measured {
    /** Component concerned; a row may name none. */
    readonly on?: Component;
    readonly label: string;
    readonly value: Quantity;
    readonly at: Span;
    readonly isInTable: boolean;
}

interface Leakage extends Measured {
    readonly loads?: string;
}

interface Insulation extends Measured {
    /** Fact that keeps it from being judged. */
    readonly wants?: string;
}

/** The worst measurement of each component, and all that name none. */
function worst<M extends Measured>(measured: readonly M[], compare: (x: M, y: M) => number): readonly M[] {
    const sorted = [...measured].sort(compare);
    return sorted.filter((one, i) => one.on === undefined || sorted.findIndex(other => other.on === one.on) === i);
}

function leakages(record: SurveyRecord): readonly Leakage[] {
    const ofCords = ofKind(record, 'shore-cord').flatMap((cord): Leakage[] => {
        const value = valueOf(cord, 'leakage');
        const loads = valueOf(cord, 'loads-on')?.prose.text;
        return value ? [{ on: cord, label: cord.id, value, at: cord.facts.get('leakage')?.span ?? cord.idSpan, isInTable: false, ...(loads === undefined ? {} : { loads }) }] : [];
    });
    const ofRows = rowsOf(record, 'leakage').flatMap(({ reading, row }): Leakage[] => {
        const value = valueOf(row, 'current');
        const on = record.components.get(valueOf(row, 'cord')?.id ?? '') ?? (reading.on.length === 1 ? reading.on[0] : undefined);
        const loads = valueOf(row, 'loads')?.prose.text ?? row.label;
        return value ? [{ ...(on ? { on } : {}), label: row.label || reading.id, value, at: row.facts.get('current')?.span ?? row.span, isInTable: true, loads }] : [];
    });
    return [...ofCords, ...ofRows];
}

function leak({ on, label, value, at, loads, isInTable }: Leakage): Raised | undefined {
    const verdict = leakageVerdict(value.si);
    if (verdict === 'none') {
        return undefined;
    }
    const isFault = verdict === 'fault';
    const name = on ? nameOf(on) : label;
    const withLoads = loads ? `, with these on: ${loads}` : '';
    const limit = isFault ? `over the ${computedBoth(leakageTripA, 'current')} at which a leakage breaker trips` : `from ${computedBoth(leakageTraceA, 'current')} on its source is to be traced`;
    return {
        components: on ? [on] : [],
        at,
        severity: isFault ? 'error' : 'warning',
        message: `${both(value)} leaks by the clamp on ${name}${withLoads}, ${limit}. What returns through the water can electrocute a swimmer; ${isFault ? 'unplug her, and ' : ''}switch load after load off until it is found.`,
        figures: { leakage: { value: value.si * 1000, unit: 'mA' }, limit: { value: (isFault ? leakageTripA : leakageTraceA) * 1000, unit: 'mA' } },
        draft: {
            title: 'Current leaks from the shore power',
            ...(isFault ? { urgency: 'at-once' } : { urgency: 'within-days', days: 14 }),
            seen: `A clamp on the whole of the shore cord showed ${on && !isInTable ? `{${on.id}.leakage}` : both(value)}${withLoads}: ${limit}.`,
            because: 'Current that returns through the water or the earth of the dock can electrocute a swimmer and eats metal.',
            recommend: `${isFault ? 'Unplug the shore power and leave it so until the fault is found. ' : ''}Have a marine electrician switch off load after load until the leakage goes, put that load right, and measure again.`,
            cites: [['ABYC E-11', '11.11.1']],
        },
    };
}

function insulations(record: SurveyRecord): readonly Insulation[] {
    const ofParts = [...ofKind(record, 'conductor'), ...ofKind(record, 'shore-inlet')].flatMap((part): Insulation[] => {
        const value = valueOf(part, 'insulation-resistance');
        const wants = isKind(record, part, 'conductor') ? wantsOfWire(part, siOf(part, 'test-voltage')) : wantsOfTest(siOf(part, 'test-voltage'));
        return value && wants !== 'low voltage'
            ? [{ on: part, label: part.id, value, at: part.facts.get('insulation-resistance')?.span ?? part.idSpan, isInTable: false, ...(wants === undefined ? {} : { wants }) }] : [];
    });
    const ofRows = rowsOf(record, 'insulation').flatMap(({ reading, row }): Insulation[] => {
        const value = valueOf(row, 'resistance');
        const on = record.components.get(valueOf(row, 'circuit')?.id ?? '') ?? (reading.on.length === 1 ? reading.on[0] : undefined);
        const testV = siOf(reading, 'test-voltage');
        const wants = flagOf(reading, 'electronics-disconnected') === false ? 'measure it again with the electronics disconnected'
            : on && isKind(record, on, 'conductor') ? wantsOfWire(on, testV) : wantsOfTest(testV);
        return value && wants !== 'low voltage'
            ? [{ ...(on ? { on } : {}), label: row.label || reading.id, value, at: row.facts.get('resistance')?.span ?? row.span, isInTable: true, ...(wants === undefined ? {} : { wants }) }] : [];
    });
    return [...ofParts, ...ofRows];
}

const wantsOfTest = (testV: number | undefined): string | undefined => (testV ?? 0) > insulationTestV ? `measure it again with ${insulationTestV} V` : undefined;

/** A wire is of shore power by its voltage, or by the voltage it was tested with. */
function wantsOfWire(wire: Component<'conductor'>, testV: number | undefined): string | undefined {
    const systemV = systemVoltageOf(wire);
    return systemV !== undefined && systemV < shoreV ? 'low voltage'
        : systemV === undefined && (testV ?? 0) < shoreTestV ? 'record its voltage' : wantsOfTest(testV);
}

function lowInsulation({ on, label, value, at, wants, isInTable }: Insulation): Raised | undefined {
    if (value.si >= leastInsulationOhm * (1 - 1e-9)) {
        return undefined;
    }
    const name = on ? nameOf(on) : label;
    const least = computedBoth(leastInsulationOhm, 'resistance');
    const components = on ? [on] : [];
    if (wants !== undefined) {
        return { components, at, severity: 'hint', message: `The insulation of ${name} reads ${both(value)}, under ${least}; ${wants} to tell whether it is too low.` };
    }
    return {
        components,
        at,
        message: `The insulation of ${name} to earth is ${both(value)}, where ${least} is the least at ${insulationTestV} V. It lets current leak to the water; leave the circuit off until the bad part is found.`,
        figures: { insulation: { value: value.si / 1e6, unit: 'megohm' }, least: { value: leastInsulationOhm / 1e6, unit: 'megohm' } },
        draft: {
            title: `Insulation of ${on?.id ?? label} is low`,
            urgency: 'before-use',
            seen: `The insulation of ${name} to earth measured ${on && !isInTable ? `{${on.id}.insulation-resistance}` : both(value)}.`,
            because: `${least} is the least at ${insulationTestV} V. What is less lets current leak to the water and the gear.`,
            recommend: `Leave ${on?.id ?? label} switched off. Part it load by load, renew what is bad, and measure it again at ${insulationTestV} V.`,
        },
    };
}
