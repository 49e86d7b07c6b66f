import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { analyseText, analyseTexts } from '../../src/checks/survey.js';
import { obligatorySections } from '../../src/record/house-report.js';
import { ReportContext } from '../../src/report/context.js';
import { sectionsOf, sectionWords, withoutDeadLinks } from '../../src/report/outline.js';
import { renderReport } from '../../src/report/report.js';
import { fc } from './property.js';
import { inputOf, sampleText, textOf } from './sample.js';

/** A survey with matter for every section that a single record can fill. */
const full = (kind: string, house = '') => `${house}
firm "Alder and Rowe" { definitions: "Near means within arm's length." }
survey "AR-1" ${kind} {
    issued: 2026-01-30  trial: "Half an hour in the bay"  contract: "Contract of 2025"  occurrence: "She struck"
    attended 2026-01-20 ashore "Yard"
    attended 2026-01-21 afloat "Bay"
}
vessel "Heron" { type: sailing-yacht }
system skin "Through-hulls" {
    hose H1 "Sink hose" { bore: 38 mm  condition: sound }
    certificate CT1 "Title" { paper: title  number: "77"  expires: 2026-01-02 }
}
reading M1 "Moisture" on H1 { measures: moisture  row "Port": 11, 12 }
reading T1 "Runs" { measures: trial  row "Run 1": 1000 rpm, 4 kn, 5 kn }
reading L1 "Contract list" { measures: contract  row "Anchor": "20 kg", "16 kg", no }
finding F1 "A matter" on H1 { urgency: in-upkeep  seen: "a"  because: "b"  recommend: "c"  cites: "ISO 9093" "4"  relation: new  cost: 90 USD }
accept hose-old on H1 because "New enough"
valuation { opinion: 21000 USD  effective: 2026-01-20  basis: "Between willing parties" }
`;

const contextOf = (text: string) => new ReportContext({ ...inputOf(analyseText(text)), problems: [], gaps: [] });
const ids = (text: string) => sectionsOf(contextOf(text)).map(({ id }) => id);
const minimal = (kind: string, facts = '') => `survey "1" ${kind} { ${facts} }\nvessel "Heron" { }\n`;

describe('sections by kind of survey', () => {
    // The order of trade practice for each kind, as the catalogue's outlines give it, written out by hand.
    const after = ['standards', 'statement', 'documents'];
    test.each([
        ['pre-purchase', ['summary', 'scope', 'limits', 'words', 'particulars', 'system-skin', 'measurements', 'trial', 'findings', 'accepted', 'recommendations', 'valuation', ...after]],
        ['condition-and-value', ['summary', 'scope', 'particulars', 'limits', 'recommendations', 'words', 'system-skin', 'measurements', 'trial', 'findings', 'accepted', 'valuation', ...after]],
        ['damage', ['summary', 'scope', 'limits', 'particulars', 'damage', 'findings', 'accepted', 'recommendations', 'system-skin', 'measurements', 'trial', 'valuation', 'words', ...after]],
        ['appraisal', ['summary', 'scope', 'particulars', 'valuation', 'limits', 'words', 'system-skin', 'measurements', 'trial', 'findings', 'accepted', 'recommendations', ...after]],
        ['delivery', ['summary', 'scope', 'limits', 'words', 'particulars', 'contract', 'findings', 'accepted', 'recommendations', 'trial', 'system-skin', 'measurements', 'valuation', ...after]],
        ['re-inspection', ['summary', 'scope', 'limits', 'findings', 'accepted', 'recommendations', 'particulars', 'system-skin', 'measurements', 'trial', 'valuation', 'words', ...after]],
        ['part-survey', ['summary', 'scope', 'limits', 'words', 'particulars', 'system-skin', 'measurements', 'trial', 'findings', 'accepted', 'recommendations', 'valuation', ...after]],
        ['', ['summary', 'scope', 'limits', 'words', 'particulars', 'damage', 'contract', 'system-skin', 'measurements', 'trial', 'findings', 'accepted', 'recommendations', 'valuation', ...after]],
    ])('%s', (kind, expected) => {
        expect(ids(full(kind)).filter(id => id !== 'open' && id !== 'assumptions')).toEqual(expected);
    });
    test('a table of readings stands in one section only', () => {
        const html = renderReport({ ...inputOf(analyseText(full('pre-purchase'))), problems: [], gaps: [] });
        expect(html.match(/<h3>Runs<\/h3>/g)).toHaveLength(1);
        expect(html.match(/<h3>Moisture<\/h3>/g)).toHaveLength(1);
        expect(html).not.toContain('<h3>Contract list</h3>');
    });
    test('an earlier report that is followed comes right after the summary', () => {
        const uri = 'memory:/a.survey';
        const analysis = analyseTexts(new Map([[uri, minimal('re-inspection', 'follows: "AR-0"')]]), uri, {
            followed: { number: 'AR-0', issued: '2025-01-01', source: 'AR-0.survey', isFrozen: true, findings: [{ id: 'F1', title: 'A matter', on: [], recommend: 'c' }] },
        });
        expect(sectionsOf(new ReportContext({ ...inputOf(analysis), problems: [], gaps: [] })).map(({ id }) => id).slice(0, 2)).toEqual(['summary', 'earlier']);
    });
});

