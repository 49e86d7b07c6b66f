import { evaluate, bignumber, type BigNumber } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { soundValuation } from '../../src/checks/valuation/sample.js';
import { amountInWords, numberInWords } from '../../src/trade/number-words.js';
import { fc } from './property.js';
import { sampleReport, textOf } from './sample.js';

const reportOf = (text: string) => textOf(sampleReport({ gaps: [], problems: [] }, text)).split('Statement and signature').slice(0, -1).join('').split('Contents').slice(1).join('');
const valued = (facts: string, kind = '') => reportOf(`survey "1" ${kind} { }\nvessel "Heron" { }\nvaluation { effective: 2026-06-15  basis: "Between the willing"  ${facts} }\n`);
const sales = (...amounts: readonly [price: string, weight: string, adjust?: string][]) => amounts.map(([price, weight, adjust = ''], index) => `comparable ${'ABCDEF'.charAt(index)} { sold: ${price}  ${weight === '' ? '' : `weight: ${weight}`}  ${adjust} }`).join(' ');

describe('comparables', () => {
    // The figures of the worked example, computed by hand and again by mathjs in decimals.
    test('each step, the adjusted price, the weighted figure and the rounding are shown', () => {
        const text = reportOf(soundValuation);
        const decimal = (expression: string) => evaluate(`bignumber(${expression.replaceAll(/[\d.]+/g, '"$&"').replaceAll(/("[\d.]+")/g, 'bignumber($1)')})`) as BigNumber;
        const [a, b, c] = ['84000 + 1680 - 2500 + 1000', '79500 + 3975 + 4000 + 1500', '91000 + 910 - 3500 - 4000 - 2000'].map(sum => decimal(sum).toNumber());
        expect([a, b, c]).toEqual([84180, 88975, 82410]);
        expect(bignumber('84180').times('0.5').plus(bignumber('88975').times('0.2')).plus(bignumber('82410').times('0.3')).toNumber()).toBe(84608);
        expect(text).toContain('Prices since +1,680 Rigging −2,500 Condition +1,000 Adjusted 84,180 USD');
        expect(text).toContain('A 84,000 USD +180 84,180 USD × 0.5 42,090');
        expect(text).toContain('B 79,500 USD +9,475 88,975 USD × 0.2 17,795');
        expect(text).toContain('C 91,000 USD −8,590 82,410 USD × 0.3 24,723');
        expect(text).toContain('Weighted figure 1 84,608 USD');
        expect(text).toContain('Rounding, to the nearest 500 −108 Opinion 84,500 USD');
        // 6565 over the mean 85,188.33 is 7.7 %, by hand.
        expect(text).toContain('run from 82,410 to 88,975 USD; their plain mean is 85,188.33 USD, and they spread over 7.7 % of it.');
    });
    test('cents add up as printed', () => {
        // By hand: 0.1 x 1000.05 = 100.005 → 100.01; 0.9 x 2000.15 = 1800.135 → 1800.14; together 1900.15.
        expect(valued(`opinion: 1900.15 USD  ${sales(['1000.05 USD', '0.1'], ['2000.15 USD', '0.9'])}`)).toContain('× 0.1 100.01 B 2,000.15 USD 0 2,000.15 USD × 0.9 1,800.14 Weighted figure 1 1,900.15 USD');
    });
    test('an adjustment by a share of the price tells the share and the amount', () => {
        expect(valued(`opinion: 103000 USD  ${sales(['100000 USD', '1', 'adjust "Market": 3 %'])}`)).toContain('Market, 3 % of the price +3,000');
    });
    test('year, length, hours and standing are told', () => {
        expect(valued('opinion: 1 USD  comparable A { asking: 5 USD  built: 2009  length: 48 ft  engine-hours: 560  condition: better }')).toContain('As known built 2009 , 48 ft (14.63 m) , engine hours 560 , condition better');
    });
    test('without all weights they are not weighed, and that is said', () => {
        const text = valued(`opinion: 84500 USD  ${sales(['84000 USD', '0.5'], ['86000 USD', ''])}`);
        expect(text).toContain('No weights are recorded for all of them');
        expect(text).not.toContain('Weighted figure');
    });
    test('in different currencies no figure is computed from them', () => {
        expect(valued(`opinion: 84500 USD  ${sales(['84000 USD', '0.5'], ['86000 EUR', '0.5'])}`)).toContain('The comparables are in different currencies, so no figure is computed from them together.');
    });
    test('an opinion in another currency is not set against them', () => {
        expect(valued(`opinion: 84500 GBP  ${sales(['84000 EUR', '0.5'], ['86000 EUR', '0.5'])}`)).toContain('The opinion is in another currency than the comparables');
    });
    test('there may be none', () => {
        const text = valued('opinion: 5000 USD');
        expect(text).toContain('Opinion 5,000 USD (Five thousand US dollars)');
        expect(text).not.toContain('From the figures to the opinion');
    });
});

