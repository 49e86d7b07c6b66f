import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'abandoned-opening-not-closed';

interface Opening {
    readonly opening?: string;
    readonly height?: string;
    readonly valve?: string;
    readonly run?: string;
    readonly end?: string;
    readonly before?: string;
}

/** An opening with a seacock and a hose behind it. */
const drain = ({ opening = '', height = 'below-waterline: 12 in', valve = 'pattern: flanged-seacock', run = '', end = '', before = '' }: Opening) =>
    `${before}through-hull TH1 { size: 1 in  ${height}  ${opening} }\nseacock SC1 { ${valve} }\nhose H1 { bore: 25 mm }\nrun R1 { ${run} }: TH1 -> SC1 -> H1 ${end}\n`;

const all = ['error TH1 SC1 H1'];

describe('how it is closed', () => {
    it.each([
        ['run ends open', { end: '-> open' }, all],
        ['run ends open, in use', { opening: 'in-use: yes', end: '-> open' }, all],
        ['run capped', { end: '-> capped' }, []],
        ['run blanked', { end: '-> blanked' }, []],
        ['open, out of use', { opening: 'in-use: no  closure: open' }, all],
        ['plug in its hose', { opening: 'in-use: no  closure: plug-in-hose' }, all],
        ['plug in its hose, the run ends open', { opening: 'in-use: no  closure: plug-in-hose', end: '-> open' }, all],
        ['shut valve alone', { opening: 'in-use: no  closure: valve-shut' }, all],
        ['shut valve alone, the run out of use', { opening: 'closure: valve-shut', run: 'in-use: no' }, all],
        ['shut valve alone, in use', { opening: 'in-use: yes  closure: valve-shut' }, []],
        ['capped', { opening: 'in-use: no  closure: capped' }, []],
        ['capped, the run ends open', { opening: 'in-use: no  closure: capped', end: '-> open' }, []],
        ['blanked', { opening: 'in-use: no  closure: blanked' }, []],
        ['glassed over', { opening: 'in-use: no  closure: glassed-over' }, []],
        ['glassed over, the run ends open', { opening: 'closure: glassed-over', end: '-> open' }, []],
        ['welded', { opening: 'in-use: no  closure: welded' }, []],
    ] as const)('%s', (_, opening, expected) => {
        expect(summary(id, drain(opening))).toEqual(expected);
    });

    it.each(['cap', 'blank', 'bonded-plug', 'welded-doubler'])('a %s in the run closes it', kind => {
        expect(summary(id, `through-hull TH1 { size: 1 in  below-waterline: 1 ft  in-use: no }\nseacock SC1\n${kind} B1\nrun R1: TH1 -> SC1 -> B1\n`)).toEqual([]);
    });

    it('judges each run of a sea chest by itself', () => {
        const text = 'sea-chest SC9 { bore: 50 mm  below-waterline: 2 ft }\nvalve V1\nvalve V2\nsink S1\nrun R1: SC9 -> V1 -> S1\nrun R2: SC9 -> V2 -> open\n';
        expect(summary(id, text)).toEqual(['error SC9 V2']);
    });
});

describe('where', () => {
    it.each([
        ['above the waterline', { height: 'above-waterline: 6 in', end: '-> open' }, []],
        ['at the waterline', { height: 'below-waterline: 0 mm', end: '-> open' }, []],
        ['just below', { height: 'below-waterline: 1 mm', end: '-> open' }, all],
        ['height not recorded', { height: '', end: '-> open' }, ['hint TH1']],
        ['cockpit drain', { run: 'service: cockpit-drain', end: '-> open' }, []],
        ['cockpit drain, out of use', { run: 'service: cockpit-drain  in-use: no', end: '-> open' }, all],
        ['sink drain', { run: 'service: sink-drain', end: '-> open' }, all],
    ] as const)('%s', (_, opening, expected) => {
        expect(summary(id, drain(opening))).toEqual(expected);
    });

    it('tells of a transducer that is drawn and left open', () => {
        expect(summary(id, 'transducer T1 { size: 2 in  below-waterline: 1 ft  in-use: no  closure: open }\n')).toEqual(['error T1']);
        expect(summary(id, 'transducer T1 { size: 2 in  below-waterline: 1 ft  in-use: yes }\n')).toEqual([]);
    });

    it('takes a valve found shut, with nothing recorded behind it, as all that closes', () => {
        const text = (position: string) => `through-hull T1 { size: 1 in  below-waterline: 1 ft  in-use: no }\nvalve V1 { position: ${position} }\nrun R1: T1 -> V1\n`;
        expect(summary(id, text('shut'))).toEqual(['error T1 V1']);
        expect(summary(id, text('open'))).toEqual(['hint T1']);
    });

    it('tells of a cap with no valve in its run', () => {
        expect(summary(id, 'through-hull T1 { size: 1 in  below-waterline: 1 ft  in-use: no }\ncap C1\nrun R1: T1 -> C1 -> capped\n')).toEqual(['warning T1']);
    });

    it('leaves drain plugs alone', () => {
        expect(summary(id, 'drain-plug D1 { below-waterline: 1 ft  in-use: no }\n')).toEqual([]);
    });
});

