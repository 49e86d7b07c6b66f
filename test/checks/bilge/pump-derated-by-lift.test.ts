import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'pump-derated-by-lift';
const pump = (facts: string) => `bilge-pump P1 { ${facts} }\n`;

describe('measured against its rating', () => {
    it.each([
        ['rated-flow: 100 L/min  real-flow: 46 L/min', []], ['rated-flow: 100 L/min  real-flow: 45 L/min', []], ['rated-flow: 100 L/min  real-flow: 44 L/min', ['warning P1']],
        ['rated-flow: 1000 gph  real-flow: 440 gph', ['warning P1']], ['rated-flow: 1000 gph  real-flow: 460 gph', []], ['rated-flow: 1000 gph  real-flow: 100 gph  works: no', []],
        ['real-flow: 10 gph', []], ['rated-flow: 1000 gph', []], ['rated-flow: 1000 gph  real-flow: 300 gph  quantity: 2', ['warning P1']],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, pump(facts))).toEqual(expected);
    });
    it('offers a mistaken unit', () => {
        expect(correctionsIn(id, pump('rated-flow: 10 gpm  real-flow: 8 gph'))).toEqual(['Read 8 gph as 8 gpm']);
    });
});

describe('estimated at its lift', () => {
    it.each([
        ['lift: 3 m  makers-head: 4 m', []], ['lift: 3.18 m  makers-head: 4 m', []], ['lift: 3.3 m  makers-head: 4 m', ['warning P1']],
        ['lift: 4 m  makers-head: 4 m', ['error P1']], ['lift: 5 m  makers-head: 4 m', ['error P1']], ['lift: 9 ft  makers-head: 10 ft', ['warning P1']],
        ['lift: 3.9 m  makers-head: 4 m  build: diaphragm', []], ['lift: 3.9 m', []], ['makers-head: 4 m', []],
        ['lift: 2 m  makers-head: 4 m  voltage: 12 V  nominal-voltage: 12 V', []], ['lift: 2 m  makers-head: 4 m  voltage: 9 V  nominal-voltage: 12 V', ['warning P1']],
    ] as const)('%s', (facts, expected) => {
        expect(summary(id, pump(`rated-flow: 1000 gph  ${facts}`))).toEqual(expected);
    });
    it('counts the hose of its run', () => {
        const run = (bore: string, length: string) => `${pump('rated-flow: 2000 gph  lift: 1.5 m  makers-head: 4 m')}hose H1 { bore: ${bore}  length: ${length} }\nskin-fitting-above TH1\nrun R1 { service: bilge-discharge }: P1 -> H1 -> TH1\n`;
        expect(summary(id, run('38 mm', '3 m'))).toEqual([]);
        expect(summary(id, run('19 mm', '6 m'))).toEqual(['warning P1']);
        expect(raisedBy(id, run('19 mm', '6 m'))[0]?.message).toContain('6 m (19 ft 8 in) of hose of 19 mm');
    });
    it('goes after a measured flow', () => {
        expect(summary(id, pump('rated-flow: 1000 gph  real-flow: 600 gph  lift: 3.9 m  makers-head: 4 m'))).toEqual([]);
    });
});

it('is judged by the share that the firm takes, and says whose it is', () => {
    const firm = 'yardsticks { pump-share: 70 % }\n';
    expect(summary(id, firm + pump('rated-flow: 100 L/min  real-flow: 62 L/min'))).toEqual(['warning P1']);
    expect(raisedBy(id, firm + pump('rated-flow: 100 L/min  real-flow: 62 L/min'))[0]?.message).toContain('70 % is the firm’s limit');
    expect(raisedBy(id, pump('rated-flow: 100 L/min  real-flow: 30 L/min'))[0]?.message).toContain('50 % is the usual limit');
});

describe('against the largest hose, with an alarm that works', () => {
    const leak = (pumps: string, alarm = 'bilge-alarm A1 { works: yes }') => `through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nseacock SC1 { pattern: flanged-seacock }\nhose H1\nsink S1\nrun R1: TH1 -> SC1 -> H1 -> S1\n${pumps}\n${alarm}\n`; // 77 L/min
    it.each([
        ['bilge-pump P1 { rated-flow: 78 L/min }', ['warning P1 TH1']], ['bilge-pump P1 { rated-flow: 77 L/min }', []], ['bilge-pump P1 { rated-flow: 154 L/min }', ['warning P1 TH1']], ['bilge-pump P1 { rated-flow: 156 L/min }', []],
        ['bilge-pump P1 { rated-flow: 60 L/min  quantity: 2 }', ['warning P1 TH1']], ['bilge-pump P1 { rated-flow: 100 L/min }\nbilge-pump P2', []],
    ] as const)('%s', (pumps, expected) => {
        expect(summary(id, leak(pumps))).toEqual(expected);
    });
    it('is left to another check where no alarm works', () => {
        expect(summary(id, leak('bilge-pump P1 { rated-flow: 100 L/min }', ''))).toEqual([]);
        expect(summary('flooding-beats-pumps', leak('bilge-pump P1 { rated-flow: 100 L/min }', ''))).toEqual(['error TH1 P1']);
    });
    it('takes share and coefficient of the firm', () => {
        expect(summary(id, `yardsticks { pump-share: 80 % }\n${leak('bilge-pump P1 { rated-flow: 100 L/min }')}`)).toEqual([]);
        expect(raisedBy(id, `yardsticks { flow-coefficient: 0.7 }\n${leak('bilge-pump P1 { rated-flow: 100 L/min }')}`)[0]?.message).toContain('coefficient 0.7 as the firm takes it');
    });
});

it('is a matter of upkeep', () => {
    expect(urgencies(id, pump('rated-flow: 100 L/min  real-flow: 10 L/min'))).toEqual(['in-upkeep']);
});
