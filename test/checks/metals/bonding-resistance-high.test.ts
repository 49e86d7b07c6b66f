import { expect, it } from 'vitest';
import { corrected, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'bonding-resistance-high';
const bonding = (facts: string) => `bonding B1 { ${facts} }\n`;

it.each([
    ['resistance: 1 ohm', []], ['resistance: 1.01 ohm', ['error B1']], ['resistance: 0 ohm', []], ['', []], ['broken: yes', ['error B1']], ['broken: no', []],
    ['resistance: 0.5 ohm  broken: yes', ['error B1']], ['resistance: 40 ohm  isolated: yes', []], ['broken: yes  isolated: yes', []], ['resistance: 40 ohm  isolated: no', ['error B1']],
] as const)('%s', (facts, expected) => {
    expect(summary(id, bonding(facts))).toEqual(expected);
});

it.each([['resistance: 4.5 ohm', '4.5 ohm'], ['broken: yes', 'yes']])('%s: points at %s, and is cleared as isolated on purpose', (facts, at) => {
    const text = bonding(facts);
    expect(raisedBy(id, text).map(p => pointedAt(text, p))).toEqual([at]);
    expect(urgencies(id, text)).toEqual(['in-upkeep']);
    expect(summary(id, corrected(text, id, 'Record B1 as isolated on purpose'))).toEqual([]);
});
