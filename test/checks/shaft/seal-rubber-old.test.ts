import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'seal-rubber-old';
const surveyed = (text: string, state = 'ashore') => `survey "1" pre-purchase { attended 2026-10-06 ${state} "Yard" }\n${text}\n`;

describe('age', () => {
    it.each([
        ['face-seal S1 { fitted: 2020-10-06 }', []], ['face-seal S1 { fitted: 2020-10-05 }', ['error S1']], // six years to the day
        ['lip-seal S1 { fitted: 2020-09 }', ['error S1']], ['lip-seal S1 { fitted: 2020-10 }', []], ['face-seal S1 { fitted: 2020 }', []], ['face-seal S1 { fitted: 2019 }', ['error S1']],
        ['face-seal S1 { fitted: 2015  rubber-fitted: 2023-04 }', []], ['face-seal S1 { fitted: 2023-04  rubber-fitted: 2015 }', ['error S1']],
        ['outdrive S1 { bellows-fitted: 2021-10-06 }', []], ['outdrive S1 { bellows-fitted: 2021-10-05 }', ['error S1']],
        ['saildrive S1 { seal-fitted: 2019-10-06 }', []], ['saildrive S1 { seal-fitted: 2019-10-05 }', ['error S1']], // seven years, two of them leap years
        ['pod S1 { seal-fitted: 2005 }', []], ['pod S1 { seal-fitted: 2005  makers-term: 10 years }', ['error S1']],
        ['packed-gland S1 { fitted: 1990 }', []],
    ])('%s', (text, expected) => {
        expect(summary(id, surveyed(text))).toEqual(expected);
    });

    it('goes by the term of the maker, shorter or longer', () => {
        expect(summary(id, surveyed('face-seal S1 { fitted: 2022-05  makers-term: 4 years }'))).toEqual(['error S1']);
        expect(summary(id, surveyed('face-seal S1 { fitted: 2022-05  makers-term: 48 months }'))).toEqual(['error S1']);
        expect(summary(id, surveyed('face-seal S1 { fitted: 2018-05  makers-term: 10 years }'))).toEqual([]);
        expect(raisedBy(id, surveyed('face-seal S1 { fitted: 2022-05  makers-term: 4 years }'))[0]?.draft?.seen).toContain('{S1.makers-term}');
    });

    it('goes by the firm’s limit, and says so', () => {
        const text = `yardsticks { shaft-bellows-life: 4 years }\n${surveyed('face-seal S1 { fitted: 2021-05 }')}`;
        expect(raisedBy(id, text)[0]?.message).toContain('4 years taken as the firm’s limit');
    });
});

describe('what is missing', () => {
    it.each([
        ['face-seal S1', ['hint S1']], ['saildrive S1', ['hint S1']], ['outdrive S1', ['hint S1']], ['pod S1', []], ['packed-gland S1', []], ['shaft-seal S1', []],
        ['shaft-seal S1 { fitted: 2015 }', ['hint S1']], ['shaft-seal S1 { fitted: 2024 }', []], ['shaft-seal S1 { fitted: 2015  makers-term: 5 years }', ['error S1']],
    ])('%s', (text, expected) => {
        expect(summary(id, surveyed(text))).toEqual(expected);
    });
    it('asks when she was attended', () => {
        expect(summary(id, 'face-seal S1 { fitted: 2015 }\n')).toEqual(['hint S1']);
        expect(raisedBy(id, 'face-seal S1 { fitted: 2015 }\n')[0]?.message).toContain('attended');
    });
});

describe('cracks', () => {
    it.each(['face-seal S1 { cracked: yes }', 'packed-gland S1 { cracked: yes }', 'outdrive S1 { bellows-cracked: yes  bellows-fitted: 2026-01 }', 'saildrive S1 { seal-cracked: yes }', 'pod S1 { seal-cracked: yes }'])('%s', text => {
        expect(summary(id, surveyed(text))).toEqual(['error S1']);
    });
    it('are due before launching, or at once afloat', () => {
        expect(urgencies(id, surveyed('face-seal S1 { cracked: yes }'))).toEqual(['before-launch']);
        expect(urgencies(id, surveyed('face-seal S1 { cracked: yes }', 'afloat'))).toEqual(['at-once']);
        expect(urgencies(id, surveyed('face-seal S1 { fitted: 2015 }'))).toEqual(['next-haul-out']);
    });
    it('are cleared once renewed', () => {
        expect(summary(id, corrected(surveyed('outdrive S1 { bellows-fitted: 2026-01  bellows-cracked: yes }'), id, 'Record the bellows of S1 as renewed and sound'))).toEqual([]);
    });
});
