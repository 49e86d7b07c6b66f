/** A hull potential that moves when a switch is thrown or the shore lead is drawn: stray current. */
import { defineCheck, type Raised } from '../contract.js';
import { potentialReadings, type PotentialName, type PotentialReading } from './potential-readings.js';
import { millivolts } from '../phrasing.js';

const dcLimitV = 0.03;
const shoreLimitV = 0.1;

export const potentialMovesWithSwitch = defineCheck({
    id: 'potential-moves-with-switch',
    group: 'metals',
    severity: 'error',
    title: 'Hull potential moves with a switch',
    why: 'Stray current eats gear in days; a shore earth ties boats together.',
    needs: ['hull potential: potential-dc-on and potential-dc-off, or potential-shore-in and potential-shore-out', 'or a table that measures potential'],
    computes: 'A fault where the reading changes by more than 30 mV with the DC switch, or by more than 100 mV with the shore lead.',
    sources: [{ text: '30 mV and 100 mV', provenance: 'practice' }],
    limits: ['It tells that a current strays, not where.'],
    examples: [{
        name: 'moves with the main switch',
        bad: 'hull-potential HP1 { potential-dc-on: -620 mV  potential-dc-off: -680 mV }\n',
        fixed: 'hull-potential HP1 { potential-dc-on: -675 mV  potential-dc-off: -680 mV }\n',
    }, {
        name: 'a row of a table',
        bad: 'rudder RU1\nreading M1 "Potentials" on RU1 {\n    measures: potential\n    columns: part, dc-on, dc-off\n    row "Rudder": RU1, -620 mV, -680 mV\n}\n',
        fixed: 'rudder RU1\nreading M1 "Potentials" on RU1 {\n    measures: potential\n    columns: part, dc-on, dc-off\n    row "Rudder": RU1, -675 mV, -680 mV\n}\n',
    }],
    silent: [
        { name: 'shore lead within 100 mV', text: 'hull-potential HP1 { potential-shore-in: -700 mV  potential-shore-out: -760 mV }\n' },
        { name: 'a row of a table within 30 mV', text: 'reading M1 "Potentials" {\n    measures: potential\n    columns: dc-on, dc-off\n    row "Shaft": -675 mV, -680 mV\n}\n' },
        { name: 'one reading only', text: 'hull-potential HP1 { potential-dc-on: -620 mV }\n' },
    ],
    run(record, raise) {
        for (const reading of potentialReadings(record)) {
            const on = reading.volts('dc-on');
            const off = reading.volts('dc-off');
            if (on !== undefined && off !== undefined && Math.abs(on - off) > dcLimitV + 1e-9) {
                raise(problem(reading, Math.abs(on - off), dcLimitV, 'when the DC main switch is thrown', 'dc-on', 7));
            }
            const shoreIn = reading.volts('shore-in');
            const shoreOut = reading.volts('shore-out');
            if (shoreIn !== undefined && shoreOut !== undefined && Math.abs(shoreIn - shoreOut) > shoreLimitV + 1e-9) {
                raise(problem(reading, Math.abs(shoreIn - shoreOut), shoreLimitV, 'when the shore lead is drawn', 'shore-in', 30));
            }
        }
    },
});

function problem(reading: PotentialReading, changeV: number, limitV: number, when: string, property: PotentialName, days: number): Raised {
    const isShore = property === 'shore-in';
    return {
        components: reading.components, at: reading.span(property),
        message: `${reading.name} changes by ${millivolts(changeV)} mV ${when}, more than ${millivolts(limitV)} mV: ${isShore ? 'the shore earth ties her to other boats' : 'a current strays through her gear'}. ${isShore ? 'Fit an isolator or a transformer' : 'Trace the circuit, switch by switch'}.`,
        figures: { change: { value: millivolts(changeV), unit: 'mV' }, limit: { value: millivolts(limitV), unit: 'mV' } },
        draft: {
            title: `Hull potential moves ${when}`, urgency: 'within-days', days,
            seen: isShore ? `The potential read ${reading.quoted('shore-in')} with the shore lead in and ${reading.quoted('shore-out')} with it out.` : `The potential read ${reading.quoted('dc-on')} with the DC main switch on and ${reading.quoted('dc-off')} with it off.`,
            because: `A change of ${millivolts(changeV)} mV is consistent with ${isShore ? 'galvanic current through the shore earth' : 'stray current, which eats underwater gear in days'}.`,
            recommend: isShore ? 'Fit a galvanic isolator or an isolation transformer, by a qualified marine electrician.' : 'Have the circuit traced, switch by switch, by a qualified marine electrician.', cites: [['Good practice']],
        },
    };
}
