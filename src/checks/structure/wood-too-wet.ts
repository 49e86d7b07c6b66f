/** Wood that is damp enough to rot, or wet and soft. */
import { dampWoodShare, saturatedWoodShare, softProbeM, woodStep, type WoodStep } from '../../trade/moisture.js';
import { anyValue, flagOf, nameOf, ofKind, rowsOf, siOf, wordOf, type Component, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised, type Urgency } from '../contract.js';
import { both, lengthBoth, listed, percent } from '../phrasing.js';
import { lies } from '../lies.js';


export const woodTooWet = defineCheck({
    id: 'wood-too-wet',
    group: 'structure',
    severity: 'error',
    title: 'Wood is wet',
    why: 'Wood over 20 % can rot; wet wood that a probe enters has begun to.',
    needs: ['plank, timber: moisture, probe, immersed, fresh-water, lies-in', 'reading that measures wood-moisture: moisture, probe, immersed of each row'],
    computes: 'Over 20 % not immersed: damp, advice. Over 28 % and a probe past 5 mm: decay. Immersed and over 28 %: normal, if the probe stays out.',
    sources: [
        { text: 'over 20 % wood can rot; saturation of the fiber at 28 to 30 %', provenance: 'memory' },
        { text: 'a probe past 5 mm', provenance: 'practice' },
        { text: 'inspection of wooden hulls by sounding and probing', standard: 'NVIC 7-95', provenance: 'memory' },
    ],
    limits: ['The meter is taken as set for the species and temperature.', 'A soft wood lets a probe in further than a hard one.', 'Where it is not recorded that a part is immersed, it is taken as not.', 'Rows of one table that ask for the same are reported together.'],
    examples: [{
        name: 'decay in a garboard',
        bad: 'plank PL1 "Garboard, port" { moisture: 34 %  probe: 12 mm  immersed: yes  lies-in: garboard }\n',
        fixed: 'plank PL1 "Garboard, port" { moisture: 34 %  probe: 2 mm  immersed: yes  lies-in: garboard }\n',
    }, {
        name: 'damp',
        bad: 'plank PL1 { moisture: 24 % }\n',
        fixed: 'plank PL1 { moisture: 24 %  immersed: yes }\n',
        correction: 'Record PL1 as immersed',
    }, {
        name: 'rows of a table',
        bad: `plank PL1 "Planking" { species: larch }
reading M1 "Moisture of the planking" on PL1 {
    measures: wood-moisture  columns: moisture, probe
    row "Sheer strake, port": 23 %, 1 mm
    row "Strake 4, port":     17 %, 1 mm
}
`,
        fixed: `plank PL1 "Planking" { species: larch }
reading M1 "Moisture of the planking" on PL1 {
    measures: wood-moisture  columns: moisture, probe
    row "Sheer strake, port": 19 %, 1 mm
    row "Strake 4, port":     17 %, 1 mm
}
`,
    }],
    silent: [
        { name: 'immersed over 28 % with a hard probe', text: 'plank PL1 "Garboard, port" { moisture: 45 %  probe: 1 mm  immersed: yes  lies-in: garboard }\n' },
        { name: 'immersed and merely damp', text: 'plank PL1 { moisture: 24 %  immersed: yes }\n' },
        { name: 'air dry', text: 'timber TB1 "Deck beam" { moisture: 15 % }\n' },
        { name: 'exactly 20 %', text: 'plank PL1 { moisture: 20 % }\n' },
    ],
    run(record, raise) {
        for (const place of merged(placesOf(record))) {
            const problem = judge(record, place);
            if (problem) {
                raise(problem);
            }
        }
        for (const part of [...ofKind(record, 'plank'), ...ofKind(record, 'timber')]) {
            const probe = anyValue(part, 'probe');
            if (probe && probe.si > softProbeM + 1e-9 && !part.facts.has('moisture') && !record.readings.some(reading => reading.on.includes(part))) {
                raise({
                    components: [part], at: part.facts.get('probe')?.span ?? part.idSpan, severity: 'hint',
                    message: `A probe goes ${both(probe)} into ${nameOf(part)}, past ${lengthBoth(softProbeM)}; record its moisture, to tell decay from soft wood.`,
                });
            }
        }
    },
});

interface Place {
    readonly components: readonly Component[];
    /** The component, where the facts are its own. */
    readonly own?: Component;
    readonly name: string;
    readonly share: number;
    readonly probeM: number | undefined;
    readonly isImmersed: boolean | undefined;
    readonly isFreshWater: boolean;
    readonly isVital: boolean;
    readonly at: Span;
    readonly table?: string;
    /** How many rows of a table it speaks for. */
    readonly count: number;
}

function stepOf({ share, probeM, isImmersed }: Place): WoodStep {
    return woodStep({ share, probeM, isImmersed: isImmersed ?? false });
}

/** Rows of one table that ask for the same, as one place with their worst figures. */
function merged(places: readonly Place[]): Place[] {
    const groups = new Map<string, Place[]>();
    for (const [index, place] of places.entries()) {
        const key = place.table === undefined ? `own ${index}` : `${place.table} ${stepOf(place)} ${place.isVital}`;
        groups.set(key, [...groups.get(key) ?? [], place]);
    }
    return [...groups.values()].flatMap(group => {
        const [first] = group;
        const probes = group.flatMap(({ probeM }) => probeM ?? []);
        return first ? [{
            ...first, name: `${listed(group.map(({ name }) => name))}${first.table === undefined ? '' : ` (${first.table})`}`, count: group.length,
            share: Math.max(...group.map(({ share }) => share)), probeM: probes.length > 0 ? Math.max(...probes) : undefined,
        }] : [];
    });
}

