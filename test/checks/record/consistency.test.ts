import { describe, expect, it } from 'vitest';
import { corrected, raisedBy } from '../check-text.js';

const pointed = (check: string, text: string) => raisedBy(check, text).filter(problem => problem.severity !== 'hint').map(problem => text.slice(problem.at.start, problem.at.end));
const finding = (id: string, facts: string, on = 'H1') => `finding ${id} "Chafe" on ${on} {\n    urgency: in-upkeep\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "Lead it clear."\n    ${facts}\n}\n`;

describe('section-silent', () => {
    const survey = (more = '') => `survey "1" pre-purchase {\n    attended 2026-10-06 afloat "Yard"${more}\n}\nvessel "Marram" { type: rigid-inflatable }\n`;
    const silentParts = (text: string) => raisedBy('section-silent', text).flatMap(problem => [...problem.message.matchAll(/\((\S+)\)/g)].map(match => match[1]));
    it('names each part that the craft and the kind of survey expect', () => {
        expect(silentParts(survey())).toEqual(['hull', 'deck', 'propulsion', 'fuel', 'steering', 'dc', 'bilge', 'fire', 'lifesaving', 'navigation', 'tender', 'papers']);
        expect(silentParts(survey().replace('pre-purchase', 'damage'))).toEqual(['hull', 'papers']);
        expect(silentParts(survey().replace('pre-purchase', 're-inspection'))).toEqual([]);
        expect(silentParts(survey().replace('pre-purchase', 'part-survey'))).toEqual([]);
    });
    it('counts a component, a finding in its system, and an entry that names the part', () => {
        expect(silentParts(`${survey('\n    absent tender "Tender": "None is carried."')}hull-shell HS1\nsystem fuel "Fuel" {\n    finding F1 "No label" {\n        place: "Tank"\n        urgency: in-upkeep\n        seen: "None."\n        because: "It is asked for."\n        recommend: "Fit one."\n    }\n}\n`))
            .toEqual(['deck', 'propulsion', 'steering', 'dc', 'bilge', 'fire', 'lifesaving', 'navigation', 'papers']);
    });
    it('counts a kind of the firm for the part of the kind it is', () => {
        expect(silentParts(`kind our-plotter "Plotter" is instrument {}\n${survey()}our-plotter P1\n`)).not.toContain('navigation');
    });
    it.each(['Add steering to what was not seen', 'Say that steering is not fitted', 'Add a section for steering'])('is answered by %s', title => {
        const text = corrected(survey(), 'section-silent', title);
        expect(silentParts(text)).not.toContain('steering');
    });
    it('is answered for all parts at once', () => {
        expect(silentParts(corrected(survey(), 'section-silent', 'Add all 12 to what was not seen'))).toEqual([]);
        expect(silentParts(corrected(survey().replace(/\{\n[^}]*\}/, '{}'), 'section-silent', 'Add all 12 to what was not seen'))).toEqual([]);
    });
    it('asks why a grid is not filled', () => {
        const grid = (rows: string, more = '') => `reading M1 "Moisture" {\n    measures: moisture\n    ${rows}${more}\n}\n`;
        expect(raisedBy('section-silent', grid('row "P": 10, none, none\n    row "S": 11, 12, 10'))).toHaveLength(1);
        expect(raisedBy('section-silent', grid('row "P": 10, none, 11, 10, 12'))).toHaveLength(0);
        expect(raisedBy('section-silent', grid('row "P": 10, none, none\n    row "S": 11, 12, 10', '\n    remarks: "Under slings."'))).toHaveLength(0);
    });
});

