import { describe, expect, it } from 'vitest';
import { analyseText } from '../../src/checks/survey.js';

const gapsOf = (text: string) => analyseText(text).gaps.filter(gap => gap.severity === 'error').map(gap => `${gap.code}: ${text.slice(gap.span.start, gap.span.end)}`);
const idsOf = (text: string) => [...analyseText(text).record.components.keys()];

describe('layout', () => {
    it('leaves complete text alone', () => {
        const text = `system skin "Openings" {
    through-hull TH1 { size: 1 in }
    hose H1 { bore: 25 mm }
    run R1 "Drain": TH1 -> { clamps: 2 } H1
    hose H2
    run R2: TH1 ->
        H2 -> capped
    finding F1 "x"
        on TH1,
        H1 { seen: "…" }
}
run R3: TH1 -> { clamps: 2 } H1

through-hull TH3 { size: 1 in }
`;
        expect(gapsOf(text)).toEqual([]);
        expect(idsOf(text)).toEqual(['TH1', 'H1', 'H2', 'TH3']);
    });

    for (const [name, half, expected] of [
        ['an open block', 'hose H9 { bore: 25 mm', ['block-not-closed: {']],
        ['a kind alone', 'hose', ['id-missing: hose']],
        ['a property without a value', 'hose H9 { bore: }', ['value-missing: bore']],
        ['a property being typed', 'hose H9 { bo }', ['property-unknown: bo']],
        ['a run that stops at its arrow', 'run R9: TH1 ->', ['run-step-missing: ->']],
        ['a run that stops at its colon', 'run R9 "x":', ['run-empty: run']],
        ['a text without its end', 'hose H9 { marking: "PVC', ['text-not-closed: "', 'block-not-closed: {']],
        ['a finding without its parts', 'finding', ['id-missing: finding']],
        ['targets that stop at a comma', 'finding F9 "x" on TH1,', []],
        ['an unknown sign', 'hose H9 { bore: 25 mm } §', ['character-unknown: §']],
    ] as const) {
        it(`${name} does not hide what follows`, () => {
            const text = `through-hull TH1 { size: 1 in }\n${half}\nvalve SV1 { sise: 1 in }\nseacock SV2 { size: 1 in }\n`;
            expect(idsOf(text)).toEqual(expect.arrayContaining(['TH1', 'SV1', 'SV2']));
            expect(gapsOf(text)).toEqual(expect.arrayContaining([...expected, 'property-unknown: sise']));
        });
    }

    it('names a brace that closes nothing', () => {
        expect(gapsOf('hose H1 { bore: 25 mm } }\nvalve SV1\n')).toEqual(['brace-closes-nothing: }']);
    });
});
