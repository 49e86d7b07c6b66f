import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

describe('injection-point-too-low', () => {
    const id = 'injection-point-too-low';
    const riser = (facts: string, more = '') => `exhaust-riser ER1 { ${facts} }\n${more}`;
    const loop = (facts: string) => `vented-loop VL1 { serves: ER1  ${facts} }\n`;

    it.each([
        ['injection-above-waterline: 12 in  loop: none', []], ['injection-above-waterline: 305 mm  loop: none', []], ['injection-above-waterline: 11.9 in  loop: none', ['error ER1']],
        ['injection-above-waterline: 300 mm  loop: none', ['error ER1']], ['injection-above-waterline: -3 in  loop: none', ['error ER1']],
        ['injection-above-waterline: 9 in', ['hint ER1']], ['injection-above-waterline: 9 in  loop: not-seen', ['hint ER1']], ['injection-above-waterline: 9 in  loop: fitted', ['hint ER1']],
        ['injection-above-waterline: 7 in  makers-least: 6 in  loop: none', []], ['injection-above-waterline: 13 in  makers-least: 14 in  loop: none', ['error ER1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, riser(facts))).toEqual(expected);
    });

    it.each([
        ['top-above-waterline: 18 in', []], ['top-above-waterline: 457 mm', []], ['top-above-waterline: 17.5 in', ['error ER1 VL1']],
        ['top-above-waterline: 20 in  top-above-heeled-waterline: 7 in', ['error ER1 VL1']], ['top-above-heeled-waterline: 8 in', []], ['top-above-waterline: 20 in  vent-works: no', ['error ER1 VL1']], ['', ['hint ER1 VL1']],
    ])('loop with %s', (facts, expected) => {
        expect(summary(id, riser('injection-above-waterline: 2 in', loop(facts)))).toEqual(expected);
    });

    it('reads the loop, or its absence, off the cooling run', () => {
        const run = (parts: string) => `through-hull TH1 { below-waterline: 1 ft  size: 1 in }\nseacock SC1 { pattern: flanged-seacock }\nmain-engine E1\nvented-loop VL1 { top-above-waterline: 19 in }\nexhaust-riser ER1 { injection-above-waterline: 2 in }\nrun R1 { service: raw-water-cooling }: ${parts}\n`;
        expect(summary(id, run('TH1 -> SC1 -> E1'))).toEqual(['error ER1']);
        expect(summary(id, run('TH1 -> SC1 -> VL1 -> E1'))).toEqual([]);
    });

    it('leaves a run to siphon-loop-missing-or-low that reports it', () => {
        const text = `through-hull TH1 { below-waterline: 1 ft  size: 1 in }\nseacock SC1 { pattern: flanged-seacock }\nmain-engine E1 { rim-below-waterline: 2 in }\nexhaust-riser ER1 { injection-above-waterline: 2 in }\nrun R1 { service: raw-water-cooling }: TH1 -> SC1 -> E1\n`;
        expect(summary('siphon-loop-missing-or-low', text)).toHaveLength(1);
        expect(summary(id, text)).toEqual([]);
    });

    it('offers a loop, is due before she departs and names the limit', () => {
        const text = riser('injection-above-waterline: 9 in  loop: none');
        expect(summary(id, corrected(text, id, 'Record a vented loop that serves ER1, 18 in above the waterline'))).toEqual([]);
        expect(urgencies(id, text)).toEqual(['before-departure']);
        expect(raisedBy(id, text)[0]?.message).toContain('the usual limit');
        expect(raisedBy(id, `yardsticks { riser-height: 250 mm }\n${text}`)[0]?.message).toContain('the firm’s limit');
    });
});

describe('exhaust-runs-hot', () => {
    const id = 'exhaust-runs-hot';
    it.each([
        ['exhaust-hose XH1 { temperature: 200 F }', []], ['exhaust-hose XH1 { temperature: 201 F }', ['error XH1']], ['exhaust-hose XH1 { temperature: 93 C }', []], ['exhaust-hose XH1 { temperature: 94 C }', ['error XH1']],
        ['exhaust-hose XH1 { temperature: 210 F  rated-temperature: 250 F }', ['warning XH1']], ['exhaust-hose XH1 { temperature: 251 F  rated-temperature: 250 F }', ['error XH1']],
        ['exhaust-hose XH1 { temperature: 190 F  rated-temperature: 180 F }', ['error XH1']],
        ['exhaust-riser ER1 { temperature: 201 F  lagged: no  within-reach: yes }', ['warning ER1']], ['exhaust-riser ER1 { temperature: 200 F  lagged: no  within-reach: yes }', []],
        ['turbo ER1 { temperature: 500 F  lagged: no  within-reach: yes }', ['warning ER1']], ['exhaust-riser ER1 { temperature: 300 F  lagged: no }', ['hint ER1']],
        ['exhaust-riser ER1 { temperature: 300 F  within-reach: yes }', ['hint ER1']], ['exhaust-riser ER1 { temperature: 300 F }', []], ['exhaust-riser ER1 { temperature: 300 F  lagged: yes }', []],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });

    it('is due before use over the rating, else with upkeep', () => {
        expect(urgencies(id, 'exhaust-hose XH1 { temperature: 230 F }\n')).toEqual(['before-use']);
        expect(urgencies(id, 'exhaust-hose XH1 { temperature: 230 F  rated-temperature: 250 F }\n')).toEqual(['in-upkeep']);
    });

    const sides = (port: string, starboard: string) => `exhaust-hose XH1 { side: port  ${port} }\nexhaust-hose XH2 { side: starboard  ${starboard} }\n`;
    it.each([
        ['temperature: 141 F  rotation: 2400 rpm', 'temperature: 120 F  rotation: 2400 rpm', ['warning XH1 XH2']], ['temperature: 140 F  rotation: 2400 rpm', 'temperature: 120 F  rotation: 2400 rpm', []],
        ['temperature: 120 F  rotation: 2400 rpm', 'temperature: 150 F  rotation: 2290 rpm', ['warning XH2 XH1']], ['temperature: 120 F  rotation: 2400 rpm', 'temperature: 150 F  rotation: 2270 rpm', []],
        ['temperature: 60 C  rotation: 2400 rpm', 'temperature: 48.9 C  rotation: 2400 rpm', []], ['temperature: 60 C  rotation: 2400 rpm', 'temperature: 48.8 C  rotation: 2400 rpm', ['warning XH1 XH2']],
        ['temperature: 150 F', 'temperature: 120 F  rotation: 2400 rpm', ['hint XH1 XH2']], ['temperature: 120 F', 'temperature: 120 F', []],
    ])('%s and %s', (port, starboard, expected) => {
        expect(summary(id, sides(port, starboard))).toEqual(expected);
    });
    it('does not compare where several parts stand on a side', () => {
        expect(summary(id, `${sides('temperature: 150 F  rotation: 2400 rpm', 'temperature: 120 F  rotation: 2400 rpm')}exhaust-hose XH3 { side: port  temperature: 120 F  rotation: 2400 rpm }\n`)).toEqual([]);
    });

    it('reads a table of temperatures', () => {
        const table = (rows: string) => `exhaust-hose XH1 { side: port }\nexhaust-hose XH2 { side: starboard }\nreading TE1 "Temperatures" {\n    measures: temperature\n${rows}\n}\n`;
        expect(summary(id, table('    row "Port hose": XH1, 2400 rpm, 210 F'))).toEqual(['error XH1']);
        expect(summary(id, table('    row "Port hose": XH1, 2400 rpm, 150 F\n    row "Starboard hose": XH2, 2400 rpm, 120 F'))).toEqual(['warning XH1 XH2']);
        expect(correctionsIn(id, table('    row "Port hose": XH1, 2400 rpm, 115 C'))).toEqual(['Read 115 C as 115 F']);
        expect(summary(id, corrected(table('    row "Port hose": XH1, 2400 rpm, 115 C'), id, 'Read 115 C as 115 F'))).toEqual([]);
    });

    it('offers Fahrenheit only where it is an ordinary figure', () => {
        expect(correctionsIn(id, 'exhaust-hose XH1 { temperature: 210 C }\n')).toEqual([]);
        expect(correctionsIn(id, 'exhaust-hose XH1 { temperature: 140 C }\n')).toEqual(['Read 140 C as 140 F']);
    });
});

describe('muffler-too-small', () => {
    const id = 'muffler-too-small';
    // 3 in over 2 m: 9.12 L, and 1.3 times that 11.86 L.
    it.each([
        ['volume: 11.8 L  outlet-bore: 3 in  drain-back-length: 2 m', ['error M1']], ['volume: 11.9 L  outlet-bore: 3 in  drain-back-length: 2 m', []],
        ['volume: 3.1 gal  outlet-bore: 3 in  drain-back-length: 2 m', ['error M1']], ['volume: 3.2 gal  outlet-bore: 3 in  drain-back-length: 2 m', []],
        ['outlet-bore: 3 in  drain-back-length: 2 m', ['hint M1']], ['volume: 8 L  drain-back-length: 2 m', ['hint M1']], ['volume: 8 L  outlet-bore: 3 in', []], ['', []],
    ])('%s', (facts, expected) => {
        expect(summary(id, `muffler M1 { ${facts} }\n`)).toEqual(expected);
    });

    const run = (volume: string, length: string, facts = '') => `muffler M1 { volume: ${volume}  ends: 3 in, 3 in  ${facts} }\nexhaust-hose XH2 { bore: 3 in  length: ${length}  class: wet-exhaust  clamps: 2 }\nrun XR1 { service: exhaust }: M1 -> XH2\n`;
    it('is bounded by the whole length of the hose', () => {
        expect(summary(id, run('12 L', '2 m'))).toEqual([]);
        expect(summary(id, run('12 L', '3 m'))).toEqual(['hint M1']);
        expect(summary(id, run('12 L', '3 m', 'drain-back-length: 2 m'))).toEqual([]);
        expect(summary(id, run('8 L', '3 m', 'drain-back-length: 2 m'))).toEqual(['error M1 XH2']);
    });
    it('finds the hose to the outlet whichever way the run is recorded, and counts all of it', () => {
        const parts = 'exhaust-riser ER1 { spigot: 3 in }\nexhaust-hose XH1 { bore: 3 in  length: 0.5 m  class: wet-exhaust  clamps: 2 }\nmuffler M1 { volume: 12 L  ends: 3 in, 3 in }\nexhaust-hose XH2 { bore: 3 in  length: 1 m  class: wet-exhaust  clamps: 2 }\nexhaust-hose XH3 { bore: 3 in  length: 2 m  class: wet-exhaust  clamps: 2 }\n';
        expect(summary(id, `${parts}run XR1 { service: exhaust }: ER1 -> XH1 -> M1 -> XH2 -> XH3\n`)).toEqual(['hint M1']);
        expect(summary(id, `${parts}run XR1 { service: exhaust }: XH3 -> XH2 -> M1 -> XH1 -> ER1\n`)).toEqual(['hint M1']);
        expect(summary(id, `${parts}run XR1 { service: exhaust }: XH2 -> M1 -> XH1 -> ER1\n`)).toEqual([]);
    });
    it('is due before she departs where water was found at the engine', () => {
        const small = 'muffler M1 { volume: 8 L  outlet-bore: 3 in  drain-back-length: 2 m }\n';
        expect(urgencies(id, small)).toEqual(['in-upkeep']);
        expect(urgencies(id, `${small}exhaust-riser ER1 { water-found: yes }\n`)).toEqual(['before-departure']);
        expect(urgencies(id, `${small}main-engine E1 { water-in-cylinders: yes }\n`)).toEqual(['before-departure']);
    });
});