const reads = ({ count, share }: Place): string => count > 1 ? `are at up to ${percent(share)}` : `is at ${percent(share)}`;

function placesOf(record: SurveyRecord): Place[] {
    const own = [...ofKind(record, 'plank'), ...ofKind(record, 'timber')].flatMap((part): Place[] => {
        const share = siOf(part, 'moisture');
        return share === undefined ? [] : [{
            components: [part], own: part, count: 1, name: nameOf(part), share, probeM: siOf(part, 'probe'), isImmersed: flagOf(part, 'immersed'),
            isFreshWater: flagOf(part, 'fresh-water') === true, isVital: isVital(part), at: part.facts.get('moisture')?.span ?? part.idSpan,
        }];
    });
    const rows = rowsOf(record, 'wood-moisture').flatMap(({ reading, row }): Place[] => {
        const share = siOf(row, 'moisture');
        const [only, ...others] = reading.on;
        const part = others.length === 0 ? only : undefined;
        return share === undefined ? [] : [{
            components: reading.on, table: reading.id, count: 1, name: row.label, share, probeM: siOf(row, 'probe'), isImmersed: flagOf(row, 'immersed') ?? (part && flagOf(part, 'immersed')),
            isFreshWater: part !== undefined && flagOf(part, 'fresh-water') === true, isVital: (part !== undefined && isVital(part)) || vitalName.test(row.label), at: row.span,
        }];
    });
    return [...own, ...rows];
}

/** Garboards and stem keep the water out; where it is not recorded where a part lies, its title tells. */
const vitalName = /\b(?:garboards?|stem)\b/iu;
function isVital(part: Component): boolean {
    const where = wordOf(part, 'lies-in');
    return where === undefined ? vitalName.test(part.title ?? '') : where === 'garboard' || where === 'stem';
}

function judge(record: SurveyRecord, place: Place): Raised | undefined {
    const step = stepOf(place);
    if (step === 'none') {
        return undefined;
    }
    if (step === 'unprobed') {
        return {
            components: place.components, at: place.at, severity: 'hint',
            message: `${place.name} ${reads(place)}, which is normal under water where the wood is hard; record how far a probe goes in to tell.`,
        };
    }
    return step === 'decay' ? decay(record, place) : damp(place);
}

function decay(record: SurveyRecord, place: Place): Raised {
    const { own, share, probeM = 0 } = place;
    const urgency: Urgency = place.isVital && lies(record) !== 'afloat' ? 'before-launch' : 'next-haul-out';
    return {
        components: place.components, at: own?.facts.get('probe')?.span ?? place.at,
        message: `${place.name} ${reads(place)}, over ${percent(saturatedWoodShare)}, and a probe goes in ${lengthBoth(probeM)}, past ${lengthBoth(softProbeM)}${fresh(place)}. That is consistent with decay; cut it back to sound wood and scarf in new.`,
        figures: { moisture: { value: Math.round(share * 1000) / 10, unit: '%' }, probe: { value: Math.round(probeM * 1e4) / 10, unit: 'mm' } },
        draft: {
            title: `Decay in ${own ? own.title ?? own.id : place.name}`, urgency,
            seen: own ? `${own.title ?? 'The wood'} (${own.id}) reads {${own.id}.moisture}, and a probe goes in {${own.id}.probe}${fresh(place)}.` : `By the readings, ${place.name} ${place.count > 1 ? 'are' : 'is'} wetter than the saturation of the fiber, and a probe goes in past ${lengthBoth(softProbeM)}${fresh(place)}.`,
            because: 'Wet wood that a probe enters is consistent with decay, which goes on as long as it is wet.',
            recommend: `Open it up to find how far it goes, cut back to sound wood and scarf in new${place.isFreshWater ? '; stop the fresh water' : ''}.`,
            cites: [['NVIC 7-95']],
        },
    };
}

function damp(place: Place): Raised {
    const { own, share, probeM } = place;
    const corrections: Correction[] = own && place.isImmersed === undefined ? [{ kind: 'set-fact', title: `Record ${own.id} as immersed`, component: own, property: 'immersed', value: 'yes' }] : [];
    const probe = probeM === undefined ? 'probe it' : 'probe it again';
    return {
        components: place.components, at: place.at, severity: 'warning', corrections,
        message: `${place.name} ${reads(place)}, over ${percent(dampWoodShare)}, from which wood can rot${fresh(place)}. Find where the water comes from, let it dry, and ${probe}.`,
        figures: { moisture: { value: Math.round(share * 1000) / 10, unit: '%' } },
        draft: {
            title: `${own ? own.title ?? own.id : place.name} ${place.count > 1 ? 'are' : 'is'} damp`, urgency: 'next-haul-out',
            seen: own ? `${own.title ?? 'The wood'} (${own.id}) reads {${own.id}.moisture}${probeM === undefined ? '' : `; a probe goes in {${own.id}.probe}`}${fresh(place)}.` : `By the readings, ${place.name} ${place.count > 1 ? 'are' : 'is'} over ${percent(dampWoodShare)}${fresh(place)}.`,
            because: `Wood over ${percent(dampWoodShare)} that does not lie in the sea can rot.`,
            recommend: `Find where the water comes from and stop it, let the wood dry, and ${probe}.`,
            cites: [['Good practice']],
        },
    };
}

const fresh = ({ isFreshWater }: Place): string => isFreshWater ? '; fresh water stands on it' : '';
