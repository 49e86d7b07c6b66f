/** An opening out of use below the waterline that is left open, plugged in its hose, or only shut at its valve. */
import { nameOf, wordOf, yardstickWord, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { floodCritical } from '../lies.js';
import { admits, depthM, depthText, inflowInProse, inflowOf, isOutOfUse, openStateOf, pathsFrom, plumbedOpenings, type OpenState, type Path } from './paths.js';

const stateText: Readonly<Record<OpenState, string>> = {
    open: 'stands open inside', 'plug-in-hose': 'is closed by a plug in its hose', 'valve-shut': 'is closed by its shut valve alone',
};

export const abandonedOpeningNotClosed = defineCheck({
    id: 'abandoned-opening-not-closed',
    group: 'openings',
    severity: 'error',
    title: 'Opening out of use is not closed off',
    why: 'Nobody watches what nobody uses: a hose that lies open, a plug that works loose or a valve that is knocked lets the sea in.',
    needs: ['hull opening: below-waterline', 'its run and how the run ends', 'in-use and closure where it is out of use'],
    computes: 'A fault where an opening below the waterline has a run that ends open, is closed by a plug in its hose, or is out of use and its closure is open or the shut valve alone. Advice where a cap stands on a valve recorded as open. What it would admit: Q = C A √(2 g h), C 0.6, with the narrowest bore of the run.',
    sources: [{ text: 'openings out of use are removed and made good, or capped meanwhile', provenance: 'practice' }, { text: 'inflow through a sharp-edged opening', provenance: 'computed' }],
    yardsticks: ['flow-coefficient', 'shut-valve-on-unused'],
    limits: [
        'A threaded cap or a blank counts as closed and stays in the register of openings, unless the firm counts a shut valve as never closing (yardstick shut-valve-on-unused); the check does not say how long a cap may serve.',
        'An opening not recorded as out of use is judged only where its run ends open or a plug is recorded.',
        'A cockpit or deck drain that ends open is taken to end outside the living space, unless it is out of use.',
        'A run is read from the hull inward, whichever way it is written; one branching at a tee is not followed.',
    ],
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
        { name: 'blank in the run', text: 'through-hull TH1 { size: 1 in  below-waterline: 12 in  in-use: no }\nseacock SC1 { pattern: flanged-seacock }\nblank B1\nrun R1: TH1 -> SC1 -> B1\n' },
        { name: 'capped, its valve shut', text: 'through-hull TH1 { size: 1 in  below-waterline: 12 in  in-use: no  closure: capped }\nseacock SC1 { pattern: flanged-seacock  position: shut }\nrun R1: TH1 -> SC1 -> capped\n' },
        { name: 'a firm that counts a shut valve as closed', text: 'yardsticks { shut-valve-on-unused: closed }\nthrough-hull TH1 { bore: 38 mm  below-waterline: 300 mm  in-use: no  closure: valve-shut }\nseacock SC1 { pattern: flanged-seacock }\nrun R1: TH1 -> SC1\n' },
        { name: 'cockpit drain in use', text: 'through-hull TH1 { size: 1 in  below-waterline: 4 in }\nseacock SC1 { pattern: flanged-seacock }\nhose H1 { bore: 25 mm }\nrun R1 { service: cockpit-drain }: TH1 -> SC1 -> H1 -> open\n' },
        { name: 'in use', text: 'through-hull TH1 { size: 1 in  below-waterline: 12 in }\nseacock SC1 { pattern: flanged-seacock }\nsink S1\nrun R1: TH1 -> SC1 -> S1\n' },
    ],
    run(record, raise) {
        for (const opening of plumbedOpenings(record, 'with-transducers')) {
            for (const path of pathsFrom(record, opening)) {
                const raised = judge(record, path);
                if (raised) {
                    raise(raised);
                }
            }
        }
    },
});

function judge(record: SurveyRecord, path: Path): Raised | undefined {
    const { opening } = path;
    const state = openStateOf(path);
    if (depthM(opening) !== undefined) {
        const shutValve = yardstickWord(record, 'shut-valve-on-unused');
        if (state === 'valve-shut' && shutValve === 'closed') {
            return undefined;
        }
        if (state) {
            return problem(record, path, state);
        }
        if (path.isClosed) {
            return path.isCapped ? capAlone(record, path, shutValve === 'never-closed') : undefined;
        }
        return missing(path);
    }
    return state && !opening.facts.has('below-waterline') && !opening.facts.has('above-waterline')
        ? { components: [opening], at: opening.idSpan, severity: 'hint', message: `${nameOf(opening)} ${stateText[state]}; record below-waterline or above-waterline to tell whether the sea can come in by it.` } : undefined;
}

/** The fact that would decide, where an opening is recorded as out of use or as closed, but not both. */
function missing(path: Path): Raised | undefined {
    const { opening } = path;
    const closure = opening.facts.get('closure');
    if (isOutOfUse(path) && !closure) {
        return { components: [opening], at: opening.idSpan, severity: 'hint', message: `${nameOf(opening)} is out of use; record its closure (capped, blanked, valve-shut …) to tell whether it is closed off.` };
    }
    return closure && !opening.facts.has('in-use') && path.run?.facts.has('in-use') !== true
        ? { components: [opening], at: closure.span, severity: 'hint', message: `The closure of ${nameOf(opening)} is recorded as ${closure.written}; record in-use to tell whether that will do.` } : undefined;
}