describe('counts-or-dates-disagree', () => {
    const survey = (facts: string) => `survey "1" pre-purchase {\n    ${facts}\n}\n`;
    it.each([
        ['engaged: 2026-10-07\n    attended 2026-10-06 ashore "Yard"', 1], ['engaged: 2026-10-06\n    attended 2026-10-06 ashore "Yard"', 0],
        ['engaged: 2026-11\n    attended 2026-10-06 ashore "Yard"', 1], ['engaged: 2026-10\n    attended 2026-10-06 ashore "Yard"', 0],
        ['attended 2026-10-06 ashore "Yard"\n    attended 2026-10-09 ashore "Yard"\n    issued: 2026-10-08', 1], ['issued: 2026-10-08\n    attended 2026-10-08 ashore "Yard"', 0],
        ['scope: "Three findings follow."\n    attended 2026-10-06 ashore "Yard"', 1], ['scope: "The earlier report had 3 findings."\n    attended 2026-10-06 ashore "Yard"', 0],
        ['scope: "One finding is due before launch, and two recommendations are for the upkeep."\n    attended 2026-10-06 ashore "Yard"', 0],
        ['scope: "No findings of the rigger were at hand."\n    attended 2026-10-06 ashore "Yard"', 0],
    ])('%s: %i', (facts, count) => {
        expect(raisedBy('counts-or-dates-disagree', survey(facts))).toHaveLength(count);
    });
    it('compares readings with the attendances', () => {
        const taken = (date: string) => `${survey('attended 2026-10-06 ashore "Yard"\n    issued: 2026-10-12')}reading M1 "Moisture" {\n    measures: moisture\n    taken: ${date}\n    row "P": 10\n}\n`;
        expect(raisedBy('counts-or-dates-disagree', taken('2026-10-06'))).toHaveLength(0);
        expect(raisedBy('counts-or-dates-disagree', taken('2026-10-05'))).toHaveLength(1);
        expect(raisedBy('counts-or-dates-disagree', taken('2026-10-13'))).toHaveLength(1);
    });
    it.each([['7 November 2026', 0], ['November 7, 2026', 0], ['2026-11-07', 0], ['8 November 2026', 1], ['2026-12-07', 1]])('due %s: %i', (date, count) => {
        const text = `${survey('attended 2026-10-06 ashore "Yard"\n    issued: 2026-10-08')}hose H1\n${finding('F1', 'place: "Port"').replace('in-upkeep', 'within-days 30').replace('clear."', `clear by ${date}."`)}`;
        expect(raisedBy('counts-or-dates-disagree', text)).toHaveLength(count);
    });
});

describe('contradicting-values', () => {
    const said = (text: string, facts: string) => `vessel "Marram" {\n    note "${text}"\n}\n${facts}\n`;
    it.each([
        ['All seacocks worked freely.', 'valve V1 { works: seized }', 1], ['All seacocks worked freely.', 'valve V1 { works: free }', 0],
        ['All seacocks worked freely.', 'valve V1 { works: not-tried }', 0], ['Every valve was opened and turned; all sea valves operate.', 'seacock V1 { works: stiff }', 0], ['All sea valves operate freely.', 'seacock V1 { works: stiff }', 1],
        ['Every seacock was operated and found free.', 'valve V1 { works: seized }', 1], ['The seacocks all turned freely.', 'valve V1 { works: seized }', 1], ['None of the seacocks was seized.', 'valve V1 { works: seized }', 1],
        ['All seacocks worked with the exception of the engine intake.', 'valve V1 { works: seized }', 0], ['All seacocks that could be reached worked.', 'valve V1 { works: seized }', 0], ['All seacocks worked when tried.', 'valve V1 { works: seized }', 1], ['All valves are free of corrosion.', 'valve V1 { works: seized }', 0],
        ['All seacocks worked except the one in the head.', 'valve V1 { works: seized }', 0], ['Not all seacocks worked.', 'valve V1 { works: seized }', 0],
        ['All seacocks should work freely.', 'valve V1 { works: seized }', 0], ['All navigation lights worked.', 'navigation-light L1 { works: no }', 1],
        ['All pumps ran.', 'bilge-pump P1 { condition: failed }', 1], ['All pumps ran.', 'bilge-pump P1', 0],
    ])('%s | %s: %i', (text, facts, count) => {
        expect(raisedBy('contradicting-values', said(text, facts))).toHaveLength(count);
    });
    it('compares the tail at a joint with the fitting’s own', () => {
        const run = (spigot: string) => `seacock SV1 { spigot: 38 mm }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> { spigot: ${spigot} } H1\n`;
        expect(raisedBy('contradicting-values', run('38.4 mm'))).toHaveLength(0);
        expect(pointed('contradicting-values', run('40 mm'))).toEqual(['40 mm']);
    });
});

describe('other-boat-left-in', () => {
    const vessel = (facts: string, note: string, more = '') => `vessel "Marram" {\n    ${facts}\n    note "${note}"\n}\n${more}`;
    it.each([
        ['type: sailing-yacht', 'S/Y Sanderling lay afloat.', ['Sanderling']], ['type: sailing-yacht', 'S/Y Marram lay afloat.', []], ['type: sailing-yacht', 'The yacht “Sanderling” lay afloat.', ['Sanderling']],
        ['type: sailing-yacht', 'She is a sistership of S/Y Sanderling.', []], ['fuel: diesel', 'The carburetor was clean.', ['carburetor']], ['fuel: diesel', 'No gasoline was found.', []],
        ['fuel: gasoline', 'The injectors were clean.', []], ['fuel: gasoline', 'The glow plugs were clean.', ['glow plugs']],
        ['fuel: diesel', 'Gasoline vapor gathers where a spark can fire it.', ['Gasoline']], ['fuel: diesel', 'A can of gasoline for the tender stood on deck.', []], ['fuel: diesel', 'The rule binds boats with gasoline engines only.', []], ['fuel: gasoline', 'A diesel-fired heater is fitted.', []],
        ['type: sailing-yacht', 'The ketch Sanderling was seen ashore.', ['Sanderling']], ['type: sailing-yacht', 'The yacht Club was shut.', []], ['type: motor-yacht', 'The fan shroud was bent.', []], ['type: houseboat', 'The mainsail was bent on.', ['mainsail']], ['type: houseboat', 'The radar mast was firm.', []],
        ['engines: 1', 'The port engine was warm.', ['port engine']], ['engines: 2', 'The single engine was warm.', ['The single engine']],
        ['hull-number: "XQZ12345H495"', 'The plate reads XQZ54321H495.', ['XQZ54321H495']], ['hull-number: "XQZ12345H495"', 'The plate reads XQZ12345H495.', []],
    ])('%s | %s', (facts, note, expected) => {
        expect(pointed('other-boat-left-in', vessel(facts, note))).toEqual(expected);
    });
});

