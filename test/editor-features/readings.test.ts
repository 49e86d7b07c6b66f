import { describe, expect, test } from 'vitest';
import { completes, completionOf, definitionOf, hovers, inEveryGuise, open, renamed, taken } from './editor.js';

const gauging = (marked: string) => `plate PL1 "Shell plating" { original-thickness: 6 mm }
reading G1 "Shell gauging" on PL1 {
    measures: thickness
    ${marked}
}
`;

async function hints(text: string): Promise<string[]> {
    const { document, services } = await open(text);
    const { textDocument } = document;
    const range = { start: { line: 0, character: 0 }, end: textDocument.positionAt(textDocument.getText().length) };
    const found = await services.lsp.InlayHintProvider?.getInlayHints(document, { textDocument: { uri: document.uri.toString() }, range }) ?? [];
    return found.map(({ position, label }) => `${position.line}: ${typeof label === 'string' ? label : ''}`);
}

describe('tables of readings', () => {
    completes('columns of what is measured', gauging('columns: <|>'), ['original', 'reading', 'pit', 'remark'], ['moisture']);
    completes('words that a column takes', 'reading M1 "Map" {\n    measures: percussion\n    row "Bow": <|>\n}\n', ['clear', 'dull', 'hollow']);
    inEveryGuise('components, where a column names one', `main-engine ENG1\nreading T1 "Trial" {\n    measures: trial\n    row "Full": E<|>\n}\n`, async text => {
        expect((await completionOf(text)).labels).toContain('ENG1');
    });
    hovers('a column', gauging('columns: origi<|>nal, reading'), 'original', 'Original thickness');
    inEveryGuise('an id in a row leads to its component', `main-engine ENG1\nreading T1 "Trial" {\n    measures: trial\n    row "Full": EN<|>G1, 2800 rpm\n}\n`, async text => {
        expect((await definitionOf(text)).map(entry => entry.replace(/@\d+$/, ''))).toEqual(['main.survey:ENG1']);
    });
    test('an id in a row is renamed with its component', async () => {
        const { 'main.survey': after } = await renamed('main-engine EN<|>G1\nreading T1 "Trial" on ENG1 {\n    measures: trial\n    row "Full": ENG1, 2800 rpm\n}\n', 'PORT1');
        expect(after).toBe('main-engine PORT1\nreading T1 "Trial" on PORT1 {\n    measures: trial\n    row "Full": PORT1, 2800 rpm\n}\n');
    });
});

describe('computed columns stand behind their row', () => {
    test('mean and loss, in the units of the row', async () => {
        expect(await hints(gauging('row "Frame 12, port": 6 mm, 5.1 mm, 5 mm, 4.9 mm'))).toContain('3: mean 5 mm, loss 16.7 %');
        expect(await hints(gauging('row "Frame 12, port": 0.25 in, 0.2 in'))).toContain('3: mean 0.2 in, loss 20 %');
    });
    test('slip of a trial run, by the drive it names', async () => {
        const text = 'main-engine E1\ngearbox GB1 { ratio: 2 }\npropeller P1 { pitch: 16 in }\nreading T1 "Trial" on E1 {\n    measures: trial\n    row "Full": 2800 rpm, 14.4 kn, 14 kn\n}\n';
        // A published worked example: 2800 rpm, 2:1, 16 in, 14.2 kn gives 23.0 %.
        expect(await hints(text)).toContain('5: mean speed 14.2 kn, slip 23 %');
    });
    test('list from freeboards and the beam', async () => {
        // atan(50 mm / 3 m) = 0.955 degrees.
        expect((await hints('vessel "M" { beam: 3 m }\nreading F1 "Freeboards" {\n    measures: freeboard\n    row "Midship": 900 mm, 850 mm\n}\n')).join()).toMatch(/port over starboard 50 mm, list 0\.955 deg/);
    });
    test('fall of a tube, its temperature taken out', async () => {
        // 250 mbar at 25 C falls to 228 mbar at 20 C by temperature alone: (1013.25 + 250) x 293.15 / 298.15 - 1013.25.
        const found = (await hints('reading T1 "Tubes" {\n    measures: tube-pressure\n    row "Chamber 1": 250 mbar, 228.8 mbar, 12 h, 25 C, 20 C\n}\n')).join();
        expect(found).toMatch(/fall -?0\.\d+ mbar/);
    });
    test('none where a column it needs is empty', async () => {
        expect((await hints(gauging('row "Frame 12": none, 5.1 mm'))).join()).not.toContain('loss');
    });
});

describe('what could not be seen', () => {
    completes('the parts of the vessel, after unseen', 'survey "1" pre-purchase {\n    unseen <|>\n}\n', ['"…"', 'hull', 'deck']);
    hovers('a part', 'survey "1" pre-purchase {\n    unseen ri<|>g "Mast": "stepped"\n}\n', 'rig', 'Rig and sails');
});

describe('yardsticks and coverage', () => {
    inEveryGuise('the firm’s limits are offered', 'yardsticks {\n    hose-l<|>\n}\n', async text => {
        expect(taken(await completionOf(text), 'hose-life')).toContain('hose-life: ');
    });
    completes('parts of a coverage', 'coverage houseboat {\n    parts: <|>\n}\n', ['hull', 'deck']);
    hovers('a yardstick', 'yardsticks {\n    hose-<|>life: 8 years\n}\n', 'hose-life', 'Age at which a hose is old');
});

describe('an acceptance of a finding’s own words', () => {
    inEveryGuise('leads to the finding', 'hose H1\nfinding F1 "Chafe" on H1 {\n    recommend: "Monitor."\n}\naccept act-too-vague on F<|>1 because "It is what the contract says."\n', async text => {
        expect((await definitionOf(text)).map(entry => entry.replace(/@\d+$/, ''))).toEqual(['main.survey:F1']);
    });
    test('is renamed with it', async () => {
        const { 'main.survey': after } = await renamed('hose H1\nfinding F<|>1 "Chafe" on H1 {\n    recommend: "Monitor."\n}\naccept act-too-vague on F1 because "So."\n', 'F9');
        expect(after).toContain('accept act-too-vague on F9 because');
    });
});
