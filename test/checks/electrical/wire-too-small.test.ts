import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'wire-too-small';
const wire = (facts: string) => `conductor W1 { ${facts} }\n`;

describe(`${id}: load`, () => {
    it.each([
        // 33 CFR 183.425 Table 5: 10 AWG of 105 C, 60 A; 51 A in an engine space.
        ['gauge: 10 AWG  insulation: 105 C  load: 59.9 A  in-engine-space: no', []],
        ['gauge: 10 AWG  insulation: 105 C  load: 60 A  in-engine-space: no', []],
        ['gauge: 10 AWG  insulation: 105 C  load: 60.1 A  in-engine-space: no', ['error W1']],
        ['gauge: 10 AWG  insulation: 221 F  load: 60 A  in-engine-space: no', []],
        ['gauge: 10 AWG  insulation: 221 F  load: 60.1 A  in-engine-space: no', ['error W1']],
        ['gauge: 10 AWG  insulation: 105 C  load: 51 A  in-engine-space: yes', []],
        ['gauge: 10 AWG  insulation: 105 C  load: 51.1 A  in-engine-space: yes', ['error W1']],
        // A rating between two classes counts as the lower: 100 C as 90 C.
        ['gauge: 10 AWG  insulation: 100 C  load: 55 A  in-engine-space: no', []],
        ['gauge: 10 AWG  insulation: 100 C  load: 56 A  in-engine-space: no', ['error W1']],
        // The place would decide, and nothing else is missing.
        ['gauge: 10 AWG  insulation: 105 C  load: 55 A', ['hint W1']],
        ['gauge: 10 AWG  insulation: 105 C  load: 51 A', []],
        // Insulation not known: 75 C, 20 A on 14 AWG; even 200 C carries no more than 45 A.
        ['gauge: 14 AWG  load: 20 A', []],
        ['gauge: 14 AWG  load: 20.1 A', ['warning W1']],
        ['gauge: 14 AWG  load: 45 A', ['warning W1']],
        ['gauge: 14 AWG  load: 45.1 A', ['error W1']],
        // Areas that are no nominal metric size count as the next smaller gauge.
        ['gauge: 2.08 mm2  insulation: 105 C  load: 35 A  in-engine-space: no', []],
        ['gauge: 2.08 mm2  insulation: 105 C  load: 36 A  in-engine-space: no', ['error W1']],
        ['gauge: 3 mm2  insulation: 105 C  load: 36 A  in-engine-space: no', ['error W1']],
        // ISO 10133: 4 mm2 of 85 C carries 40 A; 12 AWG of 80 C 35 A.
        ['gauge: 4 mm2  insulation: 85 C  load: 40 A  in-engine-space: no', []],
        ['gauge: 4 mm2  insulation: 85 C  load: 41 A  in-engine-space: no', ['error W1']],
        // Six in a bundle: ISO is left for the gauge, at 120 V with 0.6 of 45 A.
        ['gauge: 4 mm2  insulation: 105 C  load: 27 A  in-engine-space: no  bundled: 6  voltage: 120 V', []],
        ['gauge: 4 mm2  insulation: 105 C  load: 28 A  in-engine-space: no  bundled: 6  voltage: 120 V', ['error W1']],
        // Bundles count at 50 V and over only.
        ['gauge: 12 AWG  insulation: 105 C  load: 28 A  in-engine-space: no  bundled: 6  voltage: 12 V', []],
        ['gauge: 12 AWG  insulation: 105 C  load: 28 A  in-engine-space: no  bundled: 6  voltage: 120 V', ['error W1']],
        ['insulation: 105 C  load: 60 A', []],
        ['gauge: 2 AWG  insulation: 75 C  load: 400 A  purpose: ignition', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, wire(facts))).toEqual(expected);
    });
    it('says by which table, and of what standing it is', () => {
        const text = 'conductor W1 { gauge: 10 AWG  insulation: 105 C  load: 62 A  in-engine-space: no }\n';
        expect(raisedBy(id, `vessel "Marram" { fuel: gasoline }\n${text}`)[0]?.message).toContain('60 A is the most by 33 CFR 183.425, Table 5');
        expect(raisedBy(id, `vessel "Marram" { fuel: diesel }\n${text}`)[0]?.message).toContain('good practice per 33 CFR 183.425');
        expect(raisedBy(id, wire('gauge: 4 mm2  insulation: 85 C  load: 41 A  in-engine-space: no'))[0]?.message).toContain('ISO 10133, Table A.1');
        expect(raisedBy(id, wire('gauge: 3 mm2  insulation: 105 C  load: 41 A  in-engine-space: no'))[0]?.message).toContain('next smaller gauge: 14 AWG');
        expect(raisedBy(id, wire('gauge: 14 AWG  load: 24 A'))[0]?.message).toContain('taken as 75 C');
    });
    it('is out of use from 120 % of its value, where that is sure', () => {
        expect(urgencies(id, wire('gauge: 10 AWG  insulation: 105 C  load: 72 A  in-engine-space: no'))).toEqual(['in-upkeep']);
        expect(urgencies(id, wire('gauge: 10 AWG  insulation: 105 C  load: 72.1 A  in-engine-space: no'))).toEqual(['before-use']);
        expect(urgencies(id, wire('gauge: 14 AWG  load: 40 A'))).toEqual(['in-upkeep']);
    });
    it('proposes a size, unless none would do', () => {
        expect(correctionsIn(id, wire('gauge: 10 AWG  insulation: 105 C  load: 62 A  in-engine-space: no'))).toEqual(['Correct the size to 8 AWG']);
        expect(correctionsIn(id, wire('gauge: 4/0 AWG  insulation: 105 C  load: 500 A  in-engine-space: no'))).toEqual([]);
        expect(summary(id, corrected(wire('gauge: 14 AWG  load: 24 A'), id, 'Record its insulation as 105 C'))).toEqual(['hint W1'].slice(1));
    });
});

