/** A gas system whose pressure fell in its test of tightness, or a test that proves nothing. */
import { anyValue, flagOf, nameOf, ofKind, siOf, type Component, type Quantity } from '../../record/model.js';
import { judgeTightness, leastTestS } from '../../trade/gas.js';
import { defineCheck, type Draft, type Raised } from '../contract.js';
import { both, computedBoth, listed } from '../fit/wording.js';

export const gasPressureFalls = defineCheck({
    id: 'gas-pressure-falls',
    group: 'gas',
    severity: 'error',
    title: 'Gas pressure falls, or the test proves nothing',
    why: 'Gas that leaks is heavier than air, gathers in the bilge and explodes.',
    needs: ['gas-test: start-pressure, end-pressure, duration', 'gas-test: cylinder-shut, appliances-shut, line-charged'],
    computes: 'Cylinder shut, line charged, appliances shut: any fall is a fault. Advice where it held but was watched for less than 3 min, or where a valve stood otherwise: that is no test.',
    sources: [{ text: 'no fall in three minutes, cylinder and appliances shut', standard: 'ABYC A-1', provenance: 'memory' }],
    limits: [
        'Valve states that are not recorded are taken as a test asks for them.',
        'A pressure that rises, from warmth or a cylinder valve that passes, may hide a leak and counts as held.',
        'Where the two pressures are written in different units, a hundredth is left to conversion.',
        'Where no test is recorded nothing is said.',
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
        { name: 'held for three minutes', text: 'gas-test GT1 { start-pressure: 9.8 bar  end-pressure: 9.8 bar  duration: 3 min  cylinder-shut: yes  appliances-shut: yes  line-charged: yes }\n' },
        { name: 'the same pressure in two units', text: 'gas-test GT1 { start-pressure: 142 psi  end-pressure: 9.75 bar  duration: 4 min }\n' },
        { name: 'end not read', text: 'gas-test GT1 { duration: 4 min }\n' },
    ],
    run(record, raise) {
        for (const test of ofKind(record, 'gas-test')) {
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

function judge(test: Component<'gas-test'>): Raised | undefined {
    const start = anyQuantity(test, 'start-pressure');
    const end = anyQuantity(test, 'end-pressure');
    if (!start || !end) {
        const missing = start ? 'end-pressure' : end ? 'start-pressure' : undefined;
        return missing === undefined ? undefined : hint(test, missing);
    }
    const wrong = states.filter(({ property }) => flagOf(test, property) === false);
    const durationS = siOf(test, 'duration');
    const verdict = judgeTightness({ startPa: start.si, endPa: end.si, inOneUnit: start.figure.unit === end.figure.unit, isSetUp: wrong.length === 0, ...(durationS === undefined ? {} : { durationS }) });
    switch (verdict) {
        case 'held': return undefined;
        case 'duration-not-known': return hint(test, 'duration');
        case 'fell': return fallen(test, start, end);
        case 'too-short': return tooShort(test, durationS ?? 0);
        case 'no-test': return noTest(test, wrong);
    }
}

function anyQuantity(test: Component, property: 'start-pressure' | 'end-pressure'): Quantity | undefined {
    const value = anyValue(test, property);
    return value?.type === 'quantity' ? value : undefined;
}

function hint(test: Component, property: string): Raised {
    return { components: [test], at: test.idSpan, severity: 'hint', message: `Record the ${property} of ${nameOf(test)}, to tell whether the gas system is tight.` };
}

function fallen(test: Component, start: Quantity, end: Quantity): Raised {
    const time = anyValue(test, 'duration');
    const within = time?.type === 'quantity' ? ` in ${time.figure.written}` : '';
    return {
        components: [test],
        at: test.facts.get('end-pressure')?.span ?? test.idSpan,
        message: `${nameOf(test)}: with the cylinder and the appliances shut, the pressure fell from ${both(start)} to ${both(end)}${within}. Gas is leaking, and gathers in the bilge; leave the cylinder shut, trace the leak with soap solution, renew what leaks and test again.`,
        figures: { start: { value: start.si / 1000, unit: 'kPa' }, end: { value: end.si / 1000, unit: 'kPa' } },
        draft: {
            title: 'Gas system leaks: its pressure fell under test',
            urgency: 'at-once',
            seen: `With the cylinder and the appliances shut and the line charged, the pressure fell from {${test.id}.start-pressure} to {${test.id}.end-pressure}${within === '' ? '' : ` in {${test.id}.duration}`}.`,
            because: 'Gas is leaking. It is heavier than air, runs to the lowest part of the hull and may explode.',
            recommend: 'Shut the cylinder and leave it shut. Trace the leak with soap solution, renew what leaks, and test again for 3 min or more.',
            cites: [['ABYC A-1']],
        },
    };
}

function again(test: Component, what: string, seen: string): Draft {
    return {
        title: 'Gas system is not proved tight',
        urgency: 'before-use',
        seen,
        because: `A test in which ${what} does not show whether gas leaks.`,
        recommend: `Before gas is used, repeat test ${test.id}: cylinder shut, line charged, appliances shut, the gauge watched for 3 min or more.`,
        cites: [['ABYC A-1']],
    };
}

function tooShort(test: Component, durationS: number): Raised {
    const least = computedBoth(leastTestS, 'time');
    return {
        components: [test],
        at: test.facts.get('duration')?.span ?? test.idSpan,
        severity: 'warning',
        message: `${nameOf(test)} was watched for ${computedBoth(durationS, 'time')}, and ${least} is the least that proves anything. A slow leak does not show in less; extend the test.`,
        figures: { duration: { value: durationS, unit: 's' }, least: { value: leastTestS, unit: 's' } },
        corrections: [{ kind: 'set-fact', title: `Record that ${test.id} was watched for 3 min`, component: test, property: 'duration', value: '3 min' }],
        draft: again(test, `the gauge is watched for less than ${least}`, `The pressure of the gas system was watched for {${test.id}.duration}, in which it did not fall.`),
    };
}

function noTest(test: Component, wrong: readonly State[]): Raised {
    const what = wrong.length > 0 ? listed(wrong.map(state => state.what)) : 'there was no pressure at the start';
    return {
        components: [test],
        at: test.facts.get(wrong[0]?.property ?? 'start-pressure')?.span ?? test.idSpan,
        severity: 'warning',
        message: `${nameOf(test)} is no test of tightness, for ${what}. Whether gas leaks is not known; test again with cylinder and appliances shut and the line charged, for 3 min or more.`,
        corrections: wrong.map(({ property, record }) => ({ kind: 'set-fact', title: record, component: test, property, value: 'yes' })),
        draft: again(test, what, `The gas system was tried by its gauge, but ${what}.`),
    };
}
