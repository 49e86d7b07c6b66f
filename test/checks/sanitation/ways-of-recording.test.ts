/** Sewage valves and devices in no run. */
import { expect, it } from 'vitest';
import { summary } from '../check-text.js';

const forbidden = 'vessel "M" { no-discharge-waters: yes }\n';

it.each([
    [`${forbidden}diverter D1 { set-to: overboard  secured: no }\n`, ['error D1']], [`${forbidden}y-valve D1 { set-to: overboard }\n`, ['error D1']], [`${forbidden}y-valve D1 { secured: no }\n`, []],
    [`${forbidden}diverter D1 { set-to: holding-tank  secured: yes }\n`, []], [`${forbidden}diverter D1 { set-to: holding-tank }\n`, []], ['vessel "M" { no-discharge-waters: no }\ndiverter D1 { set-to: overboard }\n', []],
    ['vessel "M" { length-overall: 30 ft }\ndiverter D1 { set-to: overboard }\n', ['hint D1']],
    [`${forbidden}toilet T1\nseacock S1 { serves: T1  secured-by: none }\n`, ['error S1']], [`${forbidden}toilet T1\nseacock S1 { serves: T1  secured-by: padlock }\n`, []],
    [`${forbidden}treatment-device TD1 { certified-type: type-ii  secured-by: none }\n`, ['error TD1']], [`${forbidden}treatment-device TD1 { certified-type: type-ii  secured-by: locked-door }\n`, []],
    [`${forbidden}treatment-device TD1 { certified-type: type-ii  secured-by: none }\ndiverter D1 { set-to: holding-tank  secured: yes }\n`, []],
] as const)('%s', (text, expected) => {
    expect(summary('sewage-valve-not-secured', text)).toEqual(expected);
});

it('asks for the device of a toilet whose run leads overboard', () => {
    const run = (facts: string) => `toilet T1 { ${facts} }\nseacock S1\nthrough-hull TH1\nrun R1 { service: toilet-discharge }: T1 -> S1 -> TH1\n`;
    expect([summary('treatment-device-wrong', run('')), summary('treatment-device-wrong', run('treatment: type-ii')), summary('treatment-device-wrong', run('treatment: none'))]).toEqual([['hint T1'], [], ['error T1']]);
});
