/** An opening at or below the waterline with nothing that can stop the water when its hose fails. */
import { flagOf, isKind, nameOf, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { floodCritical } from '../lies.js';
import { admits, depthM, depthText, inflowInProse, inflowOf, openStateOf, pathsFrom, plumbedOpenings, type Path } from './paths.js';

export const openingWithoutValve = defineCheck({
    id: 'opening-without-valve',
    group: 'openings',
    severity: 'error',
    title: 'Opening below the waterline has no valve',
    why: 'Nothing stops the water when the hose fails.',
    needs: ['hull opening: below-waterline, or below-heeled-waterline', 'its run', 'standpipe, where one takes the place of a valve'],
    computes: 'A fault where the run from an opening below the waterline holds no valve, the opening is not closed off, and no welded standpipe rises from it above the heeled waterline. Between the waterline at rest and heeled, a fault unless the hose is reinforced.',
    sources: [
        { text: 'a seacock at every opening below the greatest heeled waterline', standard: 'ABYC H-27', clause: '27.5.1', provenance: 'secondary' },
        { text: 'positive means of closing near the hull, on inspected vessels', standard: '46 CFR 171.119', provenance: 'published' },
    ],
    limits: [
        'A check valve or a diverter does not count as a valve; nor does one that stands behind a hose, which may fail before it.',
        'A run is read from the hull inward, whichever way it is written.',
        'An opening whose run is not recorded from the hull inward is not judged.',
        'The heeled waterline is not computed: below-heeled-waterline is as recorded.',
        'The standards named leave engine exhausts out, so an exhaust outlet is not judged.',
        'A run left open is judged by abandoned-opening-not-closed.',
    ],
    examples: [{
        name: 'hose straight on the through-hull',
        bad: `through-hull TH1 "Sink drain" { size: 1 in  metal: gunmetal  below-waterline: 6 in }
hose H1 { bore: 25 mm }
sink S1
run R1: TH1 -> H1 -> S1
`,
        fixed: `through-hull TH1 "Sink drain" { size: 1 in  metal: gunmetal  below-waterline: 6 in }
seacock SC1 { metal: gunmetal  pattern: flanged-seacock }
hose H1 { bore: 25 mm }
sink S1
run R1: TH1 -> SC1 -> H1 -> S1
`,
        correction: 'Insert a seacock after TH1',
    }],
    silent: [
        { name: 'above the waterline', text: 'through-hull TH1 { size: 1 in  above-waterline: 6 in }\nhose H1 { bore: 25 mm }\nsink S1\nrun R1: TH1 -> H1 -> S1\n' },
        { name: 'welded standpipe', text: 'through-hull TH1 { size: 1 in  below-waterline: 6 in  standpipe: yes }\nhose H1 { bore: 25 mm }\nsink S1\nrun R1: TH1 -> H1 -> S1\n' },
        { name: 'capped', text: 'through-hull TH1 { size: 1 in  below-waterline: 6 in }\nrun R1: TH1 -> capped\n' },
        { name: 'underwater exhaust', text: 'through-hull TH1 { size: 3 in  below-waterline: 6 in }\nexhaust-hose H1 { bore: 75 mm }\nmuffler MF1\nrun R1 { service: exhaust }: TH1 -> H1 -> MF1\n' },
        { name: 'below the heeled waterline, reinforced hose', text: 'through-hull TH1 { size: 1 in  above-waterline: 4 in  below-heeled-waterline: yes }\nhose H1 { bore: 25 mm  reinforcement: wire }\nsink S1\nrun R1: TH1 -> H1 -> S1\n' },
        { name: 'run not recorded', text: 'through-hull TH1 { size: 1 in  below-waterline: 6 in }\n' },
    ],
    run(record, raise) {
        for (const opening of plumbedOpenings(record)) {
            const isBelow = depthM(opening) !== undefined;
            const isBetween = !isBelow && (flagOf(opening, 'below-heeled-waterline') === true || siOf(opening, 'below-waterline') === 0);
            if (!isBelow && !isBetween) {
                continue;
            }
            for (const path of pathsFrom(record, opening)) {
                const raised = needsValve(record, path) ? judge(record, path, isBelow) : undefined;
                if (raised) {
                    raise(raised);
                }
            }
        }
    },
});

/** Whether the path lacks a valve, and nothing else takes its place or reports the same. */
function needsValve(record: SurveyRecord, path: Path): boolean {
    const { opening, run } = path;
    const rise = siOf(opening, 'standpipe-above-waterline');
    const hasStandpipe = flagOf(opening, 'standpipe') === true && (rise === undefined || rise > 0);
    const isExhaust = (run && wordOf(run, 'service')) === 'exhaust' || wordOf(opening, 'service') === 'exhaust';
    const isReported = depthM(opening) !== undefined && openStateOf(path) !== undefined;
    return run !== undefined && path.parts.length > 1 && (!path.valve || hoseBefore(record, path) !== undefined) && !path.isClosed && !hasStandpipe && !isExhaust && !isReported;
}

/** The hose that stands between the hull and the first valve: when it fails, the valve stops nothing. */
function hoseBefore(record: SurveyRecord, { parts, valve }: Path): Component | undefined {
    return valve && parts.slice(0, parts.indexOf(valve)).find(c => isKind(record, c, 'hose'));
}

function judge(record: SurveyRecord, path: Path, isBelow: boolean): Raised | undefined {
    const { opening } = path;
    if (isBelow) {
        return problem(record, path, opening, true);
    }
    const hoses = path.parts.filter(c => isKind(record, c, 'hose'));
    if (hoses.some(hose => wordOf(hose, 'reinforcement') === 'none')) {
        return problem(record, path, opening, false);
    }
    const unknown = hoses.find(hose => wordOf(hose, 'reinforcement') === undefined);
    return unknown && {
        components: [opening, unknown], at: unknown.idSpan, severity: 'hint',
        message: `${nameOf(opening)} goes under when she heels and has no valve; record the reinforcement of ${unknown.id} to tell whether that will do.`,
    };
}

function problem(record: SurveyRecord, path: Path, opening: Component, isBelow: boolean): Raised {
    const where = isBelow ? depthText(opening) : 'below the waterline when she heels';
    const inflow = inflowOf(record, path);
    const first = path.run?.joints.find(joint => joint.from === opening || joint.to === opening);
    const hose = hoseBefore(record, path);
    const valve = hose && path.valve;
    const lacks = hose && valve ? `has its first valve (${valve.id}) only behind hose ${hose.id}` : `has no valve in ${path.run?.title ?? `its run ${path.run?.id ?? ''}`}`;
    return {
        components: [opening], at: opening.idSpan,
        message: `${nameOf(opening)}, ${where}, ${lacks}: nothing stops the water when ${hose ? 'that hose' : 'its hose'} fails.${admits(record, path, 'It then')} ${hose ? 'Fit a seacock at the hull' : 'Fit a seacock'}.`,
        figures: inflow?.figures ?? {},
        corrections: [
            ...(first ? [{ kind: 'insert-in-run', title: `Insert a seacock after ${opening.id}`, joint: first, componentKind: 'seacock', idStem: 'SV', facts: [['pattern', 'flanged-seacock']] } as const] : []),
            // A pipe recorded as not rising above the heeled waterline would not clear it.
            ...(opening.facts.has('standpipe-above-waterline') ? [] : [{ kind: 'set-fact', title: `Record a welded standpipe at ${opening.id}`, component: opening, property: 'standpipe', value: 'yes' } as const]),
        ],
        draft: {
            title: hose ? `No valve at the hull at ${opening.title ?? opening.id}` : `No valve at ${opening.title ?? opening.id}`,
            urgency: isBelow ? floodCritical(record) : 'next-haul-out',
            seen: `${opening.title ?? 'The opening'} (${opening.id}), ${isBelow ? `{${opening.id}.below-waterline} below the waterline` : 'which goes under when she heels'}, ${hose ? lacks : 'has no valve'}.`,
            because: `Nothing stops the water when ${hose ? `hose ${hose.id}` : 'the hose'} fails.${inflow ? ` It would then admit ${inflowInProse(record, path, inflow)}.` : ''}`,
            recommend: 'Fit a flanged seacock on a bonded block, with a lever that shows whether it is open.',
            cites: [['ABYC H-27', '27.5.1']],
        },
    };
}
