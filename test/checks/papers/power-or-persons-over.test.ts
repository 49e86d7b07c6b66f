import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'power-or-persons-over';

describe(id, () => {
    it.each([
        ['capacity-label C1 { engine-power: 100 hp }\noutboard O1 { rated-power: 100 hp }', []], ['capacity-label C1 { engine-power: 100 hp }\noutboard O1 { rated-power: 101 hp }', ['error O1']], ['capacity-label C1 { engine-power: 100 hp }\noutboard O1 { rated-power: 75 kW }', ['error O1']], ['capacity-label C1 { engine-power: 100 hp }\noutboard O1 { rated-power: 74 kW }', []],
        ['capacity-label C1 { engine-power: 100 hp }\noutboard O1 { rated-power: 60 hp  quantity: 2 }', ['error O1']], ['capacity-label C1 { engine-power: 100 hp }\noutboard O1 { rated-power: 50 hp }\noutboard O2 { rated-power: 60 hp }', ['error O1 O2']], ['capacity-label C1 { engine-power: 100 hp }\noutboard O1', ['hint O1']], ['capacity-label C1 { engine-power: 100 hp }', []],
        ['capacity-label C1 { engine-power: 10 hp }\ntender T1\noutboard O1 { rated-power: 15 hp  serves: T1 }', []],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    const boat = (power: string, facts: string, type = 'type: gasoline-cruiser') => `vessel "M" { ${type}  length-on-deck: 16 ft  transom-width: 6.25 ft  ${facts} }\noutboard O1 { rated-power: ${power} }\n`;
    it.each([
        ['110 hp', 'remote-steering: yes  transom-height: 20 in', []], ['111 hp', 'remote-steering: yes  transom-height: 20 in', ['error O1']], ['56 hp', 'remote-steering: yes  transom-height: 19 in', ['error O1']], ['55 hp', 'remote-steering: no', []], ['56 hp', 'remote-steering: no', ['error O1']],
        ['36 hp', 'remote-steering: no  flat-bottom: yes', ['error O1']], ['35 hp', 'remote-steering: no  flat-bottom: yes', []], ['100 hp', '', ['hint O1']], ['111 hp', '', ['error O1']], ['55 hp', '', []], ['100 hp', 'remote-steering: yes', ['hint O1']],
    ] as const)('%s, %s', (power, facts, expected) => {
        expect(summary(id, boat(power, facts))).toEqual(expected);
    });
    it('leaves craft alone that the rule is not for', () => {
        for (const type of ['sailing-yacht', 'catamaran', 'trimaran', 'rigid-inflatable', 'houseboat']) {
            expect(summary(id, boat('300 hp', '', `type: ${type}`)), type).toEqual([]);
        }
        expect(summary(id, `${boat('300 hp', '')}inflatable-tube I1\n`)).toEqual([]);
        expect(summary(id, boat('300 hp', '', ''))).toEqual(['hint O1']);
        expect(summary(id, 'vessel "M" { type: gasoline-cruiser  length-on-deck: 20 ft  transom-width: 6 ft }\noutboard O1 { rated-power: 300 hp }\n')).toEqual([]);
        expect(summary(id, 'vessel "M" { type: gasoline-cruiser  length-on-deck: 19.9 ft }\noutboard O1 { rated-power: 300 hp }\n')).toEqual(['hint O1']);
    });
    it.each([
        [7, 'persons: 7', []], [8, 'persons: 7', ['error C1']], [7, 'persons-load: 955 lb', []], [8, 'persons-load: 955 lb', ['error C1']], [8, 'persons-load: 433 kg', ['error C1']], [8, '', []], [4, 'persons: 8  persons-load: 955 lb', ['warning C1']], [4, 'persons: 7  persons-load: 955 lb', []],
    ])('%i persons, label with %s', (persons, label, expected) => {
        expect(summary(id, `vessel "M" { persons: ${persons} }\ncapacity-label C1 { ${label} }\n`)).toEqual(expected);
    });
    it('is put right by the number of persons, and due before departure', () => {
        const text = 'vessel "M" { persons: 9 }\ncapacity-label C1 { persons: 7 }\n';
        expect(raisedBy(id, corrected(text, id, 'Record that she carries 7 persons'))).toEqual([]);
        expect(urgencies(id, text)).toEqual(['before-departure']);
    });
});
