import { describe, expect, test } from 'vitest';
import { analysed, earlierReport, followUpText, paper } from './follow-up-sample.js';
import { textOf } from './sample.js';

/** Rows of a table with a caption: the text of each cell. */
function rows(html: string, caption: string): string[][] {
    const table = [...html.matchAll(/<table[\s\S]*?<\/table>/g)].map(([markup]) => markup).find(markup => textOf(/<caption>[\s\S]*?<\/caption>/.exec(markup)?.[0] ?? '').trim() === caption) ?? '';
    return [...table.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].slice(1).map(([, row = '']) => [...row.matchAll(/<t[hd][^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell = '']) => textOf(cell).trim()));
}
const section = (html: string) => /<section[^>]* id="earlier"[\s\S]*?(?=\n<section class="section )/.exec(html)?.[0] ?? '';
const report = (changes: Parameters<typeof paper>[1] = {}) => paper('report', changes);

describe('every earlier recommendation', () => {
    const html = section(report());
    const found = rows(html, 'Each recommendation, by its number');
    test('stands there once, in the order of its number, with its state', () => {
        expect(found.map(([number, , state]) => `${number} ${state}`)).toEqual([
            'F1 Open', 'F2 Done and seen', 'F3 Done as stated', 'F4 In part', 'F5 Declined', 'F6 Not taken up', 'F7 Closed before', 'F8 Remark', 'F10 Open',
        ]);
    });
    test('in the words it was made in, with when it was due', () => {
        expect(found[0]?.[1]).toBe('Gas hose cracked Gas hose (GH1); Under the galley sink Renew the gas hose. Due then: Before use');
    });
    test('with what shows it, its photographs and the day', () => {
        expect(found[1]?.[3]).toMatch(/^New tail measured\. Photo \d+ Looked at on 4 May 2027\.$/);
        expect(found[2]?.[3]).toBe('The owner states it.');
    });
    test('with what remains', () => {
        expect(found.map(row => row[4])).toEqual([
            'As recommended then. Before use', 'Nothing further is asked.', 'The work is to be shown: it was not seen. In upkeep', 'Clean the glass. In upkeep', 'The recommendation stands. As recommended then. By 5 June 2027, 30 days after issue',
            'Not known.', 'Nothing further is asked.', 'Nothing further is asked.', 'Measure it again. Keep watch',
        ]);
    });
    test('is counted by state, each with its meaning; none is left out of the counts', () => {
        const counts = rows(html, 'Recommendations by what became of them');
        expect(counts.map(([state, count, which]) => `${state} ${count}: ${which}`)).toEqual([
            'Done and seen 1: F2', 'Done as stated 1: F3', 'In part 1: F4', 'Open 2: F1 , F10', 'Declined 1: F5', 'Not taken up 1: F6', 'Closed before 1: F7', 'Remark 1: F8',
        ]);
        expect(counts[1]?.[3]).toBe('The work is said to be done; the surveyor did not see it.');
        expect(counts.reduce((sum, [, count]) => sum + Number(count), 0)).toBe(earlierReport.findings.length);
    });
    test('one that is not taken up is said first, and not hidden', () => {
        expect(textOf(html)).toContain('1 recommendation is not taken up: F6.');
    });
    test('what is new follows', () => {
        expect(rows(html, 'New since report TC-2026-041, issue 1 of 13 October 2026')).toEqual([['F11', 'Rag in the drain', 'At once']]);
    });
    test('links lead to the findings', () => {
        expect(html).toContain('href="#finding-F1"');
    });
});

describe('where it was read', () => {
    test('a record as issued, or a survey that may have been changed', () => {
        expect(textOf(section(report()))).toContain('They were read from its record as issued.');
        expect(textOf(section(report({ outside: { followed: { ...earlierReport, isFrozen: false } } })))).toContain('it may have been changed since');
    });
    test('a report that was not found, or not read, is said to be', () => {
        const lost = section(report({ outside: { followed: 'not-found' } }));
        expect(textOf(lost)).toContain('That report was not found when this one was drawn:');
        expect(rows(lost, 'Each recommendation, by its number').map(([number, , state]) => `${number} ${state}`)).toEqual(['F1 Open', 'F2 Done and seen', 'F3 Done as stated', 'F4 In part', 'F5 Declined', 'F10 Open']);
        expect(textOf(section(report({ outside: {} })))).toContain('That report was not read when this one was drawn:');
    });
    test('a number in another surveyor’s report stands beside ours', () => {
        const html = section(report({ text: followUpText.replace('finding F1 "Gas hose cracked" on GH1 {', 'finding F20 "Gas hose cracked" on GH1 {\n        earlier: "12.3"'), outside: { followed: { ...earlierReport, findings: [{ ...earlierReport.findings[1], id: '12.3', title: 'Gas hose cracked', on: [] }] } } }));
        expect(rows(html, 'Each recommendation, by its number')[0]?.[0]).toBe('12.3 (here F20 )');
    });
});

test('a survey that follows nothing and records no outcome has no such section', () => {
    const text = followUpText.replace('    follows: "TC-2026-041"\n', '').replace(/outcome: \S+/g, '');
    expect(section(report({ text, outside: {} }))).toBe('');
});

test('a first survey with outcomes tells them of its own recommendations', () => {
    const html = section(report({ text: followUpText.replace('    follows: "TC-2026-041"\n', ''), outside: {} }));
    expect(textOf(html)).toContain('What became of the recommendations');
    expect(rows(html, 'Each recommendation, by its number').map(([number, , state]) => `${number} ${state}`)).toEqual(['F1 Open', 'F2 Done and seen', 'F3 Done as stated', 'F4 In part', 'F5 Declined', 'F10 Open', 'F11 No outcome recorded']);
});

describe('elsewhere in the report', () => {
    const html = report();
    test('the summary counts the states', () => {
        expect(textOf(html)).toContain('9 earlier recommendations: done and seen 1, done as stated 1, in part 1, open 2, declined 1, not taken up 1, closed before 1, remark 1; new 1');
    });
    test('what is done and seen is due no more, whatever its urgency was', () => {
        expect(rows(html, 'Findings by due event').map(([due, count]) => `${due} ${count}`)).toEqual(['At once 1', 'Before use 1', 'Within days of issue 1', 'In upkeep 2', 'Keep watch 1', 'Done and seen 1']);
    });
    test('the card of a finding tells what became of it', () => {
        const card = /<article class="finding[^"]*" id="finding-F2"[\s\S]*?<\/article>/.exec(html)?.[0] ?? '';
        expect(textOf(card)).toMatch(/What became of it Done and seen Looked at 4 May 2027 What shows it New tail measured\./);
    });
    test('the recommendation that is passed over keeps it a draft', () => {
        const open = analysed().problems.filter(({ severity, answeredBy }) => severity === 'error' && answeredBy === undefined);
        expect(open.map(({ check, message }) => `${check.id}: ${message.slice(0, 2)}`)).toEqual(['earlier-recommendation-not-taken-up: F6']);
        expect(report({ isDraft: true })).toMatch(/<body class="draft/);
    });
});
