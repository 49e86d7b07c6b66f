import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'valve-does-not-work';
const drain = (valve: string, { height = 'below-waterline: 1 ft', hose = '', before = '', service = 'sink-drain' } = {}) =>
    `${before}through-hull TH1 { size: 1 in  ${height} }\nvalve SV1 { ${valve} }\nhose H1 { ${hose} }\nsink S1\nrun R1 { service: ${service} }: TH1 -> SV1 -> H1 -> S1\n`;

it.each([
    ['works: free', []], ['works: not-tried', []], ['', []], ['works: stiff', ['warning SV1']], ['works: seized', ['error SV1']],
    ['handle: fitted', []], ['handle: tied', []], ['handle: gone', ['error SV1']], ['needs-tools: yes', ['error SV1']], ['needs-tools: no', []],
    ['shuts-off: no', ['error SV1']], ['shuts-off: yes', []], ['pattern: ball-valve  spins: yes', ['error SV1']],
    ['works: seized  handle: gone  needs-tools: yes', ['error SV1']], ['works: stiff  handle: gone', ['error SV1']],
] as const)('%s', (valve, expected) => {
    expect(summary(id, drain(valve))).toEqual(expected);
});

it('leaves a gate valve that spins below the waterline to valve-or-fitting-unsuitable', () => {
    expect(summary(id, drain('pattern: gate-valve  spins: yes'))).toEqual([]);
    expect(summary(id, drain('pattern: gate-valve  spins: yes', { height: 'above-waterline: 1 ft' }))).toEqual(['error SV1']);
    expect(summary(id, drain('pattern: gate-valve  works: seized'))).toEqual(['error SV1']);
});

describe('handle off a sewage valve', () => {
    const vessel = (waters: string) => `vessel "M" { ${waters} }\n`;
    const sewage = (valve: string, before: string) => drain(valve, { before, service: 'toilet-discharge' });
    it.each([
        ['no-discharge waters, shut', sewage('handle: gone  position: shut', vessel('no-discharge-waters: yes')), []],
        ['no-discharge waters, position not recorded', sewage('handle: gone', vessel('no-discharge-waters: yes')), []],
        ['no-discharge waters, open', sewage('handle: gone  position: open', vessel('no-discharge-waters: yes')), ['error SV1']],
        ['other waters', sewage('handle: gone  position: shut', vessel('no-discharge-waters: no')), ['error SV1']],
        ['waters not recorded', sewage('handle: gone  position: shut', vessel('')), ['hint SV1']],
        ['no vessel recorded', sewage('handle: gone  position: shut', ''), ['hint SV1']],
        ['waters not recorded, open', sewage('handle: gone  position: open', vessel('')), ['error SV1']],
        ['a sink drain', drain('handle: gone  position: shut', { before: vessel('no-discharge-waters: yes') }), ['error SV1']],
        ['seized all the same', sewage('handle: gone  works: seized', vessel('no-discharge-waters: yes')), ['error SV1']],
        ['stiff all the same', sewage('handle: gone  works: stiff', vessel('no-discharge-waters: yes')), ['warning SV1']],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('offers to record the waters, which clears it', () => {
        const text = sewage('handle: gone  position: shut', vessel(''));
        expect(summary(id, corrected(text, id, 'Record that she is kept in no-discharge waters'))).toEqual([]);
    });
});

describe('urgency', () => {
    const ashore = 'survey "1" pre-purchase { attended 2026-10-06 ashore }\n';
    it.each([
        ['stiff', drain('works: stiff  position: open', { before: ashore }), 'in-upkeep'],
        ['stuck shut', drain('works: seized  position: shut', { before: ashore }), 'next-haul-out'],
        ['stuck open', drain('works: seized  position: open', { before: ashore }), 'before-departure'],
        ['stuck, position not recorded', drain('works: seized', { before: ashore }), 'before-departure'],
        ['stuck open, hose perished', drain('works: seized  position: open', { before: ashore, hose: 'condition: perished' }), 'before-launch'],
        ['stuck open, hose cracked to its cord', drain('works: seized  position: open', { before: ashore, hose: 'cracked-to-cord: yes' }), 'before-launch'],
        ['stuck open, hose perished, afloat', drain('works: seized  position: open', { hose: 'condition: perished' }), 'at-once'],
        ['stuck open, hose worn', drain('works: seized  position: open', { before: ashore, hose: 'condition: worn' }), 'before-departure'],
        ['stuck open, itself defective', drain('works: seized  position: open  condition: defective', { before: ashore }), 'before-departure'],
        ['stuck open above the waterline, hose perished', drain('works: seized  position: open', { before: ashore, height: 'above-waterline: 1 ft', hose: 'condition: perished' }), 'before-departure'],
    ] as const)('%s', (_, text, expected) => {
        expect(urgencies(id, text)).toEqual([expected]);
    });
});

it('names the opening, and how the valve stands where it is recorded', () => {
    expect(raisedBy(id, drain('works: seized  position: open'))[0]?.message).toContain('SV1 on TH1 is seized, open');
    expect(raisedBy(id, drain('works: seized'))[0]?.message).toContain('SV1 on TH1 is seized:');
    expect(raisedBy(id, 'valve SV1 { works: seized }\n')[0]?.message).toContain('SV1 is seized:');
});

it.each(['works: seized', 'works: stiff', 'handle: gone', 'needs-tools: yes', 'shuts-off: no', 'spins: yes'])('%s: every correction clears it', valve => {
    const text = drain(valve);
    expect(correctionsIn(id, text)).toHaveLength(1);
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
});
