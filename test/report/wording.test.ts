import { describe, expect, test } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';
import { mayBeEmpty } from '../../src/record/house-report.js';
import { cautionsFor } from '../../src/report/cautions.js';
import { ReportContext } from '../../src/report/context.js';
import { renderReport } from '../../src/report/report.js';
import { inputOf, textOf } from './sample.js';

const survey = (facts = '', parts = '', kind = 'pre-purchase') => `survey "AR-1" ${kind} { issued: 2026-01-30  ${facts} }\nvessel "Heron" { }\n${parts}`;
const reportOf = (text: string) => textOf(renderReport({ ...inputOf(analyseText(text)), problems: [], gaps: [] }));
const titles = (text: string) => cautionsFor(new ReportContext(inputOf(analyseText(text)))).map(({ title }) => title);
const { vocabulary } = analyseText('').record;
const names = [...vocabulary.kinds.get('wording')?.properties.keys() ?? []];

describe('the usual words', () => {
    test('are there for every name, save the few that stand empty unless a firm sets them', () => {
        expect(names.length).toBeGreaterThan(30);
        expect(names.filter(name => !vocabulary.wording.has(name))).toEqual(['limits-lead', 'definition-of-value']);
    });
    test('never say safe, and promise nothing', () => {
        const texts = [...vocabulary.wording.values()].flatMap(({ fact }) => fact.values).map(value => value.type === 'text' ? value.prose.text : '').join('\n');
        expect(texts).not.toMatch(/\bsafe(?:ly|ty)?\b|\bwarrant/i);
        expect(texts.match(/\bguarantee/gi)).toHaveLength(1); // "is not a guarantee"
    });
    // What the trade says a report must state, each with the words that state it.
    test.each([
        ['only what could be reached', 'Only what could be reached without taking the vessel apart was examined'], ['what was closed, stowed, lined, painted, under slings', 'closed, stowed over, lined, painted, or covered by slings, stands or blocks'],
        ['design and stability', 'Stability, strength of the design'], ['state on the day', 'as found at the attendances named. It promises nothing about any later day'], ['strangers', 'Nobody else may rely on it without the surveyor’s written consent'],
        ['title', 'legal title were not searched'], ['standards and older boats', 'may not bind a vessel built before them'], ['local rules', 'follow those that hold where she is kept and used'], ['qualified people', 'carried out by people qualified for the work'],
        ['silence', 'That a part is not mentioned does not mean that it is in order'],
    ])('every report speaks of %s', (_, words) => expect(reportOf(survey())).toContain(words));
});

describe('cautions stand only where the record has what they limit', () => {
    const always = ['On the day', 'What could be reached', 'Not computed', 'Standards', 'Work', 'Title', 'Whose report'];
    const extra = (parts: string, facts = '') => titles(survey(facts, parts)).filter(title => !always.includes(title));
    test.each([
        ['nothing', '', []],
        ['an engine', 'main-engine E1', ['Engines']], ['an outboard', 'outboard E1', ['Engines']], ['a generator', 'generator G1', ['Engines']],
        ['a wire', 'conductor W1', ['Wiring']], ['a water tank', 'water-tank T1', ['Tanks']], ['a holding tank', 'holding-tank T1', ['Tanks']],
        ['a grid of moisture', 'reading M1 "m" { measures: moisture  row "a": 11 }', ['Moisture']], ['a core reading', 'chainplate C1 { core-reading: 40 }', ['Moisture']],
        ['a percussion map', 'reading M1 "m" { measures: percussion  row "a": dull }', ['Sounding']], ['gauging', 'reading M1 "m" { measures: thickness  row "a": 6 mm, 5 mm }', ['Gauging']],
        ['potentials', 'reading M1 "m" { measures: potential  row "a": -800 mV }', ['Potentials']],
        ['a mast seen from deck', 'mast M1 { inspected: from-deck }', ['Masts']], ['a mast of which it is not said', 'mast M1', ['Masts']], ['a mast climbed', 'mast M1 { inspected: climbed }', []], ['a mast unstepped', 'mast M1 { inspected: unstepped }', []],
        ['a sail', 'sail S1', ['Sails']], ['a sail hoisted', 'sail S1 { hoisted: yes }', []],
        ['a fact that was told', 'hose H1 { basis: stated }', ['What was told']], ['a value', 'valuation { opinion: 1 USD }', ['Value']],
    ])('%s', (_, parts, expected) => expect(extra(parts)).toEqual(expected));
});

