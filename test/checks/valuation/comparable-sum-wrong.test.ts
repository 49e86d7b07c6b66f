import { describe, expect, it } from 'vitest';
import { correctionsIn, pointedAt, raisedBy, summary } from '../check-text.js';

const id = 'comparable-sum-wrong';
const valuation = (...comparables: string[]) => `valuation {\n${comparables.map(comparable => `    comparable ${comparable}\n`).join('')}}\n`;
const said = (text: string) => summary(id, text);

describe('the sum', () => {
    const sum = (adjusted: string) => valuation(`A { sold: 84000 USD  adjust "Time": 1680 USD  adjust "Sails": -2500 USD  adjusted: ${adjusted} }`);
    it.each([['83180 USD', 0], ['83181 USD', 0], ['83179 USD', 0], ['83181.50 USD', 1], ['83178 USD', 1], ['83182 USD', 1]])('adjusted %s', (adjusted, count) => {
        expect(said(sum(adjusted))).toHaveLength(count);
    });
    it('takes a price asked where none was paid', () => {
        expect(said(valuation('A { asking: 80000 USD  adjust "Asked": -4000 USD  adjusted: 76000 USD }'))).toEqual([]);
        expect(said(valuation('A { asking: 80000 USD  adjust "Asked": -4000 USD  adjusted: 77000 USD }'))).toEqual(['error ']);
    });
    it('prefers the price paid', () => {
        expect(said(valuation('A { asking: 90000 USD  sold: 80000 USD  adjusted: 80000 USD }'))).toEqual([]);
    });
    it('takes percent of the price', () => {
        expect(said(valuation('A { sold: 80000 USD  adjust "Time": 2.5 %  adjusted: 82000 USD }'))).toEqual([]);
        expect(said(valuation('A { sold: 80000 USD  adjust "Time": 2.5 %  adjusted: 80000 USD }'))).toEqual(['error ']);
    });
    it('makes no sum across currencies', () => {
        expect(said(valuation('A { sold: 80000 USD  adjust "Time": 2000 EUR  adjusted: 90000 USD }'))).toEqual([]);
        expect(said(valuation('A { sold: 80000 EUR  adjusted: 90000 USD }'))).toEqual([]);
    });
    it('points at the adjusted price, and offers the turned sign that would mend it', () => {
        const text = valuation('A { sold: 84000 USD  adjust "Time": 1680 USD  adjust "Sails": 2500 USD  adjusted: 83180 USD }');
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['83180 USD']);
        expect(correctionsIn(id, text)).toEqual(['Write the sum, 88180 USD', 'Change the sign: -2500 USD']);
    });
    it('asks for the one amount or price that is missing', () => {
        expect(said(valuation('A { sold: 84000 USD  adjust "Time"  adjusted: 85000 USD }'))).toEqual(['hint ']);
        expect(said(valuation('A { adjust "Time": 1000 USD  adjusted: 85000 USD }'))).toEqual(['hint ']);
        expect(said(valuation('A { adjusted: 85000 USD }'))).toEqual([]);
        expect(said(valuation('A'))).toEqual([]);
    });
});

