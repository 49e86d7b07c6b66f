import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'moisture-contrast';
const deck = (facts: string) => `deck DK1 "Foredeck" { material: cored-grp  ${facts} }\n`;

describe('moisture-contrast', () => {
    it.each([
        ['moisture-reading: 24  dry-reference: 12  sounds: dull', []], ['moisture-reading: 24.1  dry-reference: 12  sounds: dull', ['error DK1']], ['moisture-reading: 25  dry-reference: 12  sounds: hollow', ['error DK1']],
        ['moisture-reading: 25  dry-reference: 12  sounds: clear', ['warning DK1']], ['moisture-reading: 25  dry-reference: 12', ['hint DK1']], ['moisture-reading: 25', ['hint DK1']],
        ['moisture-reading: 90  dry-reference: 90  sounds: dull', []], ['moisture-reading: 25  dry-reference: 12  sounds: dull  meter-behind: tank', []],
        ['moisture-reading: 25  dry-reference: 12  sounds: dull  meter-behind: metal', []], ['moisture-reading: 25  dry-reference: 12  sounds: dull  meter-behind: wet-locker', []],
        ['moisture-reading: 25  dry-reference: 12  sounds: dull  meter-behind: unknown', ['error DK1']], ['dry-reference: 12', []], ['moisture-reading: 25  dry-reference: 0  sounds: dull', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, deck(facts))).toEqual(expected);
    });
    it('judges by the firm’s ratio', () => {
        expect(summary(id, `yardsticks "Firm" { moisture-ratio: 3 }\n${deck('moisture-reading: 30  dry-reference: 12  sounds: dull')}`)).toEqual([]);
        expect(raisedBy(id, `yardsticks "Firm" { moisture-ratio: 1.5 }\n${deck('moisture-reading: 20  dry-reference: 12  sounds: dull')}`)[0]?.message).toContain('the firm’s limit of 1.5 times');
    });
    it('says to look behind where that is not recorded', () => {
        expect(raisedBy(id, deck('moisture-reading: 25  dry-reference: 12  sounds: dull'))[0]?.draft?.recommend).toContain('Look first for a tank');
        expect(raisedBy(id, deck('moisture-reading: 25  dry-reference: 12  sounds: dull  meter-behind: nothing'))[0]?.draft?.recommend).not.toContain('Look first');
    });
    it('does not judge wood, metal or planks', () => {
        for (const material of ['oak', 'mild-steel', 'plywood']) {
            expect(summary(id, `hull-shell H1 { material: ${material}  moisture-reading: 40  dry-reference: 12  sounds: dull }\n`)).toEqual([]);
        }
        expect(summary(id, 'plank PL1\nreading M1 "M" on PL1 { measures: moisture  reference: 12\nrow "A": 40\n}\n')).toEqual([]);
    });
});

const hull = 'hull-shell H1 "Hull shell" { material: grp }\n';
const grid = (head: string, rows: string) => `${hull}reading M1 "Moisture" on H1 { measures: moisture  ${head}\n${rows}\n}\n`;
const map = (rows: string) => `reading M2 "Sounding" on H1 { measures: percussion  panel-area: 50 m2\n${rows}\n}\n`;

