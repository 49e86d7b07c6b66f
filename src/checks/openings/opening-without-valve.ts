/** An opening at or below the waterline with nothing that can stop the water when its hose fails. */
import { flagOf, isKind, nameOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck } from '../contract.js';
import { floodCritical } from '../lies.js';
import { admits, depthM, depthText, inflowOf, pathsFrom, plumbedOpenings, type Path } from './paths.js';

export const openingWithoutValve = defineCheck({
    id: 'opening-without-valve',
    group: 'openings',
    severity: 'error',
    title: 'Opening below the waterline has no valve',
    why: 'Nothing stops the water when the hose fails.',
    needs: ['hull opening: below-waterline, or below-heeled-waterline', 'its run', 'standpipe, where one takes the place of a valve'],
    computes: 'A fault where the run from an opening below the waterline holds no valve, the opening is not closed off, and no welded standpipe is recorded. Between the waterline at rest and heeled, a fault unless the hose is reinforced.',
    sources: [
        { text: 'a seacock at every opening below the greatest heeled waterline', standard: 'ABYC H-27', clause: '27.5.1', provenance: 'secondary' },
        { text: 'positive means of closing near the hull, on inspected vessels', standard: '46 CFR 171.119', provenance: 'published' },
    ],
    limits: ['A check valve does not count as a valve.', 'An opening whose run is not recorded is not judged.', 'The heeled waterline is not computed: below-heeled-waterline is as recorded.'],
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
        { name: 'run not recorded', text: 'through-hull TH1 { size: 1 in  below-waterline: 6 in }\n' },
    ],
    run(record, raise) {
        for (const opening of plumbedOpenings(record)) {
            const isBelow = depthM(opening) !== undefined;
            const isBetween = !isBelow && flagOf(opening, 'below-heeled-waterline') === true;
            if (!isBelow && !isBetween) {
                continue;
            }
            for (const path of pathsFrom(record, opening)) {
                if (!path.run || path.run.components.length < 2 || path.valve || path.isClosed || flagOf(opening, 'standpipe') === true) {
                    continue;
                }
                if (isBetween) {
                    const hose = path.run.components.find(c => isKind(record, c, 'hose'));
                    if (!hose) {
                        continue;
                    }
                    const reinforcement = wordOf(hose, 'reinforcement');
                    if (reinforcement === undefined) {
                        raise({ components: [opening, hose], at: hose.idSpan, severity: 'hint', message: `${nameOf(opening)} goes under when she heels and has no valve; record the reinforcement of ${hose.id} to tell whether that will do.` });
                        continue;
                    }
                    if (reinforcement !== 'none') {
                        continue;
                    }
                }
                raise(problem(record, path, opening, isBelow));
            }
        }
    },
});

function problem(record: SurveyRecord, path: Path, opening: Component, isBelow: boolean) {
    const where = isBelow ? depthText(opening) : 'below the waterline when she heels';
    const inflow = inflowOf(record, path);
    const first = path.run?.joints.find(joint => joint.from === opening);
    return {
        components: [opening], at: opening.idSpan,
        message: `${nameOf(opening)}, ${where}, has no valve in ${path.run?.title ?? `its run ${path.run?.id ?? ''}`}: nothing stops the water when its hose fails.${admits(record, path, 'It then')} Fit a seacock.`,
        figures: inflow?.figures ?? {},
        corrections: [
            ...(first ? [{ kind: 'insert-in-run' as const, title: `Insert a seacock after ${opening.id}`, joint: first, componentKind: 'seacock', idStem: 'SV', facts: [['pattern', 'flanged-seacock']] as const }] : []),
            { kind: 'set-fact' as const, title: `Record a welded standpipe at ${opening.id}`, component: opening, property: 'standpipe', value: 'yes' },
        ],
        draft: {
            title: `No valve at ${opening.title ?? opening.id}`,
            urgency: isBelow ? floodCritical(record) : 'next-haul-out' as const,
            seen: `${opening.title ?? 'The opening'} (${opening.id}), ${isBelow ? `{${opening.id}.below-waterline} below the waterline` : 'which goes under when she heels'}, has no valve.`,
            because: `Nothing stops the water when the hose fails.${inflow ? ` It would then admit ${inflow.text}.` : ''}`,
            recommend: 'Fit a flanged seacock on a bonded block, with a lever that shows whether it is open.',
            cites: [['ABYC H-27', '27.5.1']] as const,
        },
    };
}
