import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fastenings-failed';
const sample = (facts: string) => `fastening FS1 { ${facts} }\n`;

describe('fastenings-failed', () => {
    it.each([
        ['sampled: 20  bad: 2', []], ['sampled: 20  bad: 3', ['warning FS1']], ['sampled: 20  bad: 5', ['warning FS1']], ['sampled: 20  bad: 6', ['error FS1']],
        ['sampled: 7  bad: 0', ['warning FS1']], ['sampled: 8  bad: 0', []], ['sampled: 8  bad: 0  drawn-port: 5  drawn-starboard: 3', ['warning FS1']], ['sampled: 8  bad: 0  drawn-port: 8', ['warning FS1']],
        ['sampled: 10  bad: 0  drawn-port: 6', []], ['sampled: 10  bad: 0  places-drawn: 1', ['warning FS1']], ['sampled: 10  bad: 0  places-drawn: 2', []],
        ['sampled: 4  bad: 2', ['error FS1']], ['bad: 3', ['hint FS1']], ['sampled: 10', ['hint FS1']], ['sampled: 3  bad: 5', ['hint FS1']], ['sampled: 0  bad: 0', []], ['bad: 0', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, sample(facts))).toEqual(expected);
    });
    it('is due before launching over a quarter', () => {
        expect(urgencies(id, sample('sampled: 8  bad: 3'))).toEqual(['before-launch']);
        expect(urgencies(id, `survey "1" pre-purchase { state: afloat }\n${sample('sampled: 8  bad: 3')}`)).toEqual(['next-haul-out']);
        expect(urgencies(id, sample('sampled: 8  bad: 1'))).toEqual(['next-haul-out']);
    });
    it('says that a bad sample is thin besides', () => {
        expect(raisedBy(id, sample('sampled: 4  bad: 2'))[0]?.message).toContain('thin besides, fewer than 4 from each side');
        expect(raisedBy(id, sample('sampled: 9  bad: 0  drawn-port: 9'))[0]?.message).toContain('all from one side');
    });
});

describe('loss of the shank', () => {
    it.each([['shank-loss: 30 %', ['hint']], ['shank-loss: 25 %', []], ['shank-loss: 30 %  sampled: 20  bad: 0', ['hint']], ['shank-loss: 30 %  sampled: 20  bad: 6', ['error']]])('%s', (facts, expected) => {
        expect(raisedBy('fastenings-failed', `fastening FA1 { ${facts} }\n`).map(({ severity }) => severity)).toEqual(expected);
    });
});
