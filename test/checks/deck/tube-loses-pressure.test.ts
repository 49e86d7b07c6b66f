import { describe, expect, it } from 'vitest';
import { raisedBy, urgencies } from '../check-text.js';

const tube = (facts: string, vessel = '') => `${vessel}inflatable-tube TB1 "Port tube" { ${facts} }\n`;
const verdict = (text: string) => raisedBy('tube-loses-pressure', text).map(({ severity }) => severity);

describe('tube-loses-pressure', () => {
    it.each([
        // Air at one temperature: the limit itself is silent, just past it is a fault.
        ['start-pressure: 250 mbar  end-pressure: 200 mbar  air-start: 20 C  air-end: 20 C', []], ['start-pressure: 250 mbar  end-pressure: 199 mbar  air-start: 20 C  air-end: 20 C', ['error']],
        ['start-pressure: 3.5 psi  end-pressure: 2.8 psi  air-start: 68 F  air-end: 68 F', []], ['start-pressure: 3.5 psi  end-pressure: 2.7 psi  air-start: 68 F  air-end: 68 F', ['error']],
        // (170 + 1013.25) × 293.15 ÷ 283.15 − 1013.25 = 211.8 mbar of 240: 11.8 % lost.
        ['start-pressure: 240 mbar  end-pressure: 170 mbar  air-start: 20 C  air-end: 10 C', []], ['start-pressure: 240 mbar  end-pressure: 170 mbar  air-start: 20 C  air-end: 20 C', ['error']],
        // Warmer air hides a leak.
        ['start-pressure: 240 mbar  end-pressure: 235 mbar  air-start: 5 C  air-end: 30 C', ['error']],
        ['start-pressure: 240 mbar  end-pressure: 170 mbar', ['hint']], ['start-pressure: 240 mbar  end-pressure: 170 mbar  air-end: 12 C', ['hint']], ['start-pressure: 240 mbar  end-pressure: 200 mbar', []],
        ['start-pressure: 250 mbar  end-pressure: 0 mbar', ['error']], ['end-pressure: 100 mbar', []], ['start-pressure: 240 mbar, 240 mbar  end-pressure: 100 mbar', []],
        ['start-pressure: 240 mbar  end-pressure: 230 mbar, 100 mbar  air-start: 20 C  air-end: 20 C', ['error']],
    ])('%s', (facts, expected) => {
        expect(verdict(tube(facts))).toEqual(expected);
        expect(verdict(tube(facts).replaceAll('\n', '\r\n'))).toEqual(expected);
    });
    it('shows the correction by the gas law', () => {
        const [problem] = raisedBy('tube-loses-pressure', tube('start-pressure: 240 mbar  end-pressure: 150 mbar  air-start: 20 C  air-end: 10 C'));
        expect(problem?.message).toContain('(150 + 1013.3) × 293.2 ÷ 283.2 − 1013.3, the end is 191 mbar (2.77 psi)');
        expect(problem?.message).toContain('20.4 % of the starting pressure is lost, over the usual limit of 20 %');
        expect(problem?.message).toContain('240 mbar (3.48 psi)');
    });
    it('is due sooner where most of it is gone, and on a boat that floats by her tubes', () => {
        const gone = 'start-pressure: 240 mbar  end-pressure: 60 mbar  air-start: 20 C  air-end: 20 C';
        expect(urgencies('tube-loses-pressure', tube(gone))).toEqual(['before-use']);
        expect(urgencies('tube-loses-pressure', tube(gone, 'vessel "Marram" { type: rigid-inflatable }\n'))).toEqual(['before-departure']);
        expect(urgencies('tube-loses-pressure', tube(gone.replace('60', '150')))).toEqual(['within-days']);
    });
    it('judges a table once, and not its tube besides', () => {
        const table = 'reading M1 "Tubes" on TB1 {\n    measures: tube-pressure\n    row "Bow": 240 mbar, 120 mbar, 24 h, 20 C, 20 C\n    row "Port": 240 mbar, 235 mbar, 24 h, 20 C, 20 C\n    row "Stern": 240 mbar, none, 24 h, 20 C, 20 C\n}\n';
        const problems = raisedBy('tube-loses-pressure', `${tube('start-pressure: 240 mbar  end-pressure: 120 mbar  air-start: 20 C  air-end: 20 C')}${table}`);
        expect(problems).toHaveLength(1);
        expect(problems[0]?.message).toContain('Bow fell');
    });
});
