import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'hollow-area';
const deck = (facts: string) => `deck DK1 "Foredeck" { ${facts} }\n`;
const map = (head: string, rows: string) => `deck DK1\nreading M1 "Sounding" on DK1 { measures: percussion  ${head}\n${rows}\n}\n`;

describe('hollow-area', () => {
    it.each([
        ['panel-area: 2 m2  hollow-area: 0.1 m2', []], ['panel-area: 2 m2  hollow-area: 0.101 m2', ['error DK1']], ['panel-area: 20 ft2  hollow-area: 80 in2, 70 in2', ['error DK1']],
        ['panel-area: 20 ft2  hollow-area: 80 in2, 60 in2', []], ['hollow-area: 0.5 m2', ['hint DK1']], ['panel-area: 2 m2', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, deck(facts))).toEqual(expected);
    });
    it('is more urgent over a quarter and under load', () => {
        expect(urgencies(id, deck('panel-area: 2 m2  hollow-area: 0.5 m2'))).toEqual(['next-haul-out']);
        expect(urgencies(id, deck('panel-area: 2 m2  hollow-area: 0.51 m2'))).toEqual(['before-departure']);
        for (const load of ['mast', 'chainplate', 'engine']) {
            expect(urgencies(id, deck(`panel-area: 2 m2  hollow-area: 0.2 m2  load-point: ${load}`))).toEqual(['before-departure']);
        }
        expect(urgencies(id, deck('panel-area: 2 m2  hollow-area: 0.2 m2  load-point: none'))).toEqual(['next-haul-out']);
        expect(urgencies(id, deck('panel-area: 2 m2  hollow-area: 0.05 m2  load-point: mast'))).toEqual([]);
    });
    it('sums the patches', () => {
        const text = deck('panel-area: 2 m2  hollow-area: 0.1 m2, 0.05 m2, 0.03 m2');
        expect(raisedBy(id, text)[0]?.message).toContain('9 % of its panel');
        expect(corrected(text, id, 'Record the patches as their sum')).toContain('hollow-area: 0.18 m2');
    });
    it('sums the dull and hollow rows of a panel at the head of a map', () => {
        expect(summary(id, map('panel-area: 2 m2', 'row "A": dull, 0.05 m2\nrow "B": hollow, 0.05 m2\nrow "C": clear, 1.9 m2'))).toEqual([]);
        expect(summary(id, map('panel-area: 2 m2', 'row "A": dull, 0.05 m2\nrow "B": hollow, 0.06 m2'))).toEqual(['error DK1']);
        expect(summary(id, map('', 'row "A": dull, 0.05 m2'))).toEqual(['hint DK1']);
        expect(summary(id, map('panel-area: 2 m2', 'row "A": dull'))).toEqual([]);
    });
    it('sums rows with a panel of their own where panel and label agree', () => {
        expect(summary(id, map('', 'row "Foredeck, frame 3": dull, 0.06 m2, 2 m2\nrow "Foredeck, frame 4": dull, 0.06 m2, 2 m2'))).toEqual(['error DK1']);
        expect(summary(id, map('', 'row "Foredeck": dull, 0.06 m2, 2 m2\nrow "Side deck": dull, 0.06 m2, 2 m2'))).toEqual([]);
        expect(summary(id, map('', 'row "Foredeck, frame 3": dull, 0.06 m2, 2 m2\nrow "Foredeck, frame 4": dull, 0.06 m2, 3 m2'))).toEqual([]);
        expect(urgencies(id, map('', 'row "Coachroof": dull, 0.2 m2, 2 m2, chainplate'))).toEqual(['before-departure']);
    });
});

describe('the part that a map is on', () => {
    it('is named, not the table', () => {
        const text = 'deck DK1 "Foredeck"\nreading M1 "Sounding" on DK1 {\n    measures: percussion  panel-area: 4 m2\n    row "P1": dull, 0.15 m2\n    row "P2": hollow, 0.2 m2\n}\n';
        expect(raisedBy('hollow-area', text)[0]?.message).toMatch(/^Foredeck \(DK1\) sounds dull or hollow in 2 patches of .* together, 8\.8 % of its panel/);
    });
});
