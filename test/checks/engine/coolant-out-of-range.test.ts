import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'coolant-out-of-range';
const coolant = (facts: string, coldest = '') => `vessel "Marram" { ${coldest === '' ? '' : `coldest-expected: ${coldest}`} }\ncoolant C1 { ${facts} }\n`;
const messages = (text: string) => raisedBy(id, text).map(problem => problem.message).join('\n');

describe('share of glycol', () => {
    it.each([
        ['glycol: 29.9 %', ['error C1']], ['glycol: 30 %', ['warning C1']], ['glycol: 39.9 %', ['warning C1']], ['glycol: 40 %', []], ['glycol: 60 %', []], ['glycol: 60.1 %', ['error C1']],
        ['glycol: 35 %  maker-low: 33 %  maker-high: 50 %', []], ['glycol: 32 %  maker-low: 33 %', ['error C1']], ['glycol: 55 %  maker-low: 33 %  maker-high: 50 %', ['error C1']],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, coolant(facts))).toEqual(expected);
    });

    it('says that past about 68 % the mix freezes sooner again', () => {
        expect(messages(coolant('glycol: 75 %'))).toContain('68 %');
        expect(messages(coolant('glycol: 65 %'))).not.toContain('68 %');
    });
});

describe('the band', () => {
    const firms = (facts: string, limits: string) => `yardsticks { ${limits} }\n${coolant(facts)}`;
    it.each([
        ['glycol: 30 %', 'glycol-least: 35 %', ['error C1']], ['glycol: 36 %', 'glycol-least: 35 %', ['warning C1']], ['glycol: 40 %', 'glycol-working: 45 %', ['warning C1']], ['glycol: 31 %', 'glycol-working: 25 %', []],
        ['glycol: 65 %', 'glycol-most: 65 %', []], ['glycol: 66 %', 'glycol-most: 65 %', ['error C1']], ['glycol: 45 %', 'glycol-most: 40 %  glycol-least: 20 %', ['error C1']],
    ] as const)('%s with %s', (facts, limits, expected) => {
        expect(summary(id, firms(facts, limits))).toEqual(expected);
    });
    it('is named: the firm’s, the usual one or the maker’s', () => {
        expect(messages(firms('glycol: 66 %', 'glycol-most: 65 %'))).toContain('over 65 % (the firm’s limit)');
        expect(messages(coolant('glycol: 66 %'))).toContain('over 60 % (the usual limit)');
        expect(messages(coolant('glycol: 66 %  maker-high: 55 %'))).toContain('over 55 % (the limit of its maker)');
        expect(messages(firms('glycol: 45 %', 'glycol-most: 40 %  glycol-least: 20 %'))).toContain('Bring it to 30 %'); // half and half lies outside
    });
});

describe('gel', () => {
    it('is met by flushing over 80 %, not by draining part', () => {
        const strong = messages(coolant('glycol: 81 %  glycol-kind: ethylene  volume: 12 L'));
        expect(strong).toContain('Flush the system');
        expect(strong).toContain('6 L (1.59 gal) of concentrate and 6 L (1.59 gal) of water');
        expect(strong).not.toContain('draining');
        expect(raisedBy(id, coolant('glycol: 81 %  volume: 12 L'))[0]?.draft?.recommend).toContain('flush the system');
        expect(messages(coolant('glycol: 80 %  volume: 12 L'))).toContain('draining');
    });
    it('is not looked for where inhibitors are organic, nor where the maker allows such a share', () => {
        expect(messages(coolant('glycol: 90 %  inhibitor: organic  volume: 12 L'))).not.toContain('gel');
        expect(summary(id, coolant('glycol: 85 %  maker-low: 40 %  maker-high: 90 %'))).toEqual([]);
    });
});

