/** Re-inspections and amendments: what is taken up, numbers that never change, and what the corrections write. */
import { describe, expect, it } from 'vitest';
import { asksNothing, byNumber, earlierFindings, newFindings, nextFindingNumber } from '../../../src/record/earlier-findings.js';
import type { IssuedFinding } from '../../../src/record/model.js';
import { issuedFinding, issuedReport } from '../../../src/checks/record/earlier-reports.js';
import { analyseText, corrected, correctionsIn, faultsOf, raisedBy } from '../check-text.js';

const head = 'survey "TC-2027-009" re-inspection {\n    follows: "TC-2026-041"\n    attended 2027-05-04 ashore "Yard"\n    attended 2027-05-02 afloat "Yard"\n}\nvessel "Marram" { hull-number: "XQZ12045K989" }\n';
const finding = (id: string, title: string, facts = '', on = '') => `finding ${id} "${title}"${on} {\n    urgency: in-upkeep\n    place: "Galley"\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "Lead it clear."\n${facts === '' ? '' : `    ${facts}\n`}}\n`;
const followed = (...findings: IssuedFinding[]) => ({ followed: issuedReport(findings) });
const hose = issuedFinding('F1', 'Gas hose cracked');
const taken = (text: string, ...findings: IssuedFinding[]) => earlierFindings(analyseText(head + text, undefined, followed(...findings)).record).map(({ issued, takenUpBy }) => `${issued.id} ${takenUpBy?.id ?? '-'}`);
const messages = (check: string, text: string, issued: Parameters<typeof raisedBy>[3]) => raisedBy(check, text, undefined, issued).map(({ severity, message }) => `${severity}: ${message}`);

describe('what takes an earlier recommendation up', () => {
    it('a finding of its number, in whatever words, where it records the outcome', () => {
        expect(taken(finding('F1', 'Renewed', 'outcome: open'), hose)).toEqual(['F1 F1']);
        expect(taken(finding('F1', 'Hose for gas, cracks'), hose)).toEqual(['F1 F1']);
        expect(taken(finding('F1', 'Anchor chain worn'), hose)).toEqual(['F1 -']);
    });
    it('a finding of its number on the same part', () => {
        expect(taken(`hose GH1 "Gas hose"\n${finding('F1', 'Renewed in spring', '', ' on GH1')}`, { ...hose, title: 'Cracks at the bend', on: ['Gas hose (GH1)'] })).toEqual(['F1 F1']);
    });
    it.each(['F1', 'f1', '1', 'No. 1', 'recommendation F1', 'F4, F1', 'F4 and F1'])('a finding that names it: %s', named => {
        expect(taken(finding('F9', 'Renewed', `earlier: "${named}"`), hose)).toEqual(['F1 F9']);
    });
    it('not one that names another', () => {
        expect(taken(finding('F9', 'Renewed', 'earlier: "F11"'), hose)).toEqual(['F1 -']);
        expect(taken(finding('F9', 'Gas hose cracked', 'outcome: open'), hose)).toEqual(['F1 -']);
    });
    it('the finding of its own number goes before one that names it', () => {
        expect(taken(`${finding('F9', 'Another part of it', 'earlier: "F1"')}${finding('F1', 'Gas hose', 'outcome: open')}`, hose)).toEqual(['F1 F1']);
    });
    it('in the order of the numbers, F2 before F10; the rest is new', () => {
        const { record } = analyseText(head + finding('F2', 'Gas hose cracked', 'outcome: open') + finding('F11', 'Rag in the drain'), undefined, followed(issuedFinding('F10', 'Chain worn'), issuedFinding('F2', 'Gas hose cracked')));
        expect(earlierFindings(record).map(({ issued }) => issued.id)).toEqual(['F2', 'F10']);
        expect(newFindings(record).map(({ id }) => id)).toEqual(['F11']);
        expect(['F10', 'F2', 'A3', 'F2a'].sort(byNumber)).toEqual(['A3', 'F2', 'F2a', 'F10']);
    });
    it('without the earlier report, what records an outcome or an earlier number is not new', () => {
        const { record } = analyseText(head + finding('F1', 'a', 'outcome: open') + finding('F2', 'b', 'earlier: "7"') + finding('F3', 'c'), undefined, { followed: 'not-found' });
        expect(newFindings(record).map(({ id }) => id)).toEqual(['F3']);
    });
    it('what was closed before, and remarks, ask for nothing', () => {
        expect([{ outcome: 'done-and-seen' }, { urgency: 'note-only' }, { outcome: 'done-as-stated' }, { outcome: 'declined' }, {}].map(more => asksNothing({ ...hose, ...more }))).toEqual([true, true, false, false, false]);
    });
});

