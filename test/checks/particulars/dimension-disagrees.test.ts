import { describe, expect, it } from 'vitest';
import { conversionsIn, isConversionRight } from '../../../src/checks/particulars/conversions.js';
import { corrected, correctionsIn, pointedAt, raisedBy, summary } from '../check-text.js';

const id = 'dimension-disagrees';
const vessel = (facts: string, note = '') => `vessel "Marram" { ${facts}\n${note === '' ? '' : `    note "${note}"\n`}}\n`;
const said = (facts: string, note = '') => summary(id, vessel(facts, note));

describe('order of lengths', () => {
    it.each([
        ['length-on-deck: 10 m  length-waterline: 10.05 m', 0], ['length-on-deck: 10 m  length-waterline: 10.06 m', 1], // 0.5 %
        ['length-on-deck: 3 m  length-waterline: 3.02 m', 0], ['length-on-deck: 3 m  length-waterline: 3.03 m', 1], // 20 mm
        ['length-overall: 40 ft  length-on-deck: 41 ft', 1], ['length-overall: 40 ft  length-waterline: 41 ft', 1],
        ['length-overall: 40 ft  length-on-deck: 38 ft  length-waterline: 41 ft', 1], ['length-overall: 40 ft  length-on-deck: 42 ft  length-waterline: 41 ft', 1],
        ['length-overall: 40 ft', 0], ['beam: 6 m  hull-beam: 6.2 m', 1], ['draft: 1 m  hull-draft: 1.2 m', 1],
    ])('%s', (facts, count) => {
        expect(said(facts)).toHaveLength(count);
    });
    it('points at the part, and offers the other unit', () => {
        const text = vessel('length-overall: 40 ft  length-on-deck: 38 m');
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['38 m']);
        expect(correctionsIn(id, text)).toEqual(['Write the length-on-deck as 38 ft', 'Write the length-overall as 40 m']);
    });
});

describe('draft and beam of a power vessel', () => {
    it.each([
        ['type: motor-yacht  beam: 4 m  draft: 4.02 m', 0], ['type: motor-yacht  beam: 4 m  draft: 4.03 m', 1], ['type: rigid-inflatable  beam: 2 m  draft: 2.1 m', 1],
        ['type: sailing-yacht  beam: 2 m  draft: 2.5 m', 0], ['beam: 2 m  draft: 2.5 m', 0], ['type: catamaran  beam: 2 m  draft: 2.5 m', 0],
    ])('%s', (facts, count) => {
        expect(said(facts)).toHaveLength(count);
    });
    it('is not told of a motor-sailer', () => {
        expect(summary(id, `${vessel('type: motor-yacht  beam: 2 m  draft: 2.5 m')}mast M1\n`)).toEqual([]);
    });
});

describe('proportions', () => {
    it.each([
        ['length-overall: 10 m  beam: 7 m', []], ['length-overall: 10 m  beam: 7.1 m', ['warning ']], ['length-overall: 20 m  beam: 1.8 m', []], ['length-overall: 20 m  beam: 1.7 m', ['warning ']],
        ['type: trimaran  length-overall: 10 m  beam: 10 m', []], ['length-overall: 10 m  draft: 4 m', []], ['length-overall: 10 m  draft: 4.1 m', ['warning ']],
        ['length-on-deck: 12 m  length-waterline: 6 m', []], ['length-on-deck: 12 m  length-waterline: 5.9 m', ['warning ']],
    ])('%s', (facts, expected) => {
        expect(said(facts)).toEqual(expected);
    });
    it('offers the other unit', () => {
        expect(correctionsIn(id, vessel('length-overall: 40 ft  beam: 12 m'))).toEqual(['Write the beam as 12 ft']);
    });
});

