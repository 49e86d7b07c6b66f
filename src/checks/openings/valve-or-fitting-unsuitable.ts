/** Gate and globe valves, cast iron and unreinforced plastic where the sea stands at or near them. */
import { flagOf, isKind, materialOf, nameOf, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { floodCritical } from '../lies.js';
import { both } from '../phrasing.js';
import { admits, depthM, depthText, inflowInProse, inflowOf, pathsFrom, plumbedOpenings, type Path } from './paths.js';

/** Plastic this near above the waterline is judged as below it, m (practice). */
const nearM = 0.3;

type Fault = 'gate' | 'globe' | 'cast-iron' | 'plastic';

export const valveOrFittingUnsuitable = defineCheck({
    id: 'valve-or-fitting-unsuitable',
    aliases: ['valve-type-unsuitable'],
    group: 'openings',
    severity: 'error',
    title: 'Valve or fitting is unsuitable below the waterline',
    why: 'A gate valve does not show whether it is shut and jams on grit; cast iron cracks; unreinforced plastic goes brittle.',
    needs: ['valve: pattern, material or metal, listed', 'hull opening: below-waterline or above-waterline, material', 'its run', 'cracked, spins, leaks or weeps, for the urgency'],
    computes: 'A fault for a gate or globe valve in a run from an opening below the waterline at rest or heeled, for cast iron below the waterline at rest, and for unreinforced plastic there or up to 300 mm above, unless it is listed reinforced nylon. Materials are judged of the opening, the valves, and the fittings between the opening and its first valve.',
    sources: [
        { text: 'valve whose handle shows open and shut; gate valves do not qualify', standard: 'ABYC H-27', provenance: 'secondary' },
        { text: 'seacocks and hull fittings', standard: 'ISO 9093', provenance: 'memory' },
        { text: 'no cast iron, on inspected vessels', standard: '46 CFR 171.119', provenance: 'published' },
        { text: '300 mm above the waterline', provenance: 'practice' },
    ],
    limits: ['Brass is judged by brass-below-waterline.', 'A pattern or material that is not recorded is not judged.', 'Fittings behind the first valve are not judged: the valve can shut them off.', 'Reinforced plastic is taken as suitable, whether or not a listing mark was seen.'],
    examples: [{
        name: 'gate valve on an opening below the waterline',
        bad: `through-hull TH1 "Deck wash" { size: 3/4 in  metal: gunmetal  below-waterline: 10 in }
valve SV1 { size: 3/4 in  metal: gunmetal  pattern: gate-valve }
wash-down-pump P1
run R1: TH1 -> SV1 -> P1
`,
        fixed: `through-hull TH1 "Deck wash" { size: 3/4 in  metal: gunmetal  below-waterline: 10 in }
valve SV1 { size: 3/4 in  metal: gunmetal  pattern: flanged-seacock }
wash-down-pump P1
run R1: TH1 -> SV1 -> P1
`,
        correction: 'Record SV1 as a flanged seacock',
    }, {
        name: 'plain plastic just above the waterline',
        bad: 'through-hull TH1 "Sink drain" { size: 1 in  material: nylon  above-waterline: 100 mm }\n',
        fixed: 'through-hull TH1 "Sink drain" { size: 1 in  material: reinforced-nylon  above-waterline: 100 mm }\n',
        correction: 'Record TH1 as glass-reinforced nylon',
    }],
    silent: [
        { name: 'gate valve in a run above the waterline', text: 'through-hull TH1 { size: 1 in  above-waterline: 2 ft }\nvalve SV1 { pattern: gate-valve }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n' },
        { name: 'listed reinforced nylon', text: 'through-hull TH1 { size: 1 in  material: reinforced-nylon  below-waterline: 1 ft }\nvalve SV1 { pattern: ball-valve  material: nylon  listed: yes }\nsink S1\nrun R1: TH1 -> SV1 -> S1\n' },
        { name: 'plastic well above the waterline', text: 'through-hull TH1 { size: 1 in  material: nylon  above-waterline: 400 mm }\n' },
        { name: 'plastic fitting behind the seacock', text: 'through-hull TH1 { size: 1 in  below-waterline: 1 ft }\nseacock SC1 { pattern: flanged-seacock }\nelbow E1 { material: nylon }\nsink S1\nrun R1: TH1 -> SC1 -> E1 -> S1\n' },
        { name: 'gate valve behind a blank', text: 'through-hull TH1 { size: 1 in  below-waterline: 1 ft  closure: glassed-over }\nvalve SV1 { pattern: gate-valve }\nrun R1: TH1 -> SV1\n' },
    ],
    run(record, raise) {
        const seen = new Set<Component>();
        for (const opening of plumbedOpenings(record)) {
            for (const path of pathsFrom(record, opening)) {
                if (path.isClosed && !path.isCapped) {
                    continue;
                }
                for (const part of partsOf(record, path)) {
                    const fault = seen.has(part) ? undefined : faultOf(record, part, opening);
                    if (fault) {
                        seen.add(part); // An opening that feeds several runs is told once.
                        raise(problem(record, path, part, fault));
                    }
                }
            }
        }
    },
});

/** The opening, its valves, and the fittings that no valve can shut off from the sea. */
function partsOf(record: SurveyRecord, { opening, parts, valve }: Path): Component[] {
    const components = valve && !parts.includes(valve) ? [...parts, valve] : parts;
    const first = valve ? components.indexOf(valve) : -1;
    return [opening, ...components.filter((c, index) => c !== opening && (isKind(record, c, 'valve') || (index < first && isKind(record, c, 'fitting'))))];
}

function faultOf(record: SurveyRecord, part: Component, opening: Component): Fault | undefined {
    const isBelow = depthM(opening) !== undefined;
    const above = siOf(opening, 'above-waterline');
    const material = materialOf(part);
    if ((isBelow || flagOf(opening, 'below-heeled-waterline') === true) && isKind(record, part, 'valve')) {
        const pattern = wordOf(part, 'pattern');
        if (pattern === 'gate-valve' || pattern === 'globe-valve') {
            return pattern === 'gate-valve' ? 'gate' : 'globe';
        }
    }
    if (isBelow && material?.id === 'cast-iron') {
        return 'cast-iron';
    }
    const isNear = isBelow || (above !== undefined && above <= nearM + 1e-9);
    return isNear && material?.class === 'plastic' && flagOf(part, 'listed') !== true ? 'plastic' : undefined;
}

function problem(record: SurveyRecord, path: Path, part: Component, fault: Fault): Raised {
    const { opening } = path;
    const inflow = inflowOf(record, path);
    const isOpening = part === opening;
    const depth = siOf(opening, 'below-waterline');
    const above = opening.facts.get('above-waterline')?.values[0];
    const heels = flagOf(opening, 'below-heeled-waterline') === true ? ' and under it when she heels' : '';
    const height = depth !== undefined && depth > 0 ? depthText(opening) : above?.type === 'quantity' ? `${both(above)} above the waterline${heels}` : heels ? 'under the waterline when she heels' : 'near the waterline';
    const place = isOpening ? height : `on ${nameOf(opening)}, ${height}`;
    const texts: Readonly<Record<Fault, { readonly what: string; readonly why: string }>> = {
        gate: { what: 'is a gate valve', why: 'it does not show whether it is shut, and grit keeps it from closing' },
        globe: { what: 'is a globe valve', why: 'it does not show whether it is shut, and takes many turns' },
        'cast-iron': { what: 'is of cast iron', why: 'cast iron wastes in sea water and cracks under a blow' },
        plastic: { what: `is of unreinforced plastic${plasticName(part)}`, why: 'it goes brittle in sun and frost and breaks off' },
    };
    const { what, why } = texts[fault];
    const property = part.facts.has('metal') ? 'metal' : 'material';
    const corrections: Correction[] = fault === 'gate' || fault === 'globe'
        ? [{ kind: 'set-fact', title: `Record ${part.id} as a flanged seacock`, component: part, property: 'pattern', value: 'flanged-seacock' },
            { kind: 'set-fact', title: `Record ${part.id} as a ball valve`, component: part, property: 'pattern', value: 'ball-valve' }]
        : fault === 'plastic'
            ? [{ kind: 'set-fact', title: `Record ${part.id} as glass-reinforced nylon`, component: part, property, value: 'reinforced-nylon' },
                ...(isKind(record, part, 'valve') ? [{ kind: 'set-fact', title: `Record ${part.id} as listed for use below the waterline`, component: part, property: 'listed', value: 'yes' } as const] : [])]
            : [{ kind: 'set-fact', title: `Record ${part.id} as gunmetal`, component: part, property, value: 'gunmetal' }];
    const worse = worseOf(part);
    const remedy = fault === 'gate' || fault === 'globe' || isKind(record, part, 'valve')
        ? 'Renew it with a flanged quarter-turn seacock of bronze or a resistant alloy' : 'Renew it in bronze, a resistant alloy or listed reinforced nylon';
    return {
        components: isOpening ? [part] : [part, opening],
        at: part.facts.get(fault === 'gate' || fault === 'globe' ? 'pattern' : property)?.span ?? part.idSpan,
        message: `${nameOf(part)} ${what}${isOpening ? ', ' : ' '}${place}${worse ? `, and ${worse.text}` : ''}: ${why}.${admits(record, path, 'If its hose fails, the opening')} ${remedy}.`,
        figures: inflow?.figures ?? {},
        corrections,
        draft: {
            title: `${part.title ?? part.id} ${what}`,
            urgency: worse ? floodCritical(record) : 'next-haul-out',
            seen: `${part.title ?? 'The part'} (${part.id}) ${what}${isOpening ? '' : `, on ${opening.id}`}${depth !== undefined && depth > 0 ? `, {${opening.id}.below-waterline} below the waterline` : above ? `, {${opening.id}.above-waterline} above the waterline${heels}` : heels ? `, ${height}` : ''}${worse ? `; ${worse.text}` : ''}.`,
            because: `${why.charAt(0).toUpperCase()}${why.slice(1)}.${inflow ? ` If its hose fails, the opening admits ${inflowInProse(record, path, inflow)}.` : ''}`,
            recommend: `${remedy}${remedy.includes('seacock') ? ', on a bonded block' : ''}.`,
            cites: [['ABYC H-27']],
        },
    };
}

/** " (nylon)", or nothing where the plastic is not identified. */
function plasticName(part: Component): string {
    const material = materialOf(part);
    return !material || material.id === 'plastic' ? '' : ` (${material.title.split(',')[0]?.replace(/^[A-Z](?=[a-z])/, first => first.toLowerCase()) ?? ''})`;
}

/** What is recorded of the part that makes it a danger now. */
function worseOf(part: Component): { readonly text: string } | undefined {
    const isFailed = wordOf(part, 'condition') === 'failed';
    return flagOf(part, 'cracked') === true ? { text: 'it is cracked' }
        : flagOf(part, 'spins') === true ? { text: 'its stem spins' }
            : flagOf(part, 'leaks') === true || flagOf(part, 'weeps') === true ? { text: 'it weeps' } : isFailed ? { text: 'it has failed' } : undefined;
}
