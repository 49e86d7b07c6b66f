import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'gas-part-out-of-date';
const attended = 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\n';
const on = (part: string) => `${attended}${part}\n`;

describe('years', () => {
    it.each([
        ['gas-hose P1 { class: gas  made: 2016-10-06 }', []], ['gas-hose P1 { class: gas  made: 2016-10-05 }', ['warning P1']], ['gas-hose P1 { class: gas  made: 2016-10 }', []], ['gas-hose P1 { class: gas  made: 2016-09 }', ['warning P1']],
        ['gas-hose P1 { class: gas  made: 2015 }', ['warning P1']], ['gas-hose P1 { class: gas  fitted: 2015 }', ['warning P1']], ['gas-hose P1 { class: gas }', []], ['hose P1 { class: gas  made: 2010 }', ['warning P1']],
        ['gas-hose P1 { class: gas  made: 2019  makers-term: 5 years }', ['error P1']], ['gas-hose P1 { class: gas  made: 2012  makers-term: 20 years }', []], ['hose P1 { class: water  made: 2010 }', []],
        ['regulator P1 { made: 2016-10-06 }', []], ['regulator P1 { made: 2016-10-05 }', ['warning P1']], ['regulator P1 { fitted: 2010 }', ['warning P1']], ['regulator P1 { made: 2019-09  makers-term: 7 years }', ['error P1']], ['regulator P1', []],
        ['gas-cylinder P1 { made: 2014-10-06 }', []], ['gas-cylinder P1 { made: 2014-10-05 }', ['error P1']], ['gas-cylinder P1 { made: 2000  requalified: 2015 }', []], ['gas-cylinder P1 { made: 2000  requalified: 2013 }', ['error P1']],
        ['gas-cylinder P1 { made: 2000  requalify-by: 2026-10 }', []], ['gas-cylinder P1 { made: 2024  requalify-by: 2026-09 }', ['error P1']], ['gas-cylinder P1', []],
    ] as const)('%s', (part, expected) => {
        expect(summary(id, on(part))).toEqual(expected);
    });
    it('ask for the day she was attended', () => {
        expect(summary(id, 'gas-hose P1 { class: gas  made: 2010 }\ngas-cylinder P2 { requalify-by: 2020-01 }\n')).toEqual(['hint P1', 'hint P2']);
    });
});

describe('beside hose-old', () => {
    const both = (facts: string) => ['hose-old', id].map(check => summary(check, on(`gas-hose P1 { class: gas  ${facts} }`)));
    it('one of the two reports a gas hose', () => {
        expect(both('made: 2010')).toEqual([[], ['warning P1']]);
        expect(both('made: 2010  condition: cracked')).toEqual([['error P1'], []]);
        expect(both('made: 2010  condition: sound')).toEqual([[], ['warning P1']]);
        expect(both('made: 2024  condition: soft')).toEqual([['warning P1'], []]);
    });
    it('a gas hose by the service of its run is left to this one', () => {
        const text = `${attended}regulator R1\nhose P1 { class: gas  made: 2010 }\nrun R2 { service: gas }: R1 -> P1\n`;
        expect([summary('hose-old', text), summary(id, text)]).toEqual([[], ['warning P1']]);
    });
});

it('is judged by the limits of the firm, and says whose they are', () => {
    const firm = 'yardsticks { gas-hose-life: 5 years  gas-regulator-life: 20 years  gas-cylinder-term: 10 years }\n';
    expect(raisedBy(id, attended + firm + 'gas-hose P1 { class: gas  made: 2020 }\n')[0]?.message).toContain('the firm’s limit of 5 years');
    expect(summary(id, attended + firm + 'regulator P1 { made: 2010 }\n')).toEqual([]);
    expect(raisedBy(id, attended + firm + 'gas-cylinder P1 { made: 2015 }\n')[0]?.message).toContain('the firm’s limit of 10 years');
    expect(raisedBy(id, on('gas-cylinder P1 { made: 2010 }'))[0]?.message).toContain('the usual limit of 12 years');
});

it('is due before use', () => {
    expect(urgencies(id, on('regulator P1 { made: 2010 }'))).toEqual(['before-use']);
});