/** A cap on an open valve is all that keeps the sea out: advice. */
function capAlone(record: SurveyRecord, path: Path, evenIfShut: boolean): Raised | undefined {
    const { opening, valve } = path;
    if (!valve) {
        return path.run ? capWithoutValve(record, path) : undefined;
    }
    const isOpen = wordOf(valve, 'position') === 'open';
    if (!isOpen && !evenIfShut) {
        return undefined;
    }
    const inflow = inflowOf(record, path);
    return {
        components: [opening, valve], severity: 'warning', at: valve.facts.get('position')?.span ?? valve.idSpan,
        message: `${nameOf(opening)}, ${depthText(opening)}, is capped, and its valve ${valve.id} ${isOpen ? 'stands open: the cap alone keeps' : 'is shut: valve and cap alone keep'} the sea out.${admits(record, path, 'Without it, the opening')} ${isOpen ? 'Shut the valve and keep it shut; remove' : 'Remove'} the fitting and make good the hull in time.`,
        figures: inflow?.figures ?? {},
        related: [{ message: `${opening.id} is recorded here`, span: opening.idSpan }],
        corrections: !isOpen ? [] : [{ kind: 'set-fact', title: `Record ${valve.id} as shut`, component: valve, property: 'position', value: 'shut' }],
        draft: {
            title: `A cap alone closes ${opening.title ?? opening.id}`, urgency: 'in-upkeep',
            seen: `${opening.title ?? 'The opening'} (${opening.id}), {${opening.id}.below-waterline} below the waterline, is capped; its valve ${valve.id} ${valve.facts.has('position') ? `stands {${valve.id}.position}` : 'is shut'}.`,
            because: `${isOpen ? 'The cap is all that keeps the sea out.' : 'Valve and cap are all that keep the sea out, and nobody watches what nobody uses.'}${inflow ? ` Without it the opening would admit ${inflowInProse(record, path, inflow)}.` : ''}`,
            recommend: `${isOpen ? 'Shut the valve and keep it shut. ' : ''}At the next haul-out remove the fitting and make good the hull to its full thickness.`,
            cites: [['Good practice']],
        },
    };
}

/** A cap with no valve in the recorded run: advice, for the cap is all there is. */
function capWithoutValve(record: SurveyRecord, path: Path): Raised {
    const { opening } = path;
    const inflow = inflowOf(record, path);
    return {
        components: [opening], severity: 'warning', at: opening.idSpan,
        message: `${nameOf(opening)}, ${depthText(opening)}, is closed by a cap alone, with no valve in its run.${admits(record, path, 'Without it, the opening')} Remove the fitting and make good the hull, or fit a seacock under the cap.`,
        figures: inflow?.figures ?? {},
        draft: {
            title: `A cap alone closes ${opening.title ?? opening.id}`, urgency: 'next-haul-out',
            seen: `${opening.title ?? 'The opening'} (${opening.id}), {${opening.id}.below-waterline} below the waterline, is closed by a cap, with no valve.`,
            because: `The cap is all that keeps the sea out, and nobody watches what nobody uses.${inflow ? ` Without it the opening would admit ${inflowInProse(record, path, inflow)}.` : ''}`,
            recommend: 'Remove the fitting and make good the hull to its full thickness, or fit a flanged seacock under the cap.',
            cites: [['Good practice']],
        },
    };
}

function problem(record: SurveyRecord, path: Path, state: OpenState): Raised {
    const { opening, run, valve, parts } = path;
    const inflow = inflowOf(record, path);
    const openRun = path.endsOpen ? run : undefined;
    // On a valve that stands open a cap would be advised against, so only the blank clears it.
    const ends = valve && wordOf(valve, 'position') === 'open' ? ['blanked'] as const : ['capped', 'blanked'] as const;
    const corrections = ends.map((end): Correction => openRun
        ? { kind: 'end-run', title: `Record ${openRun.id} as ${end}`, run: openRun, end }
        : { kind: 'set-fact', title: `Record ${opening.id} as ${end}`, component: opening, property: 'closure', value: end });
    // The valve keeps the sea out only as far as it is not known to stand open or not to shut.
    const isHeldByValve = valve !== undefined && wordOf(valve, 'position') !== 'open' && (wordOf(valve, 'works') !== 'seized' || wordOf(valve, 'position') === 'shut');
    return {
        components: [opening, ...parts.filter(c => c !== opening)],
        at: openRun ? openRun.idSpan : opening.facts.get('closure')?.span ?? opening.idSpan,
        message: `${nameOf(opening)}, ${depthText(opening)}, ${stateText[state]}.${admits(record, path, 'Open, it')} Remove the fitting and make good the hull; cap it meanwhile.`,
        figures: inflow?.figures ?? {},
        related: [{ message: `${opening.id} is recorded here`, span: opening.idSpan }],
        corrections,
        draft: {
            title: `Opening ${opening.id} is not closed off`,
            urgency: state === 'valve-shut' && valve ? 'next-haul-out' : floodCritical(record),
            seen: `${opening.title ?? 'The opening'} (${opening.id}), {${opening.id}.below-waterline} below the waterline, ${isOutOfUse(path) ? 'is out of use and ' : ''}${stateText[state]}.`,
            because: `${isHeldByValve ? `Nothing but the valve ${valve.id} keeps the sea out` : state === 'plug-in-hose' ? 'Nothing but the plug keeps the sea out' : 'Nothing keeps the sea out'}.${inflow ? ` Open, it admits ${inflowInProse(record, path, inflow)}.` : ''}`,
            recommend: 'Remove the fitting and make good the hull to its full thickness. Until that is done, close it with a threaded cap on the tail of a shut valve.',
            cites: [['Good practice']],
        },
    };
}
