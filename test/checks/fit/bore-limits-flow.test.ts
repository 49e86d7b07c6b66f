import { describe, expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'bore-limits-flow';
const discharge = (bore: string, pump: string) => `through-hull TH1\nhose H1 { bore: ${bore} }\nbilge-pump BP1 { ${pump} }\nrun R1 { service: bilge-discharge }: TH1 -> H1 -> BP1\n`;

describe('speed', () => {
    // v = 0.4085 × gpm / bore² in ft/s: 1 in passes 24.5 gpm at 10 ft/s and 14.7 at 6.
    it.each([['1 in', 'rated-flow: 24.4 gpm', 0], ['1 in', 'rated-flow: 24.6 gpm', 1], ['25.4 mm', 'rated-flow: 1476 gph', 1], ['1 in', 'rated-flow: 40 gpm  real-flow: 20 gpm', 0]])(
        'discharge of %s, %s: %i', (bore, pump, count) => {
            expect(raisedBy(id, discharge(bore, pump))).toHaveLength(count);
        });

    it('is held to 6 ft/s before the pump and to 10 behind it', () => {
        const run = (before: string, behind: string) => `through-hull TH1\nhose H1 { bore: ${before} }\nraw-water-pump P1 { real-flow: 20 gpm }\nhose H2 { bore: ${behind} }\nheat-exchanger X1\n`
            + 'run R1 { service: raw-water-cooling }: TH1 -> H1 -> P1 -> H2 -> X1\n';
        expect(summary(id, run('1 in', '1-1/2 in'))).toEqual(['warning H1 P1']);
        expect(summary(id, run('1-1/2 in', '1 in'))).toEqual([]);
    });

    it('gives it in both systems', () => {
        expect(raisedBy(id, discharge('3/4 in', 'rated-flow: 2000 gph'))[0]?.message).toContain('24.2 ft/s (7.4 m/s)');
    });
});

// A share of 0.9 of the area is 36.05 mm on 38; 12 mm on 13 is less, and still a push fit.
it.each([['36.1 mm', '38 mm', 0], ['36 mm', '38 mm', 1], ['12 mm', '13 mm', 0]])('area of %s against a port of %s: %i', (bore, port, count) => {
    expect(raisedBy(id, discharge(bore, `port: ${port}`))).toHaveLength(count);
});

it('takes the narrower end of a hose of two bores, and leaves adapters alone', () => {
    expect(summary(id, 'through-hull TH1\nhose H1 { ends: 38 mm, 19 mm }\nbilge-pump BP1 { rated-flow: 2000 gph }\nrun R1 { service: bilge-discharge }: TH1 -> H1 -> BP1\n')).toEqual(['warning H1 BP1']);
    expect(summary(id, 'through-hull TH1\nstepped-adapter A1 { ends: 38 mm, 19 mm }\nbilge-pump BP1 { rated-flow: 2000 gph }\nrun R1 { service: bilge-discharge }: TH1 -> A1 -> BP1\n')).toEqual([]);
});

it('is due in 30 days for a bilge pump, in upkeep for others', () => {
    expect(urgencies(id, discharge('3/4 in', 'rated-flow: 2000 gph'))).toEqual(['within-days']);
    expect(urgencies(id, 'through-hull TH1\nhose H1 { bore: 3/4 in }\nraw-water-pump P1 { real-flow: 20 gpm }\nrun R1 { service: raw-water-cooling }: TH1 -> H1 -> P1\n')).toEqual(['in-upkeep']);
});
