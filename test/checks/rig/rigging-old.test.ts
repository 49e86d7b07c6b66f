import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'rigging-old';
const survey = (rest: string, kind = 'pre-purchase') => `survey "1" ${kind} { attended 2026-10-06 afloat "Yard" }\n${rest}\n`;

describe('rigging-old', () => {
    it.each([
        ['fitted: 2014-10-06', []], ['fitted: 2014-10-05', ['warning SH1']], ['fitted: 2014-10', []], ['fitted: 2014-09', ['warning SH1']], ['fitted: 2014', []], ['fitted: 2013', ['warning SH1']],
        ['build: rod  fitted: 2016-10-06', []], ['build: rod  fitted: 2016-10-05', ['warning SH1']], ['build: synthetic  fitted: 1990', []], ['build: galvanized  fitted: 2010', ['warning SH1']],
        ['fitted: 2010  rigger-report: 2024-10-06', []], ['fitted: 2010  rigger-report: 2024-10-05', ['warning SH1']], ['fitted: 1990  rigger-report: 2026-01', []],
        ['fitted: 2010  insurers-term: 20 years', []], ['fitted: 2016-01  insurers-term: 10 years', ['warning SH1']], ['', ['hint SH1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, survey(`shroud SH1 { ${facts} }`))).toEqual(expected);
    });
    it('is more urgent over twenty years', () => {
        expect(urgencies(id, survey('stay ST1 { fitted: 2006-10-06 }'))).toEqual(['keep-watch']);
        expect(urgencies(id, survey('stay ST1 { fitted: 2006-10-05 }'))).toEqual(['before-completion']);
        expect(raisedBy(id, survey('stay ST1 { fitted: 2000 }', 'condition-and-value'))[0]?.draft).toMatchObject({ urgency: 'within-days', days: 30 });
    });
    it('bounds an unknown age by that of the boat', () => {
        expect(summary(id, survey('vessel "M" { built: 2014 }\nshroud SH1'))).toEqual([]);
        expect(summary(id, survey('vessel "M" { built: 2013 }\nshroud SH1'))).toEqual(['warning SH1']);
        expect(urgencies(id, survey('vessel "M" { built: 1989 }\nshroud SH1'))).toEqual(['before-completion']);
        expect(summary(id, survey('vessel "M" { built: 1989 }\nshroud SH1 { rigger-report: 2026-05 }'))).toEqual([]);
    });
    it('reports wires of one date together', () => {
        expect(summary(id, survey('shroud SH1 { fitted: 2009 }\nstay ST1 { fitted: 2009 }\nstay ST2 { fitted: 2012 }'))).toEqual(['warning SH1 ST1', 'warning ST2']);
    });
    it('says by age, and whose term', () => {
        const [problem] = raisedBy(id, survey('shroud SH1 { fitted: 2009 }'));
        expect(problem?.message).toContain('old by age against the usual limit of 12 years for wire');
        expect(problem?.message).not.toContain('defective');
        expect(raisedBy(id, `yardsticks "Firm" { wire-rigging-life: 8 years }\n${survey('shroud SH1 { fitted: 2017 }')}`)[0]?.message).toContain('the firm’s limit of 8 years');
        expect(raisedBy(id, survey('shroud SH1 { fitted: 2014  insurers-term: 10 years }'))[0]?.message).toContain('the insurer’s term of 10 years');
    });
    it('offers a term that its age is within', () => {
        const text = survey('shroud SH1 { fitted: 2009 }');
        expect(correctionsIn(id, text)).toEqual(['Record an insurer’s term of 20 years']);
        expect(summary(id, corrected(text, id, 'Record an insurer’s term of 20 years'))).toEqual([]);
    });
    it('asks when she was attended', () => {
        expect(summary(id, 'shroud SH1 { fitted: 2009 }\n')).toEqual(['hint SH1']);
    });
});

describe('a date of making', () => {
    it.each([['made: 2004', 1], ['made: 2020', 0], ['made: 2004  fitted: 2020', 0]])('stands for that of fitting: %s', (facts, count) => {
        expect(raisedBy('rigging-old', `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }\nstay ST1 "Forestay" { build: one-by-nineteen  ${facts} }\n`)).toHaveLength(count);
    });
});
