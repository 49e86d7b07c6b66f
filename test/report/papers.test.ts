import { HtmlValidate } from 'html-validate';
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { describe, expect, test } from 'vitest';
import { documentKinds, documentTitles } from '../../src/report/documents.js';
import { analysed, earlierReport, followUpText, paper } from './follow-up-sample.js';
import { sampleText, textOf } from './sample.js';

const papers = documentKinds.filter(kind => kind !== 'report');
const first = { text: sampleText, outside: {} };
const main = (html: string) => /<main>[\s\S]*<\/main>/.exec(html)?.[0] ?? '';
const rowOf = (html: string, number: string) => textOf([...main(html).matchAll(/<tr[^>]*>[\s\S]*?<\/tr>/g)].map(([row]) => row).find(row => textOf(row).trim().startsWith(`${number} `)) ?? '').trim();

describe.each(papers)('%s', kind => {
    test('has a title for those who choose it', () => {
        expect(documentTitles[kind].length).toBeGreaterThan(5);
    });
    test.each([['re-inspection', {}], ['re-inspection, the earlier report lost', { outside: { followed: 'not-found' as const } }], ['first survey', first], ['draft', { isDraft: true }], ['preview', { mode: 'preview' as const }], ['nothing recorded', { text: '', outside: {} }]])('is valid HTML: %s', async (_, changes) => {
        const validator = new HtmlValidate({ extends: ['html-validate:standard', 'html-validate:a11y', 'html-validate:document'], rules: { 'require-sri': 'off', 'no-inline-style': 'error', 'long-title': 'off' } });
        const { results } = await validator.validateString(paper(kind, changes));
        expect(results.flatMap(result => result.messages.map(m => `${m.ruleId}: ${m.message} at ${m.line}:${m.column} ${m.selector ?? ''}`))).toEqual([]);
    });
    test('names the vessel, her hull number and the report, and refers to nothing outside itself', () => {
        const html = paper(kind);
        expect(textOf(html)).toMatch(/Marram[\s\S]*XQZ12045K989/);
        expect(html).toContain('Report AR-90');
        const ids = new Set([...html.matchAll(/ id="([^"]*)"/g)].map(match => match[1]));
        expect([...html.matchAll(/href="([^"]*)"/g)].map(match => match[1]).filter(href => !href?.startsWith('#') || !ids.has(href.slice(1)))).toEqual([]);
        expect(html).not.toMatch(/(?:src|href)="https?:/);
    });
    test('is a draft where the report is one, and says so', () => {
        const draft = paper(kind, { isDraft: true });
        expect(draft).toMatch(/<body class="draft/);
        expect(textOf(draft)).toMatch(/DRAFT\. 1 problem is open in the survey that this is drawn from/);
        expect(paper(kind)).toMatch(/<body class="final/);
        expect(textOf(paper(kind))).not.toContain('DRAFT');
    });
    test('never promises', () => {
        expect(textOf(paper(kind))).not.toMatch(/\b(?:un)?safe(ly|ty)?\b|\bguarantee/i);
    });
    test('the same record gives the same paper', () => {
        expect(paper(kind)).toBe(paper(kind));
    });
    test('every beginning of a survey gives a paper', () => {
        for (let end = 0; end < followUpText.length; end += 389) {
            expect(paper(kind, { text: followUpText.slice(0, end) })).toContain('</html>');
        }
    });
    test('hostile text of the earlier report comes out as text', () => {
        const shapes = (html: string) => new Set([...elementsOf(parse(html))].flatMap(({ tagName, attrs }) => [tagName, ...attrs.map(({ name }) => `${tagName} ${name}`)]));
        const allowed = shapes(paper(kind, { outside: { followed: { ...earlierReport, isFrozen: false } } }));
        for (const nasty of hostile) {
            const followed = { ...earlierReport, isFrozen: false, findings: earlierReport.findings.map(finding => ({ ...finding, title: nasty, seen: nasty, because: nasty, recommend: nasty, due: nasty, place: nasty, on: [nasty] })) };
            const html = paper(kind, { outside: { followed } });
            expect([...shapes(html)].filter(shape => !allowed.has(shape)), nasty).toEqual([]);
            expect(html).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000-\u0008]/);
        }
    });
});

/** The earlier report is read from a file that others may have written; its words are as little trusted as the survey's. */
const hostile = ['<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '\' onmouseover=\'alert(1)', '</style></title></table><iframe src=//evil.example>', 'javascript:alert(1)', '\u202Egnp.exe\u2066\u0000', '{vessel.name} ${1}', 'W'.repeat(400)];

type Node = DefaultTreeAdapterTypes.ChildNode;
const isElement = (node: Node): node is DefaultTreeAdapterTypes.Element => 'tagName' in node;
function* elementsOf(node: { readonly childNodes: readonly Node[] }): Generator<DefaultTreeAdapterTypes.Element> {
    for (const child of node.childNodes) {
        if (isElement(child)) {
            yield child;
            yield* elementsOf(child);
        }
    }
}

describe('work list', () => {
    const html = paper('work-list');
    const text = textOf(main(html));
    test('a line has number, act, part with place, side, size in both systems, quantity, material and class, due, and room to tick', () => {
        expect(rowOf(html, 'F1')).toBe('F1 Gas hose cracked Renew the gas hose. Gas hose (GH1): Locker; port; quantity 2; bore 8 mm (5/16 in); length 0.7 m (27.6 in); material rubber; class cooking gas; serial 77 Before use');
        expect(main(html).match(/class="tick"/g)).toHaveLength(main(html).match(/<td class="?[^>]*data-label="Done"|data-label="Done"/g)?.length ?? 0);
    });
    test('lines stand by system in the order of the systems, the most pressing first', () => {
        expect([...main(html).matchAll(/<h2>([^<]*)<\/h2>/g)].map(match => match[1])).toEqual(['Cooking gas', 'Openings', 'To be measured again, no work now']);
        expect([...main(html).matchAll(/<span class="number">(\S+)<\/span>/g)].map(match => match[1])).toEqual(['F11', 'F1', 'F3', 'F4', 'F10']);
    });
    test('what is done, not ordered or a remark is no work, and is named', () => {
        expect(text).toContain('Not in this list: F5 (not ordered); F2 (done and seen).');
        expect(rowOf(html, 'F3')).toContain('(said to be done; to be shown)');
    });
    test('has nothing of client, money, cause or blame', () => {
        for (const words of ['Lindqvist', 'USD', 'Quay Mutual', 'Gas leaks.', 'The cracks are there still.', 'The owner states it.']) {
            expect(text, words).not.toContain(words);
        }
        const valued = textOf(main(paper('work-list', first)));
        expect(valued).not.toMatch(/USD|21,000|Lindqvist|the buyer/);
        expect(textOf(main(paper('work-list', { ...first, text: sampleText.replace('urgency:   before-launch', 'urgency: before-completion') })))).toContain('By the day that whoever orders the work gives');
    });
    test('by place where there is no system; elsewhere where there is neither', () => {
        const loose = 'finding F1 "A" { urgency: in-upkeep  place: "Cockpit"  recommend: "Do it." }\nfinding F2 "B" { urgency: in-upkeep  recommend: "Do it." }\nfinding F3 "C" { urgency: in-upkeep  place: "Cockpit"  recommend: "Do it." }\n';
        expect([...main(paper('work-list', { text: loose, outside: {} })).matchAll(/<h2>([^<]*)<\/h2>/g)].map(match => match[1])).toEqual(['Cockpit', 'Elsewhere']);
    });
    test('says it where nothing asks for work', () => {
        expect(textOf(paper('work-list', { text: '', outside: {} }))).toContain('No finding asks for work.');
    });
});

describe('letter on urgent matters', () => {
    const html = paper('urgent-letter');
    const text = textOf(main(html));
    test('lists the four urgent words in their order and nothing else; what is done and seen is not among them', () => {
        expect([...main(html).matchAll(/<h2>([^<]*)<\/h2>/g)].map(match => match[1])).toEqual(['At once', 'Before use', 'How this was told']);
        expect([...main(html).matchAll(/<span class="number">(\S+)<\/span>/g)].map(match => match[1])).toEqual(['F11', 'F1']);
    });
    test('each with where, what, why and what to do', () => {
        expect(text).toContain('F11 Rag in the drain Where Gas locker Found A rag stops it. Why it matters Gas cannot drain. What to do Take it out.');
    });
    test('an earlier urgent recommendation of which nothing is known is not passed over', () => {
        expect(text).toContain('Urgent when last reported, and not taken up since No. What Due then F6 Bolts wasted Before launch');
    });
    test('says who was told, when and how', () => {
        expect(text).toContain('Told by Ada Rowe Told to B. Lindqvist On 4 May 2027 How, and when By word at 1510');
        expect(text).toMatch(/B\. Lindqvist 4 May 2027/);
    });
    test('what is not recorded is a gap, and nothing is made up', () => {
        const gaps = textOf(paper('urgent-letter', { text: followUpText.replace(/^ {4}(?:told-\S+|client|surveyor): .*\n/gm, '') }));
        for (const gap of ['[the client: not recorded]', '[date: not recorded]', '[to whom: not recorded]', '[how: not recorded]', '[the surveyor: not recorded]']) {
            expect(gaps).toContain(gap);
        }
    });
    test('says plainly that there is none', () => {
        const none = textOf(paper('urgent-letter', { text: followUpText.replace(/urgency: (?:at-once|before-\S+)/g, 'urgency: in-upkeep').replace(/ {4}told-.*\n/g, ''), outside: { followed: { ...earlierReport, findings: [] } } }));
        expect(none).toContain('No finding of this survey is recorded as one to be dealt with at once, before launch, before departure or before use. The letter says no more than that.');
        expect(none).toContain('There was nothing to tell.');
    });
    test('a finding whose urgency is not written yet is said to be open', () => {
        expect(textOf(paper('urgent-letter', { text: followUpText.replace('urgency: at-once', '') }))).toContain('No urgency is recorded yet for F11;');
    });
    test('has its limits', () => {
        expect(text).toContain('does not say that nothing else is wrong');
        expect(text).toContain('people qualified for it');
    });
});

describe('letter of compliance', () => {
    const html = paper('compliance-letter');
    const text = textOf(main(html));
    test('goes to the underwriter, with the number of the policy', () => {
        expect(text).toMatch(/^ *Quay Mutual 6 May 2027 Marram: what became of the recommendations/);
        expect(text).toContain('Your number Q 7');
    });
    test('keeps apart what was seen and what was stated, under the numbers of the earlier report', () => {
        const [seen = '', stated = ''] = ['Met, and seen by the surveyor', 'Stated to be done, and not seen by the surveyor'].map(title => textOf(new RegExp(`<h2>${title}</h2>[\\s\\S]*?</section>`).exec(html)?.[0] ?? ''));
        expect(seen).toContain('F2 Sink hose large New tail measured. Photo 1 of the report Looked at on 4 May 2027.');
        expect(seen).not.toContain('F3');
        expect(stated).toContain('F3 Loop missing The owner states it. The work is to be shown: it was not seen. In upkeep');
    });
    test('every earlier recommendation that asked for something is in it once', () => {
        const numbers = [...main(html).matchAll(/<table class="answered">[\s\S]*?<\/table>/g)].flatMap(([table]) => [...table.matchAll(/<th scope="row">([^<]*)<\/th>/g)].map(match => match[1]));
        expect(numbers).toEqual(['F2', 'F3', 'F4', 'F1', 'F10', 'F5', 'F6', 'F7']);
    });
    test('the owner signs for what is only stated', () => {
        expect(text).toContain('I state that the work under F3 has been done. The surveyor did not see it.');
        expect(textOf(paper('compliance-letter', { text: followUpText.replace('done-as-stated', 'open') }))).not.toContain('I state that');
    });
    test('one that was not taken up is not called met, and what was recommended is said', () => {
        expect(text).toContain('F6 Bolts wasted Nothing is recorded. Not known. Recommended then: Renew the bolts.');
    });
    test('warns of what a false statement can cost', () => {
        expect(text).toContain('A statement in this letter that is not true can cost the owner the cover.');
    });
    test('evidence that is not recorded is a gap', () => {
        expect(rowOf(paper('compliance-letter', { text: followUpText.replace('evidence: "The owner states it."', '') }), 'F3')).toContain('[who stated it, and how: not recorded]');
        expect(rowOf(paper('compliance-letter', { text: followUpText.replace('evidence: "New tail measured."  looked-at: 2027-05-04', '').replace('photo "photos/tail.jpg" "The tail"', '') }), 'F2')).toContain('Not recorded: what shows it. Not recorded: when it was looked at.');
    });
    test('the photograph of a fault is no evidence of its repair', () => {
        expect(textOf(main(paper('compliance-letter', first)))).not.toMatch(/Photo \d/);
    });
    test('from a first survey with outcomes recorded', () => {
        const html = paper('compliance-letter', { ...first, text: sampleText.replace('urgency:   before-launch', 'outcome: done-and-seen  evidence: "Seen."  looked-at: 2026-02-03\n        urgency:   before-launch') });
        expect(textOf(html)).toContain('The 2 recommendations of this report are set out below');
        expect(textOf(html)).toContain('[the underwriter: not recorded]');
        expect(rowOf(html, 'F1')).toMatch(/^F1 Sink hose larger than its tail Seen\. (?:Photo \d+, Photo \d+ of the report )?Looked at on 3 February 2026\.$/);
        expect(textOf(html)).toContain('No outcome recorded 1 F2');
    });
    test('says it where no recommendation is known', () => {
        expect(textOf(paper('compliance-letter', { text: '', outside: {} }))).toContain('No recommendation of this report is known, so nothing can be said to be met.');
    });
});

test('the sample has no problems but those it is made to have', () => {
    // Two of its six open findings are urgent.
    expect(analysed().problems.filter(({ severity }) => severity !== 'hint').map(({ check }) => check.id).sort()).toEqual(['earlier-recommendation-not-taken-up', 'urgency-inflated']);
    expect(analysed().gaps).toEqual([]);
});