describe('earlier-recommendation-not-taken-up', () => {
    const id = 'earlier-recommendation-not-taken-up';
    it('tells each one by number and title, at the line that names the report', () => {
        const problems = raisedBy(id, head, undefined, followed(hose, issuedFinding('F2', 'Chain worn')));
        expect(problems.map(({ message }) => /^F\d of report TC-2026-041, issue 1, “[^”]+”/.exec(message)?.[0])).toEqual(['F1 of report TC-2026-041, issue 1, “Gas hose cracked”', 'F2 of report TC-2026-041, issue 1, “Chain worn”']);
        expect(head.slice(problems[0]?.at.start, problems[0]?.at.end)).toContain('TC-2026-041');
    });
    it('offers every outcome of the vocabulary, and all of them open at once', () => {
        const titles = raisedBy(id, head, undefined, followed(hose, issuedFinding('F2', 'Chain worn'))).flatMap(({ corrections = [] }) => corrections.map(({ title, isStep }) => `${title}${isStep ? ' (step)' : ''}`));
        expect(titles.slice(0, 6)).toEqual(['Take up F1 as done and seen (step)', 'Take up F1 as done as stated (step)', 'Take up F1 as in part (step)', 'Take up F1 as open', 'Take up F1 as declined (step)', 'Take up all 2 as open']);
        expect(titles.filter(title => title.startsWith('Take up all'))).toHaveLength(1);
    });
    it('takes up all at once, complete but for photographs', () => {
        const issued = followed(hose, issuedFinding('F2', 'Chain worn'), issuedFinding('F30', 'Lamp out'));
        const text = corrected(head, id, 'Take up all 3 as open', undefined, issued);
        const { problems, gaps, record } = analyseText(text, undefined, issued);
        expect([...problems.filter(p => p.severity !== 'hint').map(p => p.message), ...gaps.map(gap => gap.message)]).toEqual([]);
        expect(record.findings.map(({ id: number, title }) => `${number} ${title}`)).toEqual(['F1 Gas hose cracked', 'F2 Chain worn', 'F30 Lamp out']);
    });
    it('writes the earlier words as the earlier report’s, the last day of attendance, and the parts that are still recorded', () => {
        const issued = followed({ ...hose, on: ['Gas hose (GH1)', 'Regulator (RG9)'], urgency: 'within-days', due: 'By 12 November 2026, 30 days after issue' });
        const text = corrected(`${head}hose GH1 "Gas hose"\n`, id, 'Take up F1 as open', undefined, issued);
        expect(text).toContain('finding F1 "Gas hose cracked" on GH1 {');
        expect(text).toContain('urgency: within-days 30\n');
        expect(text).toContain('looked-at: 2027-05-04\n');
        expect(text).toContain('seen: "Report TC-2026-041: Its lever is stiff."');
    });
    it('hostile words come out as the words they were', () => {
        const nasty = 'Hose "A" {GH1.bore} \\ } <b> \n end';
        const issued = followed({ ...hose, title: nasty, seen: nasty, because: nasty, recommend: nasty, place: nasty });
        const text = corrected(head, id, 'Take up F1 as open', undefined, issued);
        expect(faultsOf(text)).toEqual([]);
        const [only] = analyseText(text, undefined, issued).record.findings;
        const because = only?.facts.get('because')?.values[0];
        expect(only?.title).toBe(nasty.replace(/\s*\n\s*/, ' '));
        expect(because?.type === 'text' && because.prose.segments).toEqual([nasty.replace(/\s*\n\s*/, ' ')]);
        expect(raisedBy(id, text, undefined, issued)).toEqual([]);
    });
    it('a number that is no name here becomes the next free one, with its earlier number', () => {
        const issued = followed({ ...hose, id: '12.3' }, issuedFinding('F8', 'Chain worn', { outcome: 'done-and-seen' }));
        expect(corrected(head, id, 'Take up 12.3 as open', undefined, issued)).toContain('finding F9 "Gas hose cracked" {\n    earlier: "12.3"\n');
    });
    it('offers nothing while the number stands for another matter, and says why', () => {
        const [problem] = raisedBy(id, head + finding('F1', 'Anchor chain worn'), undefined, followed(hose));
        expect(problem?.corrections).toEqual([]);
        expect(problem?.message).toContain('The number F1 stands for another matter here');
    });
    it('is silent where the report is of another vessel, and where there is none', () => {
        expect(messages(id, head, { followed: issuedReport([hose], { hullNumber: 'XQZ99999K989' }) })).toEqual([]);
        expect(messages(id, head, { followed: 'not-found' })).toEqual([]);
        expect(correctionsIn(id, head)).toEqual([]);
    });
});

