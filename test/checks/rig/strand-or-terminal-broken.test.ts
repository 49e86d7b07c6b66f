import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'strand-or-terminal-broken';

describe('strand-or-terminal-broken', () => {
    it.each([
        ['shroud W1 { broken-strands: 0 }', []], ['shroud W1 { broken-strands: 1 }', ['error W1']], ['stay W1 { broken-strands: 3 }', ['error W1']], ['wire W1 { terminal: cracked }', ['error W1']],
        ['stay W1 { terminal: bent }', ['error W1']], ['stay W1 { terminal: rust-weeping }', ['warning W1']], ['stay W1 { terminal: sound }', []], ['stay W1 { rust-streak: yes }', ['warning W1']],
        ['stay W1 { rust-streak: yes  broken-strands: 1 }', ['error W1']], ['terminal T1 { state: cracked }', ['error T1']], ['terminal T1 { state: bent }', ['error T1']], ['terminal T1 { state: rust-weeping }', ['warning T1']],
        ['turnbuckle TB1 { cracked: yes }', ['error TB1']], ['turnbuckle TB1 { pinned: no }', []],
        ['stay W1 { terminal: cracked }\nterminal T1 { state: cracked  of: W1 }', ['error T1 W1']], ['stay W1 { terminal: cracked  broken-strands: 2 }\nterminal T1 { state: cracked  of: W1 }', ['error T1 W1', 'error W1']],
    ])('%s', (text, expected) => {
        expect(summary(id, `${text}\n`)).toEqual(expected);
    });
    it('keeps her in her berth, and is quieter about rust', () => {
        expect(urgencies(id, 'stay W1 { broken-strands: 1 }\n')).toEqual(['before-departure']);
        expect(urgencies(id, 'stay W1 { rust-streak: yes }\n')).toEqual(['within-days']);
        expect(urgencies(id, 'survey "1" pre-purchase {}\nstay W1 { rust-streak: yes }\n')).toEqual(['before-completion']);
    });
    it('names the wire that a terminal ends', () => {
        const text = 'stay W1 "Backstay"\nshroud W2\nterminal T1 { state: bent }\n';
        expect(correctionsIn(id, text)).toEqual(['Record T1 as ending Backstay (W1)', 'Record T1 as ending W2']);
        expect(raisedBy(id, corrected(text, id, 'Record T1 as ending Backstay (W1)'))[0]?.message).toContain('T1, which ends Backstay (W1): bent.');
    });
});
