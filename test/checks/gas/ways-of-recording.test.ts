/** Cooking gas as surveyors record it in other ways. */
import { describe, expect, it } from 'vitest';
import { summary } from '../check-text.js';

const absent = (what: string) => `survey "1" pre-purchase { absent "${what}": "none is fitted" }\n`;

describe('a shut-off', () => {
    const stove = 'stove ST1 { fuel: gas }\n';
    it.each([
        [`${absent('Gas shut-off at the galley')}${stove}`, ['error ST1']], [`${absent('Solenoid valve')}${stove}`, ['error ST1']], [`${absent('Gas alarm')}${stove}`, ['hint ST1']],
        [`${absent('Gas shut-off')}${stove}gas-valve GV1 { at-galley: yes }\n`, []], ['gas-valve GV1 { works: no }\n', ['error GV1']], ['gas-valve GV1 { works: no }\ngas-valve GV2 { works: yes }\n', []],
        [`${absent('Gas shut-off')}stove ST1 { fuel: alcohol }\n`, []],
    ] as const)('%s', (text, expected) => {
        expect(summary('gas-path-into-hull', text)).toEqual(expected);
    });
});

it('asks where a tee of a gas run stands', () => {
    const text = (facts: string) => `regulator RG1\ngas-hose GH1 { class: gas  ${facts} }\ntee T1\ngas-hose GH2 { class: gas }\nrun R1 { service: gas }: RG1 -> GH1 -> T1 -> GH2\n`;
    expect(summary('gas-path-into-hull', text(''))).toEqual(['hint GH2']);
    expect(summary('gas-path-into-hull', text('joints-inboard: 0'))).toEqual([]);
});

it.each([['Vent of the gas locker', ['error GL1']], ['Gas locker vent', ['error GL1']], ['Vent of the fuel tank', []]] as const)('a vent said to be absent: %s', (what, expected) => {
    expect(summary('gas-locker-vent', `${absent(what)}gas-locker GL1\n`)).toEqual(expected);
});
