import { expect, it } from 'vitest';
import { raisedBy, summary } from '../check-text.js';

const id = 'potential-moves-with-switch';
const reading = (facts: string) => `hull-potential HP1 { ${facts} }\n`;

it.each([
    ['potential-dc-on: -650 mV  potential-dc-off: -680 mV', []], ['potential-dc-on: -649 mV  potential-dc-off: -680 mV', ['error HP1']],
    ['potential-dc-on: -720 mV  potential-dc-off: -680 mV', ['error HP1']], ['potential-shore-in: -600 mV  potential-shore-out: -700 mV', []],
    ['potential-shore-in: -599 mV  potential-shore-out: -0.7 V', ['error HP1']], ['potential-dc-on: -600 mV', []], ['potential-shore-out: -600 mV', []],
    ['potential-dc-on: -600 mV  potential-shore-out: -900 mV', []],
    ['potential-dc-on: -600 mV  potential-dc-off: -700 mV  potential-shore-in: -600 mV  potential-shore-out: -750 mV', ['error HP1', 'error HP1']],
] as const)('%s', (facts, expected) => {
    expect(summary(id, reading(facts))).toEqual(expected);
});

it('gives a week for DC, a month for the shore lead, and the change in millivolts', () => {
    const [dc, shore] = raisedBy(id, reading('potential-dc-on: -600 mV  potential-dc-off: -700 mV  potential-shore-in: -600 mV  potential-shore-out: -750 mV'));
    expect([dc?.draft?.urgency, dc?.draft?.days, dc?.figures?.['change']?.value]).toEqual(['within-days', 7, 100]);
    expect([shore?.draft?.urgency, shore?.draft?.days, shore?.figures?.['change']?.value]).toEqual(['within-days', 30, 150]);
    expect(shore?.draft?.seen).toContain('{HP1.potential-shore-in}');
});
