/** The same trouble of shaft, exhaust and engine, recorded in the several ways that the vocabulary allows. */
import { describe, expect, it } from 'vitest';
import { raisedBy, summary } from '../check-text.js';

const on = (text: string) => `survey "1" condition-and-value { attended 2026-06-02 afloat }\n${text}`;

describe('stern-bearing-worn: the shaft', () => {
    it.each([
        ['the only one', 'shaft S1 { diameter: 38 mm }\nstern-bearing B1 { clearance: 1 mm }\n', ['error B1']],
        ['the one it serves', 'shaft S1 { diameter: 38 mm }\nshaft S2 { diameter: 76 mm }\nstern-bearing B1 { clearance: 1 mm  serves: S1 }\n', ['error B1']],
        ['the one of its side', 'shaft S1 { diameter: 38 mm  side: port }\nshaft S2 { diameter: 76 mm  side: starboard }\nstern-bearing B1 { clearance: 0.9 mm  side: starboard }\n', []],
        ['one of two', 'shaft S1 { diameter: 38 mm }\nshaft S2 { diameter: 38 mm }\nstern-bearing B1 { clearance: 1 mm }\n', ['hint B1']],
    ] as const)('%s', (_, text, expected) => {
        expect(summary('stern-bearing-worn', text)).toEqual(expected);
    });
});

describe('coolant-out-of-range', () => {
    const id = 'coolant-out-of-range';
    it('knows a thin mix by its freezing point', () => {
        expect(summary(id, 'coolant C1 { freeze-point: -10 C  glycol-kind: ethylene }\n')).toEqual(['error C1']);
        expect(raisedBy(id, 'coolant C1 { freeze-point: -10 C  glycol-kind: ethylene }\n')[0]?.message).toContain('about 22 % glycol');
        expect(summary(id, 'coolant C1 { freeze-point: 14 F }\n')).toEqual(['error C1']);
        expect(summary(id, 'coolant C1 { freeze-point: -37 C  glycol-kind: ethylene }\n')).toEqual(['hint C1']);
    });
    it.each(['plain', 'organic', 'unknown'])('asks for flushing over 80 %%, with %s inhibitors', inhibitor => {
        const recommend = (share: string) => raisedBy(id, `coolant C1 { glycol: ${share}  glycol-kind: ethylene  volume: 12 L  inhibitor: ${inhibitor} }\n`)[0]?.draft?.recommend;
        expect(recommend('81 %')).toMatch(/flush the system/);
        expect(recommend('80 %')).toMatch(/draining 4\.5 L/);
    });
    it('is past any term after five years', () => {
        expect(summary(id, on('coolant C1 { glycol: 50 %  changed: 2021-05 }\n'))).toEqual(['error C1']);
        expect(summary(id, on('coolant C1 { glycol: 50 %  changed: 2021-06 }\n'))).toEqual(['hint C1']);
    });
});

it('cylinder-spread: names a cylinder by its number in a table', () => {
    const text = 'main-engine E1\nreading T1 on E1 { measures: compression\n row "1": 400 psi\n row "2": 280 psi\n}\n';
    expect(raisedBy('cylinder-spread', text)[0]?.message).toContain('in cylinder 2 is 30 % under the 400 psi (27.6 bar) in cylinder 1');
});

it('rated-rpm-not-reached: takes the run at full throttle from the table of the trial', () => {
    const text = (label: string) => `main-engine E1 { fuel: diesel  rated-rotation: 2800 rpm }\nreading T1 { measures: trial\n row "Cruise": E1, 2200 rpm, 10 kn\n row "${label}": E1, 2600 rpm, 14 kn\n}\n`;
    expect(summary('rated-rpm-not-reached', text('Full throttle'))).toEqual(['error E1']);
    expect(raisedBy('rated-rpm-not-reached', text('WOT, run 4'))[0]?.draft?.seen).toContain('2600 rpm (“WOT, run 4” in T1)');
    expect(summary('rated-rpm-not-reached', text('Run 4'))).toEqual([]);
});

it('hours-do-not-add: a vessel that works commercially may run many hours', () => {
    const text = (commercial: string) => on(`vessel "M" { commercial: ${commercial} }\nmain-engine E1 { hours: 8000  earlier-hours: 1200  earlier-date: 2022-06 }\n`);
    expect(summary('hours-do-not-add', text('yes'))).toEqual([]);
    expect(summary('hours-do-not-add', text('no'))).toEqual(['warning E1']);
});

it('injection-point-too-low: says below where it is below', () => {
    const [problem] = raisedBy('injection-point-too-low', 'exhaust-riser R1 { injection-above-waterline: -2 in  loop: none }\n');
    expect(problem?.message).toContain('50.8 mm (2 in) below the loaded waterline');
    expect(problem?.draft?.seen).not.toContain('above-waterline}');
});

it('exhaust-runs-hot: knows the part of a row by its name', () => {
    const text = 'exhaust-hose H1 "Port exhaust hose"\nreading T1 { measures: temperature\n row "Port exhaust hose": 2500 rpm, 210 F\n}\n';
    expect(summary('exhaust-runs-hot', text)).toEqual(['error H1']);
});
