import { describe, expect, test } from 'vitest';
import { figureText } from '../../src/editor/hover.js';
import { hoverOf, hovers } from './editor.js';

const parts = 'through-hull TH4 "Old heads" { size: 1-1/2 in  metal: bronze  below-waterline: 14 in }\nvalve SV1 { spigot: 1-1/4 in }\nhose H1 { bore: 1-1/2 in }\nrun R1 "Sink": SV1 -> H1\n';

describe('ids', () => {
    hovers('of a component: title, facts in both systems, what is computed', 'finding F1 "x" on TH<|>4\n'.replace('finding', `${parts}finding`), 'TH4', '**TH4** Old heads', 'size: 1-1/2 in (38.1 mm)', 'flooding-rate', 'discharge coefficient');
    hovers('with open problems', `${parts}finding F1 "x" on <|>H1`, 'H1', '**open**', '1-1/2 in');
    hovers('with answered ones', `${parts}finding F1 "x" on H1<|>, SV1 { answers: hose-and-spigot-differ }`, 'H1', 'answered by F1');
    hovers('in prose', `${parts}finding F1 "x" on H1 { seen: "The {H<|>1.bore}" }`, 'H1', '**H1**');
    hovers('of a run', `${parts.replace('run R1', 'run R<|>1')}`, 'R1', 'SV1 → H1');
});

describe('vocabulary', () => {
    hovers('a kind', '<|>seacock SV1', 'seacock', '**Seacock**', 'a valve');
    hovers('a property, with its usual range', 'hose H1 { bo<|>re: 38 mm }', 'bore', 'Inside diameter', 'Usual: 3 mm..300 mm');
    hovers('a property named in prose, with its value', `${parts}finding F1 "x" on H1 { seen: "{H1.bor<|>e}" }`, 'bore', '1-1/2 in (38.1 mm)');
    hovers('a computed fact named in prose', `${parts}finding F1 "x" { seen: "{TH4.flooding<|>-rate}" }`, 'flooding-rate', 'computed', 'Assumes');
    hovers('a material with its potential', 'valve SV1 { metal: bra<|>ss }', 'brass', 'Potential', 'mV', 'calomel');
    hovers('a word of a list', 'finding F1 "x" { urgency: before-l<|>aunch }', 'before-launch', 'water is under her');
    hovers('a word of a property', 'valve SV1 { pattern: gate-<|>valve }', 'gate-valve', 'How it closes');
    hovers('a standard', 'finding F1 "x" { cites: "ISO <|>9093" }', '"ISO 9093"', 'seacocks', 'standing: voluntary');
    hovers('a phrase', 'finding F1 "x" { recommend: phrase blank-off<|>-or-remove }', 'blank-off-or-remove', 'Remove the fitting');
    hovers('a check', 'accept hose-and<|>-spigot-differ on H1 because "x"', 'hose-and-spigot-differ', 'different sizes', '*Computes:*');
    hovers('a word of the firm', 'words moods "Moods" { glad "in good cheer" }\nkind k { takes m: moods }\nk K1 { m: gl<|>ad }', 'glad', 'in good cheer');
});

describe('figures', () => {
    hovers('in both systems and SI', 'hose H1 { bore: 38<|> mm }', '38 mm', '1-1/2 in', 'SI: 0.038 m');
    test.each([['14 C', '57.2 F'], ['250 USD..400 USD', '250 USD'], ['5 mm +/- 0.5 mm', '± 0.0005 m'], ['2026-10-06', 'Tue, 06 Oct 2026'], ['38 mn', 'not a unit']])('%s', (written, part) => {
        expect(figureText(written)).toContain(part);
    });
});

describe('photos', () => {
    hovers('are shown', '//= photos/é (1).jpg\n//- main.survey\nhose H1 { photo "photos/é (1).<|>jpg" }', '"photos/é (1).jpg"', '![', '|width=360)', '%281%29');
    hovers('are said to be missing', 'hose H1 { photo "gone.<|>jpg" }', '"gone.jpg"', 'no file');
    hovers('are found in the photos folder', '//= bilder/a.jpg\n//- main.survey\nsurvey "1" { photos: "bilder" }\nhose H1 { photo "a<|>.jpg" }', '"a.jpg"', 'survey/bilder/a.jpg');
});

test('nothing in a comment, on a blank, or in plain prose', async () => {
    for (const text of ['// H<|>1\nhose H1', 'hose H1 <|>  {}', 'hose H1 { note "plain <|>prose" }']) {
        expect((await hoverOf(text)).value).toBe('');
    }
});
