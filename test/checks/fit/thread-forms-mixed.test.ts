import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'thread-forms-mixed';
const stem = (male: string, female: string, joint = '', opening = 'below-waterline: 1 ft') => `through-hull TH1 { ${opening}  thread: ${male} }\nvalve SV1 { thread: ${female} }\nrun R1: TH1 -> { ${joint} } SV1\n`;

describe('forms', () => {
    it.each([
        ['nps', 'npt', 1], ['nps', 'nps', 0], ['npt', 'npt', 0], ['npt', 'nps', 0], ['bspp', 'bspt', 1], ['bspt', 'bspp', 0], ['bspp', 'bspp', 0],
        ['bspp', 'npt', 1], ['npt', 'bspp', 1], ['nps', 'bspp', 1], ['bspt', 'npt', 1], ['none', 'npt', 0],
    ])('stem %s into %s: %i', (male, female, count) => {
        expect(raisedBy(id, stem(male, female))).toHaveLength(count);
    });

    it('knows the male thread from the parts, whichever comes first', () => {
        expect(summary(id, 'valve SV1 { female-thread: npt }\nfitting F1 { male-thread: nps }\nrun R1: SV1 -> F1\n')).toEqual(['error SV1 F1']);
        expect(summary(id, 'fitting F1 { male-thread: nps }\nvalve SV1 { female-thread: npt }\nrun R1: F1 -> SV1\n')).toEqual(['error SV1 F1']);
        expect(summary(id, 'fitting F1\nvalve SV1\nrun R1: F1 -> { male-thread: nps  female-thread: npt } SV1\n')).toEqual(['error SV1 F1']);
    });

    it('asks which is the male thread where that decides', () => {
        const text = 'fitting F1 { thread: nps }\nvalve SV1 { thread: npt }\nrun R1: F1 -> SV1\n';
        expect(summary(id, text)).toEqual(['hint SV1 F1']);
        expect(raisedBy(id, text)[0]?.message).toContain('male-thread and female-thread');
    });
});

it.each([
    ['turns-engaged: 3.5', 'below-waterline: 1 ft', 'at-once'],
    ['turns-engaged: 4', 'below-waterline: 1 ft', 'next-haul-out'],
    ['', 'below-waterline: 1 ft', 'next-haul-out'],
    ['turns-engaged: 2', 'above-waterline: 1 ft', 'next-haul-out'],
])('urgency with %s, %s: %s', (joint, opening, urgency) => {
    expect(urgencies(id, stem('nps', 'npt', joint, opening))).toEqual([urgency]);
});

it('records the threads as matched from either side', () => {
    expect(summary(id, corrected(stem('nps', 'npt'), id, 'Record the thread of SV1 as nps'))).toEqual([]);
    expect(summary(id, corrected(stem('nps', 'npt'), id, 'Record the thread of TH1 as npt'))).toEqual([]);
});
