import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'blisters-many';
const blister = (facts: string) => `blister BL1 { ${facts} }\n`;

describe('blisters-many', () => {
    it.each([
        ['density: 0 per-m2', []], ['density: 4 per-m2', ['warning BL1']], ['density: 12 per-m2', ['warning BL1']], ['density: 20 per-m2', ['warning BL1']], ['density: 21 per-m2', ['error BL1']],
        ['count: 40  counted-on: 2 m2', ['warning BL1']], ['count: 41  counted-on: 2 m2', ['error BL1']], ['count: 41', []], ['count: 300  counted-on: 100 ft2', ['error BL1']],
        ['diameter: 50 mm', ['hint BL1']], ['diameter: 51 mm', ['error BL1']], ['diameter: 2 in', ['error BL1']], ['density: 2 per-m2  diameter: 50 mm', ['warning BL1']],
        ['depth: 1.5 mm', ['hint BL1']], ['depth: 1.6 mm', ['error BL1']], ['depth: 1.6 mm  into-laminate: no', ['hint BL1']], ['depth: 0.5 mm  into-laminate: yes', ['error BL1']],
        ['into-laminate: yes', ['error BL1']], ['acid: yes', []], ['', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, blister(facts))).toEqual(expected);
    });
    it('says all that is wrong, and what is due', () => {
        const [problem] = raisedBy(id, blister('density: 30 per-m2  diameter: 60 mm  depth: 2 mm  acid: yes'));
        expect(problem?.message).toMatch(/30 on a square meter .*60 mm.*across.*into the laminate/);
        expect(problem?.draft?.seen).toBe('Blisters (BL1) were found, {BL1.density}, up to {BL1.diameter} across and {BL1.depth} deep. The fluid in them is acid.');
        expect(urgencies(id, blister('density: 30 per-m2'))).toEqual(['next-haul-out']);
        expect(urgencies(id, blister('density: 3 per-m2'))).toEqual(['keep-watch']);
    });
    it('records the count it computed', () => {
        expect(corrected(blister('count: 50  counted-on: 2 m2'), id, 'Record the count on a square meter')).toContain('density: 25 per-m2');
    });
});
