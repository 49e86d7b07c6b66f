import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'copper-paint-on-aluminum';

describe('where', () => {
    it.each([
        ['saildrive', 'saildrive P1 { metal: aluminum  paint: copper-antifouling }\n', ['error P1']],
        ['outdrive', 'outdrive P1 { metal: aluminum  paint: copper-antifouling }\n', ['error P1']],
        ['hull', 'hull-shell P1 { material: aluminum-5083  paint: copper-antifouling }\n', ['error P1']],
        ['hull of the material of the vessel', 'vessel "M" { hull-material: aluminum-5083 }\nhull-shell P1 { paint: copper-antifouling }\n', ['error P1']],
        ['fiberglass hull of an aluminum vessel, by its own material', 'vessel "M" { hull-material: aluminum-5083 }\nhull-shell P1 { material: grp  paint: copper-antifouling }\n', []],
        ['drive leg of an aluminum vessel, its metal not recorded', 'vessel "M" { hull-material: aluminum-5083 }\nsaildrive P1 { paint: copper-antifouling }\n', ['hint P1']],
        ['bronze leg', 'saildrive P1 { metal: gunmetal  paint: copper-antifouling }\n', []],
        ['steel hull', 'hull-shell P1 { material: mild-steel  paint: copper-antifouling }\n', []],
        ['hull, material not recorded', 'hull-shell P1 { paint: copper-antifouling }\n', []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
});

it.each([['copper-antifouling', ['error P1']], ['copper-free-antifouling', []], ['none', []], ['unknown', []]] as const)('%s', (paint, expected) => {
    expect(summary(id, `saildrive P1 { metal: aluminum  paint: ${paint} }\n`)).toEqual(expected);
});

it('is advice over a barrier coat', () => {
    const text = (barrier: string) => `saildrive P1 { metal: aluminum  paint: copper-antifouling  ${barrier} }\n`;
    expect(summary(id, text('barrier-coat: yes'))).toEqual(['warning P1']);
    expect(summary(id, text('barrier-coat: no'))).toEqual(['error P1']);
});

it.each([['', 'next-haul-out'], ['pit-depth: 1 mm', 'next-haul-out'], ['pit-depth: 1.1 mm', 'before-launch']])('%s: %s', (pits, expected) => {
    expect(urgencies(id, `hull-shell P1 { material: aluminum  paint: copper-antifouling  ${pits} }\n`)).toEqual([expected]);
});

it('points at the paint and is cleared by another', () => {
    const text = 'saildrive P1 { metal: aluminum  paint: copper-antifouling }\n';
    expect(raisedBy(id, text).map(p => pointedAt(text, p))).toEqual(['copper-antifouling']);
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
});
