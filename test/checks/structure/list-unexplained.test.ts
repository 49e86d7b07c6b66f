import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'list-unexplained';
const text = (rows: string, head = '', vessel = 'beam: 4 m') => `vessel "M" { ${vessel} }\nreading M1 "Freeboards" { measures: freeboard  ${head}\n${rows}\n}\n`;

// tan 1° × 4 m = 69.8 mm; tan 3° × 4 m = 209.6 mm.
describe('list-unexplained', () => {
    it.each([
        ['69 mm, tanks even', 'row "Amidships": 1069 mm, 1000 mm', 'tanks-even: yes', []], ['70 mm, tanks even', 'row "Amidships": 1070 mm, 1000 mm', 'tanks-even: yes', ['warning']],
        ['70 mm, tanks uneven', 'row "Amidships": 1070 mm, 1000 mm', 'tanks-even: no', []], ['70 mm, tanks not recorded', 'row "Amidships": 1070 mm, 1000 mm', '', ['hint']],
        ['209 mm', 'row "Amidships": 1209 mm, 1000 mm', 'tanks-even: no', []], ['210 mm', 'row "Amidships": 1210 mm, 1000 mm', 'tanks-even: no', ['error']], ['210 mm, tanks not recorded', 'row "Amidships": 1000 mm, 1210 mm', '', ['error']],
        ['8-1/2 in', 'row "Amidships": 48-1/2 in, 40 in', '', ['error']],
    ])('%s', (_, rows, head, expected) => {
        expect(summary(id, text(rows, head)).map(line => line.trim())).toEqual(expected);
    });
    it('tells the side', () => {
        expect(raisedBy(id, text('row "Amidships": 1210 mm, 1000 mm'))[0]?.message).toContain('she lists 3° to starboard');
        expect(raisedBy(id, text('row "Amidships": 1000 mm, 1250 mm'))[0]?.message).toContain('3.6° to port');
        expect(urgencies(id, text('row "Amidships": 1210 mm, 1000 mm'))).toEqual(['before-departure']);
        expect(urgencies(id, text('row "Amidships": 1100 mm, 1000 mm', 'tanks-even: yes'))).toEqual(['note-only']);
    });
    it('uses the width of a row, else the beam amidships', () => {
        expect(summary(id, text('row "Bow": 1100 mm, 1000 mm, 1.5 m', '', ''))).toHaveLength(1);
        expect(summary(id, text('row "Bow": 1300 mm, 1000 mm\nrow "Amidships": 1010 mm, 1000 mm', 'tanks-even: yes'))).toEqual([]);
        expect(raisedBy(id, text('row "Bow": 1100 mm, 1000 mm', '', ''))[0]?.message).toContain('beam');
        expect(summary(id, text('row "Bow": 1000 mm, 1000 mm', '', ''))).toEqual([]);
    });
    it('reads a table of levels', () => {
        const tanks = (port: number, starboard: number) => `water-tank WT1 { side: port }\nwater-tank WT2 { side: starboard }\nreading M2 "Levels" { measures: level\nrow "Port": WT1, ${port} %\nrow "Starboard": WT2, ${starboard} %\n}\n`;
        expect(summary(id, text('row "Amidships": 1100 mm, 1000 mm') + tanks(50, 60)).map(line => line.trim())).toEqual(['warning']);
        expect(summary(id, text('row "Amidships": 1100 mm, 1000 mm') + tanks(50, 61))).toEqual([]);
    });
});
