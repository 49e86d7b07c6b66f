import { describe, expect, it } from 'vitest';
import { corrected, raisedBy, summary } from '../check-text.js';

const id = 'adapter-does-not-match';
const between = (first: string, ends: string, second: string) =>
    `hose H1 { bore: ${first} }\nstepped-adapter A1 { ends: ${ends} }\nhose H2 { bore: ${second} }\nrun R1: H1 -> A1 -> H2\n`;

describe('ends against neighbours', () => {
    it.each([
        ['25 mm', '1 in, 1-1/2 in', '38 mm', []],
        ['25 mm', '1-1/2 in, 1 in', '38 mm', ['error A1 H1 H2']],
        ['25 mm', '1 in, 1-1/4 in', '38 mm', ['error A1 H2']],
        ['25 mm', '32 mm, 45 mm', '38 mm', ['error A1 H1', 'error A1 H2']],
        ['38 mm', '38 mm', '38 mm', []],
    ] as const)('%s, adapter %s, %s', (first, ends, second, expected) => {
        expect(summary(id, between(first, ends, second))).toEqual(expected);
    });

    it('says when it fits only turned round, and turns it', () => {
        const text = between('25 mm', '1-1/2 in, 1 in', '38 mm');
        expect(raisedBy(id, text)[0]?.message).toContain('turned round');
        expect(summary(id, corrected(text, id, 'Turn A1 round: ends 1 in, 1-1/2 in'))).toEqual([]);
    });

    it('judges the tail of a part that the adapter meets', () => {
        const text = (spigot: string) => `valve SV1 { spigot: ${spigot} }\nstepped-adapter A1 { ends: 32 mm, 38 mm }\nhose H1 { bore: 38 mm }\nrun R1: SV1 -> A1 -> H1\n`;
        expect(summary(id, text('1-1/4 in'))).toEqual([]);
        expect(summary(id, text('45 mm'))).toEqual(['error A1 SV1']);
    });

    it('judges an adapter that begins a run at its second end', () => {
        expect(summary(id, 'stepped-adapter A1 { ends: 32 mm, 38 mm }\nhose H1 { bore: 38 mm }\nrun R1: A1 -> H1\n')).toEqual([]);
    });

    it('judges an elbow by its tail', () => {
        expect(summary(id, 'hose H1 { bore: 38 mm }\nelbow E1 { spigot: 32 mm }\nhose H2 { bore: 32 mm }\nrun R1: H1 -> E1 -> H2\n')).toEqual(['error E1 H1']);
    });
});

describe('a fact that is not recorded', () => {
    it('asks for the ends where both neighbours are known', () => {
        const text = 'hose H1 { bore: 32 mm }\nstepped-adapter A1\nhose H2 { bore: 38 mm }\nrun R1: H1 -> A1 -> H2\n';
        expect(summary(id, text)).toEqual(['hint A1 H1 H2']);
        expect(raisedBy(id, text)[0]?.message).toContain('record its ends');
    });
    it('asks for the bore of a hose it meets', () => {
        expect(summary(id, 'hose H1\nstepped-adapter A1 { ends: 32 mm, 38 mm }\nhose H2 { bore: 38 mm }\nrun R1: H1 -> A1 -> H2\n')).toEqual(['hint H1 A1']);
    });
});
