import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'keel-bolts-unknown';
const survey = (rest: string, kind = 'pre-purchase', lies = 'ashore') => `survey "1" ${kind} { attended 2026-10-06 ${lies} "Yard" }\n${rest}\n`;

describe('keel-bolts-unknown', () => {
    it.each([
        ['metal: iron  drawn: 2015', ['warning KB1']], ['metal: stainless-316  fitted: 2019-04', []], ['metal: iron  fitted: 2009  drawn: 2005', ['warning KB1']], ['metal: mild-steel  drawn: 2016', []], ['metal: mild-steel  drawn: 2015', ['warning KB1']], ['metal: cast-iron  drawn: 2015', ['warning KB1']], ['metal: galvanized-steel  drawn: 2015', ['warning KB1']],
        ['metal: stainless-316  drawn: 2006', []], ['metal: stainless-316  drawn: 2005', ['warning KB1']], ['metal: silicon-bronze  drawn: 2005', ['warning KB1']], ['metal: nickel-copper  drawn: 2005', ['warning KB1']],
        ['drawn: 2016', []], ['drawn: 2015', ['hint KB1']], ['drawn: 2006', ['hint KB1']], ['drawn: 2005', ['warning KB1']], ['metal: mild-steel', ['hint KB1']],
        ['metal: mild-steel  drawn: 2026  joint-gap: 1 mm', []], ['metal: mild-steel  drawn: 2026  joint-gap: 1.1 mm', ['error KB1']], ['metal: mild-steel  drawn: 2026  weeps: yes', ['error KB1']],
    ])('%s', (facts, expected) => {
        expect(summary(id, survey(`keel-bolt KB1 { ${facts} }`))).toEqual(expected);
    });
    it('counts from the year she was built where they are not recorded as drawn', () => {
        expect(summary(id, survey('vessel "M" { built: 2010 }\nkeel-bolt KB1 { metal: stainless-316 }'))).toEqual([]);
        expect(raisedBy(id, survey('vessel "M" { built: 1985 }\nkeel-bolt KB1 { metal: stainless-316 }'))[0]?.message).toContain('she was built 41 years ago');
        expect(raisedBy(id, survey('vessel "M" { built: 1985 }\nkeel-bolt KB1 { metal: stainless-316 }'))[0]?.draft?.seen).toContain('{vessel.built}');
    });
    it('is due before completion for a buyer, else at the next haul-out', () => {
        expect(urgencies(id, survey('keel-bolt KB1 { metal: mild-steel  drawn: 2000 }'))).toEqual(['before-completion']);
        expect(urgencies(id, survey('keel-bolt KB1 { metal: mild-steel  drawn: 2000 }', 'condition-and-value'))).toEqual(['next-haul-out']);
    });
    it('takes the gap from the keel', () => {
        const keel = 'keel K1 "Keel" { joint-gap: 2 mm }\nkeel-bolt KB1 { metal: mild-steel  drawn: 2000 }';
        expect(summary(id, survey(keel))).toEqual(['error KB1 K1']);
        expect(urgencies(id, survey(keel))).toEqual(['before-launch']);
        expect(urgencies(id, survey(keel, 'pre-purchase', 'afloat'))).toEqual(['before-departure']);
        expect(raisedBy(id, survey(keel))[0]?.message).toContain('were last drawn 26 years ago');
        expect(summary(id, 'keel K1 { weeps: yes }\n')).toEqual(['error K1']);
        expect(summary(id, 'keel K1 { build: encapsulated  weeps: yes }\n')).toEqual([]);
    });
    it('asks when she was attended', () => {
        expect(raisedBy(id, 'keel-bolt KB1 { metal: mild-steel  drawn: 2000 }\n')[0]?.message).toContain('when she was attended');
    });
});
