/** An anode of a metal that does not suit the water, or anodes of several metals on one boat. */
import { flagOf, materialOf, nameOf, ofKind, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';

export const anodeMetalForWater = defineCheck({
    id: 'anode-metal-for-water',
    group: 'metals',
    severity: 'error',
    title: 'Anode metal does not suit the water',
    why: 'Zinc skins over in fresh water and stops; magnesium in salt water drives the potential so far that paint lifts and aluminum is attacked.',
    needs: ['vessel: water', 'anode: metal'],
    computes: 'A fault for zinc in fresh water, for magnesium in salt or brackish water, and for anodes of different metals bonded together. Aluminum suits all three.',
    sources: [{ text: 'zinc in salt, magnesium in fresh, aluminum in any', provenance: 'practice' }],
    limits: ['Anodes are compared with each other only where both are recorded as bonded, and where that is not recorded of anodes of different metals it is asked for; all that are bonded are taken to be on one net.', 'Where the water is not recorded, only a magnesium anode asks for it: zinc is usual at sea.'],
    examples: [{
        name: 'zinc in a lake',
        bad: 'vessel "Marram" { water: fresh }\nanode A1 { metal: zinc }\n',
        fixed: 'vessel "Marram" { water: fresh }\nanode A1 { metal: magnesium }\n',
        correction: 'Record A1 as magnesium',
    }, {
        name: 'magnesium at sea',
        bad: 'vessel "Marram" { water: salt }\nanode A1 { metal: magnesium }\n',
        fixed: 'vessel "Marram" { water: salt }\nanode A1 { metal: zinc }\n',
        correction: 'Record A1 as zinc',
    }, {
        name: 'two metals on one bonding',
        bad: 'vessel "Marram" { water: salt }\nanode A1 { metal: zinc  bonded: yes }\nanode A2 { metal: anode-aluminum  bonded: yes }\n',
        fixed: 'vessel "Marram" { water: salt }\nanode A1 { metal: zinc  bonded: yes }\nanode A2 { metal: zinc  bonded: yes }\n',
        correction: 'Record A2 as zinc',
    }],
    silent: [
        { name: 'zinc at sea', text: 'vessel "M" { water: salt }\nanode A1 { metal: zinc }\n' },
        { name: 'aluminum in a lake', text: 'vessel "M" { water: fresh }\nanode A1 { metal: anode-aluminum }\n' },
        { name: 'zinc in brackish water', text: 'vessel "M" { water: brackish }\nanode A1 { metal: zinc }\n' },
        { name: 'two metals not bonded together', text: 'vessel "M" { water: salt }\nanode A1 { metal: zinc  bonded: yes }\nanode A2 { metal: anode-aluminum  bonded: no }\n' },
        { name: 'water not recorded', text: 'vessel "M" { }\nanode A1 { metal: zinc }\n' },
    ],
    run(record, raise) {
        const anodes = ofKind(record, 'anode');
        const water = record.vessel && wordOf(record.vessel, 'water');
        const bonded = anodes.filter(anode => flagOf(anode, 'bonded') === true && materialOf(anode));
        let asked = false;
        for (const anode of anodes) {
            const cls = materialOf(anode)?.class;
            if (cls === 'zinc-anode' && water === 'fresh') {
                raise(problem(record, anode, 'zinc in fresh water skins over and stops protecting', 'magnesium', 'in-upkeep'));
            } else if (cls === 'magnesium-anode' && (water === 'salt' || water === 'brackish')) {
                raise(problem(record, anode, `magnesium in ${water} water over-protects, so that paint lifts and aluminum is attacked`, 'zinc', 'within-days'));
            } else if (cls === 'magnesium-anode' && water === undefined) {
                raise({ components: [anode], at: anode.facts.get('metal')?.span ?? anode.idSpan, severity: 'hint', message: `${nameOf(anode)} is of magnesium; record the water she is kept in to tell whether it suits: in salt water it over-protects.` });
            } else {
                const other = bonded.includes(anode) ? bonded.find(b => materialOf(b)?.class !== cls && bonded.indexOf(b) < bonded.indexOf(anode)) : undefined;
                const doubtful = other ? undefined : differingUnknown(anodes, anode);
                if (doubtful && !asked) {
                    asked = true;
                    raise({
                        components: [anode, doubtful], at: anode.facts.get('metal')?.span ?? anode.idSpan, severity: 'hint',
                        message: `${nameOf(anode)} and ${nameOf(doubtful)} are of different metals; record bonded of both to tell whether they are on one net, where the baser wastes for the other.`,
                    });
                }
                if (other) {
                    raise(problem(record, anode, `it is bonded with ${other.id} of ${materialOf(other)?.title.toLowerCase() ?? 'another metal'}, and the baser of the two wastes to protect the other`, materialOf(other)?.id ?? 'zinc', 'in-upkeep', other));
                }
            }
        }
    },
});

/** An earlier anode of another metal that may be bonded with this one, as far as the record tells. */
function differingUnknown(anodes: readonly Component[], anode: Component): Component | undefined {
    const mayBeBonded = (one: Component) => flagOf(one, 'bonded') !== false && flagOf(one, 'insulated') !== true;
    const cls = materialOf(anode)?.class;
    return cls === undefined || !mayBeBonded(anode) ? undefined : anodes.slice(0, anodes.indexOf(anode)).find(earlier => {
        const other = materialOf(earlier)?.class;
        return other !== undefined && other !== cls && mayBeBonded(earlier) && !(flagOf(earlier, 'bonded') === true && flagOf(anode, 'bonded') === true);
    });
}

function problem(record: SurveyRecord, anode: Component, why: string, instead: string, urgency: 'in-upkeep' | 'within-days', other?: Component): Raised {
    const metal = materialOf(anode)?.title.toLowerCase() ?? 'metal';
    const name = record.vocabulary.materials.get(instead)?.title.toLowerCase() ?? instead;
    const property = anode.facts.has('metal') ? 'metal' : 'material';
    // Aluminum suits every water, but not beside bonded anodes of another metal.
    const isAlone = !other && flagOf(anode, 'bonded') !== true;
    const corrections: Correction[] = [
        { kind: 'set-fact', title: `Record ${anode.id} as ${name}`, component: anode, property, value: instead },
        ...(isAlone ? [{ kind: 'set-fact', title: `Record ${anode.id} as anode aluminum`, component: anode, property, value: 'anode-aluminum' } as const] : []),
    ];
    return {
        components: other ? [anode, other] : [anode], at: (anode.facts.get('metal') ?? anode.facts.get('material'))?.span ?? anode.idSpan,
        message: `${nameOf(anode)} is of ${metal}: ${why}. Fit all anodes of one metal that suits the water.`,
        corrections,
        draft: {
            title: `${anode.title ?? anode.id} does not suit the water`, urgency, ...(urgency === 'within-days' ? { days: 30 } : {}),
            seen: `${anode.title ?? 'The anode'} (${anode.id}) is of {${anode.id}.${property}}${record.vessel?.facts.has('water') ? '; she is kept in {vessel.water} water' : ''}.`,
            because: `${why.charAt(0).toUpperCase()}${why.slice(1)}.`,
            recommend: 'Renew all anodes in one metal that suits the water she is kept in.', cites: [['Good practice']],
        },
    };
}
