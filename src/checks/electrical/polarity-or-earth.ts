/** Shore power with its poles reversed, a poor earth, a neutral joined to earth aboard, or a wet outlet without its device. */
import { mostEarthOhm } from '../../trade/shore-power.js';
import { flagOf, nameOf, ofKind, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { isBondedAtTransformer, isDeviceProtected, outletReadings, takesOwnDevice, type Outlet, type OutletReading } from './outlets.js';

export const polarityOrEarth = defineCheck({
    id: 'polarity-or-earth',
    group: 'electrical',
    severity: 'error',
    title: 'Polarity, earth or neutral of the shore power is wrong',
    why: 'Metal that a hand can reach goes live.',
    needs: [
        'outlet: polarity, earth-resistance, wet-place, leakage-protected or trip-current; or a table of polarity', 'shore-inlet: neutral-joined-aboard, voltage',
        'inverter: neutral-joined, passes-shore-power', 'transformer: neutral-bonded',
    ],
    computes: 'A fault: polarity reversed; earth over 1 ohm; neutral joined to earth aboard on shore power (not at an isolation transformer, or at an inverter or generator while it is the source); an outlet in a wet place under 200 V without a device of 5 mA.',
    sources: [
        { text: 'outlets in galley, head, machinery space and in the weather take a device of their own', standard: 'ABYC E-11', provenance: 'secondary' },
        { text: 'device of 5 mA (trips at 4 to 6 mA); neutral and earth joined at the source alone', standard: 'ABYC E-11', provenance: 'memory' },
        { text: 'earth of at most 1 ohm', provenance: 'practice' },
    ],
    limits: [
        'Outlets of 200 V and over are guarded by one breaker of 30 mA by custom: that is for leakage-breaker-missing.',
        'An outlet’s voltage is taken from the shore inlet where it is not recorded; where neither is, it is taken as under 200 V.',
        'An inverter whose neutral is always joined is judged only where shore power passes through it.',
        'Where an isolation transformer joins neutral and earth, a second bond elsewhere is not found.',
    ],
    examples: [{
        name: 'polarity reversed',
        bad: `vessel "Marram" {}
outlet O1 "Galley outlet" { polarity: reversed }
`,
        fixed: `vessel "Marram" {}
outlet O1 "Galley outlet" { polarity: right }
`,
    }, {
        name: 'poor earth in a table',
        bad: `outlet O1
outlet O2
reading M1 "Outlets" {
    measures: polarity
    row "Galley": O1, right, 0.3 ohm
    row "Saloon": O2, right, 4 ohm
}
`,
        fixed: `outlet O1
outlet O2
reading M1 "Outlets" {
    measures: polarity
    row "Galley": O1, right, 0.3 ohm
    row "Saloon": O2, right, 0.4 ohm
}
`,
    }, {
        name: 'neutral joined to earth aboard',
        bad: `shore-inlet SI1 { neutral-joined-aboard: joined  leakage-guarded: yes }
`,
        fixed: `shore-inlet SI1 { neutral-joined-aboard: joined  leakage-guarded: yes }
transformer T1 { neutral-bonded: yes }
`,
        correction: 'Record that the neutral is bonded at an isolation transformer',
    }, {
        name: 'inverter always joined, with shore power through it',
        bad: `shore-inlet SI1 { leakage-guarded: yes }
inverter IN1 { neutral-joined: always  passes-shore-power: yes }
`,
        fixed: `shore-inlet SI1 { leakage-guarded: yes }
inverter IN1 { neutral-joined: on-inverter  passes-shore-power: yes }
`,
        correction: 'Record IN1 as joined only while it is the source',
    }, {
        name: 'head outlet without a device',
        bad: `outlet O1 "Head outlet" { wet-place: yes  leakage-protected: no  voltage: 120 V }
`,
        fixed: `outlet O1 "Head outlet" { wet-place: yes  leakage-protected: yes  voltage: 120 V }
`,
        correction: 'Record O1 as guarded by a device of 5 mA',
    }],
    silent: [
        { name: 'earth of 1 ohm', text: 'outlet O1 { polarity: right  earth-resistance: 1 ohm }\n' },
        { name: 'neutral bonded at an isolation transformer', text: 'shore-inlet SI1 { neutral-joined-aboard: joined }\ntransformer T1 { neutral-bonded: yes }\n' },
        { name: 'inverter joined only while it is the source', text: 'shore-inlet SI1\ninverter IN1 { neutral-joined: on-inverter  passes-shore-power: yes }\n' },
        { name: 'inverter that feeds outlets of its own', text: 'shore-inlet SI1\ninverter IN1 { neutral-joined: always  passes-shore-power: no }\n' },
        { name: 'outlet in a dry place', text: 'outlet O1 { wet-place: no  leakage-protected: no }\n' },
        { name: 'wet place at 230 V', text: 'outlet O1 { wet-place: yes  leakage-protected: no  voltage: 230 V }\n' },
        { name: 'not tried', text: 'outlet O1 { polarity: not-tried  wet-place: yes  leakage-protected: yes }\n' },
    ],
    run(record, raise) {
        for (const reading of outletReadings(record)) {
            if (reading.isReversed) {
                raise(reversed(reading));
            }
            if (reading.earth && reading.earth.si > mostEarthOhm + 1e-9) {
                raise(poorEarth(reading, reading.earth.si));
            }
        }
        for (const outlet of ofKind(record, 'outlet')) {
            if (flagOf(outlet, 'wet-place') === true && takesOwnDevice(record, outlet) && isDeviceProtected(record, outlet) === false) {
                raise(withoutDevice(outlet));
            }
        }
        for (const problem of neutrals(record)) {
            raise(problem);
        }
    },
});

function reversed({ on, label, polarityAt, isInTable }: OutletReading): Raised {
    const name = on ? nameOf(on) : label;
    return {
        components: on ? [on] : [],
        at: polarityAt,
        message: `The polarity of ${name} is reversed: its neutral is live. A switch that is off leaves the load live, and metal with it; have a marine electrician find where the wires are changed over.`,
        draft: {
            title: `Polarity of ${on?.id ?? label} is reversed`,
            urgency: 'at-once',
            seen: `A tester showed the polarity of ${name} as ${on && !isInTable ? `{${on.id}.polarity}` : 'reversed'}.`,
            because: 'With hot and neutral changed over, a switch that is off leaves the load live, and metal that a hand reaches can go live.',
            recommend: `Unplug the shore power. Have a marine electrician find where hot and neutral are changed over, beginning at the dock and the cord, and test ${on?.id ?? label} again.`,
        },
    };
}

function poorEarth({ on, label, earth, earthAt, isInTable }: OutletReading, ohm: number): Raised {
    const name = on ? nameOf(on) : label;
    const most = computedBoth(mostEarthOhm, 'resistance');
    const written = earth ? both(earth) : computedBoth(ohm, 'resistance');
    return {
        components: on ? [on] : [],
        at: earthAt,
        message: `The earth of ${name} measures ${written}, where ${most} is the most. With a fault behind it metal stays live and no breaker trips; have a marine electrician find the poor joint.`,
        figures: { earth: { value: ohm, unit: 'ohm' }, most: { value: mostEarthOhm, unit: 'ohm' } },
        draft: {
            title: `Earth of ${on?.id ?? label} is poor`,
            urgency: 'at-once',
            seen: `The earth of ${name} measured ${on && !isInTable ? `{${on.id}.earth-resistance}` : written}.`,
            because: `${most} is the most. With a fault behind a poor earth metal stays live and no breaker trips.`,
            recommend: `Leave ${on?.id ?? label} unused. Have a marine electrician find the poor joint of the earth wire and measure again.`,
        },
    };
}

function withoutDevice(outlet: Outlet): Raised {
    const fact = outlet.facts.get('leakage-protected');
    return {
        components: [outlet],
        at: fact?.span ?? outlet.idSpan,
        message: `${nameOf(outlet)} is in a wet place, and no leakage device of 5 mA guards it. A wet hand on a faulty appliance takes the current that nothing cuts off; fit such a device.`,
        corrections: [{ kind: 'set-fact', title: `Record ${outlet.id} as guarded by a device of 5 mA`, component: outlet, property: 'leakage-protected', value: 'yes' }],
        draft: {
            title: `Outlet ${outlet.id} in a wet place has no leakage device`,
            urgency: 'within-days',
            days: 14,
            seen: `Outlet ${outlet.id} is in a wet place, and no leakage device of 5 mA guards it.`,
            because: 'Outlets in galley, head, machinery space and in the weather take such a device, by ABYC E-11: a wet hand on a faulty appliance takes current that nothing else cuts off.',
            recommend: `Fit outlet ${outlet.id} with a leakage device of 5 mA, and press its test button with the power on.`,
            cites: [['ABYC E-11']],
        },
    };
}

/** Neutrals joined to earth aboard while shore power feeds her. */
function neutrals(record: SurveyRecord): readonly Raised[] {
    const isBonded = isBondedAtTransformer(record);
    const inlets = ofKind(record, 'shore-inlet');
    const transformers = ofKind(record, 'transformer');
    if (isBonded === true) {
        return [];
    }
    const [unsaid] = transformers.filter(transformer => flagOf(transformer, 'neutral-bonded') === undefined);
    const ofInlets = inlets.filter(inlet => wordOf(inlet, 'neutral-joined-aboard') === 'joined').map(inlet => unsaid
        ? hint(unsaid, `Neutral and earth are joined aboard; record of ${nameOf(unsaid)} whether its neutral is joined to earth there (neutral-bonded), which is right.`)
        : joined(inlet, 'neutral-joined-aboard', transformers[0]));
    const ofInverters = ofKind(record, 'inverter').filter(inverter => wordOf(inverter, 'neutral-joined') === 'always' && !unsaid).flatMap((inverter): Raised[] => {
        const passes = flagOf(inverter, 'passes-shore-power');
        return passes === true ? [joined(inverter, 'neutral-joined', undefined)]
            : passes === undefined && inlets.length > 0 ? [hint(inverter, `The neutral of ${nameOf(inverter)} is always joined to earth; record whether shore power passes through it (passes-shore-power), for then that is wrong.`)] : [];
    });
    return [...ofInlets, ...ofInverters];
}

function hint(component: Component, message: string): Raised {
    return { components: [component], at: component.idSpan, severity: 'hint', message };
}

function joined(component: Component, property: 'neutral-joined-aboard' | 'neutral-joined', transformer: Component | undefined): Raised {
    const isInverter = property === 'neutral-joined';
    const where = isInverter ? `at ${nameOf(component)} also while shore power passes through it` : `aboard while ${nameOf(component)} feeds her`;
    const title = 'Record that the neutral is bonded at an isolation transformer';
    return {
        components: [component],
        at: component.facts.get(property)?.span ?? component.idSpan,
        message: `Neutral and earth are joined ${where}, where they are to be joined at the source alone. Part of the current returns by the earth and the water, and metal goes live; part them aboard.`,
        corrections: isInverter
            ? [{ kind: 'set-fact', title: `Record ${component.id} as joined only while it is the source`, component, property, value: 'on-inverter' }]
            : [transformer ? { kind: 'set-fact', title, component: transformer, property: 'neutral-bonded', value: 'yes' }
                : { kind: 'declare', title, beside: component, componentKind: 'transformer', idStem: 'T', facts: [['neutral-bonded', 'yes']] }],
        draft: {
            title: 'Neutral and earth are joined aboard',
            urgency: 'at-once',
            seen: isInverter ? `The neutral of inverter ${component.id} is joined to earth {${component.id}.neutral-joined}, also while shore power passes through it.` : `Aboard, neutral and earth are {${component.id}.neutral-joined-aboard} while shore inlet ${component.id} feeds her.`,
            because: 'They are to be joined at the source alone. Joined aboard too, part of the current returns by the earth and the water, and metal goes live when a wire fails.',
            recommend: 'Unplug the shore power. Have a marine electrician find the bond, part neutral and earth aboard, and test every outlet again.',
            cites: [['ABYC E-11']],
        },
    };
}
