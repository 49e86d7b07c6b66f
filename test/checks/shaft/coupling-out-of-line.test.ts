import { expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'coupling-out-of-line';
const coupling = (facts: string, state = 'afloat') => `survey "1" condition-and-value { state: ${state} }\ncoupling CO1 { ${facts} }\n`;

it.each([
    ['gap: 0.004 in  diameter: 4 in', []], ['gap: 0.0041 in  diameter: 4 in', ['error CO1']], ['gap: 0.1 mm  diameter: 100 mm', []], ['gap: 0.11 mm  diameter: 100 mm', ['error CO1']],
    ['gap: 4 mil  diameter: 4 in', []], ['gap: 0.006 in  makers-limit: 0.005 in  pattern: flexible', ['error CO1']], ['gap: 0.006 in  diameter: 4 in  pattern: flexible', []],
    ['gap: 0.006 in', ['hint CO1']], ['diameter: 4 in', []], ['gap: 0.006 in  diameter: 4 in  measured: ashore', ['warning CO1']],
])('%s', (facts, expected) => {
    expect(summary(id, coupling(facts))).toEqual(expected);
});

it('is held for advice where it was measured ashore', () => {
    expect(summary(id, coupling('gap: 0.006 in  diameter: 4 in', 'ashore'))).toEqual(['warning CO1']);
    expect(summary(id, coupling('gap: 0.006 in  diameter: 4 in  measured: afloat', 'ashore'))).toEqual(['error CO1']);
    expect(urgencies(id, coupling('gap: 0.006 in  diameter: 4 in', 'ashore'))).toEqual(['before-departure']);
    expect(raisedBy(id, 'coupling CO1 { gap: 0.006 in  diameter: 4 in }\n')[0]?.message).toContain('taken as measured afloat');
});

it('offers thousandths of an inch where millimeters were typed', () => {
    const typed = coupling('gap: 3 mm  diameter: 4 in');
    expect(summary(id, corrected(typed, id, 'Read 3 mm as 3 mil (thousandths of an inch)'))).toEqual([]);
    expect(correctionsIn(id, coupling('gap: 5 mm  diameter: 4 in'))).toEqual([]); // 5 mil is too much as well
    expect(correctionsIn(id, coupling('gap: 0.15 mm  diameter: 4 in'))).toEqual([]);
});