describe('cited-without-clause', () => {
    const cited = (cites: string, because = 'It wears.', vessel = '') => `${vessel}hose H1\n${finding('F1', `cites: ${cites}`).replace('It wears.', because)}`;
    it.each([
        ['"33 CFR 175"', 'It wears.', 1], ['"33 CFR 175" "175.320"', 'It wears.', 0], ['"46 CFR 171.119"', 'It wears.', 0], ['"ABYC H-27"', 'It wears.', 1], ['"ABYC H-27" "27.5.1"', 'It wears.', 0],
        ['"ABYC H-27" "27.5.1"', 'This violates the rule.', 1], ['"ABYC H-27" "27.5.1"', 'This is not required by law.', 0], ['"Good practice"', 'It wears.', 0], ['"33 CFR 175" "175.320"', 'This is required by law.', 0],
        ['"ABYC H-27" "27.5.1"', 'Two clamps are mandatory.', 1], ['"ABYC H-27" "27.5.1"', 'Two clamps are required.', 1], ['"ABYC H-27" "27.5.1"', 'Two men are required to lift it.', 0],
        ['"Good practice"', 'It does not comply with federal law.', 1], ['"ABYC H-27" "27.5.1"', 'ABYC asks for two.', 0],
    ])('%s | %s: %i', (cites, because, count) => {
        expect(pointed('cited-without-clause', cited(cites, because))).toHaveLength(count);
    });
    it.each([['ABYC requires two clamps.', 1], ['It does not comply with ABYC.', 1], ['Good practice per ABYC H-27 asks for two.', 0], ['ABYC does not require it.', 0]])('called upon in words: %s', (because, count) => {
        expect(pointed('cited-without-clause', `hose H1\n${finding('F1', 'place: "Port"').replace('It wears.', because)}`)).toHaveLength(count);
    });
    it('keeps a builder’s rule to the boats it binds', () => {
        const rule = '"33 CFR 183" "183.455"';
        expect(pointed('cited-without-clause', cited(rule, 'It wears.', 'vessel "Marram" { fuel: gasoline }\n'))).toHaveLength(0);
        expect(pointed('cited-without-clause', cited(rule, 'It wears.', 'vessel "Marram" { fuel: diesel }\n'))).toHaveLength(1);
        expect(pointed('cited-without-clause', cited(rule, 'It falls short of good practice.', 'vessel "Marram" { fuel: diesel }\n'))).toHaveLength(0);
        expect(pointed('cited-without-clause', cited('"33 CFR 183" "183.53"', 'It wears.', 'vessel "Marram" { fuel: diesel }\n'))).toHaveLength(0);
    });
});

describe('photographs', () => {
    const shown = (caption: string, side: string) => `shroud S1 {\n    side: ${side}\n    photo "photos/1.jpg" "${caption}"\n}\n`;
    it.each([
        ['Port cap shroud', 'starboard', 1], ['Port cap shroud', 'port', 0], ['Stbd shroud', 'port', 1], ['The fuel port', 'starboard', 0], ['Port and starboard shrouds', 'port', 0], ['Portlight', 'starboard', 0],
        ['Port cap shroud', 'centerline', 0], ['Port Skarvik yard, cap shroud', 'starboard', 0], ['Shroud, looking from port', 'starboard', 0], ['Shroud, port side', 'starboard', 1], ['Port Shroud', 'starboard', 1],
    ])('%s on the %s side: %i', (caption, side, count) => {
        expect(raisedBy('photo-loose-or-wrong-side', shown(caption, side))).toHaveLength(count);
    });
    it('keeps the capital when it turns the side', () => {
        expect(corrected(shown('Port cap shroud', 'starboard'), 'photo-loose-or-wrong-side', 'Change to starboard')).toContain('"Starboard cap shroud"');
    });
    it.each([['2026-10-05T11:59:00', 1], ['2026-10-05T12:01:00', 0], ['2026-10-07T11:59:00', 0], ['2026-10-07T12:01:00', 1], ['rubbish', 0]])('taken %s: %i', (taken, count) => {
        const text = 'survey "1" pre-purchase {\n    attended 2026-10-06 ashore "Yard"\n}\nshroud S1 {\n    photo "photos/1.jpg" "Shroud"\n}\n';
        expect(raisedBy('photo-wrong-day', text, { 'photos/1.jpg': { taken } })).toHaveLength(count);
    });
});

