import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'raft-or-release-overdue';
const on = (day: string) => `survey "1" pre-purchase { attended ${day} afloat "Berth" }\n`;

describe(id, () => {
    it.each([
        ['liferaft G1 { service-due: 2026-10 }', '2026-10-31', []], ['liferaft G1 { service-due: 2026-10 }', '2026-11-01', ['error G1']], ['liferaft G1 { service-due: 2026-10-06 }', '2026-10-06', []], ['liferaft G1 { service-due: 2026-10-06 }', '2026-10-07', ['error G1']],
        ['liferaft G1 { painter-fast: no }', '2026-10-06', ['error G1']], ['liferaft G1 { painter-fast: yes }', '2026-10-06', []], ['liferaft G1', '2026-10-06', []],
        ['hydrostatic-release G1 { expires: 2026-10 }', '2026-10-31', []], ['hydrostatic-release G1 { expires: 2026-10 }', '2026-11-01', ['error G1']], ['hydrostatic-release G1 { expires: 2027-01  fitted: 2010 }', '2026-10-06', []],
        ['hydrostatic-release G1 { fitted: 2024-10-06 }', '2026-10-06', []], ['hydrostatic-release G1 { fitted: 2024-10-05 }', '2026-10-06', ['error G1']], ['hydrostatic-release G1 { fitted: 2024-10 }', '2026-10-31', []], ['hydrostatic-release G1 { made: 2024-09 }', '2026-10-06', ['error G1']],
        ['hydrostatic-release G1 { marked: no }', '2026-10-06', ['hint G1']], ['hydrostatic-release G1', '2026-10-06', []],
    ] as const)('%s, attended %s', (gear, day, expected) => {
        expect(summary(id, `${on(day)}${gear}\n`)).toEqual(expected);
    });
    it.each([
        [6, 'liferaft G1 { persons: 6 }', 0], [7, 'liferaft G1 { persons: 6 }', 1], [8, 'liferaft G1 { persons: 4  quantity: 2 }', 0], [9, 'liferaft G1 { persons: 4 }\nliferaft G2 { persons: 4 }', 1], [9, 'liferaft G1 { persons: 4 }\nliferaft G2', 0], [9, 'liferaft G1 { quantity: 0  persons: 4 }', 0],
    ])('%i persons with %s: %i', (persons, rafts, count) => {
        expect(raisedBy(id, `vessel "M" { persons: ${persons} }\n${rafts}\n`)).toHaveLength(count);
    });
    it('asks when she was attended', () => {
        expect(summary(id, 'liferaft G1 { service-due: 2020-01 }\n')).toEqual(['hint G1']);
    });
    it('is due before departure offshore, within a month nearer the shore', () => {
        const raft = 'liferaft G1 { service-due: 2020-01 }\n';
        expect(urgencies(id, `${on('2026-10-06')}vessel "M" { used-on: offshore }\n${raft}`)).toEqual(['before-departure']);
        expect(urgencies(id, `${on('2026-10-06')}vessel "M" {}\n${raft}`)).toEqual(['before-departure']);
        expect(urgencies(id, `${on('2026-10-06')}vessel "M" { used-on: coastal }\n${raft}`)).toEqual(['within-days']);
    });
    it('is put right by the number of persons', () => {
        expect(raisedBy(id, corrected('vessel "M" { persons: 8 }\nliferaft G1 { persons: 6 }\n', id, 'Record that she carries 6 persons'))).toEqual([]);
    });
});
