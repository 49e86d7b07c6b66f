import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, pointedAt, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'brass-below-waterline';
const valve = (facts: string, opening = 'below-waterline: 1 ft', before = '') =>
    `${before}through-hull TH1 { size: 1 in  metal: gunmetal  ${opening} }\nvalve SV1 { ${facts} }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n`;
const raised = ['error SV1'];

describe('alloy', () => {
    it.each([
        ['yellow-brass', raised], ['naval-brass', raised], ['brass', raised], ['muntz-metal', raised], ['manganese-bronze', raised], ['admiralty-brass', raised],
        ['red-brass', []], ['gunmetal', []], ['silicon-bronze', []], ['bronze', []], ['dzr-brass', []], ['nickel-copper', []], ['stainless-316', []], ['mild-steel', []],
    ] as const)('%s', (metal, expected) => {
        expect(summary(id, valve(`metal: ${metal}`))).toEqual(expected);
    });
    it('is judged as material too, and with its mark', () => {
        expect(summary(id, valve('material: brass'))).toEqual(raised);
        expect(summary(id, valve('metal: brass  dezincification-resistant: yes'))).toEqual([]);
        expect(summary(id, valve('metal: brass  dezincification-resistant: no'))).toEqual(raised);
        expect(summary(id, valve(''))).toEqual([]);
    });
    it('is told with its share of zinc and the limit', () => {
        expect(raisedBy(id, valve('metal: yellow-brass'))[0]?.figures).toEqual({ zinc: { value: 35, unit: '%' }, limit: { value: 15, unit: '%' } });
    });
});

describe('where', () => {
    it.each([
        ['above the waterline', valve('metal: brass', 'above-waterline: 1 in'), []],
        ['height not recorded', valve('metal: brass', ''), []],
        ['recorded as wetted', 'valve SV1 { metal: brass  wetted: yes }\n', raised],
        ['recorded as dry, in the run', valve('metal: brass  wetted: no'), []],
        ['in no run', 'valve SV1 { metal: brass }\n', []],
        ['the opening itself, without a run', 'scupper SV1 { metal: brass  below-waterline: 1 in }\n', raised],
        ['the opening at the waterline', 'scupper SV1 { metal: brass  below-waterline: 0 mm }\n', []],
        ['a sink at the end of the run', valve('metal: gunmetal').replace('sink S1', 'sink S1 { metal: brass }'), []],
        ['a sink recorded as wetted', valve('metal: gunmetal').replace('sink S1', 'sink S1 { metal: brass  wetted: yes }'), ['error S1']],
        ['a vented loop', 'through-hull TH1 { below-waterline: 1 ft }\nvented-loop V1 { metal: brass }\ntoilet T1\nrun R1: TH1 -> V1 -> T1\n', []],
        ['a strut', 'strut SV1 { metal: manganese-bronze }\n', raised],
        ['a propeller of manganese bronze', 'propeller SV1 { metal: manganese-bronze }\n', []],
        ['a propeller scraped pink', 'propeller SV1 { metal: manganese-bronze  scrape-color: pink }\n', raised],
        ['a propeller scraped yellow', 'propeller SV1 { metal: manganese-bronze  scrape-color: yellow }\n', []],
    ] as const)('%s', (_, text, expected) => {
        expect(summary(id, text)).toEqual(expected);
    });
});

describe('color when scraped', () => {
    const ashore = 'survey "1" pre-purchase { attended 2026-10-06 ashore }\n';
    it.each([['pink', 'before-launch'], ['red-brown', 'before-launch'], ['yellow', 'next-haul-out']] as const)('%s: %s', (color, expected) => {
        expect(urgencies(id, valve(`metal: brass  scrape-color: ${color}`, undefined, ashore))).toEqual([expected]);
    });
    it('is at once afloat, and referred to', () => {
        const [problem] = raisedBy(id, valve('metal: brass  scrape-color: pink'));
        expect(problem?.draft?.urgency).toBe('at-once');
        expect(problem?.draft?.seen).toContain('{SV1.scrape-color}');
    });
    it.each([['no metal recorded', ''], ['an alloy without a share of zinc', 'metal: bronze']])('pink warns, and red-brown asks for the alloy: %s', (_, facts) => {
        expect(summary(id, valve(`${facts}  scrape-color: pink`))).toEqual(['warning SV1']);
        expect(summary(id, valve(`${facts}  scrape-color: red-brown`))).toEqual(['hint SV1']);
        expect(summary(id, valve(`${facts}  scrape-color: yellow`))).toEqual([]);
        expect(summary(id, valve(`${facts}  scrape-color: pink`, 'above-waterline: 1 ft'))).toEqual([]);
    });
});

it('points at the metal; every correction clears it', () => {
    const text = valve('metal: brass');
    expect(raisedBy(id, text).map(p => pointedAt(text, p))).toEqual(['brass']);
    expect(correctionsIn(id, text)).toHaveLength(3);
    for (const title of correctionsIn(id, text)) {
        expect(summary(id, corrected(text, id, title)), title).toEqual([]);
    }
    expect(correctionsIn(id, 'strut ST1 { metal: brass }\n')).not.toContain('Record that ST1 is marked dezincification-resistant');
});