describe('the sign', () => {
    const adjust = (reason: string, amount: string, more = '') => valuation(`A { sold: 80000 USD  ${more}  adjust "${reason}": ${amount} }`);
    it.each([
        ['Inferior sails', '-500 USD'], ['Superior electronics', '500 USD'], ['Older engine', '-2000 USD'], ['Newer rigging', '900 USD'], ['One foot shorter', '-1500 USD'],
        ['Fewer engine hours', '500 USD'], ['More hours', '-500 USD'], ['Better than the subject in her sails', '700 USD'], ['Subject has better sails', '-700 USD'],
    ])('%s by %s is wrong', (reason, amount) => {
        expect(said(adjust(reason, amount))).toEqual(['error ']);
        expect(said(adjust(reason, amount.startsWith('-') ? amount.slice(1) : `-${amount}`))).toEqual([]);
    });
    it.each(['Prices since the sale, which was older', 'Better market', 'She needed better sails', 'Sails not better', 'Older but superior', 'Engine', 'Longer time on offer', 'Better, subject poorly placed to say'])('%s tells nothing', reason => {
        expect(said(adjust(reason, '500 USD'))).toEqual([]);
        expect(said(adjust(reason, '-500 USD'))).toEqual([]);
    });
    it('of nothing is no matter', () => {
        expect(said(adjust('Superior sails', '0 USD'))).toEqual([]);
    });
    it('knows the vessel by her name', () => {
        const marram = (reason: string, amount: string) => `vessel "Marram" {}\n${adjust(reason, amount)}`;
        expect(said(marram('Marram has superior sails', '-500 USD'))).toEqual(['error ']);
        expect(said(marram('Sails superior to Marram', '-500 USD'))).toEqual([]);
    });
    it('is told by facts of both', () => {
        const facts = (vessel: string, comparable: string, reason: string, amount: string) => `vessel "Marram" { ${vessel} }\n${adjust(reason, amount, comparable)}`;
        expect(said(facts('built: 2004', 'built: 2008', 'Age', '2000 USD'))).toEqual(['error ']);
        expect(said(facts('built: 2004', 'built: 2008', 'Age', '-2000 USD'))).toEqual([]);
        expect(said(facts('built: 2004', 'built: 2004', 'Age', '-2000 USD'))).toEqual([]);
        expect(said(facts('length-overall: 40 ft', 'length: 38 ft', 'Size', '-2000 USD'))).toEqual(['error ']);
        expect(said(facts('length-overall: 40 ft', 'length: 12.19 m', 'Size', '-2000 USD'))).toEqual([]);
        expect(said(facts('', 'condition: worse', 'Condition', '-2000 USD'))).toEqual(['error ']);
        expect(said(facts('', 'condition: same', 'Condition', '-2000 USD'))).toEqual([]);
        expect(said(facts('', 'gear: better', 'Sails and electronics', '2000 USD'))).toEqual(['error ']);
        expect(said(`${facts('', 'engine-hours: 900', 'Engine hours', '2000 USD')}main-engine ENG1 { hours: 1900 }\n`)).toEqual(['error ']);
        expect(said(`${facts('', 'engine-hours: 900', 'Engine hours', '-2000 USD')}main-engine ENG1 { hours: 1900 }\n`)).toEqual([]);
    });
    it('keeps silent where words and facts disagree', () => {
        expect(said('vessel "Marram" { built: 2008 }\nvaluation { comparable A { sold: 80000 USD  built: 2004  adjust "Newer by year": 500 USD } }\n')).toEqual([]);
    });
    it('is not doubled by a sum that the turned sign mends', () => {
        expect(said(valuation('A { sold: 80000 USD  adjust "Superior sails": 500 USD  adjusted: 79500 USD }'))).toEqual(['error ']);
        expect(said(valuation('A { sold: 80000 USD  adjust "Superior sails": 500 USD  adjusted: 79000 USD }'))).toEqual(['error ', 'error ']);
    });
    it('points at the figure', () => {
        const text = adjust('Superior sails', '500 USD');
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['500 USD']);
        expect(correctionsIn(id, text)).toEqual(['Change the sign: -500 USD']);
    });
});

describe('the weights', () => {
    const weights = (...values: string[]) => valuation(...values.map((value, index) => `${'ABCD'.charAt(index)} { ${value === '' ? '' : `weight: ${value}`} }`));
    it.each([[['0.5', '0.2', '0.3'], []], [['0.5', '0.2', '0.31'], []], [['0.5', '0.2', '0.29'], []], [['0.5', '0.2', '0.32'], ['error ']], [['0.5', '0.2', '0.28'], ['error ']], [['0.5', '0.5', ''], []], [['0.5', '0.3', ''], ['hint ']], [['0.5', '', ''], []], [['0.8', '0.5', ''], ['error ']], [['', '', ''], []]])('%j', (values, expected) => {
        expect(said(weights(...values))).toEqual(expected);
    });
    it('offers each weight that would make up 1', () => {
        expect(correctionsIn(id, weights('0.6', '0.3', '0.3'))).toEqual(['Weigh C with 0.1', 'Weigh B with 0.1', 'Weigh A with 0.4']);
    });
});
