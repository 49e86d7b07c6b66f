import { describe, expect, it } from 'vitest';
import { correctionsIn, pointedAt, raisedBy, summary } from '../check-text.js';

const id = 'figure-not-plausible';
const vessel = (facts: string, more = '') => `vessel "Marram" { ${facts} }\n${more}`;
const said = (facts: string, more = '') => summary(id, vessel(facts, more));

describe('block of her waterline, beam and draft', () => {
    const block = 'length-waterline: 10 m  beam: 4 m  draft: 1 m'; // 41 000 kg of sea water
    it.each([
        ['motor-yacht', 34850, []], ['motor-yacht', 34900, ['warning ']], ['motor-yacht', 4920, []], ['motor-yacht', 4900, ['warning ']],
        ['houseboat', 41000, []], ['houseboat', 41100, ['warning ']], ['sailing-yacht', 1640, []], ['sailing-yacht', 1630, ['warning ']], ['sailing-yacht', 4900, []],
        ['rigid-inflatable', 4900, ['hint ']], ['rigid-inflatable', 1630, ['warning ']], ['trimaran', 100000, []],
    ])('%s of %i kg', (type, kg, expected) => {
        expect(said(`type: ${type}  ${block}  displacement: ${kg} kg`)).toEqual(expected);
    });
    it('takes the depth of the hull alone where it is recorded', () => {
        expect(said('type: sailing-yacht  length-waterline: 10 m  beam: 4 m  draft: 2 m  hull-draft: 1 m  displacement: 4900 kg')).toEqual(['warning ']);
        expect(said('type: sailing-yacht  length-waterline: 10 m  beam: 4 m  draft: 2 m  displacement: 4900 kg')).toEqual([]);
    });
    it('asks for it where a drive may be counted', () => {
        expect(said(`type: gasoline-cruiser  ${block}  displacement: 4000 kg`, 'outdrive OD1\n')).toEqual(['hint ']);
        expect(said(`type: gasoline-cruiser  ${block}  displacement: 4000 kg`)).toEqual(['warning ']);
    });
    it('judges a catamaran by one hull', () => {
        const cat = 'type: catamaran  length-waterline: 11.5 m  beam: 7 m  draft: 1 m';
        expect(said(`${cat}  hull-beam: 1.6 m  displacement: 9000 kg`)).toEqual([]);
        expect(said(`${cat}  hull-beam: 1.6 m  displacement: 33000 kg`)).toEqual(['warning ']);
        expect(said(`${cat}  displacement: 33000 kg`)).toEqual(['hint ']);
    });
    it('clears her by the length of the hull, but does not accuse her of lightness by it', () => {
        expect(said('type: motor-yacht  length-on-deck: 10 m  beam: 4 m  draft: 1 m  displacement: 34900 kg')).toEqual(['warning ']);
        expect(said('type: motor-yacht  length-on-deck: 10 m  beam: 4 m  draft: 1 m  displacement: 3000 kg')).toEqual([]);
    });
    it('says the same in pounds, points at it and offers the unit', () => {
        const text = vessel(`type: motor-yacht  ${block}  displacement: 80000 lb`);
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['80000 lb']);
        expect(correctionsIn(id, vessel(`type: motor-yacht  ${block}  displacement: 36000 kg`))).toEqual(['Write the displacement as 36000 lb']);
        expect(correctionsIn(id, vessel(`type: motor-yacht  ${block}  displacement: 9000 lb`))).toEqual(['Write the displacement as 9000 kg']);
    });
    it.each(['length-waterline: 10 m  beam: 4 m  displacement: 90 t', 'length-waterline: 10 m  draft: 1 m  displacement: 90 t', 'displacement: 90 t'])('is silent on missing facts: %s', facts => {
        expect(said(facts)).toEqual([]);
    });
});

