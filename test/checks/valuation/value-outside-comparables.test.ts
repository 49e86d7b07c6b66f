import { describe, expect, it } from 'vitest';
import { changedValuation } from '../../../src/checks/valuation/sample.js';
import { correctionsIn, pointedAt, raisedBy, summary } from '../check-text.js';

const id = 'value-outside-comparables';
const said = (text: string) => summary(id, text);
const opinion = (amount: string) => changedValuation(['opinion: 84500 USD', `opinion: ${amount}`]);

describe('against the adjusted prices, 82 410 to 88 975', () => {
    it.each([['82410 USD', 0], ['82160 USD', 0], ['82159 USD', 1], ['88975 USD', 0], ['89225 USD', 0], ['89226 USD', 1]])('%s', (amount, count) => {
        expect(said(opinion(amount))).toHaveLength(count);
    });
    it('points at the opinion and offers the weighted mean', () => {
        const text = opinion('95000 USD');
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['95000 USD']);
        expect(correctionsIn(id, text)).toEqual(['Take the weighted mean, rounded: 84500 USD']);
    });
    it('offers no mean where weights are missing or do not make up 1', () => {
        expect(correctionsIn(id, opinion('95000 USD').replace('weight: 0.3', ''))).toEqual([]);
        expect(correctionsIn(id, opinion('95000 USD').replace('weight: 0.3', 'weight: 0.6'))).toEqual([]);
    });
    it('reckons with sums where no adjusted price is written', () => {
        expect(said(opinion('95000 USD').replace(/adjusted: \d+ USD/g, ''))).toEqual(['error ']);
        expect(said(opinion('84500 USD').replace(/adjusted: \d+ USD/g, ''))).toEqual([]);
    });
    it('says nothing where one cannot be made up, or of one comparable, or of none', () => {
        expect(said(opinion('95000 USD').replace('sold: 84000 USD', '').replace('adjusted: 84180 USD', ''))).toEqual([]);
        expect(said('valuation { opinion: 95000 USD  comparable A { sold: 80000 USD } }\n')).toEqual([]);
        expect(said('valuation { opinion: 95000 USD }\n')).toEqual([]);
    });
});

describe('spread', () => {
    const spread = (low: number, high: number, more = '') => `valuation { ${more}\n    comparable A { sold: ${low} USD }\n    comparable B { sold: ${high} USD }\n}\n`;
    it.each([[85000, 115000, 0], [84999, 115001, 1], [100000, 100000, 0]])('%i and %i', (low, high, count) => {
        expect(said(spread(low, high))).toHaveLength(count);
    });
    it('goes by the limit of the firm, and an explanation', () => {
        expect(said(`yardsticks { comparables-spread: 40 % }\n${spread(82000, 118000)}`)).toEqual([]);
        expect(said(spread(82000, 118000, 'explained: "B was sold with her berth"'))).toEqual([]);
    });
});

describe('ceiling and range', () => {
    it.each([['84500 USD', 0], ['84499 USD', 1], ['84499 EUR', 0]])('a like new vessel for %s', (amount, count) => {
        expect(said(changedValuation(['replacement: 310000 USD', `replacement: ${amount}`]))).toHaveLength(count);
    });
    it.each([['low: 84500 USD  high: 84500 USD', 0], ['low: 84501 USD', 1], ['high: 84499 USD', 1], ['low: 90000 EUR', 0]])('%s', (range, count) => {
        expect(said(changedValuation(['opinion: 84500 USD', `opinion: 84500 USD  ${range}`]))).toHaveLength(count);
    });
    it('a range that excludes its opinion is not explained away', () => {
        expect(said(changedValuation(['opinion: 84500 USD', 'opinion: 84500 USD  low: 85000 USD  explained: "So it is"']))).toEqual(['error ']);
    });
});
