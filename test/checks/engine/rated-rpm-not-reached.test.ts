import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'rated-rpm-not-reached';
const engine = (facts: string, fuel = 'fuel: diesel') => `main-engine E1 { ${fuel}  ${facts} }\n`;

it.each([
    ['rated-rotation: 3000 rpm  reached-rotation: 2910 rpm', []], ['rated-rotation: 3000 rpm  reached-rotation: 2909 rpm', ['error E1']],
    ['rated-rotation: 3000 rpm  reached-rotation: 3090 rpm', []], ['rated-rotation: 3000 rpm  reached-rotation: 3091 rpm', ['warning E1']],
    ['rated-rotation: 3000 rpm', []], ['reached-rotation: 2000 rpm', []],
    ['rated-rotation: 3000 rpm  reached-rotation: 3000 rpm  dash-rotation: 3060 rpm', []], ['rated-rotation: 3000 rpm  reached-rotation: 3000 rpm  dash-rotation: 3061 rpm', ['warning E1']],
    ['reached-rotation: 3000 rpm  dash-rotation: 2939 rpm', ['warning E1']],
    ['rated-rotation: 3000 rpm  dash-rotation: 2800 rpm', ['hint E1']], ['rated-rotation: 3000 rpm  dash-rotation: 2950 rpm', []],
])('%s', (facts, expected) => {
    expect(summary(id, engine(facts))).toEqual(expected);
});

it('judges diesels only, and asks for the fuel', () => {
    const low = 'rated-rotation: 3000 rpm  reached-rotation: 2500 rpm';
    expect(summary(id, engine(low, 'fuel: gasoline'))).toEqual([]);
    expect(summary(id, engine(low, ''))).toEqual(['hint E1']);
    expect(summary(id, `vessel "Marram" { fuel: diesel }\n${engine(low, '')}`)).toEqual(['error E1']);
    expect(summary(id, `vessel "Marram" { fuel: diesel }\n${engine(low, 'fuel: gasoline')}`)).toEqual([]);
});

describe('the tachometer', () => {
    it('is settled first, unless both show an overload', () => {
        const [off] = raisedBy(id, engine('rated-rotation: 3000 rpm  reached-rotation: 2850 rpm  dash-rotation: 3000 rpm'));
        expect(off?.message).toContain('independent tachometer');
        const [both] = raisedBy(id, engine('rated-rotation: 3000 rpm  reached-rotation: 2500 rpm  dash-rotation: 2700 rpm'));
        expect(both?.message).toContain('of its rated');
        expect(both?.severity).toBe('error');
    });
    it('is read off the trial, and its error taken off what the helm showed', () => {
        const trial = (facts: string) => `${engine(facts)}reading TR1 "Trial" {\n    measures: trial\n    row "Half": 1800 rpm, 1900 rpm, 6 kn\n    row "Slow": 1000 rpm, 1010 rpm, 4 kn\n}\n`;
        expect(summary(id, trial('rated-rotation: 3000 rpm'))).toEqual(['warning E1']);
        const text = trial('rated-rotation: 3000 rpm  dash-rotation: 3150 rpm');
        const right = corrected(text, id, 'Record 2984 rpm as reached by E1: 3150 rpm less the error of its tachometer');
        expect(right).toContain('reached-rotation: 2984 rpm');
    });
});

describe('twins', () => {
    const twins = (port: string, starboard: string, other = '3000 rpm') => `main-engine E1 { fuel: diesel  side: port  rated-rotation: 3000 rpm  reached-rotation: ${port} }\nmain-engine E2 { fuel: diesel  side: starboard  rated-rotation: ${other}  reached-rotation: ${starboard} }\n`;
    it.each([['3080 rpm', '2990 rpm', []], ['3080 rpm', '2980 rpm', ['warning E1 E2']], ['2920 rpm', '3080 rpm', ['warning E1 E2']], ['2900 rpm', '3080 rpm', ['error E1']]])('%s and %s', (port, starboard, expected) => {
        expect(summary(id, twins(port, starboard))).toEqual(expected);
    });
    it('are left alone where they are rated differently', () => {
        expect(summary(id, twins('3000 rpm', '2600 rpm', '2600 rpm'))).toEqual([]);
    });
});

it('is due before completion for a buyer', () => {
    const low = engine('rated-rotation: 3000 rpm  reached-rotation: 2800 rpm');
    expect(urgencies(id, low)).toEqual(['within-days']);
    expect(urgencies(id, `survey "1" pre-purchase {}\n${low}`)).toEqual(['before-completion']);
    expect(urgencies(id, engine('rated-rotation: 3000 rpm  reached-rotation: 3200 rpm'))).toEqual(['in-upkeep']);
});
