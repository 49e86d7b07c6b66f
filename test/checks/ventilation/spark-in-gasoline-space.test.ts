import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'spark-in-gasoline-space';

describe('a part that stands in a space with gasoline', () => {
    it.each([
        ['ignition-space: yes  ignition-protected: no', ['error P1']], ['ignition-space: yes  ignition-protected: yes', []], ['ignition-space: yes', ['hint P1']], ['ignition-protected: no', []],
        ['ignition-space: no  ignition-protected: no', []], ['ignition-space: yes  ignition-protected: no  isolated-by: none', ['error P1']],
        ['ignition-space: yes  ignition-protected: no  isolated-by: bulkhead', []], ['ignition-space: yes  ignition-protected: no  isolated-by: deck', []], ['ignition-space: yes  isolated-by: open-air', []],
    ] as const)('%s', (facts, expected) => {
        for (const kind of ['electrical-part', 'bilge-pump', 'blower', 'float-switch', 'fuel-pump', 'water-pump', 'bilge-alarm']) {
            expect(summary(id, `${kind} P1 { ${facts} }\n`), kind).toEqual(expected);
        }
    });
    it('is not a battery, of which no mark is looked for', () => {
        expect(summary(id, 'battery B1 { ignition-space: yes }\n')).toEqual([]);
    });
    it('is a matter for now', () => {
        expect(urgencies(id, 'electrical-part P1 { ignition-space: yes  ignition-protected: no }\n')).toEqual(['at-once']);
    });
});

describe('parts that a space names', () => {
    const text = (vessel: string, space: string, part = 'inverter I1') => `vessel "M" { ${vessel} }\n${part}\ncharger CH1\nmachinery-space S1 { ${space} }\n`;
    it('are faults where it holds gasoline', () => {
        expect(summary(id, text('fuel: gasoline', 'unmarked-parts: I1, CH1'))).toEqual(['error I1 S1', 'error CH1 S1']);
        expect(summary(id, text('fuel: diesel', 'gasoline: yes  unmarked-parts: CH1'))).toEqual(['error CH1 S1']);
        expect(summary(id, text('fuel: gasoline', 'gasoline: no  unmarked-parts: CH1'))).toEqual([]);
        expect(summary(id, text('length-overall: 30 ft', 'unmarked-parts: CH1'))).toEqual(['hint S1']);
    });
    it('are left alone where their own mark says otherwise', () => {
        expect(summary(id, text('fuel: gasoline', 'unmarked-parts: I1', 'breaker I1 { ignition-protected: yes }'))).toEqual([]);
    });
});

describe('a battery in line with fuel', () => {
    it.each([['fuel-tank T1', 'gasoline', 1], ['fuel-filter T1', 'gasoline', 1], ['fuel-valve T1', 'gasoline', 1], ['fuel-tank T1', 'diesel', 0]] as const)('%s of %s: %i', (part, fuel, count) => {
        expect(raisedBy(id, `vessel "M" { fuel: ${fuel} }\nbattery B1\n${part} { in-line-with-battery: B1 }\n`)).toHaveLength(count);
    });
    it('is judged by the fuel of the tank before that of the vessel', () => {
        expect(summary(id, 'vessel "M" { fuel: diesel }\nbattery B1\nfuel-tank T1 { fuel: gasoline  in-line-with-battery: B1 }\n')).toEqual(['error B1 T1']);
        expect(summary(id, 'battery B1\nfuel-filter T1 { in-line-with-battery: B1 }\n')).toEqual(['hint T1']);
    });
});
