import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'cylinder-spread';
const engine = (facts: string) => `main-engine E1 { ${facts} }\n`;

it.each([
    ['compression: 100 psi, 90 psi', []], ['compression: 100 psi, 89.9 psi', ['warning E1']], ['compression: 100 psi, 75 psi', ['warning E1']], ['compression: 100 psi, 74.9 psi', ['error E1']],
    ['compression: 30 bar, 27 bar', []], ['compression: 30 bar, 26.9 bar', ['warning E1']], ['compression: 400 psi, 27.6 bar', []],
    ['compression: 350 psi, 348 psi  least-compression: 348 psi', []], ['compression: 350 psi, 347 psi  least-compression: 348 psi', ['error E1']], ['compression: 300 psi  least-compression: 348 psi', ['error E1']],
    ['compression: 150 psi', []], ['compression: 150 psi, 148 psi  cylinders: 4', ['hint E1']], ['compression: 150 psi, 148 psi  cylinders: 2', []], ['', []],
])('%s', (facts, expected) => {
    expect(summary(id, engine(facts))).toEqual(expected);
});

it('is due before completion for a buyer, else within thirty days', () => {
    const bad = engine('compression: 150 psi, 148 psi, 152 psi, 110 psi');
    expect(urgencies(id, bad)).toEqual(['within-days']);
    expect(urgencies(id, `survey "1" pre-purchase {}\n${bad}`)).toEqual(['before-completion']);
    expect(urgencies(id, engine('compression: 100 psi, 85 psi'))).toEqual(['in-upkeep']);
    expect(raisedBy(id, bad)[0]?.message).toContain('27.6 %');
    expect(raisedBy(id, bad)[0]?.message).toContain('cylinder 4');
});

describe('tables of compression', () => {
    const table = (rows: string, on = ' on E1') => `main-engine E1\nmain-engine E2\nreading CP1 "Compression"${on} {\n    measures: compression\n${rows}\n}\n`;
    it('are of the engine they stand on', () => {
        const rows = '    row "No. 1": 28 bar\n    row "No. 2": 20 bar';
        expect(summary(id, table(rows))).toEqual(['error E1']);
        expect(summary(id, table(rows, ' on E2'))).toEqual(['error E2']);
        expect(summary(id, table(rows, ''))).toEqual([]); // of which engine is not told
        expect(pointedAt(table(rows), raisedBy(id, table(rows))[0] ?? { at: { uri: '', start: 0, end: 0 } })).toBe('20 bar');
    });
    it('are not judged where cold and hot are mixed', () => {
        expect(summary(id, table('    row "No. 1": 28 bar, cold\n    row "No. 2": 20 bar, hot'))).toEqual(['hint E1']);
        expect(summary(id, table('    row "No. 1": 28 bar, hot\n    row "No. 2": 20 bar, hot'))).toEqual(['error E1']);
    });
    it('offer the other unit for one cell', () => {
        const typed = table('    row "No. 1": 28 bar\n    row "No. 2": 27 psi\n    row "No. 3": 28 bar');
        expect(correctionsIn(id, typed)).toEqual(['Read 27 psi as 27 bar']);
        expect(summary(id, corrected(typed, id, 'Read 27 psi as 27 bar'))).toEqual([]);
    });
});

it('offers the other unit only where it then agrees', () => {
    expect(correctionsIn(id, engine('compression: 390 psi, 400 psi, 28 psi'))).toEqual(['Read 28 psi as 28 bar']);
    expect(correctionsIn(id, engine('compression: 390 psi, 400 psi, 20 psi'))).toEqual([]);
    expect(correctionsIn(id, engine('compression: 390 psi, 300 psi, 28 psi'))).toEqual([]);
});
