import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'chainplate-doubtful';
const survey = (rest: string, kind = 'pre-purchase') => `survey "1" ${kind} { attended 2026-10-06 afloat "Yard" }\n${rest}\n`;

describe('chainplate-doubtful', () => {
    it.each([
        ['moves: yes', ['error CP1']], ['moves: no', []], ['weeps: yes', ['hint CP1']], ['weeps: yes  core-reading: 24  dry-reference: 12', []], ['weeps: yes  core-reading: 25  dry-reference: 12', ['error CP1']],
        ['weeps: no  core-reading: 25  dry-reference: 12', []], ['metal: stainless-316  fitted: 2001-10-06', []], ['metal: stainless-316  fitted: 2001-10-05', ['warning CP1']], ['metal: stainless  fitted: 2001', []],
        ['metal: stainless-304  fitted: 2000', ['warning CP1']], ['metal: stainless-316  fitted: 1989  drawn: 1999', []], ['metal: silicon-bronze  fitted: 1989', []], ['fitted: 1989', ['hint CP1']], ['metal: stainless-316', ['hint CP1']],
        ['moves: yes  metal: stainless-316  fitted: 1989', ['error CP1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, survey(`chainplate CP1 { ${facts} }`))).toEqual(expected);
    });
    it('counts from the year she was built where its own date is not recorded', () => {
        expect(summary(id, survey('vessel "M" { built: 2000 }\nchainplate CP1 { metal: stainless-316 }'))).toEqual(['warning CP1']);
        expect(summary(id, survey('vessel "M" { built: 2001 }\nchainplate CP1 { metal: stainless-316 }'))).toEqual([]);
        expect(raisedBy(id, survey('vessel "M" { built: 1989 }\nchainplate CP1 { metal: stainless-316 }'))[0]?.draft?.seen).toContain('{vessel.built}');
    });
    it('is due before she leaves where it moves', () => {
        expect(urgencies(id, survey('chainplate CP1 { moves: yes }'))).toEqual(['before-departure']);
        expect(urgencies(id, survey('chainplate CP1 { metal: stainless-316  fitted: 1989 }'))).toEqual(['before-completion']);
        expect(urgencies(id, survey('chainplate CP1 { metal: stainless-316  fitted: 1989 }', 'appraisal'))).toEqual(['within-days']);
    });
    it('judges the core by the firm’s ratio', () => {
        expect(raisedBy(id, `yardsticks "Firm" { moisture-ratio: 1.5 }\n${survey('chainplate CP1 { weeps: yes  core-reading: 20  dry-reference: 12 }')}`)[0]?.message).toContain('the firm’s limit of 1.5');
    });
});
