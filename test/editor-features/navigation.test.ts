import { describe, expect, test } from 'vitest';
import { definitionOf, highlightsOf, inEveryGuise, referencesTo, renamed } from './editor.js';

const text = (marked: string) => `//- main.survey
use "part"
valve SV4 { metal: brass }
hose H9 { bore: 38 mm }
run R1: SV4 -> H9 -> open
finding F1 "x" on SV4, H9 {
    seen: "The hose {H9.bore} on {SV4}"
    recommend: phrase mine
}
${marked}
//- part.survey
contact H9, SV4
anode A1 { protects: SV4 }
phrase mine "Renew."
`;

const lines = (found: readonly string[]) => found.map(entry => entry.replace(/@\d+$/, ''));

describe('definition', () => {
    const leads = (name: string, marked: string, ...to: string[]) => inEveryGuise(name, marked, async guise => expect(lines(await definitionOf(guise))).toEqual(to));
    leads('of an id in a run', text('run R2: SV<|>4 -> H9'), 'main.survey:SV4');
    leads('of an id at its end', text('run R2: SV4<|> -> H9'), 'main.survey:SV4');
    leads('of an id in prose', text('hose H8 { note "{H9<|>.bore}" }'), 'main.survey:H9');
    leads('of a fact in prose: where it is recorded, then the catalogue', text('hose H8 { note "{H9.bo<|>re}" }'), 'main.survey:bore', 'garboard-catalogue:/openings.survey');
    leads('of an id in a value', text('anode A2 { protects: S<|>V4 }'), 'main.survey:SV4');
    leads('of a phrase in another file', text('finding F2 "x" { seen: phrase mi<|>ne }'), 'part.survey:mine');
    leads('of a kind in the catalogue', text('hos<|>e H8'), 'garboard-catalogue:/openings.survey');
    leads('of a material', text('valve SV5 { metal: bra<|>ss }'), 'garboard-catalogue:/materials.survey');
    leads('of a standard', text('finding F2 "x" { cites: "ISO<|> 9093" }'), 'garboard-catalogue:/standards.survey');
    leads('of a word of urgency', text('finding F2 "x" { urgency: at-<|>once }'), 'garboard-catalogue:/base.survey');
    leads('of a check: its page', text('accept hose-and<|>-spigot-differ on H9 because "x"'), 'garboard-explain:/hose-and-spigot-differ.md');
    leads('of a used file', text('').replace('use "part"', 'use "pa<|>rt"'), 'part.survey:');
    leads('of a photo', `//= photos/é.jpg\n${text('hose H8 { photo "photos/<|>é.jpg" }')}`, 'photos/%C3%A9.jpg');
    leads('of the vessel in prose', text('vessel "M" { draft: 5 ft }\nhose H8 { note "{ves<|>sel.draft}" }'), 'main.survey:vessel');
    leads('of nothing', text('hose H8 { note "plain <|> prose" }'));
});

describe('references', () => {
    inEveryGuise('of a component, in every file and in prose', text('run R2: SV4<|> -> H9'), async guise => {
        const found = await referencesTo(guise);
        expect(found.filter(f => f.endsWith(':SV4'))).toHaveLength(found.length);
        expect(found.filter(f => f.startsWith('main'))).toHaveLength(5);
        expect(found.filter(f => f.startsWith('part'))).toHaveLength(2);
        expect(await referencesTo(guise, false)).toHaveLength(found.length - 1);
    });
    inEveryGuise('of a property', text('hose H8 { bo<|>re: 25 mm }'), async guise => {
        const found = await referencesTo(guise);
        expect(found.filter(f => f.endsWith(':bore'))).toHaveLength(3);
        expect(found.at(-1)).toMatch(/^garboard-catalogue:/);
    });
    inEveryGuise('of a phrase', text('finding F2 "x" { seen: phrase mi<|>ne }'), async guise => expect(await referencesTo(guise)).toHaveLength(3));
    inEveryGuise('marked in the file', text('run R2: SV4 -> H<|>9'), async guise => {
        const found = await highlightsOf(guise);
        expect(found.filter(f => f.endsWith('write'))).toHaveLength(1);
        expect(found).toHaveLength(5);
    });
});

describe('rename', () => {
    inEveryGuise('of a component, in every file and in prose', text('run R2: SV<|>4 -> H9'), async guise => {
        const files = await renamed(guise, 'Séacock-1');
        const all = Object.values(files).join('');
        expect(all).not.toContain('SV4');
        expect(files['main.survey']).toContain('on {Séacock-1}"');
        expect(files['part.survey']).toContain('protects: Séacock-1 }');
        expect(all.match(/Séacock-1/g)).toHaveLength(7);
    });
    inEveryGuise('of a phrase used elsewhere', text('finding F2 "x" { seen: phrase mi<|>ne }'), async guise => {
        expect(Object.values(await renamed(guise, 'ours')).join('').match(/\bours\b/g)).toHaveLength(3);
    });
    inEveryGuise('of a run', text('').replace('run R1', 'run R<|>1'), async guise => expect((await renamed(guise, 'R9'))['main.survey']).toContain('run R9: SV4'));
    test.each([
        ['a catalogue name', text('ho<|>se H8'), 'tube', 'catalogue'],
        ['a check', text('accept hose-and<|>-spigot-differ on H9 because "x"'), 'x', 'id of a check'],
        ['to a name that is taken', text('run R2: SV<|>4 -> H9'), 'H9', 'already'],
        ['to what ends a run', text('run R2: SV<|>4 -> H9'), 'open', 'how a run ends'],
        ['to what is no name', text('run R2: SV<|>4 -> H9'), '4 SV', 'not a name'],
        ['to nothing', text('run R2: SV<|>4 -> H9'), '', 'An empty name'],
        ['of an id that is not declared', text('run R2: SV<|>99 -> H9'), 'X', 'not declared'],
    ])('is refused for %s', async (_, marked, name, part) => {
        await expect(renamed(marked, name)).rejects.toThrow(part);
    });
});
