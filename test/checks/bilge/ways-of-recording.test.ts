/** Bilge pumps said to be absent, or dead. */
import { describe, expect, it } from 'vitest';
import { summary, urgencies } from '../check-text.js';

describe('no bilge pump', () => {
    const text = (what: string, rest = '') => `survey "1" pre-purchase { absent "${what}": "none is fitted" }\nvessel "M" { length-overall: 30 ft }\n${rest}`;
    it.each([['Bilge pump', 1], ['Bilge pumps', 1], ['Bilge pumping', 1], ['Second bilge pump', 0], ['Electric bilge pump', 0], ['Bilge pump alarm', 0]] as const)('%s', (what, count) => {
        expect(summary('pumping-below-yardstick', text(what))).toHaveLength(count);
    });
    it('keeps her at her berth', () => {
        expect(urgencies('pumping-below-yardstick', text('Bilge pump'))).toEqual(['before-departure']);
    });
    it('is not believed where one is recorded', () => {
        expect(summary('pumping-below-yardstick', text('Bilge pump', 'bilge-pump P1 { rated-flow: 2000 gph }\n'))).toEqual([]);
    });
});

describe('an automatic pump that does not work', () => {
    const id = 'automatic-pump-fails';
    it.each([
        ['bilge-pump P1 { automatic: yes  works: no }\n', ['error P1']], ['bilge-pump P1 { automatic: no  works: no }\n', []], ['bilge-pump P1 { automatic: yes  works: not-tried }\n', []],
        ['vessel "M" { length-overall: 30 ft }\nbilge-pump P1 { automatic: yes  works: no }\nbilge-pump P2 { rated-flow: 2000 gph }\n', ['error P1']],
    ] as const)('%s', (text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('is left to the other check where no pump works', () => {
        const text = 'vessel "M" { length-overall: 30 ft }\nbilge-pump P1 { automatic: yes  works: no }\n';
        expect([summary(id, text), summary('pumping-below-yardstick', text)]).toEqual([[], ['error P1']]);
    });
});
