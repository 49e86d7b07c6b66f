/** A valve screwed on its through-hull with neither flange nor block to take a blow. */
import { flagOf, nameOf, siOf, wordOf, type Component } from '../../record/model.js';
import { openingBoreM } from '../../record/computed.js';
import { computedBoth } from '../phrasing.js';
import { defineCheck, type Raised } from '../contract.js';
import { depthM, depthText, pathsFrom, plumbedOpenings } from './paths.js';

/** 500 lbf for 30 s at the inboard end: ABYC H-27, read second-hand. */
const pushN = 2224;
const largeBoreM = 0.0254;
const thinHullM = 0.01;

export const valveNotFlanged = defineCheck({
    id: 'valve-not-flanged',
    group: 'openings',
    severity: 'error',
    title: 'Valve hangs on its through-hull alone',
    why: 'The assembly should stand 500 lbf (2224 N) sideways for 30 s and still stop water; a valve hanging on a thread may break off under a foot.',
    needs: ['valve: flanged, or pattern flanged-seacock; push-test', 'hull opening: below-waterline, backing, size or bore, hull-thickness'],
    computes: 'A fault where a valve below the waterline is recorded as not flanged, or stands on no backing block at a bore of 1 in and more or in a hull under 10 mm, and no push test of 500 lbf is recorded.',
    sources: [{ text: '500 lbf static for 30 s on the inboard end', standard: 'ABYC H-27', provenance: 'secondary' }, { text: 'block by bore and hull thickness', provenance: 'practice' }],
    limits: ['Where neither flange nor backing is recorded, nothing is said.', 'A valve screwed on an opening that is itself flanged and fastened to the hull counts as flanged; a ball, gate or globe valve on one recorded as not flanged counts as without a flange.', 'A loose block counts as a block.'],
    examples: [{
        name: 'in-line valve without a flange',
        bad: `through-hull TH1 { size: 1-1/2 in  metal: gunmetal  below-waterline: 1 ft }
valve SV1 { size: 1-1/2 in  metal: gunmetal  pattern: ball-valve  flanged: no }
sink S1
run R1: TH1 -> SV1 -> S1
`,
        fixed: `through-hull TH1 { size: 1-1/2 in  metal: gunmetal  below-waterline: 1 ft }
valve SV1 { size: 1-1/2 in  metal: gunmetal  pattern: ball-valve  flanged: yes }
sink S1
run R1: TH1 -> SV1 -> S1
`,
        correction: 'Record SV1 as flanged',
    }],
    silent: [
        { name: 'stood the push test', text: 'through-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft }\nvalve SV1 { pattern: ball-valve  flanged: no  push-test: 500 lbf }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n' },
        { name: 'on a flanged base', text: 'through-hull TH1 { size: 1-1/2 in  below-waterline: 1 ft  flange: yes  backing: bonded-block }\nvalve SV1 { pattern: ball-valve  flanged: no }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n' },
        { name: 'above the waterline', text: 'through-hull TH1 { size: 1-1/2 in  above-waterline: 1 ft }\nvalve SV1 { pattern: ball-valve  flanged: no }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n' },
        { name: 'small bore on thick hull', text: 'through-hull TH1 { size: 3/4 in  below-waterline: 1 ft  backing: none  hull-thickness: 20 mm }\nvalve SV1 { pattern: ball-valve  flanged: yes }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n' },
    ],
    run(record, raise) {
        const seen = new Set<Component>();
        for (const opening of plumbedOpenings(record)) {
            if (depthM(opening) === undefined) {
                continue;
            }
            for (const path of pathsFrom(record, opening)) {
                const { valve } = path;
                if (!valve || path.isClosed || seen.has(valve) || (siOf(valve, 'push-test') ?? 0) >= pushN - 1) {
                    continue;
                }
                seen.add(valve);
                if (hasNoFlange(valve, opening)) {
                    raise(problem(opening, valve, 'flange'));
                } else if (wordOf(opening, 'backing') === 'none') {
                    const bore = openingBoreM(opening);
                    const thickness = siOf(opening, 'hull-thickness');
                    if ((bore ?? 0) >= largeBoreM - 1e-6 || (thickness ?? thinHullM) < thinHullM - 1e-6) {
                        raise(problem(opening, valve, 'block'));
                    } else if (bore === undefined || thickness === undefined) {
                        raise({ components: [valve, opening], at: opening.facts.get('backing')?.span ?? opening.idSpan, severity: 'hint', message: `${nameOf(valve)} stands at ${opening.id} on no backing block; record ${bore === undefined ? 'size' : 'hull-thickness'} of ${opening.id} to tell whether one is wanted.` });
                    }
                }
            }
        }
    },
});

const unflangedPatterns = new Set(['ball-valve', 'gate-valve', 'globe-valve']);

/** Recorded as without a flange: at the valve, or at the opening under a valve of a pattern that has none of its own. */
function hasNoFlange(valve: Component, opening: Component): boolean {
    const pattern = wordOf(valve, 'pattern') ?? '';
    const own = flagOf(valve, 'flanged');
    return pattern !== 'flanged-seacock' && (own === false ? flagOf(opening, 'flange') !== true : own === undefined && flagOf(opening, 'flange') === false && unflangedPatterns.has(pattern));
}

function problem(opening: Component, valve: Component, lacks: 'flange' | 'block'): Raised {
    const what = lacks === 'flange' ? `hangs on ${opening.id} by its thread, with no flange` : `stands at ${opening.id} on no backing block`;
    return {
        components: [valve, opening],
        at: (lacks === 'flange' ? valve.facts.get('flanged') ?? opening.facts.get('flange') : opening.facts.get('backing'))?.span ?? valve.idSpan,
        message: `${nameOf(valve)}, ${depthText(opening)}, ${what}. Such a valve should stand ${computedBoth(pushN, 'force')} sideways for 30 s and still stop water; ${lacks === 'flange' ? 'fit a flanged seacock on a bonded block' : 'bed it on a bonded block'}, or record its push test.`,
        figures: { required: { value: pushN, unit: 'N' } },
        corrections: [
            ...(lacks === 'flange' ? [{ kind: 'set-fact', title: `Record ${valve.id} as flanged`, component: valve, property: 'flanged', value: 'yes' } as const]
                : [{ kind: 'set-fact', title: `Record a bonded block at ${opening.id}`, component: opening, property: 'backing', value: 'bonded-block' } as const]),
            { kind: 'set-fact', title: `Record that ${valve.id} stood a push of 500 lbf`, component: valve, property: 'push-test', value: '500 lbf' },
        ],
        draft: {
            title: `${valve.title ?? valve.id} ${lacks === 'flange' ? 'has no flange' : 'has no backing block'}`,
            urgency: 'next-haul-out',
            seen: `${valve.title ?? 'The valve'} (${valve.id}) ${what}.`,
            because: 'A valve that the hull does not carry may break off when it is stepped on or struck; the assembly should stand 500 lbf (2224 N) for 30 s.',
            recommend: lacks === 'flange' ? 'Fit a flanged seacock on a bonded block.' : 'Bed the valve on a block bonded to the hull and fasten its flange through it.',
            cites: [['ABYC H-27']],
        },
    };
}
