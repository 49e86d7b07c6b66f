import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'automatic-pump-fails';
const survey = (how: 'ashore' | 'afloat', rest = '') => `survey "1" condition-and-value { attended 2026-10-06 ${how} "Place"${rest} }\n`;
const alarm = 'bilge-alarm A1 { works: yes }\n';

describe('float switch', () => {
    it.each([['works: yes', []], ['works: not-tried', []], ['works: no', ['error F1 P1']], ['height: 50 mm', []]] as const)('%s', (facts, expected) => {
        expect(summary(id, `bilge-pump P1 { automatic: yes }\nfloat-switch F1 { serves: P1  ${facts} }\n`)).toEqual(expected);
    });
    it('is taken as that of the only automatic pump where it names none', () => {
        expect(summary(id, 'bilge-pump P1 { automatic: yes }\nbilge-pump P2 { automatic: no }\nfloat-switch F1 { works: no }\n')).toEqual(['error F1 P1']);
        expect(summary(id, 'bilge-pump P1 { automatic: yes }\nbilge-pump P2 { automatic: yes }\nfloat-switch F1 { works: no }\n')).toEqual(['error F1']);
    });
    it('is urgent at once where water rises', () => {
        const text = (rising: string) => `bilge-pump P1 { automatic: yes  water-rising: ${rising} }\nfloat-switch F1 { serves: P1  works: no }\n`;
        expect([...urgencies(id, text('no')), ...urgencies(id, text('yes'))]).toEqual(['within-days', 'at-once']);
        expect(raisedBy(id, text('no'))[0]?.draft?.days).toBe(7);
        expect(raisedBy(id, text('yes'))[0]?.message).toContain('Water was rising');
    });
});

it.each([
    ['automatic: yes  bypasses-main-switch: no', ['error P1']], ['automatic: yes  bypasses-main-switch: yes', []], ['automatic: no  bypasses-main-switch: no', []], ['bypasses-main-switch: no', []], ['automatic: yes', []],
] as const)('main switch off: %s', (facts, expected) => {
    expect(summary(id, `bilge-pump P1 { ${facts} }\n`)).toEqual(expected);
});

it('takes a pump with a float switch as automatic', () => {
    expect(summary(id, 'bilge-pump P1 { bypasses-main-switch: no }\nfloat-switch F1 { serves: P1  works: yes }\n')).toEqual(['error P1']);
});

describe('starts a day', () => {
    const pump = (starts: string) => `bilge-pump P1 { automatic: yes  starts: ${starts} }\n`;
    it.each([['20 per-day', []], ['21 per-day', ['warning P1']], ['0 per-day', []], ['100 /day', ['warning P1']]] as const)('%s', (starts, expected) => {
        expect(summary(id, survey('afloat') + alarm + pump(starts))).toEqual(expected);
        expect(summary(id, pump(starts))).toEqual(expected);
        expect(summary(id, survey('ashore') + pump(starts))).toEqual(expected);
    });
    it('are judged by the limit of the firm', () => {
        expect(raisedBy(id, `yardsticks { pump-starts: 5 per-day }\n${alarm}${pump('6 per-day')}`)[0]?.message).toContain('6 times a day as she lies, over the firm’s limit of 5');
    });
});

describe('high-water alarm afloat', () => {
    const pump = 'bilge-pump P1 { automatic: yes }\n';
    const none = '  absent "High-water alarm": "none is fitted"';
    it.each([
        [survey('afloat') + pump, ['hint P1']], [survey('afloat', none) + pump, ['warning P1']], [survey('ashore', none) + pump, []], [survey('afloat') + pump + alarm, []],
        [survey('afloat') + pump + 'bilge-alarm A1 { works: no }\n', ['warning A1']], [survey('afloat') + pump + 'bilge-alarm A1\n', []], [survey('afloat') + 'bilge-pump P1 { automatic: no }\n', []],
        [survey('afloat', none), []], [survey('afloat', '  absent "Anchor alarm": "none"') + pump, ['hint P1']],
    ] as const)('%#', (text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('is looked for where she was afloat at one of the attendances', () => {
        const both = `survey "1" condition-and-value {\n    attended 2026-10-05 afloat "Quay"\n    attended 2026-10-06 ashore "Yard"\n    absent "High-water alarm": "none is fitted"\n}\n`;
        expect(summary(id, both + pump)).toEqual(['warning P1']);
    });
    it('is left to flooding-beats-pumps where that speaks of it', () => {
        const text = `${survey('afloat', none)}through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nhose H1\nsink S1\nrun R1: TH1 -> H1 -> S1\nbilge-pump P1 { automatic: yes  rated-flow: 500 gph }\n`;
        expect(summary('flooding-beats-pumps', text)).toEqual(['error TH1 P1']);
        expect(summary(id, text)).toEqual([]);
    });
    it('is a matter of upkeep and may be recorded', () => {
        expect(urgencies(id, survey('afloat', none) + pump)).toEqual(['in-upkeep']);
        expect(correctionsIn(id, survey('afloat', none) + pump)).toEqual(['Record a high-water alarm that works']);
        expect(correctionsIn(id, `${survey('afloat')}${pump}bilge-alarm A1 { works: no }\n`)).toEqual(['Record that A1 works']);
    });
});
