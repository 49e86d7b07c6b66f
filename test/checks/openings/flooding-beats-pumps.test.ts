import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'flooding-beats-pumps';
/** 20.4 gpm (77 L/min) through 1 in at 3 ft. */
const inch = 'through-hull TH1 { size: 1 in  below-waterline: 3 ft }\nseacock SC1 { pattern: flanged-seacock }\nhose H1\nsink S1\nrun R1: TH1 -> SC1 -> H1 -> S1\n';
const with_ = (...parts: string[]) => inch + parts.join('\n') + '\n';

describe('the pumps', () => {
    it.each([
        ['2000 gph on the box, half of it loses', 'bilge-pump P1 { rated-flow: 2000 gph }', ['error TH1 P1']],
        ['2500 gph on the box keeps up', 'bilge-pump P1 { rated-flow: 2500 gph }', []],
        ['a real flow goes before the rating', 'bilge-pump P1 { rated-flow: 2500 gph  real-flow: 20 gpm }', ['error TH1 P1']],
        ['a real flow that keeps up', 'bilge-pump P1 { rated-flow: 1000 gph  real-flow: 21 gpm }', []],
        ['two pumps together', 'bilge-pump P1 { rated-flow: 1250 gph }\nbilge-pump P2 { rated-flow: 1250 gph }', []],
        ['two of one kind', 'bilge-pump P1 { rated-flow: 1250 gph  quantity: 2 }', []],
        ['one of two does not work', 'bilge-pump P1 { rated-flow: 1250 gph }\nbilge-pump P2 { rated-flow: 1250 gph  works: no }', ['error TH1 P1']],
        ['not tried counts', 'bilge-pump P1 { rated-flow: 2500 gph  works: not-tried }', []],
        ['its float switch does not start it', 'bilge-pump P1 { rated-flow: 2500 gph }\nfloat-switch F1 { serves: P1  works: no }', ['error TH1']],
        ['hand pumps alone are not compared', 'manual-bilge-pump P1 { rated-flow: 10 gpm }', []],
        ['a hand pump adds nothing', 'manual-bilge-pump P1 { rated-flow: 60 gpm }\nbilge-pump P2 { rated-flow: 1000 gph }', ['error TH1 P2']],
        ['none recorded', '', []],
        ['flow of one not recorded', 'bilge-pump P1 { rated-flow: 1000 gph }\nbilge-pump P2', ['hint P2']],
        ['flow of one not recorded, the other keeps up', 'bilge-pump P1 { rated-flow: 2500 gph }\nbilge-pump P2', []],
    ] as const)('%s', (_, pumps, expected) => {
        expect(summary(id, with_(pumps))).toEqual(expected);
    });
});

describe('the alarm', () => {
    const pump = 'bilge-pump P1 { rated-flow: 1000 gph }';
    it.each([
        ['none', '', ['error TH1 P1']],
        ['works', 'bilge-alarm A1 { works: yes }', []],
        ['does not work', 'bilge-alarm A1 { works: no }', ['error TH1 P1']],
        ['not tried', 'bilge-alarm A1 { works: not-tried }', ['hint A1']],
        ['not recorded', 'bilge-alarm A1', ['hint A1']],
        ['one of two works', 'bilge-alarm A1 { works: no }\nbilge-alarm A2 { works: yes }', []],
        ['one of two not tried', 'bilge-alarm A1 { works: no }\nbilge-alarm A2', ['hint A2']],
    ] as const)('%s', (_, alarm, expected) => {
        expect(summary(id, with_(pump, alarm))).toEqual(expected);
    });
    it('is recorded as working by the correction', () => {
        expect(summary(id, corrected(with_(pump), id, 'Record a high-water alarm that works'))).toEqual([]);
        expect(summary(id, corrected(with_(pump, 'bilge-alarm A1 { works: no }'), id, 'Record that A1 works'))).toEqual([]);
    });
    it('is said to be missing only as not recorded', () => {
        expect(raisedBy(id, with_(pump))[0]?.message).toContain('no high-water alarm is recorded');
        expect(raisedBy(id, with_(pump, 'bilge-alarm A1 { works: no }'))[0]?.message).toContain('the high-water alarm A1 does not work');
    });
});

