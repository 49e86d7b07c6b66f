import { describe, expect, it } from 'vitest';
import { changedValuation, soundValuation } from '../../../src/checks/valuation/sample.js';
import { valueMentions } from '../../../src/checks/valuation/value-mentions.js';
import { corrected, correctionsIn, pointedAt, raisedBy, summary } from '../check-text.js';

const id = 'value-words-figures-differ';
const said = (text: string) => summary(id, text);
const withText = (property: string, text: string) => changedValuation(['opinion: 84500 USD', `opinion: 84500 USD  ${property}: "${text}"`]);

describe('words', () => {
    it.each([
        ['Eighty-four thousand five hundred US dollars', []], ['eighty four thousand and five hundred dollars', []], ['EIGHTY-FOUR THOUSAND FIVE HUNDRED', []],
        ['Eighty-four thousand five hundred and 00/100 dollars', []], ['Eighty-four thousand five hundred (84,500 USD)', []],
        ['Eighty-four thousand dollars', ['error ']], ['Eighty-four thousand five hundred euros', ['error ']], ['Eighty-four thousand five hundred (85,400 USD)', ['error ']],
        ['84,500 USD', ['hint ']], ['as in the summary', ['hint ']],
    ])('%s', (words, expected) => {
        expect(said(withText('opinion-words', words))).toEqual(expected);
    });
    it('offers words, or the figure', () => {
        const text = withText('opinion-words', 'Eighty-five thousand US dollars');
        expect(correctionsIn(id, text)).toEqual(['Write the words for 84500 USD', 'Change the opinion to 85000 USD']);
        expect(said(corrected(text, id, 'Change the opinion to 85000 USD'))).toEqual([]);
        expect(said(corrected(text, id, 'Write the words for 84500 USD'))).toEqual([]);
    });
});

describe('summary and letter', () => {
    it.each([
        ['Market value 84,500 USD', 0], ['Market value: $84,500', 0], ['Market value 85,400 USD', 1], ['She is worth 85,400 USD.', 1], ['Market value 84,500 EUR', 1],
        ['The market value is 84,500 USD and a like new vessel costs 310,000 USD.', 0], ['Replacement 310,000 USD; repairs 4,000 USD.', 0], ['A sound vessel with no figure', 0],
    ])('%s', (text, count) => {
        expect(said(withText('summary', text))).toHaveLength(count);
        expect(said(withText('letter', text))).toHaveLength(count);
    });
    it('points at the amount', () => {
        const text = withText('letter', 'Her market value is 85,400 USD.');
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['85,400 USD']);
    });
});

describe('prose', () => {
    it.each(['The market value is 84,500 USD', 'An opinion of value of eighty-five thousand dollars', 'She is valued at $85,000', 'Fair market value of the vessel: 85,000 USD'])('names it: %s', text => {
        expect(valueMentions(text)).toHaveLength(1);
    });
    it.each(['The replacement market value is 310,000 USD', 'In my opinion, 5,000 USD would be spent', 'A sister vessel’s market value is 90,000 USD', 'Her electronics were valued at 5,000 USD', 'This lowers the market value by 5,000 USD', 'The former opinion of value was 90,000 USD', 'Market value is for the buyer to judge'])('does not: %s', text => {
        expect(valueMentions(text)).toEqual([]);
    });
    it('is read in findings and notes, but not in comparables', () => {
        const note = 'vessel "Marram" {\n    note "Her market value is 85,400 USD."\n}\n';
        expect(said(`${note}${soundValuation}`)).toEqual(['error ']);
        expect(said(note)).toEqual([]);
        expect(said(changedValuation(['weight: 0.5', 'weight: 0.5  remarks: "Her market value is 85,400 USD."']))).toEqual([]);
    });
    it('may agree with any opinion', () => {
        expect(said('vessel "Marram" {\n    note "The market value is 90,000 USD."\n}\nvaluation "As she lies" { opinion: 84500 USD }\nvaluation "Repaired" { opinion: 90000 USD }\n')).toEqual([]);
    });
});

describe('currency', () => {
    it.each([['replacement: 310000 USD', 'replacement: 310000 EUR', 1], ['opinion: 84500 USD', 'opinion: 84500 USD  low: 80000 CAD', 1], ['adjusted: 84180 USD', 'adjusted: 84180 EUR', 1], ['adjust "Rigging": -2500 USD', 'adjust "Rigging": -2500 EUR', 1]])('%s', (from, to, count) => {
        expect(said(changedValuation([from, to]))).toHaveLength(count);
    });
    it('a price in another currency, adjusted in that of the opinion, is left alone', () => {
        expect(said('valuation { opinion: 84500 USD  comparable A { sold: 78000 EUR  adjusted: 84500 USD } }\n')).toEqual([]);
    });
});
