/** Brass that loses its zinc in sea water: the part keeps its shape and snaps. */
import { flagOf, isKind, materialOf, nameOf, wordOf, type Component, type SurveyRecord, runsThrough } from '../../record/model.js';
import { materialName } from '../phrasing.js';
import { heightOf } from '../hoses/waterline.js';
import { depthM } from '../openings/paths.js';
import { defineCheck, type Raised } from '../contract.js';
import { floodCritical } from '../lies.js';

/** Share of zinc above which brass loses it in sea water (corrosion handbooks, from memory). */
const zincLimit = 0.15;

export const brassBelowWaterline = defineCheck({
    id: 'brass-below-waterline',
    group: 'metals',
    severity: 'error',
    title: 'Brass below the waterline',
    why: 'Its zinc leaves, the part keeps its shape and snaps.',
    needs: ['metal, with its share of zinc', 'a run from an opening below the waterline, or wetted', 'dezincification-resistant, scrape-color'],
    computes: 'A fault where the metal holds more than 15 % zinc, is not marked dezincification-resistant, and lies in water: as an opening below the waterline, in its run, or recorded as wetted. A propeller only when scraped pink or red-brown; that color raises the urgency of any part.',
    sources: [
        { text: 'brass must be dezincification-resistant', standard: 'ISO 9093', clause: '4.1', provenance: 'published' },
        { text: '15 % zinc', provenance: 'memory' },
    ],
    limits: ['“Bronze” is often manganese bronze, which is a brass by make-up: only the alloy recorded is judged; one that is not identified is warned of when scraped pink.', 'Propellers of manganese bronze are common practice and are judged only when scraped pink.', 'Pumps, appliances and vented loops at the inner end of a run are judged only where they are recorded as wetted.', 'The limit is for sea water; in fresh water the loss is slower.'],
    examples: [{
        name: 'yellow brass valve',
        bad: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 1 ft }
valve SV1 { size: 1 in  metal: yellow-brass  pattern: ball-valve }
sink S1
run R1: TH1 -> SV1 -> S1
`,
        fixed: `through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 1 ft }
valve SV1 { size: 1 in  metal: dzr-brass  pattern: ball-valve }
sink S1
run R1: TH1 -> SV1 -> S1
`,
        correction: 'Record SV1 as dezincification-resistant brass',
    }],
    silent: [
        { name: 'above the waterline', text: 'through-hull TH1 { size: 1 in  metal: yellow-brass  above-waterline: 1 ft }\n' },
        { name: 'marked as resistant', text: 'through-hull TH1 { size: 1 in  metal: brass  below-waterline: 1 ft  dezincification-resistant: yes }\n' },
        { name: 'brass sink at the end of the run', text: 'through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 1 ft }\nseacock SC1 { metal: gunmetal  pattern: flanged-seacock }\nsink S1 { metal: brass }\nrun R1: TH1 -> SC1 -> S1\n' },
        { name: 'recorded as dry', text: 'valve SV1 { metal: brass  wetted: no }\n' },
        { name: 'red brass, 15 % zinc', text: 'through-hull TH1 { size: 1 in  metal: red-brass  below-waterline: 1 ft }\n' },
        { name: 'gunmetal', text: 'through-hull TH1 { size: 1 in  metal: gunmetal  below-waterline: 1 ft }\n' },
        { name: 'manganese bronze propeller', text: 'propeller PR1 { metal: manganese-bronze  wetted: yes }\n' },
    ],
    run(record, raise) {
        for (const part of record.components.values()) {
            const metal = materialOf(part);
            const color = wordOf(part, 'scrape-color');
            const isPink = color === 'pink' || color === 'red-brown';
            if (metal && (metal.zinc ?? 0) > zincLimit && metal.class === 'copper-alloy') {
                const isResistant = metal.id === 'dzr-brass' || flagOf(part, 'dezincification-resistant') === true;
                if (!isResistant && isWetted(record, part) && (!isKind(record, part, 'propeller') || isPink)) {
                    raise(problem(record, part, isPink));
                }
            } else if (isPink && (!metal || (metal.class === 'copper-alloy' && metal.zinc === undefined)) && isWetted(record, part)) {
                raise(color === 'pink' ? pinkUnidentified(record, part) : {
                    components: [part], at: part.facts.get('scrape-color')?.span ?? part.idSpan, severity: 'hint',
                    message: `${nameOf(part)} shows ${color} when scraped, as brass may that has lost zinc; record which alloy it is to tell whether it must be renewed.`,
                });
            }
        }
    },
});

/** Pink on a part whose alloy is not known: most likely a brass that has lost its zinc, whatever it is called. */
function pinkUnidentified(record: SurveyRecord, part: Component): Raised {
    return {
        components: [part], at: part.facts.get('scrape-color')?.span ?? part.idSpan, severity: 'warning',
        message: `${nameOf(part)} shows pink when scraped, as brass does that has lost its zinc, and its alloy is not identified. Such a part keeps its shape and snaps; find out the alloy, and renew the part if it is a brass.`,
        draft: {
            title: `${part.title ?? part.id} is pink when scraped`, urgency: floodCritical(record),
            seen: `${part.title ?? 'The part'} (${part.id}) lies in water; scraped bright, it showed {${part.id}.scrape-color}. Its alloy is not identified.`,
            because: 'The color is consistent with brass that has lost its zinc: the part keeps its shape, loses its strength and snaps.',
            recommend: 'Have the alloy identified, and renew the part in bronze, nickel-copper or a brass marked as dezincification-resistant unless it is shown to be sound.',
            cites: [['ISO 9093', '4.1']],
        },
    };
}

function isWetted(record: SurveyRecord, part: Component): boolean {
    const wetted = flagOf(part, 'wetted');
    if (wetted !== undefined) {
        return wetted;
    }
    if (isKind(record, part, 'appliance') || isKind(record, part, 'vented-loop')) {
        return false; // They stand at the inner end of the run, above the water as often as in it.
    }
    return depthM(part) !== undefined || isKind(record, part, 'propeller') || isKind(record, part, 'strut') || runsThrough(record, part).some(run => heightOf(record, run) === 'below');
}

function problem(record: SurveyRecord, part: Component, isPink: boolean): Raised {
    const metal = materialOf(part);
    const property = part.facts.has('metal') ? 'metal' : 'material';
    const zinc = Math.round((metal?.zinc ?? 0) * 100);
    const canMark = record.vocabulary.kinds.get(part.kind)?.properties.has('dezincification-resistant') ?? false;
    return {
        components: [part], at: part.facts.get(property)?.span ?? part.idSpan,
        message: `${nameOf(part)} is of ${metal ? materialName(metal) : 'brass'}, about ${zinc} % zinc, and lies in water${isPink ? '; scraped, it is pink: its zinc has gone' : ''}. Brass over 15 % zinc loses it, keeps its shape and snaps; renew it in bronze, nickel-copper or a resistant brass.`,
        figures: { zinc: { value: zinc, unit: '%' }, limit: { value: zincLimit * 100, unit: '%' } },
        corrections: [
            { kind: 'set-fact', title: `Record ${part.id} as dezincification-resistant brass`, component: part, property, value: 'dzr-brass' },
            ...(canMark ? [{ kind: 'set-fact', title: `Record that ${part.id} is marked dezincification-resistant`, component: part, property: 'dezincification-resistant', value: 'yes' } as const] : []),
            { kind: 'set-fact', title: `Record ${part.id} as gunmetal`, component: part, property, value: 'gunmetal' },
        ],
        draft: {
            title: `${part.title ?? part.id} is of brass`,
            urgency: isPink ? floodCritical(record) : 'next-haul-out',
            seen: `${part.title ?? 'The part'} (${part.id}) is of {${part.id}.${property}} and lies in water${isPink ? '; scraped bright, it showed {' + part.id + '.scrape-color}' : ''}.`,
            because: `At about ${zinc} % zinc, brass loses its zinc in sea water: the part keeps its shape, loses its strength and snaps.`,
            recommend: 'Renew it in bronze, nickel-copper or a brass marked as dezincification-resistant. Until then scrape it at every haul-out and renew it at the first sign of pink.',
            cites: [['ISO 9093', '4.1']],
        },
    };
}
