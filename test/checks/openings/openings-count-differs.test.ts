import { expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'openings-count-differs';
const survey = (counts: string) => `survey "1" pre-purchase { ${counts} }\n`;

it.each([
    ['openings-outside: 9  openings-inside: 9', 0], ['openings-outside: 9  openings-inside: 8  openings-blanked: 1', 0], ['openings-outside: 9  openings-inside: 8', 1],
    ['openings-outside: 9  openings-inside: 9  openings-blanked: 1', 1], ['openings-outside: 8  openings-inside: 9', 1], ['openings-outside: 0  openings-inside: 0', 0],
    ['openings-outside: 9', 0], ['openings-inside: 9', 0], ['openings-inside: 9  openings-blanked: 1', 0], ['', 0],
])('%s: %i', (counts, expected) => {
    expect(raisedBy(id, survey(counts))).toHaveLength(expected);
});

it('counts in words that agree', () => {
    const message = (counts: string) => raisedBy(id, survey(counts))[0]?.message;
    expect(message('openings-outside: 9  openings-inside: 8')).toContain('9 openings were counted outside, 8 inside and 0 blanked: 1 was not found inside.');
    expect(message('openings-outside: 9  openings-inside: 6  openings-blanked: 1')).toContain('2 were not found inside.');
    expect(message('openings-outside: 1  openings-inside: 2')).toContain('1 opening was counted outside, 2 inside and 0 blanked: 1 more was counted inside than there is outside.');
});

it('concerns no component, points at the count inside and is due before launch', () => {
    const text = survey('openings-outside: 9  openings-inside: 8');
    expect(summary(id, text)).toEqual(['error ']);
    expect(raisedBy(id, text).map(p => pointedAt(text, p))).toEqual(['8']);
    expect(urgencies(id, text)).toEqual(['before-launch']);
});

it('is answered by accepting it of the survey as a whole, or put right by the count of those blanked', () => {
    for (const counts of ['openings-outside: 9  openings-inside: 7', 'openings-inside: 7  openings-outside: 9  openings-blanked: 1']) {
        const text = survey(counts);
        expect(correctionsIn(id, text)).toEqual(['Record 2 openings as blanked']);
        expect(summary(id, corrected(text, id, 'Record 2 openings as blanked'))).toEqual([]);
    }
    expect(correctionsIn(id, survey('openings-outside: 7  openings-inside: 9'))).toEqual([]);
});