describe('freezing and boiling points', () => {
    it('are told for the mix found', () => {
        expect(messages(coolant('glycol: 25 %  glycol-kind: ethylene'))).toContain('freezes at about -12.1 C (10.2 F) and boils at about 103.3 C (217.9 F)');
        expect(messages(coolant('glycol: 25 %  glycol-kind: propylene'))).toContain('freezes at about -10 C (14 F) and boils at about 101.1 C (214 F)');
        expect(messages(coolant('glycol: 25 %'))).toContain('-12.1 C (10.2 F) as ethylene glycol and at about -10 C (14 F) as propylene glycol');
        expect(raisedBy(id, coolant('glycol: 25 %  glycol-kind: ethylene'))[0]?.figures?.['freezes, ethylene']).toEqual({ value: -12.1, unit: 'C' });
    });
    it('say where the table ends', () => {
        expect(messages(coolant('glycol: 70 %  glycol-kind: propylene'))).toContain('somewhere under -51.1 C (-60 F), where the table of freezing points ends at 60 %');
        expect(raisedBy(id, coolant('glycol: 70 %  glycol-kind: propylene'))[0]?.figures?.['freezes, propylene']).toBeUndefined();
        expect(messages(coolant('glycol: 70 %  glycol-kind: ethylene'))).not.toContain('table');
        expect(messages(coolant('glycol: 70 %  glycol-kind: propylene'))).not.toContain('68 %'); // it does not turn back
    });
    it('count the cap', () => {
        expect(messages(coolant('glycol: 65 %  glycol-kind: ethylene  cap-pressure: 15 psi'))).toContain('under its cap');
        expect(messages(coolant('glycol: 65 %  glycol-kind: ethylene'))).not.toContain('under its cap');
    });
    it('are not told of a reading that is void, nor of mixed kinds', () => {
        expect(messages(coolant('glycol: 50 %  glycol-kind: propylene  instrument: hydrometer'))).not.toContain('boils');
        expect(messages(coolant('glycol: 50 %  glycol-kind: mixed'))).not.toContain('boils');
    });
});

describe('what to exchange', () => {
    it.each([
        ['glycol: 25 %  volume: 12 L  added: concentrate', '4 L'], // 12 × (50 − 25) / (100 − 25)
        ['glycol: 75 %  volume: 12 L', '4 L'], // 12 × (50 − 75) / (0 − 75)
        ['glycol: 25 %  volume: 12 L  added: premix', 'full change'],
        ['glycol: 28 %  volume: 12 L  short-by: 4 L', '3.76 L (0.993 gal) of concentrate and 240 mL'], // 12 × 0.5 − 8 × 0.28
        ['glycol: 29 %  volume: 12 L  short-by: 1 L', 'draining 2.55 L'], ['glycol: 29 %  volume: 12 L  short-by: 1 L', 'filling with 3.55 L'],
        ['glycol: 65 %  volume: 12 L  short-by: 1 L', 'draining 1.77 L'], // 11 − 6 ÷ 0.65
        ['glycol: 65 %  volume: 12 L  short-by: 4 L', '0.8 L (27.1 fl-oz) of concentrate and 3.2 L'], ['glycol: 65 %  volume: 12 L  short-by: 1 L', '2.77 L (0.732 gal) of water'],
        ['glycol: 29 %  volume: 12 L  short-by: 1 L  added: premix', 'full change'],
    ])('%s: %s', (facts, text) => {
        expect(messages(coolant(facts))).toContain(text);
    });
    it('is not said where the volume is not recorded', () => {
        expect(messages(coolant('glycol: 25 %'))).not.toContain('draining');
    });
});

