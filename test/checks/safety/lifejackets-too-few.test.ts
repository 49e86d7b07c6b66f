import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary } from '../check-text.js';

const id = 'lifejackets-too-few';
const ring = 'throwable T1\n';
const vessel = (facts: string) => `vessel "M" { ${facts} }\n`;

describe(id, () => {
    it.each([
        ['persons: 4', 'quantity: 4', []], ['persons: 4', 'quantity: 3', ['error L1']], ['persons: 4', 'quantity: 6  in-order: 4', []], ['persons: 4', 'quantity: 6  in-order: 3', ['error L1']],
        ['persons: 4', 'quantity: 4  approved: no', ['error L1']], ['persons: 4', 'quantity: 4  condition: failed', ['error L1']], ['persons: 1', '', []], ['persons: 2', '', ['error L1']], ['', 'quantity: 4', ['hint L1']],
        ['persons: 4', 'quantity: 6  child-sizes: 2', []], ['persons: 4', 'quantity: 5  child-sizes: 2', ['hint L1']], ['persons: 4  children: 1', 'quantity: 5  child-sizes: 2', []],
        ['persons: 4  children: 0', 'quantity: 5  child-sizes: 2', ['error L1']], ['persons: 4  children: 2', 'quantity: 5  child-sizes: 1', ['error L1']], ['persons: 4  children: 4', 'quantity: 4  child-sizes: 4', []],
    ])('%s; jackets %s', (facts, jackets, expected) => {
        expect(summary(id, `${vessel(`length-on-deck: 10 m  ${facts}`)}lifejacket L1 { ${jackets} }\n${ring}`)).toEqual(expected);
    });
    it.each([
        ['length-on-deck: 16 ft', '', ['error L1', 'throwable']], ['length-on-deck: 15.9 ft', '', []], ['length-on-deck: 4.88 m', '', ['error L1', 'throwable']], ['length-on-deck: 4.87 m', '', []], ['length-overall: 5 m', '', ['error L1', 'throwable']],
        ['length-on-deck: 16 ft', ring, []], ['length-on-deck: 16 ft', 'throwable T1 { quantity: 0 }\n', ['error T1']], ['length-on-deck: 16 ft', 'throwable T1 { approved: no }\n', ['error T1']], ['', '', ['hint ']],
    ])('%s and "%s"', (facts, rings, expected) => {
        const found = summary(id, `${vessel(`persons: 2  ${facts}`)}lifejacket L1 { quantity: 2 }\n${rings}`);
        expect(found).toHaveLength(expected.length === 0 ? 0 : 1);
        expect(found[0]?.split(' ')[0]).toBe(expected[0]?.split(' ')[0]);
    });
    it('says nothing where nothing is recorded, and counts none where it is said that there is none', () => {
        expect(summary(id, vessel('length-on-deck: 10 m  persons: 4'))).toEqual([]);
        expect(raisedBy(id, `survey "1" pre-purchase { absent "Life jackets": "none" }\n${vessel('length-on-deck: 4 m  persons: 4')}`)).toHaveLength(1);
    });
    it('adds what is missing, by size', () => {
        const text = `${vessel('length-on-deck: 10 m  persons: 6  children: 2')}lifejacket L1 { quantity: 3 }\n${ring}`;
        expect(correctionsIn(id, text)).toEqual(['Add 1 life jacket', 'Add 2 life jackets for children']);
        const once = corrected(text, id, 'Add 1 life jacket');
        expect(raisedBy(id, corrected(once, id, 'Add 2 life jackets for children'))).toEqual([]);
    });
    it('gives how many are missing', () => {
        expect(raisedBy(id, `${vessel('length-on-deck: 10 m  persons: 6')}lifejacket L1 { quantity: 2 }\n${ring}`)[0]?.figures?.missing?.value).toBe(4);
    });
});
