/** Copper in the paint of an aluminum hull or drive leg. */
import { flagOf, isKind, materialOf, nameOf, ofKind, siOf, wordOf, type Component, type Material, type SurveyRecord } from '../../record/model.js';
import { defineCheck } from '../contract.js';

const deepPitM = 0.001;
const driveLegs = ['saildrive', 'outdrive', 'outboard', 'pod'] as const;

export const copperPaintOnAluminum = defineCheck({
    id: 'copper-paint-on-aluminum',
    group: 'metals',
    severity: 'error',
    title: 'Copper paint on aluminum',
    why: 'Copper plates out of the paint and pits the metal.',
    needs: ['hull shell, drive leg: paint; metal or material, of a hull shell else that of the vessel', 'barrier-coat and pit-depth, where they are known'],
    computes: 'A fault where copper antifouling lies on aluminum.',
    sources: [{ text: 'no copper paint on aluminum', provenance: 'practice' }],
    limits: ['A coating that serves no part is taken to lie on the hull.', 'Paint given as unknown is not judged.', 'A recorded barrier coat lowers it to advice: it helps only while it is whole.'],
    examples: [{
        name: 'drive leg',
        bad: 'saildrive SD1 { metal: aluminum  paint: copper-antifouling }\n',
        fixed: 'saildrive SD1 { metal: aluminum  paint: copper-free-antifouling }\n',
        correction: 'Record the paint of SD1 as copper-free',
    }],
    silent: [
        { name: 'copper paint on fiberglass', text: 'hull-shell HS1 { material: grp  paint: copper-antifouling }\n' },
        { name: 'copper-free paint on an aluminum hull', text: 'vessel "M" { hull-material: aluminum-5083 }\nhull-shell HS1 { paint: copper-free-antifouling }\n' },
        { name: 'paint not known', text: 'saildrive SD1 { metal: aluminum  paint: unknown }\n' },
    ],
    run(record, raise) {
        for (const part of record.components.values()) {
            if (wordOf(part, 'paint') !== 'copper-antifouling') {
                continue;
            }
            const metal = isKind(record, part, 'coating') ? metalUnder(record, part) : materialOf(part) ?? (isKind(record, part, 'hull-shell') ? hullMaterial(record) : undefined);
            if (!metal && driveLegs.some(kind => isKind(record, part, kind))) {
                raise({ components: [part], at: part.idSpan, severity: 'hint', message: `${nameOf(part)} carries copper antifouling; record its metal to tell whether the copper eats it, as it does aluminum.` });
            }
            if (metal?.class !== 'aluminum') {
                continue;
            }
            const hasBarrier = flagOf(part, 'barrier-coat') === true;
            const pit = siOf(part, 'pit-depth');
            const isDeep = pit !== undefined && pit > deepPitM;
            raise({
                components: [part], at: part.facts.get('paint')?.span ?? part.idSpan, severity: hasBarrier ? 'warning' : 'error',
                message: `${nameOf(part)} ${isKind(record, part, 'coating') ? `is copper antifouling on ${metal.title.toLowerCase()}` : `is of ${metal.title.toLowerCase()} and carries copper antifouling`}${hasBarrier ? ' over a barrier coat, which helps only while it is whole' : ''}. Copper plates out and pits the metal; strip it, and use a barrier coat and copper-free paint.`,
                corrections: [{ kind: 'set-fact', title: `Record the paint of ${part.id} as copper-free`, component: part, property: 'paint', value: 'copper-free-antifouling' }],
                draft: {
                    title: isKind(record, part, 'coating') ? `Copper paint on aluminum (${part.id})` : `Copper paint on ${part.title ?? part.id}`, urgency: isDeep ? 'before-launch' : 'next-haul-out',
                    seen: `${part.title ?? (isKind(record, part, 'coating') ? 'The coating' : 'The part')} (${part.id})${isKind(record, part, 'coating') ? ' on aluminum is copper antifouling' : ', of aluminum, carries copper antifouling'}${isDeep ? ', with pits to {' + part.id + '.pit-depth}' : ''}.`,
                    because: 'Copper plates out of the paint on the aluminum and pits it.',
                    recommend: 'Strip the paint, apply a barrier coat, and repaint with a copper-free antifouling made for aluminum.', cites: [['Good practice']],
                },
            });
        }
    },
});

/** What a coating lies on: the part that it serves, else the hull. */
function metalUnder(record: SurveyRecord, coating: Component): Material | undefined {
    const served = coating.facts.get('serves')?.values.flatMap(value => value.type === 'component' ? [record.components.get(value.id)] : [])[0];
    const shells = ofKind(record, 'hull-shell');
    const part = served ?? (shells.length === 1 ? shells[0] : undefined);
    return (part && materialOf(part)) ?? (!served || isKind(record, served, 'hull-shell') ? hullMaterial(record) : undefined);
}

function hullMaterial(record: SurveyRecord): Material | undefined {
    const value = record.vessel?.facts.get('hull-material')?.values[0];
    return value?.type === 'material' ? value.material : undefined;
}
