/** The disused heads discharge of the language's first example: three troubles, each told once, each answered by its own name. */
import { expect, it } from 'vitest';
import { analyseText, faultsOf, idsOf, judged, raisedBy, summary } from '../check-text.js';

const skin = `survey "1" pre-purchase { attended 2026-10-06 ashore }
vessel "Marram" { water: salt }
through-hull TH4 "Old heads discharge" { size: 1-1/2 in  metal: bronze  below-waterline: 14 in }
valve SV4 { size: 1-1/2 in  metal: brass  pattern: gate-valve }
hose H9 { bore: 38 mm  length: 300 mm  reinforcement: wire }
run DIS4 "Heads discharge, disused": TH4 -> SV4 -> H9 -> open
`;
const finding = `finding F3 "Disused discharge left open-ended below the waterline" on TH4, SV4, H9 {
    answers: abandoned-opening-not-closed, valve-type-unsuitable, brass-below-waterline
    urgency: before-launch
    seen: "The hose is cut {H9.length} inboard of the valve and hangs open."
    because: "A {TH4.size} opening {TH4.below-waterline} down admits about {TH4.flooding-rate}."
    recommend: "Remove the fitting and make good the hull."
}
`;

it('raises what is wrong, each once', () => {
    expect(faultsOf(skin)).toEqual([]);
    expect(idsOf(judged(analyseText(skin).problems))).toEqual(['abandoned-opening-not-closed', 'brass-below-waterline', 'valve-or-fitting-unsuitable']);
    expect(summary('abandoned-opening-not-closed', skin)).toEqual(['error TH4 SV4 H9']);
    expect(summary('valve-or-fitting-unsuitable', skin)).toEqual(['error SV4 TH4']);
    expect(summary('brass-below-waterline', skin)).toEqual(['error SV4']);
    expect(summary('flooding-beats-pumps', skin)).toEqual([]);
});

it('prints what the opening admits, with bore, depth and coefficient', () => {
    const [problem] = raisedBy('abandoned-opening-not-closed', skin);
    expect(problem?.message).toContain('14 in (356 mm) below the waterline');
    expect(problem?.message).toContain('L/min');
    expect(problem?.message).toContain('gpm');
    expect(problem?.message).toContain('coefficient 0.6');
    expect(problem?.figures?.['depth']?.value).toBeCloseTo(355.6, 1);
    expect(problem?.figures?.['bore']).toEqual({ value: 38, unit: 'mm' });
});

it('is answered, the earlier name of the valve check among the answers', () => {
    const answered = analyseText(skin + finding);
    expect(answered.gaps.filter(gap => gap.code === 'stale-answer')).toEqual([]);
    expect(judged(answered.problems).filter(problem => problem.check.group === 'openings' || problem.check.group === 'metals').map(problem => problem.answeredBy)).toEqual(['F3', 'F3', 'F3']);
});
