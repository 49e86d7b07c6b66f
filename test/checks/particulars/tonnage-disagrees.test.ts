import { describe, expect, it } from 'vitest';
import { correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'tonnage-disagrees';
const vessel = (facts: string, more = '') => `vessel "Marram" { ${facts} }\n${more}`;
const said = (facts: string, more = '') => summary(id, vessel(facts, more));
const sail = 'type: sailing-yacht  length-on-deck: 40 ft  beam: 12.6 ft  depth: 7 ft'; // 17.64 gross, 13.23 with the keel in the depth
const motor = 'type: motor-yacht  length-on-deck: 42.3 ft  beam: 14.2 ft  depth: 7.8 ft'; // 31.39

describe('gross', () => {
    it.each([[16, 0], [17, 0], [18, 0], [19, 0], [20, 1], [15, 1], [17.64, 0], [18.5, 0], [18.6, 1], [16.8, 0], [16.7, 1]])('%d of a sailing hull of 17.64', (tons, count) => {
        expect(said(`${sail}  tonnage-form: sailing  gross-tonnage: ${tons}`)).toHaveLength(count);
    });
    it('tries every form her type allows', () => {
        expect(said(`${sail}  gross-tonnage: 13`)).toEqual([]); // keel in the depth
        expect(said(`${sail}  gross-tonnage: 23`)).toEqual(['warning ']); // ship-shaped, which a sailing yacht is not
        expect(said(`${sail.replace('sailing-yacht', 'steel-vessel')}  gross-tonnage: 23`)).toEqual([]);
    });
    it('says the same in meters', () => {
        const metric = 'type: motor-yacht  length-on-deck: 12.89 m  beam: 4.33 m  depth: 2.38 m';
        expect(said(`${metric}  gross-tonnage: 31`)).toEqual([]);
        expect(said(`${metric}  gross-tonnage: 25`)).toEqual(['warning ']);
    });
    it('points at the certificate, and is only noted', () => {
        const text = vessel(`${motor}  gross-tonnage: 41`);
        expect(raisedBy(id, text).map(problem => pointedAt(text, problem))).toEqual(['41']);
        expect(urgencies(id, text)).toEqual(['note-only']);
    });
    it('offers the unit or the form that would explain it', () => {
        expect(correctionsIn(id, vessel('type: motor-yacht  length-on-deck: 42.3 ft  beam: 14.2 ft  depth: 7.8 m  gross-tonnage: 31'))).toEqual(['Read the depth as 7.8 ft']);
        expect(correctionsIn(id, vessel(`${motor}  gross-tonnage: 39`))).toEqual(['Choose the form box']);
    });
    it('sums the hulls of a catamaran', () => {
        const cat = 'type: catamaran  tonnage-form: ship  length-on-deck: 40 ft  beam: 22 ft  hull-beam: 5 ft  depth: 6 ft'; // 2 x 8.04
        expect(said(`${cat}  gross-tonnage: 16`)).toEqual([]);
        expect(said(`${cat}  gross-tonnage: 8`)).toEqual(['warning ']);
        expect(said(`${cat.replace('hull-beam: 5 ft  ', '')}  gross-tonnage: 8`)).toEqual(['hint ']);
        expect(said(`${cat.replace('catamaran', 'trimaran')}  gross-tonnage: 30`)).toEqual([]);
    });
    it('counts the deckhouse of a houseboat in her favor', () => {
        const house = 'type: houseboat  length-on-deck: 50 ft  beam: 14 ft  depth: 4 ft'; // ship 18.76, box 23.52
        expect(said(`${house}  gross-tonnage: 40`)).toEqual([]);
        expect(said(`${house}  gross-tonnage: 12`)).toEqual(['warning ']);
    });
    it('asks for the one dimension that is missing', () => {
        expect(said('type: motor-yacht  length-on-deck: 42.3 ft  beam: 14.2 ft  gross-tonnage: 31')).toEqual(['hint ']);
        expect(said('type: motor-yacht  length-on-deck: 42.3 ft  gross-tonnage: 31')).toEqual([]);
    });
    it('holds for the simplified system of the United States', () => {
        expect(said(`${motor}  gross-tonnage: 60`)).toEqual(['warning ']);
        expect(said(`${motor}  gross-tonnage: 60  flag: "United States"`)).toEqual(['warning ']);
        expect(said(`${motor}  gross-tonnage: 60  flag: "USA"`)).toEqual(['warning ']);
        expect(said(`${motor}  gross-tonnage: 60  flag: "Australia"`)).toEqual([]);
        expect(said(`${motor}  gross-tonnage: 60  tonnage-system: formal`)).toEqual([]);
    });
});

describe('net', () => {
    it.each([['yes', 25, 0], ['yes', 31, 1], ['no', 31, 0], ['no', 25, 1], ['yes', 24, 0], ['yes', 22, 1]])('engine inside: %s, %i net', (inHull, net, count) => {
        expect(said(`${motor}  engine-in-hull: ${inHull}  gross-tonnage: 31  net-tonnage: ${net}`)).toHaveLength(count);
    });
    it('reads from the record where her engine stands', () => {
        expect(said(`${motor}  gross-tonnage: 31  net-tonnage: 31`)).toEqual([]);
        expect(said(`${motor}  gross-tonnage: 31  net-tonnage: 31`, 'main-engine ENG1\n')).toEqual(['warning ']);
        expect(said(`${motor}  gross-tonnage: 31  net-tonnage: 25`, 'outboard OB1\n')).toEqual(['warning ']);
        expect(said('type: sailing-yacht  fuel: none  gross-tonnage: 17  net-tonnage: 15')).toEqual(['warning ']);
    });
    it('is never over the gross, whatever the flag', () => {
        expect(said('flag: "Norway"  gross-tonnage: 17  net-tonnage: 18')).toEqual(['warning ']);
        expect(said('flag: "Norway"  gross-tonnage: 17  net-tonnage: 17')).toEqual([]);
    });
    it('is judged against the dimensions where no gross is recorded', () => {
        expect(said(`${motor}  engine-in-hull: yes  net-tonnage: 25`)).toEqual([]);
        expect(said(`${motor}  engine-in-hull: yes  net-tonnage: 15`)).toEqual(['warning ']);
    });
});

describe('documented', () => {
    it.each([['net-tonnage: 5', 0], ['net-tonnage: 4.99', 1], ['net-tonnage: 4', 1], ['', 0]])('%s', (net, count) => {
        expect(said(`official-number: "9900417"  ${net}`)).toHaveLength(count);
    });
    it('reckons from her dimensions where no certificate tells', () => {
        const small = 'official-number: "9900417"  type: sailing-yacht  length-on-deck: 24 ft  beam: 8 ft'; // sailing, depth 4: 3.84
        expect(said(`${small}  depth: 4 ft`)).toEqual(['warning ']);
        expect(said(`${small}  depth: 6 ft`)).toEqual([]); // 5.76, 5.18 net
    });
});
