import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'fuel-siphons-or-no-valve';
const hose = 'fuel-hose H1 { class: fuel-a1  below-tank-top: yes  length: 8 ft }';
const line = (parts: string, run: string, tank = 'fuel: gasoline') => `fuel-tank T1 { ${tank} }\nengine E1\n${parts}\nrun R1 { service: fuel-feed }: ${run}\n`;

describe('a line below the top of the tank', () => {
    it('is a fault where nothing stops it', () => {
        expect(summary(id, line(hose, 'T1 -> H1 -> E1'))).toEqual(['error H1 T1']);
        expect(urgencies(id, line(hose, 'T1 -> H1 -> E1'))).toEqual(['before-use']);
        expect(correctionsIn(id, line(hose, 'T1 -> H1 -> E1'))).toEqual(['Record an anti-siphon device at T1']);
    });
    it('is stopped by a device at the tank, in the run or serving the tank', () => {
        expect(summary(id, line(`${hose}\nanti-siphon-device A1`, 'T1 -> A1 -> H1 -> E1'))).toEqual([]);
        expect(summary(id, line(`${hose}\nanti-siphon-device A1 { serves: T1 }`, 'T1 -> H1 -> E1'))).toEqual([]);
        expect(summary(id, line(`${hose}\nfuel-valve V1 { drive: electric  serves: T1 }`, 'T1 -> H1 -> E1'))).toEqual([]);
    });
    it('is stopped by a device after a part that lies high, not after one that lies low', () => {
        const high = 'fuel-hose H0 { class: fuel-a1  below-tank-top: no }';
        expect(summary(id, line(`${hose}\n${high}\nanti-siphon-device A1`, 'T1 -> H0 -> A1 -> H1 -> E1'))).toEqual([]);
        expect(summary(id, line(`${hose}\n${high}\nanti-siphon-device A1`, 'T1 -> H1 -> A1 -> H0 -> E1'))).toEqual(['error H1 T1']);
    });
    it('may be a pump or a filter that lies low', () => {
        expect(summary(id, line('fuel-pump P1 { below-tank-top: yes }\nfuel-line L1 { below-tank-top: no }', 'T1 -> L1 -> P1 -> E1'))).toEqual(['error P1 T1']);
    });
});

describe('valves alone', () => {
    const low = 'fuel: gasoline  top-below-engine-inlet: yes';
    const valve = 'fuel-valve V1 { at-tank: yes  remote: yes }';
    const of = (length: string) => `fuel-hose H1 { class: fuel-a1  below-tank-top: yes  length: ${length} }\n${valve}`;
    it.each([['12 ft', []], ['3.658 m', []], ['12 ft 1 in', ['error H1 T1']], ['3.7 m', ['error H1 T1']], ['4 ft', []]] as const)('line of %s', (length, expected) => {
        expect(summary(id, line(of(length), 'T1 -> V1 -> H1 -> E1', low))).toEqual(expected);
    });
    it('do with a second one at the engine', () => {
        expect(summary(id, line(`${of('20 ft')}\nfuel-valve V2`, 'T1 -> V1 -> H1 -> V2 -> E1', low))).toEqual([]);
        expect(summary(id, line(`${of('20 ft')}\nfuel-valve V2 { at-engine: no }`, 'T1 -> V1 -> H1 -> V2 -> E1', low))).toEqual(['error H1 T1']);
    });
    it('do not where the tank lies high, the valve is not reached or the hose is not A1', () => {
        expect(summary(id, line(of('8 ft'), 'T1 -> V1 -> H1 -> E1', 'fuel: gasoline  top-below-engine-inlet: no'))).toEqual(['error H1 T1']);
        expect(summary(id, line(of('8 ft').replace('remote: yes', 'remote: no'), 'T1 -> V1 -> H1 -> E1', low))).toEqual(['error H1 T1']);
        expect(summary(id, line(of('8 ft').replace('fuel-a1', 'fuel-b1  leak-when-cut: 1 mL'), 'T1 -> V1 -> H1 -> E1', low))).toEqual(['error H1 T1']);
    });
    it('ask for what is not recorded of them', () => {
        const [problem] = raisedBy(id, line(`${hose.replace('  length: 8 ft', '')}\nfuel-valve V1`, 'T1 -> V1 -> H1 -> E1'));
        expect(problem?.severity).toBe('hint');
        expect(problem?.message).toMatch(/top-below-engine-inlet of T1, remote of V1 and the lengths/);
    });
    it('do not count where none sits at the tank', () => {
        expect(summary(id, line(`${hose}\nfuel-valve V1`, 'T1 -> H1 -> V1 -> E1', low))).toEqual(['error H1 T1']);
    });
});

it('asks whether a gasoline line lies low, and which fuel a low line carries', () => {
    expect(summary(id, line('fuel-hose H1 { class: fuel-a1 }', 'T1 -> H1 -> E1'))).toEqual(['hint H1']);
    expect(summary(id, line(hose, 'T1 -> H1 -> E1', ''))).toEqual(['hint T1']);
    expect(summary(id, line('fuel-hose H1', 'T1 -> H1 -> E1', ''))).toEqual([]);
});

it('leaves diesel, outboards and other runs alone', () => {
    expect(summary(id, line(hose, 'T1 -> H1 -> E1', 'fuel: diesel'))).toEqual([]);
    expect(summary(id, `fuel-tank T1 { fuel: gasoline }\noutboard O1\n${hose}\nrun R1 { service: fuel-feed }: T1 -> H1 -> O1\n`)).toEqual([]);
    expect(summary(id, `fuel-tank T1 { fuel: gasoline }\nfuel-vent V1\n${hose}\nrun R1 { service: fuel-vent }: T1 -> H1 -> V1\n`)).toEqual([]);
});