describe('finding-number-changed', () => {
    const id = 'finding-number-changed';
    it('with an outcome it is advice, and only where nothing ties the two', () => {
        expect(messages(id, head + finding('F1', 'Anchor chain', 'outcome: open'), followed(hose))).toHaveLength(1);
        expect(messages(id, head + finding('F1', 'Anchor chain', 'outcome: open'), followed(hose))[0]).toMatch(/^warning: F1 records the outcome of F1/);
        expect(messages(id, head + finding('F1', 'The hose, renewed', 'outcome: open'), followed(hose))).toEqual([]);
    });
    it('tells a number once, though both the earlier report and the last issue gave it out', () => {
        expect(messages(id, head + finding('F1', 'Anchor chain'), { ...followed(hose), lastIssue: issuedReport([hose], { number: 'TC-2027-009' }) })).toHaveLength(1);
    });
    it('leaves a number alone that the earlier report never gave', () => {
        expect(messages(id, head + finding('F2', 'Anchor chain'), followed(hose))).toEqual([]);
    });
});

describe('followed reports', () => {
    it('not found is advice where the findings name their earlier numbers', () => {
        expect(messages('followed-report-not-found', head, { followed: 'not-found' })[0]).toMatch(/^error: No report TC-2026-041 is found/);
        expect(messages('followed-report-not-found', head + finding('F1', 'Hose', 'earlier: "3"\n    outcome: open'), { followed: 'not-found' })[0]).toMatch(/^warning/);
    });
    it('hull numbers are compared without prefix, blanks and hyphens', () => {
        const of = (hullNumber: string) => messages('followed-report-of-another-vessel', head, { followed: issuedReport([], { hullNumber }) });
        expect(of('us-xqz 12045 K989')).toEqual([]);
        expect(of('XQZ12045K889')).toHaveLength(1);
    });
});

describe('numbers of new findings', () => {
    it('come after all that were ever given out', () => {
        const record = (text: string, issued?: Parameters<typeof raisedBy>[3]) => analyseText(text, undefined, issued).record;
        expect(nextFindingNumber(record(''))).toBe('F1');
        expect(nextFindingNumber(record(finding('F3', 'a')))).toBe('F4');
        expect(nextFindingNumber(record(head, followed(issuedFinding('F24', 'a'), issuedFinding('X99', 'b'))))).toBe('F25');
        expect(nextFindingNumber(record(finding('F3', 'a'), { lastIssue: issuedReport([issuedFinding('F7', 'withdrawn since')]) }))).toBe('F8');
        expect(nextFindingNumber(record(`hose F4\n${finding('F3', 'a')}`))).toBe('F5');
    });
});
