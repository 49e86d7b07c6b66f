import { describe, expect, it } from 'vitest';
import { corrected, correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'beacon-not-right';
const on = (day: string) => `survey "1" pre-purchase { attended ${day} afloat "Berth" }\nvessel "Marram" {}\n`;

describe(id, () => {
    it.each([
        ['battery-expires: 2026-10', '2026-10-31', []], ['battery-expires: 2026-10', '2026-11-01', ['error B1']], ['registration-expires: 2026-10', '2026-10-31', []], ['registration-expires: 2026-10', '2026-11-01', ['error B1']],
        ['registered: no', '2026-10-06', ['error B1']], ['registered: yes', '2026-10-06', []], ['registered-boat: "marram"', '2026-10-06', []], ['registered-boat: "Sandpiper"', '2026-10-06', ['error B1']],
        ['registered-boat: "Sandpiper"  registered: no', '2026-10-06', ['error B1']], ['code: "A1"  code-on-papers: "a 1"', '2026-10-06', []], ['code: "A1"  code-on-papers: "A2"', '2026-10-06', ['error B1']], ['code: "A1"', '2026-10-06', []], ['code-on-papers: "A1"', '2026-10-06', []],
        ['works: no', '2026-10-06', ['error B1']], ['works: not-tried', '2026-10-06', []], ['', '2026-10-06', []],
    ] as const)('%s, attended %s', (facts, day, expected) => {
        expect(summary(id, `${on(day)}beacon B1 { ${facts} }\n`)).toEqual(expected);
    });
    it('tells all that is wrong in one problem', () => {
        const [problem, ...more] = raisedBy(id, `${on('2026-10-06')}beacon B1 { battery-expires: 2020-01  registered: no  code: "A1"  code-on-papers: "A2" }\n`);
        expect(more).toEqual([]);
        expect(problem?.message).toMatch(/battery marked 2020-01, is not registered to this vessel and owner and is coded A1/);
    });
    it('asks when she was attended', () => {
        expect(summary(id, 'beacon B1 { battery-expires: 2020-01 }\n')).toEqual(['hint B1']);
    });
    it('offers the code and the registration', () => {
        const text = `${on('2026-10-06')}beacon B1 { registered: no  code: "A1"  code-on-papers: "A2" }\n`;
        expect(correctionsIn(id, text)).toEqual(['Copy the code of B1 to its papers', 'Record B1 as registered']);
        expect(raisedBy(id, corrected(corrected(text, id, 'Copy the code of B1 to its papers'), id, 'Record B1 as registered'))).toEqual([]);
    });
    it('is due before departure offshore', () => {
        expect(urgencies(id, 'vessel "M" { used-on: offshore }\nbeacon B1 { registered: no }\n')).toEqual(['before-departure']);
        expect(urgencies(id, 'vessel "M" { used-on: inland }\nbeacon B1 { registered: no }\n')).toEqual(['within-days']);
    });
});
