import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'gas-path-into-hull';

it.each([
    ['gas-locker L1 { open-to-hull: yes }', ['error L1']], ['gas-locker L1 { open-to-hull: no }', []], ['gas-locker L1 { vapor-tight: no }', ['error L1']], ['gas-locker L1 { lid: side }', ['error L1']], ['gas-locker L1 { lid: none }', []],
    ['gas-cylinder C1 { in-locker: no }', ['error C1']], ['regulator R1 { in-locker: no }', ['error R1']], ['gas-cylinder C1 { in-locker: yes }', []], ['gas-cylinder C1', []],
    ['gas-hose H1 { class: gas  joints-inboard: 0 }', []], ['gas-hose H1 { class: gas  joints-inboard: 1 }', ['error H1']], ['gas-hose H1 { class: gas  joints-inboard: 1  joint-for-gimbal: yes }', []],
    ['gas-hose H1 { class: gas  joints-inboard: 2  joint-for-gimbal: yes }', ['error H1']], ['gas-line P1 { joints-inboard: 1 }', ['error P1']], ['gas-line P1 { joints-inboard: 1  joint-for-gimbal: no }', ['error P1']],
    ['gas-hose H1 { class: gas  end-fittings: worm-clip }', ['error H1']], ['gas-hose H1 { class: gas  end-fittings: screwed }', []], ['gas-hose H1 { class: gas  clamp-type: worm }', ['error H1']],
    ['hose H1 { class: gas  clamp-type: worm }', ['error H1']], ['hose H1 { class: gas  clamp-type: swaged }', []], ['hose H1 { class: water  clamp-type: worm }', []],
] as const)('%s', (text, expected) => {
    expect(summary(id, `${text}\n`)).toEqual(expected);
});

it('sees worm clips recorded at a joint', () => {
    const text = (clamp: string) => `regulator R1\nhose H1 { class: gas }\nrun R2 { service: gas }: R1 -> { clamp-type: ${clamp} } H1\n`;
    expect(summary(id, text('worm'))).toEqual(['error H1']);
    expect(summary(id, text('swaged'))).toEqual([]);
});

describe('shut-off at the galley', () => {
    const stove = 'stove S1 { fuel: gas }\n';
    it.each([
        [stove, ['hint S1']], [`${stove}gas-valve V1 { at-galley: yes  works: yes }\n`, []], [`${stove}gas-valve V1 { at-galley: no }\n`, ['error V1']], [`${stove}gas-valve V1\n`, []],
        [`${stove}gas-valve V1 { at-galley: no }\ngas-valve V2 { at-galley: yes }\n`, []], [`${stove}gas-valve V1 { at-galley: yes  works: no }\n`, ['error V1']],
        [`${stove}gas-valve V1 { at-galley: no }\ngas-valve V2 { at-galley: yes  works: no }\n`, ['error V2']], ['stove S1 { fuel: diesel }\ngas-valve V1 { at-galley: no }\n', []],
        ['oven S1 { fuel: gas }\ngas-valve V1 { at-galley: no }\n', ['error V1']],
    ] as const)('%#', (text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
});

it('gathers what is wrong with one part, and is due before use', () => {
    const text = 'gas-locker L1 { open-to-hull: yes  vapor-tight: no  lid: side }\n';
    expect(raisedBy(id, text)[0]?.message).toContain('is open to the hull, is not tight to the inside of the boat and opens at its side');
    expect(urgencies(id, text)).toEqual(['before-use']);
});