describe('speed', () => {
    const speed = (running: string, kn: string, more = '') => `length-waterline: 36 ft  top-speed: ${kn}  ${running === '' ? '' : `running: ${running}`}  ${more}`; // at most 9.0 kn
    it.each([
        ['displacement', '9 kn', []], ['displacement', '9.1 kn', ['warning ']], ['displacement', '10.3 mph', []], ['displacement', '10.4 mph', ['warning ']], ['displacement', '17 km/h', ['warning ']],
        ['semi-displacement', '14 kn', []], ['planing', '30 kn', []], ['', '30 kn', []],
    ])('%s at %s', (running, kn, expected) => {
        expect(said(speed(running, kn))).toEqual(expected);
    });
    it('asks how she runs where her type does not tell', () => {
        expect(said(speed('', '12 kn', 'type: sailing-yacht'))).toEqual(['hint ']);
        expect(said(speed('', '12 kn', 'type: motor-yacht'))).toEqual([]);
        expect(said(speed('', '8 kn', 'type: sailing-yacht'))).toEqual([]);
    });
    it('leaves multihulls alone', () => {
        expect(said(speed('displacement', '20 kn', 'type: catamaran'))).toEqual([]);
        expect(said(speed('displacement', '20 kn', 'type: trimaran'))).toEqual([]);
    });
    it('offers miles only where they would explain it', () => {
        expect(correctionsIn(id, vessel(speed('displacement', '10 kn')))).toEqual(['Write the top-speed as 10 mph', 'Record that she is a semi-displacement hull']);
        expect(correctionsIn(id, vessel(speed('displacement', '20 kn')))).toEqual(['Record that she is a semi-displacement hull']);
    });
    it.each([['9 kn, 9 kn', []], ['11 kn, 7 kn', []], ['10 kn, 9 kn', ['warning ']], ['12 kn', []]])('judges the runs of a trial both ways: %s', (speeds, expected) => {
        const trial = (running: string) => said(`running: ${running}  length-waterline: 36 ft`, `reading T1 "Trial" { measures: trial  columns: speed, speed-against\n    row "Full": ${speeds}\n}\n`);
        expect(trial('displacement')).toEqual(expected);
        expect(trial('planing')).toEqual([]);
    });
    it('judges the cruising speed too', () => {
        expect(said('running: displacement  length-waterline: 36 ft  cruising-speed: 11 kn')).toEqual(['warning ']);
    });
});

describe('fuel', () => {
    it.each([['fuel-capacity: 2976 L', 0], ['fuel-capacity: 2977 L', 1], ['fuel-capacity: 786 gal', 0], ['fuel-capacity: 787 gal', 1]])('%s of diesel in 10 t', (capacity, count) => {
        expect(said(`fuel: diesel  displacement: 10 t  ${capacity}`)).toHaveLength(count);
    });
    it('speaks of fuel, and never of miles', () => {
        const [problem] = raisedBy(id, vessel('fuel: diesel  displacement: 10 t  fuel-capacity: 1500 gal'));
        expect(problem?.message).toContain('fuel');
        expect(problem?.message).not.toMatch(/mile|mph|knot/i);
        expect(problem?.corrections?.map(correction => correction.title)).toEqual(['Write the fuel-capacity as 1500 L']);
    });
    it('sums the tanks', () => {
        const tanks = (a: string, b: string) => `fuel-tank FT1 { capacity: ${a} }\nfuel-tank FT2 { capacity: ${b} }\n`;
        expect(said('fuel: diesel  displacement: 10 t', tanks('1400 L', '1500 L'))).toEqual([]);
        expect(said('fuel: diesel  displacement: 10 t', tanks('1500 L', '1500 L'))).toEqual(['warning FT1 FT2']);
        expect(said('displacement: 10 t', 'fuel-tank FT1 { fuel: diesel  capacity: 900 gal }\n')).toEqual(['warning FT1']);
        expect(said('fuel: electric  displacement: 10 t', tanks('1500 L', '1500 L'))).toEqual([]);
    });
    it('is silent without a displacement', () => {
        expect(said('fuel: diesel  fuel-capacity: 5000 L')).toEqual([]);
    });
});