describe('urgency-inflated', () => {
    const survey = (words: readonly string[], house = '') => `${house}hose H1\n${words.map((word, i) => finding(`F${i}`, 'place: "Port"').replace('in-upkeep', word)).join('')}`;
    it.each([
        [['at-once', 'in-upkeep', 'in-upkeep', 'keep-watch'], 0], [['at-once', 'before-use', 'in-upkeep', 'keep-watch'], 1], [['at-once', 'at-once', 'at-once'], 0],
        [['in-upkeep', 'in-upkeep', 'in-upkeep', 'in-upkeep'], 1], [['at-once', 'before-use', 'in-upkeep', 'keep-watch', 'note-only', 'note-only', 'in-upkeep', 'in-upkeep'], 0],
    ])('%j: %i', (words, count) => {
        expect(raisedBy('urgency-inflated', survey(words))).toHaveLength(count);
    });
    it('says whose limit it used', () => {
        expect(raisedBy('urgency-inflated', survey(['at-once', 'before-use', 'in-upkeep', 'keep-watch']))[0]?.message).toContain('the usual limit of 25 %');
        expect(raisedBy('urgency-inflated', survey(['at-once', 'in-upkeep', 'in-upkeep', 'keep-watch'], 'yardsticks { urgent-share: 20 % }\n'))[0]?.message).toContain('the firm’s limit of 20 %');
    });
});

describe('figure-unusual', () => {
    it.each([
        ['vessel "M" { beam: 40 ft }', ['40 ft']], ['vessel "M" { beam: 12 ft }', []], ['hose H1 { length: 3 m..4 m }', []], ['hose H1 { bore: 1 mm..8 mm }', ['1 mm..8 mm']],
        ['through-hull TH1 { bore: 38 in }', ['38 in']], ['vessel "M" { built: 1890 }', []], ['vessel "M" { draft: 18 ft }', ['18 ft']],
        // A table: speed over 80 kn, and what the gauge cannot show.
        ['reading T1 "Trial" {\n    measures: trial\n    row "Full": 2800 rpm, 92 kn\n}', ['92 kn']], ['reading T1 "Trial" {\n    measures: trial\n    row "Full": 2800 rpm, 22 kn\n}', []],
        ['reading G1 "Gauging" {\n    measures: thickness\n    instrument-range: 1 mm..4 mm\n    row "A": 4 mm, 3.9 mm\n    row "B": 4 mm, 4.2 mm\n}', ['4.2 mm']],
    ])('%s', (text, expected) => {
        expect(pointed('figure-unusual', `${text}\n`)).toEqual(expected);
    });
    it('offers the unit that would be usual', () => {
        expect(corrected('hose H1 { bore: 38 in }\n', 'figure-unusual', 'Read 38 in as 38 mm')).toBe('hose H1 { bore: 38 mm }\n');
        expect(corrected('main-engine E1 { running-temperature: 180 C }\n', 'figure-unusual', 'Read 180 C as 180 F')).toContain('180 F');
    });
    it('is accepted with its reason', () => {
        expect(raisedBy('figure-unusual', 'vessel "M" { beam: 40 ft }\naccept figure-unusual because "She is a barge of that beam."\n')[0]?.answeredBy).toBe('accept');
    });
    it('leaves the word to a check that knows more', () => {
        const text = 'seacock SV1 { spigot: 38 mm }\nhose H1 { bore: 38 in }\nrun R1: SV1 -> H1\n';
        expect(raisedBy('hose-and-spigot-differ', text)).toHaveLength(1);
        expect(raisedBy('figure-unusual', text)).toHaveLength(0);
    });
});

describe('recommendation-closed-unproved', () => {
    it.each([['The owner says it is done.', 1], ['Stated by the yard.', 1], ['Stated by the yard; invoice 117 seen.', 0], ['The valve was worked three times.', 0]])('%s: %i', (evidence, count) => {
        expect(raisedBy('recommendation-closed-unproved', `hose H1\n${finding('F1', `outcome: done-and-seen\n    evidence: "${evidence}"`)}`)).toHaveLength(count);
    });
});
