import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fixed-system-overdue';
const aboard = (facts: string, attended = '2026-10-06', fuel = 'diesel') => `survey "1" pre-purchase { attended ${attended} afloat "Berth" }\nvessel "M" { fuel: ${fuel} }\nfixed-extinguisher F1 { ${facts} }\n`;

describe(id, () => {
    it.each([
        ['serviced: 2025-10-06', '2026-10-06', []], ['serviced: 2025-10-05', '2026-10-06', ['error F1']], ['serviced: 2025-10', '2026-10-31', []], ['serviced: 2025-10', '2026-11-01', ['error F1']],
        ['serviced: 2025', '2026-12-31', []], ['serviced: 2025', '2027-01-01', ['error F1']], ['serviced: 2024-02-29', '2025-02-28', []], ['serviced: 2024-02-29', '2025-03-01', ['error F1']],
        ['serviced: 2027-01', '2026-10-06', []],
    ] as const)('%s, attended %s', (facts, attended, expected) => {
        expect(summary(id, aboard(facts, attended))).toEqual(expected);
    });
    it.each([
        ['agent-mass: 10 lb  agent-mass-now: 9.5 lb', 0], ['agent-mass: 10 lb  agent-mass-now: 9.49 lb', 1], ['agent-mass: 4 kg  agent-mass-now: 3.8 kg', 0], ['agent-mass: 4 kg  agent-mass-now: 3.7 kg', 1],
        ['agent-mass: 4 kg', 0], ['agent-mass-now: 4 kg', 0], ['agent-mass: 4 kg  agent-mass-now: 5 kg', 0],
        ['covers: 7 m3  space-volume: 7 m3', 0], ['covers: 6.9 m3  space-volume: 7 m3', 1], ['covers: 250 ft3  space-volume: 7 m3', 0], ['covers: 240 ft3  space-volume: 7 m3', 1],
        ['pin: gone', 1], ['pin: loose', 1], ['pin: in-place', 0],
    ])('%s: %i', (facts, count) => {
        expect(raisedBy(id, aboard(facts)).filter(problem => problem.severity !== 'hint')).toHaveLength(count);
    });
    it('asks for the volume that is missing, the fuel and the day', () => {
        expect(summary(id, aboard('covers: 7 m3'))).toEqual(['hint F1']);
        expect(summary(id, aboard('space-volume: 7 m3'))).toEqual(['hint F1']);
        expect(summary(id, 'fixed-extinguisher F1 { stops-engine: no }\n')).toEqual(['hint F1']);
        expect(summary(id, 'fixed-extinguisher F1 { serviced: 2020 }\n')).toEqual(['hint F1']);
    });
    it('judges the shut-down of a diesel only', () => {
        expect(summary(id, aboard('stops-engine: no'))).toEqual(['error F1']);
        expect(summary(id, aboard('stops-engine: no', '2026-10-06', 'gasoline'))).toEqual([]);
        expect(summary(id, corrected(aboard('stops-engine: no'), id, 'Record that F1 stops the engine'))).toEqual([]);
    });
    it('puts all faults of one system in one problem, due before the engine is used', () => {
        const text = aboard('serviced: 2020  pin: gone  covers: 5 m3  space-volume: 7 m3');
        expect(summary(id, text)).toEqual(['error F1']);
        expect(urgencies(id, text)).toEqual(['before-use']);
    });
    it('gives the share that is gone', () => {
        expect(raisedBy(id, aboard('agent-mass: 10 kg  agent-mass-now: 9 kg'))[0]?.figures?.['agent gone']?.value).toBeCloseTo(10, 9);
    });
});
