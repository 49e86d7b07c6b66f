import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'co-alarm-missing-or-old';
const attended = 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\n';
const vessel = (facts: string) => `vessel "M" { ${facts} }\n`;

describe(id, () => {
    it.each([
        ['fuel: diesel  sleeping-cabins: 1', '', ['error ']], ['fuel: gasoline  sleeping-cabins: 1', '', ['error ']], ['fuel: electric  sleeping-cabins: 1', '', []], ['fuel: none  sleeping-cabins: 1', '', []],
        ['fuel: electric  sleeping-cabins: 1', 'heater H1 { fuel: diesel }', ['error ']], ['fuel: none  sleeping-cabins: 1', 'fireplace H1', ['error ']], ['fuel: none  sleeping-cabins: 1', 'stove S1 { fuel: gas }', ['error ']],
        ['fuel: none  sleeping-cabins: 1', 'stove S1', []], ['fuel: electric  sleeping-cabins: 1', 'generator G1', ['error ']], ['fuel: electric  sleeping-cabins: 1', 'main-engine E1', []],
        ['sleeping-cabins: 1', '', ['hint ']], ['sleeping-cabins: 0  fuel: diesel', '', []], ['fuel: diesel', '', []],
        ['fuel: diesel  sleeping-cabins: 2', 'co-alarm C1', ['warning C1']], ['fuel: diesel  sleeping-cabins: 2', 'co-alarm C1 { quantity: 2 }', []], ['fuel: diesel  sleeping-cabins: 1', 'co-alarm C1 { quantity: 0 }', ['error C1']],
    ])('%s; %s', (facts, more, expected) => {
        expect(summary(id, `${vessel(facts)}${more}\n`)).toEqual(expected);
    });
    it.each([
        ['replace-by: 2026-09-30', ['error C1']], ['replace-by: 2026-10-06', []], ['replace-by: 2026-10', []], ['replace-by: 2026', []], ['replace-by: 2025', ['error C1']],
        ['works: no', ['error C1']], ['works: not-tried', []], ['works: no  replace-by: 2020', ['error C1']],
    ] as const)('an alarm with %s', (facts, expected) => {
        expect(summary(id, `${attended}co-alarm C1 { ${facts} }\n`)).toEqual(expected);
    });
    it('asks when she was attended', () => {
        expect(summary(id, 'co-alarm C1 { replace-by: 2020 }\n')).toEqual(['hint C1']);
    });
    it('asks for berths where it is said that there is none', () => {
        expect(summary(id, `survey "1" pre-purchase { absent "Carbon monoxide alarm": "none aboard" }\n${vessel('fuel: diesel')}`)).toEqual(['hint ']);
        expect(summary(id, `survey "1" pre-purchase { absent "Carbon monoxide alarm": "none aboard" }\n${vessel('fuel: diesel  sleeping-cabins: 1')}`)).toEqual(['error ']);
    });
    it('reports an old alarm once, and not as missing too', () => {
        expect(summary(id, `${attended}${vessel('fuel: diesel  sleeping-cabins: 1')}co-alarm C1 { replace-by: 2020 }\n`)).toEqual(['error C1']);
    });
    it('is put right by adding what is missing, with or without another thing aboard', () => {
        for (const text of [vessel('fuel: diesel  sleeping-cabins: 2'), `${vessel('fuel: diesel  sleeping-cabins: 2')}smoke-alarm S1\n`]) {
            expect(correctionsIn(id, text)).toEqual(['Add 2 carbon-monoxide alarms']);
            expect(raisedBy(id, corrected(text, id, 'Add 2 carbon-monoxide alarms'))).toEqual([]);
        }
    });
    it('is due before use, and too few of them in upkeep', () => {
        expect(urgencies(id, vessel('fuel: diesel  sleeping-cabins: 2'))).toEqual(['before-use']);
        expect(urgencies(id, `${vessel('fuel: diesel  sleeping-cabins: 2')}co-alarm C1\n`)).toEqual(['in-upkeep']);
    });
});