describe('conversions', () => {
    const isRight = (text: string) => conversionsIn(text).map(isConversionRight);
    it.each([
        '5/32 in (3.97 mm)', '5/32 in (4.0 mm)', '5/32 in (4 mm)', '1-1/2 in (38 mm)', '1/4 in (6 mm)', '2 in (50 mm)', '2 in (51 mm)', '3/4 in (20 mm)', '38 ft 4 in (11.7 m)', '40 ft (12 m)', '12.2 m (40 ft)', '12.1 m (40 ft)', '3.85 m (12 ft 8 in)',
        '24,000 lb (10,900 kg)', '1000 lb (450 kg)', '100 gal (380 L)', '100 gal (about 380 L)', '60 F (15 C)', '61 F (16 C)', '0 C (32 F)', '8 kn (9.2 mph)', '30 psi (2.1 bar)', '100 hp (75 kW)', '25 mm (1 in)', '0.005 in (0.13 mm)', '1 in..2 in (25 mm..51 mm)', '4 in (100 mm)',
    ])('%s is right', text => {
        expect(isRight(`at ${text}, as found`)).toEqual([true]);
    });
    it.each([
        '5/32 in (5.0 mm)', '5/32 in (5 mm)', '1-1/2 in (32 mm)', '38 ft 4 in (12.7 m)', '40 ft (12.4 m)', '3.85 m (13 ft 8 in)', '24,000 lb (24,000 kg)', '4 in (200 mm)', '100 gal (100 L)', '60 F (18 C)', '8 kn (8 mph)', '12 mm (1 in)', '1 in..2 in (25 mm..38 mm)', '0.2 mm (1/16 in)',
    ])('%s is wrong', text => {
        expect(isRight(`at ${text}, as found`)).toEqual([false]);
    });
    it.each(['1-1/2 in (32 mm at the pump)', '38 mm (1-1/2)', '12 V (24 V)', '2 years (24 months)', '30 A (40 A)', 'H9 (38 mm)', '84,500 USD (78,000 EUR)', '38 mm (25 mm)', '10 (2016)', '5 % (2 of 40)', '1-1/2 in hose (38 mm)'])('%s is none', text => {
        expect(isRight(`at ${text}, as found`)).toEqual([]);
    });
    it('points at the converted figure, in a finding too', () => {
        const text = 'finding F1 "Plating" { urgency: note-only  seen: "Gauged at 5/32 in (5.0 mm)."  because: "Thin."  recommend: "Gauge it again." }\n';
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['5.0 mm']);
        expect(raisedBy(id, text)[0]?.finding?.id).toBe('F1');
        expect(summary(id, corrected(text, id, 'Write 3.97 mm'))).toEqual([]);
    });
});

describe('mentions', () => {
    const facts = 'length-overall: 40 ft  length-on-deck: 38 ft 4 in  length-waterline: 33 ft 6 in  beam: 3.85 m  draft: 5 ft 9 in';
    it.each([
        ['Her beam is 12 ft 8 in.', []], ['Her beam is 13 ft.', ['error ']], ['She draws 6 ft.', ['error ']], ['She draws 5 ft 9 in.', []], ['LOA 41 ft.', ['error ']], ['LOA: 40 ft, LOD 38 ft 4 in, LWL 33 ft 6 in.', []],
        ['Length over all measured 12.2 m.', []], ['Length at the waterline is 34 ft.', ['error ']], ['The vessel’s draft was measured as 1.75 m.', []], ['The vessel’s draft was measured as 1.95 m.', ['error ']],
        ['Her length is 36 ft.', ['error ']], ['Her length is 40 ft.', ['warning ']], ['Her overall length is 40 ft.', []],
        ['Her beam is stated as 13 ft.', []], ['The papers give her beam as 13 ft.', []], ['A sister vessel had a length overall of 44 ft.', []], ['Her draft is 7 ft with the board down.', []], ['Her beam at the transom is 9 ft.', []], ['The berth is 45 ft, her length is 44 ft at most.', []],
        ['The deck beam of 60 mm is sound.', []], ['A draft of 2 m over the bar.', []], ['Her beam is sound for 2 m.', []], ['Her length is not known.', []],
    ])('%s', (note, expected) => {
        expect(said(facts, note)).toEqual(expected);
    });
    it('does not ask for a name where one length is recorded', () => {
        expect(said('length-overall: 40 ft', 'Her length is 40 ft.')).toEqual([]);
        expect(said('beam: 12 ft', 'Her length is 40 ft.')).toEqual([]);
    });
    it('offers a reference, and a name', () => {
        expect(correctionsIn(id, vessel(facts, 'Her beam is 13 ft.'))).toEqual(['Refer to the recorded beam']);
        const text = vessel(facts, 'Her length is 38 ft 4 in.');
        expect(correctionsIn(id, text)).toEqual(['Name it: length on deck']);
        expect(summary(id, corrected(text, id, 'Name it: length on deck'))).toEqual([]);
    });
});

describe('dimensions in a list, after the figure, and in the words of the engagement', () => {
    const recorded = 'length-overall: 40 ft  length-on-deck: 38 ft  beam: 12 ft  draft: 5 ft 9 in';
    it.each([
        ['LOA 40 ft, beam 12 ft, draft 5 ft 9 in.', 0], ['LOA 40 ft, beam 12 ft 6 in, draft 5 ft 9 in.', 1], ['Beam 13 ft.', 1], ['She is 39 ft long overall.', 1], ['She is 40 ft overall and has 12 ft beam.', 0], ['She has 13 ft beam.', 1],
        ['A 2 m beam under the mast is cracked.', 0], ['Beam 60 mm thick under the mast.', 0], ['Survey of a 40 ft ketch.', 0], ['Survey of a 39 ft ketch.', 0], ['Survey of a 45 ft sloop.', 1],
    ])('%s: %i', (note, count) => {
        expect(said(recorded, note)).toHaveLength(count);
    });
});