describe(`${id}: least size`, () => {
    it.each([
        ['gauge: 18 AWG  load: 3 A  sheathed: no  length: 20 ft', ['error W1']],
        ['gauge: 18 AWG  load: 3 A  sheathed: no  length: 14 in', ['error W1']],
        ['gauge: 18 AWG  load: 3 A  sheathed: no  length: 13.9 in', []],
        ['gauge: 16 AWG  load: 3 A  sheathed: no', []],
        ['gauge: 18 AWG  load: 3 A  sheathed: yes', []],
        ['gauge: 18 AWG  load: 3 A', ['hint W1']],
        ['gauge: 20 AWG  load: 3 A', ['error W1']],
        ['gauge: 20 AWG  load: 3 A  sheathed: yes', ['error W1']],
        // A light load may be that of electronics, which are exempt.
        ['gauge: 18 AWG  load: 0.9 A  sheathed: no', ['hint W1']],
        ['gauge: 18 AWG  load: 0.9 A', []],
        ['gauge: 18 AWG  sheathed: no', ['hint W1']],
        ['gauge: 18 AWG  load: 0.9 A  sheathed: no  purpose: lighting', ['error W1']],
        ['gauge: 18 AWG  load: 3 A  sheathed: no  purpose: electronics', []],
        ['gauge: 18 AWG  load: 3 A  sheathed: no  purpose: cranking', []],
        // Metric sizes by ISO 10133: 1 mm2 alone, 0.75 mm2 sheathed.
        ['gauge: 1 mm2  load: 3 A  sheathed: no', []],
        ['gauge: 0.9 mm2  load: 3 A  sheathed: no', ['error W1']],
        ['gauge: 0.75 mm2  load: 3 A  sheathed: yes', []],
        ['gauge: 0.7 mm2  load: 3 A  sheathed: yes', ['error W1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, wire(facts))).toEqual(expected);
    });
    it('takes the purpose from what the wire serves', () => {
        expect(summary(id, `vhf R1\nconductor W1 { gauge: 18 AWG  load: 3 A  sheathed: no  serves: R1 }\n`)).toEqual([]);
        expect(summary(id, `navigation-light L1\nconductor W1 { gauge: 18 AWG  load: 0.5 A  sheathed: no  serves: L1 }\n`)).toEqual(['error W1']);
    });
    it('offers a sheath only where one would do', () => {
        expect(correctionsIn(id, wire('gauge: 18 AWG  load: 3 A  sheathed: no'))).toEqual(['Correct the size to 16 AWG', 'Record it as sheathed']);
        expect(correctionsIn(id, wire('gauge: 20 AWG  load: 3 A  sheathed: no'))).toEqual(['Correct the size to 16 AWG']);
    });
});
