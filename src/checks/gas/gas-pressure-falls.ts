/** A gas system whose pressure fell in its test of tightness, or a test that proves nothing. */
import { anyValue, flagOf, nameOf, ofKind, rowsOf, type Component, type FactSet, type Quantity, type Reading, type Row, type Span, type SurveyRecord } from '../../record/model.js';
import { judgeTightness, leastTestS } from '../../trade/gas.js';
import { defineCheck, type Draft, type Raised } from '../contract.js';
import { both, computedBoth, listed } from '../phrasing.js';

export const gasPressureFalls = defineCheck({
    id: 'gas-pressure-falls',
    group: 'gas',
    severity: 'error',
    title: 'Gas pressure falls, or the test proves nothing',
    why: 'Gas that leaks is heavier than air, gathers in the bilge and explodes.',
    needs: ['gas-test: start-pressure, end-pressure, duration', 'gas-test: cylinder-shut, appliances-shut, line-charged', 'or a table that measures gas-test: start, end, duration'],
    computes: 'Cylinder shut, line charged, appliances shut: any fall is a fault. Advice where it held but was watched for less than 3 min, or where a valve stood otherwise: that is no test.',
    sources: [{ text: 'no fall in three minutes, cylinder and appliances shut', standard: 'ABYC A-1', provenance: 'memory' }],
    limits: [
        'Valve states that are not recorded are taken as a test asks for them.',
        'A pressure that rises, from warmth or a cylinder valve that passes, may hide a leak and counts as held.',
        'Where the two pressures are written in different units, a hundredth is left to conversion.',
        'Where no test is recorded nothing is said. What a table says of the valves, in words, is not read.',
    ],
    examples: [{
        name: 'pressure that falls',
        bad: `vessel "Marram" {}
gas-test GT1 { start-pressure: 142 psi  end-pressure: 128 psi  duration: 3 min }
`,
        fixed: `vessel "Marram" {}
gas-test GT1 { start-pressure: 142 psi  end-pressure: 142 psi  duration: 3 min }
`,
    }, {
        name: 'watched too short',
        bad: `gas-test GT1 { start-pressure: 142 psi  end-pressure: 142 psi  duration: 1 min }
`,
        fixed: `gas-test GT1 { start-pressure: 142 psi  end-pressure: 142 psi  duration: 3 min }
`,
        correction: 'Record that GT1 was watched for 3 min',
    }, {
        name: 'cylinder left open',
        bad: `gas-test GT1 { start-pressure: 142 psi  end-pressure: 142 psi  duration: 5 min  cylinder-shut: no }
`,
        fixed: `gas-test GT1 { start-pressure: 142 psi  end-pressure: 142 psi  duration: 5 min  cylinder-shut: yes }
`,
        correction: 'Record that the cylinder was shut',
    }],
    silent: [
        { name: 'held, in a table', text: 'reading M1 "Gas" { measures: gas-test  columns: start, end, duration  row "System": 142 psi, 142 psi, 3 min }\n' },
        { name: 'held for three minutes', text: 'gas-test GT1 { start-pressure: 9.8 bar  end-pressure: 9.8 bar  duration: 3 min  cylinder-shut: yes  appliances-shut: yes  line-charged: yes }\n' },
        { name: 'the same pressure in two units', text: 'gas-test GT1 { start-pressure: 142 psi  end-pressure: 9.75 bar  duration: 4 min }\n' },
        { name: 'end not read', text: 'gas-test GT1 { duration: 4 min }\n' },
    ],
    run(record, raise) {
        for (const test of testsOf(record)) {
            const problem = judge(test);
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface State {
    readonly property: 'cylinder-shut' | 'appliances-shut' | 'line-charged';
    readonly what: string;
    readonly record: string;
}

const states: readonly State[] = [
    { property: 'cylinder-shut', what: 'the cylinder was open', record: 'Record that the cylinder was shut' },
    { property: 'appliances-shut', what: 'an appliance was open', record: 'Record that the appliances were shut' },
    { property: 'line-charged', what: 'the line was not charged', record: 'Record that the line was charged' },
];

/** A test of tightness, recorded of a gas-test or as a row of a table. */
interface Test {
    readonly name: string;
    /** Named in a recommendation. */
    readonly id: string;
    readonly on: readonly Component[];
    readonly set: FactSet;
    readonly span: Span;
    /** The component, where the test is one: its facts may be set and referred to. */
    readonly component?: Component;
    readonly properties: { readonly start: string; readonly end: string };
    readonly start: Quantity | undefined;
    readonly end: Quantity | undefined;
    readonly duration: Quantity | undefined;
    readonly wrong: readonly State[];
}

function testsOf(record: SurveyRecord): readonly Test[] {
    return [...ofKind(record, 'gas-test').map(ofComponent), ...rowsOf(record, 'gas-test').map(({ reading, row }) => ofRow(reading, row))];
}

function ofComponent(test: Component<'gas-test'>): Test {
    return {
        name: nameOf(test), id: test.id, on: [test], set: test, span: test.idSpan, component: test, properties: { start: 'start-pressure', end: 'end-pressure' },
        start: quantityOf(test, 'start-pressure'), end: quantityOf(test, 'end-pressure'), duration: quantityOf(test, 'duration'),
        wrong: states.filter(({ property }) => flagOf(test, property) === false),
    };
}

function ofRow(reading: Reading, row: Row<'gas-test-row'>): Test {
    return {
        name: `${reading.title ?? 'The table'} (${reading.id}), ${row.label}`, id: reading.id, on: reading.on, set: row, span: row.span, properties: { start: 'start', end: 'end' },
        start: quantityOf(row, 'start'), end: quantityOf(row, 'end'), duration: quantityOf(row, 'duration'), wrong: [],
    };
}

function quantityOf(set: FactSet, property: 'start-pressure' | 'end-pressure' | 'start' | 'end' | 'duration'): Quantity | undefined {
    const value = anyValue(set, property);
    return value?.type === 'quantity' ? value : undefined;
}

function spanOf({ set, span }: Test, property: string): Span {
    return set.facts.get(property)?.span ?? span;
}

/** A figure of the test in drafted prose: by reference where it is a fact of a component. */
function figureOf({ component }: Test, property: string, quantity: Quantity): string {
    return component ? `{${component.id}.${property}}` : both(quantity);
}

function judge(test: Test): Raised | undefined {
    const { start, end, duration, wrong, properties } = test;
    if (!start || !end) {
        const missing = start ? properties.end : end ? properties.start : undefined;
        return missing === undefined ? undefined : hint(test, missing);
    }
    const verdict = judgeTightness({ startPa: start.si, endPa: end.si, inOneUnit: start.figure.unit === end.figure.unit, isSetUp: wrong.length === 0, ...(duration ? { durationS: duration.si } : {}) });
    switch (verdict) {
        case 'held': return undefined;
        case 'duration-not-known': return hint(test, 'duration');
        case 'fell': return fallen(test, start, end);
        case 'too-short': return duration && tooShort(test, duration);
        case 'no-test': return noTest(test);
    }
}

function hint({ on, span, name }: Test, property: string): Raised {
    return { components: on, at: span, severity: 'hint', message: `Record the ${property} of ${name}, to tell whether the gas system is tight.` };
}

function fallen(test: Test, start: Quantity, end: Quantity): Raised {
    const { duration, properties } = test;
    return {
        components: test.on,
        at: spanOf(test, properties.end),
        message: `${test.name}: with the cylinder and the appliances shut, the pressure fell from ${both(start)} to ${both(end)}${duration ? ` in ${duration.figure.written}` : ''}. Gas is leaking, and gathers in the bilge; leave the cylinder shut, trace the leak with soap solution, renew what leaks and test again.`,
        figures: { start: { value: start.si / 1000, unit: 'kPa' }, end: { value: end.si / 1000, unit: 'kPa' } },
        draft: {
            title: 'Gas system leaks: its pressure fell under test',
            urgency: 'at-once',
            seen: `With the cylinder and the appliances shut and the line charged, the pressure fell from ${figureOf(test, properties.start, start)} to ${figureOf(test, properties.end, end)}${duration ? ` in ${figureOf(test, 'duration', duration)}` : ''}.`,
            because: 'Gas is leaking. It is heavier than air, runs to the lowest part of the hull and may explode.',
            recommend: 'Shut the cylinder and leave it shut. Trace the leak with soap solution, renew what leaks, and test again for 3 min or more.',
            cites: [['ABYC A-1']],
        },
    };
}

function again({ id }: Test, what: string, seen: string): Draft {
    return {
        title: 'Gas system is not proved tight',
        urgency: 'before-use',
        seen,
        because: `A test in which ${what} does not show whether gas leaks.`,
        recommend: `Before gas is used, repeat test ${id}: cylinder shut, line charged, appliances shut, the gauge watched for 3 min or more.`,
        cites: [['ABYC A-1']],
    };
}

function tooShort(test: Test, duration: Quantity): Raised {
    const least = computedBoth(leastTestS, 'time');
    return {
        components: test.on,
        at: spanOf(test, 'duration'),
        severity: 'warning',
        message: `${test.name} was watched for ${duration.figure.written}, and ${least} is the least that proves anything. A slow leak does not show in less; extend the test.`,
        figures: { duration: { value: duration.si, unit: 's' }, least: { value: leastTestS, unit: 's' } },
        corrections: test.component ? [{ kind: 'set-fact', title: `Record that ${test.id} was watched for 3 min`, component: test.component, property: 'duration', value: '3 min' }] : [],
        draft: again(test, `the gauge is watched for less than ${least}`, `The pressure of the gas system was watched for ${figureOf(test, 'duration', duration)}, in which it did not fall.`),
    };
}

function noTest(test: Test): Raised {
    const { wrong, component } = test;
    const what = wrong.length > 0 ? listed(wrong.map(state => state.what)) : 'there was no pressure at the start';
    return {
        components: test.on,
        at: spanOf(test, wrong[0]?.property ?? test.properties.start),
        severity: 'warning',
        message: `${test.name} is no test of tightness, for ${what}. Whether gas leaks is not known; test again with cylinder and appliances shut and the line charged, for 3 min or more.`,
        corrections: component ? wrong.map(({ property, record }) => ({ kind: 'set-fact', title: record, component, property, value: 'yes' })) : [],
        draft: again(test, what, `The gas system was tried by its gauge, but ${what}.`),
    };
}