describe('frost', () => {
    it.each([
        ['glycol: 50 %  glycol-kind: ethylene', '-32 C', []], ['glycol: 50 %  glycol-kind: ethylene', '-33 C', ['error C1']], // -37.1 against -37 and -38
        ['glycol: 50 %  glycol-kind: propylene', '-28 C', []], ['glycol: 50 %  glycol-kind: propylene', '-29 C', ['error C1']],
        ['freeze-point: -34 F', '-25 F', []], ['freeze-point: -34 F', '-26 F', ['error C1']], // 5 K are 9 F
        ['freeze-point: -12 C', '-20 C', ['error C1']],
        ['glycol: 85 %  glycol-kind: ethylene', '-30 C', ['error C1']],
    ] as const)('%s, %s expected', (facts, coldest, expected) => {
        expect(summary(id, coolant(facts, coldest))).toEqual(expected);
    });

    it('is dated, and asks for a stronger mix where half and half is not enough', () => {
        const text = coolant('glycol: 50 %  glycol-kind: propylene', '-33 C');
        expect(urgencies(id, text)).toEqual(['within-days']);
        expect(messages(text)).toContain('bring it to 53 %'.replace('bring', 'Bring'));
    });

    it('is judged without the kind only where both kinds agree', () => {
        expect(summary(id, coolant('glycol: 50 %', '-10 C'))).toEqual([]);
        expect(summary(id, coolant('glycol: 50 %', '-40 C'))).toEqual(['error C1']);
        expect(summary(id, coolant('glycol: 50 %', '-30 C'))).toEqual(['hint C1']);
        expect(messages(coolant('glycol: 50 %', '-30 C'))).toContain('glycol-kind');
    });

    it('takes the coldest expected from the survey where the vessel has none', () => {
        expect(summary(id, `survey "1" pre-purchase { coldest-expected: -30 C }\n${coolant('glycol: 45 %  glycol-kind: ethylene')}`)).toEqual(['error C1']);
    });

    it('asks for it where only the freezing point is known', () => {
        expect(summary(id, coolant('freeze-point: -20 C'))).toEqual(['hint C1']);
        expect(messages(coolant('freeze-point: -20 C'))).toContain('coldest-expected');
    });

    it('offers the other scale only where the share of glycol bears it out', () => {
        expect(correctionsIn(id, coolant('glycol: 50 %  glycol-kind: ethylene  freeze-point: -34 C', '-35 C'))).toEqual(['Read -34 C as -34 F']);
        expect(correctionsIn(id, coolant('glycol: 30 %  glycol-kind: ethylene  freeze-point: -15 C', '-35 C'))).toEqual([]);
        const typed = coolant('glycol: 50 %  glycol-kind: ethylene  freeze-point: -34 C', '-30 C');
        expect(summary(id, corrected(typed, id, 'Read -34 C as -34 F'))).toEqual([]);
    });
});

describe('instrument', () => {
    it('leaves every figure alone that a hydrometer read of propylene glycol', () => {
        const text = coolant('glycol: 20 %  glycol-kind: propylene  instrument: hydrometer', '-30 C');
        expect(summary(id, text)).toEqual(['error C1']);
        expect(messages(text)).not.toContain('20 %');
    });
    it('asks for the kind where a hydrometer was used', () => {
        expect(summary(id, coolant('glycol: 50 %  instrument: hydrometer'))).toEqual(['hint C1']);
        expect(summary(id, coolant('glycol: 50 %  glycol-kind: ethylene  instrument: hydrometer'))).toEqual([]);
    });
});

describe('term', () => {
    const changed = (facts: string) => `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\ncoolant C1 { glycol: 50 %  glycol-kind: ethylene  ${facts} }\n`;
    it.each([
        ['inhibitor: plain  changed: 2024-10-06', []], ['inhibitor: plain  changed: 2024-10-01', ['error C1']], ['inhibitor: organic  changed: 2022-01', []],
        ['inhibitor: organic  changed: 2021-09', ['error C1']], ['inhibitor: organic  changed: 2020-09  makers-term: 7 years', []], ['changed: 2020-09  makers-term: 6 years', ['error C1']], ['inhibitor: plain  changed: 2024', []], ['changed: 2021', ['hint C1']], ['changed: 2025', []], ['inhibitor: hybrid  changed: 2015', []],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, changed(facts))).toEqual(expected);
    });
    it('holds mixed kinds for a fault', () => {
        expect(summary(id, coolant('glycol: 50 %  glycol-kind: mixed'))).toEqual(['error C1']);
    });
});
