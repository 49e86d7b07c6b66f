/** Circuits and shore power as surveyors record them in other ways: by name, by what serves what, by what is absent. */
import { describe, expect, it } from 'vitest';
import { raisedBy, summary } from '../check-text.js';

describe('what a circuit is for, by its name', () => {
    const drop = (name: string, feeds = '') => summary('voltage-drop', `conductor W1 "${name}" { source-voltage: 12.6 V  load-voltage: 12.1 V  ${feeds} }\n`);
    it.each([
        ['Bilge pump feed', ['error W1']], ['Masthead light', ['error W1']], ['VHF', ['error W1']], ['Feed of the windlass', []], ['Cabin lights', []], ['Starter cable', []],
        ['Starboard side light', ['error W1']], ['Feed', ['hint W1']],
    ] as const)('%s', (name, expected) => {
        expect(drop(name)).toEqual(expected);
    });
    it('is read from what it feeds, and from a purpose before both', () => {
        expect(drop('Feed', 'feeds: "Blower"')).toEqual(['error W1']);
        expect(drop('Bilge pump feed', 'purpose: power')).toEqual([]);
    });
    it('is read from the row of a table that names no wire', () => {
        const row = (label: string, load: string) => summary('voltage-drop', `reading R1 "Drop" { measures: voltage-drop  row "${label}": 12.6 V, ${load}, 5 A }\n`).map(line => line.trim());
        expect(row('Bilge pump', '12.1 V')).toEqual(['error']);
        expect(row('Windlass', '12.1 V')).toEqual([]);
    });
    it('tells a wire that takes a fuse from one that cranks', () => {
        const fuse = (name: string) => summary('fuse-missing-or-far', `conductor W1 "${name}" { fused: no }\n`);
        expect([fuse('Feed of the windlass'), fuse('Starter cable'), fuse('Red cable')]).toEqual([['error W1'], [], ['hint W1']]);
    });
});

it('takes a fuse that serves a wire as its guard', () => {
    expect(summary('fuse-too-big', 'conductor W1 { gauge: 14 AWG  insulation: 75 C  voltage: 12 V }\nfuse F1 { rating: 35 A  serves: W1 }\n')).toEqual(['error F1 W1']);
});

it('reads 178 mm as 7 in, and writes the reach in inches', () => {
    expect(summary('fuse-missing-or-far', 'fuse F1 { distance: 178 mm  source: bus  sheathed-to-fuse: no }\n')).toEqual([]);
    expect(raisedBy('fuse-missing-or-far', 'fuse F1 { distance: 80 in  source: battery }\n')[0]?.message).toContain('72 in (1.83 m)');
});

describe('a leakage breaker said to be absent', () => {
    const text = (what: string, rest = '') => `survey "1" pre-purchase { absent "${what}": "none is fitted" }\nvessel "M" { built: 2018 }\nshore-inlet SI1\n${rest}`;
    it.each([
        ['Leakage breaker', ['error SI1']], ['ELCI', ['error SI1']], ['Residual-current device (RCD)', ['error SI1']], ['Ground fault protection', ['error SI1']], ['Galvanic isolator', ['hint SI1']],
    ] as const)('%s', (what, expected) => {
        expect(summary('leakage-breaker-missing', text(what))).toEqual(expected);
    });
    it('does not count where one is recorded, or a transformer stands for it', () => {
        expect(summary('leakage-breaker-missing', text('ELCI', 'leakage-breaker LB1 { works: yes }\n'))).toEqual([]);
        expect(summary('leakage-breaker-missing', text('ELCI', 'transformer T1 { distance-from-inlet: 6 ft }\n'))).toEqual([]);
    });
});

it.each([
    ['30 F', []], ['31 F', ['error SI1']], ['about 20 C', ['error SI1']], ['16 K over the air', []], ['40 degrees F', ['error SI1']], ['slight', []],
] as const)('reads a rise of "%s"', (rise, expected) => {
    expect(summary('inlet-overheated', `shore-inlet SI1 { temperature-rise: "${rise}" }\n`)).toEqual(expected);
});

describe('a charger set for another kind', () => {
    const text = (setFor: string, chemistry: string, more = '') => `battery B1 { voltage: 12 V  chemistry: ${chemistry} }\ncharger C1 { set-for: ${setFor}  charges: B1  ${more} }\n`;
    it.each([['flooded', 'gel', ['error C1 B1']], ['gel', 'gel', []], ['agm', 'flooded', ['error C1 B1']]] as const)('%s on %s', (setFor, chemistry, expected) => {
        expect(summary('charge-voltage-wrong', text(setFor, chemistry))).toEqual(expected);
    });
    it('is said once with a voltage that is wrong', () => {
        expect(summary('charge-voltage-wrong', text('flooded', 'gel', 'voltage: 14.8 V'))).toEqual(['error C1 B1']);
    });
});

it('asks for the bank of house batteries that are unlike', () => {
    const pair = (one: string, other: string) => summary('battery-weak-or-mixed', `battery B1 { purpose: house  ${one} }\nbattery B2 { purpose: house  ${other} }\n`);
    expect(pair('chemistry: agm', 'chemistry: flooded')).toEqual(['hint B1 B2']);
    expect(pair('chemistry: agm', 'chemistry: agm')).toEqual([]);
    expect(pair('chemistry: agm  bank: "a"', 'chemistry: flooded  bank: "b"')).toEqual([]);
});
