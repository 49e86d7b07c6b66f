import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'sewage-valve-not-secured';
const aboard = (valve: string, { waters = 'no-discharge-waters: yes', opening = '', kind = 'seacock', service = 'toilet-discharge', tail = 'holding-tank HT1', end = 'HT1' } = {}) =>
    `vessel "M" { ${waters} }\nthrough-hull TH1 { below-waterline: 1 ft ${opening} }\n${kind} V1 { works: free  ${valve} }\n${tail}\nrun R1 { service: ${service} }: TH1 -> V1 -> ${end}\n`;

describe(id, () => {
    it.each([
        ['position: open', ['error V1 TH1']], ['position: open  handle: gone', ['error V1 TH1']], ['position: open  handle: tied', ['error V1 TH1']], ['position: shut  handle: gone', []], ['handle: gone', []], ['handle: tied', []],
        ['position: shut  secured-by: padlock', []], ['position: shut  secured-by: tie', []], ['position: shut  secured-by: handle-off', []], ['position: shut  secured-by: none', ['error V1 TH1']], ['position: shut', ['hint V1']], ['position: shut  secured-by: not-seen', ['hint V1']],
        ['position: shut  handle: fitted', ['hint V1']], ['', ['hint V1']],
    ] as const)('seacock: %s', (valve, expected) => {
        expect(summary(id, aboard(valve))).toEqual(expected);
    });
    it.each([
        ['secured: yes  set-to: holding-tank', []], ['secured: yes', []], ['secured: yes  set-to: overboard', ['error V1 TH1']], ['set-to: overboard', ['error V1 TH1']], ['secured: no  set-to: holding-tank', ['error V1 TH1']], ['set-to: holding-tank', ['hint V1']], ['set-to: holding-tank  secured-by: tie', []],
    ] as const)('diverter: %s', (valve, expected) => {
        expect(summary(id, aboard(valve, { kind: 'y-valve' }))).toEqual(expected);
    });
    it('leaves closed openings, other services and other waters alone', () => {
        for (const closure of ['capped', 'blanked', 'glassed-over', 'welded']) {
            expect(summary(id, aboard('position: open', { opening: ` closure: ${closure}` })), closure).toEqual([]);
        }
        expect(summary(id, aboard('position: open', { service: 'sink-drain' }))).toEqual([]);
        expect(summary(id, aboard('position: open', { waters: 'no-discharge-waters: no' }))).toEqual([]);
        expect(summary(id, 'vessel "M" { no-discharge-waters: yes }\ntoilet T1\n')).toEqual([]);
    });
    it('asks for the waters only where nothing is secured, and for a valve where there is none', () => {
        expect(summary(id, aboard('position: open', { waters: '' }))).toEqual(['hint V1']);
        expect(summary(id, aboard('position: shut', { waters: '' }))).toEqual([]);
        expect(summary(id, 'vessel "M" { no-discharge-waters: yes }\nthrough-hull TH1 { above-waterline: 1 ft }\nholding-tank HT1\nrun R1 { service: toilet-discharge }: TH1 -> HT1\n')).toEqual(['hint TH1']);
    });
    it('is content with one secured valve, or a locked door', () => {
        expect(summary(id, aboard('position: open', { tail: 'y-valve Y1 { secured: yes  set-to: holding-tank }\nholding-tank HT1', end: 'Y1 -> HT1' }))).toEqual([]);
        expect(summary(id, aboard('position: open', { tail: 'treatment-device TD1 { secured-by: locked-door }', end: 'TD1' }))).toEqual([]);
        expect(summary(id, aboard('position: open', { tail: 'treatment-device TD1 { secured-by: none }', end: 'TD1' }))).toEqual(['error V1 TH1']);
        expect(summary(id, aboard('position: open', { tail: 'check-valve C1\nholding-tank HT1', end: 'C1 -> HT1' }))).toEqual(['error V1 TH1']);
    });
    it('lets valve-does-not-work keep quiet on a handle that is off by the rule', () => {
        expect(raisedBy('valve-does-not-work', aboard('position: shut  handle: gone'))).toEqual([]);
        expect(summary('valve-does-not-work', aboard('position: open  handle: gone'))).toEqual(['error V1']);
    });
    it('is put right by a tie, or by the waters', () => {
        const text = aboard('position: shut  secured-by: none');
        expect(correctionsIn(id, text)).toEqual(['Record V1 as tied shut', 'Record that she is not kept in no-discharge waters']);
        for (const title of correctionsIn(id, text)) {
            expect(raisedBy(id, corrected(text, id, title)), title).toEqual([]);
        }
        expect(urgencies(id, text)).toEqual(['before-use']);
    });
});
