import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

describe('light-range-or-height-short', () => {
    const id = 'light-range-or-height-short';
    const aboard = (length: string, lights: string, fuel = 'fuel: diesel') => `vessel "M" { length-overall: ${length}  ${fuel} }\n${lights}\n`;
    it.each([
        ['11.9 m', 'side-port', '1 nmi', 0], ['11.9 m', 'side-port', '0.9 nmi', 1], ['12 m', 'side-starboard', '1 nmi', 1], ['39.4 ft', 'sides-combined', '1 nmi', 1], ['39.3 ft', 'sides-combined', '1 nmi', 0],
        ['11.9 m', 'masthead', '2 nmi', 0], ['12 m', 'masthead', '2 nmi', 1], ['12 m', 'masthead', '3 nmi', 0], ['20 m', 'masthead', '3 nmi', 1], ['20 m', 'masthead', '5 nmi', 0],
        ['11.9 m', 'stern', '1 nmi', 1], ['12 m', 'stern', '2 nmi', 0], ['11.9 m', 'anchor', '1 nmi', 1], ['11.9 m', 'all-round', '2 nmi', 0], ['11.9 m', 'tricolor', '1 nmi', 0], ['12 m', 'tricolor', '1 nmi', 1], ['12 m', 'stern', '3704 m', 0],
    ])('%s: %s of %s: %i', (length, light, range, count) => {
        expect(raisedBy(id, aboard(length, `navigation-light N1 { light: ${light}  range: ${range} }`))).toHaveLength(count);
    });
    it.each([
        ['12 m', 'light: masthead  height: 2.5 m', 0], ['12 m', 'light: masthead  height: 2.49 m', 1], ['12 m', 'light: masthead  height: 8 ft', 1], ['12 m', 'light: masthead  height: 8.3 ft', 0], ['20 m', 'light: masthead  height: 1 m', 0], ['12 m', 'light: all-round  height: 1 m', 0],
        ['11.9 m', 'light: masthead  above-sidelights: 1 m', 0], ['11.9 m', 'light: masthead  above-sidelights: 0.99 m', 1], ['11.9 m', 'light: all-round  above-sidelights: 3 ft', 1], ['11.9 m', 'light: masthead  height: 0.5 m', 0],
    ])('%s, %s: %i', (length, facts, count) => {
        expect(raisedBy(id, aboard(length, `navigation-light N1 { ${facts} }`))).toHaveLength(count);
    });
    it('takes the higher side light, and what is stated before a difference', () => {
        const sides = 'navigation-light N2 { light: side-port  height: 1 m }\nnavigation-light N3 { light: side-starboard  height: 1.2 m }';
        expect(summary(id, aboard('10 m', `navigation-light N1 { light: masthead  height: 2.1 m }\n${sides}`))).toEqual(['error N1 N3']);
        expect(summary(id, aboard('10 m', `navigation-light N1 { light: masthead  height: 2.2 m }\n${sides}`))).toEqual([]);
        expect(summary(id, aboard('10 m', `navigation-light N1 { light: masthead  height: 2.1 m  above-sidelights: 1.1 m }\n${sides}`))).toEqual([]);
        expect(raisedBy(id, aboard('10 m', `navigation-light N1 { light: masthead  height: 0.8 m }\n${sides}`))[0]?.message).toMatch(/400 mm .* below the side lights/);
    });
    it('judges an all-round light only where there is no masthead light, and height only with an engine', () => {
        const both = 'navigation-light N1 { light: all-round  above-sidelights: 0.2 m }\nnavigation-light N2 { light: masthead }';
        expect(summary(id, aboard('10 m', both))).toEqual([]);
        expect(summary(id, aboard('10 m', 'navigation-light N1 { light: all-round  above-sidelights: 0.2 m }', 'fuel: none'))).toEqual([]);
        expect(summary(id, aboard('10 m', 'outboard O1\nnavigation-light N1 { light: all-round  above-sidelights: 0.2 m }', ''))).toEqual(['error N1']);
        expect(summary(id, aboard('10 m', 'generator G1\nnavigation-light N1 { light: all-round  above-sidelights: 0.2 m }', ''))).toEqual([]);
    });
    it('asks for the length', () => {
        expect(summary(id, 'vessel "M" {}\nnavigation-light N1 { light: stern  range: 2 nmi }\nnavigation-light N2 { light: masthead  range: 2 nmi }\n')).toEqual(['hint N1 N2']);
    });
    it('is due before departure for range, in upkeep for height', () => {
        expect(urgencies(id, aboard('12 m', 'navigation-light N1 { light: masthead  range: 2 nmi  height: 2 m }'))).toEqual(['before-departure', 'in-upkeep']);
    });
});

describe('light-out-or-contradictory', () => {
    const id = 'light-out-or-contradictory';
    it.each([
        ['light: stern  works: no', 1], ['light: anchor  works: no', 1], ['works: no', 1], ['light: stern  works: yes', 0], ['light: stern', 0], ['light: all-round  masked: 6 deg', 0], ['light: all-round  masked: 6.1 deg', 1],
        ['light: anchor  masked: 90 deg', 0], ['light: masthead  masked: 10 deg', 0], ['light: all-round  masked: 30 deg  works: no', 1], ['light: tricolor  shines: engine', 1], ['light: tricolor  shines: sail', 0], ['light: masthead  shines: sail, engine', 1], ['light: masthead  shines: engine', 0],
    ])('%s: %i', (facts, count) => {
        expect(raisedBy(id, `navigation-light N1 { ${facts} }\n`)).toHaveLength(count);
    });
    const lights = (...all: readonly (readonly [light: string, shines: string])[]) => all.map(([light, shines], i) => `navigation-light N${i + 1} { light: ${light}${shines === '' ? '' : `  shines: ${shines}`} }\n`).join('');
    it.each([
        [lights(['tricolor', 'sail'], ['stern', 'sail']), ['error N1 N2']], [lights(['tricolor', 'sail'], ['stern', 'engine'], ['masthead', 'engine']), []], [lights(['tricolor', 'sail'], ['anchor', 'sail']), []], [lights(['tricolor', 'sail'], ['side-port', '']), []],
        [lights(['sides-combined', 'engine']), ['error N1']], [lights(['sides-combined', 'engine'], ['masthead', 'engine']), []], [lights(['sides-combined', 'engine'], ['masthead', '']), ['hint N2']], [lights(['sides-combined', 'sail']), []],
        [lights(['sides-combined', 'engine'], ['all-round', 'engine']), ['hint N1']],
    ])('%s', (text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('lets an all-round light stand for a masthead light under 12 m', () => {
        const both = lights(['sides-combined', 'engine'], ['all-round', 'engine']);
        expect(summary(id, `vessel "M" { length-overall: 11.9 m }\n${both}`)).toEqual([]);
        expect(summary(id, `vessel "M" { length-overall: 12 m }\n${both}`)).toEqual(['error N1 N2']);
    });
    it('offers the modes that part them', () => {
        const text = lights(['tricolor', 'sail, engine'], ['sides-combined', 'sail, engine'], ['masthead', 'engine']);
        expect(correctionsIn(id, text)).toEqual([]);
        expect(correctionsIn(id, lights(['tricolor', 'sail'], ['sides-combined', 'sail, engine'], ['masthead', 'engine']))).toEqual(['Record N2 as on under engine only']);
        expect(raisedBy(id, corrected(lights(['tricolor', 'sail, engine']), id, 'Record N1 as on under sail only'))).toEqual([]);
        expect(raisedBy(id, corrected(lights(['masthead', 'sail, engine']), id, 'Record N1 as on under engine only'))).toEqual([]);
    });
});
