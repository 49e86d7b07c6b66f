import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'wood-too-wet';
const plank = (facts: string) => `plank PL1 { ${facts} }\n`;
const table = (columns: string, rows: string, facts = '') => `plank PL1 { ${facts} }\nreading M1 "Moisture" on PL1 { measures: wood-moisture  ${columns}\n${rows}\n}\n`;

describe('wood-too-wet', () => {
    it.each([
        ['moisture: 20 %', []], ['moisture: 20.1 %', ['warning PL1']], ['moisture: 28 %  probe: 9 mm', ['warning PL1']], ['moisture: 28.1 %  probe: 5 mm', ['warning PL1']], ['moisture: 28.1 %  probe: 5.1 mm', ['error PL1']],
        ['moisture: 30 %  probe: 1/4 in', ['error PL1']], ['moisture: 30 %', ['warning PL1']], ['moisture: 30 %  immersed: no', ['warning PL1']],
        ['moisture: 45 %  immersed: yes  probe: 1 mm', []], ['moisture: 45 %  immersed: yes  probe: 8 mm', ['error PL1']], ['moisture: 45 %  immersed: yes', ['hint PL1']],
        ['moisture: 28 %  immersed: yes', []], ['moisture: 15 %  probe: 20 mm', []], ['probe: 20 mm', ['hint PL1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, plank(facts))).toEqual(expected);
    });
    it('judges other timber alike', () => {
        expect(summary(id, 'timber T1 "Stem" { moisture: 30 %  probe: 10 mm }\n')).toEqual(['error T1']);
    });
    it('is due before launching in garboards and stem', () => {
        const soft = 'moisture: 30 %  probe: 10 mm';
        expect(urgencies(id, plank(soft))).toEqual(['next-haul-out']);
        expect(urgencies(id, plank(`${soft}  lies-in: elsewhere`))).toEqual(['next-haul-out']);
        expect(urgencies(id, plank(`${soft}  lies-in: garboard`))).toEqual(['before-launch']);
        expect(urgencies(id, `survey "1" pre-purchase { state: afloat }\n${plank(`${soft}  lies-in: stem`)}`)).toEqual(['next-haul-out']);
        expect(urgencies(id, table('columns: moisture, probe', 'row "Garboard, port": 33 %, 9 mm'))).toEqual(['before-launch']);
    });
    it('says where fresh water stands', () => {
        expect(raisedBy(id, plank('moisture: 24 %  fresh-water: yes'))[0]?.message).toContain('fresh water stands on it');
    });
    it('offers to record it as immersed', () => {
        expect(correctionsIn(id, plank('moisture: 24 %'))).toEqual(['Record PL1 as immersed']);
        expect(correctionsIn(id, plank('moisture: 24 %  immersed: no'))).toEqual([]);
        expect(summary(id, corrected(plank('moisture: 40 %'), id, 'Record PL1 as immersed'))).toEqual(['hint PL1']);
    });
    it('judges the rows of a table, those that ask for the same together', () => {
        const text = table('columns: moisture, probe', 'row "Sheer": 23 %, 1 mm\nrow "Strake 2": 24 %, 2 mm\nrow "Strake 3": 12 %, 1 mm\nrow "Strake 9": 34 %, 12 mm');
        expect(summary(id, text)).toEqual(['warning PL1', 'error PL1']);
        expect(raisedBy(id, text)[0]?.message).toContain('Sheer and Strake 2 (M1) are at up to 24 %');
        expect(summary(id, table('columns: moisture, probe, immersed', 'row "Strake 9": 40 %, 1 mm, yes'))).toEqual([]);
        expect(summary(id, table('columns: moisture, probe', 'row "Strake 9": 40 %, 1 mm', 'immersed: yes'))).toEqual([]);
    });
});

describe('where a part lies', () => {
    it.each([['Garboard, port', 'before-launch'], ['Stem', 'before-launch'], ['Sheer plank', 'next-haul-out'], ['System of frames', 'next-haul-out']])('is told by its title: %s', (title, urgency) => {
        expect(raisedBy('wood-too-wet', `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nplank PL1 "${title}" { moisture: 32 %  probe: 9 mm }\n`).map(({ draft }) => draft?.urgency)).toEqual([urgency]);
    });
});