describe('from the figures to the opinion', () => {
    const two = sales(['100000 USD', '0.5'], ['110000 USD', '0.5']);
    test('repairs come off', () => {
        // By hand: 105,000 - 6,500 = 98,500.
        expect(valued(`opinion: 98500 USD  repairs-deducted: 6500 USD  repairs: "Weld and test"  ${two}`)).toContain('Repairs taken off: Weld and test −6,500 After repairs 98,500 USD Opinion 98,500 USD');
    });
    test('a difference that is more than rounding is called judgment, and asked for its reason', () => {
        const text = valued(`opinion: 95000 USD  ${two}`);
        expect(text).toContain('The surveyor’s judgment −10,000 Opinion 95,000 USD');
        expect(text).toContain('Not recorded: why the opinion differs from the figures by more than rounding.');
        expect(valued(`opinion: 95000 USD  reconciled: "Her berth is not hers"  ${two}`)).not.toContain('Not recorded: why the opinion differs');
    });
    test('an opinion equal to the figure has no difference', () => {
        const text = valued(`opinion: 105000 USD  ${two}`);
        expect(text).toContain('Weighted figure 105,000 USD Opinion 105,000 USD');
        expect(text).not.toMatch(/Rounding|surveyor’s judgment/);
    });
    test.each([['100000 USD..110000 USD', 'lies within'], ['106000 USD..110000 USD', 'lies outside']])('a range as opinion, %s: the figure %s it', (opinion, words) => {
        const text = valued(`opinion: ${opinion}  ${two}`);
        expect(text).toContain(`The figure ${words} the range of the opinion.`);
        expect(text).toMatch(/Opinion 10\d,000 to 110,000 USD \(From one hundred (?:six )?thousand US dollars to one hundred ten thousand US dollars\)/);
    });
    test('cost less depreciation is a sum', () => {
        // By hand: 310,000 - 62 % (192,200) - 8 % (24,800) = 93,000.
        expect(valued('opinion: 93000 USD  replacement: 310000 USD  depreciation: 62 %  obsolescence: 8 %')).toContain('Like new today 310,000 USD Age and wear, 62 % of it −192,200 Dated design and gear, 8 % of it −24,800 Cost less depreciation 93,000 USD');
        expect(valued('opinion: 93000 USD  replacement: 310000 USD')).not.toContain('Cost less depreciation');
    });
});

describe('an appraisal', () => {
    test('tells of each approach what came of it, or that it is not recorded', () => {
        const text = valued(`opinion: 105000 USD  cost-approach: "Left out: she is old"  ${sales(['100000 USD', '0.5'], ['110000 USD', '0.5'])}`, 'appraisal');
        expect(text).toContain('Sales comparison Used, with 2 comparables, below.');
        expect(text).toContain('Cost approach Left out: she is old');
        expect(text).toContain('Income approach Not recorded: what came of it, or why it was left out.');
    });
    test('the method may speak of it', () => {
        expect(valued('opinion: 1 USD  method: "Sales decide. She is not hired, and her cost says little."', 'appraisal').match(/As said under the method\./g)).toHaveLength(3);
    });
    test('asks for what such a report must state', () => {
        const text = valued('opinion: 1 USD', 'appraisal');
        for (const what of ['what the value is wanted for', 'who is to rely on it', 'assumptions that, found untrue, would change the value', 'what is taken for granted of her condition', 'services to this vessel in the three years before']) {
            expect(text).toContain(`Not recorded: ${what}`);
        }
        expect(valued('opinion: 1 USD', 'pre-purchase')).not.toContain('services to this vessel');
    });
});

test('several valuations stand side by side, each with its title', () => {
    const text = reportOf('survey "1" { }\nvessel "H" { }\nvaluation "As she lies" { opinion: 5 USD }\nvaluation "Repaired" { opinion: 9 USD }\n');
    expect(text).toMatch(/As she lies Opinion 5 USD[\s\S]*Repaired Opinion 9 USD/);
});

describe('amounts in words', () => {
    // By hand, as checks and contracts are written.
    test.each([
        [76_000, 'USD', 'seventy-six thousand US dollars'], [1, 'USD', 'one US dollar'], [1_250_000, 'EUR', 'one million two hundred fifty thousand euros'], [84_500, 'GBP', 'eighty-four thousand five hundred pounds sterling'],
        [206_010, '', 'two hundred six thousand ten'], [76_000.5, 'USD', 'seventy-six thousand and 50/100 US dollars'], [0.05, 'USD', 'zero and 05/100 US dollars'], [0.29, 'USD', 'zero and 29/100 US dollars'],
        [1_200_000_000, 'JPY', 'one billion two hundred million JPY'], [0, 'CAD', 'zero CAD'],
    ])('%d %s', (amount, currency, words) => { expect(amountInWords(amount, currency)).toBe(words); });
    test('none below zero, nor past a million million', () => {
        expect([amountInWords(-1, 'USD'), amountInWords(1e12, 'USD'), amountInWords(Number.NaN, 'USD'), numberInWords(0.5)]).toEqual([undefined, undefined, undefined, undefined]);
    });
    test('never leave a tens word and its unit unjoined', () => {
        fc.assert(fc.property(fc.integer({ min: 0, max: 999_999_999_999 }), n => { expect(numberInWords(n)).not.toMatch(/ty (?:one|two|three|four|five|six|seven|eight|nine)\b/); }));
    });
});
