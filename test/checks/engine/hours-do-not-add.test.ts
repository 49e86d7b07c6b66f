import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'hours-do-not-add';
const surveyed = (engine: string, more = '') => `survey "1" condition-and-value { attended 2026-10-06 afloat "Yard" }\nmain-engine E1 { ${engine} }\n${more}`;
const samples = (rows: string) => `reading OS1 "Oil samples" {\n    measures: oil-sample\n${rows}\n}\n`;

describe('against an earlier report', () => {
    it.each([
        ['hours: 1890  earlier-hours: 1890  earlier-date: 2023-05-10', ['warning E1']], // none in three years
        ['hours: 1889  earlier-hours: 1890  earlier-date: 2023-05-10', ['error E1']], ['hours: 1910  earlier-hours: 1890  earlier-date: 2023-05-10', []],
        ['hours: 1900  earlier-hours: 1890', []], ['hours: 1800  earlier-hours: 1890', ['error E1']],
        ['hours: 100  earlier-hours: 1890  earlier-date: 2023-05-10  meter-changed: 2024', []], ['hours: 100  earlier-hours: 1890  earlier-date: 2023-05-10  meter-changed: 2022', ['error E1']],
        ['hours: 4600  earlier-hours: 1890  earlier-date: 2023-05-10', []], ['hours: 4700  earlier-hours: 1890  earlier-date: 2023-05-10', ['warning E1']], // 800 a year
        ['hours: 40000  earlier-hours: 1890  earlier-date: 2023-05-10', ['error E1']], ['hours: 1890  earlier-hours: 1890  earlier-date: 2026-09-01', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, surveyed(facts))).toEqual(expected);
    });

    it('offers a digit too many or too few where the rest then fits', () => {
        expect(correctionsIn(id, surveyed('hours: 193  earlier-hours: 1890  earlier-date: 2025-05-10'))).toEqual(['Read 193 as 1930', 'Record the hour meter of E1 as changed in 2026']);
        expect(correctionsIn(id, surveyed('hours: 12470  earlier-hours: 1190  earlier-date: 2025-08-10'))).toEqual(['Read 12470 as 1247']);
        expect(correctionsIn(id, surveyed('hours: 5  earlier-hours: 1890  earlier-date: 2025-05-10'))).toEqual(['Record the hour meter of E1 as changed in 2026']);
    });
    it('refers to both figures', () => {
        const seen = raisedBy(id, surveyed('hours: 300  earlier-hours: 1890  earlier-date: 2025-05-10  earlier-source: "log of the owner"'))[0]?.draft?.seen ?? '';
        expect(seen).toContain('{E1.hours}');
        expect(seen).toContain('{E1.earlier-hours} by {E1.earlier-source}');
    });
});

describe('against papers', () => {
    it.each([
        ['hours: 1240  hours-stated: 1260', []], ['hours: 1240  hours-stated: 1270', ['error E1']], ['hours: 5000  hours-stated: 5100', []], ['hours: 5000  hours-stated: 5110', ['error E1']],
        ['hours: 140  hours-before-meter: 1100  hours-stated: 1240', []], ['hours: 140  hours-before-meter: 1100  hours-stated: 140', []], ['hours: 140  hours-before-meter: 1100  hours-stated: 1500', ['error E1']],
        ['hours: 140  meter-changed: 2024  hours-stated: 1500', []], ['hours: 140  meter-changed: 2024  hours-stated: 90', ['error E1']], ['hours-stated: 900', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, surveyed(facts))).toEqual(expected);
    });
    it('keeps either', () => {
        const text = surveyed('hours: 1240  hours-stated: 900');
        expect(corrected(text, id, 'Keep 900, what papers say')).toContain('hours: 900');
        expect(summary(id, corrected(text, id, 'Keep 900, what papers say'))).toEqual([]);
    });
});

describe('oil', () => {
    it.each([
        ['hours: 100  oil-hours: 100', []], ['hours: 100  oil-hours: 101', ['error E1']], ['hours: 100  oil-hours: 150  hours-before-meter: 60', []], ['hours: 100  oil-hours: 150  meter-changed: 2026', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, surveyed(facts))).toEqual(expected);
    });
    it.each([
        ['    row "A": E1, "S1", 1240, 60, 2026-10-06', []], ['    row "A": E1, "S1", 1250, 60, 2026-10-06', ['error E1']], ['    row "A": E1, "S1", 1200, 1300, 2026-04-02', ['error E1']],
        ['    row "A": E1, "S1", 1300, 60, 2026-11-20', []], // drawn after the survey
        ['    row "A": E1, "S1", 1100, 60, 2024-04-02\n    row "B": E1, "S2", 1050, 60, 2025-04-02', ['error E1']],
        ['    row "A": E1, "S1", 1100, 60, 2024-04-02\n    row "B": E1, "S2", 1150, 60, 2025-04-02', []],
    ])('samples %s', (rows, expected) => {
        expect(summary(id, surveyed('hours: 1240', samples(rows)))).toEqual(expected);
    });
    it('of another engine are left alone', () => {
        expect(summary(id, surveyed('hours: 1240', `main-engine E2 { hours: 1400 }\n${samples('    row "A": E2, "S1", 1390, 60, 2026-04-02')}`))).toEqual([]);
    });
});

describe('hours by the year', () => {
    it.each([
        ['hours: 40  made: 2016', ['warning E1']], ['hours: 60  made: 2016', []], ['hours: 9000  fitted: 2016', ['warning E1']], ['hours: 7500  fitted: 2016', []], ['hours: 40  made: 2016  meter-changed: 2024', []], ['hours: 4', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, surveyed(facts))).toEqual(expected);
    });
    it('are a question, not a fault', () => {
        expect(urgencies(id, surveyed('hours: 40  made: 2016'))).toEqual(['within-days']);
        expect(urgencies(id, surveyed('hours: 40  made: 2016').replace('condition-and-value', 'pre-purchase'))).toEqual(['before-completion']);
        expect(raisedBy(id, surveyed('hours: 40  made: 2016'))[0]?.draft?.because).toContain('explanation');
    });
});
