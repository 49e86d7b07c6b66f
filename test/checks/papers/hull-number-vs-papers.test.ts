import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'hull-number-vs-papers';
const vessel = 'vessel "M" { hull-number: "ABC12045H495" }\n';

describe(id, () => {
    it.each([
        ['certificate C1 { hull-number: "ABC12045H495" }', []], ['certificate C1 { hull-number: "US-ABC12045H495" }', []], ['certificate C1 { hull-number: "abc-12045-h495" }', []], ['certificate C1 { hull-number: "ABC12O45H495" }', ['error C1']],
        ['insurance C1 { hull-number: "ABC12045H49" }', ['error C1']], ['hull-number C1 { text: "ABC12045H496" }', ['error C1']], ['certificate C1', []], ['certificate C1 { hull-number: "" }', []],
        ['hull-number H1 { text: "ABC12045H495" }\ncertificate C1 { hull-number: "ABC12045H494" }', ['error C1 H1']], ['certificate C1 { hull-number: "ABC12045H494" }\nradio-license C2 { hull-number: "ABC12045H493" }', ['error C1 C2']],
        ['hull-number H1 { altered: yes }', ['error H1']], ['hull-number H1 { altered: yes  text: "ABC12045H494" }', ['error H1', 'error H1']],
    ])('%s', (papers, expected) => {
        expect(summary(id, `${vessel}${papers}\n`)).toEqual(expected);
    });
    it('shows where they part, and signs that are taken for each other', () => {
        const [problem] = raisedBy(id, `${vessel}certificate C1 { hull-number: "ABC12O45H495" }\n`);
        expect(problem?.message).toMatch(/character 6, 0 against O/);
        expect(problem?.message).toMatch(/taken for each other/);
        expect(raisedBy(id, `${vessel}certificate C1 { hull-number: "ABC12945H495" }\n`)[0]?.message).not.toMatch(/taken for each other/);
        expect(raisedBy(id, `${vessel}certificate C1 { hull-number: "ABC12045H49" }\n`)[0]?.message).toMatch(/12 against 11 characters/);
    });
    it('offers either reading', () => {
        const text = `${vessel}certificate C1 { hull-number: "ABC12O45H495" }\n`;
        expect(correctionsIn(id, text)).toEqual(['Record the number in C1 as ABC12045H495', 'Record the hull number as ABC12O45H495']);
        for (const title of correctionsIn(id, text)) {
            expect(raisedBy(id, corrected(text, id, title)), title).toEqual([]);
        }
    });
    it('compares readings with each other where the vessel records none', () => {
        expect(summary(id, 'hull-number H1 { text: "ABC12045H495" }\ncertificate C1 { hull-number: "ABC12045H494" }\n')).toEqual(['error C1 H1']);
    });
    it('is due before completion in a pre-purchase survey only', () => {
        const papers = `${vessel}certificate C1 { hull-number: "ABC12045H494" }\n`;
        expect(urgencies(id, `survey "1" pre-purchase {}\n${papers}`)).toEqual(['before-completion']);
        expect(urgencies(id, `survey "1" condition-and-value {}\n${papers}`)).toEqual(['within-days']);
        expect(urgencies(id, papers)).toEqual(['within-days']);
    });
});

describe('hull-number-malformed, on what was read at the hull', () => {
    const malformed = 'hull-number-malformed';
    it('judges the first reading where the vessel records none', () => {
        const text = 'hull-number H1 { text: "ABC12O45A090" }\n';
        expect(summary(malformed, text)).toEqual(['error H1']);
        expect(raisedBy(malformed, corrected(text, malformed, 'Read the letters in its serial as figures: ABC12045A090'))).toEqual([]);
        expect(summary(malformed, `${vessel}${text}`)).toEqual([]);
        expect(summary('hull-number-year-disagrees', 'vessel "M" { built: 1990 }\nhull-number H1 { text: "ABC12345H495" }\n')).toEqual(['error H1']);
    });
    it('judges a model year that lies ahead by the day of the survey', () => {
        const text = 'vessel "M" { hull-number: "ABC12345C565" }\n';
        expect(summary(malformed, `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\n${text}`)).toHaveLength(1);
        expect(summary(malformed, text)).toEqual([]);
    });
    it('is due before completion in a pre-purchase survey only', () => {
        const bad = 'vessel "M" { hull-number: "ABC12O45A090" }\n';
        expect(urgencies(malformed, `survey "1" pre-purchase {}\n${bad}`)).toEqual(['before-completion']);
        expect(urgencies(malformed, bad)).toEqual(['within-days']);
    });
});
