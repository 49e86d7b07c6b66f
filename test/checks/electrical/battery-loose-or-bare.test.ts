import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'battery-loose-or-bare';

describe(id, () => {
    it.each([
        ['movement: 1 in', []], ['movement: 25.4 mm', []], ['movement: 26 mm', ['error B1']], ['movement: 1-1/16 in', ['error B1']],
        ['restraint: none', ['error B1']], ['restraint: none  movement: 10 mm', []], ['restraint: none  movement: 2 in', ['error B1']], ['restraint: strap', []],
        ['terminals-covered: no', ['error B1']], ['terminals-covered: yes', []], ['spring-clips: yes', ['error B1']], ['spring-clips: no', []],
        ['movement: 2 in  terminals-covered: no  spring-clips: yes', ['error B1']], ['mass: 60 lb', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, `battery B1 { ${facts} }\n`)).toEqual(expected);
    });
    it('names the pull for the weight', () => {
        const pull = (mass: string) => raisedBy(id, `battery B1 { movement: 2 in  ${mass} }\n`)[0]?.message;
        expect(pull('mass: 60 lb')).toContain('90 lbf');
        expect(pull('mass: 40 lb')).toContain('80 lbf');
        expect(pull('mass: 18 kg')).toContain('353 N');
        expect(pull('')).toContain('the lesser of 400 N (90 lbf) and twice its weight');
    });
    it('speaks of all that is wrong at once', () => {
        const [problem] = raisedBy(id, 'battery B1 { movement: 2 in  terminals-covered: no  spring-clips: yes }\n');
        expect(problem?.related).toHaveLength(2);
        expect(problem?.draft?.recommend).toMatch(/strap.*cover.*bolted lugs/);
    });
    it('is out of use in a space with gasoline', () => {
        expect(urgencies(id, 'battery B1 { restraint: none }\n')).toEqual(['before-departure']);
        expect(urgencies(id, 'battery B1 { restraint: none  ignition-space: yes }\n')).toEqual(['before-use']);
    });
});
