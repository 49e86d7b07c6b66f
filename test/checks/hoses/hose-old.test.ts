import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'hose-old';
const attended = (date: string) => `survey "1" pre-purchase { attended ${date} ashore "Yard" }\n`;
const hose = (facts: string, service = 'sink-drain', opening = 'above-waterline: 1 ft') => `through-hull TH1 { ${opening} }\nhose H1 { ${facts} }\nrun R1 { service: ${service} }: TH1 -> H1\n`;

describe('age', () => {
    it.each([
        ['2026-10-06', 'made: 2016-10-06', 'sink-drain', 0], ['2026-10-07', 'made: 2016-10-05', 'sink-drain', 1],
        ['2026-10-06', 'made: 2016-10', 'sink-drain', 0], ['2026-11-02', 'made: 2016-10', 'sink-drain', 1],
        ['2026-12-31', 'made: 2016', 'sink-drain', 0], ['2027-01-02', 'made: 2016', 'sink-drain', 1],
        ['2026-10-06', 'made: 2018-09', 'exhaust', 1], ['2026-10-06', 'made: 2018-09', 'sink-drain', 0],
    ])('attended %s, %s, %s: %i', (date, facts, service, count) => {
        expect(raisedBy(id, attended(date) + hose(facts, service))).toHaveLength(count);
    });
    it('is advice', () => {
        expect(summary(id, attended('2026-10-06') + hose('made: 2010'))).toEqual(['warning H1']);
    });
    it('asks when she was attended', () => {
        expect(summary(id, hose('made: 2010'))).toEqual(['hint H1']);
        expect(raisedBy(id, hose('made: 2010'))[0]?.message).toContain('record when she was attended');
    });
});

describe('what shows', () => {
    it.each([
        ['perished', ['error H1']], ['cracked', ['error H1']], ['swollen', ['error H1']], ['soft', ['warning H1']],
        ['sound', []], ['worn', []], ['chafed', []], ['not-seen', []],
    ] as const)('%s', (condition, expected) => {
        expect(summary(id, hose(`condition: ${condition}`))).toEqual(expected);
    });
    it('is raised once for age and condition together', () => {
        expect(summary(id, attended('2026-10-06') + hose('made: 2010  condition: cracked'))).toEqual(['error H1']);
    });
});

it.each([
    ['below the waterline', hose('condition: cracked', 'sink-drain', 'below-waterline: 1 ft'), 'at-once'],
    ['below, cracks not to the cord', hose('condition: cracked  cracked-to-cord: no', 'sink-drain', 'below-waterline: 1 ft'), 'next-haul-out'],
    ['below, cracked to the cord', hose('cracked-to-cord: yes', 'sink-drain', 'below-waterline: 1 ft'), 'at-once'],
    ['below, ashore', `${attended('2026-10-06')}${hose('condition: perished', 'sink-drain', 'below-waterline: 1 ft')}`, 'before-launch'],
    ['above', hose('condition: cracked'), 'in-upkeep'],
    ['exhaust', hose('condition: cracked', 'exhaust'), 'before-departure'],
    ['fuel', hose('condition: cracked', 'fuel-feed'), 'before-use'],
    ['gas', hose('condition: cracked', 'gas'), 'before-use'],
])('urgency: %s', (_, text, urgency) => {
    expect(urgencies(id, text)).toEqual([urgency]);
});
