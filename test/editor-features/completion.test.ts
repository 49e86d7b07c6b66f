import { describe, expect, test } from 'vitest';
import { wordStart } from '../../src/editor/completion.js';
import { completes, completionOf, inEveryGuise, taken } from './editor.js';

const parts = `through-hull TH4 "Old heads discharge" { size: 1-1/2 in  below-waterline: 14 in }
valve SV4 { size: 1-1/2 in  metal: brass }
hose H9 { bore: 38 mm }
`;

describe('the word being typed', () => {
    test.each([
        ['bore: 38 m', 'm'], ['bore: 38mm', 'mm'], ['gate-va', 'gate-va'], ['-> L-Nor', 'L-Nor'], ['38 ', ''], ['é½', 'é½'], ['within-', 'within-'], ['5-foo', 'foo'], ['', ''],
    ])('%j ends in %j', (text, word) => expect(text.slice(wordStart(text, text.length))).toBe(word));
});

describe('statements', () => {
    inEveryGuise('at the top of a file', '<|>', async text => {
        const { labels } = await completionOf(text);
        expect(labels[0]).toBe('survey');
        expect(labels).toEqual(expect.arrayContaining(['vessel', 'system', 'run', 'finding', 'accept', 'seacock', 'hose', 'unseen']));
        expect(labels).not.toContain('component');
        expect(labels).not.toContain('joint');
    });
    inEveryGuise('in a system', `system skin "Skin" {\n    <|>\n}\n`, async text => {
        const { labels } = await completionOf(text);
        expect(labels).toEqual(expect.arrayContaining(['run', 'finding', 'hose']));
        expect(labels).not.toContain('vessel');
    });
    inEveryGuise('a kind is offered whole, with the next free id', `seacock SV1\nseacock SV7\nsea<|>`, async text => {
        const completion = await completionOf(text);
        expect(taken(completion, 'seacock')).toMatch(/\nseacock \$\{1:SV8\} "\$\{2:seacock\}" \{ size: \$3 {2}metal: \$4 {2}/);
    });
    completes('a free id after a kind', `valve SV4\nvalve <|>`, ['SV5']);
    completes('a free id after finding', `finding F2 "x"\nfinding <|>`, ['F3']);
    completes('on after the title of a finding', 'finding F1 "x" <|>', ['on']);
    completes('a statement after a finished line', `${parts}fin<|>`, ['finding'].slice(1));
});

describe('facts', () => {
    inEveryGuise('in a block, those not recorded, its own first', `hose H9 {\n    bore: 38 mm\n    <|>\n    length: 2 m\n}\n`, async text => {
        const { labels, items } = await completionOf(text);
        expect(labels).toContain('reinforcement');
        expect(labels).not.toContain('bore');
        expect(labels).not.toContain('length');
        expect(labels.indexOf('reinforcement')).toBeLessThan(labels.indexOf('place'));
        expect(labels.slice(-2)).toEqual(['note', 'photo']);
        expect(items.find(i => i.label === 'reinforcement')?.textEdit?.newText).toBe('reinforcement: ');
    });
    inEveryGuise('on one line', 'hose H9 { bore: 38 mm  rein<|> }', async text => expect(taken(await completionOf(text), 'reinforcement')).toContain('bore: 38 mm  reinforcement:  }'));
    inEveryGuise('at a joint', `${parts}run R1: TH4 -> { <|> } SV4`, async text => {
        const { labels } = await completionOf(text);
        expect(labels).toContain('clamps');
        expect(labels).not.toContain('note');
    });
    inEveryGuise('attendances in the survey', 'survey "1" {\n    <|>\n}', async text => expect((await completionOf(text)).labels).toEqual(expect.arrayContaining(['client', 'attended', 'unseen'])));
    completes('none where the kind is unknown', 'gizmo G1 { <|> }', ['note', 'photo']);
});

describe('values', () => {
    inEveryGuise('words of choice, hyphens and all', 'valve SV4 { pattern: gate-v<|> }', async text => expect(taken(await completionOf(text), 'gate-valve')).toContain('{ pattern: gate-valve }'));
    completes('yes and no', 'valve SV4 { flanged: <|> }', ['yes', 'no']);
    inEveryGuise('materials, metals first', 'valve SV4 { metal: <|> }', async text => {
        const { labels } = await completionOf(text);
        expect(labels).toContain('bronze');
        expect(labels.indexOf('bronze')).toBeLessThan(labels.indexOf('grp') === -1 ? Infinity : labels.indexOf('grp'));
    });
    inEveryGuise('units after a number', 'hose H9 { bore: 38 <|> }', async text => {
        const { labels } = await completionOf(text, ' ');
        expect(labels.slice(0, 4)).toEqual(expect.arrayContaining(['mm', 'in']));
        expect(labels).not.toContain('psi');
    });
    inEveryGuise('a unit typed against the number', 'hose H9 { bore: 38m<|> }', async text => expect(taken(await completionOf(text), 'mm')).toContain('bore: 38 mm }'));
    inEveryGuise('no units after a whole figure', 'hose H9 { bore: 38 mm <|> }', async text => {
        const { labels } = await completionOf(text);
        expect(labels).not.toContain('mm');
        expect(labels).toContain('reinforcement');
    });
    completes('figures recorded before', 'hose H1 { bore: 38 mm }\nhose H2 { bore: 38 mm }\nhose H3 { bore: 25 mm }\nhose H4 { bore: <|> }', ['38 mm', '25 mm']);
    completes('people', 'person L-Norgaard "Liv"\nsurvey "1" { surveyor: <|> }', ['L-Norgaard']);
    inEveryGuise('urgency with days', 'finding F1 "x" { urgency: wi<|> }', async text => expect(taken(await completionOf(text), 'within-days')).toContain('urgency: within-days ${1:30} }'));
    inEveryGuise('phrases', 'phrase mine "x"\nfinding F1 "x" { recommend: phrase <|> }', async text => expect((await completionOf(text)).labels).toEqual(expect.arrayContaining(['mine', 'blank-off-or-remove'])));
    inEveryGuise('a phrase with what it leaves open', 'phrase mine "Renew {what} of {bore} in {H1.bore}, {H1}."\nhose H1\nfinding F1 "x" on H1 { recommend: mi<|> }', async text => expect(taken(await completionOf(text), 'phrase mine')).toContain('recommend: phrase mine(what: "$1") }'));
    completes('what a phrase leaves open', 'phrase mine "Renew {what} by {when}."\nfinding F1 "x" { recommend: phrase mine(<|>) }', ['what', 'when'], ['answers']);
    inEveryGuise('standards in quotes', 'finding F1 "x" { cites: <|> }', async text => expect((await completionOf(text)).labels).toContain('"ISO 9093"'));
    inEveryGuise('standards inside quotes', 'finding F1 "x" { cites: "ISO<|>" }', async text => expect(taken(await completionOf(text), 'ISO 9093')).toContain('cites: "ISO 9093" }'));
    completes('days of attendance', 'survey "1" {\n    attended 2026-10-06 ashore "x"\n    issued: <|>\n}', ['2026-10-06']);
    completes('how she lies', 'survey "1" {\n    attended 2026-10-06 <|>\n}', ['ashore', 'afloat']);
});

describe('ids', () => {
    completes('in a run, those of no run first', `${parts}run R1: TH4 -> SV4\nrun R2: <|>`, ['H9', 'TH4', 'SV4'], ['open']);
    completes('further along a run', `${parts}run R1: TH4 -> <|>`, ['SV4', 'H9', 'open', 'capped', 'blanked', 'TH4']);
    inEveryGuise('right after the arrow', `${parts}run R1: TH4 -><|>`, async text => expect(taken(await completionOf(text, '>'), 'SV4')).toContain('TH4 -> SV4'));
    completes('after on', `${parts}finding F1 "x" on TH4, <|>`, [], ['TH4']);
    completes('in a contact', `${parts}contact <|>`, ['TH4', 'SV4', 'H9']);
});

describe('problems', () => {
    const loose = `valve SV1 { spigot: 1-1/4 in }\nhose H1 { bore: 1-1/2 in }\nhose H2\nrun R1: SV1 -> H1\n`;
    completes('the open one first after accept', `${loose}accept <|>`, ['hose-and-spigot-differ on H1, SV1']);
    completes('its components first after on', `${loose}accept hose-and-spigot-differ on <|>`, ['SV1', 'H1', 'H2']);
    completes('its check first in answers', `${loose}finding F1 "x" on H1, SV1 {\n    answers: <|>\n}`, ['hose-and-spigot-differ']);
    completes('not again once answered', `${loose}finding F1 "x" on H1, SV1 {\n    answers: hose-and-spigot-differ, <|>\n}`, [], ['hose-and-spigot-differ']);
});

describe('references in prose', () => {
    const finding = (seen: string) => `${parts}finding F1 "x" on H9 {\n    seen: ${seen}\n}\n`;
    completes('ids after the brace, those of the finding first', finding('"The {<|>}"'), ['H9', 'TH4', 'SV4', 'vessel', 'survey']);
    completes('recorded facts and computed ones', finding('"The {TH4.<|>}"'), ['size', 'below-waterline', 'flooding-rate']);
    completes('facts of the vessel', `vessel "M" { draft: 5 ft }\n${finding('"She draws {vessel.<|>"')}`, ['draft']);
    completes('nothing in plain prose', finding('"The hose<|>"'), []);
    completes('nothing after an escaped brace', finding('"The \\\\{<|>"'.replace('\\\\', '\\')), []);
    inEveryGuise('the brace is closed', finding('"The {H9.bo<|>"'), async text => expect(taken(await completionOf(text), 'bore')).toContain('seen: "The {H9.bore}"'));
    inEveryGuise('in a text over several lines', finding('"""\n        The hose\n        {H9.<|>}\n    """'), async text => expect((await completionOf(text)).labels).toContain('bore'));
    inEveryGuise('in a text not closed yet', `${parts}finding F1 "x" on H9 {\n    seen: "The {H9.<|>\n}\n`, async text => expect((await completionOf(text)).labels).toContain('bore'));
});

describe('files', () => {
    const pictures = '//= photos/0412.jpg\n//= photos/Lück é.PNG\n//= photos/notes.txt\n//= other/x.heic\n';
    inEveryGuise('pictures of the photos folder', `${pictures}//- main.survey\nsurvey "1" { photos: "photos" }\nhose H9 { photo "<|>" }`, async text => {
        const { labels } = await completionOf(text);
        expect(labels.slice(0, 2)).toEqual(['0412.jpg', 'Lück é.PNG']);
        expect(labels).not.toContain('notes.txt');
        expect(labels).toContain('other/');
    });
    inEveryGuise('a folder gone into', `${pictures}//- main.survey\nhose H9 { photo "photos/L<|>" }`, async text => expect(taken(await completionOf(text), 'Lück é.PNG')).toContain('photo "photos/Lück é.PNG"'));
    inEveryGuise('quotes not typed yet', `${pictures}//- main.survey\nsurvey "1" { photos: "photos" }\nhose H9 { photo <|> }`, async text => expect((await completionOf(text)).labels).toContain('"photos/0412.jpg"'));
    inEveryGuise('files to use', '//- main.survey\nuse "<|>"\n//- house.survey\n\n//- wartung.survey\n\n', async text => expect((await completionOf(text)).labels).toEqual(expect.arrayContaining(['house', 'wartung'])));
});

describe('nothing', () => {
    completes('in a comment', 'hose H1 { // bo<|>\n}', []);
    test('on a blank where nothing particular is due', async () => expect((await completionOf('hose H1 { bore: 38 mm <|> }', ' ')).labels).toEqual([]));
});