describe('the firm\'s words', () => {
    test('stand in the place of the usual ones, by name, and the others stay', () => {
        const text = reportOf(`wording { caution-work: "Work is for the trades named." }\n${survey()}`);
        expect(text).toContain('Work is for the trades named.');
        expect(text).not.toContain('carried out by people qualified for the work');
        expect(text).toContain('legal title were not searched');
    });
    test('lead into a section only where they are not set empty', () => {
        const finding = 'finding F1 "x" { urgency: in-upkeep  seen: "a"  because: "b"  recommend: "c" }\n';
        expect(reportOf(survey('', finding))).toContain('Grouped by the event');
        expect(reportOf(`wording { findings-lead: "" }\n${survey('', finding)}`)).not.toContain('Grouped by the event');
        expect(analyseText(`wording { findings-lead: "" }\n${survey()}`).gaps.filter(({ code }) => code === 'wording-empty')).toEqual([]);
        expect(reportOf(`wording { limits-lead: "Read this first." }\n${survey()}`)).toContain('Read this first.');
    });
    test.each(names.filter(name => !mayBeEmpty(name)))('%s set empty is told, and the usual words stay', name => {
        const { record, gaps } = analyseText(`wording { ${name}: " " }\n${survey()}`);
        expect(gaps.filter(({ code }) => code === 'wording-empty').map(({ severity }) => severity)).toEqual(['warning']);
        expect(record.vocabulary.wording.get(name)).toEqual(vocabulary.wording.get(name));
    });
    test('give recorded facts in braces, in both systems', () => {
        expect(reportOf(`wording { part-only: "Of {vessel.name}, {vessel.draft} deep, the rig only." }\n${survey('', '', 'part-survey').replace('{ }', '{ draft: 5 ft 9 in }')}`)).toContain('Of Heron , 5 ft 9 in (1.753 m) deep, the rig only.');
    });
    test('that refer to what the survey has not are told', () => {
        expect(analyseText(`wording { part-only: "The mast {M9.material}." }\n${survey()}`).gaps.map(({ code }) => code)).toContain('id-unknown');
        expect(analyseText(`wording { part-only: "Draft {vessel.draft}." }\n${survey()}`).gaps.map(({ code }) => code)).toContain('fact-not-recorded');
    });
    test('a definition of value stands where the valuation gives none', () => {
        const house = 'wording { definition-of-value: "The price between the willing." }\n';
        expect(reportOf(`${house}${survey('', 'valuation { opinion: 1 USD }')}`)).toContain('Value means The price between the willing.');
        expect(reportOf(`${house}${survey('', 'valuation { opinion: 1 USD  basis: "Scrap" }')}`)).toContain('Value means Scrap');
        expect(reportOf(survey('', 'valuation { opinion: 1 USD }'))).toContain('Not recorded: what the value means.');
    });
    test('older facts of the firm keep working', () => {
        const text = reportOf(`firm "A" { statement: "We sign this."  limits: "Ours."  scope: "All of her."  definitions: "Near is near." }\n${survey()}`);
        for (const words of ['We sign this.', 'Ours.', 'All of her.', 'Near is near.']) {
            expect(text).toContain(words);
        }
    });
});

describe('the statement', () => {
    const closing = (text: string) => reportOf(text).split('Statement and signature').at(-1) ?? '';
    const [attended, notAttended, value, damage] = ['The vessel was attended on the dates', 'the vessel was not seen for this report', 'The value is my own unbiased opinion', 'It approves no cost on anybody\'s behalf'];
    test.each([
        ['attended', survey('attended 2026-01-20 ashore "Yard"'), [attended]], ['not attended', survey(), [notAttended]],
        ['with a value', survey('', 'valuation { opinion: 1 USD }'), [notAttended, value]], ['of damage', survey('', '', 'damage'), [notAttended, damage]],
        ['an appraisal from papers', survey('', 'valuation { opinion: 1 USD }', 'appraisal'), [notAttended, value]],
    ])('%s', (_, text, expected) => {
        expect([attended, notAttended, value, damage].filter(words => closing(text).includes(words))).toEqual(expected);
        expect(closing(text)).toContain('My fee depends neither on what is found nor on any value stated.');
    });
    test('the survey\'s own stands before the firm\'s and the usual one, and a value is still certified', () => {
        const text = closing(`firm "A" { statement: "The firm signs." }\n${survey('statement: "I sign."', 'valuation { opinion: 1 USD }')}`);
        expect(text).toContain('I sign.');
        expect(text).not.toContain('The firm signs.');
        expect(text).not.toContain('To the best of my knowledge');
        expect(text).toContain(value);
    });
});

describe('a phrase of the firm', () => {
    const name = [...vocabulary.phrases.keys()][0] ?? '';
    const own = `phrase ${name} "Do it as this firm writes it."\n`;
    test('takes the place of the catalogue\'s phrase of that name, and is no fault', () => {
        const { record, gaps } = analyseText(own + survey());
        expect(name).not.toBe('');
        expect(record.vocabulary.phrases.get(name)?.prose.text).toBe('Do it as this firm writes it.');
        expect(gaps.map(({ code }) => code)).toEqual([]);
    });
    test('is given once: a second one of that name is told, and the first holds', () => {
        const { record, gaps } = analyseText(`${own}phrase ${name} "Another."\n${survey()}`);
        expect(gaps.map(({ code }) => code)).toEqual(['declared-twice']);
        expect(record.vocabulary.phrases.get(name)?.prose.text).toBe('Do it as this firm writes it.');
    });
});

describe('how a summary counts', () => {
    const finding = (id: string, more: string) => `finding ${id} "Cracked" on H1 { urgency: in-upkeep  seen: "s"  because: "b"  recommend: "r"  ${more} }\n`;
    const summaryOf = (parts: string, attended = '') => reportOf(survey('', `hose H1\n${parts}`).replace('issued: 2026-01-30', `issued: 2026-01-30  ${attended}`));
    test('what is done and seen is not among what is still to be dealt with', () => {
        const text = summaryOf(finding('F1', '') + finding('F2', 'outcome: done-and-seen') + finding('F3', 'outcome: open'));
        expect(text).toContain('2 matters are still to be dealt with');
        expect(text).toContain('1 more is done, and the surveyor saw or tried the work.');
        expect(text).toMatch(/Done and seen, and not listed again: F2\s?\./);
        expect(text).not.toContain('3 findings are made');
    });
    test('with nothing done, findings are made', () => {
        expect(summaryOf(finding('F1', '') + finding('F2', ''))).toContain('2 findings are made');
    });
    test('days in one state stand together', () => {
        expect(summaryOf('', 'attended 2026-01-20 afloat  attended 2026-01-21 ashore  attended 2026-01-23 ashore')).toContain('She was surveyed afloat on 20 January 2026 and ashore on 21 and 23 January 2026.');
    });
});