describe('what was not done is told', () => {
    const told = (kind: string, facts = '') => textOf(renderReport({ ...inputOf(analyseText(minimal(kind, facts))), problems: [], gaps: [] }));
    const [trial, hauled, afloat, measured, value, contract] = ['No trial is recorded.', 'No attendance with her out of the water is recorded.', 'No attendance with her afloat is recorded.', 'No series of measurements is recorded.', 'No opinion of value is given.', 'No comparison with the contract is recorded.'];
    const all = [trial, hauled, afloat, measured, value, contract];
    test.each([
        ['pre-purchase', '', [trial, hauled, afloat, measured, value]], ['condition-and-value', '', [hauled, measured, value]], ['delivery', '', [trial, afloat, measured, contract]],
        ['appraisal', '', [value]], ['damage', '', []], ['re-inspection', '', []], ['part-survey', '', []], ['', '', []],
        ['pre-purchase', 'attended 2026-01-20 ashore "Yard"', [trial, afloat, measured, value]], ['pre-purchase', 'attended 2026-01-20 afloat "Bay"', [trial, hauled, measured, value]],
        ['pre-purchase', 'state: ashore  trial: "An hour"', [afloat, measured, value]],
    ])('%s %s', (kind, facts, expected) => {
        const text = told(kind, facts);
        expect(all.filter(words => text.includes(words))).toEqual(all.filter(words => expected.includes(words)));
        expect(text.includes('Not done What')).toBe(expected.length > 0);
    });
    test('with the surveyor\'s reason, or that none is recorded', () => {
        expect(told('condition-and-value', 'not-hauled: "The lift was out of order"')).toContain('beyond what is recorded as seen from inside or from afloat. The lift was out of order');
        expect(told('condition-and-value')).toContain('not to be read as one. No reason is recorded.');
        expect(told('condition-and-value', 'no-value: "The client asked for none"')).toContain('The client asked for none');
    });
    test('a reason for what was done is printed without the words that it was not', () => {
        const text = told('condition-and-value', 'attended 2026-01-20 ashore "Yard"  not-hauled: "Only lifted on the second day"');
        expect(text).toContain('Only lifted on the second day');
        expect(text).not.toContain(hauled);
    });
    test('the sections of trial, measurements and value say so in their places', () => {
        expect(ids(minimal('pre-purchase'))).toEqual(['summary', 'scope', 'limits', 'particulars', 'measurements', 'trial', 'valuation', 'statement']);
    });
    test('a survey of a part says so first and last', () => {
        const text = told('part-survey', 'scope: "The rig only"');
        expect(text.match(/This is a survey of a part only/g)).toHaveLength(3);
        expect(text).toContain('nothing may be concluded about it. The rig only');
    });
});

