/** An opening out of use below the waterline that is left open, plugged in its hose, or only shut at its valve. */
import { nameOf, wordOf, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { floodCritical } from '../lies.js';
import { admits, depthM, depthText, inflowOf, isOutOfUse, pathsFrom, plumbedOpenings, type Path } from './paths.js';

type State = 'open' | 'plug-in-hose' | 'valve-shut';

const stateText: Readonly<Record<State, string>> = {
    open: 'stands open inside', 'plug-in-hose': 'is closed by a plug in its hose', 'valve-shut': 'is closed by its shut valve alone',
};

export const abandonedOpeningNotClosed = defineCheck({
    id: 'abandoned-opening-not-closed',
    group: 'openings',
    severity: 'error',
    title: 'Opening out of use is not closed off',
    why: 'Nobody watches what nobody uses: a hose that lies open, a plug that works loose or a valve that is knocked lets the sea in.',
    needs: ['hull opening: below-waterline', 'its run and how the run ends', 'in-use and closure where it is out of use'],
    computes: 'A fault where an opening below the waterline has a run that ends open, or is out of use and its closure is open, a plug in the hose, or the shut valve alone. What it would admit: Q = C A √(2 g h), C 0.6, with the narrowest bore of the run.',
    sources: [{ text: 'openings out of use are removed and made good, or capped meanwhile', provenance: 'practice' }, { text: 'inflow through a sharp-edged opening', provenance: 'computed' }],
    limits: ['A threaded cap or a blank counts as closed and stays in the register of openings; the check does not say how long a cap may serve.', 'An opening not recorded as out of use is judged only where its run ends open.'],
    examples: [{
        name: 'hose left hanging open',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore }
through-hull TH1 "Old drain" { size: 1 in  metal: gunmetal  below-waterline: 12 in }
seacock SC1 { size: 1 in  metal: gunmetal  pattern: flanged-seacock }
hose H1 { bore: 25 mm }
run R1 "Old drain": TH1 -> SC1 -> H1 -> open
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore }
through-hull TH1 "Old drain" { size: 1 in  metal: gunmetal  below-waterline: 12 in }
seacock SC1 { size: 1 in  metal: gunmetal  pattern: flanged-seacock }
hose H1 { bore: 25 mm }
run R1 "Old drain": TH1 -> SC1 -> H1 -> capped
`,
        correction: 'Record R1 as capped',
    }, {
        name: 'closed by its valve alone',
        bad: `through-hull TH1 { bore: 38 mm  below-waterline: 300 mm  in-use: no  closure: valve-shut }
seacock SC1 { pattern: flanged-seacock }
run R1: TH1 -> SC1
`,
        fixed: `through-hull TH1 { bore: 38 mm  below-waterline: 300 mm  in-use: no  closure: capped }
seacock SC1 { pattern: flanged-seacock }
run R1: TH1 -> SC1
`,
        correction: 'Record TH1 as capped',
    }],
    silent: [
        { name: 'capped', text: 'through-hull TH1 { size: 1 in  below-waterline: 12 in }\nseacock SC1 { pattern: flanged-seacock }\nrun R1: TH1 -> SC1 -> capped\n' },
        { name: 'glassed over', text: 'through-hull TH1 { size: 1 in  below-waterline: 12 in  in-use: no  closure: glassed-over }\n' },
        { name: 'above the waterline', text: 'through-hull TH1 { size: 1 in  above-waterline: 12 in }\nhose H1 { bore: 25 mm }\nrun R1: TH1 -> H1 -> open\n' },
        { name: 'in use', text: 'through-hull TH1 { size: 1 in  below-waterline: 12 in }\nseacock SC1 { pattern: flanged-seacock }\nsink S1\nrun R1: TH1 -> SC1 -> S1\n' },
    ],
    run(record, raise) {
        for (const opening of plumbedOpenings(record)) {
            for (const path of pathsFrom(record, opening)) {
                const state = stateOf(path);
                if (path.isClosed || !state) {
                    if (!path.isClosed && isOutOfUse(path) && depthM(opening) !== undefined && !opening.facts.has('closure')) {
                        raise({ components: [opening], at: opening.idSpan, severity: 'hint', message: `${nameOf(opening)} is out of use; record its closure (capped, blanked, valve-shut …) to tell whether it is closed off.` });
                    }
                } else if (depthM(opening) !== undefined) {
                    raise(problem(record, path, state));
                } else if (!opening.facts.has('below-waterline') && !opening.facts.has('above-waterline')) {
                    raise({ components: [opening], at: opening.idSpan, severity: 'hint', message: `${nameOf(opening)} ${stateText[state]}; record below-waterline or above-waterline to tell whether the sea can come in by it.` });
                }
            }
        }
    },
});

function stateOf(path: Path): State | undefined {
    const closure = wordOf(path.opening, 'closure');
    if (closure === 'plug-in-hose' || (closure === 'valve-shut' && isOutOfUse(path))) {
        return closure;
    }
    return path.run?.end === 'open' || (closure === 'open' && isOutOfUse(path)) ? 'open' : undefined;
}

function problem(record: SurveyRecord, path: Path, state: State): Raised {
    const { opening, run, valve } = path;
    const inflow = inflowOf(record, path);
    const parts = run ? run.components : [opening];
    const corrections: Correction[] = [
        ...(run && run.end === 'open' ? [
            { kind: 'end-run', title: `Record ${run.id} as capped`, run, end: 'capped' } as const, { kind: 'end-run', title: `Record ${run.id} as blanked`, run, end: 'blanked' } as const,
        ] : [
            { kind: 'set-fact', title: `Record ${opening.id} as capped`, component: opening, property: 'closure', value: 'capped' } as const,
            { kind: 'set-fact', title: `Record ${opening.id} as blanked`, component: opening, property: 'closure', value: 'blanked' } as const,
        ]),
    ];
    const hasNoValve = !valve;
    return {
        components: [opening, ...parts.filter(c => c !== opening)],
        at: run && run.end === 'open' ? run.idSpan : opening.facts.get('closure')?.span ?? opening.idSpan,
        message: `${nameOf(opening)}, ${depthText(opening)}, ${stateText[state]}.${admits(record, path, 'Open, it')} Remove the fitting and make good the hull; cap it meanwhile.`,
        figures: inflow?.figures ?? {},
        related: [{ message: `${opening.id} is recorded here`, span: opening.idSpan }],
        corrections,
        draft: {
            title: `Disused opening ${opening.id} is not closed off`,
            urgency: state === 'valve-shut' && !hasNoValve ? 'next-haul-out' : floodCritical(record),
            seen: `${opening.title ?? 'The opening'} (${opening.id}), {${opening.id}.below-waterline} below the waterline, is out of use and ${stateText[state]}.`,
            because: `Nothing but ${valve ? `the valve ${valve.id}` : 'chance'} keeps the sea out.${inflow ? ` Open, it would admit ${inflow.text}.` : ''}`,
            recommend: 'Remove the fitting and make good the hull to its full thickness. Until that is done, close it with a threaded cap on the tail of a shut valve.',
            cites: [['Good practice']],
        },
    };
}
