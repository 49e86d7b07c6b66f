import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'vent-area-small';
const space = (ducts: string, volume = '100 ft3', fuel = 'gasoline') => `vessel "M" { fuel: ${fuel} }\nmachinery-space S1 { volume: ${volume} }\n${ducts}\n`;
const pair = (supply: string, exhaust: string) => `vent-duct D1 { way: supply  serves: S1  ${supply} }\nvent-duct D2 { way: exhaust  serves: S1  ${exhaust} }`;

describe('area each way', () => {
    it.each([
        ['area: 15 in2', 'area: 15 in2', []], ['area: 15 in2', 'area: 14.9 in2', ['error D2']], ['area: 14.9 in2', 'area: 14.9 in2', ['error D1 D2']],
        ['bore: 4-3/8 in', 'bore: 4-3/8 in', []], ['bore: 4-1/4 in', 'bore: 4-3/8 in', ['error D1']], ['area: 97 cm2', 'bore: 112 mm', []], ['area: 96 cm2', 'bore: 112 mm', ['error D1']],
        ['area: 7.5 in2  quantity: 2', 'area: 15 in2', []],
    ] as const)('100 ft3, %s and %s', (supply, exhaust, expected) => {
        expect(summary(id, space(pair(supply, exhaust)))).toEqual(expected);
    });
    it('must exceed 3.0 in2 for each opening, whatever the volume', () => {
        expect(summary(id, space(pair('area: 3.01 in2', 'area: 3.01 in2'), '8 ft3'))).toEqual([]);
        expect(summary(id, space(pair('area: 3 in2', 'area: 3.01 in2'), '8 ft3'))).toEqual(['error D1']);
        expect(summary(id, space(pair('area: 3 in2  quantity: 6', 'area: 16 in2')))).toEqual(['error D1']);
    });
});

describe('place', () => {
    it.each([
        ['area: 15 in2', 'area: 15 in2  in-lower-third: no', ['error D2']], ['area: 15 in2  in-lower-third: no', 'area: 15 in2', []], ['area: 15 in2  above-bilge-water: no', 'area: 15 in2', ['error D1']],
        ['area: 15 in2  above-bilge-water: yes', 'area: 15 in2  in-lower-third: yes  above-bilge-water: yes', []],
    ] as const)('%s and %s', (supply, exhaust, expected) => {
        expect(summary(id, space(pair(supply, exhaust)))).toEqual(expected);
    });
    it('is judged without a volume', () => {
        expect(summary(id, 'vessel "M" { fuel: gasoline }\nvent-duct D1 { way: exhaust  in-lower-third: no }\n')).toEqual(['error D1']);
    });
});

describe('fitting at the end of a duct', () => {
    const cowl = (area: string, supply: string) => `${space(pair(supply, 'area: 15 in2'))}cowl C1 { serves: D1  area: ${area} }\n`;
    it.each([['12 in2', 'area: 15 in2', []], ['11.9 in2', 'area: 15 in2', ['error C1']], ['12 in2', 'area: 30 in2', []], ['6 in2', 'area: 15 in2  quantity: 2', []], ['5.9 in2', 'area: 15 in2  quantity: 2', ['error C1']]] as const)('%s on %s', (area, supply, expected) => {
        expect(summary(id, cowl(area, supply))).toEqual(expected);
    });
});

it('asks for the one fact that would decide', () => {
    const asked = (text: string) => raisedBy(id, text).map(({ severity, message }) => `${severity} ${message}`);
    expect(asked(space(pair('area: 15 in2', 'place: "aft"')))).toEqual([expect.stringMatching(/hint .*area or bore of D2/)]);
    expect(asked('vessel "M" { fuel: gasoline }\nvent-duct D1 { way: supply  area: 15 in2 }\nvent-duct D2 { way: exhaust  area: 15 in2 }\n')).toEqual([expect.stringMatching(/hint .*net volume/)]);
    expect(asked(space('vent-duct D1 { way: supply  serves: S1  area: 15 in2 }'))).toEqual([expect.stringMatching(/hint .*the exhaust/)]);
    expect(asked('vent-duct D1 { way: exhaust  in-lower-third: no }\n')).toEqual([expect.stringMatching(/hint .*gasoline engine or tank/)]);
    expect(asked('vessel "M" { fuel: gasoline }\nvent-duct D1 { way: supply }\n')).toEqual([]);
});

it('leaves diesel alone, is due before use and offers a mistaken unit', () => {
    expect(summary(id, space(pair('area: 4 in2', 'area: 4 in2'), '100 ft3', 'diesel'))).toEqual([]);
    const text = space(pair('area: 13 in2', 'area: 13 in2'), '60 m3');
    expect(urgencies(id, text)).toEqual(['before-use']);
    expect(correctionsIn(id, text)).toEqual(['Read 60 m3 as 60 ft3', 'Record the space as open to the air']);
});