describe('the firm\'s outline', () => {
    const outlineOf = (sections: string) => `outline pre-purchase { sections: ${sections} }\n`;
    test('gives the order and leaves out what it does not name', () => {
        expect(ids(full('pre-purchase', outlineOf('summary, changes, earlier, findings, accepted, limits, particulars, value, statement')))).toEqual(['summary', 'findings', 'accepted', 'limits', 'particulars', 'valuation', 'statement']);
    });
    test('is for its own kind only', () => {
        expect(ids(full('appraisal', outlineOf('summary, limits, statement')))).toContain('particulars');
    });
    test('named any-kind it is for a survey without a kind, and not for one that has its own', () => {
        const house = 'outline any-kind { sections: summary, limits, findings, accepted, value, statement }\n';
        expect(ids(full('', house)).filter(id => id !== 'open')).toEqual(['summary', 'limits', 'findings', 'accepted', 'valuation', 'statement']);
        expect(ids(full('pre-purchase', house))).toContain('particulars');
    });
    test('what was not done still stands among the limits where the section is left out', () => {
        const text = textOf(renderReport({ ...inputOf(analyseText(`${outlineOf('summary, limits, statement')}${minimal('pre-purchase')}`)), problems: [], gaps: [] }));
        expect(text).toContain('No trial is recorded.');
    });
    test('what it may not leave out is told, and the mend settles it', () => {
        const text = full('damage', 'outline damage { sections: summary, scope, statement }\n');
        const gap = analyseText(text).gaps.find(({ code }) => code === 'outline-leaves-out');
        expect(gap?.severity).toBe('warning');
        expect(gap?.message).toContain('leaves out earlier, changes, limits, damage, findings, accepted, value.');
        const mend = gap?.mends[0];
        expect(mend).toBeDefined();
        const mended = `${text.slice(0, mend?.span.start)}${mend?.text ?? ''}${text.slice(mend?.span.end)}`;
        expect(analyseText(mended).gaps.filter(({ code }) => code === 'outline-leaves-out')).toEqual([]);
    });
    test('an unknown section, and an outline for no kind of survey, are told with the nearest', () => {
        const gaps = analyseText(`outline pre-purchse { sections: summary, limts }\n${minimal('pre-purchase')}`).gaps;
        expect(gaps.flatMap(({ mends }) => mends.map(({ title }) => title))).toEqual(expect.arrayContaining(['Change to pre-purchase', 'Change to limits']));
    });
    const every = sectionWords(analyseText(minimal('')).record);
    test('hides nothing that a reader must find, repeats nothing, and leads no link astray', () => fc.assert(fc.property(fc.shuffledSubarray(every, { minLength: 1 }), fc.constantFrom('pre-purchase', 'damage', 'delivery'), (words, kind) => {
        const text = full(kind, `outline ${kind} { sections: ${words.join(', ')} }\n`);
        const analysis = analyseText(text);
        const used = sectionWords(analysis.record);
        expect(new Set(used).size).toBe(used.length);
        expect(used.filter(word => !obligatorySections(kind).includes(word))).toEqual(words.filter(word => !obligatorySections(kind).includes(word)));
        const found = ids(text);
        expect(['summary', 'limits', 'findings', 'accepted', 'valuation', 'statement', ...kind === 'damage' ? ['damage'] : []].filter(id => !found.includes(id))).toEqual([]);
        const html = renderReport({ ...inputOf(analysis), problems: [], gaps: [] });
        const anchors = new Set([...html.matchAll(/ id="([^"]*)"/g)].map(match => match[1]));
        expect([...html.matchAll(/<a[^>]* href="#([^"]*)"/g)].map(match => match[1]).filter(target => !anchors.has(target))).toEqual([]);
    }), { numRuns: 25 }), 120_000);
    test('dead links become text, live ones stay', () => {
        expect(withoutDeadLinks('<p id="a"><a href="#a">one</a> <a href="#b" class="x">t<b>w</b>o</a></p>')).toBe('<p id="a"><a href="#a">one</a> t<b>w</b>o</p>');
    });
});

describe('open problems', () => {
    const unanswered = sampleText.replace('answers:   hose-and-spigot-differ', '');
    test.each(['summary, limits', 'statement, photos, findings'])('stand first in a draft, whatever the outline: %s', sections => {
        const context = new ReportContext(inputOf(analyseText(`outline pre-purchase { sections: ${sections} }\n${unanswered}`)));
        expect(context.isDraft).toBe(true);
        expect(sectionsOf(context)[0]?.id).toBe('open');
    });
    test('follow the findings where they hold nothing up', () => {
        const input = inputOf(analyseText(sampleText));
        const context = new ReportContext({ ...input, gaps: input.gaps?.map(gap => ({ ...gap, severity: 'warning' as const })) ?? [], problems: [] });
        const order = sectionsOf(context).map(({ id }) => id);
        expect(order.indexOf('open')).toBe(order.indexOf('findings') + 1);
    });
});

describe('every invented survey', () => {
    const folder = fileURLToPath(new URL('../surveys/', import.meta.url));
    const validator = new HtmlValidate({ extends: ['html-validate:standard', 'html-validate:a11y', 'html-validate:document'], rules: { 'require-sri': 'off', 'long-title': 'off' } });
    test.each(readdirSync(folder).filter(name => name.endsWith('.survey')))('%s gives valid pages whose links lead somewhere', async name => {
        const input = inputOf(analyseText(readFileSync(`${folder}${name}`, 'utf8')));
        for (const html of [renderReport(input), renderReport({ ...input, problems: [], gaps: [] })]) {
            const { results } = await validator.validateString(html);
            expect(results.flatMap(result => result.messages.filter(m => m.ruleId !== 'no-inline-style').map(m => `${m.ruleId}: ${m.message} at ${m.line}:${m.column}`))).toEqual([]);
            const anchors = new Set([...html.matchAll(/ id="([^"]*)"/g)].map(match => match[1]));
            expect([...html.matchAll(/<a[^>]* href="#([^"]*)"/g)].map(match => match[1]).filter(target => !anchors.has(target))).toEqual([]);
        }
    });
});
