import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'anchor-too-light';
const on12 = (rest: string, facts = '') => `vessel "M" { length-on-deck: 12.5 m  length-waterline: 11.5 m  ${facts} }\n${rest}\n`;

// 18 kg at 12 m; 90 % is 16.2 kg, 35.7 lb.
describe('anchor-too-light', () => {
    it.each([
        ['anchor A1 { mass: 16.2 kg }', []], ['anchor A1 { mass: 16.1 kg }', ['error A1']], ['anchor A1 { mass: 36 lb }', []], ['anchor A1 { mass: 35 lb }', ['error A1']], ['anchor A1', []],
        ['anchor A1 { mass: 10 kg  high-holding: yes }', []], ['anchor A1 { mass: 10 kg  high-holding: no }', ['error A1']], ['anchor A1 { mass: 10 kg  makers-mass: 10 kg }', []], ['anchor A1 { mass: 10 kg  makers-mass: 12 kg }', ['error A1']],
        ['anchor A1 { mass: 10 kg }\nanchor A2 { mass: 20 kg }', []], ['anchor A1 { mass: 10 kg  main: yes }\nanchor A2 { mass: 20 kg }', ['error A1']], ['anchor A1 { mass: 10 kg }\nanchor A2 { mass: 20 kg  main: no }', ['error A1']],
        ['anchor A1 { mass: 10 kg }\nanchor A2', []],
    ])('%s', (anchors, expected) => {
        expect(summary(id, on12(anchors))).toEqual(expected);
    });
    it('judges without a waterline only what is sure', () => {
        // 12 m hull: mean length between 10.2 and 12 m, 13.4 to 18 kg.
        const hull = (mass: string) => `vessel "M" { length-overall: 12 m }\nanchor A1 { mass: ${mass} }\n`;
        expect(summary(id, hull('12 kg'))).toEqual(['error A1']);
        expect(summary(id, hull('12.1 kg'))).toEqual(['hint A1']);
        expect(summary(id, hull('16.1 kg'))).toEqual(['hint A1']);
        expect(summary(id, hull('16.2 kg'))).toEqual([]);
    });
    it('reads feet, and is silent outside its table', () => {
        expect(summary(id, 'vessel "M" { length-on-deck: 41 ft  length-waterline: 37 ft 9 in }\nanchor A1 { mass: 35 lb }\n')).toEqual(['error A1']);
        expect(summary(id, 'vessel "M" { length-on-deck: 5.5 m  length-waterline: 5 m }\nanchor A1 { mass: 2 kg }\n')).toEqual([]);
        expect(summary(id, 'vessel "M" { length-on-deck: 26 m  length-waterline: 25 m }\nanchor A1 { mass: 20 kg }\n')).toEqual([]);
    });
    it('is due before departure on commercial craft, and a yardstick on others', () => {
        expect(urgencies(id, on12('anchor A1 { mass: 10 kg }'))).toEqual(['in-upkeep']);
        expect(raisedBy(id, on12('anchor A1 { mass: 10 kg }'))[0]?.message).toContain('a yardstick for a private boat');
        expect(urgencies(id, on12('anchor A1 { mass: 10 kg }', 'commercial: yes'))).toEqual(['before-departure']);
        expect(raisedBy(id, on12('anchor A1 { mass: 10 kg }', 'commercial: yes'))[0]?.message).not.toContain('yardstick');
    });
    it('offers another unit, a conversion and the maker’s chart', () => {
        expect(correctionsIn(id, on12('anchor A1 { mass: 20 lb }'))).toEqual(['Read 20 lb as 20 kg', 'Write it as 9.1 kg', 'Record that its maker’s chart allows it']);
        expect(correctionsIn(id, on12('anchor A1 { mass: 10 kg }'))).toEqual(['Write it as 22 lb', 'Record that its maker’s chart allows it']);
    });
});
