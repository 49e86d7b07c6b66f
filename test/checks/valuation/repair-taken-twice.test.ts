import { describe, expect, it } from 'vitest';
import { pointedAt, raisedBy, summary } from '../check-text.js';

const id = 'repair-taken-twice';
const said = (text: string) => summary(id, text);
const valuation = (reason: string, amount: string, repairs: string) => `valuation { repairs-deducted: 9000 USD  ${repairs}\n    comparable A { sold: 80000 USD  adjust "${reason}": ${amount} }\n}\n`;

describe('repair-taken-twice', () => {
    it.each([
        ['Rigging', 'repairs: "renewal of the rigging"', 1], ['Her standing rigging was new', 'repairs: "standing rigging, exhaust hose"', 1], ['Rigging', 'repairs: "exhaust hose", "standing rigging"', 1],
        ['Sea valves and exhaust needed no work', 'repairs: "exhaust"', 1], ['Batteries', 'repairs: "battery"', 1], ['Winches', 'repairs: "winch"', 1], ['Hoses', 'repairs: "hose"', 1], ['Engine mounts', 'repairs: "engine alternator"', 0], ['Standing rigging', 'repairs: "running rigging"', 0], ['Prices since', 'repairs: "rigging"', 0],
    ])('%s with %s', (reason, repairs, count) => {
        expect(said(valuation(reason, '-2000 USD', repairs))).toHaveLength(count);
        expect(said(valuation(reason, '2000 USD', repairs))).toEqual([]);
    });
    it('asks what an adjustment for condition is for', () => {
        expect(said(valuation('Better condition', '-2000 USD', 'repairs: "rigging"'))).toEqual(['hint ']);
        expect(said(valuation('Better condition of the rigging', '-2000 USD', 'repairs: "rigging"'))).toEqual(['warning ']);
    });
    it('takes findings with a cost where no repairs are written', () => {
        const finding = 'finding F1 "Standing rigging is past its life" { cost: 9000 USD  urgency: before-use  seen: "Wires of 1994."  because: "They part."  recommend: "Renew the wires." }\n';
        expect(said(`${finding}${valuation('Standing rigging', '-2000 USD', '')}`)).toEqual(['warning ']);
        expect(said(`${finding.replace('cost: 9000 USD  ', '')}${valuation('Standing rigging', '-2000 USD', '')}`)).toEqual([]);
        expect(said(`${finding}${valuation('Standing rigging', '-2000 USD', '').replace('repairs-deducted: 9000 USD', '')}`)).toEqual([]);
        expect(said(`${finding}${valuation('Standing rigging', '-2000 USD', 'repairs: "exhaust hose"')}`)).toEqual([]);
    });
    it('points at the adjustment', () => {
        const text = valuation('Rigging', '-2000 USD', 'repairs: "rigging"');
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['adjust "Rigging": -2000 USD']);
    });
});