describe('facts that are missing', () => {
    it('asks for the closure of an opening out of use', () => {
        expect(summary(id, drain({ opening: 'in-use: no' }))).toEqual(['hint TH1']);
        expect(raisedBy(id, drain({ opening: 'in-use: no' }))[0]?.message).toContain('closure');
    });
    it('asks whether it is in use where only its closure is told', () => {
        expect(summary(id, drain({ opening: 'closure: valve-shut' }))).toEqual(['hint TH1']);
        expect(raisedBy(id, drain({ opening: 'closure: valve-shut' }))[0]?.message).toContain('in-use');
    });
    it('gives no inflow without a bore', () => {
        const [problem] = raisedBy(id, 'through-hull TH1 { below-waterline: 1 ft }\nrun R1: TH1 -> open\n');
        expect(problem?.figures).toEqual({});
        expect(problem?.message).not.toContain('gpm');
        expect(problem?.draft?.because).not.toContain('flooding-rate');
    });
});

describe('a cap on an open valve', () => {
    const text = drain({ opening: 'in-use: no  closure: capped', valve: 'pattern: flanged-seacock  position: open' });
    it('is advice, cleared by shutting the valve', () => {
        expect(summary(id, text)).toEqual(['warning TH1 SC1']);
        expect(urgencies(id, text)).toEqual(['in-upkeep']);
        expect(pointedAt(text, raisedBy(id, text)[0]!)).toBe('open');
        expect(summary(id, corrected(text, id, 'Record SC1 as shut'))).toEqual([]);
    });
    it('is not offered as the cure of an open end', () => {
        expect(correctionsIn(id, drain({ valve: 'position: open', end: '-> open' }))).toEqual(['Record R1 as blanked']);
        expect(correctionsIn(id, drain({ valve: 'position: shut', end: '-> open' }))).toEqual(['Record R1 as capped', 'Record R1 as blanked']);
    });
});

describe('inflow', () => {
    it('is 28.6 gpm for a 1-1/2 in hole at 14 in', () => {
        const [problem] = raisedBy(id, 'through-hull TH1 { size: 1-1/2 in  below-waterline: 14 in }\nrun R1: TH1 -> open\n');
        expect(problem?.message).toContain('28.6 gpm');
        expect(problem?.figures?.['inflow']?.value).toBeCloseTo(108.4, 0);
    });
    it('is of the narrowest bore on the way', () => {
        const bore = (parts: string, run: string) => raisedBy(id, `through-hull TH1 { size: 2 in  below-waterline: 1 ft }\n${parts}\nrun R1: TH1 -> ${run} -> open\n`)[0]?.figures?.['bore']?.value;
        expect(bore('valve SV1 { size: 1-1/2 in }', 'SV1')).toBeCloseTo(38.1, 2);
        expect(bore('valve SV1 { size: 1-1/2 in  bore: 32 mm }', 'SV1')).toBe(32);
        expect(bore('valve SV1 { size: 1-1/2 in }\nhose H1 { bore: 25 mm }', 'SV1 -> H1')).toBe(25);
        expect(bore('stepped-hose H1 { ends: 50 mm, 32 mm }', 'H1')).toBe(32);
        expect(bore('adapter A1 { bore: 19 mm }', 'A1')).toBe(19);
    });
});

describe('urgency', () => {
    const lying = (state: string) => `survey "1" pre-purchase { attended 2026-10-06 ${state} }\n`;
    it.each([
        ['open, ashore', { end: '-> open', before: lying('ashore') }, 'before-launch'],
        ['open, afloat', { end: '-> open', before: lying('afloat') }, 'at-once'],
        ['open, not recorded how she lies', { end: '-> open' }, 'at-once'],
        ['plug in its hose, ashore', { opening: 'closure: plug-in-hose', before: lying('ashore') }, 'before-launch'],
        ['shut valve alone, afloat', { opening: 'in-use: no  closure: valve-shut', before: lying('afloat') }, 'next-haul-out'],
    ] as const)('%s', (_, opening, expected) => {
        expect(urgencies(id, drain(opening))).toEqual([expected]);
    });
    it('is that of flooding where the valve said to be shut is not there', () => {
        expect(urgencies(id, 'through-hull TH1 { size: 1 in  below-waterline: 1 ft  in-use: no  closure: valve-shut }\n')).toEqual(['at-once']);
    });
});

describe('the draft', () => {
    const draft = (opening: Opening) => raisedBy(id, drain(opening))[0]?.draft;
    it('refers to facts, and says out of use only where it is recorded', () => {
        expect(draft({ end: '-> open' })?.seen).toBe('The opening (TH1), {TH1.below-waterline} below the waterline, stands open inside.');
        expect(draft({ opening: 'in-use: no', end: '-> open' })?.seen).toContain('is out of use and stands open inside');
        expect(draft({ end: '-> open' })?.because).toContain('{TH1.flooding-rate}');
    });
    it('does not rely on a valve that stands open or is seized', () => {
        expect(draft({ end: '-> open', valve: 'position: shut' })?.because).toContain('Nothing but the valve SC1 keeps the sea out.');
        expect(draft({ end: '-> open', valve: 'position: open' })?.because).toContain('Nothing keeps the sea out.');
        expect(draft({ end: '-> open', valve: 'works: seized' })?.because).toContain('Nothing keeps the sea out.');
    });
});

it('points at the run that ends open, else at the closure', () => {
    const open = drain({ end: '-> open' });
    expect(pointedAt(open, raisedBy(id, open)[0]!)).toBe('R1');
    const plugged = drain({ opening: 'closure: plug-in-hose' });
    expect(pointedAt(plugged, raisedBy(id, plugged)[0]!)).toBe('plug-in-hose');
});