describe('the hole', () => {
    const pump = 'bilge-pump P1 { rated-flow: 1000 gph }\n';
    const one = (opening: string, run: string, rest = '') => `through-hull TH1 { ${opening} }\nseacock SC1\nhose H1 { bore: 25 mm }\nsink S1\n${rest}run R1: TH1 -> ${run}\n${pump}`;
    it.each([
        ['above the waterline', one('size: 1 in  above-waterline: 3 ft', 'SC1 -> H1 -> S1'), []],
        ['depth not recorded', one('size: 1 in', 'SC1 -> H1 -> S1'), []],
        ['glassed over', one('size: 1 in  below-waterline: 3 ft  closure: glassed-over', 'SC1 -> H1 -> S1'), []],
        ['no hose that could fail', one('size: 1 in  below-waterline: 3 ft', 'SC1 -> S1'), []],
        ['no hose, but open', one('size: 1 in  below-waterline: 3 ft', 'SC1 -> open'), ['error TH1 P1']],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
    it('is the one that admits most, not the widest', () => {
        const text = `through-hull TH1 { size: 1 in  below-waterline: 1 in }\nthrough-hull TH2 { size: 3/4 in  below-waterline: 4 ft }\nhose H1\nhose H2\nsink S1\nsink S2\nrun R1: TH1 -> H1 -> S1\nrun R2: TH2 -> H2 -> S2\nbilge-pump P1 { real-flow: 1 gpm }\n`;
        expect(summary(id, text)).toEqual(['error TH2 P1']);
    });
    it('says what is wrong with the one valve before it', () => {
        const message = (valve: string) => raisedBy(id, with_(pump).replace('pattern: flanged-seacock', valve))[0]?.message;
        expect(message('works: seized')).toContain('its valve SC1 is seized');
        expect(message('pattern: gate-valve')).toContain('its valve SC1 is a gate valve');
        expect(message('shuts-off: no')).toContain('its valve SC1 does not shut the water off');
        expect(message('works: free')).not.toContain('its valve');
        expect(raisedBy(id, one('size: 1 in  below-waterline: 3 ft', 'H1 -> S1'))[0]?.message).toContain('no valve stands in its way');
    });
});

describe('what it prints', () => {
    it('gives inflow, pumps and minutes, and calls the derating a rule of thumb', () => {
        const text = with_('vessel "M" { floodable-volume: 1000 L }', 'bilge-pump P1 { rated-flow: 1000 gph }');
        const [problem] = raisedBy(id, text);
        expect(problem?.message).toContain('20.4 gpm');
        expect(problem?.message).toContain('8.33 gpm');
        expect(problem?.message).toContain('rule of thumb');
        expect(problem?.figures?.['inflow']?.value).toBeCloseTo(77.3, 0);
        expect(problem?.figures?.['pumps']?.value).toBeCloseTo(31.5, 1);
        expect(problem?.figures?.['minutes']?.value).toBeCloseTo(1000 / (77.2 - 31.5), 0);
    });
    it('gives no minutes without a volume', () => {
        const [problem] = raisedBy(id, with_('bilge-pump P1 { rated-flow: 1000 gph }'));
        expect(problem?.figures).not.toHaveProperty('minutes');
        expect(problem?.message).not.toContain('minutes');
    });
    it('names pumps that count nothing, and why', () => {
        const [problem] = raisedBy(id, with_('bilge-pump P1 { works: no  rated-flow: 2000 gph }', 'bilge-pump P2 { rated-flow: 2000 gph }', 'float-switch F1 { serves: P2  works: no }'));
        expect(problem?.message).toContain('no power pump starts and runs by itself (P1 not working, P2 not started by its float switch)');
    });
    it('is due within 30 days and drafts by reference', () => {
        const text = with_('bilge-pump P1 { rated-flow: 1000 gph }');
        expect(urgencies(id, text)).toEqual(['within-days']);
        expect(raisedBy(id, text)[0]?.draft?.days).toBe(30);
        expect(raisedBy(id, text)[0]?.draft?.because).toContain('{TH1.flooding-rate}');
    });
    it('drafts a figure where the opening feeds several runs', () => {
        const text = 'sea-chest C1 { bore: 50 mm  below-waterline: 2 ft }\nhose H1 { bore: 38 mm }\nhose H2 { bore: 19 mm }\nsink S1\nsink S2\nrun R1: C1 -> H1 -> S1\nrun R2: C1 -> H2 -> S2\nbilge-pump P1 { real-flow: 1 gpm }\n';
        const [problem] = raisedBy(id, text);
        expect(problem?.figures?.['bore']?.value).toBe(38);
        expect(problem?.draft?.because).not.toContain('flooding-rate');
    });
});

describe('limits of the firm', () => {
    it('sets the share of the rating and names whose it is', () => {
        const text = with_('bilge-pump P1 { rated-flow: 2000 gph }');
        expect(summary(id, `yardsticks { pump-share: 65 % }\n${text}`)).toEqual([]);
        expect(raisedBy(id, text)[0]?.message).toContain('50 % of the rating, the usual limit');
        expect(raisedBy(id, `yardsticks { pump-share: 55 % }\n${text}`)[0]?.message).toContain('55 % of the rating, the firm’s limit');
    });
    it('sets the coefficient, and the draft then gives the figure and not the computed fact', () => {
        const text = with_('bilge-pump P1 { rated-flow: 2500 gph }');
        const [problem] = raisedBy(id, `yardsticks { flow-coefficient: 0.8 }\n${text}`);
        expect(problem?.message).toContain('coefficient 0.8 as the firm takes it');
        expect(problem?.figures?.['coefficient']?.value).toBe(0.8);
        expect(problem?.draft?.because).not.toContain('{TH1.flooding-rate}');
        expect(summary(id, text)).toEqual([]);
    });
});
