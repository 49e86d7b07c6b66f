import { describe, expect, it } from 'vitest';
import { changedValuation, soundValuation } from '../../../src/checks/valuation/sample.js';
import { correctionsIn, corrected, faultsOf, pointedAt, raisedBy, summary } from '../check-text.js';

const id = 'comparable-too-weak';
const said = (text: string) => summary(id, text);
const spoken = 'cost-approach: "As a ceiling only"  income-approach: "She is not hired"';
const three = (first: string, more = '') => `valuation { effective: 2026-06-15  opinion: 80000 USD  ${spoken}  ${more}\n    comparable A { ${first} }\n    comparable B { sold: 80000 USD  sold-on: 2026-03 }\n    comparable C { sold: 80000 USD  sold-on: 2026-04 }\n}\n`;
const adjusted = (...amounts: number[]) => three(`sold: 80000 USD  sold-on: 2026-02  ${amounts.map(amount => `adjust "Gear": ${amount} USD`).join('  ')}`);

describe('adjustments', () => {
    it.each([[[12000], []], [[12001], ['warning ']], [[-12000], []], [[-12001], ['warning ']], [[10000, -10000], []], [[10001, -10000], ['warning ']], [[20000, -20000], ['warning ']], [[], []]])('%j of 80 000', (amounts, expected) => {
        expect(said(adjusted(...amounts))).toEqual(expected);
    });
    it('names both limits and whose they are', () => {
        expect(raisedBy(id, adjusted(-24000))[0]?.message).toContain('by 30 % of its price, over the usual limit of 25 % and on balance by 30 % of its price, over the usual limit of 15 %');
    });
    it('goes by the limits of the firm', () => {
        const firm = (text: string) => `yardsticks { gross-adjustment: 40 %  net-adjustment: 40 % }\n${text}`;
        expect(said(firm(adjusted(-24000)))).toEqual([]);
        expect(raisedBy(id, firm(adjusted(-40000)))[0]?.message).toContain('the firm’s limit of 40 %');
    });
    it('says nothing where an amount is missing', () => {
        expect(said(three('sold: 80000 USD  sold-on: 2026-02  adjust "Gear": 20000 USD  adjust "Sails"'))).toEqual([]);
    });
    it('is settled by an explanation, but not by an empty one', () => {
        const text = (explained: string) => three(`sold: 80000 USD  sold-on: 2026-02  adjust "Gear": 20000 USD  explained: "${explained}"`);
        expect(said(text('The only sister vessel sold in two years'))).toEqual([]);
        expect(said(text(' '))).toEqual(['warning ']);
    });
    it('offers a place for it', () => {
        const text = adjusted(20000);
        expect(correctionsIn(id, text)).toEqual(['Add explained: and say why']);
        const offered = corrected(text, id, 'Add explained: and say why');
        expect(faultsOf(offered)).toEqual([]);
        expect(said(offered)).toEqual(['warning ']);
    });
});

describe('age of the sale', () => {
    const sold = (on: string, effective = '2026-06-15') => three(`sold: 80000 USD  sold-on: ${on}`).replace('2026-06-15', effective);
    it.each([['2024-12-15', []], ['2024-12-14', ['warning ']], ['2024-12', []], ['2024-11', ['warning ']], ['2026-06-15', []]])('sold %s', (on, expected) => {
        expect(said(sold(on))).toEqual(expected);
    });
    it('takes the date of issue, or of attendance, where the opinion has none', () => {
        const without = (survey: string, on: string) => `survey "1" { ${survey} }\n${sold(on).replace('effective: 2026-06-15  ', '')}`;
        expect(said(without('issued: 2026-06-15', '2024-12-14'))).toEqual(['warning ']);
        expect(said(without('attended 2026-06-15 ashore "Tern Creek"', '2024-12-14'))).toEqual(['warning ']);
        expect(said(without('', '2010-01'))).toEqual([]);
    });
    it('asks when she was sold', () => {
        expect(said(three('sold: 80000 USD'))).toEqual(['hint ']);
    });
    it('points at the date', () => {
        const text = sold('2024-06');
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['2024-06']);
    });
    it('goes by the limit of the firm', () => {
        expect(said(`yardsticks { sale-age: 2 years }\n${sold('2024-06-15')}`)).toEqual([]);
        expect(said(`yardsticks { sale-age: 2 years }\n${sold('2024-06-14')}`)).toEqual(['warning ']);
    });
});

describe('asking prices', () => {
    it.each(['Asking price against sale', 'Asked, not sold', 'Discount usual here', 'Negotiation'])('adjusted for: %s', reason => {
        expect(said(three(`asking: 84000 USD  adjust "${reason}": -4000 USD`))).toEqual([]);
    });
    it('taken as they stand', () => {
        expect(said(three('asking: 84000 USD'))).toEqual(['warning ']);
        expect(said(three('asking: 90000 USD  sold: 84000 USD  sold-on: 2026-01'))).toEqual([]);
    });
});

describe('the whole', () => {
    it('counts comparables with a price', () => {
        expect(said(changedValuation(['sold: 84000 USD  sold-on: 2026-02  adjust', 'adjust']))).toEqual(['warning ']);
        expect(said(`yardsticks { comparables-least: 2 }\n${changedValuation(['sold: 84000 USD  sold-on: 2026-02  adjust', 'adjust'])}`)).toEqual([]);
    });
    it('leaves a value by cost alone', () => {
        expect(said(`valuation { opinion: 80000 USD  ${spoken} }\n`)).toEqual([]);
        expect(said('valuation { opinion: 80000 USD }\n')).toEqual(['warning ', 'warning ']);
    });
    it('says nothing without an opinion', () => {
        expect(said('valuation { comparable A { sold: 80000 USD  sold-on: 2026-02 } }\n')).toEqual([]);
    });
    it.each([['Cost was a ceiling; no income', 0], ['Costs considered; not chartered', 0], ['Comparison of sales', 1], ['Cost only', 1]])('method: %s', (method, count) => {
        expect(said(changedValuation(['Comparison of sales. Cost was taken as a ceiling; income was left out, for she is not hired.', method]))).toHaveLength(count);
    });
    it('is an error where the report is for a lender', () => {
        const survey = (whom: string) => `survey "1" { requested-for: "${whom}" }\n${changedValuation(['; income was left out, for she is not hired.', '.'])}`;
        expect(said(survey('the lender, Ness Loans'))).toEqual(['error ']);
        expect(said(survey('the buyer'))).toEqual(['warning ']);
    });
    it('is silent on a sound one', () => {
        expect(said(soundValuation)).toEqual([]);
    });
});
