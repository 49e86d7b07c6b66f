import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const attended = 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\n';

describe('extinguishers-too-few', () => {
    const id = 'extinguishers-too-few';
    const aboard = (length: string, bottles: string, more = '') => `vessel "M" { length-on-deck: ${length}  fuel: diesel ${more} }\n${bottles}\n`;
    it.each([
        ['25.9 ft', 'extinguisher X1 { rating: b-5 }', 0], ['26 ft', 'extinguisher X1 { rating: b-5 }', 1], ['26 ft', 'extinguisher X1 { rating: b-10  quantity: 2 }', 0],
        ['39.9 ft', 'extinguisher X1 { rating: b-20 }', 0], ['40 ft', 'extinguisher X1 { rating: b-20 }', 1], ['40 ft', 'extinguisher X1 { rating: b-20  quantity: 2 }', 0],
        ['40 ft', 'extinguisher X1 { rating: b-5  quantity: 3 }', 0], ['65 ft', 'extinguisher X1 { rating: b-5  quantity: 2 }', 1], ['66 ft', 'extinguisher X1 { rating: b-5 }', 0],
        ['34 ft', 'fixed-extinguisher F1\nextinguisher X1 { rating: b-5 }', 0], ['42 ft', 'fixed-extinguisher F1\nextinguisher X1 { rating: b-5 }', 1], ['8 m', 'extinguisher X1 { rating: b-5 }', 1],
    ])('%s with %s: %i', (length, bottles, count) => {
        expect(raisedBy(id, aboard(length, bottles))).toHaveLength(count);
    });
    it('counts the older markings to model year 2017, and asks for the year', () => {
        const older = 'extinguisher X1 { rating: b-ii }\nextinguisher X2 { rating: b-i }';
        expect(summary(id, aboard('42 ft', older, 'model-year: 2017'))).toEqual([]);
        expect(summary(id, aboard('42 ft', older, 'model-year: 2018'))).toEqual(['error X1 X2']);
        expect(summary(id, aboard('42 ft', older))).toEqual(['hint X1']);
    });
    it('asks for a rating that is not recorded', () => {
        expect(summary(id, aboard('34 ft', 'extinguisher X1 { rating: b-5 }\nextinguisher X2'))).toEqual(['hint X2']);
    });
    it('is put right by adding what is missing', () => {
        expect(summary(id, corrected(aboard('34 ft', 'extinguisher X1 { rating: b-5 }'), id, 'Add a 5-B extinguisher'))).toEqual([]);
    });
});

describe('extinguisher-out-of-date', () => {
    const id = 'extinguisher-out-of-date';
    it.each([
        ['disposable: yes  made: 2013', ['error X1']], ['disposable: yes  made: 2014-01', []], ['disposable: no  made: 2001', []], ['made: 2013', ['hint X1']], ['made: 2020', []],
        ['disposable: yes', []], ['gauge: out-of-range', ['error X1']], ['pin: gone', ['error X1']], ['pin: loose  gauge: out-of-range', ['error X1']], ['gauge: none', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, `${attended}extinguisher X1 { rating: b-5  ${facts} }\n`)).toEqual(expected);
    });
    it('is a matter of upkeep only where the others are enough', () => {
        const aboard = (others: number) => `${attended}vessel "M" { length-on-deck: 34 ft }\nextinguisher X1 { rating: b-5  disposable: yes  made: 2010 }\nextinguisher X2 { rating: b-5  quantity: ${others} }\n`;
        expect(urgencies(id, aboard(2))).toEqual(['in-upkeep']);
        expect(urgencies(id, aboard(1))).toEqual(['before-departure']);
        expect(urgencies(id, `${attended}extinguisher X1 { disposable: yes  made: 2010 }\n`)).toEqual(['before-departure']);
    });
    it('asks when she was attended', () => {
        expect(summary(id, 'extinguisher X1 { disposable: yes  made: 2010 }\n')).toEqual(['hint X1']);
    });
});
