import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'rudder-play';
const rudder = (facts: string) => `rudder RU1 { ${facts} }\n`;

it.each([
    ['stock-diameter: 50 mm  bearing-clearance: 1 mm', []], ['stock-diameter: 50 mm  bearing-clearance: 1.01 mm', ['error RU1']], ['stock-diameter: 2 in  bearing-clearance: 0.04 in', []],
    ['stock-diameter: 2 in  bearing-clearance: 0.041 in', ['error RU1']], ['tip-play: 6 mm', []], ['tip-play: 6.1 mm', ['error RU1']], ['tip-play: 1/4 in', ['error RU1']],
    ['bearing-clearance: 1 mm', ['hint RU1']], ['stock-diameter: 50 mm', []], ['tip-play: 8 mm  stock-diameter: 50 mm  bearing-clearance: 3 mm', ['error RU1']],
    ['bearing-clearance: 1 mm  tip-play: 9 mm', ['error RU1']],
])('%s', (facts, expected) => {
    expect(summary(id, rudder(facts))).toEqual(expected);
});

it('is due before she departs from double the limit on', () => {
    expect(urgencies(id, rudder('tip-play: 11.9 mm'))).toEqual(['next-haul-out']);
    expect(urgencies(id, rudder('tip-play: 12 mm'))).toEqual(['before-departure']);
    expect(urgencies(id, rudder('stock-diameter: 50 mm  bearing-clearance: 2 mm'))).toEqual(['before-departure']);
    expect(urgencies(id, rudder('stock-diameter: 50 mm  bearing-clearance: 1.9 mm'))).toEqual(['next-haul-out']);
});

it('says both, and whose limits', () => {
    const [problem] = raisedBy(id, rudder('tip-play: 8 mm  stock-diameter: 50 mm  bearing-clearance: 1.5 mm'));
    expect(problem?.message).toContain('at its tip');
    expect(problem?.message).toContain('in its bearing');
    expect(problem?.message).toContain('the usual limit');
    expect(raisedBy(id, `yardsticks { rudder-tip-play: 3 mm }\n${rudder('tip-play: 4 mm')}`)[0]?.message).toContain('the firm’s limit');
});

it('reads a table of play, the widest row of the rudder', () => {
    const table = (rows: string) => `rudder RU1 { stock-diameter: 50 mm }\nstern-bearing SB1 { shaft-diameter: 40 mm }\nreading PL1 "Play" {\n    measures: play\n${rows}\n}\n`;
    expect(summary(id, table('    row "Upper": RU1, 0.6 mm\n    row "Lower": RU1, 1.6 mm'))).toEqual(['error RU1']);
    expect(raisedBy(id, table('    row "Upper": RU1, 0.6 mm\n    row "Lower": RU1, 1.6 mm'))[0]?.draft?.seen).toContain('“Lower” in Play');
    expect(summary(id, table('    row "Upper": SB1, 0.7 mm'))).toEqual([]);
    expect(summary('stern-bearing-worn', table('    row "Aft": SB1, 0.9 mm'))).toEqual(['error SB1']);
    expect(summary('stern-bearing-worn', table('    row "Aft": SB1, 0.4 mm'))).toEqual([]);
});

describe('a table of the stern bearing', () => {
    it('is judged by the shaft in the row', () => {
        const table = (shaft: string) => `stern-bearing SB1\nreading PL1 "Play" on SB1 {\n    measures: play\n    columns: radial, shaft\n    row "Aft": 0.9 mm, ${shaft}\n}\n`;
        expect(summary('stern-bearing-worn', table('40 mm'))).toEqual(['error SB1']);
        expect(summary('stern-bearing-worn', table('70 mm'))).toEqual([]);
    });
    it('is judged by the firm’s limits', () => {
        const text = (share: string, most: string) => `yardsticks { bearing-wear: ${share}  bearing-wear-most: ${most} }\nstern-bearing SB1 { clearance: 1.5 mm  shaft-diameter: 50 mm }\n`;
        expect(summary('stern-bearing-worn', text('4 %', '3 mm'))).toEqual(['warning SB1']);
        expect(summary('stern-bearing-worn', text('4 %', '1.5 mm'))).toEqual(['error SB1']);
        expect(raisedBy('stern-bearing-worn', text('4 %', '1.5 mm'))[0]?.message).toContain('the firm’s limit whatever the shaft');
    });
});
