import { describe, expect, it } from 'vitest';
import { correctionsIn, corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'plate-wasted';
const plate = (facts: string) => `plate P1 { ${facts} }\n`;

describe('plate-wasted', () => {
    it.each([
        ['original-thickness: 10 mm  thickness: 9.01 mm', []], ['original-thickness: 10 mm  thickness: 9 mm', ['warning P1']],
        ['original-thickness: 10 mm  thickness: 8 mm', ['warning P1']], ['original-thickness: 10 mm  thickness: 7.5 mm', ['warning P1']], ['original-thickness: 10 mm  thickness: 7.49 mm', ['error P1']],
        ['original-thickness: 1/4 in  thickness: 0.19 in', ['warning P1']], ['original-thickness: 1/4 in  thickness: 0.18 in', ['error P1']],
        ['thickness: 5 mm', ['hint P1']], ['thickness: 5 mm  least-thickness: 4 mm', []], ['thickness: 3.9 mm  least-thickness: 4 mm', ['error P1']],
        ['original-thickness: 6 mm  thickness: 5.8 mm  least-thickness: 5.9 mm', ['error P1']],
        ['original-thickness: 6 mm  pit-depth: 1.98 mm  pits: lone', []], ['original-thickness: 6 mm  pit-depth: 1.99 mm  pits: lone', ['error P1']], ['original-thickness: 6 mm  pit-depth: 1.99 mm', ['error P1']],
        ['original-thickness: 6 mm  pit-depth: 1.99 mm  pits: grouped', ['hint P1']], ['original-thickness: 6 mm  thickness: 5.7 mm  pit-depth: 1.5 mm  pits: grouped', []],
        ['original-thickness: 6 mm  thickness: 5.7 mm  pit-depth: 2.5 mm  pits: grouped', ['warning P1']], ['original-thickness: 6 mm  thickness: 4 mm  pit-depth: 2.5 mm  pits: grouped', ['error P1']],
        ['pit-depth: 2 mm', ['hint P1']], ['original-thickness: 6 mm  pit-depth: 3 mm  pits: none', []],
        ['original-thickness: 6 mm  thickness: 6.3 mm', []], ['original-thickness: 6 mm  thickness: 6.4 mm', ['hint P1']], ['original-thickness: 3/16 in  thickness: 0.205 in', ['hint P1']],
        ['original-thickness: 5 mm  thickness: 5.7 mm', ['hint P1']], ['original-thickness: 5 mm  thickness: 5.71 mm', ['warning P1']], ['original-thickness: 6 mm  thickness: 6.4 mm  original-basis: thickest-reading', ['warning P1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, plate(facts))).toEqual(expected);
    });
    it('proposes to watch, to plan and to renew', () => {
        expect(urgencies(id, plate('original-thickness: 10 mm  thickness: 8.3 mm'))).toEqual(['keep-watch']);
        expect(urgencies(id, plate('original-thickness: 10 mm  thickness: 8.3 mm  lightly-built: yes'))).toEqual(['next-haul-out']);
        expect(urgencies(id, plate('original-thickness: 10 mm  thickness: 8.6 mm  lightly-built: yes'))).toEqual(['keep-watch']);
        expect(urgencies(id, plate('original-thickness: 10 mm  thickness: 7.9 mm'))).toEqual(['next-haul-out']);
        const renew = plate('original-thickness: 10 mm  thickness: 7 mm');
        expect(urgencies(id, `survey "1" pre-purchase { state: ashore }\n${renew}`)).toEqual(['before-launch']);
        expect(urgencies(id, `survey "1" pre-purchase { state: afloat }\n${renew}`)).toEqual(['next-haul-out']);
    });
    it('names the limit and whose it is', () => {
        expect(raisedBy(id, plate('original-thickness: 10 mm  thickness: 7 mm'))[0]?.message).toContain('30 % of its original thickness against the usual limit of 25 %');
        const firms = `yardsticks "Firm" { plate-watch: 5 % }\n${plate('original-thickness: 10 mm  thickness: 9.4 mm')}`;
        expect(raisedBy(id, firms)[0]?.message).toContain('the firm’s limit of 5 %');
    });
    it('asks to mark an original of unknown source as assumed, and says so when it is', () => {
        const text = plate('original-thickness: 10 mm  thickness: 7 mm');
        expect(correctionsIn(id, text)).toEqual(['Mark the original thickness of P1 as assumed']);
        expect(raisedBy(id, corrected(text, id, 'Mark the original thickness of P1 as assumed'))[0]?.message).toContain('(the original is assumed)');
    });
});

describe('plate-wasted, by a table', () => {
    const table = (head: string, rows: string, on = 'P1') => `plate P1 "Bottom plating" { material: mild-steel }\nreading M1 "Gauging" on ${on} { measures: thickness  ${head}\n${rows}\n}\n`;
    it('averages the readings of a row', () => {
        expect(summary(id, table('', 'row "F1": 6 mm, 4.5 mm, 4.6 mm, 4.4 mm'))).toEqual(['warning P1']);
        expect(summary(id, table('', 'row "F1": 6 mm, 4.5 mm, 4.5 mm, 4.4 mm'))).toEqual(['error P1']);
        expect(summary(id, table('', 'row "F1": 6 mm, 5.6 mm, 5.4 mm, 5.5 mm'))).toEqual([]);
    });
    it('reports the rows of a table together, the worst first', () => {
        const text = table('', 'row "F1": 6 mm, 5.2 mm\nrow "F2": 6 mm, 4 mm\nrow "F3": 6 mm, 5.9 mm');
        expect(summary(id, text)).toEqual(['error P1']);
        expect(raisedBy(id, text)[0]?.message).toMatch(/F2 has lost 33\.3 %.*; F1 has lost 13\.3 %/);
        expect(raisedBy(id, text)[0]?.message).not.toContain('F3');
        expect(raisedBy(id, text)[0]?.draft?.recommend).toBe('Crop out and renew the plating at F2; fit a doubler only where class or insurer accepts one. Gauge the plating at F1 again at the next haul-out, at the same points.');
    });
    it('keeps pits apart', () => {
        expect(summary(id, table('columns: original, pit, reading', 'row "F1": 6 mm, 2.1 mm, 5.8 mm, 5.9 mm'))).toEqual(['error P1']);
        expect(summary(id, table('columns: original, pit, reading', 'row "F1": 6 mm, 1.9 mm, 5.8 mm, 5.9 mm'))).toEqual([]);
    });
    it('takes the original of the plate where a row has none', () => {
        expect(summary(id, 'plate P1 { original-thickness: 6 mm }\nreading M1 "G" on P1 { measures: thickness  columns: reading\nrow "F1": 4 mm, 4.2 mm\n}\n')).toEqual(['error P1']);
        expect(summary(id, table('columns: reading', 'row "F1": 4 mm, 4.2 mm'))).toEqual(['hint P1']);
    });
    it('does not judge a plate twice, by itself and by its table', () => {
        expect(summary(id, 'plate P1 { original-thickness: 6 mm  thickness: 4.4 mm }\nreading M1 "G" on P1 { measures: thickness\nrow "F1": 6 mm, 4.4 mm\n}\n')).toEqual(['error P1']);
    });
    it('sets a table aside whose gauge was off on its block by more than 0.1 mm', () => {
        const rows = 'row "F1": 6 mm, 4 mm';
        expect(raisedBy(id, table('block-original: 5 mm  block-reading: 5.1 mm', rows))[0]?.message).toContain('33.3 %');
        expect(raisedBy(id, table('block-original: 5 mm  block-reading: 5.11 mm', rows))[0]?.message).toContain('0.11 mm');
        expect(raisedBy(id, table('block-original: 5 mm  block-reading: 4.8 mm', rows))[0]?.draft?.title).toBe('Gauging is void');
    });
    it('leaves laminate and planks alone', () => {
        expect(summary(id, 'plank PL1\nreading M1 "T" on PL1 { measures: thickness\nrow "Strake 3": 30 mm, 20 mm\n}\n')).toEqual([]);
        expect(summary(id, 'vessel "M" { hull-material: grp }\nhull-shell H1\nreading M1 "T" on H1 { measures: thickness\nrow "Keel": 20 mm, 12 mm\n}\n')).toEqual([]);
        expect(summary(id, 'vessel "M" { hull-material: mild-steel }\nhull-shell H1\nreading M1 "T" on H1 { measures: thickness\nrow "Keel": 6 mm, 4 mm\n}\n')).toEqual(['error H1']);
    });
    it('offers the mean of one row as the thickness of its plate', () => {
        const text = 'plate P1 { original-thickness: 6 mm  original-basis: plan }\nreading M1 "G" on P1 { measures: thickness  columns: reading\nrow "F1": 5 mm, 5.1 mm, 5.05 mm\n}\n';
        expect(correctionsIn(id, text)).toEqual(['Record the mean of the readings as the thickness of P1']);
        expect(corrected(text, id, 'Record the mean of the readings as the thickness of P1')).toContain('thickness: 5.05 mm');
    });
});
