import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fuse-missing-or-far';

describe(`${id}: distance`, () => {
    it.each([
        ['fuse FU1 { distance: 7 in  source: bus  sheathed-to-fuse: no }', []],
        ['fuse FU1 { distance: 7.1 in  source: bus  sheathed-to-fuse: no }', ['error FU1']],
        ['fuse FU1 { distance: 179 mm  source: switch  sheathed-to-fuse: no }', ['error FU1']],
        ['fuse FU1 { distance: 177 mm  source: switch  sheathed-to-fuse: no }', []],
        ['fuse FU1 { distance: 40 in  source: bus  sheathed-to-fuse: yes }', []],
        ['fuse FU1 { distance: 40.1 in  source: bus  sheathed-to-fuse: yes }', ['error FU1']],
        ['fuse FU1 { distance: 72 in  source: battery  sheathed-to-fuse: no }', []],
        ['fuse FU1 { distance: 72.1 in  source: battery  sheathed-to-fuse: no }', ['error FU1']],
        ['fuse FU1 { distance: 72.1 in }', ['error FU1']],
        ['fuse FU1 { distance: 7 in }', []],
        ['fuse FU1 { distance: 12 in }', ['hint FU1']],
        ['fuse FU1 { distance: 12 in  source: bus }', ['hint FU1']],
        ['fuse FU1 { distance: 12 in  sheathed-to-fuse: no }', ['hint FU1']],
        ['fuse FU1 { distance: 50 in  source: bus }', ['error FU1']],
        ['fuse FU1 { distance: 50 in  sheathed-to-fuse: yes }', ['hint FU1']],
        ['fuse FU1 { distance: 90 in  source: charger }', []],
        ['breaker CB1 { distance: 12 in  source: bus  sheathed-to-breaker: no }', ['error CB1']],
        ['main-breaker MB1 { distance: 9 ft  source: other }', []],
        ['fuse FU1 { rating: 10 A }', []],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it('takes a sheath from the wire, and leaves a cranking wire', () => {
        expect(summary(id, 'conductor W1 { sheathed: yes }\nfuse FU1 { distance: 12 in  source: bus  protects: W1 }\n')).toEqual([]);
        expect(summary(id, 'conductor W1 { sheathed: no }\nfuse FU1 { distance: 12 in  source: bus  protects: W1 }\n')).toEqual(['error FU1 W1']);
        expect(summary(id, 'conductor W1 { purpose: cranking }\nfuse FU1 { distance: 90 in  source: battery  protects: W1 }\n')).toEqual([]);
    });
    it('offers a sheath only where one would do', () => {
        expect(correctionsIn(id, 'breaker CB1 { distance: 12 in  source: bus  sheathed-to-breaker: no }\n')).toEqual(['Record the wire as sheathed to CB1']);
        expect(correctionsIn(id, 'fuse FU1 { distance: 50 in  source: bus  sheathed-to-fuse: no }\n')).toEqual([]);
    });
});

describe(`${id}: none`, () => {
    it.each([
        ['fused: no  purpose: power', ['error W1']], ['fused: no  purpose: cranking', []], ['fused: no  grounded: yes  purpose: power', []], ['fused: no', ['hint W1']], ['fused: yes', []], ['gauge: 10 AWG', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, `conductor W1 { ${facts} }\n`)).toEqual(expected);
    });
    it('believes a fuse that is recorded', () => {
        expect(summary(id, 'conductor W1 { fused: no  purpose: power }\nfuse FU1 { protects: W1  rating: 10 A }\n')).toEqual([]);
    });
    it('is due at once where chafe or gasoline is at hand', () => {
        const due = (facts: string, vessel = '') => urgencies(id, `${vessel}conductor W1 { fused: no  purpose: power  ${facts} }\n`);
        expect(due('')).toEqual(['within-days']);
        expect(due('chafed: yes')).toEqual(['at-once']);
        expect(due('gasoline-space: yes')).toEqual(['at-once']);
        expect(due('in-engine-space: yes', 'vessel "Marram" { fuel: diesel }\n')).toEqual(['within-days']);
        expect(due('in-engine-space: yes', 'vessel "Marram" { fuel: gasoline }\n')).toEqual(['at-once']);
    });
    it('names the rule by its standing', () => {
        expect(raisedBy(id, 'conductor W1 { fused: no  purpose: power }\n')[0]?.message).toContain('good practice per 33 CFR 183.455');
        expect(raisedBy(id, 'vessel "Marram" { fuel: gasoline }\nconductor W1 { fused: no  purpose: power }\n')[0]?.message).toContain('by 33 CFR 183.455');
    });
});
