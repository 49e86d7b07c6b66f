import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

describe('stern-bearing-worn', () => {
    const id = 'stern-bearing-worn';
    it.each([
        ['clearance: 0.63 mm  shaft-diameter: 1-1/4 in', ['warning SB1']], ['clearance: 0.635 mm  shaft-diameter: 1-1/4 in', ['error SB1']], // 2 % of 31.75 mm
        ['clearance: 0.42 mm  shaft-diameter: 1-1/4 in', []], ['clearance: 0.43 mm  shaft-diameter: 1-1/4 in', ['warning SB1']], // two thirds
        ['clearance: 1.5 mm  shaft-diameter: 4 in', ['warning SB1']], ['clearance: 1/16 in  shaft-diameter: 4 in', ['error SB1']],
        ['clearance: 0.031 in  shaft-diameter: 32 mm', ['warning SB1'].map(() => 'error SB1')],
        ['clearance: 0.9 mm  makers-limit: 2 mm', []], ['clearance: 2 mm  makers-limit: 2 mm  shaft-diameter: 6 in', ['error SB1']],
        ['clearance: 0.9 mm', ['hint SB1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, `stern-bearing SB1 { ${facts} }\n`)).toEqual(expected);
    });
    it('is due before launching when she is ashore', () => {
        const worn = 'stern-bearing SB1 { clearance: 1 mm  shaft-diameter: 1-1/4 in }\n';
        expect(urgencies(id, `survey "1" pre-purchase { state: ashore }\n${worn}`)).toEqual(['before-launch']);
        expect(urgencies(id, `survey "1" pre-purchase { state: afloat }\n${worn}`)).toEqual(['next-haul-out']);
        expect(urgencies(id, 'stern-bearing SB1 { clearance: 0.5 mm  shaft-diameter: 1-1/4 in }\n')).toEqual(['keep-watch']);
    });
    it('names the fact it lacks', () => {
        expect(raisedBy(id, 'stern-bearing SB1 { clearance: 1 mm }\n')[0]?.message).toContain('shaft-diameter');
    });
});

describe('gland-drips', () => {
    const id = 'gland-drips';
    it.each([
        ['packed-gland', 'drips-at-rest: 10 drops/min', 0], ['packed-gland', 'drips-at-rest: 11 drops/min', 1],
        ['packed-gland', 'drips-under-way: 30 drops/min', 0], ['packed-gland', 'drips-under-way: 31 drops/min', 1],
        ['packed-gland', 'drips-under-way: 0 drops/min  runs-hot: yes', 1], ['packed-gland', 'drips-under-way: 0 drops/min', 0], ['packed-gland', 'runs-hot: yes', 1], ['packed-gland', 'drips-under-way: 3 drops/min  runs-hot: no', 0],
        ['face-seal', 'drips-at-rest: 0 drops/min', 0], ['face-seal', 'drips-at-rest: 1 drops/min', 1], ['lip-seal', 'drips-under-way: 1 drops/min', 1],
        ['face-seal', 'drips-under-way: 0 drops/min  runs-hot: yes', 1], ['face-seal', 'weeps: yes', 1], ['packed-gland', 'weeps: yes', 0], ['shaft-seal', 'drips-at-rest: 5 drops/min', 0], ['shaft-seal', 'drips-at-rest: 20 drops/min', 1],
    ])('%s %s: %i', (kind, facts, count) => {
        expect(raisedBy(id, `${kind} S1 { ${facts} }\n`)).toHaveLength(count);
    });
    it('tells the volume a day and is urgent over 60 drops at rest', () => {
        expect(raisedBy(id, 'packed-gland S1 { drips-at-rest: 20 drops/min }\n')[0]?.message).toContain('1.44 L');
        expect(urgencies(id, 'packed-gland S1 { drips-at-rest: 60 drops/min }\n')).toEqual(['in-upkeep']);
        expect(urgencies(id, 'packed-gland S1 { drips-at-rest: 61 drops/min }\n')).toEqual(['at-once']);
    });
});