describe('moisture-contrast, by a grid and a map', () => {
    it('matches rows by their labels on the same component', () => {
        const wet = grid('reference: 12', 'row "Port bottom": 14, 27, 13\nrow "Starboard bottom": 14, 13, 13');
        expect(summary(id, wet)).toEqual(['hint H1']);
        expect(summary(id, wet + map('row "Port  bottom": dull, 0.1 m2'))).toEqual(['error H1']);
        expect(summary(id, wet + map('row "port bottom": clear, 1 m2'))).toEqual(['warning H1']);
        expect(summary(id, wet + map('row "Starboard bottom": dull, 0.1 m2'))).toEqual(['hint H1']);
        expect(summary(id, `${wet}deck DK1\nreading M2 "S" on DK1 { measures: percussion\nrow "Port bottom": dull\n}\n`)).toEqual(['hint H1']);
    });
    it('takes the worst of several sounds', () => {
        expect(summary(id, grid('reference: 12', 'row "A": 27') + map('row "A": clear, 1 m2\nrow "A": hollow, 0.1 m2'))).toEqual(['error H1']);
    });
    it('reports rows of a table together, faults first, and the highest reading of each', () => {
        const [problem, ...others] = raisedBy(id, grid('reference: 10', 'row "A": 15, 25\nrow "B": 30, 12\nrow "C": 20, 19') + map('row "A": clear, 1 m2\nrow "B": dull, 0.1 m2\nrow "C": dull, 0.1 m2'));
        expect(others).toEqual([]);
        expect(problem?.message).toMatch(/B reads 3 times its dry reference and sounds dull; A reads 2\.5 times its dry reference and sounds clear/);
        expect(problem?.message).not.toContain('C reads');
        expect(problem?.draft?.urgency).toBe('next-haul-out');
    });
    it('proposes to watch what sounds clear', () => {
        expect(urgencies(id, grid('reference: 10', 'row "A": 25') + map('row "A": clear, 1 m2'))).toEqual(['keep-watch']);
    });
    it.each([['hours-since-lift: 23 h', true], ['hours-since-lift: 24 h', false], ['hours-since-lift: 48 h  hours-since-wash: 2 h', true], ['', false]])('prints readings as early: %s %s', (head, isEarly) => {
        const [problem] = raisedBy(id, grid(`reference: 10  ${head}`, 'row "A": 25') + map('row "A": dull, 0.1 m2'));
        expect(problem?.message.includes('are early')).toBe(isEarly);
        expect(problem?.draft?.seen.includes('are early')).toBe(isEarly);
    });
    it('leaves out what stands before a tank, metal or a wet locker', () => {
        const dull = map('row "A": dull, 0.1 m2');
        expect(summary(id, grid('reference: 10  behind: tank', 'row "A": 25') + dull)).toEqual([]);
        expect(summary(id, grid('reference: 10', 'row "A": 25, metal') + dull)).toEqual([]);
        expect(summary(id, grid('reference: 10', 'row "A": 25, nothing') + dull)).toEqual(['error H1']);
    });
    it('asks for a reference, and offers the topsides', () => {
        const text = grid('scale: "0 to 100"', 'row "Port bottom": 25\nrow "Port topsides": 12, 11');
        expect(summary(id, text)).toEqual(['hint H1']);
        expect(correctionsIn(id, text)).toEqual(['Take Port topsides as the dry reference (12)']);
        expect(corrected(text, id, 'Take Port topsides as the dry reference (12)')).toContain('measures: moisture  reference: 12');
        expect(correctionsIn(id, grid('', 'row "A": 25\nrow "B": 14'))).toEqual(['Take B as the dry reference (14)']);
    });
});

describe('percent of laminate', () => {
    it.each([
        ['material: grp  moisture: "32 %"', ['error H1']], ['material: grp  moisture: "about 20 percent"', ['error H1']], ['material: grp  moisture: "32"', []], ['material: grp  moisture: "10 to 15 on the scale"', []],
        ['material: oak  moisture: "32 %"', []], ['moisture: "32 %"', ['hint H1']], ['material: carbon-fiber  moisture: "12%"', ['error H1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, `hull-shell H1 { ${facts} }\n`)).toEqual(expected);
    });
    it('goes by the material of the vessel', () => {
        expect(summary(id, 'vessel "M" { hull-material: grp }\nhull-shell H1 { moisture: "32 %" }\n')).toEqual(['error H1']);
        expect(summary(id, 'vessel "M" { hull-material: grp  deck-material: teak }\ndeck DK1 { moisture: "32 %" }\n')).toEqual([]);
    });
    it('is told of a table and struck row by row', () => {
        const text = grid('reference: 12', 'row "A": 14 %, 15 %\nrow "B": 13, 14');
        expect(summary(id, text)).toEqual(['error H1']);
        const struck = corrected(text, id, 'Strike the percent signs of A');
        expect(struck).toContain('row "A": 14, 15');
        expect(summary(id, struck)).toEqual([]);
        expect(summary(id, grid('reference: 12  scale: "percent"', 'row "A": 14, 15'))).toEqual(['error H1']);
        expect(summary(id, grid('reference: 12  scale: "Comparative, never percent"', 'row "A": 14, 15'))).toEqual([]);
    });
    it('still compares readings in percent', () => {
        expect(summary(id, grid('reference: 12', 'row "A": 30 %') + map('row "A": dull, 0.1 m2'))).toEqual(['error H1', 'error H1']);
    });
});

describe('percent in words', () => {
    it.each([
        ['Moisture readings of 18% to 32% were found.', 1], ['Moisture was read at 32 percent beside the skeg.', 1], ['Moisture readings of 18 to 32 on the scale of the meter.', 0],
        ['Moisture of the plywood bulkhead 18 %.', 0], ['Moisture was read over 80 % of the bottom.', 0], ['The tanks were at 50 %.', 0], ['The relative scale of moisture is 0 to 100 %.', 0],
    ])('%s: %i', (note, count) => {
        expect(raisedBy('moisture-contrast', `hull-shell HULL1 { material: grp\n    note "${note}"\n}\n`)).toHaveLength(count);
        expect(raisedBy('moisture-contrast', `hull-shell HULL1 { material: oak\n    note "${note}"\n}\n`)).toHaveLength(0);
    });
});
