import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary } from '../check-text.js';

const id = 'sound-signal-missing';
const aboard = (length: string, devices: string) => `vessel "M" { length-overall: ${length} }\n${devices}\n`;

describe(id, () => {
    it.each([
        ['11.9 m', 'sound-device S1 { device: bell }', []], ['12 m', 'sound-device S1 { device: bell }', ['error S1']], ['39.37 ft', 'sound-device S1 { device: bell }', []], ['39.4 ft', 'sound-device S1 { device: bell }', ['error S1']],
        ['12 m', 'sound-device S1 { device: whistle }', []], ['12 m', 'sound-device S1 { device: horn }', []], ['12 m', 'sound-device S1 { device: horn  works: no }', ['error S1']], ['12 m', 'sound-device S1 { device: horn  works: not-tried }', []],
        ['19.9 m', 'sound-device S1 { device: whistle }', []], ['20 m', 'sound-device S1 { device: whistle }', ['error S1']], ['20 m', 'sound-device S1 { device: whistle }\nsound-device S2 { device: bell }', []], ['65.7 ft', 'sound-device S1 { device: whistle }', ['error S1']],
        ['10 m', 'sound-device S1 { quantity: 0 }', ['error S1']], ['10 m', 'sound-device S1', []], ['12 m', 'sound-device S1', ['hint S1']], ['20 m', 'sound-device S1 { device: whistle }\nsound-device S2', ['hint S2']], ['20 m', '', []],
    ])('%s with %s', (length, devices, expected) => {
        expect(summary(id, aboard(length, devices))).toEqual(expected);
    });
    it('judges what is said to be absent', () => {
        expect(raisedBy(id, `survey "1" pre-purchase { absent "Horn": "none aboard" }\n${aboard('10 m', '')}`)).toHaveLength(1);
    });
    it('asks for the length where it decides', () => {
        expect(summary(id, 'vessel "M" {}\nsound-device S1 { device: whistle }\n')).toEqual(['hint S1']);
        expect(summary(id, 'vessel "M" {}\nsound-device S1 { device: whistle }\nsound-device S2 { device: bell }\n')).toEqual([]);
    });
    it('counts the length of the hull where that alone is recorded', () => {
        expect(summary(id, 'vessel "M" { length-on-deck: 12 m }\nsound-device S1 { device: bell }\n')).toEqual(['error S1']);
        expect(summary(id, 'vessel "M" { length-on-deck: 11.8 m  length-overall: 12.3 m }\nsound-device S1 { device: bell }\n')).toEqual(['error S1']);
    });
    it('adds what is missing', () => {
        const text = aboard('21 m', 'sound-device S1 { device: horn  works: no }');
        expect(correctionsIn(id, text)).toEqual(['Add a whistle', 'Add a bell']);
        expect(raisedBy(id, corrected(corrected(text, id, 'Add a whistle'), id, 'Add a bell'))).toEqual([]);
    });
});
