import { describe, expect, test } from 'vitest';
import { sampleReport, textOf } from './sample.js';

const survey = (findings: string, facts = '', kind = 'damage') => `survey "D-1" ${kind} { issued: 2026-03-01  attended 2026-02-20 ashore "Yard"\n${facts} }\nvessel "Heron" { }\n${findings}`;
const finding = (id: string, facts: string) => `finding ${id} "Matter ${id}" { urgency: in-upkeep  seen: "a"  because: "b"  recommend: "c"  ${facts} }\n`;
const section = (text: string) => /<section class="section section-damage"[\s\S]*?<\/section>\n/.exec(sampleReport({ gaps: [], problems: [] }, text))?.[0] ?? '';

describe('the damage', () => {
    test('is without prejudice, at its head, in the summary and in the statement', () => {
        const text = textOf(sampleReport({ gaps: [], problems: [] }, survey(finding('F1', 'relation: new'))));
        expect(text.match(/without prejudice/g)?.length).toBeGreaterThanOrEqual(3);
        expect(textOf(section(survey('')))).toContain('This report is made without prejudice to the rights and liabilities of any party.');
    });
    test('tells what is recorded of the occurrence, and what is not', () => {
        const text = textOf(section(survey('', 'occurrence-date: 2026-02-11  occurrence-time: 17:40  occurrence-place: "Off the mole"  cause-stated: "A log, as told"  evidence: "A scratch", "Wood in it"')));
        expect(text).toContain('When 11 February 2026, 17:40');
        expect(text).toContain('Where Off the mole');
        expect(text).toContain('Cause as alleged A log, as told');
        expect(text).toContain('Evidence A scratch Wood in it');
        expect(text).toContain('Not recorded: what happened.');
        expect(text).toContain('Not recorded: an opinion of the cause.');
        expect(text).toContain('Not recorded: whether further damage is likely.');
    });
    test('keeps findings apart by their relation, and sums only those of the occurrence', () => {
        const text = textOf(section(survey([
            finding('F1', 'relation: new  cost: 4200 USD..5600 USD  betterment: 350 USD..500 USD'), finding('F2', 'relation: related  cost: 100.10 USD'), finding('F3', 'relation: new'),
            finding('F4', 'relation: old  cost: 900 USD'), finding('F5', 'relation: unrelated  cost: 800 USD'), finding('F6', 'relation: unknown  cost: 700 USD'), finding('F7', 'cost: 600 USD'),
        ].join(''))));
        const order = ['Of the occurrence No.', 'Following from the occurrence No.', 'Not settled whether of the occurrence No.', 'Older than the occurrence No.', 'Not connected with the occurrence No.', 'Not said whether of the occurrence No.'];
        expect(order.map(title => text.indexOf(title))).toEqual(order.map(title => text.indexOf(title)).toSorted((a, b) => a - b));
        expect(order.filter(title => !text.includes(title))).toEqual([]);
        // By hand: 4200 - 350 = 3850, 5600 - 500 = 5100; with 100.10: 3950.10 to 5200.10.
        expect(text).toContain('F1 Matter F1 4,200 to 5,600 USD 350 to 500 USD 3,850 to 5,100 USD');
        expect(text).toContain('without betterment: 3,950.10 to 5,200.10 USD for 2 findings.');
        expect(text).toContain('1 finding of it states no cost: F3.');
    });
    test('sums each currency by itself', () => {
        const text = textOf(section(survey(finding('F1', 'relation: new  cost: 100 USD') + finding('F2', 'relation: new  cost: 50 EUR') + finding('F3', 'relation: new  cost: 70 USD  betterment: 20 EUR'))));
        expect(text).toContain('100 USD for 1 finding, and 50 EUR for 1 finding.');
        expect(text).toContain('cost and betterment being in different currencies: F3.');
    });
    test('is told in the summary by the sum of the occurrence alone', () => {
        const text = textOf(sampleReport({ gaps: [], problems: [] }, survey(finding('F1', 'relation: new  cost: 500 USD  betterment: 50 USD') + finding('F2', 'relation: old  cost: 900 USD'))));
        expect(text).toContain('Costs of the occurrence 450 USD without betterment, for 1 finding');
        expect(text).not.toContain('1,400 USD without');
    });
    test('has no place in a report that has none', () => {
        expect(section(survey(finding('F1', ''), '', 'pre-purchase'))).toBe('');
        expect(section(survey(finding('F1', 'relation: old'), '', 'pre-purchase'))).toBe('');
    });
    test('no finding is of it: no sum is made', () => {
        expect(textOf(section(survey(finding('F1', 'relation: old  cost: 5 USD'))))).toContain('No finding is recorded as of the occurrence, so no cost is summed for it.');
    });
});
